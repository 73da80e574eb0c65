#include "page/log_notes.hpp"

#include "page/parts.hpp"
#include "text/bonds.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

constexpr double line_distance = 9 * figure::mm;
constexpr double group_gap = 13, note_gap = 4;
constexpr double least_lines = 3; ///< a place for questions with fewer is none

/// Where the first line of a text may end: the spaces that fit into `room`, the last one first.
std::vector<std::size_t> ends_of_line(const Easel& easel, const Note& note, double room) {
    const auto& style = easel.theme.setting(note.style).style;
    const auto bonds = text::bonds(note.text);
    std::vector<std::size_t> out;
    for (std::size_t at = 0; at < note.text.size() && note.text[at] != '\n';) {
        const std::size_t end = std::min(note.text.find_first_of(" \n", at + 1), note.text.size());
        if (easel.type.line(note.text.substr(0, end), style).width > room) break;
        if (std::ranges::find(bonds, end) == bonds.end()) out.insert(out.begin(), end);
        at = end;
    }
    return out;
}

/// Whether what is left is so little that a word more would keep it company.
bool runt(const Easel& easel, const Note& note, std::size_t cut, double width) {
    if (cut + 1 >= note.text.size()) return false;
    const std::string rest = note.text.substr(cut + 1);
    if (rest.find('\n') != rest.npos || note.text[cut] == '\n') return false;
    const auto& style = easel.theme.setting(note.style).style;
    return text::is_runt(rest, easel.type.line(rest, style).width, width);
}

/// Bold words and then the text on the same line, as far as it goes.
ink::Drawing run_in(const Easel& easel, const Note& note, double width) {
    const auto& setting = easel.theme.setting(note.style);
    ink::Style bold = figure::bold(easel, Text::body);
    bold.size = std::max(setting.style.size * 0.96, easel.theme.smallest);
    const double head = easel.type.line(note.head + " ", bold).width;
    const auto ends = ends_of_line(easel, note, width - head);
    std::size_t cut = ends.empty() ? 0 : ends.front();
    for (std::size_t i = 1; i < std::min<std::size_t>(ends.size(), 3); ++i)
        if (runt(easel, note, cut, width)) cut = ends[i];
    if (cut == 0)
        return stacked({figure::paragraph(easel, {bold, setting.leading}, note.head, width),
                        figure::paragraph(easel, note.style, note.text, width)},
                       0);
    const auto first =
        easel.type.set(note.text.substr(0, cut), setting.style, width * 2, setting.leading);
    ink::Drawing out;
    out.size = {width, setting.leading};
    const double base = first.lines.front().at.y;
    out.add(figure::label(easel, bold, note.head, {0, base}));
    out.add(ink::moved(first.lines.front(), {head, 0}));
    if (cut >= note.text.size()) return out;
    const ink::Drawing rest =
        figure::paragraph(easel, note.style, note.text.substr(cut + 1), width);
    out.add(rest, {0, setting.leading});
    out.size.height += rest.size.height;
    return out;
}

ink::Drawing note(const Easel& easel, const Note& note, double width) {
    if (note.head.empty())
        return tagged(figure::paragraph(easel, note.style, note.text, width), "P");
    return tagged(run_in(easel, note, width), "P");
}

ink::Drawing column(const Easel& easel, const std::vector<NoteGroup>& groups, double width) {
    std::vector<ink::Drawing> parts;
    for (const auto& group : groups)
        parts.push_back(note_group(easel, group, width));
    return stacked(parts, group_gap);
}

/// What a column may be cut between: a group that is boxed, or a note, its group's title with the
/// first.
struct Part {
    ink::Drawing drawing;
    double before = 0; ///< where it is not the top of a column
};

std::vector<Part> parts_of(const Easel& easel, const std::vector<NoteGroup>& groups, double width) {
    std::vector<Part> out;
    for (const auto& group : groups) {
        if (group.notes.empty()) continue;
        if (group.boxed) {
            out.push_back({note_group(easel, group, width), group_gap});
            continue;
        }
        for (std::size_t i = 0; i < group.notes.size(); ++i) {
            const NoteGroup one{i == 0 ? group.title : std::string(), {group.notes[i]}, false};
            out.push_back({note_group(easel, one, width), i == 0 ? group_gap : note_gap});
        }
    }
    return out;
}

ink::Drawing column(const std::vector<Part>& parts, std::size_t from, std::size_t to) {
    ink::Drawing out;
    for (std::size_t i = from; i < to; ++i) {
        if (i > from) out.size.height += parts[i].before;
        out.add(parts[i].drawing, {0, out.size.height});
        out.size.height += parts[i].drawing.size.height;
        out.size.width = std::max(out.size.width, parts[i].drawing.size.width);
    }
    return out;
}

/// Two columns as they are wanted or, when one of them is too long, cut where they are most even:
/// between two groups where that is enough, else inside one.
ink::Drawing two_columns(const Easel& easel, const std::vector<NoteGroup>& left,
                         const std::vector<NoteGroup>& right, double width, double gutter,
                         double room) {
    const ink::Drawing wanted = side_by_side(
        {{column(easel, left, width), 0}, {column(easel, right, width), width + gutter}});
    if (wanted.size.height <= room) return wanted;
    std::vector<NoteGroup> all = left;
    all.insert(all.end(), right.begin(), right.end());
    const std::vector<Part> parts = parts_of(easel, all, width);
    ink::Drawing best = wanted;
    for (const bool inside : {false, true}) {
        for (std::size_t cut = 1; cut < parts.size(); ++cut) {
            if (!inside && parts[cut].before < group_gap) continue;
            const ink::Drawing even = side_by_side(
                {{column(parts, 0, cut), 0}, {column(parts, cut, parts.size()), width + gutter}});
            if (even.size.height < best.size.height) best = even;
        }
        if (best.size.height <= room) break;
    }
    return best;
}

double lines_height(const Easel& easel, double lines) {
    return easel.theme.setting(Text::heading).leading + lines * line_distance;
}

/// A group longer than a page: its title, and its notes cut between lines where a page ends.
void add_long(std::vector<Block>& blocks, const Easel& easel, const NoteGroup& group) {
    const double width = column_width(easel);
    if (!group.title.empty()) blocks.push_back(heading(easel, group.title, group_gap));
    for (const auto& each : group.notes) {
        if (!each.head.empty())
            blocks.push_back(text_block(easel, Text::label, each.head, 4, width));
        blocks.push_back(text_block(easel, each.style, each.text, 4, width));
    }
}

} // namespace

ink::Drawing note_group(const Easel& easel, const NoteGroup& group, double width) {
    if (group.notes.empty()) return {};
    const double pad = group.boxed ? 9 : 0, inner = width - 2 * pad;
    std::vector<ink::Drawing> parts;
    if (!group.title.empty())
        parts.push_back(tagged(figure::paragraph(easel, Text::heading, group.title, inner), "H2"));
    for (const auto& each : group.notes)
        parts.push_back(note(easel, each, inner));
    const ink::Drawing body = stacked(parts, note_gap);
    if (!group.boxed) return body;
    return framed(easel, body, width, pad);
}

ink::Drawing lines_to_write_on(const Easel& easel, std::string_view title, double width,
                               double height) {
    ink::Drawing out;
    out.add(tagged(figure::paragraph(easel, Text::heading, title, width), "H2"), {});
    const double head = easel.theme.setting(Text::heading).leading;
    const int lines = static_cast<int>((height - head + 0.01) / line_distance);
    for (int i = 1; i <= lines; ++i) {
        const double y = head + i * line_distance;
        out.add(ink::Stroke{ink::Path::segment({0, y - 1}, {width, y - 1}),
                            easel.theme.widths.rule,
                            easel.theme.rule,
                            {},
                            ink::Cap::butt});
    }
    out.size = {width, head + lines * line_distance};
    return out;
}

void offer_lines(const Easel& easel, Section& section, std::string title) {
    section.least_rest = lines_height(easel, least_lines);
    section.rest = [easel, title = std::move(title)](double height) {
        return lines_to_write_on(easel, title, column_width(easel), height);
    };
}

void fill_with_lines(const Easel& easel, std::vector<Block>& blocks, std::string_view title,
                     double foot) {
    constexpr double before = 20;
    const double free = easel.theme.live(true).height - total_height(blocks) - before - foot;
    if (free < lines_height(easel, least_lines)) return;
    blocks.push_back(
        drawn_block("lines", lines_to_write_on(easel, title, column_width(easel), free), before));
}

std::vector<Block> page_of_notes(const Easel& easel, std::string_view title,
                                 const std::vector<NoteGroup>& over,
                                 const std::vector<NoteGroup>& left,
                                 const std::vector<NoteGroup>& right,
                                 std::string_view lines_title) {
    const double width = column_width(easel), gutter = 20, half = (width - gutter) / 2;
    std::vector<Block> blocks{page_title(easel, title)};
    const double page = easel.theme.live(true).height - blocks.front().height();
    const bool large = easel.theme.setting(Text::body).style.size > 14;

    const ink::Drawing top = column(easel, over, width);
    const double least = lines_height(easel, least_lines) + group_gap + 4;
    const double over_them = top.size.height > 0 ? top.size.height + group_gap : 0;
    ink::Drawing body; // large print has one column
    if (!large)
        body =
            stacked({top, two_columns(easel, left, right, half, gutter, page - over_them - least)},
                    group_gap);
    const auto add = [&](std::string name, ink::Drawing drawing, double before) {
        if (drawing.size.height > 0)
            blocks.push_back(drawn_block(std::move(name), std::move(drawing), before));
    };
    const double rest = page - body.size.height - group_gap - 4;
    const bool lines_fit = rest >= lines_height(easel, least_lines);
    if (!large && body.size.height <= page) {
        add("notes", body, 0);
        if (lines_fit)
            add("lines", lines_to_write_on(easel, lines_title, width, rest), group_gap + 4);
        return blocks;
    }
    const double whole = easel.theme.live(true).height;
    double y = blocks.front().height(); // as the flow will place them
    bool cut = false;
    for (const auto* groups : {&over, &left, &right})
        for (const auto& group : *groups) {
            ink::Drawing drawing = note_group(easel, group, width);
            const double height = drawing.size.height;
            if (height <= 0) continue;
            if (height > whole - blocks.front().height()) {
                add_long(blocks, easel, group);
                cut = true;
                continue;
            }
            const double before = blocks.size() > 1 ? group_gap : 0;
            y = y + before + height > whole ? height : y + before + height;
            add("notes", std::move(drawing), before);
        }
    if (cut) return blocks; // nobody knows where its last page ends: the flow fills what is left
    const double left_over = whole - y - group_gap;
    if (left_over < lines_height(easel, least_lines)) {
        // Large print gets its page of lines; a full page needs no second one for them alone.
        if (large) add("lines", lines_to_write_on(easel, lines_title, width, whole), group_gap);
        return blocks;
    }
    add("lines", lines_to_write_on(easel, lines_title, width, left_over), group_gap);
    return blocks;
}

} // namespace page
