#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/held_of.hpp"
#include "cli/inputs.hpp"
#include "cli/lessons_below.hpp"
#include "cli/records.hpp"
#include "cli/target.hpp"
#include "output/file.hpp"
#include "output/pdf.hpp"
#include "record/read_date.hpp"
#include "text/pango_typesetter.hpp"
#include "theme/theme.hpp"

#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::string folder, code, due, target = "-";
};

/// All that was read of the academy, whoever's it is.
std::vector<std::string> read_for(const Academy& academy, const Below& below) {
    std::vector<std::string> out;
    for (const auto& read : below.lessons)
        add_names(*read, out);
    for (const auto& source : academy.sources)
        out.push_back(source.name());
    return out;
}

int unknown(const Academy& academy, const std::string& code) {
    std::cerr << "lessonleaf: people.yaml knows no '" << code << "'\n  hint: ";
    const auto near = academy.people ? academy.people->nearest_code(code) : std::string_view();
    std::cerr << (near.empty() ? "codes stand in people.yaml, in the folder or above it"
                               : "did you mean '" + std::string(near) + "'?")
              << "\n";
    return findings;
}

/// One page or text about one student.
int say_held(const Workshop& workshop, const Wishes& wishes) {
    const auto academy = workshop.academy(wishes.folder);
    const people::Person* person = academy->person(wishes.code);
    if (!person) return unknown(*academy, wishes.code);
    const Below below = lessons_below(workshop, wishes.folder);
    const auto lessons = lessons_of(below, wishes.code);
    const std::string language = language_of(*academy, *person);
    const words::Speaker speaker(
        workshop.wording(language),
        {person->hand.value, person->age == record::Age::junior, unit::Units{}});
    const report::Held held =
        held_of(*academy, *person, lessons, terms_of(wishes.folder, wishes.code), speaker);
    const auto inputs = read_for(*academy, below);
    if (ending_of(wishes.target) != ".pdf") {
        output::write_file(wishes.target, report::held_text(held), inputs);
    } else {
        const text::PangoTypesetter type;
        const theme::Theme theme = theme_of(workshop, *academy, *person);
        const figure::Easel easel{type, theme, speaker};
        page::Book book = report::held_page(easel, held).book;
        book.author = academy->house ? academy->house->academy : "";
        book.language = language;
        output::write_file(wishes.target, output::pdf(book), inputs);
    }
    if (wishes.target != "-") std::cout << wishes.target << "\n";
    return below.whole ? all_written : no_file;
}

/// Everybody whose records are due by that day, with what is to be deleted; nothing is deleted.
int list_due(const Workshop& workshop, const Wishes& wishes) {
    const auto day = record::date_of(wishes.due);
    if (!day) {
        std::cerr << "lessonleaf held: '" << wishes.due
                  << "' is no date\n  hint: write year-month-day, for example 2028-12-31\n";
        return wrong_use;
    }
    const auto academy = workshop.academy(wishes.folder);
    if (!academy->people) return unknown(*academy, "");
    const Below below = lessons_below(workshop, wishes.folder);
    std::string due, open;
    for (const people::Person& person : academy->people->list) {
        const auto lessons = lessons_of(below, person.code.value);
        const auto until = due_of(*academy, person, lessons);
        if (!until) open += (open.empty() ? "" : ", ") + person.code.value;
        if (!until || *until > *day) continue;
        due += person.code.value + " " + person.first_name + ", kept until " + record::iso(*until) +
               "\n  " + academy->person_place(person) + "\n";
        for (const auto& lesson : lessons)
            due += "  " + fs::path(lesson->sources.front().name()).parent_path().string() + "\n";
        for (const auto& term : terms_of(wishes.folder, person.code.value))
            due += "  " + (fs::path(wishes.folder) / term).string() + "\n";
    }
    output::write_file(wishes.target, due.empty() ? "Nothing is due by " + wishes.due + ".\n" : due,
                       read_for(*academy, below));
    if (!open.empty())
        std::cerr << "note: no date of deletion is known for " << open
                  << "\n  hint: write 'kept until' in people.yaml, or 'kept for' in house.yaml\n";
    if (wishes.target != "-") std::cout << wishes.target << "\n";
    return below.whole ? all_written : no_file;
}

/// The list of what is due is text alone.
bool target_is_right(const Wishes& wishes) {
    if (!wishes.due.empty())
        return rightly_named({"the list of what is due", "text", {".txt"}, "due.txt"},
                             wishes.target);
    return rightly_named({"what is held", "PDF or text", {".pdf", ".txt"}, "held.pdf"},
                         wishes.target);
}

int run(const Wishes& wishes, const Common& common) {
    if (!target_is_right(wishes)) return wrong_use;
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    if (!tell(workshop.academy(wishes.folder)->findings, common.strict)) return findings;
    if (wishes.code.empty() == wishes.due.empty()) {
        std::cerr << "lessonleaf held: say whom or by when\n"
                     "  hint: --student CODE says what is held about one student, --due DATE what "
                     "is to be deleted\n";
        return wrong_use;
    }
    return wishes.due.empty() ? say_held(workshop, wishes) : list_due(workshop, wishes);
}

} // namespace

Run set_up_held(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("FOLDER", wishes->folder, "Folder of the academy")->required();
    app.add_option("--student", wishes->code, "Code of the student");
    app.add_option("--due", wishes->due, "Day (year-month-day) by which deletion is due");
    app.add_option("-o,--output", wishes->target,
                   "Text file or PDF; standard output when left out");
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
