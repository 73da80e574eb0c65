#include "record/term.hpp"
#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/gather.hpp"
#include "cli/held_of.hpp"
#include "cli/inputs.hpp"
#include "cli/records.hpp"
#include "cli/term_files.hpp"
#include "cli/term_register.hpp"
#include "record/read_date.hpp"
#include "report/follow.hpp"
#include "report/term_report.hpp"
#include "theme/style.hpp"

#include <algorithm>
#include <iostream>
#include <map>

namespace cli {

namespace {

struct Wishes {
    std::string term, target;
};

/// One student of the register with all that was read.
struct Pupil {
    std::string code;
    const record::TermStudent* entry = nullptr;
    std::vector<const Gathered*> lessons;
    std::vector<std::string> faulty; ///< files
    bool listed = true;
    std::optional<page::Course> course;
    page::Termly termly;
    Receiver receiver;
    std::unique_ptr<words::Speaker> words; ///< the coach's language, this student's hand
};

/// Reading, drawing and writing of one term.
class TermRun {
  public:
    TermRun(const Workshop& workshop, const Common& common, const Wishes& wishes)
        : workshop_(workshop)
        , common_(common)
        , wishes_(wishes) {}

    int run() {
        if (!folder_named("term", wishes_.target)) return wrong_use;
        if (!read_term()) return readable_ ? findings : no_file;
        Below below = lessons_below(workshop_, folder());
        all_well_ = below.whole;
        lessons_ = gather(workshop_, std::move(below.lessons), type_);
        for (const auto& one : lessons_)
            add_names(*one.read, inputs_);
        compare_register();
        enrol();
        set_up_pages();
        std::error_code failed;
        fs::create_directories(wishes_.target, failed);
        if (failed)
            throw output::CannotWrite("the folder '" + wishes_.target +
                                      "' cannot be made: " + failed.message());
        TermFiles files(wishes_.target, term_, inputs_);
        print_students(files);
        print_coach(files);
        files.write_lists();
        for (const auto& name : files.written())
            std::cout << name << "\n";
        return all_well_ ? all_written : findings;
    }

  private:
    bool read_term() {
        const auto text = text_of(wishes_.term);
        if (!text) {
            std::cerr << "lessonleaf: '" << wishes_.term
                      << "' cannot be read\n  hint: give the path of a term file, such as "
                         "spring-term.yaml\n";
            readable_ = false;
            return false;
        }
        source_ = std::make_unique<diag::Source>(wishes_.term, *text);
        diag::Findings found;
        term_ = record::read_term(*source_, found);
        if (found.clean()) check_folder_of(term_, wishes_.term, found);
        inputs_.push_back(wishes_.term);
        return tell(found, common_.strict);
    }

    fs::path folder() const { return lessons_folder(term_, wishes_.term); }

    /// Codes of the register and of the lessons that do not meet.
    void compare_register() {
        std::vector<const record::Lesson*> lessons;
        for (const auto& one : lessons_)
            if (one.read->readable) lessons.push_back(&one.read->lesson);
        diag::Findings found;
        check_register(term_, *source_, lessons, *workshop_.academy(folder()), found);
        if (!tell(found, common_.strict)) all_well_ = false;
    }

    Pupil& pupil(const std::string& code) {
        for (auto& one : pupils_)
            if (one->code == code) return *one;
        pupils_.push_back(std::make_unique<Pupil>());
        pupils_.back()->code = code;
        pupils_.back()->listed = !term_.lists_students;
        return *pupils_.back();
    }

    /// The register first, then lessons to their students. A faulty record is told here.
    void enrol() {
        for (const auto& entry : term_.students)
            pupil(entry.code.value).entry = &entry, pupil(entry.code.value).listed = true;
        for (const auto& one : lessons_) {
            if (!in_term(term_, one.read->lesson)) continue;
            const bool sound = one.sound() && told(one);
            if (!one.sound()) told(one);
            const std::string file = one.read->record.filename().string();
            const std::string place =
                one.read->record.parent_path().filename().string() + "/" + file;
            if (one.code().empty()) {
                all_well_ = false;
                nobodys_.push_back(place);
                continue;
            }
            Pupil& whose = pupil(one.code());
            if (sound)
                whose.lessons.push_back(&one);
            else
                whose.faulty.push_back(place), all_well_ = false;
        }
        if (!term_.lists_students) // no register: the order of the codes
            std::ranges::sort(pupils_, {}, [](const auto& p) { return p->code; });
    }

    bool told(const Gathered& one) {
        if (!one.read->readable) cannot_read(one.read->record.string());
        return telling_.tell(one.read->findings, common_.strict) && one.read->readable;
    }

    void set_up_pages() {
        if (term_.language.empty()) term_.language = house_language();
        const words::Catalogue& catalogue = workshop_.wording(term_.language);
        house_words_ = std::make_unique<words::Speaker>(catalogue, words::Voice{});
        const auto paper = term_.paper == record::Paper::letter ? theme::Paper::letter
                           : term_.paper == record::Paper::a5   ? theme::Paper::a5
                                                                : theme::Paper::a4;
        theme_ = theme::theme_of(workshop_.style(), paper, false);
        for (auto& one : pupils_) {
            if (one->lessons.empty()) continue;
            std::vector<const page::Story*> stories;
            for (const Gathered* lesson : one->lessons)
                stories.push_back(&lesson->sheet->story());
            one->course = report::follow(stories, one->lessons.back()->read->library);
            const record::Lesson& latest = one->course->latest();
            one->words = std::make_unique<words::Speaker>(
                catalogue, words::Voice{latest.student.hand.value,
                                        latest.student.age == record::Age::junior, latest.units});
            one->termly = {&term_, one->entry, &*one->course, contact(latest), std::nullopt};
            one->receiver.first_name = latest.student.name;
            const auto& academy = one->lessons.back()->read->academy;
            const people::Person* person = academy ? academy->person(one->code) : nullptr;
            if (!person) continue;
            one->termly.kept_until = due_after(*academy, *person, latest.date.value);
            if (!person->first_name.empty()) one->receiver.first_name = person->first_name;
            if (const auto* to = people::addressee(*person))
                one->receiver.address = to->address.value;
        }
    }

    /// Of the pages that are no student's, when the term file names none.
    std::string house_language() const {
        const auto academy = workshop_.academy(folder());
        return academy->house ? academy->house->language.value_or("en-GB") : "en-GB";
    }

    std::string contact(const record::Lesson& latest) const {
        return latest.coach.contact.empty() ? term_.coach.contact : latest.coach.contact;
    }

    bool printable(const Pupil& one) const {
        return one.listed && one.course && one.faulty.empty();
    }

    /// Layout faults of a page that was drawn for `whose`.
    void faults(const page::Flowed& flowed, const std::string& whose) {
        diag::Findings found;
        for (const auto& fault : flowed.faults)
            found.warning({},
                          whose + ", page " + std::to_string(fault.page) + ": " + fault.block +
                              " " + fault.what,
                          "shorten the text there, or report this layout fault");
        if (!tell(found, common_.strict)) all_well_ = false;
    }

    void print_students(TermFiles& files) {
        for (const auto& one : pupils_) {
            if (!printable(*one)) continue;
            auto flowed = report::student_report(one->lessons.back()->sheet->easel(), one->termly);
            faults(flowed, one->code);
            if (files.student(one->code, one->receiver, std::move(flowed.book))) continue;
            std::cerr << "lessonleaf: '" << one->code
                      << "' would be written to the same file as another student's report\n  hint: "
                         "give them codes that differ in letters or digits\n";
            all_well_ = false;
        }
    }

    std::vector<page::MissingLine> missing() const {
        const words::Speaker& w = *house_words_;
        std::vector<page::MissingLine> out;
        for (const auto& one : pupils_) {
            const auto add = [&](std::string what) { out.push_back({one->code, std::move(what)}); };
            for (const auto& file : one->faulty)
                add(w.say("term.missing.faulty", {{"file", file}}));
            if (!one->listed) add(w.say("term.missing.unlisted"));
            if (one->listed && !one->course && one->faulty.empty())
                add(w.say("term.missing.lessons"));
            if (printable(*one))
                for (auto& what : report::missing_of(*one->words, one->termly))
                    add(std::move(what));
            const auto knows = one->lessons.empty() ? nullptr : one->lessons.back()->read->academy;
            if (printable(*one) && knows && knows->people && one->receiver.address.empty())
                add(w.say("term.missing.address"));
        }
        for (const auto& file : nobodys_)
            out.push_back({w.say("binder.none"), w.say("term.missing.whose", {{"file", file}})});
        return out;
    }

    void print_coach(TermFiles& files) {
        const figure::Easel easel{type_, theme_, *house_words_};
        std::vector<report::OverviewEntry> entries;
        std::vector<const page::Course*> courses;
        for (const auto& one : pupils_) {
            if (!printable(*one)) continue;
            entries.push_back({&one->termly, one->words.get()});
            courses.push_back(&*one->course);
        }
        auto overview = report::overview_report(easel, term_, entries, missing(),
                                                workshop_.library(term_.language));
        faults(overview, "the overview");
        files.overview(overview.book);
        if (term_.group_page && courses.size() >= page::students_for_group) {
            auto group = report::group_report(easel, term_, courses);
            faults(group, "the group page");
            files.group(group.book);
        } else if (term_.group_page) {
            std::cerr << "lessonleaf: fewer than five students, so there is no group page\n";
        }
        auto proof = report::proof_report(easel, term_, files.pile(2));
        faults(proof, "the proof page");
        const std::size_t first = proof.book.sheets.size();
        if (first != 2) proof = report::proof_report(easel, term_, files.pile(first));
        files.printer(std::move(proof.book));
    }

    const Workshop& workshop_;
    const Common& common_;
    const Wishes& wishes_;
    text::PangoTypesetter type_;
    std::unique_ptr<diag::Source> source_;
    record::Term term_;
    std::vector<Gathered> lessons_;
    Telling telling_;
    std::vector<std::unique_ptr<Pupil>> pupils_;
    std::vector<std::string> nobodys_, inputs_;
    std::unique_ptr<words::Speaker> house_words_;
    theme::Theme theme_;
    bool all_well_ = true, readable_ = true;
};

} // namespace

Run set_up_term(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("TERM", wishes->term, "Term file (YAML)")->required();
    app.add_option("-o,--output", wishes->target, "Folder for the reports and lists")->required();
    return [wishes, &common] {
        const Workshop workshop(common);
        if (!tell(workshop.findings(), common.strict)) return static_cast<int>(findings);
        return TermRun(workshop, common, *wishes).run();
    };
}

} // namespace cli
