#include "shots/blocks.hpp"

#include "shots/header.hpp"

#include <algorithm>
#include <array>

namespace shots {

namespace {

constexpr std::array<std::string_view, 4> names{"before", "after", "cold", "warm-up"};

bool is_warm_up(const std::string& name) { return name == "warm up" || name == "warmup"; }

void put(Shot& shot, const std::string& name) {
    const auto found =
        std::ranges::find(names, is_warm_up(name) ? names.back() : std::string_view(name));
    shot.block = static_cast<Block>(found - names.begin());
    if (shot.block == Block::extra) shot.extra = name;
}

struct Foreign {
    std::string_view word, block;
};
constexpr std::array foreign{
    Foreign{"vorher", "before"}, Foreign{"nachher", "after"}, Foreign{"kalt", "cold"},
    Foreign{"avant", "before"},  Foreign{"après", "after"},   Foreign{"apres", "after"},
    Foreign{"froid", "cold"},    Foreign{"antes", "before"},  Foreign{"después", "after"},
    Foreign{"despues", "after"}, Foreign{"frío", "cold"},     Foreign{"frio", "cold"},
    Foreign{"före", "before"},   Foreign{"fore", "before"},   Foreign{"efter", "after"},
    Foreign{"kallt", "cold"}};

bool own_block(const std::string& name) {
    return is_warm_up(name) || std::ranges::find(names, name) != names.end();
}

} // namespace

Blocks::Blocks(const Grid& grid, const record::ShotSource& how, bool has_column,
               diag::Findings& findings)
    : grid_(grid)
    , how_(how)
    , has_column_(has_column)
    , findings_(findings) {
    if (has_column_ || !how_.block_rows.empty()) return;
    findings_.error(
        how_.span, "nothing says which shots came before the change and which after",
        "add to 'shots' a line such as 'rows: {before: 1-12, after: 13-24}', or a column "
        "'block' to the table");
}

void Blocks::sort(Shot& shot, int place, const Cell* cell) {
    if (!how_.block_rows.empty())
        by_rows(shot, place);
    else if (cell)
        by_word(shot, *cell);
    else if (has_column_)
        findings_.error(grid_.source().in_line(shot.line, 0), "this shot names no block",
                        "write before, after, cold or warm-up in its block column");
}

void Blocks::by_rows(Shot& shot, int place) {
    const std::string* found = nullptr;
    for (const auto& [name, ranges] : how_.block_rows)
        for (const record::RowRange& range : ranges) {
            if (place < range.first || place > range.last) continue;
            if (found && *found != name)
                findings_.error(how_.rows_span,
                                "shot " + std::to_string(place) + " is in '" + *found +
                                    "' and in '" + name + "'",
                                "let each shot stand in one block: check the numbers of 'rows'");
            found = &name;
        }
    if (found) return put(shot, *found);
    if (told_.empty())
        findings_.error(how_.rows_span,
                        "shot " + std::to_string(place) + " of the table is in no block",
                        "add it to a block of 'rows', or to 'warm-up' if it should not count");
    told_.emplace_back("rows");
}

void Blocks::by_word(Shot& shot, const Cell& cell) {
    const std::string word = grid_.text(cell);
    const auto declared = how_.block_words.find(word);
    if (declared != how_.block_words.end()) return put(shot, declared->second);
    const std::string plain = plain_name(word);
    for (const auto& [name, block] : how_.block_words)
        if (plain_name(name) == plain || block == plain) return put(shot, block);
    if (own_block(plain)) return put(shot, plain);
    if (const auto known = std::ranges::find(foreign, plain, &Foreign::word);
        known != foreign.end())
        return put(shot, std::string(known->block));
    unknown(cell, word);
}

void Blocks::unknown(const Cell& cell, const std::string& word) {
    if (std::ranges::find(told_, word) != told_.end()) return;
    told_.push_back(word);
    if (word.empty())
        return findings_.error(grid_.span(cell), "this shot names no block",
                               "write before, after, cold or warm-up in its block cell");
    std::vector<std::string_view> known(names.begin(), names.end());
    for (const auto& [name, block] : how_.block_words)
        known.emplace_back(name);
    const std::string_view close = diag::nearest(word, known);
    findings_.error(grid_.span(cell), "the block " + diag::quote(word) + " is not known",
                    close.empty() ? "say in the record what it means, under 'shots': blocks: {" +
                                        word + ": before}, or after, cold, warm-up"
                                  : "did you mean '" + std::string(close) + "'?");
}

void Blocks::finish(int shot_count) const {
    for (const auto& [name, ranges] : how_.block_rows)
        for (const record::RowRange& range : ranges)
            if (range.last > shot_count)
                findings_.error(
                    how_.rows_span,
                    "'" + name + "' goes to shot " + std::to_string(range.last) +
                        ", the table has " + std::to_string(shot_count),
                    "correct the numbers of 'rows'; the first shot is 1, the header does not "
                    "count");
}

} // namespace shots
