// Which sheets to exchange, and what a binder remembers.
#include "report/exchange.hpp"

#include <catch2/catch.hpp>

#include <random>

using namespace report;

namespace {

/// Takes the sheets of the list out of a pile and puts the new ones in, as a student would.
std::vector<std::string> followed(const std::vector<std::string>& was,
                                  const std::vector<std::string>& is, const Exchange& list) {
    std::vector<bool> gone(was.size(), false);
    std::vector<std::string> pile;
    for (const auto& swap : list.swaps)
        if (swap.out)
            for (std::size_t s = swap.out->first / 2; s < swap.out->last / 2; ++s)
                gone[s] = true;
    for (std::size_t i = 0; i < was.size(); ++i)
        if (!gone[i]) pile.push_back(was[i]);
    for (const auto& swap : list.swaps)
        if (swap.in)
            for (std::size_t s = swap.in->first / 2; s < swap.in->last / 2; ++s)
                pile.insert(pile.begin() + static_cast<std::ptrdiff_t>(s), is[s]);
    return pile;
}

} // namespace

TEST_CASE("nothing changed, nothing to exchange") {
    CHECK(exchange({"a", "b"}, {"a", "b"}) == Exchange{});
    CHECK(exchange({}, {}) == Exchange{});
}

TEST_CASE("a sheet that grew to two: remove 3-4, put in 3-6") {
    const auto list = exchange({"t", "c", "w"}, {"t", "c1", "c2", "w"});
    REQUIRE(list.swaps.size() == 1);
    CHECK(list.swaps[0].out == PageRange{3, 4});
    CHECK(list.swaps[0].in == PageRange{3, 6});
    CHECK(list.sheets_in == 2);
    REQUIRE(list.renumbered.size() == 1);
    CHECK(list.renumbered[0] == Renumbered{{5, 6}, {7, 8}});
}

TEST_CASE("sheets that are only added or only taken away") {
    const auto more = exchange({"a", "b"}, {"a", "n", "b"});
    REQUIRE(more.swaps.size() == 1);
    CHECK_FALSE(more.swaps[0].out);
    CHECK(more.swaps[0].in == PageRange{3, 4});
    CHECK(more.swaps[0].behind == 2);
    const auto less = exchange({"a", "n", "b"}, {"a", "b"});
    REQUIRE(less.swaps.size() == 1);
    CHECK(less.swaps[0].out == PageRange{3, 4});
    CHECK_FALSE(less.swaps[0].in);
    CHECK(exchange({}, {"a"}).swaps[0].behind == 0);
}

TEST_CASE("whoever follows the list holds the new binder, whatever changed") {
    std::mt19937 rng(11);
    for (int round = 0; round < 500; ++round) {
        std::vector<std::string> was(rng() % 12), is(rng() % 12);
        for (auto* pile : {&was, &is})
            for (auto& sheet : *pile)
                sheet = std::string(1, static_cast<char>('a' + rng() % 6));
        const auto list = report::exchange(was, is);
        CHECK(followed(was, is, list) == is);
        std::size_t in = 0, out = 0;
        for (const auto& swap : list.swaps) {
            if (swap.in) in += (swap.in->last - swap.in->first + 1) / 2;
            if (swap.out) out += (swap.out->last - swap.out->first + 1) / 2;
        }
        CHECK(in == list.sheets_in);
        CHECK(was.size() - out + in == is.size());
    }
}

TEST_CASE("a note is read back as it was written, and no other text is one") {
    const BinderNote note{{"0011", "2233"}, {"4455"}, "now 12"};
    const auto read = read_note(written(note));
    REQUIRE(read);
    CHECK(read->now == note.now);
    CHECK(read->before == note.before);
    CHECK(read->whose == note.whose);
    CHECK_FALSE(read_note(""));
    CHECK_FALSE(read_note("anything else\nnow 12\n"));
    CHECK_FALSE(read_note(written({{}, {}, "MA-11"})));
}

TEST_CASE("the note of an older binder is compared and does not tell whose it is") {
    const auto read = read_note("lessonleaf binder 1\nnow 0011 2233\nbefore 4455\n");
    REQUIRE(read);
    CHECK(read->now == std::vector<std::string>{"0011", "2233"});
    CHECK(read->before == std::vector<std::string>{"4455"});
    CHECK(read->whose.empty());
}
