//! Vary choices and see what follows. Whatever is said of a variation is an evaluation of it
//! ([`evaluate_with`](crate::evaluate::evaluate_with)); nothing is reckoned here.
//!
//! - [`wall_depth_point`]: room against heat along the depth of the walls;
//! - [`steps_of`]: the single things that a workshop would change next about a design;
//! - [`remedies`], [`remedies_for`]: which of them help a cold place, each tried before it is offered;
//! - [`least_that_dries`]: the steps that make the room dry in its own use together.
//!
//! Fields take long. [`RemedySearch`] and [`DryingSearch`] are the last two in slices, none longer than one
//! field or one evaluation.
//!
//! ```
//! use inchwise_core::{design::CheckedDesign, detail::FieldCache, evaluate::evaluate};
//! use inchwise_core::{envelope::ThermalBridge, humidity::SpotPlace, tradeoff::remedies_for};
//!
//! let mut cache = FieldCache::default();
//! let evaluation = evaluate(&CheckedDesign::default(), &mut cache);
//! let place = SpotPlace::Detail(ThermalBridge::FloorMember);
//! let floor = remedies_for(&evaluation, place, &mut cache).unwrap();
//! let mut of_surface = floor[0].offered.iter().filter(|remedy| !remedy.step.kind.acts_on_air());
//! let best = of_surface.next().unwrap();
//! assert!(best.place.after.temperature_factor > best.place.before.temperature_factor);
//! println!("{}: {:?}", best.step.kind.key(), best.step.changes);
//! ```

mod all_surfaces;
mod drying;
mod drying_search;
mod figures;
mod pruning;
mod remedy;
mod remedy_search;
mod round;
mod single;
mod slice;
mod step;
mod step_kind;
mod steps;
mod wall_depth;

pub use drying::{Drying, least_that_dries};
pub use drying_search::DryingSearch;
pub use figures::{Pair, PlaceFigures, RoomFigures};
pub use remedy::{
    LEAST_DRYING, LEAST_RISE, NotOffered, PlaceRemedies, Remedy, WhyNot, remedies, remedies_for,
};
pub use remedy_search::RemedySearch;
pub use slice::{NotTried, Slice};
pub use step::{Change, Step};
pub use step_kind::StepKind;
pub use steps::steps_of;
pub use wall_depth::{WallDepthPoint, point_of, wall_depth_point, with_wall_depth};
