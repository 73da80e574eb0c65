#include "words/number.hpp"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <unicode/numberformatter.h>

using words::fixed;
using words::rounded;
using words::whole;

TEST_CASE("a number is rounded half away from nought on its shortest decimal form") {
    CHECK(fixed(0.05, 1, "en-GB") == "0.1");
    CHECK(fixed(0.15, 1, "en-GB") == "0.2"); // the double lies just below 0.15
    CHECK(fixed(2.675, 2, "en-GB") == "2.68");
    CHECK(fixed(2.5, 0, "en-GB") == "3");
    CHECK(fixed(-2.5, 0, "en-GB") == "\u22123");
    CHECK(fixed(9.96, 1, "en-GB") == "10.0");
    CHECK(fixed(999.95, 1, "en-GB") == "1,000.0");
    CHECK(fixed(2.449, 1, "en-GB") == "2.4");
}

TEST_CASE("what rounds to nought has no sign") {
    CHECK(fixed(-0.04, 1, "en-GB") == "0.0");
    CHECK(fixed(-0.0, 0, "en-GB") == "0");
    CHECK(fixed(-0.05, 1, "en-GB") == "\u22120.1");
    CHECK_FALSE(std::signbit(rounded(-0.04, 1)));
}

TEST_CASE("minus is U+2212") {
    CHECK(fixed(-3.2, 1, "de") == "\u22123,2");
    CHECK(whole(-1200, "en-GB") == "\u22121,200");
}

TEST_CASE("very large and very small numbers are written out") {
    CHECK(fixed(1e-12, 3, "en-GB") == "0.000");
    CHECK(fixed(1e15, 0, "en-GB") == "1,000,000,000,000,000");
    CHECK(fixed(std::numeric_limits<double>::max(), 0, "en-GB").size() == 309 + 102);
}

TEST_CASE("a value that is not finite never becomes text") {
    CHECK_THROWS_AS(fixed(std::nan(""), 1, "en-GB"), std::logic_error);
    CHECK_THROWS_AS(fixed(INFINITY, 1, "en-GB"), std::logic_error);
    CHECK_THROWS_AS(fixed(1.0, 10, "en-GB"), std::logic_error);
}

TEST_CASE("the shown number is what comparisons use") {
    CHECK(rounded(0.449, 1) == 0.4);
    CHECK(rounded(0.45, 1) == 0.5);
    CHECK(rounded(-0.55, 1) == -0.6);
}

TEST_CASE("decimal and thousands marks are those ICU has for the language") {
    for (const char* language : {"en-GB", "en-US", "de", "fr", "es", "sv"}) {
        CAPTURE(language);
        UErrorCode code = U_ZERO_ERROR;
        const auto locale = icu::Locale::forLanguageTag(language, code);
        REQUIRE(U_SUCCESS(code));
        const auto format = icu::number::NumberFormatter::withLocale(locale).precision(
            icu::number::Precision::fixedFraction(1));
        for (const double value : {0.5, 999.5, 1234.5, 12345.5, 1234567.5}) {
            std::string text;
            format.formatDouble(value, code).toString(code).toUTF8String(text);
            CHECK(fixed(value, 1, language) == text);
        }
    }
}
