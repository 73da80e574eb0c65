#include "page/parts.hpp"

#include <algorithm>

namespace page {

double column_width(const figure::Easel& easel) { return easel.theme.live(true).width; }

bool is_narrow(const figure::Easel& easel) {
    constexpr double narrow = 150 * figure::mm, large = 14; // points
    return easel.theme.setting(theme::Text::body).style.size > large ||
           column_width(easel) < narrow;
}

double columns(const figure::Easel& easel, int n) {
    const double gutter = easel.theme.gutter * figure::mm;
    return (column_width(easel) - 5 * gutter) / 6 * n + gutter * (n - 1);
}

ink::Drawing tagged(ink::Drawing drawing, std::string_view role) {
    ink::Drawing out;
    out.size = drawing.size;
    out.message = drawing.message;
    out.add(ink::Tag{true, std::string(role), role == "Figure" ? drawing.message : std::string()});
    for (auto& mark : drawing.marks)
        out.add(std::move(mark));
    out.add(ink::Tag{false, std::string(role), {}});
    return out;
}

Block page_title(const figure::Easel& easel, std::string_view words, double text_width) {
    const double bar = 2.6, width = column_width(easel);
    ink::Drawing text =
        figure::paragraph(easel, theme::Text::title, words, text_width > 0 ? text_width : width);
    ink::Drawing drawing;
    drawing.size = {width, bar + 5 + text.size.height + 8};
    drawing.add(ink::Fill{ink::Path::rect({0, 0, 34, bar}), easel.theme.accent});
    drawing.add(tagged(std::move(text), "H1"), {0, bar + 5});
    Block block{.name = "title"};
    block.pieces.push_back({std::move(drawing)});
    block.keep_with_next = true;
    return block;
}

Block heading(const figure::Easel& easel, std::string_view words, double space_before) {
    ink::Drawing text = figure::paragraph(easel, theme::Text::heading, words, column_width(easel));
    text.size.height += 2;
    Block block{.name = std::string(words), .role = "H2"};
    block.space_before = space_before;
    block.pieces.push_back({std::move(text)});
    block.keep_with_next = true;
    return block;
}

Block text_block(const figure::Easel& easel, theme::Text text, std::string_view words,
                 double space_before, double width) {
    const auto& setting = easel.theme.setting(text);
    const double wide =
        width > 0 ? width : std::min(column_width(easel), setting.style.size * widest_measure);
    const text::Lines set = easel.type.set(words, setting.style, wide, setting.leading);
    Block block{.name = "text", .role = "P"};
    block.space_before = space_before;
    const std::size_t n = set.lines.size();
    for (std::size_t i = 0; i < n; ++i) {
        ink::Drawing line;
        line.size = {wide, setting.leading};
        line.add(ink::moved(set.lines[i], {0, -static_cast<double>(i) * setting.leading}));
        block.pieces.push_back({std::move(line), (i == 0 && n > 1) || (n > 2 && i + 2 == n)});
    }
    return block;
}

Block figure_block(std::string name, ink::Drawing drawing, double space_before) {
    Block block{.name = std::move(name)};
    block.space_before = space_before;
    block.pieces.push_back({tagged(std::move(drawing), "Figure")});
    return block;
}

Block drawn_block(std::string name, ink::Drawing drawing, double space_before) {
    Block block{.name = std::move(name)};
    block.space_before = space_before;
    block.pieces.push_back({std::move(drawing)});
    return block;
}

ink::Drawing side_by_side(const std::vector<Cell>& cells) {
    ink::Drawing out;
    for (const auto& cell : cells) {
        out.size.width = std::max(out.size.width, cell.x + cell.drawing.size.width);
        out.size.height = std::max(out.size.height, cell.drawing.size.height);
        out.add(cell.drawing, {cell.x, 0});
    }
    return out;
}

ink::Drawing stacked(const std::vector<ink::Drawing>& parts, double gap) {
    ink::Drawing out;
    for (const auto& part : parts) {
        if (part.size.height <= 0) continue;
        if (out.size.height > 0) out.size.height += gap;
        out.add(part, {0, out.size.height});
        out.size.height += part.size.height;
        out.size.width = std::max(out.size.width, part.size.width);
    }
    return out;
}

ink::Drawing labelled(const figure::Easel& easel, std::string_view label, theme::Text text,
                      std::string_view words, double width, double label_width) {
    const auto& setting = easel.theme.setting(text);
    ink::Drawing body = figure::paragraph(easel, text, words, width - label_width);
    ink::Drawing out;
    out.size = {width, body.size.height};
    // the label's baseline is that of the first line of the words
    const text::Lines first = easel.type.set("x", setting.style, width, setting.leading);
    const double baseline = first.lines.empty() ? setting.leading : first.lines.front().at.y;
    ink::Drawing name;
    name.add(figure::label(easel, theme::Text::label, label, {0, baseline}));
    out.add(tagged(std::move(name), "H2"), {});
    out.add(tagged(std::move(body), "P"), {label_width, 0});
    return out;
}

ink::Drawing rule(const figure::Easel& easel, double width, double weight) {
    ink::Drawing out;
    out.size = {width, weight};
    out.add(ink::Stroke{ink::Path::segment({0, weight / 2}, {width, weight / 2}),
                        weight,
                        easel.theme.text,
                        {},
                        ink::Cap::butt});
    return out;
}

ink::Drawing gap(double width, double height) {
    ink::Drawing out;
    out.size = {width, height};
    return out;
}

ink::Drawing framed(const figure::Easel& easel, const ink::Drawing& body, double width,
                    double pad) {
    ink::Drawing out;
    out.size = {width, body.size.height + 2 * pad};
    out.add(ink::Stroke{ink::Path::rect({0.5, 0.5, width - 1, out.size.height - 1}),
                        1.0,
                        easel.theme.text,
                        {},
                        ink::Cap::butt});
    out.add(body, {pad, pad});
    return out;
}

std::string cut(const figure::Easel& easel, const ink::Style& style, const std::string& text,
                double room) {
    std::string kept = text;
    while (!kept.empty() && easel.type.line(kept == text ? kept : kept + "…", style).width > room) {
        while (!kept.empty() && (kept.back() & 0xC0) == 0x80)
            kept.pop_back(); // the rest of a letter of several bytes
        if (!kept.empty()) kept.pop_back();
        while (kept.ends_with(' '))
            kept.pop_back();
    }
    return kept == text ? kept : kept + "…";
}

} // namespace page
