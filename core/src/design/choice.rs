//! Choices that are not numbers.

/// Declares a choice among named options with stable keys.
macro_rules! options {
    ($(#[$doc:meta])* $name:ident { $($(#[$option_doc:meta])* $option:ident = $key:literal),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
        pub enum $name {
            $($(#[$option_doc])* $option),+
        }

        impl $name {
            /// Every option in the order they are shown.
            pub const ALL: &'static [Self] = &[$(Self::$option),+];

            /// Stable name in links and files.
            pub const fn key(self) -> &'static str {
                match self {
                    $(Self::$option => $key),+
                }
            }

            /// The option of this name.
            pub fn from_key(key: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|option| option.key() == key)
            }
        }
    };
}

options! {
    /// What is done about the corner castings that stand in the room at both end walls.
    EndWallTreatment {
        /// Each casting gets its own foam cover and lining box; the walls stay where they are.
        #[default]
        CoverCastings = "cover_castings",
        /// Both end walls come forward until castings and their cover are behind the lining.
        BuildOutEndWalls = "build_out_end_walls",
        /// The whole ceiling comes down until castings and their cover are above the lining.
        DropCeiling = "drop_ceiling",
        /// The castings stay bare steel in the room.
        LeaveBare = "leave_bare",
    }
}

options! {
    /// From where the foam depth is measured, and so what is sprayed and what insulates.
    FoamMeasure {
        /// As if the sheet were flat at its inner crests: the corrugation counts for nothing.
        Flat = "flat",
        /// The same depth everywhere square to the sheet: the foam face follows the waves.
        FollowingTheSteel = "following_the_steel",
        /// Over the inner crests, with the troughs filled: the foam face is a plane.
        #[default]
        FlushOverTheRibs = "flush_over_the_ribs",
    }
}

options! {
    /// Where studs and joists stand over the waves of the sheet.
    FramePosition {
        /// Wherever their spacing puts them: each is reckoned to stand on an inner crest, where the
        /// steel is nearest and the loss greatest.
        #[default]
        OnCrests = "on_crests",
        /// Each moved to the nearest trough, over its middle, so that the depth of the wave stands
        /// between sheet and flange. There are as many members as their spacing asks for. Where troughs
        /// are filled no member loses more there than on a crest; a member buried by foam that follows
        /// the sheet has less foam before it over a trough, and may.
        OverTroughs = "over_troughs",
    }
}

options! {
    /// The board that covers the foam.
    LiningMaterial {
        /// Plywood.
        #[default]
        Plywood = "plywood",
        /// Gypsum board.
        GypsumBoard = "gypsum_board",
    }
}

options! {
    /// What is done about forklift pockets and gooseneck tunnel, where the size of box has them.
    FloorRecesses {
        /// They stay free to be used, without foam.
        #[default]
        KeptFree = "kept_free",
        /// They are filled with foam as deep as between the floor's members: the box is never lifted by them again.
        Filled = "filled",
        /// This box has neither.
        None = "none",
    }
}

options! {
    /// How a damper's steel sleeve ends.
    SleeveEnd {
        /// At the face of the lining.
        #[default]
        ThroughLining = "through_lining",
        /// Recessed behind the plane of the studs, foam closed over it, a plastic pipe in an insulated collar from there to
        /// the room.
        Recessed = "recessed",
    }
}

options! {
    /// A wall that an opening can be cut into.
    Wall {
        /// The long wall on the right when looking in through the cargo doors.
        #[default]
        RightSide = "right_side",
        /// The long wall on the left when looking in through the cargo doors.
        LeftSide = "left_side",
        /// The end opposite the cargo doors.
        FrontEnd = "front_end",
        /// The framed wall behind the cargo doors.
        DoorEnd = "door_end",
    }
}

options! {
    /// Whether there is a personnel door, and where.
    PersonnelDoor {
        /// In the right side wall.
        #[default]
        RightSide = "right_side",
        /// In the left side wall.
        LeftSide = "left_side",
        /// In the front end wall.
        FrontEnd = "front_end",
        /// In the framed wall behind the cargo doors.
        DoorEnd = "door_end",
        /// None: people use the cargo doors.
        None = "none",
    }
}

options! {
    /// How the end with the cargo doors is finished.
    DoorEndFinish {
        /// A framed wall with foam before the cargo doors, which stay shut.
        #[default]
        FramedWall = "framed_wall",
        /// Foam in the leaves of the cargo doors, lining on battens over it; the doors open.
        FoamedLeaves = "foamed_leaves",
    }
}

options! {
    /// What keeps the two sheets of a window's glass apart at their edge.
    WindowSpacer {
        /// A hollow bar of aluminium: the edge of the glass is cold.
        #[default]
        Aluminium = "aluminium",
        /// A bar of plastic or thin stainless steel.
        WarmEdge = "warm_edge",
    }
}

impl PersonnelDoor {
    /// The wall it stands in, if there is one.
    pub const fn wall(self) -> Option<Wall> {
        match self {
            Self::RightSide => Some(Wall::RightSide),
            Self::LeftSide => Some(Wall::LeftSide),
            Self::FrontEnd => Some(Wall::FrontEnd),
            Self::DoorEnd => Some(Wall::DoorEnd),
            Self::None => None,
        }
    }
}

options! {
    /// A use of the room.
    RoomUse {
        /// Dry goods, hardly anyone inside.
        Store = "store",
        /// Two people at work.
        #[default]
        Workshop = "workshop",
        /// Two people at desks.
        Office = "office",
        /// Two people asleep.
        Sleeping = "sleeping",
        /// Washing, and drying in the room.
        LaundryAndDrying = "laundry_and_drying",
        /// Plants on racks.
        Growing = "growing",
        /// Hosed down daily.
        WashingDown = "washing_down",
        /// Dogs or like animals.
        Animals = "animals",
    }
}

options! {
    /// What keeps rain and snow out of a damper.
    WeatherCover {
        /// A hood.
        #[default]
        Hood = "hood",
        /// A weather louvre.
        Louvre = "louvre",
        /// Nothing.
        None = "none",
    }
}

options! {
    /// Whether the dampers are screened.
    DamperScreen {
        /// A screen against birds and insects on each.
        #[default]
        Screened = "screened",
        /// None.
        None = "none",
    }
}

options! {
    /// What is known of the fan.
    FanGiven {
        /// The two figures on its label: free-air flow and shut-off pressure.
        #[default]
        Label = "label",
        /// Three points of its maker's curve as well, between those two.
        Curve = "curve",
    }
}

options! {
    /// By which rule the outdoor air of those inside is counted.
    OutdoorAirRule {
        /// So much for each person and each square metre of floor, as for offices and workplaces.
        #[default]
        Office = "office",
        /// The same, as for dwellings.
        Dwelling = "dwelling",
        /// Air changes of the whole room at all hours, as where animals are kept.
        AirChanges = "air_changes",
        /// None: what leaks in is all that those inside get.
        None = "none",
    }
}
