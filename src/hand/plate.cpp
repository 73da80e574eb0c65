#include "hand/plate.hpp"

#include "hand/mask.hpp"
#include "hand/skin.hpp"

namespace hand {
namespace {

Window window_of(const Shot& s) {
    return {s.centre.x - s.half_width, s.centre.y + s.half_height, 2 * s.half_width,
            2 * s.half_height};
}

/// How far the break of a rod swings off its mean, across the rod from -1 to 1.
double break_wave(double v) { return 2.6 * std::sin(v * std::numbers::pi); }

} // namespace

Plate::Plate(const Shot& shot)
    : shot_(shot)
    , field_(shot.hands, shot.camera)
    , rod_(field_.scene().rod ? *field_.scene().rod : Rod{})
    , depth_(trace(field_, window_of(shot), shot.pixel))
    , regions_(regions(depth_, shot.least_hole)) {
    picture_.width = 2 * shot.half_width;
    picture_.height = 2 * shot.half_height;
    find_edges();
    find_faded();
}

Dot Plate::handle_direction() const { return {rod_.dx, -rod_.dy}; }

Dot Plate::handle_point(double station) const {
    return page(Vec{rod_.ox, rod_.oy, rod_.oz} + Vec{rod_.dx, rod_.dy, rod_.dz} * station);
}

void Plate::find_edges() {
    const Dot d = handle_direction();
    const double l = length(d);
    if (l < .3) return;
    edges_ = {true, handle_point(0), unit_vector(d), rod_.radius, rod_.taper, rod_.length, l};
}

void Plate::find_faded() {
    faded_ = sleeve_ = {depth_.id.width, depth_.id.height, 0};
    bare_ = {depth_.id.width, depth_.id.height, 0};
    struct Arm {
        Vec at, along, cuff, carpus;
    };
    std::vector<Arm> arm;
    for (const Limbs* l : shot_.hands) {
        arm.push_back({shot_.camera * l->to_grip(l->wrist), shot_.camera * l->direction(l->arm),
                       shot_.camera * l->to_grip(cuff_of(*l)),
                       shot_.camera * l->direction(l->carpus)});
    }
    for (int r = 0; r < depth_.id.height; ++r) {
        for (int c = 0; c < depth_.id.width; ++c) {
            const int id = depth_.id(r, c);
            if (id < 0) continue;
            const Vec p = depth_.point(r, c);
            if (id == rod_surface) {
                if (!edges_.known) continue;
                const Dot q = page(p) - edges_.butt, normal{-edges_.along.y, edges_.along.x};
                const double end = shot_.handle_end * edges_.foreshortening;
                const double v = dot(q, normal) / (rod_.radius - rod_.taper * shot_.handle_end);
                faded_(r, c) = dot(q, edges_.along) > end + break_wave(std::clamp(v, -1.0, 1.0));
            } else if (id == int(first_finger) + little_finger && shot_.looking_down &&
                       edges_.known) {
                faded_(r, c) = dot(page(p) - edges_.butt, {-edges_.along.y, edges_.along.x}) < 0;
            } else if (id % second_hand == palm_side) {
                const Arm& a = arm[id >= second_hand];
                const double s = dot(p - a.at, a.along);
                faded_(r, c) = s > shot_.arm_end;
                sleeve_(r, c) = dot(p - a.cuff, a.carpus) > 0;
                const double from = -28, to = std::min(8.0, .3 * shot_.arm_end);
                bare_(r, c) = float(std::clamp((s - from) / (to - from), 0.0, 1.0));
            }
        }
    }
}

template <class F>
Grid<std::uint8_t> Plate::where(F&& f) const {
    Grid<std::uint8_t> m(depth_.id.width, depth_.id.height, 0);
    for (std::size_t i = 0; i < m.size(); ++i)
        m.cell[i] = f(i);
    return m;
}

void Plate::area(const Grid<std::uint8_t>& mask, Tone tone, double sigma, double least) {
    Grid<std::uint8_t> seen = mask;
    for (std::size_t i = 0; i < seen.size(); ++i)
        seen.cell[i] &= !faded_.cell[i];
    Area a{loops(seen, depth_, regions_.part, edges_, least, sigma), tone};
    if (!a.loops.empty()) add(std::move(a));
}

void Plate::add_areas() {
    const auto& part = regions_.part.cell;
    const auto flesh = where([&](std::size_t i) { return is_hand(part[i]); });
    const auto rod = where([&](std::size_t i) { return part[i] == Part::handle; });
    // Smoothing must not open white cracks between handle and hand: the handle's tint runs a little
    // under the hand.
    const auto near = dilated(rod, int(std::lround(1.2 / depth_.pixel)));
    area(where([&](std::size_t i) { return rod.cell[i] || (near.cell[i] && flesh.cell[i]); }),
         Tone::handle, 1.55, 4);
    shade_handle(rod);
    for (const Part hand : {Part::first, Part::second}) {
        area(where([&](std::size_t i) { return part[i] == hand; }), Tone::skin, 1.55, 4);
    }
    if (shot_.glove) {
        area(where([&](std::size_t i) { return part[i] == Part::first && !sleeve_.cell[i]; }),
             Tone::glove, 1.55, 4);
    }
    if (shot_.shade) shade_skin(flesh);
}

float Plate::light(std::size_t i) const {
    return -.5f * depth_.nx.cell[i] + .58f * depth_.ny.cell[i] + .64f * depth_.nz.cell[i];
}

void Plate::shade_handle(const Grid<std::uint8_t>& rod) {
    const auto drop = drop_shadow();
    area(
        tidy(where([&](std::size_t i) { return rod.cell[i] && (light(i) < .22f || drop.cell[i]); }),
             rod, 1.4, 60, 120),
        Tone::handle_shade, 1.55, 12);
    area(
        tidy(where([&](std::size_t i) { return rod.cell[i] && light(i) > .955f && !drop.cell[i]; }),
             rod, .7, 90, 90),
        Tone::handle_light, 1.55, 90); // only long streaks: drops would look like holes
}

void Plate::shade_skin(const Grid<std::uint8_t>& flesh) {
    const auto cast = cast_shadow();
    const auto soft = blurred(
        depth_, flesh, [&](std::size_t i) { return light(i); }, 1.6 / depth_.pixel);
    area(tidy(where([&](std::size_t i) {
                  const float thinned = float(shot_.dark) - .6f * bare_.cell[i] * bare_.cell[i];
                  return flesh.cell[i] && bare_.cell[i] < 1 &&
                         (soft.cell[i] < thinned || (cast.cell[i] && bare_.cell[i] < .5f));
              }),
              flesh, 1.2, 60, 70),
         Tone::shade, 2.4, 40);
}

/// Small things of either tone go: first by width, then by area.
Grid<std::uint8_t> Plate::tidy(const Grid<std::uint8_t>& mask, const Grid<std::uint8_t>& within,
                               double open, double island, double hole) const {
    const int n = int(std::lround(open / depth_.pixel));
    auto m = eroded(dilated(mask, n), n);
    for (std::size_t i = 0; i < m.size(); ++i)
        m.cell[i] &= within.cell[i];
    m = dilated(eroded(m, n), n);
    const double pixel = depth_.pixel * depth_.pixel;
    calm(m, within, int(island / pixel), int(hole / pixel));
    return m;
}

/// The hand's shadow on the handle: a strip of one width along whatever lies over it.
Grid<std::uint8_t> Plate::drop_shadow() const {
    constexpr double width = 4.4, sideways = -.66, upwards = -.75;
    Grid<std::uint8_t> out(depth_.id.width, depth_.id.height, 0);
    const auto& part = regions_.part;
    const int reach = int(width / depth_.pixel), w = out.width;
    std::vector<int> step;
    for (int k = 1; k <= reach; ++k)
        step.push_back(int(std::lround(upwards * k)) * w + int(std::lround(sideways * k)));
    for (int at = reach * (w + 1); at < int(out.size()); ++at) {
        if (part.cell.data()[at] != Part::handle) continue;
        const float over = depth_.z.cell.data()[at] + .2f;
        for (const int by : step) {
            if (is_hand(part.cell.data()[at + by]) && depth_.z.cell.data()[at + by] > over) {
                out.cell[at] = 1;
                break;
            }
        }
    }
    return out;
}

/// Walks over the depth picture towards the light.
Grid<std::uint8_t> Plate::cast_shadow() const {
    Grid<std::uint8_t> out(depth_.id.width, depth_.id.height, 0);
    constexpr double sideways = -.5 / .64 * .9, upwards = -.58 / .64 * .9;
    const double px = depth_.pixel;
    for (int k = 3; k < int(shot_.cast / px); k += 2) {
        const int dc = int(std::lround(sideways * k)), dr = int(std::lround(upwards * k));
        const float rise = float(k * .9 * px + .9);
        for (int r = std::max(0, -dr); r < out.height; ++r) {
            for (int c = std::max(0, -dc); c < out.width; ++c) {
                if (depth_.id(r, c) >= 0 && depth_.z(r + dr, c + dc) - depth_.z(r, c) > rise) {
                    out(r, c) = 1;
                }
            }
        }
    }
    return out;
}

void Plate::add_lines() {
    // A forearm is smooth: where the flesh of the wrist folds no line is wanted.
    const auto forearm = where([&](std::size_t i) { return bare_.cell[i] > .3f; });
    Cracks found = cracks(depth_, regions_, faded_, forearm);
    for (const Stroke& s : strokes(found, depth_, regions_.part, edges_)) {
        constexpr double speck = 8; // a shorter line that touches nothing is dirt
        if (s.line.size() < 4) continue;
        if (s.free_start && s.free_end && arc_length(s.line).back() < speck) continue;
        const Pen pen = s.handle_edge ? Pen::handle : s.outline ? Pen::outline : Pen::inner;
        Outline path = fitted(s.line, .14, s.closed);
        if (path.pieces.empty()) continue;
        add(Line{std::move(path), pen, s.free_start, s.free_end});
    }
    // The handle's break.
    if (!edges_.known || shot_.handle_end > 900) return;
    Polyline wave;
    const double r = edges_.radius - edges_.taper * shot_.handle_end;
    const Dot normal{-edges_.along.y, edges_.along.x};
    for (int i = -12; i <= 12; ++i) {
        wave.push_back(handle_point(shot_.handle_end) + normal * (r * i / 12.0) +
                       edges_.along * break_wave(i / 12.0));
    }
    add(Line{fitted(wave, .1, false), Pen::handle, false, false});
}

std::optional<Dot> Plate::notch_between(double x0, double x1, double y, double above) const {
    const double px = depth_.pixel;
    const int last = std::min(int(y / px), depth_.id.height - 1);
    std::optional<Dot> best;
    for (int c = std::max(0, int(std::min(x0, x1) / px)); c < int(std::max(x0, x1) / px); ++c) {
        if (c >= depth_.id.width) break;
        int r = std::max(0, int((y - above) / px));
        if (is_hand(regions_.part(r, c))) continue; // the thumb itself
        while (r < last && !is_hand(regions_.part(r, c)))
            ++r;
        if (r < last && (!best || r * px > best->y)) best = Dot{(c + .5) * px, r * px};
    }
    return best;
}

bool Plate::line_leaves(Dot at, double near, double least) const {
    for (const auto& mark : picture_.marks) {
        const Line* line = std::get_if<Line>(&mark);
        if (!line || line->pen != Pen::inner || line->path.pieces.empty()) continue;
        const Dot a = line->path.start, b = line->path.pieces.back().to;
        if (std::min(length(a - at), length(b - at)) < near && length(b - a) > least) return true;
    }
    return false;
}

int Plate::surface_at(Vec p) const {
    const int c = int(std::floor((p.x - depth_.window.left) / depth_.pixel));
    const int r = int(std::floor((depth_.window.top - p.y) / depth_.pixel));
    return depth_.id.inside(r, c) ? depth_.id(r, c) : -1;
}

int Plate::surface_on_page(Dot at) const {
    const int c = int(std::floor(at.x / depth_.pixel)), r = int(std::floor(at.y / depth_.pixel));
    return depth_.id.inside(r, c) ? depth_.id(r, c) : -1;
}

bool Plate::in_sight(Vec p, double slack) const {
    const int c = int(std::floor((p.x - depth_.window.left) / depth_.pixel));
    const int r = int(std::floor((depth_.window.top - p.y) / depth_.pixel));
    if (!depth_.id.inside(r, c)) return false;
    const int id = depth_.id(r, c);
    return id >= 0 && id != rod_surface && is_hand(regions_.part(r, c)) && !faded_(r, c) &&
           p.z > depth_.z(r, c) - slack;
}

} // namespace hand
