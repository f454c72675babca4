//! Climate against published figures and closed forms.

use inchwise_core::climate::{
    BoxFace, ClimateQuantity, HOURS_IN_YEAR, SEED, Spread, SunDirection, SunOnBox, WeatherHour,
    WeatherYear, daily_extraterrestrial_irradiation, declination, degree_days_of_day,
    diffuse_fraction, exceeded_for, heating_degree_days, hourly_to_daily_ratio, hours_of,
    not_reached, reconstruct, sunset_hour_angle, varnholm_flats,
};
use inchwise_core::units::{Angle, Irradiance, Length, Pressure, Temperature};
use inchwise_tests::{Tolerance, close_to};

/// Degree days as weather services explain them: means of 10, −4 and 20 °C to base 18 °C; 50 and 45 °F to base 65 °F.
#[test]
fn degree_days_of_single_days() {
    let of = |mean: Temperature, base: Temperature| degree_days_of_day(mean, base);
    let base = Temperature::celsius(18.0);
    for (mean, expected) in [(10.0, 8.0), (-4.0, 22.0), (20.0, 0.0)] {
        close_to("K·d", of(Temperature::celsius(mean), base), expected, Tolerance::absolute(1e-12));
    }
    let base = Temperature::fahrenheit(65.0);
    for (mean, expected) in [(50.0, 15.0), (45.0, 20.0), (55.0, 10.0), (30.0, 35.0)] {
        let fahrenheit = of(Temperature::fahrenheit(mean), base) * 1.8;
        close_to("°F·d", fahrenheit, expected, Tolerance::absolute(1e-9));
    }
}

/// Duffie and Beckman, Solar Engineering of Thermal Processes (from memory): declination −14° on 13 February
/// (example 1.6.1); day length of Madison, 43° N, 13 h 12 min and H₀ 33.8 MJ/m² on 15 April (example 1.10.1).
#[test]
fn the_sun_stands_where_the_textbook_says() {
    let degrees = declination(43).as_degrees();
    close_to("declination on 13 February", degrees, -14.0, Tolerance::absolute(0.5));
    let latitude = Angle::degrees(43.0);
    let sunset = sunset_hour_angle(latitude, declination(104)).as_degrees();
    close_to("hours of day", sunset / 7.5, 13.2, Tolerance::absolute(0.1));
    let above = daily_extraterrestrial_irradiation(latitude, 104).value() / 1e6;
    close_to("H₀, MJ/m²", above, 33.8, Tolerance::relative(0.01));
}

/// Declination 23.45° at the solstices and nothing at the equinoxes; on the equator at an equinox the noon sun stands in the
/// zenith, and the sun of a day is 24/π hours of the constant.
#[test]
fn solstice_equinox_and_equator() {
    close_to("21 June", declination(171).as_degrees(), 23.45, Tolerance::absolute(0.05));
    close_to("21 December", declination(354).as_degrees(), -23.45, Tolerance::absolute(0.05));
    close_to("21 March", declination(79).as_degrees(), 0.0, Tolerance::absolute(0.5));
    let equator = Angle::degrees(0.0);
    let noon = SunDirection::at(equator, Angle::degrees(0.0), Angle::degrees(0.0));
    close_to("zenith", noon.up, 1.0, Tolerance::absolute(1e-12));
    let west = SunDirection::at(equator, Angle::degrees(0.0), Angle::degrees(60.0));
    close_to(
        "afternoon, a wall facing west",
        west.on_wall(Angle::degrees(270.0)),
        0.75_f64.sqrt(),
        Tolerance::absolute(1e-12),
    );
    let no_rise = sunset_hour_angle(Angle::degrees(80.0), declination(354));
    assert_eq!(no_rise, Angle::degrees(0.0), "polar night");
    let no_set = sunset_hour_angle(Angle::degrees(80.0), declination(171));
    close_to("polar day", no_set.as_degrees(), 180.0, Tolerance::absolute(1e-9));
}

/// The pieces of the published correlations meet where they change: at 0.22 and 0.80 (Erbs, Klein and Duffie),
/// and the shares of a day's hours add up to the day (Collares-Pereira and Rabl).
#[test]
fn published_correlations_hang_together() {
    for (at, below) in [(0.22, 0.9802), (0.80, 0.165)] {
        let after = diffuse_fraction(at + 1e-9);
        close_to("just above", after, below, Tolerance::absolute(0.001));
    }
    for sunset in [50.0, 75.0, 90.0, 110.0, 130.0] {
        let shares = (0..24).map(|h| {
            hourly_to_daily_ratio(
                Angle::degrees((f64::from(h) - 11.5) * 15.0),
                Angle::degrees(sunset),
            )
        });
        close_to("sum of shares", shares.sum(), 1.0, Tolerance::absolute(0.03));
    }
}

/// A level plane gets the global irradiance whatever the direction; all four walls together see the whole
/// ring of the horizon: half of an even sky each.
#[test]
fn under_an_even_sky_every_wall_gets_the_same() {
    let overcast = |hour: usize| WeatherHour {
        temperature: Temperature::celsius(0.0),
        vapour_pressure: Pressure::new(400.0),
        global_horizontal_irradiance: Irradiance::new(if hour % 24 == 12 { 10.0 } else { 0.0 }),
    };
    let hours: Vec<_> = (0..HOURS_IN_YEAR).map(overcast).collect();
    let year = WeatherYear::new(Length::new(0.0), Angle::degrees(45.0), &hours).expect("a year");
    let sun = SunOnBox::of(&year, Angle::degrees(30.0));
    for face in BoxFace::ALL {
        let got = sun.on(face, 12).expect("an hour").value();
        // 0.5·10 from the sky, 0.5·0.2·10 from the ground, a trace of beam.
        let expected = if face == BoxFace::Roof { 10.0 } else { 6.0 };
        close_to("sun on a face", got, expected, Tolerance::absolute(0.5));
        assert_eq!(sun.on(face, 0), Some(Irradiance::new(0.0)));
    }
}

/// The invented place is a northern plain of about 6,140 degree days, 99 % of its hours above −27 °C.
#[test]
fn varnholm_flats_is_as_cold_as_it_is_said_to_be() {
    let place = varnholm_flats().check().expect("the default place passes its check");
    let year = reconstruct(&place, Spread::DesignTemperatures, SEED);
    let degree_days = heating_degree_days(&year, Temperature::celsius(18.0));
    close_to("degree days", degree_days, 6140.0, Tolerance::relative(0.01));
    close_to("99 %", exceeded_for(&year, 0.99).as_celsius(), -27.0, Tolerance::absolute(0.3));
    close_to("1 %", exceeded_for(&year, 0.01).as_celsius(), 29.0, Tolerance::absolute(0.3));
}

/// The hours have the months that they are made from.
#[test]
fn the_hours_have_the_months_of_the_place() {
    let place = varnholm_flats();
    let checked = place.check().expect("the default place passes its check");
    for spread in [Spread::Months, Spread::DesignTemperatures] {
        let year = reconstruct(&checked, spread, SEED);
        for (month, (made, given)) in year.month_means().iter().zip(&place.months).enumerate() {
            let of = |what: &str| format!("{what} of month {month}");
            close_to(
                &of("temperature"),
                made.temperature.as_celsius(),
                given.temperature.as_celsius(),
                Tolerance::absolute(0.1),
            );
            close_to(
                &of("daily range"),
                made.daily_range.value(),
                given.daily_range.value(),
                Tolerance::absolute(0.3),
            );
            close_to(
                &of("vapour"),
                made.vapour_pressure.value(),
                given.vapour_pressure.value(),
                Tolerance::relative(0.01),
            );
            close_to(
                &of("sun"),
                made.daily_global_irradiation.as_kilowatt_hours(),
                given.daily_global_irradiation.as_kilowatt_hours(),
                Tolerance::relative(1e-9),
            );
            let hottest = hours_of(month)
                .map(|hour| year.global_horizontal_irradiance()[hour])
                .fold(0.0, f64::max);
            assert!(hottest < 1100.0, "{hottest} W/m² in month {month}");
        }
        let again = reconstruct(&checked, spread, SEED);
        assert!(year == again, "the same bits each time");
    }
}

/// A design temperature that the months do not come near is told with what its hours have; the invented place has
/// all its own.
#[test]
fn a_design_temperature_that_is_not_reached_is_told() {
    let told = |winter: f64, summer: f64| {
        let place = inchwise_core::climate::Place {
            winter_design: Temperature::celsius(winter),
            summer_design: Temperature::celsius(summer),
            ..varnholm_flats()
        };
        let checked = place.check().expect("a place");
        let year = reconstruct(&checked, Spread::DesignTemperatures, SEED);
        let found = [0.99, 0.01].map(|share| exceeded_for(&year, share).as_celsius());
        (not_reached(&checked, &year), found)
    };
    assert_eq!(told(-27.0, 29.0).0, []);
    for (winter, summer, quantity) in [
        (-55.0, 29.0, ClimateQuantity::WinterDesign),
        (-17.0, 29.0, ClimateQuantity::WinterDesign),
        (-27.0, 45.0, ClimateQuantity::SummerDesign),
    ] {
        let (missed, [cold, warm]) = told(winter, summer);
        // Days drawn far apart swing by themselves, so daily ranges may be missed beside it.
        let [it, ref swings @ ..] = missed[..] else { panic!("nothing is told") };
        assert!(swings.iter().all(|it| it.quantity == ClimateQuantity::DailyRange), "{swings:?}");
        let is_winter = quantity == ClimateQuantity::WinterDesign;
        let (asked, found) = if is_winter { (winter, cold) } else { (summer, warm) };
        assert_eq!((it.quantity, it.month, it.asked), (quantity, None, asked));
        close_to("reached", it.reached, found, Tolerance::absolute(0.0));
        assert!((found - asked).abs() > 2.0, "{found} for {asked}");
    }
}

/// A place with figures that cannot be is refused, all of them at once.
#[test]
fn a_place_that_cannot_be_is_refused() {
    let mut place = varnholm_flats();
    place.months[0].temperature = Temperature::celsius(f64::NAN);
    place.months[6].daily_global_irradiation =
        inchwise_core::units::Irradiation::kilowatt_hours(40.0);
    place.latitude = Angle::degrees(91.0);
    assert_eq!(place.check().expect_err("three faults").len(), 3);
    let mut dark = varnholm_flats();
    dark.latitude = Angle::degrees(80.0);
    assert!(dark.check().is_err(), "no sun in a polar winter");
    let mut damp = varnholm_flats();
    damp.months[0].vapour_pressure = Pressure::new(900.0);
    assert_eq!(damp.check().expect_err("more than the air holds").len(), 1);
}
