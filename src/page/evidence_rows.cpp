#include "page/evidence_rows.hpp"

#include "page/verdict.hpp"
#include "words/side.hpp"

#include <cmath>

namespace page {

namespace {

figure::DotRow row(figure::Symbol symbol, std::string name, const std::vector<shots::Shot>& shots,
                   unit::Measure measure, const measure::Sample& sample) {
    figure::DotRow out{symbol, std::move(name), {}, {}};
    if (has_typical(sample)) out.sample = sample;
    for (const auto& shot : shots)
        if (const auto value = shot[measure])
            out.dots.push_back({shot.number, *value, !shot.set_aside.empty()});
    return out;
}

std::string message(const figure::Easel& easel, const Evidence& e) {
    const auto& w = easel.words;
    const std::string name = w.say("measure." + key_of(e.measure));
    const auto& c = e.change;
    if (c.before.count > 0 && c.after.count > 0)
        return w.say("evidence.alt.strip", {{"measure", name},
                                            {"n", c.before.count},
                                            {"before", words::side(e.measure, c.before.median, w)},
                                            {"m", c.after.count},
                                            {"after", words::side(e.measure, c.after.median, w)}});
    const auto& one = c.before.count > 0 ? c.before : c.after;
    return w.say(
        "evidence.alt.strip-one",
        {{"measure", name}, {"n", one.count}, {"value", words::side(e.measure, one.median, w)}});
}

} // namespace

figure::DotInput dots_of(const figure::Easel& easel, const Story& story, const Evidence& e) {
    figure::DotInput input{.measure = e.measure, .message = message(easel, e)};
    const auto& w = easel.words;
    // the cold test came first: it is taken at the start of the lesson
    if (!e.cold.empty() && e.cold_sample)
        input.rows.push_back(
            row(figure::Symbol::cold, w.say("figure.cold"), e.cold, e.measure, *e.cold_sample));
    if (!e.before.empty())
        input.rows.push_back(row(figure::Symbol::before, w.say("figure.before"), e.before,
                                 e.measure, e.change.before));
    if (!e.after.empty())
        input.rows.push_back(
            row(figure::Symbol::after, w.say("figure.after"), e.after, e.measure, e.change.after));
    if (e.is_aim && story.lesson.aim)
        input.wanted = {story.lesson.aim->least, story.lesson.aim->most};
    return input;
}

figure::Scale strip_scale(const figure::DotInput& input, double width, double reach) {
    const auto values = figure::spread_of(input);
    const double from = 8, to = width - 8;
    const auto& measure = unit::row(input.measure);
    if (measure.sided)
        return figure::centred(values, from, to,
                               measure.kind == unit::Kind::angle ? std::max(4.0, reach) : 1);
    return figure::fitted(values, from, to, 5);
}

ink::Drawing aim_strip(const figure::Easel& easel, const figure::DotInput& input, double width) {
    figure::Scale scale = strip_scale(input, width, 0);
    double names = 0;
    for (const auto& row : input.rows)
        names = std::max(
            names, easel.type.line(row.name, easel.theme.setting(theme::Text::tick).style).width);
    scale.from = names + 10;
    return figure::strip(easel, input, scale, width, true);
}

} // namespace page
