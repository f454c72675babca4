//! Studs: where they stand along a wall, and their C-section in plan.

use super::shape::Point;

/// Where the webs of the members on a run stand, mm from its start: one at the start, one at every
/// full spacing and one at the end, as the envelope counts them. The last turns its flanges back
/// into the run.
pub fn members_along(run: f64, spacing: f64, count: u32) -> Vec<Member> {
    let last = count.saturating_sub(1);
    (0..count)
        .map(|index| {
            if index == last {
                Member { web: run, turned_back: true }
            } else {
                Member { web: spacing * f64::from(index), turned_back: false }
            }
        })
        .collect()
}

/// One stud on a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Member {
    /// Where its web stands, mm along the run.
    pub web: f64,
    /// Whether its flanges point back to the start of the run.
    pub turned_back: bool,
}

/// How a wall lies on the paper: positions along it and depths over its steel plane become points.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Lie {
    /// Along x, the room below the line y = 0.
    Top,
    /// Along x, the room above this y.
    Bottom(f64),
    /// Along y, the room to the right of x = 0.
    Left,
    /// Along y, the room to the left of this x.
    Right(f64),
}

impl Lie {
    /// The point at a position along the wall and a depth over its steel plane.
    pub const fn point(self, along: f64, depth: f64) -> Point {
        match self {
            Self::Top => Point::new(along, depth),
            Self::Bottom(y) => Point::new(along, y - depth),
            Self::Left => Point::new(depth, along),
            Self::Right(x) => Point::new(x - depth, along),
        }
    }

    /// The points of a line of positions and depths.
    pub fn line(self, line: &[(f64, f64)]) -> Vec<Point> {
        line.iter().map(|&(along, depth)| self.point(along, depth)).collect()
    }
}

/// The centre line of a C-section: outer flange, web, inner flange.
pub fn c_section(
    lie: Lie,
    start: f64,
    member: &Member,
    stand_off: f64,
    depth: f64,
    flange: f64,
) -> [Point; 4] {
    let web = start + member.web;
    let tip = if member.turned_back { web - flange } else { web + flange };
    let (outer, inner) = (stand_off, stand_off + depth);
    [lie.point(tip, outer), lie.point(web, outer), lie.point(web, inner), lie.point(tip, inner)]
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::envelope::members_on;
    use inchwise_core::units::Length;

    #[test]
    fn studs_stand_where_the_envelope_counts_them() {
        for run in [5696.0, 5684.0, 2150.0, 406.0, 300.0] {
            let count = members_on(Length::mm(run), Length::mm(406.0));
            let members = members_along(run, 406.0, count);
            assert_eq!(members.len(), count as usize);
            assert_eq!(members[0].web, 0.0);
            assert_eq!(members[members.len() - 1].web, run);
            for pair in members.windows(2) {
                let apart = pair[1].web - pair[0].web;
                assert!((-1e-9..=406.0 + 1e-9).contains(&apart), "{run}: {apart}");
            }
        }
    }

    #[test]
    fn a_section_turns_towards_the_room() {
        let member = Member { web: 100.0, turned_back: false };
        let section = c_section(Lie::Bottom(2352.0), 75.0, &member, 22.0, 41.0, 32.0);
        assert_eq!(section[0], Point::new(207.0, 2330.0));
        assert_eq!(section[3], Point::new(207.0, 2289.0));
    }
}
