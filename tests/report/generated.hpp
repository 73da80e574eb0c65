// Lesson records made at random from a seed: names in five scripts and more, texts of any length,
// any field missing, tables of any size. They go the way of a coach's file: text, reader, story,
// pages.
#pragma once

#include "report/tell.hpp"
#include "theme/theme.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace generated {

/// A small generator with the same numbers everywhere (Knuth's congruence; the standard library's
/// distributions differ between systems).
class Dice {
  public:
    explicit Dice(std::uint64_t seed)
        : state_(seed * 2862933555777941757ull + 3037000493ull) {}
    std::uint32_t next() {
        state_ = state_ * 6364136223846793005ull + 1442695040888963407ull;
        return static_cast<std::uint32_t>(state_ >> 33);
    }
    int number(int least, int most) {
        return least + static_cast<int>(next() % static_cast<std::uint32_t>(most - least + 1));
    }
    double real(double least, double most) {
        return least + (most - least) * next() / 2147483648.0;
    }
    bool one_in(int n) { return next() % static_cast<std::uint32_t>(n) == 0; }
    template <class List>
    const auto& of(const List& list) {
        return list[next() % static_cast<std::uint32_t>(std::size(list))];
    }

  private:
    std::uint64_t state_;
};

enum class Script { latin, greek, cyrillic, arabic, hebrew, japanese };
std::string name(Dice& dice, Script script, int letters);
std::string prose(Dice& dice, int characters);

struct Case {
    std::string yaml, csv; ///< no table when `csv` is empty
    Script script = Script::latin;
};

/// The keys of the record that may be missing, for leaving out each in turn.
const std::vector<std::string>& optional_keys();

/// A record; `without` is left out of it.
Case lesson(std::uint64_t seed, const std::string& without = {});

} // namespace generated
