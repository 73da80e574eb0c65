// The views: where the eye is, what the window shows, what can be called out.
#include "hand/butt.hpp"
#include "hand/club.hpp"
#include "hand/drafting.hpp"
#include "hand/pose.hpp"
#include "hand/skin.hpp"

namespace hand {
namespace {

/// Window sizes follow the build, so that a child's hand fills its picture.
double scale_of(const Limbs& l) { return l.body.across; }

/// Nothing may hide behind the end of the handle that has run out.
void end_handle(Limbs& l, double at) { l.handle.length = at + 3.5; }

Dot plane(const Camera& cam, Vec grip) {
    const Vec p = cam * grip;
    return {p.x, p.y};
}

/// Where the club goes on, until it is drawn; the way between them is the hand's size.
constexpr const char *club_from = "club from", *club_towards = "club towards";

enum class Reach : std::uint8_t { club, hand }; ///< how far the golfer's eye follows the handle

bool has_half(const Wish& wish) {
    const auto& counted = wish.seen.knuckles;
    return counted && std::floor(*counted) != *counted;
}

/// A knuckle that does not count makes no bump: a reader counts bumps.
void flatten(Limbs& l, const std::array<KnuckleView, fingers>& views) {
    for (int f = 0; f < fingers; ++f) {
        if (views[f].share >= knuckle_share) continue;
        Ray& ray = l.body.ray[f];
        const double by = l.body.wide(6);
        ray.cap_lift -= by;
        ray.head -= by / 2;
    }
}

Picture golfers_eye(const Pose& pose, Limbs l, Reach reach = Reach::club) {
    const double k = scale_of(l), end = 164 * k;
    end_handle(l, end);
    const auto views = knuckle_views(l);
    flatten(l, views);
    Shot shot{{&l}, players_camera(), {}, 58 * k, 124 * k, 50 * k, end, pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{115, 12, 0} * k);
    shot.looking_down = true;
    if (reach == Reach::hand) {
        shot.half_height = 90 * k;
        shot.centre = plane(shot.camera, Vec{80, 12, 0} * k);
    }
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {!shot.glove, true, true, true, false});
    if (shot.glove) add_glove_lines(plate, l);
    if (reach == Reach::club) {
        const Dot along = unit_vector(plate.handle_direction());
        const Dot from = plate.handle_point(plate.shot().handle_end) + along * (6 * k);
        plate.anchor(club_from, from);
        plate.anchor(club_towards, from + along * k);
    }
    const Dot middle =
        plate.page(l, lerp(l.body.ray[index_finger].base, l.knuckle[middle_finger], .45));
    int n = 0;
    constexpr std::array<const char*, fingers> names{"knuckle 1", "knuckle 2", "knuckle 3",
                                                     "knuckle 4"};
    for (int f = 0; f < fingers; ++f) {
        const bool half = has_half(pose.wish()) && std::abs(views[f].share - knuckle_share) < .06;
        if (views[f].share < knuckle_share && !half) continue;
        const Dot at = plate.page(l, views[f].at);
        plate.anchor(names[n++], at);
        if (pose.wish().seen.knuckles)
            add_tick(plate, at, unit_vector(at - middle), k, views[f].share < knuckle_share);
    }
    const Crease crease = v_crease(l);
    const Dot fork = plate.page(l, crease.fork), root = plate.page(l, crease.end);
    if (const auto v = pose.v_seen()) { // the butt is straight down the page
        const Dot way{std::sin(in_radians(*v)), std::cos(in_radians(*v))};
        add_arrow(plate, fork + way * (6 * k), fork + way * (length(root - fork) + 12 * k), k);
    }
    plate.anchor("V fork", fork);
    plate.anchor("V end", root);
    plate.anchor("thumb tip", plate.page(l, l.thumb[3] + l.thumb_up * l.body.thumb_radius[3]));
    return plate.take();
}

Picture open_palm(const Pose& pose) {
    Limbs l = pose.open_palm();
    const double k = scale_of(l), end = 138 * k;
    end_handle(l, end);
    Shot shot{{&l},    Camera::looking(l.direction(-ez), l.direction(ey)),
              {},      100 * k,
              112 * k, 26 * k,
              end,     pose.wish().glove};
    const Vec c = shot.camera * l.to_grip(l.body.at(20, 92, 0));
    shot.centre = {c.x, c.y};
    shot.cast = 6;
    shot.pixel = .58;
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {false, false, false, false, !shot.glove});
    if (shot.glove) add_glove_lines(plate, l);
    plate.anchor("handle line", plate.handle_point(70 * k));
    plate.anchor("heel pad", plate.page(l, l.body.at(-24, 34, -24)));
    plate.anchor("finger", plate.page(l, l.finger[middle_finger].joint[2]));
    return plate.take();
}

Picture fingers_first(const Pose& pose) {
    Limbs l = pose.first_half();
    const double k = scale_of(l), end = 130 * k;
    end_handle(l, end);
    Shot shot{{&l},   Camera::looking({.1, -1, .2}, ez),
              {},     96 * k,
              94 * k, 40 * k,
              end,    pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{68, 0, -10} * k);
    shot.pixel = .56;
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {!shot.glove, true, false, false, false});
    if (shot.glove) add_glove_lines(plate, l);
    const Dot pad = plate.page(l, l.body.at(-26, 40, -20));
    const double past = l.handle.radius + 2 * k, long_way = 24 * k; // what comes next
    if (pose.has_fingers_first()) {
        const Dot at = plate.handle_point(26 * k) - Dot{0, past};
        add_arrow(plate, at - Dot{0, long_way}, at, k);
    } else {
        const Dot at = plate.handle_point(54 * k) + Dot{0, past};
        add_arrow(plate, at + Dot{0, long_way}, at, k);
        hatch_pad_beside(plate, l, k);
    }
    plate.anchor("heel pad", pad);
    plate.anchor("finger", plate.page(l, l.finger[ring_finger].joint[2]));
    return plate.take();
}

Picture butt_end(const Pose& pose) {
    Hold h = pose.hold();
    h.forearm = {-.35, .45, .85};
    Limbs l = solve(pose.lead().body, h);
    const double k = scale_of(l);
    end_handle(l, 132 * k);
    // rolled so that the pad comes from above
    Shot shot{{&l},   Camera::looking({-1, -.40, .13}, rotated(ez, ex, -55)),
              {},     66 * k,
              64 * k, 26 * k,
              999,    pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{30, 6, 9} * k);
    shot.shade = false;            // outlines, hatch and gap say it all
    shot.least_hole = 330 * k * k; // the web of the thumb
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {!shot.glove, true, false, false, false});
    if (shot.glove) add_glove_lines(plate, l);
    const ButtContact c = butt_contact(l);
    const bool gap = has_gap(c);
    hatch_pad(plate, l, c, k);
    add_butt_cap(plate, l);
    if (gap)
        add_gap(plate, l, c);
    else
        add_contact(plate, l, c, k);
    const auto beside = [&](double degrees, double beyond) {
        const Vec at = flank(l, 0, c.angle + degrees);
        return plate.page(l, at + unit_vector(at - l.handle.butt) * beyond);
    };
    plate.anchor("gap", gap ? beside(0, c.gap * .5) : beside(0, 19 * k));
    plate.anchor("heel pad", beside(-38, (gap ? c.gap * .4 : 0) + 8 * k));
    plate.anchor("finger", plate.page(l, l.finger[little_finger].joint[1]));
    return plate.take();
}

/// The head end drops, the rod turns in the crook.
void tip_over(Limbs& l, double station, Vec up) {
    constexpr double drop = 11;
    const Vec pivot = l.handle.butt + l.handle.along * station;
    const Vec axis = l.grip.back(cross(up, ex));
    l.handle.along = rotated(l.handle.along, axis, drop);
    // Out of the pad it no longer lies under.
    l.handle.butt = pivot - l.handle.along * station + l.grip.back(cross(ex, up)) * 5;
}

Picture balance_view(const Pose& pose) {
    Limbs l = pose.one_finger();
    const double k = scale_of(l), end = 150 * k;
    end_handle(l, end);
    // Level, the ground down the page, seen from where the finger's tip shows.
    const double down = in_radians(pose.balance().down);
    const Vec up{0, -std::cos(down), -std::sin(down)}, eye = cross(ex, up);
    if (!pose.balance().rests) tip_over(l, pose.balance().finger_station, up);
    Shot shot{{&l},   Camera::looking(eye + up * .1, up),
              {},     106 * k,
              94 * k, 30 * k,
              end,    pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{66, 0, 0} * k - up * (6 * k));
    shot.pixel = .56;
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {!shot.glove, true, false, false, false});
    plate.anchor("finger", plate.page(l, l.finger[index_finger].joint[2]));
    plate.anchor("heel pad", plate.page(l, l.body.at(-28, 42, -16)));
    plate.anchor("balance point", plate.handle_point(pose.balance().finger_station));
    const Dot head = plate.handle_point(end - 8 * k), off{0, l.handle.radius + 3 * k};
    add_arrow(plate, head + off, head + off + Dot{0, 22 * k}, k); // the weight of the club
    const Dot hook = plate.handle_point(pose.balance().finger_station);
    if (pose.balance().rests) { // what holds it down, and what carries both
        const Dot pad = plate.handle_point(pose.balance().pad_station + 6 * k) - off;
        add_arrow(plate, pad - Dot{0, 22 * k}, pad, k);
        const Dot under = hook + Dot{0, l.handle.radius + 20 * k};
        add_arrow(plate, under + Dot{0, 22 * k}, under, k);
    } else { // how it would lie
        for (double x = hook.x + 24 * k; x < std::min(hook.x + 90 * k, 204 * k); x += 7 * k)
            plate.add(straight({x, hook.y}, {x + 4 * k, hook.y}, Pen::detail));
    }
    plate.anchor("weight", head);
    return plate.take();
}

Picture both_hands(const Pose& pose, bool front) {
    auto [lead, trail] = pose.both_hands();
    const double k = scale_of(lead), end = (front ? 222 : 238) * k;
    end_handle(lead, end);
    Shot shot{{&lead, &trail}, players_camera(), {},  84 * k,
              130 * k,         60 * k,           end, pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{118, 0, 0} * k);
    shot.pixel = .64;
    shot.looking_down = !front;
    if (front) {
        // From in front and below, where the fingers lie side by side. Before the trail forearm
        // comes out behind the lead hand it has run out.
        shot.arm_end = 40 * k;
        shot.camera = Camera::looking({.1, .55, -.8}, -ex);
        shot.centre = plane(shot.camera, Vec{100, 0, 0} * k);
    }
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    for (const Limbs* l : shot.hands) {
        add_skin_lines(plate, *l, {l == &trail || !shot.glove, true, true, !front, false});
    }
    if (shot.glove) add_glove_lines(plate, lead);
    const Vec little = trail.finger[little_finger].joint[2];
    const bool seen = plate.in_sight(shot.camera * trail.to_grip(little), 12 * k);
    plate.anchor("little finger",
                 seen ? plate.page(trail, little) : plate.page(lead, lead.knuckle[index_finger]));
    if (seen) plate.anchor("little finger in sight", plate.page(trail, little));
    plate.anchor("thumb tip", plate.page(trail, trail.thumb[3]));
    plate.anchor("lead thumb", plate.page(trail, lerp(trail.thumb[0], trail.thumb[1], .5)));
    return plate.take();
}

} // namespace

Picture draw_without_club(const Pose& pose) { return golfers_eye(pose, pose.lead()); }

Picture with_club(Picture hand, double face) {
    const auto place = [&](std::string_view name) {
        return std::ranges::find(hand.anchors, name, &Anchor::name)->at;
    };
    const Dot from = place(club_from), way = place(club_towards) - from;
    std::erase_if(hand.anchors,
                  [](const Anchor& a) { return a.name == club_from || a.name == club_towards; });
    add_club(hand, {from, unit_vector(way), length(way)}, face);
    return hand;
}

Picture draw(const Pose& pose, View view) {
    switch (view) {
    case View::open_palm:
        return open_palm(pose);
    case View::fingers_first:
        return fingers_first(pose);
    case View::golfers_eye:
        return with_club(draw_without_club(pose), pose.wish().face_degrees);
    case View::butt_end:
        return butt_end(pose);
    case View::balance:
        return balance_view(pose);
    case View::joined:
        return both_hands(pose, false);
    case View::joined_front:
        return both_hands(pose, true);
    case View::thumb_short:
        return golfers_eye(pose, pose.with_thumb(.02), Reach::hand);
    case View::thumb_long:
        return golfers_eye(pose, pose.with_thumb(.98), Reach::hand);
    case View::close_up:
        return golfers_eye(pose, pose.lead(), Reach::hand);
    }
    return {};
}

Picture strip(double knuckles, Build build, bool glove) {
    Wish wish;
    wish.build = build;
    wish.glove = glove;
    wish.seen.knuckles = knuckles;
    return draw(Pose(wish), View::close_up);
}

} // namespace hand
