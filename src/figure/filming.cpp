#include "figure/filming.hpp"

#include "figure/drill_picture_sketch.hpp"

namespace figure {

namespace {

/// A phone on its stand from above, and how far it sees: the sides of its view end at the player.
void phone(Sketch& s, ink::Point at, const Points& sees, std::string_view number, bool upright) {
    for (const ink::Point edge : sees)
        s.dashed({at, edge});
    if (upright)
        s.round_rect({at.x - 16, at.y - 60, 32, 120}, 10, ink::black);
    else
        s.round_rect({at.x - 60, at.y - 16, 120, 32}, 10, ink::black);
    s.words(number, upright ? ink::Point{at.x + 70, at.y + 26} : ink::Point{at.x + 130, at.y + 26});
}

} // namespace

ink::Drawing filming(const Easel& easel, unit::Hand hand, double width, double height) {
    Sketch s(easel, hand, {width, height});
    s.scene({-840, -600, 1580, 1540}); // places are pulled closer than the words say
    s.target({0, -300}, 200);
    s.dashed({{0, -300}, {0, 300}});
    s.ball({0, 0});
    s.shoe({-520, -130});
    s.shoe({-520, 150});
    s.iron({0, 30}, 0, 330);
    s.words("ballfigure.impact.you", {-520, 30});
    s.words("ballfigure.impact.target", {70, -470}, text::Align::left);
    phone(s, {560, 10}, {{-560, -330}, {-560, 350}}, "film.one", true);
    phone(s, {-230, 820}, {{-800, -200}, {140, -260}}, "film.two", false);
    return s.done(easel.words.say("film.alt"));
}

} // namespace figure
