#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/gather.hpp"
#include "cli/inputs.hpp"
#include "cli/target.hpp"
#include "output/file.hpp"
#include "output/pdf.hpp"
#include "output/print_of.hpp"
#include "report/binder_report.hpp"
#include "report/follow.hpp"

#include <algorithm>
#include <iostream>
#include <set>

namespace cli {

namespace {

struct Wishes {
    std::string folder, code, target;
};

/// Says why there is nothing to bind, with the codes that are there.
int nobody(const Below& below, const Wishes& wishes) {
    std::set<std::string> codes;
    for (const auto& read : below.lessons)
        if (!read->lesson.student.code.empty()) codes.insert(read->lesson.student.code);
    const std::vector<std::string_view> known(codes.begin(), codes.end());
    const auto near = diag::nearest(wishes.code, known);
    std::cerr << "lessonleaf: no lesson of '" << wishes.code << "' below '" << wishes.folder
              << "'\n  hint: ";
    if (!near.empty())
        std::cerr << "did you mean '" << near << "'?\n";
    else if (known.empty())
        std::cerr << "lessons are files called lesson.yaml, with a code: student: {code: RU-04}\n";
    else
        std::cerr << "the codes there are: " << diag::either(known) << "\n";
    return findings;
}

/// A record too faulty to tell whose it is counts as everyone's.
bool is_of_another(const Read& read, const std::string& code) {
    const std::string& whose = read.lesson.student.code;
    return whose != code && (!whose.empty() || (read.readable && read.findings.clean()));
}

/// Two lessons of one day cannot be told apart in the contents.
bool one_a_day(const std::vector<Gathered>& lessons) {
    bool good = true;
    for (std::size_t i = 1; i < lessons.size(); ++i) {
        const auto& a = lessons[i - 1];
        const auto& b = lessons[i];
        if (a.read->lesson.date.value != b.read->lesson.date.value) continue;
        std::cerr << "lessonleaf: '" << a.read->record.string() << "' and '"
                  << b.read->record.string()
                  << "' are lessons of one day\n  hint: keep only the newest revision below the "
                     "folder, or correct a date\n";
        good = false;
    }
    return good;
}

struct Bound {
    page::Book book;
    std::string note;              ///< for the next time
    std::vector<std::string> news; ///< what to exchange, in sentences
};

/// The note of the binder that lies where this one is to lie.
std::optional<report::BinderNote> note_at(const std::string& target) {
    if (target == "-") return std::nullopt;
    return report::read_note(output::note_in(text_of(target).value_or("")));
}

/// As it stands in a note, on one line.
std::string whose(std::string code) {
    std::ranges::replace(code, '\n', ' ');
    return code;
}

/// The binder of another student stays.
int anothers(const std::string& owner, const Wishes& wishes) {
    const fs::path free = fs::path(wishes.target).parent_path() / (wishes.code + ".pdf");
    std::error_code error;
    std::cerr << "lessonleaf: '" << wishes.target << "' is the binder of '" << owner
              << "', not of '" << wishes.code << "'\n  hint: "
              << (fs::exists(free, error) ? "give this one another name" : "-o " + free.string())
              << ", or move that file away\n";
    return wrong_use;
}

/// Lays out everything, compares with the earlier binder, numbers the pages.
Bound bind_lessons(const std::vector<Gathered>& lessons, const std::string& code,
                   const std::optional<report::BinderNote>& was, diag::Findings& found) {
    std::vector<const page::Story*> stories;
    std::vector<report::LessonPages> pages;
    for (const auto& one : lessons) {
        stories.push_back(&one.sheet->story());
        pages.push_back({&one.sheet->easel(), &one.sheet->story(), one.sheet->book(*one.read)});
    }
    const page::Course course = report::follow(stories, lessons.back().read->library);
    const report::BinderInput input{lessons.back().sheet->easel(), course, pages};
    Bound out;
    auto flowed = report::binder_report(input, std::nullopt);
    report::BinderNote note{output::prints_of(flowed.book), {}, whose(code)};
    if (was) note.before = was->now == note.now ? was->before : was->now;
    if (!note.before.empty()) {
        const auto exchange = report::exchange(note.before, note.now);
        out.news = report::exchange_words(input.easel.words, exchange);
        flowed = report::binder_report(input, exchange);
    }
    for (const auto& fault : flowed.faults)
        found.warning({},
                      "page " + std::to_string(fault.page) + ": " + fault.block + " " + fault.what,
                      "shorten the text there, or report this layout fault");
    report::number_pages(flowed.book, input);
    out.note = report::written(note);
    out.book = std::move(flowed.book);
    return out;
}

int run(const Wishes& wishes, const Common& common) {
    if (!rightly_named({"a binder", "PDF", {".pdf"}, "binder.pdf"}, wishes.target))
        return wrong_use;
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    std::error_code error;
    if (!fs::is_directory(wishes.folder, error)) {
        std::cerr << "lessonleaf: '" << wishes.folder
                  << "' is not a folder\n  hint: give the folder that holds the lessons\n";
        return no_file;
    }
    const text::PangoTypesetter type;
    Below below = lessons_below(workshop, wishes.folder);
    if (std::ranges::none_of(below.lessons, [&](const auto& read) {
            return read->lesson.student.code == wishes.code;
        }))
        return nobody(below, wishes);
    const auto was = note_at(wishes.target);
    if (was && !was->whose.empty() && was->whose != whose(wishes.code))
        return anothers(was->whose, wishes);
    std::erase_if(below.lessons,
                  [&](const auto& read) { return is_of_another(*read, wishes.code); });
    const auto lessons = gather(workshop, std::move(below.lessons), type);
    diag::Findings found;
    Bound bound;
    std::vector<std::string> inputs;
    const bool sound = std::ranges::all_of(lessons, &Gathered::sound);
    if (sound && one_a_day(lessons)) bound = bind_lessons(lessons, wishes.code, was, found);
    bool good = below.whole && !bound.book.sheets.empty();
    Telling telling;
    for (const auto& one : lessons) {
        if (!one.read->readable) cannot_read(one.read->record.string());
        good = telling.tell(one.read->findings, common.strict) && good;
        add_names(*one.read, inputs);
    }
    if (!(tell(found, common.strict) && good)) return findings;
    output::write_file(wishes.target, output::pdf(bound.book, {}, {{}, {}, bound.note}), inputs);
    if (wishes.target == "-") return all_written;
    std::cout << wishes.target << "\n";
    for (const auto& line : bound.news)
        std::cout << "  " << line << "\n";
    return all_written;
}

} // namespace

Run set_up_binder(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("FOLDER", wishes->folder, "Folder that holds the lessons, at any depth")
        ->required();
    app.add_option("--student", wishes->code, "The student's code, as the records have it")
        ->required();
    app.add_option("-o,--output", wishes->target,
                   "PDF file; what it held before tells which sheets to exchange")
        ->required();
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
