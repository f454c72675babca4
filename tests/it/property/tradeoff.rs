//! What must hold of remedies, whatever the design.

use inchwise_core::design::{CheckedDesign, RoomUse};
use inchwise_core::detail::{FieldCache, PlacedDetail};
use inchwise_core::evaluate::{Evaluation, evaluate};
use inchwise_core::moisture::SurfaceRisk;
use inchwise_core::tradeoff::{
    LEAST_RISE, NotTried, PlaceFigures, Remedy, RemedySearch, RoomFigures, Slice, StepKind, WhyNot,
    least_that_dries, remedies, steps_of,
};
use proptest::prelude::*;
use proptest::sample::select;

use super::design::lawful_design;

/// What is told of a room is what its evaluation says, to the bit.
fn tells(figures: &RoomFigures, evaluation: &Evaluation) {
    let balance = evaluation.balance.as_ref().expect("a checked design has its air");
    let verdict = &balance.humidity.verdict;
    assert_eq!(figures.load_at_rest, balance.load.at_rest.total());
    assert_eq!(figures.load_at_work, balance.load.at_work.total());
    assert_eq!(figures.design_day, verdict.design_day);
    assert_eq!(figures.needed_factor, verdict.needed_factor);
    assert_eq!(figures.clear, evaluation.room.clear);
    assert_eq!(figures.floor_area, evaluation.room.floor_area);
    assert_eq!(figures.headroom_under_corners, evaluation.room.headroom_under_corners);
    assert_eq!(figures.lost_volume, evaluation.room.lost_volume);
    assert_eq!(figures.at_risk(), verdict.at_risk().count());
}

fn tells_place(figures: &PlaceFigures, evaluation: &Evaluation) {
    let verdict = &evaluation.balance.as_ref().expect("air").humidity.verdict;
    let judged = verdict.places.iter().find(|judged| judged.place == figures.place);
    let judged = judged.expect("the place is there");
    assert_eq!(figures.temperature_factor, judged.temperature_factor);
    assert_eq!((figures.risk, figures.freezes), (judged.risk, judged.freezes));
}

/// Every figure of a remedy against an evaluation of the design with its step taken.
fn is_what_it_says(remedy: &Remedy, before: &Evaluation, cache: &mut FieldCache) {
    let with = remedy.step.taken_by(before.checked.design()).check().expect("lawful");
    let after = evaluate(&with, cache);
    tells(&remedy.room.before, before);
    tells(&remedy.room.after, &after);
    tells_place(&remedy.place.before, before);
    tells_place(&remedy.place.after, &after);
    let same = |placed: &PlacedDetail| before.details.iter().any(|one| one == placed);
    let moved = after.details.iter().filter(|placed| !same(placed)).map(|placed| placed.place);
    for place in moved {
        // Metres of a line may change while its field does not.
        let detail = |of: &Evaluation| {
            of.details.iter().find(|placed| placed.place == place).and_then(|placed| placed.detail)
        };
        let has_moved = detail(before) != detail(&after);
        assert_eq!(has_moved, remedy.changed.contains(&place), "{}", place.key());
    }
}

fn remedies_hold(checked: &CheckedDesign) {
    let mut cache = FieldCache::default();
    let evaluation = evaluate(checked, &mut cache);
    let found = remedies(&evaluation, &mut cache).expect("a cache that solves");
    let steps = steps_of(checked.design());
    for place in &found {
        assert_eq!(place.offered.len() + place.not_offered.len(), steps.len(), "each step once");
        for remedy in &place.offered {
            let [before, after] = [remedy.place.before, remedy.place.after];
            let rise = after.temperature_factor.value() - before.temperature_factor.value();
            if remedy.step.kind.acts_on_air() {
                assert!(after.risk <= before.risk, "{:?}", remedy.step);
            } else {
                assert!(rise > LEAST_RISE, "{:?} raises by {rise}", remedy.step);
            }
        }
        for not in place.not_offered.iter().filter(|not| !not.step.kind.acts_on_air()) {
            if let WhyNot::DoesNotHelp(after) = &not.why {
                let before = place.place.temperature_factor.value();
                assert!(after.temperature_factor.value() - before <= LEAST_RISE, "{not:?}");
            }
        }
        let risks = place.offered.iter().map(|remedy| remedy.place.after.risk);
        assert!(risks.is_sorted(), "the lesser risk first");
    }
    // The same steps stand at several places: each is evaluated again once.
    let mut seen: Vec<StepKind> = Vec::new();
    for remedy in found.iter().flat_map(|place| &place.offered) {
        if !seen.contains(&remedy.step.kind) {
            seen.push(remedy.step.kind);
            is_what_it_says(remedy, &evaluation, &mut cache);
        }
    }
    let fresh = remedies(&evaluation, &mut FieldCache::default()).expect("a cache that solves");
    assert!(fresh == found, "what the cache holds changes nothing");
}

fn least_holds(checked: &CheckedDesign) {
    let mut cache = FieldCache::default();
    let before = evaluate(checked, &mut cache);
    let least = least_that_dries(&before, &mut cache).expect("a cache that solves");
    let after = evaluate(&least.checked, &mut cache);
    tells(&least.room.before, &before);
    tells(&least.room.after, &after);
    let verdict = &after.balance.as_ref().expect("air").humidity.verdict;
    assert_eq!(least.dries(), verdict.is_dry() && after.cold_spots.unknown.is_empty());
    let remaining: Vec<_> = least.remaining.iter().map(|place| (place.place, place.risk)).collect();
    let at_risk: Vec<_> = verdict.at_risk().map(|place| (place.place, place.risk)).collect();
    assert_eq!(remaining, at_risk);
    let steps = &least.steps;
    let made = steps.iter().fold(checked.design().clone(), |design, step| step.taken_by(&design));
    assert_eq!(&made, least.checked.design());
    assert!(remaining.len() <= before.balance.expect("air").humidity.verdict.places.len());
    let again = least_that_dries(&evaluate(checked, &mut cache), &mut FieldCache::default());
    assert!(again.expect("a cache that solves") == least, "what the cache holds changes nothing");
}

proptest! {
    // Each case solves some dozens of bodies.
    #![proptest_config(ProptestConfig { cases: 2, max_shrink_iters: 0, ..ProptestConfig::default() })]

    #[test]
    fn a_remedy_is_an_evaluation_of_its_step_to_the_bit(
        checked in lawful_design(),
        room_use in select(RoomUse::ALL.to_vec()),
    ) {
        let mut design = checked.design().clone();
        design.take_use(room_use);
        remedies_hold(&design.check().unwrap_or(checked));
    }

    #[test]
    fn the_least_set_dries_the_room_or_says_what_it_leaves(
        checked in lawful_design(),
        room_use in select(RoomUse::ALL.to_vec()),
    ) {
        let mut design = checked.design().clone();
        design.take_use(room_use);
        least_holds(&design.check().unwrap_or(checked));
    }
}

/// A page that solves aside and only inserts finds the same, slice by slice.
#[test]
fn slices_with_fields_solved_elsewhere_find_the_same() {
    let checked = CheckedDesign::default();
    let mut elsewhere = FieldCache::default();
    let place = evaluate(&checked, &mut elsewhere).cold_spots.weakest().expect("one").place;
    let mut own = FieldCache::without_solver();
    let mut search = RemedySearch::of_place(&checked, place);
    let (mut slices, mut solved) = (0, 0);
    loop {
        match search.slice(&mut own).expect("air and heat are known") {
            Slice::Done => break,
            Slice::Further => {}
            Slice::Solve(detail) => {
                assert!(own.get(&detail).is_none(), "it is wanted once");
                let field = elsewhere.get_or_solve(&detail).expect("a cache that solves");
                own.insert(*detail, field);
                solved += 1;
            }
        }
        slices += 1;
    }
    assert!(slices > solved && solved > 20, "{slices} slices, {solved} fields");
    let [tried, of] = search.progress();
    assert_eq!([tried, of], [steps_of(checked.design()).len(); 2]);
    let evaluation = evaluate(&checked, &mut elsewhere);
    let at_once = inchwise_core::tradeoff::remedies_for(&evaluation, place, &mut elsewhere);
    assert_eq!(search.found(), at_once.expect("a cache that solves"));
    assert_ne!(search.found()[0].place.risk, SurfaceRisk::None, "the default workshop is not dry");
    let none = remedies(&evaluation, &mut FieldCache::without_solver());
    assert_eq!(none, Err(NotTried::NoSolver));
}
