#include "people/house.hpp"

#include "record/parts.hpp"

namespace people {

namespace {

void read_coaches(const yaml::Field& field, House& house) {
    for (const yaml::Field& item : field.items()) {
        record::Coach& coach = house.coaches.emplace_back();
        coach.academy = house.academy;
        record::read_coach(item, {}, coach);
    }
}

/// "face: {want: 2 L to 2 R, worth having: 1}", one line a measure.
void read_aims(const yaml::Field& field, unit::Units units, House& house) {
    if (!field) return;
    if (!field.is_map())
        return field.must("name a range for each measure",
                          "for example aims: {face: {want: 2 L to 2 R, worth having: 1}}");
    field.only(record::measure_keys());
    for (const auto& [key, wish] : field.entries()) {
        const auto measure = unit::measure_named(key.value);
        if (!measure) continue;
        record::Aim aim;
        aim.measure = {*measure, key.span};
        wish.only({"want", "worth having"});
        record::read_wish(wish, units, aim);
        house.aims[*measure] = aim;
    }
}

void read_usual_shots(const yaml::Field& field, record::ShotSource& shots) {
    if (!field) return;
    shots.span = field.key_span();
    field.only({"file", "sign", "units", "columns", "blocks", "set aside"});
    if (const auto file = field.at("file")) shots.file = {file.text().value_or(""), file.span()};
    record::read_table_ways(field, shots);
}

void read_ways(const yaml::Field& root, House& house) {
    if (const auto language = root.at("language"))
        record::read_language(language, house.language.emplace("en-GB"));
    if (const auto paper = root.at("paper")) record::read_paper(paper, house.paper.emplace());
    if (const auto units = root.at("units")) record::read_units(units, house.units.emplace());
    record::take(root.at("large print"), house.large_print);
    house.shortens_names = static_cast<bool>(root.at("print name"));
    record::read_print_name(root.at("print name"), house.print_name);
}

} // namespace

House read_house(const diag::Source& source, diag::Findings& findings) {
    House house;
    const yaml::Document document(source, findings);
    if (!document.readable()) return house;
    const yaml::Field root = document.root("house.yaml");
    if (!root.is_map()) {
        root.error("the file does not describe a house",
                   "write it in lines such as 'academy: Low Meadow Golf School'");
        return house;
    }
    root.only({"academy", "coaches", "place", "language", "paper", "units", "large print",
               "print name", "shots", "conditions", "aims", "kept for", "marks"},
              record::refuse_private(root, findings));
    record::take(root.at("academy"), house.academy);
    read_coaches(root.at("coaches"), house);
    record::take(root.at("place"), house.place);
    read_ways(root, house);
    const unit::Units units = house.units.value_or(unit::Units{});
    read_usual_shots(root.at("shots"), house.shots);
    if (const auto conditions = root.at("conditions"))
        record::read_conditions(conditions, units, house.conditions);
    read_aims(root.at("aims"), units, house);
    record::read_marks(root.at("marks"), house.marks);
    house.kept_months = root.at("kept for").whole(1, 240);
    return house;
}

} // namespace people
