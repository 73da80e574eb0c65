#include "people/address.hpp"
#include "people/start.hpp"
#include "record/read_lesson.hpp"

#include <catch2/catch.hpp>

namespace {

const std::string house_text = R"(academy: Low Meadow Golf School
coaches:
  - {name: Tom Harling, contact: "tom@low-meadow.example"}
  - {name: Anika Brandt, contact: "anika@low-meadow.example"}
place: Low Meadow, bay 6
paper: A4
units: {distance: yards, speed: mph}
print name: first name
shots: {file: shots.csv, sign: right is positive, columns: {face: "Blade"}}
conditions: {text: "indoors, mat", height: 80 m, temperature: 17}
aims:
  face: {want: 2 L to 4 R, worth having: 2}
  carry: {want: 120 to 130, worth having: 5}
kept for: 24
)";

const std::string people_text = R"(- code: RU-04
  first name: Ruth
  family name: Millard
  hand: right
  glove: yes
  bag: [{name: seven iron, loft: 32, lie: 62.5}, {name: nine iron, loft: 40.5}]
  send to: ruth@post.example
- code: PI-07
  first name: Pia
  hand: left
  age: junior
  coach: Anika
  paper: A5
  units: {distance: metres}
  guardian: {name: "Lindqvist, Petra", address: petra@post.example}
  kept until: 2028-07-31
)";

const std::string least = "date: 2026-05-14\nsaw: a\nchanged: b\n";

struct Reading {
    explicit Reading(const std::string& record)
        : house_source("house.yaml", house_text)
        , people_source("people.yaml", people_text)
        , source("lesson.yaml", record)
        , house(people::read_house(house_source, findings))
        , list(people::read_people(people_source, findings))
        , lesson(record::read_lesson(
              source, findings, [&](const diag::Located<std::string>& code, bool bare) {
                  return people::start_of(&house, &list, code, bare, findings);
              })) {
        INFO(diag::print_all(findings));
        CHECK(findings.total() == 0);
    }
    diag::Source house_source, people_source, source;
    diag::Findings findings;
    people::House house;
    people::People list;
    record::Lesson lesson;
};

} // namespace

TEST_CASE("a code alone brings what is known of the student and of the house") {
    const Reading read("student: RU-04\nclub: seven iron\naim: face\n" + least);
    const record::Lesson& lesson = read.lesson;
    CHECK(lesson.student.name == "Ruth");
    CHECK(lesson.student.code == "RU-04");
    CHECK(lesson.student.hand.value == unit::Hand::right);
    CHECK(lesson.coach.name == "Tom Harling");
    CHECK(lesson.coach.academy == "Low Meadow Golf School");
    CHECK(lesson.place == "Low Meadow, bay 6");
    CHECK(lesson.units.distance == unit::Distance::yards);
    CHECK(lesson.glove);
    CHECK(lesson.club.loft->value == 32);
    CHECK(lesson.club.lie->value == 62.5);
    CHECK(lesson.bag.size() == 2);
    REQUIRE(lesson.aim);
    CHECK(lesson.aim->least == -2);
    CHECK(lesson.aim->most == 4);
    CHECK(lesson.aim->worth_having == 2);
    REQUIRE(lesson.shots);
    CHECK(lesson.shots->file.value == "shots.csv");
    CHECK(lesson.shots->sign->value == record::Sign::right_positive);
    CHECK(lesson.conditions.height->value == 80);
}

TEST_CASE("a value that was filled in is shown where it was written") {
    const Reading read("student: RU-04\nclub: seven iron\naim: face\n" + least);
    CHECK(read.lesson.student.hand.span.source == &read.people_source);
    CHECK(read.lesson.student.hand.span.line == 4);
    CHECK(read.lesson.shots->sign->span.source == &read.house_source);
    CHECK(read.lesson.shots->columns.at(unit::Measure::face).span.source == &read.house_source);
    CHECK(read.lesson.aim->measure.span.source == &read.source);
}

TEST_CASE(
    "the record goes over the person, the person over the house, the house over the program") {
    const Reading person("student: PI-07\n" + least);
    CHECK(person.lesson.paper == record::Paper::a5);
    CHECK(person.lesson.student.age == record::Age::junior);
    CHECK(person.lesson.student.hand.value == unit::Hand::left);
    CHECK(person.lesson.coach.name == "Anika Brandt");
    CHECK(person.lesson.coach.contact == "anika@low-meadow.example");
    const Reading record("student: {code: PI-07}\npaper: Letter\ncoach: Harling\n"
                         "aim: {measure: face, want: 1 L to 1 R}\nshots: none\n"
                         "conditions: {temperature: 9}\n" +
                         least);
    CHECK(record.lesson.paper == record::Paper::letter);
    CHECK(record.lesson.coach.name == "Tom Harling");
    CHECK(record.lesson.aim->most == 1);
    CHECK(record.lesson.aim->worth_having == 2); // of the house
    CHECK_FALSE(record.lesson.shots);
    CHECK(*record.lesson.conditions.celsius == 9);
    CHECK(record.lesson.conditions.text == "indoors, mat");
}

TEST_CASE("units of one kind leave the other to the house") {
    const Reading read("student: PI-07\n" + least);
    CHECK(read.lesson.units.distance == unit::Distance::metres);
    CHECK(read.lesson.units.speed == unit::Speed::miles_per_hour);
}

TEST_CASE("names are printed as short as the house, the person or the record says") {
    const auto name = [](const std::string& lines) {
        return Reading("student: RU-04\n" + lines + least).lesson.student.name;
    };
    CHECK(name("") == "Ruth");
    CHECK(name("print name: initials\n") == "R. M.");
    CHECK(name("print name: code\n").empty());
    CHECK(Reading("student: {code: RU-04, name: Ruth Millard}\n" + least).lesson.student.name ==
          "Ruth");
    CHECK(Reading("student: {code: RU-04, name: Ruth Millard}\nprint name: as written\n" + least)
              .lesson.student.name == "Ruth Millard");
}

TEST_CASE("names are shortened without a people file too, in any script") {
    const auto name = [](const std::string& whole, const std::string& way) {
        const diag::Source source("lesson.yaml", "student: {name: " + whole + ", hand: right}\n" +
                                                     "print name: " + way + "\n" + least);
        diag::Findings findings;
        const auto lesson = record::read_lesson(source, findings);
        CHECK(findings.total() == (way == "code" ? 1 : 0));
        return lesson.student.name;
    };
    CHECK(name("Åsa Örn-Élan", "initials") == "Å. Ö. É.");
    CHECK(name("Åsa Örn", "first name") == "Åsa");
    CHECK(name("Åsa Örn", "as written") == "Åsa Örn");
}

TEST_CASE("a junior's mail goes to the guardian, an adult's to the adult") {
    const Reading read("student: RU-04\n" + least);
    const people::Addressee* ruth = people::addressee(*read.list.find("RU-04"));
    REQUIRE(ruth);
    CHECK(ruth->name == "Ruth Millard");
    CHECK(ruth->address.value == "ruth@post.example");
    const people::Addressee* pia = people::addressee(*read.list.find("PI-07"));
    REQUIRE(pia);
    CHECK(pia->name == "Lindqvist, Petra");
    CHECK(pia->address.value == "petra@post.example");
    people::Person without = *read.list.find("PI-07");
    without.guardian.reset();
    without.send_to.address.value = "pia@post.example";
    CHECK(people::addressee(without) == nullptr);
}

TEST_CASE("addresses follow RFC 5322's dot-atom form") {
    // RFC 5322, 3.2.3 (atext, dot-atom) and 3.4.1 (addr-spec); RFC 5321, 4.5.3.1 (lengths).
    for (const char* good :
         {"john.doe@example.com", "user+mailbox@example.com", "a@b.example",
          "customer/department=shipping@example.com", "!def!xyz%abc@example.com"})
        CHECK(people::fault_of_address(good).empty());
    for (const std::string& bad :
         {std::string("ruth"), std::string("ruth@post"), std::string("ruth@@post.example"),
          std::string(".ruth@post.example"), std::string("ruth.@post.example"),
          std::string("ru..th@post.example"), std::string("ruth millard@post.example"),
          std::string("ruth@post.example\nBcc: x@y.example"), std::string("Ruth <r@post.example>"),
          std::string("rüth@post.example"), std::string(65, 'a') + "@post.example"})
        CHECK_FALSE(people::fault_of_address(bad).empty());
}

TEST_CASE("one person's fault stays with that person") {
    const diag::Source source("people.yaml",
                              "- {code: A-1, first name: Ada, hand: rihgt}\n"
                              "- {code: B-2, first name: Bo, hand: left}\n"
                              "- {code: C-3, first name: Cy, hand: left, age: junior}\n"
                              "- {code: b-2, first name: Bea, hand: right}\n");
    diag::Findings findings;
    const people::People list = people::read_people(source, findings);
    CHECK(findings.total() == 0);
    REQUIRE(list.list.size() == 4);
    CHECK_FALSE(list.list[0].sound());
    CHECK_FALSE(list.list[1].sound()); // its code is used twice
    CHECK(list.list[1].findings.size() == 1);
    CHECK_FALSE(list.list[2].sound()); // no guardian
    CHECK_FALSE(list.list[3].sound());
}
