// The drill page and the two pages around it, as printed.
#include "desk.hpp"

#include "figure/drill_picture.hpp"
#include "page/drill_facts.hpp"
#include "page/drill_plan.hpp"
#include "page/expect_page.hpp"
#include "page/log_grid.hpp"
#include "page/log_page.hpp"
#include "page/next_page.hpp"

#include <set>

using namespace desk;
using namespace std::chrono;

TEST_CASE("a drill of the longest allowed texts fits one side of A4 and of Letter") {
    for (const auto paper : {Paper::a4, Paper::letter})
        for (const auto hand : {Hand::right, Hand::left})
            for (const auto age : {Age::adult, Age::junior}) {
                Desk desk(paper, hand, age);
                desk.choose(longest_drill(), long_text(160));
                desk.choose(longest_drill());
                desk.drills.back().proposed = true;
                desk.lesson.plan = {long_text(30), long_text(30), long_text(30), {}};
                for (const std::size_t i : {0u, 1u}) {
                    const auto section = page::drill_page(desk.easel(), desk.story(), i);
                    CHECK(section.right_hand);
                    REQUIRE(section.blocks.size() == 1);
                    CHECK(side(section).size.height <= desk.theme.live(true).height + 0.01);
                    const auto out = flowed(desk, section);
                    CHECK(out.book.sheets.size() == 2); // its own side and the blank back
                    CHECK(out.book.sheets[1].marks.size() < 12);
                    CHECK(says(side(section), "Stop on pain"));
                }
            }
}

TEST_CASE("a usual drill page loses nothing") {
    for (const auto paper : {Paper::a4, Paper::letter}) {
        Desk desk(paper, Hand::right);
        desk.choose(usual_drill(), "Your handle sat in the palm.");
        const auto section = page::drill_page(desk.easel(), desk.story(), 0);
        for (const char* part : {"Your handle sat in the palm.",
                                 "Lay the handle down.",
                                 "Lid on the jar.",
                                 "Is the pad on top?",
                                 "10 times · 5 minutes each time",
                                 "A pencil’s width",
                                 "8 of 10 on 3 days",
                                 "Slipped? Start again.",
                                 "Stop on pain",
                                 "A Place",
                                 "When",
                                 "I will do drill",
                                 "Right first time",
                                 "Called it right",
                                 "How strange?",
                                 "Cold test on 28 September 2026",
                                 "before any drill",
                                 "Bring this page on",
                                 "Student",
                                 "Coach"})
            CHECK(says(side(section), part));
        flowed(desk, section);
    }
}

TEST_CASE("the log has fourteen days and cells of nine millimetres or more") {
    for (const auto paper : {Paper::a4, Paper::letter})
        for (const bool longest : {false, true}) {
            Desk desk(paper, Hand::right);
            desk.choose(longest ? longest_drill() : usual_drill());
            const auto section = page::drill_page(desk.easel(), desk.story(), 0);
            const auto& marks = side(section).marks;
            std::size_t from = 0, to = 0;
            for (std::size_t i = 0; i < marks.size(); ++i)
                if (const auto* tag = std::get_if<ink::Tag>(&marks[i]); tag && tag->role == "Table")
                    from = i;
            ink::Drawing grid;
            to = from + 1;
            for (std::size_t i = from; i < marks.size(); ++i)
                grid.add(marks[i]);
            const auto found = cells(grid);
            CHECK(found.width >= 9 * figure::mm - 1e-6);
            CHECK(found.height >= 9 * figure::mm - 1e-6);
            CHECK(found.columns == 14);
            CHECK(found.rows >= 6);
            CHECK(to > from);
            const auto all = texts(side(section));
            for (int day = 7; day <= 14; ++day)
                CHECK(std::ranges::count(all, std::to_string(day)) == 1);
            CHECK(std::ranges::count(all, "/10") == 14);
            CHECK(std::ranges::count(all, "/5") == 14);
        }
}

TEST_CASE("large print goes on to the back, with both weeks of the log there") {
    for (const auto paper : {Paper::a4, Paper::letter}) {
        Desk desk(paper, Hand::right, Age::adult, true);
        desk.choose(usual_drill());
        const auto section = page::drill_page(desk.easel(), desk.story(), 0);
        REQUIRE(section.blocks.size() == 2);
        CHECK(flowed(desk, section).book.sheets.size() == 2);
        CHECK(says(side(section, 0), "Lay the handle down."));
        for (int day = 1; day <= 14; ++day)
            CHECK(std::ranges::count(texts(side(section, 1)), std::to_string(day)) >= 1);
    }
}

TEST_CASE("a junior's page has circles to colour and no numbers to reach") {
    Desk desk(Paper::a4, Hand::right, Age::junior);
    desk.choose(usual_drill());
    const auto section = page::drill_page(desk.easel(), desk.story(), 0);
    const auto& page = side(section);
    CHECK_FALSE(says(page, "8 of 10"));
    CHECK_FALSE(says(page, "minutes"));
    CHECK_FALSE(says(page, "/10"));
    CHECK_FALSE(says(page, "How strange"));
    CHECK(says(page, "Colour one circle"));
    // what is left are the drill's and the steps' numbers, the dose, ten tries and a date
    const std::set<std::string> allowed{"1", "2", "3", "10 times, on three days a week.", "of 10"};
    for (const auto& text : texts(page))
        if (text.find_first_of("0123456789") != std::string::npos &&
            text.find("2026") == std::string::npos && text.find("drill 1") == std::string::npos &&
            !text.starts_with("10 tries.") && text.find("1.") == std::string::npos) {
            INFO(text);
            CHECK(allowed.contains(text));
        }
    const auto path = page::log_path(desk.easel(), 480, 150);
    std::size_t circles = 0;
    for (const auto& mark : path.marks) {
        if (const auto* fill = std::get_if<ink::Fill>(&mark)) circles += fill->colour == ink::white;
        CHECK_FALSE(std::holds_alternative<ink::Words>(mark));
    }
    CHECK(circles == 10);
}

TEST_CASE("the plan shows typed words, and rules to write on for the rest") {
    Desk desk(Paper::a4, Hand::right);
    const auto rules = [](const ink::Drawing& drawing) {
        return std::ranges::count_if(drawing.marks, [](const ink::Mark& mark) {
            return std::holds_alternative<ink::Stroke>(mark);
        });
    };
    CHECK(rules(page::drill_plan(desk.easel(), {}, "1", 400)) == 4);
    record::Plan plan{"the kettle is on", "at home", {}, "do five"};
    const auto some = page::drill_plan(desk.easel(), plan, "2", 400);
    CHECK(rules(some) == 1);
    CHECK(says(some, "When the kettle is on, at home, I will do drill 2."));
    plan.obstacle = "the train is late";
    CHECK(rules(page::drill_plan(desk.easel(), plan, "2", 400)) == 0);
}

TEST_CASE("rules to write on never run past the width and are never short") {
    Desk desk(Paper::a4, Hand::right);
    for (const double width : {220.0, 300.0, 400.0, 480.0}) {
        const auto plan = page::drill_plan(desk.easel(), {}, "1", width);
        for (const auto& mark : plan.marks)
            if (const auto* stroke = std::get_if<ink::Stroke>(&mark)) {
                CHECK(stroke->path.bounds().right() <= width + 0.01);
                CHECK(stroke->path.bounds().width >= 90);
            }
    }
}

TEST_CASE("the coach's own reason goes before the program's") {
    Desk desk(Paper::a4, Hand::right);
    desk.choose(usual_drill());
    auto& chosen = desk.drills.front();
    CHECK(page::drill_reason(desk.easel(), desk.story(), chosen).text ==
          "It puts the handle under the pad.");
    chosen.proposed = true;
    chosen.reason_key = "reason.hold";
    const auto program = page::drill_reason(desk.easel(), desk.story(), chosen);
    CHECK_FALSE(program.coach);
    CHECK(program.text.find("Suggested by the program") != std::string::npos);
    chosen.wish.why = "Because I say so.";
    const auto coach = page::drill_reason(desk.easel(), desk.story(), chosen);
    CHECK(coach.coach);
    CHECK(coach.text == "Because I say so.");
}

TEST_CASE("the pages around the drills are whole with little and with much to say") {
    for (const auto paper : {Paper::a4, Paper::letter})
        for (const bool much : {false, true})
            for (const bool large : {false, true}) {
                Desk desk(paper, Hand::left, Age::adult, large);
                desk.choose(much ? longest_drill() : usual_drill());
                if (much) {
                    desk.choose(longest_drill());
                    desk.lesson.comment = long_text(420);
                    for (int i = 0; i < 6; ++i) {
                        desk.lesson.history.push_back({2026y / January / 12, long_text(90)});
                        desk.lesson.notes.push_back(long_text(90));
                    }
                    record::Returned back;
                    back.days_done = 9, back.right = record::Tally{7, 10};
                    back.planned = long_text(80);
                    desk.lesson.returned = {back, back};
                }
                const double foot = desk.theme.live(true).bottom();
                for (const auto& section : {page::expect_page(desk.easel(), desk.story()),
                                            page::next_page(desk.easel(), desk.story())}) {
                    INFO(section.name << (much ? " much" : " little"));
                    const auto out = flowed(desk, section);
                    if (!large && !much) CHECK(out.book.sheets[1].label == "2");
                    // lines to write on reach the foot; without them there is no room for three
                    double lowest = 0, words = 0;
                    for (const auto& sheet : out.book.sheets)
                        for (const auto& mark : sheet.marks)
                            if (const auto* stroke = std::get_if<ink::Stroke>(&mark))
                                lowest = std::max(lowest, stroke->path.bounds().bottom());
                            else if (const auto* text = std::get_if<ink::Words>(&mark);
                                     text && text->at.y < foot)
                                words = std::max(words, text->at.y);
                    CHECK((lowest > foot - 9 * figure::mm - 2 ||
                           words > foot - 27 * figure::mm - 16 - 34));
                    CHECK(lowest <= foot + 1);
                }
            }
}

TEST_CASE("every caution of the list and every repair line stand on the page after the drill") {
    Desk desk(Paper::a4, Hand::right);
    desk.choose(usual_drill());
    std::string all;
    for (const auto& block : page::expect_page(desk.easel(), desk.story()).blocks)
        for (const auto& piece : block.pieces)
            for (const auto& text : texts(piece.drawing))
                all += text + " ";
    const auto squeezed = [](std::string text) {
        std::erase(text, ' ');
        return text;
    };
    const std::string page = squeezed(all);
    for (const auto key : sentences::catalogue("en-GB").keys()) {
        if (key.starts_with("caution.junior")) {
            // no line for juniors stands on an adult's sheet
            CHECK(page.find(squeezed(desk.words.say(key))) == std::string::npos);
            continue;
        }
        if (!key.starts_with("caution.") || key == "caution.speed.junior" ||
            key == "caution.stop.head" || key.starts_with("caution.measured"))
            continue;
        INFO(key);
        CHECK(page.find(squeezed(desk.words.say(key))) != std::string::npos);
    }
    CHECK(page.find("Slipped?Startagain.") != std::string::npos);
}

TEST_CASE("every picture that a drill of the library names is there") {
    for (const auto& drill : stock::drills_of("en"))
        if (!drill.picture.empty()) {
            INFO(drill.id << " " << drill.picture);
            CHECK(figure::has_drill_picture(drill.picture));
        }
}

TEST_CASE("on both papers a drill of the library keeps its picture and its repair line") {
    for (const auto paper : {Paper::a4, Paper::letter})
        for (const auto& drill : stock::drills_of("en")) {
            INFO(drill.id << (paper == Paper::a4 ? " A4" : " Letter"));
            Desk desk(paper, Hand::right);
            desk.choose(drill, "Your typical face was 4.6° right of target (open).");
            const auto section = page::drill_page(desk.easel(), desk.story(), 0);
            flowed(desk, section);
            std::size_t figures = 0;
            for (const auto& mark : side(section).marks)
                if (const auto* tag = std::get_if<ink::Tag>(&mark))
                    figures += tag->opens && tag->role == "Figure";
            CHECK(figures == (drill.picture.empty() ? 0 : 1));
            CHECK(says(side(section), desk.words.say("drill.repair")));
            CHECK(says(side(section), desk.words.say("drill.good-enough")));
        }
}

TEST_CASE("the log asks for what the drill counts, and the cold test has as many boxes") {
    using Of = drills::Count::Of;
    struct Row {
        drills::Count count;
        const char* label;
        int of, boxes;
    };
    const Row table[] = {{{5, 5, 1, 0, Of::right}, "How many right", 5, 5},
                         {{8, 6, 3, 8, Of::right}, "How many right", 8, 8},
                         {{10, 8, 3, 0, Of::right_first}, "Right first time", 10, 10},
                         {{15, 12, 1, 0, Of::right}, "How many right", 15, 10},
                         {{10, 7, 1, 0, Of::called}, "Called it right", 10, 10}};
    for (const auto& row : table) {
        Desk desk(Paper::a4, Hand::right);
        desk.choose(usual_drill());
        desk.drills.front().drill.count = row.count;
        const auto section = page::drill_page(desk.easel(), desk.story(), 0);
        const auto all = texts(side(section));
        INFO(row.of << " " << row.label);
        CHECK(says(side(section), row.label));
        const auto marks = std::ranges::count(all, "/" + std::to_string(row.of));
        CHECK(marks == (row.count.calls > 0 ? 28 : 14));
        CHECK(says(side(section), "of " + std::to_string(row.boxes)));
        CHECK(page::cold_boxes(page::log_count(desk.drills.front())) == row.boxes);
        if (row.count.calls == 0 && row.count.of != Of::called)
            CHECK_FALSE(says(side(section), "Called it right"));
        flowed(desk, section);
    }
}

TEST_CASE("a dose of the coach's own leaves the denominators open unless the tries are told") {
    Desk desk(Paper::a4, Hand::right);
    desk.choose(usual_drill());
    desk.drills.front().wish.dose = "8 slow ones, five evenings";
    auto all = texts(side(page::drill_page(desk.easel(), desk.story(), 0)));
    CHECK(std::ranges::count(all, "/") == 28);
    CHECK(std::ranges::count(all, "/10") == 0);
    desk.drills.front().wish.tries = 8;
    all = texts(side(page::drill_page(desk.easel(), desk.story(), 0)));
    CHECK(std::ranges::count(all, "/8") == 14);
}

TEST_CASE("a drill that nobody counts has no row for it") {
    Desk desk(Paper::a4, Hand::right);
    desk.choose(usual_drill());
    desk.drills.front().drill.count = {};
    const auto section = page::drill_page(desk.easel(), desk.story(), 0);
    CHECK_FALSE(says(side(section), "How many right"));
    CHECK_FALSE(says(side(section), "Right first time"));
    CHECK(says(side(section), "How strange?"));
}

TEST_CASE("the second log goes on with day 15 for every drill, when it is asked for") {
    Desk desk(Paper::letter, Hand::right);
    desk.choose(usual_drill());
    desk.choose(usual_drill());
    CHECK(page::log_page(desk.easel(), desk.story()).blocks.empty());
    desk.lesson.log_days = 28;
    const auto section = page::log_page(desk.easel(), desk.story());
    const auto out = flowed(desk, section);
    std::vector<std::string> all;
    for (const auto& mark : out.book.sheets.front().marks)
        if (const auto* words = std::get_if<ink::Words>(&mark)) all.push_back(words->text);
    for (int day = 15; day <= 28; ++day)
        CHECK(std::ranges::count(all, std::to_string(day)) == 2);
    CHECK(std::ranges::count(all, "14") == 0);
}
