// One row and one file a command.
#pragma once

#include "cli/workshop.hpp"

#include <CLI/CLI.hpp>

#include <array>
#include <functional>
#include <set>

namespace cli {

/// Declares a command's options on `app`; what comes back does the work and gives the exit code.
using Run = std::function<int()>;
struct Command {
    const char* name;
    const char* what;
    const char* example; ///< that runs, for who left out what must be there
    Run (*set_up)(CLI::App& app, const Common& common);
};

Run set_up_lesson(CLI::App& app, const Common& common);
Run set_up_check(CLI::App& app, const Common& common);
Run set_up_numbers(CLI::App& app, const Common& common);
Run set_up_figure(CLI::App& app, const Common& common);
Run set_up_drills(CLI::App& app, const Common& common);
Run set_up_binder(CLI::App& app, const Common& common);
Run set_up_term(CLI::App& app, const Common& common);
Run set_up_begin(CLI::App& app, const Common& common);
Run set_up_mail(CLI::App& app, const Common& common);
Run set_up_held(CLI::App& app, const Common& common);

inline constexpr std::array commands{
    Command{"lesson", "Print the lesson summary of each record as a PDF",
            "lesson.yaml -o sheet.pdf", set_up_lesson},
    Command{"binder", "Bind all lessons of one student, with contents, progress and words",
            "lessons --student RU-04 -o binder.pdf", set_up_binder},
    Command{"term", "Print the reports of a term, the printer's pile and the coach's overview",
            "spring-term.yaml -o reports/", set_up_term},
    Command{"check", "Read records and their shot tables, tell every fault, draw nothing",
            "lesson.yaml", set_up_check},
    Command{"numbers", "Print all that was computed as a table, CSV or JSON",
            "lesson.yaml --as table", set_up_numbers},
    Command{"figure", "Write one figure of a sheet as SVG, PNG or PDF",
            "lesson.yaml scatter -o scatter.svg", set_up_figure},
    Command{"drills", "Print the drill book: every drill for one hand, one a page", "-o drills.pdf",
            set_up_drills},
    Command{"begin", "Start a lesson: a record ready to fill in, and an empty shot table",
            "2026-05-14", set_up_begin},
    Command{"mail", "Write a draft with the sheet attached; nothing is ever sent",
            "lesson.yaml -o draft.eml", set_up_mail},
    Command{"held", "Say what is held about a student, or what is due for deletion",
            "academy --student RU-04 -o held.pdf", set_up_held},
};

/// What is said of a record that cannot be read.
std::string unreadable(const std::string& record);
/// Says it on standard error; the exit code.
int cannot_read(const std::string& record);

/// All findings as they are printed on standard error, in colour when that is a terminal.
std::string told(const diag::Findings& findings);
/// True when the finding is of a file that several lessons share: house.yaml, people.yaml,
/// drills.yaml.
bool is_shared(const diag::Finding& finding);
/// No error, and with `strict` no warning either.
bool passes(const diag::Findings& findings, bool strict);
/// The first and gravest finding in one line, with its place.
std::string first_of(const diag::Findings& findings);

/// Prints what was found in one record to standard error; true when there is no error (with
/// `strict`, no warning either).
bool tell(const diag::Findings& findings, bool strict);

/// What was found in one record, as it is printed: its own, and each finding of a shared file.
struct Found {
    std::string own;
    std::vector<std::string> shared;
};
Found found_in(const diag::Findings& findings);

/// Tells of one record after another; a fault of a file that they share only once.
class Telling {
  public:
    bool tell(const diag::Findings& findings, bool strict);
    /// What of `shared` was not said before.
    std::string news(const std::vector<std::string>& shared);

  private:
    std::set<std::string> before_;
};

} // namespace cli
