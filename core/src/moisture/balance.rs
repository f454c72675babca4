//! Water in a build-up through the year: the monthly balance of ISO 13788.

use super::assembly::Assembly;
use super::error::MoistureError;
use super::month::{MonthState, month_length};
use super::vapour_profile::{VapourProfile, checked_saturations, vapour_profile};
use crate::units::{MoistureFlux, Pressure, SurfaceMoisture, Time};

/// The balance of one month.
#[derive(Clone, Debug, PartialEq)]
pub struct MonthBalance {
    /// Index of the month, 0 for January.
    pub month: usize,
    /// What was gained or lost at every interface, from the inside.
    pub change: Vec<SurfaceMoisture>,
    /// What lies there at the end of the month.
    pub accumulated: Vec<SurfaceMoisture>,
}

impl MonthBalance {
    /// What lies in the whole build-up at the end of the month.
    pub fn total(&self) -> SurfaceMoisture {
        self.accumulated.iter().copied().sum()
    }
}

/// The balance of a year.
#[derive(Clone, Debug, PartialEq)]
pub struct YearBalance {
    /// Twelve months from the first in which vapour condenses; none if it never does.
    pub months: Vec<MonthBalance>,
}

impl YearBalance {
    /// The month after which most lies in the build-up; `None` if it stays dry.
    pub fn peak(&self) -> Option<&MonthBalance> {
        self.months
            .iter()
            .reduce(|most, next| if next.total() > most.total() { next } else { most })
    }

    /// What is left after twelve months.
    pub fn remaining(&self) -> SurfaceMoisture {
        self.months.last().map_or(SurfaceMoisture::ZERO, MonthBalance::total)
    }

    /// Whether nothing is left: it stays dry or dries out within the year. What is left adds up
    /// from year to year.
    pub fn dries_out(&self) -> bool {
        self.remaining() == SurfaceMoisture::ZERO
    }
}

/// One month's means, ready to be balanced.
struct Means<'a> {
    assembly: &'a Assembly,
    state: &'a MonthState,
    saturation: Vec<Pressure>,
}

impl Means<'_> {
    fn profile(&self, wet: &[bool]) -> VapourProfile {
        let (indoor, outdoor) = (self.state.indoor_vapour, self.state.outdoor_vapour);
        vapour_profile(self.assembly.layers(), indoor, outdoor, &self.saturation, wet)
    }

    fn is_condensing(&self) -> bool {
        let dry = vec![false; self.saturation.len()];
        self.profile(&dry).condensing.iter().any(|&flux| flux > MoistureFlux::ZERO)
    }

    /// What lies at the interfaces after `length` in this state, `before` lying there first.
    ///
    /// The pressures change only when an interface has dried, so the month is taken in steps from
    /// one drying to the next. Once dry an interface stays so: drying lowers every pressure.
    fn after(&self, before: &[SurfaceMoisture], length: Time) -> Vec<SurfaceMoisture> {
        let mut lying = before.to_vec();
        let mut left = length;
        while left > Time::ZERO {
            let wet: Vec<bool> = lying.iter().map(|&water| water > SurfaceMoisture::ZERO).collect();
            let rates = self.profile(&wet).condensing;
            let next_dry = (0..lying.len())
                .filter(|&n| wet[n] && rates[n] < MoistureFlux::ZERO)
                .map(|n| (n, lying[n] / -rates[n]))
                .reduce(|first, next| if next.1 < first.1 { next } else { first })
                .filter(|&(_, time)| time <= left);
            let step = next_dry.map_or(left, |(_, time)| time);
            for (water, &rate) in lying.iter_mut().zip(&rates) {
                // Two that dry at once may differ by a rounding.
                *water = (*water + rate * step).max(SurfaceMoisture::ZERO);
            }
            if let Some((n, _)) = next_dry {
                lying[n] = SurfaceMoisture::ZERO;
            }
            left = left - step;
        }
        lying
    }
}

/// The first month in which vapour condenses after one in which it does not, going back from
/// January, or forward where January is dry; January where all condense, `None` where none does.
fn first_condensing_month(condensing: &[bool]) -> Option<usize> {
    if condensing.first() == Some(&true) {
        let last_dry = condensing.iter().rposition(|&wet| !wet);
        Some(last_dry.map_or(0, |month| (month + 1) % condensing.len()))
    } else {
        condensing.iter().position(|&wet| wet)
    }
}

/// The water that condenses and dries at the interfaces of a build-up over a year of monthly means,
/// January first.
///
/// It starts dry in the first month in which vapour condenses and goes on for twelve. An interface
/// with water is held at saturation, whatever it gains or loses; one that dries within a month is
/// dry for the rest of it. Months are those of [`super::month_length`].
///
/// Diffusion only: air that leaks through a build-up carries far more vapour, and water once there
/// may soak away or freeze in place. Condensing within a layer is found on a build-up that was
/// [`Assembly::divided`].
///
/// Source: ISO 13788:2012, clause 6.
///
/// # Errors
/// Refuses a temperature or vapour pressure out of range.
pub fn monthly_balance(
    assembly: &Assembly,
    months: &[MonthState; 12],
) -> Result<YearBalance, MoistureError> {
    let means = months
        .iter()
        .map(|state| {
            let saturation = checked_saturations(assembly, state)?;
            Ok(Means { assembly, state, saturation })
        })
        .collect::<Result<Vec<_>, MoistureError>>()?;
    let condensing: Vec<bool> = means.iter().map(Means::is_condensing).collect();
    let Some(first) = first_condensing_month(&condensing) else {
        return Ok(YearBalance { months: Vec::new() });
    };
    let mut lying = vec![SurfaceMoisture::ZERO; assembly.interfaces()];
    let balances = (first..first + 12)
        .map(|ahead| {
            let month = ahead % 12;
            let after = means[month].after(&lying, month_length(month));
            let change = after.iter().zip(&lying).map(|(&after, &before)| after - before).collect();
            lying.clone_from(&after);
            MonthBalance { month, change, accumulated: after }
        })
        .collect();
    Ok(YearBalance { months: balances })
}

#[cfg(test)]
mod tests {
    use super::first_condensing_month;

    #[test]
    fn the_year_starts_where_condensing_does() {
        let with = |months: &[usize]| {
            let condensing: Vec<bool> = (0..12).map(|month| months.contains(&month)).collect();
            first_condensing_month(&condensing)
        };
        assert_eq!(with(&[10, 11, 0, 1, 2]), Some(10));
        assert_eq!(with(&[0, 1, 2]), Some(0));
        assert_eq!(with(&[5, 6]), Some(5));
        assert_eq!(with(&[0, 1, 5, 6, 11]), Some(11));
        assert_eq!(with(&(0..12).collect::<Vec<_>>()), Some(0));
        assert_eq!(with(&[]), None);
    }
}
