// One face with the fallbacks a text needs, as Pango sees it. Internal to room text.
#pragma once

#include "text/font_set.hpp"

#include <fontconfig/fontconfig.h>
#include <pango/pangocairo.h>

#include <memory>

namespace text {

struct Release {
    void operator()(FcConfig* p) const { FcConfigDestroy(p); }
    void operator()(FcCharSet* p) const { FcCharSetDestroy(p); }
    void operator()(PangoFontDescription* p) const { pango_font_description_free(p); }
    void operator()(PangoAttrList* p) const { pango_attr_list_unref(p); }
    void operator()(PangoFontMap* p) const { g_object_unref(p); }
    void operator()(PangoContext* p) const { g_object_unref(p); }
    void operator()(PangoLayout* p) const { g_object_unref(p); }
    void operator()(PangoFont* p) const { g_object_unref(p); }
};
template <class T>
using Held = std::unique_ptr<T, Release>;

/// Pango picks the language of a script, and with it letter forms, from the environment. It reads
/// this variable once; fixing it first keeps the environment off the page.
void fix_language();

/// Bit n stands for entry n of fallbacks().
using FallbackSet = std::uint32_t;

/// A font map that holds one face of a family and the fallbacks in `others`, nothing else: fewer
/// files to scan, and nothing that could be chosen in its place. A fallback that is not installed
/// is left out; a missing file of the family throws MissingFont.
class FontMap {
  public:
    FontMap(const Family& first, const Face& face, FallbackSet others, const std::string& root);

    PangoContext* context() const { return context_.get(); }
    PangoLayout* layout() const { return layout_.get(); }
    const std::string& names() const { return names_; } ///< families in the order they are tried
    bool covers(char32_t code) const;

  private:
    Held<FcConfig> config_;
    Held<FcCharSet> covered_;
    Held<PangoFontMap> map_;
    Held<PangoContext> context_;
    Held<PangoLayout> layout_;
    std::string names_;
};

} // namespace text
