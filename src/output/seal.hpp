// A PDF's two identifiers: what it was made from, and whether it still is what was made.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace output {

/// 128 bits that stand for some bytes (XXH3). Not a secret: it keeps no forger out.
struct Digest {
    std::uint64_t high = 0, low = 0;
    friend bool operator==(const Digest&, const Digest&) = default;
};

/// Digest of a row of pieces; where one ends and the next begins counts too.
class Hash {
  public:
    Hash();
    ~Hash();
    Hash(const Hash&);
    Hash& operator=(const Hash&) = delete;

    Hash& add(std::string_view piece);
    Digest digest() const;

  private:
    struct State;
    std::unique_ptr<State> state_;
};

/// `pdf` with both parts of its ID (ISO 32000-1, 14.4) set: the first to `inputs`, the second to
/// the digest of all its bytes. It must have been written with qpdf's static ID.
std::string sealed(std::string pdf, const Digest& inputs);

/// What a PDF was made from; nothing when it bears no seal of ours or when one of its bytes has
/// changed since.
std::optional<Digest> inputs_of(std::string_view pdf);

} // namespace output
