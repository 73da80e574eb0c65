// Invented lessons of one student, told and followed: what binder and term are made from.
#pragma once

#include "table.hpp"

#include "../words/sentences.hpp"
#include "report/follow.hpp"
#include "report/lesson_report.hpp"
#include "report/tell.hpp"
#include "text/pango_typesetter.hpp"

#include <list>
#include <memory>

namespace course {

using namespace std::chrono;

/// One student's easel and lessons two weeks apart.
struct Student {
    text::PangoTypesetter type;
    theme::Theme theme;
    words::Speaker words;
    std::list<record::Lesson> lessons;
    std::list<shots::Table> tables;
    std::list<page::Story> stories;
    std::vector<drills::Drill> library = stock::drills_of("en");

    explicit Student(unit::Hand hand = unit::Hand::right, bool junior = false,
                     const char* language = "en-GB", theme::Paper paper = theme::Paper::a4)
        : theme(theme::house_style(paper, false))
        , words(sentences::speaker(language, {hand, junior, {}})) {}

    figure::Easel easel() const { return {type, theme, words}; }

    /// A lesson `days` after the first whose face went from `before` to `after`; `cold` is where
    /// the cold shots of the change before it lie.
    record::Lesson& add(int days, double before, double after, std::optional<double> cold = {}) {
        const double side = words.voice().hand == unit::Hand::left ? -1 : 1;
        record::Lesson& l = lessons.emplace_back();
        l.student = {"Mara",
                     "MA-11",
                     {words.voice().hand, {}},
                     words.voice().junior ? record::Age::junior : record::Age::adult,
                     ""};
        l.coach = {"Ines Marsh", "ines@marsh-lessons.example", "Alder Lane Golf"};
        l.date.value = sys_days(2026y / March / 5) + std::chrono::days(days);
        l.number = static_cast<int>(lessons.size());
        l.language = words.language();
        l.club.name = "seven iron";
        l.saw = "The handle lay in the palm.";
        l.changed = "The handle lies across the fingers.";
        l.before.knuckles = 1, l.after.knuckles = 2;
        l.has_before = l.has_after = true;
        l.aim = record::Aim{{unit::Measure::face, {}}, -2, 4, 2, true};
        l.drills.push_back({{"H1", {}}, {}, {}, {}, {}});
        shots::Table& table = tables.emplace_back();
        if (cold) table::add(table, shots::Block::cold, {side * *cold, -2, 30, 34, 10});
        table::add(table, shots::Block::before, {side * before, -2, 30, 34, 10});
        table::add(table, shots::Block::after, {side * after, -2, 27, 34, 10});
        return l;
    }

    /// Four lessons; the third has a gap of six weeks before it.
    void four() {
        add(0, 9, 3);
        add(14, 8, 2, 3.4);
        add(56, 7, 1.5, 6.8);
        add(70, 5, 1, 1.8);
    }

    page::Course followed() {
        stories.clear();
        diag::Findings findings;
        std::vector<const page::Story*> all;
        auto table = tables.begin();
        for (const auto& lesson : lessons) {
            stories.push_back(
                report::tell({lesson, &*table++, library, table::clubs(), &words}, findings));
            all.push_back(&stories.back());
        }
        return report::follow(all, library);
    }
};

inline std::string text_of(const page::Sheet& sheet) {
    std::string out;
    for (const auto& mark : sheet.marks)
        if (const auto* words = std::get_if<ink::Words>(&mark)) out += words->text + " ";
    return out;
}

inline bool says(const page::Book& book, std::string_view part) {
    for (const auto& sheet : book.sheets)
        if (text_of(sheet).find(part) != std::string::npos) return true;
    return false;
}

} // namespace course
