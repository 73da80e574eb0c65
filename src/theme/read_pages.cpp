#include "theme/read_style.hpp"
#include "yaml/field.hpp"

#include <algorithm>

namespace theme {

namespace {

using yaml::Field;

/// In the order of Page.
constexpr std::array<std::string_view, 9> page_names{"one thing",    "hold",        "evidence",
                                                     "why",          "drill",       "expect",
                                                     "second drill", "photographs", "next"};

/// Pages that stay in every plan, and why.
struct Staying {
    Page page;
    const char* why;
};
constexpr Staying staying[] = {
    {Page::one_thing, "it says what the lesson was about"},
    {Page::drill, "it is what the student does at home"},
    {Page::expect, "it bears the cautions, and nobody may leave those out"},
};

constexpr std::size_t longest_title = 60, most_paragraphs = 30;

std::string_view name_of(Page page) { return page_names[static_cast<std::size_t>(page)]; }

void read_own(const Field& item, std::vector<Planned>& plan) {
    item.only({"title", "text", "lines"});
    Planned own{.page = Page::own, .span = item.span()};
    const Field title = item.required("title", "Where to find me");
    if (auto text = title.text()) {
        if (text->size() > longest_title)
            title.must("have at most 60 characters", "a title is one line");
        own.title = std::move(*text);
    }
    const Field text = item.at("text");
    for (const auto& paragraph : text.items())
        if (auto words = paragraph.text()) own.text.push_back(std::move(*words));
    if (own.text.size() > most_paragraphs)
        text.must("have at most 30 paragraphs", "make two pages of it");
    if (const auto lines = item.at("lines").yes_no()) own.lines = *lines;
    if (own.text.empty() && !own.lines)
        item.error("this page is empty", "add text: \"...\", or lines: yes for room to write on");
    plan.push_back(std::move(own));
}

void read_item(const Field& item, std::vector<Planned>& plan, diag::Findings& findings) {
    if (item.is_map()) return read_own(item, plan);
    const auto index = item.one_of(page_names);
    if (!index) return;
    const auto page = static_cast<Page>(*index);
    if (std::ranges::find(plan, page, &Planned::page) != plan.end())
        return findings.error(item.span(),
                              "the page '" + std::string(name_of(page)) + "' is there twice",
                              "take one of the two away");
    plan.push_back({.page = page, .span = item.span()});
}

void expect_order(const std::vector<Planned>& plan, diag::Findings& findings) {
    const auto at = [&](Page page) { return std::ranges::find(plan, page, &Planned::page); };
    const auto second = at(Page::second_drill);
    if (second != plan.end() && second < at(Page::drill))
        findings.error(second->span, "the second drill comes before the first",
                       "put the line 'drill' above the line 'second drill'");
}

} // namespace

void read_pages(const diag::Source& source, Style& style, diag::Findings& findings) {
    const yaml::Document document(source, findings);
    if (!document.readable()) return;
    const Field root = document.root("this file");
    if (!root.is_list())
        return root.error("the file must be a list of pages",
                          "one page a line, each behind a hyphen: - one thing");
    std::vector<Planned> plan;
    const std::size_t before = findings.errors();
    for (const auto& item : root.items())
        read_item(item, plan, findings);
    for (const auto& [page, why] : staying)
        if (std::ranges::find(plan, page, &Planned::page) == plan.end())
            findings.error(root.span(), "the page '" + std::string(name_of(page)) + "' is missing",
                           std::string("add a line '- ") + std::string(name_of(page)) +
                               "': " + why);
    expect_order(plan, findings);
    if (findings.errors() == before) style.pages = std::move(plan);
}

} // namespace theme
