//! The real window, steered from outside: WebKitWebDriver opens the very program that people run, under a display of its
//! own, on a data folder of its own. Linux alone has such a driver for it.
//!
//! ```no_run
//! # async fn example() -> anyhow::Result<()> {
//! use newel_tests::{Opening, PHONE, Window};
//! let scratch = tempfile::tempdir()?;
//! let window = Window::open(Opening::new(scratch.path())).await?;
//! window.resize(PHONE).await?;
//! window.click("button[data-testid=begin]").await?;
//! let window = window.kill_and_reopen().await?; // kill -9, as when a battery dies
//! window.close().await?;
//! # Ok(())
//! # }
//! ```

mod axe;
pub mod fit;
pub mod job;
pub mod looks;
mod place;
mod process;
pub mod tour;
mod window;

pub use axe::Violation;
pub use place::{program, repository, target};
pub use window::{Found, LAPTOP, Opening, PHONE, Scheme, Size, Window};
