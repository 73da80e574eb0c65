#include "page/hold_words.hpp"

#include "words/number.hpp"

#include <cmath>

namespace page {

namespace {

using unit::Grip;

std::string named(const words::Speaker& words, const std::string& stem,
                  const std::vector<std::string_view>& names, std::size_t index) {
    return words.say(stem + "." + std::string(names.at(index)));
}

std::string lay(const Grip& g, const words::Speaker& w) {
    if (!g.lay) return {};
    return named(w, "grip.lay", {"fingers", "between", "palm"}, static_cast<std::size_t>(*g.lay));
}
std::string square(const Grip& g, const words::Speaker& w) {
    return g.square ? w.say(*g.square ? "grip.square.yes" : "grip.square.no") : std::string();
}
std::string order(const Grip& g, const words::Speaker& w) {
    return g.fingers_first
               ? w.say(*g.fingers_first ? "grip.fingers-first.yes" : "grip.fingers-first.no")
               : std::string();
}
std::string pad(const Grip& g, const words::Speaker& w) {
    if (!g.heel_pad) return {};
    return named(w, "grip.heel-pad", {"on-top", "beside"}, static_cast<std::size_t>(*g.heel_pad));
}
std::string gap_words(const Grip& g, const words::Speaker& w) {
    return g.gap ? w.say(*g.gap ? "grip.gap.yes" : "grip.gap.no") : std::string();
}
/// Halves as one says them: "½", "1½".
std::string counted(double knuckles, const words::Speaker& w) {
    const double whole = std::floor(knuckles);
    if (knuckles - whole != 0.5)
        return words::fixed(knuckles, whole == knuckles ? 0 : 1, w.language());
    return (whole > 0 ? words::fixed(whole, 0, w.language()) : std::string()) + "½";
}
std::string knuckles(const Grip& g, const words::Speaker& w) {
    return g.knuckles ? counted(*g.knuckles, w) : std::string();
}
std::string v_words(const Grip& g, const words::Speaker& w) {
    if (!g.v) return {};
    return named(w, "grip.v",
                 {"lead-side", "chin", "trail-eye", "trail-shoulder", "outside-trail-shoulder"},
                 static_cast<std::size_t>(*g.v));
}
std::string thumb(const Grip& g, const words::Speaker& w) {
    std::string out;
    if (g.thumb_side)
        out = named(w, "grip.thumb-side", {"lead-side", "centre", "trail-side"},
                    static_cast<std::size_t>(*g.thumb_side));
    if (g.thumb_length)
        out += (out.empty() ? "" : ", ") + named(w, "grip.thumb-length",
                                                 {"short-thumb", "middle", "long-thumb"},
                                                 static_cast<std::size_t>(*g.thumb_length));
    return out;
}
std::string balance(const Grip& g, const words::Speaker& w) {
    if (!g.balance) return {};
    return named(w, "grip.balance", {"stays", "falls"}, static_cast<std::size_t>(*g.balance));
}
std::string join(const Grip& g, const words::Speaker& w) {
    if (!g.join) return {};
    return named(w, "grip.join", {"overlap", "interlock", "ten-finger"},
                 static_cast<std::size_t>(*g.join));
}

struct Row {
    const char* pair_key;
    std::string (*say)(const Grip&, const words::Speaker&);
};
constexpr Row rows[] = {{"pair.lay", lay},   {"pair.square", square}, {"pair.order", order},
                        {"pair.pad", pad},   {"pair.gap", gap_words}, {"pair.knuckles", knuckles},
                        {"pair.v", v_words}, {"pair.thumb", thumb},   {"pair.balance", balance},
                        {"pair.join", join}};

std::optional<bool> both(std::optional<bool> a, std::optional<bool> b) {
    if ((a && !*a) || (b && !*b)) return false;
    if (a && b) return true;
    return a ? a : b;
}

} // namespace

std::vector<Aspect> aspects(const Story& story, const words::Speaker& words) {
    std::vector<Aspect> out;
    for (const Row& row : rows) {
        Aspect a{row.pair_key, row.say(story.lesson.before, words),
                 row.say(story.lesson.after, words),
                 story.lesson.has_before && story.lesson.has_after};
        if (!a.before.empty() || !a.after.empty()) out.push_back(std::move(a));
    }
    return out;
}

std::vector<Shown> shown_in(hand::View view) {
    switch (view) {
    case hand::View::open_palm:
        return {{"pair.lay", "handle line"}, {"pair.square", "finger"}};
    case hand::View::fingers_first:
        return {{"pair.order", "finger"}, {"pair.pad", "heel pad"}};
    case hand::View::golfers_eye:
    case hand::View::close_up:
        return {{"pair.knuckles", "knuckle 1"}, {"pair.v", "V fork"}, {"pair.thumb", "thumb tip"}};
    case hand::View::butt_end:
        return {{"pair.pad", "heel pad"}, {"pair.gap", "gap"}};
    case hand::View::balance:
        return {{"pair.balance", "balance point"}, {"pair.pad", "heel pad"}};
    case hand::View::joined:
    case hand::View::joined_front:
        return {{"pair.join", "little finger"}};
    case hand::View::thumb_short:
    case hand::View::thumb_long:
        return {{"pair.thumb", "thumb tip"}};
    }
    return {};
}

std::string sentence(const Aspect& aspect, const words::Speaker& words) {
    const auto one = [&](const std::string& value) {
        return words.say(aspect.pair_key + ".one", {{"value", value}});
    };
    if (aspect.after.empty()) return one(aspect.before);
    if (aspect.after == aspect.before)
        return one(words.say("pair.unchanged", {{"value", aspect.after}}));
    if (!aspect.before.empty())
        return words.say(aspect.pair_key, {{"before", aspect.before}, {"after", aspect.after}});
    if (!aspect.pair) return one(aspect.after);
    return words.say(aspect.pair_key,
                     {{"before", words.say("check.not-looked")}, {"after", aspect.after}});
}

Looks looks(const unit::Grip& g, const unit::Grip& target) {
    Looks out;
    if (g.lay) out[0] = *g.lay == target.lay.value_or(unit::Lay::fingers);
    out[1] = g.square;
    out[2] = g.fingers_first;
    const auto pad_on =
        g.heel_pad ? std::optional(*g.heel_pad == unit::HeelPad::on_top) : std::nullopt;
    out[3] = both(pad_on, g.gap ? std::optional(!*g.gap) : std::nullopt);
    // common practice, no source: two to two and a half show, unless the coach names a number
    if (g.knuckles)
        out[4] = target.knuckles ? std::abs(*g.knuckles - *target.knuckles) < 0.26
                                 : *g.knuckles >= 2 && *g.knuckles <= 2.5;
    if (g.balance) out[5] = *g.balance == unit::Balance::stays;
    return out;
}

LookCount count_looks(const record::Lesson& lesson) {
    const Looks before = looks(lesson.before, lesson.target);
    const Looks after = looks(lesson.after, lesson.target);
    LookCount n;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (!before[i] || !after[i]) continue;
        n.before += *before[i];
        n.after += *after[i];
        ++n.of;
    }
    return n;
}

std::vector<std::string> look_lines(const record::Lesson& lesson, const words::Speaker& words) {
    std::vector<std::string> out;
    const double wanted = wanted_knuckles(lesson);
    const words::Holes number{{"n", wanted}, {"said", counted(wanted, words)}};
    for (int i = 1; i <= 6; ++i)
        out.push_back(words.say("check." + std::to_string(i), i == 5 ? number : words::Holes{}));
    return out;
}

std::string marks_legend(const Story& story, const words::Speaker& words) {
    bool ticks = false, half = false, arrow = false;
    const auto take = [&](const Grip& hold) {
        const double n = hold.knuckles.value_or(0);
        ticks = ticks || n > 0;
        half = half || n != std::floor(n);
        arrow = arrow || hold.v;
    };
    const auto& lesson = story.lesson;
    if (story.wanted.empty())
        take(lesson.before), take(lesson.after);
    else
        take(lesson.target);
    std::string out;
    if (ticks) out += " " + words.say(half ? "grip.caption.half-tick" : "grip.caption.ticks");
    if (arrow) out += " " + words.say("grip.caption.arrow");
    return out;
}

double wanted_knuckles(const record::Lesson& lesson) { return lesson.target.knuckles.value_or(2); }

std::string view_key(hand::View view) {
    switch (view) {
    case hand::View::open_palm:
        return "grip.view.open-palm";
    case hand::View::fingers_first:
        return "grip.view.fingers-first";
    case hand::View::golfers_eye:
    case hand::View::close_up:
        return "grip.view.golfers-eye";
    case hand::View::butt_end:
        return "grip.view.butt-end";
    case hand::View::balance:
        return "grip.view.balance";
    case hand::View::joined:
        return "grip.view.joined";
    case hand::View::joined_front:
        return "grip.view.joined-front";
    case hand::View::thumb_short: // the pair of both lengths
        return "grip.view.thumb";
    case hand::View::thumb_long:
        return "grip.view.thumb-long";
    }
    return {};
}

} // namespace page
