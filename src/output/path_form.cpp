#include "output/path_form.hpp"

#include "output/number.hpp"
#include "output/qpdf.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <string_view>

namespace output {

namespace {

constexpr std::size_t worth_a_form = 60; ///< segments: below it Cairo is as quick, the file smaller
constexpr int side = 4096;               ///< points: the square that Cairo takes for the picture

/// Only stand-ins have it: photographs are JPEG or unpacked.
constexpr const char* stand_in_filter = "/CCITTFaxDecode";

/// Operators in steps of the grid, y down as marks have it.
class Operators {
  public:
    void add(const ink::Fill& mark) {
        colour(fill_, mark.colour, " rg\n");
        trace(mark.path);
        out_ += "f\n";
        reach(mark.path.bounds());
    }

    void add(const ink::Stroke& mark) {
        const bool round = mark.cap == ink::Cap::round;
        colour(line_, mark.colour, " RG\n");
        pen(mark, round);
        trace(mark.path);
        out_ += "S\n";
        reach(mark.path.bounds().inset(-mark.width * (round ? 0.5 : 5))); // 5: a mitre's tip
    }

    /// Of all that was added, points.
    const ink::Rect& box() const { return *box_; }

    /// The box in steps on a line of its own, then the operators.
    std::string text() const {
        std::string box;
        for (const double edge : {box_->x, box_->y, box_->right(), box_->bottom()})
            box += fixed(edge * grid, 0) + ' ';
        return box + '\n' + out_;
    }

  private:
    void number(double coordinate) {
        std::array<char, 24> digits{};
        const auto step = std::llround(coordinate * grid);
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), step).ptr;
        out_.append(digits.data(), end);
        out_ += ' ';
    }

    void point(ink::Point p) { number(p.x), number(p.y); }

    void trace(const ink::Path& path) {
        for (const auto& s : path.segments())
            switch (s.verb) {
            case ink::Segment::Verb::move:
                point(s.to), out_ += "m\n";
                break;
            case ink::Segment::Verb::line:
                point(s.to), out_ += "l\n";
                break;
            case ink::Segment::Verb::curve:
                point(s.a), point(s.b), point(s.to), out_ += "c\n";
                break;
            case ink::Segment::Verb::close:
                out_ += "h\n";
                break;
            }
    }

    void colour(std::optional<ink::Colour>& last, const ink::Colour& now, const char* set) {
        if (last == now) return;
        last = now;
        out_ += fixed(now.red, 4) + ' ' + fixed(now.green, 4) + ' ' + fixed(now.blue, 4) + set;
    }

    /// Width, dash, and the ends and joins; said only when they change.
    void pen(const ink::Stroke& mark, bool round) {
        std::string now = fixed(mark.width * grid, 1) + " w [";
        for (const double dash : mark.dash)
            now += fixed(dash * grid, 1) + ' ';
        now += round ? "] 0 d 1 J 1 j\n" : "] 0 d 0 J 0 j\n";
        if (now != pen_) out_ += now;
        pen_ = std::move(now);
    }

    /// With a point of air: an edge smoothed by two clips would be pale.
    void reach(const ink::Rect& box) { box_ = box_ ? box_->united(box.inset(-1)) : box.inset(-1); }

    std::string out_, pen_;
    std::optional<ink::Colour> fill_, line_;
    std::optional<ink::Rect> box_;
};

/// Of a fill or a stroke; nothing of any other mark.
const ink::Path* path_of(const ink::Mark& mark) {
    if (const auto* fill = std::get_if<ink::Fill>(&mark)) return &fill->path;
    if (const auto* stroke = std::get_if<ink::Stroke>(&mark)) return &stroke->path;
    return nullptr;
}

Operators operators(std::span<const ink::Mark> run) {
    Operators out;
    for (const auto& mark : run) {
        if (const auto* fill = std::get_if<ink::Fill>(&mark)) out.add(*fill);
        if (const auto* stroke = std::get_if<ink::Stroke>(&mark)) out.add(*stroke);
    }
    return out;
}

void attach(cairo_surface_t* surface, std::string_view type, std::string text) {
    auto* owner = new std::string(std::move(text));
    const auto release = [](void* p) { delete static_cast<std::string*>(p); };
    expect(cairo_surface_set_mime_data(surface, type.data(),
                                       reinterpret_cast<const unsigned char*>(owner->data()),
                                       owner->size(), release, owner),
           "putting a drawing into the PDF");
}

} // namespace

std::size_t form_run(std::span<const ink::Mark> marks) {
    std::size_t count = 0, weight = 0;
    for (; count < marks.size(); ++count) {
        const ink::Path* path = path_of(marks[count]);
        if (!path) break;
        weight += path->segments().size();
    }
    return weight < worth_a_form ? 0 : count;
}

void draw_form(cairo_t* context, std::span<const ink::Mark> run) {
    const Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, 1, 1));
    const Operators drawn = operators(run);
    attach(surface.get(), CAIRO_MIME_TYPE_CCITT_FAX, drawn.text());
    attach(surface.get(), CAIRO_MIME_TYPE_CCITT_FAX_PARAMS, "Columns=1 Rows=1");
    const ink::Rect& box = drawn.box();
    cairo_save(context);
    cairo_rectangle(context, box.x, box.y, box.width, box.height);
    cairo_scale(context, side, side);
    cairo_set_source_surface(context, surface.get(), 0, 0);
    cairo_pattern_set_extend(cairo_get_source(context), CAIRO_EXTEND_NONE);
    cairo_fill(context);
    cairo_restore(context);
}

void open_forms(QPDF& file) {
    // A picture is the unit square with y up, whatever its content's own measure.
    const std::string step = fixed(1.0 / (grid * side), 16);
    const auto matrix = "[" + step + " 0 0 -" + step + " 0 1]";
    for (auto& object : file.getAllObjects()) {
        if (!object.isStream()) continue;
        auto about = object.getDict();
        if (!about.getKey("/Filter").isNameAndEquals(stand_in_filter)) continue;
        const auto data = object.getRawStreamData();
        const std::string_view all(reinterpret_cast<const char*>(data->getBuffer()),
                                   data->getSize());
        const auto line = all.find('\n');
        for (const auto& key : about.getKeys())
            about.removeKey(key);
        about.replaceKey("/Type", QPDFObjectHandle::newName("/XObject"));
        about.replaceKey("/Subtype", QPDFObjectHandle::newName("/Form"));
        about.replaceKey("/BBox",
                         QPDFObjectHandle::parse("[" + std::string(all.substr(0, line)) + "]"));
        about.replaceKey("/Matrix", QPDFObjectHandle::parse(matrix));
        object.replaceStreamData(std::string(all.substr(line + 1)), QPDFObjectHandle::newNull(),
                                 QPDFObjectHandle::newNull());
    }
}

} // namespace output
