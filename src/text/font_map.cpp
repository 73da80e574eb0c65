#include "text/font_map.hpp"

#include <fontconfig/fcfreetype.h>
#include <pango/pangofc-fontmap.h>

#include <cstdlib>
#include <mutex>

namespace text {

namespace {

const FcChar8* bytes(const std::string& text) {
    return reinterpret_cast<const FcChar8*>(text.c_str());
}

/// Scans the file itself: directories would be looked up in, and written to, the user's cache.
Held<FcConfig> configure(const Family& first, const Face& face, const std::string& root) {
    Held<FcConfig> config(FcConfigCreate());
    const auto path = root + "/" + std::string(first.folder) + "/" + std::string(face.file);
    if (!FcConfigAppFontAddFile(config.get(), bytes(path)))
        throw MissingFont(std::string("the font file '") + path +
                          "' cannot be read; add it with: apt-get install " +
                          std::string(first.package));
    return config;
}

/// Adds the first face of each file only: collections hold further regional faces.
bool add_fallback(FcConfig* config, const Fallback& other, const std::string& root) {
    bool whole = true;
    for (const auto file : other.files) {
        int faces = 0;
        const auto path = root + "/" + std::string(file);
        FcPattern* pattern = FcFreeTypeQuery(bytes(path), 0, nullptr, &faces);
        whole =
            pattern && FcFontSetAdd(FcConfigGetFonts(config, FcSetApplication), pattern) && whole;
    }
    return whole;
}

Held<FcCharSet> coverage(FcConfig* config) {
    Held<FcCharSet> covered(FcCharSetCreate());
    const FcFontSet* fonts = FcConfigGetFonts(config, FcSetApplication);
    for (int i = 0; i < fonts->nfont; ++i) {
        FcCharSet* one = nullptr;
        if (FcPatternGetCharSet(fonts->fonts[i], FC_CHARSET, 0, &one) == FcResultMatch)
            FcCharSetMerge(covered.get(), one, nullptr);
    }
    return covered;
}

} // namespace

FontMap::FontMap(const Family& first, const Face& face, FallbackSet others, const std::string& root)
    : config_(configure(first, face, root))
    , names_(first.name) {
    for (std::size_t i = 0; i < fallbacks().size(); ++i)
        if ((others >> i & 1u) && add_fallback(config_.get(), fallbacks()[i], root))
            names_.append(",").append(fallbacks()[i].name);
    covered_ = coverage(config_.get());

    map_.reset(pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT));
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(map_.get()), config_.get());
    context_.reset(pango_font_map_create_context(map_.get()));
    pango_context_set_language(context_.get(), pango_language_from_string("en"));
    pango_context_set_round_glyph_positions(context_.get(), FALSE);
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(context_.get(), options);
    cairo_font_options_destroy(options);
    layout_.reset(pango_layout_new(context_.get()));
    pango_layout_set_wrap(layout_.get(), PANGO_WRAP_WORD_CHAR);
}

void fix_language() {
    static std::once_flag once;
    std::call_once(once, [] { setenv("PANGO_LANGUAGE", "en", 1); });
}

bool FontMap::covers(char32_t code) const { return FcCharSetHasChar(covered_.get(), code); }

} // namespace text
