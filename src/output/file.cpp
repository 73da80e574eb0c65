#include "output/file.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <condition_variable>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <mutex>

namespace output {

namespace fs = std::filesystem;

namespace {

[[noreturn]] void fail(const std::string& target, const std::string& why) {
    throw CannotWrite(std::string("cannot write '") + target + "': " + why);
}

std::string reason(int error) { return std::strerror(error); }

/// Can only be read by setting it, so it is read once.
mode_t creation_mask() {
    static const mode_t mask = [] {
        const mode_t old = ::umask(0);
        ::umask(old);
        return old;
    }();
    return mask;
}

/// Where the bytes will lie in the end: a link is followed, so that it stays a link. Absolute, for
/// a bare name that does not exist yet has no folder to look at.
fs::path place(const std::string& target) {
    if (target.empty()) return {};
    std::error_code error;
    const fs::path real = fs::weakly_canonical(fs::absolute(target, error), error);
    return error ? fs::path(target) : real;
}

/// Stands between a file's name and six letters of chance in the name of its unfinished beginning.
constexpr const char* mark = ".unfinished-";

/// Writers pass side by side; whoever ends the program closes the gate before the next of them. A
/// shared mutex would not do: it lets further readers in while somebody waits for the last to
/// leave.
class Gate {
  public:
    void enter() {
        std::unique_lock lock(mutex_);
        changed_.wait(lock, [&] { return !closed_; });
        ++inside_;
    }
    void leave() {
        const std::lock_guard lock(mutex_);
        --inside_;
        changed_.notify_all();
    }
    /// Whoever comes now waits for ever; those inside have `longest` to leave.
    void close(std::chrono::seconds longest) {
        std::unique_lock lock(mutex_);
        closed_ = true;
        changed_.wait_for(lock, longest, [&] { return inside_ == 0; });
    }

  private:
    std::mutex mutex_;
    std::condition_variable changed_;
    int inside_ = 0;
    bool closed_ = false;
};

Gate& gate() {
    static Gate one;
    return one;
}

struct Passage {
    Passage() { gate().enter(); }
    Passage(const Passage&) = delete;
    Passage& operator=(const Passage&) = delete;
    ~Passage() { gate().leave(); }
};

/// A file beside the target that vanishes unless it is kept.
class Beside {
  public:
    /// `called` names the target in a message.
    Beside(const fs::path& target, const std::string& called)
        : name_((target.parent_path() / ("." + target.filename().string() + mark + "XXXXXX"))
                    .string()) {
        // The lock tells a run at work from one that was cut off. Until it is held a sweep may take
        // the file for a leftover: then another one is begun.
        constexpr int most_tries = 100; // a file system may not count its links
        const std::string unnamed = name_;
        for (int i = 0; i < most_tries && !is_claimed(); ++i) {
            if (handle_ >= 0) ::close(handle_);
            name_ = unnamed;
            handle_ = mkostemp(name_.data(), O_CLOEXEC);
            if (handle_ < 0) fail(called, reason(errno));
            ::flock(handle_, LOCK_EX);
        }
    }
    Beside(const Beside&) = delete;
    Beside& operator=(const Beside&) = delete;
    ~Beside() {
        if (handle_ >= 0) ::close(handle_);
        if (!kept_) ::unlink(name_.c_str());
    }

    int handle() const { return handle_; }

    /// Errno of the first step that failed, or 0.
    int keep_as(const fs::path& target) {
        struct stat old {};
        const mode_t mask = creation_mask();
        const mode_t mode = ::stat(target.c_str(), &old) == 0 ? old.st_mode & 0777 : 0666 & ~mask;
        if (::fchmod(handle_, mode) != 0 || ::fsync(handle_) != 0) return errno;
        // Closed only under its final name: the lock guards the other one.
        if (::rename(name_.c_str(), target.c_str()) != 0) return errno;
        kept_ = true;
        return 0;
    }

  private:
    bool is_claimed() const {
        struct stat now {};
        return handle_ >= 0 && ::fstat(handle_, &now) == 0 && now.st_nlink > 0;
    }

    std::string name_;
    int handle_ = -1;
    bool kept_ = false;
};

/// Errno of the first step that failed, or 0.
int write_all(int handle, std::string_view bytes) {
    while (!bytes.empty()) {
        const auto written = ::write(handle, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return errno;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

} // namespace

void check_target(const std::string& target, const std::vector<std::string>& inputs) {
    if (target == "-") return;
    if (target.empty()) fail(target, "the name is empty");
    std::error_code error;
    const fs::path real = place(target);
    if (fs::is_directory(real, error)) fail(target, "it is a folder");
    if (fs::exists(real, error) && !fs::is_regular_file(real, error))
        fail(target, "it is not a regular file");
    for (const auto& input : inputs)
        if (fs::equivalent(real, input, error)) fail(target, "it is an input of this run");
    const fs::path folder = real.parent_path();
    if (!fs::is_directory(folder, error))
        fail(target, std::string("there is no folder '") + folder.string() + "'");
    if (::access(folder.c_str(), W_OK) != 0)
        fail(target, std::string("folder '") + folder.string() + "': " + reason(errno));
}

void write_file(const std::string& target, std::string_view bytes,
                const std::vector<std::string>& inputs) {
    check_target(target, inputs);
    if (target == "-") {
        if (const int error = write_all(STDOUT_FILENO, bytes))
            fail("standard output", reason(error));
        return;
    }
    const fs::path real = place(target);
    const Passage through;
    Beside beside(real, target);
    if (const int error = write_all(beside.handle(), bytes)) fail(target, reason(error));
    if (const int error = beside.keep_as(real)) fail(target, reason(error));
}

void finish_writing() { gate().close(std::chrono::seconds(5)); }

void sweep(const std::string& target) {
    std::error_code error;
    const fs::path real = place(target);
    const fs::path folder = fs::is_directory(real, error) ? real : real.parent_path();
    for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
        const std::string name = at->path().filename().string();
        const auto found = name.rfind(mark);
        if (!name.starts_with('.') || found == name.npos) continue;
        if (name.size() != found + std::strlen(mark) + 6) continue;
        const int handle = ::open(at->path().c_str(), O_RDONLY | O_NOFOLLOW | O_CLOEXEC);
        if (handle < 0) continue;
        if (::flock(handle, LOCK_EX | LOCK_NB) == 0) ::unlink(at->path().c_str());
        ::close(handle);
    }
}

} // namespace output
