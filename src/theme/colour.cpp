#include "theme/colour.hpp"

#include <charconv>
#include <cmath>

namespace theme {

namespace {

int digit(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    if (c >= 'A' && c <= 'F') return c - 'A' + 10;
    return -1;
}

double linear(double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); }

double luminance(const ink::Colour& c) {
    return 0.2126 * linear(c.red) + 0.7152 * linear(c.green) + 0.0722 * linear(c.blue);
}

/// One decimal, always rounded down: 4.46 must not be told as 4.5.
std::string tenths(double value) {
    const int n = static_cast<int>(value * 10);
    return std::to_string(n / 10) + "." + std::to_string(n % 10);
}

} // namespace

std::optional<ink::Colour> colour_of(std::string_view text) {
    if (text.size() != 4 && text.size() != 7) return std::nullopt;
    if (text.front() != '#') return std::nullopt;
    const std::size_t step = text.size() == 7 ? 2 : 1;
    double parts[3];
    for (std::size_t i = 0; i < 3; ++i) {
        const int high = digit(text[1 + i * step]), low = digit(text[i * step + step]);
        if (high < 0 || low < 0) return std::nullopt;
        parts[i] = (high * 16 + low) / 255.0;
    }
    return ink::Colour{parts[0], parts[1], parts[2]};
}

std::string text_of(const ink::Colour& colour) {
    static constexpr const char* digits = "0123456789abcdef";
    std::string out = "#";
    for (const double part : {colour.red, colour.green, colour.blue}) {
        const auto byte = static_cast<std::size_t>(std::lround(part * 255));
        out += digits[byte / 16];
        out += digits[byte % 16];
    }
    return out;
}

double contrast(const ink::Colour& a, const ink::Colour& b) {
    const double x = luminance(a), y = luminance(b);
    return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

ink::Colour darkened(ink::Colour colour, double least) {
    const ink::Colour start = colour;
    for (double k = 1; contrast(colour, ink::white) < least && k > 0; k -= 0.01) {
        // whole bytes, so that the colour told to the coach is the colour printed
        const auto part = [k](double c) { return std::floor(c * k * 255) / 255; };
        colour = {part(start.red), part(start.green), part(start.blue)};
    }
    return colour;
}

std::optional<ink::Colour> accent_of(const diag::Located<std::string>& written,
                                     diag::Findings& findings) {
    if (written.value.empty()) return std::nullopt;
    const auto colour = colour_of(written.value);
    if (!colour) {
        findings.error(written.span,
                       "'accent' must be a colour such as \"#005c99\", found " +
                           diag::quote(written.value),
                       "six figures or letters a to f behind a #, all of it in quotes");
        return std::nullopt;
    }
    const double ratio = contrast(*colour, ink::white);
    if (ratio >= text_contrast) return colour;
    const ink::Colour dark = darkened(*colour);
    findings.warning(written.span,
                     "the accent " + diag::quote(written.value) + " is too light for text: " +
                         tenths(ratio) + " to 1 on white, and text needs 4.5",
                     "it is printed darker, as " + text_of(dark) +
                         "; write that colour, or a darker one of your own");
    return dark;
}

} // namespace theme
