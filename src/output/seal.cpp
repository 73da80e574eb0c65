#include "output/seal.hpp"

#define XXH_INLINE_ALL
#include <xxhash.h>

#include <algorithm>
#include <charconv>

namespace output {

namespace {

constexpr std::string_view opening = "/ID [<";
constexpr std::size_t digits = 32;
/// What qpdf writes for a static ID: the digits of pi.
constexpr std::string_view blank = "31415926535897932384626433832795";
static_assert(blank.size() == digits);

std::string hexadecimal(const Digest& digest) {
    std::string out;
    for (const std::uint64_t half : {digest.high, digest.low})
        for (int shift = 60; shift >= 0; shift -= 4)
            out += "0123456789abcdef"[half >> shift & 15u];
    return out;
}

std::optional<Digest> digest_of(std::string_view text) {
    Digest out;
    const char* const half = text.data() + digits / 2;
    const auto high = std::from_chars(text.data(), half, out.high, 16);
    const auto low = std::from_chars(half, half + digits / 2, out.low, 16);
    if (high.ptr != half || low.ptr != half + digits / 2) return std::nullopt;
    return out;
}

/// Where the first of the two identifiers stands: "/ID [<...><...>]" near the end of the file.
std::optional<std::size_t> place_of(std::string_view pdf) {
    constexpr std::size_t tail = 4096;
    const std::size_t from = pdf.size() - std::min(pdf.size(), tail);
    const auto found = pdf.substr(from).rfind(opening);
    if (found == pdf.npos) return std::nullopt;
    const std::size_t first = from + found + opening.size();
    if (pdf.size() < first + 2 * digits + 4) return std::nullopt;
    if (pdf.substr(first + digits, 2) != "><" || pdf.substr(first + 2 * digits + 2, 2) != ">]")
        return std::nullopt;
    return first;
}

/// Digest of all bytes but those of the second identifier.
Digest content(std::string_view pdf, std::size_t first) {
    const std::size_t second = first + digits + 2;
    return Hash().add(pdf.substr(0, second)).add(pdf.substr(second + digits)).digest();
}

} // namespace

struct Hash::State {
    XXH3_state_t xxh;
};

Hash::Hash()
    : state_(std::make_unique<State>()) {
    XXH3_128bits_reset(&state_->xxh);
}

Hash::Hash(const Hash& other)
    : state_(std::make_unique<State>(*other.state_)) {}

Hash::~Hash() = default;

Hash& Hash::add(std::string_view piece) {
    const auto size = static_cast<std::uint64_t>(piece.size());
    XXH3_128bits_update(&state_->xxh, &size, sizeof size);
    XXH3_128bits_update(&state_->xxh, piece.data(), piece.size());
    return *this;
}

Digest Hash::digest() const {
    const auto out = XXH3_128bits_digest(&state_->xxh);
    return {out.high64, out.low64};
}

std::string sealed(std::string pdf, const Digest& inputs) {
    const auto first = place_of(pdf);
    if (!first || std::string_view(pdf).substr(*first, digits) != blank) return pdf;
    pdf.replace(*first, digits, hexadecimal(inputs));
    pdf.replace(*first + digits + 2, digits, hexadecimal(content(pdf, *first)));
    return pdf;
}

std::optional<Digest> inputs_of(std::string_view pdf) {
    const auto first = place_of(pdf);
    if (!first) return std::nullopt;
    const auto bytes = digest_of(pdf.substr(*first + digits + 2, digits));
    if (!bytes || *bytes != content(pdf, *first)) return std::nullopt;
    return digest_of(pdf.substr(*first, digits));
}

} // namespace output
