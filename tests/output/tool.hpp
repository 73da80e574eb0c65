// Other programs as judges of our files: poppler and qpdf.
#pragma once

#include <array>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <sys/wait.h>

/// What a command prints, standard error included. Throws when it does not exit with 0.
inline std::string printed(const std::string& command) {
    FILE* pipe = popen((command + " 2>&1").c_str(), "r");
    if (!pipe) throw std::runtime_error("cannot run " + command);
    std::string out;
    std::array<char, 4096> buffer{};
    for (std::size_t n; (n = fread(buffer.data(), 1, buffer.size(), pipe)) > 0;)
        out.append(buffer.data(), n);
    const int status = pclose(pipe);
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0)
        throw std::runtime_error(command + " failed: " + out);
    return out;
}

inline std::string slurp(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::stringstream all;
    all << file.rdbuf();
    return all.str();
}

/// A path for scratch files of this test program.
inline std::string scratch(const std::string& name) { return std::string(BUILD_DIR) + "/" + name; }

inline std::string stored(const std::string& name, const std::string& bytes) {
    const auto path = scratch(name);
    std::ofstream(path, std::ios::binary) << bytes;
    return path;
}
