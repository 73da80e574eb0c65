#include "output/bounds.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace output {

namespace {

ink::Rect cut(const ink::Rect& box, const ink::Rect& by) {
    const double left = std::max(box.x, by.x), top = std::max(box.y, by.y);
    return {left, top, std::max(0.0, std::min(box.right(), by.right()) - left),
            std::max(0.0, std::min(box.bottom(), by.bottom()) - top)};
}

ink::Rect box_of(const ink::Words& words) {
    if (words.turn == 0) return words.box();
    const double a = -words.turn * std::numbers::pi / 180, c = std::cos(a), s = std::sin(a);
    ink::Rect out{words.at.x, words.at.y, 0, 0};
    for (const ink::Point p : {ink::Point{0, -words.ascent},
                               {words.width, -words.ascent},
                               {words.width, words.descent},
                               {0, words.descent}})
        out = out.united({words.at.x + c * p.x - s * p.y, words.at.y + s * p.x + c * p.y, 0, 0});
    return out;
}

struct Box {
    std::optional<ink::Rect> operator()(const ink::Fill& m) const { return m.path.bounds(); }
    std::optional<ink::Rect> operator()(const ink::Stroke& m) const {
        return m.path.bounds().inset(-m.width / 2);
    }
    std::optional<ink::Rect> operator()(const ink::Words& m) const { return box_of(m); }
    std::optional<ink::Rect> operator()(const ink::Picture& m) const { return m.box; }
    template <class Other>
    std::optional<ink::Rect> operator()(const Other&) const {
        return std::nullopt;
    }
};

} // namespace

std::optional<ink::Rect> bounds_of(const std::vector<ink::Mark>& marks, std::size_t first,
                                   std::size_t last) {
    std::optional<ink::Rect> out;
    std::vector<ink::Rect> clips;
    for (std::size_t i = first; i < last; ++i) {
        if (const auto* clip = std::get_if<ink::Clip>(&marks[i])) {
            if (!clip->opens) {
                if (!clips.empty()) clips.pop_back();
                continue;
            }
            const ink::Rect box = clip->path.bounds();
            clips.push_back(clips.empty() ? box : cut(box, clips.back()));
            continue;
        }
        auto box = std::visit(Box{}, marks[i]);
        if (!box) continue;
        if (!clips.empty()) box = cut(*box, clips.back());
        out = out ? out->united(*box) : *box;
    }
    return out;
}

} // namespace output
