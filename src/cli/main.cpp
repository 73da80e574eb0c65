#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/keep.hpp"
#include "cli/stop.hpp"

#include <cstdio>
#include <exception>
#include <iostream>
#include <malloc.h>
#include <map>
#include <unistd.h>

namespace {

/// Known commands, for "did you mean".
std::vector<std::string_view> names() {
    std::vector<std::string_view> out;
    for (const auto& command : cli::commands)
        out.emplace_back(command.name);
    return out;
}

/// How the command is used when something that it needs was left out; empty otherwise.
std::string example(const std::string& command, const CLI::ParseError& error) {
    if (!dynamic_cast<const CLI::RequiredError*>(&error)) return {};
    const auto found = std::ranges::find(cli::commands, command, &cli::Command::name);
    return "  hint: lessonleaf " + command + " " + found->example + "\n";
}

/// A word that CLI11 does not know: say which, and the nearest known one.
int wrong_use(const CLI::App& app, const CLI::ParseError& error, int argc, char** argv) {
    std::string word;
    std::vector<std::string_view> known = names();
    const auto used = app.get_subcommands();
    if (used.empty()) {
        for (int i = 1; i < argc && word.empty(); ++i)
            if (argv[i][0] != '-') word = argv[i];
        if (word.empty()) {
            std::cerr << "lessonleaf: say what to do: " << diag::either(names()) << "\n";
            return cli::wrong_use;
        }
        std::cerr << "lessonleaf: '" << word << "' is not a command\n";
    } else {
        std::cerr << "lessonleaf " << used.front()->get_name() << ": " << error.what() << "\n";
        std::vector<std::string> options;
        for (const auto* option : used.front()->get_options())
            for (const auto& name : option->get_lnames())
                options.push_back("--" + name);
        known.assign(options.begin(), options.end());
        for (int i = 1; i < argc; ++i) {
            const std::string arg(argv[i]);
            if (arg.rfind("--", 0) != 0) continue;
            const std::string bare = arg.substr(0, arg.find('='));
            if (std::ranges::find(options, bare) == options.end()) word = bare;
        }
        const auto near = word.empty() ? std::string_view() : diag::nearest(word, known);
        if (!near.empty()) std::cerr << "  hint: did you mean '" << near << "'?\n";
        std::cerr << example(used.front()->get_name(), error);
        std::cerr << "  hint: lessonleaf " << used.front()->get_name() << " --help\n";
        return cli::wrong_use;
    }
    const auto near = diag::nearest(word, known);
    std::cerr << "  hint: "
              << (near.empty() ? "lessonleaf --help lists the commands"
                               : "did you mean '" + std::string(near) + "'?")
              << "\n";
    return cli::wrong_use;
}

int run(int argc, char** argv) {
    // A batch draws many sheets: what one gives back the next one takes, so keep it.
    mallopt(M_TRIM_THRESHOLD, 256 << 20);
    mallopt(M_MMAP_THRESHOLD, 64 << 20);

    CLI::App app{"Turns a golf lesson's record and shot table into a sheet the student takes home.",
                 "lessonleaf"};
    app.require_subcommand(1);
    app.set_version_flag("--version", "lessonleaf " LESSONLEAF_VERSION);
    cli::Common common;
    bool no_cache = false;
    std::map<std::string, cli::Run> runs;
    for (const auto& command : cli::commands) {
        CLI::App* sub = app.add_subcommand(command.name, command.what);
        sub->add_option("--templates", common.templates,
                        "Folder whose files replace the built-in templates, one by one");
        sub->add_flag("--outside", common.outside,
                      "Records may name files that do not lie in their own folder");
        sub->add_flag("--strict", common.strict, "Warnings and layout faults count as errors");
        sub->add_flag("--no-cache", no_cache,
                      "Draw every hand anew and keep no drawings in the user's cache folder");
        runs[command.name] = command.set_up(*sub, common);
    }
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& done) {
        return app.exit(done);
    } catch (const CLI::ParseError& error) {
        return wrong_use(app, error, argc, argv);
    }
    cli::stop_cleanly();
    if (!no_cache) cli::keep_drawings();
    return runs.at(app.get_subcommands().front()->get_name())();
}

} // namespace

int main(int argc, char** argv) {
    try {
        return run(argc, argv);
    } catch (const std::exception& failed) { // no font, no place to write
        std::cerr << "lessonleaf: " << failed.what() << "\n";
    }
    return cli::no_file;
}
