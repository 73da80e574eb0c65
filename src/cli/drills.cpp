#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/sheet.hpp"
#include "cli/target.hpp"
#include "output/file.hpp"
#include "output/pdf.hpp"
#include "report/drill_book.hpp"

#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::string target, hand = "right", language = "en-GB", paper = "A4", own;
    bool junior = false, large = false;
};

/// A lesson of nobody: what the pages need to know of hand, age and paper.
record::Lesson lesson_of(const Wishes& wishes) {
    record::Lesson lesson;
    lesson.student.hand.value = wishes.hand == "left" ? unit::Hand::left : unit::Hand::right;
    lesson.student.age = wishes.junior ? record::Age::junior : record::Age::adult;
    lesson.language = wishes.language;
    lesson.large_print = wishes.large;
    return lesson;
}

theme::Paper paper_of(const std::string& word) {
    return word == "Letter" ? theme::Paper::letter
           : word == "A5"   ? theme::Paper::a5
                            : theme::Paper::a4;
}

int run(const Wishes& wishes, const Common& common) {
    if (!rightly_named({"the drill book", "PDF", {".pdf"}, "drills.pdf"}, wishes.target))
        return wrong_use;
    if (wishes.large && wishes.paper == "A5") {
        std::cerr
            << "lessonleaf drills: large print has no room on A5\n  hint: --paper A4, or leave "
               "--large out\n";
        return wrong_use;
    }
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    if (!workshop.speaks(wishes.language)) {
        std::cerr << "lessonleaf: no wording for the language '" << wishes.language
                  << "'\n  hint: add templates/words/" << wishes.language
                  << "/, or leave --language out\n";
        return wrong_use;
    }
    std::list<diag::Source> sources;
    diag::Findings found;
    auto library = workshop.library(wishes.language);
    if (!wishes.own.empty()) {
        auto text = text_of(wishes.own);
        if (!text) {
            std::cerr << "lessonleaf: '" << wishes.own
                      << "' cannot be read\n  hint: --own drills.yaml\n";
            return no_file;
        }
        const auto& source = sources.emplace_back(wishes.own, std::move(*text));
        library = drills::merged(std::move(library), drills::read_drills(source, found), found);
        drills::check_easier(library, found);
    }
    if (!found.clean()) {
        tell(found, common.strict);
        return findings;
    }
    auto lesson = lesson_of(wishes);
    const words::Speaker speaker(workshop.wording(wishes.language), voice_of(lesson));
    lesson.student.name = speaker.say("book.title");
    const theme::Theme theme =
        theme::theme_of(workshop.style(), paper_of(wishes.paper), wishes.large);
    const text::PangoTypesetter type;
    const auto book = report::drill_book({type, theme, speaker}, lesson, library);
    for (const auto& fault : book.faults)
        found.warning({},
                      "page " + std::to_string(fault.page) + ": " + fault.block + " " + fault.what,
                      "shorten the text there, or report this layout fault");
    if (!tell(found, common.strict)) return findings;
    output::write_file(wishes.target, output::pdf(book.book), {wishes.own});
    if (wishes.target != "-") std::cout << wishes.target << "\n";
    return all_written;
}

} // namespace

Run set_up_drills(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("-o,--output", wishes->target, "PDF file; '-' is standard output")->required();
    app.add_option("--hand", wishes->hand, "right or left")
        ->check(CLI::IsMember({"right", "left"}));
    app.add_option("--language", wishes->language, "en-GB, de and so on");
    app.add_option("--paper", wishes->paper, "A4, Letter or A5")
        ->check(CLI::IsMember({"A4", "Letter", "A5"}));
    app.add_option("--own", wishes->own, "Your drills.yaml: its drills replace or join the others");
    app.add_flag("--junior", wishes->junior, "Pages for juniors");
    app.add_flag("--large", wishes->large, "Large print");
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
