//! Figures that can be asked about, and the rows that show them.

use super::how::{Open, disclosure};
use crate::dom::{El, el};
use crate::reactive::{Scope, keep_up};
use crate::state::State;

/// How a figure comes about.
#[derive(Debug)]
pub struct Working {
    /// The formula in words.
    pub rule: &'static str,
    /// The numbers put in, a step each.
    pub steps: Vec<String>,
    /// Where the formula and its constants come from.
    pub source: String,
}

/// A figure's name or sentence that unfolds its working.
pub fn asked<K: Copy + PartialEq + 'static>(
    state: State,
    figure: K,
    open: Open<K>,
    summary: El,
    working: impl Fn() -> Option<Working> + 'static,
) -> El {
    let how = move || state.notation().language.losses().how.to_owned();
    let summary = summary.text("\u{a0}").child(&el("span").class("how").text_with(how));
    disclosure(figure, open, summary, move || working().map_or(Vec::new(), |it| it.shown(state)))
}

impl Working {
    fn shown(&self, state: State) -> Vec<El> {
        let words = state.notation().language.workings();
        let steps: Vec<El> = self.steps.iter().map(|step| el("li").text(step)).collect();
        vec![
            el("p").text(self.rule),
            el("ul").with(&steps),
            el("p").class("hint").text(&words.source.with(&[&self.source])),
        ]
    }
}

/// A row of two texts.
pub struct Row<K> {
    /// What it is a figure of.
    pub figure: K,
    /// All of it.
    pub whole: El,
    /// Where the texts stand.
    pub cells: [El; 2],
}

/// Rows that keep up; only what changed is written, and a row once made is kept for when its figure comes
/// back.
pub fn rows<K: Copy + PartialEq + 'static>(
    list: El,
    make: impl Fn(K) -> Row<K> + 'static,
    write: impl Fn() -> Vec<(K, [String; 2])> + 'static,
) -> El {
    let held = list.clone();
    let scope = Scope::present();
    let mut made: Vec<(Row<K>, [String; 2])> = Vec::new();
    let mut shown: Vec<K> = Vec::new();
    keep_up(Box::new(move || {
        let lines = write();
        let now: Vec<K> = lines.iter().map(|(figure, _)| *figure).collect();
        for (figure, texts) in lines {
            if !made.iter().any(|(row, _)| row.figure == figure) {
                // Rows outlive this run: a row that is kept must keep up.
                made.push((scope.with(|| make(figure)), Default::default()));
            }
            let Some((row, last)) = made.iter_mut().find(|(row, _)| row.figure == figure) else {
                continue;
            };
            for ((cell, last), text) in row.cells.iter().zip(last).zip(texts) {
                if *last != text {
                    cell.say(&text);
                    *last = text;
                }
            }
        }
        if now != shown {
            let whole = now.iter().filter_map(|figure| {
                made.iter().find(|(row, _)| row.figure == *figure).map(|(row, _)| row.whole.clone())
            });
            held.refill(&whole.collect::<Vec<_>>());
            shown = now;
        }
    }));
    list
}
