// What every command works with: templates, wording, fonts, and the reading of one record.
#pragma once

#include "cli/academy.hpp"
#include "diag/finding.hpp"
#include "drills/clubs.hpp"
#include "drills/drill.hpp"
#include "record/lesson.hpp"
#include "shots/table.hpp"
#include "stock/shelf.hpp"
#include "theme/style.hpp"
#include "words/catalogue.hpp"

#include <filesystem>
#include <list>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace cli {

namespace fs = std::filesystem;

/// Options that every command takes.
struct Common {
    std::string templates; ///< folder that replaces templates file by file
    bool strict = false;   ///< warnings and layout faults count as errors
    bool outside = false;  ///< records may name files outside their own folder
};

/// One record, read whole: findings point into `sources`.
struct Read {
    fs::path record;
    std::list<diag::Source> sources;
    std::shared_ptr<const Academy> academy; ///< house.yaml and people.yaml around the record
    diag::Findings findings;
    record::Lesson lesson; ///< as printed: record over person over house over program
    std::optional<shots::Table> table;
    std::vector<drills::Drill> library;
    std::vector<std::unique_ptr<Read>> earlier; ///< by 'last lesson', the latest first
    bool outside = false;                       ///< it may name files outside its own folder
    bool readable = true;                       ///< false when a file could not be opened
};

using Reads = std::vector<std::unique_ptr<Read>>;

/// Templates and wording, read once a run.
class Workshop {
  public:
    explicit Workshop(const Common& common);

    /// Findings of the templates themselves.
    const diag::Findings& findings() const { return findings_; }

    /// Reads record, shot table, and house, people and the coach's own drills beside or above it,
    /// and the lessons before it that it names.
    std::unique_ptr<Read> read(const fs::path& record) const;
    /// The same without the lessons before it.
    std::unique_ptr<Read> read_alone(const fs::path& record) const;
    /// House and people around a record or a folder.
    std::shared_ptr<const Academy> academy(const fs::path& path) const {
        return academies_.around(path);
    }

    /// Wording of a language; British English when there is none, with a warning by the caller.
    const words::Catalogue& wording(const std::string& language) const;
    /// The built-in drills in the words of a language; in English where it has none.
    const std::vector<drills::Drill>& library(const std::string& language) const;
    const std::vector<drills::TypicalClub>& clubs() const { return clubs_; }
    const theme::Style& style() const { return style_; }
    const record::Marks& marks() const { return marks_; }
    const stock::Shelf& shelf() const { return shelf_; }
    bool speaks(const std::string& language) const { return catalogues_.contains(language); }
    bool outside() const { return outside_; }

  private:
    void read_wording();
    void read_library();
    void read_translations();
    void check_cautions();
    void read_style();

    stock::Shelf shelf_;
    bool outside_;
    std::list<diag::Source> sources_;
    Academies academies_;
    diag::Findings findings_;
    std::map<std::string, words::Catalogue> catalogues_;
    std::vector<drills::Drill> library_;                           ///< in English
    std::map<std::string, std::vector<drills::Drill>> translated_; ///< by language
    std::vector<drills::TypicalClub> clubs_;
    theme::Style style_ = theme::house();
    record::Marks marks_; ///< of templates/style/, where a record brings none
};

/// Longer files are read up to here; every reader's own limit is lower.
inline constexpr std::size_t most_read = 65'000'000;

/// `file` is not below `folder`, links followed.
bool lies_outside(const fs::path& file, const fs::path& folder);

/// The text of a file; nothing when it cannot be read to its end.
std::optional<std::string> text_of(const fs::path& path);

} // namespace cli
