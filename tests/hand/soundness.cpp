#include "soundness.hpp"

#include "hand/curve.hpp"

#include <algorithm>
#include <cmath>
#include <sstream>

namespace sound {
namespace {

using namespace hand;

class Judge {
  public:
    explicit Judge(const Picture& picture)
        : p_(picture) {}

    std::vector<std::string> run() {
        double skin = 0;
        for (const auto& mark : p_.marks) {
            if (const Area* a = std::get_if<Area>(&mark)) {
                judge(*a);
                if (a->tone == Tone::skin) skin += filled(*a);
            } else {
                judge(std::get<Line>(mark));
            }
        }
        if (skin < 1500) say("a hand of ", int(skin), " square millimetres");
        for (const Anchor& a : p_.anchors) {
            if (a.at.x < 0 || a.at.x > p_.width || a.at.y < 0 || a.at.y > p_.height)
                say("an anchor outside: ", a.name);
        }
        return std::move(out_);
    }

  private:
    template <class... Parts>
    void say(const Parts&... parts) {
        std::ostringstream text;
        (text << ... << parts);
        out_.push_back(text.str());
    }

    static double filled(const Area& a) {
        double sum = 0;
        for (const Outline& o : a.loops)
            sum += area(flattened(o));
        return sum;
    }

    void judge(const Area& a) {
        double sum = 0;
        for (const Outline& o : a.loops) {
            if (!finite(o)) return say("a fill with a number that is none");
            if (o.pieces.empty() || !o.closed || length(o.pieces.back().to - o.start) > .01)
                return say("a fill that is not closed");
            const Polyline line = flattened(o);
            sum += area(line);
            judge_turns(line, true, "fill");
        }
        // A loop that crosses itself or a hole filled twice fills another area than it encloses.
        const double painted = covered(a);
        if (std::abs(painted - std::abs(sum)) > .04 * painted + 6)
            say("a fill of ", int(sum), " that paints ", int(painted), " square millimetres");
    }

    void judge(const Line& l) {
        if (!finite(l.path) || l.path.pieces.empty()) return say("a line without a length");
        const Polyline line = flattened(l.path);
        const double whole = arc_length(line).back();
        const bool traced = l.pen == Pen::outline || l.pen == Pen::inner;
        if (traced && whole < .9) say("a stray stroke of ", whole, " mm");
        if (l.pen == Pen::outline && l.taper_start && l.taper_end && whole < 5)
            say("a loose stroke of ", whole, " mm");
        if (traced) judge_turns(line, l.path.closed, "line");
        for (const Dot d : line) {
            if (d.x < -edge || d.x > p_.width + edge || d.y < -edge || d.y > p_.height + edge)
                return say("a line out of the window at ", int(d.x), ", ", int(d.y));
        }
    }

    static bool finite(const Outline& o) {
        bool ok = std::isfinite(o.start.x) && std::isfinite(o.start.y);
        for (const Cubic& c : o.pieces) {
            for (const Dot d : {c.a, c.b, c.to})
                ok = ok && std::isfinite(d.x) && std::isfinite(d.y);
        }
        return ok;
    }

    /// A spur goes out and comes back: within a millimetre the way turns round. A notch between two
    /// fingers does so to the other side of a fill.
    void judge_turns(const Polyline& flat, bool closed, const char* what) {
        if (arc_length(flat).back() < 3) return;
        const Polyline p = resampled(flat, .5);
        const int n = int(p.size()), reach = 2;
        for (int i = closed ? 0 : reach; i < (closed ? n : n - reach); ++i) {
            const Dot in = unit_vector(p[i] - p[(i - reach + n) % n]);
            const Dot out = unit_vector(p[(i + reach) % n] - p[i]);
            if (dot(in, out) > -.94) continue; // 160 degrees
            if (closed && in.x * out.y - in.y * out.x < 0) continue;
            say("a spur in a ", what, " at ", int(p[i].x), ", ", int(p[i].y));
            return;
        }
    }

    /// Area that non-zero winding paints, by rows half a millimetre apart.
    double covered(const Area& a) const {
        constexpr double pitch = .5;
        struct Crossing {
            double x;
            int way;
        };
        std::vector<Polyline> lines;
        for (const Outline& o : a.loops)
            lines.push_back(flattened(o));
        double sum = 0;
        for (double y = -20 + pitch / 2; y < p_.height + 20; y += pitch) {
            std::vector<Crossing> row;
            for (const Polyline& line : lines) {
                for (std::size_t i = 0; i < line.size(); ++i) {
                    const Dot p = line[i], q = line[(i + 1) % line.size()];
                    if ((p.y <= y) == (q.y <= y)) continue;
                    row.push_back({p.x + (q.x - p.x) * (y - p.y) / (q.y - p.y), p.y <= y ? 1 : -1});
                }
            }
            std::ranges::sort(row, {}, &Crossing::x);
            int winding = 0;
            for (std::size_t i = 0; i + 1 < row.size(); ++i) {
                winding += row[i].way;
                if (winding != 0) sum += (row[i + 1].x - row[i].x) * pitch;
            }
        }
        return sum;
    }

    static constexpr double edge = 6; ///< a line may lean over the window by that, millimetres
    const Picture& p_;
    std::vector<std::string> out_;
};

} // namespace

std::vector<std::string> faults(const Picture& picture) { return Judge(picture).run(); }

} // namespace sound
