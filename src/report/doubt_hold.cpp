#include "report/doubt_hold.hpp"

#include <array>
#include <cmath>

namespace report {

namespace {

std::string v_named(unit::VPoint v) {
    constexpr std::array names{"lead side", "chin", "trail eye", "trail shoulder",
                               "outside trail shoulder"};
    return diag::quote(names.at(static_cast<std::size_t>(v)));
}

std::string lay_named(std::optional<unit::Lay> lay) {
    constexpr std::array names{"in the fingers", "between fingers and palm", "in the palm"};
    return names.at(static_cast<std::size_t>(lay.value_or(unit::Lay::fingers)));
}

/// "1 knuckle", "2.5 knuckles".
std::string knuckles(double n) {
    std::string out = std::to_string(static_cast<int>(std::floor(n)));
    if (std::floor(n) != n) out += ".5";
    return out + (n == 1 ? " knuckle" : " knuckles");
}

bool has(const hand::Facts& facts, std::string_view key) {
    return (" " + facts.contradiction_key + " ").find(" " + std::string(key) + " ") !=
           std::string::npos;
}

void doubt_balance(const unit::Grip& seen, const std::string& hold, diag::Span span,
                   diag::Findings& findings) {
    if (seen.balance == unit::Balance::falls)
        findings.warning(span,
                         hold + " lies " + lay_named(seen.lay) +
                             " with the heel pad on top, and yet the club falls off one finger",
                         "there the pad holds it: check 'balance', 'lay' and 'heel pad'; the "
                         "drawing shows it staying");
    else if (seen.lay != unit::Lay::palm) // the palm was told when the record was read
        findings.warning(
            span, hold + " lies " + lay_named(seen.lay) + " and yet the club stays on one finger",
            "it stays where the handle lies in the fingers and the pad presses on "
            "top: check 'balance', 'lay', 'heel pad' and 'gap'; the drawing shows it "
            "falling");
}

} // namespace

void doubt_hold(const hand::Facts& facts, const unit::Grip& seen, std::string_view when,
                diag::Span span, diag::Findings& findings) {
    const std::string hold = "the hold " + diag::quote(when);
    if (has(facts, "knuckles-v"))
        findings.warning(span,
                         hold + " shows " + knuckles(*seen.knuckles) + " and yet its V points to " +
                             v_named(*seen.v),
                         "a hand that shows " + knuckles(*seen.knuckles) + " points near " +
                             v_named(facts.v_points) +
                             ": check one of the two; the drawing follows the knuckles");
    if (has(facts, "knuckles-lay"))
        findings.warning(span,
                         hold + " shows " + knuckles(*seen.knuckles) +
                             ", which our hand cannot with the rest of it",
                         "the drawing shows " + knuckles(facts.knuckles) +
                             ": check 'knuckles', 'lay' and 'thumb side'");
    if (has(facts, "lay-balance")) doubt_balance(seen, hold, span, findings);
}

} // namespace report
