#include "cli/check_folder.hpp"
#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "text/pango_typesetter.hpp"

#include <iostream>

namespace cli {

namespace {

int run(const std::vector<std::string>& records, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    const text::PangoTypesetter type;
    int worst = all_written;
    std::error_code gone;
    for (const auto& record : records) {
        if (fs::is_directory(record, gone)) {
            worst = std::max(worst, check_folder(workshop, record, type, common.strict));
            continue;
        }
        const auto read = check_record(workshop, record, type, true);
        if (!read->readable)
            worst = std::max<int>(worst, cannot_read(record));
        else if (!tell(read->findings, common.strict))
            worst = std::max<int>(worst, findings);
        else
            std::cout << record << ": ready to print\n";
    }
    return worst;
}

} // namespace

Run set_up_check(CLI::App& app, const Common& common) {
    auto records = std::make_shared<std::vector<std::string>>();
    app.add_option("FILE", *records, "Lesson records (YAML), or folders with records below")
        ->required();
    return [records, &common] { return run(*records, common); };
}

} // namespace cli
