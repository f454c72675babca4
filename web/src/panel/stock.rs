//! The depths a frame's members are sold in, one touch each.

use inchwise_core::design::{Field, STOCK_MEMBER_DEPTHS};
use inchwise_core::units::Length;

use crate::dom::{El, el};
use crate::reactive::keep_up;
use crate::state::State;
use crate::text::Language;

/// Buttons for the stock depths of a member; nothing for a field that is no member's depth.
pub fn stock_depths(state: State, language: Language, field: Field) -> Option<El> {
    if !matches!(field, Field::StudDepth | Field::JoistDepth) {
        return None;
    }
    let words = language.folds();
    let buttons = STOCK_MEMBER_DEPTHS.map(|depth| button(state, field, depth));
    let named = words.stock_depths_of.with(&[language.field(field)]);
    let row = el("div").class("stock").attr("role", "group").attr("aria-label", &named);
    Some(row.child(&el("span").class("hint").text(words.stock_depths)).with(&buttons))
}

fn button(state: State, field: Field, depth: Length) -> El {
    let button = el("button")
        .attr("type", "button")
        .class("nudge")
        .on("click", move |_| state.put(field, Some(depth.value())))
        .text_with(move || state.notation().length(depth));
    let pressed = button.clone();
    keep_up(Box::new(move || {
        let is_chosen = state.chosen(|design| design.get(field)) == Some(depth.value());
        pressed.set("aria-pressed", if is_chosen { "true" } else { "false" });
    }));
    button
}
