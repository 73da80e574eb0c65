#include "page/drill_plan.hpp"

#include "page/parts.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace page {

using figure::Easel;

namespace {

constexpr char blank = '\x1f';
constexpr double shortest_blank = 96; ///< points: room for two written words

struct Token {
    std::string word; ///< empty: a place to write on
    bool spaced = false;
    double width = 0;
};

std::vector<Token> tokens_of(const Easel& easel, std::string_view sentence,
                             const ink::Style& style) {
    std::vector<Token> out;
    bool spaced = false;
    for (std::size_t i = 0; i < sentence.size();) {
        if (sentence[i] == ' ') {
            spaced = true;
            ++i;
            continue;
        }
        Token token;
        token.spaced = spaced;
        spaced = false;
        if (sentence[i] == blank) {
            token.width = shortest_blank;
            ++i;
        } else {
            const std::size_t end = std::min(sentence.find_first_of(" \x1f", i), sentence.size());
            token.word = sentence.substr(i, end - i);
            token.width = easel.type.line(token.word, style).width;
            i = end;
        }
        out.push_back(std::move(token));
    }
    return out;
}

} // namespace

ink::Drawing sentence_to_fill(const Easel& easel, std::string_view sentence, double width,
                              theme::Text text) {
    const auto& setting = easel.theme.setting(text);
    if (sentence.find(blank) == std::string_view::npos)
        return tagged(figure::paragraph(easel, setting, sentence, width), "P");
    const double space = easel.type.line(" ", setting.style).width;
    const double leading = std::max(setting.leading * 1.35, 23.0);
    const auto tokens = tokens_of(easel, sentence, setting.style);
    ink::Drawing out;
    out.size.width = width;
    out.add(ink::Tag{true, "P", {}});
    for (std::size_t from = 0; from < tokens.size();) {
        std::size_t to = from;
        double used = 0;
        int blanks = 0;
        while (to < tokens.size()) {
            const double more = tokens[to].width + (to > from && tokens[to].spaced ? space : 0);
            if (to > from && used + more > width) break;
            used += more;
            blanks += tokens[to].word.empty();
            ++to;
        }
        const double extra = blanks > 0 ? (width - used) / blanks : 0;
        const double base = out.size.height + leading - 6;
        double x = 0;
        for (std::size_t i = from; i < to; ++i) {
            if (i > from && tokens[i].spaced) x += space;
            if (tokens[i].word.empty()) {
                const double wide = std::min(shortest_blank + extra, width - x);
                out.add(ink::Stroke{ink::Path::segment({x, base + 2}, {x + wide, base + 2}),
                                    easel.theme.widths.axis,
                                    easel.theme.text,
                                    {},
                                    ink::Cap::butt});
                x += wide;
            } else {
                out.add(figure::label(easel, setting.style, tokens[i].word, {x, base}));
                x += tokens[i].width;
            }
        }
        out.size.height += leading;
        from = to;
    }
    out.add(ink::Tag{false, "P", {}});
    return out;
}

ink::Drawing drill_plan(const Easel& easel, const record::Plan& plan, std::string_view number,
                        double width, theme::Text text) {
    const auto hole = [](const std::string& typed) {
        return typed.empty() ? std::string(1, blank) : typed;
    };
    const auto& w = easel.words;
    return stacked(
        {sentence_to_fill(
             easel,
             w.say("plan.sentence",
                   {{"when", hole(plan.when)}, {"where", hole(plan.where)}, {"n", number}}),
             width, text),
         sentence_to_fill(easel,
                          w.say("plan.obstacle-sentence", {{"obstacle", hole(plan.obstacle)},
                                                           {"instead", hole(plan.instead)}}),
                          width, text)},
        0);
}

} // namespace page
