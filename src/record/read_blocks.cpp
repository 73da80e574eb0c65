#include "record/parts.hpp"

#include <charconv>

namespace record {

namespace {

/// "warm-up" and "warm up" are one block for us.
std::string block_named(std::string_view name) {
    const std::string plain = yaml::plain_word(name);
    return plain == "warm up" ? "warmup" : plain;
}

std::optional<RowRange> range_of(std::string_view text) {
    RowRange range;
    const char* const end = text.data() + text.size();
    auto [after, fault] = std::from_chars(text.data(), end, range.first);
    if (fault != std::errc()) return {};
    while (after != end && *after == ' ')
        ++after;
    if (after == end) {
        range.last = range.first;
        return range;
    }
    const std::string_view rest(after, static_cast<std::size_t>(end - after));
    const std::size_t mark = rest.starts_with("to ") ? 3 : rest.starts_with("–") ? 3 : 1;
    if (mark == 1 && rest.front() != '-') return {};
    after += mark;
    while (after != end && *after == ' ')
        ++after;
    const auto second = std::from_chars(after, end, range.last);
    if (second.ec != std::errc() || second.ptr != end) return {};
    return range;
}

/// "1-12" or "1-5, 8-12".
std::vector<RowRange> read_ranges(const yaml::Field& field) {
    std::vector<RowRange> ranges;
    for (const yaml::Field& item : field.items()) {
        const std::string written = item.text().value_or("");
        std::string_view text = written;
        while (!text.empty()) {
            const std::size_t comma = std::min(text.find(','), text.size());
            std::string_view part = text.substr(0, comma);
            while (part.starts_with(' '))
                part.remove_prefix(1);
            while (part.ends_with(' '))
                part.remove_suffix(1);
            const auto range = range_of(part);
            if (!range || range->first < 1 || range->last < range->first) {
                item.must("be the numbers of the shots", "for example 'before: 1-12'");
                return {};
            }
            ranges.push_back(*range);
            text.remove_prefix(std::min(comma + 1, text.size()));
        }
    }
    return ranges;
}

} // namespace

void read_block_words(const yaml::Field& field, ShotSource& shots) {
    if (!field) return;
    if (!field.is_map())
        return field.must("say which word means which block",
                          "for example blocks: {B: before, A: after}");
    for (const auto& [word, block] : field.entries())
        if (const auto name = block.text()) shots.block_words[word.value] = block_named(*name);
}

void read_block_rows(const yaml::Field& field, ShotSource& shots) {
    if (!field) return;
    if (!field.is_map())
        return field.must("say which shots make which block",
                          "for example rows: {before: 1-12, after: 13-24}");
    for (const auto& [name, rows] : field.entries())
        shots.block_rows[block_named(name.value)] = read_ranges(rows);
}

} // namespace record
