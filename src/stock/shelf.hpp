// The templates: built into the program, and replaced file by file from a folder of the coach's.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stock {

struct BuiltIn {
    std::string_view name; ///< path below templates/, with '/'
    std::string_view text;
};

/// All built-in templates, sorted by name.
const std::vector<BuiltIn>& built_in();

/// Digest of the program's sources: two builds of the same sources agree, any change differs.
std::string_view program_digest();

/// Where templates are taken from.
class Shelf {
  public:
    Shelf() = default;
    /// `folder` wins over the built-in file of the same name.
    explicit Shelf(std::filesystem::path folder)
        : folder_(std::move(folder)) {}

    struct Item {
        std::string name; ///< what a finding calls the file
        std::string text;
    };
    /// The template of that name; nothing when neither place has it.
    std::optional<Item> find(std::string_view name) const;

    /// Names of built-in templates and of those in the folder that start with `prefix`, sorted.
    std::vector<std::string> names(std::string_view prefix) const;

  private:
    std::filesystem::path folder_;
};

} // namespace stock
