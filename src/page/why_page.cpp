#include "page/why_page.hpp"

#include "figure/flight_side.hpp"
#include "page/flow.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "page/why_inputs.hpp"
#include "page/why_theory.hpp"
#include "page/why_words.hpp"

#include <algorithm>
#include <array>

namespace page {

namespace {

/// What a page leaves out when it is too full, and how wide its scatter is.
struct Plan {
    double scatter = 98; // millimetres
    double above = 50;   // height of the flights seen from above, millimetres
    bool side = true;    // flights seen from the side
    bool lean = true;    // the note on the lean stands under the ladder, else at the foot
    bool wide = false;   // words across the page, longer lines than are good to read
    std::size_t credits = 2;
    double ladder = 110; // height of the ladder on a narrow side, millimetres
    double square = 1;   // width of the scatter there, a part of the side's
};

constexpr double part_gap = 5; // points, inside a stack

ink::Drawing piece(ink::Drawing drawing) { return tagged(std::move(drawing), "Figure"); }

ink::Drawing head(const figure::Easel& easel, const char* key, double width) {
    return tagged(figure::paragraph(easel, theme::Text::label, easel.words.say(key), width), "H2");
}

ink::Drawing said(const figure::Easel& easel, theme::Text text, const std::string& words,
                  double width) {
    if (words.empty()) return {};
    return tagged(figure::paragraph(easel, text, words, width), "P");
}

std::string joined(const std::vector<std::string>& sentences) {
    std::string out;
    for (const auto& s : sentences)
        out += (out.empty() ? "" : " ") + s;
    return out;
}

/// Face against path, or, where the table lacks one of them, the impact from above.
std::vector<ink::Drawing> impact_parts(const figure::Easel& easel, const Story& story,
                                       double width) {
    if (const auto input = scatter_input(easel, story))
        return {head(easel, "why.scatter", width), piece(figure::scatter(easel, *input, width))};
    if (const auto input = impact_input(easel, story))
        return {piece(figure::impact_above(easel, *input, width))};
    return {};
}

std::vector<ink::Drawing> ladder_parts(const figure::Easel& easel, const Story& story, double width,
                                       double height, bool lean) {
    const auto input = ladder_input(easel, story);
    if (!input) return {};
    auto title = head(easel, "why.club", width);
    auto note = said(easel, theme::Text::caption,
                     lean ? loft_sentence(*story.ball, easel.words) : std::string(), width);
    const double room = height - title.size.height - note.size.height - 10;
    auto ladder = piece(figure::loft_ladder(easel, *input, width, room));
    return {std::move(title), std::move(ladder), std::move(note)};
}

std::vector<ink::Drawing> flight_parts(const figure::Easel& easel, const Story& story, double width,
                                       double above, const Plan& plan) {
    const auto input = flight_input(easel, story);
    if (!input) return {};
    std::vector<ink::Drawing> out;
    out.push_back(head(easel, "why.flight.above", width));
    out.push_back(piece(figure::flight_above(easel, *input, width, above)));
    if (!plan.side) return out;
    out.push_back(head(easel, "why.flight.side", width));
    out.push_back(piece(figure::flight_side(easel, *input, width, 30 * figure::mm)));
    return out;
}

/// Bars and sentence of the outcomes from `first` up to `last`.
std::vector<ink::Drawing> credit_parts(const figure::Easel& easel, const Story& story, double width,
                                       std::size_t first, std::size_t last) {
    std::vector<ink::Drawing> out;
    const auto outcomes = credited(story);
    for (std::size_t i = first; i < std::min(last, outcomes.size()); ++i) {
        if (i == 0) out.push_back(head(easel, "why.credit", width));
        const auto& credit = *story.ball->credit;
        out.push_back(said(easel, theme::Text::caption,
                           credit_sentence(credit, outcomes[i], easel.words), width));
        out.push_back(
            piece(figure::credit_bars(easel, credit_input(easel, credit, outcomes[i]), width)));
    }
    return out;
}

/// Two stacks side by side; one alone takes the whole row.
Block row(std::string name, const std::vector<ink::Drawing>& left,
          const std::vector<ink::Drawing>& right, double second, double space_before) {
    Block block{.name = std::move(name)};
    block.space_before = space_before;
    const bool both = !left.empty() && !right.empty();
    block.pieces.push_back(
        {both ? side_by_side({{stacked(left, part_gap), 0}, {stacked(right, part_gap), second}})
              : stacked(left.empty() ? right : left, part_gap)});
    return block;
}

/// The same parts under each other, for paper or print on which two columns are too narrow.
void add_column(std::vector<Block>& blocks, const std::vector<ink::Drawing>& parts) {
    for (const auto& part : parts) {
        if (part.size.height <= 0) continue;
        Block block{.name = "part"};
        block.space_before = 6;
        block.pieces.push_back({part});
        // a head stays with its figure
        block.keep_with_next = part.size.height < 24 && &part != &parts.back();
        blocks.push_back(std::move(block));
    }
}

bool has_ranges(const Story& story) {
    const auto outcomes = credited(story);
    return std::ranges::any_of(outcomes, [&](ball::Outcome outcome) {
        const auto& shares = (*story.ball->credit)[outcome].shares;
        return std::ranges::any_of(shares, [](const auto& s) { return s && s->range; });
    });
}

void add_words(std::vector<Block>& blocks, const figure::Easel& easel, const Story& story,
               bool lean, bool wide) {
    const auto& w = easel.words;
    const double all = column_width(easel), em = easel.theme.setting(theme::Text::body).style.size;
    const auto next = next_sentence(*story.ball, w);
    const bool suggested = !next.empty() && story.lesson.suggestion;
    if (suggested)
        blocks.push_back(text_block(
            easel, theme::Text::body,
            w.say("join.colon", {{"first", w.say("why.next.suggestion")}, {"second", next}}), 8,
            wide ? all : std::min(all, em * 42)));
    auto notes = origin_notes(easel, story);
    if (!lean) notes.insert(notes.begin(), loft_sentence(*story.ball, w));
    if (has_ranges(story)) notes.push_back(w.say("why.credit.range"));
    if (few_shots(*story.ball)) notes.push_back(w.say("why.few"));
    if (notes.empty()) return;
    if (suggested) blocks.back().keep_with_next = true;
    if (wide)
        blocks.push_back(text_block(easel, theme::Text::small, joined(notes), 6, all));
    else
        add_small_print(blocks, easel, theme::Text::small, {joined(notes)}, 6);
    for (Piece& piece : blocks.back().pieces) // no line of it alone on a side
        piece.keeps_next = &piece != &blocks.back().pieces.back();
}

/// Everything under each other, over as many pages as it takes.
void add_narrow(std::vector<Block>& blocks, const figure::Easel& easel, const Story& story,
                const Plan& plan) {
    const double width = column_width(easel);
    add_column(blocks, impact_parts(easel, story, width * plan.square));
    add_column(blocks, ladder_parts(easel, story, width, plan.ladder * figure::mm, true));
    add_column(blocks, flight_parts(easel, story, width, plan.above * figure::mm, plan));
    add_column(blocks, credit_parts(easel, story, width, 0, plan.credits));
    add_words(blocks, easel, story, true, plan.wide);
}

/// Flights on the left, what changed with what on the right.
Block lower_row(const figure::Easel& easel, const Story& story, const Plan& plan, double gutter) {
    const double width = column_width(easel), half = (width - gutter) / 2;
    const bool flown = flight_input(easel, story).has_value();
    const auto shared = credit_parts(easel, story, flown ? half : width, 0, plan.credits);
    // alone beside two sets of bars, the view from above stands upright and as high as they do
    const double tall = stacked(shared, part_gap).size.height - 20;
    const bool upright = !plan.side && plan.credits > 1 && tall > 60 * figure::mm;
    const double room = shared.empty() ? width : half;
    const auto flights = upright ? flight_parts(easel, story, std::min(room, tall - 1), tall, plan)
                                 : flight_parts(easel, story, room, plan.above * figure::mm, plan);
    if (flights.empty() && shared.empty() && scatter_input(easel, story))
        if (const auto input = impact_input(easel, story))
            return row("impact", {piece(figure::impact_above(easel, *input, width))}, {}, 0, 14);
    return row("flight and credit", flights, shared, half + gutter, 10);
}

/// Without a ladder the flights take its place beside the scatter, and the bars the row below.
void add_without_ladder(std::vector<Block>& blocks, const figure::Easel& easel, const Story& story,
                        const Plan& plan, double gutter) {
    const double width = column_width(easel), wide = plan.scatter * figure::mm,
                 aside = width - wide - gutter, half = (width - gutter) / 2;
    const auto scatter = impact_parts(easel, story, wide);
    std::vector<ink::Drawing> beside =
        flight_parts(easel, story, aside, stacked(scatter, part_gap).size.height - 20,
                     {.scatter = plan.scatter, .side = false});
    if (beside.empty())
        if (const auto input = impact_input(easel, story))
            beside = {piece(figure::impact_above(easel, *input, aside))};
    blocks.push_back(row("face against path", scatter, beside, wide + gutter, 10));
    blocks.push_back(row("credit", credit_parts(easel, story, half, 0, 1),
                         credit_parts(easel, story, half, 1, plan.credits), half + gutter, 10));
    add_words(blocks, easel, story, true, plan.wide);
}

/// A child's page: what face and path did at the ball and where the balls went, nothing shared out.
void add_for_juniors(std::vector<Block>& blocks, const figure::Easel& easel, const Story& story) {
    const double width = column_width(easel);
    if (const auto input = impact_input(easel, story))
        blocks.push_back(
            row("impact", {piece(figure::impact_above(easel, *input, width))}, {}, 0, 14));
    blocks.push_back(
        text_block(easel, theme::Text::lead, easel.words.say("ball.start.mostly-face"), 14));
    blocks.push_back(
        text_block(easel, theme::Text::body, easel.words.say("ball.curve.usually"), 4));
    if (const auto input = flight_input(easel, story))
        blocks.push_back(row("flights",
                             {head(easel, "why.flight.above", width),
                              piece(figure::flight_above(easel, *input, width, 60 * figure::mm))},
                             {}, 0, 16));
}

void add_ball(std::vector<Block>& blocks, const figure::Easel& easel, const Story& story,
              const Plan& plan) {
    if (is_junior(story)) return add_for_juniors(blocks, easel, story);
    if (is_narrow(easel)) return add_narrow(blocks, easel, story, plan);
    const double width = column_width(easel), gutter = easel.theme.gutter * figure::mm * 1.5;
    const bool scatter = scatter_input(easel, story).has_value(),
               ladder = ladder_input(easel, story).has_value();
    if (scatter && !ladder) return add_without_ladder(blocks, easel, story, plan, gutter);
    const double wide = plan.scatter * figure::mm;
    const auto impact = impact_parts(easel, story, scatter ? wide : width);
    if (scatter) {
        const auto beside = ladder_parts(easel, story, width - wide - gutter,
                                         stacked(impact, part_gap).size.height, plan.lean);
        blocks.push_back(row("face against path", impact, beside, wide + gutter, 10));
    } else {
        if (!impact.empty()) blocks.push_back(row("impact", impact, {}, 0, 10));
        if (ladder)
            blocks.push_back(row(
                "loft", ladder_parts(easel, story, width, 70 * figure::mm, plan.lean), {}, 0, 10));
    }
    blocks.push_back(lower_row(easel, story, plan, gutter));
    add_words(blocks, easel, story, plan.lean || !ladder, plan.wide);
}

/// What is left out at last: the flights from the side, then the second set of bars.
constexpr std::array<std::pair<bool, std::size_t>, 3> parts_shown{
    {{true, 2}, {false, 2}, {false, 1}}};
struct Size {
    double scatter; ///< millimetres
    bool lean, wide;
};
/// The fullest page first.
constexpr std::array<Size, 11> sizes{{{98, true, false},
                                      {94, true, false},
                                      {90, true, false},
                                      {94, false, false},
                                      {90, false, false},
                                      {86, false, false},
                                      {82, false, false},
                                      {78, false, false},
                                      {74, false, false},
                                      {78, false, true},
                                      {74, false, true}}};

Plan plan_of(std::size_t parts, std::size_t size) {
    const auto [side, credits] = parts_shown[parts];
    const auto [scatter, lean, wide] = sizes[size];
    return {.scatter = scatter,
            .above = scatter > 90 ? 50.0 : 42.0,
            .side = side,
            .lean = lean,
            .wide = wide,
            .credits = credits};
}

std::vector<Block> why_blocks(const figure::Easel& easel, const Story& story, const Plan& plan) {
    std::vector<Block> blocks{page_title(easel, easel.words.say("page.why.question"))};
    if (!story.lesson.why.empty())
        blocks.push_back(text_block(easel, theme::Text::coach, story.lesson.why, 0,
                                    plan.wide ? column_width(easel) : 0));
    if (story.ball)
        add_ball(blocks, easel, story, plan);
    else
        for (auto& block : theory_blocks(easel))
            blocks.push_back(std::move(block));
    std::erase_if(blocks, [](const Block& b) { return b.height() <= 0; });
    return blocks;
}

/// How many sides the blocks take, without one that makes their number even.
std::size_t sides(const figure::Easel& easel, const Section& section) {
    const auto out = flow({section}, easel.theme, [](Sheet&, std::size_t, std::size_t) {});
    return static_cast<std::size_t>(
        std::ranges::count(out.book.sheets, section.name, &Sheet::name));
}

/// Narrow paper and large print: the largest figures with which no side more is needed.
void set_narrow(Section& section, const figure::Easel& easel, const Story& story) {
    std::size_t least = 0;
    for (const double size : {1.0, 0.92, 0.84, 0.76}) {
        Plan plan = plan_of(0, 0);
        plan.above *= size, plan.ladder *= size, plan.square = size;
        Section smaller = section;
        smaller.blocks = why_blocks(easel, story, plan);
        const std::size_t n = sides(easel, smaller);
        if (least == 0 || n < least) section = std::move(smaller), least = n;
        if (least == 1) return; // no fewer can be
    }
}

} // namespace

Section why_page(const figure::Easel& easel, const Story& story) {
    Section section{.name = "why", .title = easel.words.say("page.why.question")};
    if (!story.ball || is_narrow(easel) || is_junior(story)) {
        set_narrow(section, easel, story);
        offer_lines(easel, section, easel.words.say("notes.blank"));
        return section;
    }
    const double room = easel.theme.live(true).height;
    for (std::size_t parts = 0; parts < parts_shown.size(); ++parts) {
        std::size_t first = 0, last = sizes.size() - 1; // the smallest first: does it fit at all?
        section.blocks = why_blocks(easel, story, plan_of(parts, last));
        if (total_height(section.blocks) > room) continue;
        while (first < last) { // then by halves: the widest that still fits
            const std::size_t middle = (first + last) / 2;
            auto blocks = why_blocks(easel, story, plan_of(parts, middle));
            if (total_height(blocks) <= room)
                section.blocks = std::move(blocks), last = middle;
            else
                first = middle + 1;
        }
        break;
    }
    return section;
}

} // namespace page
