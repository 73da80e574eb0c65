"""A term of an invented group: what is printed, what is told, and what a fault leaves alone."""
import csv
import hashlib
import re
import shutil
import unittest
from datetime import date
from pathlib import Path
import tempfile

import course
from program import ROOT, InFolder, run, tool

TERM = """term: Spring term 2026
from: 2026-03-01
to: 2026-06-30
coach: {name: Ines Marsh, contact: "ines@marsh-lessons.example"}
lessons: lessons
group page: yes
students:
  - code: PI-02
    comment: "Piet asks good questions and waits for the answer."
    can: ["lay the handle in my fingers", "say what the ball did", "stop when I am tired"]
    next: "Start the ball at the flag."
    ladder:
      - {skill: Handle in the fingers, coach: on my own, self: practising}
      - {skill: Ball position, coach: practising, self: practising}
    words: "I like the lid."
  - code: MA-11
    comment: "A calm term."
    can: ["find two knuckles without looking twice"]
    ladder: [{skill: Handle in the fingers, coach: holds up}]
  - LO-05
"""


def students(folder):
    course.course(folder, lessons=4)
    course.course(folder, lessons=2, name="Piet", code="PI-02", age="junior")
    course.course(folder, lessons=3, name="Lou", code="LO-05", hand="left")


class Term(InFolder):
    @classmethod
    def setUpClass(cls):
        holder = tempfile.TemporaryDirectory(prefix="lessonleaf-")
        cls.addClassCleanup(holder.cleanup)
        cls.root = Path(holder.name)
        students(cls.root / "lessons")
        (cls.root / "term.yaml").write_text(TERM, encoding="utf-8")
        cls.done = run("term", cls.root / "term.yaml", "-o", cls.root / "out")
        cls.out = cls.root / "out"

    def text(self, name):
        return tool("pdftotext", "-layout", self.out / name, "-")

    def pages(self, name):
        return int(re.search(r"Pages:\s+(\d+)", tool("pdfinfo", self.out / name)).group(1))

    def test_a_fault_of_a_shared_file_is_told_once(self):
        with tempfile.TemporaryDirectory(prefix="lessonleaf-") as place:
            shutil.copytree(self.root / "lessons", Path(place) / "lessons")
            (Path(place) / "lessons" / "drills.yaml").write_text("- {id: OWN1, family: hold}\n")
            (Path(place) / "term.yaml").write_text(TERM, encoding="utf-8")
            done = self.expect(run("term", Path(place) / "term.yaml", "-o", Path(place) / "out"), 1)
            told = re.findall(r"drills\.yaml:1:3: error: .*", done.stderr)
            self.assertGreater(len(told), 0)
            self.assertEqual(len(told), len(set(told)), done.stderr)

    def test_one_file_a_student_and_the_coachs_own(self):
        self.assertEqual(self.done.returncode, 0, self.done.stderr)
        names = sorted(p.name for p in self.out.iterdir())
        ending = "-Spring-term-2026"
        self.assertEqual(names, sorted([f"PI-02{ending}.pdf", f"MA-11{ending}.pdf", f"LO-05{ending}.pdf",
                                        f"coach-only{ending}.pdf", f"for-the-printer{ending}.pdf",
                                        f"printed{ending}.csv", f"send{ending}.txt"]))
        self.assertIn("fewer than five students", self.done.stderr)
        for name in names:
            if name.endswith(".pdf"):
                self.assertEqual(self.pages(name) % 2, 0, name)
                self.assertIn("No syntax or stream encoding errors", tool("qpdf", "--check", self.out / name))

    def test_the_printers_pile_is_in_register_order(self):
        rows = list(csv.DictReader((self.out / "printed-Spring-term-2026.csv").open(encoding="utf-8", newline="")))
        self.assertEqual([r["code"] for r in rows if r["code"]], ["PI-02", "MA-11", "LO-05"])
        pile = "for-the-printer-Spring-term-2026.pdf"
        for row in rows:
            data = (self.out / row["file"]).read_bytes()
            self.assertEqual(hashlib.sha256(data).hexdigest(), row["sha256"])
            self.assertEqual(self.pages(row["file"]), int(row["pages"]))
            if not row["code"]:
                continue
            first = int(row["first page for the printer"])
            self.assertEqual(first % 2, 1)
            alone = tool("pdftotext", "-f", 1, "-l", 1, self.out / row["file"], "-")
            self.assertEqual(tool("pdftotext", "-f", first, "-l", first, self.out / pile, "-"), alone)
        self.assertIn("at 100 %", tool("pdftotext", "-f", 1, "-l", 1, self.out / pile, "-"))

    def test_the_send_list_has_a_line_each_with_its_check(self):
        lines = (self.out / "send-Spring-term-2026.txt").read_text(encoding="utf-8").splitlines()
        for code, name in (("PI-02", "Piet"), ("MA-11", "Mara"), ("LO-05", "Lou")):
            digits = hashlib.sha256((self.out / f"{code}-Spring-term-2026.pdf").read_bytes()).hexdigest()[:8]
            self.assertTrue(any(line.startswith(f"[ ] {code}  {name}") and digits in line for line in lines), lines)

    def test_the_overview_is_for_the_coach_on_every_page_and_ranks_nobody(self):
        name = "coach-only-Spring-term-2026.pdf"
        text = self.text(name)
        self.assertEqual(text.count("For the coach only."), self.pages(name))
        order = [text.index(who) for who in ("Lou · LO-05", "Mara · MA-11", "Piet · PI-02")]
        self.assertEqual(order, sorted(order))
        self.assertIn("“I can” lines: one of three written", text)

    def test_a_student_reads_of_nobody_else(self):
        for code, others in (("PI-02", ("Mara", "Lou")), ("MA-11", ("Piet", "Lou")), ("LO-05", ("Piet", "Mara"))):
            text = self.text(f"{code}-Spring-term-2026.pdf")
            for other in others:
                self.assertNotIn(other, text)
            self.assertNotIn("For the coach only", text)

    def test_a_junior_has_the_note_for_the_family_and_no_carry(self):
        text = self.text("PI-02-Spring-term-2026.pdf")
        for said in ("What I can do now", "I can lay the handle in my fingers", "Too early to tell", "show me",
                     "What we hold", "I like the lid.", "You grow: clubs"):
            self.assertIn(said, text)
        for kept_back in ("Carry", "Club speed"):
            self.assertNotIn(kept_back, text)
        self.assertNotIn("How can I help?", self.text("MA-11-Spring-term-2026.pdf"))

    def test_three_cold_tests_are_spoken_of_and_the_hand_is_the_students_own(self):
        text = self.text("MA-11-Spring-term-2026.pdf")
        self.assertIn("3 cold tests so far", text)
        self.assertNotIn("Too early", text)
        self.assertNotRegex(self.text("LO-05-Spring-term-2026.pdf"), r"right of target \(open\)")

    def test_the_same_term_gives_the_same_bytes(self):
        run("term", self.root / "term.yaml", "-o", self.folder / "again")
        for path in self.out.iterdir():
            self.assertEqual((self.folder / "again" / path.name).read_bytes(), path.read_bytes(), path.name)


class FaultsInATerm(InFolder):
    def setUp(self):
        super().setUp()
        course.course(self.folder / "lessons", lessons=1)
        course.course(self.folder / "lessons", lessons=1, name="Piet", code="PI-02", age="junior")
        (self.folder / "term.yaml").write_text(TERM, encoding="utf-8")

    def term(self, code, *said):
        return self.expect(run("term", self.folder / "term.yaml", "-o", self.folder / "out"), code, *said)

    def overview(self):
        return re.sub(r"\s+", " ", tool("pdftotext", "-layout", self.folder / "out/coach-only-Spring-term-2026.pdf", "-"))

    def printed(self):
        return sorted(p.name.split("-Spring")[0] for p in (self.folder / "out").glob("*-0*.pdf") )

    def test_a_faulty_record_harms_no_other_student(self):
        record = self.folder / "lessons/PI-02/2026-03-05/lesson.yaml"
        record.write_text(record.read_text().replace("saw:", "swa:"))
        self.term(1, "did you mean 'saw'?")
        names = [p.name for p in (self.folder / "out").iterdir()]
        self.assertIn("MA-11-Spring-term-2026.pdf", names)
        self.assertNotIn("PI-02-Spring-term-2026.pdf", names)
        self.assertIn("has faults; nothing was printed for this student", self.overview())

    def test_the_coach_reads_the_drill_of_a_german_student_in_english(self):
        record = self.folder / "lessons/PI-02/2026-03-05/lesson.yaml"
        record.write_text(record.read_text() + "language: de\n")
        self.term(0)
        self.assertEqual(self.overview().count("Lay and close"), 2)

    def test_a_student_without_lessons_is_listed_as_missing(self):
        self.term(0)
        self.assertIn("LO-05 no lesson in this term", self.overview())

    def test_a_student_who_is_not_in_the_register_is_listed_and_not_printed(self):
        course.lesson(self.folder / "lessons", 1, date(2026, 3, 5), name="Ida", code="ID-03")
        self.term(0)
        self.assertIn("ID-03 has lessons in this term, but is not in the register", self.overview())
        self.assertNotIn("ID-03-Spring-term-2026.pdf", [p.name for p in (self.folder / "out").iterdir()])

    def test_lessons_of_another_term_stay_out(self):
        course.lesson(self.folder / "lessons", 9, date(2026, 9, 1))
        self.term(0)
        text = tool("pdftotext", self.folder / "out/MA-11-Spring-term-2026.pdf", "-")
        self.assertNotIn("September", text.replace("2026-09", ""))

    def test_a_faulty_term_file_tells_every_fault_and_writes_nothing(self):
        (self.folder / "term.yaml").write_text(TERM.replace("to: 2026-06-30", "to: 2026-02-30").replace(
            "coach: holds", "coach: holds").replace("on my own, self", "alone, self").replace("group page", "group pag"))
        self.term(1, "group page", "on my own", "2026-02-30")
        self.assertFalse((self.folder / "out").exists())

    def test_a_term_file_that_is_not_there(self):
        self.expect(run("term", self.folder / "gone.yaml", "-o", self.folder / "out"), 3, "cannot be read")

    def test_five_students_get_a_group_page_that_names_nobody(self):
        text = TERM
        for n, name in enumerate(("Ada", "Ben", "Cleo", "Dov", "Eva")):
            course.lesson(self.folder / "lessons", 1, date(2026, 3, 5), name=name, code=f"XX-{n}")
            text += f"  - XX-{n}\n"
        (self.folder / "term.yaml").write_text(text, encoding="utf-8")
        self.term(0)
        group = tool("pdftotext", self.folder / "out/group-Spring-term-2026.pdf", "-")
        self.assertIn("Week 1", group)
        for name in ("Ada", "Ben", "Cleo", "Mara", "Piet", "XX-", "MA-11"):
            self.assertNotIn(name, group)


class EveryPaper(InFolder):
    """Binders, terms and drill books of the invented academy pass the program's own check, whatever they are printed on."""

    def academy(self, language, paper, large):
        place = self.folder / f"{language}-{paper}-{large}"
        shutil.copytree(ROOT / "examples/academy", place)
        for path in [place / "house.yaml", place / "people.yaml", place / "spring-term.yaml", *place.rglob("lesson.yaml")]:
            text = re.sub(r"^( *)(language|paper|large print): .*\n", "", path.read_text(encoding="utf-8"), flags=re.M)
            if path.name == "house.yaml":
                text += f"language: {language}\npaper: {paper}\nlarge print: {large}\n"
            if path.name == "spring-term.yaml":
                text = text.replace("lessons:", f"language: {language}\npaper: {paper}\nlessons:", 1)
            path.write_text(text, encoding="utf-8")
        return place

    def test_long_languages_on_small_paper_and_in_large_print(self):
        for language, paper, large in (("de", "A5", "no"), ("es", "A5", "no"), ("fr", "Letter", "no"), ("fr", "A4", "yes"),
                                       ("de", "Letter", "yes")):
            place = self.academy(language, paper, large)
            with self.subTest(language=language, paper=paper, large=large):
                out = self.folder / "out"
                self.assertEqual(run("binder", place, "--student", "AD-01", "--student", "HA-08", "-o", f"{out}/", "--strict").stderr, "")
                done = run("term", place / "spring-term.yaml", "-o", out, "--strict")
                self.assertEqual((done.returncode, done.stderr.count("\n")), (0, 1), done.stderr)  # the summary

    def test_drill_books(self):
        book = self.folder / "drills.pdf"
        for words in (("--language", "fr", "--paper", "Letter"), ("--language", "fr", "--large"), ("--language", "de", "--paper", "A5")):
            self.assertEqual(self.expect(run("drills", "-o", book, "--strict", *words), 0).stderr, "")
        self.assertIn("x 595.2", tool("pdfinfo", book))  # A5, ISO 216: 148 by 210 mm
        self.expect(run("drills", "-o", book, "--paper", "A5", "--large"), 2, "large print has no room on A5")


class TermsAgain(InFolder):
    """What lies there already, and several terms in one run."""

    def setUp(self):
        super().setUp()
        students(self.folder / "lessons")
        (self.folder / "term.yaml").write_text(TERM, encoding="utf-8")
        self.out = self.folder / "out"

    def term(self, code, *said, files=("term.yaml",), words=()):
        return self.expect(run("term", *files, "-o", "out", *words, folder=self.folder), code, *said)

    def stamps(self):
        return {path.name: path.stat().st_mtime_ns for path in self.out.iterdir()}

    def changed(self, before):
        after = self.stamps()
        return sorted(name.split("-Spring")[0] for name in after if after[name] != before.get(name))

    def test_nothing_is_touched_when_nothing_has_changed(self):
        told = self.term(0).stdout
        before = self.stamps()
        again = self.term(0)
        self.assertEqual(again.stdout, told)
        self.assertEqual(self.stamps(), before)
        self.assertEqual(again.stderr, "")
        self.term(0, words=("--all",))
        self.assertEqual(len(self.changed(before)), len(before))

    def test_one_changed_record_leaves_the_reports_of_the_others_alone(self):
        self.term(0)
        before = self.stamps()
        record = self.folder / "lessons/LO-05/2026-03-05/lesson.yaml"
        record.write_text(record.read_text().replace("at the flag", "at the tree"))
        record.write_text(record.read_text().replace("lesson: 1", "lesson: 5"))
        self.term(0)
        self.assertEqual(self.changed(before), ["for-the-printer", "printed"])  # a report says neither; the seal does
        before = self.stamps()
        (self.folder / "term.yaml").write_text(TERM.replace("A calm term.", "A busy term."), encoding="utf-8")
        self.term(0)
        self.assertEqual(self.changed(before), ["MA-11", "for-the-printer", "printed", "send"])

    def test_a_damaged_or_missing_file_is_made_again(self):
        self.term(0)
        whole = {path.name: path.read_bytes() for path in self.out.iterdir()}
        for name in whole:
            if name.startswith("send"):  # may have been ticked by hand
                continue
            (self.out / name).write_bytes(whole[name][:-9] + b"x")
            self.term(0)
            self.assertEqual((self.out / name).read_bytes(), whole[name], name)
            (self.out / name).unlink()
            self.term(0)
            self.assertEqual((self.out / name).read_bytes(), whole[name], name)
        self.assertEqual({path.name: path.read_bytes() for path in self.out.iterdir()}, whole)

    def test_ticks_on_the_list_stay_while_nothing_changes(self):
        self.term(0)
        send = self.out / "send-Spring-term-2026.txt"
        send.write_text(send.read_text(encoding="utf-8").replace("[ ] PI-02", "[x] PI-02"), encoding="utf-8")
        self.term(0)
        self.assertIn("[x] PI-02", send.read_text(encoding="utf-8"))

    def test_ticks_stay_with_reports_that_stay_the_same(self):
        self.term(0)
        send = self.out / "send-Spring-term-2026.txt"
        text = send.read_text(encoding="utf-8")
        send.write_text(text.replace("[ ]", "[x]"), encoding="utf-8")
        (self.folder / "term.yaml").write_text(TERM.replace("A calm term.", "A busy term."), encoding="utf-8")
        self.term(0)
        lines = [line[:9] for line in send.read_text(encoding="utf-8").splitlines() if line.startswith("[")]
        self.assertEqual(lines, ["[x] PI-02", "[ ] MA-11", "[x] LO-05"])

    def test_a_record_that_hides_its_student_keeps_that_report_back(self):
        self.term(0)
        record = self.folder / "lessons/MA-11/2026-03-19/lesson.yaml"
        for broken in ("", record.read_text().replace("code: MA-11", "code: [")):
            record.write_text(broken)
            done = self.term(1, "MA-11-Spring-term-2026.pdf: note: this lies there from an earlier run and was not made now")
            self.assertNotIn("MA-11-Spring", done.stdout.decode())
        overview = re.sub(r"\s+", " ", tool("pdftotext", "-layout", self.out / "coach-only-Spring-term-2026.pdf", "-"))
        self.assertIn("MA-11 2026-03-19/lesson.yaml: has faults", overview)

    def test_an_undated_record_keeps_its_own_student_back_and_nobody_else(self):
        record = self.folder / "lessons/LO-05/2026-03-05/lesson.yaml"
        moved = self.folder / "lessons/LO-05/march/lesson.yaml"
        moved.parent.mkdir()
        moved.write_text(re.sub("^date: .*\n", "", record.read_text(), flags=re.M))
        done = self.term(1, "the record needs 'date'")
        self.assertEqual(sum("-Spring-term-2026.pdf" in line for line in done.stdout.decode().splitlines()), 4)

    def test_the_newest_revision_of_a_day_counts(self):
        record = self.folder / "lessons/LO-05/2026-03-05/lesson.yaml"
        again = self.folder / "lessons/LO-05/again/lesson.yaml"
        again.parent.mkdir()
        shutil.copy(record.parent / "shots.csv", again.parent)
        again.write_text(record.read_text())
        self.term(1, "are lessons of one day")
        again.write_text(record.read_text() + "revision: 2\nreplaces: the club was wrong\n")
        self.term(0)
        self.assertIn("3 lessons this term", tool("pdftotext", self.out / "LO-05-Spring-term-2026.pdf", "-"))

    def test_a_sound_record_without_a_code_is_nobodys_even_beside_one_student(self):
        shutil.rmtree(self.folder / "lessons")
        course.lesson(self.folder / "lessons", 1, date(2026, 3, 5), name="Lou", code="LO-05", hand="left")
        nameless = self.folder / "lessons/LO-05/bob/lesson.yaml"
        nameless.parent.mkdir()
        nameless.write_text("student: {name: Bob, hand: right}\ndate: 2026-03-07\nsaw: A.\nchanged: B.\n")
        self.term(1, "bob/lesson.yaml: error: no report holds this lesson, for it names no code")
        text = tool("pdftotext", self.out / "LO-05-Spring-term-2026.pdf", "-")
        self.assertNotIn("Bob", text)
        self.assertIn("1 lesson this term", text)

    def test_papers_of_another_term_are_not_taken_for_left_over_ones(self):
        (self.folder / "late.yaml").write_text(TERM.replace("Spring term 2026", "Late Spring term 2026"), encoding="utf-8")
        for _ in range(2):
            self.assertNotIn("earlier run", self.term(0, files=("late.yaml", "term.yaml")).stderr)
            (self.folder / "term.yaml").write_text(TERM.replace("A calm term.", "A busy term."), encoding="utf-8")

    def test_what_only_looks_like_a_term_is_named(self):
        (self.folder / "winter.yaml").write_text(TERM.replace("term:", "trem:", 1), encoding="utf-8")
        self.term(0, "winter.yaml: note: this looks like a term and has no line 'term:'", files=(".", "term.yaml"))

    def test_a_term_with_a_fault_is_told_every_time(self):
        record = self.folder / "lessons/PI-02/2026-03-05/lesson.yaml"
        record.write_text(record.read_text().replace("saw:", "swa:"))
        for _ in range(2):
            self.term(1, "did you mean 'saw'?")
        record.write_text(record.read_text().replace("swa:", "saw:"))
        self.term(0)
        self.assertTrue((self.out / "PI-02-Spring-term-2026.pdf").exists())

    def test_threads_do_not_show(self):
        self.term(0, words=("--threads", "1"))
        once = {path.name: path.read_bytes() for path in self.out.iterdir()}
        shutil.rmtree(self.out)
        self.term(0, words=("--threads", "4"))
        self.assertEqual({path.name: path.read_bytes() for path in self.out.iterdir()}, once)

    def test_several_terms_and_the_folder_that_holds_them(self):
        (self.folder / "autumn.yaml").write_text(TERM.replace("Spring term", "Autumn"), encoding="utf-8")
        told = self.term(0, files=(".",)).stdout.decode().splitlines()
        self.assertEqual(sum("Autumn-2026" in line for line in told), 7)
        self.assertEqual(sum("Spring-term-2026" in line for line in told), 7)
        (self.folder / "autumn.yaml").write_text(TERM, encoding="utf-8")
        self.term(1, "the papers of 'term.yaml' and 'autumn.yaml' would bear one name", files=("autumn.yaml", "term.yaml"))
        self.term(3, "there is no term file below 'lessons'", files=("lessons",))
        self.term(3, "'gone.yaml' cannot be read", files=("gone.yaml", "term.yaml"))
        lesson = "lessons/LO-05/2026-03-05/lesson.yaml"
        self.term(1, f"'{lesson}' is no term file", "term: Spring term 2026", files=(lesson,))

    def test_shares_are_whole_terms(self):
        (self.folder / "autumn.yaml").write_text(TERM.replace("Spring term", "Autumn"), encoding="utf-8")
        parts = [self.term(0, files=(".",), words=("--part", part)) for part in ("1/2", "2/2")]
        self.assertEqual(sum(part.stderr.count("belongs to another part") for part in parts), 2)
        told = [part.stdout.decode().splitlines() for part in parts]
        self.assertEqual(sorted(told[0] + told[1]), sorted(self.term(0, files=(".",)).stdout.decode().splitlines()))

    def test_a_lesson_without_a_code_is_told_and_listed(self):
        record = self.folder / "lessons/nameless/lesson.yaml"
        record.parent.mkdir()
        record.write_text("student: {name: Ada, hand: right}\ndate: 2026-03-07\nsaw: A.\nchanged: B.\n")
        self.term(1, "nameless/lesson.yaml: error: no report holds this lesson, for it names no code")
        overview = tool("pdftotext", "-layout", self.out / "coach-only-Spring-term-2026.pdf", "-")
        self.assertIn("nameless/lesson.yaml", overview)


if __name__ == "__main__":
    unittest.main()
