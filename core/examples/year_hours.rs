//! Measures reconstructed years against measured ones:
//! `cargo run --release -p inchwise-core --example year_hours -- FILE.csv,LATITUDE,ELEVATION ...`
//!
//! Each file is a year of hours with named columns (`inchwise_wire::read_hours`). Its own twelve months
//! make the reconstructed year, once by the months alone and once with the design temperatures
//! that its hours have. One line of tab-separated figures a file. Fails where a year made with the
//! design temperatures of a place of more than 3,000 heating degree days misses by more than 5 % of heating
//! energy, 1.5 K of design temperature, or 20 % of the hours of drip and frost.

use std::process::ExitCode;

use inchwise_core::climate::{
    Place, SEED, Spread, WeatherYear, exceeded_for, heating_degree_days, reconstruct,
};
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::FieldCache;
use inchwise_core::evaluate::{Evaluation, evaluate};
use inchwise_core::units::{Angle, Length, Temperature};
use inchwise_core::year::{
    CheckedYearChoices, Surroundings, YearChoices, YearModel, YearOutcome, run_year,
};

/// What is compared of a year.
struct Figures {
    heat: f64,
    design: f64,
    drip: u32,
    frost: u32,
    wet_spots: u32,
    warmest: f64,
}

fn figures(
    evaluation: &Evaluation,
    weather: WeatherYear,
    choices: &CheckedYearChoices,
) -> Option<Figures> {
    let design = exceeded_for(&weather, 0.99).as_celsius();
    let surroundings = Surroundings::new(weather, choices.choices().front_faces).ok()?;
    let outcome: YearOutcome = run_year(&YearModel::new(evaluation, &surroundings, choices).ok()?);
    Some(Figures {
        heat: outcome.year.energy.heat().as_kilowatt_hours(),
        design,
        drip: outcome.year.drip_hours,
        frost: outcome.year.frost_hours,
        wet_spots: outcome.spots.iter().map(|spot| spot.drip + spot.frost).sum(),
        warmest: outcome.warmest.as_celsius(),
    })
}

fn measure(
    argument: &str,
    evaluation: &Evaluation,
    choices: &CheckedYearChoices,
) -> Result<(), String> {
    let mut parts = argument.rsplitn(3, ',');
    let mut number = |what: &str| -> Result<f64, String> {
        let text = parts.next().ok_or(format!("{argument}: no {what}"))?;
        text.parse().map_err(|_| format!("{argument}: {what} is no number"))
    };
    let (elevation, latitude) = (number("elevation")?, number("latitude")?);
    let path = parts.next().ok_or(format!("{argument}: no file"))?;
    let text = std::fs::read_to_string(path).map_err(|error| format!("{path}: {error}"))?;
    let (elevation, latitude) = (Length::new(elevation), Angle::degrees(latitude));
    let measured = inchwise_wire::read_hours(&text, elevation, latitude)
        .map_err(|errors| format!("{path}: {:?}", &errors[..errors.len().min(5)]))?;
    let place = Place {
        elevation,
        latitude,
        months: measured.month_means(),
        winter_design: exceeded_for(&measured, 0.99),
        summer_design: exceeded_for(&measured, 0.01),
    };
    let checked = place.check().map_err(|errors| format!("{path}: {errors:?}"))?;
    let degree_days = heating_degree_days(&measured, Temperature::celsius(18.0));
    let mut misses: Vec<String> = Vec::new();
    let truth = figures(evaluation, measured, choices).ok_or("elevation")?;
    let name = path.rsplit('/').next().unwrap_or(path);
    for spread in [Spread::Months, Spread::DesignTemperatures] {
        let made =
            figures(evaluation, reconstruct(&checked, spread, SEED), choices).ok_or("elevation")?;
        if spread == Spread::DesignTemperatures && degree_days > 3000.0 {
            let wet = |figures: &Figures| f64::from(figures.drip + figures.frost);
            let bars = [
                ("heating energy, %", (made.heat / truth.heat - 1.0) * 100.0, 5.0),
                ("design temperature, K", made.design - truth.design, 1.5),
                ("hours of drip and frost, %", (wet(&made) / wet(&truth) - 1.0) * 100.0, 20.0),
            ];
            let over = bars.iter().filter(|(_, off, bar)| off.abs() > *bar);
            misses.extend(over.map(|(what, off, bar)| format!("{what}: off {off:+.1}, bar {bar}")));
        }
        let percent =
            |made: f64, truth: f64| if truth > 0.0 { (made / truth - 1.0) * 100.0 } else { 0.0 };
        println!(
            "{name}\t{spread:?}\t{degree_days:.0}\t{:.0}\t{:+.1}\t{:.1}\t{:+.1}\t{}\t{:+.0}\t{}\t{:+.0}\t{}\t{:+.0}\t{:.1}\t{:+.1}",
            truth.heat,
            percent(made.heat, truth.heat),
            truth.design,
            made.design - truth.design,
            truth.drip,
            percent(f64::from(made.drip), f64::from(truth.drip)),
            truth.frost,
            percent(f64::from(made.frost), f64::from(truth.frost)),
            truth.wet_spots,
            percent(f64::from(made.wet_spots), f64::from(truth.wet_spots)),
            truth.warmest,
            made.warmest - truth.warmest,
        );
    }
    if misses.is_empty() { Ok(()) } else { Err(format!("{name}: {}", misses.join("; "))) }
}

fn main() -> ExitCode {
    println!(
        "file\tspread\tdegree_days\theat_kwh\theat_off_percent\tdesign_c\tdesign_off_k\tdrip_h\toff_percent\tfrost_h\toff_percent\tall_spots_wet_h\toff_percent\twarmest_c\toff_k"
    );
    let heater = YearChoices {
        heater_limit: inchwise_core::units::Power::new(10_000.0),
        ..YearChoices::default()
    };
    let design = CheckedDesign::default();
    let choices = match heater.check(design.design().indoor_temperature) {
        Ok(choices) => choices,
        Err(errors) => {
            eprintln!("{errors:?}");
            return ExitCode::FAILURE;
        }
    };
    let evaluation = evaluate(&design, &mut FieldCache::default());
    let mut ok = true;
    for argument in std::env::args().skip(1) {
        if let Err(wrong) = measure(&argument, &evaluation, &choices) {
            eprintln!("{wrong}");
            ok = false;
        }
    }
    if ok { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
