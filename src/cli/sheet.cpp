#include "cli/sheet.hpp"

#include "cli/pictures.hpp"
#include "report/tell.hpp"
#include "theme/colour.hpp"

namespace cli {

words::Voice voice_of(const record::Lesson& lesson) {
    return {lesson.student.hand.value, lesson.student.age == record::Age::junior, lesson.units};
}

namespace {

std::vector<report::Earlier> earlier_of(const Read& read) {
    std::vector<report::Earlier> out;
    for (const auto& one : read.earlier)
        out.push_back({&one->lesson, one->table ? &*one->table : nullptr});
    return out;
}

/// The house style on this lesson's paper; an accent of the record's marks goes before that of the
/// style.
theme::Theme theme_of(const Workshop& workshop, Read& read) {
    const record::Lesson& lesson = read.lesson;
    theme::Style style = workshop.style();
    if (const auto accent = theme::accent_of(read.lesson.marks.accent, read.findings))
        style.accent = *accent;
    const auto paper = lesson.paper == record::Paper::letter ? theme::Paper::letter
                       : lesson.paper == record::Paper::a5   ? theme::Paper::a5
                                                             : theme::Paper::a4;
    return theme::theme_of(style, paper, lesson.large_print);
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
    , theme_(theme_of(workshop, read))
    , easel_{type, theme_, speaker_}
    , story_(report::tell({read.lesson, read.table ? &*read.table : nullptr, read.library,
                           workshop.clubs(), &speaker_, earlier_of(read)},
                          read.findings))
    , plan_(workshop.style().pages) {
    story_.pictures = pictures_of(read);
}

page::Book Sheet::book(Read& read) const {
    page::Flowed flowed = report::lesson_report(easel_, story_, plan_);
    for (const auto& fault : flowed.faults)
        read.findings.warning(
            read.sources.front().whole(),
            "page " + std::to_string(fault.page) + ": " + fault.block + " " + fault.what,
            fault.hint.empty() ? "shorten the text there, or report this layout fault"
                               : fault.hint);
    return std::move(flowed.book);
}

} // namespace cli
