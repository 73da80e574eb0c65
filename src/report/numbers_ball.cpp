#include "page/why_inputs.hpp"
#include "report/numbers_rows.hpp"

#include <array>

namespace report {

namespace {

using page::BallBlock;
using page::BallStory;
using unit::Measure;

const char* origin_of(ball::LoftOrigin origin) {
    constexpr std::array<const char*, 4> names{"measured", "estimated from launch",
                                               "estimated from the face", "unknown"};
    return names[static_cast<std::size_t>(origin)];
}

void add_estimate(Rows& rows, const char* what, const std::string& block, Measure measure,
                  const ball::Estimate& estimate, const char* origin) {
    rows.add(what, block, measure, estimate.value.value, origin);
    rows.range(measure, estimate.lower.value, estimate.upper.value);
}

void add_loft(Rows& rows, const BallStory& ball, const std::string& block, const BallBlock& b,
              const words::Speaker& speaker) {
    if (b.loft.origin == ball::LoftOrigin::unknown) return;
    const char* origin = origin_of(b.loft.origin);
    rows.add("effective loft", block, Measure::loft, b.loft.loft.value.value, origin);
    if (b.loft.origin == ball::LoftOrigin::from_launch)
        rows.range(Measure::loft, b.loft.loft.lower.value, b.loft.loft.upper.value);
    if (!b.club_loft) return;
    rows.add("plays like: loft", block, Measure::loft, b.club_loft->value, origin);
    if (!b.plays_like) return;
    std::string clubs = page::club_name(ball.names[b.plays_like->lower], speaker);
    if (b.plays_like->between())
        clubs = speaker.say(
            "join.and", {{"first", clubs},
                         {"second", page::club_name(ball.names[b.plays_like->upper], speaker)}});
    rows.plain("plays like: place in the bag", block, b.plays_like->rung,
               b.plays_like->beyond ? "beyond the bag" : origin)
        .text = clubs;
}

void add_flight(Rows& rows, const std::string& block, const BallBlock& b) {
    if (!b.typical) return;
    const ball::Flight& f = b.typical->model;
    const auto add = [&](const char* what, Measure measure, double value) {
        rows.add(std::string("flight of the middle shot: ") + what, block, measure, value, "model");
    };
    add("carry", Measure::carry, f.carry.value);
    add("offline", Measure::offline, f.offline.value);
    add("curve", Measure::curve, f.curve.value);
    add("apex", Measure::apex, f.apex.value);
    add("landing", Measure::landing, f.landing.value);
    rows.with_unit("flight of the middle shot: time", block, f.time.value, "s", "model");
}

void add_block(Rows& rows, const BallStory& ball, const std::string& block, const BallBlock& b,
               const words::Speaker& speaker) {
    if (b.shots == 0) return;
    if (b.face_estimate)
        add_estimate(rows, "face", block, Measure::face, *b.face_estimate,
                     b.path_estimate ? "estimated from start direction and curve"
                                     : "estimated from start direction and path");
    if (b.path_estimate)
        add_estimate(rows, "path", block, Measure::path, *b.path_estimate,
                     "estimated from start direction and curve");
    if (b.start_range)
        add_estimate(rows, "start", block, Measure::start, *b.start_range,
                     "estimated from face and path");
    add_loft(rows, ball, block, b, speaker);
    add_flight(rows, block, b);
}

void add_credit(Rows& rows, const ball::Credit& credit) {
    constexpr std::array<const char*, ball::factor_count> factors{"face", "path", "effective loft",
                                                                  "speed", "strike"};
    for (std::size_t o = 0; o < ball::outcome_count; ++o) {
        const auto& told = credit.outcomes[o];
        const Measure measure = page::measure_of(static_cast<ball::Outcome>(o));
        const std::string name = "credit, " + std::string(unit::row(measure).key) + ": ";
        const auto add = [&](const std::string& what, const std::optional<ball::Part>& part,
                             const char* origin) {
            if (!part) return;
            rows.add(name + what, "change", measure, part->value, origin);
            if (part->range) rows.range(measure, part->range->lower, part->range->upper);
        };
        add("measured", told.measured, "typical shift; range 80 %, resampled");
        add("modelled", told.modelled, "model; range 80 %, resampled");
        for (std::size_t f = 0; f < ball::factor_count; ++f)
            add(factors[f], told.shares[f], "model; range 80 %, resampled");
        add("not explained", told.rest, "measured less modelled; range 80 %, resampled");
        if (told.fits)
            rows.plain(name + "model fits", "change", *told.fits ? 1 : 0, "rule").text =
                *told.fits ? "yes" : "no";
    }
}

void add_share(Rows& rows, const BallStory& ball) {
    constexpr std::array<const char*, 4> sources{"middle of the published 0.61 to 0.83",
                                                 "geometry of the impact", "fitted to these shots",
                                                 "given"};
    rows.plain("face share of the start direction", "after", ball.face_share,
               sources[static_cast<std::size_t>(ball.share_source)])
        .text = ball.share_from;
    if (ball.curve_per_degree)
        rows.add("curve for a degree of face to path", "after", Measure::curve,
                 *ball.curve_per_degree, "model");
}

void add_next(Rows& rows, const ball::Remaining& next) {
    constexpr std::array<const char*, 4> steps{"mostly face", "mostly path", "both", "little left"};
    rows.add("what is left: miss", "after", Measure::offline, next.miss.value, "model");
    rows.add("what is left: from the start line", "after", Measure::offline, next.start.value,
             "model");
    rows.add("what is left: curve", "after", Measure::curve, next.curve.value, "model");
    rows.plain("what is left: part of the face", "after", next.face, "model");
    rows.plain("what is left: part of the path", "after", next.path, "model");
    rows.plain("what is left: next step", "after", static_cast<double>(next.step), "rule").text =
        steps[static_cast<std::size_t>(next.step)];
}

} // namespace

void add_ball(Rows& rows, const BallStory& ball, const words::Speaker& speaker) {
    add_block(rows, ball, "before", ball.before, speaker);
    add_block(rows, ball, "after", ball.after, speaker);
    add_block(rows, ball, "cold", ball.cold, speaker);
    if (ball.lean)
        rows.add("lean of a square strike", "", Measure::loft, ball.lean->value, "derived");
    add_share(rows, ball);
    if (ball.credit) add_credit(rows, *ball.credit);
    if (ball.next) add_next(rows, *ball.next);
}

} // namespace report
