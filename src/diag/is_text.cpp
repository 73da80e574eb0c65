#include "diag/finding.hpp"
#include "diag/utf8.hpp"

namespace diag {

namespace {

std::string size_in_words(std::size_t bytes) {
    constexpr std::size_t mega = 1'000'000;
    if (bytes >= mega) return std::to_string(bytes / mega) + " MB";
    return std::to_string(bytes / 1000) + " kB";
}

/// How to save the file so that it can be read.
std::string save_again(const Source& source) {
    if (source.name().ends_with(".csv")) return "save the table again as 'CSV UTF-8'";
    return "save the file again and choose 'UTF-8' as the encoding";
}

/// Offset of the first byte that is not UTF-8, or npos.
std::size_t first_broken(std::string_view text) {
    for (std::size_t i = 0; i < text.size();) {
        if (static_cast<unsigned char>(text[i]) < 0x80U) {
            ++i;
            continue;
        }
        const CodePoint point = first_code_point(text.substr(i));
        if (!point.valid) return i;
        i += point.bytes;
    }
    return std::string_view::npos;
}

} // namespace

bool is_text(const Source& source, std::size_t limit, Findings& findings) {
    const std::string& text = source.text();
    if (text.size() > limit) {
        findings.error(source.whole(),
                       "the file is longer than " + size_in_words(limit) +
                           ", which is the most that is read",
                       "is this the right file? keep one lesson to a file");
        return false;
    }
    // NOLINTNEXTLINE(misc-redundant-expression): clang-tidy 14 takes the two marks for one
    const bool wide = text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF");
    const std::size_t zero = text.find('\0');
    if (wide || zero < 4) {
        findings.error(source.whole(), "the file is saved as UTF-16, not as UTF-8",
                       save_again(source));
        return false;
    }
    if (zero != std::string::npos) {
        findings.error(source.at(zero), "a zero byte stands here, so this is no text file",
                       "check that this is the right file; a spreadsheet must be saved as CSV");
        return false;
    }
    const std::size_t broken = first_broken(text);
    if (broken != std::string::npos) {
        findings.error(source.at(broken), "a character here is not UTF-8", save_again(source));
        return false;
    }
    return true;
}

} // namespace diag
