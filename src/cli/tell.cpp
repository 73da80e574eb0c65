#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/records.hpp"
#include "people/start.hpp"

#include <algorithm>
#include <iostream>
#include <unistd.h>

namespace cli {

namespace {

/// A record under nearly that name: other capitals, or another ending.
std::string nearly_called(const fs::path& record) {
    const auto first_part = [](const fs::path& path) {
        const std::string name = in_small_letters(path.filename().string());
        return name.substr(0, name.find('.'));
    };
    std::vector<std::string> found;
    std::error_code gone;
    const fs::path folder = record.parent_path().empty() ? "." : record.parent_path();
    for (fs::directory_iterator at(folder, gone), end; !gone && at != end; at.increment(gone)) {
        const std::string small = in_small_letters(at->path().filename().string());
        const bool yaml =
            small.find(".yaml") != std::string::npos || small.find(".yml") != std::string::npos;
        if (yaml && first_part(at->path()) == first_part(record))
            found.push_back(at->path().filename().string());
    }
    std::ranges::sort(found);
    return found.empty() || first_part(record).empty() ? std::string() : found.front();
}

} // namespace

std::string unreadable(const std::string& record) {
    std::error_code gone;
    if (fs::is_directory(record, gone))
        return "lessonleaf: '" + record +
               "' is a folder, and one record is wanted\n  hint: name it: " +
               (fs::path(record) / "lesson.yaml").string() + "\n";
    if (const std::string near = nearly_called(record);
        !near.empty() && near != fs::path(record).filename().string())
        return "lessonleaf: '" + record + "' cannot be read\n  hint: '" + near + "' lies there: " +
               (nearly_record_name(near) ? "call the file lesson.yaml, letter by letter\n"
                                         : "write its name letter by letter\n");
    return "lessonleaf: '" + record +
           "' cannot be read\n  hint: give the path of a lesson record, such as lesson.yaml\n";
}

int cannot_read(const std::string& record) {
    std::cerr << unreadable(record);
    return no_file;
}

std::string told(const diag::Findings& findings) {
    static const bool terminal = isatty(STDERR_FILENO) != 0;
    return diag::print_all(findings, terminal);
}

bool is_shared(const diag::Finding& finding) {
    if (!finding.span.source) return false;
    const std::string name = usual_name(finding.span.source->name());
    return name == "house.yaml" || name == "people.yaml" || name == "drills.yaml";
}

bool passes(const diag::Findings& findings, bool strict) {
    if (!strict) return findings.clean();
    return std::ranges::none_of(
        findings.list(), [](const diag::Finding& f) { return f.severity != diag::Severity::note; });
}

std::string first_of(const diag::Findings& findings) {
    const std::string all = diag::print_all(findings, false);
    return all.substr(0, all.find('\n'));
}

bool tell(const diag::Findings& findings, bool strict) {
    std::cerr << told(findings);
    return passes(findings, strict);
}

Found found_in(const diag::Findings& findings) {
    Found out;
    diag::Findings own;
    for (const auto& finding : findings.list()) {
        diag::Findings one;
        people::hand_on({finding}, is_shared(finding) ? one : own);
        if (is_shared(finding)) out.shared.push_back(told(one));
    }
    out.own = told(own);
    return out;
}

std::string Telling::news(const std::vector<std::string>& shared) {
    std::string out;
    for (const auto& fault : shared)
        if (before_.insert(fault).second) out += fault;
    return out;
}

bool Telling::tell(const diag::Findings& findings, bool strict) {
    const Found found = found_in(findings);
    std::cerr << news(found.shared) << found.own;
    return passes(findings, strict);
}

} // namespace cli
