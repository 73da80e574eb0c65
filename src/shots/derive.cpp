#include "shots/derive.hpp"

#include "unit/quantity.hpp"

#include <cmath>
#include <map>
#include <tuple>

namespace shots {

namespace {

using unit::Measure;

constexpr std::size_t at(Measure m) { return static_cast<std::size_t>(m); }

template <class Rule>
void fill(Table& table, Measure measure, double step, Rule rule) {
    if (table.measured[at(measure)]) return;
    bool any = false;
    for (Shot& shot : table.shots)
        if (const std::optional<double> value = rule(shot)) {
            shot.values[at(measure)] = value;
            any = true;
        }
    if (any) table.step[at(measure)] = step;
}

} // namespace

void derive(Table& table) {
    const auto step = [&](Measure m) { return table.step[at(m)]; };
    fill(table, Measure::face_path, std::max(step(Measure::face), step(Measure::path)),
         [](const Shot& shot) -> std::optional<double> {
             const auto face = shot[Measure::face], path = shot[Measure::path];
             if (!face || !path) return std::nullopt;
             return *face - *path;
         });
    fill(table, Measure::curve, std::max(step(Measure::offline), step(Measure::carry)),
         [](const Shot& shot) -> std::optional<double> {
             const auto offline = shot[Measure::offline], carry = shot[Measure::carry],
                        start = shot[Measure::start];
             if (!offline || !carry || !start) return std::nullopt;
             return *offline - *carry * std::tan(unit::radians(unit::Degrees{*start}));
         });
}

void check_twins(const Table& table, const diag::Source& source, diag::Findings& findings) {
    std::map<std::array<std::optional<double>, unit::measure_count>, int> numbers;
    std::map<std::tuple<Block, std::string, std::string, int>, std::uint32_t> places;
    for (const Shot& shot : table.shots) {
        std::size_t written = 0;
        for (const auto& value : shot.values)
            written += value ? 1U : 0U;
        const auto [same, fresh] = numbers.try_emplace(shot.values, shot.number);
        const std::size_t line_length = source.line(shot.line).size();
        if (!fresh && written >= 4)
            findings.warning(source.in_line(shot.line, 0, line_length),
                             "shot " + std::to_string(shot.number) +
                                 " repeats every number of shot " + std::to_string(same->second),
                             "if it was copied twice, delete this line");
        const auto [place, first] =
            places.try_emplace({shot.block, shot.extra, shot.club, shot.number}, shot.line);
        if (!first)
            findings.warning(source.in_line(shot.line, 0, line_length),
                             "the number " + std::to_string(shot.number) +
                                 " is given twice in one block, first in line " +
                                 std::to_string(place->second),
                             "number the shots anew, or leave the column out");
    }
}

} // namespace shots
