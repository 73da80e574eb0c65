#include "record/read_date.hpp"
#include "record/read_lesson.hpp"

#include "diag/utf8.hpp"

namespace record {

namespace {

/// How many characters a text may have before it no longer fits where the page wants it at a
/// glance.
constexpr std::uint32_t longest_sentence = 160;
constexpr std::uint32_t longest_reason = 420;

void check_length(const std::string& text, diag::Span span, std::string_view key,
                  std::uint32_t most, diag::Findings& findings) {
    const std::uint32_t length = diag::code_points(text);
    if (length <= most) return;
    findings.warning(
        span,
        diag::quote(key) + " has " + std::to_string(length) +
            " characters, the sheet has room for " + std::to_string(most),
        "shorten it if you can: it will flow on, but short sentences are remembered better");
}

/// A year in the wrong decade stands on the sheet for good.
void check_years(Date today, const std::optional<Date>& then, std::string_view what,
                 diag::Span span, diag::Findings& findings) {
    using std::chrono::sys_days, std::chrono::days;
    if (!then || sys_days(*then) - sys_days(today) <= days(366)) return;
    findings.warning(span,
                     "the " + std::string(what) + " is more than a year after this lesson of " +
                         iso(today),
                     "look at the years: one of the two is likely a slip");
}

void check_dates(const Lesson& lesson, diag::Findings& findings) {
    if (!lesson.date.value.ok()) return;
    const Date today = lesson.date.value;
    if (lesson.next && *lesson.next <= today)
        findings.error(lesson.next_span, "the next lesson is not after this one of " + iso(today),
                       "correct one of the two: 'date' is this lesson, 'next' the one to come");
    if (lesson.cold_test && *lesson.cold_test <= today)
        findings.error(lesson.cold_test_span,
                       "the cold test is not after this lesson of " + iso(today),
                       "a cold test tells what stayed: choose a day at least a few days later");
    else if (lesson.cold_test && lesson.next && *lesson.cold_test > *lesson.next)
        findings.warning(lesson.cold_test_span,
                         "the cold test is after the next lesson of " + iso(*lesson.next),
                         "let it open the next lesson, or come before it: the log goes with it");
    check_years(today, lesson.next, "next lesson", lesson.next_span, findings);
    check_years(today, lesson.cold_test, "cold test", lesson.cold_test_span, findings);
    if (lesson.revision > 1 && lesson.replaces.empty())
        findings.warning(lesson.revision_span,
                         "revision " + std::to_string(lesson.revision) +
                             " does not say what it replaces",
                         "add a line such as 'replaces: \"revision 1: the club was wrong\"'");
}

/// Letters of 17 points leave a page of A5 with six words a line, 28 days a column without room for
/// its name.
void check_paper(const Lesson& lesson, diag::Findings& findings) {
    if (lesson.paper != Paper::a5) return;
    diag::Span whole = lesson.date.span;
    whole.line = 0;
    if (lesson.large_print)
        findings.error(
            whole, "large print has no room on A5",
            "write 'paper: A4' or 'paper: Letter' for this student, or leave large print out");
    if (lesson.log_days > 14)
        findings.error(whole, "a log of 28 days has no room on A5",
                       "write 'paper: A4' or 'paper: Letter' for this student, or leave the line "
                       "'log' out for a log of 14 days");
}

void check_drills(const Lesson& lesson, diag::Findings& findings) {
    for (std::size_t i = 0; i < lesson.drills.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (lesson.drills[i].id.value == lesson.drills[j].id.value)
                findings.error(lesson.drills[i].id.span,
                               "drill '" + lesson.drills[i].id.value + "' is named twice",
                               "take one of the two away");
    if (lesson.drills.size() > 2)
        findings.warning(lesson.drills[2].id.span,
                         std::to_string(lesson.drills.size()) + " drills are named",
                         "two are done, eight are not: keep the two that matter most this week");
    if (lesson.pain && !lesson.drills.empty())
        findings.warning(lesson.drills.front().id.span,
                         "'pain: yes' is written, and yet a drill is named",
                         "it is printed as you named it: take it away unless you are sure that it "
                         "does not hurt");
}

/// Observations that cannot both be true of one hold.
void check_hold(const unit::Grip& grip, std::string_view when, diag::Span span,
                diag::Findings& findings) {
    const std::string hold = "the hold " + diag::quote(when);
    if (grip.heel_pad == unit::HeelPad::on_top && grip.gap == true)
        findings.warning(span, hold + " has the heel pad on top and yet a gap",
                         "with the pad on top there is no gap at the end: check one of the two");
    if (grip.lay == unit::Lay::palm && grip.balance == unit::Balance::stays)
        findings.warning(
            span, hold + " lies in the palm and yet the club stays on one finger",
            "the one-finger check holds only when the handle lies in the fingers: check one "
            "of the two");
}

/// The same observations twice beside a change in words: the second was likely copied.
void check_change(const Lesson& lesson, diag::Findings& findings) {
    if (!lesson.has_before || !lesson.has_after || lesson.changed.empty()) return;
    if (lesson.before == lesson.after)
        findings.warning(lesson.after_span, "the hold 'after' is the hold 'before'",
                         "did you forget to change it? When the hold was not what you changed, "
                         "write 'after' alone");
}

void check_aim(const Lesson& lesson, diag::Findings& findings) {
    if (!lesson.aim || lesson.shots || lesson.no_shots) return;
    findings.note(lesson.aim->measure.span, "there is no shot table, so the aim gets no verdict",
                  "add a line such as 'shots: shots.csv', or leave it: the sheet is whole without");
}

} // namespace

void check_lesson(const Lesson& lesson, diag::Findings& findings, bool table_told) {
    check_dates(lesson, findings);
    check_paper(lesson, findings);
    check_drills(lesson, findings);
    if (!table_told) check_aim(lesson, findings);
    check_hold(lesson.before, "before", lesson.before_span, findings);
    check_hold(lesson.after, "after", lesson.after_span, findings);
    check_change(lesson, findings);
    check_length(lesson.saw, lesson.saw_span, "saw", longest_sentence, findings);
    check_length(lesson.changed, lesson.changed_span, "changed", longest_sentence, findings);
    check_length(lesson.why, lesson.why_span, "why", longest_reason, findings);
    check_length(lesson.comment, lesson.comment_span, "comment", longest_reason, findings);
}

} // namespace record
