"""A small consistent ball for invented shots: impact by shares, flight by drag and lift.

Start direction: 0.69 toward the face across, 0.81 up and down for a mid iron (Wood, Henrikson and
Broadie 2018, Proceedings 2(6):249). Impact speed and spin: rigid rolling sphere (Penner 2001). Drag and
lift: Naruo, Mizota and Shimozono 2004. Angles in degrees, right of the target positive, SI otherwise.
"""
import math

MASS, RADIUS, AIR = 0.04593, 0.021335, 1.225
AREA = math.pi * RADIUS**2


def sin(a):
    return math.sin(math.radians(a))


def cos(a):
    return math.cos(math.radians(a))


def strike(face, path, loft, attack, club_speed, energy=1.0):
    """Launch of one strike. `energy` below 1 is a strike away from the centre."""
    spin_loft = math.degrees(math.acos(cos(loft) * cos(attack) * cos(face - path) + sin(loft) * sin(attack)))
    head = MASS / 0.26
    normal = club_speed * cos(spin_loft) / (1 + head)
    normal *= (1 + 0.86 - 0.0029 * club_speed * cos(spin_loft)) * energy
    tangent = club_speed * sin(spin_loft) / (1 + head + 2.5)
    speed = math.hypot(normal, tangent)
    spin = 5 * tangent / (2 * RADIUS) * 60 / (2 * math.pi)
    tilt = math.degrees(math.atan2(cos(loft) * sin(face - path),
                                   sin(loft) * cos(attack) - cos(loft) * sin(attack) * cos(face - path)))
    return {"ball_speed": speed, "launch": 0.81 * loft + 0.19 * attack,
            "start": 0.69 * face + 0.31 * path, "spin": spin, "axis": tilt}


def fly(ball, step=0.01):
    """Carry, offline and apex in metres, landing angle in degrees."""
    speed, up, side = ball["ball_speed"], ball["launch"], ball["start"]
    v = [speed * cos(up) * cos(side), speed * cos(up) * sin(side), speed * sin(up)]
    spin, tilt = ball["spin"] * 2 * math.pi / 60, ball["axis"]
    across = [-sin(side), cos(side), 0.0]
    # Backspin lifts; its axis points left of the flight, and tilts so that the ball curves right.
    axis = [-across[0] * cos(tilt), -across[1] * cos(tilt), sin(tilt)]
    at, apex = [0.0, 0.0, 0.0], 0.0
    while True:
        fast = math.sqrt(sum(c * c for c in v))
        s = min(max(spin * RADIUS / fast, 0.03), 1.13)
        drag = 0.7510 * s**4 - 1.760 * s**3 + 1.098 * s**2 + 0.2148 * s + 0.2049
        lift = -0.2158 * s**4 + 1.006 * s**3 - 1.644 * s**2 + 1.250 * s + 0.0616
        k = AIR * AREA * fast / (2 * MASS)
        u = [c / fast for c in v]
        l = [axis[1] * u[2] - axis[2] * u[1], axis[2] * u[0] - axis[0] * u[2], axis[0] * u[1] - axis[1] * u[0]]
        force = [k * fast * (lift * l[i] - drag * u[i]) for i in range(3)]
        force[2] -= 9.80665
        before = list(at)
        for i in range(3):
            at[i] += (v[i] + force[i] * step / 2) * step
            v[i] += force[i] * step
        spin -= 2e-5 * spin * fast / RADIUS * step
        apex = max(apex, at[2])
        if at[2] < 0:
            part = before[2] / (before[2] - at[2])
            x, y = (before[i] + part * (at[i] - before[i]) for i in (0, 1))
            return {"carry": x, "offline": y, "apex": apex,
                    "landing": math.degrees(math.atan2(-v[2], math.hypot(v[0], v[1])))}
