#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "output/file.hpp"

#include <iostream>

namespace cli {

namespace {

int run(const std::string& folder, const Common& common) {
    const stock::Shelf shelf =
        common.templates.empty() ? stock::Shelf() : stock::Shelf(common.templates);
    std::error_code failed;
    fs::create_directories(folder, failed);
    if (failed)
        throw output::CannotWrite("the folder '" + folder +
                                  "' cannot be made: " + failed.message());
    for (const char* name : {"lesson.yaml", "shots.csv"}) {
        const fs::path target = fs::path(folder) / name;
        if (fs::exists(target, failed)) {
            std::cerr << "lessonleaf: '" << target.string()
                      << "' is there already and stays as it is\n"
                      << "  hint: name a new folder for a new lesson\n";
            return findings;
        }
    }
    for (const char* name : {"lesson.yaml", "shots.csv"}) {
        const auto item = shelf.find(std::string("begin/") + name);
        if (!item)
            throw output::CannotWrite(std::string("the template begin/") + name + " is missing");
        const std::string target = (fs::path(folder) / name).string();
        output::write_file(target, item->text);
        std::cout << target << "\n";
    }
    return all_written;
}

} // namespace

Run set_up_begin(CLI::App& app, const Common& common) {
    auto folder = std::make_shared<std::string>();
    app.add_option("FOLDER", *folder, "Folder of the new lesson; it is made when it is not there")
        ->required();
    return [folder, &common] { return run(*folder, common); };
}

} // namespace cli
