#include "words/side.hpp"

#include "sentences.hpp"

using unit::Hand;
using unit::Measure;

namespace {

const words::Voice right_hander{
    Hand::right, false, {unit::Distance::yards, unit::Speed::miles_per_hour}};
const words::Voice left_hander{
    Hand::left, false, {unit::Distance::metres, unit::Speed::kilometres_per_hour}};

std::string right(Measure m, double v) {
    return words::side(m, v, sentences::speaker("en-GB", right_hander));
}
std::string left(Measure m, double v) {
    return words::side(m, v, sentences::speaker("en-GB", left_hander));
}
std::string cell(Measure m, double v) {
    return words::side_short(m, v, sentences::speaker("en-GB", right_hander));
}

} // namespace

TEST_CASE("face and path carry the word of the player's own hand") {
    CHECK(right(Measure::face, 3.2) == "3.2° right of target (open)");
    CHECK(left(Measure::face, 3.2) == "3.2° right of target (closed)");
    CHECK(right(Measure::face, -3.2) == "3.2° left of target (closed)");
    CHECK(left(Measure::face, -3.2) == "3.2° left of target (open)");
    CHECK(right(Measure::path, 3) == "3.0° right of target (in-to-out)");
    CHECK(left(Measure::path, 3) == "3.0° right of target (out-to-in)");
    CHECK(right(Measure::path, -3) == "3.0° left of target (out-to-in)");
    CHECK(left(Measure::path, -3) == "3.0° left of target (in-to-out)");
}

TEST_CASE("right and left stay themselves for both hands, only the handed word changes") {
    for (const auto& row : unit::measures) {
        if (!row.sided) continue;
        for (const double value : {4.0, -4.0}) {
            CAPTURE(row.key, value);
            const auto side = value > 0 ? "right" : "left";
            CHECK(right(row.measure, value).find(side) != std::string::npos);
            CHECK(left(row.measure, value).find(side) != std::string::npos);
        }
    }
}

TEST_CASE("within half a degree, as shown, an angle is square or straight") {
    CHECK(right(Measure::face, 0.3) == "square (0.3° right)");
    CHECK(right(Measure::face, -0.54) == "square (0.5° left)");
    CHECK(right(Measure::face, 0.55) == "0.6° right of target (open)");
    CHECK(right(Measure::face, -0.04) == "square");
    CHECK(right(Measure::path, 0.5) == "straight (0.5° right)");
    CHECK(right(Measure::attack, -2.1) == "2.1° down");
    CHECK(right(Measure::attack, 2.1) == "2.1° up");
    CHECK(right(Measure::attack, -0.2) == "level (0.2° down)");
}

TEST_CASE("lengths are on the line only when nought is shown") {
    CHECK(right(Measure::offline, 0.4) == "on the target line");
    CHECK(right(Measure::offline, 9.144) == "10\u00A0yd right of target");
    CHECK(left(Measure::curve, -12.4) == "12\u00A0m to the left");
    CHECK(right(Measure::strike, -8) == "8\u00A0mm towards the heel");
}

TEST_CASE("units are converted before rounding and a space that does not break joins them") {
    CHECK(right(Measure::carry, 137.16) == "150\u00A0yd");
    CHECK(left(Measure::carry, 137.16) == "137\u00A0m");
    CHECK(right(Measure::club_speed, 40.2336) == "90.0\u00A0mph");
    CHECK(left(Measure::club_speed, 25) == "90\u00A0km/h");
    CHECK(right(Measure::spin, 2649.6) == "2,650\u00A0rpm");
    CHECK(right(Measure::loft, 31) == "31.0°");
}

TEST_CASE("table cells have a short form") {
    CHECK(cell(Measure::face, 3.2) == "3.2° R open");
    CHECK(cell(Measure::face, -0.2) == "0.2° L square");
    CHECK(cell(Measure::path, -4) == "4.0° L out-to-in");
    CHECK(cell(Measure::attack, -2.1) == "2.1° down");
    CHECK(cell(Measure::carry, 91.44) == "100\u00A0yd");
}

TEST_CASE("wanted ranges say both ends") {
    const auto speaker = sentences::speaker("en-GB", right_hander);
    CHECK(words::side_range(Measure::face, -1, 1, speaker) == "1.0° left to 1.0° right");
    CHECK(words::side_range(Measure::face, 0, 2, speaker) == "straight to 2.0° right");
    CHECK(words::side_range(Measure::attack, -4, -2, speaker) == "4.0° down to 2.0° down");
    CHECK(words::side_range(Measure::loft, 24, 28, speaker) == "24.0–28.0°");
}

TEST_CASE("differences say which way instead of a sign") {
    const auto speaker = sentences::speaker("en-GB", right_hander);
    CHECK(words::difference(Measure::face, -3.5, speaker) == "3.5° further left");
    CHECK(words::difference(Measure::carry, 9.144, speaker) == "10\u00A0yd more");
    CHECK(words::difference(Measure::club_speed, -0.01, speaker) == "no difference");
    CHECK(words::difference(Measure::attack, -1, speaker) == "1.0° more down");
}

TEST_CASE("every measure can be said in every direction, unit, hand and length") {
    for (const auto& row : unit::measures)
        for (const auto& voice : {right_hander, left_hander})
            for (const double value : {-7.0, -0.3, 0.0, 0.3, 7.0}) {
                const auto speaker = sentences::speaker("en-GB", voice);
                CAPTURE(row.key, value);
                for (const auto& text : {words::side(row.measure, value, speaker),
                                         words::side_short(row.measure, value, speaker),
                                         words::difference(row.measure, value, speaker),
                                         words::side_range(row.measure, value, value + 1, speaker)})
                    CHECK_FALSE(text.empty());
                if (row.sided)
                    CHECK(words::side(row.measure, value, speaker).find("\u2212") ==
                          std::string::npos);
            }
}
