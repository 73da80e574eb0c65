#include "cli/term_pupil.hpp"

#include "cli/held_of.hpp"
#include "cli/term_register.hpp"
#include "report/follow.hpp"

#include <algorithm>

namespace cli {

namespace {

/// "2026-03-05/lesson.yaml".
std::string place_of(const Read& read) {
    return read.record.parent_path().filename().string() + "/" + read.record.filename().string();
}

Pupil& pupil_of(Pupils& pupils, const std::string& code, bool listed) {
    const auto known = std::ranges::find(pupils, code, [](const auto& p) { return p->code; });
    if (known != pupils.end()) return **known;
    pupils.push_back(std::make_unique<Pupil>());
    pupils.back()->code = code;
    pupils.back()->listed = listed;
    return *pupils.back();
}

} // namespace

Pupils enrol(const record::Term& term, Reads lessons) {
    Pupils pupils;
    for (const auto& entry : term.students)
        pupil_of(pupils, entry.code.value, true).entry = &entry;
    auto nobody = std::make_unique<Pupil>();
    nobody->listed = false;
    std::vector<std::string> codes;
    for (const auto& read : lessons) {
        codes.push_back(hides_its_student(*read) ? likely_owner(*read, lessons)
                                                 : read->lesson.student.code);
    }
    for (std::size_t i = 0; i < lessons.size(); ++i) {
        if (!in_term(term, lessons[i]->lesson)) continue;
        Pupil& whose =
            codes[i].empty() ? *nobody : pupil_of(pupils, codes[i], !term.lists_students);
        whose.reads.push_back(std::move(lessons[i]));
    }
    for (const auto& pupil : pupils)
        drop_replaced(pupil->reads);
    if (!term.lists_students) std::ranges::sort(pupils, {}, [](const auto& p) { return p->code; });
    if (!nobody->reads.empty()) pupils.push_back(std::move(nobody));
    return pupils;
}

void gather_lessons(Pupil& pupil, const Workshop& workshop, const text::Typesetter& type,
                    bool strict, Outcome& telling) {
    if (const std::string doubled = two_of_one_day(pupil.reads);
        !doubled.empty() && !pupil.code.empty()) {
        telling.err += doubled;
        telling.why = "two lessons of one day";
        pupil.faulty.push_back(place_of(*pupil.reads.back()));
    }
    for (auto& one : gather(workshop, std::move(pupil.reads), type)) {
        const bool nobodys = pupil.code.empty();
        const bool sound = one.sound() && passes(one.read->findings, strict);
        if (nobodys && sound) {
            telling.why = one.read->record.string() +
                          ": error: no report holds this lesson, for it names no code";
            telling.err +=
                telling.why + "\n  hint: student: {name: Ruth, code: RU-04, hand: right}\n";
        }
        telling.add(*one.read, sound);
        if (sound && !nobodys)
            pupil.lessons.push_back(std::move(one));
        else
            pupil.faulty.push_back(place_of(*one.read));
    }
    pupil.reads.clear();
}

void follow(Pupil& pupil, const record::Term& term, const words::Catalogue& wording) {
    std::vector<const page::Story*> stories;
    for (const Gathered& lesson : pupil.lessons)
        stories.push_back(&lesson.sheet->story());
    pupil.course = report::follow(stories, pupil.lessons.back().read->library);
    const record::Lesson& latest = pupil.course->latest();
    pupil.words = std::make_unique<words::Speaker>(wording, voice_of(latest));
    pupil.termly = {&term, pupil.entry, &*pupil.course,
                    latest.coach.contact.empty() ? term.coach.contact : latest.coach.contact,
                    std::nullopt};
    pupil.receiver.first_name = latest.student.name;
    const auto& academy = pupil.lessons.back().read->academy;
    const people::Person* person = academy ? academy->person(pupil.code) : nullptr;
    if (!person) return;
    pupil.termly.kept_until = due_after(*academy, *person, latest.date.value);
    if (!person->first_name.empty()) pupil.receiver.first_name = person->first_name;
    if (const auto* to = people::addressee(*person)) pupil.receiver.address = to->address.value;
}

} // namespace cli
