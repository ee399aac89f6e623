//! Use cases over engine, store and exchange: the same for the window and for the command line.

pub mod views;
