#include "shots/columns.hpp"

#include "record/unit_size.hpp"
#include "shots/header.hpp"
#include "shots/reading.hpp"

#include <algorithm>

namespace shots {

namespace {

class Finder {
  public:
    Finder(const Grid& grid, const record::ShotSource& how, diag::Findings& findings)
        : grid_(grid)
        , how_(how)
        , findings_(findings)
        , header_(read_header(grid)) {
        columns_.width = header_.size();
        drop_usual();
    }

    Columns run() {
        take_mapped();
        take_own();
        tell_unused();
        take_units();
        return std::move(columns_);
    }

  private:
    void drop_usual();
    void take_mapped();
    void take_own();
    void tell_unused();
    void take_units();
    bool units_row();
    void check_declared(const Column& column, const Heading& heading, const Cell& cell);
    std::optional<std::size_t> mapped(const diag::Located<std::string>& wanted);
    void take_role(const std::optional<diag::Located<std::string>>& wanted,
                   std::optional<std::size_t>& role) {
        if (wanted) role = mapped(*wanted);
    }
    diag::Span place(std::size_t index) const {
        return grid_.span(grid_.cells(grid_.rows().front())[index]);
    }
    bool has(unit::Measure measure) const {
        return how_.columns.contains(measure) ||
               std::ranges::find(columns_.measures, measure, &Column::measure) !=
                   columns_.measures.end();
    }
    void claim_role(std::size_t index, std::optional<std::size_t>& role, bool is_mapped);

    const Grid& grid_;
    record::ShotSource how_;
    diag::Findings& findings_;
    std::vector<Heading> header_;
    Columns columns_;
};

/// Columns that the house names and this table lacks: a table may have less than is usual. What the
/// record itself names must be there.
void Finder::drop_usual() {
    const auto absent = [&](const diag::Located<std::string>& wanted) {
        return wanted.span.source != how_.span.source &&
               std::ranges::none_of(header_, [&](const Heading& heading) {
                   return heading.written == trimmed(wanted.value) ||
                          heading.name == plain_name(wanted.value);
               });
    };
    std::erase_if(how_.columns, [&](const auto& column) { return absent(column.second); });
    for (auto* role :
         {&how_.number_column, &how_.block_column, &how_.club_column, &how_.set_aside_column})
        if (*role && absent(**role)) role->reset();
}

/// The column of that header text: letter by letter, else without unit and capitals.
std::optional<std::size_t> Finder::mapped(const diag::Located<std::string>& wanted) {
    std::vector<std::size_t> found;
    for (const bool exact : {true, false}) {
        if (!found.empty()) break;
        for (std::size_t i = 0; i < header_.size(); ++i)
            if (exact ? header_[i].written == trimmed(wanted.value)
                      : header_[i].name == plain_name(wanted.value))
                found.push_back(i);
    }
    if (found.size() > 1) {
        findings_.error(place(found[1]), "two columns are called " + diag::quote(wanted.value),
                        "give one of them another name in the table's first line");
        header_[found[1]].taken = true;
    }
    if (!found.empty()) {
        header_[found[0]].taken = true;
        return found[0];
    }
    std::vector<std::string_view> names;
    for (const Heading& heading : header_)
        names.push_back(heading.written);
    const std::string_view close = diag::nearest(wanted.value, names);
    findings_.error(wanted.span,
                    "the table " + grid_.source().name() + " has no column " +
                        diag::quote(wanted.value),
                    close.empty() ? "its columns are " + diag::either(names, true)
                                  : "did you mean " + diag::quote(close) + "?");
    return std::nullopt;
}

void Finder::take_mapped() {
    for (const auto& [measure, wanted] : how_.columns)
        if (const auto index = mapped(wanted)) columns_.measures.push_back({measure, *index, {}});
    take_role(how_.number_column, columns_.number);
    take_role(how_.block_column, columns_.block);
    take_role(how_.club_column, columns_.club);
    take_role(how_.set_aside_column, columns_.set_aside);
}

void Finder::claim_role(std::size_t index, std::optional<std::size_t>& role, bool is_mapped) {
    if (is_mapped) return;
    header_[index].taken = true;
    if (!role)
        role = index;
    else
        findings_.error(place(index),
                        "two columns are called " + diag::quote(header_[index].written),
                        "give one of them another name, or say in 'columns' which one counts");
}

void Finder::take_own() {
    for (std::size_t i = 0; i < header_.size(); ++i) {
        if (header_[i].taken) continue;
        const std::string_view role = own_role(header_[i].name);
        if (role == "number") claim_role(i, columns_.number, how_.number_column.has_value());
        if (role == "block") claim_role(i, columns_.block, how_.block_column.has_value());
        if (role == "club") claim_role(i, columns_.club, how_.club_column.has_value());
        if (role == "set aside")
            claim_role(i, columns_.set_aside, how_.set_aside_column.has_value());
        const auto measure = own_measure(header_[i].name);
        if (!measure || how_.columns.contains(*measure)) continue;
        header_[i].taken = true;
        if (has(*measure))
            findings_.error(
                place(i), "two columns are read as '" + std::string(unit::row(*measure).key) + "'",
                "give one of them another name, or say in 'columns' which one counts");
        else
            columns_.measures.push_back({*measure, i, {}});
    }
}

void Finder::tell_unused() {
    std::vector<std::string_view> unused;
    std::size_t first = 0;
    for (std::size_t i = 0; i < header_.size(); ++i) {
        const Heading& heading = header_[i];
        if (heading.taken || heading.written.empty()) continue;
        const std::string_view close = diag::nearest(heading.name, own_names());
        const auto meant = own_measure(close);
        if (!close.empty() && !(meant && has(*meant))) {
            findings_.warning(place(i),
                              "the column " + diag::quote(heading.written) + " is not used",
                              "did you mean '" + std::string(close) + "'?");
            continue;
        }
        if (unused.empty()) first = i;
        unused.push_back(heading.written);
    }
    columns_.known = !columns_.measures.empty() || !how_.columns.empty();
    if (!columns_.known)
        findings_.error(grid_.source().in_line(grid_.rows().front().line, 0),
                        "no column of the first line is known",
                        "the first line must name the columns; say which is which, for example "
                        "columns: {face: \"Face ang.\", carry: \"Dist.\"}");
    if (!columns_.measures.empty() && !unused.empty())
        findings_.note(place(first),
                       count_of(unused.size(), "column") +
                           " not used: " + diag::either(unused, true),
                       "if one of them matters, name it in the record under 'shots: columns'");
}

/// True when the second row names units under the header.
bool Finder::units_row() {
    if (grid_.rows().size() < 2) return false;
    const auto cells = grid_.cells(grid_.rows()[1]);
    std::size_t found = 0;
    for (const Column& column : columns_.measures) {
        if (column.index >= cells.size()) continue;
        std::string_view text = grid_.raw(cells[column.index]);
        if (text.empty()) continue;
        if (text.size() > 1 && (text.front() == '(' || text.front() == '['))
            text = text.substr(1, text.size() - 2);
        if (text.find_first_of("0123456789") != std::string_view::npos && text != "1/min")
            return false;
        if (record::unit_size(unit::row(column.measure).kind, text)) ++found;
    }
    if (found == 0) return false;
    for (const Column& column : columns_.measures)
        if (column.index < cells.size() && header_[column.index].unit.empty()) {
            std::string_view text = grid_.raw(cells[column.index]);
            if (text.size() > 1 && (text.front() == '(' || text.front() == '['))
                text = text.substr(1, text.size() - 2);
            header_[column.index].unit = std::string(text);
        }
    return true;
}

void Finder::check_declared(const Column& column, const Heading& heading, const Cell& cell) {
    const unit::Kind kind = unit::row(column.measure).kind;
    if (column.measure == unit::Measure::apex) return; // often in feet beside metres and yards
    std::optional<double> declared;
    unit::Units units;
    if (kind == unit::Kind::length && how_.distance) units.distance = *how_.distance;
    if (kind == unit::Kind::speed && how_.speed) units.speed = *how_.speed;
    if ((kind == unit::Kind::length && how_.distance) || (kind == unit::Kind::speed && how_.speed))
        declared = unit::size_of_unit(kind, units);
    if (!declared || *declared == *column.size) return;
    findings_.error(
        grid_.span(cell),
        "this column is in " + heading.unit + ", the record says " +
            std::string(unit::symbol(kind, units)),
        "take the unit out of the record's 'shots: units', or correct the column's name");
}

void Finder::take_units() {
    if (units_row()) columns_.first_row = 2;
    const auto cells = grid_.cells(grid_.rows().front());
    for (Column& column : columns_.measures) {
        const unit::Kind kind = unit::row(column.measure).kind;
        const Heading& heading = header_[column.index];
        if (!heading.unit.empty()) {
            column.size = record::unit_size(kind, heading.unit);
            if (column.size)
                check_declared(column, heading, cells[column.index]);
            else
                findings_.error(
                    place(column.index),
                    diag::quote(unit::row(column.measure).key) + " cannot be in " +
                        diag::quote(heading.unit),
                    "check the unit in the header, or say in 'columns' which column is meant");
            if (!column.size) column.size = 1;
            continue;
        }
        const bool length = kind == unit::Kind::length, speed = kind == unit::Kind::speed;
        if (length && how_.distance) column.size = unit::size_of_unit(kind, {*how_.distance, {}});
        if (speed && how_.speed) column.size = unit::size_of_unit(kind, {{}, *how_.speed});
        if (!length && !speed) column.size = 1;
    }
}

} // namespace

std::string count_of(std::size_t count, std::string_view noun) {
    return std::to_string(count) + " " + std::string(noun) + (count == 1 ? "" : "s");
}

Columns find_columns(const Grid& grid, const record::ShotSource& how, diag::Findings& findings) {
    return Finder(grid, how, findings).run();
}

} // namespace shots
