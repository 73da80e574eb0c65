// Many sheets on all cores, told as if they had been made one after another.
#pragma once

#include "cli/commands.hpp"
#include "cli/exit.hpp"

#include <condition_variable>
#include <cstddef>
#include <functional>
#include <map>
#include <mutex>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace cli {

/// What became of one sheet; of none when there was nothing to make. `out`, `err` and `shared` are
/// all that was to be said.
struct Outcome {
    enum class State { written, up_to_date, failed, elsewhere, none } state = State::failed;
    int exit = all_written;
    std::string name; ///< of the record
    std::string out, err;
    std::string why;                   ///< of a failure, in one line
    std::vector<std::string> shared{}; ///< of files that other sheets share: said once a run

    static Outcome failure(std::string name, int exit, std::string err, std::string why);
    /// What was found goes into `err` and `shared`.
    Outcome saying(const diag::Findings& findings) &&;
    /// Adds what was found in one of several records; the first that is not sound tells `why`.
    void add(const Read& read, bool sound);
};

/// Share I of N, for several machines; 1 of 1 is everything.
struct Part {
    unsigned index = 1, of = 1;
};

/// Options of every command that makes many sheets.
struct BatchWishes {
    unsigned threads = 0; ///< 0: one a core
    bool all = false;     ///< sheets that are up to date are made anew too
    std::string part;     ///< "I/N"
};

void add_batch_options(CLI::App& app, BatchWishes& wishes);

/// The part that "2/8" names. The option's own check has let nothing else through.
Part part_of(const BatchWishes& wishes);

/// True for what this share makes. Shares are told by what a file is called, so that two of one
/// name meet in one share.
bool belongs(const Part& part, const std::string& name);

/// Makes sheet `index`. Each thread has one of its own.
using Worker = std::function<Outcome(std::size_t index)>;

/// Hires one worker a thread (on the calling thread), runs sheets 0 to `count` and prints what they
/// said in order; shows progress on a terminal, and a summary when there are more than a few, which
/// calls them `what`. Gives the worst exit code. A sheet that throws harms no other; only
/// MissingFont ends the run.
int run_batch(std::size_t count, const BatchWishes& wishes, const std::function<Worker()>& hire,
              const std::string& what = "records");

/// Names of files that sheets of one run lay claim to. A claim waits for those of all earlier
/// sheets, so that the first one wins however many threads there are.
class Claims {
  public:
    /// Must be alive while sheet `index` is being made; passes the turn on when the sheet is done
    /// without a claim.
    class Turn {
      public:
        Turn(Claims& claims, std::size_t index)
            : claims_(claims)
            , index_(index) {}
        Turn(const Turn&) = delete;
        Turn& operator=(const Turn&) = delete;
        ~Turn() { pass(); }

        /// The record that has claimed `target` before; nothing when it is `record`'s now.
        std::optional<std::string> claim(const std::string& target, const std::string& record);
        void pass();

      private:
        Claims& claims_;
        std::size_t index_;
        bool passed_ = false;
    };

  private:
    std::mutex mutex_;
    std::condition_variable next_;
    std::size_t turn_ = 0;
    std::set<std::size_t> passed_; ///< behind `turn_`
    std::map<std::string, std::string> taken_;
};

} // namespace cli
