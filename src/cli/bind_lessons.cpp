#include "cli/bind_lessons.hpp"

#include "output/print_of.hpp"
#include "report/binder_report.hpp"
#include "report/follow.hpp"

#include <algorithm>

namespace cli {

std::optional<report::BinderNote> binder_note(const std::string& pdf) {
    return report::read_note(output::note_in(pdf));
}

std::string owner_of(std::string code) {
    std::ranges::replace(code, '\n', ' ');
    return code;
}

std::vector<std::string> news_of(const Workshop& workshop, const report::BinderNote& note,
                                 const record::Lesson& latest) {
    if (note.before.empty()) return {};
    const words::Speaker speaker(workshop.wording(latest.language), voice_of(latest));
    return report::exchange_words(speaker, report::exchange(note.before, note.now));
}

Bound bind_lessons(const std::vector<Gathered>& lessons, const std::string& code,
                   const std::optional<report::BinderNote>& was, diag::Findings& found) {
    std::vector<const page::Story*> stories;
    std::vector<report::LessonPages> pages;
    for (const auto& one : lessons) {
        stories.push_back(&one.sheet->story());
        pages.push_back({&one.sheet->easel(), &one.sheet->story(), one.sheet->book(*one.read)});
    }
    const page::Course course = report::follow(stories, lessons.back().read->library);
    const report::BinderInput input{lessons.back().sheet->easel(), course, pages};
    Bound out;
    auto flowed = report::binder_report(input, std::nullopt);
    report::BinderNote note{output::prints_of(flowed.book), {}, owner_of(code)};
    if (was) note.before = was->now == note.now ? was->before : was->now;
    if (!note.before.empty()) {
        const auto exchange = report::exchange(note.before, note.now);
        out.news = report::exchange_words(input.easel.words, exchange);
        flowed = report::binder_report(input, exchange);
    }
    for (const auto& fault : flowed.faults)
        found.warning({},
                      code + ", page " + std::to_string(fault.page) + ": " + fault.block + " " +
                          fault.what,
                      "shorten the text there, or report this layout fault");
    report::number_pages(flowed.book, input);
    out.note = report::written(note);
    out.book = std::move(flowed.book);
    return out;
}

} // namespace cli
