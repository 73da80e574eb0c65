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

/// Whether this is the space that no line breaks between a number and its unit.
bool before_unit(const char* at, int bytes, const char* start) {
    const auto byte = [&](int i) { return static_cast<unsigned char>(at[i]); };
    if (bytes != 2 || byte(0) != 0xC2 || byte(1) != 0xA0 || at == start) return false;
    const bool digit = byte(-1) >= '0' && byte(-1) <= '9';
    const bool unit = byte(2) == '%' || (byte(2) >= 'A' && byte(2) <= 'z') ||
                      (byte(2) == 0xC2 && byte(3) == 0xB0);
    return digit && unit;
}

/// How much narrower that space is set, in Pango's units: a word's is too wide for it.
int narrower(cairo_scaled_font_t* font) {
    constexpr double part = 0.05; // of the letters' size
    cairo_matrix_t size;
    cairo_scaled_font_get_font_matrix(font, &size);
    return static_cast<int>(size.xx * part * PANGO_SCALE);
}

Run run_of(const PangoGlyphItem& item, const char* layout_text, int& pen, int& narrowed) {
    Run run;
    run.backward = item.item->analysis.level % 2 != 0;
    auto* font = pango_cairo_font_get_scaled_font(PANGO_CAIRO_FONT(item.item->analysis.font));
    run.font.reset(cairo_scaled_font_reference(font));
    std::vector<std::string> texts;
    for (const auto& stretch : stretches(item)) {
        const auto before = run.glyphs.size();
        const bool drawn = draw(item, stretch, pen, run);
        if (!run.backward && before_unit(layout_text + item.item->offset + stretch.first_byte,
                                         stretch.bytes, layout_text)) {
            pen -= narrower(font);
            narrowed += narrower(font);
        }
        if (!drawn) continue;
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

SetShape shape(PangoLayoutLine* line, const char* layout_text) {
    auto shaped = std::make_shared<ink::Shaped>();
    int pen = 0, narrowed = 0;
    for (const GSList* at = line->runs; at; at = at->next) {
        auto run =
            run_of(*static_cast<const PangoGlyphItem*>(at->data), layout_text, pen, narrowed);
        if (!run.glyphs.empty()) shaped->runs.push_back(std::move(run));
    }
    return {std::move(shaped), points(narrowed)};
}

} // namespace text
