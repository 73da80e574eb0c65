#include "theme/theme.hpp"

namespace theme {

namespace {

constexpr double mm = 72.0 / 25.4;

ink::Style sans(double size, int weight, ink::Colour colour = ink::black) {
    return {.family = "Lato", .size = size, .weight = weight, .colour = colour};
}

ink::Style serif(double size, int weight = 400) {
    return {.family = "Vollkorn", .size = size, .weight = weight};
}

/// Sizes and leadings in points at ordinary print; large print multiplies by `k`.
void set_texts(Theme& t, double k) {
    const auto put = [&](Text which, ink::Style style, double leading) {
        style.size *= k;
        t.texts[static_cast<std::size_t>(which)] = {style, leading * k};
    };
    const double big = k > 1 ? 1 / k * 1.25 : 1; // display sizes grow less than running text
    put(Text::title, sans(23 * big, 900), 28 * big);
    put(Text::heading, sans(12.5 * (k > 1 ? 0.9 : 1), 700), 16);
    put(Text::lead, sans(12.5, 400), 17);
    put(Text::body, sans(11, 400), 15);
    put(Text::coach, serif(12.5), 17);
    put(Text::coach_large, serif(16 * (k > 1 ? 0.8 : 1)), 21.5 * (k > 1 ? 0.8 : 1));
    put(Text::step, sans(12.5, 400), 17);
    put(Text::cue, serif(17 * (k > 1 ? 0.85 : 1), 500), 22 * (k > 1 ? 0.85 : 1));
    put(Text::label, sans(9.5, 700), 13);
    put(Text::caption, sans(9.5, 400), 12.5);
    put(Text::small, sans(9, 400, t.quiet), 12);
    put(Text::tick, sans(8.5, 400, t.quiet), 10.5);
    put(Text::table, sans(10, 400), 14);
    put(Text::table_head, sans(9, 700), 12);
    put(Text::furniture, sans(8.5, 400, t.quiet), 11);
    put(Text::numeral, sans(46 * big, 900), 46 * big);
    for (const auto which : {Text::tick, Text::table, Text::table_head, Text::furniture})
        t.texts[static_cast<std::size_t>(which)].style.tabular = true;
}

} // namespace

ink::Size size_of(Paper paper) {
    switch (paper) {
    case Paper::a4:
        return {210 * mm, 297 * mm};
    case Paper::letter:
        return {612, 792};
    case Paper::a5:
        return {148 * mm, 210 * mm};
    }
    return {};
}

ink::Rect Theme::live(bool right_hand) const {
    const ink::Size sheet = page();
    const double width = sheet.width - (binding + outer) * mm;
    const double height = sheet.height - (top + bottom) * mm;
    return {(right_hand ? binding : outer) * mm, top * mm, width, height};
}

Theme house_style(Paper paper, bool large_print) {
    Theme t;
    t.paper = paper;
    if (paper == Paper::a5) t.binding = 20, t.outer = 10, t.top = 18, t.bottom = 15;
    if (paper == Paper::letter) t.top = 20, t.bottom = 16;
    set_texts(t, large_print ? 17.0 / 11.0 : 1.0);
    return t;
}

} // namespace theme
