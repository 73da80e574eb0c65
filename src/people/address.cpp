#include "people/address.hpp"

#include <algorithm>

namespace people {

namespace {

/// RFC 5322, 3.2.3: atext.
bool atom_letter(char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
           std::string_view("!#$%&'*+-/=?^_`{|}~").find(c) != std::string_view::npos;
}

bool dot_atom(std::string_view text) {
    if (text.empty() || text.front() == '.' || text.back() == '.') return false;
    return text.find("..") == std::string_view::npos &&
           std::ranges::all_of(text, [](char c) { return c == '.' || atom_letter(c); });
}

} // namespace

std::string fault_of_address(std::string_view text) {
    if (std::ranges::any_of(text, [](char c) { return static_cast<unsigned char>(c) >= 128; }))
        return "use plain letters a to z; a domain with other letters has a form that begins xn--";
    const std::size_t at = text.find('@');
    if (at == std::string_view::npos || at != text.rfind('@'))
        return "write one address with one '@', for example ruth@post.example";
    const std::string_view local = text.substr(0, at), domain = text.substr(at + 1);
    const bool whole = dot_atom(local) && dot_atom(domain) &&
                       domain.find('.') != std::string_view::npos && local.size() <= 64 &&
                       text.size() <= 254;
    return whole ? "" : "write it like ruth@post.example, without spaces and brackets";
}

} // namespace people
