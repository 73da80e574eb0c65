// Shots of one measure as dots: every shot is drawn.
#pragma once

#include "figure/easel.hpp"
#include "figure/scale.hpp"
#include "figure/symbol.hpp"
#include "measure/change.hpp"

#include <optional>
#include <string>
#include <vector>

namespace figure {

struct Dot {
    int number = 0;
    double value = 0; ///< SI or degrees
    bool set_aside = false;
};

/// One block of one measure.
struct DotRow {
    Symbol symbol = Symbol::before;
    std::string name;      ///< "Before"
    std::vector<Dot> dots; ///< in order
    measure::Sample sample;
};

struct DotInput {
    unit::Measure measure = unit::Measure::face;
    std::vector<DotRow> rows; ///< empty rows are left out
    std::optional<std::pair<double, double>> wanted;
    std::string message; ///< alternative text
};

/// The named aim, shot by shot from top to bottom: right on paper is right of the target. `height`
/// is a wish; many shots share it.
ink::Drawing shot_by_shot(const Easel& easel, const DotInput& input, double width, double height);

/// A small strip for a table's row: dots on one line a block, middle half and median. `named`: the
/// rows bear their names left of the scale, a sided axis its directions.
ink::Drawing strip(const Easel& easel, const DotInput& input, const Scale& scale, double width,
                   bool named = false);

/// Values of all dots that count, and the wanted range: what a scale must hold.
std::vector<double> spread_of(const DotInput& input);

/// "10", "10.5": a tick in display units; sided measures without a sign, since the axis says the
/// side.
std::string tick_text(const Easel& easel, unit::Measure measure, double shown);

} // namespace figure
