//! The details that another discretisation is asked about as well: a stud whose foam ends below its
//! inner flange, the same over a trough of the sheet, a wave of the front end, the foot of a wall, and a covered
//! casting in the front top corner. Design: the default, but with foam that follows the sheet in the wave.

use inchwise_core::design::{CheckedDesign, Surface};
use inchwise_core::detail::{
    Detail, Effort, FieldCache, FloorEdgeSection, FrameSlice, Surfaces, WaveSection, Waves,
    placed_detail,
};
use inchwise_core::envelope::{Amount, End, ThermalBridge};
use inchwise_wire::conduction_file::write_problem;
use serde_json::json;

/// The temperature of the room and outdoors that a file asks for, °C.
pub const TEMPERATURES: [f64; 2] = [20.0, -30.0];

/// The details with the names of their files.
pub fn details() -> Vec<(&'static str, Detail)> {
    let checked = CheckedDesign::default();
    let corner = placed_detail(
        &checked,
        ThermalBridge::TopCasting(End::Front),
        Amount::Pieces(2.0),
        &mut FieldCache::default(),
        Effort::Sections,
    );
    let slice = FrameSlice::on_a_crest(&checked, Surface::SideWall);
    let sheet = checked.freight_box().side_corrugation;
    let trough = slice.over(Waves { sheet, foam_follows: false, count: 1 });
    let [stud, trough] = [slice, trough].map(Detail::FrameLine);
    let sheet = checked.freight_box().front_corrugation;
    let waves = Waves { sheet, foam_follows: true, count: 1 };
    let wave = WaveSection { waves, ..WaveSection::of(&checked, Surface::FrontEnd) };
    let foot = Detail::FloorEdge(FloorEdgeSection::of(&checked, Surface::SideWall));
    let corner = corner.detail.map(|detail| ("top_casting", detail));
    [
        ("stud", stud),
        ("stud_over_trough", trough),
        ("front_end_wave", Detail::Wave(wave)),
        ("floor_edge", foot),
    ]
    .into_iter()
    .chain(corner)
    .collect()
}

/// The names and texts of a detail's problem files, one for heat and one for the risk of damp.
pub fn files(name: &str, detail: &Detail) -> [(String, String); 2] {
    let [room, outdoors] = TEMPERATURES;
    let environments = [("room", room), ("outdoors", outdoors)];
    [("heat", Surfaces::Ordinary), ("damp", Surfaces::Damp)].map(|(purpose, surfaces)| {
        let about =
            json!({ "title": format!("{name} of the default design, surfaces for {purpose}") });
        let text = write_problem(&detail.problem(surfaces), &environments, &about);
        (format!("{name}_{purpose}.json"), text)
    })
}
