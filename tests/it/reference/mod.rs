//! The engine against outside truth: standards, handbooks, closed forms, other libraries.

mod climate;
mod conduction;
mod conduction_file;
mod damp;
mod depth_grid;
mod envelope;
mod finite_elements;
mod frame_line;
mod freight_box;
mod interstitial;
mod moisture;
mod psychro;
mod reading;
mod trade;
mod units;
mod ventilation;
mod year;
