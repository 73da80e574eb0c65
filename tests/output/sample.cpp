#include "sample.hpp"

namespace {

using Marks = std::vector<ink::Mark>;

void put(Marks& marks, const text::Lines& lines, ink::Point at) {
    for (const auto& line : lines.lines)
        marks.push_back(ink::moved(line, at));
}

void tagged(Marks& marks, const char* role, const text::Lines& lines, ink::Point at) {
    marks.push_back(ink::Tag{true, role, {}});
    put(marks, lines, at);
    marks.push_back(ink::Tag{false, role, {}});
}

ink::Style style(const char* family, double size, int weight, bool italic = false) {
    ink::Style s;
    s.family = family, s.size = size, s.weight = weight, s.italic = italic;
    return s;
}

void figure(Marks& marks, const char* message, ink::Point at) {
    marks.push_back(ink::Tag{true, "Figure", message});
    marks.push_back(ink::Fill{ink::Path::round_rect({at.x, at.y, 200, 80}, 6), ink::grey(0.92)});
    for (int i = 0; i < 12; ++i)
        marks.push_back(ink::Stroke{ink::Path::circle({at.x + 15 + 15 * i, at.y + 40}, 4),
                                    0.8,
                                    ink::black,
                                    {},
                                    ink::Cap::round});
    marks.push_back(ink::Stroke{ink::Path::segment({at.x, at.y + 60}, {at.x + 200, at.y + 60}),
                                0.5,
                                ink::grey(0.4),
                                {3, 2},
                                ink::Cap::butt});
    marks.push_back(ink::Tag{false, "Figure", {}});
}

void table(Marks& marks, const text::Typesetter& setter, ink::Point at) {
    auto cell = style("Lato", 10, 400);
    cell.tabular = true;
    marks.push_back(ink::Tag{true, "Table", {}});
    const char* rows[][2] = {{"Carry", "171.1"}, {"Offline", "8.8"}};
    for (const auto& row : rows) {
        marks.push_back(ink::Tag{true, "TR", {}});
        tagged(marks, "TH", setter.set(row[0], cell, 80, 13), at);
        tagged(marks, "TD", setter.set(row[1], cell, 60, 13, text::Align::right),
               {at.x + 80, at.y});
        marks.push_back(ink::Tag{false, "TR", {}});
        at.y += 13;
    }
    marks.push_back(ink::Tag{false, "Table", {}});
}

void foot(Marks& marks, const text::Typesetter& setter, const char* words, ink::Size paper) {
    marks.push_back(ink::Tag{true, "Artifact", {}});
    marks.push_back(setter.line(words, style("Lato", 8, 400), {50, paper.height - 30}));
    marks.push_back(ink::Tag{false, "Artifact", {}});
}

} // namespace

page::Book sample_book(const text::Typesetter& setter, ink::Size paper) {
    page::Book book;
    book.title = "Lesson of Mel & Ana";
    book.author = "Coach Example";
    book.language = "en-GB";
    book.created = "2026-05-14";
    page::Sheet one{paper, {}, "1"}, two{paper, {}, "2"};
    const double width = paper.width - 100;
    tagged(one.marks, "H1", setter.set("My one thing", style("Vollkorn", 24, 700), width, 30),
           {50, 50});
    tagged(one.marks, "P",
           setter.set("The first office floor flies off: fifteen affluent officials waffle about "
                      "efficient flight. AVAToLTyWa.",
                      style("Lato", 11, 400), width, 15),
           {50, 90});
    figure(one.marks, "The face was open in 9 of 10 shots.", {50, 160});
    auto label = setter.line("start direction", style("Lato", 8, 400), {40, 240});
    label.turn = 90;
    one.marks.push_back(label);
    one.marks.push_back(ink::Link{{50, 300, 100, 14}, "#drill-1"});
    put(one.marks, setter.set("Go to the drill", style("Lato", 10, 700), width, 14), {50, 300});
    foot(one.marks, setter, "page 1", paper);
    two.marks.push_back(ink::Place{{50, 50}, "drill-1"});
    tagged(two.marks, "H2",
           setter.set("What do I do at home", style("Vollkorn", 16, 400, true), width, 22),
           {50, 50});
    figure(two.marks, "Afterwards it was square.", {50, 100});
    table(two.marks, setter, {50, 220});
    foot(two.marks, setter, "page 2", paper);
    book.sheets = {one, two};
    book.bookmarks = {
        {"My one thing", 1, 0, {50, 50}}, {"At home", 1, 1, {50, 50}}, {"Table", 2, 1, {50, 220}}};
    return book;
}
