// All that decides the bytes of a sheet, as one digest.
#pragma once

#include "cli/workshop.hpp"
#include "output/seal.hpp"

namespace cli {

/// The program, its libraries, the fonts and the templates; read once a run.
class Origin {
  public:
    explicit Origin(const Workshop& workshop);

    /// With the record and every file it draws on: contents only, no dates and no paths.
    output::Digest of(const Read& read) const;

  private:
    output::Hash common_;
};

} // namespace cli
