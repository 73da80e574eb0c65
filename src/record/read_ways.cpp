#include "record/parts.hpp"

#include <algorithm>

namespace record {

namespace {

constexpr std::array<std::string_view, 6> languages{"en-GB", "en-US", "de", "fr", "es", "sv"};
constexpr std::array<std::string_view, 3> papers{"A4", "Letter", "A5"};

/// What coaches call them.
struct Called {
    std::string_view word, language;
};
constexpr std::array called{
    Called{"english", "en-GB"}, Called{"british", "en-GB"}, Called{"american", "en-US"},
    Called{"german", "de"},     Called{"deutsch", "de"},    Called{"french", "fr"},
    Called{"français", "fr"},   Called{"francais", "fr"},   Called{"spanish", "es"},
    Called{"español", "es"},    Called{"espanol", "es"},    Called{"castellano", "es"},
    Called{"swedish", "sv"},    Called{"svenska", "sv"},    Called{"se", "sv"},
};

/// The language that a name, or a tag of another country such as de-AT, stands for; empty when
/// none.
std::string_view meant_language(const std::string& word) {
    const auto name = std::ranges::find(called, word, &Called::word);
    if (name != called.end()) return name->language;
    if (word.size() != 5 || word[2] != ' ' || word == "en gb" || word == "en us") return {};
    if (word.starts_with("en")) return "en-GB";
    const auto base = std::ranges::find(languages, word.substr(0, 2));
    return base == languages.end() ? std::string_view() : *base;
}

/// What is not kept, whoever asks for it, and why.
struct NotKept {
    std::string_view key, why;
};
constexpr std::string_view health = "health is not kept here: leave the line out";
constexpr std::string_view birth =
    "a date of birth is not kept: the sheets need no more than age: adult or junior";
constexpr std::string_view telephone =
    "a telephone number is not kept: sheets go out by mail or by hand, so leave the line out";
constexpr std::array not_kept{
    NotKept{"health", health},
    NotKept{"injury", health},
    NotKept{"injuries", health},
    NotKept{"pain", health},
    NotKept{"medical", health},
    NotKept{"allergy", health},
    NotKept{"allergies", health},
    NotKept{"medication", health},
    NotKept{"born", birth},
    NotKept{"birthday", birth},
    NotKept{"birth date", birth},
    NotKept{"date of birth", birth},
    NotKept{"birth", birth},
    NotKept{"year of birth", birth},
    NotKept{"phone", telephone},
    NotKept{"telephone", telephone},
    NotKept{"phone number", telephone},
    NotKept{"telephone number", telephone},
    NotKept{"mobile", telephone},
    NotKept{"cell", telephone},
    NotKept{"tel", telephone},
    NotKept{"whatsapp", telephone},
};

std::string first_word(const std::string& name) { return name.substr(0, name.find(' ')); }

/// "R. M."; each letter may take more than one byte.
std::string initials(const std::string& name) {
    std::string out;
    bool start = true;
    for (std::size_t i = 0; i < name.size(); ++i) {
        const auto byte = static_cast<unsigned char>(name[i]);
        if (name[i] == ' ' || name[i] == '-') {
            start = true;
            continue;
        }
        if (start && !out.empty()) out += ' ';
        if (start) {
            out += name[i];
            for (; (byte & 0x80) != 0 && i + 1 < name.size() &&
                   (static_cast<unsigned char>(name[i + 1]) & 0xC0) == 0x80;
                 ++i)
                out += name[i + 1];
            out += '.';
        }
        start = false;
    }
    return out;
}

} // namespace

void read_language(const yaml::Field& field, std::string& language) {
    const std::string_view meant = meant_language(yaml::plain_word(field.written()));
    if (!meant.empty())
        field.must("be " + diag::either({languages.begin(), languages.end()}),
                   "did you mean '" + std::string(meant) + "'?");
    else if (const auto index = field.one_of(languages))
        language = std::string(languages[*index]);
}

void read_paper(const yaml::Field& field, Paper& paper) {
    if (const auto chosen = choose<Paper>(field, papers)) paper = *chosen;
}

void read_print_name(const yaml::Field& field, PrintName& print_name) {
    if (const auto chosen = choose<PrintName>(field, print_names)) print_name = *chosen;
}

std::vector<std::string_view> refuse_private(const yaml::Field& field, diag::Findings& findings,
                                             std::string_view except) {
    std::vector<std::string_view> told;
    const std::string where = field.called() == "the file" ? "the record" : field.called();
    for (const auto& [key, value] : field.entries()) {
        const auto row = std::ranges::find(not_kept, yaml::plain_word(key.value), &NotKept::key);
        if (row == not_kept.end() || row->key == except) continue;
        findings.error(key.span, where + " has no key " + diag::quote(key.value),
                       std::string(row->why));
        told.push_back(row->key);
    }
    return told;
}

std::string shortened(const std::string& name, const Start& start) {
    std::string first = start.first_name.empty() ? first_word(name) : start.first_name;
    switch (start.print_name) {
    case PrintName::as_written:
        return name.empty() ? start.first_name : name;
    case PrintName::first_name:
        return first;
    case PrintName::initials:
        return initials(start.family_name.empty() ? (name.empty() ? first : name)
                                                  : first + " " + start.family_name);
    case PrintName::code:
        return {};
    }
    return name;
}

} // namespace record
