// What came back and what is set now, as rows.
#include "page/drill_loop.hpp"
#include "report/numbers_rows.hpp"

namespace report {

namespace {

void add_text(Rows& rows, const std::string& what, std::string words, const char* origin) {
    if (!words.empty()) rows.plain(what, "", 0, origin).text = std::move(words);
}

void add_answer(Rows& rows, const std::string& what, const std::optional<bool>& answer) {
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

/// `practice`: what the rows of this drill begin with.
void add_back(Rows& rows, const page::BackDrill& drill, const std::string& practice) {
    if (drill.set) {
        add_text(rows, practice + ": drill", drill.set->drill, "record");
        add_text(rows, practice + ": stage", word_of(drill.set->stage), "record");
    }
    if (drill.outcome.days_done)
        rows.plain(practice + ": days done", "", *drill.outcome.days_done, "counted");
    add_tally(rows, practice + " log", drill.back.right);
    add_tally(rows, practice + " calls", drill.back.called);
    add_tally(rows, practice + " cold boxes", drill.back.cold);
    add_answer(rows, practice + ": passed", drill.outcome.passed);
    add_answer(rows, practice + ": kept", drill.outcome.kept);
    if (!drill.next) return;
    const std::string key = page::step_key(drill.next->step);
    add_text(rows, practice + ": step", key.substr(key.find('.') + 1), "printed rule");
    add_text(rows, practice + ": next drill", drill.next->homework.drill, "printed rule");
    add_text(rows, practice + ": next stage", word_of(drill.next->homework.stage), "printed rule");
}

void add_last(Rows& rows, const page::LastTime& last) {
    add_text(rows, "practice: planned", last.planned, "record");
    for (std::size_t i = 0; i < last.drills.size(); ++i)
        add_back(rows, last.drills[i], i == 0 ? "practice" : "practice 2");
}

void add_mark(Rows& rows, const std::string& id, const page::GroundMark& mark) {
    rows.with_unit(id + ": width of the mark", "", mark.width, "m", "from measured starts");
    rows.with_unit(id + ": distance of the mark", "", mark.distance, "m", "chosen");
    rows.plain(id + ": passed", "before", static_cast<double>(mark.before), "counted");
    rows.plain(id + ": passed", "after", static_cast<double>(mark.after), "counted");
}

} // namespace

void add_practice(Rows& rows, const page::Story& story) {
    if (story.last) add_last(rows, *story.last);
    for (const auto& chosen : story.drills) {
        add_text(rows, "drill", chosen.drill.id, chosen.proposed ? "proposed" : "coach");
        if (chosen.mark) add_mark(rows, chosen.drill.id, *chosen.mark);
    }
}

} // namespace report
