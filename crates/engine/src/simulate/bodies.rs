//! What synthetic clients can really lift when they begin. Invented: no source; nothing is proposed by it.

use crate::catalogue::{Place, ReadyMark};
use crate::units::Kg;

/// Ten-rep max of a newcomer as (share of body mass that moves along, held share of body mass).
const TEN_REP_MAX: &[(&str, f64, f64)] = &[
    ("squat", 0.878, 0.24),
    ("hinge", 0.0, 0.40),
    ("hinge-band", 0.0, 0.20),
    ("offset-hinge", 0.0, 0.22),
    ("single-leg-hinge", 0.0, 0.16),
    ("bridge-loaded", 0.0, 0.42),
    ("bridge-loaded-incline", 0.0, 0.40),
    ("split-squat-loaded", 0.0, 0.20),
    ("split-squat-goblet", 0.0, 0.16),
    ("split-squat-rear-foot", 0.0, 0.15),
    ("step-up-loaded", 0.0, 0.18),
    ("step-up-goblet", 0.0, 0.14),
    ("push-up", 0.40, 0.16),
    ("chest-press-band", 0.0, 0.095),
    ("chest-press-one-weight", 0.0, 0.17),
    ("chest-press-flat", 0.0, 0.25),
    ("chest-press-incline", 0.0, 0.22),
    ("overhead-press-one-arm", 0.0, 0.085),
    ("overhead-press-band", 0.0, 0.06),
    ("overhead-press-pair", 0.0, 0.16),
    ("overhead-press-one-weight", 0.0, 0.13),
    ("overhead-press-barbell", 0.0, 0.25),
    ("row-band", 0.0, 0.12),
    ("row-one-arm", 0.0, 0.15),
    ("row-hinged", 0.0, 0.26),
    ("row-hinged-band", 0.0, 0.14),
    ("vertical-pull-band", 0.0, 0.13),
    ("pull-up", 0.58, 0.20),
    ("press-out-seated", 0.0, 0.065),
    ("press-out-kneeling", 0.0, 0.060),
    ("press-out-standing", 0.0, 0.060),
    ("press-out-split", 0.0, 0.058),
];

/// Her ten-rep-max effective load in the group of a variant; `None` without one.
#[must_use]
pub fn ten_rep_max(place: &Place<'_>, body_kg: f64, strength: f64) -> Option<Kg> {
    let group = place.variant.group.as_ref()?;
    let (_, body, held) = TEN_REP_MAX.iter().find(|(id, ..)| *id == group.as_str())?;
    Some(Kg(body_kg * (body + held * strength)))
}

/// Reps that she could do of a variant without a load when she begins: fewer the higher its level.
#[must_use]
pub fn reps_unloaded(place: &Place<'_>, strength: f64) -> f64 {
    let level = f64::from(u32::try_from(place.level).unwrap_or(u32::MAX));
    let few = match place.variant.ready {
        // A variant that counts as mastered at a few reps is a hard one.
        ReadyMark::Reps { reps } if reps <= 8 => 7.0,
        ReadyMark::Reps { .. } | ReadyMark::Seconds { .. } | ReadyMark::Load { .. } => 0.0,
    };
    ((18.0 - 2.0 * level) * (0.5 + 0.5 * strength) - few).max(4.0)
}

/// Seconds that she can hold, carry or breathe.
#[must_use]
pub fn seconds(place: &Place<'_>, strength: f64) -> f64 {
    let level = f64::from(u32::try_from(place.level).unwrap_or(u32::MAX));
    (70.0 - 10.0 * level) * (0.5 + 0.5 * strength)
}
