// Drills as data: the built-in library and the coach's own.
#pragma once

#include "diag/finding.hpp"
#include "unit/measure.hpp"

#include <string>
#include <vector>

namespace drills {

/// How much room a drill needs.
enum class Space : std::uint8_t {
    no_swing,    ///< none in stage A; stages B and C may swing
    swing,       ///< swing space
    range,       ///< range or net
    never_swing, ///< no swing in any stage
    range_only,  ///< a range: a net does not show what the drill looks at
};
inline bool on_range(Space space) { return space == Space::range || space == Space::range_only; }

/// What is counted on one day, and how much of it passes.
struct Count {
    enum class Of : std::uint8_t {
        right,       ///< any that were right
        right_first, ///< right at the first look
        called,      ///< called right before looking
    };
    int tries = 0; ///< 0: this drill is not counted
    int pass = 0;  ///< so many of the tries; 0: no pass mark
    int days = 1;  ///< on so many different days
    int calls = 0; ///< so many of them are called first; 0: the drill has no calls
    Of of = Of::right;
};

/// A measure of the student's own shots that the drill's pass mark can be made from.
enum class Mark : std::uint8_t { none, gate, window };

struct Drill {
    std::string id;     ///< "H1"
    std::string family; ///< hold, face, path, loft, strike, speed, aim, test
    std::string name;
    std::string purpose; ///< one sentence
    std::string need;
    Space space = Space::no_swing;
    std::vector<std::string> steps;        ///< at most six, one action each, at most 15 words
    std::vector<std::string> junior_steps; ///< three
    std::string dose;
    int minutes = 5;
    std::string check; ///< a yes/no question the student can answer alone
    std::string good_enough;
    std::string pass;
    Count count;
    std::string easier; ///< id of an easier drill; empty for none
    Mark mark = Mark::none;
    std::string cue;
    std::string repair;
    std::string caution;
    std::string picture;             ///< name of the small picture, empty for none
    std::string place, blend, play;  ///< the three stages
    std::vector<std::string> serves; ///< observations and patterns: "lay palm", "gap" …
    diag::Span span;
};

/// Reads one drill file (a list of drills). Faults go to `findings`.
std::vector<Drill> read_drills(const diag::Source& source, diag::Findings& findings);

/// The drills of `library` with the words of a translation in place of their own. A translation
/// names each drill by its id and brings its lines and steps only; a line it leaves out stays as it
/// was.
std::vector<Drill> reworded(std::vector<Drill> library, const diag::Source& source,
                            diag::Findings& findings);

/// Drills of `own` replace those of the same id in `library` and add the others. A caution may be
/// reworded, never dropped: that is an error.
std::vector<Drill> merged(std::vector<Drill> library, std::vector<Drill> own,
                          diag::Findings& findings);

/// Whether each 'easier' names a drill that is there.
void check_easier(const std::vector<Drill>& all, diag::Findings& findings);

const Drill* find(const std::vector<Drill>& all, std::string_view id);

} // namespace drills
