// A drawn hand as plain values: areas and lines in millimetres of the model, y down.
#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace hand {

struct Dot {
    double x = 0, y = 0;
    friend bool operator==(const Dot&, const Dot&) = default;
};

/// One cubic Bezier piece; the start is the end of the piece before.
struct Cubic {
    Dot a, b, to;
    friend bool operator==(const Cubic&, const Cubic&) = default;
};

struct Outline {
    Dot start;
    std::vector<Cubic> pieces;
    bool closed = false;
    friend bool operator==(const Outline&, const Outline&) = default;
};

/// What an area is; the page decides which ink that takes (skin is paper white in the house style).
enum class Tone : std::uint8_t {
    skin,
    shade,
    handle,
    handle_shade,
    handle_light,
    glove,
    club,
    accent,
    mark ///< solid ink: arrow heads
};

/// Which line it is; the page decides the width at print size.
enum class Pen : std::uint8_t {
    outline,
    inner,
    detail,
    handle,
    hatch,
    knuckle, ///< the half-arc round a knuckle that counts as seen: one each
    accent
};

struct Area {
    std::vector<Outline> loops; ///< filled non-zero
    Tone tone = Tone::skin;
    friend bool operator==(const Area&, const Area&) = default;
};

struct Line {
    Outline path;
    Pen pen = Pen::outline;
    bool taper_start = false, taper_end = false; ///< runs out to nothing over 12 mm
    friend bool operator==(const Line&, const Line&) = default;
};

/// A point a call-out can lead to.
struct Anchor {
    std::string
        name; ///< "knuckle 1", "V fork", "V end", "heel pad", "gap", "thumb tip", "handle line" …
    Dot at;
    friend bool operator==(const Anchor&, const Anchor&) = default;
};

struct Picture {
    double width = 0,
           height = 0; ///< the window, millimetres of the model; 0,0 is its top left corner
    std::vector<std::variant<Area, Line>> marks; ///< in drawing order
    std::vector<Anchor> anchors;
    friend bool operator==(const Picture&, const Picture&) = default;
};

/// The same picture for the other hand: x mirrored exactly.
Picture mirrored(Picture picture);

} // namespace hand
