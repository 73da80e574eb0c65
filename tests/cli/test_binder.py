"""A binder as a student gets it: bound, printed, made anew after one more lesson, and followed."""
import re
import shutil
import subprocess
import unittest
from datetime import date

import course
from program import InFolder, run, tool


def page_text(pdf, page):
    return tool("pdftotext", "-f", page, "-l", page, "-layout", pdf, "-")


class Binder(InFolder):
    def setUp(self):
        super().setUp()
        self.lessons = self.folder / "lessons"
        course.course(self.lessons, lessons=2)
        self.target = self.folder / "mara.pdf"

    def bind(self, code=0, *said, student="MA-11", target=None):
        return self.expect(run("binder", self.lessons, "--student", student, "-o", target or self.target), code, *said)

    def pages(self):
        return int(re.search(r"Pages:\s+(\d+)", tool("pdfinfo", self.target)).group(1))

    def test_it_is_bound_even_numbered_and_sound(self):
        done = self.bind()
        self.assertEqual(done.stdout.decode().splitlines(), [str(self.target)])
        self.assertEqual(done.stderr, "")
        self.assertEqual(self.pages() % 2, 0)
        self.assertIn("No syntax or stream encoding errors", tool("qpdf", "--check", self.target))
        info = tool("pdfinfo", self.target)
        self.assertIn("Lesson binder for Mara", info)
        for hidden in (str(self.folder), "lesson.yaml", "shots.csv"):
            self.assertNotIn(hidden.encode(), self.target.read_bytes())

    def test_every_page_bears_its_number_and_the_contents_tell_the_truth(self):
        self.bind()
        texts = [page_text(self.target, n) for n in range(1, self.pages() + 1)]
        for n, text in enumerate(texts, 1):
            self.assertEqual(text.split()[0] if n % 2 == 0 else text.splitlines()[0].split()[-1], str(n))
        for day in ("5 March 2026", "19 March 2026"):
            first = int(re.search(rf"{day}.*?(\d+)\u2013\d+", texts[1]).group(1))
            self.assertEqual(first % 2, 1)
            self.assertIn("What is my one thing?", texts[first - 1])
            self.assertIn(day, texts[first - 1])

    def test_a_lesson_in_the_binder_says_what_its_own_sheet_says(self):
        self.bind()
        sheet = self.folder / "sheet.pdf"
        self.expect(run("lesson", self.lessons / "MA-11/2026-03-19/lesson.yaml", "-o", sheet), 0)
        first = int(re.search(r"19 March 2026.*?(\d+)\u2013\d+", page_text(self.target, 2)).group(1))
        alone = int(re.search(r"Pages:\s+(\d+)", tool("pdfinfo", sheet)).group(1))
        for n in range(1, alone + 1):
            bound = page_text(self.target, first + n - 1).split()
            bound.remove(str(first + n - 1))
            self.assertEqual(sorted(bound), sorted(page_text(sheet, n).split()))

    def test_the_same_lessons_give_the_same_bytes_again_and_elsewhere(self):
        self.bind()
        once = self.target.read_bytes()
        self.bind()
        self.assertEqual(self.target.read_bytes(), once)
        self.assertEqual(self.bind(target="-").stdout, once)

    def test_one_more_lesson_lists_the_sheets_to_exchange_and_following_it_gives_the_new_binder(self):
        self.bind()
        old = self.folder / "old.pdf"
        shutil.copy(self.target, old)
        course.lesson(self.lessons, 3, date(2026, 4, 30), before=6.5, after=2.2, cold=3.1, returned="H1")
        told = self.bind().stdout.decode().splitlines()[1:]
        self.assertTrue(told[0].strip().startswith("Remove 1\u2013"), told)
        first_page = re.sub(r"\s+", " ", page_text(self.target, 1))
        for line in told:
            self.assertIn(line.strip(), first_page)
        self.assertEqual(self.followed(old, told), self.texts(self.target))
        once = self.target.read_bytes()
        again = self.bind().stdout.decode().splitlines()[1:]
        self.assertEqual(again, told)
        self.assertEqual(self.target.read_bytes(), once)

    @staticmethod
    def texts(pdf):
        """Words of every page without its number."""
        count = int(re.search(r"Pages:\s+(\d+)", tool("pdfinfo", pdf)).group(1))
        out = []
        for n in range(1, count + 1):
            words = page_text(pdf, n).split()
            words.remove(str(n))
            out.append(sorted(words))
        return out

    def followed(self, old, told):
        """What a student holds who does as the list says."""
        pile, fresh = self.texts(old), self.texts(self.target)
        gone, put = set(), []
        for line in told:
            for first, last in re.findall(r"Remove (\d+)\u2013(\d+)", line):
                gone |= set(range(int(first), int(last) + 1))
            for first, last in re.findall(r"[Pp]ut in (\d+)\u2013(\d+)", line):
                put += range(int(first), int(last) + 1)
        pile = [text for n, text in enumerate(pile, 1) if n not in gone]
        for n in sorted(put):
            pile.insert(n - 1, fresh[n - 1])
        return pile

    def test_too_early_under_three_cold_tests(self):
        self.bind()
        everything = tool("pdftotext", self.target, "-")
        self.assertIn("Too early to tell", everything)
        shutil.rmtree(self.lessons)
        course.course(self.lessons, lessons=4)
        self.bind()
        self.assertNotIn("Too early to tell", tool("pdftotext", self.target, "-"))

    def test_the_card_is_at_true_size(self):
        self.bind()
        boxes = tool("pdftotext", "-bbox", self.target, "-")
        self.assertRegex(boxes, r'<page width="595\.27')  # A4, ISO 216
        card = next(n for n in range(1, self.pages() + 1) if "50 mm" in page_text(self.target, n))
        svg = tool("pdftocairo", "-svg", "-f", card, "-l", card, self.target, "-")
        millimetre = 72 / 25.4
        steps = [float(x) for x in re.findall(r"M ([\d.]+) [\d.]+ L [\d.]+ [\d.]+", svg)]
        self.assertTrue(any(abs(b - a - 50 * millimetre) < 0.1 for a in steps for b in steps))

    def test_an_unknown_code_names_its_neighbour_and_writes_nothing(self):
        self.bind(1, "no lesson of 'MA-12'", "did you mean 'MA-11'?", student="MA-12")
        self.assertFalse(self.target.exists())

    def test_a_faulty_lesson_is_told_and_nothing_is_written(self):
        record = self.lessons / "MA-11/2026-03-19/lesson.yaml"
        record.write_text(record.read_text().replace("saw:", "swa:"))
        self.bind(1, "did you mean 'saw'?")
        self.assertFalse(self.target.exists())

    def test_a_fault_of_a_shared_file_is_told_once(self):
        (self.lessons / "drills.yaml").write_text("- {id: OWN1, family: hold}\n")
        done = self.bind(1)
        told = re.findall(r"drills\.yaml:1:3: error: .*", done.stderr)
        self.assertGreater(len(told), 0)
        self.assertEqual(len(told), len(set(told)), done.stderr)

    def test_another_students_faulty_lesson_harms_nobody(self):
        record = course.lesson(self.lessons, 1, date(2026, 3, 5), name="Piet", code="PI-02")
        record.write_text(record.read_text().replace("saw:", "swa:"))
        self.assertEqual(self.bind().stderr, "")

    def test_a_folder_that_is_not_there(self):
        self.expect(run("binder", self.folder / "gone", "--student", "MA-11", "-o", self.target), 3, "is not a folder")

    def test_only_a_pdf_is_promised(self):
        for name in ("mara.txt", "mara", "mara.pdf.bak"):
            wrong = self.folder / name
            self.bind(2, "a binder is written as PDF", "hint: -o", target=wrong)
            self.expect(run("drills", "-o", wrong), 2, "the drill book is written as PDF")
            self.assertFalse(wrong.exists())
        (self.folder / "sheets").mkdir()
        for target in ("sheets", "sheets/"):
            self.expect(run("drills", "-o", target, folder=self.folder), 2, "hint: -o sheets/drills.pdf")

    def test_another_students_binder_is_not_written_over(self):
        course.lesson(self.lessons, 1, date(2026, 3, 5), name="Piet", code="PI-02")
        self.bind()
        once = self.target.read_bytes()
        self.bind(2, f"'{self.target}' is the binder of 'MA-11', not of 'PI-02'", f"hint: -o {self.folder}/PI-02.pdf, or move that",
                  student="PI-02")
        self.assertEqual(self.target.read_bytes(), once)
        self.bind(student="PI-02", target=self.folder / "PI-02.pdf")
        self.bind(2, "is the binder of 'PI-02', not of 'MA-11'", target=self.folder / "PI-02.pdf")
        self.bind(2, "give this one another name", student="PI-02")
        self.bind()
        self.assertEqual(self.target.read_bytes(), once)

    def as_older_programs_wrote_it(self):
        """The binder with the note of a program that did not yet say whose it was."""
        plain = subprocess.run(["qpdf", "--qdf", "--object-streams=disable", self.target, "-"], capture_output=True, check=True).stdout
        self.assertIn(b"lessonleaf binder 2", plain)
        older = re.sub(rb"whose MA-11(\\n)?", b"", plain.replace(b"lessonleaf binder 2", b"lessonleaf binder 1"))
        self.assertNotIn(b"whose", older)
        fixed = subprocess.run(["fix-qdf"], input=older, capture_output=True, check=True).stdout
        self.target.write_bytes(fixed)

    def test_a_binder_of_an_older_program_is_compared_and_owned_by_nobody(self):
        self.bind()
        new = self.target.read_bytes()
        self.as_older_programs_wrote_it()
        self.assertEqual(self.bind().stdout.decode().splitlines(), [str(self.target)])  # nothing to exchange
        self.assertEqual(self.target.read_bytes(), new)
        self.as_older_programs_wrote_it()
        course.lesson(self.lessons, 3, date(2026, 4, 30), before=6.5, after=2.2, cold=3.1, returned="H1")
        told = self.bind().stdout.decode().splitlines()[1:]
        self.assertTrue(told[0].strip().startswith("Remove 1\u2013"), told)

    def test_an_earlier_file_that_is_no_binder_is_no_comparison(self):
        self.target.write_bytes(b"%PDF-1.4 something else")
        self.assertEqual(len(self.bind().stdout.decode().splitlines()), 1)


class Binders(InFolder):
    """Everybody's at once."""

    def setUp(self):
        super().setUp()
        self.lessons = self.folder / "lessons"
        self.out = self.folder / "binders"
        course.course(self.lessons, lessons=2)
        for name, code in (("Piet", "PI-02"), ("Lou", "LO-05"), ("Ida", "ID-03"), ("Ben", "BE-04")):
            course.lesson(self.lessons, 1, date(2026, 3, 5), name=name, code=code)

    def bind(self, code=0, *said, words=()):
        done = run("binder", self.lessons, "-o", f"{self.out}/", *words)
        return done if code is None else self.expect(done, code, *said)

    def written(self):
        return sorted(path.name for path in self.out.iterdir())

    def stamps(self):
        return {path.name: path.stat().st_mtime_ns for path in self.out.iterdir()}

    def test_a_binder_for_everybody_is_the_one_that_is_made_alone(self):
        done = self.bind(0, "5 binders: 5 written, 0 up to date, 0 failed", words=("--threads", 3))
        names = ["BE-04-binder.pdf", "ID-03-binder.pdf", "LO-05-binder.pdf", "MA-11-binder.pdf", "PI-02-binder.pdf"]
        self.assertEqual(self.written(), names)
        self.assertEqual(done.stdout.decode().splitlines(), [f"{self.out}/{name}" for name in names])
        alone = self.folder / "alone.pdf"
        self.expect(run("binder", self.lessons, "--student", "MA-11", "-o", alone), 0)
        self.assertEqual((self.out / "MA-11-binder.pdf").read_bytes(), alone.read_bytes())

    def test_what_is_up_to_date_is_left_alone_and_its_news_are_told_again(self):
        self.bind()
        before = self.stamps()
        self.bind(0, "5 binders: 0 written, 5 up to date, 0 failed")
        self.assertEqual(self.stamps(), before)
        course.lesson(self.lessons, 3, date(2026, 4, 30), before=6.5, after=2.2, cold=3.1, returned="H1")
        told = self.bind(0, "1 written, 4 up to date").stdout
        self.assertIn("Remove 1\u2013", told.decode())
        self.assertEqual([name for name, at in self.stamps().items() if at != before[name]], ["MA-11-binder.pdf"])
        self.assertEqual(self.bind(0, "0 written, 5 up to date").stdout, told)
        damaged = self.out / "LO-05-binder.pdf"
        whole = damaged.read_bytes()
        damaged.write_bytes(whole[:-200] + b"x" + whole[-199:])
        self.bind(0, "1 written, 4 up to date")
        self.assertEqual(damaged.read_bytes(), whole)
        self.bind(0, "5 written, 0 up to date", words=("--all",))

    def test_a_faulty_record_harms_no_other_binder(self):
        record = self.lessons / "PI-02/2026-03-05/lesson.yaml"
        record.write_text(record.read_text().replace("saw:", "swa:"))
        nobody = self.folder / "lessons/nobody/lesson.yaml"
        nobody.parent.mkdir()
        nobody.write_text("student: {name: Ada, code: [, hand: right}\n")
        nameless = self.folder / "lessons/nameless/lesson.yaml"
        nameless.parent.mkdir()
        nameless.write_text("student: {name: Ada, hand: right}\ndate: 2026-03-01\nsaw: A.\nchanged: B.\n")
        self.bind(1, "did you mean 'saw'?", "nobody/lesson.yaml:1:", "no binder holds this lesson, for it names no code",
                  "6 binders: 4 written, 0 up to date, 2 failed", "failed: PI-02: ")
        self.assertNotIn("PI-02-binder.pdf", self.written())
        self.assertEqual(len(self.written()), 4)
        told = [self.bind(None, words=("--part", part)).stderr.count("nobody/lesson.yaml:1:")
                for part in ("1/3", "2/3", "3/3")]
        self.assertEqual(sorted(told), [0, 0, 2])  # at its place and in the summary

    def test_a_record_that_hides_its_student_keeps_that_students_binder_back(self):
        self.bind()
        before = self.stamps()
        record = self.lessons / "MA-11/2026-03-19/lesson.yaml"
        whole = record.read_text()
        for broken in ("", whole.replace("code: MA-11", "code: MA 11, extra: ["), whole.replace("student:", "studnet:")):
            record.write_text(broken)
            done = self.bind(1, "4 up to date, 1 failed", "failed: MA-11: ")
            self.assertNotIn("Remove", done.stdout.decode())
            self.assertEqual(self.stamps(), before)

    def test_a_record_without_a_date_is_told_as_that(self):
        record = self.lessons / "PI-02/2026-03-05/lesson.yaml"
        moved = self.lessons / "PI-02/march/lesson.yaml"
        moved.parent.mkdir()
        moved.write_text(re.sub("^date: .*\n", "", record.read_text(), flags=re.M))
        record.unlink()
        self.bind(1, "the record needs 'date'", "4 written, 0 up to date, 1 failed")

    def test_the_newest_revision_of_a_day_is_bound(self):
        record = self.lessons / "LO-05/2026-03-05/lesson.yaml"
        again = self.lessons / "LO-05/again/lesson.yaml"
        again.parent.mkdir()
        shutil.copy(self.lessons / "LO-05/2026-03-05/shots.csv", again.parent)
        again.write_text(record.read_text())
        self.bind(1, "are lessons of one day", "write 'revision: 2' in the one that replaces the other")
        again.write_text(record.read_text() + "revision: 2\nreplaces: the club was wrong\n")
        self.bind(0)
        self.assertEqual(tool("pdftotext", self.out / "LO-05-binder.pdf", "-").count("What is my one thing?"), 1)

    def test_papers_of_others_stay_and_are_named(self):
        self.bind()
        letter = self.out / "letter.pdf"
        foreign = self.record("letter.txt", "Dear Piet")
        plain = subprocess.run(["qpdf", "--qdf", "--object-streams=disable", self.out / "LO-05-binder.pdf", "-"],
                               capture_output=True, check=True).stdout.replace(b"/Producer (Lessonleaf)", b"/Producer (Some Writer)")
        self.assertIn(b"Some Writer", plain)
        letter.write_bytes(plain.replace(b"lessonleaf binder", b"somebody's binder"))
        whole = letter.read_bytes()
        for words in (("binder", self.lessons, "--student", "LO-05"), ("lesson", self.lessons / "LO-05/2026-03-05/lesson.yaml")):
            self.expect(run(*words, "-o", letter), 2, "was made by another program (Some Writer)", "or move that file away")
            self.assertEqual(letter.read_bytes(), whole)
        bound = (self.out / "PI-02-binder.pdf").read_bytes()
        self.expect(run("lesson", self.lessons / "LO-05/2026-03-05/lesson.yaml", "-o", self.out / "PI-02-binder.pdf"), 2,
                    "is the binder of 'PI-02'")
        self.assertEqual((self.out / "PI-02-binder.pdf").read_bytes(), bound)
        foreign.unlink()
        shutil.rmtree(self.lessons / "PI-02")
        self.bind(0, "PI-02-binder.pdf: note: this lies there from an earlier run and was not made now")

    def test_two_students_of_several_folders_and_an_unknown_one(self):
        course.lesson(self.folder / "more", 1, date(2026, 4, 5), name="Eva", code="EV-06")
        words = ("binder", self.lessons, self.folder / "more", self.lessons / "MA-11", "-o", self.out)
        self.out.mkdir()
        self.expect(run(*words, "--student", "EV-06", "--student", "MA-11", "--student", "LO-06"), 1,
                    "no lesson of 'LO-06'", "or the other folders", "did you mean 'LO-05'?")
        self.assertEqual(self.written(), ["EV-06-binder.pdf", "MA-11-binder.pdf"])

    def test_one_file_holds_one_binder(self):
        self.expect(run("binder", self.lessons, "-o", self.folder / "all.pdf"), 2,
                    "is one file, and here are 5 students", "-o FOLDER/")
        self.expect(run("binder", self.lessons / "LO-05", "-o", self.folder / "lou.pdf"), 0)
        self.assertFalse((self.folder / "all.pdf").exists())
        self.expect(run("binder", self.lessons, "-o", "-"), 2, "standard output holds one binder, and here are 5 students")
        (self.folder / "empty").mkdir()
        self.expect(run("binder", self.folder / "empty", "-o", self.folder / "all.pdf"), 1, "no lesson with a code below")

    def test_codes_that_give_one_name_are_not_written_over_each_other(self):
        course.lesson(self.lessons / "other", 1, date(2026, 3, 5), name="Lea", code="LO_05")
        self.bind(1, "the binders of 'LO_05' and 'LO-05' would both be written to")
        self.assertEqual(len(self.written()), 5)

    def test_shares_make_the_whole(self):
        for part in ("1/2", "2/2"):
            self.bind(words=("--part", part))
        self.bind(0, "5 binders: 0 written, 5 up to date, 0 failed")


if __name__ == "__main__":
    unittest.main()
