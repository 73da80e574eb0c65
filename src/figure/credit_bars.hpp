// Whose doing was it: a change in what the ball did, shared out among what the club did.
#pragma once

#include "figure/easel.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace figure {

enum class Factor : std::uint8_t { face, path, loft, speed, strike };

/// One factor's part of the change, in the outcome's unit (SI or degrees, right positive).
struct CreditShare {
    Factor factor = Factor::face;
    double value = 0;
    std::optional<std::pair<double, double>> range; ///< its uncertainty
};

struct CreditInput {
    unit::Measure outcome = unit::Measure::start; ///< start, curve, carry or offline
    std::vector<CreditShare> shares;              ///< in the order in which they are drawn
    double unexplained = 0;                       ///< measured change less the sum of the shares
    double measured = 0;                          ///< after less before
    bool fits = true;                             ///< false: a line says the model does not fit
    std::string message;                          ///< alternative text
};

/// About 80 mm by 35 mm at ordinary print. The scale fits all bars; zero is in the middle for
/// sideways outcomes.
ink::Drawing credit_bars(const Easel& easel, const CreditInput& input, double width);

} // namespace figure
