//! Dry: whether it drips in this room, where, and what helps.

mod remedies;
mod spots;

use inchwise_core::design::Field;
use leptos::prelude::*;

use super::part::{Head, Minds, Part};
use crate::bench::verdict_words;
use crate::drawing;
use crate::state::{DrawingName, Planner};
use crate::ui::NumberFields;
use inchwise_core::caution::Caution;
use remedies::Helps;
use spots::SpotList;

const SPELL: &[Field] = &[Field::ColdSpellDays];

/// The numbers of the design that it holds.
pub const FIELDS: &[&[Field]] = &[SPELL];

/// The sheet.
pub fn sheet(planner: Planner) -> AnyView {
    let about = move || {
        let notation = planner.notation();
        planner.look(|evaluation| {
            let design = evaluation.checked.design();
            let words = notation.language.spots();
            words.list_told.with(&[
                &notation.temperature(design.outdoor_temperature),
                &notation.temperature(design.indoor_temperature),
            ])
        })
    };
    let verdict = move || {
        let notation = planner.notation();
        planner.headline.get().verdict().map_or_else(
            || notation.language.bench().working.to_owned(),
            |verdict| verdict_words(&verdict, notation),
        )
    };
    // The drawing shows the place already where it is the one on the bench.
    let is_on_bench = move || planner.view.drawing.get() == DrawingName::Corner;
    view! {
        <Head about=Signal::derive(about)/>
        <p class="verdict" data-testid="verdict">{verdict}</p>
        <Part test_id="spots" heading=|language| language.sheets().cold_places>
            <SpotList/>
        </Part>
        <Part test_id="helps" heading=|language| language.sheets().helps>
            <Helps/>
        </Part>
        {move || (!is_on_bench()).then(|| view! {
            <section class="part picture-part">{drawing::corner(planner)}</section>
        })}
        <NumberFields fields=SPELL/>
        <Minds cautions=&[Caution::WetUse, Caution::BareCastings, Caution::BareCastingsBehindLining, Caution::ThinFoamForVapour]/>
    }
    .into_any()
}
