//! Bounds of quantities. A room lists in one table what its formulas are stated for, and from that
//! table come the check, the sentence for a developer and the stable code of a refusal.

mod interval;
mod quantity;
mod refusals;
mod words;

pub use interval::Bounds;
pub(crate) use quantity::bounded_quantities;
pub use quantity::{BoundedQuantity, OutOfRange};
pub(crate) use refusals::Refusals;
pub use refusals::{Refusal, Refused};
pub(crate) use words::{Figure, write_unit, write_words};

#[cfg(test)]
mod tests {
    use super::*;

    bounded_quantities! {
        /// What a test asks about.
        Asked {
            /// With a unit.
            AirPressure: "air_pressure", "Pa", Bounds::between(20_000.0, 200_000.0);
            /// Without.
            Effectiveness: "effectiveness", "", Bounds::above(0.0, 1.0);
        }
    }

    #[test]
    fn a_table_names_all_its_quantities() {
        let keys: Vec<_> = Asked::ALL.iter().map(|asked| asked.key()).collect();
        assert_eq!(keys, ["air_pressure", "effectiveness"]);
    }

    #[test]
    fn a_value_is_passed_or_refused_with_what_is_allowed() {
        assert_eq!(Asked::AirPressure.check(20_000.0), Ok(20_000.0));
        let refused = Asked::AirPressure.check(5.0).unwrap_err();
        assert_eq!((refused.given, refused.code()), (5.0, "out_of_range"));
        let said = "air pressure of 5 Pa is out of range: it must be from 20000 to 200000 Pa";
        assert_eq!(refused.to_string(), said);
        let refused = Asked::Effectiveness.check(0.0).unwrap_err();
        let said = "effectiveness of 0 is out of range: it must be above 0 and up to 1";
        assert_eq!(refused.to_string(), said);
        let tighter = Bounds::strictly_between(0.2, 0.5);
        let refused = Asked::Effectiveness.check_within(0.5, tighter).unwrap_err();
        assert!(refused.to_string().ends_with("it must be above 0.2 and below 0.5"));
        assert_eq!(Bounds::between(1e-18, 0.001).to_string(), "from 1e-18 to 0.001");
    }

    #[test]
    fn ends_belong_to_what_is_allowed_or_not_and_no_number_never_does() {
        let all = [
            Bounds::between(0.0, 1.0),
            Bounds::above(0.0, 1.0),
            Bounds::below(0.0, 1.0),
            Bounds::strictly_between(0.0, 1.0),
        ];
        let contain = |value: f64| all.map(|bounds| bounds.contains(value));
        assert_eq!(contain(0.0), [true, false, true, false]);
        assert_eq!(contain(1.0), [true, true, false, false]);
        assert_eq!(contain(0.5), [true; 4]);
        assert_eq!(contain(f64::NAN), [false; 4]);
        assert!(all.iter().all(|bounds| (bounds.minimum(), bounds.maximum()) == (0.0, 1.0)));
        assert_eq!(all[2].to_string(), "from 0 to below 1");
        assert_eq!(Bounds::at_least(3.0).to_string(), "at least 3");
        assert!(!Bounds::at_least(3.0).contains(f64::INFINITY));
    }
}
