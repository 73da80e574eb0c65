#include "cli/inputs.hpp"

#include "cli/pictures.hpp"

namespace cli {

void add_names(const Read& read, std::vector<std::string>& to) {
    for (const auto& source : read.sources)
        to.push_back(source.name());
    if (read.academy)
        for (const auto& source : read.academy->sources)
            to.push_back(source.name());
    for (const auto& earlier : read.earlier)
        for (const auto& source : earlier->sources)
            to.push_back(source.name());
    for (const auto& path : picture_files(read.lesson))
        to.push_back(path.string());
}

std::vector<std::string> names_of(const Read& read) {
    std::vector<std::string> out;
    add_names(read, out);
    return out;
}

} // namespace cli
