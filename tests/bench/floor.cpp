#include "floor.hpp"

#include "output/cairo_handle.hpp"
#include "text/shaped.hpp"

#include <cairo-pdf.h>

#include <numbers>

namespace bench {

namespace {

void trace(cairo_t* cr, const ink::Path& path) {
    cairo_new_path(cr);
    for (const auto& s : path.segments())
        switch (s.verb) {
        case ink::Segment::Verb::move:
            cairo_move_to(cr, s.to.x, s.to.y);
            break;
        case ink::Segment::Verb::line:
            cairo_line_to(cr, s.to.x, s.to.y);
            break;
        case ink::Segment::Verb::curve:
            cairo_curve_to(cr, s.a.x, s.a.y, s.b.x, s.b.y, s.to.x, s.to.y);
            break;
        case ink::Segment::Verb::close:
            cairo_close_path(cr);
            break;
        }
}

struct Plain {
    cairo_t* cr;

    void colour(const ink::Colour& c) const { cairo_set_source_rgb(cr, c.red, c.green, c.blue); }

    void operator()(const ink::Fill& m) const {
        trace(cr, m.path), colour(m.colour), cairo_fill(cr);
    }
    void operator()(const ink::Stroke& m) const {
        const bool round = m.cap == ink::Cap::round;
        trace(cr, m.path), colour(m.colour);
        cairo_set_line_width(cr, m.width);
        cairo_set_line_cap(cr, round ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
        cairo_set_line_join(cr, round ? CAIRO_LINE_JOIN_ROUND : CAIRO_LINE_JOIN_MITER);
        cairo_set_dash(cr, m.dash.data(), static_cast<int>(m.dash.size()), 0);
        cairo_stroke(cr);
    }
    void operator()(const ink::Words& m) const {
        cairo_save(cr);
        cairo_translate(cr, m.at.x, m.at.y);
        cairo_rotate(cr, -m.turn * std::numbers::pi / 180);
        colour(m.style.colour);
        for (const auto& run : m.shaped->runs) {
            cairo_set_scaled_font(cr, run.font.get());
            cairo_show_text_glyphs(cr, run.text.data(), static_cast<int>(run.text.size()),
                                   run.glyphs.data(), static_cast<int>(run.glyphs.size()),
                                   run.clusters.data(), static_cast<int>(run.clusters.size()),
                                   run.backward ? CAIRO_TEXT_CLUSTER_FLAG_BACKWARD
                                                : cairo_text_cluster_flags_t{});
        }
        cairo_restore(cr);
    }
    void operator()(const ink::Clip& m) const {
        if (!m.opens) return cairo_restore(cr);
        cairo_save(cr);
        trace(cr, m.path);
        cairo_clip(cr);
    }
    template <class Other>
    void operator()(const Other&) const {}
};

} // namespace

std::string floor(const page::Book& book) {
    std::string bytes;
    const output::Surface surface(
        cairo_pdf_surface_create_for_stream(output::append, &bytes, 1, 1));
    for (const auto& sheet : book.sheets) {
        cairo_pdf_surface_set_size(surface.get(), sheet.size.width, sheet.size.height);
        const output::Context context(cairo_create(surface.get()));
        for (const auto& mark : sheet.marks)
            std::visit(Plain{context.get()}, mark);
        cairo_show_page(context.get());
    }
    cairo_surface_finish(surface.get());
    output::expect(cairo_surface_status(surface.get()), "drawing the floor");
    return bytes;
}

} // namespace bench
