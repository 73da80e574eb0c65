#include "people/people.hpp"

#include <algorithm>

namespace people {

bool Person::sound() const {
    return std::ranges::none_of(findings, [](const diag::Finding& finding) {
        return finding.severity == diag::Severity::error;
    });
}

std::string Person::full_name() const {
    if (family_name.empty() || first_name.empty()) return first_name + family_name;
    return first_name + " " + family_name;
}

const Person* People::find(std::string_view code) const {
    const auto found =
        std::ranges::find_if(list, [&](const Person& person) { return person.code.value == code; });
    return found == list.end() || code.empty() ? nullptr : &*found;
}

std::string_view People::nearest_code(std::string_view word) const {
    std::vector<std::string_view> codes;
    for (const Person& person : list)
        codes.push_back(person.code.value);
    return diag::nearest(word, codes);
}

std::string_view People::code_of(std::string_view first_name) const {
    std::string_view code;
    for (const Person& person : list) {
        if (person.first_name != first_name) continue;
        if (!code.empty()) return {};
        code = person.code.value;
    }
    return code;
}

const Addressee* addressee(const Person& person) {
    const Addressee* to = &person.send_to;
    if (person.age == record::Age::junior) to = person.guardian ? &*person.guardian : nullptr;
    return to && !to->address.value.empty() ? to : nullptr;
}

} // namespace people
