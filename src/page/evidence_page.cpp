#include "page/evidence_page.hpp"

#include "figure/filming.hpp"
#include "page/evidence_rows.hpp"
#include "page/evidence_table.hpp"
#include "page/hold_page.hpp"
#include "page/hold_words.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "page/verdict.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace page {

namespace {

std::string joined(const std::vector<std::string>& sentences) {
    std::string out;
    for (const auto& s : sentences)
        out += (out.empty() ? "" : " ") + s;
    return out;
}

void add_aim(std::vector<Block>& blocks, const figure::Easel& easel, const Story& story,
             const Evidence& aim, double figure_height) {
    const VerdictWords said = verdict_words(story, aim, easel.words);
    auto setting = easel.theme.setting(theme::Text::lead);
    setting.style.weight = 900;
    ink::Drawing head = figure::paragraph(easel, setting, said.head, column_width(easel));
    Block head_block{.name = "verdict", .role = "H2"};
    head_block.pieces.push_back({std::move(head)});
    head_block.keep_with_next = true;
    blocks.push_back(std::move(head_block));
    blocks.push_back(text_block(easel, theme::Text::body, joined(said.sentences), 1));
    blocks.back().keep_with_next = true;
    const auto input = dots_of(easel, story, aim);
    blocks.push_back(
        figure_block("every shot of the aim",
                     figure::shot_by_shot(easel, input, column_width(easel), figure_height), 10));
}

/// "2 of 12 shots set aside in “Before”: struck off the heel."
std::vector<std::string> set_aside_notes(const figure::Easel& easel, const Story& story) {
    std::vector<std::string> out;
    const auto& w = easel.words;
    const auto note = [&](shots::Block block, const std::string& name) {
        std::size_t all = 0, aside = 0;
        std::vector<std::string> reasons;
        for (const auto& shot : story.table->shots) {
            if (shot.block != block) continue;
            ++all;
            if (shot.set_aside.empty()) continue;
            ++aside;
            if (std::ranges::find(reasons, shot.set_aside) == reasons.end())
                reasons.push_back(shot.set_aside);
        }
        if (aside == 0) return;
        std::string why;
        for (const auto& r : reasons)
            why += (why.empty() ? "" : ", ") + r;
        out.push_back(w.say("evidence.set-aside.note",
                            {{"n", aside}, {"of", all}, {"block", name}, {"reason", why}}));
    };
    note(shots::Block::before, w.say("figure.before"));
    note(shots::Block::after, w.say("figure.after"));
    note(shots::Block::cold, w.say("figure.cold"));
    if (out.empty()) out.push_back(w.say("evidence.set-aside.none"));
    return out;
}

/// What the marks on this page mean.
std::vector<const char*> symbols_used(const Story& story) {
    std::vector<const char*> keys;
    const auto& shots = story.table->shots;
    const auto any = [&](shots::Block block) {
        return std::ranges::any_of(shots, [&](const auto& s) { return s.block == block; });
    };
    if (any(shots::Block::before)) keys.push_back("evidence.key.before");
    if (any(shots::Block::after)) keys.push_back("evidence.key.after");
    if (any(shots::Block::cold)) keys.push_back("evidence.key.cold");
    if (std::ranges::any_of(shots, [](const auto& s) { return !s.set_aside.empty(); }))
        keys.push_back("evidence.key.aside");
    return keys;
}

/// "Measured too, not listed here: ball speed, launch."
std::string not_listed(const figure::Easel& easel, const Story& story, std::size_t rows) {
    const auto listed = listed_measures(story, rows);
    std::string names;
    for (const Evidence& e : story.evidence)
        if (!e.estimated && std::ranges::find(listed, e.measure) == listed.end())
            names += (names.empty() ? "" : ", ") + easel.words.say("noun." + key_of(e.measure));
    return names.empty() ? names : easel.words.say("evidence.more", {{"names", names}});
}

std::string notes(const figure::Easel& easel, const Story& story, std::size_t rows) {
    const auto& w = easel.words;
    std::vector<std::string> out = set_aside_notes(easel, story);
    const auto& conditions = story.lesson.conditions.text;
    out.push_back(conditions.empty() ? w.say("evidence.conditions.none")
                                     : w.say("evidence.conditions", {{"text", conditions}}));
    out.push_back(w.say("evidence.one-day"));
    for (const char* key : symbols_used(story))
        out.push_back(w.say(key));
    if (std::ranges::any_of(story.evidence, [](const Evidence& e) {
            return e.estimated && e.measure != unit::Measure::face_path;
        }))
        out.push_back(w.say("evidence.estimated"));
    if (const auto more = not_listed(easel, story, rows); !more.empty()) out.push_back(more);
    return joined(out);
}

std::string rule_text(const figure::Easel& easel, const Evidence& aim, const record::Aim& wanted) {
    const auto& w = easel.words;
    const words::Holes worth{{"worth", words::quantity(aim.measure, wanted.worth_having, w)}};
    if (aim.change.verdict == measure::Verdict::first_look) return w.say("rule.few");
    std::vector<std::string> out{w.say("rule.shift"),        w.say("rule.changed"),
                                 w.say("rule.probably"),     w.say("rule.margin"),
                                 w.say("rule.worth", worth), w.say("rule.few")};
    if (aim.change.verdict == measure::Verdict::tighter) out.push_back(w.say("rule.tighter"));
    if (aim.change.verdict == measure::Verdict::about_same)
        out.push_back(w.say("rule.same", worth));
    return joined(out);
}

void add_shots(std::vector<Block>& blocks, const figure::Easel& easel, const Story& story,
               double figure_height, std::size_t rows) {
    const Evidence* aim = aim_of(story);
    if (aim) add_aim(blocks, easel, story, *aim, figure_height);
    blocks.push_back(evidence_table(easel, story, rows));
    std::vector<std::string> small{notes(easel, story, rows)};
    if (aim && story.lesson.aim)
        small.push_back(easel.words.say(
            "join.colon",
            {{"first", easel.words.say(is_junior(story) ? "rule.grown-ups" : "rule.title")},
             {"second", rule_text(easel, *aim, *story.lesson.aim)}}));
    add_small_print(blocks, easel, theme::Text::small, small, 8);
}

/// Where to stand the phone for the next film, and what to film.
Block filming_block(const figure::Easel& easel, const Story& story) {
    const auto& w = easel.words;
    const double gutter = easel.theme.gutter * figure::mm, width = columns(easel, 3),
                 aside = column_width(easel) - width - gutter;
    std::vector<ink::Drawing> lines;
    for (const char* key :
         {"film.phone", "film.first", "film.second", "film.swings", "film.hold", "film.space"})
        lines.push_back(
            tagged(figure::paragraph(easel, theme::Text::body, w.say(key), width), "P"));
    Block block{.name = "filming"};
    block.space_before = 6;
    block.pieces.push_back({side_by_side(
        {{stacked(lines, 5), 0},
         {tagged(figure::filming(easel, story.lesson.student.hand.value, aside, 86 * figure::mm),
                 "Figure"),
          width + gutter}})});
    return block;
}

/// A lesson without shots: its evidence is the hold, whose looks are counted on the page before.
void add_checks(std::vector<Block>& blocks, const figure::Easel& easel, const Story& story) {
    const auto& w = easel.words;
    blocks.push_back(text_block(easel, theme::Text::lead,
                                w.say("checks.no-shots") + " " + w.say("checks.evidence"), 0));
    if (const LookCount n = count_looks(story.lesson); n.of > 0)
        blocks.push_back(text_block(
            easel, theme::Text::lead,
            w.say("checks.before-after", {{"before", n.before}, {"after", n.after}, {"of", n.of}}),
            6));
    blocks.push_back(heading(easel, w.say("checks.pairs"), 18));
    for (const Aspect& a : aspects(story, w))
        blocks.push_back(text_block(easel, theme::Text::body, sentence(a, w), 3));
    blocks.push_back(heading(easel, w.say("film.title"), 22));
    blocks.push_back(filming_block(easel, story));
}

} // namespace

Section evidence_page(const figure::Easel& easel, const Story& story) {
    const bool shots = story.table && !story.evidence.empty();
    Section section{.name = "evidence",
                    .title =
                        easel.words.say(shots ? "page.evidence.question" : "page.checks.question")};
    offer_lines(easel, section, easel.words.say("term.notice"));
    const double room = easel.theme.live(true).height;
    const auto build = [&](double millimetres, std::size_t rows) {
        section.blocks = {page_title(easel, section.title)};
        if (shots)
            add_shots(section.blocks, easel, story, millimetres * figure::mm, rows);
        else
            add_checks(section.blocks, easel, story);
        return total_height(section.blocks);
    };
    // the tallest figure and the most rows with which all stands on one side
    for (std::size_t rows = 7; rows >= 3; --rows)
        if (built_to_fit(92, 59, 4, figure::mm, room,
                         [&](double millimetres) { return build(millimetres, rows); }))
            return section;
    // a second side is needed anyway: rows fill it before the small print ends it
    for (std::size_t rows = 7; rows >= 3; --rows)
        if (build(92, rows) <= 1.9 * room) break;
    return section;
}

} // namespace page
