#include "cli/inputs.hpp"

#include "cli/pictures.hpp"

namespace cli {

std::vector<std::string> names_of(const Read& read) {
    std::vector<std::string> out;
    for (const auto& source : read.sources)
        out.push_back(source.name());
    if (read.academy)
        for (const auto& source : read.academy->sources)
            out.push_back(source.name());
    for (const auto& earlier : read.earlier)
        for (const auto& source : earlier->sources)
            out.push_back(source.name());
    for (const auto& path : picture_files(read.lesson))
        out.push_back(path.string());
    return out;
}

} // namespace cli
