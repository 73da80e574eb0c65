#include "text/pango_typesetter.hpp"

#include "text/bonds.hpp"
#include "text/code_points.hpp"
#include "text/font_map.hpp"
#include "text/shape.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace text {

namespace {

constexpr std::size_t kept_texts = 4000; ///< then the store is emptied; only speed depends on it
constexpr double unbroken = -1;

/// All that decides glyphs and breaks; of the style, colour is not among it.
struct Asked {
    std::string_view words;
    const ink::Style& style;
    double width;
};

struct Key {
    std::string words;
    ink::Style style;
    double width;
    operator Asked() const { return {words, style, width}; }
};

/// An order in which two texts differ early. No text is copied to be looked up.
struct Order {
    using is_transparent = void;
    static auto weighed(const Asked& a) {
        const ink::Style& s = a.style;
        return std::tuple(a.words.size(), a.width, s.size, s.weight, s.italic, s.tracking,
                          s.tabular, a.words, std::string_view(s.family));
    }
    bool operator()(const Asked& a, const Asked& b) const { return weighed(a) < weighed(b); }
};

/// Heights of a face in em, of its ink: capitals, small letters, accented capitals, descenders.
struct Heights {
    double capital = 0, small = 0, ascent = 0, descent = 0;
};

struct SetLine {
    std::string text;
    double width = 0;
    std::shared_ptr<const ink::Shaped> shaped;
};

bool invisible(char32_t c) {
    return c < 0x20 || c == 0x7F || c == 0xAD || c == 0xFEFF || (c >= 0x200B && c <= 0x200F) ||
           (c >= 0x2028 && c <= 0x202E) || (c >= 0x2060 && c <= 0x2069) ||
           (c >= 0xFE00 && c <= 0xFE0F);
}

Held<PangoFontDescription> describe(const FontMap& map, const ink::Style& style, double size) {
    Held<PangoFontDescription> font(pango_font_description_new());
    pango_font_description_set_family(font.get(), map.names().c_str());
    pango_font_description_set_absolute_size(font.get(), size * PANGO_SCALE);
    pango_font_description_set_weight(font.get(), static_cast<PangoWeight>(style.weight));
    pango_font_description_set_style(font.get(),
                                     style.italic ? PANGO_STYLE_ITALIC : PANGO_STYLE_NORMAL);
    return font;
}

/// No line ends at these spaces.
void hold_together(PangoAttrList* list, const std::vector<std::size_t>& spaces) {
    for (const std::size_t space : spaces) {
        PangoAttribute* bond = pango_attr_allow_breaks_new(FALSE);
        bond->start_index = static_cast<guint>(space);
        bond->end_index = static_cast<guint>(space + 2);
        pango_attr_list_insert(list, bond);
    }
}

Held<PangoAttrList> attributes(const ink::Style& style) {
    Held<PangoAttrList> list(pango_attr_list_new());
    if (style.tracking != 0)
        pango_attr_list_insert(list.get(), pango_attr_letter_spacing_new(static_cast<int>(
                                               std::lround(style.tracking * PANGO_SCALE))));
    pango_attr_list_insert(list.get(), pango_attr_font_features_new(
                                           style.tabular ? "tnum=1,lnum=1" : "pnum=1,lnum=1"));
    return list;
}

double width_of(PangoLayoutLine* line) {
    PangoRectangle logical;
    pango_layout_line_get_extents(line, nullptr, &logical);
    return static_cast<double>(logical.width) / PANGO_SCALE;
}

void apply(PangoLayout* layout, const ink::Style& style, const std::vector<std::size_t>& held) {
    const auto list = attributes(style);
    hold_together(list.get(), held);
    pango_layout_set_attributes(layout, list.get());
}

/// Whether a word stands on two lines without a hyphen, because nothing else was left.
bool torn(PangoLayout* layout) {
    const char* text = pango_layout_get_text(layout);
    int count = 0;
    const PangoLogAttr* logs = pango_layout_get_log_attrs_readonly(layout, &count);
    for (const GSList* at = pango_layout_get_lines_readonly(layout); at; at = at->next) {
        const int start = static_cast<PangoLayoutLine*>(at->data)->start_index;
        if (start == 0 || text[start - 1] == '\n') continue;
        if (!logs[g_utf8_pointer_to_offset(text, text + start)].is_line_break) return true;
    }
    return false;
}

/// The last space of each paragraph that ends in a runt: a line of little more than a word.
std::vector<std::size_t> before_runts(PangoLayout* layout, double width) {
    std::vector<std::size_t> out;
    const std::string_view text = pango_layout_get_text(layout);
    for (const GSList* at = pango_layout_get_lines_readonly(layout); at; at = at->next) {
        auto* line = static_cast<PangoLayoutLine*>(at->data);
        const auto start = static_cast<std::size_t>(line->start_index);
        const auto end = start + static_cast<std::size_t>(line->length);
        const bool last = end >= text.size() || text[end] == '\n';
        if (!last || start == 0 || text[start - 1] != ' ' || end == start) continue;
        if (is_runt(text.substr(start, end - start), width_of(line), width))
            out.push_back(start - 1);
    }
    return out;
}

/// Breaks at no bond, and brings a word down to each runt where that costs no line.
void break_well(PangoLayout* layout, std::string_view words, const ink::Style& style,
                double width) {
    apply(layout, style, {});
    if (pango_layout_get_line_count(layout) == 1) return;
    std::vector<std::size_t> held = bonds(words);
    const bool was_torn = torn(layout);
    if (!held.empty()) {
        apply(layout, style, held);
        if (!was_torn && torn(layout)) {
            held.clear();
            apply(layout, style, held);
        }
    }
    const int lines = pango_layout_get_line_count(layout);
    for (int tries = 0; tries < 3; ++tries) {
        const auto runts = before_runts(layout, width);
        if (runts.empty()) return;
        auto more = held;
        more.insert(more.end(), runts.begin(), runts.end());
        apply(layout, style, more);
        if (pango_layout_get_line_count(layout) > lines || (!was_torn && torn(layout)))
            return apply(layout, style, held);
        held = std::move(more);
    }
}

/// What a reader sees of a stretch: no spaces at its end, no soft hyphen but a visible last one.
std::string visible_text(std::string_view stretch) {
    while (!stretch.empty() && stretch.back() == ' ')
        stretch.remove_suffix(1);
    std::string out;
    for (std::size_t at = 0; at < stretch.size();) {
        const std::size_t from = at;
        if (next_code_point(stretch, at) != 0xAD || at == stretch.size())
            out += stretch.substr(from, at - from);
    }
    return out;
}

} // namespace

struct PangoTypesetter::Engine {
    std::string root;
    std::map<std::pair<const Face*, FallbackSet>, std::unique_ptr<FontMap>>
        maps; ///< found, never listed
    std::map<const Face*, Heights> heights;
    std::map<Key, std::vector<SetLine>, Order> kept;

    const FontMap& map(const ink::Style& style, FallbackSet others);
    const FontMap& map_for(std::string_view words, const ink::Style& style);
    const Heights& heights_of(const ink::Style& style);
    std::vector<SetLine> broken(std::string_view words, const ink::Style& style, double width);
    const std::vector<SetLine>& lines(std::string_view words, const ink::Style& style,
                                      double width);
    ink::Words words(const SetLine& line, const ink::Style& style, ink::Point at);
};

const FontMap& PangoTypesetter::Engine::map(const ink::Style& style, FallbackSet others) {
    const Family& first = family(style.family);
    const Face& face = first.face(style.weight, style.italic);
    auto& held = maps[{&face, others}];
    if (!held) held = std::make_unique<FontMap>(first, face, others, root);
    return *held;
}

/// The choice of fallbacks depends on the text alone, never on what was set before.
const FontMap& PangoTypesetter::Engine::map_for(std::string_view words, const ink::Style& style) {
    const FontMap& first = map(style, 0);
    FallbackSet others = 0;
    for (std::size_t at = 0; at < words.size();) {
        const char32_t code = next_code_point(words, at);
        if (code < 0x80 || invisible(code) || first.covers(code)) continue;
        for (std::size_t i = 0; i < fallbacks().size(); ++i)
            if (code >= fallbacks()[i].first && code <= fallbacks()[i].last) others |= 1u << i;
    }
    return others == 0 ? first : map(style, others);
}

const Heights& PangoTypesetter::Engine::heights_of(const ink::Style& style) {
    const auto [at, fresh] =
        heights.try_emplace(&family(style.family).face(style.weight, style.italic));
    if (!fresh) return at->second;
    const FontMap& fonts = map(style, 0);
    constexpr double em = 1000;
    const auto wanted = describe(fonts, style, em);
    const Held<PangoFont> font(pango_context_load_font(fonts.context(), wanted.get()));
    auto* scaled = pango_cairo_font_get_scaled_font(PANGO_CAIRO_FONT(font.get()));
    const auto ink_of = [&](const char* letters) {
        cairo_text_extents_t e;
        cairo_scaled_font_text_extents(scaled, letters, &e);
        return std::pair{-e.y_bearing / em, (e.y_bearing + e.height) / em};
    };
    return at->second = {ink_of("H").first, ink_of("x").first, ink_of("bdhklÄÉÔ").first,
                         ink_of("gjpqy").second};
}

std::vector<SetLine> PangoTypesetter::Engine::broken(std::string_view words,
                                                     const ink::Style& style, double width) {
    const FontMap& fonts = map_for(words, style);
    PangoLayout* layout = fonts.layout();
    pango_layout_set_font_description(layout, describe(fonts, style, style.size).get());
    pango_layout_set_width(layout,
                           width < 0 ? -1 : static_cast<int>(std::floor(width * PANGO_SCALE)) + 1);
    pango_layout_set_text(layout, words.data(), static_cast<int>(words.size()));
    if (width < 0)
        apply(layout, style, {});
    else
        break_well(layout, words, style, width);
    const char* text = pango_layout_get_text(layout);
    std::vector<SetLine> out;
    for (const GSList* at = pango_layout_get_lines_readonly(layout); at; at = at->next) {
        auto* line = static_cast<PangoLayoutLine*>(at->data);
        const std::string_view stretch(text + line->start_index,
                                       static_cast<std::size_t>(line->length));
        SetShape set = shape(line, text);
        out.push_back(
            {visible_text(stretch), width_of(line) - set.narrowed, std::move(set.shaped)});
    }
    return out;
}

const std::vector<SetLine>& PangoTypesetter::Engine::lines(std::string_view words,
                                                           const ink::Style& style, double width) {
    const Asked asked{words, style, width};
    if (const auto found = kept.find(asked); found != kept.end()) return found->second;
    if (kept.size() >= kept_texts) kept.clear();
    return kept.emplace(Key{std::string(words), style, width}, broken(words, style, width))
        .first->second;
}

ink::Words PangoTypesetter::Engine::words(const SetLine& line, const ink::Style& style,
                                          ink::Point at) {
    const auto& face = heights_of(style);
    return {at,  line.text,  style, line.width, face.ascent * style.size, face.descent * style.size,
            0.0, line.shaped};
}

std::string library_versions() { return std::string("pango ") + pango_version_string(); }

PangoTypesetter::PangoTypesetter(std::string root)
    : engine_(std::make_unique<Engine>()) {
    engine_->root = std::move(root);
    fix_language();
}

PangoTypesetter::~PangoTypesetter() = default;

ink::Words PangoTypesetter::line(std::string_view words, const ink::Style& style,
                                 ink::Point at) const {
    if (words.find('\n') == words.npos)
        return engine_->words(engine_->lines(words, style, unbroken).front(), style, at);
    std::string one(words);
    std::ranges::replace(one, '\n', ' ');
    return engine_->words(engine_->lines(one, style, unbroken).front(), style, at);
}

Lines PangoTypesetter::set(std::string_view words, const ink::Style& style, double width,
                           double leading, Align align) const {
    Lines out;
    const auto& face = engine_->heights_of(style);
    const double baseline = leading / 2 + (face.capital + face.small) / 4 * style.size;
    for (const auto& line : engine_->lines(words, style, std::max(width, 0.0))) {
        const double slack = width - line.width;
        const double x = align == Align::left ? 0 : align == Align::centre ? slack / 2 : slack;
        out.lines.push_back(engine_->words(line, style, {x, out.height + baseline}));
        out.width = std::max(out.width, line.width);
        out.height += leading;
    }
    return out;
}

std::vector<char32_t> PangoTypesetter::missing(std::string_view words,
                                               const ink::Style& style) const {
    std::vector<char32_t> out;
    const FontMap& fonts = engine_->map_for(words, style);
    for (std::size_t at = 0; at < words.size();) {
        const char32_t code = next_code_point(words, at);
        if (!invisible(code) && !fonts.covers(code) && std::ranges::find(out, code) == out.end())
            out.push_back(code);
    }
    return out;
}

} // namespace text
