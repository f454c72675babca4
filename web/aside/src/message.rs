//! What the worker says: one array of numbers a message.

use inchwise_core::conduction::ConductionError;
use inchwise_core::design::EndWallTreatment;
use inchwise_core::detail::DetailField;
use inchwise_core::tradeoff::WallDepthPoint;
use inchwise_core::units::{Length, Power, Volume};

use crate::pack::{pack_field, unpack_field};

/// One message of the worker.
#[derive(Clone, Debug, PartialEq)]
pub enum Message {
    /// The field at a place, by its number in the envelope's list.
    Solved {
        /// Which place.
        place: usize,
        /// Its field.
        field: Box<DetailField>,
    },
    /// The field at a place could not be solved.
    Failed {
        /// Which place.
        place: usize,
        /// Why, as far as the way here keeps it.
        error: ConductionError,
    },
    /// One point of the curve over wall depth.
    CurvePoint {
        /// Under which treatment, by its number.
        treatment: usize,
        /// The point.
        point: WallDepthPoint,
    },
    /// What a year came to, packed as [`crate::YearAnswer`] packs it; empty if none can be reckoned. Its
    /// request's number is one of the years asked for.
    Year(Vec<f64>),
    /// Nothing is left to do.
    Done,
}

const SOLVED: f64 = 0.0;
const FAILED: f64 = 1.0;
const CURVE_POINT: f64 = 2.0;
const DONE: f64 = 3.0;
const YEAR: f64 = 4.0;

impl Message {
    /// The message as numbers, headed by the number of the request it answers.
    pub fn pack(&self, request: u32) -> Vec<f64> {
        let request = f64::from(request);
        match self {
            Self::Solved { place, field } => {
                let mut numbers = vec![request, SOLVED, *place as f64];
                numbers.extend(pack_field(field));
                numbers
            }
            Self::Failed { place, error } => {
                let residual = match error {
                    ConductionError::NotConverged { residual, .. } => *residual,
                    _ => f64::NAN,
                };
                vec![request, FAILED, *place as f64, residual]
            }
            Self::CurvePoint { treatment, point } => vec![
                request,
                CURVE_POINT,
                *treatment as f64,
                point.depth.value(),
                point.lost_volume.value(),
                point.loss.value(),
            ],
            Self::Year(numbers) => [&[request, YEAR], &numbers[..]].concat(),
            Self::Done => vec![request, DONE],
        }
    }

    /// The request's number and the message; `None` if these are not the numbers of one.
    pub fn unpack(numbers: &[f64]) -> Option<(u32, Self)> {
        let (&[request, kind], rest) = numbers.split_first_chunk::<2>()?;
        let whole =
            |number: f64| (number >= 0.0 && number.fract() == 0.0).then_some(number as usize);
        let message = if kind == SOLVED {
            let (&place, field) = rest.split_first()?;
            Self::Solved { place: whole(place)?, field: Box::new(unpack_field(field)?) }
        } else if kind == FAILED {
            let &[place, residual] = rest.first_chunk::<2>()?;
            // A lawful design draws lawful problems, so all that can fail is to converge.
            let error = ConductionError::NotConverged { residual, iterations: 0 };
            Self::Failed { place: whole(place)?, error }
        } else if kind == CURVE_POINT {
            let &[treatment, depth, lost, loss] = rest.first_chunk::<4>()?;
            let treatment = whole(treatment)?;
            EndWallTreatment::ALL.get(treatment)?;
            Self::CurvePoint {
                treatment,
                point: WallDepthPoint {
                    depth: Length::new(depth),
                    lost_volume: Volume::new(lost),
                    loss: Power::new(loss),
                },
            }
        } else if kind == YEAR {
            Self::Year(rest.to_vec())
        } else if kind == DONE {
            Self::Done
        } else {
            return None;
        };
        Some((whole(request)? as u32, message))
    }
}
