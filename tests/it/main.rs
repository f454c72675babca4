//! One test binary for every check of the whole.
