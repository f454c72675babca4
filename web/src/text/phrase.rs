//! A sentence with places to be filled.

/// Words in which `{0}`, `{1}` … are filled in. A test holds the places of all languages alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Phrase(pub &'static str);

impl Phrase {
    /// The sentence with its places filled; a place nobody fills stays empty.
    pub fn with(self, parts: &[&str]) -> String {
        let mut filled = String::new();
        let mut rest = self.0;
        while let Some((before, after)) = rest.split_once('{') {
            filled.push_str(before);
            let Some((place, after)) = after.split_once('}') else { return filled };
            let part = place.parse::<usize>().ok().and_then(|place| parts.get(place));
            filled.push_str(part.copied().unwrap_or_default());
            rest = after;
        }
        filled.push_str(rest);
        filled
    }

    /// How many of the first ten places stand in it, as a set of bits.
    pub fn places(self) -> u16 {
        (0..10_u8)
            .filter(|&place| {
                let name = ['{', char::from(b'0' + place), '}'];
                self.0.contains(&name.iter().collect::<String>())
            })
            .fold(0, |set, place| set | 1 << place)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_are_filled_in_any_order() {
        assert_eq!(Phrase("needs {1}, has {0}").with(&["4", "7"]), "needs 7, has 4");
    }

    #[test]
    fn a_place_nobody_fills_stays_empty_and_an_open_brace_does_not_panic() {
        assert_eq!(Phrase("a {3} b").with(&[]), "a  b");
        assert_eq!(Phrase("a {x} b {").with(&["1"]), "a  b ");
    }
}
