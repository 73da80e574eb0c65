#include "cli/gather.hpp"

namespace cli {

std::vector<Gathered> gather(const Workshop& workshop, std::vector<std::unique_ptr<Read>> lessons,
                             const text::Typesetter& type) {
    std::vector<Gathered> out;
    for (auto& read : lessons) {
        Gathered one{std::move(read), nullptr};
        if (one.read->readable && one.read->findings.clean())
            one.sheet = std::make_unique<Sheet>(workshop, *one.read, type);
        out.push_back(std::move(one));
    }
    return out;
}

} // namespace cli
