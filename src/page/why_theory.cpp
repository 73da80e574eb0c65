#include "page/why_theory.hpp"

#include "figure/impact_above.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "words/side.hpp"

#include <array>

namespace page {

namespace {

using unit::Measure;

/// The example: an open face, the same swing with a square one. Our own invention.
constexpr double example_face = 9, example_path = -3; // degrees, of a right-hander
constexpr double example_share = 0.72;                // middle of the published 0.61 to 0.83

figure::ImpactInput example(const figure::Easel& easel) {
    const auto& w = easel.words;
    const double side = w.voice().hand == unit::Hand::right ? 1 : -1;
    figure::ImpactInput input;
    const auto add = [&](figure::Symbol symbol, const char* key, double face) {
        const double path = example_path * side;
        const double start = path + example_share * (face - path);
        input.states.push_back({symbol, w.say(key), face, path, start, true, true, true});
        input.message += (input.message.empty() ? "" : " ") +
                         w.say("why.alt.impact", {{"name", w.say(key)},
                                                  {"face", words::side(Measure::face, face, w)},
                                                  {"path", words::side(Measure::path, path, w)}});
    };
    add(figure::Symbol::before, "why.example.open", example_face * side);
    add(figure::Symbol::after, "why.example.square", 0);
    for (auto& state : input.states) // the whole picture is called an example
        state.face_estimated = state.path_estimated = state.start_estimated = false;
    input.message = w.say("why.example") + ". " + input.message;
    return input;
}

NoteGroup words_of_the_trade(const figure::Easel& easel, std::span<const char* const> keys) {
    NoteGroup group;
    for (const char* key : keys) {
        const std::string line = easel.words.say(key);
        const std::size_t colon = line.find(": ");
        if (colon == std::string::npos)
            group.notes.push_back({{}, line, theme::Text::body});
        else
            group.notes.push_back(
                {line.substr(0, colon + 1), line.substr(colon + 2), theme::Text::body});
    }
    return group;
}

} // namespace

std::vector<Block> theory_blocks(const figure::Easel& easel) {
    const auto& w = easel.words;
    std::vector<Block> blocks;
    blocks.push_back(text_block(easel, theme::Text::body, w.say("checks.theory"), 10));
    blocks.push_back(heading(easel, w.say("why.example"), 10));
    blocks.push_back(figure_block("an example of an impact",
                                  figure::impact_above(easel, example(easel), column_width(easel)),
                                  2));
    blocks.push_back(text_block(easel, theme::Text::caption, w.say("why.example.note"), 4));
    blocks.push_back(heading(easel, w.say("why.theory"), 12));
    for (const char* key :
         {"ball.start.mostly-face", "ball.curve.usually", "ball.curve.strike", "why.theory.loft"})
        blocks.push_back(text_block(easel, theme::Text::body, w.say(key), 2));
    blocks.push_back(heading(easel, w.say("why.words"), 12));
    constexpr std::array<const char*, 5> left{"word.face", "word.path", "word.loft",
                                              "word.effective-loft", "word.start"},
        right{"word.open", "word.closed", "word.square", "word.in-to-out", "word.out-to-in"};
    const double half = columns(easel, 3), second = column_width(easel) - half;
    Block list{.name = "words of the trade"};
    list.space_before = 2;
    list.pieces.push_back(
        {side_by_side({{note_group(easel, words_of_the_trade(easel, left), half), 0},
                       {note_group(easel, words_of_the_trade(easel, right), half), second}})});
    blocks.push_back(std::move(list));
    return blocks;
}

} // namespace page
