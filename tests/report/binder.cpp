// A binder as data: where everything stands, and that lessons stay as they were printed.
#include "course.hpp"

#include "page/bind.hpp"
#include "page/passed_page.hpp"
#include "page/progress_page.hpp"
#include "report/binder_report.hpp"

#include <catch2/catch.hpp>

#include <set>

using namespace course;

namespace {

struct Bound {
    page::Course course;
    std::vector<report::LessonPages> lessons;
    page::Flowed flowed;
};

Bound bound(Student& student, const std::optional<report::Exchange>& news = {}) {
    Bound out;
    out.course = student.followed();
    static std::list<figure::Easel> easels;
    const figure::Easel& easel = easels.emplace_back(student.easel());
    for (const auto& lesson : out.course.lessons)
        out.lessons.push_back(
            {&easel, lesson.story, report::lesson_report(easel, *lesson.story).book});
    out.flowed = report::binder_report({easel, out.course, out.lessons}, news);
    return out;
}

} // namespace

TEST_CASE("a course knows what was kept from one lesson to the next") {
    Student student;
    student.four();
    const auto course = student.followed();
    REQUIRE(course.lessons.size() == 4);
    REQUIRE(course.lessons[0].kept);
    CHECK(course.lessons[0].kept->kept == measure::Kept::kept); // 9 to 3, cold 3.4
    CHECK(course.lessons[0].kept_on == 2026y / March / 19);
    REQUIRE(course.lessons[1].kept);
    CHECK(course.lessons[1].kept->kept == measure::Kept::not_yet); // 8 to 2, cold 6.8
    CHECK_FALSE(course.lessons[3].kept);
    CHECK(course.lessons[2].days_before == 42);
    CHECK(page::weeks(42) == 6);
    REQUIRE(course.aims.size() == 1);
    CHECK(course.aims[0].cold_tests == 3);
    const page::PassedDrill drill{&student.library.front(), nullptr, 2026y / April / 30};
    const auto page = page::passed_page(student.easel(), drill, "passed");
    CHECK(page.title.find(drill.drill->name) != std::string::npos);
    CHECK(course.passed.empty()); // no record says so
}

TEST_CASE("the order in which lessons are given does not matter") {
    Student student;
    student.four();
    (void)student.followed();
    std::vector<const page::Story*> backwards;
    for (const auto& story : student.stories)
        backwards.insert(backwards.begin(), &story);
    const auto course = report::follow(backwards, student.library);
    CHECK(course.lessons.front().story->lesson.number == 1);
    CHECK(course.latest().number == 4);
}

TEST_CASE("a cold test with another club tells nothing of the change") {
    Student student;
    student.add(0, 9, 3);
    student.add(14, 8, 2, 3.4).club.name = "driver";
    const auto course = student.followed();
    CHECK_FALSE(course.lessons[0].kept);
    CHECK(course.aims.size() == 2);
}

TEST_CASE("every part of a binder stands where the contents say") {
    for (const bool junior : {false, true})
        for (const auto hand : {unit::Hand::right, unit::Hand::left}) {
            CAPTURE(junior);
            Student student(hand, junior);
            student.four();
            const Bound b = bound(student);
            const page::Book& book = b.flowed.book;
            for (const auto& fault : b.flowed.faults)
                FAIL_CHECK("page " << fault.page << ": " << fault.block << " " << fault.what);
            CHECK(book.sheets.size() % 2 == 0);
            CHECK(page::page_of(book, "title") == 1);
            CHECK(page::page_of(book, "contents") == 2);
            for (const char* right :
                 {"chronology", "progress-1", "card", "lesson-2026-03-05", "lesson-2026-05-14"})
                CHECK(page::page_of(book, right) % 2 == 1);
            const std::string contents = text_of(book.sheets[1]);
            for (const auto& lesson : b.lessons) {
                const auto first = page::page_of(
                    book, "lesson-" + words::date_iso(lesson.story->lesson.date.value));
                const std::string pages = std::to_string(first) + "\u2013" +
                                          std::to_string(first + lesson.book.sheets.size() - 1);
                CAPTURE(pages);
                CHECK(contents.find(pages) != std::string::npos);
            }
        }
}

TEST_CASE("links and bookmarks of a binder lead somewhere, and no place has two meanings") {
    Student student;
    student.four();
    const Bound b = bound(student);
    std::set<std::string> places;
    std::size_t links = 0;
    for (const auto& sheet : b.flowed.book.sheets)
        for (const auto& mark : sheet.marks)
            if (const auto* place = std::get_if<ink::Place>(&mark))
                CHECK(places.insert(place->name).second);
    for (const auto& sheet : b.flowed.book.sheets)
        for (const auto& mark : sheet.marks)
            if (const auto* link = std::get_if<ink::Link>(&mark)) {
                ++links;
                CHECK(places.contains(link->target.substr(1)));
            }
    CHECK(links > 15);
    for (const auto& mark : b.flowed.book.bookmarks)
        CHECK(mark.sheet < b.flowed.book.sheets.size());
}

TEST_CASE("a lesson in the binder is the lesson as it was printed, and a number at its corner") {
    Student student;
    student.four();
    Bound b = bound(student);
    report::number_pages(b.flowed.book, {*b.lessons[0].easel, b.course, b.lessons});
    for (std::size_t i = 0; i < b.flowed.book.sheets.size(); ++i)
        CHECK(b.flowed.book.sheets[i].label == std::to_string(i + 1));
    const std::size_t first = page::page_of(b.flowed.book, "lesson-2026-03-19") - 1;
    const page::Book& alone = b.lessons[1].book;
    for (std::size_t i = 0; i < alone.sheets.size(); ++i) {
        const std::string own = text_of(alone.sheets[i]);
        CHECK(text_of(b.flowed.book.sheets[first + i]) ==
              own + std::to_string(first + i + 1) + " ");
    }
}

TEST_CASE("progress pictures keep place and scale while the year goes on") {
    Student early, late;
    early.add(0, 9, 3);
    early.add(14, 8, 2, 3.4);
    late.four();
    const auto where = [](Student& student) {
        const auto course = student.followed();
        const auto easel = student.easel();
        const auto pages = page::progress_pages(easel, course, course.aims[0], "p");
        REQUIRE(pages.size() == 2);
        double y = 0;
        for (const auto& block : pages[0].blocks) {
            if (block.name == "progress") return std::pair(y + block.space_before, block.height());
            y += block.height() + (y > 0 ? block.space_before : 0);
        }
        return std::pair(0.0, 0.0);
    };
    const auto a = where(early), b = where(late);
    CHECK(a.first > 50);
    CHECK(a.first == Approx(b.first));
    CHECK(a.second == Approx(b.second));
    const auto one = early.followed(), other = late.followed();
    for (std::size_t i = 0; i < one.aims[0].pictures.size(); ++i)
        CHECK(one.aims[0].pictures[i].axis == other.aims[0].pictures[i].axis);
    const auto sentence = [](Student& student, const page::Course& course) {
        return page::progress_sentence(student.easel(), course.aims[0]);
    };
    CHECK(sentence(early, one).find("Too early") != std::string::npos);
    CHECK(sentence(late, other).find("Too early") == std::string::npos);
}

TEST_CASE("a junior's progress shows neither speed nor carry") {
    Student adult, junior(unit::Hand::right, true);
    adult.four(), junior.four();
    const auto measures = [](Student& student) {
        std::set<unit::Measure> out;
        const auto course = student.followed();
        for (const auto& picture : course.aims[0].pictures)
            out.insert(picture.measure);
        return out;
    };
    CHECK(measures(adult).contains(unit::Measure::carry));
    CHECK_FALSE(measures(junior).contains(unit::Measure::carry));
    CHECK_FALSE(measures(junior).contains(unit::Measure::club_speed));
}

TEST_CASE("the first page says what to exchange, in both languages and on both papers") {
    report::Exchange news;
    news.swaps.push_back({report::PageRange{3, 4}, report::PageRange{3, 6}, 2});
    news.renumbered.push_back({{25, 26}, {33, 34}});
    for (const char* language : {"en-GB", "de"})
        for (const auto paper : {theme::Paper::a4, theme::Paper::letter}) {
            CAPTURE(language);
            Student student(unit::Hand::right, false, language, paper);
            student.add(0, 9, 3);
            student.add(14, 8, 2, 3.4);
            const Bound b = bound(student, news);
            for (const auto& fault : b.flowed.faults)
                FAIL_CHECK("page " << fault.page << ": " << fault.block << " " << fault.what);
            const std::string first = text_of(b.flowed.book.sheets[0]);
            for (const auto& line : report::exchange_words(student.words, news))
                CHECK(first.find(line.substr(0, 12)) != std::string::npos);
        }
    CHECK(report::exchange_words(Student().words, news)[0] == "Remove 3\u20134, put in 3\u20136.");
}
