#include "cli/check_folder.hpp"
#include "cli/check_other.hpp"
#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "output/ink_cover.hpp"
#include "text/pango_typesetter.hpp"

#include <iomanip>
#include <iostream>

namespace cli {

namespace {

/// "page 3 (evidence)  2.9 % ink": what a mono printer covers of each page.
void tell_ink(const page::Book& book) {
    std::cout << std::fixed << std::setprecision(1);
    for (const auto& sheet : book.sheets)
        std::cout << "page " << sheet.label << (sheet.name.empty() ? "" : " (" + sheet.name + ")")
                  << ": " << output::ink_cover(sheet) * 100 << " % ink\n";
}

int run(const std::vector<std::string>& records, bool ink, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    const text::PangoTypesetter type;
    Telling telling;
    int worst = all_written;
    std::error_code gone;
    for (const auto& record : records) {
        if (fs::is_directory(record, gone)) {
            worst = std::max(worst, check_folder(workshop, record, type, common.strict));
            continue;
        }
        if (const auto code = check_other(workshop, record, common.strict)) {
            worst = std::max(worst, *code);
            continue;
        }
        const auto read = check_record(workshop, record, type, true, ink ? tell_ink : nullptr);
        if (!read->readable)
            worst = std::max<int>(worst, cannot_read(record));
        else if (!telling.tell(read->findings, common.strict))
            worst = std::max<int>(worst, findings);
        else
            std::cout << record << ": ready to print\n";
    }
    return worst;
}

} // namespace

Run set_up_check(CLI::App& app, const Common& common) {
    auto records = std::make_shared<std::vector<std::string>>();
    app.add_option("FILE", *records,
                   "Lesson records, folders with records below, house.yaml, people.yaml, "
                   "drills.yaml, term files")
        ->required();
    auto ink = std::make_shared<bool>(false);
    app.add_flag("--ink", *ink, "Tell how much of each page is covered with ink");
    return [records, ink, &common] { return run(*records, *ink, common); };
}

} // namespace cli
