// Which cautions a drill's page bears, and which of them always stay.
#include "desk.hpp"

#include "page/drill_facts.hpp"

using namespace desk;

TEST_CASE("stopping comes first, the drill's own caution next, then the room around it") {
    using drills::Space;
    Desk desk(Paper::a4, Hand::right);
    struct Row {
        Space space;
        const char *room, *also, *never;
    };
    const Row table[] = {
        {Space::no_swing, "caution.space", "caution.stages", "caution.net"},
        {Space::never_swing, "caution.space", "caution.slow", "caution.stages"},
        {Space::swing, "caution.space.clear", "caution.indoors", "caution.net"},
        {Space::range, "caution.range.forward", "caution.net", "caution.indoors"},
        {Space::range_only, "caution.range.forward", "caution.warm-up", "caution.net"},
    };
    for (const auto& row : table)
        for (const bool junior : {false, true}) {
            auto drill = usual_drill();
            drill.space = row.space;
            drill.caution = "Mind the cat.";
            const auto lines = page::drill_cautions(desk.easel(), drill, junior);
            REQUIRE(lines.size() >= 4);
            CHECK(lines.size() <= 8);
            CHECK(lines[0].starts_with("Stop on pain"));
            CHECK(lines[1] == "Mind the cat.");
            const auto has = [&](std::size_t from, std::size_t to, const char* key) {
                for (std::size_t i = from; i < std::min(to, lines.size()); ++i)
                    if (lines[i].find(desk.words.say(key)) != std::string::npos) return true;
                return false;
            };
            INFO(row.room << (junior ? " junior" : " adult"));
            CHECK(has(2, 3, row.room));
            CHECK(has(3, 4, "caution.junior") == junior);
            const bool stages = std::string_view(row.also) == "caution.stages";
            CHECK(has(3, 9, row.also) == !(stages && junior)); // a junior's page has no stages
            CHECK_FALSE(has(0, 9, row.never));
            CHECK(has(3, 9, "caution.rules"));
            drill.family = "path";
            const auto path = page::drill_cautions(desk.easel(), drill, junior);
            CHECK(std::ranges::count(path, desk.words.say("caution.path")) == 1);
        }
}

TEST_CASE("on every page of the library the first four cautions stand, whatever has to go") {
    for (const auto paper : {Paper::a4, Paper::letter})
        for (const auto age : {Age::adult, Age::junior})
            for (const auto& drill : stock::drills_of("en")) {
                Desk desk(paper, Hand::left, age);
                desk.choose(drill);
                std::string page;
                for (const auto& block : page::drill_page(desk.easel(), desk.story(), 0).blocks)
                    for (const auto& piece : block.pieces)
                        for (const auto& text : texts(piece.drawing))
                            page += text;
                std::erase(page, ' ');
                auto lines = page::drill_cautions(desk.easel(), drill, age == Age::junior);
                lines.resize(std::min<std::size_t>(lines.size(), 4));
                for (auto line : lines) {
                    INFO(drill.id << ": " << line);
                    std::erase(line, ' ');
                    CHECK(page.find(line) != std::string::npos);
                }
            }
}
