"""Writes COUNT invented records, prints them in one batch and holds every sheet to qpdf --check.

    tests/bench/bulk.py PROGRAM COUNT [FOLDER [THREADS]]

Names in four scripts, both hands, six languages, A4 and Letter, large print, juniors, 0 to 34 shots, with and
without a hold; the same every time. Prints how many were written and how many qpdf found fault with."""
import concurrent.futures
import random
import resource
import subprocess
import sys
import tempfile
import time
from pathlib import Path

NAMES = ["Ada", "Bram", "Noor", "Þóra", "Ζωή", "Ελένη", "Борис", "Анна", "משה", "Grzegorz"]
LANGUAGES = ["en-GB", "en-US", "de", "fr", "es", "sv"]
LAYS, PADS = ["fingers", "between", "palm"], ["on top", "beside"]


def hold(dice):
    return (f"{{lay: {dice.choice(LAYS)}, knuckles: {dice.choice([0, 1, 1.5, 2, 2.5, 3])}, "
            f"heel pad: {dice.choice(PADS)}}}")


def record(dice, number):
    lines = [f'student: {{name: "{dice.choice(NAMES)}", code: B-{number:05d}, hand: {dice.choice(["right", "left"])}, '
             f'age: {dice.choice(["adult"] * 4 + ["junior"])}}}', f"date: 2026-{dice.randint(3, 9):02d}-{dice.randint(1, 28):02d}",
             f"language: {dice.choice(LANGUAGES)}", f'paper: {dice.choice(["A4", "Letter"])}',
             f'large print: {dice.choice(["no"] * 9 + ["yes"])}', "units: {distance: metres, speed: km/h}",
             "club: {name: seven iron, loft: 33, lie: 62.5}",
             "aim: {measure: face, want: 2 L to 2 R, named before: yes}",
             'saw: "The face pointed right of target."', 'changed: "The handle now lies in the fingers."']
    if dice.random() < 0.9:
        lines.append(f"grip: {{before: {hold(dice)}, after: {hold(dice)}}}")
    lines.append(f"drills: [{', '.join(dice.sample(['H1', 'H3', 'H4', 'F1', 'F4', 'P1', 'S2'], dice.randint(1, 2)))}]")
    return lines


def table(dice, shots):
    rows = ["number,block,face (deg),path (deg),club speed (km/h),ball speed (km/h),start (deg),carry (m),offline (m)"]
    for i in range(shots):
        late = i >= shots // 2
        face, path = dice.gauss(1 if late else 8, 1.5), dice.gauss(-2, 1.2)
        club = dice.gauss(125, 3)
        start = 0.75 * face + 0.25 * path
        carry = dice.gauss(132 if late else 120, 4)
        rows.append(f"{i + 1},{'after' if late else 'before'},{face:.1f},{path:.1f},{club:.1f},{club * 1.36:.1f},{start:.1f},"
                    f"{carry:.0f},{carry * (start + (face - path) * 0.6) / 57.3:.1f}")
    return "\n".join(rows) + "\n"


def write_all(folder, count):
    dice = random.Random(2026)
    for number in range(count):
        below = folder / "in" / f"{number:05d}"
        below.mkdir(parents=True)
        lines, shots = record(dice, number), dice.choice([0, 2, 6, 12, 20, 34])
        if shots:
            lines.append("shots: {file: shots.csv, sign: right is positive}")
            (below / "shots.csv").write_text(table(dice, shots), encoding="utf-8")
        (below / "lesson.yaml").write_text("\n".join(lines) + "\n", encoding="utf-8")


def sound(path):
    return subprocess.run(["qpdf", "--check", path], capture_output=True).returncode == 0


def main(program, count, folder, *threads):
    write_all(folder, count)
    begun = time.monotonic()
    done = subprocess.run([program, "lesson", folder / "in", "-o", folder / "out", *threads], capture_output=True, text=True)
    wall = time.monotonic() - begun
    peak = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
    sheets = sorted((folder / "out").glob("*.pdf"))
    print(f"{len(sheets)} of {count} written in {wall:.0f} s, {1000 * wall / count:.1f} ms each, peak {peak:.0f} MiB, exit {done.returncode}")
    with concurrent.futures.ThreadPoolExecutor() as pool:
        bad = [path for path, fine in zip(sheets, pool.map(sound, sheets)) if not fine]
    print(f"{len(sheets) - len(bad)} pass qpdf --check, {len(bad)} do not")
    return 0 if len(sheets) == count and not bad and done.returncode == 0 else 1


if __name__ == "__main__":
    target = Path(sys.argv[3]) if len(sys.argv) > 3 else Path(tempfile.mkdtemp(prefix="bulk-"))
    threads = ["--threads", sys.argv[4]] if len(sys.argv) > 4 else []
    raise SystemExit(main(sys.argv[1], int(sys.argv[2]), target, *threads))
