//! What must hold of the cold details of any design.

use inchwise_core::design::{Design, EndWallTreatment, Field, FoamMeasure, FramePosition, Surface};
use inchwise_core::detail::{
    Detail, Effort, FieldCache, FrameSlice, Outcome, PlacedDetail, placed_detail,
};
use inchwise_core::envelope::{Amount, End, ThermalBridge};
use proptest::prelude::*;

use super::design::lawful_design;

/// Half a kelvin at 50 K. A temperature factor is settled to a fifth of that; and a deeper cover stands
/// further into the room and shades the pockets beside it, by a quarter of a kelvin at most in
/// what was tried.
const SHADE: f64 = 0.01;

const WALLS_AND_CEILING: [Field; 4] =
    [Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam, Field::CeilingFoam];

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    /// Where troughs are filled, the wave's depth of foam behind a flange keeps heat in and the member
    /// warm. (Foam that follows the sheet lies deeper over a crest than over a trough: there a member that
    /// it buries may lose a little more over the trough.)
    #[test]
    fn a_member_over_a_trough_loses_no_more_and_is_no_colder_than_on_a_crest(
        checked in lawful_design(),
        surface in prop::sample::select(vec![
            Surface::SideWall, Surface::FrontEnd, Surface::Ceiling,
        ]),
    ) {
        let mut design = checked.design().clone();
        design.foam_measure = FoamMeasure::FlushOverTheRibs;
        let [crest, trough] = [FramePosition::OnCrests, FramePosition::OverTroughs].map(|position| {
            design.frame_position = position;
            let checked = design.check().expect("position has no range");
            Detail::FrameLine(FrameSlice::of(&checked, surface)).solve().expect("a lawful section")
        });
        let [on, over] = [&crest, &trough].map(|field| field.linear_transmittance().value());
        // Settled to a fifth of a per cent of the loss of the section, and to 0.1 K at 50 K.
        prop_assert!(over < on + 0.0005, "ψ {over} over the trough, {on} on the crest");
        let [on, over] = [crest, trough].map(|field| field.temperature_factor.value());
        prop_assert!(over > on - 0.002, "factor {over} over the trough, {on} on the crest");
    }
}

/// Flat reckoning lets the waves count for nothing, wherever members stand; a wall without waves has
/// none to stand over.
#[test]
fn without_waves_a_position_changes_nothing() {
    let mut design = Design::default();
    let slices = |design: &Design| {
        let checked = design.check().expect("lawful");
        [Surface::SideWall, Surface::DoorEnd].map(|surface| FrameSlice::of(&checked, surface))
    };
    let on_crests = slices(&design);
    design.frame_position = FramePosition::OverTroughs;
    let over_troughs = slices(&design);
    assert!(over_troughs[0] != on_crests[0], "the side walls have waves");
    assert_eq!(over_troughs[1], on_crests[1], "the door end has none");
    design.foam_measure = FoamMeasure::Flat;
    assert_eq!(slices(&design), on_crests);
}

proptest! {
    // Each case solves three bodies with all their rounds of refinement.
    #![proptest_config(ProptestConfig::with_cases(5))]

    /// Foam on a casting keeps warm what stands over it: the coldest spot of the corner does not get
    /// colder, and covered it is never colder than bare. Where walls and ceiling carry next to no foam
    /// an edge beside it may be colder still, so they carry 50 mm here at least.
    #[test]
    fn more_cover_makes_no_corner_colder(
        checked in lawful_design(),
        treatment in prop::sample::select(
            EndWallTreatment::ALL
                .iter()
                .copied()
                .filter(|&treatment| treatment != EndWallTreatment::LeaveBare)
                .collect::<Vec<_>>(),
        ),
        end in prop::sample::select(vec![End::Front, End::Door]),
        thin in 5.0..60.0, more in 5.0..80.0,
    ) {
        let mut design = checked.design().clone();
        for field in WALLS_AND_CEILING {
            let foam = design.get(field).expect("a chosen number");
            design.set(field, Some(foam.max(0.05)));
        }
        let factor = |treatment: EndWallTreatment, cover: f64| {
            let mut design = design.clone();
            design.end_wall_treatment = treatment;
            design.set(Field::CastingCover, Some(cover / 1000.0));
            let checked = design.check().ok()?;
            let mut cache = FieldCache::default();
            let place = ThermalBridge::TopCasting(end);
            let placed: PlacedDetail =
                placed_detail(&checked, place, Amount::Pieces(2.0), &mut cache, Effort::All);
            match placed.outcome {
                Outcome::Solved(field) => Some(field.temperature_factor.value()),
                other => panic!("{other:?}"),
            }
        };
        let bare = factor(EndWallTreatment::LeaveBare, thin);
        let thick = factor(treatment, thin + more);
        let thin = factor(treatment, thin);
        for (less, more) in [(bare, thin), (thin, thick)] {
            if let (Some(less), Some(more)) = (less, more) {
                prop_assert!(more > less - SHADE, "{less} became {more}");
            }
        }
    }
}
