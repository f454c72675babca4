//! The conduction solver against the validation cases of ISO 10211 and against closed forms.

use inchwise_core::conduction::*;
use inchwise_core::units::*;
use inchwise_tests::{Table, Tolerance, close_to};
use inchwise_wire::conduction_file::{ReadProblem, Report, read_problem, report};
use serde_json::Value;

/// A reference file: a problem that carries its source and expected values in `about`.
struct Case {
    problem: ReadProblem,
    about: Value,
}

impl Case {
    fn read(text: &str) -> Self {
        let about = serde_json::from_str::<Value>(text).expect("JSON")["about"].clone();
        for said in ["source", "edition", "tolerance", "why"] {
            assert!(about[said].is_string(), "it does not say its {said}");
        }
        Self { problem: read_problem(text).expect("a problem file"), about }
    }

    fn expected(&self, key: &str) -> &Value {
        &self.about["expected"][key]
    }

    fn tolerance(&self, key: &str) -> f64 {
        self.expected(key).as_f64().expect("a tolerance")
    }

    fn solve(&self) -> Report {
        report(&self.problem).expect("a solved case")
    }

    fn number_of(&self, name: &str) -> usize {
        self.problem.names.iter().position(|other| other == name).expect("an environment")
    }
}

fn entries(value: &Value) -> impl Iterator<Item = (&String, &Value)> {
    value.as_object().expect("named values").iter()
}

fn within(name: &str, actual: f64, band: &Value) {
    let (low, high) = (band[0].as_f64().expect("a bound"), band[1].as_f64().expect("a bound"));
    assert!(actual >= low && actual <= high, "{name} is {actual}, expected {low} to {high}");
}

/// The largest distance of the probes from the expected temperatures.
fn largest_miss(case: &Case) -> f64 {
    let probes = case.solve().probes;
    let expected = case.expected("temperatures");
    assert_eq!(probes.len(), entries(expected).count());
    let miss = |(name, expected): (&String, &Value)| {
        let probe = probes.iter().find(|probe| probe.name == *name).expect("a probe");
        (probe.temperature.expect("material") - expected.as_f64().expect("a number")).abs()
    };
    entries(expected).map(miss).fold(0.0, f64::max)
}

#[test]
fn iso_10211_case_1_half_a_square_column() {
    let text = include_str!("../../reference/conduction/iso_10211_case_1.json");
    let mut case = Case::read(text);
    assert_eq!(case.solve().counts, [32, 64, 1]);
    let at_32 = largest_miss(&case);
    assert!(at_32 <= case.tolerance("temperature_tolerance"), "off by {at_32} K");
    for (name, printed) in entries(case.expected("printed_in_the_standard")) {
        let series = case.expected("temperatures")[name].as_f64().unwrap();
        close_to(name, printed.as_f64().unwrap(), series, Tolerance::absolute(0.06));
    }
    // Halving the cells quarters the error: the method is of second order.
    let half = case.problem.problem.cells.finest / 2.0;
    case.problem.problem.cells = CellSizes::new(half, half);
    let at_64 = largest_miss(&case);
    assert!((3.4..4.6).contains(&(at_32 / at_64)), "{at_32} K, then {at_64} K");
}

#[test]
fn iso_10211_case_2_aluminium_web_in_a_roof() {
    let case = Case::read(include_str!("../../reference/conduction/iso_10211_case_2.json"));
    let miss = largest_miss(&case);
    assert!(miss <= case.tolerance("temperature_tolerance"), "off by {miss} K");
    let outside = case.number_of("outside");
    let flow = case.solve().environments[outside].flow_into;
    within("flow", flow, &case.expected("flow")["outside"]);
}

#[test]
fn iso_10211_case_3_corner_with_a_balcony() {
    let case = Case::read(include_str!("../../reference/conduction/iso_10211_case_3.json"));
    let solution = solve(&case.problem.problem, &case.problem.accuracy).expect("a solved case");
    let field = solution.with_temperatures(&case.problem.temperatures).unwrap();
    let flows = Tolerance::relative(case.tolerance("flow_tolerance"));
    for (name, expected) in entries(case.expected("flows")) {
        let flow = field.flow_into(Environment(case.number_of(name)));
        close_to(name, flow.value(), expected.as_f64().unwrap(), flows);
    }
    for (names, expected) in entries(case.expected("couplings")) {
        let (a, b) = names.split_once(' ').expect("two names");
        let pair = [a, b].map(|name| Environment(case.number_of(name)));
        let coupling = solution.coupling(pair[0], pair[1]).value();
        close_to(names, coupling, expected.as_f64().unwrap(), flows);
    }
    let near = Tolerance::absolute(case.tolerance("temperature_tolerance"));
    for (name, expected) in entries(case.expected("coldest")) {
        let spot = field.coldest_surface(Environment(case.number_of(name))).unwrap();
        close_to(name, spot.temperature.as_celsius(), expected.as_f64().unwrap(), near);
        let place = &case.expected("coldest_at")[name];
        for (axis, at) in Axis::ALL.into_iter().zip(place.as_array().unwrap()) {
            let along = spot.at.along(axis).as_mm();
            close_to(name, along, at.as_f64().unwrap(), Tolerance::absolute(1e-6));
        }
        let weights = solution.surface_weights_at(Environment(case.number_of(name)), spot.at);
        let expected = case.expected("weights")[name].as_array().unwrap();
        for (weight, expected) in weights.unwrap().iter().zip(expected) {
            let near = Tolerance::absolute(case.tolerance("weight_tolerance"));
            close_to(name, *weight, expected.as_f64().unwrap(), near);
        }
    }
}

#[test]
fn iso_10211_case_4_iron_bar_through_insulation() {
    let case = Case::read(include_str!("../../reference/conduction/iso_10211_case_4.json"));
    let outside = &case.solve().environments[case.number_of("outside")];
    let flow = case.tolerance("parts") * outside.flow_into;
    within("flow", flow, &case.expected("flow")["outside"]);
    let warmest = outside.warmest_surface.temperature;
    within("highest surface", warmest, &case.expected("warmest")["outside"]);
}

fn lambda(value: f64) -> ThermalConductivity {
    ThermalConductivity::new(value)
}

fn resistance(value: f64) -> ThermalResistance {
    ThermalResistance::new(value)
}

fn to(relative_residual: f64) -> Accuracy {
    Accuracy { relative_residual, maximum_iterations: 200 }
}

/// Layers in series: q = Δθ / (R_si + Σ d/λ + R_se), linear in each layer. Exact for the method,
/// along any axis.
#[test]
fn composite_slab_is_exact() {
    let layers = [(0.002, 50.0), (0.0635, 0.026), (0.0127, 0.16), (0.1, 2.3)];
    let resistances: f64 = layers.iter().map(|(d, k)| d / k).sum::<f64>() + 0.13 + 0.04;
    for axis in Axis::ALL {
        let depth: f64 = layers.iter().map(|(d, _)| d).sum();
        let mut size = [0.2, 0.3, 0.25];
        size[axis as usize] = depth;
        let cells = CellSizes::new(Length::mm(3.0), Length::mm(60.0));
        let domain = Block::metres([0.0; 3], size);
        let mut slab = Problem::new(domain, Dimensionality::Three, lambda(1.0), cells);
        let mut from = 0.0;
        for (thickness, conductivity) in layers {
            let (mut low, mut high) = ([-1.0; 3], [1.0; 3]);
            low[axis as usize] = from;
            from += thickness;
            high[axis as usize] = from;
            slab.paint(Block::metres(low, high), lambda(conductivity));
        }
        let [outer, inner] = [Side::ALL[2 * axis as usize], Side::ALL[2 * axis as usize + 1]];
        slab.expose(outer, Environment(0), resistance(0.04));
        slab.expose(inner, Environment(1), resistance(0.13));
        let solution = solve(&slab, &to(1e-12)).unwrap();
        let area: f64 = (0..3).filter(|&d| d != axis as usize).map(|d| size[d]).product();
        let coupling = solution.coupling(Environment(0), Environment(1)).value();
        close_to("coupling", coupling, area / resistances, Tolerance::relative(1e-10));

        let temperatures = [-20.0, 20.0].map(Temperature::celsius);
        let field = solution.with_temperatures(&temperatures).unwrap();
        let mut passed = 0.04;
        let mut at = [0.1; 3];
        at[axis as usize] = 0.0;
        for (thickness, conductivity) in layers {
            for share in [0.0, 0.31, 0.5, 1.0] {
                let mut point = at;
                point[axis as usize] += share * thickness;
                let [x, y, z] = point;
                let found = field.temperature_at(Point::metres(x, y, z)).unwrap();
                let expected =
                    -20.0 + 40.0 * (passed + share * thickness / conductivity) / resistances;
                let near = Tolerance::absolute(1e-9);
                close_to("temperature", found.as_celsius(), expected, near);
            }
            passed += thickness / conductivity;
            at[axis as usize] += thickness;
        }
    }
}

/// Sheet that gives heat off one face, held at a temperature along a line; it runs both ways, so
/// one half counts twice. The fin formula neglects the drop across the sheet, here below 1e-3.
#[test]
fn sheet_metal_fin_follows_the_closed_form() {
    let table = Table::read(include_str!("../../reference/conduction/sheet_metal_fin.tsv"));
    for row in table.rows() {
        let thickness = row.number("thickness_mm");
        let length = row
            .number_if_given("half_length_mm")
            .unwrap_or_else(|| 12.0 * row.number("decay_length_mm"));
        let domain =
            Block::flat(Length::ZERO, Length::ZERO, Length::mm(length), Length::mm(thickness));
        let cells = CellSizes::new(Length::mm(0.5), Length::mm(2.0));
        let conductivity = lambda(row.number("conductivity_w_per_m_k"));
        let mut fin = Problem::new(domain, Dimensionality::Two, conductivity, cells);
        let coefficient = row.number("surface_coefficient_w_per_m2_k");
        fin.expose(Side::XMinimum, Environment(0), ThermalResistance::ZERO);
        fin.expose(Side::YMaximum, Environment(1), resistance(1.0 / coefficient));
        let solution = solve(&fin, &to(1e-10)).unwrap();
        let both_ways = 2.0 * solution.coupling(Environment(0), Environment(1)).value();
        let expected = row.number("line_conductance_w_per_m_k");
        close_to("line conductance", both_ways, expected, Tolerance::relative(1e-3));
    }
}

/// Corners of a regular polygon around the origin, by halving the angles of a square: only square
/// roots are needed.
fn regular_polygon(radius: f64, halvings: usize) -> Vec<[Length; 2]> {
    let mut corners = vec![[1.0, 0.0], [0.0, 1.0], [-1.0, 0.0], [0.0, -1.0_f64]];
    for _ in 0..halvings {
        let next = corners.iter().cycle().skip(1);
        corners = corners
            .iter()
            .zip(next)
            .flat_map(|(a, b)| {
                let (x, y) = (a[0] + b[0], a[1] + b[1]);
                let size = (x * x + y * y).sqrt();
                [*a, [x / size, y / size]]
            })
            .collect();
    }
    corners.iter().map(|corner| corner.map(|value| Length::new(radius * value))).collect()
}

/// Round pipe insulation: 1/L = R₁/(2π·r₁) + Σ ln(rₙ₊₁/rₙ)/(2π·λₙ) + R₂/(2π·rₘ) (ISO 12241, linear
/// thermal resistance). Both surfaces are stepped on the grid, and the layers, a steel shell thinner
/// than a cell among them, are all mixed into cut cells, which leaves the faces of the shell to half
/// a cell: the error halves with the cells.
#[test]
fn round_pipe_insulation_follows_the_closed_form() {
    // Each radius is √2 or 1.04 times the one before; ln 1.04 from a table of logarithms.
    let half_ln_2 = 0.5 * core::f64::consts::LN_2;
    let shell = 1.04;
    let ln_shell = 0.039_220_713_153_281_3;
    let radii = [0.05, 0.05 * 2.0_f64.sqrt(), 0.05 * 2.0_f64.sqrt() * shell, 0.1 * shell];
    let conductivities = [0.04, 50.0, 0.16];
    let tau = core::f64::consts::TAU;
    let layers = [half_ln_2 / 0.04, ln_shell / 50.0, half_ln_2 / 0.16];
    let resistances = 0.13 / radii[0] + layers.iter().sum::<f64>() + 0.04 / radii[3];
    let expected = tau / resistances;

    let [low, high] = [-0.13, 0.13].map(Length::new);
    let prism =
        |outline| Shape::Prism { axis: Axis::Z, outline, from: Length::ZERO, to: Length::new(1.0) };
    // All around the circle: a square whose outline runs in along a slit, around and out again.
    let mut around = vec![[high, Length::ZERO], [high, high], [low, high], [low, low]];
    around.extend([[high, low], [high, Length::ZERO]]);
    let circle = regular_polygon(radii[3], 5);
    around.extend(circle.iter().chain(&circle[..1]).rev());
    for (size, allowed) in [(4.0, 0.03), (2.0, 0.015), (1.0, 0.0075)] {
        let cells = CellSizes::new(Length::mm(size), Length::mm(size));
        let domain = Block::flat(low, low, high, high);
        let mut pipe = Problem::new(domain, Dimensionality::Two, lambda(1.0), cells);
        for (radius, conductivity) in radii[1..].iter().zip(conductivities).rev() {
            pipe.paint(prism(regular_polygon(*radius, 5)), lambda(conductivity));
        }
        let inside = SurfaceResistances::uniform(resistance(0.13));
        pipe.open_to(prism(regular_polygon(radii[0], 5)), Environment(0), inside);
        let outside = SurfaceResistances::uniform(resistance(0.04));
        pipe.open_to(prism(around.clone()), Environment(1), outside);
        let solution = solve(&pipe, &to(1e-10)).unwrap();
        let coupling = solution.coupling(Environment(0), Environment(1)).value();
        close_to("coupling", coupling, expected, Tolerance::relative(allowed));
    }
}

/// A thin steel strip that slopes through foam carries λ·t/length however coarse the cells are.
#[test]
fn sloping_sheet_keeps_its_cross_section() {
    let [length, rise, thickness] = [0.2_f64, 0.1, 0.002];
    let slant = (1.0 + (rise / length) * (rise / length)).sqrt();
    let up = thickness * slant;
    let at = |x: f64, y: f64| [Length::new(x), Length::new(y)];
    let sheet = Shape::Prism {
        axis: Axis::Z,
        outline: vec![at(0.0, 0.0), at(length, rise), at(length, rise + up), at(0.0, up)],
        from: Length::ZERO,
        to: Length::new(1.0),
    };
    let expected = 50.0 * thickness / (length * slant);
    for (size, allowed) in [(4.0, 0.025), (1.0, 0.005), (0.25, 0.002)] {
        let cells = CellSizes::new(Length::mm(size), Length::mm(5.0));
        let domain = Block::flat(
            Length::ZERO,
            Length::new(-0.02),
            Length::new(length),
            Length::new(rise + 0.02),
        );
        let mut foam = Problem::new(domain, Dimensionality::Two, lambda(1e-4), cells);
        foam.paint(sheet.clone(), lambda(50.0));
        foam.expose(Side::XMinimum, Environment(0), ThermalResistance::ZERO);
        foam.expose(Side::XMaximum, Environment(1), ThermalResistance::ZERO);
        let solution = solve(&foam, &to(1e-10)).unwrap();
        let coupling = solution.coupling(Environment(0), Environment(1)).value();
        close_to("coupling", coupling, expected, Tolerance::relative(allowed));
    }
}
