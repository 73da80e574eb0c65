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

/// All findings of one run, in the order in which they were found.
class Findings {
  public:
    void error(Span span, std::string what, std::string hint = {});
    void warning(Span span, std::string what, std::string hint = {});
    void note(Span span, std::string what, std::string hint = {});

    /// True when there is no error.
    bool clean() const { return errors_ == 0; }
    std::size_t errors() const { return errors_; }
    const std::vector<Finding>& list() const { return list_; }

  private:
    std::vector<Finding> list_;
    std::size_t errors_ = 0;
};

/// "file:line:column: error: what", the line, a caret under the place, "  hint: …". Ends with '\n'.
/// Long lines are cut around the place; control characters are shown as '·'.
std::string print(const Finding& finding, bool colour = false);

/// The known word closest to `word` (edit distance at most a third of its length, at least 1),
/// or an empty view.
std::string_view nearest(std::string_view word, const std::vector<std::string_view>& known);

} // namespace diag
