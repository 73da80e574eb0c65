#include "page/one_thing_verdict.hpp"

#include "figure/flight_above.hpp"
#include "page/evidence_rows.hpp"
#include "page/hold_words.hpp"
#include "page/parts.hpp"
#include "page/verdict.hpp"
#include "page/why_inputs.hpp"
#include "page/why_words.hpp"

#include <algorithm>
#include <iterator>

namespace page {

namespace {

/// Without shots the looks at the hold stand where the verdict would.
std::optional<Block> checks(const figure::Easel& easel, const Story& story) {
    const LookCount n = count_looks(story.lesson);
    if (story.table || n.of == 0) return std::nullopt;
    const std::string counts = easel.words.say(
        "checks.before-after", {{"before", n.before}, {"after", n.after}, {"of", n.of}});
    const double width = column_width(easel);
    const auto said = [&](theme::Text style, const std::string& words) {
        return tagged(figure::paragraph(easel, style, words, width), "P");
    };
    return drawn_block("checks",
                       stacked({rule(easel, width), said(theme::Text::lead, counts),
                                said(theme::Text::small, easel.words.say("checks.no-shots"))},
                               6),
                       14);
}

/// What the change did to the ball, in small: the flights from above, and the largest cause.
struct BallInSmall {
    ink::Drawing picture, words;
};

std::optional<BallInSmall> ball_in_small(const figure::Easel& easel, const Story& story,
                                         double picture_width, double words_width, double height) {
    const auto flights = flight_input(easel, story);
    if (!flights || few_shots(*story.ball)) return std::nullopt;
    const auto& w = easel.words;
    ink::Drawing above = figure::flight_above(easel, *flights, picture_width, height);
    BallInSmall small;
    small.picture = stacked(
        {figure::paragraph(easel, theme::Text::label, w.say("why.flight.above"), picture_width),
         above},
        3);
    small.picture.message = above.message;
    const auto outcomes = credited(story);
    if (!outcomes.empty())
        small.words = figure::paragraph(easel, theme::Text::body,
                                        credit_sentence(*story.ball->credit, outcomes.front(), w),
                                        words_width);
    return small;
}

std::vector<ink::Drawing> verdict_lines(const figure::Easel& easel, const VerdictWords& said,
                                        double width) {
    auto head = easel.theme.setting(theme::Text::lead);
    head.style.weight = 900;
    head.style.size *= 1.2;
    std::vector<ink::Drawing> lines{tagged(figure::paragraph(easel, head, said.head, width), "H2")};
    for (const auto& s : said.sentences)
        lines.push_back(tagged(figure::paragraph(easel, theme::Text::body, s, width), "P"));
    return lines;
}

/// Every shot of the aim as a small strip under its name.
ink::Drawing strip_of_aim(const figure::Easel& easel, const Story& story, const Evidence& aim,
                          double width) {
    const auto input = dots_of(easel, story, aim);
    ink::Drawing name = figure::paragraph(easel, theme::Text::label,
                                          easel.words.say("measure." + key_of(aim.measure)), width);
    ink::Drawing picture = stacked({name, aim_strip(easel, input, width)}, 3);
    picture.message = input.message;
    return tagged(std::move(picture), "Figure");
}

} // namespace

std::optional<Block> verdict_block(const figure::Easel& easel, const Story& story, bool with_ball) {
    const Evidence* aim = aim_of(story);
    if (!aim) return checks(easel, story);
    const VerdictWords said = verdict_words(story, *aim, easel.words);
    const double words_width = columns(easel, 3), x = words_width + easel.theme.gutter * figure::mm;
    const double strip_width = column_width(easel) - x;

    std::vector<ink::Drawing> lines = verdict_lines(easel, said, words_width);
    ink::Drawing picture = strip_of_aim(easel, story, *aim, strip_width);
    if (with_ball)
        if (auto small = ball_in_small(easel, story, strip_width, words_width, 46 * figure::mm)) {
            if (small->words.size.height > 0) lines.push_back(tagged(small->words, "P"));
            picture = stacked({picture, tagged(std::move(small->picture), "Figure")}, 8);
        }
    const ink::Drawing beside = side_by_side({{stacked(lines, 2), 0}, {std::move(picture), x}});
    return drawn_block("verdict", stacked({rule(easel, column_width(easel)), beside}, 8), 12);
}

std::vector<Block> narrow_verdict(const figure::Easel& easel, const Story& story) {
    std::vector<Block> out;
    const Evidence* aim = aim_of(story);
    if (!aim) {
        if (auto block = checks(easel, story)) out.push_back(std::move(*block));
        return out;
    }
    const double width = column_width(easel);
    std::vector<ink::Drawing> words{rule(easel, width)};
    std::ranges::move(verdict_lines(easel, verdict_words(story, *aim, easel.words), width),
                      std::back_inserter(words));
    out.push_back(drawn_block("verdict", stacked(words, 4), 12));
    out.push_back(drawn_block("strip", strip_of_aim(easel, story, *aim, width), 6));
    return out;
}

std::optional<Block> ball_across(const figure::Easel& easel, const Story& story) {
    const double width = column_width(easel);
    auto small = ball_in_small(easel, story, width, width, 55 * figure::mm);
    if (!small) return std::nullopt;
    ink::Drawing both = tagged(std::move(small->picture), "Figure");
    if (small->words.size.height > 0)
        both = stacked({both, tagged(std::move(small->words), "P")}, 8);
    return drawn_block("flights", std::move(both), 16);
}

} // namespace page
