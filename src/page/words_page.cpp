#include "page/words_page.hpp"

#include "figure/symbol.hpp"
#include "page/caution_notes.hpp"
#include "page/expect_page.hpp"
#include "page/parts.hpp"

#include <initializer_list>

namespace page {

using figure::Easel;
using figure::Symbol;
using theme::Text;

namespace {

/// "Face: the front of …" with the word itself set strong.
NoteGroup group(const Easel& easel, const char* title, std::initializer_list<const char*> keys) {
    NoteGroup out{easel.words.say(title), {}, false};
    for (const char* key : keys) {
        const std::string line = easel.words.say(key);
        const std::size_t colon = line.find(": ");
        if (colon == std::string::npos)
            out.notes.push_back({{}, line, Text::body});
        else
            out.notes.push_back({line.substr(0, colon + 1), line.substr(colon + 2), Text::body});
    }
    return out;
}

/// A sign as the pictures draw it, and what it stands for.
ink::Drawing sign(const Easel& easel, const char* key, double width, Symbol symbol) {
    const auto& setting = easel.theme.setting(Text::body);
    const double indent = setting.style.size * 2.2;
    ink::Drawing words = figure::paragraph(easel, Text::body, easel.words.say(key), width - indent);
    ink::Drawing out;
    out.size = {width, words.size.height};
    figure::put(out, symbol, {indent * 0.36, setting.leading * 0.55}, 4.2, easel.theme.text);
    out.add(tagged(std::move(words), "P"), {indent, 0});
    return out;
}

ink::Drawing swatch(const Easel& easel, const char* key, double width, bool hatched) {
    const auto& setting = easel.theme.setting(Text::body);
    const double indent = setting.style.size * 2.2, y = setting.leading * 0.55;
    ink::Drawing words = figure::paragraph(easel, Text::body, easel.words.say(key), width - indent);
    ink::Drawing out;
    out.size = {width, words.size.height};
    if (hatched)
        figure::hatch(out, {0, y - 6, indent * 0.72, 12}, 4, 0.5, easel.theme.rule);
    else
        out.add(ink::Stroke{ink::Path::segment({0, y}, {indent * 0.72, y}),
                            2.2,
                            easel.theme.text,
                            {},
                            ink::Cap::butt});
    out.add(tagged(std::move(words), "P"), {indent, 0});
    return out;
}

Block signs(const Easel& easel) {
    const double width = column_width(easel), gutter = 20, half = (width - gutter) / 2;
    const bool large = easel.theme.setting(Text::body).style.size > 14;
    const double wide = large ? width : half;
    const auto left = stacked({sign(easel, "binder.sign.before", wide, Symbol::before),
                               sign(easel, "binder.sign.after", wide, Symbol::after),
                               sign(easel, "binder.sign.cold", wide, Symbol::cold),
                               sign(easel, "binder.sign.aside", wide, Symbol::set_aside)},
                              5);
    const auto right = stacked(
        {swatch(easel, "binder.sign.half", wide, false),
         swatch(easel, "binder.sign.wanted", wide, true),
         tagged(figure::paragraph(easel, Text::body, easel.words.say("binder.sign.sides"), wide),
                "P")},
        5);
    Block block{.name = "signs"};
    block.pieces.push_back(
        {large ? stacked({left, right}, 6) : side_by_side({{left, 0}, {right, half + gutter}})});
    return block;
}

} // namespace

Section words_page(const Easel& easel) {
    Section section{.name = "words", .title = easel.words.say("binder.words")};
    section.blocks = page_of_notes(
        easel, section.title, {},
        {group(easel, "binder.words.hold",
               {"word.lead-hand", "word.trail-hand", "word.heel-pad", "word.knuckles", "word.v",
                "word.weak", "word.neutral", "word.strong"}),
         group(easel, "binder.words.lesson", {"word.cold-test", "word.set-aside"})},
        {group(easel, "binder.words.club",
               {"word.face", "word.open", "word.closed", "word.square", "word.path",
                "word.in-to-out", "word.out-to-in", "word.attack", "word.low-point", "word.loft",
                "word.effective-loft"}),
         group(easel, "binder.words.ball", {"word.start", "word.carry", "word.offline"})},
        easel.words.say("binder.own-words"));
    return section;
}

Section safety_page(const Easel& easel) {
    Section section{.name = "safety", .title = easel.words.say("binder.safety")};
    auto notes = page_of_notes(easel, section.title, {},
                               {cautions(easel, easel.words.voice().junior, Text::body)},
                               {stop_box(easel), rules_of_words(easel)}, {});
    notes.erase(notes.end() - 1); // lines would leave no room for the signs
    section.blocks = std::move(notes);
    section.blocks.push_back(heading(easel, easel.words.say("binder.signs"), 18));
    section.blocks.push_back(signs(easel));
    const double rest = easel.theme.live(true).height - total_height(section.blocks) - 20;
    if (rest < 90) return section;
    Block lines{.name = "lines"};
    lines.space_before = 20;
    lines.pieces.push_back(
        {lines_to_write_on(easel, easel.words.say("notes.questions"), column_width(easel), rest)});
    section.blocks.push_back(std::move(lines));
    return section;
}

} // namespace page
