//! How a loss comes about: its formula with the values in it, and where those come from.

use inchwise_core::design::Surface;
use inchwise_core::envelope::{
    Amount, HeatFlow, OUTSIDE_SURFACE_RESISTANCE, PlainArea, ThermalBridge, counted_waves,
    frame_members,
};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY, Element, Loss};
use inchwise_core::psychro::STANDARD_PRESSURE;
use inchwise_core::units::{Area, ThermalTransmittance};

use crate::measure::{Notation, decimal};

/// A formula with its values, and sentences about them.
pub struct Reckoning {
    /// `35.4 m² × 0.228 W/m²K × 53 K`.
    pub formula: String,
    /// What stands behind the factors, a line each.
    pub behind: Vec<String>,
}

/// Three decimals of U, so that the product comes to what is shown.
const TRANSMITTANCE_PLACES: u32 = 3;

/// How a loss comes about.
pub fn reckoning(evaluation: &Evaluation, loss: &Loss, notation: Notation) -> Reckoning {
    let difference = notation.temperature_difference(evaluation.heat_loss.temperature_difference);
    let words = notation.language.losses();
    let area = |area: Area, transmittance: ThermalTransmittance| {
        let transmittance = notation.transmittance(transmittance, TRANSMITTANCE_PLACES);
        product(&[&notation.area_finely(area), &transmittance, &difference])
    };
    let envelope = &evaluation.envelope;
    match loss.element {
        Element::Plain(surface) => {
            let Some(plain) = envelope.plain.iter().find(|plain| plain.surface == surface) else {
                return coefficient_only(loss, &difference, Vec::new(), notation);
            };
            Reckoning {
                formula: area(plain.area, plain.transmittance),
                behind: layers(evaluation, plain, notation),
            }
        }
        Element::Detail(place) => {
            let placed = evaluation.details.iter().find(|placed| placed.place == place);
            let Some((placed, field)) = placed.and_then(|placed| Some((placed, placed.field()?)))
            else {
                let waiting = words.waiting.with(&[notation.language.place(place)]);
                return coefficient_only(loss, &difference, vec![waiting], notation);
            };
            let (count, each, solved) = match placed.amount {
                Amount::Metres(length) => {
                    let psi = notation.linear_transmittance(field.linear_transmittance());
                    (notation.run(length), format!("ψ {psi}"), words.solved)
                }
                Amount::Pieces(count) => {
                    let chi = notation.point_transmittance(field.point_transmittance());
                    (notation.count(count), format!("χ {chi}"), words.solved_body)
                }
            };
            let behind = match place {
                ThermalBridge::FrameLine(surface) => {
                    let members =
                        frame_members(evaluation.checked.design(), &evaluation.room.clear, surface);
                    let members = notation.count(f64::from(members));
                    vec![words.members.with(&[&members, &count]), solved.to_owned()]
                }
                ThermalBridge::Waves(surface) => waves(evaluation, surface, &count, notation),
                _ => vec![solved.to_owned()],
            };
            Reckoning { formula: product(&[&count, &each, &difference]), behind }
        }
        Element::PersonnelDoor => Reckoning {
            formula: area(envelope.personnel_door.area, envelope.personnel_door.transmittance),
            behind: vec![words.as_chosen.to_owned()],
        },
        Element::Windows => Reckoning {
            formula: area(envelope.windows.area, envelope.windows.transmittance),
            behind: vec![words.as_chosen.to_owned()],
        },
        Element::Air => {
            let changes = evaluation.checked.design().air_changes;
            let rate = notation.field(inchwise_core::design::Field::AirChanges, changes.value());
            let room = notation.room_volume(evaluation.room.volume);
            let pressure = evaluation.checked.design().place.air_pressure();
            let density = AIR_DENSITY * (pressure / STANDARD_PRESSURE);
            let behind = vec![
                words.air.with(&[&rate, &room]),
                format!(
                    "{} kg/m³, {} J/kgK",
                    decimal(density.value(), 2, notation.language),
                    decimal(AIR_HEAT_CAPACITY.value(), 0, notation.language),
                ),
            ];
            coefficient_only(loss, &difference, behind, notation)
        }
    }
}

fn product(factors: &[&str]) -> String {
    factors.join(" × ")
}

fn coefficient_only(
    loss: &Loss,
    difference: &str,
    behind: Vec<String>,
    notation: Notation,
) -> Reckoning {
    let formula = product(&[&notation.coefficient(loss.coefficient), difference]);
    Reckoning { formula, behind }
}

/// How many metres of waves a plain area holds, and what ψ of them is.
fn waves(evaluation: &Evaluation, surface: Surface, run: &str, notation: Notation) -> Vec<String> {
    let words = notation.language.losses();
    let plain = evaluation.envelope.plain.iter().find(|plain| plain.surface == surface);
    let counted = plain.zip(counted_waves(&evaluation.checked, surface)).map(|(plain, sheet)| {
        let width = notation.length(sheet.pitch());
        words.waves.with(&[&width, &notation.area_finely(plain.area), run])
    });
    counted.into_iter().chain([words.solved_wave.to_owned()]).collect()
}

/// The resistances behind a plain area's U, from the room outwards.
fn layers(evaluation: &Evaluation, plain: &PlainArea, notation: Notation) -> Vec<String> {
    let words = notation.language.losses();
    let flow = HeatFlow::through(plain.surface);
    let inside = notation.resistance(flow.inside_surface_resistance());
    let mut lines = vec![words.layers.to_owned(), format!("{} {inside}", words.inside_surface)];
    lines.extend(plain.layers.iter().rev().map(|layer| {
        format!(
            "{} {}: {}",
            notation.language.layer(layer.kind),
            notation.length(layer.thickness),
            notation.resistance(layer.resistance)
        )
    }));
    lines.push(format!(
        "{} {}",
        words.outside_surface,
        notation.resistance(OUTSIDE_SURFACE_RESISTANCE)
    ));
    if counted_waves(&evaluation.checked, plain.surface).is_some() {
        lines.push(words.troughs.to_owned());
    }
    lines
}

#[cfg(test)]
mod tests {
    use inchwise_core::design::CheckedDesign;
    use inchwise_core::detail::FieldCache;
    use inchwise_core::evaluate::evaluate;

    use super::*;
    use crate::measure::UnitSystem;
    use crate::text::Language;

    /// The number at the start of a text such as `ψ 0.006 W/mK`.
    fn number(text: &str) -> f64 {
        let digits = text.trim_start_matches(['ψ', 'χ', ' ']).replace(',', "").replace('−', "-");
        let end = digits.find('\u{a0}').unwrap_or(digits.len());
        digits[..end].parse().expect("a number in front")
    }

    #[test]
    fn every_formula_comes_to_the_loss_that_is_shown() {
        let evaluation = evaluate(&CheckedDesign::default(), &mut FieldCache::default());
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            let notation = Notation { units, language: Language::English };
            for loss in &evaluation.heat_loss.losses {
                let formula = reckoning(&evaluation, loss, notation).formula;
                let product: f64 = formula.split(" × ").map(number).product();
                let shown = match units {
                    UnitSystem::Metric => loss.power.value(),
                    UnitSystem::Imperial => loss.power.as_btu_per_hour(),
                };
                // Three digits of each factor: within a few per cent, or a watt or two.
                let off = (product - shown).abs();
                assert!(off <= 0.04 * shown.abs() + 6.0, "{formula} = {product}, shown {shown}");
            }
        }
    }
}
