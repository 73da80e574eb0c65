// Shaped text: the glyphs of one line, ready to be drawn by Cairo without Pango.
#pragma once

#include "ink/mark.hpp"

#include <cairo.h>

#include <memory>
#include <string>
#include <vector>

namespace text {

struct DestroyFont {
    void operator()(cairo_scaled_font_t* font) const { cairo_scaled_font_destroy(font); }
};
using Font = std::unique_ptr<cairo_scaled_font_t, DestroyFont>;

/// A stretch of one font and one direction. Glyph positions count from the start of the baseline,
/// x to the right, in points; clusters tie them to the bytes of `text`.
struct Run {
    Font font;
    std::string text;
    std::vector<cairo_glyph_t> glyphs;
    std::vector<cairo_text_cluster_t> clusters;
    bool backward = false; ///< written from right to left
};

} // namespace text

namespace ink {

struct Shaped {
    std::vector<text::Run> runs; ///< from left to right
};

} // namespace ink
