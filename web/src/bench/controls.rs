//! The four controls: the box, foam on the walls, foam under the roof, the corner castings. A wide
//! bench shows them all, a narrow one the chosen one.

use inchwise_core::design::{Design, EndWallTreatment, Surface};
use inchwise_core::freight_box::BoxSize;
use leptos::prelude::*;

use super::changes;
use super::treatment::Treatment;
use crate::drawing::cost;
use crate::measure::{Notation, Scale, UnitSystem};
use crate::state::{Change, Control, Planner};
use crate::ui::{CEILING, Choice, Entry, Select, Slider, WALLS, bench_step, chooser};

const ALL: [Control; 4] = [Control::Box, Control::Walls, Control::Ceiling, Control::Castings];

impl Control {
    /// Stable name in styles and tests.
    const fn key(self) -> &'static str {
        match self {
            Self::Box => "box",
            Self::Walls => "walls",
            Self::Ceiling => "ceiling",
            Self::Castings => "castings",
        }
    }
}

/// The box.
pub const BOX: Choice = chooser!(
    "box",
    box_size,
    BoxSize,
    |language| language.controls().box_size,
    |language, size| language.box_size(size)
);

/// The names of the controls with what is chosen, for a narrow bench.
#[component]
pub fn Chips() -> impl IntoView {
    let planner = Planner::here();
    let said = move |control: Control| {
        let notation = planner.notation();
        let words = notation.language.bench();
        planner.design.with(|design| match control {
            Control::Box => notation.language.box_size(design.box_size).to_owned(),
            Control::Walls => {
                words.chip_walls.with(&[&notation.length_bare(design.side_wall_foam)])
            }
            Control::Ceiling => {
                words.chip_ceiling.with(&[&notation.length_bare(design.ceiling_foam)])
            }
            Control::Castings => {
                let all = EndWallTreatment::ALL.iter().zip(short_names(notation));
                let name = all.filter(|(it, _)| **it == design.end_wall_treatment);
                words.chip_castings.with(&[name.map(|(_, name)| name).next().unwrap_or_default()])
            }
        })
    };
    let chip = move |control: Control| {
        let is_shown = move || planner.view.control.get() == control;
        view! {
            <button
                type="button"
                class="chip"
                data-testid=["chip-", control.key()].concat()
                aria-pressed=move || is_shown().to_string()
                on:click=move |_| planner.view.control.set(control)
            >
                {move || said(control)}
            </button>
        }
    };
    let nothing_to_undo = move || planner.history.past.with(Vec::is_empty);
    view! {
        <div class="chips">
            {ALL.map(chip).into_iter().collect_view()}
            <button
                type="button"
                class="chip"
                data-testid="chip-undo"
                aria-disabled=move || nothing_to_undo().to_string()
                on:click=move |_| planner.undo()
            >
                {"↶ "} {move || planner.language.get().bench().undo_short}
            </button>
        </div>
    }
}

fn short_names(notation: Notation) -> [&'static str; 4] {
    let short = notation.language.bench().treatments_short;
    EndWallTreatment::ALL
        .iter()
        .map(|treatment| match treatment {
            EndWallTreatment::CoverCastings => short[0],
            EndWallTreatment::BuildOutEndWalls => short[1],
            EndWallTreatment::DropCeiling => short[2],
            EndWallTreatment::LeaveBare => short[3],
        })
        .collect::<Vec<_>>()
        .try_into()
        .unwrap_or([""; 4])
}

/// The controls.
#[component]
pub fn Controls() -> impl IntoView {
    let planner = Planner::here();
    let is_shown = move |control: Control| planner.view.control.get() == control;
    view! {
        <div class="control box-control" class:shown=move || is_shown(Control::Box) data-testid="control-box-size">
            <Select choice=BOX/>
            <Units/>
        </div>
        <div class="control" class:shown=move || is_shown(Control::Walls) data-testid="control-wall-foam">
            <Foam entry=Entry::Design(WALLS) hand="walls" surface=Surface::SideWall change=Change::Walls/>
        </div>
        <div class="control" class:shown=move || is_shown(Control::Ceiling) data-testid="control-ceiling-foam">
            <Foam entry=Entry::Design(CEILING) hand="roof" surface=Surface::Ceiling change=Change::Ceiling/>
        </div>
        <div class="control" class:shown=move || is_shown(Control::Castings)>
            <Treatment/>
        </div>
    }
}

/// Metric or imperial.
#[component]
fn Units() -> impl IntoView {
    let planner = Planner::here();
    let option = move |units: UnitSystem| {
        let name = move || {
            let words = planner.language.get().controls();
            match units {
                UnitSystem::Metric => words.metric,
                UnitSystem::Imperial => words.imperial,
            }
        };
        view! {
            <label>
                <input
                    type="radio"
                    name="units"
                    value=units.key()
                    data-testid=["units-", units.key()].concat()
                    prop:checked=move || planner.units.get() == units
                    on:change=move |_| planner.units.set(units)
                />
                <span>{name}</span>
            </label>
        }
    };
    view! {
        <fieldset class="switch" data-testid="units-switch">
            <legend class="spoken">{move || planner.language.get().controls().units}</legend>
            {option(UnitSystem::Metric)}
            {option(UnitSystem::Imperial)}
        </fieldset>
    }
}

/// The number that stands a bench step on from another.
fn a_step_on(scale: &Scale, units: UnitSystem, from: f64, sign: i64) -> f64 {
    let step = bench_step(units, scale);
    let position = scale.position(from);
    // On the next whole step, not a step from between two.
    let to = if sign > 0 {
        position.div_euclid(step) * step + step
    } else {
        (position - 1).div_euclid(step) * step
    };
    scale.si(to.clamp(scale.lowest, scale.highest))
}

/// Foam of a surface: less, the ruler, more, and what one more step would do.
#[component]
fn Foam(
    entry: Entry,
    hand: &'static str,
    surface: Surface,
    change: fn(f64) -> Change,
) -> impl IntoView {
    let planner = Planner::here();
    let shown = move || planner.inputs.with(|inputs| entry.shown(inputs)).unwrap_or_default();
    let next = Memo::new(move |_| {
        let units = planner.units.get();
        entry.scale(units).map(|scale| a_step_on(&scale, units, shown(), 1))
    });
    planner.variations.ask(move || {
        let Some(next) = next.get() else { return Vec::new() };
        let mut inputs = planner.inputs.get();
        entry.put(&mut inputs, Some(next));
        vec![(change(next), inputs.design)]
    });
    let free_until = Signal::derive(move || {
        planner.design.with(|design: &Design| design.stack(surface).frame_face().value())
    });
    let said = Signal::derive(move || {
        let notation = planner.notation();
        planner.design.with(|design| cost(&design.stack(surface), notation))
    });
    let one_more = move || {
        let notation = planner.notation();
        let words = notation.language.bench();
        let next = next.get()?;
        let by = entry.said(next - shown(), notation);
        let Some(to) = planner.variations.of(&change(next)) else {
            return Some(words.one_more.with(&[&by, words.does_not_fit]));
        };
        let mut told = changes(&to, &planner.headline.get(), notation).join(", ");
        if to.solved.is_none() {
            told.push_str(", …");
        }
        Some(words.one_more.with(&[&by, &told]))
    };
    let button = move |sign: i64| {
        let name = move || {
            let notation = planner.notation();
            let words = notation.language.bench();
            let scale = entry.scale(notation.units);
            let by = scale.map(|scale| {
                let step = bench_step(notation.units, &scale);
                entry.said(scale.si(step), notation)
            });
            let phrase = if sign < 0 { words.less } else { words.more };
            phrase.with(&[&entry.label(notation.language), &by.unwrap_or_default()])
        };
        let step = move |_| {
            entry.step_by(planner, |scale| {
                let from = untrack(shown);
                let to = a_step_on(scale, planner.units.get_untracked(), from, sign);
                scale.position(to) - scale.position(from)
            });
        };
        view! {
            <button type="button" class="step" data-testid=[hand, if sign < 0 { "-less" } else { "-more" }].concat() aria-label=name on:click=step>
                {if sign < 0 { "−" } else { "+" }}
            </button>
        }
    };
    let fault = move || entry.fault(planner);
    view! {
        <div class="foam">
            {button(-1)}
            <div class="foam-ruler">
                <p class="foam-name">
                    <b>{move || entry.label(planner.language.get())}</b>
                    <b class="foam-value">{move || entry.said(shown(), planner.notation())}</b>
                </p>
                <Slider entry hand free_until said/>
                <p class="foam-cost">{move || said.get()}</p>
            </div>
            {button(1)}
            <p class="one-more">{one_more}</p>
            {move || {
                let fault = fault();
                (!fault.is_empty()).then(|| view! { <p class="fault">{fault}</p> })
            }}
        </div>
    }
}
