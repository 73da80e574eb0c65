// Findings: what is wrong with the input, where, and the way out.
#pragma once

#include "diag/source.hpp"

#include <string>
#include <vector>

namespace diag {

enum class Severity : std::uint8_t { error, warning, note };

/// One fault. `what` is a lower-case clause without a full stop, names in 'quotes', found and
/// expected both named. `hint` says what a coach would do next.
struct Finding {
    Severity severity = Severity::error;
    Span span;
    std::string what;
    std::string hint;
};

/// All findings of one run, in the order in which they were found. The first thousand are kept,
/// the rest is counted: a table with every cell wrong must not fill the memory.
class Findings {
  public:
    static constexpr std::size_t kept = 1000;

    void error(Span span, std::string what, std::string hint = {});
    void warning(Span span, std::string what, std::string hint = {});
    void note(Span span, std::string what, std::string hint = {});

    /// True when there is no error.
    bool clean() const { return errors_ == 0; }
    std::size_t errors() const { return errors_; }
    /// How many were found, kept or not.
    std::size_t total() const { return total_; }
    const std::vector<Finding>& list() const { return list_; }

  private:
    void add(Severity severity, Span span, std::string what, std::string hint);

    std::vector<Finding> list_;
    std::size_t errors_ = 0;
    std::size_t total_ = 0;
};

/// "file:line:column: error: what", the line, a caret under the place, "  hint: …". Ends with '\n'.
/// Long lines are cut around the place; a tab is shown as '→', other control characters and bytes
/// that are not UTF-8 as '·'.
std::string print(const Finding& finding, bool colour = false);

/// At most 20 findings, errors first, each file from top to bottom, then "and 13 more". Empty when
/// there is none.
std::string print_all(const Findings& findings, bool colour = false);

/// The known word closest to `word` (edit distance at most a third of its length, at least 1; a
/// swap of neighbours counts once, capitals do not count), else one that is a part of it or the
/// other way round ("clubpath" for "path"), or an empty view.
std::string_view nearest(std::string_view word, const std::vector<std::string_view>& known);

/// "a, b or c", each in 'quotes' when `quoted`.
std::string either(const std::vector<std::string_view>& words, bool quoted = false);

/// `text` for a message: in 'quotes', cut after 40 code points, controls shown as in `print`.
std::string quote(std::string_view text);

/// True when `source` is text a reader may take: at most `limit` bytes, no NUL, UTF-8 throughout.
/// Otherwise one error says why and how to save the file.
bool is_text(const Source& source, std::size_t limit, Findings& findings);

} // namespace diag
