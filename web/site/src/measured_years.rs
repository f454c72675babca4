//! Years made from twelve months against measured years that anybody can fetch: those that the
//! solar library pvlib carries (TMY3 of the National Renewable Energy Laboratory).

use std::{fs, path::Path};

use anyhow::{Context, Result, bail};

use crate::{program, project, tally::Tally};

/// The library with its version, as pip names it. Nothing of it is built or run.
const LIBRARY: &str = "pvlib==0.16.1";

/// Its measured years: Sand Point in Alaska and Greensboro in North Carolina.
const FILES: [&str; 2] = ["pvlib/data/703165TY.csv", "pvlib/data/723170TYA.CSV"];

/// Columns of such a file, and what our reader calls them.
const COLUMNS: [(&str, &str); 3] = [
    ("Dry-bulb (C)", "temperature_c"),
    ("Dew-point (C)", "dew_point_c"),
    ("GHI (W/m^2)", "global_horizontal_w_m2"),
];

/// Fetches the years once, reads them, and lets the example judge.
pub(crate) fn check() -> Result<Tally> {
    let folder = project::target().join("measured-years");
    fetch(&folder)?;
    let mut command = program::cargo(&[
        "run",
        "-q",
        "--release",
        "-p",
        "inchwise-core",
        "--example",
        "year_hours",
    ]);
    command.arg("--");
    for name in FILES {
        let text = fs::read_to_string(folder.join(name))
            .with_context(|| format!("{name} is not in {LIBRARY}."))?;
        let year = named(&text).with_context(|| format!("{name} is not as expected."))?;
        let path = folder.join(Path::new(name).file_name().unwrap_or_default());
        fs::write(&path, year.text).context("The build folder cannot be written.")?;
        command.arg(format!("{},{},{}", path.display(), year.latitude, year.elevation));
    }
    program::run(&mut command)?;
    Ok(Tally::ONE_PASSED)
}

fn fetch(folder: &Path) -> Result<()> {
    if FILES.iter().all(|name| folder.join(name).exists()) {
        return Ok(());
    }
    fs::create_dir_all(folder).context("The build folder cannot be made.")?;
    let python = |arguments: &[&str]| {
        program::run(program::command("python3", arguments).current_dir(folder))
    };
    python(&["-m", "pip", "download", "-q", "--no-deps", "--only-binary", ":all:", LIBRARY])
        .with_context(|| format!("{LIBRARY} could not be fetched; Python 3 with pip is needed."))?;
    let wheel = fs::read_dir(folder)?
        .filter_map(|entry| entry.ok()?.file_name().into_string().ok())
        .find(|name| name.ends_with(".whl"));
    let Some(wheel) = wheel else { bail!("pip fetched no package of {LIBRARY}.") };
    python(&["-m", "zipfile", "-e", &wheel, "."])?;
    fs::remove_file(folder.join(wheel)).context("The package cannot be removed.")
}

/// A year with columns named as our reader wants them.
struct NamedYear {
    latitude: String,
    elevation: String,
    text: String,
}

/// From a TMY3 file: its first line holds number, name, state, zone, latitude, longitude and elevation, its
/// second the names of the columns.
fn named(text: &str) -> Result<NamedYear> {
    let mut lines = text.lines();
    let place: Vec<&str> = lines.next().unwrap_or_default().split(',').collect();
    let [_, _, _, _, latitude, _, elevation] = place[..] else {
        bail!("The first line has {} parts, not 7.", place.len());
    };
    let heading: Vec<&str> = lines.next().unwrap_or_default().split(',').collect();
    let mut columns = Vec::new();
    for (theirs, _) in COLUMNS {
        let at = heading.iter().position(|name| *name == theirs);
        columns.push(at.with_context(|| format!("No column is called {theirs}."))?);
    }
    let mut out = COLUMNS.map(|(_, ours)| ours).join(",");
    for line in lines {
        let cells: Vec<&str> = line.split(',').collect();
        let picked: Vec<&str> =
            columns.iter().map(|&at| cells.get(at).copied().unwrap_or_default()).collect();
        out.push('\n');
        out.push_str(&picked.join(","));
    }
    Ok(NamedYear { latitude: latitude.into(), elevation: elevation.into(), text: out })
}

#[cfg(test)]
mod tests {
    use super::named;

    #[test]
    fn a_measured_year_gets_our_names() {
        let text = "1,\"X\",Y,-9.0,55.3,-160.5,7\n\
            Date,GHI (W/m^2),Dry-bulb (C),Dew-point (C)\n01/01/1997,0,-1.5,-3.0\n";
        let year = named(text).expect("a readable file");
        assert_eq!(year.text, "temperature_c,dew_point_c,global_horizontal_w_m2\n-1.5,-3.0,0");
        assert_eq!([year.latitude, year.elevation], ["55.3", "7"]);
        assert!(named("1,2\n").is_err());
    }
}
