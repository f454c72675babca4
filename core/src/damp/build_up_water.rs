//! Water that gathers at the steel through the year.

use super::Setting;
use crate::climate::DAYS_IN_MONTH;
use crate::design::{CheckedDesign, Surface};
use crate::envelope::{Envelope, LayerKind, foam_material};
use crate::moisture::{
    Assembly, MoistureError, MonthBalance, MonthState, YearBalance, least_depth_for_vapour_control,
    monthly_balance, permeability,
};
use crate::units::{
    Length, Pressure, RelativeHumidity, SurfaceMoisture, Temperature, TemperatureDifference,
};

/// A surface through the year.
#[derive(Clone, Debug, PartialEq)]
pub struct BuildUpWater {
    /// Which surface.
    pub surface: Surface,
    /// Its foam.
    pub foam: Length,
    /// Foam from which on it holds vapour back by itself.
    pub least_foam: Length,
    /// Still air that resists vapour as much as all that stands before the steel, Σ s_d.
    pub equivalent_air_thickness: Length,
    /// The twelve months.
    pub year: YearBalance,
    /// The month in which most gathers; `None` where nothing does.
    pub wettest: Option<WettestMonth>,
}

/// The month in which most water gathers at the steel, g = δ₀·(p_i − p_sat(θ)) / Σ s_d · t.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WettestMonth {
    /// Its index from January.
    pub month: usize,
    /// Vapour pressure in the room.
    pub indoor_vapour: Pressure,
    /// What air at the steel can hold.
    pub steel_saturation: Pressure,
    /// What gathers in the month.
    pub gained: SurfaceMoisture,
}

impl WettestMonth {
    fn of(
        year: &YearBalance,
        assembly: &Assembly,
        months: &[MonthState; 12],
    ) -> Result<Option<Self>, MoistureError> {
        let gained = |month: &MonthBalance| month.change.iter().copied().sum::<SurfaceMoisture>();
        let most = |most, next| if gained(next) > gained(most) { next } else { most };
        let Some(wettest) = year.months.iter().reduce(most) else { return Ok(None) };
        let state = &months[wettest.month];
        let saturations = assembly.interface_saturations(state.indoor, state.outdoor)?;
        Ok(saturations.last().map(|&steel_saturation| Self {
            month: wettest.month,
            indoor_vapour: state.indoor_vapour,
            steel_saturation,
            gained: gained(wettest),
        }))
    }
}

impl BuildUpWater {
    /// The most that lies in it at the end of any month.
    pub fn peak(&self) -> SurfaceMoisture {
        self.year.peak().map_or(SurfaceMoisture::ZERO, |month| month.total())
    }

    /// Whether its foam holds vapour back by itself.
    pub fn controls_vapour(&self) -> bool {
        self.foam >= self.least_foam
    }
}

/// Surfaces behind whose foam steel lies; the floor has none under it.
const BEFORE_STEEL: [Surface; 4] =
    [Surface::SideWall, Surface::FrontEnd, Surface::DoorEnd, Surface::Ceiling];

/// Part of the way from the middle of winter to the middle of summer at the middle of a month,
/// 0 to 1 and back: (1 − cos(2π·(d − d_winter) / 365)) / 2 with d the day of the year.
fn season(month: usize, midwinter: f64) -> f64 {
    let before: usize = DAYS_IN_MONTH.iter().take(month).sum();
    let middle = before as f64 + DAYS_IN_MONTH[month % 12] as f64 / 2.0;
    let turn = 2.0 * core::f64::consts::PI * (middle - midwinter) / 365.0;
    (1.0 - libm::cos(turn)) / 2.0
}

/// Mean outdoor temperature of a month: a cosine from the coldest, January, to the warmest, July.
///
/// Common practice, no source.
pub fn month_temperature(month: usize, coldest: Temperature, warmest: Temperature) -> Temperature {
    coldest + (warmest - coldest) * season(month, DAYS_IN_MONTH[0] as f64 / 2.0)
}

/// Mean outdoor humidity of a month: between those of winter and of the warmest month, as the
/// temperature is.
///
/// Common practice, no source.
pub fn month_humidity(
    month: usize,
    winter: RelativeHumidity,
    warmest: RelativeHumidity,
) -> RelativeHumidity {
    let part = season(month, DAYS_IN_MONTH[0] as f64 / 2.0);
    RelativeHumidity::new(winter.value() + (warmest.value() - winter.value()) * part)
}

/// How much warmer than the air the sun keeps the steel in the mean of a month: a cosine from
/// nothing at the winter solstice to the most at the summer one.
///
/// Common practice, no source. A mean of 110 W/m² on a wall over the day, of which six tenths are
/// taken up and 20 W/(m²·K) given off, makes 3 K.
pub fn sun_rise_of_month(month: usize, most: TemperatureDifference) -> TemperatureDifference {
    most * season(month, -10.0)
}

/// The room held at its target, with the margin of ISO 13788, or as humid as outdoors where that
/// is damper; as warm as chosen, or as outdoors where that is warmer.
fn months(setting: &Setting) -> Result<[MonthState; 12], MoistureError> {
    let design = setting.design;
    let held = design.target_humidity;
    let mut states = Vec::with_capacity(12);
    for month in 0..12 {
        let outdoor = month_temperature(month, design.coldest_month, design.warmest_month);
        let indoor = design.indoor_temperature.max(outdoor);
        let humidity =
            month_humidity(month, design.outdoor_humidity, design.warmest_month_humidity);
        let state = MonthState::from_held_humidity(indoor, held, outdoor, humidity)?;
        let indoor_vapour = state.indoor_vapour.max(state.outdoor_vapour);
        let steel = outdoor + sun_rise_of_month(month, design.steel_sun_rise);
        states.push(MonthState { indoor_vapour, outdoor: steel, ..state });
    }
    // Twelve were pushed.
    states.try_into().map_err(|_| MoistureError::NoHeatingMonth)
}

/// The surfaces before steel through a year of monthly means: diffusion through lining and foam to
/// the sheet, which is tight (ISO 13788:2012, clause 6).
pub(super) fn build_up_water(
    checked: &CheckedDesign,
    envelope: &Envelope,
    setting: &Setting,
) -> Result<Vec<BuildUpWater>, MoistureError> {
    let months = months(setting)?;
    let foam = foam_material(checked.design());
    let least_foam = least_depth_for_vapour_control(permeability(foam.vapour_resistance_factor)?)?;
    let plain = envelope.plain.iter().filter(|plain| BEFORE_STEEL.contains(&plain.surface));
    plain
        .map(|plain| {
            let assembly = Assembly::of_plain_area(checked, plain)?;
            let year = monthly_balance(&assembly, &months)?;
            let before_steel = assembly.layers().iter().map(|layer| layer.equivalent_air_thickness);
            let finite = before_steel.filter(|thickness| thickness.value().is_finite());
            let foam = plain.layers.iter().filter(|layer| layer.kind == LayerKind::Foam);
            let foam = foam.map(|layer| layer.thickness).sum();
            Ok(BuildUpWater {
                surface: plain.surface,
                foam,
                least_foam,
                equivalent_air_thickness: finite.sum(),
                wettest: WettestMonth::of(&year, &assembly, &months)?,
                year,
            })
        })
        .collect()
}
