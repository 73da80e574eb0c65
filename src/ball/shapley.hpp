// Shapley values: the one way to share out a total that gives each factor its average effect over
// all orders, an idle factor nothing, and adds up (Shapley 1953).
#pragma once

#include <array>
#include <bit>
#include <cstddef>

namespace ball {

/// `worth[s]` is the worth of the coalition whose bit i says that factor i takes part.
/// The shares add up to worth of all less worth of none.
template <std::size_t Factors>
std::array<double, Factors> shapley(const std::array<double, (1u << Factors)>& worth) {
    constexpr auto factorial = [](std::size_t n) {
        double f = 1;
        for (std::size_t k = 2; k <= n; ++k)
            f *= static_cast<double>(k);
        return f;
    };
    std::array<double, Factors> weight{}; // by the number of others already in
    for (std::size_t n = 0; n < Factors; ++n)
        weight[n] = factorial(n) * factorial(Factors - 1 - n) / factorial(Factors);
    std::array<double, Factors> share{};
    for (std::size_t i = 0; i < Factors; ++i)
        for (std::size_t s = 0; s < worth.size(); ++s)
            if (!(s >> i & 1u))
                share[i] += weight[static_cast<std::size_t>(std::popcount(s))] *
                            (worth[s | (std::size_t{1} << i)] - worth[s]);
    return share;
}

} // namespace ball
