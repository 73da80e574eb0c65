// The name under which a file is written: it may promise only what is written.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cli {

/// What a command writes into one file, in the words of its messages.
struct Written {
    std::string_view what;                 ///< "a binder"
    std::string_view as;                   ///< "PDF"
    std::vector<std::string_view> endings; ///< in small letters
    std::string_view usual;                ///< a file's name in a folder: "binder.pdf"
};

/// The ending of a file's name in small letters, with its dot; empty when there is none.
std::string ending_of(const std::string& target);

/// Records, registers and tables end so. Nothing that is printed does, so that a slip writes over
/// none of them.
bool ends_as_input(const std::string& target);

/// Refuses a folder and a file of any other ending, and says a name that will do; "-" is standard
/// output.
bool rightly_named(const Written& written, const std::string& target);

/// Why a PDF that lies there stays: another program made it, or it is somebody's binder. Nothing
/// when it may be written over. `pdf` are its bytes.
std::optional<std::string> taken(const std::string& target, const std::string& pdf);

/// Notes those of `files` that are not among `made`.
void tell_left_over(const std::vector<std::string>& files, const std::vector<std::string>& made);

/// There already, or ends as a folder does.
bool is_folder(const std::string& target);

/// Throws output::CannotWrite.
void make_folder(const std::string& folder);

} // namespace cli
