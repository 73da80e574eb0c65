#include "page/passed_page.hpp"

#include "figure/drill_picture.hpp"
#include "page/drill_facts.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

const std::string& first_of(const std::string& wish, const std::string& own) {
    return wish.empty() ? own : wish;
}

ink::Drawing head(const Easel& easel, const PassedDrill& passed) {
    const auto& w = easel.words;
    const double width = column_width(easel);
    ink::Drawing bar;
    bar.size = {width, 2.6};
    bar.add(ink::Fill{ink::Path::rect({0, 0, 34, 2.6}), easel.theme.accent});
    const auto put = [&](Text text, const std::string& words, const char* role) {
        return tagged(figure::paragraph(easel, text, words, width), role);
    };
    return stacked({bar, put(Text::label, w.say("binder.drills-passed"), "P"),
                    put(Text::title, passed.drill->name, "H1"),
                    put(Text::lead,
                        w.say("binder.passed-on", {{"date", words::date_long(passed.on, w)}}), "P"),
                    put(Text::body, passed.drill->purpose, "P")},
                   3);
}

/// Steps and cue beside the picture and what is needed.
ink::Drawing how(const Easel& easel, const PassedDrill& passed, const HoldPicture& hold) {
    const drills::Drill& drill = *passed.drill;
    const bool junior = easel.words.voice().junior;
    const double width = column_width(easel), right = width * 0.34, gutter = 18;
    const double left = width - right - gutter;
    auto steps = junior && !drill.junior_steps.empty() ? drill.junior_steps : drill.steps;
    const Cue cue{passed.wish ? passed.wish->cue : std::string(), drill.cue};
    const ink::Drawing text =
        stacked({drill_steps(easel, steps, left), drill_cue(easel, cue, left)}, 12);
    std::vector<ink::Drawing> beside;
    if (!drill.picture.empty()) {
        std::optional<ink::Drawing> ready;
        if (hold) ready = hold(drill.picture, right, 150);
        ink::Drawing drawn = figure::drill_picture(easel, drill.picture, easel.words.voice().hand,
                                                   right, 150, ready ? &*ready : nullptr);
        if (drawn.size.height > 0) beside.push_back(tagged(std::move(drawn), "Figure"));
    }
    beside.push_back(drill_needs(easel, drill, right));
    return side_by_side({{text, 0}, {stacked(beside, 8), left + gutter}});
}

ink::Drawing facts(const Easel& easel, const PassedDrill& passed) {
    const auto& w = easel.words;
    const drills::Drill& drill = *passed.drill;
    const bool junior = w.voice().junior;
    const double width = column_width(easel);
    const double label = easel.theme.setting(Text::label).style.size * 9.2;
    const record::DrillWish none;
    const record::DrillWish& wish = passed.wish ? *passed.wish : none;
    std::vector<ink::Drawing> rows;
    const auto fact = [&](const char* key, const std::string& words) {
        if (!words.empty()) rows.push_back(drill_fact(easel, w.say(key), words, width, label));
    };
    fact("drill.dose", first_of(wish.dose, drill.dose));
    if (!drill.check.empty())
        rows.push_back(drill_check(easel, w.say("drill.check"), drill.check, width, label));
    if (!junior) {
        fact("drill.good-enough", drill.good_enough);
        fact("drill.pass", first_of(wish.pass, drill.pass));
    }
    fact("drill.repair", drill.repair);
    rows.push_back(drill_caution_lines(easel, drill_cautions(easel, drill, junior), width, label));
    return stacked(rows, 4);
}

} // namespace

Section passed_page(const Easel& easel, const PassedDrill& passed, const std::string& name,
                    const HoldPicture& hold) {
    Section section{.name = name};
    section.title = easel.words.say("binder.passed-title", {{"name", passed.drill->name}});
    const auto add = [&](std::string part, ink::Drawing drawing, double before) {
        Block block{.name = std::move(part)};
        block.space_before = before;
        block.pieces.push_back({std::move(drawing)});
        section.blocks.push_back(std::move(block));
    };
    add("head", head(easel, passed), 0);
    add("how", how(easel, passed, hold), 18);
    add("facts", facts(easel, passed), 18);
    const double rest = easel.theme.live(true).height - total_height(section.blocks) - 22;
    if (rest > 90)
        add("lines",
            lines_to_write_on(easel, easel.words.say("binder.used-again"), column_width(easel),
                              rest),
            22);
    return section;
}

} // namespace page
