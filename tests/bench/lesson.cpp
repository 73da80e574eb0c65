// Where the time of a lesson summary goes, in one thread of a batch, beside the floor under it.
//   bench_lesson RECORD [SECONDS]
#include "cli/origin.hpp"
#include "cli/sheet.hpp"
#include "floor.hpp"
#include "output/pdf.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <malloc.h>
#include <vector>

namespace {

using Clock = std::chrono::steady_clock;

/// Milliseconds of processor time of this thread: what else the machine does hardly shows.
double now() {
    timespec t{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return static_cast<double>(t.tv_sec) * 1e3 + static_cast<double>(t.tv_nsec) / 1e6;
}

struct Stage {
    const char* name;
    std::vector<double> times;
    double median() {
        std::ranges::sort(times);
        return times[times.size() / 2];
    }
};

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) return std::fputs("bench_lesson RECORD [SECONDS]\n", stderr), 2;
    mallopt(M_TRIM_THRESHOLD, 256 << 20); // as the program does
    mallopt(M_MMAP_THRESHOLD, 64 << 20);
    const double seconds = argc > 2 ? std::atof(argv[2]) : 3;
    const cli::Workshop workshop(cli::Common{});
    const cli::Origin origin(workshop);
    const text::PangoTypesetter type;
    std::vector<Stage> stages{{"read record and table", {}},  {"digest of the inputs", {}},
                              {"statistics and physics", {}}, {"lay out, figures", {}},
                              {"write the PDF", {}},          {"all of it", {}},
                              {"floor: plain Cairo", {}}};
    std::size_t ours = 0, plain = 0, pages = 0;
    const auto end = Clock::now() + std::chrono::duration<double>(seconds);
    for (int round = 0; round < 5 || Clock::now() < end; ++round) {
        std::vector<double> at{now()};
        const auto read = workshop.read(argv[1]);
        at.push_back(now());
        const auto inputs = origin.of(*read);
        at.push_back(now());
        const cli::Sheet sheet(workshop, *read, type);
        at.push_back(now());
        const auto book = sheet.book(*read);
        at.push_back(now());
        ours = output::pdf(book, inputs).size();
        at.push_back(now());
        plain = bench::floor(book).size();
        const double after = now();
        if (!read->findings.clean()) return std::fputs("the record has errors\n", stderr), 1;
        pages = book.sheets.size();
        if (round < 2) continue; // warms fonts, shapes and drawings
        for (std::size_t i = 0; i + 1 < at.size(); ++i)
            stages[i].times.push_back(at[i + 1] - at[i]);
        stages[5].times.push_back(at.back() - at.front());
        stages[6].times.push_back(after - at.back());
    }
    std::printf("%zu pages, %zu kB, the floor's %zu kB, %zu rounds, medians of processor time\n",
                pages, ours / 1000, plain / 1000, stages[0].times.size());
    for (auto& stage : stages)
        std::printf("  %-24s %7.2f ms\n", stage.name, stage.median());
    std::printf("  %-24s %7.2f\n", "ratio, all to floor", stages[5].median() / stages[6].median());
    std::printf("  %-24s %7.2f\n", "ratio, PDF to floor", stages[4].median() / stages[6].median());
}
