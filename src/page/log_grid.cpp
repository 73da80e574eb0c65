#include "page/log_grid.hpp"

#include "page/parts.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

void line(ink::Drawing& d, const Easel& easel, ink::Point from, ink::Point to, double width) {
    d.add(ink::Stroke{ink::Path::segment(from, to), width, easel.theme.text, {}, ink::Cap::butt});
}

/// Tags around one cell's words; an empty cell has tags only.
void cell(ink::Drawing& d, std::string_view role, std::vector<ink::Words> words) {
    d.add(ink::Tag{true, std::string(role), {}});
    for (auto& w : words)
        d.add(std::move(w));
    d.add(ink::Tag{false, std::string(role), {}});
}

struct LogRow {
    const char* label;
    enum Kind { date, stage, empty, of } kind;
    int tries = 0; ///< 0: the student writes both
};

std::vector<LogRow> rows_of(const LogCount& log) {
    using Of = drills::Count::Of;
    const auto& count = log.count;
    std::vector<LogRow> rows{
        {"log.date", LogRow::date}, {"log.stage", LogRow::stage}, {"log.done", LogRow::empty}};
    if (count.tries > 0)
        rows.push_back({count.of == Of::called        ? "log.called"
                        : count.of == Of::right_first ? "log.right-first"
                                                      : "drill.count.right",
                        LogRow::of, log.open ? 0 : count.tries});
    if (count.calls > 0)
        rows.push_back({"log.called.blend", LogRow::of, log.open ? 0 : count.calls});
    rows.push_back({"drillpage.strange-row", LogRow::empty});
    return rows;
}

std::vector<ink::Words> printed(const Easel& easel, const LogRow& row, int day, ink::Rect box) {
    const auto& w = easel.words;
    const ink::Style tick = easel.theme.setting(Text::tick).style;
    const double inset = 2.5;
    std::vector<ink::Words> out;
    switch (row.kind) {
    case LogRow::date:
        out.push_back(figure::label(easel, tick, w.say("drill.number", {{"n", day}}),
                                    {box.x + inset, box.y + inset + tick.size * 0.72}));
        break;
    case LogRow::stage:
        // a cell too narrow for three letters stays free for one
        if (0.3 * box.width < easel.type.line("B", tick).width + 1) break;
        for (int i = 0; i < 3; ++i)
            out.push_back(figure::label(
                easel, tick, std::string(1, static_cast<char>('A' + i)),
                {box.x + box.width * (0.2 + 0.3 * i), box.centre().y + figure::middle(tick)},
                text::Align::centre));
        break;
    case LogRow::of: {
        const std::string of =
            row.tries > 0 ? w.say("drillpage.of", {{"n", row.tries}}) : std::string("/");
        const double right = row.tries > 0 ? box.right() - inset : box.centre().x + inset;
        out.push_back(figure::label(easel, tick, of, {right, box.bottom() - inset - 0.5},
                                    text::Align::right));
        break;
    }
    case LogRow::empty:
        break;
    }
    return out;
}

} // namespace

LogCount log_count(const ChosenDrill& chosen) {
    LogCount out{chosen.drill.count, false};
    if (chosen.wish.tries)
        out.count.tries = *chosen.wish.tries;
    else if (!chosen.wish.dose.empty())
        out.open = true;
    out.count.calls = std::min(out.count.calls, out.count.tries);
    return out;
}

int log_rows(const LogCount& count) { return static_cast<int>(rows_of(count).size()); }

int cold_boxes(const LogCount& count) {
    return count.open || count.count.tries == 0 ? 10 : std::min(10, count.count.tries);
}

ink::Drawing log_grid(const Easel& easel, const LogCount& count, int first, int last, double width,
                      double row_height) {
    const std::vector<LogRow> grid_rows = rows_of(count);
    const int log_rows = static_cast<int>(grid_rows.size());
    const int days = last - first + 1;
    const auto& head = easel.theme.setting(Text::table_head);
    // labels take what the cells can spare, so that all cells are alike
    const double wanted = head.style.size * 10.6;
    const double cell_width = std::max(least_log_cell + 0.05, (width - wanted) / days);
    const double label_width = width - days * cell_width;
    ink::Drawing out;
    out.size = {width, log_rows * row_height};
    out.add(ink::Tag{true, "Table", {}});
    for (int r = 0; r < log_rows; ++r) {
        const double y = r * row_height;
        const auto name =
            easel.type.set(easel.words.say(grid_rows[static_cast<std::size_t>(r)].label),
                           head.style, label_width - 5, head.leading);
        out.add(ink::Tag{true, "TR", {}});
        std::vector<ink::Words> words;
        for (const auto& each : name.lines) {
            words.push_back(each);
            words.back().at = each.at + ink::Point{0, y + (row_height - name.height) / 2};
        }
        cell(out, "TH", std::move(words));
        for (int d = 0; d < days; ++d)
            cell(out, r == 0 ? "TH" : "TD",
                 printed(easel, grid_rows[static_cast<std::size_t>(r)], first + d,
                         {label_width + d * cell_width, y, cell_width, row_height}));
        out.add(ink::Tag{false, "TR", {}});
    }
    out.add(ink::Tag{false, "Table", {}});
    for (int r = 0; r <= log_rows; ++r)
        line(out, easel, {r == 0 || r == log_rows ? 0 : label_width, r * row_height},
             {width, r * row_height}, r == 0 || r == log_rows ? 1.0 : 0.5);
    for (int d = 0; d <= days; ++d) {
        const double x = label_width + d * cell_width;
        const bool week = (first + d - 1) % 7 == 0;
        line(out, easel, {x, 0}, {x, out.size.height}, week ? 1.0 : 0.5);
    }
    return out;
}

ink::Drawing log_stages(const Easel& easel, const ChosenDrill& chosen, double width) {
    const drills::Drill& drill = chosen.drill;
    const std::array<std::pair<const char*, const std::string*>, 3> stages{
        {{"drill.stage.a", &drill.place},
         {"drill.stage.b", &drill.blend},
         {"drill.stage.c", &drill.play}}};
    const std::array<const char*, 3> usual{"drill.stage.place.text", "drill.stage.blend.text",
                                           "drill.stage.play.text"};
    const double gutter = 12, column = (width - 2 * gutter) / 3;
    std::vector<Cell> cells;
    for (std::size_t i = 0; i < 3; ++i) {
        const std::string text =
            stages[i].second->empty() ? easel.words.say(usual[i]) : *stages[i].second;
        std::string name = easel.words.say(stages[i].first);
        if (chosen.stage && static_cast<std::size_t>(*chosen.stage) == i)
            name = easel.words.say("drill.stage.here", {{"stage", name}});
        cells.push_back(
            {stacked({tagged(figure::paragraph(easel, Text::label, name, column), "H3"),
                      tagged(figure::paragraph(easel, Text::caption, text, column), "P")},
                     0),
             static_cast<double>(i) * (column + gutter)});
    }
    return side_by_side(cells);
}

} // namespace page
