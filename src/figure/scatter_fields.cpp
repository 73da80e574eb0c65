#include "figure/scatter_fields.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace figure {

namespace {

struct Field {
    const char* key;
    double start, curve; ///< signs of the start direction and of face minus path
    text::Align align;
    ink::Point wish; ///< parts of the reach: face and path
};

constexpr std::array<Field, 4> fields{{{"right-right", 1, 1, text::Align::right, {0.72, -0.42}},
                                       {"right-left", 1, -1, text::Align::centre, {0.45, 0.86}},
                                       {"left-left", -1, -1, text::Align::left, {-0.72, 0.36}},
                                       {"left-right", -1, 1, text::Align::centre, {-0.5, -0.86}}}};

/// Values of a·face + b·path over a box: all lie between these two.
struct Range {
    double least, most;
    bool crosses(double c) const { return least < c && c < most; }
};

Range range(const FieldPlan& p, const ink::Rect& box, double a, double b) {
    const double degree = p.box.width / (2 * p.reach);
    const double face = (box.x - p.box.x) / degree - p.reach,
                 path = (p.box.bottom() - box.bottom()) / degree - p.reach;
    const double wide = box.width / degree, high = box.height / degree;
    const double at = a * face + b * path;
    return {at + std::min(0.0, a * wide) + std::min(0.0, b * high),
            at + std::max(0.0, a * wide) + std::max(0.0, b * high)};
}

int lines_crossed(const Range& r, double step) {
    int n = 0;
    if (step > 0)
        for (const double k : {-2.0, -1.0, 1.0, 2.0})
            n += r.crosses(k * step);
    return n;
}

double covered(const ink::Rect& box, const ink::Rect& other) {
    const double wide = std::min(box.right(), other.right()) - std::max(box.x, other.x),
                 high = std::min(box.bottom(), other.bottom()) - std::max(box.y, other.y);
    return wide > 0 && high > 0 ? wide * high / (box.width * box.height) : 0;
}

/// What speaks against words in this box.
double cost(const FieldPlan& p, const Field& f, const std::vector<ink::Rect>& others,
            const ink::Rect& box) {
    const auto over = [&](const std::vector<ink::Rect>& marks) {
        return static_cast<double>(
            std::ranges::count_if(marks, [&](const auto& m) { return m.overlaps(box); }));
    };
    const Range start = range(p, box, p.face_share, 1 - p.face_share), curve = range(p, box, 1, -1),
                face = range(p, box, 1, 0), path = range(p, box, 0, 1);
    double sum = 30 * over(p.shots) + 60 * over(p.middles) + 500 * over(others);
    const auto outside = [](const Range& r, double sign) { // which part lies in another field
        const double part = (sign > 0 ? -r.least : r.most) / (r.most - r.least);
        return part > 0 ? 6 + 60 * std::min(part, 1.0) : 0;
    };
    sum += outside(start, f.start) + outside(curve, f.curve);
    sum += 1.5 * (lines_crossed(start, p.start_step) + lines_crossed(curve, p.curve_step));
    sum += 2.5 * (face.crosses(0) + path.crosses(0));
    sum += 4 * covered(box, p.wanted);
    const double dx = (face.least + face.most) / 2 / p.reach - f.wish.x,
                 dy = (path.least + path.most) / 2 / p.reach - f.wish.y;
    return sum + 4 * std::hypot(dx, dy);
}

ink::Rect best_place(const FieldPlan& p, const Field& f, const std::vector<ink::Rect>& others,
                     double width, double height) {
    constexpr int steps = 16;
    constexpr double edge = 3;
    ink::Rect best;
    double least = 1e9;
    for (int i = 0; i <= steps; ++i)
        for (int k = 0; k <= steps; ++k) {
            const ink::Rect box{p.box.x + edge + (p.box.width - 2 * edge - width) * i / steps,
                                p.box.y + edge + (p.box.height - 2 * edge - height) * k / steps,
                                width, height};
            if (const double c = cost(p, f, others, box); c < least) least = c, best = box;
        }
    return best;
}

} // namespace

std::vector<ink::Rect> draw_fields(ink::Drawing& d, const Easel& easel, const FieldPlan& plan) {
    std::vector<ink::Rect> boxes;
    auto style = easel.theme.setting(theme::Text::tick).style;
    style.colour = easel.theme.text;
    const double leading = style.size * 1.2;
    for (const Field& f : fields) {
        const std::string key = std::string("scatter.field.") + f.key;
        const std::array words{easel.words.say(key + ".start"), easel.words.say(key + ".turn")};
        const double width = std::max(easel.type.line(words[0], style).width,
                                      easel.type.line(words[1], style).width);
        const ink::Rect box = best_place(plan, f, boxes, width + 4, 2 * leading + 3);
        d.add(ink::Fill{ink::Path::rect(box), ink::white});
        const double x = f.align == text::Align::left     ? box.x + 2
                         : f.align == text::Align::centre ? box.x + box.width / 2
                                                          : box.right() - 2;
        for (std::size_t i = 0; i < words.size(); ++i)
            d.add(label(easel, style, words[i],
                        {x, box.y + 1 + style.size + static_cast<double>(i) * leading}, f.align));
        boxes.push_back(box);
    }
    return boxes;
}

} // namespace figure
