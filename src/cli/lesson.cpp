#include "cli/batch.hpp"
#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/file_name.hpp"
#include "cli/inputs.hpp"
#include "cli/leaving.hpp"
#include "cli/origin.hpp"
#include "cli/practice_calendar.hpp"
#include "cli/records.hpp"
#include "cli/target.hpp"
#include "output/file.hpp"

#include <algorithm>
#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::vector<std::string> arguments;
    std::string target;
    BatchWishes batch;
    bool calendar = false;
    Leaving leaving;
};

/// One run: what its sheets share.
struct Printing {
    const Workshop& workshop;
    const Origin& origin;
    const std::vector<std::string>& records;
    std::string target;
    bool into_folder = false;
    bool strict = false;
    bool all = false;
    bool calendar = false; ///< the days of practice are written, too
    const Leaving& leaving;
    Part part;
    Claims claims;

    bool as_text() const { return leaving.is_text(into_folder ? std::string() : target); }
};

/// What a faulty record is known by: its own bytes, wherever it lies.
std::string text_of(const Read& read) {
    return read.sources.empty() ? std::string() : read.sources.front().text();
}

Outcome at_fault(const std::string& record, const Read& read) {
    return Outcome::failure(record, findings, {}, first_of(read.findings)).saying(read.findings);
}

/// A record that could not be read whole, when it is this part's to tell.
Outcome faulty(const Printing& run, const std::string& record, const Read& read) {
    if (!belongs(run.part, read.readable ? text_of(read) : record))
        return {Outcome::State::elsewhere, all_written, record, {}, {}, {}};
    if (!read.readable)
        return Outcome::failure(record, no_file, unreadable(record), "cannot be read");
    return at_fault(record, read);
}

Outcome both_to_one(const std::string& record, const std::string& other,
                    const std::string& target) {
    return Outcome::failure(
        record, findings,
        "lessonleaf: '" + record + "' and '" + other + "' would both be written to '" + target +
            "'\n  hint: correct the date of one, or write 'revision: 2' in the one that replaces "
            "the other; two students need different codes\n",
        "would be written over the sheet of '" + other + "'");
}

/// Draws and writes a record that was read without a fault.
Outcome print(const Printing& run, const std::string& record, Read& read, const std::string& target,
              const text::Typesetter& type) {
    const std::string days = fs::path(target).replace_extension(".ics").string();
    const std::string shown =
        target == "-" ? std::string() : target + "\n" + (run.calendar ? days + "\n" : "");
    const auto inputs = run.leaving.marked(run.origin.of(read));
    const auto old = target == "-" || run.all ? std::nullopt : cli::text_of(target);
    if (old && !run.strict && !run.calendar && output::inputs_of(*old) == inputs)
        return {Outcome::State::up_to_date, all_written, record, shown, {}, {}};
    if (const auto why = old && !run.as_text() ? taken(target, *old) : std::nullopt)
        return Outcome::failure(
            record, wrong_use,
            "lessonleaf: " + *why +
                "\n  hint: give the sheet another name, or move that file away\n",
            *why);
    const Sheet sheet(run.workshop, read, type);
    if (!read.findings.clean()) return at_fault(record, read);
    const auto book = sheet.book(read);
    if (!passes(read.findings, run.strict)) return at_fault(record, read);
    auto names = names_of(read);
    names.push_back(run.leaving.password_file);
    if (run.calendar) output::write_file(days, practice_calendar(sheet), names);
    const auto bytes = bytes_of(run.leaving, sheet, read, book, inputs, run.as_text());
    if (old == bytes)
        return Outcome{Outcome::State::up_to_date, all_written, record, shown, {}, {}}.saying(
            read.findings);
    output::write_file(target, bytes, names);
    return Outcome{Outcome::State::written, all_written, record, shown, {}, {}}.saying(
        read.findings);
}

Outcome print_one(Printing& run, std::size_t index, const text::Typesetter& type) {
    const std::string& record = run.records[index];
    Claims::Turn turn(run.claims, index);
    try {
        const auto read = run.workshop.read(record);
        if (!read->readable || !read->findings.clean()) return faulty(run, record, *read);
        const std::string name = file_name(read->lesson, run.as_text() ? ".txt" : ".pdf");
        if (!belongs(run.part, name))
            return {Outcome::State::elsewhere, all_written, record, {}, {}, {}};
        const std::string target =
            run.into_folder ? (fs::path(run.target) / name).string() : run.target;
        if (const auto other = turn.claim(target, record))
            return both_to_one(record, *other, target);
        return print(run, record, *read, target, type);
    } catch (const output::CannotWrite& failed) {
        return Outcome::failure(record, no_file, std::string("lessonleaf: ") + failed.what() + "\n",
                                failed.what());
    }
}

bool many(const std::string& target, const Records& records) {
    return records.paths.size() > 1 || records.folders || is_folder(target);
}

/// Everything that the target must be for these wishes.
bool target_is_right(const Wishes& wishes, const Records& records, bool into_folder) {
    const bool input = std::ranges::find(records.paths, wishes.target) != records.paths.end();
    if (into_folder && !folder_named("lesson", wishes.target)) return false;
    if (!into_folder && !input && !known_ending(wishes.leaving, wishes.target)) return false;
    return !wishes.leaving.is_text(into_folder ? std::string() : wishes.target) ||
           fits_text(wishes.leaving);
}

int run(const Wishes& wishes, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    if (wishes.calendar && wishes.target == "-") {
        std::cerr << "lessonleaf: --calendar writes a file beside the PDF, and '-' has no place "
                     "beside it\n  hint: -o sheet.pdf --calendar\n";
        return wrong_use;
    }
    const Records records = records_of(wishes.arguments);
    for (const auto* said : {&records.faults, &records.notes})
        for (const auto& line : *said)
            std::cerr << line;
    const int worst = records.faults.empty() ? all_written : no_file;
    if (records.paths.empty()) return worst;
    const bool into_folder = many(wishes.target, records);
    if (!target_is_right(wishes, records, into_folder)) return wrong_use;
    if (into_folder) make_folder(wishes.target);
    if (wishes.target != "-") output::sweep(wishes.target);
    const Origin origin(workshop);
    Printing all{workshop,
                 origin,
                 records.paths,
                 wishes.target,
                 into_folder,
                 common.strict,
                 wishes.batch.all,
                 wishes.calendar,
                 wishes.leaving,
                 part_of(wishes.batch),
                 {}};
    const auto hire = [&all]() -> Worker {
        const auto type = std::make_shared<text::PangoTypesetter>();
        return [&all, type](std::size_t index) { return print_one(all, index, *type); };
    };
    return std::max(worst, run_batch(records.paths.size(), wishes.batch, hire));
}

} // namespace

Run set_up_lesson(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("RECORD", wishes->arguments,
                   "Lesson records (YAML), and folders: every lesson.yaml below them")
        ->required();
    app.add_option("-o,--output", wishes->target,
                   "PDF file, or a folder for many; '-' is standard output")
        ->required();
    add_batch_options(app, wishes->batch);
    app.add_flag("--calendar", wishes->calendar,
                 "Also write the days of practice as a calendar (.ics) beside the PDF");
    add_leaving(app, wishes->leaving);
    return [wishes, &common] { return ready(wishes->leaving) ? run(*wishes, common) : wrong_use; };
}

} // namespace cli
