#include "cli/pictures.hpp"

#include "cli/plain_letters.hpp"
#include "cli/records.hpp"
#include "output/svg_logo.hpp"
#include "unit/display.hpp"

namespace cli {

namespace {

/// A photograph stands in half the width of an A4 page.
constexpr double usual_width = 80 * unit::points_in_a_millimetre;

/// Names are relative to the file that gives them.
fs::path place_of(const diag::Located<std::string>& file) {
    return fs::path(file.span.source ? file.span.source->name() : "").parent_path() / file.value;
}

/// What to do when the picture is not there: the file that lies there under nearly that name.
std::string way_to_picture(const fs::path& path) {
    const auto plain = [](const std::string& name) {
        return in_small_letters(plain_letters(name));
    };
    const std::string wanted = path.filename().string(), like = plain(wanted);
    std::string found;
    std::error_code gone;
    const fs::path folder = path.parent_path().empty() ? "." : path.parent_path();
    for (fs::directory_iterator at(folder, gone), end; !gone && at != end; at.increment(gone)) {
        const std::string name = at->path().filename().string();
        if (plain(name) == like && (found.empty() || name < found)) found = name;
    }
    if (found.empty()) return "put the file beside the one that names it, or correct its name";
    if (in_small_letters(found) != in_small_letters(wanted))
        return diag::quote(found) +
               " lies there, its letters stored in another way: type the name anew in one of the "
               "two places, or use plain letters, " +
               plain_letters(wanted);
    return diag::quote(found) + " lies there: write its name so, with capital and small letters";
}

std::optional<photo::Photo> picture(const diag::Located<std::string>& file, const char* kind,
                                    bool may_be_svg, const photo::Cut& cut, Read& read) {
    auto& findings = read.findings;
    if (file.value.empty()) return std::nullopt;
    const std::string called = std::string("the ") + kind + " " + diag::quote(file.value) + " ";
    const fs::path path = place_of(file);
    if (!read.outside &&
        lies_outside(path,
                     fs::path(file.span.source ? file.span.source->name() : "").parent_path())) {
        findings.error(file.span, called + "does not lie in the folder of the file that names it",
                       "copy it there, or allow it with --outside");
        return std::nullopt;
    }
    std::error_code gone;
    const bool huge = fs::file_size(path, gone) > photo::largest_file && !gone;
    const auto bytes = huge ? std::optional(std::string(photo::largest_file + 1, ' '))
                            : text_of(path); // a huge one is refused by its size, unread
    if (!bytes) {
        findings.error(file.span, called + "cannot be read", way_to_picture(path));
        return std::nullopt;
    }
    try {
        photo::Photo out = photo::photo_of(*bytes, cut);
        if (out.format == "svg") {
            if (!may_be_svg)
                throw photo::Fault{"is a drawing (SVG), not a photograph", "give a JPEG or a PNG"};
            const ink::Size own = output::svg_size(*out.bytes);
            out.width = static_cast<int>(own.width), out.height = static_cast<int>(own.height);
            out.shown = {0, 0, own.width, own.height};
        }
        return out;
    } catch (const photo::Fault& fault) {
        findings.error(file.span, called + fault.what, fault.hint);
    } catch (const output::CannotDraw& fault) {
        findings.error(file.span, called + "cannot be drawn: " + fault.what(),
                       "save it as PNG and name that");
    }
    return std::nullopt;
}

std::optional<photo::Photo> photograph(const std::optional<record::Photograph>& wish, Read& read) {
    if (!wish) return std::nullopt;
    const record::Crop& c = wish->crop;
    auto out = picture(wish->file, "photograph", false, {c.left, c.top, c.right, c.bottom}, read);
    if (out && photo::widest(*out) < usual_width)
        read.findings.warning(
            wish->file.span,
            "the photograph " + diag::quote(wish->file.value) + " is only " +
                std::to_string(static_cast<int>(out->shown.width)) + " dots wide, and is printed " +
                std::to_string(
                    static_cast<int>(photo::widest(*out) / unit::points_in_a_millimetre)) +
                " mm wide so that it stays sharp",
            "use the camera's own file, not one a messenger has made smaller, or crop less");
    return out;
}

} // namespace

std::vector<fs::path> picture_files(const record::Lesson& lesson) {
    std::vector<fs::path> out;
    const auto add = [&](const diag::Located<std::string>& file) {
        if (!file.value.empty()) out.push_back(place_of(file));
    };
    for (const auto* one : {&lesson.photographs.before, &lesson.photographs.after})
        if (*one) add((*one)->file);
    for (auto& path : mark_files(lesson))
        out.push_back(std::move(path));
    return out;
}

std::vector<fs::path> mark_files(const record::Lesson& lesson) {
    std::vector<fs::path> out;
    for (const auto* file : {&lesson.marks.logo, &lesson.marks.signature})
        if (!file->value.empty()) out.push_back(place_of(*file));
    return out;
}

page::Pictures pictures_of(Read& read) {
    const record::Lesson& lesson = read.lesson;
    page::Pictures out;
    out.before = photograph(lesson.photographs.before, read);
    out.after = photograph(lesson.photographs.after, read);
    out.logo = picture(lesson.marks.logo, "logo", true, {}, read);
    out.signature = picture(lesson.marks.signature, "signature", true, {}, read);
    out.contact = lesson.marks.contact;
    return out;
}

} // namespace cli
