#include "output/pdf.hpp"

#include "output/cairo_painter.hpp"
#include "output/finish_pdf.hpp"
#include "output/number.hpp"
#include "output/pack.hpp"
#include "output/xmp.hpp"

#include <cairo-pdf.h>

#include <algorithm>
#include <set>

namespace output {

namespace {

void describe(cairo_surface_t* surface, const page::Book& book) {
    const auto set = [&](cairo_pdf_metadata_t what, const std::string& value) {
        if (!value.empty()) cairo_pdf_surface_set_metadata(surface, what, value.c_str());
    };
    set(CAIRO_PDF_METADATA_TITLE, book.title);
    set(CAIRO_PDF_METADATA_AUTHOR, book.author);
    set(CAIRO_PDF_METADATA_SUBJECT, book.subject);
    set(CAIRO_PDF_METADATA_CREATOR, producer);
    // Cairo would take the clock.
    set(CAIRO_PDF_METADATA_CREATE_DATE, book.created.empty() ? "1970-01-01" : book.created);
}

void outline(cairo_surface_t* surface, const page::Book& book) {
    std::vector<int> parents{CAIRO_PDF_OUTLINE_ROOT};
    for (const auto& mark : book.bookmarks) {
        const auto level = std::clamp<std::size_t>(
            static_cast<std::size_t>(std::max(mark.level, 1)), 1, parents.size());
        parents.resize(level);
        const std::string where = "page=" + std::to_string(mark.sheet + 1) + " pos=[" +
                                  fixed(mark.at.x, 2) + " " + fixed(mark.at.y, 2) + "]";
        parents.push_back(cairo_pdf_surface_add_outline(surface, parents.back(), mark.title.c_str(),
                                                        where.c_str(),
                                                        CAIRO_PDF_OUTLINE_FLAG_OPEN));
    }
}

/// Cairo writes a link to nowhere without a word.
void check_targets(const page::Book& book) {
    std::set<std::string> places;
    for (const auto& sheet : book.sheets)
        for (const auto& mark : sheet.marks)
            if (const auto* place = std::get_if<ink::Place>(&mark)) places.insert(place->name);
    for (const auto& sheet : book.sheets)
        for (const auto& mark : sheet.marks)
            if (const auto* link = std::get_if<ink::Link>(&mark);
                link && link->target.starts_with('#') && !places.contains(link->target.substr(1)))
                throw CannotDraw("a link leads to '" + link->target + "', which is nowhere");
    for (const auto& mark : book.bookmarks)
        if (mark.sheet >= book.sheets.size())
            throw CannotDraw("the bookmark '" + mark.title + "' leads behind the last page");
}

void draw(cairo_surface_t* surface, const page::Book& book) {
    Pictures pictures;
    for (const auto& sheet : book.sheets) {
        cairo_pdf_surface_set_size(surface, sheet.size.width, sheet.size.height);
        if (!sheet.label.empty()) cairo_pdf_surface_set_page_label(surface, sheet.label.c_str());
        const Context context(cairo_create(surface));
        CairoPainter(context.get(), CairoPainter::Target::document, pictures).paint(sheet.marks);
        cairo_show_page(context.get());
        expect(cairo_status(context.get()), "finishing a page");
    }
}

/// The PDF as Cairo writes it, its streams not compressed.
std::string drawn(const page::Book& book) {
    const Unpacked stored;
    std::string bytes;
    const Surface surface(cairo_pdf_surface_create_for_stream(append, &bytes, 1, 1));
    describe(surface.get(), book);
    draw(surface.get(), book);
    outline(surface.get(), book);
    cairo_surface_finish(surface.get());
    expect(cairo_surface_status(surface.get()), "writing the PDF");
    return bytes;
}

} // namespace

std::string pdf(const page::Book& book, const Digest& inputs, const PdfWishes& wishes) {
    if (book.sheets.empty()) throw CannotDraw("a book without sheets");
    check_targets(book);
    std::string out = finish_pdf(drawn(book), book, wishes);
    return wishes.password.empty() ? sealed(std::move(out), inputs) : out;
}

} // namespace output
