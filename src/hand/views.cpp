// The views: where the eye is, what the window shows, what can be called out.
#include "hand/club.hpp"
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

Picture golfers_eye(const Pose& pose, Limbs l) {
    const double k = scale_of(l), end = 164 * k;
    end_handle(l, end);
    Shot shot{{&l}, players_camera(), {}, 64 * k, 129 * k, 50 * k, end, pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{112, 12, 0} * k);
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {!shot.glove, true, true, true, false});
    if (shot.glove) add_glove_lines(plate, l);
    add_club(plate, k, pose.wish().face_degrees);
    const auto views = knuckle_views(l);
    int n = 0;
    constexpr std::array<const char*, fingers> names{"knuckle 1", "knuckle 2", "knuckle 3",
                                                     "knuckle 4"};
    for (int f = 0; f < fingers; ++f) {
        if (views[f].share >= knuckle_share) plate.anchor(names[n++], plate.page(l, views[f].at));
    }
    const Crease v = v_crease(l);
    plate.anchor("V fork", plate.page(l, v.fork));
    plate.anchor("V end", plate.page(l, v.end));
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
    Limbs l = pose.fingers_first();
    const double k = scale_of(l), end = 130 * k;
    end_handle(l, end);
    Shot shot{{&l},   Camera::looking({-.25, -1, .25}, ez),
              {},     92 * k,
              86 * k, 40 * k,
              end,    pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{58, 0, 14} * k);
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {!shot.glove, true, false, false, false});
    if (shot.glove) add_glove_lines(plate, l);
    plate.anchor("heel pad", plate.page(l, l.body.at(-26, 40, -20)));
    plate.anchor("finger", plate.page(l, l.finger[ring_finger].joint[2]));
    return plate.take();
}

Outline circle(Dot at, double r) {
    Polyline p;
    for (int i = 0; i < 40; ++i) {
        const double a = in_radians(9.0 * i);
        p.push_back({at.x + r * std::cos(a), at.y + r * std::sin(a)});
    }
    return fitted(p, .03, true);
}

/// A ring and the vent hole on the end of the handle.
void add_butt_cap(Plate& plate, const Limbs& l) {
    const Dot c = plate.page(l, l.handle.butt);
    const double r = l.handle.radius;
    plate.add(Area{{circle(c, r * .80)}, Tone::handle_light});
    plate.add(Line{circle(c, r * .80), Pen::detail, false, false});
    plate.add(Area{{circle(c, r * .13)}, Tone::handle_shade});
    plate.add(Line{circle(c, r * .13), Pen::detail, false, false});
}

/// The room between handle and pad as a dark crescent, as wide as the gap that was measured.
void add_gap(Plate& plate, const Limbs& l, const ButtContact& contact) {
    constexpr double half = 58; // degrees to either side
    const Vec middle = l.handle.butt;
    Polyline ring, outer;
    for (int i = -12; i <= 12; ++i) {
        const Vec out = unit_vector(flank(l, 0, contact.angle + half * i / 12) - middle);
        const double room = contact.gap * std::cos(std::numbers::pi / 2 * i / 12);
        ring.push_back(plate.page(l, middle + out * l.handle.radius));
        outer.push_back(plate.page(l, middle + out * (l.handle.radius + room)));
    }
    ring.insert(ring.end(), outer.rbegin(), outer.rend());
    plate.add(Area{{fitted(ring, .05, true)}, Tone::handle_shade});
    plate.add(Line{fitted(outer, .05, false), Pen::inner, true, true});
}

Picture butt_end(const Pose& pose) {
    Hold h = pose.hold();
    h.forearm = {-.35, .45, .85};
    Limbs l = solve(pose.lead().body, h);
    const double k = scale_of(l);
    Shot shot{
        {&l}, Camera::looking({-1, 0, 0}, ez), {}, 62 * k, 66 * k, 30 * k, 999, pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{0, 6, 9} * k);
    shot.shade = false; // outlines and the crescent say it all
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {!shot.glove, true, false, false, false});
    if (shot.glove) add_glove_lines(plate, l);
    add_butt_cap(plate, l);
    const ButtContact c = butt_contact(l);
    if (c.gap > 1.5) add_gap(plate, l, c);
    const double s = l.handle.station(l.knuckle[little_finger]) - 12;
    plate.anchor("gap", plate.page(l, flank(l, s, c.angle)));
    const Vec out = flank(l, s, c.angle) - l.handle.butt - l.handle.along * s;
    plate.anchor("heel pad", plate.page(l, flank(l, s, c.angle) + unit_vector(out) * (c.gap + 8)));
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
              90 * k, 30 * k,
              end,    pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{66, 0, 0} * k);
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    add_skin_lines(plate, l, {!shot.glove, true, false, false, false});
    plate.anchor("finger", plate.page(l, l.finger[index_finger].joint[2]));
    plate.anchor("heel pad", plate.page(l, l.body.at(-28, 42, -16)));
    plate.anchor("balance point", plate.handle_point(pose.balance().finger_station));
    plate.anchor("weight", plate.handle_point(end - 6 * k));
    return plate.take();
}

Picture both_hands(const Pose& pose, bool front) {
    auto [lead, trail] = pose.both_hands();
    const double k = scale_of(lead), end = 224 * k;
    end_handle(lead, end);
    Shot shot{{&lead, &trail}, players_camera(), {},  84 * k,
              130 * k,         60 * k,           end, pose.wish().glove};
    shot.centre = plane(shot.camera, Vec{118, 0, 0} * k);
    if (front) {
        shot.camera = Camera::looking({.35, .80, .30}, -ex);
        shot.centre = plane(shot.camera, Vec{100, 0, 0} * k);
    }
    Plate plate(shot);
    plate.add_areas();
    plate.add_lines();
    for (const Limbs* l : shot.hands) {
        add_skin_lines(plate, *l, {l == &trail || !shot.glove, true, true, !front, false});
    }
    if (shot.glove) add_glove_lines(plate, lead);
    plate.anchor("little finger", plate.page(trail, trail.finger[little_finger].joint[2]));
    plate.anchor("thumb tip", plate.page(trail, trail.thumb[3]));
    return plate.take();
}

} // namespace

Picture draw(const Pose& pose, View view) {
    switch (view) {
    case View::open_palm:
        return open_palm(pose);
    case View::fingers_first:
        return fingers_first(pose);
    case View::golfers_eye:
        return golfers_eye(pose, pose.lead());
    case View::butt_end:
        return butt_end(pose);
    case View::balance:
        return balance_view(pose);
    case View::joined:
        return both_hands(pose, false);
    case View::joined_front:
        return both_hands(pose, true);
    case View::thumb_short:
        return golfers_eye(pose, pose.with_thumb(.02));
    case View::thumb_long:
        return golfers_eye(pose, pose.with_thumb(.98));
    }
    return {};
}

Picture strip(double knuckles, Build build, bool glove) {
    Wish wish;
    wish.build = build;
    wish.glove = glove;
    wish.target.knuckles = knuckles;
    return golfers_eye(Pose(wish), Pose(wish).lead());
}

} // namespace hand
