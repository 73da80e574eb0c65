// The one typesetter: every width and every line break comes from here, whatever the output.
#pragma once

#include "ink/mark.hpp"

#include <string_view>
#include <vector>

namespace text {

enum class Align : std::uint8_t { left, centre, right };

/// A paragraph set to a width: lines with `at` relative to the paragraph's top left corner.
struct Lines {
    std::vector<ink::Words> lines;
    double width = 0;  ///< of the widest line
    double height = 0; ///< line count times leading
};

/// Measures and sets text. Nothing in the program measures text in another way.
class Typesetter {
  public:
    virtual ~Typesetter() = default;

    /// Breaks `words` into lines no wider than `width` (a single long word is broken inside when it
    /// must be). '\n' starts a new line. `leading` is the distance of baselines in points; the
    /// first baseline lies where the text is optically centred in its first `leading`.
    virtual Lines set(std::string_view words, const ink::Style& style, double width, double leading,
                      Align align = Align::left) const = 0;

    /// One line, never broken; `at` is the start of its baseline.
    virtual ink::Words line(std::string_view words, const ink::Style& style,
                            ink::Point at = {}) const = 0;

    /// Code points that no font of the set can show, each once, in order of appearance.
    virtual std::vector<char32_t> missing(std::string_view words,
                                          const ink::Style& style) const = 0;
};

/// A toy with even letters (0.5 em each, ascent 0.75 em, descent 0.25 em): layout tests need no
/// font.
class EvenTypesetter final : public Typesetter {
  public:
    Lines set(std::string_view words, const ink::Style& style, double width, double leading,
              Align align = Align::left) const override;
    ink::Words line(std::string_view words, const ink::Style& style,
                    ink::Point at = {}) const override;
    std::vector<char32_t> missing(std::string_view, const ink::Style&) const override { return {}; }
};

} // namespace text
