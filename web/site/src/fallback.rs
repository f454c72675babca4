//! The table of worked sizes that stands in the page until the planner is ready, and stays for
//! anyone whose browser runs no scripts. Its figures are the engine's, worked out at build time.

use anyhow::{Result, anyhow};
use inchwise_core::{
    design::Design,
    detail::FieldCache,
    evaluate::{Evaluation, evaluate},
    freight_box::BoxSize,
};

/// Where the page wants the table.
pub(crate) const MARK: &str = "<!-- fallback:table -->";

/// The boxes of the table, as the workshop calls them.
const BOXES: [(BoxSize, &str); 4] = [
    (BoxSize::TwentyStandard, "20 foot"),
    (BoxSize::TwentyHighCube, "20 foot, high"),
    (BoxSize::FortyStandard, "40 foot"),
    (BoxSize::FortyHighCube, "40 foot, high"),
];

/// What replaces the mark: the default design in each box.
pub(crate) fn block() -> Result<String> {
    let mut cache = FieldCache::default();
    let mut rows = String::new();
    for (box_size, name) in BOXES {
        let design = Design { box_size, ..Design::default() };
        let checked = design.check().map_err(|errors| {
            anyhow!("The default design does not suit the {name} box: {errors:?}")
        })?;
        rows.push_str(&row(name, &evaluate(&checked, &mut cache))?);
    }
    Ok(table(&Design::default(), &rows))
}

fn row(name: &str, evaluation: &Evaluation) -> Result<String> {
    let clear = evaluation.room.clear;
    let [length, width, height] =
        [clear.length, clear.width, clear.height].map(|side| format!("{:.2}", side.value()));
    let kept = (1.0 - evaluation.room.lost_share) * 100.0;
    let load = evaluation.balance.as_ref().map_err(|reason| anyhow!("{name}: {reason}"))?.load;
    let load = load.greatest().value() / 1000.0;
    Ok(format!(
        "<tr><th scope=\"row\">{name}</th><td>{length} × {width} × {height} m</td>\
         <td>{kept:.0} %</td><td>{load:.1} kW</td></tr>\n"
    ))
}

fn table(design: &Design, rows: &str) -> String {
    let [indoors, outdoors] = [design.indoor_temperature, design.outdoor_temperature]
        .map(|temperature| format!("{:.0} °C", temperature.as_celsius()).replace('-', "−"));
    format!(
        "<table class=\"sizes\">\n\
         <caption>Our usual build, worked out by the planner: {indoors} inside, {outdoors} \
         outside</caption>\n\
         <thead><tr><th scope=\"col\">Box</th><th scope=\"col\">Clear length, width and height</th>\
         <th scope=\"col\">Room kept</th><th scope=\"col\">Heat needed</th></tr></thead>\n\
         <tbody>\n{rows}</tbody>\n</table>"
    )
}

#[cfg(test)]
mod tests {
    use super::{BOXES, block};

    #[test]
    fn every_box_has_its_row_of_finite_figures() {
        let html = block().unwrap();
        for (_, name) in BOXES {
            assert!(html.contains(&format!("<th scope=\"row\">{name}</th>")), "{name}");
        }
        assert_eq!(html.matches("kW</td>").count(), BOXES.len());
        assert!(!html.contains("NaN") && !html.contains("inf"));
        assert!(html.contains("−33 °C outside"));
    }
}
