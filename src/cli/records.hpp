// Which records a command line names: files as they are, folders for every lesson.yaml below them.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace cli {

struct Records {
    std::vector<std::string>
        paths; ///< in the order of the arguments, a folder's own sorted by name
    std::vector<std::string> faults; ///< folders that cannot be read or hold no record, as messages
    bool folders = false;            ///< at least one argument is a folder
};

/// No record twice, however it is named. Links to folders are not followed. A file that is not
/// there stays in the list: the reader tells.
Records records_of(const std::vector<std::string>& arguments);

} // namespace cli
