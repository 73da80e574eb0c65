// YAML text to a tree, without a word about faults: what the parser could not do is handed back.
#pragma once

#include "yaml/node.hpp"

#include <optional>
#include <string>
#include <vector>

namespace yaml {

/// Why reading stopped.
struct Stop {
    enum class Reason : std::uint8_t {
        syntax,   ///< `detail` is the parser's own word
        repeated, ///< an anchor or alias: a part written once and used twice
        deep,     ///< nested too deep
        large,    ///< too many parts
        second,   ///< a second document
        odd_key,  ///< a list or map as a key
    };
    Reason reason = Reason::syntax;
    diag::Span span;
    std::string detail;
};

/// A key written twice in one map.
struct Twin {
    std::string key;
    diag::Span span;
    std::uint32_t first_line = 0;
};

struct Growth {
    Node root;
    std::optional<Stop> stop;
    std::vector<Twin> twins;
};

inline constexpr std::size_t deepest = 24;
inline constexpr std::size_t most_parts = 20'000;

/// `text` is the source's own, or one of the same lines and length.
Growth grow(const diag::Source& source, const std::string& text);

} // namespace yaml
