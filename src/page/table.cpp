#include "page/table.hpp"

#include "page/parts.hpp"

#include <algorithm>

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

Measured measured(const std::vector<TableColumn>& columns, double all) {
    Measured out;
    out.all = all;
    double shares = 0, x = 0;
    for (const auto& c : columns)
        shares += c.share;
    for (const auto& c : columns) {
        const double wide = all * c.share / shares;
        out.x.push_back(x);
        out.width.push_back(wide - (x + wide < all - 0.01 ? between : 0));
        x += wide;
    }
    return out;
}

ink::Drawing cell(const Easel& easel, const TableCell& cell, double width) {
    theme::Setting setting = easel.theme.setting(cell.style);
    if (cell.strong) setting.style = figure::bold(easel, cell.style);
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
        ink::Drawing words = cell(easel, row.cells[i], m.width[i]);
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
    const Measured m = measured(columns, width > 0 ? width : column_width(easel));
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
