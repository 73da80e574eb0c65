"""Drawings kept between runs change how long a sheet takes and nothing else."""
import os

from program import RIGHT_HAND, InFolder, run


class KeptDrawings(InFolder):
    def lesson(self, name, *words, cache="cache"):
        target = self.folder / name
        env = {**os.environ, "XDG_CACHE_HOME": str(self.folder / cache)}
        done = run("lesson", RIGHT_HAND, "-o", target, *words, env=env)
        self.expect(done, 0)
        return target.read_bytes()

    def kept(self):
        return sorted(p for p in (self.folder / "cache").rglob("*") if p.is_file())

    def test_a_warm_run_writes_the_bytes_of_a_cold_one(self):
        cold = self.lesson("cold.pdf")
        kept = self.kept()
        self.assertGreaterEqual(len(kept), 8)
        self.assertTrue(all(p.parent == self.folder / "cache" / "lessonleaf" for p in kept))
        self.assertEqual(self.lesson("warm.pdf"), cold)
        self.assertEqual(self.kept(), kept)
        self.assertEqual(self.lesson("off.pdf", "--no-cache"), cold)

    def test_the_option_keeps_nothing(self):
        self.lesson("sheet.pdf", "--no-cache")
        self.assertFalse((self.folder / "cache").exists())

    def test_spoilt_files_are_drawn_anew(self):
        cold = self.lesson("cold.pdf")
        whole = {p: p.read_bytes() for p in self.kept()}
        for i, path in enumerate(whole):
            text = bytearray(path.read_bytes())
            if i % 3 == 0:
                text = text[: len(text) // 2]
            elif i % 3 == 1:
                text[-40] ^= 255
            else:
                text = bytearray()
            path.write_bytes(text)
        self.assertEqual(self.lesson("again.pdf"), cold)
        self.assertEqual({p: p.read_bytes() for p in self.kept()}, whole)

    def test_a_folder_that_cannot_be_used_is_no_fault(self):
        (self.folder / "cache").write_text("a file stands in the way")
        done = run("lesson", RIGHT_HAND, "-o", self.folder / "sheet.pdf",
                   env={**os.environ, "XDG_CACHE_HOME": str(self.folder / "cache")})
        self.assertEqual((done.returncode, done.stderr), (0, ""))
