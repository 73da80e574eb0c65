// The files that stand around a record: house.yaml and people.yaml, looked for upward.
#pragma once

#include "diag/finding.hpp"
#include "people/house.hpp"
#include "people/people.hpp"

#include <filesystem>
#include <list>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <vector>

namespace cli {

namespace fs = std::filesystem;

/// What holds for the records below a folder. Findings point into `sources`.
struct Academy {
    std::list<diag::Source> sources;
    fs::path house_path, people_path; ///< empty when there is no such file
    std::optional<people::House> house;
    std::optional<people::People> people;
    diag::Findings findings; ///< of the files as a whole; a person's own stay with the person

    /// All of house.yaml and, of people.yaml, the lines of that person alone.
    std::string text_for(std::string_view code) const;
    /// "people.yaml, line 12".
    std::string person_place(const people::Person& person) const;
    /// The person of that code; null when unknown.
    const people::Person* person(std::string_view code) const {
        return people ? people->find(code) : nullptr;
    }
};

/// Reads each pair of files once a run. May be asked from several threads.
class Academies {
  public:
    /// For a record or any other path: the nearest files in its folder or one of six above it.
    std::shared_ptr<const Academy> around(const fs::path& path) const;

  private:
    mutable std::mutex mutex_;
    mutable std::map<std::vector<fs::path>, std::shared_ptr<const Academy>> read_;
};

/// A file that was meant as `name` but is called otherwise (capitals, .yml, .yaml.txt), where no
/// file of that name is.
std::optional<fs::path> nearly(const fs::path& path, const std::string& name);

/// "house.yaml" of "House.yml"; another name as it is.
std::string usual_name(const fs::path& file);

/// A path as the caller would write it: short where that is possible.
std::string shown(const fs::path& path);

/// The nearest file of that name in the folder of `path` (in `path` itself when it is a folder) or
/// in a folder above it, six folders in all.
std::optional<fs::path> upward(const fs::path& path, const char* name);

} // namespace cli
