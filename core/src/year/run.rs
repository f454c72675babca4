//! The loop over the hours.

use super::heater::HeaterKind;
use super::model::YearModel;
use super::network::{Drive, NetworkStep};
use super::outcome::{EnergyByPurpose, Period, RoomHour, SpotHours, SpotState, YearOutcome, add};
use super::vapour_balance::{VapourDrive, VapourState};
use crate::climate::{HOURS_IN_YEAR, hours_of};
use crate::extremes::{greater, lesser};
use crate::units::{Energy, Mass, Power, SurfaceMoisture, Temperature};

/// Seconds in a step.
const HOUR: f64 = 3600.0;

/// Hours of the end of the year that run before its start, so that mass and lining are settled: two weeks.
const LEAD_IN: usize = 336;

/// Share of the heat of people and equipment that goes straight to the air (ISO 13790:2008, annex C).
const CONVECTIVE: f64 = 0.5;

/// Kelvin under the set-point that still count as held.
const NEARLY: f64 = 0.5;

/// Kelvin that outdoors must be colder than the room for the fan to cool.
const COLDER: f64 = 0.5;

/// Pascals of vapour that outdoor air must hold less than the room for the fan to dry, about
/// 0.15 g/kg: what a controller that compares two humidities can tell. Common practice, no source.
const DRIER: f64 = 25.0;

/// What changes from hour to hour.
struct State {
    mass: f64,
    vapour: VapourState,
    frost: f64,
}

/// Heater and fan through an hour.
struct Acting {
    main: f64,
    backup: f64,
    unmet: bool,
}

/// Runs a year.
///
/// In each hour weather, use and gains stand still. The heater brings the mean air temperature of
/// the hour to the set-point as far as it can. The fan runs for as much of the hour as it takes to hold the
/// room at its temperature or humidity, and only while outdoor air is colder, or holds less
/// vapour. Water that dries in the room takes its heat from the air; people's own moisture takes none, for their heat
/// is counted dry. Left out: wind, frost that insulates, and the heat that condensing vapour gives back.
pub fn run_year(model: &YearModel<'_>) -> YearOutcome {
    let mut run = Run::new(model);
    let mut state = run.start();
    for hour in HOURS_IN_YEAR - LEAD_IN..HOURS_IN_YEAR {
        run.hour(hour, &mut state, &mut Period::default());
    }
    run.forget();
    let (mass, vapour) = (state.mass, state.vapour);
    let mut months = [Period::default(); 12];
    for (month, period) in months.iter_mut().enumerate() {
        for hour in hours_of(month) {
            run.hour(hour, &mut state, period);
        }
    }
    run.outcome(months, &state, mass, &vapour)
}

/// A run under way: the model with what is fixed over the year, and the records.
struct Run<'a> {
    model: &'a YearModel<'a>,
    /// The network with the fan off, and with it at full flow.
    still: NetworkStep,
    blown: NetworkStep,
    kind: HeaterKind,
    hours: Vec<RoomHour>,
    drip: Vec<u32>,
    frost: Vec<u32>,
    most_frost: f64,
    greatest_heat: f64,
    warmest: f64,
    coldest: f64,
    water_given: f64,
    water_by_air: f64,
}

impl<'a> Run<'a> {
    fn new(model: &'a YearModel<'a>) -> Self {
        let spots = model.factors.len();
        Self {
            model,
            still: model.network.step(0.0, HOUR),
            blown: model.network.step(model.fan, HOUR),
            kind: model.choices.heater,
            hours: vec![RoomHour::default(); HOURS_IN_YEAR],
            drip: vec![0; spots],
            frost: vec![0; spots],
            most_frost: 0.0,
            greatest_heat: 0.0,
            warmest: f64::NEG_INFINITY,
            coldest: f64::INFINITY,
            water_given: 0.0,
            water_by_air: 0.0,
        }
    }

    fn start(&self) -> State {
        let weather = &self.model.surroundings.weather;
        let pascals = weather.vapour_pascals()[HOURS_IN_YEAR - LEAD_IN];
        let saturation = self.model.surroundings.saturation.pascals(self.model.set_point);
        let vapour = VapourState { pascals, lining: (pascals / saturation).min(1.0) };
        State { mass: self.model.set_point, vapour, frost: 0.0 }
    }

    /// Forgets the records of the lead-in.
    fn forget(&mut self) {
        self.drip.fill(0);
        self.frost.fill(0);
        self.most_frost = 0.0;
        self.greatest_heat = 0.0;
        self.warmest = f64::NEG_INFINITY;
        self.coldest = f64::INFINITY;
        self.water_given = 0.0;
        self.water_by_air = 0.0;
    }

    /// What the heater gives in an hour whose free mean temperature is known.
    fn heat(&self, free: f64, per_watt: f64, set: f64, outdoors: f64, someone: bool) -> Acting {
        let choices = &self.model.choices;
        let needed = (set - free) / per_watt;
        if needed <= 0.0 {
            return Acting { main: 0.0, backup: 0.0, unmet: false };
        }
        let limit = choices.heater_limit.value();
        let capacity = if self.kind.needs_someone() && !someone {
            0.0
        } else {
            limit * self.kind.capacity_share(Temperature::celsius(outdoors))
        };
        let least = lesser(limit * self.kind.least_share(), capacity);
        let main = greater(lesser(needed, capacity), least);
        let backup = lesser(greater(needed - main, 0.0), choices.backup_limit.value());
        let short = (needed - main - backup) * per_watt;
        Acting { main, backup, unmet: short > NEARLY }
    }

    /// Share of the hour that the fan runs to cool.
    ///
    /// While the mass stands still the air falls towards outdoors as K/(K + g) with the H of the fan's
    /// air g. The mass moves a little, so K is found from the full fan and once more from the duty it gives.
    fn duty_to_cool(&self, free: f64, drive: &Drive, mass: f64) -> f64 {
        let network = &self.model.network;
        let above = self.model.choices.fan_above.as_celsius();
        let outdoors = drive.outdoors;
        if free <= above || outdoors > free - COLDER {
            return 0.0;
        }
        let full = self.model.fan;
        let blown = self.blown.go(network, drive, mass).air;
        if blown >= above {
            return 1.0;
        }
        let air_for = |flow: f64, found: f64| {
            flow * (found - outdoors) / (free - found) * (free - above) / (above - outdoors)
        };
        let near = air_for(full, blown);
        let found = network.step(near, HOUR).go(network, drive, mass).air;
        (air_for(near, found) / full).clamp(0.0, 1.0)
    }

    /// Share of the hour that the fan runs to dry.
    fn duty_to_dry(&self, air: f64, state: &VapourState, drive: &VapourDrive) -> f64 {
        let over = self.model.choices.fan_over.value();
        let wanted = over * self.model.surroundings.saturation.pascals(air);
        let (without, _) = self.model.vapour.go(state, drive, HOUR);
        if without.pascals <= wanted || drive.outdoors > without.pascals - DRIER {
            return 0.0;
        }
        let needed = self.model.vapour.air_to_hold(wanted, state, drive, HOUR);
        needed.map_or(1.0, |needed| (needed / self.model.fan).clamp(0.0, 1.0))
    }

    fn hour(&mut self, hour: usize, state: &mut State, period: &mut Period) {
        let model = self.model;
        let (choices, network) = (&model.choices, &model.network);
        let weather = &model.surroundings.weather;
        let sun = &model.surroundings.sun.hours()[hour];
        let outdoors = weather.celsius()[hour];

        let used = choices.is_used(hour);
        let set = if used { model.set_point } else { model.set_point - choices.setback.value() };
        let people = if used { choices.people * choices.heat_of_person.value() } else { 0.0 };
        let in_use = if used { choices.equipment_in_use.value() } else { 0.0 };
        let equipment = choices.equipment_always.value() + in_use;
        let source = choices.moisture_always.value()
            + choices.moisture_drying.value()
            + if used { choices.moisture_in_use.value() } else { 0.0 };

        let (open, column) = model.window;
        let sun_in = open * sun[column];
        let (per_sun, column) = model.sun_on_door;
        let at_openings = per_sun * sun[column] - model.sky_through_openings;
        let warmed: f64 = sun.iter().zip(&model.sun_at_steel).map(|(sun, per)| sun * per).sum();
        let radiant = (1.0 - CONVECTIVE) * (people + equipment) + sun_in;
        let drive = Drive {
            to_air: CONVECTIVE * (people + equipment) + at_openings - model.drying,
            to_surface: radiant * (1.0 - network.onto_mass),
            to_mass: radiant * network.onto_mass,
            outdoors,
            at_steel: outdoors + warmed - model.sky,
        };

        let mut step = self.still;
        let mut free = step.go(network, &drive, state.mass);
        let mut acting = self.heat(free.air, step.per_watt.air, set, outdoors, used);
        let mut duty = 0.0;
        if model.fan > 0.0 {
            let room = step.heated(&free, acting.main + acting.backup);
            let vapour = self.vapour_drive(hour, [room.air, room.surface], network.leaks, source);
            duty = greater(
                self.duty_to_cool(free.air, &drive, state.mass),
                self.duty_to_dry(room.air, &state.vapour, &vapour),
            );
            if duty > 0.0 {
                step = if duty < 1.0 { network.step(duty * model.fan, HOUR) } else { self.blown };
                free = step.go(network, &drive, state.mass);
                acting = self.heat(free.air, step.per_watt.air, set, outdoors, used);
            }
        }
        let heat = acting.main + acting.backup;
        let room = step.heated(&free, heat);
        state.mass = room.mass_after;

        let fan_air = duty * model.fan;
        let vapour =
            self.vapour_drive(hour, [room.air, room.surface], network.leaks + fan_air, source);
        let (after, gone) = model.vapour.go(&state.vapour, &vapour, HOUR);
        state.vapour = after;

        let spot = self.cold_spots(state, room.air, outdoors);
        let too_warm = room.air > choices.too_warm.as_celsius();
        period.unmet_hours += u32::from(acting.unmet);
        period.too_warm_hours += u32::from(too_warm);
        period.drip_hours += u32::from(spot == SpotState::Drip);
        period.frost_hours += u32::from(spot == SpotState::Frost);
        period.fan_hours += duty;
        period.water_on_windows += Mass::new(gone.on_windows);
        period.water_on_lining += Mass::new(gone.on_lining);
        self.water_given += source * HOUR;
        self.water_by_air += gone.by_air;

        let main_input = if acting.main > 0.0 {
            acting.main / self.kind.performance(Temperature::celsius(outdoors))
        } else {
            0.0
        };
        let own = if acting.main > 0.0 { self.kind.own_electricity().value() } else { 0.0 };
        let joules = |watts: f64| Energy::new(watts * HOUR);
        let energy = EnergyByPurpose {
            heater_heat: joules(acting.main),
            backup_heat: joules(acting.backup),
            heater_input: joules(main_input),
            heater_own: joules(own),
            fan: joules(duty * choices.fan_power.value()),
            equipment: joules(equipment),
            people: joules(people),
            sun: joules(sun_in),
            through_envelope: joules(network.mass_to_outdoors * (room.mass - drive.at_steel)),
            through_openings: joules(network.openings * (room.air - outdoors) - at_openings),
            by_leaks: joules(network.leaks * (room.air - outdoors)),
            by_fan: joules(fan_air * (room.air - outdoors)),
            by_drying: joules(model.drying),
        };
        add(&mut period.energy, &energy);

        self.greatest_heat = greater(self.greatest_heat, heat);
        self.warmest = greater(self.warmest, room.air);
        self.coldest = lesser(self.coldest, room.air);
        self.hours[hour] = RoomHour {
            celsius: room.air as f32,
            humidity: (after.pascals / vapour.at_air) as f32,
            heat: heat as f32,
            spot,
            too_warm,
            unmet: acting.unmet,
        };
    }

    /// Vapour outdoors and at the surfaces, from the temperatures of air and lining.
    ///
    /// Asked for in two places, it would be a call; a tenth of the year natively.
    #[inline(always)]
    fn vapour_drive(
        &self,
        hour: usize,
        [air, lining]: [f64; 2],
        let_in: f64,
        source: f64,
    ) -> VapourDrive {
        let model = self.model;
        let weather = &model.surroundings.weather;
        let outdoors = weather.celsius()[hour];
        let at_windows = outdoors + model.window_factor * (air - outdoors);
        VapourDrive {
            outdoors: weather.vapour_pascals()[hour],
            air: let_in,
            source,
            at_lining: model.surroundings.saturation.pascals(lining),
            at_air: model.surroundings.saturation.pascals(air),
            at_windows: model.surroundings.saturation.pascals(at_windows),
        }
    }

    /// Counts the cold spots that take water in this hour, and keeps the frost on the coldest.
    fn cold_spots(&mut self, state: &mut State, air: f64, outdoors: f64) -> SpotState {
        let model = self.model;
        let saturation = &model.surroundings.saturation;
        let at_spot = |factor: f64| {
            let celsius = outdoors + factor * (air - outdoors);
            (celsius, state.vapour.pascals - saturation.pascals(celsius))
        };
        let Some(&coldest) = model.factors.first() else { return SpotState::Dry };
        let (celsius, over) = at_spot(coldest);
        if over > 0.0 {
            // Coldest first: where one stays dry, so do those after it.
            let wet =
                model.factors.iter().map(|&factor| at_spot(factor)).take_while(|spot| spot.1 > 0.0);
            for (n, (celsius, _)) in wet.enumerate() {
                let hours = if celsius < 0.0 { &mut self.frost } else { &mut self.drip };
                hours[n] += 1;
            }
        }
        let taken = model.vapour.onto_spot * over * HOUR;
        if celsius < 0.0 {
            // Below freezing it grows, or goes back to drier air.
            state.frost = greater(state.frost + taken, 0.0);
            self.most_frost = greater(self.most_frost, state.frost);
            if taken > 0.0 { SpotState::Frost } else { SpotState::Dry }
        } else {
            let thaws = state.frost > 0.0;
            state.frost = 0.0;
            if thaws || taken > 0.0 { SpotState::Drip } else { SpotState::Dry }
        }
    }

    fn outcome(
        self,
        months: [Period; 12],
        state: &State,
        mass: f64,
        vapour: &VapourState,
    ) -> YearOutcome {
        let model = self.model;
        let coldest_day = self
            .hours
            .chunks(24)
            .map(|day| day.iter().map(|hour| f64::from(hour.heat)).sum::<f64>() / 24.0)
            .fold(0.0, f64::max);
        let mut year = Period::default();
        for month in &months {
            add(&mut year.energy, &month.energy);
            year.unmet_hours += month.unmet_hours;
            year.too_warm_hours += month.too_warm_hours;
            year.drip_hours += month.drip_hours;
            year.frost_hours += month.frost_hours;
            year.fan_hours += month.fan_hours;
            year.water_on_windows += month.water_on_windows;
            year.water_on_lining += month.water_on_lining;
        }
        let spots = model.spots.iter().zip(self.drip.iter().zip(&self.frost));
        YearOutcome {
            months,
            year,
            spots: spots
                .filter(|&(_, (&drip, &frost))| drip + frost > 0)
                .map(|(&(place, temperature_factor), (&drip, &frost))| SpotHours {
                    place,
                    temperature_factor,
                    drip,
                    frost,
                })
                .collect(),
            coldest_spot: model.spots.first().map(|&(place, _)| place),
            most_frost: SurfaceMoisture::new(self.most_frost),
            greatest_heat: Power::new(self.greatest_heat),
            coldest_day: Power::new(coldest_day),
            warmest: Temperature::celsius(self.warmest),
            coldest: Temperature::celsius(self.coldest),
            stored: Energy::new(model.network.capacity * (state.mass - mass)),
            water_given: Mass::new(self.water_given),
            water_by_air: Mass::new(self.water_by_air),
            water_stored: Mass::new(model.vapour.held(&state.vapour) - model.vapour.held(vapour)),
            is_waiting: model.is_waiting,
            hours: self.hours,
        }
    }
}
