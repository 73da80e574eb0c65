#include "theme/read_style.hpp"

#include "theme/colour.hpp"
#include "yaml/field.hpp"

namespace theme {

namespace {

using yaml::Field;

constexpr std::array<std::string_view, text_count> text_names{
    "title", "heading", "lead",  "body", "coach", "coach large", "step",      "cue",
    "label", "caption", "small", "tick", "table", "table head",  "furniture", "numeral"};
constexpr std::array<std::string_view, 3> paper_names{"A4", "Letter", "A5"};
constexpr std::array<std::string_view, 4> punch_words{"no", "two holes", "four holes",
                                                      "three holes"};

bool is_keyed(const Field& root, std::string_view example) {
    if (root.is_map()) return true;
    if (root) root.error("the file must say what to change, key by key", std::string(example));
    return false;
}

void take(const Field& field, double& to, double least, double most) {
    if (const auto number = field.number(least, most)) to = *number;
}

void read_row(const Field& field, Letters& row) {
    field.only({"size", "leading", "large", "weight"});
    take(field.at("size"), row.size, smallest_text, largest_text);
    take(field.at("leading"), row.leading, smallest_text, 2 * largest_text);
    take(field.at("large"), row.large, smallest_text, 2 * largest_text);
    if (const auto weight = field.at("weight").whole(100, 900)) row.weight = *weight;
    if (row.leading < row.size)
        field.error("the lines of " + field.called() + " stand closer than its letters are high",
                    "make 'leading' 1.2 to 1.45 times 'size'");
    if (row.large < row.size)
        field.error(field.called() + " is smaller in large print than in ordinary print",
                    "make 'large' at least as large as 'size'");
}

void read_margins(const Field& field, Margins& m) {
    field.only({"binding", "outer", "top", "bottom"});
    take(field.at("binding"), m.binding, least_binding, 50);
    take(field.at("outer"), m.outer, least_outer, 50);
    take(field.at("top"), m.top, 16, 60); // the running head stands in it
    take(field.at("bottom"), m.bottom, 14, 60);
}

} // namespace

void read_letters(const diag::Source& source, Style& style, diag::Findings& findings) {
    const yaml::Document document(source, findings);
    const Field root = document.root("this file");
    if (!document.readable() || !is_keyed(root, "such as: body: {size: 11.5, leading: 15.5}"))
        return;
    root.only({text_names.begin(), text_names.end()});
    for (std::size_t i = 0; i < text_count; ++i)
        if (const auto row = root.at(text_names[i])) read_row(row, style.letters[i]);
}

void read_papers(const diag::Source& source, Style& style, diag::Findings& findings) {
    const yaml::Document document(source, findings);
    const Field root = document.root("this file");
    if (!document.readable() || !is_keyed(root, "such as: A4: {binding: 25, outer: 15}")) return;
    std::vector<std::string_view> known(paper_names.begin(), paper_names.end());
    known.insert(known.end(), {"gutter", "punch marks"});
    root.only(known);
    for (std::size_t i = 0; i < paper_names.size(); ++i)
        if (const auto paper = root.at(paper_names[i])) read_margins(paper, style.papers[i]);
    take(root.at("gutter"), style.gutter, 2, 12);
    if (const auto punch = root.at("punch marks").one_of(punch_words))
        style.punch = static_cast<Punch>(*punch);
}

void read_inks(const diag::Source& source, Style& style, diag::Findings& findings) {
    const yaml::Document document(source, findings);
    const Field root = document.root("this file");
    if (!document.readable() || !is_keyed(root, "such as: accent: \"#005c99\"")) return;
    root.only({"accent"});
    const Field accent = root.at("accent");
    if (const auto text = accent.text())
        if (const auto colour = accent_of({*text, accent.span()}, findings)) style.accent = *colour;
}

} // namespace theme
