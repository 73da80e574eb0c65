#include "cli/academy.hpp"

#include "cli/workshop.hpp"

namespace cli {

std::optional<fs::path> upward(const fs::path& path, const char* name) {
    std::error_code gone;
    fs::path folder = fs::absolute(path, gone).lexically_normal();
    if (!fs::is_directory(folder, gone)) folder = folder.parent_path();
    if (folder.filename().empty() && folder != folder.root_path()) folder = folder.parent_path();
    for (int level = 0; level < 6 && !folder.empty(); ++level, folder = folder.parent_path()) {
        if (fs::is_regular_file(folder / name, gone)) return folder / name;
        if (folder == folder.parent_path()) break;
    }
    return std::nullopt;
}

namespace {

/// A path as the caller would write it: short where that is possible.
std::string shown(const fs::path& path) {
    std::error_code gone;
    const fs::path near = path.lexically_proximate(fs::current_path(gone));
    return near.string().size() < path.string().size() ? near.string() : path.string();
}

std::shared_ptr<const Academy> read_academy(const fs::path& house, const fs::path& people) {
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
    const std::pair key{upward(path, "house.yaml").value_or(""),
                        upward(path, "people.yaml").value_or("")};
    const std::lock_guard lock(mutex_);
    auto& academy = read_[key];
    if (!academy) academy = read_academy(key.first, key.second);
    return academy;
}

} // namespace cli
