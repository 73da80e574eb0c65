#include "cli/gather.hpp"

#include "cli/records.hpp"

#include <algorithm>
#include <iostream>

namespace cli {

std::vector<Gathered> gather(const Workshop& workshop, const fs::path& folder,
                             const std::string& code, const text::Typesetter& type) {
    std::vector<Gathered> out;
    const Records below = records_of({folder.string()});
    for (const auto& note : below.notes)
        std::cerr << note;
    for (const fs::path path : below.paths) {
        Gathered one{path, workshop.read(path), nullptr};
        const std::string& whose = one.code();
        if (!code.empty() && !whose.empty() && whose != code) continue;
        if (one.read->readable && one.read->findings.clean() && (code.empty() || whose == code)) {
            one.sheet = std::make_unique<Sheet>(workshop, *one.read, type);
            if (!one.read->findings.clean()) one.sheet.reset();
        } else if (one.read->readable && one.read->findings.clean()) {
            continue; // without a code it is nobody's of this name
        }
        out.push_back(std::move(one));
    }
    std::ranges::stable_sort(out, {}, [](const Gathered& g) { return g.read->lesson.date.value; });
    return out;
}

} // namespace cli
