// Finished work kept in a folder of the user's between runs. The folder may be read-only, full,
// gone or spoilt at any moment: then a thing is made anew and nobody is told.
#pragma once

#include <cstdint>
#include <filesystem>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>

namespace output {

/// Where such things belong: $XDG_CACHE_HOME/lessonleaf, else ~/.cache/lessonleaf; empty when the
/// environment names neither (XDG Base Directory Specification; a relative path counts as none).
std::filesystem::path cabinet_folder();

class Cabinet {
  public:
    /// Nothing is made before the first `keep`. Beyond `limit` bytes the longest unused go.
    explicit Cabinet(std::filesystem::path folder, std::uintmax_t limit = 64u << 20);

    /// What was kept by that key, whole and unspoilt, or nothing. From any thread.
    std::optional<std::string> find(const std::string& key) const;
    /// Written beside its place and renamed. From any thread, and from several runs at once.
    void keep(const std::string& key, std::string_view bytes);

  private:
    std::filesystem::path place(const std::string& key) const;
    void make_room(std::uintmax_t more);

    std::filesystem::path folder_;
    std::uintmax_t limit_;
    std::mutex mutex_;
    std::optional<std::uintmax_t> used_; ///< bytes in the folder, once it was looked at
};

} // namespace output
