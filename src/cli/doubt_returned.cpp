#include "cli/doubt_returned.hpp"

#include "record/read_date.hpp"

#include <algorithm>

namespace cli {

int tries_of_log(const record::DrillWish& wish, const std::vector<drills::Drill>& library) {
    if (wish.tries) return *wish.tries;
    const auto* drill = wish.dose.empty() ? drills::find(library, wish.id.value) : nullptr;
    return drill ? drill->count.tries : 0;
}

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

/// The same of the drill that came back.
int tries_of(const record::Returned& back, const record::Lesson& last,
             const std::vector<drills::Drill>& library) {
    const auto wish = back.drill.value.empty() && last.drills.size() == 1
                          ? last.drills.begin()
                          : std::ranges::find(last.drills, back.drill.value,
                                              [](const auto& w) { return w.id.value; });
    return wish == last.drills.end() ? 0 : tries_of_log(*wish, library);
}

/// "8 of 10" from a log that counts by six: nobody can tell what was passed.
void doubt_count(const record::Returned& back, int tries, diag::Findings& findings) {
    if (!back.right || tries <= 1 || back.right->of % tries == 0) return;
    const std::string by = std::to_string(tries);
    findings.warning(back.right_span,
                     "the log of the last sheet counts by " + by + " tries a day, not by " +
                         std::to_string(back.right->of),
                     "write what stands in it for the last full day, such as 'right first: " +
                         std::to_string(std::max(1, tries - 1)) + " of " + by + "'");
}

} // namespace

void doubt_returned(const record::Lesson& now, const record::Lesson& last,
                    const std::vector<drills::Drill>& library, diag::Findings& findings) {
    const auto between =
        (std::chrono::sys_days(now.date.value) - std::chrono::sys_days(last.date.value)).count();
    for (const auto& back : now.returned) {
        doubt_drill(back, last, findings);
        doubt_count(back, tries_of(back, last, library), findings);
        if (back.days_done && *back.days_done > between)
            findings.warning(
                back.days_span,
                std::to_string(*back.days_done) + " days are done, and " + std::to_string(between) +
                    " lie between this lesson and the last, of " + record::iso(last.date.value),
                "correct the number, or one of the dates");
    }
}

} // namespace cli
