#include "shots/header.hpp"

#include "record/unit_size.hpp"

#include <algorithm>
#include <array>

namespace shots {

namespace {

struct Spelling {
    std::string_view name;
    unit::Measure measure;
};

/// Beside the keys of unit::measures.
constexpr std::array spellings{
    Spelling{"face angle", unit::Measure::face},
    Spelling{"club face", unit::Measure::face},
    Spelling{"club path", unit::Measure::path},
    Spelling{"path angle", unit::Measure::path},
    Spelling{"face minus path", unit::Measure::face_path},
    Spelling{"effective loft", unit::Measure::loft},
    Spelling{"attack angle", unit::Measure::attack},
    Spelling{"angle of attack", unit::Measure::attack},
    Spelling{"clubspeed", unit::Measure::club_speed},
    Spelling{"club head speed", unit::Measure::club_speed},
    Spelling{"ballspeed", unit::Measure::ball_speed},
    Spelling{"launch angle", unit::Measure::launch},
    Spelling{"start direction", unit::Measure::start},
    Spelling{"start line", unit::Measure::start},
    Spelling{"backspin", unit::Measure::spin},
    Spelling{"spin axis", unit::Measure::axis},
    Spelling{"carry distance", unit::Measure::carry},
    Spelling{"height", unit::Measure::apex},
    Spelling{"landing angle", unit::Measure::landing},
};

struct Role {
    std::string_view name, role;
};
constexpr std::array roles{Role{"no", "number"},          Role{"no.", "number"},
                           Role{"#", "number"},           Role{"shot", "number"},
                           Role{"shot number", "number"}, Role{"part", "block"},
                           Role{"setaside", "set aside"}};

bool is_unit(std::string_view word) {
    constexpr std::array kinds{unit::Kind::angle, unit::Kind::speed, unit::Kind::length,
                               unit::Kind::spin, unit::Kind::small_length};
    return std::ranges::any_of(
        kinds, [&](unit::Kind k) { return record::unit_size(k, word).has_value(); });
}

/// Where a unit in brackets begins, or npos.
std::size_t bracket(std::string_view text) {
    const bool closed = text.ends_with(')') || text.ends_with(']');
    return closed ? text.find_last_of("([") : std::string_view::npos;
}

} // namespace

std::string plain_name(std::string_view text) {
    text = trimmed(text.substr(0, bracket(text)));
    std::string plain;
    for (char c : text) {
        if (c == '_' || c == '-' || c == '\n' || c == '\r') c = ' ';
        if (c == ' ' && (plain.empty() || plain.back() == ' ')) continue;
        plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    if (plain.ends_with(' ')) plain.pop_back();
    return plain;
}

std::vector<Heading> read_header(const Grid& grid) {
    std::vector<Heading> header;
    for (const Cell& cell : grid.cells(grid.rows().front())) {
        Heading heading{grid.text(cell), {}, {}, false};
        const std::string_view text = heading.written;
        heading.name = plain_name(text);
        if (const std::size_t at = bracket(text); at != std::string_view::npos)
            heading.unit = std::string(trimmed(text.substr(at + 1, text.size() - at - 2)));
        const std::size_t space = heading.name.rfind(' ');
        if (heading.unit.empty() && space != std::string::npos &&
            is_unit(heading.name.substr(space + 1))) {
            heading.unit = heading.name.substr(space + 1);
            heading.name.resize(space);
        }
        header.push_back(std::move(heading));
    }
    return header;
}

std::optional<unit::Measure> own_measure(std::string_view name) {
    if (const auto measure = unit::measure_named(name)) return measure;
    const auto found = std::ranges::find(spellings, name, &Spelling::name);
    if (found == spellings.end()) return std::nullopt;
    return found->measure;
}

std::string_view own_role(std::string_view name) {
    const auto found = std::ranges::find(roles, name, &Role::name);
    return found == roles.end() ? name : found->role;
}

const std::vector<std::string_view>& own_names() {
    static const std::vector<std::string_view> names = [] {
        std::vector<std::string_view> all{"number", "block", "club", "set aside"};
        for (const unit::MeasureRow& row : unit::measures)
            all.push_back(row.key);
        for (const Spelling& spelling : spellings)
            all.push_back(spelling.name);
        return all;
    }();
    return names;
}

} // namespace shots
