//! What took each millimetre, as bars to one scale with the clear room broken out of the middle.

use inchwise_core::evaluate::Evaluation;
use inchwise_core::room::{LadderStep, Taker};

/// One of the three ways through the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Direction {
    /// From the front end to the cargo doors.
    Length,
    /// From one side wall to the other.
    Width,
    /// From the roof to the floor.
    Height,
}

/// A rung on a bar of [`LadderBar::WIDTH`] units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BarRung {
    /// What took it, where and how much.
    pub step: LadderStep,
    /// Where it starts on the bar.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
}

/// One direction's bar.
#[derive(Clone, Debug, PartialEq)]
pub struct LadderBar {
    /// Which direction.
    pub direction: Direction,
    /// From steel to steel, in order; the clear room's rung is broken.
    pub rungs: Vec<BarRung>,
}

impl LadderBar {
    /// Units from one end of every bar to the other.
    pub const WIDTH: f64 = 1000.0;
    /// The least that the broken rung takes.
    const ROOM: f64 = 310.0;
    /// Millimetres taken for which the bars have a scale each, so that the scale holds still while
    /// foam is moved.
    const SCALES: [f64; 6] = [160.0, 240.0, 320.0, 480.0, 720.0, 1080.0];

    /// The three bars of an evaluated design, to one scale.
    pub fn all(evaluation: &Evaluation) -> [Self; 3] {
        let room = &evaluation.room;
        let ladders = [
            (Direction::Length, &room.length_ladder),
            (Direction::Width, &room.width_ladder),
            (Direction::Height, &room.height_ladder),
        ];
        let most = ladders.iter().map(|(_, steps)| taken(steps)).fold(0.0, f64::max);
        let scale_for = Self::SCALES.iter().copied().find(|&scale| scale >= most).unwrap_or(most);
        let scale = (Self::WIDTH - Self::ROOM) / scale_for;
        ladders.map(|(direction, steps)| Self { direction, rungs: rungs(steps, scale) })
    }
}

/// Everything but the room, mm.
fn taken(steps: &[LadderStep]) -> f64 {
    steps.iter().filter(|step| step.taker != Taker::ClearRoom).map(|step| step.taken.as_mm()).sum()
}

fn rungs(steps: &[LadderStep], scale: f64) -> Vec<BarRung> {
    let room = LadderBar::WIDTH - taken(steps) * scale;
    let mut at = 0.0;
    steps
        .iter()
        .map(|&step| {
            let from = at;
            at += match step.taker {
                Taker::ClearRoom => room,
                _ => step.taken.as_mm() * scale,
            };
            BarRung { step, from, to: at }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::samples;
    use super::*;

    #[test]
    fn bars_run_from_steel_to_steel_on_one_scale() {
        for evaluation in samples::evaluations() {
            let bars = LadderBar::all(&evaluation);
            let mut scales = Vec::new();
            for bar in &bars {
                assert_eq!(bar.rungs[0].from, 0.0);
                let last = bar.rungs.last().unwrap();
                assert!((last.to - LadderBar::WIDTH).abs() < 1e-9);
                for rung in &bar.rungs {
                    if rung.step.taker == Taker::ClearRoom {
                        assert!(rung.to - rung.from >= LadderBar::ROOM - 1e-9);
                    } else {
                        scales.push((rung.to - rung.from) / rung.step.taken.as_mm());
                    }
                }
            }
            assert!(scales.iter().all(|scale| (scale - scales[0]).abs() < 1e-6));
        }
    }

    #[test]
    fn a_thin_board_stays_visible() {
        let bars = LadderBar::all(&samples::default_evaluation());
        let board = bars[1].rungs.iter().find(|rung| rung.step.taker == Taker::Lining).unwrap();
        // A twenty-fifth of the bar: 14 px on the narrowest phone.
        assert!(board.to - board.from > 40.0, "{board:?}");
    }
}
