//! Names and units of the choices about the year.

use inchwise_core::year::YearField;

use super::Language;
use super::Language::{English, French};

impl Language {
    /// A choice about the year.
    pub const fn year_field(self, field: YearField) -> &'static str {
        use YearField as F;
        match (field, self) {
            (F::HeaterLimit, English) => "Most heat it gives",
            (F::HeaterLimit, French) => "Puissance maximale",
            (F::BackupLimit, English) => "Electric backup",
            (F::BackupLimit, French) => "Appoint électrique",
            (F::Setback, English) => "Lower while not used, by",
            (F::Setback, French) => "Abaissement hors usage",
            (F::UsedFrom, English) => "Used from, hour",
            (F::UsedFrom, French) => "Utilisé dès, heure",
            (F::UsedUntil, English) => "Used until, hour",
            (F::UsedUntil, French) => "Utilisé jusqu’à, heure",
            (F::UsedDays, English) => "Days used in a week",
            (F::UsedDays, French) => "Jours d’usage par semaine",
            (F::People, English) => "People while used",
            (F::People, French) => "Personnes pendant l’usage",
            (F::HeatOfPerson, English) => "Heat of one person",
            (F::HeatOfPerson, French) => "Chaleur d’une personne",
            (F::EquipmentInUse, English) => "Equipment while used",
            (F::EquipmentInUse, French) => "Appareils pendant l’usage",
            (F::EquipmentAlways, English) => "Equipment always on",
            (F::EquipmentAlways, French) => "Appareils toujours allumés",
            (F::MoistureInUse, English) => "Moisture while used",
            (F::MoistureInUse, French) => "Humidité pendant l’usage",
            (F::MoistureAlways, English) => "Moisture always",
            (F::MoistureAlways, French) => "Humidité en tout temps",
            (F::MoistureDrying, English) => "Laundry and wet things",
            (F::MoistureDrying, French) => "Lessive et choses humides",
            (F::FanFlow, English) => "Fan at full flow",
            (F::FanFlow, French) => "Ventilateur à plein débit",
            (F::FanPower, English) => "What the fan draws",
            (F::FanPower, French) => "Puissance du ventilateur",
            (F::FanAbove, English) => "Cools above",
            (F::FanAbove, French) => "Rafraîchit au-dessus de",
            (F::FanOver, English) => "Dries above humidity",
            (F::FanOver, French) => "Assèche au-dessus de",
            (F::TooWarm, English) => "Too warm above",
            (F::TooWarm, French) => "Trop chaud au-dessus de",
            (F::Paint, English) => "Sun the paint takes in",
            (F::Paint, French) => "Soleil absorbé par la peinture",
            (F::SunOnRoof, English) => "Sun that reaches the roof",
            (F::SunOnRoof, French) => "Soleil atteignant le toit",
            (F::WindowSun, English) => "Sun the windows let in",
            (F::WindowSun, French) => "Soleil passant les fenêtres",
            (F::SunOnWindows, English) => "Sun that reaches the windows",
            (F::SunOnWindows, French) => "Soleil atteignant les fenêtres",
            (F::FrontFaces, English) => "Front end faces, from north",
            (F::FrontFaces, French) => "Le fond fait face, du nord",
            (F::Contents, English) => "Heat held by contents",
            (F::Contents, French) => "Chaleur retenue par le contenu",
            (F::SupplyVoltage, English) => "Supply",
            (F::SupplyVoltage, French) => "Alimentation",
            (F::SupplyCurrent, English) => "Breaker",
            (F::SupplyCurrent, French) => "Disjoncteur",
            (F::ElectricityPrice, English) => "A kWh of electricity",
            (F::ElectricityPrice, French) => "Un kWh d’électricité",
            (F::FuelPrice, English) => "A litre or kilogram of fuel",
            (F::FuelPrice, French) => "Un litre ou kilogramme de combustible",
            (F::GridEmission, English) => "CO₂ of a kWh from the grid",
            (F::GridEmission, French) => "CO₂ d’un kWh du réseau",
        }
    }
}
