#include "drills/way_to.hpp"

#include "diag/finding.hpp"
#include "yaml/field.hpp"

#include <algorithm>
#include <cctype>

namespace drills {

namespace {

bool digit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }

/// "H" of "h9": the letter of a code of one letter and digits; nothing for other words.
char family_of(const std::string& code) {
    const bool is_code = code.size() > 1 && std::isalpha(static_cast<unsigned char>(code[0])) &&
                         std::ranges::all_of(code.substr(1), digit);
    return is_code ? static_cast<char>(std::toupper(static_cast<unsigned char>(code[0]))) : '\0';
}

} // namespace

std::string way_to(const std::string& written, const std::vector<Drill>& library) {
    constexpr const char* all = "; all stand in 'lessonleaf drills -o drills.pdf'";
    const std::string word = yaml::plain_word(written);
    std::vector<std::string_view> known;
    std::vector<std::string> family;
    for (const Drill& drill : library) {
        if (yaml::plain_word(drill.name) == word || yaml::plain_word(drill.id) == word)
            return "write its code: " + drill.id;
        if (family_of(written) != '\0' && family_of(drill.id) == family_of(written))
            family.push_back(drill.id);
        known.push_back(drill.id);
    }
    if (family.size() > 1) return family.front() + " to " + family.back() + " are known" + all;
    if (family.size() == 1) return family.front() + " is known" + all;
    const auto near = diag::nearest(written, known);
    if (!near.empty()) return "did you mean '" + std::string(near) + "'?";
    return "name a drill of the library, such as H1, or write your own in drills.yaml" +
           std::string(all);
}

} // namespace drills
