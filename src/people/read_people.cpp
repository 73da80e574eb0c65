#include "people/people.hpp"

#include "people/address.hpp"
#include "record/parts.hpp"
#include "record/read_date.hpp"

#include <algorithm>

namespace people {

namespace {

void read_code(const yaml::Field& field, diag::Located<std::string>& code) {
    const auto text = field.text();
    if (!text) return;
    code = {*text, field.span()};
    const bool plain = std::ranges::all_of(*text, [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
               c == '-';
    });
    if (!plain || text->size() > 24 || text->starts_with('-'))
        field.must("be made of letters a to z, digits and '-', 24 at most",
                   "it becomes a part of file names: write code: RU-04");
}

/// An address alone, or {name: ..., address: ...}.
void read_addressee(const yaml::Field& field, Addressee& to) {
    if (!field.is_text()) {
        field.only({"name", "address"});
        record::take(field.at("name"), to.name);
    }
    const yaml::Field address = field.is_text() ? field : field.at("address");
    to.address.span = address.span();
    const auto text = address.text();
    if (!text) return;
    if (const std::string hint = fault_of_address(*text); !hint.empty())
        return address.must("be an e-mail address", hint);
    to.address.value = *text;
}

void read_post(const yaml::Field& field, Person& person) {
    if (const auto to = field.at("send to")) read_addressee(to, person.send_to);
    if (person.send_to.name.empty()) person.send_to.name = person.full_name();
    const yaml::Field guardian = field.at("guardian");
    person.guardian_span = guardian.span();
    const bool junior = person.age == record::Age::junior;
    if (guardian && !junior)
        guardian.error(person.code.value + " is an adult and has a guardian",
                       "write age: junior, or take the guardian away");
    if (guardian) {
        if (guardian.is_map()) guardian.required("name", "Petra Millard");
        read_addressee(guardian, person.guardian.emplace());
    }
    if (!junior) return;
    if (!guardian)
        field.error(person.code.value + " is a junior without a guardian",
                    "add a line such as guardian: {name: Petra Millard, address: "
                    "petra@post.example}: a junior's mail goes to the guardian alone");
    if (field.at("send to"))
        field.at("send to").error(person.code.value + " is a junior with a 'send to' of their own",
                                  "a junior's mail goes to the guardian alone: take the line away");
}

void read_ways(const yaml::Field& field, Person& person) {
    if (const auto language = field.at("language"))
        record::read_language(language, person.language.emplace("en-GB"));
    if (const auto paper = field.at("paper")) record::read_paper(paper, person.paper.emplace());
    if (const auto written = field.at("units")) {
        unit::Units units;
        record::read_units(written, units);
        if (written.at("distance")) person.distance = units.distance;
        if (written.at("speed")) person.speed = units.speed;
    }
    record::take(field.at("large print"), person.large_print);
    record::take(field.at("glove"), person.glove);
    if (const auto print_name = field.at("print name"))
        record::read_print_name(print_name, person.print_name.emplace());
    record::read_bag(field.at("bag"), person.bag);
}

void read_dates(const yaml::Field& field, Person& person) {
    person.agreed = record::read_date(field.at("agreed"));
    const yaml::Field kept = field.at("kept until");
    person.kept_until = record::read_date(kept);
    if (person.agreed && person.kept_until && *person.kept_until <= *person.agreed)
        kept.error("'kept until' is not after 'agreed'", "correct one of the two");
}

void read_person(const yaml::Field& field, Person& person, diag::Findings& findings) {
    person.span = field.span();
    if (!field.is_map())
        return field.error(field.called() + " is no person",
                           "write it as - {code: RU-04, first name: Ruth, hand: right}");
    field.only({"code", "first name", "family name", "hand", "age", "coach", "language", "paper",
                "large print", "glove", "units", "print name", "bag", "send to", "guardian",
                "agreed", "kept until"},
               record::refuse_private(field, findings));
    read_code(field.required("code", "RU-04"), person.code);
    record::take(field.required("first name", "Ruth"), person.first_name);
    record::take(field.at("family name"), person.family_name);
    record::read_hand(field.required("hand", "right"), person.hand);
    record::read_age(field.at("age"), person.age);
    record::take(field.at("coach"), person.coach);
    read_ways(field, person);
    read_post(field, person);
    read_dates(field, person);
}

std::string capital(std::string text) {
    std::ranges::transform(text, text.begin(), [](char c) {
        return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    });
    return text;
}

/// Codes that differ in capitals only are one code: file names would collide.
void check_twins(People& people) {
    for (std::size_t i = 0; i < people.list.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            Person &second = people.list[i], &first = people.list[j];
            if (first.code.value.empty() || capital(first.code.value) != capital(second.code.value))
                continue;
            const auto tell = [](Person& person, const Person& other) {
                person.findings.push_back(
                    {diag::Severity::error, person.code.span,
                     "the code " + diag::quote(person.code.value) + " is used twice",
                     "it also stands in line " + std::to_string(other.code.span.line) +
                         ": give one of the two another code"});
            };
            tell(first, second);
            tell(second, first);
        }
}

} // namespace

People read_people(const diag::Source& source, diag::Findings& findings) {
    People people;
    diag::Findings mine; // each person's findings are taken out of it as they come
    const yaml::Document document(source, mine);
    const yaml::Field root = document.root("people.yaml");
    if (document.readable() && !root.is_list())
        root.error("the file is no list of people",
                   "write a line for each, such as '- {code: RU-04, first name: Ruth, hand: "
                   "right}'");
    for (const diag::Finding& finding : mine.list())
        findings.error(finding.span, finding.what, finding.hint);
    if (!document.readable() || !root.is_list()) return people;
    for (const yaml::Field& item : root.items()) {
        const auto told = static_cast<std::ptrdiff_t>(mine.list().size());
        Person& person = people.list.emplace_back();
        read_person(item, person, mine);
        person.findings.assign(mine.list().begin() + told, mine.list().end());
    }
    check_twins(people);
    return people;
}

} // namespace people
