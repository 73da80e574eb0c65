// Hashes, prints of sheets, and the note that a PDF keeps.
#include "output/pdf.hpp"
#include "output/print_of.hpp"
#include "output/sha256.hpp"
#include "text/pango_typesetter.hpp"
#include "theme/theme.hpp"

#include <catch2/catch.hpp>

namespace {

page::Book book_of(const std::vector<std::string>& words) {
    static const text::PangoTypesetter type;
    const auto theme = theme::house_style(theme::Paper::a4, false);
    page::Book book;
    book.title = "Prints";
    book.created = "2026-05-14";
    for (const auto& text : words) {
        page::Sheet sheet{theme.page(), {}, "1", {}};
        sheet.marks.push_back(type.line(text, theme.setting(theme::Text::body).style, {90, 200}));
        book.sheets.push_back(std::move(sheet));
    }
    return book;
}

} // namespace

// NIST, FIPS 180-4 example values for SHA-256 (csrc.nist.gov, "Examples with Intermediate Values"),
// and RFC 6234's TEST3 of a million letters.
TEST_CASE("SHA-256 gives the published values") {
    CHECK(output::sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    CHECK(output::sha256("abc") ==
          "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(output::sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(output::sha256(std::string(1000000, 'a')) ==
          "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("a print stands for a sheet of paper and changes with anything on either side") {
    const auto one = output::prints_of(book_of({"a", "b", "c", "d"}));
    REQUIRE(one.size() == 2);
    CHECK(one[0].size() == 16);
    CHECK(one[0] != one[1]);
    CHECK(output::prints_of(book_of({"a", "b", "c", "d"})) == one);
    const auto other = output::prints_of(book_of({"a", "B", "c", "d"}));
    CHECK(other[0] != one[0]);
    CHECK(other[1] == one[1]);
    page::Book moved = book_of({"a", "b"});
    std::get<ink::Words>(moved.sheets[1].marks[0]).at.x += 1;
    CHECK(output::prints_of(moved)[0] != one[0]);
    page::Book curve = book_of({"a", "b"}), bent = curve;
    std::vector<ink::Point> points;
    for (int i = 0; i < 20; ++i)
        points.push_back({i * 5.0, i % 2 * 10.0});
    curve.sheets[0].marks.push_back(ink::Stroke{ink::Path::polyline(points), 1, ink::black});
    std::swap(points[5], points[7]), points[6].y = 4; // the same box, the same number of pieces
    bent.sheets[0].marks.push_back(ink::Stroke{ink::Path::polyline(points), 1, ink::black});
    CHECK(output::prints_of(curve)[0] != output::prints_of(bent)[0]);
}

TEST_CASE("a note comes back out of the PDF, and from nowhere else") {
    page::Book book = book_of({"a", "b"});
    CHECK(output::note_in(output::pdf(book)).empty());
    const std::string note = "lessonleaf binder 1\nnow 0123\nbefore\n";
    CHECK(output::note_in(output::pdf(book, {}, {{}, {}, note})) == note);
    CHECK(output::note_in("").empty());
    CHECK(output::note_in("not a PDF").empty());
    CHECK(output::note_in(output::pdf(book).substr(0, 400)).empty());
}
