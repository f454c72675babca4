//! The quantity types and their lawful products.

use core::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

/// Declares a quantity that adds to itself and scales by a plain number.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        impl $name {
            /// Zero of this quantity.
            pub const ZERO: Self = Self(0.0);
            /// The SI unit as it is written.
            pub const UNIT: &'static str = $unit;

            #[doc = concat!("From a value in ", $unit, ".")]
            pub const fn new(value: f64) -> Self {
                Self(value)
            }

            #[doc = concat!("The value in ", $unit, ".")]
            pub const fn value(self) -> f64 {
                self.0
            }

            /// The larger of two.
            pub fn max(self, other: Self) -> Self {
                if other.0 > self.0 { other } else { self }
            }

            /// The smaller of two.
            pub fn min(self, other: Self) -> Self {
                if other.0 < self.0 { other } else { self }
            }

            /// Whether the value is a finite number.
            pub const fn is_finite(self) -> bool {
                self.0.is_finite()
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }
        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }
        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }
        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }
        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }
        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }
        impl core::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
                items.fold(Self::ZERO, |total, item| total + item)
            }
        }
    };
}

quantity!(
    /// Length, m.
    Length, "m"
);
quantity!(
    /// Area, m².
    Area, "m²"
);
quantity!(
    /// Volume, m³.
    Volume, "m³"
);
quantity!(
    /// Mass, kg.
    Mass, "kg"
);
quantity!(
    /// Density, kg/m³.
    Density, "kg/m³"
);
quantity!(
    /// Time, s.
    Time, "s"
);
quantity!(
    /// Thermal conductivity λ, W/(m·K).
    ThermalConductivity, "W/(m·K)"
);
quantity!(
    /// Thermal resistance of a square metre R, m²·K/W; also a surface resistance R_si or R_se.
    ThermalResistance, "m²·K/W"
);
quantity!(
    /// Thermal transmittance U, W/(m²·K).
    ThermalTransmittance, "W/(m²·K)"
);
quantity!(
    /// Linear thermal transmittance ψ: the extra loss of a metre of a junction, W/(m·K).
    LinearThermalTransmittance, "W/(m·K)"
);
quantity!(
    /// Point thermal transmittance χ: the extra loss of one piece, W/K.
    PointThermalTransmittance, "W/K"
);
quantity!(
    /// Heat-transfer coefficient H of an element: loss per kelvin, W/K.
    HeatTransferCoefficient, "W/K"
);
quantity!(
    /// Power or heat flow, W.
    Power, "W"
);
quantity!(
    /// Energy, J.
    Energy, "J"
);
quantity!(
    /// Heat capacity of a body, J/K.
    HeatCapacity, "J/K"
);
quantity!(
    /// Specific heat capacity c, J/(kg·K).
    SpecificHeatCapacity, "J/(kg·K)"
);
quantity!(
    /// Difference of two temperatures, K.
    TemperatureDifference, "K"
);
quantity!(
    /// Pressure, also the partial pressure of water vapour, Pa.
    Pressure, "Pa"
);
quantity!(
    /// Volume flow of air, m³/s.
    VolumeFlow, "m³/s"
);
quantity!(
    /// Mass flow, also a rate of moisture, kg/s.
    MassFlow, "kg/s"
);
quantity!(
    /// Air speed, m/s.
    Speed, "m/s"
);
quantity!(
    /// Air changes of the room per second, 1/s.
    AirChangeRate, "1/s"
);

quantity!(
    /// Force, N.
    Force, "N"
);
quantity!(
    /// Enthalpy h of moist air per mass of its dry air, J/kg.
    SpecificEnthalpy, "J/kg"
);
quantity!(
    /// Volume v of moist air per mass of its dry air, m³/kg.
    SpecificVolume, "m³/kg"
);
quantity!(
    /// Vapour concentration v: mass of water vapour per volume of air, kg/m³.
    VapourConcentration, "kg/m³"
);

quantity!(
    /// Convective heat-transfer coefficient h_c at a surface, W/(m²·K).
    SurfaceCoefficient, "W/(m²·K)"
);
quantity!(
    /// Density of moisture flow rate g: moisture through or onto a square metre, kg/(m²·s).
    MoistureFlux, "kg/(m²·s)"
);
quantity!(
    /// Moisture that lies on a square metre, kg/m².
    SurfaceMoisture, "kg/m²"
);
quantity!(
    /// Water vapour permeability δ of a material, kg/(m·s·Pa).
    VapourPermeability, "kg/(m·s·Pa)"
);
quantity!(
    /// Water vapour permeance W of a layer, kg/(m²·s·Pa).
    VapourPermeance, "kg/(m²·s·Pa)"
);

quantity!(
    /// Solar irradiance I on a plane, W/m².
    Irradiance, "W/m²"
);
quantity!(
    /// Solar irradiation of a plane over a time, J/m².
    Irradiation, "J/m²"
);
quantity!(
    /// Electric potential, V.
    ElectricPotential, "V"
);
quantity!(
    /// Electric current, A.
    ElectricCurrent, "A"
);
quantity!(
    /// Angle, rad.
    Angle, "rad"
);

/// A temperature on the Celsius scale, °C.
///
/// Not a [`TemperatureDifference`]: two temperatures may be subtracted, never added.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Default)]
pub struct Temperature(f64);

impl Temperature {
    /// From degrees Celsius.
    pub const fn celsius(value: f64) -> Self {
        Self(value)
    }

    /// Degrees Celsius.
    pub const fn as_celsius(self) -> f64 {
        self.0
    }

    /// From kelvin; 0 °C is 273.15 K.
    pub const fn kelvin(value: f64) -> Self {
        Self(value - 273.15)
    }

    /// Kelvin; 0 °C is 273.15 K.
    pub const fn as_kelvin(self) -> f64 {
        self.0 + 273.15
    }

    /// Whether the value is a finite number.
    pub const fn is_finite(self) -> bool {
        self.0.is_finite()
    }

    /// The lower of two.
    pub fn min(self, other: Self) -> Self {
        if other.0 < self.0 { other } else { self }
    }

    /// The higher of two.
    pub fn max(self, other: Self) -> Self {
        if other.0 > self.0 { other } else { self }
    }
}

impl Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference::new(self.0 - other.0)
    }
}
impl Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, difference: TemperatureDifference) -> Self {
        Self(self.0 + difference.value())
    }
}
impl Sub<TemperatureDifference> for Temperature {
    type Output = Self;
    fn sub(self, difference: TemperatureDifference) -> Self {
        Self(self.0 - difference.value())
    }
}

/// Declares a plain ratio with a name, so that one ratio cannot be passed for another.
macro_rules! ratio {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        impl $name {
            /// From a plain ratio, 1 for the whole.
            pub const fn new(ratio: f64) -> Self {
                Self(ratio)
            }

            /// The plain ratio, 1 for the whole.
            pub const fn value(self) -> f64 {
                self.0
            }

            /// From a percentage.
            pub const fn percent(value: f64) -> Self {
                Self(value / 100.0)
            }

            /// As a percentage.
            pub const fn as_percent(self) -> f64 {
                self.0 * 100.0
            }
        }
    };
}

ratio!(
    /// Relative humidity φ: vapour pressure over saturation pressure at the same temperature.
    RelativeHumidity
);
ratio!(
    /// Humidity ratio W: mass of water vapour per mass of dry air, kg/kg.
    HumidityRatio
);
ratio!(
    /// Temperature factor f_Rsi = (θ_si − θ_e) / (θ_i − θ_e): 1 as warm as the room, 0 as cold as
    /// outdoors (ISO 10211).
    TemperatureFactor
);
ratio!(
    /// Loss coefficient ζ of an air flow: pressure lost over dynamic pressure.
    LossCoefficient
);
ratio!(
    /// Darcy friction factor f of a duct: loss coefficient of a length of one diameter.
    FrictionFactor
);
ratio!(
    /// Free area of a screen over its face area.
    FreeAreaRatio
);
ratio!(
    /// Part of the free area of a screen that dirt, lint or frost has closed.
    CloggedShare
);
ratio!(
    /// Speed of a fan over the speed its curve was measured at.
    FanSpeed
);
ratio!(
    /// Part of the time that something runs.
    Duty
);
ratio!(
    /// Effectiveness η of a heat exchanger: heat exchanged over the most that could be.
    Effectiveness
);
ratio!(
    /// Share of the sun on a surface that it takes in: absorptance α of a paint, or total solar
    /// energy transmittance g of a window.
    SolarShare
);
ratio!(
    /// Water vapour resistance factor µ: how many times harder vapour passes than through still
    /// air of the same thickness (ISO 12572).
    VapourResistanceFactor
);

/// Defines `left * right = product` both ways round, and the two divisions that undo it.
macro_rules! product {
    ($left:ident * $right:ident = $product:ident) => {
        impl Mul<$right> for $left {
            type Output = $product;
            fn mul(self, right: $right) -> $product {
                $product::new(self.value() * right.value())
            }
        }
        impl Mul<$left> for $right {
            type Output = $product;
            fn mul(self, left: $left) -> $product {
                $product::new(left.value() * self.value())
            }
        }
        impl Div<$right> for $product {
            type Output = $left;
            fn div(self, right: $right) -> $left {
                $left::new(self.value() / right.value())
            }
        }
        impl Div<$left> for $product {
            type Output = $right;
            fn div(self, left: $left) -> $right {
                $right::new(self.value() / left.value())
            }
        }
    };
}

product!(Area * Length = Volume);
product!(Volume * Density = Mass);
product!(ThermalConductivity * ThermalResistance = Length);
product!(ThermalTransmittance * Area = HeatTransferCoefficient);
product!(LinearThermalTransmittance * Length = HeatTransferCoefficient);
product!(HeatTransferCoefficient * TemperatureDifference = Power);
product!(Power * Time = Energy);
product!(HeatCapacity * TemperatureDifference = Energy);
product!(Mass * SpecificHeatCapacity = HeatCapacity);
product!(AirChangeRate * Volume = VolumeFlow);
product!(VolumeFlow * Density = MassFlow);
product!(Speed * Area = VolumeFlow);
product!(MassFlow * Time = Mass);
product!(MassFlow * SpecificEnthalpy = Power);
product!(Pressure * Area = Force);
product!(Speed * VapourConcentration = MoistureFlux);
product!(MoistureFlux * Area = MassFlow);
product!(MoistureFlux * Time = SurfaceMoisture);
product!(SurfaceMoisture * Area = Mass);
product!(VapourPermeance * Length = VapourPermeability);
product!(VapourPermeance * Pressure = MoistureFlux);
product!(Irradiance * Area = Power);
product!(ElectricPotential * ElectricCurrent = Power);
product!(Irradiance * Time = Irradiation);

impl Mul<VapourConcentration> for VolumeFlow {
    type Output = MassFlow;
    fn mul(self, carried: VapourConcentration) -> MassFlow {
        MassFlow::new(self.0 * carried.value())
    }
}
impl Mul<VapourConcentration> for Volume {
    type Output = Mass;
    fn mul(self, held: VapourConcentration) -> Mass {
        Mass::new(self.0 * held.value())
    }
}

impl Mul for Length {
    type Output = Area;
    fn mul(self, other: Self) -> Area {
        Area::new(self.0 * other.0)
    }
}
impl Div<Length> for Area {
    type Output = Length;
    fn div(self, other: Length) -> Length {
        Length::new(self.0 / other.value())
    }
}

impl ThermalResistance {
    /// U = 1 / R.
    pub fn transmittance(self) -> ThermalTransmittance {
        ThermalTransmittance::new(1.0 / self.0)
    }
}

impl ThermalTransmittance {
    /// R = 1 / U.
    pub fn resistance(self) -> ThermalResistance {
        ThermalResistance::new(1.0 / self.0)
    }
}

impl PointThermalTransmittance {
    /// The loss of a number of such pieces.
    pub fn pieces(self, count: f64) -> HeatTransferCoefficient {
        HeatTransferCoefficient::new(self.0 * count)
    }
}
