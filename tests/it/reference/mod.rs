//! The engine against outside truth: standards, handbooks, closed forms, other libraries.

mod cargo_doors;
mod climate;
mod conduction;
mod conduction_file;
mod depth_grid;
mod envelope;
mod finite_elements;
mod frame_line;
mod freight_box;
mod humidity;
mod interstitial;
mod load;
mod moisture;
mod opening_frame;
mod psychro;
mod reading;
mod threshold;
mod trade;
mod tradeoff;
mod units;
mod uses;
mod ventilation;
mod verdict;
mod year;
