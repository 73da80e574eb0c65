// The house's symbols: shape carries the meaning, colour only repeats it.
#pragma once

#include "ink/mark.hpp"

#include <cstdint>

namespace figure {

/// Before: open ring. After: filled disc. Cold test: diamond. Set aside: cross.
enum class Symbol : std::uint8_t { before, after, cold, set_aside };

/// Draws a symbol of that radius; rings and diamonds are filled with paper so that lines end at
/// them.
void put(ink::Drawing& drawing, Symbol symbol, ink::Point at, double radius, ink::Colour colour);

/// An arrow from `from` to `to` with a filled head of that length.
/// How lines of a block are broken: before in dashes, the cold test long and short, after whole.
std::vector<double> dash_of(Symbol symbol, double scale);

void arrow(ink::Drawing& drawing, ink::Point from, ink::Point to, double width, double head,
           ink::Colour colour);

} // namespace figure
