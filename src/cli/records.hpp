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
    std::vector<std::string> notes;  ///< on records that nearly have the name, as messages
    bool folders = false;            ///< at least one argument is a folder
    bool whole = true;               ///< false when a folder could not be read
};

/// True when `target` can be a folder of many files; else says what to write. One that is not there
/// yet and ends like a file (".pdf", ".txt", ".eml", ".ics") is none, nor is "-".
bool folder_named(const std::string& command, const std::string& target);

/// Capitals A to Z made small: how names of files are compared.
std::string in_small_letters(std::string text);

/// What is said of a lesson that is left out for its name.
std::string stray(const std::string& path);

/// No record twice, however it is named. Links to folders are not followed. A file that is not
/// there stays in the list: the reader tells.
Records records_of(const std::vector<std::string>& arguments);

/// A name that was meant as lesson.yaml: other capitals, or an ending that an editor has added.
bool nearly_record_name(const std::string& name);

} // namespace cli
