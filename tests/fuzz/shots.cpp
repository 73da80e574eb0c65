// A line of the record ("sign: ..."), then any bytes as a shot table.
#include "entry.hpp"
#include "record/read_lesson.hpp"
#include "shots/read_table.hpp"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string all = fuzz::text_of(data, size);
    const auto line = all.find('\n');
    const std::string how = line == all.npos ? std::string() : all.substr(0, line);
    diag::Findings findings;
    const diag::Source record("lesson.yaml",
                              "student: {name: Ada, hand: right}\ndate: 2026-05-14\nsaw: a\n"
                              "changed: b\naim: {measure: face, want: 2 L to 4 R}\n"
                              "shots: {file: s.csv" +
                                  (how.empty() ? std::string() : ", " + how) + "}\n");
    const auto lesson = record::read_lesson(record, findings);
    const diag::Source source("s.csv", line == all.npos ? all : all.substr(line + 1));
    if (lesson.shots) {
        auto table = shots::read_table(source, *lesson.shots, lesson.student.hand.value, findings);
        shots::set_aside(table, lesson.shots->rules, findings);
        shots::check_plausible(table, source, findings, "seven iron");
        if (lesson.aim) shots::check_aim(table, *lesson.aim, findings);
    }
    fuzz::print(findings);
    return 0;
}
