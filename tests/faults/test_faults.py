"""What the world does to a run: full disks, closed folders, vanished folders, kills, a second run.

Always the same promise: no half file under a final name, no earlier file lost, a clear finding and
exit code 3. LESSONLEAF_KILLS=200 kills that many runs (20 otherwise)."""
import errno
import os
import random
import re
import resource
import shutil
import signal
import subprocess
import sys
import tempfile
import threading
import time
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "cli"))
from program import PROGRAM, SMALL_RECORD, InFolder, run  # noqa: E402

SHIM = Path(__file__).with_name("shim.c")
SANITIZED = b"__asan_init" in Path(PROGRAM).read_bytes() or b"__tsan_init" in Path(PROGRAM).read_bytes()


class Faults(InFolder):
    def setUp(self):
        super().setUp()
        self.folder.chmod(0o755)

    def records(self, count, **other):
        for i in range(count):
            self.record(f"a/{i:02d}/lesson.yaml", SMALL_RECORD.replace("AD-01", f"N{i:02d}"))
        return run("lesson", "a", "-o", "whole", folder=self.folder)

    def content(self, folder):
        return {p.name: p.read_bytes() for p in (self.folder / folder).iterdir()}

    def older_sheets(self, count):
        """Sheets of an earlier day in out/, of records that have changed since."""
        for i in range(count):
            self.record(f"old/{i:02d}/lesson.yaml", SMALL_RECORD.replace("AD-01", f"N{i:02d}").replace("fingers", "palm"))
        run("lesson", "old", "-o", "out", folder=self.folder)
        return self.content("out")


@unittest.skipIf(SANITIZED, "a sanitizer's runtime must be loaded first")
class CallsThatFail(Faults):
    @classmethod
    def setUpClass(cls):
        holder = tempfile.TemporaryDirectory(prefix="lessonleaf-shim-")
        cls.addClassCleanup(holder.cleanup)
        cls.shim = str(Path(holder.name) / "shim.so")
        subprocess.run(["cc", "-shared", "-fPIC", "-O1", "-o", cls.shim, str(SHIM), "-ldl"], check=True)

    def with_fault(self, fault, *words):
        return run(*words, folder=self.folder, env={**os.environ, "LD_PRELOAD": self.shim, "FAULT": fault})

    def test_whatever_step_of_writing_fails_the_older_sheet_stays_and_nothing_is_left(self):
        self.records(3)
        old = self.older_sheets(3)
        for call in ("mkostemp", "write", "fsync", "rename"):
            for number in (errno.ENOSPC, errno.EIO, errno.EDQUOT, errno.EROFS):
                with self.subTest(call=call, number=errno.errorcode[number]):
                    done = self.with_fault(f"{call}:{number}:1:out/", "lesson", "a", "-o", "out")
                    self.expect(done, 3, "cannot write 'out/N00-2026-05-14.pdf'", os.strerror(number))
                    self.assertEqual(self.content("out"), old)

    def test_a_disk_that_fills_up_keeps_what_was_written_before(self):
        self.records(5)
        whole, old = self.content("whole"), self.older_sheets(5)
        done = self.with_fault(f"write:{errno.ENOSPC}:3:out/", "lesson", "a", "-o", "out", "--threads", "1")
        self.expect(done, 3, os.strerror(errno.ENOSPC), "5 records: 2 written, 0 up to date, 3 failed")
        now = self.content("out")
        self.assertEqual([now[name] == whole[name] for name in sorted(now)], [True, True, False, False, False])
        self.assertEqual([now[name] == old[name] for name in sorted(now)], [False, False, True, True, True])

    def test_a_read_error_half_way_is_told_and_harms_no_other_record(self):
        self.records(3)
        for name in ("lesson.yaml", "shots.csv"):
            self.record(f"a/01/{name}", SMALL_RECORD.replace("AD-01", "N01") + "shots: shots.csv\n" + "#" * 200000)
            done = self.with_fault(f"read:{errno.EIO}:2:a/01/{name}", "lesson", "a", "-o", name)
            self.expect(done, 3 if name == "lesson.yaml" else 1, f"{'a/01/lesson.yaml' if name == 'lesson.yaml' else name}' cannot be read")
            self.assertEqual(len(self.content(name)), 2)
            self.record("a/01/lesson.yaml", SMALL_RECORD.replace("AD-01", "N01") + "shots: shots.csv\n")


class Limits(Faults):
    def test_a_file_that_may_grow_no_further_is_a_failure_to_write(self):
        self.records(1)
        old = self.older_sheets(1)
        limit = lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (20000, 20000))
        done = subprocess.run([PROGRAM, "lesson", "a", "-o", "out/"], cwd=self.folder, preexec_fn=limit,
                              capture_output=True, timeout=60)
        self.assertEqual(done.returncode, 3, done.stderr)
        self.assertIn(b"cannot write 'out/N00-2026-05-14.pdf'", done.stderr)
        self.assertEqual(self.content("out"), old)

    def test_a_folder_that_may_not_be_written_or_read(self):
        self.records(2)
        old = self.older_sheets(2)
        user = {"user": 65534, "group": 65534} if os.geteuid() == 0 else {}
        (self.folder / "out").chmod(0o555)
        (self.folder / "a" / "01").chmod(0o000)
        self.addCleanup((self.folder / "a" / "01").chmod, 0o755)
        self.addCleanup((self.folder / "out").chmod, 0o755)
        done = subprocess.run([PROGRAM, "lesson", "a", "-o", "out"], cwd=self.folder, capture_output=True, timeout=60, **user)
        self.assertEqual(done.returncode, 3, done.stderr)
        self.assertIn("the folder 'a/01' cannot be read: Permission denied", done.stderr.decode())
        self.assertIn("Permission denied", done.stderr.decode().split("out/N00-2026-05-14.pdf")[1])
        self.assertEqual(self.content("out"), old)

    def test_no_binder_and_no_account_is_whole_without_a_folder_that_may_not_be_read(self):
        self.records(2)
        self.record("people.yaml", "- {code: N00, first name: Ada, hand: right}\n")
        user = {"user": 65534, "group": 65534} if os.geteuid() == 0 else {}
        (self.folder / "a" / "01").chmod(0o000)
        self.addCleanup((self.folder / "a" / "01").chmod, 0o755)
        for words, code in ((("binder", ".", "--student", "N00", "-o", "-"), 1), (("held", ".", "--student", "N00"), 3)):
            with self.subTest(command=words[0]):
                done = subprocess.run([PROGRAM, *words], cwd=self.folder, capture_output=True, timeout=60, **user)
                self.assertEqual(done.returncode, code, done.stderr)
                self.assertIn("a/01' cannot be read: Permission denied", done.stderr.decode())

    def test_a_folder_that_vanishes_is_told_for_each_sheet_that_is_lost(self):
        self.records(10)
        whole = self.content("whole")
        pipe = self.folder / "pipe"  # the second record: the run waits for it until the folder is gone
        os.mkfifo(pipe)
        process = subprocess.Popen([PROGRAM, "lesson", "a/00/lesson.yaml", "pipe", "a", "-o", "out", "--threads", "1"],
                                   cwd=self.folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
        process.stdout.readline()
        (self.folder / "out").rename(self.folder / "gone")
        pipe.write_text(SMALL_RECORD, encoding="utf-8")
        _, err = process.communicate(timeout=120)
        self.assertEqual(process.returncode, 3, err)
        self.assertIn("11 records: 1 written, 0 up to date, 10 failed", err.decode())
        self.assertEqual(len(re.findall(r"^lessonleaf: cannot write 'out/[^']*': there is no folder", err.decode(), re.M)), 10)
        self.assertEqual(self.content("gone").items(), {"N00-2026-05-14.pdf": whole["N00-2026-05-14.pdf"]}.items())


class Kills(Faults):
    def test_a_kill_at_any_moment_leaves_whole_sheets_and_a_rerun_makes_the_rest(self):
        self.records(12)
        whole = self.content("whole")
        old = self.older_sheets(6)
        chance = random.Random(8)
        begun = time.monotonic()
        run("lesson", "a", "-o", "timed", folder=self.folder)
        usual = time.monotonic() - begun
        self.kill_often(["lesson", "a", "-o", "out", "--all"], old, whole, usual, chance)
        self.assertEqual(run("lesson", "a", "-o", "out", folder=self.folder).returncode, 0)
        self.assertEqual(self.content("out"), whole)

    def kill_often(self, words, old, whole, usual, chance):
        """Every file in out/ is what it was or what it is to be, and at least one run was cut short."""
        cut = 0
        for _ in range(int(os.environ.get("LESSONLEAF_KILLS", "20"))):
            process = subprocess.Popen([PROGRAM, *words], cwd=self.folder, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            time.sleep(chance.uniform(0, usual))
            process.send_signal(signal.SIGKILL)
            cut += process.wait(timeout=60) != 0
            for name, content in self.content("out").items():
                if name.startswith("."):
                    self.assertRegex(name, r"^\.[\w-]+\.(pdf|csv|txt)\.unfinished-.{6}$")
                else:
                    self.assertIn(content, (whole[name], old.get(name)), name)
        self.assertGreater(cut, 0, "every run was over before its kill")

    def test_a_kill_leaves_whole_binders_and_whole_papers_of_a_term(self):
        chance = random.Random(5)
        for name, text in (("a", SMALL_RECORD), ("b", SMALL_RECORD.replace("2026-05-14", "2026-06-18"))):
            for i in range(6):
                self.record(f"in/{name}{i}/lesson.yaml", text.replace("AD-01", f"N{i:02d}"))
        self.record("in/term.yaml", "term: Summer\nfrom: 2026-05-01\nto: 2026-07-30\ngroup page: yes\n")
        commands = (["binder", "in", "-o", "out/"], ["term", "in/term.yaml", "-o", "out"])
        for words in commands:
            self.assertEqual(run(*words, folder=self.folder).returncode, 0)
        old = self.content("out")
        self.assertEqual(len(old), 6 + 6 + 5)
        for i in range(6):
            path = self.folder / f"in/b{i}/lesson.yaml"
            path.write_text(path.read_text().replace("fingers", "palm") + "revision: 2\n")
        shutil.copytree(self.folder / "out", self.folder / "older")
        begun = time.monotonic()
        for words in commands:
            self.assertEqual(run(*words, folder=self.folder).returncode, 0)
        usual = (time.monotonic() - begun) / 2
        whole = self.content("out")
        self.assertNotEqual(whole, old)
        shutil.rmtree(self.folder / "out")
        (self.folder / "older").rename(self.folder / "out")
        for words in commands:
            self.kill_often(words, old, whole, usual, chance)
            self.assertEqual(run(*words, folder=self.folder).returncode, 0)
        self.assertEqual(self.content("out"), whole)

    def test_two_runs_at_once_in_one_folder(self):
        self.records(12)
        whole = self.content("whole")
        command = [PROGRAM, "lesson", "a", "-o", "out", "--all", "--threads", "2"]
        for _ in range(3):
            both = [subprocess.Popen(command, cwd=self.folder, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE) for _ in range(2)]
            for process in both:
                _, err = process.communicate(timeout=120)
                self.assertEqual(process.returncode, 0, err)
            self.assertEqual(self.content("out"), whole)

    def test_two_terms_and_two_runs_of_binders_at_once_in_one_folder(self):
        for i in range(8):
            self.record(f"in/{i}/lesson.yaml", SMALL_RECORD.replace("AD-01", f"N{i:02d}"))
        self.record("in/term.yaml", "term: Summer\nfrom: 2026-05-01\nto: 2026-07-30\n")
        for words in (["binder", "in"], ["term", "in/term.yaml"]):
            run(*words, "-o", "whole/", folder=self.folder)
            command = [PROGRAM, *words, "-o", "out/", "--all", "--threads", "2"]
            both = [subprocess.Popen(command, cwd=self.folder, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE) for _ in range(2)]
            for process in both:
                _, err = process.communicate(timeout=120)
                self.assertEqual(process.returncode, 0, err)
            self.assertEqual(self.content("out"), self.content("whole"))


class HugeAndHostile(Faults):
    """A finding in bounded time and memory, whatever the bytes."""

    def limited(self, text, megabytes=700, seconds=20):
        path = self.folder / "lesson.yaml"
        path.write_bytes(text)
        begun = time.monotonic()
        limit = None if SANITIZED else lambda: resource.setrlimit(resource.RLIMIT_AS, (megabytes << 20, megabytes << 20))
        done = subprocess.run([PROGRAM, "check", str(path)], preexec_fn=limit, capture_output=True, timeout=seconds * 6)
        self.assertEqual(done.returncode, 1, done.stderr[-2000:])
        self.assertIn(b"error: ", done.stderr)
        self.assertLess(len(done.stderr), 20000)
        done.stderr.decode("utf-8")
        self.assertLess(time.monotonic() - begun, seconds * (5 if SANITIZED else 1))
        return done.stderr.decode("utf-8")

    def test_aliases_that_double_and_double(self):
        bomb = "a0: &a0 [x, x]\n" + "".join(f"a{i}: &a{i} [*a{i-1}, *a{i-1}]\n" for i in range(1, 60))
        self.limited(bomb.encode())

    def test_ten_thousand_levels(self):
        for opening in (b"[", b"{", b"- ", b"a: {", b"? ", b"{a: ["):
            self.limited(b"saw: " + opening * 10000)
        self.limited(b"".join(b" " * i + b"a:\n" for i in range(10000)))

    def test_a_line_of_a_hundred_megabytes(self):
        self.assertIn("longer than", self.limited(b"saw: " + b"a" * 100_000_000))

    def test_zeros_and_broken_text(self):
        self.limited(b"\0" * 1_000_000)
        self.limited(SMALL_RECORD.encode() + b"notes: [\"\0\"]\n")
        for piece in (b"\xff", b"\xc0\x80", b"\xed\xa0\x80", b"\xf4\x90\x80\x80", b"\xe2\x82", b"\x80"):
            self.limited(SMALL_RECORD.encode() + b"why: " + piece * 2 + b"\n")

    def test_a_device_without_end(self):
        self.record(text=SMALL_RECORD)
        (self.folder / "zero").symlink_to("/dev/zero")
        done = run("check", "--outside", "zero", folder=self.folder)
        self.assertNotEqual(done.returncode, 0)

    def test_files_outside_the_folder_of_the_record_are_refused_unless_allowed(self):
        self.record("secret.csv", "block,face\nbefore,1\n")
        self.record("a/beside/shots.csv", "block,face\nbefore,1\n")
        (self.folder / "a" / "link.csv").symlink_to(self.folder / "secret.csv")
        inside, outside = ["beside/shots.csv", "beside/../beside/shots.csv"], ["../secret.csv", str(self.folder / "secret.csv"), "link.csv"]
        for name in inside + outside:
            with self.subTest(name=name):
                path = self.record("a/lesson.yaml", SMALL_RECORD + f"shots: {{file: {name}, sign: open is positive}}\n")
                done = run("check", path)
                self.assertEqual("does not lie in the record's folder" in done.stderr, name in outside, done.stderr)
                self.assertNotIn("does not lie", run("check", "--outside", path).stderr)
        (self.folder / "p.png").write_bytes(b"\x89PNG")
        (self.folder / "a" / "link.png").symlink_to(self.folder / "p.png")
        path = self.record("a/lesson.yaml", SMALL_RECORD + "photographs: {before: link.png}\n")
        self.expect(run("check", path), 1, "does not lie in the folder of the file that names it", "--outside")


if __name__ == "__main__":
    unittest.main()
