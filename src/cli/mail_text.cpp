#include "cli/mail_text.hpp"

#include "people/address.hpp"
#include "record/read_date.hpp"
#include "words/date.hpp"

namespace cli {

namespace {

void warn_of_shared_address(Read& read, const people::Person& person) {
    const people::Addressee& to = *people::addressee(person);
    for (const people::Person& other : read.academy->people->list) {
        const people::Addressee* theirs = people::addressee(other);
        if (&other == &person || !theirs || theirs->address.value != to.address.value) continue;
        if (theirs->name == to.name) continue; // one guardian of two juniors
        read.findings.warning(to.address.span,
                              "the address of " + person.code.value + " is also that of " +
                                  other.code.value,
                              "right in a family, wrong for anybody else: look once more");
        return;
    }
}

/// "tom@low-meadow.example" when the contact line is that and nothing else, or has it in it.
std::string address_in(const std::string& contact) {
    std::size_t start = 0;
    while (start < contact.size()) {
        const std::size_t end = std::min(contact.find_first_of(" ,;·", start), contact.size());
        const std::string word = contact.substr(start, end - start);
        if (word.find('@') != std::string::npos && people::fault_of_address(word).empty())
            return word;
        start = end + 1;
    }
    return {};
}

/// "Llewellyn, Huw" as one says it: "Huw Llewellyn".
std::string in_speech(const std::string& name) {
    const std::size_t comma = name.find(", ");
    if (comma == std::string::npos || name.find(',', comma + 1) != std::string::npos) return name;
    return name.substr(comma + 2) + " " + name.substr(0, comma);
}

/// Paragraphs with an empty line between them.
class Letter {
  public:
    explicit Letter(const words::Speaker& speaker)
        : speaker_(speaker) {}
    void line(const char* key, const words::Holes& holes = {}) {
        text_ += speaker_.say(key, holes) + "\n";
    }
    void words(const std::string& line) {
        if (!line.empty()) text_ += line + "\n";
    }
    void gap() { text_ += "\n"; }
    std::string text() const { return text_; }

  private:
    const words::Speaker& speaker_;
    std::string text_;
};

std::string subject_of(const record::Lesson& lesson, const words::Speaker& say, bool guardian) {
    const std::string date = words::date_long(lesson.date.value, say);
    const std::string subject =
        lesson.number ? say.say("mail.subject", {{"n", *lesson.number}, {"date", date}})
                      : say.say("mail.subject-plain", {{"date", date}});
    if (!guardian) return subject;
    return say.say("mail.subject-guardian",
                   {{"name", lesson.printed_name()}, {"subject", subject}});
}

} // namespace

const people::Person* addressed(Read& read) {
    const record::Student& student = read.lesson.student;
    const auto nobody = [&](diag::Span span, std::string what, std::string hint) {
        read.findings.error(span, std::move(what), std::move(hint));
        return nullptr;
    };
    const diag::Span whole = read.sources.front().whole();
    if (!read.academy || !read.academy->people)
        return nobody(whole, "no people.yaml says where this sheet may go",
                      "write one in a folder above the record, with code, first name, hand and "
                      "'send to' or 'guardian'");
    const people::Person* person = read.academy->person(student.code);
    if (!person)
        return nobody(whole, "people.yaml knows nobody of the code " + diag::quote(student.code),
                      "a sheet goes only to an address that stands with its code there");
    if (!person->sound()) return nullptr; // told where it is read
    if (people::addressee(*person)) {
        warn_of_shared_address(read, *person);
        return person;
    }
    if (person->age == record::Age::junior)
        return nobody(person->guardian_span,
                      "the guardian of " + person->code.value + " has no e-mail address",
                      "add it there, or hand the sheet over on paper");
    return nobody(
        person->span, person->code.value + " has no e-mail address",
        "add a line such as 'send to: ruth@post.example', or hand the sheet over on paper");
}

output::Mail mail_of(const people::Person& person, const Sheet& sheet, const std::string& file_name,
                     std::size_t pages, const std::string& pdf) {
    const words::Speaker& say = sheet.easel().words;
    const page::Story& story = sheet.story();
    const record::Lesson& lesson = story.lesson;
    const people::Addressee& to = *people::addressee(person);
    const bool guardian = person.age == record::Age::junior;
    const std::string name = lesson.printed_name();
    const std::string date = words::date_long(lesson.date.value, say);
    const std::string greeted = guardian ? in_speech(to.name) : person.first_name;

    Letter letter(say);
    if (greeted.empty())
        letter.line("mail.greeting-plain");
    else
        letter.line("mail.greeting", {{"name", greeted}});
    letter.gap();
    letter.line(guardian ? "mail.body-guardian" : "mail.body",
                guardian ? words::Holes{{"name", name}, {"date", date}}
                         : words::Holes{{"date", date}});
    letter.line("mail.file", {{"file", file_name}, {"n", pages}});
    letter.gap();
    if (!lesson.changed.empty()) letter.line("mail.changed", {{"words", lesson.changed}});
    if (!story.drills.empty())
        letter.line("mail.drill", {{"name", story.drills.front().drill.name}});
    if (lesson.next) letter.line("mail.next", {{"date", words::date_long(*lesson.next, say)}});
    letter.gap();
    letter.line("mail.print");
    if (guardian) letter.line("mail.ask");
    if (guardian)
        letter.line("mail.questions-guardian", {{"name", name}});
    else
        letter.line("mail.questions");
    letter.gap();
    letter.line("mail.wrong");
    letter.gap();
    letter.line("mail.closing");
    letter.words(lesson.coach.name);
    letter.words(lesson.coach.academy);
    letter.words(lesson.coach.contact);

    output::Mail mail;
    mail.from = {lesson.coach.name, address_in(lesson.coach.contact)};
    mail.to = {to.name, to.address.value};
    mail.subject = subject_of(lesson, say, guardian);
    mail.date = words::date_iso(lesson.date.value);
    mail.language = lesson.language;
    mail.text = letter.text();
    mail.file_name = file_name;
    mail.pdf = pdf;
    return mail;
}

} // namespace cli
