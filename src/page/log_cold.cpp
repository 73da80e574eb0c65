// The cold test box and the junior's path.
#include "page/log_grid.hpp"

#include "figure/symbol.hpp"
#include "page/drill_loop.hpp"
#include "page/parts.hpp"
#include "words/date.hpp"

#include <algorithm>
#include <cmath>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

/// "Student ______  Coach ______" over that width.
ink::Drawing initials(const Easel& easel, double width) {
    const auto& style = easel.theme.setting(Text::caption).style;
    const double height = std::max(20.0, style.size * 1.9), base = height - 6;
    ink::Drawing out;
    out.size = {width, height};
    out.add(ink::Tag{true, "P", {}});
    double x = 0;
    const double each = width / 2;
    for (const char* key : {"log.student", "log.coach"}) {
        ink::Words word = figure::label(easel, style, easel.words.say(key), {x, base});
        const double from = x + word.width + 4;
        out.add(std::move(word));
        out.add(ink::Stroke{ink::Path::segment({from, base + 2}, {x + each - 8, base + 2}),
                            easel.theme.widths.axis,
                            easel.theme.text,
                            {},
                            ink::Cap::butt});
        x += each;
    }
    out.add(ink::Tag{false, "P", {}});
    return out;
}

ink::Drawing boxes(const Easel& easel, int count, double width) {
    const double tail = easel.theme.setting(Text::body).style.size * 5.2;
    const double pitch = std::min((width - tail) / count, 9 * figure::mm),
                 side = std::min(pitch - 3, 7.5 * figure::mm);
    const auto& body = easel.theme.setting(Text::body);
    ink::Drawing out;
    out.size = {width, std::max(side + 1, body.leading)};
    for (int i = 0; i < count; ++i)
        out.add(ink::Stroke{ink::Path::rect({i * pitch + 0.5, 0.5, side, side}),
                            1.0,
                            easel.theme.text,
                            {},
                            ink::Cap::butt});
    const double base = std::max(side - 4, body.style.size * 0.8), from = count * pitch,
                 end = from + tail;
    ink::Words of =
        figure::label(easel, Text::body, easel.words.say("cold.out-of.n", {{"n", count}}),
                      {end, base}, text::Align::right);
    out.add(ink::Stroke{ink::Path::segment({from, base + 2}, {of.at.x - 3, base + 2}),
                        easel.theme.widths.axis,
                        easel.theme.text,
                        {},
                        ink::Cap::butt});
    out.add(ink::Tag{true, "P", {}});
    out.add(std::move(of));
    out.add(ink::Tag{false, "P", {}});
    return out;
}

} // namespace

ink::Drawing log_cold(const Easel& easel, const Story& story, const ChosenDrill& chosen,
                      double width) {
    const record::Lesson& lesson = story.lesson;
    const int count = cold_boxes(log_count(chosen));
    const auto& w = easel.words;
    const bool junior = lesson.student.age == record::Age::junior;
    const double pad = 7, gutter = 14, inner = width - 2 * pad;
    const bool large = easel.theme.setting(Text::body).style.size > 14;
    const bool wide = !large && width > 400; // narrow paper and large print go downwards
    const double left = wide ? inner * 0.49 : inner;
    const double right = wide ? inner - left - gutter : inner;

    const auto date = lesson.cold_test ? lesson.cold_test : lesson.next;
    const std::string when =
        date ? w.say("drillpage.cold-head", {{"date", words::date_long(*date, w)}})
             : w.say("cold.title");
    const std::string bring =
        lesson.next ? w.say("cold.bring", {{"date", words::date_long(*lesson.next, w)}})
                    : w.say("cold.bring-next");
    const char* what = junior                                 ? "cold.junior.n"
                       : drills::on_range(chosen.drill.space) ? "cold.shots.n"
                                                              : "cold.placements.n";
    const double sign = easel.theme.setting(Text::heading).style.size;
    const double signing = wide || large ? 0 : inner * 0.46; // on narrow paper beside the title
    const double named = left - signing;
    ink::Drawing head = figure::paragraph(easel, Text::heading, when, named - sign - 4);
    ink::Drawing title;
    title.size = {named, head.size.height};
    figure::put(title, figure::Symbol::cold,
                {sign * 0.4, easel.theme.setting(Text::heading).leading / 2}, sign * 0.36,
                easel.theme.text);
    title.add(tagged(head, "H2"), {sign + 4, 0});
    std::string told = w.say(what, {{"n", count}}) + " " + bring;
    if (const auto answer = cold_answer(story, w); !answer.empty()) told += " " + answer;
    const ink::Drawing telling = tagged(figure::paragraph(easel, Text::caption, told, left), "P");
    const ink::Drawing tries = boxes(easel, count, right);
    if (signing > 0) {
        const ink::Drawing top =
            side_by_side({{title, 0}, {initials(easel, signing - 8), inner - signing + 8}});
        return framed(easel, stacked({top, telling, tries}, 3), width, pad);
    }
    const ink::Drawing words = stacked({title, telling}, 1);
    const ink::Drawing marks = stacked({tries, initials(easel, right)}, wide ? 3 : 6);
    const ink::Drawing body =
        wide ? side_by_side({{words, 0}, {marks, left + gutter}}) : stacked({words, marks}, 6);
    return framed(easel, body, width, pad);
}

ink::Drawing log_path(const Easel& easel, double width, double height) {
    const int a_row = path_circles / 2;
    const double radius = std::min({7.5 * figure::mm, width / a_row * 0.32, height * 0.19});
    ink::Drawing out;
    out.size = {width, height};
    std::vector<ink::Point> at;
    // there and back again, each row a gentle wave
    for (int i = 0; i < path_circles; ++i) {
        const int row = i / a_row, k = i % a_row;
        const double along = (k + 0.5) / a_row, x = (row == 0 ? along : 1 - along) * (width - 60);
        const double wave = (k % 2 == 0 ? -1 : 1) * radius * 0.22;
        at.push_back({x, height * (row == 0 ? 0.27 : 0.76) + wave});
    }
    ink::Path road;
    road.move(at[0]);
    for (std::size_t i = 1; i < at.size(); ++i) {
        const ink::Point a = at[i - 1], b = at[i];
        if (std::fabs(a.x - b.x) < 1) // the turn
            road.curve({a.x + 54, a.y}, {b.x + 54, b.y}, b);
        else
            road.curve({a.x + (b.x - a.x) * 0.5, a.y}, {a.x + (b.x - a.x) * 0.5, b.y}, b);
    }
    out.add(ink::Stroke{road, 1.4, easel.theme.text, {5, 4}, ink::Cap::butt});
    for (const auto& p : at) {
        out.add(ink::Fill{ink::Path::circle(p, radius), ink::white});
        out.add(
            ink::Stroke{ink::Path::circle(p, radius), 1.4, easel.theme.text, {}, ink::Cap::butt});
    }
    const ink::Point end{at.back().x, at.back().y - radius};
    out.add(ink::Stroke{
        ink::Path::segment(end, {end.x, end.y - 26}), 1.4, easel.theme.text, {}, ink::Cap::butt});
    out.add(
        ink::Fill{ink::Path::polyline(
                      {{end.x, end.y - 26}, {end.x + 17, end.y - 20}, {end.x, end.y - 14}}, true),
                  easel.theme.text});
    out.message = easel.words.say("drillpage.path-alt", {{"n", path_circles}});
    return out;
}

} // namespace page
