//! The sheets: one is open beside the bench, and each holds the fields that act on what it shows.
//!
//! Another one is a file with a component and its list of fields, a line in [`Sheet`], and its
//! words.

mod air;
mod brief;
mod build;
mod dry;
mod fit;
mod heat;
mod part;

use inchwise_core::design::Field;
use leptos::prelude::*;

use crate::state::Planner;

/// A sheet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Sheet {
    /// What the room is for and where it stands.
    Brief,
    /// What stands in it, and what took the room.
    Fit,
    /// Whether it drips, where, and what helps.
    #[default]
    Dry,
    /// Losses, the year, the heater.
    Heat,
    /// Fan, dampers, humidity.
    Air,
    /// How it is built.
    Build,
}

/// Makes a sheet.
type Make = fn(Planner) -> AnyView;

/// What makes a sheet, once its wasm is loaded.
#[cfg(feature = "split")]
type Loaded = Result<Make, leptos::wasm_split::SplitLoaderError>;
#[cfg(not(feature = "split"))]
type Loaded = Result<Make, String>;

macro_rules! sheets {
    ($($sheet:ident $key:literal $module:ident;)+) => {
        impl Sheet {
            /// Every sheet, in the order of its names.
            pub const ALL: &'static [Self] = &[$(Self::$sheet),+];

            /// Stable name in addresses and styles.
            pub const fn key(self) -> &'static str {
                match self { $(Self::$sheet => $key),+ }
            }

            /// The numbers of the design that it holds.
            pub const fn fields(self) -> &'static [&'static [Field]] {
                match self { $(Self::$sheet => $module::FIELDS),+ }
            }

            /// What makes it.
            async fn load(self) -> Loaded {
                match self { $(Self::$sheet => load::$module().await),+ }
            }
        }

        #[cfg(feature = "split")]
        mod load {
            use super::*;
            use leptos::wasm_split::wasm_split;
            $(
                #[wasm_split($module, wasm_split_path = ::leptos::wasm_split, fallible)]
                pub(super) fn $module() -> Loaded {
                    Ok(super::$module::sheet as Make)
                }
            )+
        }

        #[cfg(not(feature = "split"))]
        mod load {
            use super::*;
            $(
                #[allow(clippy::unused_async, reason = "as it is where it is loaded")]
                pub(super) async fn $module() -> Loaded {
                    Ok(super::$module::sheet as Make)
                }
            )+
        }
    };
}

sheets! {
    Brief "brief" brief;
    Fit "fit" fit;
    Dry "dry" dry;
    Heat "heat" heat;
    Air "air" air;
    Build "build" build;
}

impl Sheet {
    /// The sheet of this name.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|sheet| sheet.key() == key)
    }
}

/// How far the open sheet is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Progress {
    Loading,
    There,
    Failed,
}

/// The open sheet.
#[component]
pub fn OpenSheet() -> impl IntoView {
    let planner = Planner::here();
    let progress = RwSignal::new(Progress::Loading);
    let made = RwSignal::new(None::<Make>);
    // Every wish to open has a number: one that was overtaken opens nothing.
    let wishes = StoredValue::new(0_u32);
    let open = move |sheet: Sheet| {
        let wish = wishes.get_value() + 1;
        wishes.set_value(wish);
        progress.set(Progress::Loading);
        made.set(None);
        leptos::task::spawn_local(async move {
            let loaded = sheet.load().await;
            if wishes.try_get_value() != Some(wish) {
                return;
            }
            match loaded {
                Ok(make) => {
                    made.set(Some(make));
                    progress.set(Progress::There);
                }
                Err(_) => progress.set(Progress::Failed),
            }
        });
    };
    let sheet = planner.view.sheet;
    Effect::new(move |_| open(sheet.get()));
    let name = move || planner.language.get().sheet(sheet.get());
    let words = move || planner.language.get().bench();
    // What is shut is gone, with all that it listened to.
    let shown = move || made.get().map(|make| make(planner));
    let retry = move |_| open(sheet.get_untracked());
    view! {
        <section
            class="sheet"
            id="sheet"
            data-testid=move || ["sheet-", sheet.get().key()].concat()
            data-progress=move || match progress.get() {
                Progress::Loading => "loading",
                Progress::There => "there",
                Progress::Failed => "failed",
            }
            aria-label=name
            tabindex="-1"
        >
            {move || match progress.get() {
                Progress::There => None,
                Progress::Loading => {
                    Some(view! { <p class="hint" role="status">{words().loading}</p> }.into_any())
                }
                Progress::Failed => Some(view! {
                    <p class="fault" role="alert">{words().not_loaded}</p>
                    <button type="button" class="do" on:click=retry>{words().try_again}</button>
                }.into_any()),
            }}
            {shown}
        </section>
    }
}

/// The names of the sheets.
#[component]
pub fn Names() -> impl IntoView {
    let planner = Planner::here();
    let name = move |sheet: Sheet| {
        let is_open = move || planner.view.sheet.get() == sheet;
        view! {
            <button
                type="button"
                class="name"
                data-testid=["name-", sheet.key()].concat()
                aria-current=move || if is_open() { "page" } else { "false" }
                on:click=move |_| planner.view.sheet.set(sheet)
            >
                {move || planner.language.get().sheet(sheet)}
            </button>
        }
    };
    let names = Sheet::ALL.iter().map(|&sheet| name(sheet)).collect_view();
    view! {
        <nav class="names" aria-label=move || planner.language.get().bench().sheets>{names}</nav>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_field_of_the_design_stands_in_exactly_one_sheet() {
        for &field in Field::ALL {
            let sheets: Vec<Sheet> = Sheet::ALL
                .iter()
                .flat_map(|&sheet| sheet.fields().iter().map(move |&list| (sheet, list)))
                .flat_map(|(sheet, list)| list.iter().map(move |&held| (sheet, held)))
                .filter(|(_, held)| *held == field)
                .map(|(sheet, _)| sheet)
                .collect();
            assert_eq!(sheets.len(), 1, "{field:?} stands in {sheets:?}");
        }
    }

    #[test]
    fn names_are_found_again() {
        for &sheet in Sheet::ALL {
            assert_eq!(Sheet::from_key(sheet.key()), Some(sheet));
        }
    }
}
