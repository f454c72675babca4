//! What is otherwise than before, in words.

use inchwise_core::units::Length;

use crate::measure::{NO_BREAK_SPACE, Notation};
use crate::state::{Headline, Risk, Verdict};

/// Less than this is no change of a length.
const NOTHING: Length = Length::mm(0.5);

fn is_moved(by: Length) -> bool {
    by.value().abs() >= NOTHING.value()
}

/// What changed of the clear sizes, one behind the other; nothing where nothing did.
pub fn sizes(now: &Headline, before: &Headline, notation: Notation) -> String {
    let words = notation.language.bench();
    let by = [
        (words.of_length, now.clear.length - before.clear.length),
        (words.of_width, now.clear.width - before.clear.width),
        (words.of_height, now.clear.height - before.clear.height),
    ];
    let moved = by.into_iter().filter(|(_, by)| is_moved(*by));
    let said: Vec<String> =
        moved.map(|(phrase, by)| phrase.with(&[&notation.length_change(by)])).collect();
    said.join(", ")
}

/// What changed of the load; nothing where it reads the same, or one of them is not known.
pub fn load(now: &Headline, before: &Headline, notation: Notation) -> Option<String> {
    let (now, before) = (now.load()?, before.load()?);
    let by = (now - before).value();
    let step = match notation.units {
        crate::measure::UnitSystem::Metric => 5.0,
        crate::measure::UnitSystem::Imperial => 15.0,
    };
    if by.abs() < step {
        return Some(String::new());
    }
    let sign = if by < 0.0 { "−" } else { "+" };
    let written = notation.part_of_load(inchwise_core::units::Power::new(by.abs()));
    Some([sign, &written].concat())
}

/// What becomes of damp, in two words.
pub fn damp_short(verdict: &Verdict, notation: Notation) -> String {
    let words = notation.language.bench();
    let (risk, count) = verdict.worst();
    let count = notation.count(count as f64);
    match risk {
        Risk::Dry => words.dry_short.to_owned(),
        Risk::Mould => words.mould_short.with(&[&count]),
        Risk::Drip => words.drip_short.with(&[&count]),
        Risk::Frost => words.frost_short.with(&[&count]),
    }
    .replace(' ', &NO_BREAK_SPACE.to_string())
}

/// All that a change would do: room, load and damp. What is not known yet is left out.
pub fn changes(to: &Headline, from: &Headline, notation: Notation) -> Vec<String> {
    let words = notation.language.bench();
    let mut said = Vec::new();
    let room = sizes(to, from, notation);
    let litres = to.lost - from.lost;
    if !room.is_empty() {
        said.push(room);
    } else if litres.as_litres().abs() >= 0.5 {
        let sign = if litres.as_litres() > 0.0 { "−" } else { "+" };
        let volume =
            notation.volume(if litres.as_litres() > 0.0 { litres } else { from.lost - to.lost });
        said.push(words.of_room.with(&[&[sign, &volume].concat()]));
    } else {
        said.push(words.no_room.to_owned());
    }
    if let Some(load) = load(to, from, notation).filter(|load| !load.is_empty()) {
        said.push(load);
    }
    if let (Some(after), Some(before)) = (to.verdict(), from.verdict())
        && after.worst() != before.worst()
    {
        said.push(damp_short(&after, notation));
    }
    said
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::UnitSystem;
    use crate::text::Language;
    use inchwise_core::design::Design;
    use inchwise_core::detail::FieldCache;
    use inchwise_core::evaluate::evaluate;

    #[test]
    fn an_inch_past_the_frame_is_told_as_height_and_less_heat() {
        let mut memory = FieldCache::default();
        let mut of = |mm: f64| {
            let design = Design { ceiling_foam: Length::mm(mm), ..Design::default() };
            Headline::of(&evaluate(&design.check().expect("lawful"), &mut memory))
        };
        let notation = Notation { units: UnitSystem::Metric, language: Language::English };
        // Stand-off 25 and joist 64 put the frame's face at 89 mm.
        let said = changes(&of(114.0), &of(89.0), notation);
        assert_eq!(said[0].replace('\u{a0}', " "), "−25 mm height");
        assert!(said[1].starts_with('−') && said[1].ends_with('W'), "{said:?}");
        assert_eq!(changes(&of(80.0), &of(75.0), notation)[0], "no room");
    }
}
