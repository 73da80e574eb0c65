// A first letter that chooses the kind of template, then any bytes as its file.
#include "drills/clubs.hpp"
#include "drills/drill.hpp"
#include "entry.hpp"
#include "record/read_marks.hpp"
#include "theme/read_style.hpp"
#include "words/catalogue.hpp"

namespace {

void wording(const diag::Source& source, diag::Findings& findings) {
    static const diag::Source first("first.txt",
                                    "a.one = One {count, plural, one {shot} other {shots}}\n"
                                    "caution.one = Stop when it hurts.\n");
    words::Catalogue catalogue("en-GB");
    catalogue.add(first, findings);
    catalogue.replace(source, findings);
    words::Catalogue fresh("de");
    fresh.add(source, findings);
    for (const auto* one : {&catalogue, &fresh}) {
        if (!one->has("a.one")) continue;
        try {
            static_cast<void>(one->say({}, "a.one", {{"count", 3}}));
        } catch (const std::logic_error&) { // a hole of the bytes' own that nobody fills
        }
    }
}

} // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0) return 0;
    const diag::Source source("template", fuzz::text_of(data + 1, size - 1));
    diag::Findings findings;
    theme::Style style = theme::house();
    switch (data[0]) {
    case 'w':
        wording(source, findings);
        break;
    case 'd':
        static_cast<void>(drills::read_drills(source, findings));
        break;
    case 'c':
        static_cast<void>(drills::read_clubs(source, findings));
        break;
    case 'l':
        theme::read_letters(source, style, findings);
        break;
    case 'p':
        theme::read_papers(source, style, findings);
        break;
    case 'i':
        theme::read_inks(source, style, findings);
        break;
    case 'g':
        theme::read_pages(source, style, findings);
        break;
    case 'm':
        static_cast<void>(record::read_marks(source, findings));
        break;
    default:
        break;
    }
    fuzz::print(findings);
    return 0;
}
