#include "yaml/explain.hpp"

#include <algorithm>
#include <cctype>

namespace yaml {

std::string in_quotes(std::string_view text) {
    std::string quoted = "\"";
    for (const char c : text.substr(0, 50))
        quoted += c == '"' ? std::string("'") : std::string(1, c);
    return quoted + (text.size() > 50 ? "…\"" : "\"");
}

namespace {

/// One line taken apart: "    - key: value".
struct Line {
    std::uint32_t number = 0;
    std::string_view all;
    std::size_t indent = 0; ///< bytes before the first letter, dashes included
    std::size_t colon = std::string_view::npos;
    std::size_t value = std::string_view::npos; ///< where the value starts
};

bool blank(char c) { return c == ' ' || c == '\t'; }
bool key_letter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0 || c == ' ' || c == '_' || c == '-';
}

Line take_apart(const diag::Source& source, std::uint32_t number) {
    Line line{number, source.line(number)};
    const std::string_view all = line.all;
    while (line.indent < all.size() &&
           (blank(all[line.indent]) || all.substr(line.indent).starts_with("- ")))
        ++line.indent;
    std::size_t end = line.indent;
    while (end < all.size() && key_letter(all[end]))
        ++end;
    if (end == line.indent || end >= all.size() || all[end] != ':') return line;
    line.colon = end;
    line.value = end + 1;
    while (line.value < all.size() && blank(all[line.value]))
        ++line.value;
    return line;
}

std::string key_of(const Line& line) {
    return std::string(line.all.substr(line.indent, line.colon - line.indent));
}

class Search {
  public:
    Search(const diag::Source& source, const std::string& read, const Stop& stop,
           diag::Findings& findings)
        : source_(source)
        , read_(read)
        , stop_(stop)
        , findings_(findings) {}

    void run() {
        for (std::uint32_t number = 1; number <= source_.line_count(); ++number)
            look(number);
    }
    bool found() const { return found_; }
    /// The text with each colon that stands inside a text replaced by a semicolon: every other
    /// place stays where it was. Empty when there was another slip, or none.
    std::string mended() const {
        std::string text;
        if (colons_.empty() || other_) return text;
        text = read_;
        for (const std::size_t at : colons_)
            text[at] = ';';
        return text;
    }

  private:
    void look(std::uint32_t number);
    bool tab(const Line& line);
    bool colon_without_space(const Line& line);
    bool colon_in_text(const Line& line);
    bool open_quote(const Line& line);
    bool after_quote(const Line& line);
    bool special_start(const Line& line);
    bool dash_after_key(const Line& line);
    bool comma_missing(const Line& line);
    bool colon_missing(const Line& line);
    bool before_stop(const Line& line) const;
    void report(const Line& line, std::size_t at, std::size_t bytes, std::string what,
                std::string hint) {
        findings_.error(source_.in_line(line.number, at, bytes), std::move(what), std::move(hint));
        found_ = true;
    }
    std::size_t offset_of(const Line& line) const {
        return static_cast<std::size_t>(line.all.data() - source_.text().data());
    }
    /// Slips that are only likely, not certain, are told near the parser's own place.
    bool near(const Line& line) const {
        return line.number <= stop_.span.line + 1 && line.number + 2 >= stop_.span.line;
    }

    const diag::Source& source_;
    const std::string& read_; ///< what the parser was given
    const Stop& stop_;
    diag::Findings& findings_;
    std::size_t block_indent_ = std::string_view::npos; ///< inside a block of text deeper than this
    bool found_ = false;
    bool other_ = false;              ///< a slip that cannot be read past
    std::vector<std::size_t> colons_; ///< inside texts, bytes from the start
};

void Search::look(std::uint32_t number) {
    const Line line = take_apart(source_, number);
    if (line.indent >= line.all.size() || line.all[line.indent] == '#') return;
    if (block_indent_ != std::string_view::npos) {
        if (line.indent > block_indent_) return;
        block_indent_ = std::string_view::npos;
    }
    const bool value = line.value != std::string_view::npos && line.value < line.all.size();
    if (value && (line.all[line.value] == '|' || line.all[line.value] == '>'))
        block_indent_ = line.indent;
    if (tab(line) || colon_without_space(line) ||
        (value &&
         (open_quote(line) || after_quote(line) || special_start(line) || dash_after_key(line)))) {
        other_ = true;
        return;
    }
    if (comma_missing(line) || colon_missing(line)) {
        other_ = true;
        return;
    }
    if (value) colon_in_text(line);
}

bool Search::tab(const Line& line) {
    const std::size_t at = line.all.substr(0, line.indent).find('\t');
    if (at == std::string_view::npos) return false;
    report(line, at, 1, "a tab is used to indent this line, where only spaces count",
           "replace each tab by two spaces");
    return true;
}

bool Search::colon_without_space(const Line& line) {
    if (line.colon == std::string_view::npos || line.colon + 1 >= line.all.size()) return false;
    if (blank(line.all[line.colon + 1]) || line.all[line.colon + 1] == '/' || !near(line))
        return false;
    report(line, line.colon, 1, "a space is missing after the colon of '" + key_of(line) + "'",
           "write '" + key_of(line) + ": " + std::string(line.all.substr(line.value, 40)) + "'");
    return true;
}

bool Search::colon_in_text(const Line& line) {
    const std::string_view text = line.all.substr(line.value);
    if (std::string_view("\"'[{|>#").find(text.front()) != std::string_view::npos) return false;
    std::size_t colon = text.find(": ");
    if (colon == std::string_view::npos && text.ends_with(':')) colon = text.size() - 1;
    if (colon == std::string_view::npos || colon > text.find(" #")) return false;
    report(line, line.value + colon, 1, "the text of '" + key_of(line) + "' has a colon in it",
           "put the whole text in double quotes: " + key_of(line) + ": " + in_quotes(text));
    for (; colon < text.size() && colon < text.find(" #"); ++colon)
        if (text[colon] == ':' && (colon + 1 == text.size() || text[colon + 1] == ' '))
            colons_.push_back(offset_of(line) + line.value + colon);
    return true;
}

bool Search::open_quote(const Line& line) {
    const std::string_view text = line.all.substr(line.value);
    const char mark = text.front();
    if (mark != '"' && mark != '\'') return false;
    for (std::size_t i = 1; i < text.size(); ++i) {
        if (mark == '"' && text[i] == '\\')
            ++i;
        else if (text[i] == mark)
            return false;
    }
    const bool closed_later =
        source_.text().find(mark, offset_of(line) + line.value + 1) != std::string::npos;
    if (closed_later && !near(line)) return false;
    report(line, line.value, 1, "the quote that opens here is not closed",
           "end the text with the same quote: " + key_of(line) + ": " + in_quotes(text.substr(1)));
    return true;
}

bool Search::after_quote(const Line& line) {
    const std::string_view text = line.all.substr(line.value);
    const char mark = text.front();
    if (mark != '"' && mark != '\'') return false;
    std::size_t end = 1;
    while (end < text.size() && text[end] != mark)
        end += mark == '"' && text[end] == '\\' ? 2 : 1;
    if (mark == '\'' && text.substr(end).starts_with("''")) return false;
    std::size_t next = end + 1;
    while (next < text.size() && blank(text[next]))
        ++next;
    if (next >= text.size() || text[next] == '#' || text[next] == ',') return false;
    const bool apostrophe = mark == '\'' && end > 1;
    const bool around = text.ends_with(mark) && text.size() > end + 1;
    report(line, line.value + end, 1,
           apostrophe ? "an apostrophe closes this text too early"
                      : "the quote closes here, but the text goes on",
           "put the whole text in double quotes and use single ones inside: " + key_of(line) +
               ": " + in_quotes(around ? text.substr(1, text.size() - 2) : text));
    return true;
}

bool Search::special_start(const Line& line) {
    const std::string_view text = line.all.substr(line.value);
    if (std::string_view("@`%*&!").find(text.front()) == std::string_view::npos || !near(line))
        return false;
    report(line, line.value, 1,
           "a text cannot begin with '" + std::string(1, text.front()) + "' unless it is in quotes",
           "write " + key_of(line) + ": " + in_quotes(text));
    return true;
}

bool Search::dash_after_key(const Line& line) {
    const std::string_view text = line.all.substr(line.value);
    if (!text.starts_with("- ") || !near(line)) return false;
    const std::string item(text.substr(std::min(text.find_first_not_of(" -"), text.size())));
    report(line, line.value, 1, "a dash begins an item of a list, which needs a line of its own",
           "take the dash away: " + key_of(line) + ": " + item.substr(0, 50) +
               (item.size() > 50 ? "…" : "") + "; or begin the list on the next line");
    return true;
}

/// "knuckles: 1 V: chin" inside braces: two colons with nothing between the parts.
bool Search::comma_missing(const Line& line) {
    if (line.number != stop_.span.line) return false;
    int depth = 0;
    bool quoted = false;
    std::size_t value = std::string_view::npos; // where the part's value begins, behind its colon
    for (std::size_t i = 0; i < line.all.size(); ++i) {
        const char c = line.all[i];
        if (c == '"') quoted = !quoted;
        if (quoted) continue;
        if (c == '{' || c == '[') ++depth;
        if (c == '}' || c == ']') --depth;
        if (std::string_view("{}[],\"").find(c) != std::string_view::npos)
            value = std::string_view::npos;
        if (depth < 1 || c != ':' || i + 1 == line.all.size() || line.all[i + 1] != ' ') continue;
        if (value == std::string_view::npos) {
            value = line.all.find_first_not_of(' ', i + 1);
            continue;
        }
        const std::string_view between = line.all.substr(value, i - value);
        const std::size_t space = between.find(' ');
        if (space == std::string_view::npos) return false;
        const bool sure = between.find(' ', space + 1) == std::string_view::npos;
        const std::string text(between);
        report(line, value, between.size(), "a comma is missing between two parts here",
               sure ? "write '" + text.substr(0, space) + ", " + text.substr(space + 1) + ":'"
                    : "put a comma before the key that ends in '" +
                          text.substr(text.find_last_of(' ') + 1) + ":'");
        return true;
    }
    return false;
}

/// "date 2026-06-03" before "lesson: 1": the parser stops only at the second line's colon, or here
/// when a remark follows.
bool Search::colon_missing(const Line& line) {
    if (line.all.find(':') != std::string_view::npos) return false;
    if (line.number != stop_.span.line && !before_stop(line)) return false;
    const std::string_view text = line.all.substr(line.indent);
    const std::size_t space = text.find(' ');
    if (space == std::string_view::npos || !std::ranges::all_of(text.substr(0, space), key_letter))
        return false;
    const std::string key(text.substr(0, space)), value(text.substr(space + 1));
    report(line, line.indent, text.size(), "this line has no colon after its key",
           value.find(' ') == std::string::npos
               ? "write it as '" + key + ": " + value + "'"
               : "write it as 'key: value', or indent it when it goes on with the text above");
    return true;
}

/// Whether the parser stopped at the next line of the same group.
bool Search::before_stop(const Line& line) const {
    std::uint32_t next = line.number + 1;
    const auto empty = [&](std::uint32_t number) {
        const Line other = take_apart(source_, number);
        return other.indent >= other.all.size() || other.all[other.indent] == '#';
    };
    while (next < stop_.span.line && empty(next))
        ++next;
    const Line stopped = take_apart(source_, stop_.span.line);
    return next == stop_.span.line && stopped.indent == line.indent &&
           stopped.colon != std::string_view::npos;
}

/// Where the innermost bracket stands that is open at the parser's place; that place itself when
/// there is none. Quoted text is skipped line by line.
diag::Span open_bracket(const diag::Source& source, const Stop& stop) {
    std::vector<diag::Span> open;
    for (std::uint32_t number = 1; number <= stop.span.line; ++number) {
        const std::string_view line = source.line(number);
        bool quoted = false;
        for (std::size_t i = 0; i < line.size(); ++i) {
            const char c = line[i];
            if (c == '"') quoted = !quoted;
            if (quoted) continue;
            if (c == '{' || c == '[') open.push_back(source.in_line(number, i));
            if ((c == '}' || c == ']') && !open.empty()) open.pop_back();
        }
    }
    return open.empty() ? stop.span : open.back();
}

void unexplained(const diag::Source& source, const Stop& stop, diag::Findings& findings) {
    const std::string& detail = stop.detail;
    if (detail.find("end of sequence flow") != std::string::npos ||
        detail.find("end of map flow") != std::string::npos ||
        detail.find("end of file") != std::string::npos)
        return findings.error(
            open_bracket(source, stop), "the bracket that opens here is not closed",
            "each '{' needs a '}', each '[' a ']', with commas between the parts");
    findings.error(stop.span, "this line does not fit the lines above it",
                   "start it under the first letter of the other lines of its group, with spaces, "
                   "and write it as 'key: value'");
}

} // namespace

namespace {

void explain_refusal(const Stop& stop, diag::Findings& findings) {
    switch (stop.reason) {
    case Stop::Reason::repeated:
        return findings.error(stop.span,
                              "'&' and '*' repeat a part of the file, which is not read here",
                              "write the part out again, or put a text that begins so in quotes");
    case Stop::Reason::deep:
        return findings.error(
            stop.span, "parts are nested deeper than " + std::to_string(deepest) + " levels here",
            "look for brackets or dashes too many at this place");
    case Stop::Reason::large:
        return findings.error(stop.span,
                              "the file has more than " + std::to_string(most_parts) + " parts",
                              "keep one lesson to a file, and the shots in a table of their own");
    case Stop::Reason::second:
        return findings.error(stop.span, "a second record begins here, after '---'",
                              "keep one lesson to a file: move this part to a file of its own");
    case Stop::Reason::odd_key:
        return findings.error(stop.span, "a key must be a plain word, not a list or a group",
                              "take away the bracket, or put the text in quotes");
    case Stop::Reason::syntax:
        break;
    }
}

} // namespace

std::string explain(const diag::Source& source, const std::string& text, const Stop& stop,
                    diag::Findings& findings) {
    if (stop.reason != Stop::Reason::syntax) {
        explain_refusal(stop, findings);
        return {};
    }
    Search search(source, text, stop, findings);
    search.run();
    if (!search.found()) unexplained(source, stop, findings);
    return search.mended();
}

} // namespace yaml
