#include "page/parts.hpp"
#include "page/table.hpp"
#include "page/term_overview.hpp"

#include <array>

namespace page {

using figure::Easel;
using figure::mm;
using theme::Text;

namespace {

/// Greys that a sheet uses, and the two that a bad toner makes one.
ink::Drawing greys(const Easel& easel) {
    constexpr std::array<int, 5> levels{10, 20, 50, 80, 100};
    const double width = column_width(easel), wide = (width - 4 * 8) / 5, high = 44;
    ink::Drawing d;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const double x = static_cast<double>(i) * (wide + 8);
        d.add(ink::Fill{ink::Path::rect({x, 0, wide, high}), ink::grey(1 - levels[i] / 100.0)});
        d.add(ink::Stroke{
            ink::Path::rect({x, 0, wide, high}), 0.5, easel.theme.text, {}, ink::Cap::butt});
        d.add(figure::label(easel, Text::caption, std::to_string(levels[i]) + " %",
                            {x + wide / 2, high + 12}, text::Align::centre));
    }
    d.size = {width, high + 16};
    d.message = easel.words.say("proof.grey");
    return tagged(std::move(d), "Figure");
}

/// The thinnest lines and the hatch that the sheets use.
ink::Drawing lines(const Easel& easel) {
    constexpr std::array<double, 4> widths{0.35, 0.5, 0.8, 1.4};
    const double width = column_width(easel), wide = (width - 4 * 8) / 5, high = 36;
    ink::Drawing d;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const double x = static_cast<double>(i) * (wide + 8);
        for (int k = 0; k < 5; ++k)
            d.add(ink::Stroke{ink::Path::segment({x, 3 + k * 7.0}, {x + wide, 3 + k * 7.0}),
                              widths[i],
                              easel.theme.text,
                              {},
                              ink::Cap::butt});
    }
    figure::hatch(d, {4 * (wide + 8), 0, wide, high}, 4, 0.35, easel.theme.rule);
    d.size = {width, high};
    d.message = easel.words.say("proof.lines");
    return tagged(std::move(d), "Figure");
}

/// As long as fits, in whole steps of 50 mm.
int ruler_length(const Easel& easel) { return column_width(easel) > 160 * mm ? 150 : 100; }

/// A ruler across and one down, a tick each five millimetres.
ink::Drawing rulers(const Easel& easel) {
    const double width = column_width(easel);
    const auto& tick = easel.theme.setting(Text::tick);
    ink::Drawing d;
    const double x0 = 16, y0 = 12;
    constexpr int down = 50;
    const int across = ruler_length(easel);
    ink::Path path = ink::Path::segment({x0, y0}, {x0 + across * mm, y0});
    path.move({x0, y0}).line({x0, y0 + down * mm});
    for (int i = 0; i <= across; i += 5)
        path.move({x0 + i * mm, y0})
            .line({x0 + i * mm, y0 - (i % 50 == 0   ? 9
                                      : i % 10 == 0 ? 6
                                                    : 3)});
    for (int i = 5; i <= down; i += 5)
        path.move({x0, y0 + i * mm})
            .line({x0 - (i % 50 == 0   ? 9
                         : i % 10 == 0 ? 6
                                       : 3),
                   y0 + i * mm});
    d.add(ink::Stroke{path, 0.6, easel.theme.text, {}, ink::Cap::butt});
    for (int i = 50; i <= across; i += 50)
        d.add(figure::label(easel, Text::tick, std::to_string(i) + " mm",
                            {x0 + i * mm, y0 + tick.leading}, text::Align::centre));
    d.add(figure::label(easel, Text::tick, std::to_string(down) + " mm", {x0 + 6, y0 + down * mm}));
    const std::string scale = easel.words.say("proof.scale", {{"n", across}});
    d.add(figure::paragraph(easel, Text::body, scale, width - x0 - 40), {x0 + 30, y0 + 26});
    d.size = {width, y0 + down * mm + 6};
    d.message = scale;
    return tagged(std::move(d), "Figure");
}

/// Letters of every size that a sheet has.
ink::Drawing letters(const Easel& easel) {
    const double width = column_width(easel);
    std::vector<ink::Drawing> rows;
    for (const Text text : {Text::coach_large, Text::body, Text::caption, Text::tick})
        rows.push_back(
            tagged(figure::paragraph(easel, text, easel.words.say("proof.letters"), width), "P"));
    return stacked(rows, 2);
}

} // namespace

std::vector<Section> proof_pages(const Easel& easel, const std::vector<PileRow>& pile) {
    const auto& w = easel.words;
    const double width = column_width(easel);
    Section front{.name = "proof", .title = w.say("proof.title"), .right_hand = true};
    front.blocks = {page_title(easel, front.title),
                    text_block(easel, Text::lead, w.say("proof.what"), 0, width),
                    drawn_block("rulers", rulers(easel), 14),
                    heading(easel, w.say("proof.grey"), 16),
                    drawn_block("greys", greys(easel), 4),
                    heading(easel, w.say("proof.lines"), 12),
                    drawn_block("lines", lines(easel), 4),
                    heading(easel, w.say("proof.read"), 12),
                    drawn_block("letters", letters(easel), 2),
                    text_block(easel, Text::body, w.say("proof.holes"), 16, width)};
    Section back{.name = "pile", .title = w.say("proof.pile")};
    std::vector<TableRow> rows;
    for (const auto& row : pile) {
        TableRow line;
        line.cells = {
            {row.code, Text::table, true},
            {w.say("binder.range", {{"first", row.first}, {"last", row.last}}), Text::table},
            {std::to_string((row.last - row.first + 1) / 2), Text::table},
            {{}, Text::table}};
        rows.push_back(std::move(line));
    }
    back.blocks = {page_title(easel, back.title),
                   text_block(easel, Text::body, w.say("proof.pile.note"), 0, width),
                   table(easel, "pile",
                         {{w.say("proof.column.code"), 1.4},
                          {w.say("proof.column.pages"), 1.4},
                          {w.say("proof.column.sheets"), 1},
                          {w.say("proof.column.done"), 2}},
                         rows, 10)};
    return {front, back};
}

} // namespace page
