#include "report/tell_ball.hpp"

#include "report/tell_ball_block.hpp"
#include "report/tell_ball_club.hpp"

#include "ball/opening.hpp"
#include "measure/change.hpp"
#include "page/why_inputs.hpp"

#include <algorithm>
#include <cmath>

namespace report {

namespace {

using page::BallBlock;
using page::BallStory;
using page::ShareSource;

constexpr double celsius_zero = 273.15; // K, exact by definition
constexpr double most_lean = 15;        // degrees; our own choice, no source
/// Middle of the published range of horizontal face shares (0.61 to 0.83), where nothing of the
/// lesson itself gives a share.
constexpr double middle_share = (ball::least_published_share + ball::most_published_share) / 2;

BallBlock block_of(const std::vector<Seen>& seen, const BallStory& ball) {
    BallBlock block;
    block.shots = seen.size();
    if (seen.empty()) return block;
    const Seen middle = middle_of(seen);
    block.middle = middle.shot;
    block.start = middle.shot.start;
    block.loft = loft_of(middle, ball);
    block.delivery = delivery_of(middle, ball);
    block.typical = flight_of(middle, ball);
    for (const Seen& s : seen)
        if (auto flight = flight_of(s, ball)) block.flights.push_back(std::move(*flight));
    return block;
}

const BallBlock& reference(const BallStory& ball) {
    return ball.after.shots > 0 ? ball.after : ball.before;
}

/// The lean of a square strike, from one block; see tell_ball().
void find_lean(BallStory& ball) {
    const BallBlock& from = reference(ball);
    if (!ball.club || from.loft.origin == ball::LoftOrigin::unknown || !from.middle.face) return;
    const auto added = ball::loft_added({ball.club->loft, ball.club->lie, {}}, *from.middle.face);
    const auto lean = ball.club->loft - (from.loft.loft.value - added);
    if (std::abs(lean.value) <= most_lean) ball.lean = lean;
}

/// Only lofts of one origin are compared: an estimate beside a measurement is no difference.
void compare_with_bag(BallStory& ball) {
    find_lean(ball);
    if (!ball.lean) return;
    const auto origin = reference(ball).loft.origin;
    for (BallBlock* block : {&ball.before, &ball.after, &ball.cold}) {
        if (block->shots == 0 || block->loft.origin != origin) continue;
        block->club_loft = block->loft.loft.value + *ball.lean;
        block->plays_like = ball::plays_like(*block->club_loft, ball.bag);
    }
}

void give_credit(BallStory& ball, const std::vector<Seen>& before, const std::vector<Seen>& after) {
    const auto& from = reference(ball);
    ball::Setting setting{ball.head, ball.air, {}, {}};
    if (from.delivery)
        setting.loft = from.delivery->loft;
    else if (ball.club)
        setting.loft = ball.club->loft;
    else if (from.middle.loft)
        setting.loft = *from.middle.loft;
    else
        return;
    setting.attack = usual_attack(ball.club ? ball.club->loft : setting.loft);
    ball.credit = ball::credit(ball_shots(before), ball_shots(after), setting);
}

void find_share(BallStory& ball) {
    ball.face_share = middle_share;
    if (ball.credit) {
        ball.face_share = ball.credit->face_share;
        const auto origin = ball.credit->share_origin;
        ball.share_source = origin == ball::ShareOrigin::fitted  ? ShareSource::fitted
                            : origin == ball::ShareOrigin::given ? ShareSource::given
                                                                 : ShareSource::geometry;
    } else if (const auto& d = reference(ball).delivery) {
        ball.face_share = ball::horizontal_share(*d, ball.head);
        ball.share_source = ball.head.face_share ? ShareSource::given : ShareSource::geometry;
    }
    if (ball.head.face_share) ball.share_from = ball.head.face_share->source;
}

/// What the table does not have: the start direction from face and path, face and path from it.
void estimate_missing(BallBlock& block, const BallStory& ball) {
    const auto &face = block.middle.face, &path = block.middle.path;
    if (!block.start && face && path) {
        const auto start = [&](double share) { return *path + (*face - *path) * share; };
        const auto a = start(ball::least_published_share), b = start(ball::most_published_share);
        const auto value = start(ball.face_share);
        block.start = value;
        block.start_estimated = true;
        block.start_range = {value, std::min({a, b, value}), std::max({a, b, value})};
    }
    if (face || !block.middle.start) return;
    if (path) {
        block.face_estimate = ball::face_from_start(*block.start, *path, ball.face_share);
        return;
    }
    if (!block.middle.curve || block.loft.origin == ball::LoftOrigin::unknown || !ball.club) return;
    ball::Delivery d{{}, {}, usual_attack(ball.club->loft), block.loft.loft.value, {}};
    if (block.middle.attack) d.attack = *block.middle.attack;
    if (block.middle.club_speed)
        d.club_speed = *block.middle.club_speed;
    else if (block.middle.ball_speed)
        d.club_speed = ball::club_speed_for(*block.middle.ball_speed, d, ball.head);
    else
        return;
    if (const auto both =
            ball::face_and_path(*block.start, *block.middle.curve, d, ball.head, ball.air)) {
        block.face_estimate = both->face;
        block.path_estimate = both->path;
    }
}

/// The wanted value nearest to the target line.
unit::Degrees wanted(const record::Lesson& lesson, unit::Measure measure) {
    if (!lesson.aim || lesson.aim->measure.value != measure) return {};
    return {std::clamp(0.0, lesson.aim->least, lesson.aim->most)};
}

void look_ahead(BallStory& ball, const record::Lesson& lesson) {
    const auto& d = reference(ball).delivery;
    if (!d) return;
    const auto curve = [&](double open) {
        ball::Delivery other = *d;
        other.path = other.face - unit::Degrees{open};
        return ball::fly(ball::strike(other, ball.head), ball.air, ball::coarse_step);
    };
    const auto left = curve(-1), right = curve(1);
    if (left.below_range || right.below_range) return;
    ball.curve_per_degree = (right.curve - left.curve).value / 2;
    ball.next = ball::what_next(*d, ball.head, ball.air, wanted(lesson, unit::Measure::face),
                                wanted(lesson, unit::Measure::path));
}

/// The change that is shared out is the typical shift that the table of evidence prints, so that a
/// sheet knows one number; what the model does not give of it is the rest.
void share_out_the_shift(ball::Credit& credit, const std::vector<page::Evidence>& evidence) {
    for (std::size_t o = 0; o < ball::outcome_count; ++o) {
        ball::OutcomeCredit& c = credit.outcomes[o];
        const auto e = std::ranges::find(evidence, page::measure_of(static_cast<ball::Outcome>(o)),
                                         &page::Evidence::measure);
        if (!c.measured || e == evidence.end() || e->estimated) continue;
        const double more = e->change.shift.value - c.measured->value;
        for (auto* part : {&c.measured, &c.rest})
            if (*part) {
                (*part)->value += more;
                if ((*part)->range) (*part)->range->lower += more, (*part)->range->upper += more;
            }
        if (c.rest) c.fits = std::abs(c.rest->value) <= std::abs(c.measured->value) / 2;
    }
}

} // namespace

unit::Degrees usual_attack(unit::Degrees loft) {
    return {-4 * std::clamp((loft.value - 10.5) / (32 - 10.5), 0.0, 1.0)};
}

void tell_ball(page::Story& story, std::span<const drills::TypicalClub> clubs,
               const words::Speaker* speaker) {
    if (!story.table) return;
    const auto before = counted_shots(*story.table, shots::Block::before),
               after = counted_shots(*story.table, shots::Block::after),
               cold = counted_shots(*story.table, shots::Block::cold);
    if (before.empty() && after.empty() && cold.empty()) return;
    BallStory ball;
    choose_club(ball, story.lesson, clubs, speaker);
    const auto& conditions = story.lesson.conditions;
    if (conditions.height) ball.air.height = *conditions.height;
    if (conditions.celsius) ball.air.temperature = unit::Kelvin{*conditions.celsius + celsius_zero};
    ball.air.pressure = conditions.pressure;
    if (conditions.wind) ball.air.wind = {conditions.wind->along, conditions.wind->across};
    ball.before = block_of(before, ball);
    ball.after = block_of(after, ball);
    ball.cold = block_of(cold, ball);
    compare_with_bag(ball);
    // two set-ups or clubs are not compared, so nothing of their difference is shared out; nor is
    // the difference of a first look
    if (conditions.same_set_up && shots::clubs_compared(*story.table).size() <= 1 &&
        std::min(before.size(), after.size()) >= measure::shots_for_probably)
        give_credit(ball, before, after);
    if (ball.credit) share_out_the_shift(*ball.credit, story.evidence);
    find_share(ball);
    for (BallBlock* block : {&ball.before, &ball.after, &ball.cold})
        estimate_missing(*block, ball);
    look_ahead(ball, story.lesson);
    story.ball = std::move(ball);
}

} // namespace report
