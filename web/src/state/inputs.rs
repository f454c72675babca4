//! What the visitor chose: all of it, and nothing that follows from it.

use std::sync::Arc;

use inchwise_core::design::Design;
use inchwise_core::units::{Length, Temperature};
use inchwise_core::year::YearChoices;
use inchwise_link::{ChosenPlace, Fragment, NoDesign, OwnHours, PlaceWish, YearText};
use inchwise_link::{design_of_link, link_of};

/// How tall the person in the drawings is before anyone said so.
pub const USUAL_HEIGHT: Length = Length::mm(1750.0);

/// Everything that is chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct Inputs {
    /// The room, lawful or not.
    pub design: Design,
    /// Heater, supply, prices and the like, lawful or not.
    pub year: YearChoices,
    /// Where it stands.
    pub place: ChosenPlace,
    /// Hours of the visitor's own, in place of those of the place.
    pub hours: Option<Arc<OwnHours>>,
    /// How tall the person in the drawings is.
    pub own_height: Length,
}

impl Default for Inputs {
    fn default() -> Self {
        Self {
            design: Design::default(),
            year: YearChoices::default(),
            place: ChosenPlace::default(),
            hours: None,
            own_height: USUAL_HEIGHT,
        }
    }
}

impl Inputs {
    /// What an address or the attributes of an element say, upon what stands without them. A place
    /// that is named is still to be found.
    ///
    /// # Errors
    /// Why the design cannot be read.
    pub fn read(design: &str, year: &str, usual: &YearText) -> Result<(Self, YearText), NoDesign> {
        let design = if design.is_empty() { Design::default() } else { design_of_link(design)? };
        let year = YearText::read(year, usual, design.indoor_temperature);
        let inputs = Self { design, year: year.choices.clone(), ..Self::default() };
        Ok((inputs, year))
    }

    /// The text that brings all of it back where the usual year is the same.
    pub fn fragment(&self, usual: &YearText, sheet: &str) -> String {
        let design = link_of(&self.design);
        let year = usual.otherwise(&self.year, &PlaceWish::of(&self.place));
        Fragment { design: &design, year: &year, sheet }.written()
    }

    /// The temperature that heaters are to hold.
    pub const fn set_point(&self) -> Temperature {
        self.design.indoor_temperature
    }
}
