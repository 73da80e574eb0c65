// What every fuzz target has: one function that takes any bytes and must come back.
#pragma once

#include "diag/finding.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace fuzz {

inline std::string text_of(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

/// Prints all findings, as the program would: a place outside its file would show here. Findings
/// without words are a fault.
inline void print(const diag::Findings& findings) {
    for (const auto& finding : findings.list())
        if (finding.what.empty()) std::abort();
    const std::string all = diag::print_all(findings, true);
    if (all.empty() != findings.list().empty()) std::abort();
}

} // namespace fuzz
