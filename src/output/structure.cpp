#include "output/structure.hpp"

#include "output/number.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace output {

namespace {

/// Cairo reads tag attributes from text; a quote inside a string is escaped with a backslash.
std::string quoted(const std::string& text) {
    std::string out = "'";
    for (const char c : text) {
        if (c == '\'' || c == '\\') out += '\\';
        out += c;
    }
    return out + "'";
}

/// Standard structure types (ISO 32000-1, 14.8.4) that a sheet may use. Cairo would stop much
/// later.
constexpr auto roles = std::to_array<std::string_view>(
    {"Part", "Sect",  "Div",   "BlockQuote", "Caption", "TOC",    "TOCI",   "P",
     "H1",   "H2",    "H3",    "H4",         "H5",      "H6",     "L",      "LI",
     "Lbl",  "LBody", "Table", "THead",      "TBody",   "TFoot",  "TR",     "TH",
     "TD",   "Span",  "Quote", "Note",       "Code",    "Figure", "Formula"});

bool artifact(const std::string& role) { return role == "Artifact"; }

/// For each opening tag: nothing but artifacts opens inside it.
std::vector<bool> leaves(const std::vector<ink::Mark>& marks) {
    std::vector<bool> leaf(marks.size(), true);
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const auto* tag = std::get_if<ink::Tag>(&marks[i]);
        if (!tag) continue;
        if (tag->opens) {
            if (!open.empty()) leaf[open.back()] = false;
            open.push_back(i);
        } else if (!open.empty()) {
            open.pop_back();
        }
    }
    return leaf;
}

} // namespace

Structure::Structure(cairo_t* context, const std::vector<ink::Mark>& marks)
    : context_(context)
    , marks_(marks)
    , leaf_(leaves(marks)) {}

bool Structure::enter(std::size_t index) {
    const auto& mark = marks_[index];
    if (const auto* tag = std::get_if<ink::Tag>(&mark)) {
        tag->opens ? open(index, *tag) : close(*tag);
        return false;
    }
    if (std::holds_alternative<ink::Link>(mark) || std::holds_alternative<ink::Place>(mark)) {
        waiting_.push_back(index);
        return false;
    }
    if (std::holds_alternative<ink::Clip>(mark)) return true;
    if (open_.empty())
        wrap(artifact_role);
    else if (!open_.back().leaf && open_.back().told)
        wrap("Span");
    return true;
}

void Structure::finish() {
    unwrap();
    if (!open_.empty()) throw CannotDraw("the tag '" + open_.back().role + "' is never closed");
    for (const auto index : waiting_) {
        if (const auto* link = std::get_if<ink::Link>(&marks_[index])) write(*link);
        if (const auto* place = std::get_if<ink::Place>(&marks_[index])) write(*place);
    }
    waiting_.clear();
}

void Structure::open(std::size_t index, const ink::Tag& tag) {
    unwrap();
    if (!artifact(tag.role) && std::ranges::find(roles, tag.role) == roles.end())
        throw CannotDraw("the structure type '" + tag.role + "' is unknown");
    const bool inside = !open_.empty() && (artifact(open_.back().role) || !open_.back().told);
    open_.push_back({tag.role, leaf_[index] || artifact(tag.role), !inside});
    if (inside) return;
    cairo_tag_begin(context_, artifact(tag.role) ? artifact_role : tag.role.c_str(), nullptr);
}

void Structure::close(const ink::Tag& tag) {
    unwrap();
    if (open_.empty() || open_.back().role != tag.role)
        throw CannotDraw("the tag '" + tag.role + "' is closed but '" +
                         (open_.empty() ? "nothing" : open_.back().role) + "' is open");
    if (open_.back().told)
        cairo_tag_end(context_, artifact(tag.role) ? artifact_role : tag.role.c_str());
    open_.pop_back();
}

void Structure::wrap(const char* role) {
    if (wrapped_) return;
    cairo_tag_begin(context_, role, nullptr);
    wrapped_ = role;
}

void Structure::unwrap() {
    if (!wrapped_) return;
    cairo_tag_end(context_, wrapped_);
    wrapped_ = nullptr;
}

void Structure::write(const ink::Link& mark) {
    if (mark.target.empty()) return;
    const auto& b = mark.box;
    const bool inside = mark.target.front() == '#';
    std::string where =
        inside ? "dest=" + quoted(mark.target.substr(1)) : "uri=" + quoted(mark.target);
    where += " rect=[" + fixed(b.x, 2) + " " + fixed(b.y, 2) + " " + fixed(b.width, 2) + " " +
             fixed(b.height, 2) + "]";
    cairo_tag_begin(context_, CAIRO_TAG_LINK, where.c_str());
    cairo_tag_end(context_, CAIRO_TAG_LINK);
}

void Structure::write(const ink::Place& mark) {
    const std::string where = std::string("name=") + quoted(mark.name) +
                              " x=" + fixed(mark.at.x, 2) + " y=" + fixed(mark.at.y, 2);
    cairo_tag_begin(context_, CAIRO_TAG_DEST, where.c_str());
    cairo_tag_end(context_, CAIRO_TAG_DEST);
}

} // namespace output
