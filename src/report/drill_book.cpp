#include "report/drill_book.hpp"

#include "page/drill_page.hpp"
#include "page/expect_page.hpp"
#include "page/furniture.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "page/self_check.hpp"
#include "report/posed_hands.hpp"
#include "report/tell_drills.hpp"

#include <algorithm>
#include <array>

namespace report {

namespace {

using figure::Easel;

constexpr std::size_t first_drill_page = 3;

/// Hold first, then face, path and so on; within a family as the library has them.
std::vector<drills::Drill> as_taught(std::vector<drills::Drill> library) {
    constexpr std::array<std::string_view, 8> order{"hold",   "face",  "path", "loft",
                                                    "strike", "speed", "aim",  "test"};
    std::ranges::stable_sort(library, {}, [&](const drills::Drill& drill) {
        return std::ranges::find(order, drill.family) - order.begin();
    });
    return library;
}

/// The drills in groups by family, each with the page on which it stands.
page::Section contents(const Easel& easel, const std::vector<drills::Drill>& library) {
    page::Section section;
    section.name = "contents";
    section.title = easel.words.say("book.contents");
    std::vector<page::NoteGroup> groups;
    for (std::size_t i = 0; i < library.size(); ++i) {
        const auto& drill = library[i];
        const std::string family = easel.words.say("book.family." + drill.family);
        if (groups.empty() || groups.back().title != family) groups.push_back({family, {}, false});
        groups.back().notes.push_back({drill.id + " " + drill.name + ".",
                                       easel.words.say("book.line", {{"purpose", drill.purpose},
                                                                     {"x", first_drill_page + i}}),
                                       theme::Text::caption});
    }
    std::vector<page::NoteGroup> left, right;
    std::size_t lines = 0;
    for (auto& group : groups) {
        auto& column = 2 * lines < library.size() ? left : right;
        lines += group.notes.size();
        column.push_back(std::move(group));
    }
    section.blocks =
        page::page_of_notes(easel, section.title,
                            {{{},
                              {{{},
                                easel.words.say("book.note") + " " + easel.words.say("book.side"),
                                theme::Text::body}},
                              false}},
                            left, right, easel.words.say("book.blank"));
    return section;
}

page::Section safety(const Easel& easel, bool junior) {
    page::Section section;
    section.name = "safety";
    section.title = easel.words.say("caution.title");
    page::NoteGroup all = page::cautions(easel, junior, theme::Text::body);
    all.title.clear();
    all.notes.insert(all.notes.begin(), {easel.words.say("caution.stop.head"),
                                         easel.words.say("caution.stop") + " " +
                                             easel.words.say("caution.stop.doctor") + " " +
                                             easel.words.say("caution.not-medical"),
                                         theme::Text::body});
    all.notes.push_back({{}, easel.words.say("book.odd"), theme::Text::body});
    section.blocks =
        page::page_of_notes(easel, section.title, {all}, {}, {}, easel.words.say("book.blank"));
    return section;
}

} // namespace

page::Flowed drill_book(const Easel& easel, const record::Lesson& lesson,
                        const std::vector<drills::Drill>& unsorted) {
    const auto library = as_taught(unsorted);
    page::Story story{.lesson = lesson};
    const Inputs inputs{lesson, nullptr, library, {}, &easel.words};
    for (const auto& drill : library) {
        auto chosen = chosen_drill(drill, inputs);
        chosen.sign = drill.id;
        story.drills.push_back(std::move(chosen));
    }
    std::vector<page::Section> sections{contents(easel, library),
                                        safety(easel, lesson.student.age == record::Age::junior)};
    const auto hands = posed_hands(easel, story);
    for (std::size_t i = 0; i < story.drills.size(); ++i) {
        auto section = page::drill_page(easel, story, i, hands);
        section.right_hand = false;
        section.title = library[i].id + " " + library[i].name;
        sections.push_back(std::move(section));
    }
    auto out = page::flow(sections, easel.theme, page::furniture(easel, lesson));
    const char* title =
        lesson.student.hand.value == unit::Hand::left ? "book.title.left" : "book.title.right";
    out.book.title = easel.words.say(title);
    out.book.language = lesson.language;
    out.book.created = "1970-01-01"; // a book of no day
    for (auto& fault : page::self_check(out.book, easel.theme, easel.type))
        out.faults.push_back(std::move(fault));
    return out;
}

} // namespace report
