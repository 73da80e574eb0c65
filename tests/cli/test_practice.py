"""Home practice from outside: proposals, the loop over several lessons, the calendar, the drill book."""
import datetime
import shutil
import sys
import unittest

from program import ROOT, InFolder, run, tool

sys.path.append("/usr/lib/python3/dist-packages")  # where Debian keeps it, whichever Python runs this
try:
    import icalendar
except ImportError:
    icalendar = None

RECORD = """student: {{name: Ada, code: AD-01, hand: {hand}}}
date: {date}
saw: The face pointed right of target.
changed: The handle now lies in the fingers.
{more}
"""


def face_table(cold, before, after):
    rows = ["shot,block,face"]
    for block, middle in (("cold", cold), ("before", before), ("after", after)):
        for i in range(10 if middle is not None else 0):
            rows.append(f"{len(rows)},{block},{middle + 0.3 * (i - 4.5):.2f}")
    return "\n".join(rows) + "\n"


class Practice(InFolder):
    def lesson(self, date, more="", table=None, hand="right"):
        if table:
            self.record(f"{date}/shots.csv", table)
            more += ("\nclub: seven iron\naim: {measure: face, want: 2 L to 2 R}\n"
                     "shots: {file: shots.csv, sign: right is positive}")
        return self.record(f"{date}/lesson.yaml", RECORD.format(date=date, more=more, hand=hand))

    def text(self, record, *options):
        target = self.folder / "sheet.pdf"
        self.expect(run("lesson", record, "-o", target, *options), 0)
        return " ".join(tool("pdftotext", "-layout", target, "-").split())

    def told(self, record):
        import csv
        text = self.expect(run("numbers", record, "--as", "csv"), 0).stdout.decode("utf-8")
        return {(r["what"], r["block"]): r["text"] or r["value"] for r in csv.DictReader(text.splitlines())}


class Proposal(Practice):
    def test_without_drills_the_sheet_bears_the_programs_and_says_so(self):
        record = self.lesson("2026-05-14", table=face_table(None, 10, 6))
        text = self.text(record)
        self.assertIn("Edge to line", text)
        self.assertIn("face before path", text)
        self.assertIn("Suggested by the program", text)
        self.expect(run("check", record), 0, "note: the rules take F1 'Edge to line' and F3 'Cushion press'",
                    "note: next in line: ")
        self.assertNotIn("note", self.expect(run("lesson", record, "-o", self.folder / "x.pdf"), 0).stderr)

    def test_the_coachs_drills_win(self):
        record = self.lesson("2026-05-14", "drills: [S5]", face_table(None, 10, 6))
        text = self.text(record)
        self.assertIn("Feet together", text)
        self.assertNotIn("Suggested by the program", text)
        self.expect(run("check", record), 0, "note: the rules would take F1")

    def test_pain_proposes_nothing_and_is_printed_nowhere(self):
        record = self.lesson("2026-05-14", "pain: yes", face_table(None, 10, 6))
        text = self.text(record)
        self.assertNotIn("Edge to line", text)
        without = self.text(self.lesson("2026-05-15", "pain: no\ndrills: [S5]", face_table(None, 10, 6)))
        hurt = self.text(self.lesson("2026-05-15", "pain: yes\ndrills: [S5]", face_table(None, 10, 6)))
        self.assertEqual(without, hurt)
        self.expect(run("check", record), 0, "proposes no drill")

    def test_pain_takes_no_story(self):
        self.expect(run("check", self.lesson("2026-05-14", 'pain: "left wrist"')), 1,
                    "'pain' takes only yes or no", "health is not kept here")


class Loop(Practice):
    def test_two_lines_bring_back_what_was_planned_done_and_kept(self):
        self.lesson("2026-05-14", "drills: [H1]\nplan: {when: the kettle goes on, where: in the kitchen}",
                    face_table(None, 10, 1))
        second = self.lesson("2026-05-28", "last lesson: ../2026-05-14/lesson.yaml\n"
                             "returned: {days done: 9, right first: 9 of 10}", face_table(1.5, 6, 1))
        text = self.text(second)
        for words in ("You planned: the kettle goes on, in the kitchen.", "Done on 9 days.", "Pass mark met.",
                      "Kept.", "You passed it and kept it. Now stage B Blend.", "B Blend: you are here"):
            self.assertIn(words, text)
        told = self.told(second)
        self.assertEqual(told["practice: step", ""], "promote")
        self.assertEqual(told["practice: next stage", ""], "blend")
        self.assertEqual(told["face: kept", "cold"], "kept")
        # by hand: from 10 to 1, and 1.5 when cold
        self.assertAlmostEqual(float(told["face: part kept", "cold"]), (10 - 1.5) / (10 - 1), places=5)
        self.expect(run("check", second), 0, "by the repeat rule: Passed and kept")

    def test_a_folder_is_enough_and_the_row_goes_back_further(self):
        self.lesson("2026-05-14", "drills: [H1]", face_table(None, 10, 1))
        self.lesson("2026-05-28", "last lesson: ../2026-05-14\nreturned: {days done: 9, right first: 9 of 10}",
                    face_table(1.5, 6, 1))
        third = self.lesson("2026-06-11", "last lesson: ../2026-05-28\nreturned: {days done: 9, right first: 9 of 10}",
                            face_table(1.2, 5, 1))
        self.assertEqual(self.told(third)["practice: next stage", ""], "play")

    def test_what_is_wrong_with_the_link_is_told_on_its_line(self):
        self.expect(run("check", self.lesson("2026-05-28", "last lesson: ../gone")), 1,
                    "lesson.yaml:5:14", "the last lesson '../gone' cannot be read")
        self.lesson("2026-05-14")
        self.expect(run("check", self.lesson("2026-05-10", "last lesson: ../2026-05-14")), 1,
                    "not before this one of 2026-05-10")
        other = self.record("other/lesson.yaml", RECORD.format(date="2026-05-01", more="", hand="right")
                            .replace("AD-01", "BO-02"))
        self.expect(run("check", self.lesson("2026-05-28", "last lesson: ../other")), 1,
                    "is a lesson of 'BO-02', this one is of 'AD-01'")
        other.write_text("student: {name: Ada, code: AD-01}\ndate: soon\n", encoding="utf-8")
        self.expect(run("check", self.lesson("2026-05-28", "last lesson: ../other")), 1,
                    "faults of its own", "lessonleaf check")
        self.expect(run("check", self.lesson("2026-05-28", "last: ../other")), 1, "call it 'last lesson'")

    def test_a_record_that_names_itself_ends(self):
        self.expect(run("check", self.lesson("2026-05-28", "last lesson: lesson.yaml")), 1, "not before this one")

    def test_the_second_log_is_printed_when_asked_for(self):
        plain = self.text(self.lesson("2026-05-14", "drills: [H1]"))
        more = self.text(self.lesson("2026-05-14", "drills: [H1]\nlog: 28 days"))
        self.assertNotIn("days 15 to 28", plain)
        self.assertIn("days 15 to 28", more)
        self.expect(run("check", self.lesson("2026-05-14", "log: 21 days")), 1, "must be 14 days or 28 days")


@unittest.skipUnless(icalendar, "needs python3-icalendar")
class Calendar(Practice):
    """Read by python3-icalendar, which is none of ours."""

    def calendar(self, more, hand="right"):
        record = self.lesson("2026-05-14", more, hand=hand)
        target = self.folder / "sheet.pdf"
        self.expect(run("lesson", record, "-o", target, "--calendar"), 0)
        data = (self.folder / "sheet.ics").read_bytes()
        return data, icalendar.Calendar.from_ical(data)

    def test_thirteen_days_of_practice_then_the_cold_test_and_the_lesson(self):
        data, calendar = self.calendar("drills: [H1]\nnext: 2026-05-28")
        events = calendar.walk("VEVENT")
        self.assertEqual(len(events), 3)
        practice, cold, lesson = events
        self.assertEqual(practice["DTSTART"].dt, datetime.date(2026, 5, 15))
        self.assertEqual(practice["RRULE"]["COUNT"], [13])  # the last one on 27 May
        self.assertIn("Lay and close", practice["SUMMARY"])
        self.assertIn("Stop on pain", practice["DESCRIPTION"])
        self.assertEqual(cold["DTSTART"].dt, datetime.date(2026, 5, 28))
        self.assertEqual(len({str(e["UID"]) for e in events}), 3)
        for event in events:
            self.assertEqual(event["DTSTAMP"].dt.date(), datetime.date(2026, 5, 14))
        self.assertNotIn(b"Ada", data)
        self.assertEqual(data, self.calendar("drills: [H1]\nnext: 2026-05-28")[0])

    def test_texts_come_out_as_they_went_in(self):
        cue = "Öffne, schließe; halte \\\\ – und zähle bis fünf"
        record_cue = cue.replace("\\\\", "\\\\")
        _, calendar = self.calendar(f'drills: [{{id: H1, cue: "{record_cue}", dose: "ten; slowly, twice"}}]\nlanguage: de')
        text = str(calendar.walk("VEVENT")[0]["DESCRIPTION"])
        self.assertIn(cue.replace("\\\\", "\\"), text)
        self.assertIn("ten; slowly, twice", text)
        self.assertIn("\n", text)

    def test_a_junior_practises_every_second_day(self):
        record = self.lesson("2026-05-14", "drills: [H1]\nnext: 2026-05-28")
        record.write_text(record.read_text(encoding="utf-8").replace("hand: right", "hand: right, age: junior"),
                          encoding="utf-8")
        self.expect(run("lesson", record, "-o", self.folder / "sheet.pdf", "--calendar"), 0)
        event = icalendar.Calendar.from_ical((self.folder / "sheet.ics").read_bytes()).walk("VEVENT")[0]
        self.assertEqual(event["RRULE"]["INTERVAL"], [2])
        last = event["DTSTART"].dt + datetime.timedelta(days=2 * (event["RRULE"]["COUNT"][0] - 1))
        self.assertEqual(last, datetime.date(2026, 5, 27))

    def test_there_is_no_calendar_beside_standard_output(self):
        self.expect(run("lesson", self.lesson("2026-05-14"), "-o", "-", "--calendar"), 2, "--calendar")


class Book(InFolder):
    def test_thirty_drills_one_a_page_for_each_hand(self):
        seen = {}
        for hand in ("right", "left"):
            target = self.folder / f"{hand}.pdf"
            self.assertEqual(self.expect(run("drills", "-o", target, "--hand", hand), 0).stderr, "")
            pages = tool("pdftotext", "-layout", target, "-").split("\f")[:-1]
            self.assertEqual(len(pages), 32)
            self.assertIn("Lay and close", pages[2])
            self.assertIn("Cold ten", pages[31])
            seen[hand] = "\n".join(pages)
        self.assertIn("left one", seen["right"])
        self.assertNotIn("right one", seen["right"])
        self.assertIn("right one", seen["left"])
        self.assertNotIn("left one", seen["left"])

    def test_the_same_book_twice_is_the_same_bytes(self):
        for name in ("a.pdf", "b.pdf"):
            self.expect(run("drills", "-o", self.folder / name), 0)
        self.assertEqual((self.folder / "a.pdf").read_bytes(), (self.folder / "b.pdf").read_bytes())

    def test_an_own_drill_joins_and_may_not_drop_a_caution(self):
        own = self.folder / "drills.yaml"
        text = (ROOT / "templates/drills/en/speed.yaml").read_text(encoding="utf-8")
        own.write_text(text.replace("id: V1", "id: OWN1"), encoding="utf-8")
        self.expect(run("drills", "-o", self.folder / "a.pdf", "--own", own), 0)
        self.assertEqual(tool("pdfinfo", self.folder / "a.pdf").count("Pages:           34"), 1)
        own.write_text("\n".join(line for line in text.splitlines() if "caution:" not in line), encoding="utf-8")
        self.expect(run("drills", "-o", self.folder / "b.pdf", "--own", own), 1, "'V1' drops the caution")
        self.assertNotIn("b.pdf", self.files())


class Cautions(InFolder):
    """Templates may reword a caution, never drop it."""

    def templates(self, name, change):
        target = self.folder / "my" / name
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(ROOT / "templates" / name, target)
        target.write_text(change(target.read_text(encoding="utf-8")), encoding="utf-8")
        return self.folder / "my"

    def test_a_wording_without_a_caution_is_an_error(self):
        folder = self.templates("words/en-GB/cautions.txt", lambda text: "\n".join(
            line for line in text.splitlines() if not line.startswith("caution.stop =")))
        self.expect(run("check", self.record(), "--templates", folder), 1, "drop the caution 'caution.stop'")

    def test_a_caution_in_other_words_is_fine(self):
        folder = self.templates("words/en-GB/cautions.txt", lambda text: text.replace(
            "caution.slow = A new hold: build up slowly, with few balls.", "caution.slow = Slowly does it."))
        self.expect(run("check", self.record(), "--templates", folder), 0)

    def test_a_drill_that_lost_its_caution_is_an_error(self):
        folder = self.templates("drills/en/speed.yaml", lambda text: "\n".join(
            line for line in text.splitlines() if "caution:" not in line))
        self.expect(run("check", self.record(), "--templates", folder), 1, "'V1' has lost its caution")


if __name__ == "__main__":
    unittest.main()
