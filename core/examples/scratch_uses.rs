use inchwise_core::climate::*;
use inchwise_core::design::*;
use inchwise_core::detail::*;
use inchwise_core::evaluate::*;
use inchwise_core::year::*;
fn main() {
    let mut cache = FieldCache::default();
    for fan in [0.0, 3.0] {
        for &u in RoomUse::ALL {
            let mut d = Design { damper_count: fan, ..Design::default() };
            d.take_use(u);
            let c = d.check().unwrap();
            let e = evaluate(&c, &mut cache);
            let b = e.balance.as_ref().unwrap();
            let w = reconstruct(&d.place, Spread::DesignTemperatures, SEED);
            let s = Surroundings::new(w, d.front_faces);
            let t = std::time::Instant::now();
            let ch = YearChoices {
                heater_limit: inchwise_core::units::Power::new(30000.0),
                ..Default::default()
            }
            .check()
            .unwrap();
            let m = YearModel::new(&e, &s, &ch).unwrap();
            let o = run_year(&m);
            let dt = t.elapsed();
            println!(
                "{:20} fan{} rest {:.0} work {:.0} (mech {:.0} dry {:.0}) day {:.1}% mean {:.1}% months {:?} need f {:?} m{:?}; Jan year {:.1}% T {:.1} heat {:.0} kWh drip {} frost {} fan_h {:.0} cond {:.1} frost {:.1} ranoff {:.1} off {:e} {:e} {:?}",
                u.key(),
                fan,
                b.load.at_rest.total().value(),
                b.load.at_work.total().value(),
                b.load.at_work.mechanical.value(),
                b.load.at_work.drying.value(),
                b.humidity.day.ventilated().as_percent(),
                b.humidity.mean.ventilated().as_percent(),
                b.humidity.months.humidity.map(|h| h.as_percent().round()),
                b.humidity.months.needed_factor().map(|f| f.value()),
                b.humidity.verdict.critical_month,
                o.months[0].mean_humidity * 100.0,
                o.months[0].mean_celsius,
                o.year.energy.heat().as_kilowatt_hours(),
                o.year.drip_hours,
                o.year.frost_hours,
                o.year.fan_hours,
                o.year.condensed.value(),
                o.year.frosted.value(),
                o.year.ran_off.value(),
                o.heat_off(),
                o.water_off(),
                dt
            );
        }
    }
}
