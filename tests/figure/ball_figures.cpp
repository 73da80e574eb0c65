#include "figure/callout.hpp"
#include "figure/credit_bars.hpp"
#include "figure/flight_side.hpp"
#include "figure/impact_above.hpp"
#include "figure/loft_ladder.hpp"
#include "figure/progress.hpp"
#include "text/pango_typesetter.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>

using namespace figure;
using std::chrono::month;
using std::chrono::year;

namespace {

const words::Catalogue& catalogue() {
    static std::vector<std::unique_ptr<diag::Source>> sources;
    static const words::Catalogue read = [] {
        std::vector<std::filesystem::path> files;
        const std::string folder = std::string(SOURCE_DIR) + "/templates/words/en-GB";
        for (const auto& entry : std::filesystem::directory_iterator(folder))
            files.push_back(entry.path());
        std::ranges::sort(files);
        words::Catalogue all("en-GB");
        diag::Findings findings;
        for (const auto& file : files) {
            std::ifstream in(file);
            std::stringstream text;
            text << in.rdbuf();
            sources.push_back(std::make_unique<diag::Source>(file.filename(), text.str()));
            all.add(*sources.back(), findings);
        }
        return all;
    }();
    return read;
}

/// An easel with real letters for one student.
struct Studio {
    text::PangoTypesetter type;
    theme::Theme theme;
    words::Speaker words;
    Easel easel;
    explicit Studio(unit::Hand hand = unit::Hand::right, bool large = false)
        : theme(theme::house_style(theme::Paper::a4, large))
        , words(catalogue(), {hand, false, {unit::Distance::yards, unit::Speed::miles_per_hour}})
        , easel{type, theme, words} {}
};

std::vector<ink::Words> labels(const ink::Drawing& d) {
    std::vector<ink::Words> out;
    for (const ink::Mark& mark : d.marks)
        if (const auto* w = std::get_if<ink::Words>(&mark)) out.push_back(*w);
    return out;
}

bool says(const ink::Drawing& d, std::string_view part) {
    std::string all;
    for (const auto& w : labels(d))
        all += w.text + ' ';
    return all.find(part) != std::string::npos;
}

/// Every place that ink goes to, for comparing drawings; letters and `skip` points of head left
/// out.
std::vector<ink::Point> places(const ink::Drawing& d, double skip = 0) {
    std::vector<ink::Point> out;
    const auto take = [&](const ink::Path& path) {
        for (const auto& s : path.segments())
            if (s.verb != ink::Segment::Verb::close && path.bounds().y >= skip) out.push_back(s.to);
    };
    for (const ink::Mark& mark : d.marks) {
        if (const auto* s = std::get_if<ink::Stroke>(&mark)) take(s->path);
        if (const auto* f = std::get_if<ink::Fill>(&mark)) take(f->path);
    }
    return out;
}

void check_layout(const ink::Drawing& d) {
    REQUIRE(d.size.width > 0);
    REQUIRE(d.size.height > 0);
    const ink::Rect paper{0, 0, d.size.width, d.size.height};
    const auto all = labels(d);
    for (std::size_t i = 0; i < all.size(); ++i) {
        INFO(all[i].text);
        CHECK(all[i].style.size >= 8.5);
        CHECK(paper.contains(all[i].box(), 1.5)); // the face's ascent is taller than its letters
        for (std::size_t k = i + 1; k < all.size(); ++k) {
            INFO(all[k].text);
            CHECK_FALSE(all[i].box().overlaps(all[k].box(), 1.0));
        }
    }
    const ink::Rect slack = paper.inset(-0.6);
    CHECK(std::ranges::all_of(places(d), [&](const ink::Point& p) {
        return std::isfinite(p.x + p.y) && slack.contains({p.x, p.y, 0, 0});
    }));
}

/// No label stands on a data line; leaders and rules are thinner.
void check_data_is_clear(const ink::Drawing& d) {
    for (const ink::Mark& mark : d.marks) {
        const auto* s = std::get_if<ink::Stroke>(&mark);
        if (!s || s->width < 0.8 || s->colour == ink::white) continue;
        ink::Point last;
        const auto all = labels(d);
        for (const auto& seg : s->path.segments()) {
            if (seg.verb == ink::Segment::Verb::line)
                for (int k = 0; k <= 20; ++k) {
                    const ink::Point p = last + (seg.to - last) * (k / 20.0);
                    for (const auto& w : all) {
                        const ink::Rect letters{w.at.x, w.at.y - w.style.size * 0.7, w.width,
                                                w.style.size * 0.7};
                        if (letters.overlaps({p.x, p.y, 0, 0})) FAIL_CHECK(w.text);
                    }
                }
            last = seg.to;
        }
    }
}

FlightLine flight(double carry, double start, double curve, double apex) {
    FlightLine line;
    const double a = start / unit::degrees_in_a_radian;
    for (int i = 0; i <= 40; ++i) {
        const double q = i / 40.0, x = carry * q, bend = curve * q * q;
        line.push_back({x * std::cos(a) - bend * std::sin(a), x * std::sin(a) + bend * std::cos(a),
                        4 * apex * q * (1 - q)});
    }
    return line;
}

/// A slice before and less of it after; `side` -1 mirrors it for a left-hander.
FlightInput flights(double side, int shots = 12) {
    FlightInput input{{{Symbol::before, "Before", {}, flight(116, side * 7, side * 13, 27)},
                       {Symbol::after, "After", {}, flight(129, side * 1.4, side * 4.5, 25), true}},
                      "Flights"};
    for (int i = 0; i < shots; ++i) {
        const double k = std::sin(i * 2.4), m = std::cos(i * 1.7);
        input.rows[0].shots.push_back(
            flight(116 + 8 * k, side * (7 + 3 * m), side * (13 + 5 * k), 27));
        input.rows[1].shots.push_back(
            flight(129 + 7 * m, side * (1.4 + 2 * k), side * (4.5 + 3 * m), 25));
    }
    return input;
}

ImpactInput impact(double side) {
    return {{{Symbol::before, "Before", side * 11.2, side * -2.1, side * 7.0},
             {Symbol::after, "After", side * 2.5, side * -1.0, side * 1.4, false, false, true}},
            "Impact"};
}

LadderInput ladder() {
    return {{{"5 iron", 25.5},
             {"6 iron", 28.5},
             {"7 iron", 32, true},
             {"8 iron", 36.5},
             {"9 iron", 40.5},
             {"pitching wedge", 45},
             {"sand wedge", 55}},
            {{Symbol::before, "Before", 38.2, LoftOrigin::face, {"8 iron", "9 iron"}},
             {Symbol::after, "After", 33.1, LoftOrigin::measured, {"7 iron"}}},
            false,
            "Ladder"};
}

CreditInput credit(double side) {
    return {unit::Measure::start,
            {{Factor::face, side * -6.0, std::pair{side * -6 - 1.1, side * -6 + 1.1}},
             {Factor::path, side * 0.4, std::pair{-0.3, 0.8}},
             {Factor::loft, side * -0.1, {}},
             {Factor::speed, 0, {}},
             {Factor::strike, 0, {}}},
            side * 0.1,
            side * -5.6,
            true,
            "Credit"};
}

ProgressInput story(int tests) {
    const words::Date first{year{2026}, month{3}, std::chrono::day{12}};
    ProgressMeasure face{unit::Measure::face, {}, std::pair{-2.0, 2.0}, {}};
    face.blocks.push_back({first, Symbol::before, 11.2, 9.6, 12.8});
    face.blocks.push_back({first, Symbol::after, 2.5, 0.9, 4.1});
    for (int i = 0; i < tests; ++i) {
        const auto day = std::chrono::sys_days(first) + std::chrono::days(7 * (i + 1) * (i + 1));
        face.blocks.push_back({day, Symbol::cold, 6.0 - i, 4.5 - i, 7.0 - i});
    }
    ProgressMeasure carry{unit::Measure::carry, {}, {}, {}};
    for (const auto& b : face.blocks)
        carry.blocks.push_back({b.date, b.symbol, 130 - b.median, 125 - b.median, 133 - b.median});
    return {{face, carry, face, carry, face}, "Progress"};
}

} // namespace

TEST_CASE("labels stay on the paper, apart and off the data, for both hands and large print") {
    for (const auto hand : {unit::Hand::right, unit::Hand::left})
        for (const bool large : {false, true}) {
            const Studio s(hand, large);
            const double side = hand == unit::Hand::right ? 1 : -1;
            for (const double width : {80 * mm, 120 * mm, 165 * mm}) {
                INFO("width " << width / mm << " mm, large " << large << ", side " << side);
                for (const auto& d : {impact_above(s.easel, impact(side), width),
                                      flight_side(s.easel, flights(side), width, 45 * mm)}) {
                    check_layout(d);
                    check_data_is_clear(d);
                }
                check_layout(loft_ladder(s.easel, ladder(), width, 65 * mm));
                check_layout(flight_above(s.easel, flights(side), width, 100 * mm));
                check_layout(flight_above(s.easel, flights(side), width, 60 * mm));
                check_layout(credit_bars(s.easel, credit(side), width));
                check_layout(progress(s.easel, story(4), width, 90 * mm));
            }
        }
}

TEST_CASE("a left-hander's mirrored shots give mirrored pictures") {
    const Studio right(unit::Hand::right), left(unit::Hand::left);
    const auto mirrored = [](const ink::Drawing& a, const ink::Drawing& b, double skip) {
        REQUIRE(a.size == b.size);
        const auto pa = places(a, skip), pb = places(b, skip);
        REQUIRE(pa.size() == pb.size());
        REQUIRE(pa.size() > 20);
        std::size_t alone = 0;
        for (const auto& p : pa)
            if (std::ranges::none_of(pb, [&](const ink::Point& q) {
                    return std::hypot(a.size.width - p.x - q.x, p.y - q.y) < 0.02;
                }))
                ++alone;
        CHECK(alone == 0);
    };
    auto one = impact(1), other = impact(-1);
    one.states.resize(1), other.states.resize(1);
    mirrored(impact_above(right.easel, one, 80 * mm), impact_above(left.easel, other, 80 * mm), 15);
    mirrored(flight_above(right.easel, flights(1), 80 * mm, 110 * mm),
             flight_above(left.easel, flights(-1), 80 * mm, 110 * mm), 0);
}

TEST_CASE("the same angle is open for one hand and closed for the other") {
    const Studio right(unit::Hand::right), left(unit::Hand::left);
    CHECK(says(impact_above(right.easel, impact(1), 165 * mm), "11.2° right (open)"));
    CHECK(says(impact_above(left.easel, impact(1), 165 * mm), "11.2° right (closed)"));
    CHECK(says(impact_above(right.easel, impact(1), 165 * mm), "2.1° left (out-to-in)"));
    CHECK(says(impact_above(left.easel, impact(1), 165 * mm), "2.1° left (in-to-out)"));
}

TEST_CASE("angles at impact are drawn so many times as wide as the picture says") {
    const Studio s;
    for (const auto& [face, times] :
         {std::pair{25.0, 1}, {-14.0, 2}, {11.2, 3}, {-3.0, 3}, {0.4, 3}}) {
        const ImpactInput input{{{Symbol::before, "Before", face, {}, {}}}, ""};
        bool found = false;
        const auto drawing = impact_above(s.easel, input, 80 * mm);
        CHECK(says(drawing, std::to_string(times) + " times as wide") == (times > 1));
        for (const ink::Mark& mark : drawing.marks) {
            const auto* stroke = std::get_if<ink::Stroke>(&mark);
            if (!stroke || stroke->path.segments().size() != 2 || stroke->width < 0.8) continue;
            const ink::Point d = stroke->path.segments()[1].to - stroke->path.segments()[0].to;
            if (std::hypot(d.x, d.y) < 60) continue;
            found = found || std::abs(std::atan2(d.x, -d.y) * unit::degrees_in_a_radian -
                                      times * face) < 1e-6;
        }
        CHECK(found);
    }
}

TEST_CASE("the ladder shows the rungs near the action and says where a loft comes from") {
    const Studio s;
    const auto d = loft_ladder(s.easel, ladder(), 90 * mm, 70 * mm);
    CHECK_FALSE(says(d, "sand wedge"));
    CHECK_FALSE(says(d, "5 iron"));
    CHECK(says(d, "in hand: 7 iron 32°"));
    CHECK(says(d, "9 iron 40.5°"));
    CHECK(says(d, "estimated from the face"));
    CHECK(says(d, "measured"));
    CHECK_FALSE(says(d, "worked out"));
    auto leaned = ladder();
    leaned.marks.back().origin = LoftOrigin::leaned;
    CHECK(says(loft_ladder(s.easel, leaned, 90 * mm, 70 * mm), "worked out"));
    CHECK(says(d, "played like your 7 iron"));
}

TEST_CASE("every shot has a landing spot, and the scale is told") {
    const Studio s;
    const auto discs = [](const ink::Drawing& d) {
        return std::ranges::count_if(d.marks, [](const ink::Mark& mark) {
            const auto* f = std::get_if<ink::Fill>(&mark);
            return f && f->colour == ink::black && f->path.segments().size() > 5;
        });
    };
    const auto d = flight_above(s.easel, flights(1, 12), 165 * mm, 70 * mm);
    CHECK(discs(d) == 13); // the after shots and their middle one
    CHECK(says(d, "at the same scale"));
    FlightInput straight{{{Symbol::after, "After", {}, flight(150, 0, 0, 28)}}, ""};
    CHECK(says(flight_above(s.easel, straight, 80 * mm, 60 * mm), "as wide"));
}

TEST_CASE("a share to the left is drawn left of nought, and a model that fails says so") {
    const Studio s;
    auto input = credit(1);
    const auto d = credit_bars(s.easel, input, 80 * mm);
    CHECK(says(d, "6.0° left"));
    CHECK_FALSE(says(d, "does not fit"));
    const auto zero = [&] { // the upright line
        for (const ink::Mark& mark : d.marks)
            if (const auto* k = std::get_if<ink::Stroke>(&mark))
                if (const auto b = k->path.bounds(); b.width == 0 && b.height > 50) return b.x;
        return -1.0;
    }();
    REQUIRE(zero > 0);
    bool left = false;
    for (const ink::Mark& mark : d.marks)
        if (const auto* f = std::get_if<ink::Fill>(&mark))
            if (const auto b = f->path.bounds(); b.width > 30)
                left = std::abs(b.right() - zero) < 1e-6;
    CHECK(left);
    input.fits = false;
    CHECK(says(credit_bars(s.easel, input, 165 * mm), "does not fit"));
}

TEST_CASE("fewer than three cold tests are too early") {
    const Studio s;
    CHECK(says(progress(s.easel, story(2), 165 * mm, 90 * mm), "too early"));
    CHECK_FALSE(says(progress(s.easel, story(3), 165 * mm, 90 * mm), "too early"));
    CHECK(says(progress(s.easel, story(3), 165 * mm, 90 * mm), "12 March 2026"));
}

TEST_CASE("extreme shots do not leave the paper") {
    const Studio s;
    for (const double face : {40.0, -40.0, 89.0, 0.0}) {
        ImpactInput wild{{{Symbol::before, "Before", face, -face, face}}, ""};
        check_layout(impact_above(s.easel, wild, 80 * mm));
    }
    CHECK(impact_above(s.easel, {}, 80 * mm).marks.empty());
    check_layout(flight_above(s.easel, flights(1, 300), 165 * mm, 80 * mm));
    check_layout(flight_above(s.easel, flights(1, 1), 80 * mm, 100 * mm));
    FlightInput same = flights(1, 0);
    same.rows[1].typical = same.rows[0].typical;
    check_layout(flight_above(s.easel, same, 80 * mm, 100 * mm));
    check_layout(flight_side(s.easel, same, 165 * mm, 45 * mm));
    check_layout(flight_side(s.easel, {}, 165 * mm, 45 * mm));
    check_layout(flight_above(s.easel, {}, 165 * mm, 45 * mm));
    FlightInput topped{{{Symbol::before, "Before", {}, flight(8, 40, 0, 0.1)}}, ""};
    check_layout(flight_above(s.easel, topped, 165 * mm, 60 * mm));
    check_layout(flight_side(s.easel, topped, 80 * mm, 30 * mm));
    auto bag = ladder();
    for (auto& mark : bag.marks)
        mark.loft = 32;
    check_layout(loft_ladder(s.easel, bag, 80 * mm, 40 * mm));
    bag.marks[0].loft = 70;
    check_layout(loft_ladder(s.easel, bag, 80 * mm, 40 * mm));
    check_layout(loft_ladder(s.easel, {}, 80 * mm, 40 * mm));
    check_layout(credit_bars(s.easel, {}, 80 * mm));
    auto huge = credit(1);
    huge.shares[0].value = -400;
    check_layout(credit_bars(s.easel, huge, 80 * mm));
    check_layout(progress(s.easel, story(0), 165 * mm, 90 * mm));
    check_layout(progress(s.easel, story(30), 165 * mm, 90 * mm));
}

TEST_CASE("spread apart keeps order, never overlaps and moves no more than it must") {
    const std::vector<double> wishes{0, 1, 2, 60, 61}, sizes{10, 10, 10, 10, 10};
    const auto starts = spread_apart(wishes, sizes, 2, 0, 100);
    for (std::size_t i = 0; i + 1 < starts.size(); ++i)
        CHECK(starts[i + 1] >= starts[i] + 12 - 1e-9);
    CHECK(starts.front() >= 0);
    CHECK(starts.back() + 10 <= 100 + 1e-9);
    CHECK(starts[3] == Approx(54.5)); // the middle of the pair stays
    const std::vector<double> free{5, 50};
    CHECK(spread_apart(free, std::vector<double>{10, 10}, 2, 0, 100) == free);
}
