//! What the host's attributes ask for.

use inchwise_core::design::Design;
use inchwise_link::{YearText, design_of_link};
use web_sys::HtmlElement;

use crate::measure::UnitSystem;
use crate::state::{Inputs, warn};
use crate::text::Language;

/// What the host chose: what starting over leads back to.
pub fn usual(host: &HtmlElement) -> (Inputs, YearText) {
    let design = design(host.get_attribute("design").as_deref()).unwrap_or_default();
    let year = host.get_attribute("year").unwrap_or_default();
    let year = YearText::read(&year, &YearText::default(), design.indoor_temperature);
    for key in &year.unused {
        warn(&["not a choice of the year that can be: ", key].concat());
    }
    let inputs = Inputs { design, year: year.choices.clone(), ..Inputs::default() };
    (inputs, year)
}

/// Metric or imperial.
pub fn units(host: &HtmlElement) -> UnitSystem {
    let named = host.get_attribute("units");
    named.as_deref().and_then(UnitSystem::from_key).unwrap_or_default()
}

/// The language of the host, or of the page where it stands.
pub fn language(host: &HtmlElement) -> Language {
    let own = host.get_attribute("language");
    let near = || host.closest("[lang]").ok().flatten()?.get_attribute("lang");
    own.or_else(near).as_deref().and_then(Language::from_tag).unwrap_or_default()
}

/// The design of an attribute; the default one where there is none. One that cannot be read is
/// reported to the console, for whoever wrote the page, and changes nothing.
pub fn design(attribute: Option<&str>) -> Option<Design> {
    let Some(text) = attribute else { return Some(Design::default()) };
    match design_of_link(text) {
        Ok(design) => Some(design),
        Err(fault) => {
            warn(&["the design cannot be read: ", &fault.said()].concat());
            None
        }
    }
}
