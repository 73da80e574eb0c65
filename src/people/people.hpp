// people.yaml: who is taught.
#pragma once

#include "diag/finding.hpp"
#include "record/lesson.hpp"
#include "record/start.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace people {

/// A name and an electronic-mail address (RFC 5322 addr-spec), either may be empty.
struct Addressee {
    std::string name;
    diag::Located<std::string> address;
};

/// One student. What is left out is left to the house.
struct Person {
    diag::Located<std::string> code; ///< letters, digits and '-'; unique
    std::string first_name, family_name;
    diag::Located<unit::Hand> hand;
    record::Age age = record::Age::adult;
    std::string coach; ///< as written, a part of a coach's name

    std::optional<std::string> language;
    std::optional<record::Paper> paper;
    std::optional<bool> large_print, glove;
    std::optional<unit::Distance> distance;
    std::optional<unit::Speed> speed;
    std::optional<record::PrintName> print_name;
    std::vector<record::Club> bag;

    Addressee send_to;                 ///< an adult's own; a junior has a guardian
    std::optional<Addressee> guardian; ///< of a junior
    diag::Span guardian_span;
    std::optional<record::Date> agreed;     ///< when keeping the records was agreed to
    std::optional<record::Date> kept_until; ///< when they are due for deletion

    diag::Span span;
    std::vector<diag::Finding> findings; ///< of this entry alone

    /// True when no finding of this entry is an error.
    bool sound() const;
    /// "Ruth Millard", or the part of it that is known.
    std::string full_name() const;
};

struct People {
    std::vector<Person> list;                                   ///< in the order of the file
    const Person* find(std::string_view code) const;            ///< letter by letter; else null
    std::string_view nearest_code(std::string_view word) const; ///< for "did you mean"; else empty
    /// The code of the only person of that first name; else empty.
    std::string_view code_of(std::string_view first_name) const;
};

/// Reads people.yaml. What is wrong with the file as a whole goes to `findings`; what is wrong with
/// one person stays with that person, so that nobody else's lesson is held up.
People read_people(const diag::Source& source, diag::Findings& findings);

/// The only addressee of a person's mail: the guardian of a junior, else the person. Null when no
/// address is known.
const Addressee* addressee(const Person& person);

} // namespace people
