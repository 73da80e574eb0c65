#include "diag/finding.hpp"

namespace diag {

void Findings::add(Severity severity, Span span, std::string what, std::string hint) {
    ++total_;
    if (severity == Severity::error) ++errors_;
    if (list_.size() < kept) list_.push_back({severity, span, std::move(what), std::move(hint)});
}

void Findings::error(Span span, std::string what, std::string hint) {
    add(Severity::error, span, std::move(what), std::move(hint));
}

void Findings::warning(Span span, std::string what, std::string hint) {
    add(Severity::warning, span, std::move(what), std::move(hint));
}

void Findings::note(Span span, std::string what, std::string hint) {
    add(Severity::note, span, std::move(what), std::move(hint));
}

} // namespace diag
