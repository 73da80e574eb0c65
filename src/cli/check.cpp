#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/sheet.hpp"

#include <iostream>

namespace cli {

namespace {

int run(const std::vector<std::string>& records, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    const text::PangoTypesetter type;
    int worst = all_written;
    for (const auto& record : records) {
        const auto read = workshop.read(record);
        if (!read->readable) {
            worst = std::max<int>(worst, cannot_read(record));
            continue;
        }
        if (read->findings.clean()) { // layout faults are found as well, nothing is written
            const Sheet sheet(workshop, *read, type);
            if (read->findings.clean()) sheet.book(*read);
        }
        if (!tell(read->findings, common.strict))
            worst = std::max<int>(worst, findings);
        else
            std::cout << record << ": ready to print\n";
    }
    return worst;
}

} // namespace

Run set_up_check(CLI::App& app, const Common& common) {
    auto records = std::make_shared<std::vector<std::string>>();
    app.add_option("FILE", *records, "Lesson records (YAML)")->required();
    return [records, &common] { return run(*records, common); };
}

} // namespace cli
