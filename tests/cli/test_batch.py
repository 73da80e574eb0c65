"""Many records at once: told in order, one bad record harms no other, nothing is done twice."""
import os
import pty
import re
import shutil
import signal
import subprocess
import unittest

from program import PROGRAM, RIGHT_HAND, ROOT, SMALL_RECORD, InFolder, run, tool


class Batch(InFolder):
    def records(self, count):
        """Folders a/00 to a/NN with one record each; the code is the number."""
        return [self.record(f"a/{i:02d}/lesson.yaml", SMALL_RECORD.replace("AD-01", f"N{i:02d}"))
                for i in range(count)]

    def sheets(self, folder="out"):
        return {p.name: p.read_bytes() for p in sorted((self.folder / folder).glob("*"))}

    def dates(self, folder="out"):
        return {p.name: p.stat().st_mtime_ns for p in sorted((self.folder / folder).glob("*"))}

    def lesson(self, *words, into="out"):
        return run("lesson", *words, "-o", into, folder=self.folder)


class ManyRecords(Batch):
    def test_a_folder_means_every_lesson_below_it(self):
        self.records(3)
        self.record("a/notes.yaml", "student: 3\n")
        self.record("a/01/deep/deeper/lesson.yaml", SMALL_RECORD)
        self.expect(self.lesson("a"), 0)
        self.assertEqual(list(self.sheets()), [f"{code}-2026-05-14.pdf" for code in ("AD-01", "N00", "N01", "N02")])

    def test_a_record_named_twice_is_made_once(self):
        first = self.records(2)[0]
        done = self.expect(self.lesson(first, "a", "a/../a/01"), 0)
        self.assertEqual(done.stdout.decode().split(), ["out/N00-2026-05-14.pdf", "out/N01-2026-05-14.pdf"])

    def test_a_folder_without_lessons_is_told(self):
        (self.folder / "empty").mkdir()
        self.expect(self.lesson("empty"), 3, "there is no lesson.yaml below 'empty'", "hint:")

    def test_a_loop_of_links_ends(self):
        self.records(1)
        (self.folder / "a" / "00" / "loop").symlink_to(self.folder / "a")
        self.expect(self.lesson("a"), 0)
        self.assertEqual(len(self.sheets()), 1)

    def test_one_sheet_only_fits_standard_output(self):
        self.records(2)
        self.expect(self.lesson("a", into="-"), 2, "standard output holds one sheet", "hint: -o FOLDER/")
        self.assertFalse((self.folder / "-").exists())

    def test_any_number_of_threads_says_and_writes_the_same(self):
        paths = self.records(9)
        paths[2].write_text("student: 3\n", encoding="utf-8")
        paths[5].write_text(SMALL_RECORD.replace("AD-01", "N04"), encoding="utf-8")
        paths[7].unlink()
        told = []
        for threads in (1, 2, 7):
            done = self.lesson(*paths, "--threads", threads, "--all")
            self.expect(done, 3, "N04-2026-05-14.pdf", "different codes", "07/lesson.yaml' cannot be read",
                        "9 records: 6 written, 0 up to date, 3 failed")
            told.append((done.stdout, done.stderr, self.sheets()))
        self.assertEqual(told[0], told[1])
        self.assertEqual(told[0], told[2])
        self.assertEqual(told[0][0].decode().split(), [f"out/N0{i}-2026-05-14.pdf" for i in (0, 1, 3, 4, 6, 8)])

    def test_the_summary_fits_one_screen_and_says_why(self):
        for i in range(40):
            self.record(f"a/{i:02d}/lesson.yaml", "student: 3\n")
        done = self.expect(self.lesson("a"), 1, "40 records: 0 written, 0 up to date, 40 failed", "and 25 more\n")
        summary = done.stderr[done.stderr.index("lessonleaf: 40 records"):]
        self.assertLess(len(summary.splitlines()), 24)
        self.assertIn("failed: a/00/lesson.yaml:1:10: error: ", summary)

    def test_a_few_records_need_no_summary(self):
        self.records(3)
        self.assertEqual(self.expect(self.lesson("a"), 0).stderr, "")

    def test_no_code_leads_out_of_the_folder(self):
        codes = ["../../x", "/etc/passwd", "a/b", "con: *?", "-rf", "x" * 60, "..", "\\\\server\\share"]
        for i, code in enumerate(codes):
            self.record(f"a/{i}/lesson.yaml", SMALL_RECORD.replace("AD-01", f"'{code}'"))
        self.lesson("a")
        self.assertEqual(sorted(p.name for p in self.folder.iterdir()), ["a", "out"])
        names = list(self.sheets())
        self.assertGreater(len(names), 5)
        for name in names:
            self.assertRegex(name, r"^[A-Za-z0-9][A-Za-z0-9-]*\.pdf$")
            self.assertLess(len(name), 200)

    def test_progress_is_for_terminals_only(self):
        self.records(40)
        master, slave = pty.openpty()
        done = subprocess.run([PROGRAM, "lesson", "a", "-o", "out", "--threads", "1"], cwd=self.folder,
                              stderr=slave, stdout=subprocess.DEVNULL, timeout=120)
        os.close(slave)
        seen = os.read(master, 100000).decode()
        os.close(master)
        self.assertEqual(done.returncode, 0)
        self.assertRegex(seen, r"\r\x1b\[K\d+ of 40")
        self.assertNotIn(" of 40", self.lesson("a", "--all").stderr)


class UpToDate(Batch):
    def test_unchanged_sheets_are_left_alone_whatever_the_dates_say(self):
        paths = self.records(6)
        self.expect(self.lesson("a"), 0, "6 written, 0 up to date")
        before, dates = self.sheets(), self.dates()
        for path in paths:
            os.utime(path, (2e9, 2e9))
        self.expect(self.lesson("a"), 0, "0 written, 6 up to date")
        self.assertEqual(self.dates(), dates)
        self.expect(self.lesson("a", "--all"), 0, "6 written, 0 up to date")
        self.assertEqual(self.sheets(), before)
        self.assertNotEqual(self.dates(), dates)

    def change_is_seen(self, change):
        """Of two sheets the changed one alone is made anew, and as if there had been no other."""
        shutil.copytree(RIGHT_HAND.parent, self.folder / "a" / "ruth")
        self.record("a/ada/lesson.yaml", SMALL_RECORD)
        words = change(before=True)
        self.expect(self.lesson("a", *words), 0)
        dates = self.dates()
        words = change(before=False)
        self.expect(self.lesson("a", *words), 0)
        self.expect(self.lesson("a", *words, into="fresh"), 0)
        self.assertEqual(self.sheets(), self.sheets("fresh"))
        return sorted(name[:2] for name in dates if dates[name] != self.dates()[name])

    def test_a_changed_record_is_made_anew(self):
        def change(before):
            if not before:
                self.record("a/ada/lesson.yaml", SMALL_RECORD.replace("fingers", "palm"))
            return []
        self.assertEqual(self.change_is_seen(change), ["AD"])

    def test_a_changed_shot_table_is_seen_though_its_date_is_old(self):
        table = self.folder / "a" / "ruth" / "shots.csv"
        def change(before):
            if not before:
                when = table.stat()
                lines = table.read_text(encoding="utf-8").splitlines(keepends=True)
                table.write_text("".join(lines[:-1]), encoding="utf-8")
                os.utime(table, ns=(when.st_atime_ns, when.st_mtime_ns))
            return []
        self.assertEqual(self.change_is_seen(change), ["RU"])

    def test_a_drill_of_ones_own_is_seen_in_a_folder_above(self):
        drill = ("- id: OWN1\n  family: hold\n  name: Line and lid\n  purpose: It helps.\n  need: Club\n  space: no swing\n"
                 "  steps: [Lay it down., Close the hand.]\n  dose: 10 times\n  check: Two knuckles?\n")
        def change(before):
            self.record("a/drills.yaml", drill if before else drill.replace("helps", "helps much"))
            return []
        self.assertEqual(self.change_is_seen(change), ["AD", "RU"])

    def test_house_and_people_above_are_seen(self):
        def change(before):
            self.record("a/house.yaml", f"academy: Low Meadow{'' if before else 's'}\n")
            return []
        self.assertEqual(self.change_is_seen(change), ["AD", "RU"])

    def test_changed_words_are_seen(self):
        def change(before):
            self.record("my/words/en-GB/own.txt", "" if before else "# another remark\n")
            return ["--templates", "my"]
        self.assertEqual(self.change_is_seen(change), ["AD", "RU"])

    def test_a_sheet_that_was_cut_edited_or_moved_is_told_from_a_whole_one(self):
        self.records(3)
        self.lesson("a")
        whole = self.sheets()
        first, second, third = (self.folder / "out" / name for name in whole)
        first.write_bytes(first.read_bytes()[:-700])
        edited = bytearray(second.read_bytes())
        edited[len(edited) // 2] ^= 1
        second.write_bytes(edited)
        third.rename(self.folder / "moved.pdf")
        self.expect(self.lesson("a"), 0)
        self.assertEqual(self.sheets(), whole)
        (self.folder / "moved.pdf").rename(third)
        dates = self.dates()
        self.expect(self.lesson("a"), 0)
        self.assertEqual(self.dates(), dates)

    def test_the_seal_holds_no_path_and_qpdf_finds_no_fault(self):
        path = self.records(1)[0]
        self.lesson(path, into="here.pdf")
        (self.folder / "elsewhere").mkdir()
        path.rename(self.folder / "elsewhere" / "other-name.yaml")
        self.expect(self.lesson("elsewhere/other-name.yaml", into="there.pdf"), 0)
        here = (self.folder / "here.pdf").read_bytes()
        self.assertEqual(here, (self.folder / "there.pdf").read_bytes())
        self.assertNotIn(self.folder.name.encode(), here)
        self.assertIn("No syntax or stream encoding errors found", tool("qpdf", "--check", self.folder / "here.pdf"))

    def test_a_faulty_record_keeps_its_old_sheet(self):
        path = self.records(1)[0]
        self.lesson(path, into="out/")
        before = self.sheets()
        path.write_text("student: 3\n", encoding="utf-8")
        self.expect(self.lesson(path, into="out/"), 1)
        self.assertEqual(self.sheets(), before)


class Parts(Batch):
    def test_parts_together_make_what_one_run_makes(self):
        paths = self.records(12)
        paths[4].write_text("student: 3\n", encoding="utf-8")
        whole = self.lesson("a", into="whole")
        parts = [self.lesson("a", "--part", f"{i}/3", into="parts") for i in (1, 2, 3)]
        self.assertEqual(self.sheets("whole"), self.sheets("parts"))
        self.assertEqual(sorted(done.returncode for done in parts), [0, 0, 1])
        lines = [line for done in parts for line in done.stdout.decode().split()]
        self.assertEqual(sorted(lines), sorted(whole.stdout.decode().replace("whole/", "parts/").split()))

    def test_two_of_one_name_meet_in_one_part(self):
        paths = self.records(8)
        paths[6].write_text(paths[1].read_text(encoding="utf-8"), encoding="utf-8")
        parts = [self.lesson("a", "--part", f"{i}/4") for i in (1, 2, 3, 4)]
        self.assertEqual(sum("different codes" in done.stderr for done in parts), 1)

    def test_a_part_that_is_none_is_wrong_use(self):
        for part in ("0/2", "3/2", "1", "a/b", "1/2/3", "/", "-1/2", "1/0"):
            with self.subTest(part=part):
                self.expect(run("lesson", RIGHT_HAND, "-o", "out/", f"--part={part}", folder=self.folder), 2,
                            "must be a share such as 2/8")

    def test_the_slurm_job_of_the_readme_makes_what_one_run_makes(self):
        self.records(6)
        self.lesson("a", into="whole")
        readme = (ROOT / "README.md").read_text(encoding="utf-8")
        job = re.search(r"^#!/bin/sh\n# lessons.slurm.*?^```", readme, re.M | re.S).group().removesuffix("```")
        (self.folder / "academy").symlink_to("a")
        (self.folder / "job").write_text(job, encoding="utf-8")
        (self.folder / "lessonleaf").symlink_to(PROGRAM)
        tasks = range(1, 1 + int(re.search(r"--array=1-(\d+)", job).group(1)))
        for task in tasks:
            env = {**os.environ, "PATH": f"{self.folder}:{os.environ['PATH']}", "SLURM_CPUS_PER_TASK": "2",
                   "SLURM_ARRAY_TASK_ID": str(task), "SLURM_ARRAY_TASK_COUNT": str(len(tasks))}
            subprocess.run(["sh", "job"], cwd=self.folder, env=env, check=True, capture_output=True, timeout=120)
        self.assertEqual(self.sheets("whole"), self.sheets("sheets"))

    @unittest.skipUnless(shutil.which("parallel"), "GNU parallel is not installed")
    def test_gnu_parallel_runs_the_parts(self):
        self.records(6)
        self.lesson("a", into="whole")
        tool("sh", "-c", f"cd {self.folder} && parallel {PROGRAM} lesson a -o parts/ --threads 1 --part {{}}/4 ::: 1 2 3 4")
        self.assertEqual(self.sheets("whole"), self.sheets("parts"))


class Stopped(Batch):
    def stop(self, number, after):
        """Sends a signal to a run that has told `after` sheets; its exit code. The last record is a pipe that
        nobody writes to, so that the run cannot be over before, however late the signal comes."""
        def listen():  # nohup and a shell's '&' start programs deaf, and the run would heed that
            for one in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP):
                signal.signal(one, signal.SIG_DFL)
        process = subprocess.Popen([PROGRAM, "lesson", "a", "pipe", "-o", "out", "--threads", "2"], cwd=self.folder,
                                   preexec_fn=listen, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
        for _ in range(after):
            process.stdout.readline()
        process.send_signal(number)
        process.communicate(timeout=60)
        return process.returncode

    def test_a_signal_leaves_whole_sheets_and_a_rerun_makes_the_rest(self):
        self.records(60)
        self.lesson("a", into="whole")
        whole = self.sheets("whole")
        os.mkfifo(self.folder / "pipe")
        for number, after in ((signal.SIGINT, 1), (signal.SIGTERM, 3), (signal.SIGHUP, 2)):
            shutil.rmtree(self.folder / "out", ignore_errors=True)
            self.assertEqual(self.stop(number, after), 128 + number)
            self.assertGreaterEqual(len(self.sheets()), after)
            self.assertLessEqual(self.sheets().items(), whole.items(), "every file whole")
        self.expect(self.lesson("a"), 0)
        self.assertEqual(self.sheets(), whole)

    def test_what_a_killed_run_left_is_swept_away_but_not_what_a_living_one_writes(self):
        self.records(2)
        (self.folder / "out").mkdir()
        left = self.folder / "out" / ".N00-2026-05-14.pdf.unfinished-Ab12Xy"
        left.write_bytes(b"%PDF")
        private = self.folder / "out" / ".unfinished-notes.txt"
        private.write_text("mine")
        import fcntl
        with open(self.folder / "out" / ".N01-2026-05-14.pdf.unfinished-Cd34Zw", "wb") as living:
            fcntl.flock(living, fcntl.LOCK_EX)
            self.expect(self.lesson("a"), 0)
            self.assertEqual(len(self.sheets()), 4)
        self.expect(self.lesson("a"), 0)
        self.assertEqual(list(self.sheets()), [".unfinished-notes.txt", "N00-2026-05-14.pdf", "N01-2026-05-14.pdf"])


if __name__ == "__main__":
    unittest.main()
