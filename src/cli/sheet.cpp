#include "cli/sheet.hpp"

#include "report/tell.hpp"

namespace cli {

namespace {

words::Voice voice_of(const record::Lesson& lesson) {
    return {lesson.student.hand.value, lesson.student.age == record::Age::junior, lesson.units};
}

theme::Theme theme_of(const record::Lesson& lesson) {
    const auto paper = lesson.paper == record::Paper::letter ? theme::Paper::letter
                       : lesson.paper == record::Paper::a5   ? theme::Paper::a5
                                                             : theme::Paper::a4;
    return theme::house_style(paper, lesson.large_print);
}

const words::Catalogue& wording_of(const Workshop& workshop, Read& read) {
    const auto& language = read.lesson.language;
    if (!workshop.speaks(language))
        read.findings.warning(
            {}, "no wording for the language '" + language + "'; the sheet speaks British English",
            "add templates/words/" + language + "/ or choose another language");
    return workshop.wording(language);
}

} // namespace

Sheet::Sheet(const Workshop& workshop, Read& read, const text::Typesetter& type)
    : speaker_(wording_of(workshop, read), voice_of(read.lesson))
    , theme_(theme_of(read.lesson))
    , easel_{type, theme_, speaker_}
    , story_(report::tell({read.lesson, read.table ? &*read.table : nullptr, read.library,
                           workshop.clubs(), &speaker_},
                          read.findings)) {}

page::Book Sheet::book(Read& read) const {
    page::Flowed flowed = report::lesson_report(easel_, story_);
    for (const auto& fault : flowed.faults)
        read.findings.warning(
            {}, "page " + std::to_string(fault.page) + ": " + fault.block + " " + fault.what,
            "shorten the text there, or report this layout fault");
    return std::move(flowed.book);
}

} // namespace cli
