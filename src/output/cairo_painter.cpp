#include "output/cairo_painter.hpp"

#include "output/path_form.hpp"
#include "output/picture.hpp"
#include "output/structure.hpp"
#include "output/svg_logo.hpp"
#include "text/shaped.hpp"

#include <cmath>
#include <numbers>

namespace output {

CairoPainter::CairoPainter(cairo_t* context, Target target, Pictures& pictures)
    : context_(context)
    , target_(target)
    , pictures_(pictures) {
    // Cairo flattens curves only to measure them here; at 2 and more thin curves vanish.
    if (target == Target::document) cairo_set_tolerance(context, 1);
}

void CairoPainter::paint(const std::vector<ink::Mark>& marks) {
    if (target_ == Target::image) {
        for (const auto& mark : marks)
            std::visit([this](const auto& m) { draw(m); }, mark);
    } else {
        Structure structure(context_, marks);
        for (std::size_t i = 0; i < marks.size(); ++i) {
            if (!structure.enter(i)) continue;
            const auto run = std::span(marks).subspan(i, form_run(std::span(marks).subspan(i)));
            if (run.empty()) {
                std::visit([this](const auto& m) { draw(m); }, marks[i]);
            } else {
                draw_form(context_, run);
                i += run.size() - 1;
            }
        }
        structure.finish();
    }
    expect(cairo_status(context_), "drawing a page");
}

double CairoPainter::snapped(double coordinate) const {
    return target_ == Target::document ? std::round(coordinate * grid) / grid : coordinate;
}

void CairoPainter::trace(const ink::Path& path) {
    cairo_new_path(context_);
    const auto x = [this](ink::Point p) { return snapped(p.x); };
    const auto y = [this](ink::Point p) { return snapped(p.y); };
    for (const auto& s : path.segments())
        switch (s.verb) {
        case ink::Segment::Verb::move:
            cairo_move_to(context_, x(s.to), y(s.to));
            break;
        case ink::Segment::Verb::line:
            cairo_line_to(context_, x(s.to), y(s.to));
            break;
        case ink::Segment::Verb::curve:
            cairo_curve_to(context_, x(s.a), y(s.a), x(s.b), y(s.b), x(s.to), y(s.to));
            break;
        case ink::Segment::Verb::close:
            cairo_close_path(context_);
            break;
        }
}

void CairoPainter::ink(const ink::Colour& c) {
    cairo_set_source_rgb(context_, c.red, c.green, c.blue);
}

void CairoPainter::draw(const ink::Fill& mark) {
    trace(mark.path);
    ink(mark.colour);
    cairo_fill(context_);
}

void CairoPainter::draw(const ink::Stroke& mark) {
    const bool round = mark.cap == ink::Cap::round;
    trace(mark.path);
    ink(mark.colour);
    cairo_set_line_width(context_, mark.width);
    cairo_set_line_cap(context_, round ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    cairo_set_line_join(context_, round ? CAIRO_LINE_JOIN_ROUND : CAIRO_LINE_JOIN_MITER);
    cairo_set_dash(context_, mark.dash.data(), static_cast<int>(mark.dash.size()), 0);
    cairo_stroke(context_);
}

void CairoPainter::draw(const ink::Words& mark) {
    if (!mark.shaped) throw CannotDraw("the text '" + mark.text + "' was not shaped");
    const bool turned = mark.turn != 0;
    const ink::Point at{snapped(mark.at.x), snapped(mark.at.y)};
    if (turned) {
        cairo_save(context_);
        cairo_translate(context_, at.x, at.y);
        cairo_rotate(context_, -mark.turn * std::numbers::pi / 180);
    }
    ink(mark.style.colour);
    for (const auto& run : mark.shaped->runs) {
        glyphs_ = run.glyphs;
        if (!turned)
            for (auto& glyph : glyphs_)
                glyph.x += at.x, glyph.y += at.y;
        cairo_set_scaled_font(context_, run.font.get());
        cairo_show_text_glyphs(context_, run.text.data(), static_cast<int>(run.text.size()),
                               glyphs_.data(), static_cast<int>(glyphs_.size()),
                               run.clusters.data(), static_cast<int>(run.clusters.size()),
                               run.backward ? CAIRO_TEXT_CLUSTER_FLAG_BACKWARD
                                            : cairo_text_cluster_flags_t{});
    }
    if (turned) cairo_restore(context_);
}

void CairoPainter::draw(const ink::Picture& mark) {
    if (mark.format == "svg") {
        if (!mark.bytes) throw CannotDraw("a picture has no bytes");
        cairo_save(context_);
        draw_svg(context_, mark.box, *mark.bytes);
        return cairo_restore(context_);
    }
    auto& surface = pictures_[mark.bytes.get()];
    if (!surface) surface = picture_surface(mark, target_ == Target::document);
    const double width = cairo_image_surface_get_width(surface.get());
    const double height = cairo_image_surface_get_height(surface.get());
    cairo_save(context_);
    cairo_translate(context_, mark.box.x, mark.box.y);
    cairo_scale(context_, mark.box.width / width, mark.box.height / height);
    cairo_set_source_surface(context_, surface.get(), 0, 0);
    cairo_pattern_set_filter(cairo_get_source(context_), CAIRO_FILTER_GOOD);
    // In a document Cairo would pad by drawing the picture anew, and lose the bytes as they came.
    cairo_pattern_set_extend(cairo_get_source(context_),
                             target_ == Target::document ? CAIRO_EXTEND_NONE : CAIRO_EXTEND_PAD);
    cairo_rectangle(context_, 0, 0, width, height);
    cairo_fill(context_);
    cairo_restore(context_);
}

void CairoPainter::draw(const ink::Clip& mark) {
    if (!mark.opens) return cairo_restore(context_);
    cairo_save(context_);
    trace(mark.path);
    cairo_clip(context_);
}

} // namespace output
