"""Invented lessons of one student, four weeks and more, written by a seeded generator."""
import random
from datetime import date, timedelta

HOLDS = ("{lay: palm, knuckles: 1, V: chin, heel pad: beside, gap: yes, balance: falls, square: no, fingers first: no}",
         "{lay: fingers, knuckles: 2, V: trail eye, heel pad: on top, gap: no, balance: stays, square: yes, "
         "fingers first: yes}")


def shots(rng, middle, n, block, spread=1.4):
    rows = []
    for _ in range(n):
        face = rng.gauss(middle, spread)
        path = rng.gauss(-2.0, 0.8)
        speed = rng.gauss(76, 1.0)
        carry = 138 - 0.9 * abs(face) + rng.gauss(0, 3)
        rows.append(f"{block},{face:.1f},{path:.1f},{29 + face * 0.45:.1f},{speed:.1f},{carry:.0f}")
    return rows


def lesson(folder, n, day, *, name="Mara", code="MA-11", hand="right", age="adult", before=9.0, after=3.0,
           cold=None, returned=None, extra="", seed=7):
    """Writes one lesson folder; `cold` is the middle of the cold block that tests the lesson before."""
    rng = random.Random(f"{seed} {code} {n}")
    side = -1 if hand == "left" else 1
    place = folder / code / day.isoformat()
    place.mkdir(parents=True, exist_ok=True)
    rows = ["block,face,path,loft,club speed (mph),carry (yd)"]
    if cold is not None:
        rows += shots(rng, side * cold, 10, "cold")
    rows += shots(rng, side * before, 10, "before") + shots(rng, side * after, 10, "after")
    (place / "shots.csv").write_text("\n".join(rows) + "\n", encoding="utf-8")
    wanted = "2 L to 4 R" if hand == "right" else "4 L to 2 R"
    back = f"returned: {{drill: {returned}, days done: 10, right first: 8 of 10}}\n" if returned else ""
    record = f"""student: {{name: {name}, code: {code}, hand: {hand}, age: {age}, says: "I want to start the ball at the flag."}}
coach: {{name: Ines Marsh, contact: "ines@marsh-lessons.example", academy: Alder Lane Golf}}
date: {day.isoformat()}
lesson: {n}
units: {{distance: yards, speed: mph}}
club: {{name: seven iron, loft: 32, lie: 62.5}}
aim: {{measure: face, want: {wanted}, worth having: 2}}
saw: "The handle lay in the palm, and the face looked away from the flag."
changed: "The handle lies across the fingers, and the pad sits on top."
grip:
  before: {HOLDS[0]}
  after: {HOLDS[1]}
targets: ["Two knuckles when you look down"]
shots: {{file: shots.csv, sign: right is positive}}
drills: [{"H1" if n < 3 else "F1"}]
plan: {{when: the kettle goes on, where: in the kitchen, instead: do three and go}}
next: {(day + timedelta(days=14)).isoformat()}
{back}{extra}"""
    (place / "lesson.yaml").write_text(record, encoding="utf-8")
    return place / "lesson.yaml"


def course(folder, lessons=4, **who):
    """Lessons two weeks apart, one gap of six weeks, each with a cold test of the one before."""
    day = date(2026, 3, 5)
    written = []
    for n in range(1, lessons + 1):
        written.append(lesson(folder, n, day, before=9.5 - n, after=4.0 - 0.6 * n,
                              cold=None if n == 1 else 5.2 - 0.7 * n, returned="H1" if n == 3 else None, **who))
        day += timedelta(days=42 if n == 2 else 14)
    return written
