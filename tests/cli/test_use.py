"""Wrong use, wrong input and what cannot be written: the exit code, the words, and no half file."""
import os
import subprocess
import unittest

from program import PROGRAM, RIGHT_HAND, SMALL_RECORD, InFolder, run, tool


class WrongUse(InFolder):
    def test_no_command_lists_the_commands(self):
        self.expect(run(), 2, "say what to do", "lesson", "check")

    def test_an_unknown_command_names_its_neighbour(self):
        self.expect(run("lessn", RIGHT_HAND), 2, "'lessn' is not a command", "did you mean 'lesson'?")

    def test_an_unknown_option_names_its_neighbour(self):
        done = run("lesson", RIGHT_HAND, "-o", "x.pdf", "--templats", "x", folder=self.folder)
        self.expect(done, 2, "--templats", "did you mean '--templates'?")
        self.assertEqual(self.files(), [])

    def test_a_lesson_without_a_place_to_write_is_wrong_use(self):
        self.expect(run("lesson", RIGHT_HAND), 2, "--output is required")

    def test_whoever_leaves_out_what_is_needed_is_shown_the_way_out(self):
        for words, way in ((("lesson", "lesson.yaml"), "lesson lesson.yaml -o sheet.pdf"), (("lesson",), "lesson lesson.yaml -o sheet.pdf"),
                           (("term", "t.yaml"), "term spring-term.yaml -o reports/"), (("drills",), "drills -o drills.pdf"),
                           (("binder", "lessons"), "binder lessons --student RU-04 -o binder.pdf"),
                           (("binder", "lessons", "--student", "RU-04"), "binder lessons --student RU-04 -o binder.pdf"),
                           (("mail", "lesson.yaml"), "mail lesson.yaml -o draft.eml"), (("check",), "check lesson.yaml"),
                           (("held",), "held academy --student RU-04 -o held.pdf"), (("begin",), "begin 2026-05-14"),
                           (("numbers",), "numbers lesson.yaml --as table"), (("figure",), "figure lesson.yaml scatter -o scatter.svg")):
            with self.subTest(words=words):
                self.expect(run(*words), 2, "is required", f"hint: lessonleaf {way}\n", f"hint: lessonleaf {words[0]} --help")
        done = run("lesson", "lesson.yaml", "-o", "x.pdf", "--bogus")
        self.assertNotIn("-o sheet.pdf", self.expect(done, 2).stderr)

    def test_help_and_version_are_no_fault(self):
        self.assertIn(b"lesson", self.expect(run("--help"), 0).stdout)
        self.assertIn(b"lessonleaf 0.", self.expect(run("--version"), 0).stdout)
        self.assertIn(b"--output", self.expect(run("lesson", "--help"), 0).stdout)


class WrongInput(InFolder):
    def test_a_faulty_record_writes_nothing_and_tells_place_and_way_out(self):
        path = self.record(text=SMALL_RECORD.replace("hand: right", "hand: rigth").replace("saw:", "swa:"))
        done = run("lesson", path, "-o", self.folder / "sheet.pdf")
        self.expect(done, 1, f"{path}:1:", f"{path}:3:1", "did you mean 'saw'?", "did you mean 'right'?", "^")
        self.assertEqual(self.files(), ["lesson.yaml"])

    def test_check_tells_the_same_faults_and_writes_nothing(self):
        path = self.record(text=SMALL_RECORD.replace("date: 2026-05-14", "date: 14.05.2026"))
        checked = run("check", path)
        self.expect(checked, 1, f"{path}:2:7", "write 2026-05-14")
        printed = run("lesson", path, "-o", self.folder / "sheet.pdf")
        self.assertEqual(checked.stderr, printed.stderr)
        self.assertEqual(self.files(), ["lesson.yaml"])

    def test_check_of_a_whole_record_says_that_it_can_be_printed(self):
        path = self.record()
        done = self.expect(run("check", path), 0)
        self.assertEqual(done.stdout.decode(), f"{path}: ready to print\n")

    def test_a_missing_shot_table_is_told_at_its_line(self):
        path = self.record(text=SMALL_RECORD + "shots: gone.csv\n")
        self.expect(run("lesson", path, "-o", self.folder / "sheet.pdf"), 1, f"{path}:5:8", "gone.csv", "hint:")
        self.assertEqual(self.files(), ["lesson.yaml"])

    def test_strict_makes_a_warning_an_error(self):
        path = self.record(text=SMALL_RECORD + "revision: 2\n")
        self.expect(run("lesson", path, "-o", self.folder / "a.pdf"), 0, "warning:")
        self.expect(run("lesson", path, "-o", self.folder / "b.pdf", "--strict"), 1, "warning:")
        self.assertEqual(self.files(), ["a.pdf", "lesson.yaml"])

    def test_a_revision_says_what_it_replaces(self):
        path = self.record(text=SMALL_RECORD + 'revision: 2\nreplaces: "revision 1: the club was wrong"\n')
        self.assertEqual(self.expect(run("lesson", path, "-o", self.folder / "a.pdf"), 0).stderr, "")
        self.assertIn("Replaces revision 1: the club was wrong", tool("pdftotext", "-l", "1", self.folder / "a.pdf", "-"))

    def test_one_faulty_record_of_two_does_not_stop_the_other(self):
        bad = self.record("bad/lesson.yaml", "student: 3\n")
        good = self.record("good/lesson.yaml")
        self.expect(run("lesson", bad, good, "-o", self.folder / "out"), 1)
        self.assertEqual(self.files(), ["bad/lesson.yaml", "good/lesson.yaml", "out/AD-01-2026-05-14.pdf"])

    def test_two_records_of_one_name_are_refused(self):
        first, second = self.record("a/lesson.yaml"), self.record("b/lesson.yaml", SMALL_RECORD + "notes: [other]\n")
        self.expect(run("lesson", first, "-o", self.folder / "alone.pdf"), 0)
        self.expect(run("lesson", first, second, "-o", self.folder / "out"), 1,
                    str(first), str(second), "AD-01-2026-05-14.pdf", "different codes")
        written = (self.folder / "out" / "AD-01-2026-05-14.pdf").read_bytes()
        self.assertEqual(written, (self.folder / "alone.pdf").read_bytes())


class CannotReadOrWrite(InFolder):
    def test_a_record_that_is_not_there(self):
        self.expect(run("lesson", "gone.yaml", "-o", "x.pdf", folder=self.folder), 3, "'gone.yaml' cannot be read", "hint:")
        self.expect(run("check", "gone.yaml", folder=self.folder), 3, "'gone.yaml' cannot be read")
        self.expect(run("check", self.folder), 3, "no lesson.yaml below")
        self.assertEqual(self.files(), [])

    def test_a_folder_that_is_not_there(self):
        target = self.folder / "gone" / "x.pdf"
        self.expect(run("lesson", self.record(), "-o", target), 3, f"cannot write '{target}'", "there is no folder")
        self.assertEqual(self.files(), ["lesson.yaml"])

    def test_a_folder_under_a_file_cannot_be_made(self):
        path = self.record()
        self.expect(run("lesson", path, "-o", f"{path}/"), 3, "is a file, and a folder is wanted", "hint: -o FOLDER/")
        self.assertEqual(path.read_text(encoding="utf-8"), SMALL_RECORD)

    def test_a_target_that_nothing_can_be_written_to(self):
        self.expect(run("lesson", self.record(), "-o", "/proc/lessonleaf.pdf"), 3, "cannot write '/proc/lessonleaf.pdf'")

    @unittest.skipIf(os.geteuid() == 0, "root may write everywhere")
    def test_a_folder_without_the_right_to_write(self):
        path, closed = self.record(), self.folder / "closed"
        closed.mkdir(mode=0o555)
        self.expect(run("lesson", path, "-o", closed / "x.pdf"), 3, "cannot write", str(closed))
        self.assertEqual(self.files(), ["lesson.yaml"])

    def test_a_bare_file_name_is_written_into_the_working_folder(self):
        self.record()
        self.expect(run("lesson", "lesson.yaml", "-o", "sheet.pdf", folder=self.folder), 0)
        self.assertEqual(self.files(), ["lesson.yaml", "sheet.pdf"])

    def test_the_record_is_never_overwritten(self):
        path = self.record()
        self.expect(run("lesson", path, "-o", path), 3, "it is an input of this run")
        self.assertEqual(path.read_text(encoding="utf-8"), SMALL_RECORD)

    def test_a_sheet_that_cannot_be_renewed_stays_as_it_was(self):
        path, target = self.record(), self.folder / "sheet.pdf"
        self.expect(run("lesson", path, "-o", target), 0)
        before = target.read_bytes()
        path.write_text("student: 3\n", encoding="utf-8")
        self.expect(run("lesson", path, "-o", target), 1)
        self.assertEqual(target.read_bytes(), before)
        self.assertEqual(self.files(), ["lesson.yaml", "sheet.pdf"])

    def test_a_closed_standard_output_is_no_success(self):
        with open("/dev/full", "wb") as full:
            done = subprocess.run([PROGRAM, "lesson", str(self.record()), "-o", "-"], stdout=full,
                                  stderr=subprocess.PIPE, stdin=subprocess.DEVNULL, timeout=60)
        self.assertEqual(done.returncode, 3, done.stderr)


if __name__ == "__main__":
    unittest.main()
