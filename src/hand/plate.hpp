// One traced picture on its way to marks: areas, lines, lines laid on the skin.
#pragma once

#include "hand/strokes.hpp"

#include <optional>

namespace hand {

/// What to trace and how far things run.
struct Shot {
    std::vector<const Limbs*> hands; ///< lead first
    Camera camera;
    Dot centre; ///< of the window, camera plane, millimetres
    double half_width = 60, half_height = 60;
    double arm_end = 60;     ///< along the forearm from the wrist, where it has run out
    double handle_end = 150; ///< along the handle from the butt, where it breaks off
    bool glove = false;      ///< on the lead hand
    double cast = 10;        ///< longest cast shadow, millimetres
    double dark = -.1;       ///< skin is shaded where normal . light is below this
    double pixel = .5;       ///< coarser where the window is wider: the print is not
    bool shade = true;
    bool looking_down =
        false;              ///< what shows of the little finger between pad and handle is left out
    double least_hole = 10; ///< smaller views of the paper through a hand close, mm2
};

class Plate {
  public:
    explicit Plate(const Shot& shot);

    const Shot& shot() const { return shot_; }
    const Field& field() const { return field_; }
    const Depth& depth() const { return depth_; }
    const Grid<Part>& part() const { return regions_.part; }
    Picture& picture() { return picture_; }

    /// Onto the page: a point of a hand's own frame, of the grip frame, of the camera plane.
    Dot page(const Limbs& limbs, Vec p) const { return page(field_.camera() * limbs.to_grip(p)); }
    Dot page(Vec camera) const {
        return {camera.x - depth_.window.left, depth_.window.top - camera.y};
    }
    /// Direction of the handle on the page, butt to head (not unit length when foreshortened).
    Dot handle_direction() const;
    Dot handle_point(double station) const;

    void add_areas(); ///< handle, skin, glove, shade
    void add_lines(); ///< every traced line
    void add(Area area) { picture_.marks.emplace_back(std::move(area)); }
    void add(Line line) { picture_.marks.emplace_back(std::move(line)); }
    void anchor(const char* name, Dot at) { picture_.anchors.push_back({name, at}); }
    Picture take() { return std::move(picture_); }

    /// Whether a point in camera coordinates is in sight, within `slack` millimetres.
    bool in_sight(Vec camera, double slack) const;

    /// Surface seen at a point in camera coordinates, -1 paper.
    int surface_at(Vec camera) const;
    int surface_on_page(Dot at) const;

    /// Lowest point of paper or handle between two columns of the page, looking down from `above`
    /// millimetres over `y` to `y`; nothing when the hand closes the way.
    std::optional<Dot> notch_between(double x0, double x1, double y, double above) const;
    /// Whether a traced line of at least `least` millimetres over the hand ends within `near` of a
    /// point.
    bool line_leaves(Dot at, double near, double least) const;

  private:
    void find_faded();
    void find_edges();
    void shade_handle(const Grid<std::uint8_t>& rod);
    void shade_skin(const Grid<std::uint8_t>& flesh);
    float light(std::size_t pixel) const;
    Grid<std::uint8_t> cast_shadow() const;
    Grid<std::uint8_t> drop_shadow() const;
    Grid<std::uint8_t> tidy(const Grid<std::uint8_t>& mask, const Grid<std::uint8_t>& within,
                            double open, double island, double hole) const;
    template <class F>
    Grid<std::uint8_t> where(F&& f) const;
    void area(const Grid<std::uint8_t>& mask, Tone tone, double sigma, double least);

    Shot shot_;
    Field field_;
    Rod rod_; ///< of the field
    Depth depth_;
    Regions regions_;
    Grid<std::uint8_t> faded_;  ///< run out into the paper
    Grid<std::uint8_t> sleeve_; ///< beyond the cuff of a glove
    Grid<float> bare_; ///< 0 hand .. 1 forearm: shade thins out, it would end in a cut edge
    Edges edges_;
    Picture picture_;
};

} // namespace hand
