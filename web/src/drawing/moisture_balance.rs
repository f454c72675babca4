//! Where the water goes: what comes in, what air takes, what lands as frost or water, drawn.

use inchwise_core::units::MassFlow;

use super::geometry::{Pen, Rect};
use super::paper::{Label, Picture, figure};
use super::pattern::Patterns;
use super::plot::Plotted;
use crate::dom::El;
use crate::measure::Notation;
use crate::state::State;
use crate::text::Language;

/// From one bar to the next, and the height of a bar.
const ROW: f64 = 96.0;
const BAR: f64 = 40.0;
const WIDTH: f64 = 1000.0;

/// The parts of the balance; what goes out adds up to what comes in.
#[derive(Clone, PartialEq)]
struct Balance {
    given: MassFlow,
    air: MassFlow,
    frost: MassFlow,
    water: MassFlow,
    anywhere: MassFlow,
}

impl Plotted for Balance {
    const NAME: &'static str = "balance";

    fn of(state: State) -> Self {
        state.look(|outcome| {
            let Some(balance) = outcome.balance() else { return Self::nothing() };
            let cold_spots = &balance.humidity.cold_spots;
            Self {
                given: cold_spots.source,
                air: cold_spots.carried_out,
                frost: cold_spots.frosting(),
                water: cold_spots.dripping(),
                anywhere: cold_spots.anywhere,
            }
        })
    }

    fn paper(&self) -> Rect {
        Rect::new(0.0, 0.0, WIDTH, ROW * 5.0)
    }

    fn told(&self, notation: Notation) -> String {
        let words = notation.language.damp_pictures();
        if self.given == MassFlow::ZERO {
            return words.no_moisture.to_owned();
        }
        let written = |flow| notation.moisture_flow(flow);
        words.balance_told.with(&[
            &written(self.given),
            &written(self.air),
            &written(self.frost),
            &written(self.water + self.anywhere),
        ])
    }

    fn labels(&self, notation: Notation) -> Vec<Label> {
        let words = notation.language.damp_pictures();
        let flows = [self.given, self.air, self.frost, self.water, self.anywhere];
        let names = [words.comes_in, words.by_air, words.as_frost, words.as_water, words.anywhere];
        let rows = self.bars().into_iter().zip(flows).zip(names);
        // What lands anywhere is rare: it is named where there is any.
        let named =
            rows.enumerate().filter(|(row, ((_, flow), _))| *row < 4 || *flow > MassFlow::ZERO);
        named
            .map(|(_, row)| row)
            .map(|((bar, flow), name)| {
                let mut label = Label::new(0.0, bar.top - 22.0, "after", format!(" {name}"));
                label.figure = notation.moisture_flow(flow);
                label
            })
            .collect()
    }

    fn picture() -> Picture<Self> {
        let patterns = Patterns { name: Self::NAME, unit: 1.7 };
        let mut picture = Picture::new();
        picture.elements.push(patterns.defined());
        picture
            .path("given", |balance: &Balance| Pen::new().rect(&balance.bars()[0]).done())
            .path("by-air", |balance| Pen::new().rect(&balance.bars()[1]).done())
            .painted("landed frost", &patterns.foam(), |balance| {
                Pen::new().rect(&balance.bars()[2]).done()
            })
            .painted("landed", &patterns.lost(), |balance| {
                Pen::new().rects(&balance.bars()[3..]).done()
            })
            .path("fine", |balance| {
                // From the end of each bar down to the start of the next.
                let bars = balance.bars();
                bars.windows(2)
                    .skip(1)
                    .fold(Pen::new(), |pen, pair| {
                        pen.between(pair[0].right, pair[0].bottom, pair[0].right, pair[1].bottom)
                    })
                    .done()
            });
        picture
    }
}

impl Balance {
    const fn nothing() -> Self {
        let zero = MassFlow::ZERO;
        Self { given: zero, air: zero, frost: zero, water: zero, anywhere: zero }
    }

    /// What is out, one after another.
    const fn outs(&self) -> [MassFlow; 4] {
        [self.air, self.frost, self.water, self.anywhere]
    }

    /// The whole that all widths are parts of.
    fn whole(&self) -> f64 {
        let outs: f64 = self.outs().iter().map(|flow| flow.value().max(0.0)).sum();
        self.given.value().max(outs)
    }

    fn bar(&self, row: usize, from: f64, flow: MassFlow) -> Rect {
        let whole = self.whole();
        let x = |value: f64| if whole > 0.0 { value / whole * WIDTH } else { 0.0 };
        let top = ROW * row as f64 + (ROW - BAR);
        Rect::new(x(from), top, x(from + flow.value().max(0.0)), top + BAR)
    }

    /// The bar of what comes in, then those of what goes out, each where the last one ended.
    fn bars(&self) -> [Rect; 5] {
        let mut from = 0.0;
        let mut bars = [self.bar(0, 0.0, self.given); 5];
        for (index, flow) in self.outs().into_iter().enumerate() {
            bars[index + 1] = self.bar(index + 1, from, flow);
            from += flow.value().max(0.0);
        }
        bars
    }
}

/// The balance under its title.
pub fn moisture_balance(state: State, language: Language) -> El {
    let words = language.damp_pictures();
    figure(Balance::NAME, words.balance, &[Balance::drawn(state, words.balance)])
        .class_with("refining", move || state.look(|outcome| outcome.is_refining()))
}
