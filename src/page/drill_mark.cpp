#include "page/drill_mark.hpp"

#include "words/number.hpp"
#include "words/side.hpp"

#include <cmath>

namespace page {

namespace {

constexpr double inch = 0.0254, foot = 0.3048; // m, exact (international yard, 1959)

std::string whole(double value, const words::Speaker& w) {
    return words::whole(std::lround(value), w.language());
}

bool in_yards(const words::Speaker& w) { return w.voice().units.distance == unit::Distance::yards; }

/// Something a student lays out by hand: centimetres or inches.
std::string small(double metres, const words::Speaker& w) {
    return in_yards(w) ? w.say("mark.inches", {{"n", whole(metres / inch, w)}})
                       : w.say("mark.centimetres", {{"n", whole(metres * 100, w)}});
}

std::string paced(double metres, const words::Speaker& w) {
    return in_yards(w) ? w.say("mark.feet", {{"n", whole(metres / foot, w)}})
                       : w.say("mark.metres", {{"n", words::fixed(metres, 1, w.language())}});
}

} // namespace

std::string mark_step(const GroundMark& mark, const words::Speaker& w) {
    if (mark.kind != drills::Mark::gate) return {};
    return w.say("mark.gate.step", {{"n", mark.size},
                                    {"width", small(mark.width, w)},
                                    {"m", mark.ahead},
                                    {"distance", paced(mark.distance, w)}});
}

std::string mark_pass(const GroundMark& mark, const drills::Count& count, const words::Speaker& w) {
    const std::string pass =
        mark.kind == drills::Mark::gate
            ? w.say("mark.gate.pass", {{"n", count.pass}, {"of", count.tries}})
            : w.say("mark.window.pass",
                    {{"n", count.pass},
                     {"of", count.tries},
                     {"width", words::quantity(unit::Measure::carry, mark.width, w)},
                     {"distance", words::quantity(unit::Measure::carry, mark.distance, w)}});
    return pass + ". " +
           w.say("mark.from", {{"before", mark.before},
                               {"ofbefore", mark.of_before},
                               {"after", mark.after},
                               {"ofafter", mark.of_after}});
}

std::string mark_label(const GroundMark& mark, const words::Speaker& w) {
    return w.say("mark.gate.label", {{"n", mark.size}});
}

std::string mark_alternative(const GroundMark& mark, const words::Speaker& w) {
    return w.say("mark.gate.alt", {{"n", mark.size}, {"m", mark.ahead}});
}

} // namespace page
