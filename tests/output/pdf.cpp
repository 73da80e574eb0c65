#include "output/pdf.hpp"

#include "sample.hpp"
#include "text/pango_typesetter.hpp"

#include <catch2/catch.hpp>

TEST_CASE("two runs give the same bytes") {
    const auto make = [] {
        const text::PangoTypesetter setter;
        return output::pdf(sample_book(setter, {595.276, 841.89}));
    };
    const auto first = make();
    CHECK(first == make());
    FILE* f = fopen("/tmp/o/sample.pdf", "wb");
    fwrite(first.data(), 1, first.size(), f);
    fclose(f);
}
