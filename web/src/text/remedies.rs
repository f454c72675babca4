//! What is to be asked of others.

use inchwise_core::humidity::Deferral;

use super::Language;
use super::Language::{English, French};

impl Language {
    /// A matter to ask about.
    pub const fn deferral(self, deferral: Deferral) -> &'static str {
        match (deferral, self) {
            (Deferral::EngineeredDesign, English) => {
                "A use this humid in winter calls for an engineered design."
            }
            (Deferral::EngineeredDesign, French) => {
                "Un usage aussi humide l’hiver demande une conception d’ingénieur."
            }
            (Deferral::AnimalWelfare, English) => "Welfare rules for the animals you keep.",
            (Deferral::AnimalWelfare, French) => "Les règles de bien-être des animaux gardés.",
            (Deferral::Drainage, English) => "Where the water drains to.",
            (Deferral::Drainage, French) => "Où l’eau s’écoule.",
            (Deferral::Corrosion, English) => "Galvanised or stainless metal, sealed edges.",
            (Deferral::Corrosion, French) => "Métal galvanisé ou inoxydable, bords scellés.",
            (Deferral::ContinuousAir, English) => "Outdoor air that runs whatever the weather.",
            (Deferral::ContinuousAir, French) => "De l’air du dehors par tous les temps.",
        }
    }
}
