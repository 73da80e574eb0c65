#include "diag/source.hpp"

#include "diag/utf8.hpp"

#include <algorithm>

namespace diag {

Source::Source(std::string name, std::string text)
    : name_(std::move(name))
    , text_(std::move(text)) {
    if (text_.starts_with("\xEF\xBB\xBF")) text_.erase(0, 3);
    starts_.push_back(0);
    for (std::size_t end = text_.find('\n'); end != std::string::npos;
         end = text_.find('\n', end + 1))
        if (end + 1 < text_.size()) starts_.push_back(end + 1);
}

std::string_view Source::line(std::uint32_t number) const {
    if (number == 0 || number > starts_.size()) return {};
    const std::size_t start = starts_[number - 1];
    const std::size_t end = number < starts_.size() ? starts_[number] : text_.size();
    std::string_view line = std::string_view(text_).substr(start, end - start);
    if (line.ends_with('\n')) line.remove_suffix(1);
    if (line.ends_with('\r')) line.remove_suffix(1);
    return line;
}

Span Source::in_line(std::uint32_t number, std::size_t column, std::size_t bytes) const {
    const std::string_view all = line(number);
    const std::size_t start = std::min(column, all.size());
    const std::string_view place = all.substr(start, bytes);
    return {this, number, code_points(all.substr(0, start)) + 1,
            std::max<std::uint32_t>(1, code_points(place))};
}

Span Source::at(std::size_t offset, std::size_t bytes) const {
    const auto next = std::ranges::upper_bound(starts_, offset);
    const auto number = static_cast<std::uint32_t>(next - starts_.begin());
    return in_line(number, offset - starts_[number - 1], bytes);
}

} // namespace diag
