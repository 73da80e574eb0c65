#include "cli/academy.hpp"

#include "cli/records.hpp"
#include "cli/workshop.hpp"

namespace cli {

namespace {

/// The first file in the folder of `path` or in one of those above it, six in all, that bears one
/// of the names.
std::optional<fs::path> first_upward(const fs::path& path, const std::vector<std::string>& names) {
    std::error_code gone;
    fs::path folder = fs::absolute(path, gone).lexically_normal();
    if (!fs::is_directory(folder, gone)) folder = folder.parent_path();
    if (folder.filename().empty() && folder != folder.root_path()) folder = folder.parent_path();
    for (int level = 0; level < 6 && !folder.empty(); ++level, folder = folder.parent_path()) {
        for (const auto& name : names)
            if (fs::is_regular_file(folder / name, gone)) return folder / name;
        if (folder == folder.parent_path()) break;
    }
    return std::nullopt;
}

} // namespace

std::optional<fs::path> upward(const fs::path& path, const char* name) {
    return first_upward(path, {name});
}

std::optional<fs::path> nearly(const fs::path& path, const std::string& name) {
    if (first_upward(path, {name})) return std::nullopt;
    const std::string stem = name.substr(0, name.find('.'));
    std::string large = stem, capital = stem;
    capital[0] = static_cast<char>(capital[0] - 'a' + 'A');
    for (char& c : large)
        c = static_cast<char>(c - 'a' + 'A');
    return first_upward(path, {capital + ".yaml", large + ".YAML", stem + ".yml", capital + ".yml",
                               stem + ".yaml.txt", capital + ".yaml.txt"});
}

std::string usual_name(const fs::path& file) {
    const std::string name = file.filename().string(), small = in_small_letters(name);
    for (const std::string stem : {"house", "people", "drills"})
        for (const std::string ending : {".yaml", ".yml", ".yaml.txt"})
            if (small == stem + ending) return stem + ".yaml";
    return name;
}

std::string shown(const fs::path& path) {
    std::error_code gone;
    const fs::path near = path.lexically_proximate(fs::current_path(gone));
    return near.string().size() < path.string().size() ? near.string() : path.string();
}

namespace {

/// `files`: house.yaml and people.yaml, then files that were meant as one of them or as
/// drills.yaml.
std::shared_ptr<const Academy> read_academy(const std::vector<fs::path>& files) {
    const fs::path &house = files[0], &people = files[1];
    auto academy = std::make_shared<Academy>();
    academy->house_path = house;
    academy->people_path = people;
    const auto source = [&](const fs::path& path) -> const diag::Source* {
        if (path.empty()) return nullptr;
        if (auto text = text_of(path))
            return &academy->sources.emplace_back(shown(path), std::move(*text));
        academy->findings.error({}, "'" + shown(path) + "' cannot be read",
                                "look at the rights of the file");
        return nullptr;
    };
    if (const auto* text = source(house))
        academy->house = people::read_house(*text, academy->findings);
    if (const auto* text = source(people))
        academy->people = people::read_people(*text, academy->findings);
    for (std::size_t i = 2; i < files.size(); ++i)
        academy->findings.warning(academy->sources.emplace_back(shown(files[i]), "").whole(),
                                  "this file is not read for its name",
                                  "call it " + usual_name(files[i]) + ", in small letters");
    return academy;
}

} // namespace

std::string Academy::text_for(std::string_view code) const {
    std::string text;
    const people::Person* own = person(code);
    for (const diag::Source& source : sources) {
        if (!own || own->code.span.source != &source) {
            if (!people || people->list.empty() || people->list[0].span.source != &source)
                text += source.text();
            continue;
        }
        std::uint32_t end = source.line_count() + 1;
        for (const people::Person& other : people->list)
            if (other.span.line > own->span.line) end = std::min(end, other.span.line);
        for (std::uint32_t line = own->span.line; line < end; ++line)
            text += std::string(source.line(line)) + "\n";
    }
    return text;
}

std::string Academy::person_place(const people::Person& person) const {
    const diag::Span& span = person.code.span.source ? person.code.span : person.span;
    return (span.source ? span.source->name() : std::string("people.yaml")) + ", line " +
           std::to_string(span.line);
}

std::shared_ptr<const Academy> Academies::around(const fs::path& path) const {
    std::vector<fs::path> key{upward(path, "house.yaml").value_or(""),
                              upward(path, "people.yaml").value_or("")};
    for (const char* name : {"house.yaml", "people.yaml", "drills.yaml"})
        if (auto other = nearly(path, name)) key.push_back(std::move(*other));
    const std::lock_guard lock(mutex_);
    auto& academy = read_[key];
    if (!academy) academy = read_academy(key);
    return academy;
}

} // namespace cli
