#include "cli/begin_record.hpp"

#include "cli/doubt_returned.hpp"
#include "record/read_date.hpp"
#include "yaml/field.hpp"

#include <algorithm>
#include <cmath>

namespace cli {

namespace {

std::string plain_line_key(std::string_view line) {
    const std::size_t colon = line.find(':');
    if (line.empty() || line.front() == ' ' || line.front() == '#' || line.front() == '-' ||
        colon == std::string_view::npos)
        return {};
    return yaml::plain_key(line.substr(0, colon));
}

/// A text on one line as a comment.
std::string comment(const std::string& text) {
    std::string line = text;
    std::ranges::replace(line, '\n', ' ');
    return "# " + line + "\n";
}

/// What stood in the last record under `key`, or a comment that shows how to write it.
std::string again(const Begun& begun, std::string_view key, const std::string& otherwise) {
    const std::string lines =
        begun.last ? lines_of(begun.last->sources.front(), key) : std::string();
    return lines.empty() ? otherwise : lines;
}

/// The last aim, but not that it was named beforehand: that is true of one day only.
std::string aim_again(const Begun& begun) {
    std::string lines = again(begun, "aim", "# aim: {measure: face, want: 2 L to 2 R}\n");
    constexpr std::string_view key = "named before:";
    const std::size_t at = lines.find(key);
    if (at != std::string::npos) {
        const std::size_t end = lines.find_first_of(",}\n", at);
        const std::size_t before = lines.find_last_not_of(' ', at - 1);
        if (lines[before] == ',' || (lines[before] == '\n' && lines[end] != ','))
            lines.erase(before, end - before);
        else if (lines[end] == ',')
            lines.erase(at, lines.find_first_not_of(' ', end + 1) - at);
    }
    return lines + comment("Once it was said aloud, add to the aim: named before: yes");
}

std::string head(const Begun& begun) {
    const std::string name = begun.person ? begun.person->first_name
                             : begun.last ? begun.last->lesson.student.name
                                          : begun.code;
    std::string out = comment("Lesson " + std::to_string(begun.lessons + 1) + " with " + name +
                              ". Fill in what you know; lines that start with # are not read.");
    out += begun.person ? "student: " + begun.code + "\n" : again(begun, "student", "");
    out += "date: " + record::iso(begun.date) + "\n";
    out += "lesson: " + std::to_string(begun.lessons + 1) + "\n";
    for (const char* key : {"coach", "place", "language", "paper", "units", "large print", "glove",
                            "print name", "bag", "marks"})
        out += again(begun, key, "");
    return out;
}

/// What the last lesson left for this one, to be read and not printed.
std::string last_time(const Begun& begun) {
    if (!begun.last) return "\n";
    const record::Lesson& lesson = begun.last->lesson;
    std::string out = "\n" + comment("Last time, " + record::iso(lesson.date.value) + ":");
    if (!lesson.saw.empty()) out += comment("  saw: " + lesson.saw);
    if (!lesson.changed.empty()) out += comment("  changed: " + lesson.changed);
    for (const std::string& note : lesson.notes)
        out += comment("  for the next coach: " + note);
    return out + "\n";
}

/// The way from the new lesson's folder to the last one; nothing when they do not lie side by side.
std::string last_lesson(const Begun& begun) {
    if (!begun.last) return {};
    const fs::path record = begun.last->sources.front().name();
    std::error_code gone;
    const auto there = fs::absolute(record.parent_path(), gone).lexically_normal();
    const auto here = fs::absolute(begun.folder, gone).lexically_normal();
    if (there.parent_path() != here.parent_path() || there == here) return {};
    const std::string name =
        record.filename() == "lesson.yaml" ? "" : "/" + record.filename().string();
    return "last lesson: ../" + there.filename().string() + name + "\n";
}

/// What may have come back from a log that counts by so many tries a day.
std::string example_of(int tries) {
    if (tries == 1) return "days done: 9";
    const auto some = [](double part, int of) {
        return std::to_string(static_cast<int>(std::lround(part * of))) + " of " +
               std::to_string(of);
    };
    const int counted = tries > 0 ? tries : 10;
    return "days done: 9, right first: " + some(0.7, counted) +
           ", cold: " + some(0.6, std::min(10, counted));
}

std::string returned(const Begun& begun) {
    if (!begun.last) return {};
    const bool junior = begun.last->lesson.student.age == record::Age::junior; // no counts there
    std::string out;
    for (const auto& wish : begun.last->lesson.drills)
        out += (out.empty() ? "" : ", ") + ("{drill: " + wish.id.value) + ", " +
               (junior ? "days done: 9, passed: yes"
                       : example_of(tries_of_log(wish, begun.last->library))) +
               "}";
    if (begun.last->lesson.drills.size() > 1) out = "[" + out + "]";
    if (out.empty()) out = "{" + example_of(0) + "}";
    return comment("What came back from the last sheet:") + "# returned: " + out + "\n\n";
}

/// The last drills as a comment: what came back decides, unless the coach names some again.
std::string drills_line(const Begun& begun) {
    std::string ids;
    if (begun.last)
        for (const auto& wish : begun.last->lesson.drills)
            ids += (ids.empty() ? "" : ", ") + wish.id.value;
    if (ids.empty()) return "# drills: [H1]   # left out, the program proposes\n";
    return "# drills: [" + ids +
           "]   # as last time; left out, what came back decides, marked as the program's\n";
}

std::string shots_line(const Begun& begun) {
    if (begun.house && !begun.house->shots.file.value.empty())
        return comment("The shots stand in " + table_name(begun) +
                       " beside this file; leave it empty when none were measured.");
    const std::string usual = begun.house && begun.house->shots.sign
                                  ? "# shots: shots.csv   # take the # away once shots are in it\n"
                                  : "# shots: {file: shots.csv, sign: right is positive}   # say "
                                    "which side a plus means, and take the # away\n";
    return again(begun, "shots", usual);
}

std::string table_cell(const std::string& text) {
    if (text.find_first_of(",\"") == std::string::npos) return text;
    std::string out = "\"";
    for (const char c : text)
        out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + '"';
}

/// "face (deg)": our own name of a column with its unit.
std::string own_column(unit::Measure measure, unit::Units units) {
    const unit::MeasureRow& row = unit::row(measure);
    std::string unit_word(unit::symbol(row.kind, units));
    if (unit_word == "°") unit_word = "deg";
    return std::string(row.key) + (unit_word.empty() ? "" : " (" + unit_word + ")");
}

unit::Units units_of(const Begun& begun) {
    if (begun.last) return begun.last->lesson.units;
    unit::Units units = begun.house ? begun.house->units.value_or(unit::Units{}) : unit::Units{};
    if (begun.person && begun.person->distance) units.distance = *begun.person->distance;
    if (begun.person && begun.person->speed) units.speed = *begun.person->speed;
    return units;
}

} // namespace

std::string lines_of(const diag::Source& record, std::string_view key) {
    std::string lines, waiting;
    bool inside = false;
    for (std::uint32_t number = 1; number <= record.line_count(); ++number) {
        const std::string_view line = record.line(number);
        const bool edge = !line.empty() && line.front() != ' ' && line.front() != '-';
        if (edge && line.front() != '#') inside = plain_line_key(line) == key;
        const bool loose = line.empty() || line.front() == '#';
        if (!inside || loose) continue; // a comment at the edge may belong to what follows
        lines += std::string(line) + "\n";
    }
    return lines;
}

std::string record_for(const Begun& begun) {
    std::string out = head(begun) + last_time(begun) + last_lesson(begun) + returned(begun);
    out += again(begun, "club", "club:\n");
    out += comment("The one aim, said aloud before the later shots. Only this gets a verdict.");
    out += aim_again(begun);
    out += "\n" + comment("Your own words; they are printed as you write them.");
    out += "saw:\nchanged:\n# why:\n\n";
    out += comment("Leave out what you did not look at.");
    out += "grip:\n  before: {}\n  after: {}\n";
    out += again(begun, "targets", "") + "\n";
    out += shots_line(begun);
    out += again(begun, "conditions", "");
    out += drills_line(begun);
    out += again(begun, "plan", "# plan: {when: the kettle goes on, where: in the hall}\n");
    out += "# next: " +
           record::iso(record::Date{std::chrono::sys_days(begun.date) + std::chrono::days(14)}) +
           "\n";
    return out;
}

std::string table_name(const Begun& begun) {
    const bool usual = begun.house && !begun.house->shots.file.value.empty();
    return usual ? begun.house->shots.file.value : "shots.csv";
}

std::string table_for(const Begun& begun) {
    std::vector<std::string> columns;
    const auto named = [&](const auto& column, const char* own) {
        columns.push_back(column ? column->value : std::string(own));
    };
    const record::ShotSource none;
    const record::ShotSource& ways = begun.house ? begun.house->shots : none;
    named(ways.number_column, "number");
    named(ways.block_column, "block");
    if (ways.club_column) columns.push_back(ways.club_column->value);
    const unit::Units units = units_of(begun);
    using unit::Measure;
    for (const unit::MeasureRow& row : unit::measures) {
        const auto own = ways.columns.find(row.measure);
        const bool usual = row.measure == Measure::face || row.measure == Measure::path ||
                           row.measure == Measure::club_speed ||
                           row.measure == Measure::ball_speed || row.measure == Measure::launch ||
                           row.measure == Measure::start || row.measure == Measure::carry ||
                           row.measure == Measure::offline;
        if (own != ways.columns.end())
            columns.push_back(own->second.value);
        else if (ways.columns.empty() && usual)
            columns.push_back(own_column(row.measure, units));
    }
    if (ways.set_aside_column) columns.push_back(ways.set_aside_column->value);
    std::string out;
    for (const std::string& column : columns)
        out += (out.empty() ? "" : ",") + table_cell(column);
    return out + "\n";
}

} // namespace cli
