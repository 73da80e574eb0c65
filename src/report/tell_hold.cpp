#include "report/tell_hold.hpp"

#include "hand/album.hpp"
#include "page/hold_words.hpp"
#include "report/doubt_hold.hpp"

#include <algorithm>
#include <array>

namespace report {

namespace {

using hand::View;

struct Named {
    std::string_view name;
    View view;
};
constexpr std::array<Named, 8> names{{{"open palm", View::open_palm},
                                      {"fingers first", View::fingers_first},
                                      {"golfer's eye", View::golfers_eye},
                                      {"butt end", View::butt_end},
                                      {"balance", View::balance},
                                      {"joined", View::joined},
                                      {"joined front", View::joined_front},
                                      {"thumb", View::thumb_short}}};

/// What the player sees, with the club's head only where its face was measured.
View eye_of(const page::Story& story) {
    const bool face = std::ranges::any_of(
        story.evidence, [](const auto& e) { return e.measure == unit::Measure::face; });
    return face ? View::golfers_eye : View::close_up;
}

/// At most three views that show something that was looked at: what the player sees, then those
/// that changed, then the others; in the order of the list.
std::vector<View> fitting(const unit::Grip& a, const unit::Grip& b, View eye) {
    const auto seen = [&](auto... member) {
        return (((a.*member).has_value() || (b.*member).has_value()) || ...);
    };
    const auto changed = [&](auto... member) {
        return ((a.*member && b.*member && a.*member != b.*member) || ...);
    };
    using G = unit::Grip;
    struct Candidate {
        View view;
        bool seen, changed;
    };
    const Candidate all[]{
        {View::open_palm, seen(&G::lay, &G::square), changed(&G::lay, &G::square)},
        {eye, true, true},
        {View::butt_end, seen(&G::gap, &G::heel_pad), changed(&G::gap, &G::heel_pad)},
        {View::fingers_first, false, changed(&G::fingers_first)},
        {View::balance, seen(&G::balance), changed(&G::balance)},
        {View::joined_front, seen(&G::join), changed(&G::join)}};
    constexpr std::size_t most = 3;
    std::vector<View> out;
    const auto take = [&](auto&& fits) {
        for (const Candidate& c : all)
            if (fits(c) && out.size() < most && std::ranges::count(out, c.view) == 0)
                out.push_back(c.view);
    };
    take([&](const Candidate& c) { return c.view == eye; });
    take([](const Candidate& c) { return c.changed; });
    take([](const Candidate& c) { return c.seen; });
    std::ranges::sort(out, {}, [&](View view) {
        return std::ranges::find(all, view, &Candidate::view) - std::begin(all);
    });
    return out;
}

std::vector<View> chosen(const record::Lesson& lesson, View eye) {
    std::vector<View> out;
    for (const auto& wish : lesson.views)
        if (const auto view = view_named(wish.value))
            out.push_back(*view == View::golfers_eye ? eye : *view);
    return out.empty() ? fitting(lesson.before, lesson.after, eye) : out;
}

hand::Wish wish_of(const record::Lesson& lesson, const unit::Grip& seen) {
    hand::Wish wish{.seen = seen, .target = lesson.target};
    wish.build =
        lesson.student.age == record::Age::junior ? hand::Build::child : hand::Build::large;
    wish.glove = lesson.glove;
    wish.join = seen.join.value_or(lesson.target.join.value_or(unit::Join::overlap));
    return wish;
}

/// The middle face angle of a block, for the leading edge in the golfer's-eye view.
double face_of(const page::Story& story, bool after) {
    for (const auto& e : story.evidence)
        if (e.measure == unit::Measure::face)
            return after ? e.change.after.median : e.change.before.median;
    return 0;
}

/// The strip from weak to strong, where somebody counted knuckles.
std::optional<figure::StrengthInput> strength_of(const record::Lesson& lesson) {
    if (!lesson.before.knuckles && !lesson.after.knuckles) return std::nullopt;
    figure::StrengthInput in{.hand = lesson.student.hand.value,
                             .before = lesson.before.knuckles,
                             .after = lesson.after.knuckles,
                             .wanted = page::wanted_knuckles(lesson)};
    const hand::Wish plain = wish_of(lesson, {});
    for (std::size_t i = 0; i < in.hands.size(); ++i) {
        hand::Wish wish{.build = plain.build, .glove = plain.glove};
        wish.seen.knuckles = figure::strip_knuckles[i];
        in.hands[i] = hand::album().picture(wish, View::close_up);
    }
    return in;
}

} // namespace

std::optional<View> view_named(std::string_view name) {
    const auto plain = [](std::string_view text) {
        std::string out;
        for (const char c : text)
            if (c != '\'') out += c;
        return out;
    };
    for (const auto& named : names)
        if (plain(named.name) == plain(name)) return named.view;
    return std::nullopt;
}

hand::Wish target_wish(const record::Lesson& lesson) { return wish_of(lesson, lesson.target); }

void tell_hold(page::Story& story, diag::Findings& findings) {
    const auto& lesson = story.lesson;
    hand::Album& album = hand::album();
    const bool left = lesson.student.hand.value == unit::Hand::left;
    const auto wish = [&](bool seen, const unit::Grip& grip, bool later) {
        std::optional<hand::Wish> out;
        if (!seen) return out;
        out = wish_of(lesson, grip);
        out->face_degrees = (left ? -1 : 1) * face_of(story, later); // geometry is a right-hander's
        return out;
    };
    const auto before = wish(lesson.has_before, lesson.before, false);
    const auto after = wish(lesson.has_after, lesson.after, true);
    if (!before && !after) {
        for (const View view : {View::open_palm, View::close_up, View::butt_end})
            story.wanted.push_back(
                {view, std::nullopt, album.picture(target_wish(lesson), view), "", "grip.target"});
        return;
    }
    if (before) {
        story.before = album.facts(*before);
        doubt_hold(*story.before, lesson.before, "before", lesson.before_span, findings);
    }
    if (after) {
        story.after = album.facts(*after);
        doubt_hold(*story.after, lesson.after, "after", lesson.after_span, findings);
    }
    for (const View view : chosen(lesson, eye_of(story))) {
        page::GripView drawn{.view = view};
        if (view == View::thumb_short) {
            const hand::Wish& shown = after ? *after : *before;
            drawn.before = album.picture(shown, View::thumb_short);
            drawn.after = album.picture(shown, View::thumb_long);
            drawn.first_key = "grip.view.thumb-short";
            drawn.second_key = "grip.view.thumb-long";
            story.views.push_back(std::move(drawn));
            continue;
        }
        if (before) drawn.before = album.picture(*before, view);
        if (after) drawn.after = album.picture(*after, view);
        story.views.push_back(std::move(drawn));
    }
    story.strength = strength_of(lesson);
}

} // namespace report
