// Files that are whole or not there.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace output {

/// The file cannot be written; what() names it and says why.
struct CannotWrite : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// Finds out before the work that `target` can be written: its folder exists and is writable, it is
/// not a folder and not one of `inputs` (by identity, not by spelling). "-" is standard output.
/// Throws CannotWrite.
void check_target(const std::string& target, const std::vector<std::string>& inputs = {});

/// Checks, writes beside the target, flushes to the disk and renames. After a failure the old file
/// is as it was and nothing is left behind. "-" writes to standard output. Throws CannotWrite.
void write_file(const std::string& target, std::string_view bytes,
                const std::vector<std::string>& inputs = {});

/// Takes away what runs that were cut off by power or kill have left unfinished in the folder of
/// `target`, or in `target` when it is a folder. What a living run is writing stays.
void sweep(const std::string& target);

/// Before the program is ended from another thread: lets writers under way finish (for five seconds
/// at most) and no further one begin.
void finish_writing();

} // namespace output
