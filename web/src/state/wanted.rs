//! What is still to be solved for what is shown.

use std::sync::Arc;

use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Detail, FieldCache, Outcome, detail_at};
use inchwise_core::envelope::{Envelope, ThermalBridge};
use inchwise_core::room::Room;
use inchwise_link::link_of;

/// A design and its places.
#[derive(Debug)]
pub struct Asked {
    checked: CheckedDesign,
    /// The design as a link writes it.
    pub link: String,
    places: Vec<ThermalBridge>,
}

/// A detail that is lacking, and how a worker is told of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Lacking {
    /// The detail.
    pub detail: Detail,
    /// The place it is needed for, by its number.
    pub place: usize,
    /// What is known of the sections it is judged against, W/(m·K).
    pub lines: Vec<f64>,
}

impl Asked {
    /// The places of a design.
    pub fn of(checked: &CheckedDesign) -> Arc<Self> {
        let envelope = Envelope::of(checked, &Room::of(checked).clear);
        Arc::new(Self {
            checked: checked.clone(),
            link: link_of(checked.design()),
            places: envelope.thermal_bridges.into_iter().map(|(place, _)| place).collect(),
        })
    }

    /// The design.
    pub const fn checked(&self) -> &CheckedDesign {
        &self.checked
    }

    /// The number of a place.
    pub fn number_of(&self, place: ThermalBridge) -> Option<usize> {
        self.places.iter().position(|&other| other == place)
    }

    /// Every detail that is lacking and can be solved now, the place that is looked at first. Those
    /// judged against sections that are lacking themselves follow once these are solved.
    pub fn lacking(&self, first: Option<ThermalBridge>, memory: &FieldCache) -> Vec<Lacking> {
        let is_first = |&number: &usize| Some(self.places[number]) == first;
        let (first, others): (Vec<_>, Vec<_>) = (0..self.places.len()).partition(is_first);
        let mut lacking: Vec<Lacking> = Vec::new();
        for number in first.into_iter().chain(others) {
            if let Some(one) = self.lacking_at(number, memory)
                && !lacking.iter().any(|other| other.detail == one.detail)
            {
                lacking.push(one);
            }
        }
        lacking
    }

    fn lacking_at(&self, place: usize, memory: &FieldCache) -> Option<Lacking> {
        let (mut lines, mut section) = (Vec::new(), None);
        let mut line = |detail: &Detail| match memory.get(detail) {
            Some(Ok(field)) => {
                let transmittance = field.linear_transmittance();
                lines.push(transmittance.value());
                Ok(transmittance)
            }
            Some(Err(error)) => Err(Outcome::Failed(*error)),
            None => {
                section = Some(*detail);
                Err(Outcome::Waiting)
            }
        };
        let detail = match detail_at(&self.checked, self.places[place], &mut line) {
            Ok(detail) => memory.get(&detail).is_none().then_some(detail),
            Err(_) => section,
        };
        detail.map(|detail| Lacking { detail, place, lines })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_is_wished_for_twice_and_bodies_wait_for_their_sections() {
        let asked = Asked::of(&CheckedDesign::default());
        let memory = FieldCache::without_solver();
        let lacking = asked.lacking(None, &memory);
        let bodies = lacking.iter().filter(|one| one.detail.is_body()).count();
        assert!(!lacking.is_empty() && bodies == 0, "{bodies} bodies before their sections");
        for (index, one) in lacking.iter().enumerate() {
            assert!(!lacking[..index].iter().any(|other| other.detail == one.detail));
        }
    }

    #[test]
    fn the_place_that_is_looked_at_comes_first() {
        let asked = Asked::of(&CheckedDesign::default());
        let memory = FieldCache::without_solver();
        let place = ThermalBridge::FloorMember;
        let lacking = asked.lacking(Some(place), &memory);
        assert_eq!(Some(lacking[0].place), asked.number_of(place));
    }
}
