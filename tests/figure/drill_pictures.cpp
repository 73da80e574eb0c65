// The set-up pictures of the drill library.
#include "../words/sentences.hpp"
#include "figure/drill_picture.hpp"
#include "text/pango_typesetter.hpp"

#include <catch2/catch.hpp>

#include <set>

using unit::Hand;

namespace {

struct Studio {
    text::PangoTypesetter type;
    theme::Theme theme = theme::house_style(theme::Paper::a4, false);
    words::Speaker words;
    explicit Studio(Hand hand)
        : words(sentences::speaker("en-GB", {hand, false, {}})) {}
    figure::Easel easel() const { return {type, theme, words}; }
};

std::vector<ink::Path> paths(const ink::Drawing& drawing) {
    std::vector<ink::Path> out;
    for (const auto& mark : drawing.marks) {
        if (const auto* stroke = std::get_if<ink::Stroke>(&mark)) out.push_back(stroke->path);
        if (const auto* fill = std::get_if<ink::Fill>(&mark)) out.push_back(fill->path);
    }
    return out;
}

std::vector<std::string> texts(const ink::Drawing& drawing) {
    std::vector<std::string> out;
    for (const auto& mark : drawing.marks)
        if (const auto* words = std::get_if<ink::Words>(&mark)) out.push_back(words->text);
    return out;
}

} // namespace

TEST_CASE("each of the thirty drills has a picture of its own") {
    const auto names = figure::drill_pictures();
    CHECK(names.size() == 30);
    CHECK(std::set<std::string_view>(names.begin(), names.end()).size() == 30);
    const Studio studio(Hand::right);
    std::set<std::string> messages;
    for (const auto name : names) {
        INFO(name);
        const auto picture = figure::drill_picture(studio.easel(), name, Hand::right, 150, 110);
        CHECK(picture.size == ink::Size{150, 110});
        CHECK(paths(picture).size() > 4);
        messages.insert(picture.message);
    }
    CHECK(messages.size() == 30);
}

TEST_CASE("a picture stays inside its box, with lines of 0.8 points or more") {
    const Studio studio(Hand::right);
    for (const ink::Size box : {ink::Size{150, 110}, {90, 120}, {240, 100}})
        for (const auto name : figure::drill_pictures()) {
            INFO(name << " " << box.width);
            const auto picture =
                figure::drill_picture(studio.easel(), name, Hand::right, box.width, box.height);
            for (const auto& path : paths(picture))
                CHECK(ink::Rect{0, 0, box.width, box.height}.contains(path.bounds(), 0.8));
            for (const auto& mark : picture.marks)
                if (const auto* stroke = std::get_if<ink::Stroke>(&mark);
                    stroke && stroke->colour == ink::black)
                    CHECK(stroke->width >= 0.8);
        }
}

TEST_CASE("a left-hander's picture is the mirror of a right-hander's, its words are not") {
    const Studio right(Hand::right), left(Hand::left);
    std::size_t sided = 0;
    for (const auto name : figure::drill_pictures()) {
        INFO(name);
        const auto r = figure::drill_picture(right.easel(), name, Hand::right, 150, 110);
        const auto l = figure::drill_picture(left.easel(), name, Hand::left, 150, 110);
        CHECK(texts(r) == texts(l));
        const auto a = paths(r), b = paths(l);
        REQUIRE(a.size() == b.size());
        std::size_t unlike = 0;
        for (std::size_t i = 0; i < a.size(); ++i) {
            const ink::Rect one = a[i].bounds(), other = b[i].bounds();
            if (std::abs(one.x - (150 - other.right())) > 0.01 ||
                std::abs(one.y - other.y) > 0.01 || std::abs(one.width - other.width) > 0.01)
                ++unlike;
        }
        // only the tick in a box is written alike by both hands
        CHECK(unlike == (name == "call it" ? 1 : 0));
        for (std::size_t i = 0; i < a.size(); ++i)
            if (std::abs(a[i].bounds().x - b[i].bounds().x) > 0.01) {
                ++sided;
                break;
            }
    }
    CHECK(sided >= 28); // ten balls look alike from both sides
}

TEST_CASE("words that mean left and right keep their side for a left-hander") {
    const Studio left(Hand::left);
    const auto picture = figure::drill_picture(left.easel(), "call it", Hand::left, 150, 110);
    double x_left = 0, x_right = 0;
    for (const auto& mark : picture.marks)
        if (const auto* words = std::get_if<ink::Words>(&mark)) {
            if (words->text == "left") x_left = words->at.x;
            if (words->text == "right") x_right = words->at.x;
        }
    CHECK(x_left < x_right);
}

TEST_CASE("a posed hand that fits takes the picture's place, in the middle") {
    const Studio studio(Hand::right);
    ink::Drawing hand;
    hand.size = {60, 60};
    hand.message = "a posed hand";
    hand.add(ink::Stroke{ink::Path::rect({0, 0, 60, 60}), 1.0, ink::black, {}, ink::Cap::butt});
    const auto picture =
        figure::drill_picture(studio.easel(), "open palm", Hand::right, 150, 110, &hand);
    CHECK(picture.message == "a posed hand");
    REQUIRE(paths(picture).size() == 1);
    CHECK(paths(picture).front().bounds().x == Approx(45));
    CHECK(figure::drill_picture(studio.easel(), "no such picture", Hand::right, 150, 110)
              .size.height == 0);
}
