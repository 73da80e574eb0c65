#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/file_name.hpp"
#include "cli/inputs.hpp"
#include "cli/mail_text.hpp"
#include "cli/origin.hpp"
#include "cli/records.hpp"
#include "cli/sheet.hpp"
#include "cli/target.hpp"
#include "output/file.hpp"
#include "output/pdf.hpp"
#include "record/read_date.hpp"

#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::vector<std::string> records;
    std::string target, pdf;
};

/// One run: what its drafts share.
struct Writing {
    const Workshop& workshop;
    const Origin& origin;
    const text::Typesetter& type;
    const Wishes& wishes;
    bool into_folder = false;
    bool strict = false;
    std::map<std::string, std::string> written{}; ///< target -> record
    Telling telling{};
};

/// "p…a@post.example": enough to compare, too little to copy.
std::string masked(const std::string& address) {
    const std::size_t at = address.find('@');
    return at < 3 ? "…" + address.substr(at)
                  : address.substr(0, 1) + "…" + address.substr(at - 1, address.size());
}

/// The PDF of this record: the one that was named, when it is the record's, else a new one.
std::optional<std::string> sheet_of(const Writing& run, Read& read, const Sheet& sheet,
                                    std::size_t& pages) {
    const auto inputs = run.origin.of(read);
    const page::Book book = sheet.book(read);
    pages = book.sheets.size();
    if (run.wishes.pdf.empty()) return output::pdf(book, inputs);
    auto bytes = text_of(run.wishes.pdf);
    if (!bytes)
        read.findings.error({}, "'" + run.wishes.pdf + "' cannot be read",
                            "leave --pdf out: the sheet is made anew");
    else if (output::inputs_of(*bytes) != inputs)
        read.findings.error(read.sources.front().whole(),
                            "'" + run.wishes.pdf + "' is not the sheet of this record as it is now",
                            "name the sheet that belongs to it, or leave --pdf out: it is made "
                            "anew");
    return bytes;
}

/// The line that is compared before the draft is sent.
void print_check_line(const Read& read, const people::Person& person, const output::Mail& mail,
                      const std::string& target) {
    const bool junior = person.age == record::Age::junior;
    std::cout << target << ": " << person.code.value << " " << person.first_name << ", to "
              << (mail.to.name.empty() ? "" : mail.to.name + " ") << "<" << masked(mail.to.address)
              << ">" << (junior ? " (guardian)" : "") << ", " << mail.file_name << ", "
              << output::mark_of(mail.pdf).substr(12) << ", lesson of "
              << record::iso(read.lesson.date.value) << "\n";
}

int write_one(Writing& run, const std::string& record) {
    const auto read = run.workshop.read(record);
    if (!read->readable) return cannot_read(record);
    const people::Person* person = addressed(*read);
    if (!person || !read->findings.clean()) {
        run.telling.tell(read->findings, run.strict);
        return findings;
    }
    const Sheet sheet(run.workshop, *read, run.type);
    std::size_t pages = 0;
    const auto pdf = sheet_of(run, *read, sheet, pages);
    if (!run.telling.tell(read->findings, run.strict) || !pdf) return findings;
    const std::string target =
        run.into_folder ? (fs::path(run.wishes.target) / file_name(read->lesson, ".eml")).string()
                        : run.wishes.target;
    const auto [other, fresh] = run.written.emplace(target, record);
    if (!fresh && target != "-") {
        std::cerr << "lessonleaf: '" << record << "' and '" << other->second
                  << "' would both be written to '" << target
                  << "'\n  hint: correct the code or the date of one of them\n";
        return findings;
    }
    const output::Mail mail = mail_of(*person, sheet, file_name(read->lesson), pages, *pdf);
    auto inputs = names_of(*read);
    inputs.push_back(run.wishes.pdf);
    output::write_file(target, output::draft(mail), inputs);
    if (target != "-") print_check_line(*read, *person, mail, target);
    return all_written;
}

int run(const Wishes& wishes, const Common& common) {
    const Records records = records_of(wishes.records);
    for (const auto* said : {&records.faults, &records.notes})
        for (const auto& line : *said)
            std::cerr << line;
    if (!wishes.pdf.empty() && (records.paths.size() != 1 || records.folders)) {
        std::cerr << "lessonleaf mail: --pdf goes with one record\n"
                     "  hint: leave it out, and each sheet is made anew\n";
        return wrong_use;
    }
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    const text::PangoTypesetter type;
    const Origin origin(workshop);
    std::error_code failed;
    Writing run{workshop, origin, type, wishes};
    run.strict = common.strict;
    run.into_folder = records.folders || records.paths.size() > 1 || wishes.target.ends_with('/') ||
                      fs::is_directory(wishes.target, failed);
    if (run.into_folder ? !folder_named("mail", wishes.target)
                        : !rightly_named({"a draft", "mail", {".eml"}, "draft.eml"}, wishes.target))
        return wrong_use;
    if (run.into_folder) fs::create_directories(wishes.target, failed);
    int worst = records.faults.empty() ? all_written : no_file;
    for (const auto& record : records.paths) {
        try {
            worst = std::max(worst, write_one(run, record));
        } catch (const output::CannotWrite& fault) {
            std::cerr << "lessonleaf: " << fault.what() << "\n";
            worst = no_file;
        }
    }
    return worst;
}

} // namespace

Run set_up_mail(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("RECORD", wishes->records, "Lesson records (YAML), or folders with records")
        ->required();
    app.add_option("-o,--output", wishes->target,
                   "Draft (.eml), or a folder for many; '-' is standard output")
        ->required();
    app.add_option("--pdf", wishes->pdf,
                   "Attach this sheet, if it is this record's; else it is made anew");
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
