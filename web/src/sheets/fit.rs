//! Fit: whether you and your things stand in it, the clear sizes, and what took each millimetre.

use inchwise_core::caution::Caution;
use inchwise_core::design::Field;
use inchwise_core::units::Length;
use leptos::prelude::*;

use super::part::{Head, Minds, Part, figure, words};
use crate::bench::step_by;
use crate::drawing;
use crate::measure::Notation;
use crate::state::Planner;
use crate::ui::NumberFields;
use inchwise_core::evaluate::Evaluation;

const CORNERS: &[Field] = &[Field::CastingCover];

/// The numbers of the design that it holds.
pub const FIELDS: &[&[Field]] = &[CORNERS];

/// The shortest and the tallest who may say how tall they are, and a step.
const HEIGHTS: [Length; 3] = [Length::mm(1000.0), Length::mm(2300.0), Length::mm(10.0)];

/// The sheet.
pub fn sheet(planner: Planner) -> AnyView {
    let sizes = move || {
        let notation = planner.notation();
        let words = notation.language.sheets();
        let rows = planner.look(|evaluation| {
            let (bare, clear) = (&evaluation.room.bare, &evaluation.room.clear);
            [(bare.length, clear.length), (bare.width, clear.width), (bare.height, clear.height)]
        });
        let row = |((bare, clear), name): ((Length, Length), &'static str)| {
            view! {
                <tr>
                    <th scope="row">{name}</th>
                    <td class="number">{notation.length(bare)}</td>
                    <td class="number"><b>{notation.length(clear)}</b></td>
                    <td class="number">{notation.length(bare - clear)}</td>
                </tr>
            }
        };
        rows.into_iter().zip(words.directions).map(row).collect_view()
    };
    let columns = move || {
        let words = planner.language.get().sheets();
        words
            .size_columns
            .map(|it| view! { <th scope="col" class="number">{it}</th> })
            .collect_view()
    };
    let about = move || {
        let notation = planner.notation();
        planner.look(|it| notation.dimensions(&it.room.clear))
    };
    view! {
        <Head about=Signal::derive(about)/>
        <OwnHeight/>
        <Part test_id="sizes" heading=|language| language.sheets().sizes>
            <table>
                <thead><tr><td>{""}</td>{columns}</tr></thead>
                <tbody>{sizes}</tbody>
            </table>
            <dl class="facts">
                <div>
                    <dt>{words(planner, |language| language.answer().headroom)}</dt>
                    <dd>{figure(planner, headroom)}</dd>
                </div>
                <div>
                    <dt>{words(planner, |language| language.answer().floor)}</dt>
                    <dd>{figure(planner, |it, notation| notation.area(it.room.floor_area))}</dd>
                </div>
            </dl>
            <p class="hint">{figure(planner, kind_of_sizes)}</p>
        </Part>
        <Furniture/>
        {move || {
            planner.language.track();
            drawing::ladder(planner)
        }}
        <Part test_id="corners" heading=|language| language.folds().castings>
            <p class="hint">{figure(planner, hidden_from)}</p>
            <NumberFields fields=CORNERS/>
            <Minds cautions=&[Caution::NominalSizes, Caution::BareCastings, Caution::BareCastingsBehindLining]/>
        </Part>
    }
    .into_any()
}

/// How tall the visitor is, and what is left over the head.
#[component]
fn OwnHeight() -> impl IntoView {
    let planner = Planner::here();
    let words = move || planner.language.get().sheets();
    let tall = move || planner.inputs.with(|inputs| inputs.own_height);
    let over = move || {
        let notation = planner.notation();
        let left = planner.look(|it| it.room.clear.height) - tall();
        if left >= Length::ZERO {
            words().over_head.with(&[&notation.length(left)])
        } else {
            words().under_head.with(&[&notation.length(-left)])
        }
    };
    let by = move |sign: f64| {
        planner.change(Some("own-height"), |inputs| {
            let [least, most, step] = HEIGHTS;
            let step = step_by(planner.units.get_untracked(), step);
            let to = inputs.own_height + step * sign;
            inputs.own_height = to.max(least).min(most);
        });
    };
    let name = move |more: bool| {
        let notation = planner.notation();
        let step = notation.length(step_by(notation.units, HEIGHTS[2]));
        let controls = notation.language.controls();
        let phrase = if more { controls.more } else { controls.less };
        phrase.with(&[words().own_height, &step])
    };
    view! {
        <div class="field" data-testid="own-height">
            <span>{move || words().own_height}</span>
            <div class="moves">
                <button type="button" class="nudge" aria-label=move || name(false) on:click=move |_| by(-1.0)>{"−"}</button>
                <output class="reading">{move || planner.notation().length(tall())}</output>
                <button type="button" class="nudge" aria-label=move || name(true) on:click=move |_| by(1.0)>{"+"}</button>
            </div>
            <p class="hint" role="status">{over}</p>
        </div>
    }
}

/// What people ask whether it fits: length and depth.
const FURNITURE: [[Length; 2]; 3] = [
    [Length::mm(1800.0), Length::mm(750.0)],
    [Length::mm(2000.0), Length::mm(900.0)],
    [Length::mm(1200.0), Length::mm(800.0)],
];

/// Whether a bench, a bed or a table stands across the room, and what is left to walk past.
#[component]
fn Furniture() -> impl IntoView {
    let planner = Planner::here();
    let rows = move || {
        let notation = planner.notation();
        let words = notation.language.sheets();
        let clear = planner.look(|it| it.room.clear);
        let row = |([long, deep], name): ([Length; 2], &'static str)| {
            let past = clear.width - deep;
            let said = if long <= clear.length && past > Length::ZERO {
                words.furniture_fits.with(&[&notation.length(past)])
            } else {
                words.furniture_not.to_owned()
            };
            let size = [&notation.length_bare(long), " × ", &notation.length(deep)].concat();
            view! { <div><dt>{name} {" "} {size}</dt><dd>{said}</dd></div> }
        };
        FURNITURE.into_iter().zip(words.furniture_names).map(row).collect_view()
    };
    view! {
        <Part test_id="furniture" heading=|language| language.sheets().furniture>
            <dl class="facts">{rows}</dl>
        </Part>
    }
}

fn headroom(evaluation: &Evaluation, notation: Notation) -> String {
    let words = notation.language.answer();
    let room = &evaluation.room;
    let mut written = notation.length(room.clear.height);
    let mut also = |phrase: crate::text::Phrase, height| {
        written.push_str(", ");
        written.push_str(&phrase.with(&[&notation.length(height)]));
    };
    if room.front_corner.stands_out() || room.door_corner.stands_out() {
        also(words.under_corners, room.headroom_under_corners);
    }
    also(words.under_header, room.headroom_under_header);
    written
}

fn kind_of_sizes(evaluation: &Evaluation, notation: Notation) -> String {
    let words = notation.language.answer();
    let nominal = evaluation.cautions.contains(&Caution::NominalSizes);
    if nominal { words.nominal } else { words.measured }.to_owned()
}

/// From where on there is nothing to choose about the castings.
fn hidden_from(evaluation: &Evaluation, notation: Notation) -> String {
    let words = notation.language.controls();
    let hidden = &evaluation.room.castings_hidden_from;
    if hidden.hidden_already {
        return words.hidden_already.to_owned();
    }
    words.hidden_from.with(&[&notation.length(hidden.ceiling), &notation.length(hidden.side_wall)])
}
