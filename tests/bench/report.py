"""All figures of tests/bench/run, as they stand in DEVELOPERS.md."""
import os
import re
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
BUILD, LAST = Path(sys.argv[1]).resolve(), int(sys.argv[2])
PROGRAM = BUILD / "lessonleaf"
RIGHT_HAND = ROOT / "examples" / "right-hand"


def measured(*words, folder):
    """Wall seconds, processor seconds and peak MiB of one run."""
    begun = time.monotonic()
    process = subprocess.Popen([PROGRAM, *map(str, words)], cwd=folder, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, usage = os.wait4(process.pid, 0)
    if status:
        raise SystemExit(f"{words} failed: {status}")
    return time.monotonic() - begun, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024


def median(values):
    return sorted(values)[len(values) // 2]


def records(folder, count):
    """`count` copies of the first example, each with a code of its own."""
    text = (RIGHT_HAND / "lesson.yaml").read_text(encoding="utf-8")
    for i in range(count):
        below = folder / f"{i:05d}"
        below.mkdir(parents=True, exist_ok=True)
        (below / "lesson.yaml").write_text(re.sub(r"code: [^,}]+", f"code: N-{i:05d}", text), encoding="utf-8")
        shutil.copy(RIGHT_HAND / "shots.csv", below)


def first_byte(folder):
    """Milliseconds from the start to the first byte: of a version, and of a sheet with drawings kept."""
    out = []
    for words in (["--version"], ["lesson", str(folder / "few" / "00000" / "lesson.yaml"), "-o", "-", "--threads", "1"]):
        times = []
        for _ in range(9):
            begun = time.monotonic()
            process = subprocess.Popen([PROGRAM, *words], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
            process.stdout.read(1)
            times.append((time.monotonic() - begun) * 1000)
            process.stdout.read()
            process.wait()
        out.append(median(times))
    return out


def shots(folder, count):
    """A record with `count` shots, half before and half after."""
    lines = (RIGHT_HAND / "shots.csv").read_text(encoding="utf-8").splitlines()
    head, rows = lines[0], [line.split(",") for line in lines[1:] if line]
    names = [name.strip() for name in head.split(",")]
    block, number = names.index("block"), names.index("number") if "number" in names else None
    kinds = {kind: [row for row in rows if row[block].strip() == kind] for kind in ("before", "after")}
    table = [head]
    for i in range(count):
        kind = "before" if i < count // 2 else "after"
        row = list(kinds[kind][i % len(kinds[kind])])
        if number is not None:
            row[number] = str(i + 1)
        for at, cell in enumerate(row):  # no two shots alike
            if at not in (block, number) and re.fullmatch(r"-?\d+\.\d+", cell):
                row[at] = f"{float(cell) + (i // 7) * 0.001:.4f}"
        table.append(",".join(row))
    below = folder / f"shots-{count}"
    below.mkdir()
    shutil.copy(RIGHT_HAND / "lesson.yaml", below)
    (below / "shots.csv").write_text("\n".join(table) + "\n", encoding="utf-8")
    return below / "lesson.yaml"


def main():
    print(time.strftime("%Y-%m-%d"), os.cpu_count(), "cores")
    print(subprocess.run([BUILD / "tests/bench/bench_lesson", RIGHT_HAND / "lesson.yaml", "4"], check=True, capture_output=True, text=True).stdout)
    print(subprocess.run([BUILD / "tests/bench/bench_ball", "--benchmark_min_time=0.5"], check=True, capture_output=True, text=True).stdout)
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        records(folder / "few", 1)
        measured("lesson", "few", "-o", "out-few/", folder=folder)
        version, sheet = first_byte(folder)
        print(f"first byte: {version:.0f} ms of --version, {sheet:.0f} ms of a sheet\n")
        print("| records | wall s | CPU s | CPU ms a record | peak MiB | up to date, wall s |\n| ---: | ---: | ---: | ---: | ---: | ---: |")
        count = 1
        while count <= LAST:
            records(folder / str(count), count)
            wall, cpu, peak = measured("lesson", str(count), "-o", f"out-{count}", "--threads", "1", folder=folder)
            again, _, _ = measured("lesson", str(count), "-o", f"out-{count}", "--threads", "1", folder=folder)
            print(f"| {count:,} | {wall:.2f} | {cpu:.2f} | {cpu / count * 1000:.1f} | {peak:.0f} | {again:.2f} |", flush=True)
            count *= 10
        many = count // 10
        one, _, _ = measured("lesson", str(many), "-o", "out-1t", "--threads", "1", folder=folder)
        two, _, peak = measured("lesson", str(many), "-o", "out-2t", "--threads", "2", folder=folder)
        print(f"\ntwo threads: {one / two:.2f} times one ({one:.2f} s, {two:.2f} s, peak {peak:.0f} MiB)\n")
        print("| shots | CPU ms a sheet |\n| ---: | ---: |")
        for number in (10, 40, 100, 300, 1000, 2000):
            record = shots(folder, number)
            cpu = median([measured("lesson", record, "-o", "shots.pdf", "--all", folder=folder)[1] for _ in range(3)])
            print(f"| {number:,} | {cpu * 1000:.0f} |", flush=True)


main()
