// A sheet to sketch on in millimetres of the real thing, y down, for a right-hander.
#pragma once

#include "figure/easel.hpp"

#include <string_view>
#include <utility>
#include <vector>

namespace figure {

using Points = std::vector<ink::Point>;

/// Something of even thickness along a line: a finger, an arm.
struct Limb {
    Points points;
    double thick = 0; ///< millimetres
};

/// What a picture of a set-up is drawn with. Line widths are points, all else millimetres of the
/// scene; the scene is fitted into the paper's box and mirrored for left-handers.
class Sketch {
  public:
    std::string note; ///< what was measured, in place of a picture's usual words

    static constexpr double thin = 0.8, usual = 1.0, heavy = 1.4;

    Sketch(const Easel& easel, unit::Hand hand, ink::Size paper)
        : easel_(easel)
        , left_(hand == unit::Hand::left)
        , paper_(paper) {}

    /// Fits the scene; called first.
    void scene(ink::Rect world);

    void line(const Points& points, double width = usual);
    void dashed(const Points& points, double width = thin);
    void path(const ink::Path& path, double width = usual);
    void solid(const ink::Path& path, ink::Colour fill = ink::white, double width = usual);
    void shape(const Points& corners, ink::Colour fill = ink::white, double width = usual);
    void rect(ink::Rect box, ink::Colour fill = ink::white, double width = usual);
    void round_rect(ink::Rect box, double radius, ink::Colour fill = ink::white,
                    double width = usual);
    void circle(ink::Point centre, double radius, ink::Colour fill = ink::white,
                double width = usual);
    void hatched(ink::Rect box, double distance = 2.6);
    void arrow(ink::Point from, ink::Point to, double width = usual);
    /// The last leg of the line ends in an arrow head.
    void arrow_along(const Points& points, double width = usual);
    void limbs(const std::vector<Limb>& limbs, double width = usual, ink::Colour fill = ink::white);
    /// Words by key; `at` is where their middle, left or right end stands (mirrored with the
    /// scene).
    void words(std::string_view key, ink::Point at, text::Align align = text::Align::centre);
    /// `note` when there is one, else the words of the key.
    void noted(std::string_view key, ink::Point at, text::Align align = text::Align::centre);
    /// The same at a place that is not mirrored: for words that mean left and right.
    void words_unturned(std::string_view key, ink::Point at);

    /// A tick mark, written alike by both hands.
    void tick(ink::Point at, double size);

    // Things that come in many scenes, seen from above.
    void target(ink::Point from, double length, double tilt = 0); ///< arrow and flag, up the page
    void target_side(ink::Point from, double length); ///< the same to the right, for side views
    void ball(ink::Point at);
    /// Head of an iron whose leading edge's middle stands at `at`; `turn` degrees clockwise.
    void iron(ink::Point at, double turn = 0, double shaft = 420);
    void putter(ink::Point at, double shaft = 260);
    void shoe(ink::Point at, double turn = 0, bool ghost = false); ///< toes to the right
    /// A person from the front, feet that far apart, hands at `hands`; ground is y = 0.
    void person(double stance, ink::Point hands);

    /// An arc of a circle as points; degrees clockwise from the right.
    static Points arc(ink::Point centre, double radius, double from, double to);

    /// A closed line through the points without corners.
    static ink::Path smooth(const Points& points);

    ink::Drawing done(std::string message);

  private:
    void set_words(const std::string& words, ink::Point at, text::Align align);
    ink::Point to(ink::Point p) const;
    ink::Path to(const ink::Path& path) const;
    static Points turned(const Points& points, ink::Point at, double degrees);

    const Easel& easel_;
    bool left_;
    ink::Size paper_;
    double scale_ = 1;
    ink::Point offset_;
    ink::Drawing drawing_;
};

} // namespace figure
