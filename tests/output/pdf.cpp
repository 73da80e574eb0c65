#include "output/pdf.hpp"

#include "output/cairo_handle.hpp"
#include "output/png.hpp"
#include "sample.hpp"
#include "text/pango_typesetter.hpp"
#include "tool.hpp"

#include <catch2/catch.hpp>

#define POINTERHOLDER_TRANSITION 4
#include <qpdf/Pl_DCT.hh>
#include <qpdf/Pl_String.hh>

namespace {

using Catch::Matchers::Contains;

// ISO 216 A4 is 210 mm x 297 mm; a point is 1/72 inch, an inch 25.4 mm.
constexpr ink::Size a4{210 / 25.4 * 72, 297 / 25.4 * 72};
constexpr ink::Size letter{612, 792};

std::string sample(ink::Size paper, const std::string& name) {
    const text::PangoTypesetter setter;
    return stored(name, output::pdf(sample_book(setter, paper)));
}

/// A JPEG picture that fades from black to white.
std::string jpeg_of(unsigned width, unsigned height) {
    std::string bytes;
    Pl_String end("bytes", nullptr, bytes);
    Pl_DCT encoder("jpeg", &end, width, height, 3, JCS_RGB);
    std::vector<unsigned char> pixels(std::size_t{width} * height * 3);
    for (std::size_t i = 0; i < pixels.size(); ++i)
        pixels[i] = static_cast<unsigned char>(i / 3 % width * 255 / width);
    encoder.write(pixels.data(), pixels.size());
    encoder.finish();
    return bytes;
}

std::string line_with(const std::string& text, const std::string& word) {
    const auto at = text.find(word);
    return at == text.npos ? "" : text.substr(at, text.find('\n', at) - at);
}

} // namespace

TEST_CASE("the same book gives the same bytes") {
    const auto once = slurp(sample(a4, "once.pdf"));
    CHECK(once == slurp(sample(a4, "twice.pdf")));
    CHECK(once.size() > 1000);
}

TEST_CASE("qpdf finds no fault") {
    CHECK_THAT(printed("qpdf --check " + sample(a4, "check.pdf")),
               Contains("No syntax or stream encoding errors found"));
}

TEST_CASE("poppler reads back the paper") {
    CHECK_THAT(printed("pdfinfo " + sample(a4, "a4.pdf")), Contains("(A4)"));
    CHECK_THAT(printed("pdfinfo " + sample(letter, "letter.pdf")),
               Contains("612 x 792 pts (letter)"));
}

TEST_CASE("every font is embedded, a subset, and can be read as text") {
    std::istringstream list(printed("pdffonts " + sample(a4, "fonts.pdf")));
    std::string line;
    std::getline(list, line), std::getline(list, line);
    int fonts = 0;
    for (; std::getline(list, line); ++fonts)
        CHECK_THAT(line, Contains("yes yes yes"));
    CHECK(fonts >= 4);
}

TEST_CASE("poppler finds the words, those with ligatures too") {
    const auto text = printed("pdftotext -layout " + sample(a4, "text.pdf") + " -");
    for (const char* words : {"My one thing", "fifteen affluent officials", "efficient flight",
                              "start direction", "What do I do at home", "171.1", "page 2"})
        CHECK_THAT(text, Contains(words));
}

TEST_CASE("poppler measures words as wide as the typesetter does") {
    const text::PangoTypesetter setter;
    page::Book book;
    const auto words = setter.line("Knuckles", ink::Style{}, {100, 100});
    book.sheets.push_back({a4, {words}, "1"});
    const auto boxes = printed("pdftotext -bbox " + stored("width.pdf", output::pdf(book)) + " -");
    const auto word = line_with(boxes, "<word");
    double left = 0, top = 0, right = 0;
    REQUIRE(std::sscanf(word.c_str(), "<word xMin=\"%lf\" yMin=\"%lf\" xMax=\"%lf\"", &left, &top,
                        &right) == 3);
    CHECK(left == Approx(100).margin(0.05));
    CHECK(right - left == Approx(words.width).margin(0.05));
}

TEST_CASE("title, author, language and day are told twice: in the file and as XMP") {
    const auto path = sample(a4, "facts.pdf");
    const auto info = printed("TZ=UTC pdfinfo -isodates " + path);
    CHECK_THAT(info, Contains("Lesson of Mel & Ana") && Contains("Coach Example"));
    CHECK_THAT(info, Contains("CreationDate:    2026-05-14T00:00:00Z"));
    CHECK_THAT(info, Contains("Tagged:          yes") && !Contains("ModDate"));
    const auto xmp = printed("pdfinfo -meta " + path);
    CHECK_THAT(xmp, Contains("Lesson of Mel &amp; Ana") && Contains("en-GB"));
    const auto json = printed("qpdf --json=1 --json-key=objects " + path);
    CHECK_THAT(json, Contains("\"/Lang\": \"en-GB\"") && Contains("\"/DisplayDocTitle\": true"));
}

TEST_CASE("the structure tree has roles, figures say their message, furniture is left out") {
    const auto path = sample(a4, "tags.pdf");
    const auto tree = printed("pdfinfo -struct-text " + path);
    for (const char* role : {"Document", "H1", "H2", "Figure", "Table", "TR", "TH", "TD"})
        CHECK_THAT(tree, Contains(role));
    CHECK_THAT(tree, !Contains("Private") && !Contains("page 1") && !Contains("start direction"));
    CHECK_THAT(tree, Contains("/Scope /Column") && Contains("/Scope /Row"));
    const auto json = printed("qpdf --json=1 --json-key=objects " + path);
    const auto first = json.find("The face was open in 9 of 10 shots.");
    CHECK(first != json.npos);
    CHECK(json.find("Afterwards it was square.") != json.npos);
}

TEST_CASE("what a sheet draws beside its tags is an artifact, what it links stays in a block") {
    const text::PangoTypesetter setter;
    page::Book book;
    const auto line = [&](const char* words, double y) { return setter.line(words, {}, {50, y}); };
    book.sheets.push_back(
        {a4,
         {line("loose", 40), ink::Tag{true, "L", {}}, ink::Tag{true, "LI", {}},
          ink::Tag{true, "Lbl", {}}, line("1", 60), ink::Tag{false, "Lbl", {}}, line("beside", 80),
          ink::Tag{false, "LI", {}}, ink::Tag{false, "L", {}}, ink::Tag{true, "P", {}},
          line("see", 100), ink::Link{{50, 90, 40, 12}, "https://example.org/it's"},
          line("there", 120), ink::Tag{false, "P", {}}},
         "1"});
    const auto tree = printed("pdfinfo -struct-text " + stored("beside.pdf", output::pdf(book)));
    CHECK_THAT(tree, !Contains("loose"));
    CHECK_THAT(tree, Contains("Span") && Contains("beside") && Contains("seethere"));
    CHECK_THAT(printed("pdfinfo -url " + scratch("beside.pdf")),
               Contains("https://example.org/it's"));
}

TEST_CASE("bookmarks and links lead where they say") {
    const auto path = sample(a4, "links.pdf");
    CHECK_THAT(printed("pdfinfo -dests " + path), Contains("\"drill-1\""));
    const auto json = printed("qpdf --json --json-key=outlines " + path);
    CHECK_THAT(json, Contains("\"title\": \"My one thing\"") && Contains("\"title\": \"Table\""));
    page::Book lost;
    lost.sheets.push_back({a4, {ink::Link{{0, 0, 9, 9}, "#nowhere"}}, "1"});
    CHECK_THROWS_WITH(output::pdf(lost), "a link leads to '#nowhere', which is nowhere");
    page::Book far;
    far.sheets.push_back({a4, {}, "1"});
    far.bookmarks.push_back({"Beyond", 1, 1, {}});
    CHECK_THROWS_WITH(output::pdf(far), "the bookmark 'Beyond' leads behind the last page");
}

TEST_CASE("faults of the program are told, not drawn") {
    const auto fault = [](std::vector<ink::Mark> marks) {
        page::Book book;
        book.sheets.push_back({a4, std::move(marks), "1"});
        return output::pdf(book);
    };
    CHECK_THROWS_WITH(fault({text::EvenTypesetter().line("toy", {})}),
                      "the text 'toy' was not shaped");
    CHECK_THROWS_WITH(fault({ink::Tag{true, "Heading", {}}}), Contains("'Heading' is unknown"));
    CHECK_THROWS_WITH(fault({ink::Tag{true, "P", {}}}), Contains("never closed"));
    CHECK_THROWS_WITH(fault({ink::Tag{true, "P", {}}, ink::Tag{false, "H1", {}}}),
                      Contains("'P' is open"));
    CHECK_THROWS_WITH(output::pdf({}), "a book without sheets");
}

TEST_CASE("pictures are embedded once, JPEG as it came") {
    const ink::Path path = ink::Path::circle({20, 15}, 10);
    const auto png = std::make_shared<const std::string>(
        output::png({ink::Fill{path, {1, 0, 0}}}, {40, 30}, 72));
    const auto picture_path = stored("dot.png", *png);
    page::Book book;
    const ink::Picture picture{{50, 50, 80, 60}, "png", png};
    book.sheets.push_back({a4, {picture}, "1"});
    book.sheets.push_back({a4, {picture}, "2"});
    const auto images = printed("pdfimages -list " + stored("pictures.pdf", output::pdf(book)));
    CHECK_THAT(images, Contains("40    30"));
    const auto jpeg = std::make_shared<const std::string>(jpeg_of(40, 30));
    const ink::Picture photo{{50, 50, 80, 60}, "jpeg", jpeg};
    page::Book album;
    album.sheets.push_back({a4, {photo}, "1"});
    const auto list = printed("pdfimages -list " + stored("album.pdf", output::pdf(album)));
    CHECK_THAT(list, Contains("jpeg") && Contains("40    30"));
    printed("cd " BUILD_DIR " && pdfimages -all album.pdf back");
    CHECK(slurp(scratch("back-000.jpg")) == *jpeg);
    CHECK(output::png({photo}, {140, 120}, 72).size() > 300);
    const auto broken = std::make_shared<const std::string>("no picture");
    CHECK_THROWS_AS(output::png({ink::Picture{{0, 0, 9, 9}, "jpeg", broken}}, {9, 9}, 72),
                    output::CannotDraw);
    CHECK_THROWS_AS(output::png({ink::Picture{{0, 0, 9, 9}, "png", broken}}, {9, 9}, 72),
                    output::CannotDraw);
}
