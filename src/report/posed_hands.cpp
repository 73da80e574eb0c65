#include "report/posed_hands.hpp"

#include "figure/worded_hand.hpp"
#include "hand/album.hpp"
#include "page/hold_words.hpp"
#include "report/tell_hold.hpp"

#include <algorithm>

namespace report {

namespace {

/// What a student has to find in the picture.
struct NamedPart {
    hand::View view;
    const char *anchor, *key;
};
constexpr NamedPart named_parts[] = {
    {hand::View::open_palm, "handle line", "drillpic.part.roots"},
    {hand::View::open_palm, "heel pad", "drillpic.part.pad"},
    {hand::View::golfers_eye, "knuckle 1", "drillpic.part.knuckles"},
    {hand::View::golfers_eye, "V fork", "drillpic.part.v"},
    {hand::View::butt_end, "heel pad", "drillpic.part.pad-on-top"},
    {hand::View::butt_end, "gap", "drillpic.part.gap"},
    {hand::View::balance, "balance point", "drillpic.part.forefinger"},
    {hand::View::balance, "heel pad", "drillpic.part.pad"},
    {hand::View::joined, "little finger in sight", "drillpic.part.little"},
    {hand::View::joined, "thumb tip", "drillpic.part.thumb"},
    {hand::View::joined, "lead thumb", "drillpic.part.cover"},
};

} // namespace

page::HoldPicture posed_hands(const figure::Easel& easel, const page::Story& story) {
    return [&easel, &story](std::string_view name, double width,
                            double height) -> std::optional<ink::Drawing> {
        const auto view = view_named(name);
        if (!view) return std::nullopt;
        const hand::Picture picture = hand::album().picture(target_wish(story.lesson), *view);
        std::vector<figure::AnchorWords> words;
        for (const auto& row : named_parts)
            if (row.view == *view) words.push_back({row.anchor, easel.words.say(row.key)});
        ink::Drawing drawn = figure::worded_hand(easel, picture, story.lesson.student.hand.value,
                                                 words, {width, height});
        drawn.message =
            easel.words.say(page::view_key(*view)) + ". " + easel.words.say("grip.caption.lead");
        return drawn;
    };
}

} // namespace report
