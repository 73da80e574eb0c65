// The name under which a file is written: it may promise only what is written.
#pragma once

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

/// There already, or ends as a folder does.
bool is_folder(const std::string& target);

/// Throws output::CannotWrite.
void make_folder(const std::string& folder);

} // namespace cli
