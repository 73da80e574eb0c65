#include "record/parts.hpp"
#include "record/read_quantity.hpp"

#include <charconv>

namespace record {

namespace {

constexpr std::array<std::string_view, 3> signs{"right is positive", "left is positive",
                                                "open is positive"};

void read_column(const diag::Located<std::string>& key, const yaml::Field& field,
                 ShotSource& shots) {
    const auto header = field.text();
    if (!header) return;
    const diag::Located<std::string> column{*header, field.span()};
    if (const auto measure = unit::measure_named(key.value))
        shots.columns[*measure] = column;
    else if (key.value == "number")
        shots.number_column = column;
    else if (key.value == "block")
        shots.block_column = column;
    else if (key.value == "club")
        shots.club_column = column;
    else if (key.value == "set aside")
        shots.set_aside_column = column;
}

void read_columns(const yaml::Field& field, ShotSource& shots) {
    field.only(measure_keys({"number", "block", "club", "set aside"}));
    for (const auto& [key, header] : field.entries())
        read_column(key, header, shots);
}

void read_table_units(const yaml::Field& field, ShotSource& shots) {
    if (!field) return;
    unit::Units units;
    read_units(field, units);
    if (field.at("distance")) shots.distance = units.distance;
    if (field.at("speed")) shots.speed = units.speed;
}

} // namespace

void read_table_ways(const yaml::Field& field, ShotSource& shots) {
    const yaml::Field sign = field.at("sign");
    if (const auto chosen = choose<Sign>(sign, signs)) shots.sign = {*chosen, sign.span()};
    read_table_units(field.at("units"), shots);
    read_columns(field.at("columns"), shots);
    read_block_words(field.at("blocks"), shots);
    shots.rows_span = field.at("rows").span();
    read_block_rows(field.at("rows"), shots);
    if (const auto rules = field.at("set aside")) {
        shots.rules.clear();
        read_set_aside_rules(rules, shots);
    }
}

void read_shot_source(const yaml::Field& field, const ShotSource& usual,
                      std::optional<ShotSource>& shots) {
    if (!field) return;
    if (yaml::plain_word(field.written()) == "none") return shots.reset();
    shots = usual;
    shots->span = field.key_span();
    if (field.is_text()) {
        shots->file = {field.text().value_or(""), field.span()};
        return;
    }
    field.only({"file", "sign", "units", "columns", "blocks", "rows", "set aside"});
    const bool named = !shots->file.value.empty();
    const yaml::Field file = named ? field.at("file") : field.required("file", "shots.csv");
    if (file || !named) shots->file = {file.text().value_or(""), file.span()};
    read_table_ways(field, *shots);
}

} // namespace record
