#include "output/seal.hpp"

#include <catch2/catch.hpp>

using output::Digest;

namespace {

const std::string blank = "31415926535897932384626433832795";
const std::string unsealed = "%PDF-1.7 some bytes /ID [<" + blank + "><" + blank + ">] >> %%EOF";

} // namespace

TEST_CASE("a seal tells what a PDF was made from") {
    const Digest inputs{0x0123456789abcdefULL, 7};
    const auto pdf = output::sealed(unsealed, inputs);
    REQUIRE(pdf.size() == unsealed.size());
    CHECK(pdf.find("<0123456789abcdef0000000000000007>") != pdf.npos);
    CHECK(output::inputs_of(pdf) == inputs);
}

TEST_CASE("any changed byte breaks the seal") {
    const auto pdf = output::sealed(unsealed, {1, 2});
    for (std::size_t i = 0; i < pdf.size(); ++i) {
        auto changed = pdf;
        changed[i] = changed[i] == 'x' ? 'y' : 'x';
        INFO("byte " << i);
        CHECK_FALSE(output::inputs_of(changed).has_value());
    }
    for (std::size_t i = 0; i < pdf.size(); ++i)
        CHECK_FALSE(output::inputs_of(pdf.substr(0, i)).has_value());
    CHECK_FALSE(output::inputs_of(pdf + "an annotation added later").has_value());
}

TEST_CASE("a PDF without a blank is left as it is") {
    const std::string other = "%PDF-1.4 trailer << /ID [<0011><2233>] >>";
    CHECK(output::sealed(other, {1, 2}) == other);
    CHECK_FALSE(output::inputs_of(other).has_value());
    CHECK_FALSE(output::inputs_of("").has_value());
}

TEST_CASE("a digest tells where one piece ends and the next begins") {
    CHECK(output::Hash().add("ab").add("c").digest() != output::Hash().add("a").add("bc").digest());
    CHECK(output::Hash().add("ab").add("c").digest() == output::Hash().add("ab").add("c").digest());
    output::Hash first;
    first.add("common");
    auto second = first;
    first.add("a");
    second.add("b");
    CHECK(first.digest() != second.digest());
}
