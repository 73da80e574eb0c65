// The typesetter of every real page: Pango with fixed options and the private font set.
#pragma once

#include "text/font_set.hpp"
#include "text/typesetter.hpp"

namespace text {

/// Pango's version: another one may break lines elsewhere.
std::string library_versions();

/// Hinting and rounding are off, so widths scale with the size and hold for every target. Neither
/// the user's fonts nor the environment has a say. Texts are shaped once and kept.
/// Use one typesetter in each thread; make the first one before there are several. Throws
/// MissingFont when a style asks for a family that is not in the set or not installed.
class PangoTypesetter final : public Typesetter {
  public:
    explicit PangoTypesetter(std::string root = std::string(font_root));
    ~PangoTypesetter() override;
    PangoTypesetter(const PangoTypesetter&) = delete;
    PangoTypesetter& operator=(const PangoTypesetter&) = delete;

    Lines set(std::string_view words, const ink::Style& style, double width, double leading,
              Align align = Align::left) const override;
    ink::Words line(std::string_view words, const ink::Style& style,
                    ink::Point at = {}) const override;
    std::vector<char32_t> missing(std::string_view words, const ink::Style& style) const override;

  private:
    struct Engine;
    std::unique_ptr<Engine> engine_;
};

} // namespace text
