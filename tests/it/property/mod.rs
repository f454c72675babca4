//! What must hold for any input, tried on many.

mod conduction;
mod conduction_reading;
mod depth_grid;
mod design;
mod detail;
mod evaluation;
mod heat_loss;
mod humidity;
mod moisture;
mod one_room;
mod place;
mod psychro;
mod reading;
mod refusals;
mod room;
mod tradeoff;
mod ventilation;
mod waves;
mod year;

use proptest::prelude::*;

/// Any number at all, the sensible ones often enough.
fn anything() -> impl Strategy<Value = f64> {
    prop_oneof![any::<f64>(), -300.0..400.0, 0.0..1.0, 0.0..250_000.0, Just(0.0), Just(f64::NAN)]
}
