//! What comes in from a form, looked at before it is written: a value that no home and no body can mean is refused.

use crate::error::{AppError, Refusal};
use newel_engine::kit::Load;
use newel_engine::record::{Reserve, Symptom, SymptomAmount};

pub(crate) fn checked_symptom(symptom: Symptom) -> Result<Symptom, AppError> {
    let long = |s: &Option<String>| s.as_ref().is_some_and(|t| t.chars().count() > 2000);
    let pain = matches!(symptom.amount, Some(SymptomAmount::Pain(n)) if n > 10);
    if long(&symptom.words) || long(&symptom.place) || pain {
        return Err(Refusal::OutOfRange.into());
    }
    Ok(symptom)
}

pub(crate) fn checked_symptoms(list: Vec<Symptom>) -> Result<Vec<Symptom>, AppError> {
    list.into_iter().map(checked_symptom).collect()
}

pub(crate) fn checked_load(load: &Load) -> Result<(), AppError> {
    let parts = match load {
        Load::Nothing | Load::One { .. } | Load::Pair { .. } => 0,
        Load::Barbell { plates, .. } => plates.len(),
        Load::Bands { bands } | Load::Assist { bands } => bands.len(),
    };
    if load.is_plausible() && parts <= 16 { Ok(()) } else { Err(Refusal::OutOfRange.into()) }
}

pub(crate) fn checked_set(
    reps: u16,
    seconds: Option<u16>,
    reserve: Option<Reserve>,
    load: &Load,
) -> Result<(), AppError> {
    let reserve_fits = match reserve {
        None => true,
        Some(Reserve::Exactly(n)) => n <= 4,
        Some(Reserve::AtLeast(n)) => n == 5,
    };
    if reps > 200 || seconds.is_some_and(|s| s > 1800) || !reserve_fits {
        return Err(Refusal::OutOfRange.into());
    }
    checked_load(load)
}
