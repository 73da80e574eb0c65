#include "page/flow.hpp"

#include <cmath>

namespace page {

namespace {

/// Puts pieces on sheets one after the other.
class Placer {
  public:
    Placer(const theme::Theme& theme, const Section* filler, Flowed& out)
        : theme_(theme)
        , filler_(filler)
        , out_(out) {}

    void section(const Section& section) {
        if (section.right_hand && out_.book.sheets.size() % 2 == 1) blank();
        if (section.fresh_page || section.right_hand || out_.book.sheets.empty()) fresh(section);
        if (!section.title.empty() && &section != filler_)
            out_.book.bookmarks.push_back(
                {section.title, 1, out_.book.sheets.size() - 1, {live_.x, y_}});
        if (!section.name.empty() && &section != filler_)
            sheet().marks.push_back(ink::Place{{live_.x, y_}, section.name});
        for (std::size_t i = 0; i < section.blocks.size(); ++i)
            block(section, i);
        rest(section);
    }

    void blank() {
        if (filler_) return section(*filler_);
        fresh({});
    }

  private:
    Sheet& sheet() { return out_.book.sheets.back(); }
    double room() const { return live_.bottom() - y_; }
    bool empty() const { return y_ <= live_.y; }

    void fresh(const Section& section) {
        out_.book.sheets.push_back({theme_.page(), {}, {}, section.name});
        live_ = theme_.live(out_.book.sheets.size() % 2 == 1);
        y_ = live_.y;
    }

    /// Height of blocks `i`… that must stand on one page together.
    static double together(const Section& section, std::size_t i) {
        double need = 0;
        for (; i < section.blocks.size(); ++i) {
            const Block& b = section.blocks[i];
            need += b.space_before;
            if (!b.keep_with_next) return need + (b.head.size.height + first_run(b));
            need += b.height();
        }
        return need;
    }

    /// Height of a block's pieces up to the first place where it may break.
    static double first_run(const Block& b) {
        double need = 0;
        for (const Piece& p : b.pieces) {
            need += p.drawing.size.height;
            if (!p.keeps_next) break;
        }
        return need;
    }

    void block(const Section& section, std::size_t i) {
        const Block& b = section.blocks[i];
        if (!empty() && together(section, i) > room() + slack) fresh(section);
        if (b.at_foot) to_foot(section, i);
        if (!empty()) y_ += b.space_before;
        pieces(section, b);
    }

    /// Moves down so that this block and all behind it end at the foot, where they fit.
    void to_foot(const Section& section, std::size_t i) {
        double need = 0;
        for (std::size_t k = i; k < section.blocks.size(); ++k)
            need += section.blocks[k].space_before + section.blocks[k].height();
        if (need <= room()) y_ += room() - need;
    }

    void rest(const Section& section) {
        constexpr double before = 20;
        if (!section.rest || empty() || room() - before < section.least_rest) return;
        y_ += before;
        put({.name = "rest"}, section.rest(room()));
    }

    void pieces(const Section& section, const Block& b) {
        bool open = false;
        for (std::size_t i = 0; i < b.pieces.size(); ++i) {
            double run = 0;
            for (std::size_t k = i; k < b.pieces.size(); ++k) {
                run += b.pieces[k].drawing.size.height;
                if (!b.pieces[k].keeps_next) break;
            }
            const bool starts_run = i == 0 || !b.pieces[i - 1].keeps_next;
            if (starts_run && run > room() + slack && !empty()) {
                close(b, open);
                fresh(section);
                open = head(b, open);
            }
            if (i == 0) open = head(b, open);
            put(b, b.pieces[i].drawing);
        }
        close(b, open);
    }

    bool head(const Block& b, bool open) {
        if (!open && !b.role.empty()) sheet().marks.push_back(ink::Tag{true, b.role, {}});
        if (b.head.size.height > 0) put(b, b.head);
        return true;
    }

    void close(const Block& b, bool& open) {
        if (open && !b.role.empty()) sheet().marks.push_back(ink::Tag{false, b.role, {}});
        open = false;
    }

    void put(const Block& b, const ink::Drawing& drawing) {
        if (drawing.size.height > room() + slack)
            out_.faults.push_back({out_.book.sheets.size(), b.name, "is taller than its page"});
        ink::Drawing moved;
        moved.add(drawing, {live_.x, y_});
        auto& marks = sheet().marks;
        marks.insert(marks.end(), std::make_move_iterator(moved.marks.begin()),
                     std::make_move_iterator(moved.marks.end()));
        y_ += drawing.size.height;
    }

    static constexpr double slack = 0.01; // points: sums of many heights may differ in the last bit

    const theme::Theme& theme_;
    const Section* filler_;
    Flowed& out_;
    ink::Rect live_;
    double y_ = 0;
};

} // namespace

double Block::height() const {
    double sum = head.size.height;
    for (const Piece& p : pieces)
        sum += p.drawing.size.height;
    return sum;
}

double total_height(const std::vector<Block>& blocks) {
    double sum = 0;
    for (const Block& b : blocks)
        sum += b.height() + (sum > 0 ? b.space_before : 0);
    return sum;
}

Flowed flow(const std::vector<Section>& sections, const theme::Theme& theme,
            const Furniture& furniture, const Section* filler) {
    Flowed out;
    Placer placer(theme, filler, out);
    for (const Section& section : sections)
        placer.section(section);
    if (out.book.sheets.size() % 2 == 1) placer.blank();
    const std::size_t count = out.book.sheets.size();
    for (std::size_t i = 0; i < count; ++i)
        furniture(out.book.sheets[i], i + 1, count);
    return out;
}

} // namespace page
