#include "words/pattern.hpp"

#include <algorithm>
#include <set>
#include <unicode/messagepattern.h>
#include <unicode/unistr.h>

namespace words {

namespace {

using Parts = icu::MessagePattern;

std::string utf8(const icu::UnicodeString& text) {
    std::string out;
    text.toUTF8String(out);
    return out;
}

bool is_number(const Parts::Part& part) { return Parts::Part::hasNumericValue(part.getType()); }

/// Turns ICU's flat list of parts into pieces.
class Reader {
  public:
    explicit Reader(const Parts& parts)
        : parts_(parts)
        , text_(parts.getPatternString()) {}

    /// The message that starts at part `at`; `count` is the hole that '#' stands for.
    Pattern message(std::int32_t at, const std::string& count = {}) {
        Pattern out;
        auto from = parts_.getPart(at).getLimit();
        for (++at;; ++at) {
            const auto& part = parts_.getPart(at);
            if (const auto to = part.getIndex(); to > from)
                add_text(out, utf8(text_.tempSubStringBetween(from, to)));
            from = part.getLimit();
            if (part.getType() == UMSGPAT_PART_TYPE_MSG_LIMIT) return out;
            if (part.getType() == UMSGPAT_PART_TYPE_REPLACE_NUMBER)
                out.push_back({Piece::Kind::hole, count, {}});
            if (part.getType() != UMSGPAT_PART_TYPE_ARG_START) continue;
            const auto limit = parts_.getLimitPartIndex(at);
            out.push_back(argument(at, limit));
            from = parts_.getPart(limit).getLimit();
            at = limit;
        }
    }

    std::optional<PatternFault> fault;

  private:
    static void add_text(Pattern& out, std::string text) {
        if (!out.empty() && out.back().kind == Piece::Kind::text)
            out.back().text += text;
        else
            out.push_back({Piece::Kind::text, std::move(text), {}});
    }

    Piece argument(std::int32_t at, std::int32_t limit) {
        const auto& start = parts_.getPart(at);
        const auto type = start.getArgType();
        Piece piece{Piece::Kind::hole, utf8(parts_.getSubstring(parts_.getPart(at + 1))), {}};
        if (type == UMSGPAT_ARG_TYPE_NONE) return piece;
        if (type == UMSGPAT_ARG_TYPE_SELECT || type == UMSGPAT_ARG_TYPE_PLURAL) {
            const bool plural = type == UMSGPAT_ARG_TYPE_PLURAL;
            piece.kind = plural ? Piece::Kind::plural : Piece::Kind::select;
            const auto name = piece.text;
            read_branches(piece, at + 2, limit, plural ? name : std::string());
            return piece;
        }
        refuse(start, "the hole '" + piece.text + "' asks for a form of its own",
               "write {" + piece.text + "}; numbers and dates come ready to print");
        return piece;
    }

    void read_branches(Piece& piece, std::int32_t at, std::int32_t limit,
                       const std::string& count) {
        if (is_number(parts_.getPart(at)))
            return refuse(parts_.getPart(at), "plural has an offset", "leave 'offset:' out");
        while (at < limit) {
            Branch branch;
            branch.selector = utf8(parts_.getSubstring(parts_.getPart(at++)));
            if (is_number(parts_.getPart(at)))
                branch.exact = parts_.getNumericValue(parts_.getPart(at++));
            branch.message = message(at, count);
            piece.branches.push_back(std::move(branch));
            at = parts_.getLimitPartIndex(at) + 1;
        }
    }

    void refuse(const Parts::Part& part, std::string what, std::string hint) {
        if (!fault)
            fault = PatternFault{std::move(what), std::move(hint),
                                 static_cast<std::size_t>(part.getIndex())};
    }

    const Parts& parts_;
    const icu::UnicodeString& text_;
};

PatternFault syntax_fault(UErrorCode code, const UParseError& place) {
    PatternFault fault;
    fault.at = static_cast<std::size_t>(std::max<std::int32_t>(place.offset, 0));
    switch (code) {
    case U_DEFAULT_KEYWORD_MISSING:
        fault.what = "a choice has no 'other' case";
        fault.hint = "add other {…} as its last case";
        break;
    case U_UNMATCHED_BRACES:
        fault.what = "a brace is not closed";
        fault.hint = "every '{' needs its '}'";
        break;
    default:
        fault.what = "the sentence's holes cannot be read";
        fault.hint = "a hole is {name}, {name, select, a {…} other {…}} or "
                     "{name, plural, one {…} other {…}}";
    }
    return fault;
}

void collect(const Pattern& pattern, std::set<std::string>& names) {
    for (const auto& piece : pattern) {
        if (piece.kind != Piece::Kind::text) names.insert(piece.text);
        for (const auto& branch : piece.branches)
            collect(branch.message, names);
    }
}

} // namespace

Pattern read_pattern(std::string_view text, std::optional<PatternFault>& fault) {
    if (text.find_first_of("{}'") == std::string_view::npos)
        return text.empty() ? Pattern{} : Pattern{{Piece::Kind::text, std::string(text), {}}};
    UErrorCode code = U_ZERO_ERROR;
    UParseError place{};
    const auto wide = icu::UnicodeString::fromUTF8(
        icu::StringPiece(text.data(), static_cast<std::int32_t>(text.size())));
    Parts parts(UMSGPAT_APOS_DOUBLE_OPTIONAL, code);
    parts.parse(wide, &place, code);
    if (U_FAILURE(code)) {
        fault = syntax_fault(code, place);
        return {};
    }
    Reader reader(parts);
    auto pattern = reader.message(0);
    fault = std::move(reader.fault);
    return fault ? Pattern{} : pattern;
}

std::vector<std::string> holes_of(const Pattern& pattern) {
    std::set<std::string> names;
    collect(pattern, names);
    return {names.begin(), names.end()};
}

} // namespace words
