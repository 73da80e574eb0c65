#!/usr/bin/env python3
"""Writes the shot tables of the examples again: make_shots.py EXAMPLES_FOLDER. Always the same shots."""
import random
import sys
from pathlib import Path

from ball import fly, strike

YARD, MPH, KMH = 0.9144, 0.44704, 1 / 3.6


def shot(chance, face, path, loft, attack, speed, spread=1.0, energy=1.0):
    """One shot around the given middle values; loft follows the face by 0.52 for each degree."""
    f = chance.gauss(face, 1.5 * spread)
    p = chance.gauss(path, 1.1 * spread)
    a = chance.gauss(attack, 0.7 * spread)
    v = chance.gauss(speed, 0.4 * spread)
    l = chance.gauss(loft, 0.5 * spread) + 0.52 * f
    out = {"face": f, "path": p, "loft": l, "attack": a, "club_speed": v}
    out.update(strike(f, p, l, a, v, energy * (1 - abs(chance.gauss(0, 0.012 * spread)))))
    out.update(fly(out))
    return out


def right_hand(folder):
    """A face that starts far open: yards, miles per hour, our own headers."""
    chance = random.Random(7140)
    head = ("number,block,club speed (mph),ball speed (mph),face,path,loft,attack,launch,start,"
            "spin,axis,carry (yd),offline (yd),apex (yd),landing,set aside")
    rows = [head]
    for n in range(1, 25):
        before = n <= 12
        heel = n == 9
        middle = (11, -3.4, 24.2, -3.2, 78.0 * MPH) if before else (2.5, -1.8, 24.6, -3.4, 79.6 * MPH)
        s = shot(chance, *middle, energy=0.72 if heel else 1.0)
        if heel:
            s["start"] += 6.5
            s.update(fly(s))
        rows.append(",".join([
            str(n), "before" if before else "after", f"{s['club_speed'] / MPH:.1f}",
            f"{s['ball_speed'] / MPH:.1f}", f"{s['face']:.1f}", f"{s['path']:.1f}", f"{s['loft']:.1f}",
            f"{s['attack']:.1f}", f"{s['launch']:.1f}", f"{s['start']:.1f}", f"{s['spin']:.0f}",
            f"{s['axis']:.1f}", f"{s['carry'] / YARD:.0f}", f"{s['offline'] / YARD:.0f}",
            f"{s['apex'] / YARD:.0f}", f"{s['landing']:.0f}", "struck off the heel" if heel else ""]))
    (folder / "right-hand" / "shots.csv").write_text("\n".join(rows) + "\n", encoding="utf-8")


def left_hand(folder):
    """A left-hander who hooks: metres, km/h, semicolons, decimal commas, open positive, own column words."""
    chance = random.Random(2911)
    head = ("Nr;Teil;Tempo Kopf;Tempo Ball;Blatt;Schwungbahn;Loft am Ball;Treffwinkel;Abhebung;"
            "Startlinie;Drehung;Flugweite;Querlage;Anmerkung")
    rows = ["\ufeff" + head, ";;km/h;km/h;°;°;°;°;°;°;rpm;m;m;"]
    blocks = ["E"] * 3 + ["K"] * 6 + ["V"] * 10 + ["N"] * 10
    middles = {"E": (3.0, -3.6, 22.6, -3.4, 33.6), "K": (3.3, -4.0, 22.4, -3.6, 34.2),
               "V": (4.4, -4.4, 22.2, -3.8, 34.4), "N": (-1.3, -3.0, 23.2, -4.0, 34.6)}

    def comma(value, digits):
        return f"{value:.{digits}f}".replace(".", ",").replace("-0,0", "0,0")

    for n, block in enumerate(blocks, start=1):
        thin = n == 22
        s = shot(chance, *middles[block], energy=0.78 if thin else 1.0)
        rows.append(";".join([
            str(n), block, comma(s["club_speed"] / KMH, 1), comma(s["ball_speed"] / KMH, 1),
            comma(-s["face"], 1), comma(-s["path"], 1), comma(s["loft"], 1), comma(s["attack"], 1),
            comma(s["launch"], 1), comma(-s["start"], 1), f"{s['spin']:.0f}", comma(s["carry"], 1),
            comma(-s["offline"], 1), "struck thin" if thin else ""]))
    (folder / "left-hand" / "schlaege.csv").write_text("\r\n".join(rows) + "\r\n", encoding="utf-8")


def junior(folder):
    """Four shots of a child: a first look, written by hand."""
    chance = random.Random(33)
    rows = ["shot,block,face,path,start,carry (m)"]
    for n in range(1, 5):
        s = shot(chance, 4.5 if n <= 2 else 1.5, -1.0, 27.0, -2.0, 21.0)

        def side(value):
            whole = round(value)
            return f"{abs(whole)} {'R' if whole > 0 else 'L'}" if whole else "0"

        rows.append(",".join([str(n), "before" if n <= 2 else "after", side(s["face"]), side(s["path"]),
                              side(s["start"]), f"{s['carry']:.0f}"]))
    (folder / "junior" / "shots.csv").write_text("\n".join(rows) + "\n", encoding="utf-8")


if __name__ == "__main__":
    target = Path(sys.argv[1] if len(sys.argv) > 1 else "examples")
    right_hand(target)
    left_hand(target)
    junior(target)
