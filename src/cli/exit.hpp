// How a run ends.
#pragma once

namespace cli {

enum Exit : int {
    all_written = 0,
    findings = 1,  ///< in the input
    wrong_use = 2, ///< of the command line
    no_file = 3,   ///< something cannot be read or written
};

} // namespace cli
