use super::{HourlyFileError as E, read_hours};
use inchwise_core::climate::{ClimateQuantity, WeatherYear};
use inchwise_core::units::{Angle, Length};

const HEADING: &str = "hour,temperature_c,dew_point_c,global_horizontal_w_m2";

fn read(text: &str) -> Result<WeatherYear, Vec<E>> {
    read_hours(text, Length::new(100.0), Angle::degrees(50.0))
}

fn errors(text: &str) -> Vec<E> {
    match read(text) {
        Err(errors) => errors,
        Ok(_) => panic!("nothing is wrong"),
    }
}

/// A year under a heading, each line by its hour.
fn file(heading: &str, hours: usize, line: impl Fn(usize) -> String) -> String {
    let lines = (0..hours).map(line);
    core::iter::once(heading.to_owned()).chain(lines).collect::<Vec<_>>().join("\n")
}

/// A year whose line 100 is another.
fn with_line_100(line_100: &str) -> String {
    file(HEADING, 8760, |hour| {
        if hour == 98 { line_100.to_owned() } else { format!("{hour},-5.0,-8.0,100") }
    })
}

#[test]
fn a_whole_year_is_read_however_its_lines_end() {
    let unix = with_line_100("98,-5,-8,0");
    let year = read(&unix).expect("a year");
    assert_eq!(year.celsius()[98], -5.0);
    let windows = ["\u{feff}# a yard\r\n", &unix.replace('\n', "\r\n"), "\r\n"].concat();
    assert_eq!(read(&windows), Ok(year));
}

#[test]
fn every_wrong_line_is_told_by_its_number() {
    assert!(matches!(
        errors(&with_line_100("98,cold,-8,0"))[..],
        [E::NotANumber { line: 100, column: "temperature_c", .. }]
    ));
    for nothing in ["NaN", "", "inf", "1,0", "\"1\""] {
        let wrong = errors(&with_line_100(&format!("98,-5,{nothing},0")));
        assert!(wrong.iter().all(|error| error.line() == Some(100)), "{nothing}: {wrong:?}");
    }
    assert_eq!(errors(&with_line_100("98,-5,-8")), [E::ShortLine { line: 100 }]);
    assert_eq!(errors(&with_line_100("98,-5,0,-8,0,0,0")), [E::LongLine { line: 100 }]);
    assert!(read(&with_line_100("98,-5,-8,0,,")).is_ok(), "empty cells at the end are nothing");
    assert!(matches!(
        errors(&with_line_100("98,-5,-300,0"))[..],
        [E::NoHumidity { line: 100, column: "dew_point_c", .. }]
    ));
    let [E::OutOfRange { line: 100, error: cold }, E::OutOfRange { line: 100, error: bright }] =
        errors(&with_line_100("98,-99,-60,2000"))[..]
    else {
        panic!("two figures out of range")
    };
    assert_eq!(cold.quantity, ClimateQuantity::Temperature);
    assert_eq!(
        (bright.quantity, bright.given),
        (ClimateQuantity::GlobalHorizontalIrradiance, 2000.0)
    );
}

#[test]
fn faults_of_all_kinds_come_together_in_the_order_of_the_lines() {
    let text = file(HEADING, 8759, |hour| match hour {
        10 => "10,-5,-8,5000".to_owned(),
        20 => "19,-5,-8,100".to_owned(),
        30 => "30,warm,-8,100".to_owned(),
        _ => format!("{hour},-5,-8,100"),
    });
    let wrong = errors(&text);
    let lines: Vec<_> = wrong.iter().map(E::line).collect();
    assert_eq!(lines, [Some(12), Some(22), Some(23), Some(32), None], "{wrong:?}");
    assert!(matches!(wrong[1], E::NotTheNextHour { .. }));
    assert_eq!(wrong[4], E::NotAYear { hours: 8759 });
}

#[test]
fn missing_and_double_columns_are_named() {
    let missing = errors("hour,temperature_c\n");
    assert_eq!(
        missing,
        [
            E::NoColumn {
                any_of: &["dew_point_c", "relative_humidity_percent", "vapour_pressure_pa"]
            },
            E::NoColumn { any_of: &["global_horizontal_w_m2"] },
        ]
    );
    assert_eq!(errors("").len(), 3);
    let twice = "temperature_c,temperature_c,dew_point_c,global_horizontal_w_m2";
    assert_eq!(errors(twice), [E::ColumnTwice { column: "temperature_c" }]);
}

#[test]
fn decimal_commas_are_told_and_not_guessed() {
    let text = file(&HEADING.replace(',', ";"), 8760, |hour| format!("{hour};-5,0;-8,0;100"));
    assert_eq!(errors(&text), [E::NotCommas { separator: ';' }]);
    let tabs = file(&HEADING.replace(',', "\t"), 1, |_| String::new());
    assert_eq!(errors(&tabs), [E::NotCommas { separator: '\t' }]);
    let commas = file(HEADING, 8760, |hour| format!("{hour},-5,0,-8,0,100"));
    assert_eq!(errors(&commas).len(), 8760);
    assert_eq!(errors(&commas)[0], E::LongLine { line: 2 });
}

#[test]
fn a_leap_year_loses_its_29_february() {
    let day = |hour: usize| hour / 24;
    let leap =
        |hours: usize| file(HEADING, hours, |hour| format!("{hour},{},-9,100", day(hour) % 9));
    let year = read(&leap(8784)).expect("a leap year");
    // 28 February is the 58th day from 0, 1 March the 60th of a leap year.
    let celsius = |hour: usize| year.celsius()[hour];
    assert_eq!([celsius(58 * 24 + 23), celsius(59 * 24)], [f64::from(58 % 9), f64::from(60 % 9)]);
    assert_eq!(errors(&leap(8783)), [E::NotAYear { hours: 8783 }]);
}

#[test]
fn times_are_followed() {
    const MONTHS: [usize; 12] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    let times: Vec<String> = (0..12)
        .flat_map(|month| (1..=MONTHS[month]).map(move |day| (month + 1, day)))
        .flat_map(|(month, day)| {
            (0..24).map(move |hour| format!("{}-{month:02}-{day:02}T{hour:02}:00", 2001 + month))
        })
        .collect();
    let heading = "time,temperature_c,relative_humidity_percent,global_horizontal_w_m2";
    let text = file(heading, 8760, |hour| format!("{},1,80,300", times[hour]));
    assert!(read(&text).is_ok());
    let doubled = text.replacen("2004-03-10T05:00", "2004-03-10T04:00", 1);
    let wrong = errors(&doubled);
    let line = 2 + (31 + 28 + 9) * 24 + 5;
    assert_eq!(wrong.iter().map(E::line).collect::<Vec<_>>(), [Some(line), Some(line + 1)]);
    let unreadable = text.replacen("2004-03-10T05:00", "10/03/2004 5", 1);
    assert!(matches!(errors(&unreadable)[0], E::NotATime { .. }));
}

#[test]
fn columns_in_other_units_are_told() {
    let year = |heading: &str, cells: &str| {
        let text = file(heading, 8760, |_| cells.to_owned());
        let wrong = read(&text).err().unwrap_or_default();
        let columns = wrong.into_iter().map(|error| match error {
            E::NotInItsUnit { column, found, least, most } => {
                assert!(!(least..=most).contains(&found));
                column
            }
            other => panic!("{other:?}"),
        });
        columns.collect::<Vec<_>>()
    };
    let dew = "temperature_c,dew_point_c,global_horizontal_w_m2";
    assert_eq!(year(dew, "50,28,300"), ["temperature_c"], "50 °F");
    assert_eq!(year(dew, "10,5,0.8"), ["global_horizontal_w_m2"], "kW/m²");
    assert_eq!(year(dew, "10,5,0"), [""; 0], "sun left out");
    let pressure = "temperature_c,vapour_pressure_pa,global_horizontal_w_m2";
    assert_eq!(year(pressure, "10,9,300"), ["vapour_pressure_pa"], "hPa");
    assert_eq!(year(pressure, "10,900,300"), [""; 0]);
    let humidity = "temperature_c,relative_humidity_percent,global_horizontal_w_m2";
    assert_eq!(year(humidity, "10,0.8,300"), ["relative_humidity_percent"], "a share");
}

/// Saturation at −20 °C is 125.4 Pa over water and 103.3 Pa over ice (Goff and Gratch, as the
/// Smithsonian Meteorological Tables print them, from memory).
#[test]
fn dew_point_and_relative_humidity_are_over_water_in_frost_too() {
    let frosty = |column: &str, given: &str| {
        let heading = format!("temperature_c,{column},global_horizontal_w_m2");
        let text = file(&heading, 8760, |_| format!("-20,{given},100"));
        read(&text).expect("a year").vapour_pascals()[0]
    };
    let found = frosty("dew_point_c", "-20");
    assert!((found - 125.4).abs() < 0.5, "{found}");
    // 0.6 · 125.4 = 75.24; over ice it would be 61.98.
    let found = frosty("relative_humidity_percent", "60");
    assert!((found - 75.24).abs() < 0.3, "{found}");
    assert_eq!(frosty("vapour_pressure_pa", "62"), 62.0);
}
