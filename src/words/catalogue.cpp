#include "words/catalogue.hpp"

#include "words/lines.hpp"
#include "words/number.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace words {

namespace {

constexpr std::string_view hand_hole = "hand", age_hole = "age";
constexpr std::string_view caution_group = "caution.";

bool fills_itself(std::string_view hole) { return hole == hand_hole || hole == age_hole; }

std::string quoted(std::string_view word) {
    std::string out = "'";
    out += word;
    return out += '\'';
}

/// One walk through a pattern, writing what it says.
class Telling {
  public:
    Telling(std::string_view language, const Plural& plural, const Voice& voice,
            std::string_view key, const Holes& holes)
        : language_(language)
        , plural_(plural)
        , voice_(voice)
        , key_(key)
        , holes_(holes) {}

    void write(const Pattern& pattern, std::string& out) const {
        for (const auto& piece : pattern) {
            switch (piece.kind) {
            case Piece::Kind::text:
                out += piece.text;
                break;
            case Piece::Kind::hole:
                out += text_of(piece.text);
                break;
            case Piece::Kind::select:
                write(chosen(piece, text_of(piece.text)), out);
                break;
            case Piece::Kind::plural:
                write(counted(piece), out);
                break;
            }
        }
    }

  private:
    const Hole& hole(std::string_view name) const {
        const auto found = std::ranges::find(holes_, name, &Holes::value_type::first);
        if (found == holes_.end())
            throw std::logic_error("sentence " + quoted(key_) + " needs the hole " + quoted(name));
        return found->second;
    }

    std::string text_of(std::string_view name) const {
        if (name == hand_hole) return voice_.hand == unit::Hand::right ? "right" : "left";
        if (name == age_hole) return voice_.junior ? "junior" : "adult";
        const auto& value = hole(name).value();
        if (const auto* text = std::get_if<std::string>(&value)) return *text;
        if (const auto* count = std::get_if<long>(&value)) return whole(*count, language_);
        return shortest(std::get<double>(value));
    }

    /// At most three decimals, without noughts at the end.
    std::string shortest(double number) const {
        int decimals = 3;
        while (decimals > 0 && rounded(number, decimals) == rounded(number, decimals - 1))
            --decimals;
        return fixed(number, decimals, language_);
    }

    static const Pattern& chosen(const Piece& piece, std::string_view word) {
        for (const auto& branch : piece.branches)
            if (branch.selector == word) return branch.message;
        return chosen_other(piece);
    }

    static const Pattern& chosen_other(const Piece& piece) {
        return std::ranges::find(piece.branches, "other", &Branch::selector)->message;
    }

    const Pattern& counted(const Piece& piece) const {
        const auto& value = hole(piece.text).value();
        double number = 0;
        if (const auto* count = std::get_if<long>(&value))
            number = static_cast<double>(*count);
        else if (const auto* real = std::get_if<double>(&value))
            number = *real;
        else
            throw std::logic_error("sentence " + quoted(key_) + " counts the hole " +
                                   quoted(piece.text) + ", which holds text");
        for (const auto& branch : piece.branches)
            if (branch.exact == number) return branch.message;
        return chosen(piece, plural_.form(number));
    }

    std::string_view language_;
    const Plural& plural_;
    const Voice& voice_;
    std::string_view key_;
    const Holes& holes_;
};

/// The pattern of one line; a fault becomes a finding.
std::optional<Pattern> pattern_of(const Line& line, const diag::Source& source,
                                  diag::Findings& findings) {
    std::optional<PatternFault> fault;
    auto pattern = read_pattern(line.text, fault);
    if (!fault) return pattern;
    findings.error(line.place(source, fault->at), fault->what + " in " + quoted(line.key),
                   fault->hint);
    return std::nullopt;
}

diag::Span key_place(const Line& line, const diag::Source& source) {
    return {&source, line.line, 1, static_cast<std::uint32_t>(line.key.size())};
}

} // namespace

Catalogue::Catalogue(std::string language)
    : language_(std::move(language))
    , plural_(language_) {}

void Catalogue::add(const diag::Source& source, diag::Findings& findings) {
    for (const auto& line : read_lines(source, findings)) {
        auto pattern = pattern_of(line, source, findings);
        if (!pattern) continue;
        const auto [at, fresh] =
            entries_.try_emplace(line.key, Entry{std::move(*pattern), source.name(), line.line});
        if (!fresh)
            findings.error(key_place(line, source),
                           "the key " + quoted(line.key) + " is there twice",
                           "it stands in " + at->second.file + " on line " +
                               std::to_string(at->second.line) + " too: leave one of them");
    }
}

void Catalogue::replace(const diag::Source& source, diag::Findings& findings) {
    std::map<std::string, std::uint32_t> seen;
    for (const auto& line : read_lines(source, findings)) {
        auto pattern = pattern_of(line, source, findings);
        if (!pattern) continue;
        const auto place = key_place(line, source);
        if (const auto [at, fresh] = seen.try_emplace(line.key, line.line); !fresh) {
            findings.error(place, "the key " + quoted(line.key) + " is there twice",
                           "it stands on line " + std::to_string(at->second) + " too");
            continue;
        }
        const auto entry = entries_.find(line.key);
        if (entry == entries_.end()) {
            const auto near = diag::nearest(line.key, keys());
            findings.warning(place, "no sentence has the key " + quoted(line.key),
                             near.empty() ? "see templates/words for the keys"
                                          : "did you mean " + quoted(near) + "?");
            continue;
        }
        if (line.text.empty() && line.key.starts_with(caution_group)) {
            findings.error(place,
                           "the caution " + quoted(line.key) + " may be reworded, not left out",
                           "write the caution in your own words, or take the line away");
            continue;
        }
        const auto known = holes_of(entry->second.pattern);
        bool sound = true;
        for (const auto& name : holes_of(*pattern)) {
            if (fills_itself(name) || std::ranges::binary_search(known, name)) continue;
            sound = false;
            std::string hint = "this sentence can use {hand} and {age}";
            for (const auto& k : known)
                if (!fills_itself(k)) hint += ", {" + k + "}";
            findings.error(
                place, "nothing fills the hole " + quoted(name) + " in " + quoted(line.key), hint);
        }
        if (sound) entry->second = {std::move(*pattern), source.name(), line.line};
    }
}

std::string Catalogue::say(const Voice& voice, std::string_view key, const Holes& holes) const {
    const auto found = entries_.find(key);
    if (found == entries_.end()) throw std::logic_error("no sentence has the key " + quoted(key));
    std::string out;
    Telling(language_, plural_, voice, key, holes).write(found->second.pattern, out);
    return out;
}

std::vector<std::string_view> Catalogue::keys() const {
    std::vector<std::string_view> out;
    out.reserve(entries_.size());
    for (const auto& [key, entry] : entries_)
        out.push_back(key);
    return out;
}

std::vector<std::string> Catalogue::holes(std::string_view key) const {
    const auto found = entries_.find(key);
    if (found == entries_.end()) return {};
    auto names = holes_of(found->second.pattern);
    std::erase_if(names, fills_itself);
    return names;
}

std::string_view base_language(std::string_view language) {
    return language == "en-GB" ? std::string_view{} : "en-GB";
}

} // namespace words
