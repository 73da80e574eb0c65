#include "page/why_inputs.hpp"

#include "page/why_words.hpp"

#include "page/verdict.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace page {

namespace {

using unit::Measure;

/// Half the last digit that a page shows of the outcome, in SI or degrees.
double least_way_shown(ball::Outcome outcome) {
    return outcome == ball::Outcome::start ? 0.05 : 0.5 * unit::metres_in_a_yard;
}

/// A bar without length and without uncertainty would be an empty row.
bool shows_nothing(const ball::Part& part, double least) {
    return std::abs(part.value) < least && (!part.range || (std::abs(part.range->lower) < least &&
                                                            std::abs(part.range->upper) < least));
}

/// A change below these is too small to share out. Our own choice, no source.
constexpr double least_turn = 0.5; // degrees
constexpr double least_way = 1.5;  // metres

const Evidence* find(const Story& story, Measure measure) {
    const auto found = std::ranges::find(story.evidence, measure, &Evidence::measure);
    return found == story.evidence.end() ? nullptr : &*found;
}

figure::ScatterRow scatter_row(figure::Symbol symbol, std::string name,
                               const std::vector<shots::Shot>& shots) {
    figure::ScatterRow row{symbol, std::move(name), {}, 0, 0};
    std::vector<double> faces, paths;
    for (const auto& shot : shots) {
        const auto face = shot[Measure::face], path = shot[Measure::path];
        if (!face || !path) continue;
        row.shots.push_back({*face, *path, !shot.set_aside.empty()});
        if (!shot.set_aside.empty()) continue;
        faces.push_back(*face);
        paths.push_back(*path);
    }
    row.face = measure::describe(faces).median;
    row.path = measure::describe(paths).median;
    return row;
}

/// Axes wide enough that the words in the corners stay clear of the shots; 0 leaves it to the
/// figure.
double reach_of(const figure::ScatterInput& input) {
    constexpr double roomy = 12; // degrees
    for (const auto& row : input.rows)
        for (const auto& shot : row.shots)
            if (!shot.set_aside && std::max(std::abs(shot.face), std::abs(shot.path)) > roomy - 2)
                return 0;
    return roomy;
}

std::optional<double> number(const std::optional<unit::Degrees>& angle) {
    return angle ? std::optional(angle->value) : std::nullopt;
}

figure::FlightLine line_of(const DrawnFlight& flight) {
    figure::FlightLine out;
    for (const auto& place : flight.line)
        out.push_back({place.along.value, place.right.value, place.up.value});
    return out;
}

std::string ladder_alt(const BallStory& ball, const words::Speaker& w) {
    std::string out;
    for (const auto& named : named_blocks(ball, w))
        if (named.block->club_loft)
            out +=
                (out.empty() ? "" : " ") +
                w.say("why.alt.loft",
                      {{"name", named.name},
                       {"loft", words::quantity(Measure::loft, named.block->club_loft->value, w)}});
    return out;
}

} // namespace

std::vector<NamedBlock> named_blocks(const BallStory& ball, const words::Speaker& words) {
    std::vector<NamedBlock> out;
    const auto add = [&](figure::Symbol symbol, const char* key, const BallBlock& block) {
        if (block.shots > 0) out.push_back({symbol, words.say(key), &block});
    };
    // in the order of the lesson, so that a picture draws the cold test under what followed it
    add(figure::Symbol::cold, "figure.cold", ball.cold);
    add(figure::Symbol::before, "figure.before", ball.before);
    add(figure::Symbol::after, "figure.after", ball.after);
    return out;
}

std::optional<figure::ScatterInput> scatter_input(const figure::Easel& easel, const Story& story) {
    const Evidence *face = find(story, Measure::face), *path = find(story, Measure::path);
    if (!face || !path) return std::nullopt;
    figure::ScatterInput input;
    const auto& w = easel.words;
    const auto add = [&](figure::Symbol symbol, const char* key,
                         const std::vector<shots::Shot>& shots) {
        auto row = scatter_row(symbol, w.say(key), shots);
        if (!row.shots.empty()) input.rows.push_back(std::move(row));
    };
    add(figure::Symbol::cold, "figure.cold", face->cold);
    add(figure::Symbol::before, "figure.before", face->before);
    add(figure::Symbol::after, "figure.after", face->after);
    if (input.rows.empty()) return std::nullopt;
    input.reach = reach_of(input);
    if (story.ball) {
        input.face_share = story.ball->face_share;
        input.curve_per_degree = story.ball->curve_per_degree;
    }
    if (face->is_aim && story.lesson.aim)
        input.wanted = {story.lesson.aim->least, story.lesson.aim->most};
    for (const auto& row : input.rows)
        input.message +=
            (input.message.empty() ? "" : " ") +
            w.say("why.alt.impact", {{"name", row.name},
                                     {"face", words::side(Measure::face, row.face, w)},
                                     {"path", words::side(Measure::path, row.path, w)}});
    return input;
}

std::optional<figure::ImpactInput> impact_input(const figure::Easel& easel, const Story& story) {
    if (!story.ball) return std::nullopt;
    figure::ImpactInput input;
    const auto& w = easel.words;
    for (const auto& named : named_blocks(*story.ball, w)) {
        if (named.symbol == figure::Symbol::cold) continue;
        const BallBlock& b = *named.block;
        figure::Impact state{
            named.symbol, named.name, number(b.middle.face), number(b.middle.path), number(b.start),
            false,        false,      b.start_estimated};
        if (!state.face && b.face_estimate)
            state.face = b.face_estimate->value.value, state.face_estimated = true;
        if (!state.path && b.path_estimate)
            state.path = b.path_estimate->value.value, state.path_estimated = true;
        if (!state.face && !state.path && !state.start) continue;
        std::string said = named.name;
        if (state.face) said += ", " + words::side(Measure::face, *state.face, w);
        if (state.start)
            said += ", " + w.say("noun.start") + " " + words::side(Measure::start, *state.start, w);
        input.message += (input.message.empty() ? "" : " ") + said + ".";
        input.states.push_back(std::move(state));
    }
    if (input.states.empty()) return std::nullopt;
    return input;
}

std::string club_name(const NamedClub& club, const words::Speaker& words) {
    const std::string key = "club." + club.name;
    return club.typical && words.has(key) ? words.say(key) : club.name;
}

std::optional<figure::LadderInput> ladder_input(const figure::Easel& easel, const Story& story) {
    if (!story.ball || !story.ball->lean || story.ball->bag.size() < 2) return std::nullopt;
    const BallStory& ball = *story.ball;
    figure::LadderInput input{{}, {}, ball.usual_bag, ladder_alt(ball, easel.words)};
    for (std::size_t i = 0; i < ball.bag.size(); ++i)
        input.rungs.push_back(
            {club_name(ball.names[i], easel.words), ball.bag[i].loft.value, i == ball.in_hand});
    const bool leaned = leans(ball);
    for (const auto& named : named_blocks(ball, easel.words)) {
        const BallBlock& b = *named.block;
        if (!b.club_loft || !b.plays_like) continue;
        figure::LoftMark mark{
            named.symbol,
            leaned ? easel.words.say("why.loft.as-if", {{"name", named.name}}) : named.name,
            b.club_loft->value,
            b.loft.origin == ball::LoftOrigin::measured && leaned ? figure::LoftOrigin::leaned
            : b.loft.origin == ball::LoftOrigin::measured         ? figure::LoftOrigin::measured
            : b.loft.origin == ball::LoftOrigin::from_launch      ? figure::LoftOrigin::launch
                                                                  : figure::LoftOrigin::face,
            {}};
        if (!b.plays_like->beyond) {
            mark.plays_like.push_back(club_name(ball.names[b.plays_like->lower], easel.words));
            if (b.plays_like->between())
                mark.plays_like.push_back(club_name(ball.names[b.plays_like->upper], easel.words));
        }
        input.marks.push_back(std::move(mark));
    }
    if (input.marks.empty()) return std::nullopt;
    return input;
}

bool few_shots(const BallStory& ball) {
    return std::min(ball.before.shots, ball.after.shots) < measure::shots_for_probably;
}

bool leans(const BallStory& ball) { return ball.lean && std::abs(ball.lean->value) >= 0.05; }

bool flight_is_drawn(const BallStory& ball) {
    return ball.before.typical || ball.after.typical || ball.cold.typical;
}

bool landings_measured(const BallStory& ball) {
    for (const BallBlock* block : {&ball.before, &ball.after, &ball.cold}) {
        if (block->typical && !block->typical->landing_measured) return false;
        if (!std::ranges::all_of(block->flights, &DrawnFlight::landing_measured)) return false;
    }
    return true;
}

std::optional<figure::FlightInput> flight_input(const figure::Easel& easel, const Story& story) {
    if (!story.ball || !flight_is_drawn(*story.ball)) return std::nullopt;
    figure::FlightInput input;
    const auto& w = easel.words;
    for (const auto& named : named_blocks(*story.ball, w)) {
        const BallBlock& b = *named.block;
        figure::FlightRow row{named.symbol, named.name, {}, {}, false};
        for (const auto& flight : b.flights)
            row.shots.push_back(line_of(flight));
        if (b.typical) {
            row.typical = line_of(*b.typical);
            row.estimated = !b.typical->landing_measured;
            const auto& end = row.typical.back();
            input.message += (input.message.empty() ? "" : " ") +
                             w.say("why.alt.flight",
                                   {{"name", named.name},
                                    {"carry", words::quantity(Measure::carry,
                                                              std::hypot(end.along, end.right), w)},
                                    {"offline", words::side(Measure::offline, end.right, w)}});
        }
        if (!row.shots.empty() || !row.typical.empty()) input.rows.push_back(std::move(row));
    }
    return input;
}

unit::Measure measure_of(ball::Outcome outcome) {
    constexpr std::array<Measure, ball::outcome_count> measures{Measure::start, Measure::curve,
                                                                Measure::carry, Measure::offline};
    return measures[static_cast<std::size_t>(outcome)];
}

std::vector<ball::Outcome> credited(const Story& story) {
    std::vector<ball::Outcome> out;
    if (!story.ball || !story.ball->credit || few_shots(*story.ball)) return out;
    for (const auto outcome : {ball::Outcome::start, ball::Outcome::carry, ball::Outcome::curve,
                               ball::Outcome::offline}) {
        const auto& told = (*story.ball->credit)[outcome];
        const double least = outcome == ball::Outcome::start ? least_turn : least_way;
        if (told.measured && told.modelled && std::abs(told.measured->value) >= least)
            out.push_back(outcome);
    }
    return out;
}

figure::CreditInput credit_input(const figure::Easel& easel, const ball::Credit& credit,
                                 ball::Outcome outcome) {
    const auto& told = credit[outcome];
    figure::CreditInput input{.outcome = measure_of(outcome)};
    std::string shares;
    const auto& w = easel.words;
    for (std::size_t i = 0; i < ball::factor_count; ++i) {
        if (!told.shares[i] || shows_nothing(*told.shares[i], least_way_shown(outcome))) continue;
        const auto factor = static_cast<ball::Factor>(i);
        figure::CreditShare share{static_cast<figure::Factor>(i), told.shares[i]->value, {}};
        if (const auto& range = told.shares[i]->range) share.range = {range->lower, range->upper};
        shares += (shares.empty() ? "" : " ") +
                  w.say("why.credit.alt.share",
                        {{"cause", w.say(cause_key(factor))},
                         {"part", words::difference(input.outcome, share.value, w)}});
        input.shares.push_back(share);
    }
    input.measured = told.measured->value;
    input.unexplained = told.rest ? told.rest->value : 0;
    input.fits = told.fits.value_or(true);
    input.message =
        w.say("why.credit.alt", {{"noun", w.say("noun." + key_of(input.outcome))},
                                 {"change", words::difference(input.outcome, input.measured, w)},
                                 {"shares", shares}});
    return input;
}

} // namespace page
