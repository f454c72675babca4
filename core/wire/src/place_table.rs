//! A table of places as one text, a line a place: what a visitor's search reads.
//!
//! Lines that start with `#` head the table and say where its figures come from. Each other line
//! holds, parted by `|`: name, country, region, latitude and longitude in hundredths of a degree,
//! elevation in metres, standard error of a monthly temperature in tenths of a kelvin, winter 99 %
//! and summer 1 % temperature in tenths of a degree, then four lists of twelve: mean temperature in
//! tenths of a degree, daily range in tenths of a kelvin, vapour pressure in pascals, daily sun in
//! hundredths of a kilowatt hour a square metre.

use inchwise_core::climate::{MonthMeans, Place};
use inchwise_core::units::{
    Angle, Irradiation, Length, Pressure, Temperature, TemperatureDifference,
};

/// A place of the table.
#[derive(Clone, Debug, PartialEq)]
pub struct NamedPlace {
    /// Name, with region and country: `Arviat, NU, CA`.
    pub name: String,
    /// Standard error of a monthly temperature.
    pub error: TemperatureDifference,
    /// Its figures.
    pub place: Place,
}

/// A table of places.
#[derive(Clone, Debug, Default)]
pub struct PlaceTable {
    /// Where its figures come from, line by line.
    pub sources: Vec<String>,
    /// Name as searched, and the line.
    lines: Vec<(String, String)>,
}

/// A line that is not one of a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotAPlace {
    /// Its number, from 1.
    pub line: usize,
}

impl PlaceTable {
    /// Reads a table.
    ///
    /// # Errors
    /// The first line that is not one of a place.
    pub fn read(text: &str) -> Result<Self, NotAPlace> {
        let (table, faults) = Self::read_where(text, |_| true);
        faults.first().map_or(Ok(table), |&fault| Err(fault))
    }

    /// Reads the places of a table that somebody else wrote: those whose figures can be, and the
    /// lines that are none of such.
    pub fn read_checked(text: &str) -> (Self, Vec<NotAPlace>) {
        Self::read_where(text.trim_start_matches('\u{feff}'), |place| place.check().is_ok())
    }

    fn read_where(text: &str, is_taken: fn(&Place) -> bool) -> (Self, Vec<NotAPlace>) {
        let mut table = Self::default();
        let mut faults = Vec::new();
        for (index, line) in text.lines().enumerate() {
            if let Some(source) = line.strip_prefix('#') {
                table.sources.push(source.trim().to_owned());
            } else if !line.trim().is_empty() {
                match named_place(line).filter(|named| is_taken(&named.place)) {
                    Some(named) => table.lines.push((folded(&named.name), line.to_owned())),
                    None => faults.push(NotAPlace { line: index + 1 }),
                }
            }
        }
        (table, faults)
    }

    /// How many places there are.
    pub fn count(&self) -> usize {
        self.lines.len()
    }

    /// Places whose name holds every word searched for, however it is accented; those that begin
    /// with the first word come first. At most so many.
    pub fn search(&self, words: &str, most: usize) -> Vec<NamedPlace> {
        let words = folded(words);
        let words: Vec<&str> = words.split_whitespace().collect();
        let Some(first) = words.first() else { return Vec::new() };
        let holds = |name: &str| words.iter().all(|word| name.contains(word));
        let (mut begin, others): (Vec<_>, Vec<_>) = self
            .lines
            .iter()
            .filter(|(name, _)| holds(name))
            .partition(|(name, _)| name.starts_with(first));
        begin.extend(others);
        begin.iter().take(most).filter_map(|(_, line)| named_place(line)).collect()
    }
}

fn named_place(line: &str) -> Option<NamedPlace> {
    let parts: Vec<&str> = line.split('|').collect();
    let &[
        name,
        country,
        region,
        latitude,
        _,
        elevation,
        error,
        winter,
        summer,
        t,
        range,
        vapour,
        sun,
    ] = &parts[..]
    else {
        return None;
    };
    let number = |text: &str, unit: f64| Some(f64::from(text.trim().parse::<i32>().ok()?) / unit);
    let twelve = |text: &str, unit: f64| -> Option<[f64; 12]> {
        let values: Option<Vec<f64>> = text.split(' ').map(|part| number(part, unit)).collect();
        values?.try_into().ok()
    };
    let [t, range, vapour, sun] =
        [twelve(t, 10.0)?, twelve(range, 10.0)?, twelve(vapour, 1.0)?, twelve(sun, 100.0)?];
    let names: Vec<&str> =
        [name, region, country].into_iter().filter(|part| !part.is_empty()).collect();
    Some(NamedPlace {
        name: names.join(", "),
        error: TemperatureDifference::new(number(error, 10.0)?),
        place: Place {
            elevation: Length::new(number(elevation, 1.0)?),
            latitude: Angle::degrees(number(latitude, 100.0)?),
            winter_design: Temperature::celsius(number(winter, 10.0)?),
            summer_design: Temperature::celsius(number(summer, 10.0)?),
            months: core::array::from_fn(|month| MonthMeans {
                temperature: Temperature::celsius(t[month]),
                daily_range: TemperatureDifference::new(range[month]),
                vapour_pressure: Pressure::new(vapour[month]),
                daily_global_irradiation: Irradiation::kilowatt_hours(sun[month]),
            }),
        },
    })
}

/// Small letters without accents, for comparing names.
fn folded(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for letter in text.chars().flat_map(char::to_lowercase) {
        let base = match letter {
            'à'..='å' | 'ā' | 'ă' | 'ą' => "a",
            'ç' | 'ć' | 'č' => "c",
            'è'..='ë' | 'ē' | 'ė' | 'ę' | 'ě' => "e",
            'ì'..='ï' | 'ī' | 'ı' | 'į' => "i",
            'ñ' | 'ń' | 'ň' => "n",
            'ò'..='ö' | 'ø' | 'ō' | 'ő' => "o",
            'ù'..='ü' | 'ū' | 'ů' | 'ű' => "u",
            'ý' | 'ÿ' => "y",
            'š' | 'ś' | 'ş' | 'ș' => "s",
            'ž' | 'ź' | 'ż' => "z",
            'ł' => "l",
            'đ' | 'ď' | 'ð' => "d",
            'ť' | 'ţ' | 'ț' => "t",
            'ř' => "r",
            'ğ' | 'ģ' => "g",
            'æ' => "ae",
            'œ' => "oe",
            'ß' => "ss",
            'þ' => "th",
            '-' | '\'' | '’' | ',' | '.' => " ",
            // What is left of a letter that was taken apart.
            '\u{300}'..='\u{36f}' => "",
            other => {
                plain.push(other);
                continue;
            }
        };
        plain.push_str(base);
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::PlaceTable;

    /// The table that is shipped.
    const SHIPPED: &str = include_str!("../../../web/places.txt");

    #[test]
    fn every_place_of_the_shipped_table_passes_its_check() {
        let table = PlaceTable::read(SHIPPED).expect("the table reads");
        assert_eq!(table.count(), 676);
        for (_, line) in &table.lines {
            let named = super::named_place(line).expect("a place");
            assert!(named.place.check().is_ok(), "{}: {:?}", named.name, named.place.check());
        }
        let credited = table.sources.join(" ");
        for name in [
            "Deutscher Wetterdienst",
            "Environment and Climate Change Canada",
            "Open Government Licence v3.0",
            "SMHI",
            "GeoNames",
            "CC BY 4.0",
        ] {
            assert!(credited.contains(name), "{name} is not credited");
        }
    }

    #[test]
    fn names_are_found_without_their_accents() {
        let table = PlaceTable::read(SHIPPED).expect("the table reads");
        let first = |words: &str| table.search(words, 8).first().map(|found| found.name.clone());
        assert_eq!(first("lulea").as_deref(), Some("Luleå, SE"));
        assert_eq!(first("yellowkn").as_deref(), Some("Yellowknife, NT, CA"));
        assert_eq!(first("yellowknife ca"), first("Yellowknife"));
        assert_eq!(first(""), None);
        assert_eq!(first("zzzz"), None);
        assert!(table.search("a", 5).len() == 5);
    }

    #[test]
    fn a_line_that_is_no_place_is_named() {
        let wrong = PlaceTable::read("# head\nSomewhere|XX|1|2\n").expect_err("no place");
        assert_eq!(wrong.line, 2);
    }

    #[test]
    fn of_a_table_of_somebody_else_the_places_that_can_be_are_kept() {
        let lines = SHIPPED.lines().filter(|line| !line.starts_with('#'));
        let [one, other]: [&str; 2] = lines.take(2).collect::<Vec<_>>().try_into().unwrap();
        // Its winter is made warmer than its summer.
        let mut parts: Vec<&str> = other.split('|').collect();
        parts[7] = "590";
        let warm = parts.join("|");
        let text = format!("\u{feff}# head\n{one}\nSomewhere|XX\n{warm}\n{other}\n");
        let (table, faults) = PlaceTable::read_checked(&text);
        assert_eq!((table.count(), table.sources), (2, vec!["head".to_owned()]));
        assert_eq!(faults.iter().map(|fault| fault.line).collect::<Vec<_>>(), [3, 4]);
    }
}
