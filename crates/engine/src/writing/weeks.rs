//! Edits of phases and weeks. A week of a session is counted from the first of its phase; what is asked for in weeks that
//! are no more goes, and a week that asks for what every week asks for is none of its own.

use super::{EditError, MOST_SESSIONS, WeekStep, rename_session, title_after, titled, within};
use crate::ids::PhaseId;
use crate::programme::{
    Amount, Block, BlockPart, BlockWeek, Dose, MOST_WEEKS, Phase, PlanSession, Programme, Slot, SlotWeek,
};

/// Weeks that a new phase begins with.
const USUAL_WEEKS: u8 = 4;
/// Phases of a programme at most.
const MOST_PHASES: usize = 16;

pub(super) fn phase_at(programme: &Programme, id: &PhaseId) -> Result<usize, EditError> {
    programme.phases.iter().position(|p| p.id == *id).ok_or(EditError::NotThere)
}

/// Weeks of the phase of a session, or of a programme without phases; `None` where the end is open.
fn weeks_of(programme: &Programme, session: &PlanSession) -> Option<u8> {
    match programme.phases.iter().find(|p| session.is_of(Some(p))) {
        Some(phase) => Some(phase.weeks),
        None => programme.weeks,
    }
}

/// A week of a session's phase, if there is such a week.
pub(super) fn checked(
    programme: &Programme,
    session: usize,
    week: Option<u8>,
) -> Result<Option<u8>, EditError> {
    let most = weeks_of(programme, &programme.sessions[session]).unwrap_or(MOST_WEEKS);
    week.map(|w| within(w, 1..=most)).transpose()
}

/// Leaves out of a session what it asks for in weeks that its phase does not have.
pub(super) fn fit(programme: &Programme, session: &mut PlanSession) {
    let Some(most) = weeks_of(programme, session) else { return };
    for block in &mut session.blocks {
        block.by_week.retain(|w| w.week <= most);
        block.slots.iter_mut().for_each(|s| s.by_week.retain(|w| w.week <= most));
    }
}

pub(super) fn fit_at(programme: &mut Programme, session: usize) {
    let mut fitted = programme.sessions[session].clone();
    fit(programme, &mut fitted);
    programme.sessions[session] = fitted;
}

fn fit_all(programme: &mut Programme) {
    (0..programme.sessions.len()).for_each(|i| fit_at(programme, i));
}

/// The weeks of a phased programme are those of its phases.
fn sum_up(programme: &mut Programme) -> Result<(), EditError> {
    let sum: u32 = programme.phases.iter().map(|p| u32::from(p.weeks)).sum();
    let sum = u8::try_from(sum).map_err(|_| EditError::Range)?;
    programme.weeks = Some(within(sum, 1..=MOST_WEEKS)?);
    Ok(())
}

pub(super) fn set(programme: &mut Programme, weeks: Option<u8>) -> Result<(), EditError> {
    if !programme.phases.is_empty() {
        return Err(EditError::Range);
    }
    programme.weeks = weeks.map(|w| within(w, 1..=MOST_WEEKS)).transpose()?;
    if let Some(most) = programme.weeks {
        programme.light_weeks.retain(|w| *w <= most);
    }
    fit_all(programme);
    Ok(())
}

pub(super) fn light(
    programme: &mut Programme,
    phase: Option<&PhaseId>,
    week: u8,
    light: bool,
) -> Result<(), EditError> {
    let (weeks, most) = match phase {
        Some(id) => {
            let at = phase_at(programme, id)?;
            let phase = &mut programme.phases[at];
            (&mut phase.light_weeks, phase.weeks)
        }
        None if programme.phases.is_empty() => {
            (&mut programme.light_weeks, programme.weeks.unwrap_or(MOST_WEEKS))
        }
        None => return Err(EditError::NotThere),
    };
    within(week, 1..=most)?;
    weeks.retain(|w| *w != week);
    if light {
        weeks.push(week);
        weeks.sort_unstable();
    }
    Ok(())
}

pub(super) fn add_phase(
    programme: &mut Programme,
    title: &str,
    fresh: &mut impl FnMut() -> String,
) -> Result<(), EditError> {
    within(programme.phases.len() + 1, 1..=MOST_PHASES)?;
    let title = titled(title)?;
    let id: PhaseId = fresh().into();
    let first = programme.phases.is_empty();
    let weeks = programme.weeks.filter(|_| first).unwrap_or(USUAL_WEEKS);
    let light_weeks = if first { std::mem::take(&mut programme.light_weeks) } else { Vec::new() };
    let light_weeks = light_weeks.into_iter().filter(|w| *w <= weeks).collect();
    if first {
        programme.sessions.iter_mut().for_each(|s| s.phase = Some(id.clone()));
    }
    programme.phases.push(Phase { id, title, weeks, light_weeks });
    sum_up(programme)?;
    fit_all(programme);
    Ok(())
}

pub(super) fn copy_phase(
    programme: &mut Programme,
    phase: &PhaseId,
    fresh: &mut impl FnMut() -> String,
) -> Result<(), EditError> {
    within(programme.phases.len() + 1, 1..=MOST_PHASES)?;
    let at = phase_at(programme, phase)?;
    let mut copy = programme.phases[at].clone();
    copy.id = fresh().into();
    let taken: Vec<&str> = programme.phases.iter().map(|p| p.title.as_str()).collect();
    copy.title = title_after(&copy.title, &taken);
    let of_it = programme.sessions.iter().filter(|s| s.phase.as_ref() == Some(phase));
    let mut sessions: Vec<PlanSession> = of_it.cloned().collect();
    within(programme.sessions.len() + sessions.len(), 0..=MOST_SESSIONS)?;
    for session in &mut sessions {
        rename_session(session, fresh);
        session.phase = Some(copy.id.clone());
    }
    programme.phases.insert(at + 1, copy);
    programme.sessions.extend(sessions);
    sum_up(programme)
}

pub(super) fn move_phase(programme: &mut Programme, phase: &PhaseId, to: u8) -> Result<(), EditError> {
    let at = phase_at(programme, phase)?;
    let to = within(usize::from(to), 0..=programme.phases.len() - 1)?;
    let moved = programme.phases.remove(at);
    programme.phases.insert(to, moved);
    Ok(())
}

pub(super) fn set_phase(programme: &mut Programme, phase: &PhaseId, weeks: u8) -> Result<(), EditError> {
    let at = phase_at(programme, phase)?;
    let phase = &mut programme.phases[at];
    phase.weeks = within(weeks, 1..=MOST_WEEKS)?;
    phase.light_weeks.retain(|w| *w <= weeks);
    sum_up(programme)?;
    fit_all(programme);
    Ok(())
}

pub(super) fn drop_phase(programme: &mut Programme, phase: &PhaseId) -> Result<(), EditError> {
    let at = phase_at(programme, phase)?;
    let gone = programme.phases.remove(at);
    if programme.phases.is_empty() {
        programme.sessions.iter_mut().for_each(|s| s.phase = None);
        programme.light_weeks = gone.light_weeks;
        return Ok(());
    }
    programme.sessions.retain(|s| s.phase.as_ref() != Some(phase));
    sum_up(programme)
}

/// The shape of a block in a week, or in every week; its week number says nothing.
pub(super) fn shape_in(block: &Block, week: Option<u8>) -> BlockWeek {
    let every = BlockWeek {
        week: 0,
        rounds: block.rounds,
        rest_seconds: block.rest_seconds,
        rest_between_seconds: block.rest_between_seconds,
    };
    week.and_then(|week| block.by_week.iter().find(|w| w.week == week)).copied().unwrap_or(every)
}

pub(super) fn set_shape(block: &mut Block, week: Option<u8>, shape: BlockWeek) {
    match week {
        Some(week) => {
            block.by_week.retain(|w| w.week != week);
            block.by_week.push(BlockWeek { week, ..shape });
            block.by_week.sort_unstable_by_key(|w| w.week);
        }
        None => {
            // A week follows in what it shared with every week, and keeps what was its own.
            for own in &mut block.by_week {
                follow(&mut own.rounds, block.rounds, shape.rounds);
                follow(&mut own.rest_seconds, block.rest_seconds, shape.rest_seconds);
                let (was, now) = (block.rest_between_seconds, shape.rest_between_seconds);
                follow(&mut own.rest_between_seconds, was, now);
            }
            block.rounds = shape.rounds;
            block.rest_seconds = shape.rest_seconds;
            block.rest_between_seconds = shape.rest_between_seconds;
        }
    }
    let every = shape_in(block, None);
    block.by_week.retain(|w| BlockWeek { week: 0, ..*w } != every);
}

/// Takes a new value where it had the old one.
fn follow<T: PartialEq>(own: &mut T, was: T, now: T) {
    if *own == was {
        *own = now;
    }
}

/// The dose of a slot in a week, or in every week.
pub(super) fn dose_in(slot: &Slot, week: Option<u8>) -> Dose {
    week.and_then(|week| slot.by_week.iter().find(|w| w.week == week)).map_or(slot.dose, |w| w.dose)
}

pub(super) fn set_dose(slot: &mut Slot, week: Option<u8>, dose: Dose) {
    match week {
        Some(week) => {
            slot.by_week.retain(|w| w.week != week);
            slot.by_week.push(SlotWeek { week, dose });
            slot.by_week.sort_unstable_by_key(|w| w.week);
        }
        None => {
            let was = slot.dose;
            for own in &mut slot.by_week {
                follow(&mut own.dose.amount, was.amount, dose.amount);
                follow(&mut own.dose.target_rir, was.target_rir, dose.target_rir);
                follow(&mut own.dose.tempo, was.tempo, dose.tempo);
            }
            slot.dose = dose;
        }
    }
    let every = slot.dose;
    slot.by_week.retain(|w| w.dose != every);
}

pub(super) fn step_up(
    programme: &mut Programme,
    session: usize,
    (from, to): (u8, u8),
    every: u8,
    step: WeekStep,
) -> Result<(), EditError> {
    // Without an end there is no last week to rise to.
    let most = weeks_of(programme, &programme.sessions[session]).ok_or(EditError::Range)?;
    within(from, 1..=most)?;
    within(to, from..=most)?;
    within(every, 1..=12)?;
    within(step.reps, 0..=10)?;
    within(step.seconds, 0..=60)?;
    within(step.rounds, 0..=3)?;
    within(step.reserve, 0..=3)?;
    let phase = programme.phases.iter().find(|p| programme.sessions[session].is_of(Some(p)));
    let light = phase.map_or_else(|| programme.light_weeks.clone(), |p| p.light_weeks.clone());
    for block in programme.sessions[session].blocks.iter_mut().filter(|b| b.form.part() == BlockPart::Work) {
        let shape = shape_in(block, Some(from));
        let doses: Vec<Dose> = block.slots.iter().map(|s| dose_in(s, Some(from))).collect();
        let mut trained = 0_u8;
        let mut n = 0_u8;
        for week in from..=to {
            // A light week asks for what the one before it asked for; its rule eases that.
            if !light.contains(&week) {
                n = trained / every;
                trained = trained.saturating_add(1);
            }
            if week == from {
                continue;
            }
            let rounds = shape.rounds.saturating_add(step.rounds.saturating_mul(n)).min(12);
            set_shape(block, Some(week), BlockWeek { rounds, ..shape });
            for (slot, dose) in block.slots.iter_mut().zip(&doses) {
                set_dose(slot, Some(week), stepped(*dose, step, n));
            }
        }
    }
    Ok(())
}

/// A dose after so many steps.
fn stepped(dose: Dose, step: WeekStep, steps: u8) -> Dose {
    let steps = u16::from(steps);
    let more = |count: u16, each: u8| count.saturating_add(u16::from(each).saturating_mul(steps)).min(600);
    let amount = match dose.amount {
        Amount::Reps { low, high } => Amount::Reps { low: more(low, step.reps), high: more(high, step.reps) },
        Amount::Seconds { low, high } => {
            Amount::Seconds { low: more(low, step.seconds), high: more(high, step.seconds) }
        }
    };
    let less = u8::try_from(u16::from(step.reserve).saturating_mul(steps)).unwrap_or(u8::MAX);
    let target_rir = dose.target_rir.saturating_sub(less).max(dose.target_rir.min(1));
    Dose { amount, target_rir, ..dose }
}
