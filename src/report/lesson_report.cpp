#include "report/lesson_report.hpp"

#include "figure/grip.hpp"
#include "page/drill_page.hpp"
#include "page/evidence_page.hpp"
#include "page/expect_page.hpp"
#include "page/furniture.hpp"
#include "page/hold_page.hpp"
#include "page/hold_words.hpp"
#include "page/next_page.hpp"
#include "page/one_thing.hpp"
#include "page/self_check.hpp"
#include "page/why_page.hpp"
#include "report/tell_hold.hpp"

#include "words/date.hpp"

namespace report {

namespace {

/// The hold that the drill trains: the coach's target, drawn at the size of the drill's picture.
page::HoldPicture posed_hands(const figure::Easel& easel, const page::Story& story) {
    return [&easel, &story](std::string_view name, double width,
                            double height) -> std::optional<ink::Drawing> {
        const auto view = view_named(name);
        if (!view) return std::nullopt;
        const hand::Picture picture = hand::draw(*hand::pose(target_wish(story.lesson)), *view);
        const double fitted = std::min(width, height * picture.width / picture.height);
        ink::Drawing drawn =
            figure::hand_drawing(easel.theme, picture, story.lesson.student.hand.value, fitted);
        drawn.message =
            easel.words.say(page::view_key(*view)) + ". " + easel.words.say("grip.caption.lead");
        return drawn;
    };
}

std::vector<page::Section> sections(const figure::Easel& easel, const page::Story& story,
                                    std::size_t drill_page) {
    std::vector<page::Section> out;
    out.push_back(page::one_thing(easel, story, drill_page));
    out.push_back(page::hold_page(easel, story));
    out.push_back(page::evidence_page(easel, story));
    out.push_back(page::why_page(easel, story));
    for (std::size_t i = 0; i < story.drills.size(); ++i) {
        out.push_back(page::drill_page(easel, story, i, posed_hands(easel, story)));
        if (i == 0) out.push_back(page::expect_page(easel, story));
    }
    if (story.drills.empty()) out.push_back(page::expect_page(easel, story));
    if (story.drills.size() != 1) out.push_back(page::next_page(easel, story));
    return out;
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

page::Flowed lesson_report(const figure::Easel& easel, const page::Story& story) {
    const auto furniture = page::furniture(easel, story.lesson);
    std::size_t drill_page = 5;
    page::Flowed out;
    for (int round = 0; round < 3; ++round) {
        out = page::flow(sections(easel, story, drill_page), easel.theme, furniture);
        const std::size_t found = page_of(out.book, "drill-1");
        if (found == 0 || found == drill_page) break;
        drill_page = found;
    }
    name_document(out.book, easel, story.lesson);
    for (auto& fault : page::self_check(out.book, easel.theme, easel.type))
        out.faults.push_back(std::move(fault));
    return out;
}

} // namespace report
