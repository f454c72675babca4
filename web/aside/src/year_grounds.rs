//! What a year's figures rest on, as plain numbers.

use inchwise_core::room_network::Course;
use inchwise_core::units::{HeatCapacity, HeatTransferCoefficient, Power, Pressure, Temperature};
use inchwise_core::year::{MeanHour, YearGrounds};

/// Numbers of a mean.
const IN_MEAN: usize = 10;

fn pack_mean(mean: &MeanHour) -> [f64; IN_MEAN] {
    [
        mean.outdoors.as_celsius(),
        mean.outdoor_vapour.value(),
        mean.set_point.as_celsius(),
        mean.room.as_celsius(),
        mean.people.value(),
        mean.equipment.value(),
        mean.sun.value(),
        mean.sun_on_steel.value(),
        mean.sky.value(),
        mean.drying.value(),
    ]
}

fn unpack_mean(numbers: &[f64; IN_MEAN]) -> MeanHour {
    let celsius = |place: usize| Temperature::celsius(numbers[place]);
    let power = |place: usize| Power::new(numbers[place]);
    MeanHour {
        outdoors: celsius(0),
        outdoor_vapour: Pressure::new(numbers[1]),
        set_point: celsius(2),
        room: celsius(3),
        people: power(4),
        equipment: power(5),
        sun: power(6),
        sun_on_steel: power(7),
        sky: power(8),
        drying: power(9),
    }
}

/// Numbers of a course.
pub(crate) const IN_COURSE: usize = 5;

pub(crate) fn pack_course(course: &Course) -> [f64; IN_COURSE] {
    [
        course.capacity.value(),
        course.loss.value(),
        course.from.as_celsius(),
        course.towards.as_celsius(),
        f64::from(u8::from(course.rises)),
    ]
}

pub(crate) fn unpack_course(&[capacity, loss, from, towards, rises]: &[f64; IN_COURSE]) -> Course {
    Course {
        capacity: HeatCapacity::new(capacity),
        loss: HeatTransferCoefficient::new(loss),
        from: Temperature::celsius(from),
        towards: Temperature::celsius(towards),
        rises: rises == 1.0,
    }
}

/// Numbers in front of the means.
const IN_HEAD: usize = 9;

/// Means of twelve months and two days.
const MEANS: usize = 14;

/// Numbers of grounds.
pub(crate) const IN_GROUNDS: usize = IN_HEAD + MEANS * IN_MEAN;

pub(crate) fn pack_grounds(grounds: &YearGrounds) -> Vec<f64> {
    let mut numbers = vec![
        grounds.loss.value(),
        grounds.leaks.value(),
        grounds.fan.value(),
        grounds.capacity.value(),
        grounds.air_pressure.value(),
        grounds.coldest_day as f64,
        grounds.warmest_day as f64,
        f64::from(grounds.short_hours),
        f64::from(grounds.warm_days),
    ];
    let days = [&grounds.on_coldest_day, &grounds.on_warmest_day];
    numbers.extend(grounds.months.iter().chain(days).flat_map(pack_mean));
    numbers
}

pub(crate) fn unpack_grounds(numbers: &[f64]) -> Option<YearGrounds> {
    let (head, means) = numbers.split_first_chunk::<IN_HEAD>()?;
    let (means, []) = means.as_chunks::<IN_MEAN>() else { return None };
    let [months @ .., on_coldest_day, on_warmest_day]: [MeanHour; MEANS] =
        means.iter().map(unpack_mean).collect::<Vec<_>>().try_into().ok()?;
    Some(YearGrounds {
        loss: HeatTransferCoefficient::new(head[0]),
        leaks: HeatTransferCoefficient::new(head[1]),
        fan: HeatTransferCoefficient::new(head[2]),
        capacity: HeatCapacity::new(head[3]),
        air_pressure: Pressure::new(head[4]),
        coldest_day: head[5] as usize,
        warmest_day: head[6] as usize,
        short_hours: head[7] as u32,
        warm_days: head[8] as u32,
        months,
        on_coldest_day,
        on_warmest_day,
    })
}
