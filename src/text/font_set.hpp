// The private font set: which families exist, in which files, from which Debian packages.
#pragma once

#include "diag/finding.hpp"

#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace text {

/// A family or a file of the private set is not there. `what()` names the package to add.
struct MissingFont : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// One file of a family. Weights as in ink::Style.
struct Face {
    std::string_view file;
    int weight = 400;
    bool italic = false;
};

/// A family that styles may ask for. Its files lie in `folder` below the font root.
struct Family {
    std::string_view name, folder, package;
    std::vector<Face> faces;

    /// The face of that slope with the nearest weight, the heavier one of two.
    const Face& face(int weight, bool italic) const;
};

/// A family for scripts that the first ones lack, tried in the order of the list. It is looked at
/// only for code points inside `first` to `last`.
struct Fallback {
    std::string_view name, package;
    std::vector<std::string_view> files; ///< below the font root
    char32_t first, last;
};

/// Where Debian puts fonts.
inline constexpr std::string_view font_root = "/usr/share/fonts";

const std::vector<Family>& families();
const std::vector<Fallback>& fallbacks();

/// The Debian package whose family shows that character; empty when none of the set does.
std::string_view package_for(char32_t character);

/// Throws MissingFont when the set has no such family.
const Family& family(std::string_view name);

/// What tells two states of the font files apart: the beginning of each, where an OpenType font
/// keeps a checksum of every table (OpenType 1.9, "Table Directory"). Empty for a missing file.
std::string font_stamps(std::string_view root = font_root);

/// One error for each missing family, one note for each missing fallback, with the command that
/// adds the package. Meant for the start of the program and for set-up.
void check_fonts(diag::Findings& findings, std::string_view root = font_root);

} // namespace text
