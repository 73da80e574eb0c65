#include "record/read_marks.hpp"
#include "record/parts.hpp"

#include <algorithm>

namespace record {

namespace {

/// Points that a code of 25 mm can hold at half a millimetre a point, less what a camera forgives.
constexpr std::size_t longest_link = 150;
constexpr std::size_t most_contact_lines = 4, longest_contact_line = 70;

/// A file beside the one that names it: an absolute path or one that climbs out would tie the
/// record to this computer.
void read_file_name(const yaml::Field& field, diag::Located<std::string>& to) {
    const auto text = field.text();
    if (!text) return;
    to = {*text, field.span()};
    if (text->starts_with('/') || text->starts_with('\\') || text->find(':') != text->npos ||
        ("/" + *text + "/").find("/../") != std::string::npos) {
        field.must("lie beside the file that names it",
                   "copy the picture there and write its name alone");
        to.value.clear();
    }
}

void read_crop(const yaml::Field& field, Crop& crop) {
    field.only({"left", "top", "right", "bottom"});
    const auto part = [&](std::string_view key, double& to) {
        if (const auto percent = field.at(key).number(0, 90)) to = *percent / 100;
    };
    part("left", crop.left), part("top", crop.top);
    part("right", crop.right), part("bottom", crop.bottom);
    if (crop.left + crop.right > 0.9 || crop.top + crop.bottom > 0.9)
        field.error(field.called() + " leaves almost nothing of the picture",
                    "say what to cut off at each side, in hundredths: crop: {left: 20, right: 10}");
}

void read_photograph(const yaml::Field& field, const Crop& shared,
                     std::optional<Photograph>& photograph) {
    if (!field) return;
    Photograph read{.crop = shared};
    if (field.is_text()) {
        read_file_name(field, read.file);
    } else {
        field.only({"file", "crop"});
        read_file_name(field.required("file", "before.jpg"), read.file);
        if (const auto crop = field.at("crop")) read_crop(crop, read.crop);
    }
    if (!read.file.value.empty()) photograph = std::move(read);
}

} // namespace

void read_marks(const yaml::Field& field, Marks& marks) {
    if (!field) return;
    field.only({"logo", "signature", "accent", "contact"});
    read_file_name(field.at("logo"), marks.logo);
    read_file_name(field.at("signature"), marks.signature);
    const auto accent = field.at("accent");
    if (auto text = accent.text()) marks.accent = {std::move(*text), accent.span()};
    const auto contact = field.at("contact");
    if (contact) marks.contact.clear();
    take(contact, marks.contact);
    if (marks.contact.size() > most_contact_lines)
        contact.must("have at most 4 lines", "keep what a student needs to reach you");
    for (const auto& line : marks.contact)
        if (line.size() > longest_contact_line)
            contact.must("have lines of at most 70 characters", "make two lines of it");
}

void read_photographs(const yaml::Field& field, Photographs& photographs) {
    if (!field) return;
    field.only({"before", "after", "crop", "caption"});
    Crop shared;
    if (const auto crop = field.at("crop")) read_crop(crop, shared);
    read_photograph(field.at("before"), shared, photographs.before);
    read_photograph(field.at("after"), shared, photographs.after);
    take(field.at("caption"), photographs.caption);
    if (field.is_map() && !field.at("before") && !field.at("after"))
        field.error("'photographs' names no picture",
                    "add such a line as before: before.jpg, or leave 'photographs' out");
}

void read_link(const yaml::Field& field, diag::Located<std::string>& link) {
    const auto text = field.text();
    if (!text) return;
    const bool plain = std::ranges::all_of(*text, [](char c) { return c > ' ' && c < 127; });
    if (!text->starts_with("https://") && !text->starts_with("http://"))
        return field.must("begin with https://",
                          "copy it whole from the address bar of your browser");
    if (!plain)
        return field.must("have neither spaces nor letters beyond a to z",
                          "copy it from the address bar, where such letters are written as %");
    if (text->size() > longest_link)
        return field.must("have at most 150 characters",
                          "a longer one makes a code that cameras do not read: shorten it");
    link = {*text, field.span()};
}

Marks read_marks(const diag::Source& source, diag::Findings& findings) {
    Marks marks;
    const yaml::Document document(source, findings);
    if (document.readable()) read_marks(document.root("this file"), marks);
    return marks;
}

} // namespace record
