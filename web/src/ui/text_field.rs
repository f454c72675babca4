//! A choice that is a text: the currency, the day of the prices.

use leptos::prelude::*;

use inchwise_core::year::YearSubject;
use inchwise_link::{date_of, day};

use super::year_fault;
use crate::measure::Unread;
use crate::state::{Inputs, Planner, Subject, Typed};
use crate::text::Language;

/// Which text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TextChoice {
    /// The currency.
    Currency,
    /// The day of the prices.
    PricesOf,
}

impl TextChoice {
    const fn key(self) -> &'static str {
        match self {
            Self::Currency => "year-currency",
            Self::PricesOf => "year-prices-of",
        }
    }

    const fn label(self, language: Language) -> &'static str {
        match self {
            Self::Currency => language.year_choices().currency,
            Self::PricesOf => language.year_choices().prices_of,
        }
    }

    const fn subjects(self) -> (Subject, YearSubject) {
        match self {
            Self::Currency => (Subject::Currency, YearSubject::Currency),
            Self::PricesOf => (Subject::PricesOf, YearSubject::PricesOf),
        }
    }

    fn written(self, inputs: &Inputs) -> String {
        match self {
            Self::Currency => String::from_utf8_lossy(&inputs.year.currency).into_owned(),
            Self::PricesOf => inputs.year.prices_of.map_or_else(String::new, day),
        }
    }

    fn put(self, inputs: &mut Inputs, text: &str) -> Option<()> {
        match self {
            Self::Currency => inputs.year.currency = text.as_bytes().try_into().ok()?,
            Self::PricesOf if text.is_empty() => inputs.year.prices_of = None,
            Self::PricesOf => inputs.year.prices_of = Some(date_of(text)?),
        }
        Some(())
    }
}

/// The field of a text.
#[component]
pub fn TextField(
    /// Which.
    text: TextChoice,
) -> impl IntoView {
    let planner = Planner::here();
    let (subject, year_subject) = text.subjects();
    let typed = move || {
        planner
            .typed
            .with(|typed| typed.iter().find(|it| it.subject == subject).map(|it| it.text.clone()))
    };
    let shown = Memo::new(move |_| {
        typed().unwrap_or_else(|| planner.inputs.with(|inputs| text.written(inputs)))
    });
    let fault = Memo::new(move |_| {
        let notation = planner.notation();
        let words = notation.language.year_choices();
        if typed().is_some() {
            return if text == TextChoice::Currency { words.no_currency } else { words.date_hint }
                .to_owned();
        }
        planner.inputs.with(|inputs| {
            let errors = inputs.year.check(inputs.set_point()).err().unwrap_or_default();
            let mine = errors.iter().find(|error| error.subject == year_subject);
            mine.map_or_else(String::new, |error| year_fault(error, notation))
        })
    });
    let take = move |event: leptos::ev::Event| {
        let value = event_target_value(&event);
        let value = value.trim();
        let mut after = planner.inputs.get_untracked();
        match text.put(&mut after, value) {
            Some(()) => {
                planner.forget_typed(subject);
                planner.change(None, |inputs| *inputs = after);
            }
            None => planner.keep_typed(Typed {
                subject,
                text: value.to_owned(),
                fault: Unread::NotANumber,
            }),
        }
    };
    let fault_id = [text.key(), "-fault"].concat();
    view! {
        <div class="field" class:wrong=move || fault.with(|fault| !fault.is_empty())>
            <label for=text.key()>{move || text.label(planner.language.get())}</label>
            <div class="moves">
                <input
                    type="text"
                    id=text.key()
                    data-testid=["field-", text.key()].concat()
                    autocomplete="off"
                    maxlength="20"
                    aria-describedby=fault_id.clone()
                    prop:value=move || shown.get()
                    on:change=take
                />
            </div>
            <p class="fault" id=fault_id>{move || fault.get()}</p>
        </div>
    }
}
