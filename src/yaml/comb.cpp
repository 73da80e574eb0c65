#include "yaml/comb.hpp"

#include "yaml/explain.hpp"

#include <algorithm>
#include <array>
#include <cctype>

namespace yaml {

namespace {

bool blank(char c) { return c == ' ' || c == '\t'; }

/// Bytes of a space that is no plain one (no-break, thin, wide) at the start of `text`; 0 for none.
std::size_t odd_space(std::string_view text) {
    constexpr std::array<std::string_view, 6> spaces{
        "\xC2\xA0", "\xE2\x80\xAF", "\xE3\x80\x80", "\xE2\x80\x83", "\xE2\x80\x89", "\xE2\x80\x82"};
    for (const std::string_view space : spaces)
        if (text.starts_with(space)) return space.size();
    return 0;
}

/// True when `text` begins with a plain key and its colon, or with a dash.
bool key_or_dash(std::string_view text) {
    if (text.starts_with("- ")) return true;
    std::size_t at = 0;
    while (at < text.size() &&
           (std::isalpha(static_cast<unsigned char>(text[at])) != 0 || text[at] == ' '))
        ++at;
    return at > 0 && at < text.size() && text[at] == ':' &&
           (at + 1 == text.size() || blank(text[at + 1]));
}

/// Follows quotes, brackets and blocks of text through the lines, as the parser will.
class Comb {
  public:
    Comb(const diag::Source& source, diag::Findings& findings)
        : source_(source)
        , findings_(findings)
        , combed_{source.text()} {}

    Combed run() {
        for (std::uint32_t number = 1; number <= source_.line_count(); ++number)
            look(number);
        return std::move(combed_);
    }

  private:
    void look(std::uint32_t number);
    bool in_block(std::size_t indent);
    void indented_oddly(std::size_t indent);
    void walk(std::size_t at);
    std::size_t quoted(std::size_t at);
    std::size_t dashes(std::size_t at);
    bool bracket(char c);
    void step(std::size_t at);
    bool cuts(std::size_t at) const;
    bool goes_on_below() const;
    std::size_t tell_cut(std::size_t at);
    void tell_semicolon(std::size_t at);
    char next(std::size_t at) const { return at + 1 < line_.size() ? line_[at + 1] : ' '; }
    char& copy(std::size_t at) {
        return combed_.text[static_cast<std::size_t>(line_.data() - source_.text().data()) + at];
    }

    const diag::Source& source_;
    diag::Findings& findings_;
    Combed combed_;
    std::uint32_t number_ = 0;
    std::string_view line_;
    char quote_ = 0;                    ///< the open one
    int depth_ = 0;                     ///< open brackets
    bool start_ = true;                 ///< a value may begin here
    bool closed_ = false;               ///< a quote or bracket has just ended the value
    bool block_ = false;                ///< in a block of text
    std::size_t outer_ = 0, inner_ = 0; ///< indents of its key and of the block, 0 while unknown
    std::size_t key_ = 0, value_ = 0;   ///< where the last key and the last value begin
};

void Comb::look(std::uint32_t number) {
    number_ = number;
    line_ = source_.line(number);
    if (quote_ != 0) return walk(0);
    const std::size_t indent = std::min(line_.find_first_not_of(' '), line_.size());
    if (indent == line_.size() || in_block(indent)) return;
    indented_oddly(indent);
    if (line_[indent] != '#') walk(indent);
}

bool Comb::in_block(std::size_t indent) {
    if (!block_) return false;
    if (inner_ == 0 && indent > outer_) inner_ = indent;
    if (inner_ != 0 && indent >= inner_) return true;
    block_ = false;
    start_ = false;
    return false;
}

void Comb::indented_oddly(std::size_t indent) {
    std::size_t at = indent, odd = 0;
    while (const std::size_t bytes = odd_space(line_.substr(at))) {
        odd += bytes;
        at = std::min(line_.find_first_not_of(' ', at + bytes), line_.size());
    }
    if (odd == 0 || !key_or_dash(line_.substr(at))) return;
    combed_.readable = false;
    findings_.error(source_.in_line(number_, indent),
                    "a no-break space is used to indent this line, where only plain spaces count",
                    "delete what stands before the first letter, and type plain spaces");
}

/// Past the dashes that begin list items.
std::size_t Comb::dashes(std::size_t at) {
    while (depth_ == 0 && at < line_.size() && (line_[at] == '-' || blank(line_[at]))) {
        if (line_[at] == '-' && !blank(next(at))) break;
        if (line_[at] == '-') start_ = true;
        ++at;
    }
    return at;
}

void Comb::walk(std::size_t at) {
    key_ = value_ = at; // of a text that began above, what this line holds
    if (quote_ == 0) {
        closed_ = false;
        at = dashes(at);
        key_ = value_ = at;
        const char first = at < line_.size() ? line_[at] : ' ';
        const bool whole_in_line =
            (first == '"' || first == '\'') && line_.find(first, at + 1) != std::string_view::npos;
        start_ = start_ || whole_in_line; // a key in quotes, maybe
    }
    while (at < line_.size()) {
        const char c = line_[at];
        if (quote_ != 0) {
            at = quoted(at);
            continue;
        }
        if (c == '#' && (start_ || (at > 0 && blank(line_[at - 1])))) {
            if (!cuts(at)) return;
            at = tell_cut(at);
            continue;
        }
        if (start_ && depth_ == 0 && (c == '|' || c == '>')) {
            block_ = true;
            outer_ = line_.find_first_not_of(' ');
            inner_ = 0;
            return;
        }
        step(at++);
    }
}

/// A byte inside quotes; where the next one stands.
std::size_t Comb::quoted(std::size_t at) {
    if (quote_ == '"' && line_[at] == '\\') return at + 2;
    if (line_[at] != quote_) return at + 1;
    if (quote_ == '\'' && next(at) == '\'') return at + 2;
    quote_ = 0;
    start_ = false;
    closed_ = true;
    return at + 1;
}

bool Comb::bracket(char c) {
    if ((c == '{' || c == '[') && (depth_ > 0 || start_)) {
        ++depth_;
        start_ = true;
        closed_ = false;
        return true;
    }
    if ((c != '}' && c != ']') || depth_ == 0) return false;
    --depth_;
    start_ = false;
    closed_ = true;
    return true;
}

/// A byte outside quotes.
void Comb::step(std::size_t at) {
    const char c = line_[at];
    if (blank(c)) return;
    if (start_) value_ = at;
    if (start_ && (c == '"' || c == '\'')) {
        quote_ = c;
        return;
    }
    if (bracket(c)) {
        if (start_) key_ = std::min(line_.find_first_not_of(' ', at + 1), line_.size());
        return;
    }
    const bool semicolon =
        depth_ > 0 && c == ';' &&
        key_or_dash(line_.substr(std::min(line_.find_first_not_of(' ', at + 1), line_.size())));
    if (semicolon) tell_semicolon(at);
    if (depth_ > 0 && (c == ',' || semicolon)) {
        start_ = true;
        closed_ = false;
        key_ = std::min(line_.find_first_not_of(' ', at + 1), line_.size());
        return;
    }
    start_ = c == ':' && blank(next(at));
    closed_ = false;
}

/// True when this '#' does not begin a remark.
bool Comb::cuts(std::size_t at) const {
    const std::size_t after = line_.find_first_not_of('#', at);
    if (after == std::string_view::npos || blank(line_[after]) || closed_) return false;
    if (line_.find_first_not_of(' ') == at) return false;
    return !start_ || depth_ > 0 || !goes_on_below();
}

/// True when the value of this line's key begins on a later line.
bool Comb::goes_on_below() const {
    const std::size_t indent = line_.find_first_not_of(' ');
    for (std::uint32_t number = number_ + 1; number <= source_.line_count(); ++number) {
        const std::string_view below = source_.line(number);
        const std::size_t first = below.find_first_not_of(" \t");
        if (first == std::string_view::npos || below[first] == '#') continue;
        return first > indent || (first == indent && below.substr(first).starts_with("- ") &&
                                  !line_.substr(indent).starts_with("- "));
    }
    return false;
}

/// Keeps a text that begins with '#'; blanks out what follows another value, which is read without
/// it. Comes back with the place after it.
std::size_t Comb::tell_cut(std::size_t at) {
    const bool begins = start_;
    if (begins) value_ = at;
    std::size_t end = depth_ > 0 ? std::min(line_.find_first_of(",}]", at), line_.size())
                                 : line_.find_last_not_of(" \t\r") + 1;
    while (end > at && blank(line_[end - 1]))
        --end;
    const std::string key(line_.substr(key_, value_ > key_ ? value_ - key_ : 0));
    findings_.error(source_.in_line(number_, at, end - at), "what follows '#' would be left out",
                    "put the text in double quotes: " + key +
                        in_quotes(line_.substr(value_, end - value_)) +
                        "; a remark of your own begins with '# '");
    for (std::size_t i = at; i < end && !begins; ++i)
        copy(i) = ' ';
    if (begins) copy(at) = kept_hash;
    start_ = false;
    return end;
}

void Comb::tell_semicolon(std::size_t at) {
    findings_.error(source_.in_line(number_, at),
                    "a semicolon stands between the parts of a bracket", "write a comma there");
    copy(at) = ',';
}

} // namespace

Combed comb(const diag::Source& source, diag::Findings& findings) {
    return Comb(source, findings).run();
}

} // namespace yaml
