//! Quantities as types, so that a thickness cannot be passed for a conductivity.
//!
//! Every quantity holds one `f64` in its SI unit (temperature in degrees Celsius). Other units
//! exist only in named constructors and readers. Only products that mean something are defined.

mod convert;
mod quantity;

pub use convert::{
    JOULES_PER_BTU, KELVIN_PER_FAHRENHEIT_DEGREE, KILOGRAMS_PER_POUND, METRES_PER_FOOT,
    METRES_PER_INCH, PASCALS_PER_INCH_OF_WATER,
};
pub use quantity::{
    AirChangeRate, Angle, Area, CloggedShare, Density, Duty, Effectiveness, ElectricCurrent,
    ElectricPotential, Energy, FanSpeed, Force, FreeAreaRatio, FrictionFactor, HeatCapacity,
    HeatTransferCoefficient, HumidityRatio, Irradiance, Irradiation, Length,
    LinearThermalTransmittance, LossCoefficient, Mass, MassFlow, MoistureFlux,
    PointThermalTransmittance, Power, Pressure, RelativeHumidity, SolarShare, SpecificEnthalpy,
    SpecificHeatCapacity, SpecificVolume, Speed, SurfaceCoefficient, SurfaceMoisture, Temperature,
    TemperatureDifference, TemperatureFactor, ThermalConductivity, ThermalResistance,
    ThermalTransmittance, Time, VapourConcentration, VapourPermeability, VapourPermeance,
    VapourResistanceFactor, Volume, VolumeFlow,
};
