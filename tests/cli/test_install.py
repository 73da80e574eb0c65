"""The installed program needs nothing of its source tree; templates are built in and can be replaced."""
import shutil
import unittest
from pathlib import Path

from program import BUILD, PROGRAM, RIGHT_HAND, ROOT, InFolder, bare_environment, run, tool


class Installed(InFolder):
    def test_the_installed_program_prints_the_same_sheet_from_anywhere(self):
        tool("cmake", "--install", BUILD, "--prefix", self.folder / "opt")
        program = self.folder / "opt" / "bin" / "lessonleaf"
        self.assertTrue(program.is_file())
        lesson = self.folder / "lesson"
        shutil.copytree(RIGHT_HAND.parent, lesson)
        bare = bare_environment()
        done = run("lesson", "lesson.yaml", "-o", "-", program=str(program), folder=lesson, env=bare)
        self.expect(done, 0)
        self.assertEqual(done.stdout, self.expect(run("lesson", RIGHT_HAND, "-o", "-"), 0).stdout)

    def test_the_program_does_not_know_where_its_sources_are(self):
        program = Path(PROGRAM).read_bytes()
        if b".debug_info" in program:
            self.skipTest("a build with debugging information names its sources")
        self.assertNotIn(str(ROOT).encode() + b"/", program)


class Templates(InFolder):
    def sheet(self, *words):
        target = self.folder / "sheet.pdf"
        self.expect(run("lesson", RIGHT_HAND, "-o", target, *words), 0)
        return tool("pdftotext", target, "-")

    def test_a_folder_replaces_one_file_and_leaves_the_others(self):
        own = self.folder / "own" / "drills" / "en" / "hold.yaml"
        own.parent.mkdir(parents=True)
        stock = (ROOT / "templates" / "drills" / "en" / "hold.yaml").read_text(encoding="utf-8")
        self.assertIn("name: Lay and close\n", stock)
        own.write_text(stock.replace("name: Lay and close\n", "name: Line and lid\n"), encoding="utf-8")
        self.assertIn("Lay and close", self.sheet())
        changed = self.sheet("--templates", self.folder / "own")
        self.assertIn("Line and lid", changed)
        self.assertNotIn("Lay and close", changed)
        self.assertIn("What is my one thing?", changed)

    def test_a_fault_in_a_template_is_told_with_its_place(self):
        own = self.folder / "own" / "drills" / "en" / "hold.yaml"
        own.parent.mkdir(parents=True)
        own.write_text("- id: H1\n  familly: hold\n", encoding="utf-8")
        done = run("lesson", RIGHT_HAND, "-o", self.folder / "sheet.pdf", "--templates", self.folder / "own")
        self.expect(done, 1, "hold.yaml:2:3", "did you mean 'family'?")
        self.assertFalse((self.folder / "sheet.pdf").exists())

    def test_drills_above_the_record_replace_and_add(self):
        lesson = self.folder / "academy" / "ruth"
        shutil.copytree(RIGHT_HAND.parent, lesson)
        (self.folder / "academy" / "drills.yaml").write_text(
            "- {id: H1, family: hold, name: Our own lay, purpose: It is ours., need: Club, space: no swing,\n"
            "   dose: 5 times, check: \"Is it right?\", steps: [Take your hold., Look down.]}\n", encoding="utf-8")
        target = self.folder / "sheet.pdf"
        self.expect(run("lesson", lesson / "lesson.yaml", "-o", target), 0)
        self.assertIn("Our own lay", tool("pdftotext", target, "-"))


if __name__ == "__main__":
    unittest.main()
