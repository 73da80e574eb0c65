#include "theme/style.hpp"

namespace theme {

namespace {

constexpr double mm = 72.0 / 25.4;

/// In the order of Text. templates/style/letters.yaml says the same; tests/theme holds them equal.
constexpr std::array<Letters, text_count> letters{{
    {23, 28, 29, 900},         // title
    {12.5, 16, 17.5, 700},     // heading
    {12.5, 17, 19, 400},       // lead
    {11, 15, 17, 400},         // body
    {12.5, 17, 19, 400, true}, // coach
    {16, 21.5, 20, 400, true}, // coach_large
    {12.5, 17, 19, 400},       // step
    {17, 22, 22, 500},         // cue
    {9.5, 13, 14.5, 700},      // label
    {9.5, 12.5, 14.5, 400},    // caption
    {9, 12, 14, 400},          // small
    {8.5, 10.5, 13, 400},      // tick
    {10, 14, 15.5, 400},       // table
    {9, 12, 14, 700},          // table_head
    {8.5, 11, 13, 400},        // furniture
    {46, 46, 57.5, 900},       // numeral
}};

bool is_quiet(Text t) { return t == Text::small || t == Text::tick || t == Text::furniture; }

bool is_tabular(Text t) {
    return t == Text::tick || t == Text::table || t == Text::table_head || t == Text::furniture;
}

} // namespace

Style house() {
    Style style;
    style.letters = letters;
    style.papers = {{{25, 15, 22, 18}, {25, 15, 20, 16}, {20, 10, 18, 15}}};
    for (const auto page : {Page::one_thing, Page::hold, Page::evidence, Page::why, Page::drill,
                            Page::expect, Page::second_drill, Page::photographs, Page::next})
        style.pages.push_back({.page = page});
    return style;
}

Theme theme_of(const Style& style, Paper paper, bool large_print) {
    Theme t;
    t.paper = paper;
    const Margins& m = style.papers[static_cast<std::size_t>(paper)];
    t.binding = m.binding, t.outer = m.outer, t.top = m.top, t.bottom = m.bottom;
    t.gutter = style.gutter;
    t.punch = style.punch;
    t.accent = style.accent;
    for (std::size_t i = 0; i < text_count; ++i) {
        const Letters& row = style.letters[i];
        const auto which = static_cast<Text>(i);
        const double size = large_print ? row.large : row.size;
        t.texts[i].style = {.family = row.coach ? "Vollkorn" : "Lato",
                            .size = size,
                            .weight = row.weight,
                            .colour = is_quiet(which) ? t.quiet : ink::black,
                            .tabular = is_tabular(which)};
        t.texts[i].leading = row.leading * size / row.size;
    }
    return t;
}

} // namespace theme
