//! To be measured.
fn main() {}
