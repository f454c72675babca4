"""The loop over a year's hours in Python with NumPy: what inchwise_core::year does with the fan off.

    year.py FILE

FILE is what the example year_bench of inchwise-core describes. Runs a year for every line it reads and
answers, tab-separated: milliseconds, hours, heat lost on its way as a share, and a figure of heat and
water. Left out, in favour of this program: sums by month and purpose. What does not feed back from hour to hour is reckoned for all hours at once; the rest cannot be,
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
HEAT_CAPACITY = 1006.0
MOLAR_MASS_RATIO = 0.621945
EVAPORATION = 2.501e6
MELTING = 0.3334e6
HELD_BY_A_SURFACE = 0.1


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


def balanced(given, carried, sinks, pressure):
    """The vapour pressure at which N - D p is what the sinks take; sinks are (conductance, balance, most)."""
    for _ in range(2 * len(sinks) + 2):
        up, down = given, carried
        for conductance, balance, most in sinks:
            if conductance * (pressure - balance) > -most:
                up += conductance * balance
                down += conductance
            else:
                up += most
        after = up / down
        moved = after - pressure
        pressure = after
        if abs(moved) <= 1e-10 * abs(pressure):
            break
    return pressure


class Year:
    def __init__(self, file):
        self.c, self.u = file["coefficients"], file["choices"]
        self.places = file["places"]
        self.use = numpy.array(file["hours_of_use"])
        self.celsius = numpy.array(file["celsius"])
        self.outdoor_pascals = numpy.array(file["vapour_pascals"])
        self.sun = numpy.array(file["sun"])

    def run(self):
        c, u = self.c, self.u
        order = numpy.concatenate([numpy.arange(HOURS - LEAD_IN, HOURS), numpy.arange(HOURS)])

        # All hours at once.
        set_point, people, equipment, source, drying = self.use.T
        sun_in = c["window_area"] * self.sun[:, int(c["window_column"])]
        faces = ["roof", "front_end", "door_end", "left_side", "right_side"]
        warmed = self.sun @ numpy.array([c[f"sun_at_{face}"] for face in faces])
        at_steel = self.celsius + warmed - c["sky"]
        sun_on_door = c["sun_on_door"] * self.sun[:, int(c["door_column"])]
        drawn = c["sky_through_openings"] + drying - sun_on_door
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
        conduct, flow = c["mass_to_surface"], c["leaks"] / HEAT_CAPACITY
        into_lining, pressure = c["vapour_into_lining"], c["air_pressure"]
        held, lining = c["vapour_in_air"] / HOUR, c["vapour_in_lining"] / HOUR
        places = self.places
        frost, water = [0.0] * len(places), [0.0] * len(places)
        wet_to, released = 0, 0.0
        mass = c["set_point"]
        vapour = float(self.outdoor_pascals[HOURS - LEAD_IN])
        wet = min(vapour / pascals(mass), 1.0)
        airs, masses, heats, given_back = ([] for _ in range(4))
        water_by_air = water_on_lining = 0.0
        unmet = drip = frosting = 0
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
                water_by_air = water_on_lining = 0.0
                unmet, drip, frosting, stored_before = 0, 0, 0, mass

            def tends_to(watts):
                onto = watts + direct * out
                from_surface = through * (surface_watts + pull * onto)
                return (from_surface + c["mass_to_outdoors"] * steel + mass_watts) / loss, onto

            def now(goal, onto):
                middle = goal + (mass - goal) * mean
                surface = per_surface * (surface_watts + conduct * middle + pull * onto)
                return per_air * onto + pull * surface, surface, middle

            goal, onto = tends_to(air_watts + released)
            free, _, _ = now(goal, onto)
            needed = max((wanted - free) / per_watt, 0.0)
            main = min(needed, limit)
            backup = min(max(needed - main, 0.0), backup_limit)
            unmet += (needed - main - backup) * per_watt > NEARLY
            goal, onto = tends_to(air_watts + released + main + backup)
            air, surface, middle = now(goal, onto)
            mass = goal + (mass - goal) * decay
            airs.append(air)
            masses.append(middle)
            heats.append(main)
            given_back.append(released)

            at_lining = pascals(surface)
            ratio = MOLAR_MASS_RATIO / (pressure - vapour)
            outdoors = MOLAR_MASS_RATIO * out_vapour / (pressure - out_vapour)
            into = into_lining * lining / (lining + into_lining * at_lining)
            brought = held * vapour + given + flow * outdoors + into * wet * at_lining
            carried = held + flow * ratio + into
            most = min((brought + sum(frost[:wet_to] + water[:wet_to]) / HOUR) / carried, at_lining)
            most = min(most, pascals(air))
            sinks, colds = [], []
            for k, (factor, area, conductance) in enumerate(places):
                cold = out + factor * (air - out)
                balance = pascals(cold) * (air + 273.15) / (cold + 273.15)
                if balance >= most and k >= wet_to and air >= out:
                    break
                sinks.append((conductance, balance, (frost[k] + water[k]) / HOUR))
                colds.append(cold)
            full = min(at_lining, pascals(air))
            vapour = balanced(brought, carried, sinks, vapour)
            if vapour >= full:
                vapour = full
                taken = sum(max(g * (vapour - b), -m) for g, b, m in sinks)
                water_on_lining += (brought - carried * vapour - taken) * HOUR
            water_by_air += flow * (ratio * vapour - outdoors) * HOUR
            wet = (lining * wet + into_lining * vapour) / (lining + into_lining * at_lining)

            # What lies on the cold places, and the heat of it.
            wet_to, released = 0, 0.0
            for k, ((conductance, balance, lay), cold) in enumerate(zip(sinks, colds)):
                came = max(conductance * (vapour - balance), -lay) * HOUR
                if came == 0.0 and lay == 0.0:
                    continue
                factor, area, _ = places[k]
                heat = came * EVAPORATION
                state = 0
                if cold < 0.0:
                    heat += (water[k] + came) * MELTING
                    frost[k], water[k] = max(frost[k] + water[k] + came, 0.0), 0.0
                    state = 1 if came > 0.0 else 0
                else:
                    heat -= frost[k] * MELTING
                    state = 2 if frost[k] > 0.0 or came > 0.0 else 0
                    frost[k], water[k] = 0.0, max(frost[k] + water[k] + came, 0.0)
                    water[k] = min(water[k], HELD_BY_A_SURFACE * area)
                if frost[k] + water[k] > 0.0:
                    wet_to = k + 1
                released += factor * heat / HOUR
                if k == 0:
                    frosting += state == 1
                    drip += state == 2

        airs, masses, heats, given_back = (
            numpy.array(values[LEAD_IN:]) for values in (airs, masses, heats, given_back)
        )
        self.drip, self.frost, self.unmet = drip, frosting, unmet
        self.too_warm = (airs > u["too_warm"]).sum()
        lost = (
            c["mass_to_outdoors"] * (masses - at_steel) + direct * (airs - self.celsius) + drawn
        ).sum() * HOUR
        gained = (heats + people + equipment + sun_in + given_back).sum() * HOUR
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
