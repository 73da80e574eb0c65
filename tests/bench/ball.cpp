// Cost of one lesson of forty shots: credit with and without resampling, and the flights drawn.
#include "lesson.hpp"

#include <benchmark/benchmark.h>

namespace {

const auto before = lesson::block(lesson::open_face, 0.97);
const auto after = lesson::block(lesson::square_face, 1.0);

void credit_with_resampling(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(ball::credit(before, after, lesson::setting()));
}
BENCHMARK(credit_with_resampling)->Unit(benchmark::kMillisecond);

void credit_without_resampling(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(ball::credit(before, after, lesson::setting(), {0, 0.8, 1}));
}
BENCHMARK(credit_without_resampling)->Unit(benchmark::kMillisecond);

void forty_flights(benchmark::State& state) {
    const ball::Launch launch = ball::strike(lesson::open_face, lesson::seven_iron());
    for (auto _ : state)
        for (int i = 0; i < 40; ++i)
            benchmark::DoNotOptimize(ball::fly(launch, {}));
}
BENCHMARK(forty_flights)->Unit(benchmark::kMillisecond);

} // namespace
