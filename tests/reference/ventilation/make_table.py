"""Writes monotone_curve.tsv, operating_points.tsv and stack_flow.tsv beside this file, with SciPy.

    python3 -m venv .venv && .venv/bin/pip install scipy==1.17.1
    .venv/bin/python tests/reference/ventilation/make_table.py

The operating points are solved for all pressures and flows at once by a general root finder,
from the same physics (parabolic fans, losses zeta rho v^2 / 2, mass in equals mass out) but not in
the same way: the engine brackets the suction of the room.
"""

import datetime
from importlib.metadata import version
from math import pi
from pathlib import Path

import numpy
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq, fsolve

HERE = Path(__file__).parent
EDITION = f"SciPy {version('scipy')}, written {datetime.date.today().isoformat()} by make_table.py"

# Invented fans: flow in m3/h, pressure in Pa.
CURVES = {
    "even": ([0, 150, 300, 450, 600, 750, 900], [70, 68, 62, 52, 38, 20, 0]),
    "shelf": ([0, 100, 250, 300, 700, 800], [95, 90, 60, 59.5, 58, 0]),
    "two": ([0, 400], [50, 10]),
    "three": ([0, 380, 400], [50, 45, 0]),
}


def monotone_curves():
    rows = []
    for name, (flows, pressures) in CURVES.items():
        curve = PchipInterpolator(flows, pressures) if len(flows) > 2 else None
        for flow in numpy.linspace(flows[0], flows[-1], 23):
            pressure = numpy.interp(flow, flows, pressures) if curve is None else curve(flow)
            rows.append([name, f"{flow:.12g}", f"{float(pressure):.12g}"])
    notes = f"""\
# source: PchipInterpolator of SciPy through the points of four invented fans, even: {CURVES['even']}, shelf: {CURVES['shelf']}, two: {CURVES['two']}, three: {CURVES['three']} in m3/h and Pa
# edition: {EDITION}
# tolerance: pressure_pa 1e-9 absolute
# why: the same published method; only rounding is left.
"""
    return notes, ["fan", "flow_m3_per_h", "pressure_pa"], rows


def disc(diameter):
    return pi / 4 * diameter**2


# Each: intakes (zeta, diameter), exhausts (zeta, diameter, free air m3/h, shut-off Pa), densities.
SYSTEMS = [
    ([(6.5, 0.20), (6.5, 0.20)], [(3.8, 0.25, 900, 70)], 1.2, 1.2),
    ([(6.5, 0.20), (9.0, 0.15)], [(3.8, 0.25, 900, 70)], 1.2, 1.2),
    ([(6.5, 0.20), (6.5, 0.20)], [(3.8, 0.25, 900, 70)], 1.452, 1.2),
    ([(6.5, 0.15), None], [(3.8, 0.25, 900, 70)], 1.394, 1.19),
    ([(2.7, 0.30), (2.7, 0.25)], [(3.8, 0.20, 500, 60), (3.0, 0.25, 800, 90)], 1.3, 1.2),
    ([(5.0, 0.20), None], [(3.8, 0.20, 500, 60), (3.0, 0.25, 800, 90)], 1.25, 1.2),
]


def solve(system):
    intakes, exhausts, outdoor, room = system
    intakes = [intake for intake in intakes if intake]
    count = len(intakes)

    def residuals(unknowns):
        suction, flows = unknowns[0], unknowns[1:]
        into, out = flows[:count], flows[count:]
        rows = [outdoor * sum(into) - room * sum(out)]
        for (zeta, diameter), flow in zip(intakes, into):
            rows.append(zeta * outdoor / 2 * flow * abs(flow) / disc(diameter) ** 2 - suction)
        for (zeta, diameter, free, shut_off), flow in zip(exhausts, out):
            fan = shut_off * (1 - (flow * 3600 / free) ** 2) * room / 1.2
            rows.append(fan - suction - zeta * room / 2 * flow**2 / disc(diameter) ** 2)
        return rows

    start = [10.0] + [0.05] * (count + len(exhausts))
    found, _, status, message = fsolve(residuals, start, xtol=1e-14, full_output=True)
    assert max(abs(r) for r in residuals(found)) < 1e-9, message
    assert all(flow > 0 for flow in found[1:]), found
    return found[0], 3600 * sum(found[1 : 1 + count]), 3600 * sum(found[1 + count :])


def operating_points():
    header = []
    for name in ("a", "b"):
        header += [f"intake_{name}_loss", f"intake_{name}_diameter_m"]
    for name in ("a", "b"):
        header += [f"exhaust_{name}_loss", f"exhaust_{name}_diameter_m"]
        header += [f"fan_{name}_free_air_m3_per_h", f"fan_{name}_shut_off_pa"]
    header += ["outdoor_kg_per_m3", "room_kg_per_m3"]
    header += ["suction_pa", "let_in_m3_per_h", "exhausted_m3_per_h"]
    rows = []
    for system in SYSTEMS:
        intakes, exhausts, outdoor, room = system
        cells = []
        for intake in intakes:
            cells += [f"{value:g}" for value in intake] if intake else ["-"] * 2
        for exhaust in exhausts + [None] * (2 - len(exhausts)):
            cells += [f"{value:g}" for value in exhaust] if exhaust else ["-"] * 4
        cells += [f"{outdoor:g}", f"{room:g}"]
        cells += [f"{value:.9g}" for value in solve(system)]
        rows.append(cells)
    notes = f"""\
# source: all pressures and flows of invented systems solved at once by fsolve of SciPy: fan p0 (1 - (q/q0)^2) rho/1.2, losses zeta rho v^2/2 on round openings, mass in equal to mass out
# edition: {EDITION}
# tolerance: suction_pa 1e-6 relative
# tolerance: let_in_m3_per_h 1e-6 relative
# tolerance: exhausted_m3_per_h 1e-6 relative
# why: the same physics solved another way, to rounding. A dash is an opening that is not there.
"""
    return notes, header, rows


# Each: low and high opening (zeta, diameter), height, densities outdoors and in the room.
STACKS = [
    ((6.5, 0.20), (3.8, 0.25), 2.06, 1.4518, 1.2041),
    ((3.8, 0.25), (6.5, 0.10), 1.80, 1.3943, 1.2041),
    ((6.5, 0.20), (3.8, 0.25), 2.00, 1.1644, 1.2041),
]


def stack_flows():
    header = ["low_loss", "low_diameter_m", "high_loss", "high_diameter_m", "height_m"]
    header += ["outdoor_kg_per_m3", "room_kg_per_m3", "upward_kg_per_s", "let_in_m3_per_h"]
    rows = []
    for low, high, height, outdoor, room in STACKS:

        def through(opening, difference):
            """Mass that a difference of pressure, inside over outside, drives outward."""
            zeta, diameter = opening
            density = room if difference > 0 else outdoor
            flow = disc(diameter) * (2 * density * abs(difference) / zeta) ** 0.5
            return flow if difference > 0 else -flow

        # Inside over outside at the low opening; the columns differ in weight on the way up.
        lift = 9.80665 * height * (outdoor - room)
        at_low = brentq(lambda d: through(low, d) + through(high, d + lift), -abs(lift), abs(lift), xtol=1e-15)
        upward = through(high, at_low + lift)
        rows.append([f"{v:g}" for v in (*low, *high, height, outdoor, room)])
        rows[-1] += [f"{upward:.9g}", f"{3600 * abs(upward) / outdoor:.9g}"]
    notes = f"""\
# source: pressure of the room against outdoors at the low opening, by brentq of SciPy, at which as much air leaves as enters; two openings under stack effect alone
# edition: {EDITION}
# tolerance: upward_kg_per_s 1e-7 relative
# tolerance: let_in_m3_per_h 1e-7 relative
# why: the same physics solved another way, to rounding. Flow downward is negative.
"""
    return notes, header, rows


def write(name, table):
    notes, header, rows = table
    lines = ["\t".join(cells) for cells in [header, *rows]]
    (HERE / name).write_text(notes + "\n".join(lines) + "\n")


write("monotone_curve.tsv", monotone_curves())
write("operating_points.tsv", operating_points())
write("stack_flow.tsv", stack_flows())
