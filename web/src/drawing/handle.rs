//! What can be taken hold of in a temperature picture: the dimensions that decide what it shows.

use std::rc::Rc;

use inchwise_core::conduction::Axis;
use inchwise_core::design::{Field, Surface};
use inchwise_core::detail::{Detail, FRAME_TUBE, FrameSlice, View};
use inchwise_core::envelope::{Opening, ThermalBridge, surface_of};
use inchwise_core::units::Length;

use super::geometry::{Point, Rect, Window, numbers, percent};
use super::pull::{Pull, Towards};
use super::slot::Slot;
use crate::dom::{El, el};
use crate::measure::Scale;
use crate::reactive::keep_up;
use crate::state::State;

/// One dimension of a detail.
#[derive(Clone, Copy)]
pub struct Handle {
    fields: &'static [Field],
    /// Which way it grows on the page.
    pub towards: Towards,
    /// Where it ends, in the view's own coordinates; none where the view does not show it.
    at: fn(&Detail, &View) -> Option<Point>,
}

fn foam_of(surface: Surface) -> &'static [Field] {
    match surface {
        Surface::SideWall => &[Field::SideWallFoam],
        Surface::FrontEnd => &[Field::FrontEndFoam],
        Surface::DoorEnd => &[Field::DoorEndFoam],
        Surface::Ceiling => &[Field::CeilingFoam],
        Surface::Floor => &[Field::FloorFoamOver],
    }
}

/// The handles of a place.
pub fn handles(
    place: ThermalBridge,
    wall_of_door: Surface,
    wall_of_window: Surface,
) -> Vec<Handle> {
    let handle = |fields, towards, at| Handle { fields, towards, at };
    match place {
        ThermalBridge::FrameLine(surface) => {
            let gap: &'static [Field] = if surface == Surface::Ceiling {
                &[Field::JoistStandOff]
            } else {
                &[Field::StudStandOff]
            };
            vec![
                handle(gap, Towards::Down, |detail, _| {
                    let Detail::FrameLine(slice) = detail else { return None };
                    let x = slice.web_at() + slice.flange;
                    Some(point(x, slice.stand_off))
                }),
                handle(foam_of(surface), Towards::Down, |detail, view| {
                    let Detail::FrameLine(FrameSlice { build_up, .. }) = detail else {
                        return None;
                    };
                    Some(point(part(view, 0.16), build_up.foam))
                }),
            ]
        }
        ThermalBridge::Waves(surface) => {
            vec![handle(foam_of(surface), Towards::Down, |detail, _| {
                let Detail::Wave(wave) = detail else { return None };
                let sheet = &wave.waves.sheet;
                // At the edge of the crest; the coldest place is marked at its middle.
                Some(point(sheet.outer_flat / 2.0 + sheet.slope, wave.build_up.foam))
            })]
        }
        ThermalBridge::RoofEdge(wall) => edge(foam_of(wall), foam_of(Surface::Ceiling)),
        ThermalBridge::CornerPost(end) => edge(foam_of(Surface::SideWall), foam_of(end.surface())),
        ThermalBridge::FloorEdge(wall) => vec![
            handle(foam_of(wall), Towards::Right, |detail, view| {
                let Detail::FloorEdge(edge) = detail else { return None };
                Some(point(edge.wall.foam, view.down[1] - Length::mm(24.0)))
            }),
            handle(foam_of(Surface::Floor), Towards::Up, |detail, view| {
                let Detail::FloorEdge(edge) = detail else { return None };
                Some(point(view.across[1] - Length::mm(44.0), edge.floor.over))
            }),
        ],
        ThermalBridge::FloorMember => vec![
            handle(&[Field::FloorFoamUnder], Towards::Down, |detail, _| {
                let Detail::FloorMember(slice) = detail else { return None };
                let floor = &slice.floor;
                let x = floor.member.spacing / 2.0;
                Some(point(x, floor.member_bottom() - floor.wrap))
            }),
            handle(&[Field::FloorFoamBetween], Towards::Down, |detail, view| {
                let Detail::FloorMember(slice) = detail else { return None };
                Some(point(part(view, 0.15), slice.floor.foam_bottom()))
            }),
        ],
        ThermalBridge::OpeningFrame(opening) => {
            let wall = match opening {
                Opening::PersonnelDoor => wall_of_door,
                Opening::Window => wall_of_window,
            };
            vec![
                handle(&[Field::OpeningFrameFoam], Towards::Down, |detail, _| {
                    let Detail::OpeningFrame(frame) = detail else { return None };
                    Some(point(FRAME_TUBE / 2.0, FRAME_TUBE + frame.packing))
                }),
                handle(foam_of(wall), Towards::Down, |detail, view| {
                    let Detail::OpeningFrame(frame) = detail else { return None };
                    Some(point(part(view, 0.85), frame.wall.foam))
                }),
            ]
        }
        ThermalBridge::TopCasting(_) => {
            vec![handle(&[Field::CastingCover], Towards::Down, |detail, view| {
                let Detail::Corner(corner) = detail else { return None };
                let cover = corner.casting.cover?;
                let [x, y, z] = corner.casting.reach;
                let across = match view.axis {
                    Axis::Y => x,
                    Axis::X => y,
                    Axis::Z => return None,
                };
                Some(point(across * 0.8, z + cover))
            })]
        }
        ThermalBridge::StudHead => {
            vec![handle(&[Field::BracketPad], Towards::Right, |detail, view| {
                let Detail::Bracket(bracket) = detail else { return None };
                let rail = bracket.edge.steel;
                let face = rail.x[1] + bracket.pad;
                match view.axis {
                    Axis::X => Some(point(face, rail.y[1] / 2.0)),
                    Axis::Y | Axis::Z => None,
                }
            })]
        }
        ThermalBridge::BottomCasting(_) => {
            vec![handle(&[Field::SideWallFoam], Towards::Right, |detail, view| {
                let Detail::BottomCorner(corner) = detail else { return None };
                let high = view.down[1] - Length::mm(24.0);
                (view.axis == Axis::Y).then(|| point(corner.side.foam, high))
            })]
        }
        ThermalBridge::DamperSleeve | ThermalBridge::ExhaustSleeve => {
            vec![handle(&[Field::SideWallFoam], Towards::Right, |detail, view| {
                let Detail::Sleeve(sleeve) = detail else { return None };
                (view.axis == Axis::X)
                    .then(|| point(sleeve.wall.foam, view.down[1] - Length::mm(24.0)))
            })]
        }
        ThermalBridge::DoorThreshold
        | ThermalBridge::WindowSill
        | ThermalBridge::CargoDoorHeader
        | ThermalBridge::CargoDoorSill
        | ThermalBridge::CargoDoorHinges
        | ThermalBridge::CargoDoorMeeting
        | ThermalBridge::CargoDoorBatten
        | ThermalBridge::ScrewThrough
        | ThermalBridge::ThinFoam
        | ThermalBridge::JoistEnd
        | ThermalBridge::ForkliftPocket
        | ThermalBridge::GooseneckTunnel
        | ThermalBridge::FloorDrain => Vec::new(),
    }
}

/// Both surfaces of an edge.
fn edge(first: &'static [Field], second: &'static [Field]) -> Vec<Handle> {
    vec![
        Handle {
            fields: first,
            towards: Towards::Right,
            at: |detail, view| {
                let Detail::Edge(edge) = detail else { return None };
                Some(point(edge.first.foam, view.down[1] - Length::mm(24.0)))
            },
        },
        Handle {
            fields: second,
            towards: Towards::Down,
            at: |detail, view| {
                let Detail::Edge(edge) = detail else { return None };
                Some(point(view.across[1] - Length::mm(44.0), edge.second.foam))
            },
        },
    ]
}

const fn point(across: Length, down: Length) -> Point {
    Point::new(across.as_mm(), down.as_mm())
}

/// So far along the view's first axis.
fn part(view: &View, share: f64) -> Length {
    view.across[0] + (view.across[1] - view.across[0]) * share
}

/// The walls that hold door and window.
pub fn walls_of_openings(state: State) -> [Surface; 2] {
    state.chosen_untracked(|design| {
        let door = design.personnel_door.wall().map_or(Surface::SideWall, surface_of);
        [door, surface_of(design.window_wall)]
    })
}

impl Handle {
    /// Where it is held on the page.
    pub fn hold(&self, detail: &Detail, view: &View) -> Option<Point> {
        let window = Window::of(view);
        (self.at)(detail, view).map(|at| window.place(at)).filter(|at| window.paper.holds(*at))
    }

    /// How far its tag lies from where it holds: past the wall's face, where it would cover what it
    /// changes.
    fn past(&self, held: Point, detail: &Detail) -> f64 {
        let face = match detail {
            Detail::FrameLine(slice) => slice.build_up.face(),
            Detail::OpeningFrame(frame) => frame.face(),
            _ => return 0.0,
        };
        (face.as_mm() - held.y).max(0.0)
    }

    /// What its tag covers of the paper, and its lead.
    pub fn cover(&self, held: Point, detail: &Detail, paper: &Rect) -> [Rect; 2] {
        let unit = paper.width() / 360.0;
        let (long, half, thin) = (110.0 * unit, 24.0 * unit, 2.0 * unit);
        let past = self.past(held, detail);
        let lead = Rect::new(held.x, held.y, held.x, held.y + past).grown(thin, thin, thin, thin);
        let at = Rect::new(held.x, held.y + past, held.x, held.y + past);
        let tag = match self.towards {
            Towards::Right => at.grown(half / 3.0, half, long, half),
            Towards::Left => at.grown(long, half, half / 3.0, half),
            Towards::Down => at.grown(long / 2.6, half / 3.0, long / 2.6, 2.6 * half),
            Towards::Up => at.grown(long / 2.6, 2.6 * half, long / 2.6, half / 3.0),
        };
        [lead, tag]
    }

    /// The handle as drawn over a view of a detail.
    pub fn drawn(
        self,
        state: State,
        shows: impl Fn() -> Option<(Detail, View)> + Clone + 'static,
    ) -> El {
        let whole = el("div").class(self.towards.class());
        let paper = shows.clone();
        let paper_width =
            move || paper().map_or(0.0, |(_, view)| (view.across[1] - view.across[0]).as_mm());
        let pull = Pull::new(self.fields, self.towards, state, Rc::new(paper_width));
        let Some(pull) = pull else { return whole };
        let field = pull.field;
        let reading = el("span").class("reading");
        let plate = el("span").class("plate").with(&[
            el("span").class("way back"),
            reading.clone(),
            el("span").class("way on"),
        ]);
        let tag = el("div")
            .class("tag")
            .attr("role", "slider")
            .attr("tabindex", "0")
            .test_id(&["handle-", field.range().key].concat())
            .attr("aria-orientation", self.towards.orientation())
            .child(&plate);
        let tag = pull.listening(tag, &whole);
        let lead = el("span").class("lead").attr("aria-hidden", "true");
        let whole = whole.with(&[lead, tag.clone()]);
        let [mut left, mut top, mut past] =
            ["left", "top", "--past"].map(|name| Slot::style(whole.clone(), name));
        let [mut label, mut least, mut most, mut now, mut told] =
            ["aria-label", "aria-valuemin", "aria-valuemax", "aria-valuenow", "aria-valuetext"]
                .map(|name| Slot::attribute(tag.clone(), name));
        let mut reading = Slot::text(reading);
        let element = whole.clone();
        keep_up(Box::new(move || {
            let held = shows().and_then(|(detail, view)| {
                let held = self.hold(&detail, &view)?;
                let paper = Window::of(&view).paper;
                Some((paper.percent(held), self.past(held, &detail) / paper.width() * 100.0))
            });
            element.flag("hidden", held.is_none());
            let Some(((x, y), beyond)) = held else { return };
            past.write(numbers(&[beyond]));
            left.write(percent(x));
            top.write(percent(y));
            let notation = state.notation();
            let scale = Scale::of(field, notation.units);
            let in_unit = |position: i64| numbers(&[scale.step * position as f64]);
            let length = state.chosen(|design| design.get(field)).unwrap_or_default();
            let read = notation.length(Length::new(length));
            label.write(notation.language.field(field).to_owned());
            least.write(in_unit(scale.lowest));
            most.write(in_unit(scale.highest));
            now.write(in_unit(scale.position(length)));
            told.write(read.clone());
            reading.write(read);
        }));
        whole
    }
}
