#include "text/code_points.hpp"
#include "text/typesetter.hpp"

namespace text {

namespace {

constexpr char32_t soft_hyphen = 0xAD;

std::size_t letters(std::string_view words) {
    std::size_t count = 0;
    for (std::size_t at = 0; at < words.size();)
        if (next_code_point(words, at) != soft_hyphen) ++count;
    return count;
}

double extent(std::string_view words, const ink::Style& style) {
    const auto count = static_cast<double>(letters(words));
    return count * 0.5 * style.size + (count > 1 ? (count - 1) * style.tracking : 0);
}

/// The longest beginning of `word` that fits, at least one letter.
std::size_t fitting(std::string_view word, const ink::Style& style, double width) {
    std::size_t end = 0;
    next_code_point(word, end);
    for (std::size_t at = end; at < word.size();) {
        next_code_point(word, at);
        if (extent(word.substr(0, at), style) > width + 1e-9) break;
        end = at;
    }
    return end;
}

/// Greedy filling of one line of the source.
void fill(std::string_view source, const ink::Style& style, double width,
          std::vector<std::string>& lines) {
    std::string line;
    for (std::size_t at = 0; at <= source.size();) {
        const auto space = std::min(source.find(' ', at), source.size());
        std::string_view word = source.substr(at, space - at);
        at = space + 1;
        std::string longer = line.empty() ? std::string(word) : line + ' ' + std::string(word);
        if (!line.empty() && extent(longer, style) > width + 1e-9) {
            lines.push_back(std::move(line));
            longer = std::string(word);
        }
        while (extent(longer, style) > width + 1e-9) {
            const auto end = fitting(longer, style, width);
            if (end == longer.size()) break;
            lines.push_back(longer.substr(0, end));
            longer.erase(0, end);
        }
        line = std::move(longer);
    }
    lines.push_back(std::move(line));
}

} // namespace

ink::Words EvenTypesetter::line(std::string_view words, const ink::Style& style,
                                ink::Point at) const {
    return {at,
            std::string(words),
            style,
            extent(words, style),
            0.75 * style.size,
            0.25 * style.size,
            0.0,
            nullptr};
}

Lines EvenTypesetter::set(std::string_view words, const ink::Style& style, double width,
                          double leading, Align align) const {
    std::vector<std::string> broken;
    for (std::size_t at = 0; at <= words.size();) {
        const auto end = std::min(words.find('\n', at), words.size());
        fill(words.substr(at, end - at), style, width, broken);
        at = end + 1;
    }
    Lines out;
    for (const auto& text : broken) {
        auto set = line(text, style);
        const double slack = width - set.width;
        set.at.x = align == Align::left ? 0 : align == Align::centre ? slack / 2 : slack;
        set.at.y = out.height + leading / 2 + 0.3 * style.size;
        out.width = std::max(out.width, set.width);
        out.height += leading;
        out.lines.push_back(std::move(set));
    }
    return out;
}

} // namespace text
