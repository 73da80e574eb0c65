#include "page/furniture.hpp"

#include "page/parts.hpp"
#include "words/date.hpp"

namespace page {

namespace {

std::string which(const figure::Easel& easel, const record::Lesson& lesson) {
    if (!lesson.date.value.ok()) return {};
    const std::string date = words::date_long(lesson.date.value, easel.words);
    std::string text =
        lesson.number ? easel.words.say("head.lesson-date", {{"n", *lesson.number}, {"date", date}})
                      : date;
    if (lesson.revision > 1)
        text += " · " + easel.words.say("head.revision", {{"n", lesson.revision}});
    return text;
}

/// Heights of the holes above and below the middle of the sheet, millimetres.
std::vector<double> holes(theme::Punch punch) {
    switch (punch) {
    case theme::Punch::none:
        return {};
    case theme::Punch::two:
        return {-40, 40};
    case theme::Punch::four:
        return {-120, -40, 40, 120};
    case theme::Punch::three:
        return {-108, 0, 108};
    }
    return {};
}

/// Small crosses where the holes come, 12 mm from the edge; those off the paper are left out.
void punch_marks(ink::Drawing& d, theme::Punch punch, const ink::Size& page, bool right_hand) {
    const double x = right_hand ? 12 * figure::mm : page.width - 12 * figure::mm;
    for (const double off : holes(punch)) {
        const double y = page.height / 2 + off * figure::mm;
        if (y < 12 || y > page.height - 12) continue;
        d.add(ink::Stroke{ink::Path::segment({x - 3, y}, {x + 3, y}), 0.5, ink::grey(0.4)});
        d.add(ink::Stroke{ink::Path::segment({x, y - 3}, {x, y + 3}), 0.5, ink::grey(0.4)});
    }
}

} // namespace

std::string whose(const figure::Easel& easel, const record::Student& student) {
    if (student.code.empty()) return student.name;
    if (student.name.empty()) return student.code;
    return easel.words.say("head.student", {{"name", student.name}, {"code", student.code}});
}

std::string coach_line(const record::Coach& coach) {
    if (coach.contact.empty()) return coach.name;
    return coach.name + (coach.name.empty() ? "" : " · ") + coach.contact;
}

Furniture furniture(const figure::Easel& easel, Running running) {
    return [&easel, running = std::move(running)](Sheet& sheet, std::size_t number,
                                                  std::size_t count) {
        const bool right_hand = number % 2 == 1;
        const ink::Rect live = easel.theme.live(right_hand);
        const auto text = theme::Text::furniture;
        const auto outer = right_hand ? text::Align::right : text::Align::left;
        const auto inner = right_hand ? text::Align::left : text::Align::right;
        const double outer_x = right_hand ? live.right() : live.x;
        const double inner_x = right_hand ? live.x : live.right();
        const double head = live.y - 20, foot = live.bottom() + 24;

        ink::Drawing d;
        d.add(ink::Tag{true, "Artifact", {}});
        const ink::Style plain = easel.theme.setting(text).style,
                         strong = figure::bold(easel, text);
        // the number and the date give way to nothing, names to them
        const auto beside = [&](const std::string& other, const ink::Style& style) {
            return live.width - easel.type.line(other, style).width - 14;
        };
        d.add(figure::label(easel, strong,
                            cut(easel, strong, running.whose, beside(running.which, plain)),
                            {inner_x, head}, inner));
        d.add(figure::label(easel, text, running.which, {outer_x, head}, outer));
        const std::string page = running.counted
                                     ? easel.words.say("foot.page", {{"x", number}, {"y", count}})
                                     : std::string();
        d.add(ink::Stroke{ink::Path::segment({live.x, head + 6}, {live.right(), head + 6}),
                          0.5,
                          easel.theme.rule,
                          {},
                          ink::Cap::butt});
        if (running.counted) d.add(figure::label(easel, strong, page, {outer_x, foot}, outer));
        const double foot_room =
            running.strong_foot.empty()
                ? beside(page, strong)
                : (live.width - easel.type.line(running.strong_foot, strong).width) / 2 - 14;
        d.add(figure::label(easel, text, cut(easel, plain, running.foot, foot_room),
                            {inner_x, foot}, inner));
        if (!running.strong_foot.empty())
            d.add(figure::label(easel, figure::bold(easel, text), running.strong_foot,
                                {(live.x + live.right()) / 2, foot}, text::Align::centre));
        punch_marks(d, easel.theme.punch, sheet.size, right_hand);
        d.add(ink::Tag{false, "Artifact", {}});
        sheet.marks.insert(sheet.marks.begin(), d.marks.begin(), d.marks.end());
        sheet.label = std::to_string(number);
    };
}

Furniture furniture(const figure::Easel& easel, const record::Lesson& lesson) {
    return furniture(
        easel, {whose(easel, lesson.student), which(easel, lesson), coach_line(lesson.coach)});
}

void put_folio(Sheet& sheet, const figure::Easel& easel, std::size_t number) {
    const bool right_hand = number % 2 == 1;
    const ink::Rect live = easel.theme.live(right_hand);
    ink::Style style = figure::bold(easel, theme::Text::heading);
    sheet.marks.push_back(ink::Tag{true, "Artifact", {}});
    sheet.marks.push_back(figure::label(easel, style, std::to_string(number),
                                        {right_hand ? live.right() : live.x, live.y - 33},
                                        right_hand ? text::Align::right : text::Align::left));
    sheet.marks.push_back(ink::Tag{false, "Artifact", {}});
    sheet.label = std::to_string(number);
}

} // namespace page
