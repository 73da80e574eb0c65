// The hold card at true size, the strip from weak to strong, call-outs round a hand.
#include "../words/sentences.hpp"
#include "figure/grip.hpp"
#include "figure/grip_card.hpp"
#include "figure/strength.hpp"
#include "text/pango_typesetter.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using unit::Hand;

namespace {

struct Studio {
    text::PangoTypesetter type;
    theme::Theme theme = theme::house_style(theme::Paper::a4, false);
    words::Speaker words;
    explicit Studio(Hand hand = Hand::right)
        : words(sentences::speaker("en-GB", {hand, false, {}})) {}
    figure::Easel easel() const { return {type, theme, words}; }
};

constexpr double points_in_a_millimetre = 72 / 25.4; // an inch is 25.4 mm (1959 agreement)

hand::Wish wish(double knuckles) {
    hand::Wish w;
    w.seen.knuckles = knuckles;
    w.seen.gap = knuckles < 2;
    w.seen.join = unit::Join::overlap;
    return w;
}

template <class M>
std::vector<M> all_of(const ink::Drawing& d) {
    std::vector<M> out;
    for (const auto& mark : d.marks)
        if (const auto* m = std::get_if<M>(&mark)) out.push_back(*m);
    return out;
}

figure::GripCardInput card(const hand::Picture& picture, hand::Build build) {
    return {"Ruth",
            "14 May 2026",
            Hand::right,
            picture,
            picture,
            hand::handle_diameter(build),
            {"One.", "Two.", "Three.", "Four.", "Five.", "Six."}};
}

/// Leaders of a called-out hand: two-point strokes that end where a dot of radius 1.5 sits.
struct Leader {
    ink::Point badge, at;
};

std::vector<Leader> leaders(const ink::Drawing& d) {
    std::vector<Leader> out;
    for (const auto& stroke : all_of<ink::Stroke>(d)) {
        const auto& s = stroke.path.segments();
        if (s.size() == 2 && std::abs(stroke.width - 0.6) < 1e-9) out.push_back({s[0].to, s[1].to});
    }
    return out;
}

double turning(ink::Point a, ink::Point b, ink::Point c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(const Leader& a, const Leader& b) {
    return turning(a.badge, a.at, b.badge) * turning(a.badge, a.at, b.at) < 0 &&
           turning(b.badge, b.at, a.badge) * turning(b.badge, b.at, a.at) < 0;
}

} // namespace

TEST_CASE("the hold card prints the end of the handle and the ruler at true size") {
    const Studio studio;
    const auto picture = hand::draw(*hand::pose(wish(2)), hand::View::golfers_eye);
    for (const auto build : {hand::Build::large, hand::Build::small, hand::Build::child}) {
        const double mm = hand::handle_diameter(build);
        CHECK(mm > 20);
        CHECK(mm < 44.45); // Equipment Rules, Part 2, 3b: a grip is at most 1.75 in across
        const auto d = figure::grip_card(studio.easel(), card(picture, build));
        double widest = 0, ruler = 0;
        for (const auto& stroke : all_of<ink::Stroke>(d)) {
            const auto box = stroke.path.bounds();
            const bool round = std::abs(box.width - box.height) < 1e-6 && box.width > 40 &&
                               stroke.path.segments().size() > 3;
            if (round) widest = std::max(widest, box.width);
            if (box.height == 0 && box.width > 100) ruler = box.width;
        }
        CHECK(widest == Approx(mm * points_in_a_millimetre).epsilon(1e-6));
        CHECK(ruler == Approx(50 * points_in_a_millimetre).epsilon(1e-6));
    }
}

TEST_CASE("all of the hold card lies on its two sides of A6") {
    const Studio studio;
    const auto picture = hand::draw(*hand::pose(wish(2)), hand::View::golfers_eye);
    const auto d = figure::grip_card(studio.easel(), card(picture, hand::Build::large));
    const double k = points_in_a_millimetre;
    CHECK(d.size.width == Approx((2 * 105 + 3 * 8) * k)); // ISO 216: A6 is 105 x 148 mm
    CHECK(d.size.height == Approx((148 + 2 * 8) * k));
    const ink::Rect front{8 * k, 8 * k, 105 * k, 148 * k},
        back{(16 + 105) * k, 8 * k, 105 * k, 148 * k};
    for (const auto& words : all_of<ink::Words>(d)) {
        INFO(words.text);
        CHECK((front.inset(5 * k).contains(words.box(), 2) ||
               back.inset(5 * k).contains(words.box(), 2)));
    }
}

TEST_CASE("the strip marks before as a ring and after as a disc, and prints no degrees") {
    const Studio studio;
    figure::StrengthInput in;
    for (std::size_t i = 0; i < 3; ++i)
        in.hands[i] = hand::strip(figure::strip_knuckles[i], hand::Build::large, false);
    in.before = 1;
    in.after = 2.5;
    const auto d = figure::strength_strip(studio.easel(), in, 300);
    std::vector<double> round;
    const auto is_symbol = [](const ink::Path& path) {
        const auto box = path.bounds();
        return std::abs(box.width - box.height) < 1e-6 && box.width > 5 && box.width < 8;
    };
    for (const auto& fill : all_of<ink::Fill>(d))
        if (is_symbol(fill.path)) round.push_back(fill.path.bounds().centre().x);
    REQUIRE(round.size() == 2); // the ring is filled with paper
    CHECK(round[0] == Approx(8 + 284 * 1 / 4.0));
    CHECK(round[1] == Approx(8 + 284 * 2.5 / 4.0));
    for (const auto& words : all_of<ink::Words>(d)) {
        CHECK(words.text.find("°") == std::string::npos);
        CHECK(ink::Rect{0, 0, d.size.width, d.size.height}.contains(words.box(), 0.5));
    }
}

TEST_CASE("call-outs stand outside the hand, at most four, and their leaders never cross") {
    constexpr hand::View views[]{hand::View::open_palm,   hand::View::fingers_first,
                                 hand::View::golfers_eye, hand::View::butt_end,
                                 hand::View::balance,     hand::View::joined,
                                 hand::View::joined_front};
    for (const double knuckles : {0.5, 2.0, 4.0}) {
        const auto pose = hand::pose(wish(knuckles));
        for (const auto view : views) {
            const auto picture = hand::draw(*pose, view);
            for (const Hand side : {Hand::right, Hand::left}) {
                const Studio studio(side);
                std::vector<figure::CallOut> all; // every anchor there is: more than four at times
                for (const auto& anchor : picture.anchors)
                    all.push_back({static_cast<int>(all.size()) + 1, anchor.name});
                const double width = 150;
                const auto d =
                    figure::called_out(studio.easel(), picture, side, "Before", all, width);
                const auto drawn = leaders(d);
                INFO(int(view) << " " << knuckles);
                CHECK(drawn.size() == std::min<std::size_t>(all.size(), figure::most_call_outs));
                for (std::size_t i = 0; i < drawn.size(); ++i) {
                    const double x = drawn[i].badge.x;
                    CHECK((x <= 16 || x >= width - 16));
                    for (std::size_t k = 0; k < i; ++k)
                        CHECK_FALSE(cross(drawn[i], drawn[k]));
                }
            }
        }
    }
}

TEST_CASE("a left-hander's hand is the exact mirror, its numbers are not") {
    const auto picture = hand::draw(*hand::pose(wish(2)), hand::View::golfers_eye);
    const Studio studio;
    const auto r = figure::hand_drawing(studio.theme, picture, Hand::right, 120);
    const auto l = figure::hand_drawing(studio.theme, picture, Hand::left, 120);
    const auto right = all_of<ink::Fill>(r), left = all_of<ink::Fill>(l);
    REQUIRE(right.size() == left.size());
    for (std::size_t i = 0; i < right.size(); ++i) {
        const auto a = right[i].path.bounds(), b = left[i].path.bounds();
        CHECK(a.x == Approx(120 - b.right()).margin(1e-9));
        CHECK(a.y == Approx(b.y).margin(1e-9));
    }
}
