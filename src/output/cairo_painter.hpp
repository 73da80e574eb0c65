// Marks drawn with Cairo, one function a kind. Nothing is decided here.
#pragma once

#include "ink/mark.hpp"
#include "output/cairo_handle.hpp"

#include <map>

namespace output {

/// Pictures already handed to Cairo, so that one shown twice is stored once.
using Pictures = std::map<const std::string*, Surface>;

class CairoPainter {
  public:
    /// `document`: tags, links and places are written too, and pictures stay as they were encoded.
    enum class Target { image, document };

    CairoPainter(cairo_t* context, Target target, Pictures& pictures);

    /// Throws CannotDraw.
    void paint(const std::vector<ink::Mark>& marks);

  private:
    void draw(const ink::Fill& mark);
    void draw(const ink::Stroke& mark);
    void draw(const ink::Words& mark);
    void draw(const ink::Picture& mark);
    void draw(const ink::Link&) {}  ///< see Structure
    void draw(const ink::Place&) {} ///< see Structure
    void draw(const ink::Tag&) {}   ///< see Structure
    void draw(const ink::Clip& mark);

    void trace(const ink::Path& path);
    void ink(const ink::Colour& colour);
    double snapped(double coordinate) const;

    cairo_t* context_;
    Target target_;
    Pictures& pictures_;
    std::vector<cairo_glyph_t> glyphs_; ///< of the run being drawn, kept for its memory
};

} // namespace output
