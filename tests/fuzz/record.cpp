// Any bytes as a lesson record.
#include "entry.hpp"
#include "record/read_lesson.hpp"

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const diag::Source source("lesson.yaml", fuzz::text_of(data, size));
    diag::Findings findings;
    const auto lesson = record::read_lesson(source, findings);
    if (findings.clean()) record::check_lesson(lesson, findings);
    fuzz::print(findings);
    return 0;
}
