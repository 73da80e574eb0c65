"""The built program, run as a coach would run it. LESSONLEAF names it; BUILD_DIR its build folder."""
import os
import subprocess
import tempfile
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
BUILD = Path(os.environ.get("BUILD_DIR", ROOT / "build" / "dev"))
PROGRAM = os.environ.get("LESSONLEAF", str(BUILD / "lessonleaf"))
RECORDS = sorted((ROOT / "examples").glob("*/lesson.yaml"))
RIGHT_HAND = ROOT / "examples" / "right-hand" / "lesson.yaml"

SMALL_RECORD = """student: {name: Ada, code: AD-01, hand: right}
date: 2026-05-14
saw: The face pointed right of target.
changed: The handle now lies in the fingers.
"""


# Drawings kept by the tests of one program stay with them.
CACHE = tempfile.TemporaryDirectory(prefix="lessonleaf-cache-")
os.environ["XDG_CACHE_HOME"] = CACHE.name


def bare_environment(**more):
    """Nothing but a path, and what the leak checker of a sanitizer build must know."""
    kept = {name: value for name, value in os.environ.items() if name.startswith("LSAN")}
    return {"PATH": "/usr/bin", **kept, **more}


def run(*words, program=None, folder=None, env=None):
    """Runs the program; standard output as bytes, standard error as text."""
    done = subprocess.run([program or PROGRAM, *map(str, words)], cwd=folder, env=env,
                          stdin=subprocess.DEVNULL, capture_output=True, timeout=120)
    done.stderr = done.stderr.decode("utf-8")
    return done


def tool(*words):
    """What another program prints; fails when it does not exit with 0."""
    done = subprocess.run(list(map(str, words)), capture_output=True, timeout=120)
    if done.returncode != 0:
        raise AssertionError(f"{words[0]} failed: {done.stdout!r} {done.stderr!r}")
    return done.stdout.decode("utf-8")


class InFolder(unittest.TestCase):
    """Every test gets a folder of its own that is gone afterwards."""

    def setUp(self):
        holder = tempfile.TemporaryDirectory(prefix="lessonleaf-")
        self.addCleanup(holder.cleanup)
        self.folder = Path(holder.name)

    def record(self, name="lesson.yaml", text=SMALL_RECORD):
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
        return path

    def files(self):
        """All files below the folder, hidden ones too."""
        return sorted(str(p.relative_to(self.folder)) for p in self.folder.rglob("*") if p.is_file())

    def expect(self, done, code, *said):
        self.assertEqual(done.returncode, code, done.stderr)
        for text in said:
            self.assertIn(text, done.stderr)
        return done
