// The document as a plain tree, each part with its place.
#pragma once

#include "diag/source.hpp"

#include <string>
#include <vector>

namespace yaml {

struct Entry;

struct Node {
    enum class Kind : std::uint8_t { empty, text, list, map };
    Kind kind = Kind::empty;
    bool quoted = false; ///< a text in quotes or a block of text
    std::string text;
    diag::Span span;
    std::vector<Node> items;
    std::vector<Entry> entries; ///< in the order of the file
};

/// Keys are kept with '_' and '-' turned into spaces.
struct Entry {
    std::string key;
    diag::Span key_span;
    Node value;
    mutable std::string meant; ///< the known key that was offered for an unknown one
};

} // namespace yaml
