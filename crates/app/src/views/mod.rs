//! What the screens see. Plain data: no screen works out anything about training from it.

pub mod arrange;
pub mod class;
pub mod coach;
pub mod common;
pub mod path;
pub mod planbook;
pub mod safety;
pub mod train;
pub mod words;

pub use arrange::*;
pub use class::*;
pub use coach::*;
pub use common::*;
pub use path::*;
pub use planbook::*;
pub use safety::*;
pub use train::*;
pub use words::*;
