//! The engine told as stories of clients: what is logged, and what is proposed next.

// Helpers of tests stand outside of test functions and may unwrap like them.
#![allow(clippy::unwrap_used)]

mod advice;
mod ahead;
mod catalogue;
mod class;
mod eased;
mod effort;
mod finding;
mod gains;
mod ground;
mod growth;
mod impact;
mod ledger;
mod levels;
mod loads;
mod log;
mod own;
mod pinned_flow;
mod pinned_ground;
mod pinned_holds;
mod pinned_ledger;
mod pinned_levels;
mod pinned_loads;
mod pinned_sets;
mod pinned_strength;
mod pinned_symptoms;
mod pinned_weeks;
mod progress;
mod properties;
mod proposal;
mod reps_now;
mod revision;
mod rules_matter;
mod rules_matter_around;
mod rules_matter_kinds;
mod rules_matter_stories;
mod screening;
mod sessions;
mod settings;
mod settings_properties;
mod situations;
mod stages;
mod story;
mod symptom_matrix;
mod symptom_table;
mod symptoms;
mod trace;
mod watch;
mod weeks;
mod whys;
mod writing;
