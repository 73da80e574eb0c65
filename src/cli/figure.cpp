#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/inputs.hpp"
#include "cli/sheet.hpp"
#include "output/file.hpp"
#include "output/pdf.hpp"
#include "output/png.hpp"
#include "output/svg.hpp"
#include "report/figures.hpp"
#include "words/date.hpp"

#include <algorithm>
#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::string record, name, target;
    double dots_per_inch = 200;
};

std::string pdf_of(const Sheet& sheet, const ink::Drawing& drawing, const record::Lesson& lesson) {
    page::Book book;
    page::Sheet one{drawing.size, {}, "1"};
    one.marks.push_back(ink::Tag{true, "Figure", drawing.message});
    one.marks.insert(one.marks.end(), drawing.marks.begin(), drawing.marks.end());
    one.marks.push_back(ink::Tag{false, "Figure", {}});
    book.sheets.push_back(std::move(one));
    book.title = drawing.message.empty() ? lesson.printed_name() : drawing.message;
    book.author = lesson.coach.name;
    book.language = lesson.language;
    book.created = words::date_iso(lesson.date.value);
    (void)sheet;
    return output::pdf(book);
}

int unknown(const Wishes& wishes, const std::vector<std::string>& names) {
    const std::vector<std::string_view> known(names.begin(), names.end());
    const auto near = diag::nearest(wishes.name, known);
    std::cerr << "lessonleaf: the sheet has no figure '" << wishes.name << "'\n  hint: "
              << (near.empty() ? "it has " + diag::either(known)
                               : "did you mean '" + std::string(near) + "'?")
              << "\n";
    return wrong_use;
}

int run(const Wishes& wishes, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    const auto read = workshop.read(wishes.record);
    if (!read->readable) return cannot_read(wishes.record);
    if (!tell(read->findings, common.strict)) return findings;
    const text::PangoTypesetter type;
    const Sheet sheet(workshop, *read, type);
    const auto names = report::figure_names(sheet.easel(), sheet.story());
    if (wishes.name.empty()) {
        for (const auto& name : names)
            std::cout << name << "\n";
        return all_written;
    }
    const auto drawing = report::figure_named(sheet.easel(), sheet.story(), wishes.name);
    if (!drawing) return unknown(wishes, names);
    const std::string target = wishes.target.empty() ? wishes.name + ".svg" : wishes.target;
    const std::string ending = fs::path(target).extension().string();
    if (ending != ".svg" && ending != ".png" && ending != ".pdf") {
        std::cerr << "lessonleaf: '" << target << "' must end in .svg, .png or .pdf\n  hint: -o "
                  << wishes.name << ".svg\n";
        return wrong_use;
    }
    output::write_file(target,
                       ending == ".svg" ? output::svg(*drawing)
                       : ending == ".png"
                           ? output::png(drawing->marks, drawing->size, wishes.dots_per_inch)
                           : pdf_of(sheet, *drawing, read->lesson),
                       names_of(*read));
    std::cout << target << "\n";
    return all_written;
}

} // namespace

Run set_up_figure(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("RECORD", wishes->record, "Lesson record (YAML)")->required();
    app.add_option("NAME", wishes->name, "Which figure; without it the names are listed");
    app.add_option("-o,--output", wishes->target, "File ending in .svg, .png or .pdf");
    app.add_option("--dpi", wishes->dots_per_inch, "Dots per inch of a PNG")
        ->check(CLI::Range(20.0, 1200.0));
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
