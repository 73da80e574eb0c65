// What came back and what is set now, as rows.
#include "page/drill_loop.hpp"
#include "report/numbers_rows.hpp"

namespace report {

namespace {

void add_text(Rows& rows, const char* what, std::string words, const char* origin) {
    if (!words.empty()) rows.plain(what, "", 0, origin).text = std::move(words);
}

void add_answer(Rows& rows, const char* what, const std::optional<bool>& answer) {
    if (answer) add_text(rows, what, *answer ? "yes" : "no", "printed rule");
}

void add_tally(Rows& rows, const std::string& what, const std::optional<record::Tally>& tally) {
    if (!tally) return;
    rows.plain(what + ": right", "", tally->right, "counted");
    rows.plain(what + ": of", "", tally->of, "counted");
}

std::string word_of(unit::Stage stage) {
    return std::string(unit::stage_words[static_cast<std::size_t>(stage)]);
}

void add_last(Rows& rows, const page::LastTime& last,
              const std::optional<record::Returned>& returned) {
    add_text(rows, "practice: planned", last.planned, "record");
    if (last.set) {
        add_text(rows, "practice: drill", last.set->drill, "record");
        add_text(rows, "practice: stage", word_of(last.set->stage), "record");
    }
    if (last.outcome.days_done)
        rows.plain("practice: days done", "", *last.outcome.days_done, "counted");
    if (returned) {
        add_tally(rows, "practice log", returned->right);
        add_tally(rows, "practice calls", returned->called);
        add_tally(rows, "practice cold boxes", returned->cold);
    }
    add_answer(rows, "practice: passed", last.outcome.passed);
    add_answer(rows, "practice: kept", last.outcome.kept);
    if (!last.next) return;
    const std::string key = page::step_key(last.next->step);
    add_text(rows, "practice: step", key.substr(key.find('.') + 1), "printed rule");
    add_text(rows, "practice: next drill", last.next->homework.drill, "printed rule");
    add_text(rows, "practice: next stage", word_of(last.next->homework.stage), "printed rule");
}

void add_mark(Rows& rows, const std::string& id, const page::GroundMark& mark) {
    rows.with_unit(id + ": width of the mark", "", mark.width, "m", "from measured starts");
    rows.with_unit(id + ": distance of the mark", "", mark.distance, "m", "chosen");
    rows.plain(id + ": passed", "before", static_cast<double>(mark.before), "counted");
    rows.plain(id + ": passed", "after", static_cast<double>(mark.after), "counted");
}

} // namespace

void add_practice(Rows& rows, const page::Story& story) {
    if (story.last) add_last(rows, *story.last, story.lesson.returned);
    for (const auto& chosen : story.drills) {
        add_text(rows, "drill", chosen.drill.id, chosen.proposed ? "proposed" : "coach");
        if (chosen.mark) add_mark(rows, chosen.drill.id, *chosen.mark);
    }
}

} // namespace report
