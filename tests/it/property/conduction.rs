//! What must hold for any arrangement of materials and air: no temperature beyond those around, heat
//! conserved, reciprocity, no preferred axis, and no loss cured by a better conductor.

use inchwise_core::conduction::*;
use inchwise_core::units::*;
use proptest::prelude::*;

/// A block on a lattice of 20 mm, and how thick it is along one axis if it is a sheet.
#[derive(Clone, Debug)]
struct Lump {
    from: [u32; 3],
    size: [u32; 3],
    sheet: Option<(usize, f64)>,
}

impl Lump {
    fn block(&self, dimensions: Dimensionality) -> Block {
        let mut low = self.from.map(|n| 0.02 * f64::from(n));
        let mut high = [0, 1, 2].map(|d| low[d] + 0.02 * f64::from(self.size[d]));
        if dimensions == Dimensionality::Two {
            (low[2], high[2]) = (0.0, 1.0);
        }
        match self.sheet {
            Some((d, thickness)) if dimensions == Dimensionality::Three || d < 2 => {
                high[d] = low[d] + thickness;
            }
            _ => {}
        }
        Block::metres(low, high)
    }
}

prop_compose! {
    fn lump()(
        from in prop::array::uniform3(0_u32..9),
        size in prop::array::uniform3(1_u32..7),
        sheet in prop::option::of((0_usize..3, 0.0005..0.004)),
    ) -> Lump {
        Lump { from, size, sheet }
    }
}

/// A conductivity from 0.01 to 1000 W/(m·K), evenly over the powers of ten.
fn conductivity() -> impl Strategy<Value = f64> {
    (1.0..10.0, prop::sample::select(vec![0.01, 0.1, 1.0, 10.0, 100.0])).prop_map(|(a, b)| a * b)
}

#[derive(Clone, Debug)]
struct Scene {
    dimensions: Dimensionality,
    paints: Vec<(Lump, f64)>,
    air: Vec<(Lump, usize)>,
    resistances: [f64; 3],
    size: f64,
}

prop_compose! {
    fn scene()(
        is_flat in any::<bool>(),
        paints in prop::collection::vec((lump(), conductivity()), 1..8),
        air in prop::collection::vec((lump(), 0_usize..3), 0..4),
        resistances in prop::array::uniform3(0.01..0.3),
        size in 8.0..20.0,
    ) -> Scene {
        let dimensions = if is_flat { Dimensionality::Two } else { Dimensionality::Three };
        Scene { dimensions, paints, air, resistances, size }
    }
}

impl Scene {
    /// The problem, with the environments renumbered.
    fn problem(&self, number: [usize; 3]) -> Problem {
        let mut domain = Block::metres([0.0; 3], [0.2, 0.24, 0.22]);
        if self.dimensions == Dimensionality::Two {
            domain.maximum.z = Length::new(1.0);
        }
        let foam = ThermalConductivity::new(0.03);
        let cells = CellSizes::new(Length::mm(self.size), Length::mm(2.0 * self.size));
        let mut problem = Problem::new(domain, self.dimensions, foam, cells);
        for (lump, conductivity) in &self.paints {
            let conductivity = ThermalConductivity::new(*conductivity);
            problem.paint(lump.block(self.dimensions), conductivity);
        }
        let resistance = |n: usize| ThermalResistance::new(self.resistances[n]);
        for (lump, n) in &self.air {
            let resistances = SurfaceResistances::uniform(resistance(*n));
            let block = lump.block(self.dimensions);
            problem.open_to(block, Environment(number[*n]), resistances);
        }
        let sides = [Side::XMinimum, Side::YMaximum, Side::XMaximum];
        for (n, side) in sides.into_iter().enumerate() {
            problem.expose(side, Environment(number[n]), resistance(n));
        }
        problem
    }
}

const PLAIN: [usize; 3] = [0, 1, 2];

fn accuracy() -> Accuracy {
    Accuracy { relative_residual: 1e-10, maximum_iterations: 500 }
}

/// The solution, which every scene has.
fn solved(problem: &Problem) -> Solution {
    solve(problem, &accuracy()).expect("a solved scene")
}

fn coupling(solution: &Solution, a: usize, b: usize) -> f64 {
    solution.coupling(Environment(a), Environment(b)).value()
}

fn near(a: f64, b: f64, relative: f64, scale: f64) -> bool {
    (a - b).abs() <= relative * scale
}

/// All heat an environment may exchange, the measure of its couplings.
fn scale(solution: &Solution) -> f64 {
    let pairs = [(0, 1), (0, 2), (1, 2)];
    pairs.iter().map(|&(a, b)| coupling(solution, a, b)).fold(0.0, f64::max)
}

fn turned(problem: &Problem, order: [usize; 3]) -> Problem {
    let point = |at: Point| {
        let at = [at.x, at.y, at.z];
        Point::new(at[order[0]], at[order[1]], at[order[2]])
    };
    let block = |block: &Block| Block::new(point(block.minimum), point(block.maximum));
    let side = |side: Side| {
        let d = order.iter().position(|&d| d == side.axis() as usize);
        let d = d.expect("an axis of the order");
        Side::ALL[2 * d + usize::from(side.is_maximum())]
    };
    let mut turned = problem.clone();
    turned.domain = block(&problem.domain);
    for paint in &mut turned.paints {
        if let Shape::Block(inner) = &mut paint.shape {
            *inner = block(inner);
        }
    }
    for air in &mut turned.air {
        if let Shape::Block(inner) = &mut air.shape {
            *inner = block(inner);
        }
    }
    for exposed in &mut turned.exposed {
        exposed.side = side(exposed.side);
    }
    turned
}

proptest! {
    // Each case solves a few fields of some thousand cells.
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn no_temperature_lies_beyond_those_of_the_environments(
        scene in scene(), temperatures in prop::array::uniform3(-40.0..60.0),
    ) {
        let solution = solved(&scene.problem(PLAIN));
        let field = solution.with_temperatures(&temperatures.map(Temperature::celsius)).unwrap();
        let low = temperatures.iter().copied().fold(f64::INFINITY, f64::min) - 1e-6;
        let high = temperatures.iter().copied().fold(f64::NEG_INFINITY, f64::max) + 1e-6;
        let inside = |t: Temperature| t.as_celsius() >= low && t.as_celsius() <= high;
        for cell in 0..solution.cells() {
            prop_assert!(field.cell_temperature(cell).is_none_or(inside));
        }
        for n in 0..3 {
            let Ok(coldest) = field.coldest_surface(Environment(n)) else { continue };
            let warmest = field.warmest_surface(Environment(n)).unwrap();
            prop_assert!(inside(coldest.temperature) && inside(warmest.temperature));
            prop_assert!(coldest.temperature <= warmest.temperature);
            let again = field.surface_temperature_at(Environment(n), coldest.at).unwrap();
            prop_assert!(near(again.as_celsius(), coldest.temperature.as_celsius(), 1e-9, 1.0));
        }
    }

    #[test]
    fn heat_is_conserved(scene in scene(), temperatures in prop::array::uniform3(-40.0..60.0)) {
        let solution = solved(&scene.problem(PLAIN));
        let field = solution.with_temperatures(&temperatures.map(Temperature::celsius)).unwrap();
        let balance = field.balance();
        let span = temperatures.iter().copied().fold(f64::NEG_INFINITY, f64::max)
            - temperatures.iter().copied().fold(f64::INFINITY, f64::min);
        // A field of next to no flow is judged by the flow its temperatures could drive.
        let size = balance.throughput.value().max(1e-3 * span * scale(&solution));
        prop_assert!(balance.imbalance.value().abs() <= 1e-8 * size, "{balance:?}");
        let by_couplings: f64 =
            (0..3).map(|n| field.flow_into(Environment(n)).value().max(0.0)).sum();
        prop_assert!(near(by_couplings, balance.throughput.value(), 1e-7, size));
    }

    /// The coupling of two environments comes out the same from the unit field of either, which
    /// renumbering exchanges.
    #[test]
    fn couplings_are_reciprocal(scene in scene()) {
        let plain = solved(&scene.problem(PLAIN));
        let number = [2, 0, 1];
        let renumbered = solved(&scene.problem(number));
        for (a, b) in [(0, 1), (0, 2), (1, 2)] {
            let (here, there) =
                (coupling(&plain, a, b), coupling(&renumbered, number[b], number[a]));
            prop_assert!(near(here, there, 1e-9, scale(&plain)), "{here} {there}");
        }
    }

    #[test]
    fn no_axis_is_preferred(scene in scene()) {
        let orders: &[[usize; 3]] = match scene.dimensions {
            Dimensionality::Two => &[[1, 0, 2]],
            Dimensionality::Three => &[[1, 2, 0], [2, 1, 0]],
        };
        let problem = scene.problem(PLAIN);
        let plain = solved(&problem);
        for order in orders {
            let other = solved(&turned(&problem, *order));
            prop_assert_eq!(plain.cells(), other.cells());
            for (a, b) in [(0, 1), (0, 2), (1, 2)] {
                let (here, there) = (coupling(&plain, a, b), coupling(&other, a, b));
                prop_assert!(near(here, there, 1e-9, scale(&plain)), "{here} {there}");
            }
        }
    }

    /// Rayleigh's principle: with two environments, no conductivity raised and no surface resistance
    /// lowered ever lowers the flow.
    #[test]
    fn more_insulation_never_loses_more(
        scene in scene(), which in any::<prop::sample::Index>(), factor in 1.1..20.0,
    ) {
        let two = |scene: &Scene| scene.problem([0, 1, 1]);
        let before = solved(&two(&scene));
        let mut better = scene.clone();
        let paint = which.index(better.paints.len() + 2);
        match better.paints.get_mut(paint) {
            Some((_, conductivity)) => *conductivity /= factor,
            None => better.resistances[paint - scene.paints.len()] *= factor,
        }
        let after = solved(&two(&better));
        let (before, after) = (coupling(&before, 0, 1), coupling(&after, 0, 1));
        prop_assert!(after <= before * (1.0 + 1e-9), "{before} became {after}");
    }

    #[test]
    fn weights_add_up_to_one_and_make_the_temperature(
        scene in scene(), temperatures in prop::array::uniform3(-40.0..60.0),
        at in prop::array::uniform3(0.0..0.2),
    ) {
        let solution = solved(&scene.problem(PLAIN));
        let field = solution.with_temperatures(&temperatures.map(Temperature::celsius)).unwrap();
        let point = Point::metres(at[0], at[1], at[2]);
        let weights = solution.weights_at(point);
        prop_assert_eq!(weights.is_some(), field.temperature_at(point).is_some());
        if let Some(weights) = weights {
            prop_assert!(near(weights.iter().sum(), 1.0, 1e-12, 1.0));
            prop_assert!(weights.iter().all(|weight| *weight > -1e-8 && *weight < 1.0 + 1e-8));
            let sum: f64 = weights.iter().zip(temperatures).map(|(w, t)| w * t).sum();
            let found = field.temperature_at(point).unwrap().as_celsius();
            prop_assert!(near(sum, found, 1e-9, 60.0));
        }
    }
    #[test]
    fn a_drawn_section_shows_what_its_points_say(
        scene in scene(), axis in prop::sample::select(Axis::ALL.to_vec()), share in 0.0..1.0,
    ) {
        let problem = scene.problem(PLAIN);
        let solution = solved(&problem);
        let field = solution.with_temperatures(&[20.0, -10.0, 5.0].map(Temperature::celsius)).unwrap();
        let axis = if scene.dimensions == Dimensionality::Two { Axis::Z } else { axis };
        let [p, q] = axis.others().map(|axis| axis as usize);
        let size = Axis::ALL.map(|axis| problem.domain.extent(axis).value());
        let at = share * size[axis as usize];
        // Tiles whose middles keep clear of the lattice the blocks stand on.
        let (width, height) = (16, 16);
        let section = Section { axis, at: Length::new(at) };
        let samples = field.sample(section, width, height);
        prop_assert_eq!(samples.len(), width * height);
        for (n, sample) in samples.iter().enumerate() {
            let mut point = [at; 3];
            point[p] = size[p] * ((n % width) as f64 + 0.5) / width as f64;
            point[q] = size[q] * ((n / width) as f64 + 0.5) / height as f64;
            let expected = field.temperature_at(Point::metres(point[0], point[1], point[2]));
            prop_assert_eq!(sample.is_some(), expected.is_some());
            if let (Some(sample), Some(expected)) = (sample, expected) {
                prop_assert!(near(sample.as_celsius(), expected.as_celsius(), 1e-9, 30.0));
            }
        }
    }
}
