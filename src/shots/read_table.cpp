#include "shots/read_table.hpp"

#include "shots/blocks.hpp"
#include "shots/columns.hpp"
#include "shots/derive.hpp"
#include "shots/reading.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace shots {

namespace {

constexpr std::size_t largest_file = 16'000'000;
constexpr std::size_t most_shots = 20'000;
constexpr int told_per_column = 3;

std::string_view noun(unit::Kind kind) {
    switch (kind) {
    case unit::Kind::angle:
        return "an angle in degrees";
    case unit::Kind::speed:
        return "a speed";
    case unit::Kind::length:
        return "a distance";
    case unit::Kind::spin:
        return "a spin in turns a minute";
    case unit::Kind::small_length:
        return "a distance in millimetres";
    }
    return "a number";
}

class Reader {
  public:
    Reader(const Grid& grid, const record::ShotSource& how, unit::Hand hand,
           diag::Findings& findings)
        : grid_(grid)
        , how_(how)
        , hand_(hand)
        , findings_(findings)
        , columns_(find_columns(grid, how, findings))
        , blocks_(grid, how, columns_.block.has_value() || !columns_.known, findings)
        , wrong_(columns_.measures.size(), 0)
        , decimals_(columns_.measures.size(), -1) {}

    Table run();

  private:
    Shot read_shot(const Row& row, int place);
    void read_words(Shot& shot, const Row& row, int place);
    bool read_number(Shot& shot, const Cell& cell);
    void read_measure(Shot& shot, std::size_t column, const Cell& cell);
    bool repeats_header(const Row& row);
    bool is_cut_off(const Row& row) const;
    bool fits_width(const Row& row);
    void tell_width(const Row& row);
    bool misses_cells(const Row& row) const;
    void tell_short(const Row& row);
    double size_of(const Column& column, const Reading& reading, const Cell& cell);
    double sign_of(const Column& column, const Reading& reading, const Cell& cell);
    void tell_wrong(std::size_t column, const Cell& cell, const std::string& hint);
    void tell_missing();
    void tell_unit(unit::Kind kind, const std::vector<std::string_view>& names, diag::Span place);
    /// The file in which 'shots' is written.
    std::string record_or_house() const {
        const diag::Source* written = how_.file.span.source;
        const bool house = how_.span.line == 0 && written && written != how_.span.source;
        return house ? written->name() : "the record";
    }
    const Cell* cell(const Row& row, const std::optional<std::size_t>& index) const {
        return index && *index < row.count ? &grid_.cells(row)[*index] : nullptr;
    }

    const Grid& grid_;
    const record::ShotSource& how_;
    unit::Hand hand_;
    diag::Findings& findings_;
    Columns columns_;
    Blocks blocks_;
    std::vector<int> wrong_;    ///< unreadable cells by column
    std::vector<int> decimals_; ///< most decimals written by column; -1 for none read
    std::vector<std::string_view> unsigned_, lengths_,
        speeds_; ///< measures whose declaration is missing
    diag::Span unsigned_place_, length_place_, speed_place_;
    int too_wide_ = 0, too_short_ = 0, headers_ = 0;
};

Table Reader::run() {
    Table table;
    if (!columns_.known && how_.block_rows.empty()) return table;
    const auto& rows = grid_.rows();
    for (std::size_t i = columns_.first_row; i < rows.size(); ++i) {
        if (table.shots.size() == most_shots) {
            findings_.error(grid_.source().in_line(rows[i].line, 0),
                            "the table has more than " + std::to_string(most_shots) + " shots",
                            "keep one lesson to a table");
            break;
        }
        if (repeats_header(rows[i])) continue;
        table.shots.push_back(read_shot(rows[i], static_cast<int>(table.shots.size()) + 1));
    }
    blocks_.finish(static_cast<int>(table.shots.size()));
    if (table.shots.empty())
        findings_.error(
            grid_.source().whole(), "the table has a header but no shots",
            "check that this is the right file, or take the line 'shots' out of the record");
    for (std::size_t c = 0; c < columns_.measures.size(); ++c) {
        const Column& column = columns_.measures[c];
        const auto m = static_cast<std::size_t>(column.measure);
        table.measured[m] = decimals_[c] >= 0;
        if (decimals_[c] >= 0)
            table.step[m] = std::pow(10.0, -decimals_[c]) * column.size.value_or(1);
    }
    tell_missing();
    return table;
}

Shot Reader::read_shot(const Row& row, int place) {
    Shot shot;
    shot.line = row.line;
    if (!fits_width(row)) return shot;
    read_words(shot, row, place);
    const auto cells = grid_.cells(row);
    for (std::size_t c = 0; c < columns_.measures.size(); ++c)
        if (columns_.measures[c].index < cells.size())
            read_measure(shot, c, cells[columns_.measures[c].index]);
    return shot;
}

void Reader::read_words(Shot& shot, const Row& row, int place) {
    shot.number = place;
    if (const Cell* number = cell(row, columns_.number); number && !read_number(shot, *number))
        return;
    blocks_.sort(shot, place, cell(row, columns_.block));
    if (const Cell* club = cell(row, columns_.club)) shot.club = grid_.text(*club);
    const Cell* flag = cell(row, columns_.set_aside);
    if (!flag) return;
    shot.set_aside = grid_.text(*flag);
    if (not_measured(shot.set_aside) || shot.set_aside == "no") shot.set_aside.clear();
}

/// False for a line that is no shot, such as an average.
bool Reader::read_number(Shot& shot, const Cell& cell) {
    const std::string_view text = grid_.raw(cell);
    if (text.empty()) return true;
    int number = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (fault == std::errc() && end == text.data() + text.size() && number >= 0) {
        shot.number = number;
        return true;
    }
    findings_.error(
        grid_.span(cell), "the shot's number must be a whole number, found " + diag::quote(text),
        "if this line is an average or a total, delete it: only shots belong in the table");
    return false;
}

/// A header once more, as where two tables were joined; told, and no shot.
bool Reader::repeats_header(const Row& row) {
    const auto cells = grid_.cells(row), header = grid_.cells(grid_.rows().front());
    if (!std::ranges::equal(
            cells, header, {}, [&](const Cell& c) { return grid_.raw(c); },
            [&](const Cell& c) { return grid_.raw(c); }))
        return false;
    if (++headers_ <= told_per_column)
        findings_.error(grid_.source().in_line(row.line, 0, grid_.source().line(row.line).size()),
                        "the table's first line stands here again",
                        "delete this line: only shots belong below the first");
    return true;
}

/// The last line of a file without a line end, with fewer cells than the line above.
bool Reader::is_cut_off(const Row& row) const {
    const auto& rows = grid_.rows();
    const std::string& text = grid_.source().text();
    return row.line == rows.back().line && rows.size() > 1 && !text.ends_with('\n') &&
           !text.ends_with('\r') && row.count < rows[rows.size() - 2].count;
}

/// A reason to set aside may be left out at the end of a line, all else that is read may not.
bool Reader::misses_cells(const Row& row) const {
    const auto beyond = [&](const std::optional<std::size_t>& index) {
        return index && *index >= row.count;
    };
    return beyond(columns_.number) || beyond(columns_.block) || beyond(columns_.club) ||
           std::ranges::any_of(columns_.measures,
                               [&](const Column& c) { return c.index >= row.count; }) ||
           is_cut_off(row);
}

void Reader::tell_short(const Row& row) {
    const std::string cells = count_of(row.count, "cell");
    findings_.error(grid_.source().in_line(row.line, 0, grid_.source().line(row.line).size()),
                    "this line has " + cells + ", the header has " + std::to_string(columns_.width),
                    is_cut_off(row)
                        ? "the file seems to end too early: save or export the table again, or "
                          "delete this line"
                        : "complete the line: what was not measured is an empty cell between "
                          "separators; a line that is no shot does not belong here");
}

/// More cells than the header has would move values into wrong columns; fewer were likely lost.
bool Reader::fits_width(const Row& row) {
    if (row.count <= columns_.width) {
        if (!misses_cells(row)) return true;
        if (++too_short_ <= told_per_column) tell_short(row);
        return false;
    }
    const bool empty = std::ranges::all_of(grid_.cells(row).subspan(columns_.width),
                                           [&](const Cell& c) { return grid_.raw(c).empty(); });
    if (!empty && ++too_wide_ <= told_per_column) tell_width(row);
    return empty;
}

void Reader::tell_width(const Row& row) {
    const auto cells = grid_.cells(row);
    const auto gap =
        std::ranges::find_if(cells, [&](const Cell& c) { return grid_.raw(c).empty(); });
    const bool one = row.count == columns_.width + 1 && gap != cells.end();
    const std::string what = "this line has " + std::to_string(row.count) +
                             " cells, the header has " + std::to_string(columns_.width);
    if (one)
        return findings_.error(grid_.span(*gap), what + ": one too many",
                               "is there a separator too many here? take it away");
    findings_.error(grid_.span(cells[columns_.width]), what,
                    grid_.separator() == ','
                        ? "with decimal commas, save the table with semicolons between the cells"
                        : "put a text that has the separator in it into double quotes");
}

void Reader::read_measure(Shot& shot, std::size_t c, const Cell& cell) {
    const Column& column = columns_.measures[c];
    const Reading reading = read_cell(grid_.raw(cell), column.measure);
    if (reading.state == Reading::State::missing) return;
    if (reading.state == Reading::State::wrong) return tell_wrong(c, cell, reading.hint);
    decimals_[c] = std::max(decimals_[c], reading.decimals);
    double value = reading.value * size_of(column, reading, cell) * sign_of(column, reading, cell);
    if (value == 0) value = 0; // no minus zero
    shot.values[static_cast<std::size_t>(column.measure)] = value;
    shot.place[static_cast<std::size_t>(column.measure)] = cell.offset;
}

double Reader::size_of(const Column& column, const Reading& reading, const Cell& cell) {
    if (reading.unit) return *reading.unit;
    if (column.size) return *column.size;
    const bool length = unit::row(column.measure).kind == unit::Kind::length;
    auto& names = length ? lengths_ : speeds_;
    const std::string_view key = unit::row(column.measure).key;
    if (names.empty()) (length ? length_place_ : speed_place_) = grid_.span(cell);
    if (std::ranges::find(names, key) == names.end()) names.push_back(key);
    return 1;
}

/// +1 or -1, which makes the value right-positive.
double Reader::sign_of(const Column& column, const Reading& reading, const Cell& cell) {
    if (!unit::row(column.measure).sided) return 1;
    if (reading.side != Side::none) return reading.side == Side::left ? -1 : 1;
    if (reading.value == 0) return 1;
    if (!how_.sign) {
        const std::string_view key = unit::row(column.measure).key;
        if (unsigned_.empty()) unsigned_place_ = grid_.span(cell);
        if (std::ranges::find(unsigned_, key) == unsigned_.end()) unsigned_.push_back(key);
        return 1;
    }
    switch (how_.sign->value) {
    case record::Sign::right_positive:
        return 1;
    case record::Sign::left_positive:
        return -1;
    case record::Sign::open_positive:
        return hand_ == unit::Hand::left ? -1 : 1;
    }
    return 1;
}

void Reader::tell_wrong(std::size_t c, const Cell& cell, const std::string& hint) {
    const unit::MeasureRow& row = unit::row(columns_.measures[c].measure);
    if (++wrong_[c] > told_per_column) return;
    findings_.error(grid_.span(cell),
                    diag::quote(row.key) + " must be " + std::string(noun(row.kind)) + ", found " +
                        diag::quote(grid_.raw(cell)),
                    hint);
}

void Reader::tell_unit(unit::Kind kind, const std::vector<std::string_view>& names,
                       diag::Span place) {
    if (names.empty()) return;
    const bool length = kind == unit::Kind::length;
    findings_.error(place,
                    "nothing says in which unit " + diag::either(names, true) + " is written",
                    "add to 'shots' in " + record_or_house() +
                        (length ? ": units: {distance: yards} (or metres)"
                                : ": units: {speed: mph} (or km/h, m/s)"));
}

void Reader::tell_missing() {
    for (std::size_t c = 0; c < wrong_.size(); ++c)
        if (wrong_[c] > told_per_column)
            findings_.error(
                grid_.source().whole(),
                count_of(static_cast<std::size_t>(wrong_[c] - told_per_column), "more cell") +
                    " of '" + std::string(unit::row(columns_.measures[c].measure).key) +
                    "' cannot be read",
                "if the whole column looks wrong, check 'shots: columns' in the record");
    if (!unsigned_.empty())
        findings_.error(unsigned_place_,
                        "nothing says which side a plus means in " + diag::either(unsigned_, true),
                        "add to 'shots' in " + record_or_house() +
                            ": sign: right is positive (or left is positive, or open is positive)");
    tell_unit(unit::Kind::length, lengths_, length_place_);
    tell_unit(unit::Kind::speed, speeds_, speed_place_);
}

} // namespace

Table read_table(const diag::Source& source, const record::ShotSource& how, unit::Hand hand,
                 diag::Findings& findings) {
    if (!diag::is_text(source, largest_file, findings)) return {};
    const std::size_t before = findings.errors();
    const Grid grid(source, findings);
    if (findings.errors() > before) return {};
    if (grid.rows().empty()) {
        findings.error(
            source.whole(), "the table is empty",
            "check that this is the right file, or take the line 'shots' out of the record");
        return {};
    }
    Table table = Reader(grid, how, hand, findings).run();
    derive(table);
    if (findings.errors() == before) check_twins(table, source, findings);
    return table;
}

} // namespace shots
