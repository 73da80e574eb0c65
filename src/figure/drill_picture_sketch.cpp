#include "figure/drill_picture_sketch.hpp"

#include "figure/symbol.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

constexpr double degree = 3.14159265358979323846 / 180;

} // namespace

void Sketch::scene(ink::Rect world) {
    const double pad = 1.5; // points: half a heavy line stays inside
    scale_ =
        std::min((paper_.width - 2 * pad) / world.width, (paper_.height - 2 * pad) / world.height);
    drawing_.size = paper_;
    const ink::Point middle = world.centre();
    offset_ = {paper_.width / 2 - (left_ ? -1 : 1) * scale_ * middle.x,
               paper_.height / 2 - scale_ * middle.y};
}

ink::Point Sketch::to(ink::Point p) const {
    return {offset_.x + (left_ ? -scale_ : scale_) * p.x, offset_.y + scale_ * p.y};
}

ink::Path Sketch::to(const ink::Path& path) const {
    return path.scaled(left_ ? -scale_ : scale_, scale_).moved(offset_);
}

void Sketch::path(const ink::Path& path, double width) {
    drawing_.add(ink::Stroke{to(path), width, easel_.theme.text, {}, ink::Cap::round});
}

void Sketch::solid(const ink::Path& path, ink::Colour fill, double width) {
    drawing_.add(ink::Fill{to(path), fill});
    if (width > 0) this->path(path, width);
}

void Sketch::line(const Points& points, double width) { path(ink::Path::polyline(points), width); }

void Sketch::dashed(const Points& points, double width) {
    drawing_.add(ink::Stroke{
        to(ink::Path::polyline(points)), width, easel_.theme.text, {3.0, 2.4}, ink::Cap::butt});
}

void Sketch::shape(const Points& corners, ink::Colour fill, double width) {
    solid(ink::Path::polyline(corners, true), fill, width);
}

void Sketch::rect(ink::Rect box, ink::Colour fill, double width) {
    solid(ink::Path::rect(box), fill, width);
}

void Sketch::round_rect(ink::Rect box, double radius, ink::Colour fill, double width) {
    solid(ink::Path::round_rect(box, radius), fill, width);
}

void Sketch::circle(ink::Point centre, double radius, ink::Colour fill, double width) {
    solid(ink::Path::circle(centre, radius), fill, width);
}

void Sketch::hatched(ink::Rect box, double distance) {
    const ink::Path outline = to(ink::Path::rect(box));
    const ink::Rect b = outline.bounds();
    // lines are laid on the right-hander's box and mirrored with it
    ink::Drawing lines;
    hatch(lines, {0, 0, b.width, b.height}, distance, thin, easel_.theme.text);
    for (auto& mark : lines.marks)
        if (auto* stroke = std::get_if<ink::Stroke>(&mark)) {
            stroke->path = left_ ? stroke->path.scaled(-1, 1).moved({b.right(), b.y})
                                 : stroke->path.moved({b.x, b.y});
            drawing_.add(*stroke);
        }
}

void Sketch::arrow(ink::Point from, ink::Point to_point, double width) {
    figure::arrow(drawing_, to(from), to(to_point), width, 3.6 + 2 * width, easel_.theme.text);
}

void Sketch::arrow_along(const Points& points, double width) {
    Points stem = points;
    const ink::Point tip = stem.back();
    // the head looks along the last stretch that is as long as itself
    const double head = (3.6 + 2 * width) / scale_;
    while (stem.size() > 2 && std::hypot(tip.x - stem.back().x, tip.y - stem.back().y) < head)
        stem.pop_back();
    line(stem, width);
    arrow(stem.back(), tip, width);
}

void Sketch::limbs(const std::vector<Limb>& limbs, double width, ink::Colour fill) {
    const auto pass = [&](double extra, ink::Colour colour) {
        for (const Limb& limb : limbs)
            for (std::size_t i = 0; i + 1 < limb.points.size(); ++i)
                drawing_.add(
                    ink::Stroke{ink::Path::segment(to(limb.points[i]), to(limb.points[i + 1])),
                                std::max(limb.thick * scale_, width + 0.5) + extra,
                                colour,
                                {},
                                ink::Cap::round});
    };
    if (width > 0) pass(width, easel_.theme.text);
    pass(-width, fill);
}

void Sketch::set_words(const std::string& words, ink::Point at, text::Align align) {
    if (left_ && align != text::Align::centre)
        align = align == text::Align::left ? text::Align::right : text::Align::left;
    ink::Style style = easel_.theme.setting(theme::Text::caption).style;
    ink::Words set = label(easel_, style, words, to(at), align);
    set.at.x = std::clamp(set.at.x, 0.0, std::max(0.0, paper_.width - set.width));
    drawing_.add(std::move(set));
}

void Sketch::words(std::string_view key, ink::Point at, text::Align align) {
    set_words(easel_.words.say(key), at, align);
}

void Sketch::noted(std::string_view key, ink::Point at, text::Align align) {
    set_words(note.empty() ? easel_.words.say(key) : note, at, align);
}

void Sketch::words_unturned(std::string_view key, ink::Point at) {
    const bool left = std::exchange(left_, false);
    const ink::Point kept = offset_;
    if (left) offset_.x = paper_.width - offset_.x;
    words(key, at);
    offset_ = kept;
    left_ = left;
}

void Sketch::tick(ink::Point at, double size) {
    const ink::Point c = to(at);
    const double u = size * scale_;
    drawing_.add(ink::Stroke{
        ink::Path::polyline(
            {{c.x - 0.75 * u, c.y}, {c.x - 0.15 * u, c.y + 0.75 * u}, {c.x + u, c.y - 0.85 * u}}),
        2.0,
        easel_.theme.text,
        {},
        ink::Cap::round});
}

void Sketch::target(ink::Point from, double length, double tilt) {
    const double s = std::sin(tilt * degree), c = std::cos(tilt * degree);
    const ink::Point tip{from.x + s * length, from.y - c * length};
    arrow(from, tip, heavy);
    const double u = std::min(1.0, paper_.height / 120) / scale_; // a flag of its own size on paper
    const ink::Point foot{tip.x, tip.y - 3 * u};
    line({foot, {foot.x, foot.y - 11 * u}}, thin);
    shape(
        {{foot.x, foot.y - 11 * u}, {foot.x + 7 * u, foot.y - 8.4 * u}, {foot.x, foot.y - 5.8 * u}},
        easel_.theme.text, 0);
}

void Sketch::target_side(ink::Point from, double length) {
    const double u = std::min(1.0, paper_.height / 120) / scale_;
    const ink::Point tip{from.x + length, from.y};
    arrow(from, tip, heavy);
    const ink::Point foot{tip.x + 5 * u, tip.y + 3.5 * u};
    line({foot, {foot.x, foot.y - 12 * u}}, thin);
    shape(
        {{foot.x, foot.y - 12 * u}, {foot.x + 7 * u, foot.y - 9.4 * u}, {foot.x, foot.y - 6.8 * u}},
        easel_.theme.text, 0);
}

void Sketch::ball(ink::Point at) { circle(at, 21.3); }

Points Sketch::turned(const Points& points, ink::Point at, double degrees) {
    const double s = std::sin(degrees * degree), c = std::cos(degrees * degree);
    Points out;
    for (const auto& p : points)
        out.push_back({at.x + c * p.x - s * p.y, at.y + s * p.x + c * p.y});
    return out;
}

ink::Path Sketch::smooth(const Points& p) {
    ink::Path out;
    const std::size_t n = p.size();
    out.move(p[0]);
    for (std::size_t i = 0; i < n; ++i) { // Catmull and Rom's curve as Bezier pieces
        const ink::Point a = p[(i + n - 1) % n], b = p[i], c = p[(i + 1) % n], d = p[(i + 2) % n];
        out.curve(b + (c - a) * (1.0 / 6), c - (d - b) * (1.0 / 6), c);
    }
    return out.close();
}

void Sketch::iron(ink::Point at, double turn, double shaft) {
    const double s = std::sin(turn * degree), c = std::cos(turn * degree);
    const auto put = [&](double x, double y) {
        return ink::Point{at.x + c * x - s * y, at.y + s * x + c * y};
    };
    // shaft to the player's side, a little towards the target where the hands are
    const double lean = shaft * 0.06;
    limbs({{{put(-38, 12), put(-38 - shaft, 12 - lean)}, 10}}, thin);
    limbs({{{put(-38 - shaft * 0.52, 12 - lean * 0.52), put(-38 - shaft, 12 - lean)}, 19}}, thin,
          easel_.theme.tint);
    shape(turned({{-42, 3}, {-38, 0}, {36, 0}, {42, 8}, {38, 24}, {20, 27}, {-30, 18}, {-42, 18}},
                 at, turn));
    path(ink::Path::segment(put(-38, 0), put(38, 0)), heavy);
}

void Sketch::putter(ink::Point at, double shaft) {
    limbs({{{{at.x - 30, at.y + 14}, {at.x - 30 - shaft, at.y + 8}}, 10}}, thin);
    rect({at.x - 55, at.y, 110, 26});
    line({{at.x, at.y + 4}, {at.x, at.y + 22}}, thin);
}

void Sketch::shoe(ink::Point at, double turn, bool ghost) {
    Points half;
    const double xs[] = {-142, -118, -60, 0, 60, 112, 142};
    const double ys[] = {0, -32, -37, -38, -48, -42, 0};
    for (std::size_t i = 0; i < 7; ++i)
        half.push_back({xs[i], ys[i]});
    Points all = half;
    for (std::size_t i = 6; i-- > 1;)
        all.push_back({xs[i], -ys[i] * 0.9});
    const ink::Path outline = smooth(turned(all, at, turn));
    if (ghost) {
        drawing_.add(ink::Stroke{to(outline), thin, easel_.theme.text, {2.4, 2.0}, ink::Cap::butt});
        return;
    }
    solid(outline);
}

void Sketch::person(double stance, ink::Point hands) {
    const double foot = stance / 2;
    limbs({{{{-foot, -50}, {-foot * 0.72 - 20, -480}, {-95, -900}}, 120},
           {{{foot, -50}, {foot * 0.72 + 20, -480}, {95, -900}}, 120},
           {{{-foot, -35}, {-foot - 70, -35}}, 70},
           {{{foot, -35}, {foot + 70, -35}}, 70},
           {{{-60, -930}, {-95, -1330}, {95, -1330}, {60, -930}, {0, -1100}}, 200}});
    circle({-15, -1590}, 115);
    limbs({{{{-150, -1345}, {hands.x * 0.5 - 150, (hands.y - 1345) / 2}, hands}, 90},
           {{{150, -1345}, {hands.x * 0.5 + 100, (hands.y - 1345) / 2}, hands}, 90}});
}

Points Sketch::arc(ink::Point centre, double radius, double from, double to) {
    Points out;
    const int n = std::max(4, static_cast<int>(std::fabs(to - from) / 5));
    for (int i = 0; i <= n; ++i) {
        const double a = (from + (to - from) * i / n) * degree;
        out.push_back({centre.x + radius * std::cos(a), centre.y + radius * std::sin(a)});
    }
    return out;
}

ink::Drawing Sketch::done(std::string message) {
    drawing_.message = std::move(message);
    return std::move(drawing_);
}

} // namespace figure
