#include "text/shape.hpp"

#include <algorithm>

namespace text {

namespace {

constexpr double points(int pango_units) { return static_cast<double>(pango_units) / PANGO_SCALE; }

/// Pango lists glyphs from left to right, whatever the direction; a cluster is a stretch of glyphs
/// of the same first byte.
struct Stretch {
    int first_glyph, glyphs, first_byte, bytes;
};

std::vector<Stretch> stretches(const PangoGlyphItem& item) {
    std::vector<Stretch> out;
    const auto& string = *item.glyphs;
    for (int i = 0; i < string.num_glyphs; ++i) {
        if (!out.empty() && out.back().first_byte == string.log_clusters[i])
            ++out.back().glyphs;
        else
            out.push_back({i, 1, string.log_clusters[i], 0});
    }
    const bool backward = item.item->analysis.level % 2 != 0;
    int end = item.item->length;
    const auto close = [&](Stretch& s) { s.bytes = end - s.first_byte, end = s.first_byte; };
    if (backward)
        std::for_each(out.begin(), out.end(), close);
    else
        std::for_each(out.rbegin(), out.rend(), close);
    return out;
}

/// Draws one cluster at `pen` and moves it on; false when nothing of it is visible.
bool draw(const PangoGlyphItem& item, const Stretch& stretch, int& pen, Run& run) {
    const auto before = run.glyphs.size();
    for (int i = stretch.first_glyph; i < stretch.first_glyph + stretch.glyphs; ++i) {
        const PangoGlyphInfo& info = item.glyphs->glyphs[i];
        if (info.glyph != PANGO_GLYPH_EMPTY) {
            const bool unknown = (info.glyph & PANGO_GLYPH_UNKNOWN_FLAG) != 0;
            run.glyphs.push_back({unknown ? 0ul : info.glyph, points(pen + info.geometry.x_offset),
                                  points(info.geometry.y_offset)});
        }
        pen += info.geometry.width;
    }
    return run.glyphs.size() > before;
}

Run run_of(const PangoGlyphItem& item, const char* layout_text, int& pen) {
    Run run;
    run.backward = item.item->analysis.level % 2 != 0;
    auto* font = pango_cairo_font_get_scaled_font(PANGO_CAIRO_FONT(item.item->analysis.font));
    run.font.reset(cairo_scaled_font_reference(font));
    std::vector<std::string> texts;
    for (const auto& stretch : stretches(item)) {
        const auto before = run.glyphs.size();
        if (!draw(item, stretch, pen, run)) continue;
        texts.emplace_back(layout_text + item.item->offset + stretch.first_byte,
                           static_cast<std::size_t>(stretch.bytes));
        run.clusters.push_back({stretch.bytes, static_cast<int>(run.glyphs.size() - before)});
    }
    if (run.backward) {
        std::ranges::reverse(texts);
        std::ranges::reverse(run.clusters);
    }
    for (const auto& piece : texts)
        run.text += piece;
    return run;
}

} // namespace

std::shared_ptr<const ink::Shaped> shape(PangoLayoutLine* line, const char* layout_text) {
    auto shaped = std::make_shared<ink::Shaped>();
    int pen = 0;
    for (const GSList* at = line->runs; at; at = at->next) {
        auto run = run_of(*static_cast<const PangoGlyphItem*>(at->data), layout_text, pen);
        if (!run.glyphs.empty()) shaped->runs.push_back(std::move(run));
    }
    return shaped;
}

} // namespace text
