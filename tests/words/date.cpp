#include "words/date.hpp"

#include "sentences.hpp"

#include <memory>
#include <stdexcept>
#include <unicode/smpdtfmt.h>

using namespace std::chrono_literals;
using words::Date;

TEST_CASE("a long date names its month as ICU's long form does") {
    for (const char* language : {"en-GB", "en-US", "de", "fr", "es", "sv"}) {
        if (!std::filesystem::exists(std::string(SOURCE_DIR "/templates/words/") + language))
            continue;
        CAPTURE(language);
        UErrorCode code = U_ZERO_ERROR;
        const std::unique_ptr<icu::DateFormat> format(icu::DateFormat::createDateInstance(
            icu::DateFormat::kLong, icu::Locale::forLanguageTag(language, code)));
        format->setTimeZone(*icu::TimeZone::getGMT());
        const auto speaker = sentences::speaker(language);
        for (unsigned month = 1; month <= 12; ++month) {
            const Date date{2026y, std::chrono::month{month}, std::chrono::day{month + 1}};
            const auto days = std::chrono::sys_days(date).time_since_epoch().count();
            icu::UnicodeString wide;
            std::string text;
            format->format(static_cast<UDate>(days) * 86'400'000.0, wide).toUTF8String(text);
            CHECK(words::date_long(date, speaker) == text);
        }
    }
}

TEST_CASE("dates are written as the language writes them") {
    const Date date{2026y, std::chrono::May, 14d};
    CHECK(words::date_long(date, sentences::speaker("en-GB")) == "14 May 2026");
    CHECK(words::date_short(date, sentences::speaker("en-GB")) == "14 May");
}

TEST_CASE("file names and tables use ISO 8601") {
    CHECK(words::date_iso({2026y, std::chrono::May, 4d}) == "2026-05-04");
    CHECK(words::date_iso({987y, std::chrono::December, 31d}) == "0987-12-31");
}

TEST_CASE("a day that is not in the calendar never becomes text") {
    CHECK_THROWS_AS(words::date_iso({2026y, std::chrono::February, 30d}), std::logic_error);
}
