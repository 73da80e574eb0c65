#include "hand/skin.hpp"

#include "hand/reading.hpp"

#include <tuple>

namespace hand {
namespace {

using Path = std::vector<Vec>;

class Inker {
  public:
    Inker(Plate& plate, const Limbs& limbs)
        : p_(plate)
        , l_(limbs)
        , cam_(plate.field().camera()) {}

    struct Style {
        double least = 2.2;  ///< shorter visible runs are dropped, millimetres
        double facing = .12; ///< normal towards the eye at least
        bool taper_start = true, taper_end = true;
        Pen pen = Pen::detail;
        bool dotted = false;
        bool whole = false; ///< one line at most: the longest run in sight
    };

    /// Newton steps onto the skin, then what is in sight. Whether a whole line was drawn.
    bool on_skin(const Path& path, const Style& style) {
        const Scene scene = p_.field().scene();
        std::vector<Vec> points;
        std::vector<bool> seen;
        for (const Vec& q : path) {
            Vec at = cam_ * l_.to_grip(q), n;
            for (int i = 0; i < 5; ++i) {
                n = skin_normal(scene, at);
                at = at - n * skin_distance(scene, at);
            }
            points.push_back(at);
            const double slope = p_.depth().pixel / std::max(n.z, .1); // of a steep place
            seen.push_back(n.z > style.facing && p_.in_sight(at, std::max(1.4, slope)));
        }
        return draw(points, seen, style);
    }

    /// Dropped on the palm along the hand's own normal.
    void on_palm(const Polyline& xy, const Style& style) {
        const Scene scene = p_.field().scene();
        const Vec d = cam_ * l_.direction(ez);
        std::vector<Vec> points;
        std::vector<bool> seen;
        for (const Dot q : xy) {
            Vec at = cam_ * l_.to_grip(l_.body.at(q.x, q.y, -48));
            for (int i = 0; i < 30; ++i)
                at = at + d * (.9 * skin_distance(scene, at));
            points.push_back(at);
            seen.push_back(p_.in_sight(at, 2.0));
        }
        draw(points, seen, style);
    }

  private:
    static double skin_distance(const Scene& s, Vec p) {
        return Scene{s.solids, nullptr}.distance(float(p.x), float(p.y), float(p.z));
    }
    static Vec skin_normal(const Scene& s, Vec p) { return Scene{s.solids, nullptr}.normal(p); }

    bool draw(const std::vector<Vec>& points, const std::vector<bool>& seen, const Style& style) {
        Polyline run, longest;
        bool cut_start = false;
        for (std::size_t i = 0; i <= points.size(); ++i) {
            if (i < points.size() && seen[i]) {
                if (run.empty()) cut_start = i > 0;
                run.push_back(p_.page(points[i]));
                continue;
            }
            if (style.whole && run.size() > longest.size()) longest = run;
            if (!style.whole && run.size() > 3) finish(run, style, cut_start, i < points.size());
            run.clear();
        }
        return longest.size() > 3 && finish(longest, style, false, true);
    }

    bool finish(const Polyline& run, const Style& style, bool cut_start, bool cut_end) {
        if (arc_length(run).back() < style.least) return false;
        Polyline line = smoothed(resampled(run, .35), false, 4);
        blunt(line, false, 1.5);
        if (style.dotted) {
            dots(line, style.pen);
            return true;
        }
        p_.add(Line{fitted(line, .12, false), style.pen, style.taper_start || cut_start,
                    style.taper_end || cut_end});
        return true;
    }

    void dots(const Polyline& line, Pen pen) {
        constexpr std::size_t on = 5, pitch = 11; // points .35 mm apart
        for (std::size_t i = 0; i + on < line.size(); i += pitch) {
            p_.add(Line{fitted({line[i], line[i + on / 2], line[i + on]}, .2, false), pen, false,
                        false});
        }
    }

    Plate& p_;
    const Limbs& l_;
    const Camera& cam_;
};

Vec joint_normal(const PosedFinger& f, int j, Vec& along) {
    along = unit_vector(f.bone[j - 1] + f.bone[j]);
    return unit_vector(cross(f.axis, along));
}

/// Two short arcs over the back of a joint.
void wrinkles(Inker& ink, const PosedFinger& f, const Ray& ray, int j) {
    Vec along;
    const Vec back = joint_normal(f, j, along);
    const double half = j == 1 ? .60 : .5, gap = j == 1 ? 2.4 : 1.9, r = ray.radius[j];
    for (const double o : {-gap / 2, gap / 2}) {
        Path path;
        for (int i = -6; i <= 6; ++i) {
            const double a = half * i / 6;
            path.push_back(f.joint[j] + back * (r * std::cos(a)) + f.axis * (r * std::sin(a)) +
                           along * (o * (1 + .25 * std::cos(3 * a))));
        }
        ink.on_skin(path, {});
    }
}

/// A rounded U on the back of an end phalanx, open at the tip.
Path nail(Vec a, Vec b, Vec axis, double r, double width, double long_part) {
    const Vec d = unit_vector(b - a), back = unit_vector(cross(axis, d));
    const double whole = length(b - a) + r, size = whole * long_part, w = r * width;
    const double base = whole - 1.0 - size;
    Path path;
    for (int i = -16; i <= 16; ++i) {
        const double u = i / 16.0, k = std::abs(u);
        double x = w, y = whole - 1.0 - (1 - k) / .5 * size * .70;
        if (k < .5) {
            x = w * std::sin(k * std::numbers::pi);
            y = base + size * .30 * (1 - std::cos(k * std::numbers::pi));
        }
        path.push_back(a + d * y + axis * std::copysign(x, u) +
                       back * std::sqrt(std::max(r * r * 1.1 - x * x, 0.0)));
    }
    return path;
}

void finger_lines(Inker& ink, const Limbs& l, int i, const SkinLines& which) {
    const PosedFinger& f = l.finger[i];
    const Ray& ray = l.body.ray[i];
    if (which.wrinkles) {
        for (const int j : {1, 2})
            wrinkles(ink, f, ray, j);
    }
    if (which.nails) {
        ink.on_skin(nail(f.joint[2], f.joint[3], f.axis, ray.radius[3], .76, .46),
                    {7, .10, false, false, Pen::inner});
    }
    if (!which.palm) return;
    for (const auto& [j, from, offsets] :
         {std::tuple{0, .44, 1}, std::tuple{1, 0.0, 2}, std::tuple{2, 0.0, 1}}) {
        for (int k = 0; k < offsets; ++k) {
            const double o = offsets == 2 ? (k ? 1.3 : -1.3) : 0;
            const Vec d = f.bone[j], front = unit_vector(cross(d, f.axis));
            const Vec c = f.joint[j] + d * (from * ray.phalanx[0]);
            Path path;
            for (int n = -7; n <= 7; ++n) {
                const double a = .85 * n / 7, r = ray.radius[j];
                path.push_back(c + d * (o - .6 * std::cos(a * 1.5)) + f.axis * (r * std::sin(a)) +
                               front * (r * std::cos(a)));
            }
            ink.on_skin(path, {});
        }
    }
}

void thumb_lines(Inker& ink, const Limbs& l, const SkinLines& which) {
    const auto& t = l.thumb;
    const Vec d = unit_vector(t[3] - t[2]), along = unit_vector(d + unit_vector(t[2] - t[1]));
    const Vec back = square_to(l.thumb_up, along), axis = unit_vector(cross(along, back));
    if (which.wrinkles) {
        for (const double o : {-1.7, 1.1}) {
            Path path;
            for (int i = -6; i <= 6; ++i) {
                const double a = .62 * i / 6;
                path.push_back(t[2] + back * (10 * std::cos(a)) + axis * (10 * std::sin(a)) +
                               along * (o * (1 + .2 * std::cos(3 * a))));
            }
            ink.on_skin(path, {});
        }
    }
    if (which.nails) {
        ink.on_skin(
            nail(t[2], t[3], unit_vector(cross(d, l.thumb_up)), l.body.thumb_radius[3], .76, .48),
            {2.2, .10, false, false, Pen::inner});
    }
}

const Inker::Style arc_style{5, .05, false, true, Pen::knuckle, false, true};

/// Round a knuckle that counts as seen, out of the valley on its little-finger side and under it.
Path arc_out_of_valley(const Limbs& l, int f) {
    constexpr double from = 125, to = -22; // degrees; 0 points to the wrist
    const Vec wrist = unit_vector(l.body.ray[f].base - l.knuckle[f]), up = square_to(ez, wrist);
    const Vec beside = (l.knuckle[f + 1] - l.knuckle[f]) * .52;
    const Vec ulnar = beside - wrist * dot(beside, wrist);
    Path path;
    for (int i = 0; i <= 28; ++i) {
        const double a = in_radians(mix(from, to, i / 28.0));
        path.push_back(l.knuckle[f] + ulnar * std::sin(a) +
                       wrist * (l.body.along * 17 * std::cos(a)) + up * l.body.wide(11));
    }
    return path;
}

/// The same smaller and flat on the picture: for a knuckle whose valley lies behind the edge.
void flat_arc(Plate& plate, const Limbs& l, int f, Vec seen) {
    const Dot at = plate.page(l, seen);
    const Dot inwards = unit_vector(plate.page(l, lerp(l.knuckle[f], l.body.ray[f].base, .5)) - at);
    const Dot across{-inwards.y, inwards.x};
    // Not over the other hand.
    const int id = plate.surface_on_page(at + inwards * l.body.ray[f].cap);
    if (id < 0 || id == rod_surface || (id >= second_hand) != l.reversed) return;
    Polyline line;
    for (int i = 0; i <= 20; ++i) {
        const double a = in_radians(mix(-62, 62, i / 20.0));
        line.push_back(at +
                       (inwards * std::cos(a) + across * std::sin(a)) * (l.body.ray[f].cap * .8));
    }
    plate.add(Line{fitted(line, .1, false), Pen::knuckle, true, true});
}

/// From behind the knuckle towards the wrist.
void tendon(Inker& ink, const Limbs& l, int f) {
    constexpr double from = .40, to = .80; ///< shares of the metacarpal from its head
    Path path;
    for (int i = 0; i <= 20; ++i) {
        path.push_back(lerp(l.knuckle[f], l.body.ray[f].base, mix(from, to, i / 20.0)) +
                       l.body.at(0, 0, 16));
    }
    ink.on_skin(path, {8, .2, true, true, Pen::detail, false, true});
}

/// Between two fingers that lie side by side, from their roots to their middle joints.
void between_fingers(Inker& ink, const Limbs& l) {
    for (int f = 0; f + 1 < fingers; ++f) {
        const PosedFinger &a = l.finger[f], &b = l.finger[f + 1];
        const double r = l.body.ray[f].radius[1];
        Path path;
        for (int i = 0; i <= 20; ++i) {
            const double t = mix(.30, 1.0, i / 20.0);
            const Vec back = unit_vector(cross(a.axis, a.bone[0]));
            path.push_back(
                lerp(lerp(a.joint[0], a.joint[1], t), lerp(b.joint[0], b.joint[1], t), .5) +
                back * (r * .6));
        }
        ink.on_skin(path, {6, .1, true, true, Pen::inner, false, true});
    }
}

/// What a reader counts: every knuckle that this eye sees, with the tendon that leads to it.
void back_lines(Plate& plate, const Limbs& l, bool tendons) {
    Inker ink(plate, l);
    const Camera& camera = plate.shot().camera;
    const auto views = knuckle_views(l, camera);
    for (int f = 0; f < fingers; ++f) {
        if (views[f].share < knuckle_share) continue;
        const bool own_valley = f != little_finger;
        if (!own_valley || !ink.on_skin(arc_out_of_valley(l, f), arc_style))
            flat_arc(plate, l, f, views[f].at);
        if (tendons && f != little_finger) tendon(ink, l, f);
    }
}

/// The V: from the notch between thumb and forefinger towards the wrist, laid on the picture so
/// that it never breaks. Nothing where the traced lines already show the thumb lying over the
/// forefinger.
void crease_line(Plate& plate, const Limbs& l) {
    const Crease v = v_crease(l);
    const Dot fork = plate.page(l, v.fork), end = plate.page(l, v.end);
    const Dot index = plate.page(l, l.knuckle[index_finger]), thumb = plate.page(l, l.thumb[2]);
    const std::optional<Dot> notch = plate.notch_between(index.x, thumb.x, fork.y + 12, 40);
    if (notch && plate.line_leaves(*notch, 5, 7)) return;
    const Dot from = notch && length(*notch - fork) < 16 ? *notch : fork;
    const Dot way = end - from, across{-way.y, way.x};
    Polyline line;
    for (int i = 0; i <= 20; ++i) {
        const double t = i / 20.0;
        line.push_back(from + way * (.78 * t) + across * (.06 * std::sin(t * 3)));
    }
    plate.add(Line{fitted(line, .1, false), Pen::outline, false, true});
}

void palm_lines(Inker& ink) {
    const Polyline life{{34, 72}, {24, 67}, {13, 58}, {6, 44}, {4, 30}, {7, 15}};
    const Polyline heart{{-36, 62}, {-24, 66}, {-8, 73}, {6, 82}, {13, 93}};
    const Polyline head{{33, 74}, {20, 69}, {4, 61}, {-12, 52}, {-24, 44}};
    for (const Polyline& p : {life, heart, head}) {
        ink.on_palm(smoothed(resampled(p, 1.2), false, 5), {});
    }
}

} // namespace

void add_skin_path(Plate& plate, const Limbs& limbs, const std::vector<Vec>& path, Pen pen,
                   bool dotted) {
    Inker(plate, limbs).on_skin(path, {4, .05, false, false, pen, dotted});
}

void add_skin_lines(Plate& plate, const Limbs& limbs, const SkinLines& which) {
    Inker ink(plate, limbs);
    for (int f = 0; f < fingers; ++f)
        finger_lines(ink, limbs, f, which);
    thumb_lines(ink, limbs, which);
    if (which.back) back_lines(plate, limbs, which.crease);
    if (which.crease)
        crease_line(plate, limbs);
    else if (which.back)
        between_fingers(ink, limbs);
    if (which.palm) palm_lines(ink);
}

} // namespace hand
