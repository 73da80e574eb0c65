#include "cli/doubt_returned.hpp"

#include "record/read_date.hpp"

#include <algorithm>

namespace cli {

namespace {

void doubt_drill(const record::Returned& back, const record::Lesson& last,
                 diag::Findings& findings) {
    const std::string& id = back.drill.value;
    if (id.empty() || last.drills.empty()) return;
    std::vector<std::string_view> given;
    for (const auto& wish : last.drills)
        given.emplace_back(wish.id.value);
    if (std::ranges::find(given, id) != given.end()) return;
    findings.warning(back.drill.span,
                     "the last sheet, of " + record::iso(last.date.value) + ", did not give " +
                         diag::quote(id),
                     "its drills: " + diag::either(given) + "; correct one of the two records");
}

} // namespace

void doubt_returned(const record::Lesson& now, const record::Lesson& last,
                    diag::Findings& findings) {
    const auto between =
        (std::chrono::sys_days(now.date.value) - std::chrono::sys_days(last.date.value)).count();
    for (const auto& back : now.returned) {
        doubt_drill(back, last, findings);
        if (back.days_done && *back.days_done > between)
            findings.warning(
                back.days_span,
                std::to_string(*back.days_done) + " days are done, and " + std::to_string(between) +
                    " lie between this lesson and the last, of " + record::iso(last.date.value),
                "correct the number, or one of the dates");
    }
}

} // namespace cli
