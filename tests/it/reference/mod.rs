//! The engine against outside truth: standards, handbooks, closed forms, other libraries.

mod psychro;
mod units;
