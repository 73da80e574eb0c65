#include "cli/batch.hpp"

#include "cli/progress.hpp"
#include "cli/tally.hpp"
#include "output/seal.hpp"
#include "text/font_set.hpp"

#include <algorithm>
#include <charconv>
#include <deque>
#include <iostream>
#include <thread>
#include <vector>

namespace cli {

namespace {

/// What the threads share: which sheet comes next, and what is ready to be told.
class Desk {
  public:
    explicit Desk(std::size_t count)
        : ready_(count) {}

    /// The next sheet to make; nothing at the end, or after `stop`.
    std::optional<std::size_t> next() {
        const std::lock_guard lock(mutex_);
        if (over_ || next_ == ready_.size()) return std::nullopt;
        return next_++;
    }

    void hand_in(std::size_t index, Outcome outcome) {
        const std::lock_guard lock(mutex_);
        ready_[index] = std::move(outcome);
        told_.notify_one();
    }

    /// No further sheet is begun; `why` is thrown where outcomes are taken.
    void stop(std::exception_ptr why) {
        const std::lock_guard lock(mutex_);
        over_ = true;
        if (!fault_) fault_ = std::move(why);
        told_.notify_one();
    }

    /// Waits for a sheet's outcome, and hands it out once. Throws what stopped the run.
    Outcome take(std::size_t index) {
        std::unique_lock lock(mutex_);
        told_.wait(lock, [&] { return ready_[index] || fault_; });
        if (!ready_[index]) std::rethrow_exception(fault_);
        Outcome out = std::move(*ready_[index]);
        ready_[index].reset();
        return out;
    }

  private:
    std::mutex mutex_;
    std::condition_variable told_;
    std::size_t next_ = 0;
    std::vector<std::optional<Outcome>> ready_;
    bool over_ = false;
    std::exception_ptr fault_;
};

void work(Desk& desk, const Worker& worker) {
    while (const auto index = desk.next()) {
        try {
            desk.hand_in(*index, worker(*index));
        } catch (const text::MissingFont&) { // no sheet can be made
            desk.stop(std::current_exception());
        } catch (const std::exception& fault) {
            desk.hand_in(*index, Outcome::failure({}, no_file,
                                                  std::string("lessonleaf: ") + fault.what() + "\n",
                                                  fault.what()));
        }
    }
}

unsigned threads_for(std::size_t count, const BatchWishes& wishes) {
    const unsigned wanted =
        wishes.threads > 0 ? wishes.threads : std::max(1u, std::thread::hardware_concurrency());
    return static_cast<unsigned>(std::clamp<std::size_t>(count, 1, wanted));
}

/// Joins when it goes, whatever happens on the way.
class Crew {
  public:
    Crew(Desk& desk, std::vector<Worker> workers)
        : desk_(desk)
        , workers_(std::move(workers)) {
        for (const auto& worker : workers_)
            threads_.emplace_back([&desk, &worker] { work(desk, worker); });
    }
    ~Crew() {
        desk_.stop({});
        for (auto& thread : threads_)
            thread.join();
    }
    Crew(const Crew&) = delete;
    Crew& operator=(const Crew&) = delete;

  private:
    Desk& desk_;
    std::vector<Worker> workers_;
    std::vector<std::thread> threads_;
};

} // namespace

Outcome Outcome::failure(std::string name, int exit, std::string err, std::string why) {
    return {State::failed, exit, std::move(name), {}, std::move(err), std::move(why)};
}

Outcome Outcome::saying(const diag::Findings& findings) && {
    auto found = found_in(findings);
    err = std::move(found.own);
    shared = std::move(found.shared);
    return std::move(*this);
}

void Outcome::add(const Read& read, bool sound) {
    if (!read.readable) err += unreadable(read.record.string());
    auto found = found_in(read.findings);
    err += found.own;
    std::ranges::move(found.shared, std::back_inserter(shared));
    if (!sound && why.empty())
        why = read.readable ? first_of(read.findings) : read.record.string() + " cannot be read";
}

namespace {

/// What is said of a sheet on standard error: faults of shared files only once.
std::string said(const Outcome& outcome, Telling& telling) {
    const std::string text = telling.news(outcome.shared) + outcome.err;
    return text.empty() && outcome.state == Outcome::State::failed
               ? outcome.name + ": not printed for what is told above\n"
               : text;
}

} // namespace

int run_batch(std::size_t count, const BatchWishes& wishes, const std::function<Worker()>& hire,
              const std::string& what) {
    Desk desk(count);
    std::vector<Worker> workers;
    for (unsigned i = threads_for(count, wishes); i > 0; --i)
        workers.push_back(hire());
    Tally tally;
    Telling telling;
    Progress progress(count);
    {
        const Crew crew(desk, std::move(workers));
        for (std::size_t i = 0; i < count; ++i) {
            const Outcome outcome = desk.take(i);
            const std::string err = said(outcome, telling);
            if (!err.empty() || !outcome.out.empty()) progress.clear();
            std::cerr << err << std::flush;
            std::cout << outcome.out << std::flush;
            tally.add(outcome);
            progress.show(i + 1, tally.failed());
        }
        progress.clear();
    }
    if (tally.worth_telling()) std::cerr << tally.summary(what);
    return tally.worst();
}

void add_batch_options(CLI::App& app, BatchWishes& wishes) {
    app.add_flag("--all", wishes.all, "Make sheets anew that are up to date");
    app.add_option("--threads", wishes.threads, "How many at a time; usually one a core")
        ->check(CLI::Range(1u, 256u));
    app.add_option("--part", wishes.part, "I/N: only share I of N, for several machines")
        ->check([](const std::string& text) -> std::string {
            const auto part = part_of({0, false, text});
            if (part.index > 0 && part.index <= part.of) return {};
            return "'" + text + "' must be a share such as 2/8";
        });
}

bool belongs(const Part& part, const std::string& name) {
    return output::Hash().add(name).digest().low % part.of == part.index - 1;
}

Part part_of(const BatchWishes& wishes) {
    const std::string& text = wishes.part;
    if (text.empty()) return {};
    Part part{0, 0};
    const char* const end = text.data() + text.size();
    const auto first = std::from_chars(text.data(), end, part.index);
    if (first.ec != std::errc() || first.ptr == end || *first.ptr != '/') return {0, 0};
    const auto second = std::from_chars(first.ptr + 1, end, part.of);
    return second.ec == std::errc() && second.ptr == end ? part : Part{0, 0};
}

} // namespace cli
