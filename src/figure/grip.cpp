#include "figure/grip.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

/// Points of paper for each millimetre of the model, and the side to draw.
struct Fit {
    double k = 1;
    double mirror_width = 0; ///< width of the window for a left-hander's mirror, else 0

    ink::Point operator()(hand::Dot p) const {
        return {(mirror_width > 0 ? mirror_width - p.x : p.x) * k, p.y * k};
    }
};

ink::Colour ink_of(const theme::Theme& theme, hand::Tone tone) {
    switch (tone) {
    case hand::Tone::skin:
    case hand::Tone::club:
        return ink::white;
    case hand::Tone::shade:
        return ink::grey(0.88);
    case hand::Tone::handle:
        return ink::grey(0.62);
    case hand::Tone::handle_shade:
        return ink::grey(0.42);
    case hand::Tone::handle_light:
        return ink::grey(0.84);
    case hand::Tone::glove:
        return ink::grey(0.94);
    case hand::Tone::accent:
        return theme.accent;
    case hand::Tone::mark:
        return theme.text;
    }
    return ink::black;
}

/// Line widths at print size, points: 0.9, 0.7, 0.5 at 62 mm, a little finer when smaller.
double width_of(hand::Pen pen, double printed_width) {
    const double k = std::clamp(std::pow(printed_width / (62 * mm), 0.55), 0.6, 1.5);
    switch (pen) {
    case hand::Pen::outline:
        return 0.95 * k;
    case hand::Pen::handle:
        return 1.1 * k;
    case hand::Pen::inner:
    case hand::Pen::knuckle:
        return 0.78 * k;
    case hand::Pen::detail:
        return 0.55 * k;
    case hand::Pen::hatch:
        return 0.42 * k;
    case hand::Pen::accent:
        return 1.4 * k;
    }
    return 0.7 * k;
}

void append(ink::Path& path, const hand::Outline& outline, const Fit& fit) {
    path.move(fit(outline.start));
    for (const auto& piece : outline.pieces)
        path.curve(fit(piece.a), fit(piece.b), fit(piece.to));
    if (outline.closed) path.close();
}

/// The outline as points, about a point of paper apart.
std::vector<ink::Point> flattened(const hand::Outline& outline, const Fit& fit) {
    std::vector<ink::Point> points{fit(outline.start)};
    for (const auto& piece : outline.pieces) {
        const ink::Point p0 = points.back(), a = fit(piece.a), b = fit(piece.b), p3 = fit(piece.to);
        const double length = std::hypot(p3.x - p0.x, p3.y - p0.y);
        const int n = std::clamp(static_cast<int>(std::ceil(length / 2.5)), 2, 24);
        for (int i = 1; i <= n; ++i) {
            const double t = static_cast<double>(i) / n, s = 1 - t;
            points.push_back(p0 * (s * s * s) + a * (3 * s * s * t) + b * (3 * s * t * t) +
                             p3 * (t * t * t));
        }
    }
    return points;
}

/// A stroke that runs out to nothing at its free ends, as one filled outline.
ink::Path tapered(const std::vector<ink::Point>& points, double width, double tail, bool at_start,
                  bool at_end) {
    std::vector<double> along(points.size(), 0);
    for (std::size_t i = 1; i < points.size(); ++i)
        along[i] =
            along[i - 1] + std::hypot(points[i].x - points[i - 1].x, points[i].y - points[i - 1].y);
    const double all = along.back();
    const double reach = std::min(tail, all * (at_start && at_end ? 0.5 : 0.8));
    std::vector<ink::Point> left, right;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const ink::Point d = points[std::min(i + 1, points.size() - 1)] - points[i > 0 ? i - 1 : 0];
        const double n = std::max(std::hypot(d.x, d.y), 1e-9);
        double k = 1;
        if (at_start) k = std::min(k, std::sqrt(along[i] / reach));
        if (at_end) k = std::min(k, std::sqrt((all - along[i]) / reach));
        const ink::Point off{-d.y / n * width * k / 2, d.x / n * width * k / 2};
        left.push_back(points[i] + off);
        right.push_back(points[i] - off);
    }
    left.insert(left.end(), right.rbegin(), right.rend());
    return ink::Path::polyline(left, true);
}

void draw(ink::Drawing& d, const theme::Theme& theme, const hand::Area& area, const Fit& fit) {
    ink::Path path;
    for (const auto& loop : area.loops)
        append(path, loop, fit);
    if (!path.empty()) d.add(ink::Fill{std::move(path), ink_of(theme, area.tone)});
}

void draw(ink::Drawing& d, const theme::Theme& theme, const hand::Line& line, const Fit& fit,
          double printed_width) {
    const double width = width_of(line.pen, printed_width);
    const ink::Colour colour = line.pen == hand::Pen::accent ? theme.accent : theme.text;
    if (!line.taper_start && !line.taper_end) {
        ink::Path path;
        append(path, line.path, fit);
        d.add(ink::Stroke{std::move(path), width, colour});
        return;
    }
    const auto points = flattened(line.path, fit);
    if (points.size() < 2) return;
    d.add(ink::Fill{tapered(points, width, 12 * fit.k, line.taper_start, line.taper_end), colour});
}

} // namespace

ink::Drawing hand_drawing(const theme::Theme& theme, const hand::Picture& picture, unit::Hand hand,
                          double width) {
    const Fit fit{width / picture.width, hand == unit::Hand::left ? picture.width : 0};
    ink::Drawing d;
    d.size = {width, picture.height * fit.k};
    for (const auto& mark : picture.marks) {
        if (const auto* area = std::get_if<hand::Area>(&mark)) draw(d, theme, *area, fit);
        if (const auto* line = std::get_if<hand::Line>(&mark)) draw(d, theme, *line, fit, width);
    }
    return d;
}

namespace {

struct Badge {
    int number = 0;
    ink::Point at; ///< of the anchor, in the drawing
    bool left = false;
    ink::Point centre; ///< of the badge, in the drawing
};

constexpr double badge_radius = 6, badge_margin = 16, badges_apart = 15;

double turning(ink::Point a, ink::Point b, ink::Point c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool leaders_cross(const Badge& a, const Badge& b) {
    return turning(a.centre, a.at, b.centre) * turning(a.centre, a.at, b.at) < 0 &&
           turning(b.centre, b.at, a.centre) * turning(b.centre, b.at, a.at) < 0;
}

/// Badges under one another in a margin, in the order given, as near to their anchors as they can.
void stack_up(std::vector<Badge*>& side, double height, double x) {
    std::vector<double> y;
    for (std::size_t i = 0; i < side.size(); ++i)
        y.push_back(i == 0 ? side[i]->at.y : std::max(side[i]->at.y, y[i - 1] + badges_apart));
    double limit = height - badges_apart / 2;
    for (std::size_t i = side.size(); i-- > 0; limit = y[i] - badges_apart)
        y[i] = std::clamp(y[i], badges_apart / 2, std::max(badges_apart / 2, limit));
    for (std::size_t i = 0; i < side.size(); ++i)
        side[i]->centre = {x, y[i]};
}

/// How bad an arrangement is: crossings above all, then long leaders.
double fault(const std::vector<Badge>& badges) {
    double sum = 0;
    for (std::size_t i = 0; i < badges.size(); ++i) {
        sum += std::hypot(badges[i].centre.x - badges[i].at.x, badges[i].centre.y - badges[i].at.y);
        for (std::size_t k = 0; k < i; ++k)
            sum += leaders_cross(badges[i], badges[k]) ? 1e4 : 0;
    }
    return sum;
}

/// Of all sides and orders (at most 16 x 24) the one without crossing leaders and with short ones.
std::vector<Badge> arranged(std::vector<Badge> badges, ink::Size room) {
    std::vector<std::size_t> order(badges.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::vector<Badge> best = badges;
    double least = 1e12;
    do {
        for (unsigned sides = 0; sides < 1u << badges.size(); ++sides) {
            std::vector<Badge*> left, right;
            for (const std::size_t i : order) {
                badges[i].left = (sides >> i & 1) != 0;
                (badges[i].left ? left : right).push_back(&badges[i]);
            }
            stack_up(left, room.height, badge_radius + 0.5 - badge_margin);
            stack_up(right, room.height, room.width + badge_margin - badge_radius - 0.5);
            if (const double f = fault(badges); f < least - 1e-6) {
                least = f;
                best = badges;
            }
        }
    } while (std::next_permutation(order.begin(), order.end()));
    return best;
}

std::vector<Badge> badges_of(const hand::Picture& picture, const std::vector<CallOut>& call_outs,
                             const Fit& fit, ink::Size room) {
    std::vector<Badge> badges;
    for (const CallOut& call : call_outs) {
        const auto found = std::ranges::find(picture.anchors, call.anchor, &hand::Anchor::name);
        if (found == picture.anchors.end() || badges.size() == most_call_outs) continue;
        badges.push_back({call.number, fit(found->at), false, {}});
    }
    return arranged(std::move(badges), room);
}

} // namespace

ink::Drawing called_out(const Easel& easel, const hand::Picture& picture, unit::Hand hand,
                        const std::string& name, const std::vector<CallOut>& call_outs,
                        double width) {
    const double margin = badge_margin, radius = badge_radius;
    const auto& title = easel.theme.setting(theme::Text::label);
    const ink::Drawing drawn = hand_drawing(easel.theme, picture, hand, width - 2 * margin);
    const Fit fit{(width - 2 * margin) / picture.width,
                  hand == unit::Hand::left ? picture.width : 0};

    ink::Drawing d;
    const double top = name.empty() ? 0 : title.leading;
    d.size = {width, top + drawn.size.height};
    if (!name.empty())
        d.add(label(easel, theme::Text::label, name, {width / 2, title.style.size},
                    text::Align::centre));
    d.add(drawn, {margin, top});
    for (const auto& anchor : picture.anchors) // the arrow from the ball
        if (anchor.name == "target") {
            const ink::Point at = fit(anchor.at);
            ink::Words word =
                label(easel, theme::Text::tick, easel.words.say("ballfigure.impact.target"),
                      {margin + at.x, top + at.y - 7},
                      hand == unit::Hand::left ? text::Align::left : text::Align::right);
            word.at.x = std::clamp(word.at.x, 0.0, std::max(0.0, width - word.width));
            d.add(std::move(word));
        }
    const auto style = bold(easel, theme::Text::tick);
    const ink::Point corner{margin, top};
    for (const Badge& b : badges_of(picture, call_outs, fit, drawn.size)) {
        const ink::Point at = corner + b.at, badge = corner + b.centre;
        const ink::Point way = at - badge;
        const ink::Point from = badge + way * (radius / std::max(std::hypot(way.x, way.y), radius));
        d.add(ink::Stroke{ink::Path::segment(from, at), 2.2, ink::white, {}, ink::Cap::butt});
        d.add(ink::Stroke{ink::Path::segment(from, at), 0.6, easel.theme.text, {}, ink::Cap::butt});
        d.add(ink::Fill{ink::Path::circle(at, 1.5), easel.theme.text});
        d.add(ink::Fill{ink::Path::circle(badge, radius), ink::white});
        d.add(ink::Stroke{
            ink::Path::circle(badge, radius), 0.8, easel.theme.text, {}, ink::Cap::butt});
        d.add(label(easel, style, std::to_string(b.number), {badge.x, badge.y + middle(style)},
                    text::Align::centre));
    }
    return d;
}

} // namespace figure
