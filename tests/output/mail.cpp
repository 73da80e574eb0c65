#include "output/mail.hpp"
#include "output/mail_coding.hpp"

#include <catch2/catch.hpp>

TEST_CASE("base64 is that of RFC 4648") {
    // RFC 4648, 10: the test vectors.
    CHECK(output::base64("").empty());
    CHECK(output::base64("f") == "Zg==");
    CHECK(output::base64("fo") == "Zm8=");
    CHECK(output::base64("foo") == "Zm9v");
    CHECK(output::base64("foob") == "Zm9vYg==");
    CHECK(output::base64("fooba") == "Zm9vYmE=");
    CHECK(output::base64("foobar") == "Zm9vYmFy");
}

TEST_CASE("base64 stands in lines of 76 characters") {
    const std::string lines = output::base64_lines(std::string(100, 'x'));
    CHECK(lines.find("\r\n") == 76);
    CHECK(lines.ends_with("\r\n"));
}

TEST_CASE("quoted-printable follows the rules of RFC 2045, 6.7") {
    CHECK(output::quoted_printable("a=b\n") == "a=3Db\r\n");             // rule 1
    CHECK(output::quoted_printable("plain text\n") == "plain text\r\n"); // rules 2 and 4
    CHECK(output::quoted_printable("end \n") == "end=20\r\n");           // rule 3
    CHECK(output::quoted_printable("é\n") == "=C3=A9\r\n");
    const std::string wide = output::quoted_printable(std::string(200, 'x') + "\n"); // rule 5
    for (std::size_t at = 0, end; (end = wide.find("\r\n", at)) != std::string::npos; at = end + 2)
        CHECK(end - at <= 76);
    CHECK(wide.find("=\r\n") == 75);
}

TEST_CASE("an encoded word has at most 75 characters and cuts no letter") {
    // RFC 2047, 2 and 5.
    std::string name;
    for (int i = 0; i < 60; ++i)
        name += "ő";
    const std::string text = output::header_text(name, 9);
    std::size_t at = 0;
    int words = 0;
    while (at < text.size()) {
        const std::size_t end = std::min(text.find("\r\n ", at), text.size());
        const std::string word = text.substr(at, end - at);
        CHECK(word.size() <= 75);
        CHECK(word.starts_with("=?utf-8?B?"));
        CHECK(word.ends_with("?="));
        CHECK((word.size() - 12) % 4 == 0);
        ++words;
        at = end + 3;
    }
    CHECK(words > 1);
}

TEST_CASE("a short plain name stays readable, one with a comma is quoted") {
    CHECK(output::header_phrase("Ruth Millard", 4) == "Ruth Millard");
    CHECK(output::header_phrase("Millard, Ruth", 4) == "\"Millard, Ruth\"");
    CHECK(output::header_phrase("R \"Ru\" M", 4) == "\"R \\\"Ru\\\" M\"");
    // What looks like an encoded word is encoded itself: "=?" in base64 is "PT8".
    CHECK(output::header_text("=?utf-8?B?QQ==?=", 9).starts_with("=?utf-8?B?PT91"));
}

TEST_CASE("a mark is the published FNV-1a hash") {
    // Fowler, Noll, Vo: draft-eastlake-fnv-17, test vectors for 64 bits: "", "a", "foobar".
    CHECK(output::mark_of("") == "cbf29ce484222325");
    CHECK(output::mark_of("a") == "af63dc4c8601ec8c");
    CHECK(output::mark_of("foobar") == "85944171f73967e8");
}
