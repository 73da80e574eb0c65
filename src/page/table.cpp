#include "page/table.hpp"

#include "page/parts.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

constexpr double air = 3; ///< above and below a cell's words
constexpr double between = 8;

struct Measured {
    std::vector<double> x, width;
    double all = 0;
};

/// The widest word of a text: narrower, and it would be cut.
double longest_word(const Easel& easel, const ink::Style& style, const std::string& text) {
    double widest = 0;
    for (std::size_t from = 0; from < text.size();) {
        const std::size_t end = std::min(text.find_first_of(" \n", from), text.size());
        if (end > from)
            widest = std::max(
                widest, std::ceil(easel.type.line(text.substr(from, end - from), style).width));
        from = end + 1;
    }
    return widest;
}

ink::Style style_of(const Easel& easel, const TableCell& cell) {
    return cell.strong ? figure::bold(easel, cell.style) : easel.theme.setting(cell.style).style;
}

/// A row of one cell says it across all columns.
bool is_alone(const TableRow& row) { return row.cells.size() == 1; }

std::vector<double> least_widths(const Easel& easel, const std::vector<TableColumn>& columns,
                                 const std::vector<TableRow>& rows) {
    std::vector<double> out;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        double least =
            longest_word(easel, easel.theme.setting(Text::table_head).style, columns[i].head);
        for (const auto& row : rows)
            if (i < row.cells.size() && !is_alone(row))
                least = std::max(
                    least, longest_word(easel, style_of(easel, row.cells[i]), row.cells[i].text));
        out.push_back(least + (i + 1 < columns.size() ? between : 0));
    }
    return out;
}

/// Shares of the width, but no column narrower than its longest word, as long as there is room for
/// all of those.
std::vector<double> widths(const std::vector<TableColumn>& columns,
                           const std::vector<double>& least, double all) {
    std::vector<double> out(columns.size());
    std::vector<bool> fixed(columns.size(), false);
    for (bool again = true; again;) {
        double shares = 0, left = all;
        for (std::size_t i = 0; i < columns.size(); ++i)
            fixed[i] ? left -= least[i] : shares += columns[i].share;
        again = false;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            out[i] = fixed[i] ? least[i] : left * columns[i].share / shares;
            if (!fixed[i] && out[i] < least[i]) fixed[i] = again = true;
        }
    }
    return out;
}

Measured measured(const Easel& easel, const std::vector<TableColumn>& columns,
                  const std::vector<TableRow>& rows, double all) {
    Measured out;
    out.all = all;
    auto least = least_widths(easel, columns, rows);
    if (std::accumulate(least.begin(), least.end(), 0.0) > all) least.assign(least.size(), 0);
    double x = 0;
    for (const double wide : widths(columns, least, all)) {
        out.x.push_back(x);
        out.width.push_back(wide - (x + wide < all - 0.01 ? between : 0));
        x += wide;
    }
    return out;
}

ink::Drawing cell(const Easel& easel, const TableCell& cell, double width) {
    theme::Setting setting = easel.theme.setting(cell.style);
    setting.style = style_of(easel, cell);
    return figure::paragraph(easel, setting, cell.text, width);
}

ink::Drawing head(const Easel& easel, const std::vector<TableColumn>& columns, const Measured& m) {
    ink::Drawing out;
    out.size.width = m.all;
    std::vector<ink::Drawing> cells;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        cells.push_back(figure::paragraph(easel, Text::table_head, columns[i].head, m.width[i]));
        out.size.height = std::max(out.size.height, cells.back().size.height);
    }
    const double foot = out.size.height;
    out.add(ink::Tag{true, "TR", {}});
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double drop = foot - cells[i].size.height;
        out.add(tagged(std::move(cells[i]), "TH"), {m.x[i], drop});
    }
    out.add(ink::Tag{false, "TR", {}});
    out.add(rule(easel, m.all, 0.8), {0, foot + 2});
    out.size.height = foot + 3;
    return out;
}

ink::Drawing row(const Easel& easel, const TableRow& row, const Measured& m) {
    ink::Drawing out;
    out.size = {m.all, row.least};
    out.add(ink::Tag{true, "TR", {}});
    for (std::size_t i = 0; i < row.cells.size() && i < m.x.size(); ++i) {
        ink::Drawing words = cell(easel, row.cells[i], is_alone(row) ? m.all : m.width[i]);
        out.size.height = std::max(out.size.height, words.size.height + 2 * air);
        out.add(tagged(std::move(words), "TD"), {m.x[i], air});
    }
    out.add(ink::Tag{false, "TR", {}});
    if (!row.target.empty()) out.add(ink::Link{{0, 0, m.all, out.size.height}, row.target});
    out.add(ink::Stroke{ink::Path::segment({0, out.size.height}, {m.all, out.size.height}),
                        0.35,
                        easel.theme.rule,
                        {},
                        ink::Cap::butt});
    return out;
}

} // namespace

Block table(const Easel& easel, std::string name, const std::vector<TableColumn>& columns,
            const std::vector<TableRow>& rows, double space_before, double width) {
    const Measured m = measured(easel, columns, rows, width > 0 ? width : column_width(easel));
    Block block{.name = std::move(name), .role = "Table"};
    block.space_before = space_before;
    block.head = head(easel, columns, m);
    for (const auto& r : rows)
        block.pieces.push_back({row(easel, r, m)});
    return block;
}

TableRow empty_row() {
    TableRow row;
    row.least = 8 * figure::mm;
    return row;
}

} // namespace page
