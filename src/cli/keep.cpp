#include "cli/keep.hpp"

#include "hand/album.hpp"
#include "output/cabinet.hpp"

#include <memory>

namespace cli {

void keep_drawings() {
    const auto cabinet = std::make_shared<output::Cabinet>(output::cabinet_folder());
    hand::album().keep_in({[cabinet](const std::string& key) { return cabinet->find(key); },
                           [cabinet](const std::string& key, const std::string& bytes) {
                               cabinet->keep(key, bytes);
                           }});
}

} // namespace cli
