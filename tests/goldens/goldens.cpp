// Every page of the examples as it was last accepted: its words with their places, and a few pages
// as small pictures. LESSONLEAF_ACCEPT=1, or tests/accept, writes them anew.
#include "cli/sheet.hpp"
#include "output/png.hpp"

#include <catch2/catch.hpp>

#include <cairo.h>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <memory>
#include <sstream>

namespace {

namespace fs = std::filesystem;

const std::array<const char*, 4> examples{"right-hand", "left-hand", "junior", "video"};

struct Shown {
    const char* example;
    std::size_t page;
};
/// Pages with a drawing of every kind.
constexpr std::array<Shown, 6> pictured{{{"right-hand", 1},
                                         {"right-hand", 2},
                                         {"right-hand", 3},
                                         {"right-hand", 4},
                                         {"left-hand", 7},
                                         {"junior", 5}}};
constexpr double dpi = 36;
constexpr int clearly = 64;              // of 255: a dot this far off counts as changed
constexpr double most_changed = 0.002;   // of all dots
constexpr double most_on_average = 0.25; // of 255, over all channels

bool accepting() { return std::getenv("LESSONLEAF_ACCEPT") != nullptr; }

std::string read_file(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

page::Book book_of(const std::string& example) {
    static const cli::Workshop workshop(cli::Common{});
    static const text::PangoTypesetter type;
    const auto read = workshop.read(fs::path(SOURCE_DIR "/examples") / example / "lesson.yaml");
    const cli::Sheet sheet(workshop, *read, type);
    REQUIRE(read->findings.clean());
    return sheet.book(*read);
}

/// A line a text: its place in whole points, and what it says.
std::string words_of(const page::Book& book) {
    std::ostringstream out;
    for (const auto& sheet : book.sheets) {
        out << "page " << sheet.label << " " << sheet.name << "\n";
        for (const auto& mark : sheet.marks)
            if (const auto* words = std::get_if<ink::Words>(&mark))
                out << std::lround(words->at.x) << " " << std::lround(words->at.y) << "  "
                    << words->text << "\n";
    }
    return out.str();
}

/// The first line in which the two differ, for a message that can be read.
std::string difference(const std::string& now, const std::string& before) {
    std::istringstream a(now), b(before);
    std::string x, y;
    for (int line = 1;; ++line) {
        const bool more = static_cast<bool>(std::getline(a, x)),
                   were = static_cast<bool>(std::getline(b, y));
        if (!more && !were) return "nothing";
        if (!more || !were || x != y)
            return "line " + std::to_string(line) + ": '" + (more ? x : "") + "', accepted was '" +
                   (were ? y : "") + "'";
    }
}

struct Dots {
    int width = 0, height = 0;
    std::vector<unsigned char> bytes; ///< four a dot, rows without gaps
};

Dots dots_of(const std::string& png) {
    struct Reader {
        const std::string& bytes;
        std::size_t at = 0;
    } reader{png};
    const auto read = [](void* closure, unsigned char* to, unsigned length) {
        auto& r = *static_cast<Reader*>(closure);
        if (r.at + length > r.bytes.size()) return CAIRO_STATUS_READ_ERROR;
        r.bytes.copy(reinterpret_cast<char*>(to), length, r.at);
        r.at += length;
        return CAIRO_STATUS_SUCCESS;
    };
    const std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface(
        cairo_image_surface_create_from_png_stream(read, &reader), cairo_surface_destroy);
    REQUIRE(cairo_surface_status(surface.get()) == CAIRO_STATUS_SUCCESS);
    Dots out{cairo_image_surface_get_width(surface.get()),
             cairo_image_surface_get_height(surface.get()),
             {}};
    const unsigned char* data = cairo_image_surface_get_data(surface.get());
    const int stride = cairo_image_surface_get_stride(surface.get());
    for (int y = 0; y < out.height; ++y)
        out.bytes.insert(out.bytes.end(), data + static_cast<std::ptrdiff_t>(y) * stride,
                         data + static_cast<std::ptrdiff_t>(y) * stride + 4 * out.width);
    return out;
}

struct Unlike {
    double changed = 0; ///< part of the dots that differ clearly
    double average = 0; ///< mean difference of a channel, of 255
};

Unlike compare(const Dots& a, const Dots& b) {
    Unlike out;
    for (std::size_t i = 0; i < a.bytes.size(); i += 4) {
        int most = 0;
        for (std::size_t k = i; k < i + 3; ++k) {
            const int off = std::abs(a.bytes[k] - b.bytes[k]);
            most = std::max(most, off);
            out.average += off;
        }
        out.changed += most > clearly;
    }
    const double dots = static_cast<double>(a.bytes.size()) / 4;
    return {out.changed / dots, out.average / dots / 3};
}

} // namespace

TEST_CASE("the words of every example stand where they were accepted") {
    for (const char* example : examples) {
        const std::string now = words_of(book_of(example));
        const fs::path file = fs::path(TESTS_DIR "/goldens") / (std::string(example) + ".txt");
        if (accepting()) std::ofstream(file, std::ios::binary) << now;
        INFO(example << ", " << difference(now, read_file(file)));
        CHECK(now == read_file(file));
    }
}

TEST_CASE("a few pages look as they were accepted") {
    for (const auto& [example, page] : pictured) {
        const auto book = book_of(example);
        REQUIRE(book.sheets.size() >= page);
        const std::string now =
            output::png(book.sheets[page - 1].marks, book.sheets[page - 1].size, dpi);
        const fs::path file = fs::path(TESTS_DIR "/goldens") /
                              (std::string(example) + "-" + std::to_string(page) + ".png");
        if (accepting()) std::ofstream(file, std::ios::binary) << now;
        const Dots a = dots_of(now), b = dots_of(read_file(file));
        INFO(example << " page " << page);
        REQUIRE(a.width == b.width);
        REQUIRE(a.height == b.height);
        const Unlike unlike = compare(a, b);
        CHECK(unlike.changed <= most_changed);
        CHECK(unlike.average <= most_on_average);
    }
}

TEST_CASE("the comparison sees a moved line and a grey veil, and lets a breath pass") {
    Dots white{100, 100, std::vector<unsigned char>(40000, 255)};
    Dots line = white, veil = white, breath = white;
    for (std::size_t x = 0; x < 100; ++x)
        line.bytes[4 * (50 * 100 + x)] = 0;
    for (auto& byte : veil.bytes)
        byte = 253;
    breath.bytes[400] = 100;
    CHECK(compare(white, line).changed > most_changed);
    CHECK(compare(white, veil).average > most_on_average);
    CHECK(compare(white, breath).changed <= most_changed);
    CHECK(compare(white, breath).average <= most_on_average);
}
