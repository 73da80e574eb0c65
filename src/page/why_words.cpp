#include "page/why_words.hpp"

#include "page/why_inputs.hpp"

#include "page/verdict.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <array>
#include <cmath>

namespace page {

namespace {

using ball::LoftOrigin;
using unit::Measure;

/// From this part of the largest cause on, the next one counts as much. Our own choice, no source.
constexpr double about_equal = 0.7;

std::string percent(double part, const words::Speaker& words) {
    return words::fixed(part * 100, 0, words.language());
}

std::string share_note(const BallStory& ball, const words::Speaker& w) {
    constexpr std::array<const char*, 4> keys{"why.share.published", "why.share.geometry",
                                              "why.share.fitted", "why.share.given"};
    const char* key = keys[static_cast<std::size_t>(ball.share_source)];
    words::Holes holes{{"share", percent(ball.face_share, w)}};
    if (ball.share_source == ShareSource::given) holes.push_back({"source", ball.share_from});
    return w.say(key, holes) + " " + w.say("why.share.tests");
}

/// "between {from} and {to}" of an estimate, sides in words.
words::Holes ends(const std::string& block, Measure measure, const ball::Estimate& estimate,
                  const words::Speaker& w) {
    return {{"block", block},
            {"from", words::side(measure, estimate.lower.value, w)},
            {"to", words::side(measure, estimate.upper.value, w)}};
}

void add_estimates(std::vector<std::string>& out, const NamedBlock& named,
                   const words::Speaker& w) {
    const BallBlock& b = *named.block;
    if (b.face_estimate)
        out.push_back(w.say(b.path_estimate ? "why.estimated.face-and-path" : "why.estimated.face",
                            ends(named.name, Measure::face, *b.face_estimate, w)));
    if (b.start_range)
        out.push_back(
            w.say("why.estimated.start", ends(named.name, Measure::start, *b.start_range, w)));
    if (b.loft.origin == LoftOrigin::from_launch)
        out.push_back(w.say("why.loft.range", ends(named.name, Measure::loft, b.loft.loft, w)));
}

/// Heights above the sea are told in feet where distances are in yards.
std::string height_words(double metres, const words::Speaker& w) {
    constexpr double metres_in_a_foot = 0.3048; // exact by definition
    const bool feet = w.voice().units.distance == unit::Distance::yards;
    return w.say(feet ? "mark.feet" : "mark.metres",
                 {{"n", words::fixed(feet ? metres / metres_in_a_foot : metres, 0, w.language())}});
}

std::string air_note(const Story& story, const words::Speaker& w) {
    const auto& conditions = story.lesson.conditions;
    const auto& air = story.ball->air;
    const double kelvin =
        air.temperature ? air.temperature->value
                        : ball::standard_air(ball::geopotential(air.height)).temperature.value;
    const auto celsius = words::fixed(kelvin - 273.15, 0, w.language());
    const std::string still =
        " " + (conditions.wind ? w.say("flight.wind", {{"wind", conditions.wind->text}})
                               : w.say("flight.no-wind"));
    if (!conditions.height) return w.say("flight.air.assumed", {{"celsius", celsius}}) + still;
    return w.say("flight.air",
                 {{"celsius", celsius}, {"height", height_words(air.height.value, w)}}) +
           still;
}

} // namespace

std::string cause_key(ball::Factor factor) {
    constexpr std::array<const char*, ball::factor_count> keys{"face", "path", "loft", "speed",
                                                               "strike"};
    return std::string("credit.cause.") + keys[static_cast<std::size_t>(factor)];
}

std::string credit_sentence(const ball::Credit& credit, ball::Outcome outcome,
                            const words::Speaker& w) {
    const auto& told = credit[outcome];
    if (!told.measured || !told.modelled || (told.fits && !*told.fits)) return {};
    const double change = told.measured->value;
    std::size_t largest = 0, second = 0;
    double best = 0, next = 0;
    for (std::size_t i = 0; i < ball::factor_count; ++i) {
        const double along = told.shares[i] ? told.shares[i]->value * (change < 0 ? -1 : 1) : 0;
        if (along > best)
            next = best, second = largest, best = along, largest = i;
        else if (along > next)
            next = along, second = i;
    }
    if (best <= 0) return {};
    const Measure measure = measure_of(outcome);
    const auto& range = told.shares[largest]->range;
    if (range && range->lower <= 0 && range->upper >= 0)
        return w.say("why.credit.unclear", {{"noun", w.say("noun." + key_of(measure))}});
    const double part = best / std::abs(change);
    if (part <= 0.9 && next > about_equal * best)
        return w.say("why.credit.two",
                     {{"noun", w.say("noun." + key_of(measure))},
                      {"cause", w.say(cause_key(static_cast<ball::Factor>(largest)))},
                      {"other", w.say(cause_key(static_cast<ball::Factor>(second)))},
                      {"part", words::quantity(measure, best, w)},
                      {"otherpart", words::quantity(measure, next, w)},
                      {"change", words::quantity(measure, std::abs(change), w)}});
    if (part > 1.1) // more than all of it: say which way it went in the end
        return w.say("why.credit.more",
                     {{"noun", w.say("noun." + key_of(measure))},
                      {"cause", w.say(cause_key(static_cast<ball::Factor>(largest)))},
                      {"part", words::quantity(measure, best, w)},
                      {"change", words::difference(measure, change, w)}});
    return w.say(part > 0.97  ? "why.credit.all"
                 : part > 0.9 ? "why.credit.nearly"
                 : part > 0.5 ? "why.credit.most"
                              : "why.credit.largest",
                 {{"noun", w.say("noun." + key_of(measure))},
                  {"cause", w.say(cause_key(static_cast<ball::Factor>(largest)))},
                  {"part", words::quantity(measure, best, w)},
                  {"change", words::quantity(measure, std::abs(change), w)}});
}

namespace {

/// The shots do not carry more than tens of a percent.
std::string share_of_rest(const std::string& key, double share, const words::Speaker& w) {
    const double tens = std::round(share * 10) * 10;
    if (tens >= 100) return w.say(key + "-all");
    return w.say(key + "-first", {{"part", words::fixed(tens, 0, w.language()) +
                                               std::string(words::no_break_space) + "%"}});
}

} // namespace

std::string next_sentence(const BallStory& ball, const words::Speaker& w) {
    if (!ball.next || few_shots(ball)) return {};
    using ball::NextStep;
    std::string out;
    switch (ball.next->step) {
    case NextStep::mostly_face:
        out = share_of_rest("next.face", ball.next->face, w);
        break;
    case NextStep::mostly_path:
        out = share_of_rest("next.path", ball.next->path, w);
        break;
    case NextStep::both:
        out = w.say("next.even");
        break;
    case NextStep::little_left:
        out = w.say("why.next.little");
        break;
    }
    return out + " " + w.say("next.coach");
}

std::string loft_sentence(const BallStory& ball, const words::Speaker& w) {
    if (!ball.lean || !leans(ball)) return {};
    std::string out;
    for (const auto& named : named_blocks(ball, w))
        if (named.block->club_loft)
            out += w.say("why.loft.met",
                         {{"name", named.name},
                          {"loft", words::quantity(Measure::loft,
                                                   named.block->loft.loft.value.value, w)}}) +
                   " ";
    return out + w.say(ball.lean->value > 0 ? "why.lean" : "why.lean.back",
                       {{"x", words::quantity(Measure::loft, std::abs(ball.lean->value), w)}});
}

std::vector<std::string> origin_notes(const figure::Easel& easel, const Story& story) {
    const auto& w = easel.words;
    const BallStory& ball = *story.ball;
    std::vector<std::string> out;
    if (ball.before.middle.path || ball.after.middle.path) out.push_back(share_note(ball, w));
    if (const auto scatter = scatter_input(easel, story))
        if (const auto step = figure::curve_step(easel, *scatter))
            out.push_back(
                w.say("why.curve-lines", {{"x", words::quantity(Measure::curve, *step, w)}}));
    for (const auto& named : named_blocks(ball, w))
        add_estimates(out, named, w);
    if (flight_is_drawn(ball)) {
        out.push_back(w.say(landings_measured(ball) ? "why.lines.measured" : "why.lines.model"));
        out.push_back(air_note(story, w));
    }
    return out;
}

} // namespace page
