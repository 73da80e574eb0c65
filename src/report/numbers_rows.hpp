// Rows of numbers, one part of a story each.
#pragma once

#include "report/numbers.hpp"

namespace report {

/// Collects rows and turns SI into the student's units.
class Rows {
  public:
    explicit Rows(unit::Units units)
        : units_(units) {}

    /// A value of a measure; the range may be absent.
    Number& add(std::string what, std::string block, unit::Measure measure, double value,
                std::string origin);
    /// A count or a part.
    Number& plain(std::string what, std::string block, double value, std::string origin);
    Number& with_unit(std::string what, std::string block, double value, std::string unit,
                      std::string origin);
    /// A range for the row added last, in SI of that measure.
    void range(unit::Measure measure, double lower, double upper);

    std::vector<Number> take() { return std::move(rows_); }

  private:
    double shown(unit::Measure measure, double value) const;
    unit::Units units_;
    std::vector<Number> rows_;
};

void add_evidence(Rows& rows, const page::Evidence& evidence);
void add_practice(Rows& rows, const page::Story& story);
void add_ball(Rows& rows, const page::BallStory& ball, const words::Speaker& speaker);

} // namespace report
