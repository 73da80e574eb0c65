#include "cli/enclosed.hpp"

#include "cli/pictures.hpp"
#include "record/read_date.hpp"
#include "record/start.hpp"

#include <array>
#include <charconv>

namespace cli {

namespace {

constexpr std::array<std::string_view, 3> papers{"A4", "Letter", "A5"};

std::string yaml_text(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') out += '\\';
        out += c;
    }
    return out + "\"";
}

std::string number(double value) {
    std::array<char, 32> buffer{};
    return {buffer.data(), std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr};
}

std::string line(std::string_view key, std::string_view value) {
    return "  " + std::string(key) + ": " + std::string(value) + "\n";
}

std::string yes_no(bool answer) { return answer ? "yes" : "no"; }

std::string club_of(const record::Club& club) {
    std::string out = "    - {name: " + yaml_text(club.name);
    if (club.loft) out += ", loft: " + number(club.loft->value);
    if (club.lie) out += ", lie: " + number(club.lie->value);
    if (club.face_share) out += ", face share: " + number(*club.face_share * 100);
    if (!club.share_from.empty()) out += ", share from: " + yaml_text(club.share_from);
    return out + "}\n";
}

std::string units_of(const people::Person& person) {
    std::string out;
    if (person.distance)
        out += "distance: " +
               std::string(unit::symbol(unit::Kind::length, {*person.distance, unit::Speed{}}));
    if (person.speed)
        out += (out.empty() ? "" : ", ") + std::string("speed: ") +
               std::string(unit::symbol(unit::Kind::speed, {unit::Distance{}, *person.speed}));
    return out.empty() ? out : line("units", "{" + out + "}");
}

std::string first_letter(const std::string& name) {
    std::size_t end = 1;
    while (end < name.size() && (static_cast<unsigned char>(name[end]) & 0xC0) == 0x80)
        ++end;
    return name.substr(0, end);
}

/// The student's entry, without what is for mail only. Of the family name its initial.
std::string entry_of(const people::Person& person) {
    std::string out = "# This student alone, as far as the sheet needs it.\n- code: " +
                      yaml_text(person.code.value) + "\n";
    out += line("first name", yaml_text(person.first_name));
    if (!person.family_name.empty())
        out += line("family name", yaml_text(first_letter(person.family_name)));
    out += line("hand", person.hand.value == unit::Hand::left ? "left" : "right");
    if (person.age == record::Age::junior)
        out += line("age", "junior") + line("guardian", "{name: \"not enclosed\"}");
    if (!person.coach.empty()) out += line("coach", yaml_text(person.coach));
    if (person.language) out += line("language", *person.language);
    if (person.paper) out += line("paper", papers[static_cast<std::size_t>(*person.paper)]);
    if (person.large_print) out += line("large print", yes_no(*person.large_print));
    if (person.glove) out += line("glove", yes_no(*person.glove));
    out += units_of(person);
    if (person.print_name)
        out +=
            line("print name", record::print_names[static_cast<std::size_t>(*person.print_name)]);
    if (!person.bag.empty()) out += "  bag:\n";
    for (const auto& club : person.bag)
        out += club_of(club);
    return out;
}

/// The record; the date that only its folder told is added, for folders do not go along.
std::string record_of(const Read& read) {
    std::string text = read.sources.front().text();
    const auto& date = read.lesson.date;
    if (date.span.line != 0 || !date.value.ok() || text.starts_with('{')) return text;
    if (!text.empty() && text.back() != '\n') text += '\n';
    return text + "date: " + record::iso(date.value) + "   # of its folder\n";
}

} // namespace

std::vector<output::Attachment> enclosed(const Read& read) {
    std::vector<output::Attachment> out;
    for (const auto& source : read.sources) {
        const fs::path path = source.name();
        const bool yaml = path.extension() == ".yaml" || path.extension() == ".yml";
        const bool record = &source == &read.sources.front();
        out.push_back({path.filename().string(), yaml ? "application/yaml" : "text/csv",
                       record ? record_of(read) : source.text()});
    }
    const Academy* academy = read.academy.get();
    if (academy && academy->house)
        if (auto text = text_of(academy->house_path))
            out.push_back({"house.yaml", "application/yaml", std::move(*text)});
    if (const auto* person = academy ? academy->person(read.lesson.student.code) : nullptr)
        out.push_back({"people.yaml", "application/yaml", entry_of(*person)});
    for (const auto& path : mark_files(read.lesson))
        if (auto bytes = text_of(path))
            out.push_back(
                {path.filename().string(),
                 path.extension() == ".svg" ? "image/svg+xml" : "application/octet-stream",
                 std::move(*bytes)});
    return out;
}

} // namespace cli
