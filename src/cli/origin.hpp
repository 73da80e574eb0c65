// All that decides the bytes of a sheet, as one digest.
#pragma once

#include "cli/workshop.hpp"
#include "output/seal.hpp"

#include <string_view>
#include <vector>

namespace cli {

/// The program, its libraries, the fonts and the templates; read once a run.
class Origin {
  public:
    explicit Origin(const Workshop& workshop);

    /// With the record and every file it draws on: contents only, no dates and no paths.
    output::Digest of(const Read& read) const;
    /// Of papers that are made from several records, and from `more`.
    output::Digest of(const Reads& reads, const std::vector<std::string_view>& more) const;

  private:
    output::Hash common_;
};

} // namespace cli
