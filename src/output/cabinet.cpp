#include "output/cabinet.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <utility>
#include <vector>

namespace output {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view mark = "lessonleaf kept 1\n", ending = ".kept";
constexpr std::uintmax_t largest = 4 << 20; ///< of one file; a larger one is none of ours

/// FNV-1a, 64 bits.
std::uint64_t checksum(std::string_view text, std::uint64_t sum = 14695981039346656037u) {
    for (const char c : text)
        sum = (sum ^ std::uint8_t(c)) * 1099511628211u;
    return sum;
}

std::string digits(std::uint64_t n) {
    std::string out(16, '0');
    for (std::size_t i = out.size(); i-- > 0; n >>= 4)
        out[i] = "0123456789abcdef"[n & 15];
    return out;
}

/// What goes before the bytes: mark, checksum over key and bytes, size of the key, the key.
std::string head_of(const std::string& key, std::string_view bytes) {
    return std::string(mark) + digits(checksum(bytes, checksum(key))) + digits(key.size()) + key;
}

class Handle {
  public:
    explicit Handle(int handle)
        : handle_(handle) {}
    Handle(const Handle&) = delete;
    Handle& operator=(const Handle&) = delete;
    ~Handle() { shut(); }
    explicit operator bool() const { return handle_ >= 0; }
    int operator*() const { return handle_; }
    bool shut() {
        const int handle = std::exchange(handle_, -1);
        return handle < 0 || ::close(handle) == 0;
    }

  private:
    int handle_;
};

std::optional<std::string> text_of(int handle) {
    struct stat about {};
    if (::fstat(handle, &about) != 0 || !S_ISREG(about.st_mode)) return std::nullopt;
    if (std::uintmax_t(about.st_size) > largest) return std::nullopt;
    std::string text(std::size_t(about.st_size), '\0');
    std::size_t got = 0;
    while (got < text.size()) {
        const auto n = ::read(handle, text.data() + got, text.size() - got);
        if (n <= 0) return std::nullopt;
        got += std::size_t(n);
    }
    return text;
}

bool write_all(int handle, std::string_view bytes) {
    while (!bytes.empty()) {
        const auto n = ::write(handle, bytes.data(), bytes.size());
        if (n <= 0) return false;
        bytes.remove_prefix(std::size_t(n));
    }
    return true;
}

struct Old {
    fs::file_time_type used;
    std::uintmax_t size;
    fs::path path;
};

/// Our files in the folder; what a broken run left behind an hour ago is taken away on the way.
std::vector<Old> contents(const fs::path& folder) {
    std::vector<Old> out;
    std::error_code failed;
    const auto now = fs::file_time_type::clock::now();
    for (fs::directory_iterator it(folder, failed), end; !failed && it != end;
         it.increment(failed)) {
        std::error_code gone;
        const std::string name = it->path().filename().string();
        const Old old{it->last_write_time(gone), it->file_size(gone), it->path()};
        if (gone) continue;
        if (name.ends_with(ending))
            out.push_back(old);
        else if (name.find(std::string(ending) + ".") != name.npos &&
                 now - old.used > std::chrono::hours(1))
            fs::remove(old.path, gone);
    }
    return out;
}

} // namespace

fs::path cabinet_folder() {
    for (const auto& [variable, below] :
         {std::pair{"XDG_CACHE_HOME", "lessonleaf"}, {"HOME", ".cache/lessonleaf"}}) {
        const char* const value = std::getenv(variable);
        if (value && fs::path(value).is_absolute()) return fs::path(value) / below;
    }
    return {};
}

Cabinet::Cabinet(fs::path folder, std::uintmax_t limit)
    : folder_(std::move(folder))
    , limit_(limit) {}

fs::path Cabinet::place(const std::string& key) const {
    return folder_ / (digits(checksum(key)) + std::string(ending));
}

std::optional<std::string> Cabinet::find(const std::string& key) const {
    if (folder_.empty()) return std::nullopt;
    const Handle file(::open(place(key).c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK));
    if (!file) return std::nullopt;
    auto text = text_of(*file);
    const std::size_t head = mark.size() + 32 + key.size();
    if (!text || text->size() < head) return std::nullopt;
    if (text->compare(0, head, head_of(key, std::string_view(*text).substr(head))) != 0)
        return std::nullopt;
    ::futimens(*file, nullptr); // used just now
    text->erase(0, head);
    return text;
}

void Cabinet::keep(const std::string& key, std::string_view bytes) {
    const std::string head = head_of(key, bytes);
    if (folder_.empty() || head.size() + bytes.size() > std::min(largest, limit_)) return;
    std::error_code failed;
    if (!fs::is_directory(folder_, failed)) {
        fs::create_directories(folder_, failed);
        if (failed) return;
        fs::permissions(folder_, fs::perms::owner_all, failed);
    }
    make_room(head.size() + bytes.size());
    const fs::path target = place(key);
    std::string beside = target.string() + ".XXXXXX";
    Handle file(mkostemp(beside.data(), O_CLOEXEC));
    if (!file) return;
    const bool written = write_all(*file, head) && write_all(*file, bytes) && file.shut();
    if (!written || ::rename(beside.c_str(), target.c_str()) != 0) ::unlink(beside.c_str());
}

/// Takes a quarter more than it must, so that it is not looked through again for each file.
void Cabinet::make_room(std::uintmax_t more) {
    const std::lock_guard lock(mutex_);
    if (used_) *used_ += more;
    if (used_ && *used_ <= limit_) return;
    auto all = contents(folder_);
    std::uintmax_t sum = more;
    for (const Old& old : all)
        sum += old.size;
    if (sum > limit_) {
        std::ranges::sort(all, {}, [](const Old& o) { return std::pair(o.used, o.path); });
        for (const Old& old : all) {
            if (sum <= limit_ / 4 * 3) break;
            std::error_code gone;
            if (fs::remove(old.path, gone)) sum -= old.size;
        }
    }
    used_ = sum;
}

} // namespace output
