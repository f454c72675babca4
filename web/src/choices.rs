//! What the two parts of the page tell one another: everything that was chosen, as plain numbers
//! and texts. Both parts are of one build, so the form needs no version.

use inchwise_aside::{pack_design, unpack_design};
use inchwise_core::design::{Design, Field};

use crate::measure::{UnitSystem, Unread};
use crate::state::{ChangedBy, UnreadText};
use crate::text::Language;

/// Everything that was chosen.
#[derive(Clone, Debug)]
pub struct Choices {
    /// The design, lawful or not.
    pub design: Design,
    /// Metric or imperial.
    pub units: UnitSystem,
    /// The language of every word.
    pub language: Language,
    /// Who made the last change.
    pub changed_by: ChangedBy,
    /// Typed texts that are no values.
    pub unread: Vec<UnreadText>,
}

/// Choices on their way.
#[derive(Clone, Debug, Default)]
pub struct Packed {
    /// Options, then the places of unread texts, then the design.
    pub numbers: Vec<f64>,
    /// Two a text: what was typed, and the unit that was not known.
    pub texts: Vec<String>,
}

impl PartialEq for Packed {
    fn eq(&self, other: &Self) -> bool {
        // A measurement not taken is no number, and the same as another such.
        let bits = |packed: &Self| -> Vec<u64> {
            packed.numbers.iter().map(|number| number.to_bits()).collect()
        };
        bits(self) == bits(other) && self.texts == other.texts
    }
}

const HEAD: usize = 4;

impl Packed {
    /// Whether the last of the choices is the visitor's.
    pub fn is_of_visitor(&self) -> bool {
        self.numbers.get(2) == Some(&0.0)
    }
}

impl Choices {
    /// As numbers and texts.
    pub fn pack(&self) -> Packed {
        let language = Language::ALL.iter().position(|&one| one == self.language);
        let mut numbers = vec![
            f64::from(u8::from(self.units == UnitSystem::Imperial)),
            language.unwrap_or_default() as f64,
            f64::from(u8::from(self.changed_by == ChangedBy::Host)),
            self.unread.len() as f64,
        ];
        let mut texts = Vec::new();
        for text in &self.unread {
            let field = Field::ALL.iter().position(|&field| field == text.field);
            let (kind, unit) = match &text.fault {
                Unread::Empty => (0.0, ""),
                Unread::NotANumber => (1.0, ""),
                Unread::UnknownUnit(unit) => (2.0, unit.as_str()),
            };
            numbers.extend([field.unwrap_or_default() as f64, kind]);
            texts.extend([text.typed.clone(), unit.to_owned()]);
        }
        numbers.extend(pack_design(&self.design));
        Packed { numbers, texts }
    }

    /// The choices that were packed; `None` if these are not the numbers of any.
    pub fn unpack(packed: &Packed) -> Option<Self> {
        let (head, rest) = packed.numbers.split_at_checked(HEAD)?;
        let (places, design) = rest.split_at_checked(2 * head[3] as usize)?;
        let unread = places.chunks_exact(2).zip(packed.texts.chunks_exact(2)).map(|(at, text)| {
            let fault = match at[1] as u8 {
                0 => Unread::Empty,
                1 => Unread::NotANumber,
                _ => Unread::UnknownUnit(text[1].clone()),
            };
            let field = Field::ALL.get(at[0] as usize).copied()?;
            Some(UnreadText { field, typed: text[0].clone(), fault })
        });
        Some(Self {
            units: if head[0] == 0.0 { UnitSystem::Metric } else { UnitSystem::Imperial },
            language: Language::ALL.get(head[1] as usize).copied()?,
            changed_by: if head[2] == 0.0 { ChangedBy::Visitor } else { ChangedBy::Host },
            unread: unread.collect::<Option<_>>()?,
            design: unpack_design(design)?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn choices_come_back_as_they_were() {
        let unread = |fault: Unread| UnreadText {
            field: Field::StudDepth,
            typed: "2 cubits".to_owned(),
            fault,
        };
        let choices = Choices {
            design: Design::default(),
            units: UnitSystem::Imperial,
            language: Language::French,
            changed_by: ChangedBy::Visitor,
            unread: vec![
                unread(Unread::Empty),
                unread(Unread::NotANumber),
                unread(Unread::UnknownUnit("cubits".to_owned())),
            ],
        };
        let packed = choices.pack();
        let back = Choices::unpack(&packed).expect("what was packed");
        assert_eq!(back.pack(), packed);
        assert_eq!(
            (back.design, back.units, back.language, back.changed_by, back.unread),
            (choices.design, choices.units, choices.language, choices.changed_by, choices.unread)
        );
    }

    #[test]
    fn other_numbers_are_no_choices() {
        let packed = Choices {
            design: Design::default(),
            units: UnitSystem::Metric,
            language: Language::English,
            changed_by: ChangedBy::Host,
            unread: Vec::new(),
        }
        .pack();
        let short = Packed { numbers: packed.numbers[1..].to_vec(), texts: Vec::new() };
        assert!(Choices::unpack(&short).is_none());
        let mut odd = packed;
        odd.numbers[1] = 9.0;
        assert!(Choices::unpack(&odd).is_none(), "a language there is not");
    }
}
