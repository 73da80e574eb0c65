// Shift and rank intervals against R, over a sweep of samples: values R printed once, kept in
// rank_intervals.txt, and R itself on other samples where it is installed.
#include "measure/change.hpp"
#include "shots.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <charconv>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <string>

namespace {

std::string shortest(double value) {
    std::array<char, 32> text{};
    return {text.data(), std::to_chars(text.data(), text.data() + text.size(), value).ptr};
}

double number(std::string_view text) {
    double value = 0;
    const auto end = std::from_chars(text.data(), text.data() + text.size(), value);
    REQUIRE(end.ec == std::errc{});
    return value;
}

std::vector<std::string> parts(const std::string& line, char separator) {
    std::vector<std::string> found;
    std::istringstream stream(line);
    for (std::string part; std::getline(stream, part, separator);)
        found.push_back(part);
    return found;
}

std::vector<double> numbers(const std::string& text) {
    std::vector<double> found;
    for (const auto& part : parts(text, ' '))
        found.push_back(number(part));
    return found;
}

std::string line_of(const std::vector<double>& values) {
    std::string text;
    for (const double value : values) {
        if (!text.empty()) text += ' ';
        text += shortest(value);
    }
    return text;
}

/// Smooth, coarse and constant samples of all sizes, heavy tails on one side of some.
void write_samples(const std::string& path, std::uint64_t seed) {
    constexpr std::array<std::array<std::size_t, 2>, 26> sizes{
        {{1, 1},   {1, 4},   {2, 3},   {3, 3},   {3, 5},   {4, 4},   {5, 5},   {5, 12},  {6, 9},
         {8, 8},   {8, 10},  {10, 10}, {12, 7},  {9, 20},  {15, 15}, {17, 13}, {20, 30}, {25, 25},
         {40, 22}, {50, 49}, {60, 3},  {60, 60}, {33, 60}, {70, 80}, {61, 61}, {100, 64}}};
    shots::Source source(seed);
    std::ofstream file(path);
    for (const auto& [m, n] : sizes) {
        for (const double per_unit : {1e4, 2.0}) {
            const auto before = shots::rounded(source.block(m, 4, 0.3), per_unit);
            const auto after = shots::rounded(source.normals(n, 3, 1.5), per_unit);
            file << line_of(before) << ';' << line_of(after) << '\n';
        }
    }
    file << "2 2 2 2 2;2 2 2 2 2\n3 3 3 3 3 3;1 1 1 1 1 1 1 1\n";
}

/// Where R solves for the root of a step function, its answer lies within 1e-4 of a step.
void check_interval(const std::optional<measure::Interval>& found, double level, double lower,
                    double upper, double held, const std::string& how) {
    if (how == "normal") {
        REQUIRE(found);
        CHECK(found->lower == Approx(lower).margin(0.01));
        CHECK(found->upper == Approx(upper).margin(0.01));
        CHECK(found->level == Approx(held).margin(0.001));
        return;
    }
    REQUIRE(found.has_value() == (held > level - 1e-9));
    if (!found) return;
    CHECK(found->exact);
    CHECK(found->lower == Approx(lower).margin(1e-12));
    CHECK(found->upper == Approx(upper).margin(1e-12));
    CHECK(found->level == Approx(held).epsilon(1e-10));
}

std::size_t check_results(const std::string& path) {
    std::ifstream file(path);
    std::size_t count = 0;
    for (std::string line; std::getline(file, line); ++count) {
        const auto fields = parts(line, ';');
        REQUIRE(fields.size() == 13);
        INFO(fields[0] << ": " << fields[1] << " against " << fields[2]);
        const auto shift = measure::shift(numbers(fields[1]), numbers(fields[2]));
        CHECK(shift.value == Approx(number(fields[3])).margin(1e-12));
        const auto value = [&](std::size_t i) { return number(fields[i]); };
        check_interval(shift.at80, 0.80, value(4), value(5), value(6), fields[0]);
        check_interval(shift.at90, 0.90, value(7), value(8), value(9), fields[0]);
        check_interval(shift.at95, 0.95, value(10), value(11), value(12), fields[0]);
    }
    return count;
}

bool run_r(const std::string& samples, const std::string& results) {
    const std::string command = "Rscript --vanilla " TESTS_DIR "/measure/rank_intervals.R '" +
                                samples + "' '" + results + "'";
    return std::system(command.c_str()) == 0;
}

} // namespace

// R 4.2.2, wilcox.test(conf.int = TRUE) and qwilcox; see rank_intervals.R.
TEST_CASE("shift and intervals agree with the values R printed") {
    CHECK(check_results(TESTS_DIR "/measure/rank_intervals.txt") == 54);
}

TEST_CASE("shift and intervals agree with R on further samples, where R is installed") {
    if (std::system("command -v Rscript > /dev/null 2>&1") != 0) {
        WARN("no Rscript here: only the stored values were compared");
        return;
    }
    const std::string samples = BUILD_DIR "/rank_samples.txt",
                      results = BUILD_DIR "/rank_results.txt";
    write_samples(samples, 20);
    REQUIRE(run_r(samples, results));
    CHECK(check_results(results) == 54);
}

// Hidden: writes what rank_intervals.txt holds into the build folder, to be copied by hand.
TEST_CASE("print the values to store", "[.]") {
    const std::string samples = BUILD_DIR "/rank_samples_to_store.txt";
    write_samples(samples, 7);
    REQUIRE(run_r(samples, BUILD_DIR "/rank_intervals.txt"));
}
