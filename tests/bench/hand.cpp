// Cost of the hand: a pose, each of its views, the stages of one view, a lesson's eight pictures.
#include "hand/mask.hpp"
#include "hand/plate.hpp"
#include "hand/pose.hpp"

#include <benchmark/benchmark.h>

namespace {

using namespace hand;

Wish before() {
    Wish w;
    w.seen.lay = unit::Lay::palm;
    w.seen.knuckles = 1;
    w.seen.thumb_side = unit::ThumbSide::centre;
    w.seen.thumb_length = unit::ThumbLength::long_thumb;
    w.seen.gap = true;
    return w;
}

Wish after() {
    Wish w;
    w.seen.lay = unit::Lay::fingers;
    w.seen.knuckles = 2;
    w.seen.gap = false;
    return w;
}

void a_pose(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(pose(state.range(0) ? after() : before()));
}
BENCHMARK(a_pose)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

void its_facts(benchmark::State& state) {
    const auto p = pose(before());
    for (auto _ : state)
        benchmark::DoNotOptimize(facts(*p));
}
BENCHMARK(its_facts)->Unit(benchmark::kMillisecond);

void a_view(benchmark::State& state) {
    const auto p = pose(before());
    for (auto _ : state)
        benchmark::DoNotOptimize(draw(*p, View(state.range(0))));
}
BENCHMARK(a_view)->DenseRange(0, int(View::thumb_long))->Unit(benchmark::kMillisecond);

/// Both hands with their pose, nothing kept: a lesson's first joined view.
void joined_cold(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(draw(*pose(after()), View(state.range(0))));
}
BENCHMARK(joined_cold)
    ->DenseRange(int(View::joined), int(View::joined_front))
    ->Unit(benchmark::kMillisecond);

/// The golfer's-eye view as far as a stage.
void stages(benchmark::State& state) {
    const auto p = pose(before());
    const Limbs l = p->lead();
    Shot shot{{&l}, players_camera(), {}, 64, 129, 50, 164, false};
    const Vec c = shot.camera * Vec{112, 12, 0};
    shot.centre = {c.x, c.y};
    const Window window{c.x - 64, c.y + 129, 128, 258};
    const Field field(shot.hands, shot.camera);
    for (auto _ : state) {
        if (state.range(0) == 0) {
            benchmark::DoNotOptimize(trace(field, window, shot.pixel));
            continue;
        }
        Plate plate(shot); // trace, regions, what has faded
        if (state.range(0) > 1) plate.add_areas();
        if (state.range(0) > 2) plate.add_lines();
        benchmark::DoNotOptimize(plate.take());
    }
}
BENCHMARK(stages)->DenseRange(0, 3)->Unit(benchmark::kMillisecond);

/// What `lesson` draws for a record that names nothing: two poses, three views each, and a drill.
void eight_pictures(benchmark::State& state) {
    for (auto _ : state) {
        for (const Wish& w : {before(), after()}) {
            const auto p = pose(w);
            for (const View v : {View::open_palm, View::golfers_eye, View::butt_end, View::balance})
                benchmark::DoNotOptimize(draw(*p, v));
        }
    }
}
BENCHMARK(eight_pictures)->Unit(benchmark::kMillisecond);

} // namespace
