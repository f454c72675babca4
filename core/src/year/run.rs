//! The loop over the hours.

use super::cold_places::ColdPlaces;
use super::fan_duty::{Air, duty_to_cool, duty_to_dry};
use super::heater::HeaterKind;
use super::model::YearModel;
use super::outcome::{EnergyByPurpose, Period, RoomHour, SpotState, YearOutcome, add};
use super::record::Record;
use super::vapour_balance::{Terms, VapourBalance, VapourDrive, VapourState};
use crate::climate::{HOURS_IN_YEAR, hours_of};
use crate::extremes::{greater, lesser};
use crate::heat_load::HEAT_OF_EVAPORATION;
use crate::room_network::{Drive, NetworkStep};
use crate::units::{Energy, Mass, Temperature};

/// Seconds in a step.
pub(super) const HOUR: f64 = 3600.0;

/// Hours of the end of the year that run before its start, so that mass and lining are settled: two weeks.
const LEAD_IN: usize = 336;

/// Share of the heat of people and equipment that goes straight to the air (ISO 13790:2008, annex C).
const CONVECTIVE: f64 = 0.5;

/// Kelvin under the set-point that still count as held.
const NEARLY: f64 = 0.5;

/// What changes from hour to hour.
pub(super) struct State<'a> {
    pub(super) mass: f64,
    pub(super) vapour: VapourState,
    pub(super) places: ColdPlaces<'a>,
    /// Watts that water on cold places gave to the room in the hour before, or took: it warms this one.
    released: f64,
}

/// Heater through an hour.
struct Acting {
    main: f64,
    backup: f64,
    unmet: bool,
}

/// Runs a year.
///
/// In each hour weather, use and gains stand still. The heater brings the mean air temperature of
/// the hour to the set-point as far as it can. The fan runs for those inside, and more for as much of the hour as
/// it takes to hold the room at its temperature or humidity, only while outdoor air is colder, or holds less
/// vapour; while it cools, its air goes past the heat exchanger. Cold places take water from the air and give
/// it back; of the heat of that their temperature factor's part comes to the room, in the hour after, and all of what
/// condenses in full air. Water
/// that dries in the room takes its heat from the air; people's own moisture takes none, for their heat is
/// counted dry. Left out: wind, frost that insulates, the heat of what the lining takes up.
pub fn run_year(model: &YearModel<'_>) -> YearOutcome {
    let mut run = Run::new(model);
    let mut state = run.start();
    for hour in HOURS_IN_YEAR - LEAD_IN..HOURS_IN_YEAR {
        run.hour(hour, &mut state, &mut Period::default());
    }
    run.record.forget(&state.places);
    let (mass, vapour, lying) = (state.mass, state.vapour, state.places.held());
    let mut months = [Period::default(); 12];
    for (month, period) in months.iter_mut().enumerate() {
        let hours = hours_of(month);
        let count = hours.len() as f64;
        for hour in hours {
            run.hour(hour, &mut state, period);
        }
        period.mean_celsius /= count;
        period.mean_humidity /= count;
    }
    let stored = Energy::new(model.network.capacity * (state.mass - mass));
    let held = |vapour: &VapourState, lying: f64| model.vapour.held(vapour) + lying;
    let water = held(&state.vapour, state.places.held()) - held(&vapour, lying);
    run.record.outcome(model, months, stored, Mass::new(water))
}

/// A run under way: the model with what is fixed over the year, and the records.
struct Run<'a> {
    model: &'a YearModel<'a>,
    /// The network with the fan off, and with it at full flow past any exchanger.
    still: NetworkStep,
    blown: NetworkStep,
    kind: HeaterKind,
    record: Record,
}

impl<'a> Run<'a> {
    fn new(model: &'a YearModel<'a>) -> Self {
        Self {
            model,
            still: model.network.step(0.0, HOUR),
            blown: model.network.step(model.fan.full, HOUR),
            kind: model.choices.heater,
            record: Record::new(model.places.len()),
        }
    }

    fn start(&self) -> State<'a> {
        let weather = &self.model.surroundings.weather;
        let pascals = weather.vapour_pascals()[HOURS_IN_YEAR - LEAD_IN];
        let saturation = self.model.surroundings.saturation.pascals(self.model.set_point);
        let vapour = VapourState { pascals, lining: (pascals / saturation).min(1.0) };
        let places = ColdPlaces::new(&self.model.places);
        State { mass: self.model.set_point, vapour, places, released: 0.0 }
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

    fn hour(&mut self, hour: usize, state: &mut State<'a>, period: &mut Period) {
        let model = self.model;
        let (network, fan) = (&model.network, &model.fan);
        let weather = &model.surroundings.weather;
        let sun = &model.surroundings.sun.hours()[hour];
        let outdoors = weather.celsius()[hour];
        let use_now = model.schedule.at(hour);
        let used = use_now.used;
        let set =
            if used { model.set_point } else { model.set_point - model.design.setback.value() };

        let (open, column) = model.window;
        let sun_in = open * sun[column];
        let (per_sun, column) = model.sun_on_door;
        let at_openings = per_sun * sun[column] - model.sky_through_openings;
        let warmed: f64 = sun.iter().zip(&model.sun_at_steel).map(|(sun, per)| sun * per).sum();
        let dry = use_now.occupants + use_now.equipment;
        let radiant = (1.0 - CONVECTIVE) * dry + sun_in;
        let released = state.released;
        let drive = Drive {
            to_air: CONVECTIVE * dry + at_openings - use_now.drying + released,
            to_surface: radiant * (1.0 - network.onto_mass),
            to_mass: radiant * network.onto_mass,
            outdoors,
            at_steel: outdoors + warmed - model.sky,
        };

        let mut step = self.still;
        let mut free = step.go(network, &drive, state.mass);
        let mut acting = self.heat(free.air, step.per_watt.air, set, outdoors, used);
        let (mut duty, mut kept) = (0.0, 0.0);
        if fan.full > 0.0 {
            let room = step.heated(&free, acting.main + acting.backup);
            let air = Air { celsius: room.air, lining: room.surface, let_in: network.leaks };
            let to_cool = duty_to_cool(model, &self.blown, free.air, &drive, state.mass);
            let (vapour, terms) = self.vapour_terms(hour, state, &air);
            let to_dry = duty_to_dry(model, &vapour, &terms, state.places.sinks(), &state.vapour);
            let otherwise = greater(fan.for_occupants(used), to_dry);
            duty = greater(to_cool, otherwise);
            if duty > 0.0 {
                kept = if to_cool > otherwise { 0.0 } else { fan.kept(set, outdoors) };
                let passes = duty * fan.full * (1.0 - kept);
                step = if passes < fan.full { network.step(passes, HOUR) } else { self.blown };
                free = step.go(network, &drive, state.mass);
                acting = self.heat(free.air, step.per_watt.air, set, outdoors, used);
            }
        }
        let heat = acting.main + acting.backup;
        let room = step.heated(&free, heat);
        state.mass = room.mass_after;

        let air = Air {
            celsius: room.air,
            lining: room.surface,
            let_in: network.leaks + duty * fan.full,
        };
        let (vapour, terms) = self.vapour_terms(hour, state, &air);
        let sinks = state.places.sinks();
        let pascals = VapourBalance::pressure(&terms, &vapour, sinks, &state.vapour);
        let (after, gone) = model.vapour.go(&state.vapour, &vapour, &terms, sinks, pascals, HOUR);
        state.vapour = after;
        let (spot, joules) = self.record.let_pass(&mut state.places, pascals, HOUR, period);
        // What condenses in full air warms the room with all of its heat.
        state.released = (joules + gone.anywhere * HEAT_OF_EVAPORATION.value()) / HOUR;

        let humidity = after.pascals / vapour.at_air;
        let too_warm = room.air > model.design.too_warm.as_celsius();
        period.unmet_hours += u32::from(acting.unmet);
        period.too_warm_hours += u32::from(too_warm);
        period.drip_hours += u32::from(spot == SpotState::Drip);
        period.frost_hours += u32::from(spot == SpotState::Frost);
        period.fan_hours += duty;
        period.water_on_lining += Mass::new(gone.anywhere);
        period.mean_celsius += room.air;
        period.mean_humidity += humidity;
        self.record.water_given += use_now.source * HOUR;
        self.record.water_by_air += gone.by_air;

        let main_input = if acting.main > 0.0 {
            acting.main / self.kind.performance(Temperature::celsius(outdoors))
        } else {
            0.0
        };
        let own = if acting.main > 0.0 { self.kind.own_electricity().value() } else { 0.0 };
        let by_fan = duty * fan.full * (1.0 - kept);
        let joules = |watts: f64| Energy::new(watts * HOUR);
        let energy = EnergyByPurpose {
            heater_heat: joules(acting.main),
            backup_heat: joules(acting.backup),
            heater_input: joules(main_input),
            heater_own: joules(own),
            fan: joules(duty * fan.draws),
            equipment: joules(use_now.equipment),
            people: joules(use_now.occupants),
            sun: joules(sun_in),
            through_envelope: joules(network.mass_to_outdoors * (room.mass - drive.at_steel)),
            through_openings: joules(network.openings * (room.air - outdoors) - at_openings),
            by_leaks: joules(network.leaks * (room.air - outdoors)),
            by_fan: joules(by_fan * (room.air - outdoors)),
            by_drying: joules(use_now.drying),
            condensing: joules(released),
        };
        add(&mut period.energy, &energy);
        self.record.hour(
            hour,
            room.air,
            heat,
            RoomHour {
                celsius: room.air as f32,
                humidity: humidity as f32,
                heat: heat as f32,
                spot,
                too_warm,
                unmet: acting.unmet,
            },
        );
    }

    /// The balance of vapour of an hour with air and lining at their temperatures; finds the sinks of the hour.
    ///
    /// Asked for in two places, it would be a call; a tenth of the year natively.
    #[inline(always)]
    fn vapour_terms(&self, hour: usize, state: &mut State<'_>, air: &Air) -> (VapourDrive, Terms) {
        let model = self.model;
        let weather = &model.surroundings.weather;
        let saturation = &model.surroundings.saturation;
        let outdoors = weather.celsius()[hour];
        let drive = VapourDrive {
            outdoors: weather.vapour_pascals()[hour],
            air: air.let_in,
            source: model.schedule.at(hour).source,
            at_lining: saturation.pascals(air.lining),
            at_air: model.vapour.most(saturation.pascals(air.celsius)),
        };
        let terms = model.vapour.terms(&state.vapour, &drive, HOUR);
        // The most the room can come to: nothing taken, and all that lies there given back.
        let supply = &terms.supply;
        let most = (supply.given + state.places.gives_at_most() / HOUR) / supply.carried;
        state.places.find_sinks(
            [air.celsius, outdoors],
            lesser(most, drive.at_air),
            HOUR,
            |celsius| saturation.pascals(celsius),
        );
        (drive, terms)
    }
}
