#include "cli/file_name.hpp"

#include "cli/plain_letters.hpp"
#include "words/date.hpp"

namespace cli {

std::string file_name(const record::Lesson& lesson, const char* ending) {
    constexpr std::size_t longest = 120;
    std::string name =
        plain_letters(lesson.student.code.empty() ? lesson.student.name : lesson.student.code);
    for (char& c : name) {
        const bool plain =
            (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (!plain) c = '-';
    }
    name.erase(0, name.find_first_not_of('-')); // a command would take it for an option
    if (name.empty()) name = "sheet";
    if (name.size() > longest) name.resize(longest);
    name += "-" + words::date_iso(lesson.date.value);
    if (lesson.revision > 1) name += "-r" + std::to_string(lesson.revision);
    return name + ending;
}

std::string file_stem(const std::string& name, const char* otherwise) {
    std::string out;
    for (const char c : plain_letters(name)) {
        const bool plain =
            (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (plain)
            out += c;
        else if (!out.empty() && out.back() != '-')
            out += '-';
    }
    while (!out.empty() && out.back() == '-')
        out.pop_back();
    return out.empty() ? otherwise : out;
}

} // namespace cli
