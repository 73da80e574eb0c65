#include "report/binder_report.hpp"

#include "page/bind.hpp"
#include "page/binder_front.hpp"
#include "page/chronology_page.hpp"
#include "page/cut_out_page.hpp"
#include "page/furniture.hpp"
#include "page/own_page.hpp"
#include "page/passed_page.hpp"
#include "page/progress_page.hpp"
#include "page/self_check.hpp"
#include "page/words_page.hpp"
#include "report/figures.hpp"
#include "report/posed_hands.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace report {

namespace {

using page::ContentsLine;
using page::Section;

constexpr std::size_t most_swaps = 8; ///< more are no list: print everything again

std::string aim_place(std::size_t i) { return "progress-" + std::to_string(i + 1); }
std::string passed_place(const page::PassedDrill& drill) { return "passed-" + drill.drill->id; }

std::string lesson_place(const record::Lesson& lesson) {
    return "lesson-" + words::date_iso(lesson.date.value);
}

std::string lesson_title(const figure::Easel& easel, const record::Lesson& lesson) {
    const std::string date = words::date_long(lesson.date.value, easel.words);
    return lesson.number
               ? easel.words.say("head.lesson-date", {{"n", *lesson.number}, {"date", date}})
               : date;
}

/// Where everything stands, from the last round of laying out.
struct Places {
    const page::Book* book = nullptr;
    std::size_t first(const std::string& place) const {
        return book ? page::page_of(*book, place) : 0;
    }
};

/// The lesson whose hold the card shows: the newest that recorded one, else the newest.
const page::Story& shown_on_card(const page::Course& course) {
    const auto& all = course.lessons;
    const auto newest = std::find_if(all.rbegin(), all.rend(),
                                     [](const auto& one) { return !one.story->views.empty(); });
    return newest == all.rend() ? *all.back().story : *newest->story;
}

class Binder {
  public:
    Binder(const BinderInput& in, const std::optional<Exchange>& news)
        : in_(in)
        , news_(news) {}

    page::Flowed made() {
        page::Flowed out = laid_out({});
        for (int round = 0; round < 3; ++round) { // the contents name pages that they may move
            const page::Book before = out.book;
            out = laid_out({&before});
            if (page_numbers(out.book) == page_numbers(before)) break;
        }
        return out;
    }

  private:
    const figure::Easel& easel() const { return in_.easel; }

    std::vector<std::size_t> page_numbers(const page::Book& book) const {
        std::vector<std::size_t> out{book.sheets.size()};
        for (const auto& line : contents({&book}))
            out.push_back(line.first);
        return out;
    }

    std::vector<ContentsLine> contents(const Places& places) const {
        const auto& w = easel().words;
        std::vector<ContentsLine> out;
        const auto part = [&](std::string what, std::string place) {
            const std::size_t at = places.first(place);
            out.push_back({{}, {}, std::move(what), {}, std::move(place), at, at, true});
        };
        part(w.say("binder.chronology"), "chronology");
        part(w.say("binder.words"), "words");
        part(w.say("binder.safety"), "safety");
        for (std::size_t i = 0; i < in_.course.aims.size(); ++i) {
            const auto& aim = in_.course.aims[i];
            part(w.say("binder.progress-of",
                       {{"aim", page::aim_name(easel(), aim.measure, aim.club)}}),
                 aim_place(i));
        }
        part(w.say("binder.cut-out"), "card");
        for (const auto& lesson : in_.lessons)
            out.push_back(lesson_line(places, lesson));
        for (const auto& drill : in_.course.passed) {
            const std::size_t at = places.first(passed_place(drill));
            out.push_back({{},
                           words::date_long(drill.on, w),
                           w.say("binder.passed-title", {{"name", drill.drill->name}}),
                           {},
                           passed_place(drill),
                           at,
                           at});
        }
        return out;
    }

    ContentsLine lesson_line(const Places& places, const LessonPages& lesson) const {
        const record::Lesson& l = lesson.story->lesson;
        const auto& w = easel().words;
        const std::size_t at = places.first(lesson_place(l));
        return {l.number ? std::to_string(*l.number) : std::string(),
                words::date_long(l.date.value, w),
                l.aim ? page::aim_name(easel(), l.aim->measure.value, l.club.name)
                      : w.say("binder.no-aim"),
                l.revision > 1 ? std::to_string(l.revision) : std::string(),
                lesson_place(l),
                at,
                at + lesson.book.sheets.size() - 1};
    }

    std::vector<std::string> news_lines() const {
        return news_ ? exchange_words(easel().words, *news_) : std::vector<std::string>{};
    }

    std::vector<Section> front(const Places& places) const {
        std::vector<Section> out{page::binder_title(easel(), in_.course, news_lines()),
                                 page::binder_contents(easel(), contents(places)),
                                 page::chronology_page(easel(), in_.course),
                                 page::words_page(easel()), page::safety_page(easel())};
        return out;
    }

    void add(page::Flowed& out, const std::vector<Section>& sections) {
        page::Running running{page::whose(easel(), in_.course.latest().student),
                              easel().words.say("head.document.binder"),
                              page::coach_line(in_.course.latest().coach),
                              false,
                              {}};
        const Section filler = page::lines_page(easel());
        auto part = page::flow(sections, easel().theme, page::furniture(easel(), running), &filler);
        for (auto& fault : page::self_check(part.book, easel().theme, easel().type))
            part.faults.push_back(std::move(fault));
        for (auto& fault : part.faults) {
            fault.page += out.book.sheets.size();
            out.faults.push_back(std::move(fault));
        }
        page::bind(out.book, std::move(part.book), {});
    }

    page::Flowed laid_out(const Places& places) {
        page::Flowed out;
        add(out, front(places));
        std::vector<Section> aims;
        for (std::size_t i = 0; i < in_.course.aims.size(); ++i)
            for (auto& section :
                 page::progress_pages(easel(), in_.course, in_.course.aims[i], aim_place(i)))
                aims.push_back(std::move(section));
        if (!aims.empty()) add(out, aims);
        add(out,
            page::cut_out_pages(easel(), in_.course, card_of(easel(), shown_on_card(in_.course))));
        for (const auto& lesson : in_.lessons) {
            const std::string place = lesson_place(lesson.story->lesson);
            page::Book part = lesson.book;
            part.sheets.front().marks.push_back(ink::Place{{0, 0}, {}}); // named by its prefix
            page::bind(out.book, std::move(part), place,
                       lesson_title(easel(), lesson.story->lesson));
        }
        std::vector<Section> passed;
        for (const auto& drill : in_.course.passed)
            passed.push_back(
                page::passed_page(easel(), drill, passed_place(drill),
                                  posed_hands(easel(), *in_.course.lessons.back().story)));
        if (!passed.empty()) add(out, passed);
        name(out.book);
        return out;
    }

    void name(page::Book& book) const {
        const auto& w = easel().words;
        const record::Lesson& latest = in_.course.latest();
        book.title = w.say("head.document-of", {{"document", w.say("head.document.binder")},
                                                {"name", latest.printed_name()}});
        book.author = latest.coach.name;
        book.language = latest.language;
        book.created = words::date_iso(latest.date.value);
    }

    const BinderInput& in_;
    const std::optional<Exchange>& news_;
};

std::string range_words(const words::Speaker& words, const PageRange& range) {
    return words.say("binder.range", {{"first", range.first}, {"last", range.last}});
}

std::string swap_words(const words::Speaker& words, const Swap& swap) {
    if (swap.out && swap.in)
        return words.say("binder.swap", {{"out", range_words(words, *swap.out)},
                                         {"in", range_words(words, *swap.in)}});
    if (swap.out) return words.say("binder.take-out", {{"out", range_words(words, *swap.out)}});
    return words.say("binder.put-in",
                     {{"in", range_words(words, *swap.in)}, {"behind", swap.behind}});
}

} // namespace

page::Flowed binder_report(const BinderInput& input, const std::optional<Exchange>& news) {
    return Binder(input, news).made();
}

void number_pages(page::Book& book, const BinderInput& input) {
    std::vector<const figure::Easel*> easels(book.sheets.size(), &input.easel);
    for (const auto& lesson : input.lessons) {
        const std::string place = lesson_place(lesson.story->lesson);
        const std::size_t first = page::page_of(book, place);
        for (std::size_t i = 0; first > 0 && i < lesson.book.sheets.size(); ++i)
            easels[first - 1 + i] = lesson.easel;
    }
    for (std::size_t i = 0; i < book.sheets.size(); ++i)
        page::put_folio(book.sheets[i], *easels[i], i + 1);
}

std::vector<std::string> exchange_words(const words::Speaker& words, const Exchange& exchange) {
    if (exchange.swaps.empty()) return {};
    if (exchange.swaps.size() > most_swaps) return {words.say("binder.print-all")};
    std::vector<std::string> out;
    for (const auto& swap : exchange.swaps)
        out.push_back(swap_words(words, swap));
    for (const auto& kept : exchange.renumbered)
        out.push_back(words.say("binder.renumbered", {{"was", range_words(words, kept.was)},
                                                      {"is", range_words(words, kept.is)}}));
    return out;
}

} // namespace report
