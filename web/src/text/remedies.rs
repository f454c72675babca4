//! What mends a cold spot, and what is to be asked of others.

use inchwise_core::moisture::{Deferral, Remedy};

use super::Language;
use super::Language::{English, French};

impl Language {
    /// What mends a cold spot, as a short clause.
    pub const fn remedy(self, remedy: Remedy) -> &'static str {
        match (remedy, self) {
            (Remedy::CoverCastings, English) => "cover the castings",
            (Remedy::CoverCastings, French) => "habiller les pièces de coin",
            (Remedy::HoldStudsOff, English) => "hold the studs off the steel",
            (Remedy::HoldStudsOff, French) => "écarter les montants de l’acier",
            (Remedy::HoldJoistsOff, English) => "hold the joists off the roof",
            (Remedy::HoldJoistsOff, French) => "écarter les solives du toit",
            (Remedy::PadBrackets, English) => "pad the brackets",
            (Remedy::PadBrackets, French) => "caler les équerres",
            (Remedy::InsulateFloor, English) => "wrap or cover the floor’s members",
            (Remedy::InsulateFloor, French) => "envelopper ou couvrir les traverses",
            (Remedy::PackOpeningFrames, English) => "foam over the opening frames",
            (Remedy::PackOpeningFrames, French) => "mousser les cadres d’ouverture",
            (Remedy::InsulateDampers, English) => "use insulated dampers",
            (Remedy::InsulateDampers, French) => "prendre des volets isolés",
            (Remedy::DeepenFoam, English) => "deepen the foam",
            (Remedy::DeepenFoam, French) => "épaissir la mousse",
            (Remedy::BetterDoor, English) => "take a better door",
            (Remedy::BetterDoor, French) => "prendre une meilleure porte",
            (Remedy::BetterWindows, English) => "take better windows",
            (Remedy::BetterWindows, French) => "prendre de meilleures fenêtres",
        }
    }

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
