// What became of all sheets of a run.
#pragma once

#include "cli/batch.hpp"

#include <string>
#include <vector>

namespace cli {

class Tally {
  public:
    void add(const Outcome& outcome);

    std::size_t failed() const { return failed_; }
    int worst() const { return worst_; }
    /// One screen tells more than the lines above it: there were more than a few.
    bool worth_telling() const { return sheets_ > 4; }
    /// How many "records" or "binders" were written, up to date and failed, and why, for one
    /// screen.
    std::string summary(const std::string& what) const;

  private:
    std::size_t sheets_ = 0, written_ = 0, up_to_date_ = 0, failed_ = 0, elsewhere_ = 0;
    int worst_ = all_written;
    std::vector<std::string> failures_;
};

} // namespace cli
