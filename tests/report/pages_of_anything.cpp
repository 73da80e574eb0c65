#include "generated.hpp"

#include "../drills/stock.hpp"
#include "../words/sentences.hpp"
#include "record/read_lesson.hpp"
#include "report/lesson_report.hpp"
#include "report/tell.hpp"
#include "shots/read_table.hpp"
#include "table.hpp"
#include "text/pango_typesetter.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <iostream>
#include <map>

namespace {

const std::vector<drills::Drill>& library() {
    static const std::vector<drills::Drill> all = stock::drills_of("en");
    return all;
}

const words::Speaker& speaker_for(const record::Lesson& lesson) {
    static std::map<std::string, words::Speaker> speakers;
    const bool junior = lesson.student.age == record::Age::junior;
    const std::string key =
        lesson.language + std::to_string(static_cast<int>(lesson.student.hand.value)) +
        (junior ? "j" : "a") + std::to_string(static_cast<int>(lesson.units.distance));
    const auto found = speakers.find(key);
    if (found != speakers.end()) return found->second;
    return speakers
        .emplace(key, sentences::speaker(lesson.language,
                                         {lesson.student.hand.value, junior, lesson.units}))
        .first->second;
}

theme::Theme theme_for(const record::Lesson& lesson) {
    static constexpr theme::Paper papers[] = {theme::Paper::a4, theme::Paper::letter,
                                              theme::Paper::a5};
    return theme::house_style(papers[static_cast<std::size_t>(lesson.paper)], lesson.large_print);
}

struct Outcome {
    std::size_t pages = 0;
    std::vector<page::Fault> faults;
    std::string refused; ///< findings that are errors
};

Outcome laid_out(const generated::Case& each, const text::Typesetter& type) {
    Outcome out;
    diag::Findings findings;
    const diag::Source source("lesson.yaml", each.yaml), csv("shots.csv", each.csv);
    const record::Lesson lesson = record::read_lesson(source, findings);
    std::optional<shots::Table> table;
    if (findings.clean() && lesson.shots)
        table = shots::read_table(csv, *lesson.shots, lesson.student.hand.value, findings);
    if (!findings.clean()) {
        out.refused = diag::print_all(findings);
        return out;
    }
    const auto& speaker = speaker_for(lesson);
    const theme::Theme theme = theme_for(lesson);
    const page::Story story = report::tell(
        {lesson, table ? &*table : nullptr, library(), table::clubs(), &speaker}, findings);
    page::Flowed flowed = report::lesson_report({type, theme, speaker}, story);
    out.pages = flowed.book.sheets.size();
    out.faults = std::move(flowed.faults);
    return out;
}

/// Fonts for this script are a matter of the computer; a finding names the package.
bool is_font(const page::Fault& fault) {
    return fault.what.find("no font here") != std::string::npos;
}

/// Lays it out and holds it to the self-check; pages laid out.
std::size_t expect_clean(const generated::Case& each, const std::string& called,
                         const text::Typesetter& type) {
    const Outcome out = laid_out(each, type);
    INFO(called << "\n" << each.yaml);
    CHECK(out.refused == "");
    std::string faults;
    for (const auto& fault : out.faults)
        if (is_font(fault))
            CHECK(fault.hint.find("apt-get install fonts-") != std::string::npos);
        else
            faults +=
                "page " + std::to_string(fault.page) + ": " + fault.block + " " + fault.what + "\n";
    CHECK(faults == "");
    CHECK(out.pages % 2 == 0);
    CHECK(out.pages >= 4);
    CHECK(out.pages <= 40);
    return out.pages;
}

/// How many records; LESSONLEAF_RECORDS asks for more than the usual.
std::uint64_t wanted(std::uint64_t usual) {
    const char* asked = std::getenv("LESSONLEAF_RECORDS");
    return asked ? std::strtoull(asked, nullptr, 10) : usual;
}

/// Large print has no room on A5 and is refused there: the same record for A4.
generated::Case with_room(generated::Case each) {
    const auto at = each.yaml.find("paper: A5");
    if (at != std::string::npos && each.yaml.find("large print: yes") != std::string::npos)
        each.yaml.replace(at, 9, "paper: A4");
    return each;
}

} // namespace

TEST_CASE("whatever a coach writes, every page passes the program's own check", "[generated]") {
    const text::PangoTypesetter type;
    const std::uint64_t count = wanted(60);
    std::size_t pages = 0;
    for (std::uint64_t seed = 1; seed <= count; ++seed)
        pages +=
            expect_clean(with_room(generated::lesson(seed)), "seed " + std::to_string(seed), type);
    std::cout << count << " generated records, " << pages << " pages laid out and checked\n";
}

TEST_CASE("each field may be missing, and every page passes the check", "[generated]") {
    const text::PangoTypesetter type;
    std::size_t pages = 0, count = 0;
    for (const auto& key : generated::optional_keys()) {
        pages +=
            expect_clean(with_room(generated::lesson(1000 + count, key)), "without " + key, type);
        ++count;
    }
    std::cout << count << " records with one field missing, " << pages << " pages\n";
}
