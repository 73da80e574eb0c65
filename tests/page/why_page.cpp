#include "../report/table.hpp"
#include "desk.hpp"

#include "page/why_inputs.hpp"
#include "page/why_page.hpp"
#include "page/why_words.hpp"

namespace {

ball::Setting setting() {
    ball::Setting s;
    s.head = table::seven_iron();
    s.loft = {26}, s.attack = {-4};
    return s;
}

std::vector<ball::Shot> shots_like(double face, double loft) {
    std::vector<ball::Shot> out;
    for (int i = -4; i <= 5; ++i) {
        const ball::Delivery d{{face + 0.1 * i}, {-3}, {-4}, {loft}, {34 + 0.02 * i}};
        const auto launch = ball::strike(d, table::seven_iron());
        const auto flight = ball::fly(launch, {});
        out.push_back({d.face, d.path, d.loft, d.attack, d.club_speed, launch.speed, launch.start,
                       flight.curve, flight.carry, flight.offline});
    }
    return out;
}

ball::Credit credit() { return *ball::credit(shots_like(12, 30), shots_like(0, 26), setting()); }

page::BallBlock block(double face, double loft, const ball::Air& air) {
    page::BallBlock b;
    b.shots = 10;
    const ball::Delivery d{{face}, {-3}, {-4}, {loft}, {34}};
    const auto launch = ball::strike(d, table::seven_iron());
    b.middle.face = d.face, b.middle.path = d.path, b.middle.start = launch.start;
    b.start = launch.start;
    b.loft = {ball::LoftOrigin::measured, {d.loft, d.loft, d.loft}};
    b.club_loft = d.loft + unit::Degrees{6};
    b.delivery = d;
    page::DrawnFlight flight{ball::fly(launch, air), {}, true};
    flight.line = flight.model.places;
    b.typical = flight;
    b.flights.assign(6, flight);
    return b;
}

/// A full page: scatter, ladder, flights, two credits, what is left.
struct Full {
    desk::Desk desk;
    shots::Table shots = table::of({12, -3, 30, 34, 10}, {0, -3, 26, 34, 10});

    explicit Full(theme::Paper paper, unit::Hand hand = unit::Hand::right)
        : desk(paper, hand) {
        desk.lesson.why = "With the handle in the palm the hand cannot turn the face back in time. "
                          "From the fingers it can, and nothing else has to change.";
    }
    page::Story story() {
        page::Story out = desk.story();
        out.table = &shots;
        for (const auto m : {unit::Measure::face, unit::Measure::path}) {
            page::Evidence e{.measure = m};
            for (const auto& shot : shots.shots)
                (shot.block == shots::Block::before ? e.before : e.after).push_back(shot);
            out.evidence.push_back(std::move(e));
        }
        page::BallStory ball;
        ball.club = {"seven-iron", {32}, {62}};
        for (const auto& club : table::clubs()) {
            if (club.key == "seven-iron") ball.in_hand = ball.bag.size();
            ball.bag.push_back({club.key, club.loft, club.lie});
            ball.names.push_back({club.key, true});
        }
        ball.usual_bag = true;
        ball.lean = unit::Degrees{6};
        ball.before = block(12, 30, ball.air), ball.after = block(0, 26, ball.air);
        for (auto* b : {&ball.before, &ball.after})
            b->plays_like = ball::plays_like(*b->club_loft, ball.bag);
        ball.credit = credit();
        ball.face_share = ball.credit->face_share;
        ball.share_source = page::ShareSource::fitted;
        ball.curve_per_degree = 4;
        ball.next = ball::what_next(*ball.after.delivery, table::seven_iron(), ball.air);
        out.ball = std::move(ball);
        return out;
    }
};

std::string all_words(const page::Section& section) {
    std::string out;
    for (const auto& b : section.blocks)
        for (const auto& piece : b.pieces)
            for (const auto& text : desk::texts(piece.drawing))
                out += text + " ";
    return out;
}

std::size_t sheets(const page::Flowed& flowed) {
    std::size_t used = 0;
    for (const auto& sheet : flowed.book.sheets)
        used += sheet.marks.size() > 40;
    return used;
}

} // namespace

TEST_CASE("why the ball did that stands on one side of A4 and of Letter, for both hands") {
    for (const auto paper : {desk::Paper::a4, desk::Paper::letter})
        for (const auto hand : {desk::Hand::right, desk::Hand::left}) {
            Full full(paper, hand);
            const auto story = full.story();
            const auto section = page::why_page(full.desk.easel(), story);
            CHECK(page::total_height(section.blocks) <= full.desk.theme.live(true).height);
            CHECK(sheets(desk::flowed(full.desk, section)) == 1);
        }
}

TEST_CASE("the coach's reason comes before every figure") {
    Full full(desk::Paper::a4);
    const auto section = page::why_page(full.desk.easel(), full.story());
    REQUIRE(section.blocks.size() > 2);
    CHECK(desk::says(section.blocks[1].pieces[0].drawing, "With the handle in the palm"));
}

TEST_CASE("the page names the face's share, its source and whose suggestion it is") {
    Full full(desk::Paper::a4);
    const auto words = all_words(page::why_page(full.desk.easel(), full.story()));
    CHECK(words.find("61 to 83") != std::string::npos);
    CHECK(words.find("Wood, Henrikson & Broadie 2018") != std::string::npos);
    CHECK(words.find("The program’s suggestion") != std::string::npos);
    CHECK(words.find("measured") != std::string::npos);
    full.desk.lesson.suggestion = false; // the coach's word wins
    CHECK(all_words(page::why_page(full.desk.easel(), full.story())).find("suggestion") ==
          std::string::npos);
}

TEST_CASE("most of the change in start direction came with the face") {
    const auto w = sentences::speaker("en-GB");
    auto c = credit();
    const auto said = page::credit_sentence(c, ball::Outcome::start, w);
    CHECK(said.find("the face") != std::string::npos);
    CHECK(said.find("start direction") != std::string::npos);
    c.outcomes[0].fits = false;
    CHECK(page::credit_sentence(c, ball::Outcome::start, w).empty());
}

TEST_CASE("few shots share out nothing and suggest nothing") {
    Full full(desk::Paper::a4);
    auto story = full.story();
    story.ball->after.shots = 4;
    CHECK(page::credited(story).empty());
    CHECK(page::next_sentence(*story.ball, full.desk.words).empty());
    const auto words = all_words(page::why_page(full.desk.easel(), story));
    CHECK(words.find("Too few shots") != std::string::npos);
}

TEST_CASE("an estimate says so, with its range") {
    Full full(desk::Paper::a4);
    auto story = full.story();
    story.ball->before.start_estimated = true;
    story.ball->before.start_range = ball::Estimate{{7}, {6}, {9}};
    std::string notes;
    for (const auto& note : page::origin_notes(full.desk.easel(), story))
        notes += note + " ";
    CHECK(notes.find("estimated from face and path") != std::string::npos);
    CHECK(notes.find("6.0°") != std::string::npos);
    CHECK(notes.find("9.0°") != std::string::npos);
}

TEST_CASE("without the club's loft there is no ladder, and the flights stand beside the scatter") {
    Full full(desk::Paper::a4);
    auto story = full.story();
    story.ball->lean.reset();
    CHECK_FALSE(page::ladder_input(full.desk.easel(), story));
    const auto section = page::why_page(full.desk.easel(), story);
    CHECK(sheets(desk::flowed(full.desk, section)) == 1);
    CHECK(all_words(section).find("seen from above") != std::string::npos);
}

TEST_CASE("a lesson without shots gets the trade's words and an example that says it is one") {
    for (const auto hand : {desk::Hand::right, desk::Hand::left}) {
        desk::Desk d(desk::Paper::letter, hand);
        d.lesson.why = "The last fingers are the hinge.";
        const auto section = page::why_page(d.easel(), d.story());
        const auto words = all_words(section);
        CHECK(words.find("An example, not measured") != std::string::npos);
        CHECK(words.find("nothing on it was measured") != std::string::npos);
        // an open face looks right for a right-hander, left for a left-hander
        CHECK(words.find(hand == desk::Hand::right ? "9.0° right (open)" : "9.0° left (open)") !=
              std::string::npos);
        CHECK(sheets(desk::flowed(d, section)) == 1);
    }
}
