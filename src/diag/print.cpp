#include "diag/finding.hpp"
#include "diag/utf8.hpp"

#include <algorithm>
#include <tuple>

namespace diag {

namespace {

constexpr std::uint32_t window = 84; ///< widest excerpt in code points
constexpr std::uint32_t lead = 50;   ///< code points kept before the place in a cut line
constexpr std::size_t most_printed = 20;

struct Ink {
    std::string_view strong, end, error, warning, note;
};
constexpr Ink plain{};
constexpr Ink coloured{"\x1b[1m", "\x1b[0m", "\x1b[1;31m", "\x1b[1;35m", "\x1b[1;36m"};

/// A piece of text made safe for a terminal, and the columns it takes there.
struct Shown {
    std::string text;
    int columns = 0;
};

void show(CodePoint point, std::string_view bytes, Shown& to) {
    if (point.valid && point.value == U'\t')
        to.text += "→";
    else if (!point.valid || point.value < 0x20 || (point.value >= 0x7F && point.value < 0xA0))
        to.text += "·";
    else {
        to.text += bytes;
        to.columns += columns_of(point.value);
        return;
    }
    ++to.columns;
}

/// The code points [first, last) of `text`, counted from 0.
Shown slice(std::string_view text, std::uint32_t first, std::uint32_t last) {
    Shown shown;
    for (std::uint32_t i = 0; !text.empty() && i < last; ++i) {
        const CodePoint point = first_code_point(text);
        if (i >= first) show(point, text.substr(0, point.bytes), shown);
        text.remove_prefix(point.bytes);
    }
    return shown;
}

std::string head(const Finding& finding, const Ink& ink) {
    const Span& at = finding.span;
    std::string text(ink.strong);
    if (at.source) text += at.source->name() + ":";
    if (at.source && at.line > 0)
        text += std::to_string(at.line) + ":" + std::to_string(at.column) + ":";
    if (!text.empty() && text.back() == ':') text += ' ';
    text += ink.end;
    switch (finding.severity) {
    case Severity::error:
        text += std::string(ink.error) + "error:";
        break;
    case Severity::warning:
        text += std::string(ink.warning) + "warning:";
        break;
    case Severity::note:
        text += std::string(ink.note) + "note:";
        break;
    }
    return text + std::string(ink.end) + " " + finding.what + "\n";
}

std::string excerpt(const Span& at, const Ink& ink) {
    const std::string_view line = at.source->line(at.line);
    const std::uint32_t place = at.column - 1;
    const std::uint32_t first = place > lead + 10 ? place - lead : 0;
    const Shown before = slice(line, first, place);
    const std::uint32_t cut = std::min(place + at.length, first + window);
    const Shown under = slice(line, place, std::max(cut, place + 1));
    const Shown after = slice(line, std::max(cut, place + 1), first + window);
    const bool more = slice(line, first + window, first + window + 1).columns > 0;

    std::string number = std::to_string(at.line);
    if (number.size() < 5) number.insert(0, 5 - number.size(), ' ');
    std::string text = number + " | " + (first > 0 ? "…" : "") + before.text + under.text +
                       after.text + (more ? "…" : "") + "\n";
    text += std::string(number.size(), ' ') + " | " +
            std::string(static_cast<std::size_t>(before.columns + (first > 0 ? 1 : 0)), ' ');
    text += std::string(ink.error) + "^" +
            std::string(static_cast<std::size_t>(std::max(under.columns, 1) - 1), '~');
    return text + std::string(ink.end) + "\n";
}

/// Errors first; then file by file in the order of the run, from top to bottom.
std::vector<const Finding*> in_order(const Findings& findings) {
    std::vector<const Finding*> order;
    std::vector<const Source*> files;
    for (const Finding& finding : findings.list()) {
        order.push_back(&finding);
        if (std::ranges::find(files, finding.span.source) == files.end())
            files.push_back(finding.span.source);
    }
    std::ranges::stable_sort(order, {}, [&](const Finding* f) {
        const std::uint32_t line = f->span.line == 0 ? UINT32_MAX : f->span.line;
        return std::tuple(f->severity, std::ranges::find(files, f->span.source), line,
                          f->span.column);
    });
    return order;
}

} // namespace

std::string print(const Finding& finding, bool colour) {
    const Ink& ink = colour ? coloured : plain;
    std::string text = head(finding, ink);
    if (finding.span.source && finding.span.line > 0 && finding.span.column > 0)
        text += excerpt(finding.span, ink);
    if (!finding.hint.empty()) text += "  hint: " + finding.hint + "\n";
    return text;
}

std::string print_all(const Findings& findings, bool colour) {
    const std::vector<const Finding*> order = in_order(findings);
    std::string text;
    for (std::size_t i = 0; i < std::min(order.size(), most_printed); ++i)
        text += print(*order[i], colour);
    if (findings.total() > most_printed)
        text += "and " + std::to_string(findings.total() - most_printed) + " more\n";
    return text;
}

std::string quote(std::string_view text) {
    constexpr std::uint32_t most = 40;
    std::string shown = slice(text, 0, most).text;
    if (code_points(text.substr(0, 4 * most + 4)) > most) shown += "…";
    return "'" + shown + "'";
}

} // namespace diag
