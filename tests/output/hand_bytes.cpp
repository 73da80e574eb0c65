// What a hand costs in a PDF: at most 20 kB a picture, compressed, at the sizes the pages use.
#include "figure/grip.hpp"
#include "output/pdf.hpp"

#include <catch2/catch.hpp>

#include <iostream>

namespace {

using hand::View;

constexpr std::size_t most = 20'000;

std::size_t bytes_of(const std::vector<ink::Mark>& marks) {
    page::Sheet sheet{{595, 842}, marks, "1", {}};
    page::Book book;
    book.sheets.push_back(std::move(sheet));
    return output::pdf(book).size();
}

hand::Wish before() {
    hand::Wish w;
    w.seen.lay = unit::Lay::palm;
    w.seen.knuckles = 1;
    w.seen.thumb_side = unit::ThumbSide::centre;
    w.seen.thumb_length = unit::ThumbLength::long_thumb;
    w.seen.heel_pad = unit::HeelPad::beside;
    w.seen.gap = true;
    w.face_degrees = 8;
    return w;
}

hand::Wish after() {
    hand::Wish w;
    w.seen.lay = unit::Lay::fingers;
    w.seen.knuckles = 3;
    w.join = unit::Join::interlock;
    return w;
}

} // namespace

TEST_CASE("no picture of a hand takes more than 20 kB of a PDF") {
    const auto theme = theme::house_style(theme::Paper::a4, false);
    const std::size_t empty = bytes_of({});
    std::size_t largest = 0;
    for (hand::Wish wish : {before(), after()}) {
        for (const bool glove : {false, true}) {
            wish.glove = glove;
            const auto pose = hand::pose(wish);
            for (int view = 0; view <= int(View::thumb_long); ++view) {
                const hand::Picture picture = hand::draw(*pose, static_cast<View>(view));
                for (const double millimetres : {35., 62.}) {
                    const auto drawing = figure::hand_drawing(theme, picture, unit::Hand::right,
                                                              millimetres * figure::mm);
                    const std::size_t bytes = bytes_of(drawing.marks) - empty;
                    INFO("view " << view << (glove ? ", glove, " : ", ") << millimetres << " mm");
                    CHECK(bytes > 1000);
                    CHECK(bytes <= most);
                    largest = std::max(largest, bytes);
                }
            }
        }
    }
    std::cout << "largest picture of a hand: " << largest << " bytes of PDF\n";
}
