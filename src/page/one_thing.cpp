#include "page/one_thing.hpp"

#include "figure/grip.hpp"
#include "page/drill_loop.hpp"
#include "page/hold_words.hpp"
#include "page/log_notes.hpp"
#include "page/one_thing_verdict.hpp"
#include "page/parts.hpp"
#include "page/verdict.hpp"
#include "words/date.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <iterator>

namespace page {

namespace {

/// Room for the widest of the labels on the left.
double label_room(const figure::Easel& easel) {
    double width = 82;
    for (const char* key : {"loop.since", "one.saw", "one.changed", "one.tonight"})
        width = std::max(
            width,
            easel.type.line(easel.words.say(key), easel.theme.setting(theme::Text::label).style)
                    .width +
                12);
    return width;
}

std::string tonight(const figure::Easel& easel, const Story& story, std::size_t drill_page) {
    if (story.drills.empty()) return easel.words.say("one.tonight.none");
    const auto& first = story.drills.front().drill;
    return easel.words.say("one.drill-reference", {{"n", 1}, {"name", first.name}}) + ". " +
           easel.words.say("one.minutes", {{"n", first.minutes}, {"x", drill_page}}) + "\n" +
           first.cue +
           (story.drills.front().proposed ? "\n" + easel.words.say("drill.of-program") : "");
}

/// Saw, changed, tonight: three answers, the coach's in the coach's letter.
Block answers(const figure::Easel& easel, const Story& story, std::size_t drill_page) {
    const double width = column_width(easel), label_width = label_room(easel);
    Block block{.name = "saw, changed, tonight"};
    const auto add = [&](ink::Drawing d, double space) {
        d.size.height += space;
        block.pieces.push_back({std::move(d), true});
    };
    if (const std::string since = since_last_time(story, easel.words); !since.empty())
        add(labelled(easel, easel.words.say("loop.since"), theme::Text::body, since, width,
                     label_width),
            9);
    add(labelled(easel, easel.words.say("one.saw"), theme::Text::coach, story.lesson.saw, width,
                 label_width),
        9);
    add(labelled(easel, easel.words.say("one.changed"), theme::Text::coach_large,
                 story.lesson.changed, width, label_width),
        9);
    ink::Drawing last = labelled(easel, easel.words.say("one.tonight"), theme::Text::lead,
                                 tonight(easel, story, drill_page), width, label_width);
    if (!story.drills.empty())
        last.add(ink::Link{{0, 0, width, last.size.height},
                           "#drill-1",
                           easel.words.say("link.drill", {{"x", drill_page}})});
    add(std::move(last), 0);
    block.pieces.back().keeps_next = false;
    return block;
}

/// Whether a view shows what differs between two holds.
bool shows_change(hand::View view, const unit::Grip& a, const unit::Grip& b) {
    const auto differs = [&](auto member) {
        return a.*member && b.*member && a.*member != b.*member;
    };
    switch (view) {
    case hand::View::open_palm:
        return differs(&unit::Grip::lay) || differs(&unit::Grip::square);
    case hand::View::butt_end:
        return differs(&unit::Grip::gap) || differs(&unit::Grip::heel_pad);
    default:
        return looks_down(view);
    }
}

/// The pair of this page: the coach's first, else what was changed before what only tells of it:
/// how the handle lies, then what the player sees, then the rest.
const GripView* pair_of(const Story& story) {
    const auto& lesson = story.lesson;
    for (const GripView& v : story.views) {
        const bool wanted =
            !lesson.views.empty() || shows_change(v.view, lesson.before, lesson.after);
        if (v.before && v.after && wanted) return &v;
    }
    return story.views.empty() ? nullptr : &story.views.front();
}

/// What differs, as far as a page has room, and whose hands they are.
ink::Drawing words_on_hands(const figure::Easel& easel, const Story& story, const GripView& view,
                            double width) {
    std::vector<ink::Drawing> lines{
        figure::paragraph(easel, theme::Text::label, easel.words.say("checks.pairs"), width)};
    for (const Aspect& a : aspects(story, easel.words)) {
        if (lines.size() > 6) break;
        lines.push_back(
            figure::paragraph(easel, theme::Text::body, sentence(a, easel.words), width));
    }
    std::string caption = easel.words.say("grip.caption.lead");
    if (view.view == hand::View::golfers_eye)
        caption += " " + easel.words.say("grip.caption.wedge");
    if (looks_down(view.view)) caption += marks_legend(story, easel.words);
    lines.push_back(figure::paragraph(easel, theme::Text::small, caption, width));
    return stacked(lines, 6);
}

/// The chosen pair of hands and what differs: beside it, or under it where that would be a gutter
/// of single words.
std::optional<Block> hands(const figure::Easel& easel, const Story& story, double hand_width,
                           bool words_under = false) {
    const GripView* view = pair_of(story);
    if (!view) return std::nullopt;
    const double gutter = easel.theme.gutter * figure::mm, all_width = column_width(easel);
    const double step = words_under ? columns(easel, 3) + gutter : hand_width + gutter;
    std::vector<Cell> cells;
    double x = words_under ? (columns(easel, 3) - hand_width) / 2 : 0;
    const auto hand_of = story.lesson.student.hand.value;
    const auto add = [&](const std::optional<hand::Picture>& picture, const char* key) {
        if (!picture) return;
        cells.push_back(
            {figure::called_out(easel, *picture, hand_of, easel.words.say(key), {}, hand_width),
             x});
        x += step;
    };
    add(view->before, view->first_key);
    add(view->after, view->second_key);
    ink::Drawing all;
    if (words_under) {
        all = stacked({side_by_side(cells), words_on_hands(easel, story, *view, all_width)}, 12);
    } else {
        cells.push_back({words_on_hands(easel, story, *view, all_width - x), x});
        all = side_by_side(cells);
    }
    all.message = easel.words.say(view_key(view->view));
    return figure_block("hands", std::move(all), 12);
}

/// The line the coach signs on, or a picture of the signature over it, and how to reach the coach.
ink::Drawing signed_by(const figure::Easel& easel, const Story& story, double width) {
    const auto& w = easel.words;
    const auto& coach = story.lesson.coach.name;
    ink::Drawing out;
    double line = 17;
    if (story.pictures.signature) {
        ink::Drawing hand = print_of(*story.pictures.signature, width * 0.62, 38);
        hand.message =
            w.say("one.signature", {{"name", coach.empty() ? w.say("one.signed.coach") : coach}});
        line = std::max(line, hand.size.height + 1);
        out.add(tagged(hand, "Figure"), {2, line - 1 - hand.size.height});
    }
    out.add(ink::Stroke{
        ink::Path::segment({0, line}, {width, line}), 0.5, easel.theme.text, {}, ink::Cap::butt});
    const auto& small = easel.theme.setting(theme::Text::small);
    auto letter = small.style;
    letter.family = easel.theme.setting(theme::Text::coach).style.family;
    const std::string name =
        cut(easel, small.style, coach.empty() ? w.say("one.signed.coach") : coach, width);
    const std::string note = w.say("one.letter");
    const double name_width = easel.type.line(name, small.style).width;
    const bool beside = name_width + easel.type.line(note, letter).width + 10 <= width;
    double y = line + small.leading - 1;
    out.add(figure::label(easel, theme::Text::small, name, {0, y}));
    if (!beside) y += small.leading;
    const auto lines = easel.type.set(note, letter, width, small.leading, text::Align::right);
    for (const auto& words : lines.lines)
        out.add(ink::moved(words, {0, y - lines.lines.front().at.y}));
    y += small.leading * static_cast<double>(lines.lines.size() - 1);
    if (beside && !story.pictures.contact.empty()) y += small.leading * 0.1;
    for (const auto& words : story.pictures.contact)
        out.add(figure::label(easel, theme::Text::small, words, {0, y += small.leading}));
    out.size = {width, y + 2};
    return out;
}

/// Next lesson and sign-off, at the foot.
Block sign_off(const figure::Easel& easel, const Story& story) {
    const double width = column_width(easel), half = columns(easel, 3);
    const auto& w = easel.words;
    const std::string next =
        story.lesson.next
            ? w.say("one.next.on", {{"date", words::date_long(*story.lesson.next, w)}})
            : w.say("one.next.none");
    ink::Drawing left =
        stacked({figure::paragraph(easel, theme::Text::lead, next, half),
                 figure::paragraph(easel, theme::Text::small, w.say("one.bring"), half)},
                1);
    const double x = width - half;
    Block block{.name = "sign-off"};
    block.space_before = 10;
    block.at_foot = true;
    block.pieces.push_back({side_by_side({{left, 0}, {signed_by(easel, story, half), x}})});
    return block;
}

std::string aim_line(const figure::Easel& easel, const record::Lesson& lesson) {
    const auto measure = lesson.aim->measure.value;
    return easel.words.say(
        "one.aim-line",
        {{"noun", easel.words.say("noun." + key_of(measure))},
         {"range", words::side_range(measure, lesson.aim->least, lesson.aim->most, easel.words)}});
}

Block title_with_logo(const figure::Easel& easel, const Story& story) {
    const double width = column_width(easel);
    const ink::Drawing logo = logo_of(story.pictures, width);
    const double beside = logo.size.width > 0 ? width - logo.size.width - 14 : width;
    Block title = page_title(easel, easel.words.say("page.one-thing.question"), beside);
    ink::Drawing& drawing = title.pieces.front().drawing;
    drawing.add(logo, {0, 0});
    drawing.size.height = std::max(drawing.size.height, logo.size.height + 6);
    return title;
}

/// The question and the answers in words.
std::vector<Block> in_words(const figure::Easel& easel, const Story& story,
                            std::size_t drill_page) {
    const auto& lesson = story.lesson;
    std::vector<Block> blocks{title_with_logo(easel, story)};
    if (lesson.revision > 1 && !lesson.replaces.empty())
        blocks.push_back(text_block(easel, theme::Text::small,
                                    easel.words.say("head.replaces", {{"what", lesson.replaces}}),
                                    0));
    if (!lesson.student.says.empty())
        blocks.push_back(text_block(
            easel, theme::Text::body,
            easel.words.say(
                "join.colon",
                {{"first", easel.words.say("one.goal")},
                 {"second", easel.words.say("one.goal-says", {{"words", lesson.student.says}})}}),
            0));
    if (lesson.aim)
        blocks.push_back(text_block(easel, theme::Text::body, aim_line(easel, lesson), 0));
    blocks.push_back(answers(easel, story, drill_page));
    blocks.back().space_before = 12;
    return blocks;
}

std::vector<Block> on_one_side(const figure::Easel& easel, const Story& story,
                               std::size_t drill_page, double hand_width, bool with_ball) {
    std::vector<Block> blocks = in_words(easel, story, drill_page);
    if (auto block = hands(easel, story, hand_width)) blocks.push_back(std::move(*block));
    if (auto block = verdict_block(easel, story, with_ball)) blocks.push_back(std::move(*block));
    blocks.push_back(sign_off(easel, story));
    return blocks;
}

/// How much higher a page gets when its hands get wider by two columns.
double slope_of(const figure::Easel& easel, const Story& story) {
    const GripView* pair = pair_of(story);
    return columns(easel, 2) * std::max(0.1, pair ? pair->height_to_width() : 0);
}

/// The side of pictures behind a side of words: the hands as large as leaves room for the ball.
std::vector<Block> pictures_side(const figure::Easel& easel, const Story& story,
                                 const std::vector<Block>& over) {
    std::vector<Block> blocks;
    const double room = easel.theme.live(true).height, slope = slope_of(easel, story);
    const auto ball = ball_across(easel, story);
    for (const bool with_ball : {true, false})
        if (built_to_fit(1.4, 0.7, 0.1, slope, room, [&](double k) {
                blocks = over;
                if (auto block = hands(easel, story, columns(easel, 2) * k, true))
                    blocks.push_back(std::move(*block));
                if (ball && with_ball) blocks.push_back(*ball);
                return total_height(blocks);
            }))
            break;
    return blocks;
}

/// Narrow paper or large print: the words and the verdict on the first side, with the sign-off at
/// its foot, the pictures on the second. What has no room on the first goes to the pictures.
std::vector<Block> on_two_sides(const figure::Easel& easel, const Story& story,
                                std::size_t drill_page) {
    std::vector<Block> blocks = in_words(easel, story, drill_page), over;
    Block foot = sign_off(easel, story);
    foot.at_foot = false; // of this side, not of what follows
    const double free = easel.theme.live(true).height - foot.height() - foot.space_before;
    for (Block& block : narrow_verdict(easel, story)) {
        const double need = total_height(blocks) + block.space_before + block.height();
        (need <= free && over.empty() ? blocks : over).push_back(std::move(block));
    }
    foot.space_before += std::max(0.0, free - total_height(blocks));
    blocks.push_back(std::move(foot));
    std::ranges::move(pictures_side(easel, story, over), std::back_inserter(blocks));
    return blocks;
}

} // namespace

Section one_thing(const figure::Easel& easel, const Story& story, std::size_t drill_page) {
    Section section{.name = "one-thing", .title = easel.words.say("page.one-thing.question")};
    const double room = easel.theme.live(true).height;
    // the largest hands with which the page holds all; the ball gives way before the hands get
    // small
    const double slope = slope_of(easel, story);
    for (const bool with_ball : {true, false})
        if (built_to_fit(1.08, with_ball ? 0.66 : 0.55, 0.05, slope, room, [&](double k) {
                section.blocks =
                    on_one_side(easel, story, drill_page, columns(easel, 2) * k, with_ball);
                return total_height(section.blocks);
            })) {
            Block foot = std::move(section.blocks.back());
            section.blocks.pop_back();
            fill_with_lines(easel, section.blocks, easel.words.say("notes.blank"),
                            foot.space_before + foot.height());
            section.blocks.push_back(std::move(foot));
            return section;
        }
    section.blocks = on_two_sides(easel, story, drill_page);
    return section;
}

} // namespace page
