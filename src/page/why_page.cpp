#include "page/why_page.hpp"

#include "figure/scatter.hpp"
#include "page/parts.hpp"
#include "page/verdict.hpp"
#include "words/side.hpp"

#include <algorithm>

namespace page {

namespace {

using unit::Measure;

const Evidence* find(const Story& story, Measure measure) {
    const auto found = std::ranges::find(story.evidence, measure, &Evidence::measure);
    return found == story.evidence.end() ? nullptr : &*found;
}

figure::ScatterRow scatter_row(figure::Symbol symbol, std::string name, const std::vector<shots::Shot>& shots) {
    figure::ScatterRow row{symbol, std::move(name), {}, 0, 0};
    std::vector<double> faces, paths;
    for (const auto& shot : shots) {
        const auto face = shot[Measure::face], path = shot[Measure::path];
        if (!face || !path) continue;
        row.shots.push_back({*face, *path, !shot.set_aside.empty()});
        if (!shot.set_aside.empty()) continue;
        faces.push_back(*face);
        paths.push_back(*path);
    }
    row.face = measure::describe(faces).median;
    row.path = measure::describe(paths).median;
    return row;
}

std::optional<figure::ScatterInput> scatter_input(const figure::Easel& easel, const Story& story) {
    const Evidence *face = find(story, Measure::face), *path = find(story, Measure::path);
    if (!face || !path) return std::nullopt;
    figure::ScatterInput input;
    const auto& w = easel.words;
    const auto add = [&](figure::Symbol symbol, const char* key, const std::vector<shots::Shot>& shots) {
        auto row = scatter_row(symbol, w.say(key), shots);
        if (!row.shots.empty()) input.rows.push_back(std::move(row));
    };
    add(figure::Symbol::before, "figure.before", face->before);
    add(figure::Symbol::after, "figure.after", face->after);
    add(figure::Symbol::cold, "figure.cold", face->cold);
    if (face->is_aim && story.lesson.aim) input.wanted = {story.lesson.aim->least, story.lesson.aim->most};
    if (face->change.before.count > 0 && face->change.after.count > 0)
        input.message = w.say("evidence.alt.scatter",
                              {{"face_before", words::side(Measure::face, face->change.before.median, w)},
                               {"path_before", words::side(Measure::path, path->change.before.median, w)},
                               {"face_after", words::side(Measure::face, face->change.after.median, w)},
                               {"path_after", words::side(Measure::path, path->change.after.median, w)}});
    return input;
}

} // namespace

Section why_page(const figure::Easel& easel, const Story& story) {
    Section section{.name = "why", .title = easel.words.say("page.why.question")};
    section.blocks.push_back(page_title(easel, section.title));
    if (!story.lesson.why.empty())
        section.blocks.push_back(text_block(easel, theme::Text::coach, story.lesson.why, 0));
    if (const auto input = scatter_input(easel, story))
        section.blocks.push_back(figure_block("face against path", figure::scatter(easel, *input, columns(easel, 4)), 12));
    return section;
}

} // namespace page
