//! Typed values of every shape, and that what is written can be read again.

use inchwise_core::design::Field;
use inchwise_core::units::{Length, Power, Temperature, ThermalResistance, Volume};

use super::{Notation, Scale, UnitSystem, Unread};
use crate::text::Language;

const METRIC: Notation = Notation { units: UnitSystem::Metric, language: Language::English };
const IMPERIAL: Notation = Notation { units: UnitSystem::Imperial, language: Language::English };
const FRENCH: Notation = Notation { units: UnitSystem::Metric, language: Language::French };

fn mm(notation: Notation, typed: &str) -> Result<f64, Unread> {
    // A nanometre is nothing: let sums of inches be compared.
    notation.read(Field::SideWallFoam, typed).map(|si| (si * 1e9).round() / 1e6)
}

#[test]
fn lengths_are_read_as_people_write_them() {
    for (typed, expected) in [
        ("63 mm", 63.0),
        ("63", 63.0),
        ("63mm", 63.0),
        ("6.3 cm", 63.0),
        ("6,3 cm", 63.0),
        ("0.063 m", 63.0),
        ("2 1/2\"", 63.5),
        ("2-1/2\"", 63.5),
        ("2.5 in", 63.5),
        ("2.5 in.", 63.5),
        ("2½ in", 63.5),
        ("½ in", 12.7),
        ("3/4 inch", 19.05),
        ("1' 3\"", 381.0),
        ("1'3\"", 381.0),
        ("1'-3 1/2\"", 393.7),
        ("1′ 3½″", 393.7),
        ("1 ft 3 in", 381.0),
        ("1' 3", 381.0),
        ("1'", 304.8),
        ("1 m 20 cm", 1200.0),
        ("2,134 mm", 2134.0),
        ("2 134 mm", 2134.0),
        ("2\u{202f}134\u{a0}mm", 2134.0),
        ("0,125 m", 125.0),
        ("33 mil", 0.8382),
        (".5 in", 12.7),
        ("-5 mm", -5.0),
        ("−5", -5.0),
        ("2 pouces", 50.8),
        ("1 pi 3 po", 381.0),
    ] {
        assert_eq!(mm(METRIC, typed), Ok(expected), "{typed}");
    }
}

#[test]
fn a_number_alone_is_in_the_units_shown() {
    assert_eq!(mm(IMPERIAL, "2"), Ok(50.8));
    assert_eq!(mm(IMPERIAL, "2 1/2"), Ok(63.5));
    assert_eq!(mm(IMPERIAL, "63 mm"), Ok(63.0));
    assert_eq!(mm(FRENCH, "2,134 m"), Ok(2134.0));
    assert_eq!(IMPERIAL.read(Field::OutdoorTemperature, "5"), Ok(-15.0));
    assert_eq!(METRIC.read(Field::OutdoorTemperature, "5"), Ok(5.0));
}

#[test]
fn what_is_no_length_is_refused() {
    let unknown = |unit: &str| Err(Unread::UnknownUnit(unit.to_owned()));
    assert_eq!(mm(METRIC, ""), Err(Unread::Empty));
    assert_eq!(mm(METRIC, " \u{a0} "), Err(Unread::Empty));
    assert_eq!(mm(METRIC, "63 mn"), unknown("mn"));
    assert_eq!(mm(METRIC, "1e5"), unknown("e"));
    for typed in [
        "NaN",
        "inf",
        "-inf",
        "infinity",
        "abc",
        "1/0 in",
        "2 1/0 in",
        "2 3",
        "1 mm 2 m",
        "--5",
        "1 in 2 ft",
        "1 m 2 in",
        "/",
        "/2",
        "'",
        "\"",
        "-",
        "+",
        ",",
        ".",
        "½½",
        "5'6'7'",
    ] {
        assert!(mm(METRIC, typed).is_err(), "{typed}: {:?}", mm(METRIC, typed));
    }
    assert_eq!(mm(METRIC, &"9".repeat(400)), Err(Unread::NotANumber));
    assert!(mm(METRIC, &"1/".repeat(19)).is_err());
}

#[test]
fn hostile_text_is_refused_for_every_field_without_panic() {
    let texts = [
        "\u{0}",
        "💥",
        "١٢٣",
        "<script>",
        "𝟙",
        "é",
        "½'½\"½",
        "1'1'1'",
        "1''''",
        "r",
        "r-",
        "R--5",
        "-r5",
        "1.2.3",
        "1,2,3",
        "..",
        "%s",
        "{0}",
        "\u{202e}5",
        "ſ",
        "İ 5",
        "5 \u{300}mm",
    ];
    for &field in Field::ALL {
        for text in texts {
            for notation in [METRIC, IMPERIAL, FRENCH] {
                if let Ok(si) = notation.read(field, text) {
                    assert!(si.is_finite(), "{field:?} {text}");
                }
            }
        }
    }
}

#[test]
fn other_quantities_take_the_units_of_both_systems() {
    let close = |read: Result<f64, Unread>, expected: f64| {
        let read = read.expect("read");
        assert!((read - expected).abs() < 1e-9 * expected.abs().max(1.0), "{read} {expected}");
    };
    close(METRIC.read(Field::OutdoorTemperature, "-40 °F"), -40.0);
    close(METRIC.read(Field::OutdoorTemperature, "−33,5 °C"), -33.5);
    // R-5.5 an inch: 0.0254 m over 5.5 · 0.176110 m²·K/W, the conversion of ASHRAE Handbook of
    // Fundamentals 2017, chapter 39, table 1.
    let read = METRIC.read(Field::FoamConductivity, "R-5.5").expect("read");
    assert!((read - 0.0254 / (5.5 * 0.176_110)).abs() < 1e-7, "{read}");
    close(METRIC.read(Field::FoamConductivity, "0.026 W/(m·K)"), 0.026);
    close(METRIC.read(Field::DoorTransmittance, "1.4 W/m²K"), 1.4);
    close(METRIC.read(Field::AirChanges, "0.3 /h"), 0.3 / 3600.0);
    close(METRIC.read(Field::WindowCount, "2"), 2.0);
}

#[test]
fn lengths_are_written_to_the_millimetre_or_the_eighth() {
    let written = |notation: Notation, mm: f64| notation.length(Length::mm(mm));
    assert_eq!(written(METRIC, 2134.4), "2,134\u{a0}mm");
    assert_eq!(written(FRENCH, 2134.4), "2\u{202f}134\u{a0}mm");
    assert_eq!(written(IMPERIAL, 63.5), "2½\u{a0}in");
    assert_eq!(written(IMPERIAL, 12.7), "½\u{a0}in");
    assert_eq!(written(IMPERIAL, 0.0), "0\u{a0}in");
    assert_eq!(written(IMPERIAL, 406.0), "16\u{a0}in");
    assert_eq!(written(IMPERIAL, 2134.0), "7′\u{a0}0″");
    assert_eq!(written(IMPERIAL, 5696.0), "18′\u{a0}8¼″");
    assert_eq!(METRIC.length_change(Length::mm(-170.0)), "−170\u{a0}mm");
    assert_eq!(METRIC.length_change(Length::mm(25.0)), "+25\u{a0}mm");
    assert_eq!(METRIC.length_change(Length::mm(0.2)), "0\u{a0}mm");
}

#[test]
fn other_quantities_are_written_as_fine_as_they_are_known() {
    assert_eq!(METRIC.load(Power::new(1583.0)), "1,580\u{a0}W");
    // 1583 W is 5401.4 Btu/h (1 W = 3.412142 Btu/h, ASHRAE Handbook of Fundamentals 2017, ch. 39).
    assert_eq!(IMPERIAL.load(Power::new(1583.0)), "5,400\u{a0}Btu/h");
    assert_eq!(METRIC.volume(Volume::new(4.0674)), "4,070\u{a0}L");
    assert_eq!(METRIC.volume(Volume::new(0.00056)), "0.6\u{a0}L");
    assert_eq!(IMPERIAL.volume(Volume::new(4.0674)), "144\u{a0}ft³");
    assert_eq!(METRIC.percent(0.1234), "12%");
    assert_eq!(FRENCH.percent(0.1234), "12\u{a0}%");
    // R-12 is 2.113 m²·K/W by the same table.
    assert_eq!(IMPERIAL.resistance(ThermalResistance::new(2.113)), "R-12");
    assert_eq!(IMPERIAL.temperature(Temperature::celsius(-33.0)), "−27\u{a0}°F");
    assert_eq!(METRIC.sheet_thickness(Length::mm(0.84)), "0.84\u{a0}mm");
    assert_eq!(IMPERIAL.sheet_thickness(Length::mm(0.84)), "33\u{a0}mil");
}

#[test]
fn every_value_a_slider_can_stand_on_reads_back_to_where_it_stood() {
    for &field in Field::ALL {
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            for language in Language::ALL {
                let notation = Notation { units, language };
                let scale = Scale::of(field, units);
                for position in scale.lowest..=scale.highest {
                    let si = scale.si(position);
                    for written in [notation.field(field, si), notation.field_box(field, si)] {
                        let read = notation.read(field, &written);
                        assert_eq!(
                            read.as_ref().map(|&si| scale.position(si)),
                            Ok(position),
                            "{field:?} {written}: {read:?}"
                        );
                    }
                }
            }
        }
    }
}
