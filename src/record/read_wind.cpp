#include "record/parts.hpp"
#include "record/read_quantity.hpp"

#include <cmath>
#include <numbers>
#include <sstream>

namespace record {

namespace {

constexpr double strongest = 25; // m/s: nobody teaches in more

/// Where the wind comes from, as parts ahead/behind and left/right: -1, 0 or 1.
struct Origin {
    int behind = 0, left = 0;
    bool ok = false;
};

/// "from the left", "from ahead right", "into", "helping".
Origin origin_of(std::istream& words) {
    Origin origin;
    std::string word;
    while (words >> word) {
        word = yaml::plain_word(word);
        if (word == "from" || word == "the" || word == "and" || word == "wind") continue;
        if (word == "left" || word == "right")
            origin.left = word == "left" ? 1 : -1;
        else if (word == "behind" || word == "helping")
            origin.behind = 1;
        else if (word == "ahead" || word == "into" || word == "against")
            origin.behind = -1;
        else
            return {};
        origin.ok = true;
    }
    return origin;
}

/// The speed at the front of `text` in m/s; `rest` keeps what follows it.
std::optional<double> speed_of(std::istream& words, unit::Units units) {
    double value = 0;
    if (!(words >> value) || !std::isfinite(value) || value < 0) return {};
    const auto after_number = words.tellg();
    std::string word;
    if (words >> word)
        if (const auto size = unit_size(unit::Kind::speed, word)) return value * *size;
    words.clear();
    words.seekg(after_number);
    return value * unit::size_of_unit(unit::Kind::speed, units);
}

} // namespace

std::optional<Wind> read_wind(const yaml::Field& field, unit::Units units) {
    const auto text = field.text();
    if (!text) return {};
    const std::string plain = yaml::plain_word(*text);
    if (plain == "none" || plain == "no" || plain == "calm") return {};
    std::istringstream words(*text);
    words.imbue(std::locale::classic());
    const auto speed = speed_of(words, units);
    const Origin origin = speed ? origin_of(words) : Origin{};
    if (!speed || !origin.ok || *speed > strongest) {
        field.must("be a speed up to 25 m/s and where the wind comes from",
                   "for example wind: 4 m/s from the left, or 10 mph from ahead right, or none");
        return {};
    }
    const double part = origin.behind && origin.left ? *speed / std::numbers::sqrt2 : *speed;
    return Wind{{part * origin.behind}, {part * origin.left}, *text};
}

} // namespace record
