// A desk with a lesson on it: what the tests of the drill page share.
#pragma once

#include "../drills/stock.hpp"
#include "../words/sentences.hpp"
#include "page/drill_page.hpp"
#include "page/furniture.hpp"
#include "page/self_check.hpp"
#include "text/pango_typesetter.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace desk {

using namespace std::chrono_literals;
using record::Age;
using std::chrono::May;
using std::chrono::September;
using theme::Paper;
using unit::Hand;

/// Everyday words up to that many characters.
inline std::string long_text(std::size_t characters) {
    static const char* const words[] = {"place",   "the",    "handle", "across", "your",
                                        "fingers", "slowly", "before", "closing"};
    std::string out;
    for (std::size_t i = 0;; ++i) {
        const std::string next = words[i % 9];
        if (out.size() + next.size() + 1 > characters) break;
        out += (out.empty() ? "" : " ") + next;
    }
    return out + ".";
}

inline drills::Drill usual_drill() {
    drills::Drill d;
    d.id = "Q1";
    d.family = "hold";
    d.name = "Lid and shelf";
    d.purpose = "It puts the handle under the pad.";
    d.need = "Club";
    d.steps = {"Lay the handle down.", "Close the fingers.", "Look."};
    d.junior_steps = d.steps;
    d.dose = "10 times";
    d.check = "Is the pad on top?";
    d.good_enough = "A pencil’s width";
    d.pass = "8 of 10 on 3 days";
    d.count = {10, 8, 3, 5, drills::Count::Of::right_first};
    d.cue = "Lid on the jar.";
    d.repair = "Slipped? Start again.";
    d.picture = "butt end";
    return d;
}

/// The longest texts that a drill file may have.
inline drills::Drill longest_drill() {
    drills::Drill d = usual_drill();
    d.name = "Handle and cushion and line";
    d.purpose = long_text(90);
    d.need = long_text(80);
    d.space = drills::Space::swing;
    d.steps.assign(6, "Place the handle across your fingers slowly before closing them all round "
                      "the club again.");
    d.dose = long_text(60);
    d.check = long_text(90);
    d.good_enough = long_text(70);
    d.pass = long_text(80);
    d.cue = long_text(60);
    d.repair = long_text(110);
    d.caution = long_text(110);
    d.place = d.blend = d.play = long_text(80);
    return d;
}

inline record::Lesson lesson_for(Hand hand, Age age) {
    record::Lesson lesson;
    lesson.student.name = "Tove";
    lesson.student.code = "T-17";
    lesson.student.hand.value = hand;
    lesson.student.age = age;
    lesson.coach.name = "Ines Marsh";
    lesson.date.value = 2026y / May / 14;
    lesson.cold_test = 2026y / September / 28;
    lesson.next = 2026y / September / 30;
    return lesson;
}

struct Desk {
    text::PangoTypesetter type;
    theme::Theme theme;
    words::Speaker words;
    record::Lesson lesson;
    std::vector<page::ChosenDrill> drills;

    Desk(Paper paper, Hand hand, Age age = Age::adult, bool large = false)
        : theme(theme::house_style(paper, large))
        , words(sentences::speaker("en-GB", {hand, age == Age::junior, {}}))
        , lesson(lesson_for(hand, age)) {}
    void choose(const drills::Drill& drill, std::string why = {}) {
        page::ChosenDrill chosen;
        chosen.drill = drill;
        chosen.wish.why = std::move(why);
        drills.push_back(std::move(chosen));
    }
    figure::Easel easel() const { return {type, theme, words}; }
    page::Story story() const {
        page::Story story{lesson};
        story.drills = drills;
        return story;
    }
};

/// The pages of one section; the program's own check finds nothing to say.
inline page::Flowed flowed(const Desk& desk, const page::Section& section) {
    const auto easel = desk.easel();
    auto out = page::flow({section}, desk.theme, page::furniture(easel, desk.lesson));
    for (const auto& fault : out.faults)
        FAIL_CHECK(fault.block << " " << fault.what);
    for (const auto& fault : page::self_check(out.book, desk.theme, desk.type))
        FAIL_CHECK("page " << fault.page << ": " << fault.block << " " << fault.what);
    return out;
}

inline const ink::Drawing& side(const page::Section& section, std::size_t i = 0) {
    return section.blocks.at(i).pieces.at(0).drawing;
}

inline std::vector<std::string> texts(const ink::Drawing& drawing) {
    std::vector<std::string> out;
    for (const auto& mark : drawing.marks)
        if (const auto* words = std::get_if<ink::Words>(&mark)) out.push_back(words->text);
    return out;
}

inline bool says(const ink::Drawing& drawing, std::string_view part) {
    std::string all;
    for (const auto& text : texts(drawing))
        all += text + " ";
    return all.find(part) != std::string::npos;
}

/// Least distance of the upright and of the level lines of a table.
struct Cells {
    double width = 1e9, height = 1e9;
    std::size_t columns = 0, rows = 0;
};
inline Cells cells(const ink::Drawing& drawing) {
    std::set<double> xs, ys;
    for (const auto& mark : drawing.marks)
        if (const auto* stroke = std::get_if<ink::Stroke>(&mark)) {
            const ink::Rect b = stroke->path.bounds();
            if (b.width < 0.01 && b.height > 100) xs.insert(b.x);
            if (b.height < 0.01 && b.width > 200) ys.insert(b.y);
        }
    Cells out;
    const auto measure = [](const std::set<double>& at, double& least, std::size_t& count) {
        for (auto i = at.begin(); i != at.end() && std::next(i) != at.end(); ++i, ++count)
            least = std::min(least, *std::next(i) - *i);
    };
    measure(xs, out.width, out.columns);
    measure(ys, out.height, out.rows);
    return out;
}

} // namespace desk
