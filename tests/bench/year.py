"""The loop over a year's hours in Python with NumPy: what inchwise_core::year does with the fan off.

    year.py FILE

FILE is what the example year_bench of inchwise-core describes. Runs a year for every line it reads and
answers, tab-separated: milliseconds, hours, heat lost on its way as a share, and a figure of heat and
water. Left out, in favour of this program: frost kept on the coldest spot, and sums by month and
purpose. What does not feed back from hour to hour is reckoned for all hours at once; the rest cannot be,
since the room remembers.
"""

import json
import sys
from math import exp
from time import perf_counter

import numpy

HOUR = 3600.0
HOURS = 8760
LEAD_IN = 336
CONVECTIVE = 0.5
NEARLY = 0.5


def saturation(celsius):
    """Saturation pressure over ice and water, Pa (Hyland and Wexler 1983; ASHRAE Fundamentals 2017)."""
    t = numpy.asarray(celsius, float) + 273.15
    with numpy.errstate(over="ignore"):
        ice = numpy.exp(
            -5.6745359e3 / t + 6.3925247 - 9.677843e-3 * t + 6.2215701e-7 * t**2
            + 2.0747825e-9 * t**3 - 9.484024e-13 * t**4 + 4.1635019 * numpy.log(t)
        )
        water = numpy.exp(
            -5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t**2
            - 1.4452093e-8 * t**3 + 6.5459673 * numpy.log(t)
        )
    return numpy.where(numpy.asarray(celsius) < 0.0, ice, water)


def table():
    """Parabolas over every quarter kelvin from -100 to 150 C."""
    at = saturation(-100.0 + 0.125 * numpy.arange(2001))
    left, middle, right = at[:-1:2], at[1::2], at[2::2]
    curvature = 2.0 * (left + right - 2.0 * middle)
    return left, right - left - curvature, curvature


TABLE = table()
CELLS = list(zip(*(part.tolist() for part in TABLE)))


def pascals(celsius):
    at = (celsius + 100.0) * 4.0
    cell = int(at)
    left, slope, curvature = CELLS[cell]
    x = at - cell
    return left + x * (slope + x * curvature)


def many_pascals(celsius):
    at = (celsius + 100.0) * 4.0
    cell = at.astype(int)
    left, slope, curvature = (part[cell] for part in TABLE)
    x = at - cell
    return left + x * (slope + x * curvature)


class Year:
    def __init__(self, file):
        self.c, self.u = file["coefficients"], file["choices"]
        self.factors = numpy.array(file["factors"])
        self.celsius = numpy.array(file["celsius"])
        self.outdoor_pascals = numpy.array(file["vapour_pascals"])
        self.sun = numpy.array(file["sun"])

    def run(self):
        c, u = self.c, self.u
        order = numpy.concatenate([numpy.arange(HOURS - LEAD_IN, HOURS), numpy.arange(HOURS)])

        # All hours at once.
        hour = numpy.arange(HOURS)
        day, clock = hour // 24, hour % 24
        if u["used_from"] < u["used_until"]:
            in_hours = (u["used_from"] <= clock) & (clock < u["used_until"])
            began = day
        else:
            in_hours = (u["used_from"] <= clock) | (clock < u["used_until"])
            began = numpy.where(clock < u["used_until"], (day - 1) % 365, day)
        used = in_hours & (began % 7 < u["used_days"])
        set_point = numpy.where(used, c["set_point"], c["set_point"] - u["setback"])
        people = numpy.where(used, u["heat_of_people"], 0.0)
        equipment = u["equipment_always"] + numpy.where(used, u["equipment_in_use"], 0.0)
        source = u["moisture_always"] + u["moisture_drying"] + numpy.where(used, u["moisture_in_use"], 0.0)
        sun_in = c["window_area"] * self.sun[:, int(c["window_column"])]
        faces = ["roof", "front_end", "door_end", "left_side", "right_side"]
        warmed = self.sun @ numpy.array([c[f"sun_at_{face}"] for face in faces])
        at_steel = self.celsius + warmed - c["sky"]
        sun_on_door = c["sun_on_door"] * self.sun[:, int(c["door_column"])]
        drawn = c["sky_through_openings"] + c["drying"] - sun_on_door
        to_air = CONVECTIVE * (people + equipment) - drawn
        radiant = (1.0 - CONVECTIVE) * (people + equipment) + sun_in
        to_surface, to_mass = radiant * (1.0 - c["onto_mass"]), radiant * c["onto_mass"]

        # The network over an hour.
        direct = c["leaks"] + c["openings"]
        per_air = 1.0 / (direct + c["surface_to_air"])
        pull = c["surface_to_air"] * per_air
        per_surface = 1.0 / (c["mass_to_surface"] + direct * pull)
        through = c["mass_to_surface"] * per_surface
        loss = through * direct * pull + c["mass_to_outdoors"]
        x = loss * HOUR / c["capacity"]
        decay = exp(-x)
        mean = (1.0 - decay) / x
        mass_per_watt = (1.0 - mean) * through * pull / loss
        per_watt = per_air + pull * (pull * per_surface + through * mass_per_watt)

        # Hour by hour.
        limit, backup_limit = u["heater_limit"], u["backup_limit"]
        conduct, leaks = c["mass_to_surface"], c["leaks"]
        onto_windows, into_lining = c["vapour_onto_windows"], c["vapour_into_lining"]
        held, lining = c["vapour_in_air"] / HOUR, c["vapour_in_lining"] / HOUR
        by_air = leaks * c["vapour_per_watt_kelvin"]
        mass = c["set_point"]
        vapour = float(self.outdoor_pascals[HOURS - LEAD_IN])
        wet = min(vapour / pascals(mass), 1.0)
        airs, masses, vapours, heats = ([] for _ in range(4))
        water_by_air = water_on_windows = water_on_lining = 0.0
        unmet = 0
        inputs = [
            values[order].tolist()
            for values in (
                self.celsius, self.outdoor_pascals, at_steel, to_air, to_surface, to_mass,
                set_point, source,
            )
        ]
        for n, (out, out_vapour, steel, air_watts, surface_watts, mass_watts, wanted, given) in (
            enumerate(zip(*inputs))
        ):
            if n == LEAD_IN:
                water_by_air = water_on_windows = water_on_lining = 0.0
                unmet, stored_before = 0, mass

            def tends_to(watts):
                onto = watts + direct * out
                from_surface = through * (surface_watts + pull * onto)
                return (from_surface + c["mass_to_outdoors"] * steel + mass_watts) / loss, onto

            def now(goal, onto):
                middle = goal + (mass - goal) * mean
                surface = per_surface * (surface_watts + conduct * middle + pull * onto)
                return per_air * onto + pull * surface, surface, middle

            goal, onto = tends_to(air_watts)
            free, _, _ = now(goal, onto)
            needed = max((wanted - free) / per_watt, 0.0)
            main = min(needed, limit)
            backup = min(max(needed - main, 0.0), backup_limit)
            unmet += (needed - main - backup) * per_watt > NEARLY
            goal, onto = tends_to(air_watts + main + backup)
            air, surface, middle = now(goal, onto)
            mass = goal + (mass - goal) * decay

            at_lining = pascals(surface)
            at_windows = pascals(out + c["window_factor"] * (air - out))
            into = into_lining * lining / (lining + into_lining * at_lining)
            numerator = held * vapour + given + by_air * out_vapour + into * wet * at_lining
            denominator = held + by_air + into
            vapour = numerator / denominator
            on_windows = 0.0
            if vapour > at_windows and onto_windows > 0.0:
                vapour = (numerator + onto_windows * at_windows) / (denominator + onto_windows)
                on_windows = onto_windows * (vapour - at_windows) * HOUR
            if vapour > at_lining:
                water_on_lining += (vapour - at_lining) * denominator * HOUR
                if on_windows > 0.0:
                    water_on_lining += onto_windows * (vapour - at_lining) * HOUR
                    on_windows = onto_windows * (at_lining - at_windows) * HOUR
                vapour = at_lining
            water_on_windows += on_windows
            water_by_air += by_air * (vapour - out_vapour) * HOUR
            wet = (lining * wet + into_lining * vapour) / (lining + into_lining * at_lining)
            airs.append(air)
            masses.append(middle)
            vapours.append(vapour)
            heats.append(main)

        # All hours at once: cold spots and energy.
        airs, masses, vapours, heats = (
            numpy.array(values[LEAD_IN:]) for values in (airs, masses, vapours, heats)
        )
        spots = self.celsius[:, None] + self.factors * (airs - self.celsius)[:, None]
        takes = vapours[:, None] > many_pascals(spots)
        self.drip = (takes & (spots >= 0.0)).sum(axis=0)
        self.frost = (takes & (spots < 0.0)).sum(axis=0)
        self.too_warm = (airs > u["too_warm"]).sum()
        lost = (
            c["mass_to_outdoors"] * (masses - at_steel) + direct * (airs - self.celsius) + drawn
        ).sum() * HOUR
        gained = (heats + people + equipment + sun_in).sum() * HOUR
        stored = c["capacity"] * (mass - stored_before)
        return heats.sum() * HOUR / 3.6e6 + water_by_air, (gained - lost - stored) / gained


def main():
    with open(sys.argv[1]) as file:
        year = Year(json.load(file))
    for _ in sys.stdin:
        start = perf_counter()
        figure, off = year.run()
        elapsed = 1000 * (perf_counter() - start)
        print(f"{elapsed}\t{HOURS}\t{abs(off):e}\t{float(figure)!r}", flush=True)


main()
