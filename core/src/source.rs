//! Where figures come from: citation keys that values carry with them.

/// A published work, a trade custom, or an admission that a value was recalled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Source {
    /// ISO 668: freight containers, classification, dimensions and ratings.
    Iso668,
    /// ISO 1161: freight containers, corner and intermediate fittings.
    Iso1161,
    /// ISO 1496-1: freight containers, specification and testing, general cargo.
    Iso1496,
    /// ISO 6946:2017: thermal resistance and transmittance, calculation methods.
    Iso6946,
    /// ISO 10211:2017: thermal bridges, heat flows and surface temperatures.
    Iso10211,
    /// ISO 10456:2007: tabulated design values of building materials.
    Iso10456,
    /// EN 12831-1:2017: design heat load.
    En12831,
    /// ISO 13788:2012: surface and interstitial moisture, calculation methods.
    Iso13788,
    /// ASHRAE Handbook of Fundamentals 2017.
    AshraeFundamentals2017,
    /// ASTM C645: non-structural steel framing members.
    AstmC645,
    /// International Residential Code 2021.
    InternationalResidentialCode2021,
    /// National Building Code of Canada 2020.
    NationalBuildingCodeOfCanada2020,
    /// DIN 4108-2:2013: thermal protection of buildings, minimum requirements.
    Din4108Part2,
    /// S. R. Hastings and M. Wall (editors), Sustainable Solar Housing, 2007, table 10.1.1:
    /// emission of water vapour (read as quoted; the title of the work from memory).
    SustainableSolarHousing2007,
    /// W. J. Angell and W. W. Olson, Moisture sources associated with potential damage in cold
    /// climate housing, 1988 (read as quoted).
    AngellOlson1988,
    /// New Zealand Metal Roof and Wall Cladding Code of Practice, 10.8.1: moisture from occupants.
    NewZealandMetalRoofCode,
    /// US Energy Information Administration, units and calculators: heating values of fuels.
    EnergyInformationAdministration,
    /// A maker's public box specification sheet (dimensions of the common steel box).
    MakerSheet,
    /// What the trade does; no document found.
    CommonPractice,
    /// Recalled and not yet checked against its document.
    FromMemory,
}
