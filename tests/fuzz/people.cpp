// A first letter that chooses the file, then any bytes as house.yaml or people.yaml.
#include "people/people.hpp"
#include "entry.hpp"
#include "people/house.hpp"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0) return 0;
    const diag::Source source("academy.yaml", fuzz::text_of(data + 1, size - 1));
    diag::Findings findings;
    if (data[0] == 'h') {
        const auto house = people::read_house(source, findings);
        static_cast<void>(house);
    } else {
        const auto people = people::read_people(source, findings);
        static_cast<void>(people.find("AD-01"));
    }
    fuzz::print(findings);
    return 0;
}
