#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/sheet.hpp"
#include "output/file.hpp"
#include "output/pdf.hpp"
#include "words/date.hpp"

#include <algorithm>
#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::vector<std::string> records;
    std::string target;
};

/// "RU-04-2026-05-14.pdf": code and date, letters and digits only, so that no name leaves a folder.
std::string file_name(const record::Lesson& lesson) {
    std::string name = lesson.student.code.empty() ? lesson.student.name : lesson.student.code;
    for (char& c : name) {
        const bool plain =
            (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (!plain) c = '-';
    }
    name += "-" + words::date_iso(lesson.date.value);
    if (lesson.revision > 1) name += "-r" + std::to_string(lesson.revision);
    return name + ".pdf";
}

bool is_folder(const Wishes& wishes) {
    std::error_code gone;
    return wishes.records.size() > 1 || wishes.target.ends_with('/') ||
           fs::is_directory(wishes.target, gone);
}

/// Reads, draws and writes one record; its exit code.
int print_one(const Workshop& workshop, const Wishes& wishes, const std::string& record,
              const text::Typesetter& type, bool strict,
              std::map<std::string, std::string>& written) {
    const auto read = workshop.read(record);
    if (!read->readable) return cannot_read(record);
    if (!read->findings.clean()) {
        tell(read->findings, strict);
        return findings;
    }
    const Sheet sheet(workshop, *read, type);
    if (!read->findings.clean()) {
        tell(read->findings, strict);
        return findings;
    }
    const auto book = sheet.book(*read);
    if (!tell(read->findings, strict)) return findings;
    const std::string target = is_folder(wishes)
                                   ? (fs::path(wishes.target) / file_name(read->lesson)).string()
                                   : wishes.target;
    if (const auto [other, fresh] = written.emplace(target, record); !fresh && target != "-") {
        std::cerr
            << "lessonleaf: '" << record << "' and '" << other->second
            << "' would both be written to '" << target
            << "'\n  hint: give the students different codes, or write to different folders\n";
        return findings;
    }
    std::vector<std::string> inputs;
    for (const auto& source : read->sources)
        inputs.push_back(source.name());
    output::write_file(target, output::pdf(book), inputs);
    if (target != "-") std::cout << target << "\n";
    return all_written;
}

int run(const Wishes& wishes, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    if (is_folder(wishes)) {
        std::error_code failed;
        fs::create_directories(wishes.target, failed);
        if (failed)
            throw output::CannotWrite("the folder '" + wishes.target +
                                      "' cannot be made: " + failed.message());
    }
    const text::PangoTypesetter type;
    std::map<std::string, std::string> written;
    int worst = all_written;
    for (const auto& record : wishes.records) {
        try {
            worst =
                std::max(worst, print_one(workshop, wishes, record, type, common.strict, written));
        } catch (const output::CannotWrite& failed) {
            std::cerr << "lessonleaf: " << failed.what() << "\n";
            worst = std::max<int>(worst, no_file);
        }
    }
    return worst;
}

} // namespace

Run set_up_lesson(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("RECORD", wishes->records, "Lesson records (YAML)")->required();
    app.add_option("-o,--output", wishes->target,
                   "PDF file, or a folder for many; '-' is standard output")
        ->required();
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
