#!/usr/bin/env python3
"""Writes examples/academy again: make_academy.py EXAMPLES_FOLDER. Always the same shots.

house.yaml, people.yaml, one folder a student and one a lesson. Each lesson after the first begins
with cold shots. A left-hander is played as a right-hander and mirrored at the end.
"""
import random
import sys
from datetime import date, timedelta
from pathlib import Path

from academy_people import HOUSE, LESSONS, PEOPLE
from make_shots import MPH, YARD, shot

HEAD = ("number,block,face (deg),path (deg),loft (deg),attack (deg),club speed (mph),ball speed (mph),"
        "launch (deg),start (deg),spin (rpm),carry (yd),offline (yd),set aside")
SIDED = ("face", "path", "start", "offline")


def people_file():
    lines = ["# Who is taught. No dates of birth, no telephone numbers, nothing about health."]
    for code, _, first, family, hand, more, bag in PEOPLE:
        lines.append(f"- code: {code}\n  first name: {first}\n  family name: {family}\n  hand: {hand}\n  {more}\n{bag.rstrip()}")
    return "\n\n".join(lines) + "\n"


def between(a, b, part):
    return a + (b - a) * part


def states(start, goal, kept, count, aim):
    """Middles (face, path, attack) of cold, before and after for each lesson."""
    face, path, attack = start[0], start[1], start[3]
    out = []
    for k in range(count):
        cold = (face, path, attack)
        before = cold
        share = 0.62 if k == 0 else 0.5
        after = (between(face, goal[0], share), between(path, goal[1], share),
                 between(attack, -3.4, share) if aim == "attack" else attack)
        out.append((cold if k else None, before, after))
        face, path, attack = (between(b, a, kept) for b, a in zip(before, after))
    return out


def row(number, block, s, mirrored, aside):
    s = {key: -value if mirrored and key in SIDED else value for key, value in s.items()}
    cells = [f"{s['face']:.1f}", f"{s['path']:.1f}", f"{s['loft']:.1f}", f"{s['attack']:.1f}",
             f"{s['club_speed'] / MPH:.1f}", f"{s['ball_speed'] / MPH:.1f}", f"{s['launch']:.1f}", f"{s['start']:.1f}",
             f"{s['spin']:.0f}", f"{s['carry'] / YARD:.0f}", f"{s['offline'] / YARD:.0f}"]
    return ",".join([str(number), block, *("0.0" if c == "-0.0" else "0" if c == "-0" else c for c in cells), aside])


def table(chance, blocks, start, mirrored, few):
    rows = [HEAD]
    for block, middle in blocks:
        count = few or {"cold": 8, "before": 9, "after": 9}[block]
        heel = chance.randrange(count) if not few and chance.random() < 0.25 else -1
        for n in range(count):
            energy = 0.74 if n == heel else 1.0
            s = shot(chance, middle[0], middle[1], start[2], middle[2], start[4], spread=1.15, energy=energy)
            rows.append(row(len(rows), block, s, mirrored, "off the heel" if n == heel else ""))
    return "\n".join(rows) + "\n"


def quoted(text):
    return f'"{text}"' if any(c in text for c in ":#,") or text[0] in "{[" else text


def record(code, club, aim, number, lesson, following, last):
    day, saw, changed, more = lesson
    lines = [f"student: {code}", f"lesson: {number}", f"club: {club}"]
    if last:
        lines.append(f"last lesson: ../{last}")
    if aim:
        lines.append(f"aim: {aim}")
    lines += [f"saw: {quoted(saw)}", f"changed: {quoted(changed)}"]
    if "why" in more:
        lines.append(f"why: {quoted(more['why'])}")
    if "hold" in more:
        lines += ["grip:", f"  before: {more['hold'][0]}", f"  after: {more['hold'][1]}"]
    if not aim:
        lines.append("shots: none")
    lines.append(f"drills: [{', '.join(more['drills'])}]")
    if "plan" in more:
        lines.append(f"plan: {more['plan']}")
    if "back" in more:
        drill, days, count = more["back"]
        count = count and f", {count}"  # as the sheet's log counts; a junior's has none
        said = f", words: {quoted(more['words'])}" if "words" in more else ""
        lines.append(f"returned: {{drill: {drill}, days done: {days}{count}{said}}}")
    if "note" in more:
        lines.append(f"notes: [{quoted(more['note'])}]")
    lines.append(f"next: {following}")
    return "\n".join(lines) + "\n"


def make(folder):
    academy = folder / "academy"
    academy.mkdir(parents=True, exist_ok=True)
    (academy / "house.yaml").write_text(HOUSE, encoding="utf-8")
    (academy / "people.yaml").write_text(people_file(), encoding="utf-8")
    for code, name, _, _, hand, _, _ in PEOPLE:
        club, aim, start, goal, kept, lessons = LESSONS[code]
        chance = random.Random(code)  # of its own: one more lesson here changes nothing elsewhere
        blocks = states(start, goal, kept, len(lessons), aim) if aim else [None] * len(lessons)
        for n, lesson in enumerate(lessons):
            day = lesson[0]
            here = academy / name / day
            here.mkdir(parents=True, exist_ok=True)
            later = lessons[n + 1][0] if n + 1 < len(lessons) else str(date.fromisoformat(day) + timedelta(days=28))
            last = lessons[n - 1][0] if n else ""
            (here / "lesson.yaml").write_text(record(code, club, aim, n + 1, lesson, later, last), encoding="utf-8")
            if aim:
                named = [(b, m) for b, m in zip(("cold", "before", "after"), blocks[n]) if m]
                (here / "shots.csv").write_text(table(chance, named, start, hand == "left", lesson[3].get("few")), encoding="utf-8")


if __name__ == "__main__":
    make(Path(sys.argv[1] if len(sys.argv) > 1 else "examples"))
