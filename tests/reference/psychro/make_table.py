"""Writes moist_air_grid.tsv and saturated_vapour.tsv beside this file, from two libraries.

    python3 -m venv .venv && .venv/bin/pip install PsychroLib==2.5.0 CoolProp==8.0.0
    .venv/bin/python tests/reference/psychro/make_table.py

PsychroLib evaluates the ideal-gas equations of the ASHRAE Handbook of Fundamentals; CoolProp
evaluates a virial model of real moist air that shares no formula with them.
"""

import datetime
from importlib.metadata import version
from pathlib import Path

import psychrolib
from CoolProp.CoolProp import PropsSI
from CoolProp.HumidAirProp import HAPropsSI

PRESSURE = 101325.0
ZERO_CELSIUS = 273.15
HERE = Path(__file__).parent

psychrolib.SetUnitSystem(psychrolib.SI)
VERSIONS = f"PsychroLib {version('PsychroLib')}, CoolProp {version('CoolProp')}"
EDITION = f"{VERSIONS}, written {datetime.date.today().isoformat()} by make_table.py"


def ideal(celsius, humidity):
    ratio = psychrolib.GetHumRatioFromRelHum(celsius, humidity, PRESSURE)
    return [
        psychrolib.GetTDewPointFromRelHum(celsius, humidity),
        psychrolib.GetTWetBulbFromRelHum(celsius, humidity, PRESSURE),
        ratio,
        psychrolib.GetMoistAirEnthalpy(celsius, ratio),
        psychrolib.GetMoistAirDensity(celsius, ratio, PRESSURE),
    ]


def real(celsius, humidity):
    state = ("T", celsius + ZERO_CELSIUS, "R", humidity, "P", PRESSURE)
    return [
        HAPropsSI("D", *state) - ZERO_CELSIUS,
        HAPropsSI("B", *state) - ZERO_CELSIUS,
        HAPropsSI("W", *state),
        HAPropsSI("H", *state),
        # Vha is the volume of a kilogram of air and vapour together.
        1.0 / HAPropsSI("Vha", *state),
    ]


def grid():
    columns = ["dew_point_c", "wet_bulb_c", "humidity_ratio", "enthalpy_j_per_kg", "density_kg_per_m3"]
    rows = []
    for celsius in range(-40, 41, 5):
        for step in range(1, 21):
            humidity = step / 20
            ideal_values, real_values = ideal(celsius, humidity), real(celsius, humidity)
            cells = [f"{celsius}", f"{humidity:.2f}"]
            cells += [f"{value:.9g}" for value in ideal_values]
            cells += [f"{value:.8g}" for value in real_values]
            # Near freezing a bulb may be wet or iced; the two libraries then answer for different bulbs.
            if (ideal_values[1] < 0.0) != (real_values[1] < 0.0):
                cells[2 + len(columns) + 1] = "-"
            rows.append(cells)
    header = ["temperature_c", "relative_humidity"]
    header += [f"ideal_{name}" for name in columns] + [f"real_{name}" for name in columns]
    notes = f"""\
# source: moist air at 101325 Pa by two general-purpose libraries: ideal_ from PsychroLib (ASHRAE ideal-gas equations), real_ from CoolProp (virial model of real moist air)
# edition: {EDITION}
# tolerance: ideal_dew_point_c 0.002 absolute
# tolerance: ideal_wet_bulb_c 0.002 absolute
# tolerance: ideal_humidity_ratio 1e-6 relative
# tolerance: ideal_enthalpy_j_per_kg 0.001 absolute 1e-7 relative
# tolerance: ideal_density_kg_per_m3 1e-6 relative
# tolerance: real_dew_point_c 0.02 absolute
# tolerance: real_wet_bulb_c 0.03 absolute
# tolerance: real_humidity_ratio 0.006 relative
# tolerance: real_enthalpy_j_per_kg 50 absolute 0.005 relative
# tolerance: real_density_kg_per_m3 0.0015 relative
# why: PsychroLib stops searching within 0.001 K, otherwise it solves the same equations. Real air holds up to 0.5 % more vapour at saturation than ideal gases say (the enhancement factor), which the share of dry air p/(p - p_w) raises to 0.54 % at 40 C; it is also 0.13 % denser at -40 C (compressibility). A dash marks a bulb that one library takes as wet and the other as iced.
"""
    return notes, header, rows


def saturated_vapour():
    rows = []
    for celsius in range(5, 51, 5):
        kelvin = celsius + ZERO_CELSIUS
        pressure = PropsSI("P", "T", kelvin, "Q", 1, "Water")
        density = PropsSI("D", "T", kelvin, "Q", 1, "Water")
        rows.append([f"{celsius}", f"{pressure:.8g}", f"{density:.8g}"])
    notes = f"""\
# source: saturated steam by the IAPWS-95 equation of state, as CoolProp evaluates it
# edition: {EDITION}
# tolerance: saturation_pressure_pa 3e-4 relative
# tolerance: concentration_kg_per_m3 0.005 relative
# why: ASHRAE states the saturation formulas to be within 300 ppm. The concentration is that of an ideal gas; real saturated vapour is denser by 0.1 % at 20 C and 0.4 % at 50 C (compressibility).
"""
    return notes, ["temperature_c", "saturation_pressure_pa", "concentration_kg_per_m3"], rows


def write(name, table):
    notes, header, rows = table
    lines = ["\t".join(cells) for cells in [header, *rows]]
    (HERE / name).write_text(notes + "\n".join(lines) + "\n")


write("moist_air_grid.tsv", grid())
write("saturated_vapour.tsv", saturated_vapour())
