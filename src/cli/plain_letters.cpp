#include "cli/plain_letters.hpp"

#include <algorithm>
#include <array>

namespace cli {

namespace {

struct Plain {
    std::string_view letter, plain;
};
constexpr std::array letters{
    Plain{"ä", "ae"}, Plain{"ö", "oe"}, Plain{"ü", "ue"}, Plain{"Ä", "Ae"}, Plain{"Ö", "Oe"},
    Plain{"Ü", "Ue"}, Plain{"ß", "ss"}, Plain{"æ", "ae"}, Plain{"Æ", "Ae"}, Plain{"œ", "oe"},
    Plain{"Œ", "Oe"}, Plain{"ø", "oe"}, Plain{"Ø", "Oe"}, Plain{"å", "a"},  Plain{"Å", "A"},
    Plain{"à", "a"},  Plain{"á", "a"},  Plain{"â", "a"},  Plain{"ã", "a"},  Plain{"À", "A"},
    Plain{"Á", "A"},  Plain{"Â", "A"},  Plain{"Ã", "A"},  Plain{"ç", "c"},  Plain{"Ç", "C"},
    Plain{"è", "e"},  Plain{"é", "e"},  Plain{"ê", "e"},  Plain{"ë", "e"},  Plain{"È", "E"},
    Plain{"É", "E"},  Plain{"Ê", "E"},  Plain{"Ë", "E"},  Plain{"ì", "i"},  Plain{"í", "i"},
    Plain{"î", "i"},  Plain{"ï", "i"},  Plain{"Ì", "I"},  Plain{"Í", "I"},  Plain{"Î", "I"},
    Plain{"Ï", "I"},  Plain{"ñ", "n"},  Plain{"Ñ", "N"},  Plain{"ò", "o"},  Plain{"ó", "o"},
    Plain{"ô", "o"},  Plain{"õ", "o"},  Plain{"Ò", "O"},  Plain{"Ó", "O"},  Plain{"Ô", "O"},
    Plain{"Õ", "O"},  Plain{"ù", "u"},  Plain{"ú", "u"},  Plain{"û", "u"},  Plain{"Ù", "U"},
    Plain{"Ú", "U"},  Plain{"Û", "U"},  Plain{"ý", "y"},  Plain{"ÿ", "y"},  Plain{"Ý", "Y"}};

/// Marks that are stored after their letter: U+0300 to U+036F.
bool is_mark(std::string_view text) {
    return text.size() > 1 && (text[0] == '\xCC' || (text[0] == '\xCD' && text[1] <= '\xAF')) &&
           (text[1] & '\xC0') == '\x80';
}

constexpr std::string_view two_dots = "\xCC\x88"; // U+0308

} // namespace

std::string plain_letters(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const auto known = std::ranges::find_if(
            letters, [&](const Plain& p) { return text.starts_with(p.letter); });
        if (known != letters.end()) {
            out += known->plain;
            text.remove_prefix(known->letter.size());
        } else if (is_mark(text)) {
            const bool dots = text.starts_with(two_dots) && !out.empty() &&
                              std::string_view("aouAOU").find(out.back()) != std::string_view::npos;
            if (dots) out += 'e';
            text.remove_prefix(2);
        } else {
            out += text.front();
            text.remove_prefix(1);
        }
    }
    return out;
}

} // namespace cli
