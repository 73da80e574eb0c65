#include "page/evidence_table.hpp"

#include "page/evidence_rows.hpp"
#include "page/parts.hpp"
#include "page/verdict.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace page {

namespace {

/// Where the columns start, points from the left.
struct Columns {
    double name = 0, strip = 0, strip_width = 0, before = 0, after = 0, change = 0, all = 0;
};

/// Width of the longest stretch that a line cannot break.
double widest_part(const figure::Easel& easel, theme::Text text, const std::string& words) {
    const auto& style = easel.theme.setting(text).style;
    double widest = 0;
    for (std::size_t from = 0; from < words.size();) {
        const std::size_t space = std::min(words.find(' ', from), words.size()),
                          soft = std::min(words.find("\u00AD", from), words.size()),
                          end = std::min(space, soft);
        const std::string part = words.substr(from, end - from) + (soft < space ? "-" : "");
        widest = std::max(widest, easel.type.line(part, style).width);
        from = end + (soft < space ? 2 : 1);
    }
    return widest;
}

Columns columns_of(const figure::Easel& easel, const std::vector<unit::Measure>& shown) {
    const double all = column_width(easel);
    double names = 0;
    for (const auto m : shown)
        names = std::max(
            names, widest_part(easel, theme::Text::table, easel.words.say("measure." + key_of(m))));
    const bool narrow = all < 34 * easel.theme.setting(theme::Text::table).style.size;
    Columns c;
    c.all = all;
    c.strip = std::max(all * (narrow ? 0.17 : 0.14), names + 8);
    const double value = all * (narrow ? 0.165 : 0.15);
    c.strip_width = all * (narrow ? 0.24 : 0.34);
    c.before = c.strip + c.strip_width + 8;
    c.after = c.before + value;
    c.change = c.after + value;
    return c;
}

ink::Drawing cell(const figure::Easel& easel, const std::vector<std::string>& lines, double width) {
    std::vector<ink::Drawing> parts;
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (!lines[i].empty())
            parts.push_back(figure::paragraph(
                easel, i == 0 ? theme::Text::table : theme::Text::small, lines[i], width));
    return stacked(parts, 0);
}

/// A value and, apart, its direction: "4.0° R" and "open".
std::vector<std::string> in_two(const std::string& text) {
    const std::size_t first = text.find(' ');
    const std::size_t second = first == std::string::npos ? first : text.find(' ', first + 1);
    if (second == std::string::npos) return {text};
    return {text.substr(0, second), text.substr(second + 1)};
}

/// A typical value, its direction on a second line; one or two shots stand there as they are.
std::vector<std::string> value_text(const figure::Easel& easel, const Evidence& e,
                                    const measure::Sample& sample) {
    if (sample.count == 0) return {easel.words.say("evidence.not-measured")};
    const auto said = [&](double value) {
        return in_two(words::side_short(e.measure, value, easel.words));
    };
    if (sample.count == 1 || has_typical(sample)) return said(sample.median);
    const auto brief = [&](double value) { // "0.0° square" is said by its number alone
        const std::string text = said(value).front();
        const auto gap = text.find("° ");
        const bool side = gap != std::string::npos && text.size() - gap <= 5; // "° " and a letter
        return gap == std::string::npos || side ? text : text.substr(0, gap + 2);
    };
    return {brief(sample.least) + ", " + brief(sample.most)};
}

/// The 95 % range of a change; its direction is written again only where it has two.
std::string range_text(const figure::Easel& easel, unit::Measure measure,
                       const measure::Interval& range) {
    const double a = std::abs(range.lower), b = std::abs(range.upper);
    const bool one_way = range.lower * range.upper > 0;
    const std::string text =
        one_way
            ? words::range(measure, std::min(a, b), std::max(a, b), easel.words)
            : easel.words.say("evidence.row.range",
                              {{"lower", words::difference(measure, range.lower, easel.words)},
                               {"upper", words::difference(measure, range.upper, easel.words)}});
    return easel.words.say("evidence.row.of-95", {{"range", text}});
}

std::vector<std::string> change_text(const figure::Easel& easel, const Story& story,
                                     const Evidence& e) {
    const auto& c = e.change;
    if (!has_typical(c.before) || !has_typical(c.after)) return {};
    const auto& range = c.shift.at95; // which way it went is told only when the range tells it
    const bool open = range && range->lower <= 0 && range->upper >= 0;
    std::vector<std::string> out{open ? easel.words.say("evidence.no-clear-shift")
                                      : words::difference(e.measure, c.shift.value, easel.words)};
    if (is_junior(story)) return out;
    out.push_back(c.shift.at95 ? range_text(easel, e.measure, *c.shift.at95)
                               : easel.words.say("evidence.no-range"));
    return out;
}

ink::Drawing row(const figure::Easel& easel, const Story& story, const Evidence& e,
                 const Columns& c, double reach, bool shifts) {
    const auto input = dots_of(easel, story, e);
    ink::Drawing picture =
        figure::strip(easel, input, strip_scale(input, c.strip_width, reach), c.strip_width);
    const std::string unit(unit::symbol(unit::row(e.measure).kind, easel.words.voice().units));
    std::vector<std::string> name{easel.words.say("measure." + key_of(e.measure)),
                                  unit == "°" ? "" : unit};
    if (e.estimated)
        name.back() =
            easel.words.say(e.measure == unit::Measure::face_path ? "evidence.face-minus-path"
                                                                  : "evidence.estimated-word");
    std::vector<std::pair<ink::Drawing, double>> cells{
        {cell(easel, name, c.strip - 6), c.name},
        {cell(easel, value_text(easel, e, e.change.before), c.after - c.before - 6), c.before},
        {cell(easel, value_text(easel, e, e.change.after), c.change - c.after - 6), c.after},
        {cell(easel, change_text(easel, story, e), c.all - c.change), c.change}};
    if (!shifts) cells.pop_back();
    ink::Drawing out;
    out.size = {c.all, picture.size.height};
    for (const auto& [drawing, x] : cells)
        out.size.height = std::max(out.size.height, drawing.size.height);
    out.add(ink::Tag{true, "TR", {}});
    out.add(tagged(cells[0].first, "TH"), {c.name, 0});
    out.add(ink::Tag{true, "TD", {}});
    out.add(tagged(std::move(picture), "Figure"), {c.strip, 0});
    out.add(ink::Tag{false, "TD", {}});
    for (std::size_t i = 1; i < cells.size(); ++i)
        out.add(tagged(cells[i].first, "TD"), {cells[i].second, 0});
    out.add(ink::Tag{false, "TR", {}});
    out.size.height += 5;
    out.add(
        ink::Stroke{ink::Path::segment({0, out.size.height - 2.5}, {c.all, out.size.height - 2.5}),
                    0.35,
                    easel.theme.rule,
                    {},
                    ink::Cap::butt});
    return out;
}

ink::Drawing table_head(const figure::Easel& easel, const Columns& c, bool shifts) {
    ink::Drawing head;
    head.size = {c.all, easel.theme.setting(theme::Text::table_head).leading + 8};
    const double base = head.size.height - 8;
    head.add(ink::Tag{true, "TR", {}});
    const auto th = [&](const char* key, double x) {
        ink::Drawing d;
        d.add(figure::label(easel, theme::Text::table_head, easel.words.say(key), {x, base}));
        head.add(tagged(std::move(d), "TH"), {});
    };
    th("evidence.table.measure", c.name);
    th("evidence.table.shots", c.strip + 8);
    th("evidence.table.before", c.before);
    th("evidence.table.after", c.after);
    if (shifts) th("evidence.table.difference", c.change);
    head.add(ink::Tag{false, "TR", {}});
    head.add(rule(easel, c.all, 0.8), {0, head.size.height - 4});
    return head;
}

} // namespace

std::vector<unit::Measure> listed_measures(const Story& story, std::size_t rows) {
    using enum unit::Measure;
    std::vector<unit::Measure> out;
    const auto take = [&](unit::Measure m) {
        const auto found = std::ranges::find(story.evidence, m, &Evidence::measure);
        if (found == story.evidence.end() || out.size() >= rows) return;
        if (std::ranges::find(out, m) == out.end()) out.push_back(m);
    };
    if (!story.evidence.empty() && story.evidence.front().is_aim)
        take(story.evidence.front().measure);
    if (is_junior(story)) { // nothing that grows with the child: no speed, no carry
        for (const auto m : {face, path, start})
            take(m);
        return out;
    }
    for (const auto m : {face, path, carry, club_speed, loft, start, face_path, ball_speed, launch,
                         curve, attack, spin})
        take(m);
    return out;
}

Block evidence_table(const figure::Easel& easel, const Story& story, std::size_t rows) {
    const auto shown = listed_measures(story, rows);
    const Columns c = columns_of(easel, shown);
    Block block{.name = "table of measures", .role = "Table"};
    block.space_before = 12;
    const bool shifts = std::ranges::any_of(story.evidence, [](const Evidence& e) {
        return has_typical(e.change.before) && has_typical(e.change.after);
    });
    block.head = table_head(easel, c, shifts);
    double reach = 0; // sided angles share one scale
    for (const Evidence& e : story.evidence) {
        const auto& measure = unit::row(e.measure);
        if (!measure.sided || measure.kind != unit::Kind::angle ||
            std::ranges::find(shown, e.measure) == shown.end())
            continue;
        for (const auto* side : {&e.before, &e.after, &e.cold})
            for (const auto& shot : *side)
                if (const auto v = shot[e.measure]) reach = std::max(reach, std::abs(*v));
    }
    for (const Evidence& e : story.evidence)
        if (std::ranges::find(shown, e.measure) != shown.end())
            block.pieces.push_back({row(easel, story, e, c, reach, shifts)});
    return block;
}

} // namespace page
