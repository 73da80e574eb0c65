#include "cli/batch.hpp"
#include "cli/bind_lessons.hpp"
#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/file_name.hpp"
#include "cli/inputs.hpp"
#include "cli/origin.hpp"
#include "cli/records.hpp"
#include "cli/target.hpp"
#include "output/file.hpp"
#include "output/pdf.hpp"

#include <algorithm>
#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::vector<std::string> folders, codes; ///< no code: everybody's
    std::string target;
    BatchWishes batch;
};

/// One binder that is to be made; without a code the records that nobody can tell the student of.
struct Task {
    std::string code;
    Reads lessons; ///< by date
};

/// One run: what its binders share. Each task is worked on by one thread.
struct Binding {
    const Workshop& workshop;
    const Origin& origin;
    std::vector<Task>& tasks;
    const Wishes& wishes;
    bool into_folder = false;
    bool strict = false;
    bool whole = true; ///< every folder could be read
    Part part;
    Claims claims;
};

constexpr const char* binder_ending = "-binder.pdf";

std::string binder_name(const std::string& code) {
    return file_stem(code, "student") + binder_ending;
}

std::vector<std::string> binders_in(const fs::path& folder) {
    std::vector<std::string> out;
    std::error_code gone;
    for (fs::directory_iterator at(folder, gone), end; !gone && at != end; at.increment(gone))
        if (at->path().string().ends_with(binder_ending)) out.push_back(at->path().string());
    std::ranges::sort(out);
    return out;
}

/// Says why there is nothing to bind for that code, with the codes that are there.
void tell_nobody(const std::string& code, const std::vector<std::string_view>& known,
                 const Wishes& wishes) {
    const auto near = diag::nearest(code, known);
    std::cerr << "lessonleaf: no lesson " << (code.empty() ? "with a code" : "of '" + code + "'")
              << " below '" << wishes.folders.front()
              << (wishes.folders.size() > 1 ? "' or the other folders" : "'") << "\n  hint: ";
    if (!near.empty())
        std::cerr << "did you mean '" << near << "'?\n";
    else if (known.empty())
        std::cerr << "lessons are files called lesson.yaml, with a code: student: {code: RU-04}\n";
    else
        std::cerr << "the codes there are: " << diag::either(known) << "\n";
}

/// What lies there stays.
Outcome stays(const std::string& code, const std::string& why, const std::string& hint) {
    return Outcome::failure(code, wrong_use, "lessonleaf: " + why + "\n  hint: " + hint + "\n",
                            why);
}

/// The binder of another student stays.
Outcome anothers(const std::string& owner, const std::string& code, const std::string& target,
                 bool into_folder) {
    const fs::path free = fs::path(target).parent_path() / (code + ".pdf");
    std::error_code error;
    const std::string hint = into_folder ? "move that file away"
                             : fs::exists(free, error)
                                 ? "give this one another name, or move that "
                                   "file away"
                                 : "-o " + free.string() + ", or move that file away";
    return stays(code, "'" + target + "' is the binder of '" + owner + "', not of '" + code + "'",
                 hint);
}

Outcome both_to_one(const std::string& code, const std::string& other, const std::string& target) {
    return Outcome::failure(code, findings,
                            "lessonleaf: the binders of '" + code + "' and '" + other +
                                "' would both be written to '" + target +
                                "'\n  hint: give them codes that differ in letters or digits\n",
                            "would be written over the binder of '" + other + "'");
}

/// The lines of standard output.
std::string shown(const std::string& target, const std::vector<std::string>& news) {
    if (target == "-") return {};
    std::string out = target + "\n";
    for (const auto& line : news)
        out += "  " + line + "\n";
    return out;
}

/// What was found in all lessons of a binder, told as one; false when it cannot be printed.
bool passes(const std::vector<Gathered>& lessons, const diag::Findings& found, bool strict,
            Outcome& telling) {
    bool good = cli::passes(found, strict);
    for (const auto& one : lessons) {
        const bool sound = one.sound() && cli::passes(one.read->findings, strict);
        telling.add(*one.read, sound);
        good = good && sound;
    }
    telling.err += told(found);
    return good;
}

/// Binds the lessons of a task, and writes them unless they lie there already.
Outcome print(const Binding& run, Task& task, const std::string& target,
              const text::Typesetter& type) {
    const auto old = target == "-" ? std::nullopt : cli::text_of(target);
    const auto was = binder_note(old.value_or(""));
    if (was && !was->whose.empty() && was->whose != owner_of(task.code))
        return anothers(was->whose, task.code, target, run.into_folder);
    if (const auto why = old && !was ? taken(target, *old) : std::nullopt)
        return stays(task.code, *why, "give the binder another name, or move that file away");
    const std::string doubled = two_of_one_day(task.lessons);
    const bool clean =
        run.whole && doubled.empty() && std::ranges::all_of(task.lessons, [](auto& read) {
            return read->readable && read->findings.clean();
        });
    const auto inputs = run.origin.of(task.lessons, {"binder", task.code});
    if (clean && was && !run.strict && !run.wishes.batch.all && output::inputs_of(*old) == inputs)
        return {Outcome::State::up_to_date,
                all_written,
                task.code,
                shown(target, news_of(run.workshop, *was, task.lessons.back()->lesson)),
                {},
                {}};
    std::vector<std::string> names;
    for (const auto& read : task.lessons)
        add_names(*read, names);
    const auto lessons = gather(run.workshop, std::move(task.lessons), type);
    diag::Findings found;
    Bound bound;
    if (clean && std::ranges::all_of(lessons, &Gathered::sound))
        bound = bind_lessons(lessons, task.code, was, found);
    Outcome out{Outcome::State::written, all_written, task.code, {}, doubled, {}};
    if (!doubled.empty()) out.why = "two lessons of one day";
    if (!passes(lessons, found, run.strict, out) || bound.book.sheets.empty()) {
        out.state = Outcome::State::failed;
        out.exit = findings;
        if (out.why.empty()) out.why = run.whole ? first_of(found) : "a folder cannot be read";
        return out;
    }
    const auto bytes = output::pdf(bound.book, inputs, {{}, {}, bound.note});
    out.out = shown(target, bound.news);
    if (old == bytes && !run.wishes.batch.all)
        out.state = Outcome::State::up_to_date;
    else
        output::write_file(target, bytes, names);
    return out;
}

/// Tells of records that belong to nobody known.
Outcome tell_lost(const Task& task) {
    Outcome out = Outcome::failure({}, findings, {}, {});
    for (const auto& read : task.lessons)
        out.add(*read, false);
    return out;
}

Outcome bind_one(Binding& run, std::size_t index, const text::Typesetter& type) {
    Task& task = run.tasks[index];
    Claims::Turn turn(run.claims, index);
    if (task.code.empty())
        return belongs(run.part, "nobody")
                   ? tell_lost(task)
                   : Outcome{Outcome::State::elsewhere, all_written, {}, {}, {}, {}};
    const std::string name = binder_name(task.code);
    if (!belongs(run.part, name))
        return {Outcome::State::elsewhere, all_written, task.code, {}, {}, {}};
    const std::string target =
        run.into_folder ? (fs::path(run.wishes.target) / name).string() : run.wishes.target;
    if (const auto other = turn.claim(in_small_letters(target), task.code))
        return both_to_one(task.code, *other, target);
    try {
        return print(run, task, target, type);
    } catch (const output::CannotWrite& failed) {
        return Outcome::failure(task.code, no_file,
                                std::string("lessonleaf: ") + failed.what() + "\n", failed.what());
    }
}

/// A task for each code. A record too faulty to tell whose it is counts as that of the student
/// whose lessons lie beside it, or of the only student there is; else it is a task of its own.
std::vector<Task> tasks_of(Below& below, const std::vector<std::string>& codes) {
    std::vector<std::string> whose;
    for (const auto& read : below.lessons) {
        whose.push_back(!hides_its_student(*read) ? read->lesson.student.code
                        : codes.size() == 1       ? codes.front()
                                                  : likely_owner(*read, below.lessons));
    }
    std::vector<Task> tasks;
    for (const auto& code : codes)
        tasks.push_back({code, {}});
    Task lost;
    for (std::size_t i = 0; i < whose.size(); ++i) {
        auto& read = below.lessons[i];
        const auto task = std::ranges::find(tasks, whose[i], &Task::code);
        if (task != tasks.end())
            task->lessons.push_back(std::move(read));
        else if (hides_its_student(*read))
            lost.lessons.push_back(std::move(read));
    }
    std::erase(below.lessons, nullptr);
    for (auto& task : tasks)
        drop_replaced(task.lessons);
    if (!lost.lessons.empty()) tasks.push_back(std::move(lost));
    return tasks;
}

/// Lessons that are in no binder because they name nobody.
void tell_nameless(const Below& below) {
    for (const auto& read : below.lessons)
        if (!hides_its_student(*read) && read->lesson.student.code.empty())
            std::cerr << read->record.string()
                      << ": note: no binder holds this lesson, for it names no code\n  hint: "
                         "student: {name: Ruth, code: RU-04, hand: right}\n";
}

/// The codes to bind: those asked for that have a lesson, or all there are.
std::vector<std::string> codes_of(const Below& below, const Wishes& wishes) {
    std::set<std::string> known;
    for (const auto& read : below.lessons)
        if (!read->lesson.student.code.empty()) known.insert(read->lesson.student.code);
    const std::vector<std::string_view> names(known.begin(), known.end());
    if (wishes.codes.empty() && known.empty()) {
        tell_nameless(below);
        tell_nobody("", names, wishes);
    }
    if (wishes.codes.empty()) return {known.begin(), known.end()};
    std::vector<std::string> out;
    for (const auto& code : wishes.codes) {
        if (!known.contains(code)) tell_nobody(code, names, wishes);
        if (known.contains(code) && std::ranges::find(out, code) == out.end()) out.push_back(code);
    }
    return out;
}

bool folders_are_there(const std::vector<std::string>& folders) {
    std::error_code error;
    for (const auto& folder : folders) {
        if (fs::is_directory(folder, error)) continue;
        std::cerr << "lessonleaf: '" << folder
                  << "' is not a folder\n  hint: give the folder that holds the lessons\n";
        return false;
    }
    return true;
}

/// One file holds one binder.
bool fits(const Wishes& wishes, std::size_t binders) {
    if (binders < 2 && !is_folder(wishes.target))
        return rightly_named({"a binder", "PDF", {".pdf"}, "binder.pdf"}, wishes.target);
    if (is_folder(wishes.target)) return true;
    std::cerr << "lessonleaf binder: "
              << (wishes.target == "-" ? "standard output holds one binder"
                                       : "'" + wishes.target + "' is one file")
              << ", and here are " << binders
              << " students\n  hint: -o FOLDER/ for a binder each, or name one: "
              << "--student CODE\n";
    return false;
}

int run(const Wishes& wishes, const Common& common) {
    if (wishes.codes.size() == 1 && !fits(wishes, 1)) return wrong_use;
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    if (!folders_are_there(wishes.folders)) return no_file;
    Below below = lessons_below(workshop, wishes.folders);
    const auto codes = codes_of(below, wishes);
    int worst =
        codes.size() < std::max<std::size_t>(1, wishes.codes.size()) ? findings : all_written;
    if (codes.empty()) return worst;
    if (!fits(wishes, codes.size())) return wrong_use;
    auto tasks = tasks_of(below, codes);
    if (wishes.codes.empty()) tell_nameless(below);
    const bool into_folder = is_folder(wishes.target);
    if (into_folder) make_folder(wishes.target);
    if (wishes.target != "-") output::sweep(wishes.target);
    const Origin origin(workshop);
    Binding all{workshop,    origin,        tasks,       wishes,
                into_folder, common.strict, below.whole, part_of(wishes.batch),
                {}};
    const auto hire = [&all]() -> Worker {
        const auto type = std::make_shared<text::PangoTypesetter>();
        return [&all, type](std::size_t index) { return bind_one(all, index, *type); };
    };
    worst = std::max(worst, run_batch(tasks.size(), wishes.batch, hire, "binders"));
    if (into_folder && wishes.codes.empty()) {
        std::vector<std::string> made;
        for (const auto& code : codes)
            made.push_back((fs::path(wishes.target) / binder_name(code)).string());
        tell_left_over(binders_in(wishes.target), made);
    }
    return worst;
}

} // namespace

Run set_up_binder(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("FOLDER", wishes->folders, "Folders that hold the lessons, at any depth")
        ->required();
    app.add_option("--student", wishes->codes,
                   "A student's code, as the records have it; may be said again. Everybody when "
                   "left out")
        ->allow_extra_args(false)
        ->check([](const std::string& code) {
            return code.empty() ? std::string("--student: the code is empty") : std::string();
        });
    app.add_option("-o,--output", wishes->target,
                   "PDF file, or a folder for many; what lay there tells which sheets to exchange")
        ->required();
    add_batch_options(app, wishes->batch);
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
