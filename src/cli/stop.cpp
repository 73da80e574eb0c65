#include "cli/stop.hpp"

#include "output/file.hpp"

#include <csignal>
#include <iostream>
#include <string>
#include <thread>
#include <unistd.h>

namespace cli {

namespace {

bool ignored(int number) {
    struct sigaction now {};
    return sigaction(number, nullptr, &now) == 0 && now.sa_handler == SIG_IGN;
}

[[noreturn]] void wait_for(sigset_t signals) {
    int number = 0;
    while (sigwait(&signals, &number) != 0) {
    }
    output::finish_writing();
    const char* const clear = isatty(STDERR_FILENO) != 0 ? "\r\x1b[K" : "";
    const std::string words =
        clear + std::string("lessonleaf: stopped; every sheet that was written is whole\n"
                            "  hint: the same command makes the others\n");
    static_cast<void>(!::write(STDERR_FILENO, words.data(), words.size()));
    _exit(128 + number);
}

} // namespace

void stop_cleanly() {
    std::signal(SIGXFSZ, SIG_IGN); // a file that may grow no further is an error of writing
    sigset_t signals;
    sigemptyset(&signals);
    for (const int number : {SIGINT, SIGTERM, SIGHUP})
        if (!ignored(number)) sigaddset(&signals, number);
    pthread_sigmask(SIG_BLOCK, &signals, nullptr);
    std::thread(wait_for, signals).detach();
}

} // namespace cli
