#include "page/drill_facts.hpp"

#include "figure/link_code.hpp"
#include "page/drill_loop.hpp"
#include "page/drill_sign.hpp"
#include "page/parts.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <ranges>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

/// Baseline of the first line of a paragraph of that style.
double first_baseline(const Easel& easel, const theme::Setting& setting) {
    const auto set = easel.type.set("x", setting.style, 100, setting.leading);
    return set.lines.empty() ? setting.leading : set.lines.front().at.y;
}

ink::Drawing beside(const Easel& easel, std::string_view label, const ink::Drawing& body,
                    const theme::Setting& setting, double label_width) {
    ink::Drawing out;
    ink::Drawing name = figure::paragraph(easel, Text::label, label, label_width - 6);
    const double drop =
        first_baseline(easel, setting) - first_baseline(easel, easel.theme.setting(Text::label));
    out.size = {label_width + body.size.width,
                std::max(body.size.height, name.size.height + std::max(0.0, drop))};
    out.add(tagged(name, "H2"), {0, drop});
    out.add(body, {label_width, 0});
    return out;
}

/// The coach's link for this drill, else for the lesson, as a code with its name below.
ink::Drawing coded_link(const Easel& easel, const Story& story, const ChosenDrill& chosen) {
    const std::string& link =
        chosen.wish.link.value.empty() ? story.lesson.link.value : chosen.wish.link.value;
    ink::Drawing code = figure::link_code(link);
    if (code.size.width <= 0) return {};
    const double quiet = figure::quiet_zone * figure::code_module * figure::mm;
    code.message = easel.words.say("link.alt", {{"link", link}});
    const auto& style = easel.theme.setting(Text::tick).style;
    ink::Drawing out;
    out.size = {
        std::max(code.size.width, easel.type.line(easel.words.say("link.name"), style).width + 4),
        code.size.height};
    const double aside = (out.size.width - code.size.width) / 2;
    out.add(tagged(std::move(code), "Figure"), {aside, -quiet}); // white above anyway
    ink::Drawing name;
    name.add(figure::label(easel, style, easel.words.say("link.name"),
                           {out.size.width / 2, out.size.height - 2 * quiet + style.size + 4},
                           text::Align::centre));
    out.add(tagged(std::move(name), "P"), {});
    out.size.height += style.size + 8 - 2 * quiet;
    out.add(ink::Link{{0, 0, out.size.width, out.size.height}, link, easel.words.say("link.name")});
    return out;
}

const char* space_key(drills::Space space) {
    using drills::Space;
    switch (space) {
    case Space::no_swing:
        return "drill.space.no-swing";
    case Space::never_swing:
        return "drill.space.never-swing";
    case Space::swing:
        return "drill.space.swing";
    case Space::range_only:
        return "drill.space.range-only";
    case Space::range:
        break;
    }
    return "drill.space.range";
}

} // namespace

std::vector<std::string> drill_cautions(const Easel& easel, const drills::Drill& drill,
                                        bool junior) {
    using drills::Space;
    const auto& w = easel.words;
    std::vector<std::string> lines{w.say("drill.stop.text")};
    if (!drill.caution.empty()) lines.push_back(drill.caution);
    const auto add = [&](std::initializer_list<const char*> keys) {
        std::string line;
        for (const char* key : keys)
            line += (line.empty() ? "" : " ") + w.say(key);
        lines.push_back(std::move(line));
    };
    const Space space = drill.space;
    if (drills::on_range(space))
        add({"caution.range.head", "caution.range.forward", "caution.range"});
    else if (space == Space::swing)
        add({"caution.space.head", "caution.space.clear"});
    else
        add({"caution.space"});
    if (junior) add({"caution.junior.head", "caution.junior"});
    if (space == Space::no_swing && !junior) add({"caution.stages"}); // juniors have no stages
    if (drill.family == "path") add({"caution.path"});
    if (drill.family == "speed") add({junior ? "caution.speed.junior" : "caution.speed"});
    if (space == Space::range) add({"caution.net"});
    const bool moves = space != Space::no_swing && space != Space::never_swing;
    if (moves) add({"caution.warm-up.head", "caution.warm-up"});
    if (space == Space::swing) add({"caution.indoors.head", "caution.indoors"});
    add({"caution.rules"});
    if (!moves) add({"caution.slow", "caution.hand"});
    return lines;
}

std::string proposal_reason(const words::Speaker& words, const Story& story,
                            const std::string& key) {
    std::string value, way;
    for (const Evidence& e : story.evidence) {
        const bool wanted = key == "reason.path" ? e.measure == unit::Measure::path
                                                 : e.measure == unit::Measure::face;
        if (!wanted) continue;
        const auto& last = e.change.after.count > 0 ? e.change.after : e.change.before;
        if (last.count == 0) continue;
        value = key == "reason.face-spread"
                    ? ::words::quantity(e.measure, last.upper - last.lower, words)
                    : ::words::side(e.measure, last.median, words);
        way = words.say(last.median < 0 ? "drillpic.call.left" : "drillpic.call.right");
    }
    return words.say(key, {{"value", value}, {"way", way}});
}

DrillReason drill_reason(const Easel& easel, const Story& story, const ChosenDrill& chosen) {
    if (!chosen.wish.why.empty()) return {chosen.wish.why, true};
    if (!chosen.reason_key.empty() && easel.words.has(chosen.reason_key)) {
        std::string text =
            chosen.reason_key.starts_with("loop.")
                ? easel.words.say(chosen.reason_key,
                                  {{"stage", stage_words(easel.words, chosen.stage.value_or(
                                                                          unit::Stage::place))}})
                : proposal_reason(easel.words, story, chosen.reason_key);
        if (chosen.proposed) text += " " + easel.words.say("drill.of-program");
        return {text, false};
    }
    std::string text = chosen.drill.purpose;
    if (chosen.proposed) text += " " + easel.words.say("drill.of-program");
    return {text, false};
}

std::string drill_sign_text(const Easel& easel, const ChosenDrill& chosen, std::size_t index) {
    return chosen.sign.empty() ? easel.words.say("drill.number", {{"n", index + 1}}) : chosen.sign;
}

ink::Drawing drill_head(const Easel& easel, const Story& story, std::size_t index, bool with_reason,
                        double width) {
    const auto& w = easel.words;
    const ChosenDrill& chosen = story.drills[index];
    theme::Setting number = easel.theme.setting(Text::numeral);
    number.style.size = std::max(92.0, number.style.size);
    ink::Words digit = figure::label(easel, number.style, drill_sign_text(easel, chosen, index),
                                     {width, number.style.size * 0.73}, text::Align::right);
    const ink::Drawing code = coded_link(easel, story, chosen);
    const double taken = digit.width + (code.size.width > 0 ? code.size.width + 8 : 0);
    const double column = width - taken - 18;

    std::string over = w.say(index == 0   ? "page.drill.question"
                             : index == 1 ? "page.second-drill.question"
                                          : "page.further-drill.question");
    if (!chosen.sign.empty())
        over = w.say("book.family." + chosen.drill.family);
    else if (story.drills.size() > 1)
        over += " " + w.say("page.drill.title", {{"n", index + 1}, {"of", story.drills.size()}});
    theme::Setting name = easel.theme.setting(Text::title);
    const double larger = name.style.size < 29 ? 30.0 / name.style.size : 1;
    ink::Style large = name.style;
    large.size *= larger;
    if (easel.type.line(chosen.drill.name, large).width <= column)
        name.style = large, name.leading *= larger;

    std::vector<ink::Drawing> parts;
    parts.push_back(tagged(figure::paragraph(easel, Text::label, over, column), "P"));
    parts.push_back(tagged(figure::paragraph(easel, name, chosen.drill.name, column), "H1"));
    if (with_reason) {
        const DrillReason reason = drill_reason(easel, story, chosen);
        parts.push_back(tagged(
            figure::paragraph(easel, reason.coach ? Text::coach : Text::body, reason.text, column),
            "P"));
    }
    ink::Drawing out;
    const double bar = 2.6;
    out.add(ink::Fill{ink::Path::rect({0, 0, 34, bar}), easel.theme.accent});
    const ink::Drawing text = stacked(parts, 1);
    out.add(text, {0, bar + 4});
    out.add(ink::Tag{true, "Artifact", {}}); // the number is in the line over the name, too
    const double reach = digit.at.y;
    out.add(std::move(digit));
    out.add(ink::Tag{false, "Artifact", {}});
    out.add(code, {width - taken, 0});
    out.size = {width, std::max({text.size.height + bar + 4, reach + 2, code.size.height})};
    return out;
}

ink::Drawing drill_steps(const Easel& easel, const std::vector<std::string>& steps, double width,
                         Text letters) {
    const auto& setting = easel.theme.setting(letters);
    const ink::Style bold = figure::bold(easel, letters);
    const double hang = easel.type.line("6", bold).width + setting.style.size * 0.8;
    const double baseline = first_baseline(easel, setting), gap = 4;
    ink::Drawing out;
    out.size.width = width;
    out.add(ink::Tag{true, "L", {}});
    int number = 0;
    for (const std::string& step : steps) {
        if (number > 0) out.size.height += gap;
        ink::Drawing item;
        ink::Drawing mark;
        mark.add(figure::label(easel, bold, easel.words.say("drill.number", {{"n", ++number}}),
                               {0, baseline}));
        ink::Drawing body = figure::paragraph(easel, letters, step, width - hang);
        const double height = body.size.height;
        item.add(tagged(std::move(mark), "Lbl"), {});
        item.add(tagged(std::move(body), "LBody"), {hang, 0});
        out.add(tagged(std::move(item), "LI"), {0, out.size.height});
        out.size.height += height;
    }
    out.add(ink::Tag{false, "L", {}});
    return out;
}

ink::Drawing drill_cue(const Easel& easel, const Cue& cues, double width, double largest) {
    const std::string& cue = cues.own.empty() ? cues.drills : cues.own;
    if (cue.empty()) return {};
    theme::Setting setting = easel.theme.setting(Text::cue);
    if (!cues.own.empty()) setting.style.family = easel.theme.setting(Text::coach).style.family;
    const double least = setting.style.size, leading = setting.leading / least;
    for (double size = largest; size > least; size -= 1) {
        ink::Style style = setting.style;
        style.size = size;
        if (easel.type.line(cue, style).width > width) continue;
        setting.style = style;
        setting.leading = size * leading;
        break;
    }
    const double strong = easel.theme.widths.strong, pad = 5;
    ink::Drawing name = figure::paragraph(easel, Text::label, easel.words.say("drill.cue"), width);
    ink::Drawing body = figure::paragraph(easel, setting, cue, width);
    ink::Drawing out;
    out.add(rule(easel, width, strong), {});
    out.add(tagged(name, "H2"), {0, pad});
    out.add(tagged(body, "P"), {0, pad + name.size.height});
    const double foot = pad + name.size.height + body.size.height + pad;
    out.add(rule(easel, width, strong), {0, foot});
    out.size = {width, foot + strong};
    return out;
}

ink::Drawing drill_fact(const Easel& easel, std::string_view label, std::string_view words,
                        double width, double label_width) {
    return beside(easel, label,
                  tagged(figure::paragraph(easel, Text::body, words, width - label_width), "P"),
                  easel.theme.setting(Text::body), label_width);
}

ink::Drawing drill_check(const Easel& easel, std::string_view label, std::string_view question,
                         double width, double label_width) {
    const auto& setting = easel.theme.setting(Text::body);
    const double box = setting.style.size, air = setting.style.size * 0.45;
    const std::string yes = easel.words.say("check.yes"), no = easel.words.say("check.no");
    const double yes_width = easel.type.line(yes, setting.style).width;
    const double no_width = easel.type.line(no, setting.style).width;
    const double boxes = 2 * (box + air) + yes_width + no_width + 3 * air;
    ink::Drawing body = tagged(
        figure::paragraph(easel, Text::body, question, width - label_width - boxes - 2 * air), "P");
    const double base = first_baseline(easel, setting);
    double x = width - label_width - boxes;
    for (const auto& [text, wide] : {std::pair{yes, yes_width}, std::pair{no, no_width}}) {
        body.add(figure::label(easel, Text::body, text, {x, base}));
        x += wide + air;
        body.add(ink::Stroke{ink::Path::rect({x, base - box * 0.86, box, box}),
                             1.0,
                             easel.theme.text,
                             {},
                             ink::Cap::butt});
        x += box + 3 * air;
    }
    body.size.width = width - label_width;
    return beside(easel, label, body, setting, label_width);
}

ink::Drawing drill_caution_lines(const Easel& easel, const std::vector<std::string>& lines,
                                 double width, double label_width) {
    const Text size = easel.words.voice().junior ? Text::body : Text::caption;
    ink::Drawing body;
    body.add(ink::Tag{true, "L", {}});
    for (const auto& line : lines) {
        ink::Drawing text = figure::paragraph(easel, size, line, width - label_width);
        const double height = text.size.height;
        body.add(tagged(tagged(std::move(text), "LBody"), "LI"), {0, body.size.height});
        body.size.height += height;
    }
    body.add(ink::Tag{false, "L", {}});
    body.size.width = width - label_width;
    return beside(easel, easel.words.say("drill.caution"), body, easel.theme.setting(size),
                  label_width);
}

ink::Drawing drill_needs(const Easel& easel, const drills::Drill& drill, double width) {
    const auto& w = easel.words;
    const char* key = space_key(drill.space);
    ink::Drawing need =
        stacked({tagged(figure::paragraph(easel, Text::label, w.say("drill.need"), width), "H2"),
                 tagged(figure::paragraph(easel, Text::body, drill.need, width), "P")},
                0);
    const double sign = easel.theme.setting(Text::body).style.size * 2.1;
    ink::Drawing room;
    ink::Drawing words = figure::paragraph(easel, Text::body, w.say(key), width - sign - 6);
    room.size = {width, std::max(sign, words.size.height)};
    room.add(space_sign(easel, drill.space, sign), {0, (room.size.height - sign) / 2});
    room.add(tagged(words, "P"), {sign + 6, (room.size.height - words.size.height) / 2});
    return stacked({need, room}, 5);
}

} // namespace page
