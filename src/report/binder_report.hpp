// One student's binder: the front, every lesson as it was printed, the drills passed.
#pragma once

#include "page/course.hpp"
#include "page/flow.hpp"
#include "report/exchange.hpp"

#include <optional>
#include <string>
#include <vector>

namespace report {

/// A lesson's pages as `lesson_report` made them, and what they were drawn with.
struct LessonPages {
    const figure::Easel* easel = nullptr;
    const page::Story* story = nullptr;
    page::Book book;
};

struct BinderInput {
    const figure::Easel& easel; ///< of the newest lesson: language, paper and size of the front
    const page::Course& course;
    const std::vector<LessonPages>& lessons; ///< in the course's order
};

/// The whole binder without its page numbers; contents and links are there. `news` says what to
/// exchange and stands on the first page.
page::Flowed binder_report(const BinderInput& input, const std::optional<Exchange>& news);

/// Numbers every page, at its outer corner.
void number_pages(page::Book& book, const BinderInput& input);

/// What to exchange, in sentences: those of the first page and of the terminal.
std::vector<std::string> exchange_words(const words::Speaker& words, const Exchange& exchange);

} // namespace report
