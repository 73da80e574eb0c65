#include "cli/workshop.hpp"

#include "cli/check_templates.hpp"
#include "cli/doubt_club.hpp"
#include "cli/doubt_returned.hpp"
#include "cli/earlier.hpp"
#include "cli/tables_beside.hpp"
#include "people/start.hpp"
#include "record/read_date.hpp"
#include "record/read_lesson.hpp"
#include "record/read_marks.hpp"
#include "shots/read_table.hpp"
#include "theme/read_style.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

namespace cli {

std::optional<std::string> text_of(const fs::path& path) {
    constexpr std::size_t step = 1 << 16;
    const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (handle < 0) return std::nullopt;
    struct stat about {};
    std::string text;
    ssize_t got = 1;
    if (::fstat(handle, &about) == 0 && S_ISREG(about.st_mode))
        text.reserve(std::min<std::size_t>(static_cast<std::size_t>(about.st_size), most_read) +
                     step);
    while (got != 0 && text.size() < most_read) {
        const std::size_t before = text.size();
        text.resize(before + step);
        got = ::read(handle, text.data() + before, step);
        const bool again = got < 0 && errno == EINTR;
        text.resize(before + static_cast<std::size_t>(std::max<ssize_t>(got, 0)));
        if (got < 0 && !again) break;
    }
    ::close(handle);
    return got < 0 ? std::nullopt : std::optional(std::move(text));
}

bool lies_outside(const fs::path& file, const fs::path& folder) {
    std::error_code failed;
    const fs::path home = fs::weakly_canonical(fs::absolute(folder, failed), failed);
    const fs::path place = fs::weakly_canonical(fs::absolute(file, failed), failed);
    const auto [end, rest] = std::ranges::mismatch(home, place);
    return failed || (end != home.end() && !end->empty());
}

Workshop::Workshop(const Common& common)
    : shelf_(common.templates.empty() ? stock::Shelf() : stock::Shelf(common.templates))
    , outside_(common.outside) {
    if (!common.templates.empty()) check_templates(common.templates, findings_);
    read_wording();
    read_library();
    read_style();
}

/// Languages are the folders below words/. A regional one lies over its base language.
void Workshop::read_wording() {
    std::map<std::string, std::vector<std::string>> files;
    for (const auto& name : shelf_.names("words/")) {
        const auto slash = name.find('/', 6);
        if (slash != std::string::npos) files[name.substr(6, slash - 6)].push_back(name);
    }
    for (const auto& [language, names] : files) {
        words::Catalogue catalogue(language);
        const std::string base(words::base_language(language));
        const auto add = [&](const std::vector<std::string>& from, bool over) {
            for (const auto& name : from) {
                const auto item = shelf_.find(name);
                if (!item) continue;
                const auto& source = sources_.emplace_back(item->name, item->text);
                over ? catalogue.replace(source, findings_) : catalogue.add(source, findings_);
            }
        };
        if (!base.empty() && files.contains(base)) add(files.at(base), false);
        add(names, !base.empty());
        catalogues_.emplace(language, std::move(catalogue));
    }
}

void Workshop::read_library() {
    for (const auto& name : shelf_.names("drills/en/")) {
        const auto item = shelf_.find(name);
        if (!item) continue;
        const auto& source = sources_.emplace_back(item->name, item->text);
        for (auto& drill : drills::read_drills(source, findings_))
            library_.push_back(std::move(drill));
    }
    drills::check_easier(library_, findings_);
    check_cautions();
    if (const auto item = shelf_.find("clubs/typical.yaml"))
        clubs_ = drills::read_clubs(sources_.emplace_back(item->name, item->text), findings_);
    read_translations();
}

/// The folders below drills/ beside en/: the words of the same drills.
void Workshop::read_translations() {
    constexpr std::string_view room = "drills/";
    for (const auto& name : shelf_.names(room)) {
        const auto slash = name.find('/', room.size());
        if (slash == std::string::npos) continue;
        const auto language = name.substr(room.size(), slash - room.size());
        const auto item = language == "en" ? std::nullopt : shelf_.find(name);
        if (!item) continue;
        auto& drills = translated_.try_emplace(language, library_).first->second;
        drills = drills::reworded(std::move(drills), sources_.emplace_back(item->name, item->text),
                                  findings_);
    }
}

const std::vector<drills::Drill>& Workshop::library(const std::string& language) const {
    const auto found = translated_.find(language);
    return found != translated_.end() ? found->second : library_;
}

/// Templates may say a caution in other words; one that is gone is an error.
void Workshop::check_cautions() {
    const stock::Shelf own;
    diag::Findings none;
    words::Catalogue usual("en-GB");
    std::list<diag::Source> kept;
    const auto text_of_template = [&](const std::string& name) -> const diag::Source& {
        const auto item = own.find(name);
        return kept.emplace_back(name, item ? item->text : std::string());
    };
    usual.add(text_of_template("words/en-GB/cautions.txt"), none);
    const auto& spoken = catalogues_.at("en-GB");
    for (const auto key : usual.keys())
        if (!spoken.has(key) || words::Speaker(spoken, {}).say(key).empty())
            findings_.error({}, "the templates drop the caution '" + std::string(key) + "'",
                            "put the line back into words/en-GB/cautions.txt; it may be said in "
                            "other words, never left out");
    for (const auto& name : own.names("drills/en/"))
        for (const auto& drill : drills::read_drills(text_of_template(name), none)) {
            const auto* mine = drills::find(library_, drill.id);
            if (!mine || drill.caution.empty() || !mine->caution.empty()) continue;
            findings_.error(mine->span, "the drill '" + drill.id + "' has lost its caution",
                            "a caution may be said in other words, never left out: add 'caution: " +
                                drill.caution + "'");
        }
}

void Workshop::read_style() {
    const auto source = [&](const char* name) -> const diag::Source* {
        const auto item = shelf_.find(name);
        return item ? &sources_.emplace_back(item->name, item->text) : nullptr;
    };
    if (const auto* file = source("style/letters.yaml"))
        theme::read_letters(*file, style_, findings_);
    if (const auto* file = source("style/papers.yaml"))
        theme::read_papers(*file, style_, findings_);
    if (const auto* file = source("style/inks.yaml")) theme::read_inks(*file, style_, findings_);
    if (const auto* file = source("style/pages.yaml")) theme::read_pages(*file, style_, findings_);
    if (const auto* file = source("style/marks.yaml"))
        marks_ = record::read_marks(*file, findings_);
}

const words::Catalogue& Workshop::wording(const std::string& language) const {
    const auto found = catalogues_.find(language);
    return found != catalogues_.end() ? found->second : catalogues_.at("en-GB");
}

namespace {

/// A usual table of the house need not be there; one that the record names must.
bool is_usual(const Read& read, const diag::Located<std::string>& file) {
    return read.academy && read.academy->house &&
           file.span.source == read.academy->house->shots.file.span.source;
}

/// Whether that file of the academy could not be read whole.
bool is_faulty(const Academy& academy, std::string_view name) {
    return std::ranges::any_of(academy.findings.list(), [&](const diag::Finding& finding) {
        return finding.severity == diag::Severity::error && finding.span.source &&
               usual_name(finding.span.source->name()) == name;
    });
}

/// Where the record's lesson starts: house and people around it, and the date of its folder.
record::Start start_of(Read& read, const fs::path& record, const diag::Located<std::string>& code,
                       bool bare) {
    const Academy& academy = *read.academy;
    people::hand_on(academy.findings.list(), read.findings);
    const bool stranger = academy.people && !academy.people->find(code.value);
    const bool unread = stranger && is_faulty(academy, "people.yaml");
    auto start = people::start_of(academy.house ? &*academy.house : nullptr,
                                  academy.people && !unread ? &*academy.people : nullptr, code,
                                  bare, read.findings);
    if (unread) start.told = bare; // who stands behind the fault cannot be known
    std::error_code gone;
    const fs::path folder = fs::absolute(record, gone).lexically_normal().parent_path();
    if (const auto date = record::date_of(folder.filename().string()))
        start.lesson.date = {*date, read.sources.front().whole()};
    return start;
}

/// A table with a header only, as `begin` makes it, means that none were measured.
void note_no_shots(Read& read, const std::string& file) {
    read.findings.note(read.sources.front().whole(),
                       "no shots stand in " + diag::quote(file) + " beside the record" +
                           (read.lesson.aim ? ", so the aim gets no verdict" : ""),
                       "write 'shots: none' when no shots were measured");
}

/// Takes the usual table away when this lesson has none.
void drop_usual_table(Read& read, const fs::path& record) {
    if (!read.lesson.shots) return;
    const auto& file = read.lesson.shots->file;
    const fs::path table = record.parent_path() / file.value;
    if (!is_usual(read, file) || has_shots(table)) return;
    std::error_code gone;
    if (fs::exists(table, gone) || !tell_table_beside(read, record, file.value))
        note_no_shots(read, file.value);
    read.lesson.shots.reset();
}

/// A table that lies there without a word of it, then the rules between the keys.
void check_whole(Read& read, const fs::path& record) {
    if (!read.findings.clean()) return;
    const bool silent = !read.lesson.shots && !read.lesson.no_shots;
    const bool told = silent && tell_table_beside(read, record, {});
    record::check_lesson(read.lesson, read.findings, told);
}

/// The record's date and that of its folder.
void check_folder_date(Read& read, const fs::path& record) {
    std::error_code gone;
    const fs::path folder = fs::absolute(record, gone).lexically_normal().parent_path();
    const auto named = record::date_of(folder.filename().string());
    const auto& date = read.lesson.date;
    if (named && date.value.ok() && *named != date.value)
        read.findings.warning(date.span,
                              "the date is " + record::iso(date.value) + ", the folder's " +
                                  record::iso(*named),
                              "correct one of the two");
}

void read_shots(Read& read, const fs::path& record) {
    const auto& how = *read.lesson.shots;
    const fs::path path = record.parent_path() / how.file.value;
    if (!read.outside && lies_outside(path, record.parent_path())) {
        read.findings.error(how.file.span,
                            "the shot table '" + how.file.value +
                                "' does not lie in the record's folder",
                            "put the file beside the record, or allow it with --outside");
        return;
    }
    auto text = text_of(path);
    if (!text) {
        const std::string way = way_to_table(record, how.file.value);
        read.findings.error(how.file.span, "the shot table '" + how.file.value + "' cannot be read",
                            way.empty() ? "put the file beside the record, or correct its name; "
                                          "leave 'shots' out for a lesson without shots"
                                        : way);
        return;
    }
    if (is_header_only(*text)) {
        note_no_shots(read, how.file.value);
        read.lesson.shots.reset();
        return;
    }
    const auto& source = read.sources.emplace_back(path.string(), std::move(*text));
    const std::size_t before = read.findings.errors();
    auto table = shots::read_table(source, how, read.lesson.student.hand.value, read.findings);
    if (read.findings.errors() != before) return;
    shots::set_aside(table, how.rules, read.findings);
    shots::check_plausible(table, source, read.findings, read.lesson.club.name);
    if (read.lesson.aim) shots::check_aim(table, *read.lesson.aim, read.findings);
    const bool named = std::ranges::any_of(
        table.shots, [](const shots::Shot& shot) { return !shot.club.empty(); });
    if (read.lesson.club.name.empty() && !named)
        read.findings.warning(read.sources.front().whole(), "the shots of this lesson have no club",
                              "add a line such as 'club: seven iron'");
    read.table = std::move(table);
}

} // namespace

std::unique_ptr<Read> Workshop::read_alone(const fs::path& record) const {
    auto read = std::make_unique<Read>();
    read->record = record;
    read->outside = outside_;
    auto text = text_of(record);
    if (!text) {
        read->readable = false;
        return read;
    }
    const auto& source = read->sources.emplace_back(record.string(), std::move(*text));
    read->academy = academies_.around(record);
    read->lesson = record::read_lesson(source, read->findings,
                                       [&](const diag::Located<std::string>& code, bool bare) {
                                           return start_of(*read, record, code, bare);
                                       });
    if (!marks_.logo.value.empty() && read->lesson.marks.logo.value.empty())
        read->lesson.marks.logo = marks_.logo;
    if (!marks_.signature.value.empty() && read->lesson.marks.signature.value.empty())
        read->lesson.marks.signature = marks_.signature;
    if (read->lesson.marks.accent.value.empty()) read->lesson.marks.accent = marks_.accent;
    if (read->lesson.marks.contact.empty()) read->lesson.marks.contact = marks_.contact;
    check_whole(*read, record);
    drop_usual_table(*read, record);
    check_folder_date(*read, record);
    doubt_club(*this, read->lesson, read->findings);
    if (read->lesson.shots && !read->lesson.shots->file.value.empty()) read_shots(*read, record);
    if (read->table)
        doubt_table_club(*this, read->lesson, *read->table, read->sources.back(), read->findings);
    read->library = library(read->lesson.language);
    if (const auto own = upward(record, "drills.yaml"))
        if (auto drills_text = text_of(*own)) {
            const auto& own_source =
                read->sources.emplace_back(shown(*own), std::move(*drills_text));
            read->library = drills::merged(
                read->library, drills::read_drills(own_source, read->findings), read->findings);
            drills::check_easier(read->library, read->findings);
        }
    return read;
}

std::unique_ptr<Read> Workshop::read(const fs::path& record) const {
    auto read = read_alone(record);
    if (read->readable && read->findings.clean()) {
        read_earlier(*this, *read, record);
        keep_target(*read);
    }
    if (!read->earlier.empty())
        doubt_returned(read->lesson, read->earlier.front()->lesson, read->library, read->findings);
    return read;
}

} // namespace cli
