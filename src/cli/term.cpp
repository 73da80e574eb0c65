#include "cli/check_other.hpp"
#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/file_name.hpp"
#include "cli/inputs.hpp"
#include "cli/origin.hpp"
#include "cli/records.hpp"
#include "cli/tally.hpp"
#include "cli/target.hpp"
#include "cli/term_pupil.hpp"
#include "cli/term_register.hpp"
#include "output/file.hpp"
#include "report/term_report.hpp"
#include "theme/style.hpp"

#include <algorithm>
#include <iostream>
#include <map>
#include <set>

namespace cli {

namespace {

struct Wishes {
    std::vector<std::string> arguments;
    std::string target;
    BatchWishes batch;
};

/// What the terms of one run share.
struct Printing {
    const Workshop& workshop;
    const Origin& origin;
    const Common& common;
    const Wishes& wishes;
    Part part;
    std::map<std::string, std::string> taken; ///< term files by the ending of their papers' names
};

/// Reading, drawing and writing of one term.
class TermRun {
  public:
    TermRun(Printing& printing, std::string file)
        : all_(printing)
        , workshop_(printing.workshop)
        , file_(std::move(file)) {}

    int run() {
        if (!read_term()) return readable_ ? findings : no_file;
        if (!belongs(all_.part, file_stem(term_.name, "term"))) {
            std::cerr << "lessonleaf: '" << file_ << "' belongs to another part\n";
            return all_written;
        }
        if (!has_its_own_names()) return findings;
        Below below = lessons_below(workshop_, folder());
        all_well_ = below.whole;
        compare_register(below);
        const auto digest = inputs_of(below);
        TermPlace place{all_.wishes.target, term_.name, {}, false, {file_}, all_.wishes.batch.all};
        for (const auto& read : below.lessons)
            add_names(*read, place.inputs);
        pupils_ = enrol(term_, std::move(below.lessons));
        for (const auto& one : pupils_)
            if (one->listed && !one->reads.empty()) place.codes.push_back(one->code);
        place.group_page = term_.group_page && place.codes.size() >= page::students_for_group;
        TermFiles files(std::move(place));
        if (may_be_up_to_date() && files.are_up_to_date(digest)) {
            tell_up_to_date(files);
            return all_written;
        }
        set_up_pages();
        make_folder(all_.wishes.target);
        output::sweep(all_.wishes.target);
        const int worst = print_students(files);
        if (worst > findings) return worst;
        all_well_ = all_well_ && worst == all_written;
        print_coach(files, digest);
        files.write_lists();
        for (const auto& path : files.others())
            std::cout << path << "\n";
        tell_left_over(files.papers_of(known_codes()), files.made());
        return all_well_ ? all_written : findings;
    }

  private:
    bool strict() const { return all_.common.strict; }

    bool read_term() {
        const auto text = text_of(file_);
        if (!text) {
            std::cerr << "lessonleaf: '" << file_
                      << "' cannot be read\n  hint: give the path of a term file, such as "
                         "spring-term.yaml\n";
            readable_ = false;
            return false;
        }
        if (const std::string name = usual_name(file_);
            !is_term(*text) && (name == "house.yaml" || name == "people.yaml" ||
                                name == "drills.yaml" || name == "lesson.yaml")) {
            std::cerr << "lessonleaf: '" << file_
                      << "' is no term file\n  hint: one begins with a line such as 'term: Spring "
                         "term 2026'\n";
            return false;
        }
        source_ = std::make_unique<diag::Source>(file_, *text);
        diag::Findings found;
        term_ = record::read_term(*source_, found);
        if (found.clean()) check_folder_of(term_, file_, found);
        return tell(found, strict());
    }

    /// Two terms of one name would take each other's papers away.
    bool has_its_own_names() {
        const auto [other, fresh] = all_.taken.emplace(file_stem(term_.name, "term"), file_);
        if (fresh) return true;
        std::cerr << "lessonleaf: the papers of '" << file_ << "' and '" << other->second
                  << "' would bear one name\n  hint: give the terms names that differ in letters "
                     "or digits: 'term: Spring term 2026'\n";
        return false;
    }

    fs::path folder() const { return lessons_folder(term_, file_); }

    /// Codes of the register and of the lessons that do not meet.
    void compare_register(const Below& below) {
        std::vector<const record::Lesson*> lessons;
        for (const auto& read : below.lessons)
            if (read->readable) lessons.push_back(&read->lesson);
        diag::Findings found;
        check_register(term_, *source_, lessons, *workshop_.academy(folder()), found);
        if (!tell(found, strict())) all_well_ = false;
    }

    /// All that the papers are made from.
    output::Digest inputs_of(const Below& below) const {
        std::vector<std::string_view> more{"term", source_->text()};
        for (const auto& source : workshop_.academy(folder())->sources)
            more.push_back(source.text());
        return all_.origin.of(below.lessons, more);
    }

    /// Of the register, of the lessons and of people.yaml.
    std::vector<std::string> known_codes() const {
        std::vector<std::string> out;
        for (const auto& one : pupils_)
            if (!one->code.empty()) out.push_back(one->code);
        if (const auto& people = workshop_.academy(folder())->people)
            for (const auto& person : people->list)
                if (std::ranges::find(out, person.code.value) == out.end())
                    out.push_back(person.code.value);
        return out;
    }

    bool may_be_up_to_date() const {
        return all_well_ && !strict() && !all_.wishes.batch.all &&
               std::ranges::all_of(pupils_, [](const auto& one) {
                   return !one->code.empty() &&
                          std::ranges::all_of(one->reads, [](const auto& read) {
                              return read->readable && read->findings.clean();
                          });
               });
    }

    void tell_up_to_date(const TermFiles& files) const {
        for (const auto& path : files.paths())
            std::cout << path << "\n";
        Tally tally;
        for (const auto& one : pupils_)
            if (one->listed && !one->reads.empty())
                tally.add({Outcome::State::up_to_date, all_written, one->code, {}, {}, {}});
        if (tally.worth_telling()) std::cerr << tally.summary("reports");
    }

    void set_up_pages() {
        if (term_.language.empty()) term_.language = house_language();
        house_words_ =
            std::make_unique<words::Speaker>(workshop_.wording(term_.language), words::Voice{});
        const auto paper = term_.paper == record::Paper::letter ? theme::Paper::letter
                           : term_.paper == record::Paper::a5   ? theme::Paper::a5
                                                                : theme::Paper::a4;
        theme_ = theme::theme_of(workshop_.style(), paper, false);
    }

    /// Of the pages that are no student's, when the term file names none.
    std::string house_language() const {
        const auto academy = workshop_.academy(folder());
        return academy->house ? academy->house->language.value_or("en-GB") : "en-GB";
    }

    /// Everybody on all cores. The typesetters stay, for the pages are bound together later.
    int print_students(TermFiles& files) {
        std::vector<std::optional<std::size_t>> slots;
        std::size_t next = 0;
        for (const auto& one : pupils_)
            slots.push_back(one->listed && !one->reads.empty() ? std::optional(next++)
                                                               : std::nullopt);
        const auto hire = [&]() -> Worker {
            types_.push_back(std::make_unique<text::PangoTypesetter>());
            return [&, type = types_.back().get()](std::size_t i) {
                return print_student(files, *pupils_[i], slots[i], *type);
            };
        };
        return run_batch(pupils_.size(), all_.wishes.batch, hire, "reports");
    }

    Outcome print_student(TermFiles& files, Pupil& one, std::optional<std::size_t> slot,
                          const text::Typesetter& type) const {
        Outcome out{Outcome::State::none, all_written, one.code, {}, {}, {}};
        gather_lessons(one, workshop_, type, strict(), out);
        if (!one.lessons.empty()) follow(one, term_, workshop_.wording(term_.language));
        if (!one.faulty.empty()) {
            out.state = Outcome::State::failed;
            out.exit = findings;
            return out;
        }
        if (!slot || !one.printable()) return out;
        if (const auto other = files.name_taken_by(*slot)) {
            out.err += "lessonleaf: '" + one.code +
                       "' would be written to the same file as the report of '" + *other +
                       "'\n  hint: give them codes that differ in letters or digits\n";
            out.why = "would be written over the report of '" + *other + "'";
            out.state = Outcome::State::failed;
            out.exit = findings;
            return out;
        }
        auto flowed = report::student_report(one.lessons.back().sheet->easel(), one.termly);
        const auto found = faults(flowed, one.code);
        out.err += cli::told(found);
        if (!passes(found, strict())) out.exit = findings;
        try {
            out.state = files.student(*slot, one.receiver, std::move(flowed.book))
                            ? Outcome::State::written
                            : Outcome::State::up_to_date;
        } catch (const output::CannotWrite& failed) {
            return Outcome::failure(one.code, no_file,
                                    std::string("lessonleaf: ") + failed.what() + "\n",
                                    failed.what());
        }
        out.out = files.path_of(*slot) + "\n";
        return out;
    }

    /// Layout faults of a page that was drawn for `whose`.
    static diag::Findings faults(const page::Flowed& flowed, const std::string& whose) {
        diag::Findings found;
        for (const auto& fault : flowed.faults)
            found.warning({},
                          whose + ", page " + std::to_string(fault.page) + ": " + fault.block +
                              " " + fault.what,
                          "shorten the text there, or report this layout fault");
        return found;
    }

    void tell_faults(const page::Flowed& flowed, const std::string& whose) {
        if (!tell(faults(flowed, whose), strict())) all_well_ = false;
    }

    std::vector<page::MissingLine> missing() const {
        const words::Speaker& w = *house_words_;
        std::vector<page::MissingLine> out;
        for (const auto& one : pupils_) {
            const bool known = !one->code.empty();
            const auto add = [&](std::string what) {
                out.push_back({known ? one->code : w.say("binder.none"), std::move(what)});
            };
            for (const auto& file : one->faulty)
                add(w.say(known ? "term.missing.faulty" : "term.missing.whose", {{"file", file}}));
            if (!known) continue;
            if (!one->listed) add(w.say("term.missing.unlisted"));
            if (one->listed && !one->course && one->faulty.empty())
                add(w.say("term.missing.lessons"));
            if (!one->printable()) continue;
            for (auto& what : report::missing_of(*one->words, one->termly))
                add(std::move(what));
            const auto knows = one->lessons.back().read->academy;
            if (knows && knows->people && one->receiver.address.empty())
                add(w.say("term.missing.address"));
        }
        return out;
    }

    void print_coach(TermFiles& files, const output::Digest& inputs) {
        const text::PangoTypesetter type;
        const figure::Easel easel{type, theme_, *house_words_};
        std::vector<report::OverviewEntry> entries;
        std::vector<const page::Course*> courses;
        for (const auto& one : pupils_) {
            if (!one->printable()) continue;
            entries.push_back({&one->termly, one->words.get()});
            courses.push_back(&*one->course);
        }
        auto overview = report::overview_report(easel, term_, entries, missing(),
                                                workshop_.library(term_.language));
        tell_faults(overview, "the overview");
        files.overview(overview.book);
        if (term_.group_page && courses.size() >= page::students_for_group) {
            auto group = report::group_report(easel, term_, courses);
            tell_faults(group, "the group page");
            files.group(group.book);
        } else if (term_.group_page) {
            std::cerr << "lessonleaf: fewer than five students, so there is no group page\n";
        }
        auto proof = report::proof_report(easel, term_, files.pile(2));
        tell_faults(proof, "the proof page");
        const std::size_t first = proof.book.sheets.size();
        if (first != 2) proof = report::proof_report(easel, term_, files.pile(first));
        files.printer(std::move(proof.book), all_well_ ? inputs : output::Digest{});
    }

    Printing& all_;
    const Workshop& workshop_;
    std::string file_;
    std::vector<std::unique_ptr<text::PangoTypesetter>> types_;
    std::unique_ptr<diag::Source> source_;
    record::Term term_;
    Pupils pupils_;
    std::unique_ptr<words::Speaker> house_words_;
    theme::Theme theme_;
    bool all_well_ = true, readable_ = true;
};

/// Files as they are; of a folder every term file below it.
std::vector<std::string> term_files(const std::vector<std::string>& arguments, int& worst) {
    std::vector<std::string> out;
    for (const auto& argument : arguments) {
        std::error_code gone;
        if (!fs::is_directory(argument, gone)) {
            out.push_back(argument);
            continue;
        }
        const std::size_t before = out.size();
        for (const auto& path : files_below(argument, {".yaml", ".yml"})) {
            const std::string text = text_of(path).value_or("");
            if (is_term(text))
                out.push_back(path.string());
            else if (nearly_term(text))
                std::cerr << path.string()
                          << ": note: this looks like a term and has no line 'term:', so it is "
                             "left out\n  hint: term: Spring term 2026\n";
        }
        if (out.size() > before) continue;
        std::cerr << "lessonleaf: there is no term file below '" << argument
                  << "'\n  hint: it begins with a line such as 'term: Spring term 2026'\n";
        worst = no_file;
    }
    std::set<fs::path> seen;
    std::erase_if(out, [&](const std::string& path) {
        std::error_code gone;
        const fs::path whole = fs::weakly_canonical(path, gone);
        return !seen.insert(gone ? fs::path(path) : whole).second;
    });
    return out;
}

int run(const Wishes& wishes, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    if (!folder_named("term", wishes.target)) return wrong_use;
    const Origin origin(workshop);
    Printing all{workshop, origin, common, wishes, part_of(wishes.batch), {}};
    int worst = all_written;
    for (const auto& file : term_files(wishes.arguments, worst))
        worst = std::max(worst, TermRun(all, file).run());
    return worst;
}

} // namespace

Run set_up_term(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("TERM", wishes->arguments,
                   "Term files (YAML), and folders: every term file below them")
        ->required();
    app.add_option("-o,--output", wishes->target, "Folder for the reports and lists")->required();
    add_batch_options(app, wishes->batch);
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
