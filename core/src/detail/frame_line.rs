//! The slice across a stud or a ceiling joist: sheet, foam, C-section, air gap, lining.

use crate::conduction::{
    Accuracy, Block, CellSizes, ConductionError, Dimensions, Environment, Point, Problem, Side,
    solve,
};
use crate::design::{CheckedDesign, Surface};
use crate::envelope::{
    DAMP_SURFACE_RESISTANCE, HeatFlow, OUTSIDE_SURFACE_RESISTANCE, air_layer_conductivity,
    foam_material, lining_material, series_resistance,
};
use crate::material::STEEL;
use crate::units::{
    Length, LinearThermalTransmittance, TemperatureFactor, ThermalConductivity, ThermalResistance,
    ThermalTransmittance,
};

/// Everything the field across one frame member depends on, and nothing else.
///
/// The sheet is taken as flat at its inner crests: a stud stands off the crests, and the troughs
/// behind it would only help. The web stands in the middle of one spacing, so that the cut sides
/// lie where no heat crosses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FrameSlice {
    /// Which way the heat flows.
    pub direction: HeatFlow,
    /// Thickness of the box's sheet.
    pub sheet: Length,
    /// Foam from the sheet inwards.
    pub foam: Length,
    /// From the sheet to the member's outer flange.
    pub stand_off: Length,
    /// Depth of the member's web.
    pub member: Length,
    /// Width of its flanges.
    pub flange: Length,
    /// Its sheet thickness.
    pub steel_thickness: Length,
    /// From one member to the next.
    pub spacing: Length,
    /// From the sheet to the back of the lining.
    pub lining_back: Length,
    /// Thickness of the lining.
    pub lining: Length,
    /// Conductivity of the foam.
    pub foam_conductivity: ThermalConductivity,
    /// Conductivity of the lining.
    pub lining_conductivity: ThermalConductivity,
}

/// What the field of a slice says.
#[derive(Clone, Debug, PartialEq)]
pub struct FrameLineField {
    /// Thermal transmittance of the whole slice, member included.
    pub transmittance: ThermalTransmittance,
    /// Thermal transmittance of the same layers without the member.
    pub plain_transmittance: ThermalTransmittance,
    /// ψ = (U_slice − U_plain) · spacing (ISO 10211:2017).
    pub linear_transmittance: LinearThermalTransmittance,
    /// f_Rsi on the lowest surface temperature, with the inside surface resistance 0.25 m²·K/W
    /// that ISO 13788 sets for the risk of damp.
    pub temperature_factor: TemperatureFactor,
    /// The same with the ordinary surface resistance of ISO 6946.
    pub ordinary_temperature_factor: TemperatureFactor,
    /// How far beside the web the coldest spot lies, towards the flanges positive.
    pub coldest_beside_web: Length,
    /// Temperature factor in the middle of the inner flange, ordinary surface resistance.
    pub inner_flange_factor: Option<TemperatureFactor>,
    /// Temperature factor in the middle of the outer flange, ordinary surface resistance.
    pub outer_flange_factor: Option<TemperatureFactor>,
    /// Cells of the grid.
    pub cells: usize,
    /// Relative residual reached.
    pub residual: f64,
}

const ROOM: Environment = Environment(0);
const OUTDOORS: Environment = Environment(1);

/// Relative residual at which a slice is taken as solved: the heat flow then errs by less than
/// a millionth.
const RESIDUAL: f64 = 1e-8;

impl FrameSlice {
    /// The slice of a framed surface of a design.
    pub fn of(checked: &CheckedDesign, surface: Surface) -> Self {
        let design = checked.design();
        let stack = design.stack(surface);
        let ceiling = surface == Surface::Ceiling;
        let sheet = crate::envelope::corrugation(checked, surface)
            .map_or(Length::mm(2.0), |corrugation| corrugation.thickness);
        Self {
            direction: HeatFlow::through(surface),
            sheet,
            foam: stack.foam,
            stand_off: stack.frame_stand_off(),
            member: stack.member,
            flange: design.flange_width,
            steel_thickness: if ceiling {
                design.joist_steel_thickness
            } else {
                design.stud_steel_thickness
            },
            spacing: if ceiling { design.joist_spacing } else { design.stud_spacing },
            lining_back: stack.lining_back(),
            lining: stack.lining,
            foam_conductivity: foam_material(design).conductivity,
            lining_conductivity: lining_material(design).conductivity,
        }
    }

    /// Thickness of the still air between foam and lining.
    pub fn air_gap(&self) -> Length {
        (self.lining_back - self.foam).max(Length::ZERO)
    }

    /// Where the web stands along the slice.
    pub fn web_at(&self) -> Length {
        self.spacing / 2.0
    }

    /// Resistance of the layers without the member, surfaces apart.
    fn plain_layers(&self) -> [ThermalResistance; 4] {
        let gap = self.air_gap();
        let air = if gap > Length::ZERO {
            gap / air_layer_conductivity(gap, self.direction)
        } else {
            ThermalResistance::ZERO
        };
        [
            self.sheet / STEEL.conductivity,
            self.foam / self.foam_conductivity,
            air,
            self.lining / self.lining_conductivity,
        ]
    }

    /// The conduction problem: x along the wall, y from outdoors to the room, y = 0 on the
    /// sheet's inner face.
    pub fn problem(&self, inside_surface: ThermalResistance) -> Problem {
        let (left, right) = (Length::ZERO, self.spacing);
        let room_face = self.lining_back + self.lining;
        let flat = |x0, y0, x1, y1| Block::flat(x0, y0, x1, y1);
        let thin = self.steel_thickness;
        let mut problem = Problem::new(
            flat(left, -self.sheet, right, room_face),
            Dimensions::Two,
            self.foam_conductivity,
            CellSizes::new(Length::mm(1.0), Length::mm(16.0)),
        );
        problem.paint(flat(left, -self.sheet, right, Length::ZERO), STEEL.conductivity);
        let gap = self.air_gap();
        if gap > Length::ZERO {
            problem.paint(
                flat(left, self.foam, right, self.lining_back),
                air_layer_conductivity(gap, self.direction),
            );
        }
        if self.lining > Length::ZERO {
            problem.paint(flat(left, self.lining_back, right, room_face), self.lining_conductivity);
        }
        let web = self.web_at();
        let (outer, inner) = (self.stand_off, self.stand_off + self.member);
        for steel in [
            flat(web, outer, web + thin, inner),
            flat(web, outer, web + self.flange, outer + thin),
            flat(web, inner - thin, web + self.flange, inner),
        ] {
            problem.paint(steel, STEEL.conductivity);
        }
        problem.expose(Side::YMinimum, OUTDOORS, OUTSIDE_SURFACE_RESISTANCE);
        problem.expose(Side::YMaximum, ROOM, inside_surface);
        problem
    }
}

/// Solves a slice twice: with the ordinary surface resistance for heat, with the damp one for the
/// temperature factor.
///
/// # Errors
/// What the solver reports.
pub fn solve_frame_slice(slice: &FrameSlice) -> Result<FrameLineField, ConductionError> {
    let ordinary = slice.direction.inside_surface_resistance();
    let accuracy = Accuracy { relative_residual: RESIDUAL, ..Accuracy::default() };
    let heat = solve(&slice.problem(ordinary), &accuracy)?;
    let damp = solve(&slice.problem(DAMP_SURFACE_RESISTANCE), &accuracy)?;
    // The slice is one metre deep, so its coupling is that of spacing × 1 m of wall.
    let area = slice.spacing * Length::new(1.0);
    let transmittance = heat.coupling(ROOM, OUTDOORS) / area;
    let plain_transmittance =
        series_resistance(ordinary, slice.plain_layers(), OUTSIDE_SURFACE_RESISTANCE)
            .transmittance();
    let extra = transmittance.value() - plain_transmittance.value();
    let damp_lowest = damp.lowest_temperature_factor(ROOM)?;
    let ordinary_lowest = heat.lowest_temperature_factor(ROOM)?;
    let half = slice.steel_thickness / 2.0;
    let flange_middle = slice.web_at() + slice.flange / 2.0;
    let flange = |depth: Length| {
        let point = Point::new(flange_middle, depth, Length::mm(500.0));
        heat.weights_at(point)?.get(ROOM.0).copied().map(TemperatureFactor::new)
    };
    Ok(FrameLineField {
        transmittance,
        plain_transmittance,
        linear_transmittance: LinearThermalTransmittance::new(extra * slice.spacing.value()),
        temperature_factor: damp_lowest.factor,
        ordinary_temperature_factor: ordinary_lowest.factor,
        coldest_beside_web: damp_lowest.at.x - slice.web_at(),
        inner_flange_factor: flange(slice.stand_off + slice.member - half),
        outer_flange_factor: flange(slice.stand_off + half),
        cells: heat.cells(),
        residual: heat.residual().max(damp.residual()),
    })
}
