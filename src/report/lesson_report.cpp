#include "report/lesson_report.hpp"

#include "page/drill_page.hpp"
#include "page/evidence_page.hpp"
#include "page/expect_page.hpp"
#include "page/furniture.hpp"
#include "page/hold_page.hpp"
#include "page/log_page.hpp"
#include "page/next_page.hpp"
#include "page/one_thing.hpp"
#include "page/own_page.hpp"
#include "page/self_check.hpp"
#include "page/why_page.hpp"
#include "report/posed_hands.hpp"

#include "words/date.hpp"

#include <algorithm>

namespace report {

namespace {

/// The pages of the plan that have something to show. `with_next` brings the last page in where
/// a sheet with one drill would end on an empty side.
class Sections {
  public:
    Sections(const figure::Easel& easel, const page::Story& story, std::size_t drill_page,
             bool with_next)
        : easel_(easel)
        , story_(story)
        , drill_page_(drill_page)
        , with_next_(with_next) {}

    std::vector<page::Section> of(const Plan& plan) {
        for (const auto& planned : plan)
            add(planned);
        if (auto second = page::log_page(easel_, story_); !second.blocks.empty())
            put(std::move(second));
        return std::move(out_);
    }

  private:
    void add(const theme::Planned& planned) {
        switch (planned.page) {
        case theme::Page::one_thing:
            return put(page::one_thing(easel_, story_, drill_page_));
        case theme::Page::hold:
            return put(page::hold_page(easel_, story_));
        case theme::Page::evidence:
            return put(page::evidence_page(easel_, story_));
        case theme::Page::why:
            return put(page::why_page(easel_, story_));
        case theme::Page::drill:
            return drill(0);
        case theme::Page::expect:
            return put(page::expect_page(easel_, story_));
        case theme::Page::second_drill:
            for (std::size_t i = 1; i < story_.drills.size(); ++i)
                drill(i);
            return;
        case theme::Page::photographs:
            if (story_.pictures.before || story_.pictures.after)
                put(page::photograph_page(easel_, story_.pictures,
                                          story_.lesson.photographs.caption));
            return;
        case theme::Page::next:
            if (story_.drills.size() != 1 || with_next_) put(page::next_page(easel_, story_));
            return;
        case theme::Page::own:
            return put(page::own_page(easel_, planned));
        }
    }

    void drill(std::size_t index) {
        if (index < story_.drills.size())
            put(page::drill_page(easel_, story_, index, posed_hands(easel_, story_)));
    }
    void put(page::Section section) { out_.push_back(std::move(section)); }

    const figure::Easel& easel_;
    const page::Story& story_;
    std::size_t drill_page_;
    bool with_next_;
    std::vector<page::Section> out_;
};

bool plans(const Plan& plan, theme::Page page) {
    return std::ranges::find(plan, page, &theme::Planned::page) != plan.end();
}

/// The page on which the drill's section came to stand.
std::size_t page_of(const page::Book& book, std::string_view name) {
    for (std::size_t i = 0; i < book.sheets.size(); ++i)
        for (const auto& mark : book.sheets[i].marks)
            if (const auto* place = std::get_if<ink::Place>(&mark); place && place->name == name)
                return i + 1;
    return 0;
}

void name_document(page::Book& book, const figure::Easel& easel, const record::Lesson& lesson) {
    book.title =
        easel.words.say("head.document-of", {{"document", easel.words.say("head.document.lesson")},
                                             {"name", lesson.printed_name()}});
    book.author = lesson.coach.name;
    book.language = lesson.language;
    book.created = words::date_iso(lesson.date.value);
}

} // namespace

page::Flowed lesson_report(const figure::Easel& easel, const page::Story& story, const Plan& plan) {
    const auto furniture = page::furniture(easel, story.lesson);
    const page::Section filler = page::lines_page(easel);
    std::size_t drill_page = 5;
    bool with_next = story.last.has_value(); // it tells what came back
    page::Flowed out;
    for (int round = 0; round < 4; ++round) {
        out = page::flow(Sections(easel, story, drill_page, with_next).of(plan), easel.theme,
                         furniture, &filler);
        const bool fill = out.book.sheets.back().name == filler.name && !with_next &&
                          story.drills.size() == 1 && plans(plan, theme::Page::next);
        with_next = with_next || fill;
        const std::size_t found = page_of(out.book, "drill-1");
        if (!fill && (found == 0 || found == drill_page)) break;
        if (found != 0) drill_page = found;
    }
    name_document(out.book, easel, story.lesson);
    for (auto& fault : page::self_check(out.book, easel.theme, easel.type))
        out.faults.push_back(std::move(fault));
    return out;
}

} // namespace report
