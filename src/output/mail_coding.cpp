#include "output/mail_coding.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace output {

namespace {

constexpr std::string_view digits64 =
    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
constexpr std::string_view fold = "\r\n ";

bool is_ascii(std::string_view text) {
    return std::ranges::all_of(text, [](char c) { return c >= ' ' && c < 127; });
}

/// RFC 5322, 3.2.3: what may stand in a phrase without quotes.
bool plain_in_phrase(char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == ' ' ||
           std::string_view("!#$%&'*+-/=?^_`{|}~").find(c) != std::string_view::npos;
}

/// How many bytes from `at` make at most `most` bytes: up to the last space where there is one
/// (some mail programs show a gap between two encoded words), never within a code point.
std::size_t whole_part(std::string_view text, std::size_t at, std::size_t most) {
    if (text.size() - at <= most) return text.size() - at;
    const std::size_t space = text.substr(at, most).rfind(' ');
    if (space != std::string_view::npos && space > 0) return space + 1;
    std::size_t end = at + most;
    while (end > at + 1 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end;
    return end - at;
}

/// RFC 2047: "=?utf-8?B?…?=" at most 75 characters each, as much as fits the line.
std::string encoded_words(std::string_view text, std::size_t column) {
    constexpr std::string_view open = "=?utf-8?B?", close = "?=";
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t frame = open.size() + close.size();
        const std::size_t free = longest_mail_line > column + frame + 8
                                     ? longest_mail_line - 1 - column - frame
                                     : longest_mail_line - 2 - frame;
        const std::size_t length = whole_part(text, at, free / 4 * 3);
        if (at > 0) out += fold;
        out.append(open).append(base64(text.substr(at, length))).append(close);
        at += length;
        column = 1;
    }
    return out;
}

std::string hex(unsigned char byte) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    return {'=', digits[byte >> 4], digits[byte & 15]};
}

/// One line of quoted-printable, cut softly.
void add_quoted_line(std::string_view line, std::string& out) {
    std::size_t column = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        const bool last = i + 1 == line.size();
        const bool blank = c == ' ' || c == '\t';
        const bool plain = (c > ' ' && c < 127 && c != '=') || (blank && !last);
        const std::string piece = plain ? std::string(1, c) : hex(static_cast<unsigned char>(c));
        // Three places for a coded byte and one for the soft break.
        if (column + piece.size() > longest_mail_line - 1) {
            out += "=\r\n";
            column = 0;
        }
        out += piece;
        column += piece.size();
    }
}

} // namespace

std::string base64(std::string_view bytes) {
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t n = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 3; ++k)
            group = group << 8 | (k < n ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k < 4; ++k)
            out += k <= n ? digits64[group >> (18 - 6 * k) & 63] : '=';
    }
    return out;
}

std::string base64_lines(std::string_view bytes) {
    constexpr std::size_t in_a_line = longest_mail_line / 4 * 3;
    std::string out;
    for (std::size_t i = 0; i < bytes.size(); i += in_a_line)
        out += base64(bytes.substr(i, in_a_line)) + "\r\n";
    return out;
}

std::string quoted_printable(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        add_quoted_line(text.substr(0, end), out);
        out += "\r\n";
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

std::string header_text(std::string_view text, std::size_t column) {
    const bool fits = is_ascii(text) && column + text.size() <= longest_mail_line &&
                      text.find("=?") == std::string_view::npos;
    return fits ? std::string(text) : encoded_words(text, column);
}

std::string header_phrase(std::string_view name, std::size_t column) {
    if (!is_ascii(name) || column + name.size() + 4 > longest_mail_line ||
        name.find("=?") != std::string_view::npos)
        return encoded_words(name, column);
    if (std::ranges::all_of(name, plain_in_phrase)) return std::string(name);
    std::string out = "\"";
    for (const char c : name) {
        if (c == '"' || c == '\\') out += '\\';
        out += c;
    }
    return out + '"';
}

} // namespace output
