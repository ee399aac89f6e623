//! Writing a programme: one edit at a time, each of which leaves a programme that can be written on. Whether it can be
//! trained is [`Programme::check`]'s to say.

mod edit;
mod weeks;

pub use edit::{Edit, WeekStep};

use crate::catalogue::{Catalogue, Ladder, Pattern, ReadyMark};
use crate::ids::{BlockId, LadderId, PlanSessionId, SlotId};
use crate::programme::{
    Amount, Block, BlockForm, BlockPart, Dose, LevelSpan, PlanSession, Programme, Slot, Tempo,
};
use std::collections::BTreeMap;

/// Sessions of a programme, blocks of a session, and slots of a block: as many as [`Programme::check`] lets pass.
const MOST_SESSIONS: usize = 64;
const MOST_BLOCKS: usize = 24;
const MOST_SLOTS: usize = 12;
/// Characters of a title.
const MOST_TITLE: usize = 80;

/// Why an edit was not made. The programme is as it was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum EditError {
    /// It names something that is not there.
    #[error("there is no such thing in the programme")]
    NotThere,
    /// A number or a text is out of range, or there would be too many of something.
    #[error("a value is out of range")]
    Range,
}

/// An empty programme to write on.
#[must_use]
pub fn blank(id: crate::ids::ProgrammeId, title: &str) -> Programme {
    Programme {
        id,
        revision: 1,
        title: title.to_owned(),
        per_week: 2,
        weeks: None,
        light_weeks: Vec::new(),
        phases: Vec::new(),
        sessions: Vec::new(),
    }
}

/// A copy of a programme under ids of its own.
#[must_use]
pub fn copied(
    programme: &Programme,
    id: crate::ids::ProgrammeId,
    fresh: &mut impl FnMut() -> String,
) -> Programme {
    let mut copy = Programme { id, revision: 1, ..programme.clone() };
    for phase in &mut copy.phases {
        let was = std::mem::replace(&mut phase.id, fresh().into());
        for session in copy.sessions.iter_mut().filter(|s| s.phase.as_ref() == Some(&was)) {
            session.phase = Some(phase.id.clone());
        }
    }
    copy.sessions.iter_mut().for_each(|s| rename_session(s, fresh));
    copy
}

/// The form of a block by what stands in it and what it is there for.
#[must_use]
pub fn form_of(slots: usize, part: BlockPart) -> BlockForm {
    match (part, slots) {
        (BlockPart::WarmUp, _) => BlockForm::WarmUp,
        (BlockPart::Finisher, _) => BlockForm::Finisher,
        (BlockPart::CoolDown, _) => BlockForm::CoolDown,
        (BlockPart::Work, 0 | 1) => BlockForm::StraightSets,
        (BlockPart::Work, 2) => BlockForm::Superset,
        (BlockPart::Work, 3) => BlockForm::TriSet,
        (BlockPart::Work, _) => BlockForm::GiantSet,
    }
}

/// Rounds and rests that a new block begins with (common practice, no source).
fn usual_block(id: BlockId, part: BlockPart, slots: Vec<Slot>) -> Block {
    let (rounds, rest_seconds, between) = match part {
        BlockPart::Work => (3, 90, 15),
        BlockPart::Finisher => (2, 45, 15),
        BlockPart::WarmUp | BlockPart::CoolDown => (1, 0, 0),
    };
    Block {
        id,
        form: form_of(slots.len(), part),
        rounds,
        rest_seconds,
        rest_between_seconds: if slots.len() > 1 { between } else { 0 },
        by_week: Vec::new(),
        slots,
    }
}

/// Where a new block comes to stand: a warm-up before the work and after other warm-ups, a cool-down at the very end,
/// anything else before the first cool-down.
fn place_of(blocks: &[Block], part: BlockPart) -> usize {
    let after = |other: &Block| match part {
        BlockPart::WarmUp => other.form.part() == BlockPart::WarmUp,
        BlockPart::Work | BlockPart::Finisher => other.form.part() != BlockPart::CoolDown,
        BlockPart::CoolDown => true,
    };
    blocks.iter().rposition(after).map_or(0, |i| i + 1)
}

/// The dose that a new slot begins with: 8 to 12 reps with 3 left, or 20 to 40 seconds where the ladder is counted so
/// (common practice, no source).
#[must_use]
pub fn usual_dose(ladder: &Ladder) -> Dose {
    let amount = if is_timed(ladder) {
        Amount::Seconds { low: 20, high: 40 }
    } else {
        Amount::Reps { low: 8, high: 12 }
    };
    Dose { amount, target_rir: 3, tempo: None }
}

/// True where most of a ladder's variants are ready by seconds.
fn is_timed(ladder: &Ladder) -> bool {
    let all: Vec<_> = ladder.levels.iter().flat_map(|l| &l.variants).collect();
    let timed = all.iter().filter(|v| matches!(v.ready, ReadyMark::Seconds { .. })).count();
    timed * 2 > all.len()
}

/// Working sets of a week by kind of movement, as the programme is written: each session comes round `per_week` times by
/// the number of sessions. Finishers are not counted, nor are warm-up and cool-down, breathing, the pelvic floor or
/// mobility. A programme with phases is asked about week by week ([`Programme::in_week`]).
#[must_use]
pub fn week_sets(programme: &Programme, catalogue: &Catalogue) -> BTreeMap<Pattern, f64> {
    let mut sets: BTreeMap<Pattern, f64> = BTreeMap::new();
    let share = f64::from(programme.per_week) / programme.sessions.len().max(1) as f64;
    for (block, slot) in programme.sessions.iter().flat_map(PlanSession::slots) {
        let Some(ladder) = catalogue.ladder(&slot.ladder) else { continue };
        if block.form.part() == BlockPart::Work && !ladder.pattern.goes_on_meanwhile() {
            *sets.entry(ladder.pattern).or_default() += f64::from(block.rounds) * share;
        }
    }
    sets
}

/// Makes an edit. `fresh` gives ids that stand nowhere else; it is asked once for each that is needed.
///
/// # Errors
/// See [`EditError`].
pub fn edited(
    programme: &Programme,
    catalogue: &Catalogue,
    edit: &Edit,
    fresh: &mut impl FnMut() -> String,
) -> Result<Programme, EditError> {
    let mut next = programme.clone();
    apply(&mut next, catalogue, edit, fresh)?;
    Ok(next)
}

fn titled(title: &str) -> Result<String, EditError> {
    let title = title.trim();
    let is_whole = !title.is_empty() && title.chars().count() <= MOST_TITLE;
    if is_whole && !title.chars().any(char::is_control) {
        Ok(title.to_owned())
    } else {
        Err(EditError::Range)
    }
}

fn within<T>(value: T, range: std::ops::RangeInclusive<T>) -> Result<T, EditError>
where
    T: PartialOrd,
{
    if range.contains(&value) { Ok(value) } else { Err(EditError::Range) }
}

fn apply(
    programme: &mut Programme,
    catalogue: &Catalogue,
    edit: &Edit,
    fresh: &mut impl FnMut() -> String,
) -> Result<(), EditError> {
    match edit {
        Edit::Title { title } => programme.title = titled(title)?,
        Edit::PerWeek { per_week } => programme.per_week = within(*per_week, 1..=7)?,
        Edit::Weeks { weeks } => weeks::set(programme, *weeks)?,
        Edit::LightWeek { phase, week, light } => weeks::light(programme, phase.as_ref(), *week, *light)?,
        Edit::AddPhase { title } => weeks::add_phase(programme, title, fresh)?,
        Edit::CopyPhase { phase } => weeks::copy_phase(programme, phase, fresh)?,
        Edit::MovePhase { phase, to } => weeks::move_phase(programme, phase, *to)?,
        Edit::TitlePhase { phase, title } => {
            let at = weeks::phase_at(programme, phase)?;
            programme.phases[at].title = titled(title)?;
        }
        Edit::WeeksOfPhase { phase, weeks } => weeks::set_phase(programme, phase, *weeks)?,
        Edit::DropPhase { phase } => weeks::drop_phase(programme, phase)?,
        Edit::AddSession { title, phase } => {
            within(programme.sessions.len() + 1, 1..=MOST_SESSIONS)?;
            let title = titled(title)?;
            let phase = match phase {
                Some(phase) => Some(programme.phases[weeks::phase_at(programme, phase)?].id.clone()),
                None => programme.phases.last().map(|p| p.id.clone()),
            };
            programme.sessions.push(PlanSession {
                id: fresh().into(),
                title,
                minutes: None,
                phase,
                blocks: Vec::new(),
            });
        }
        Edit::PhaseOfSession { session, phase } => {
            let at = session_at(programme, session)?;
            let phase = programme.phases[weeks::phase_at(programme, phase)?].id.clone();
            let mut moved = programme.sessions.remove(at);
            moved.phase = Some(phase);
            weeks::fit(programme, &mut moved);
            programme.sessions.push(moved);
        }
        Edit::StepUp { session, from, to, every, step } => {
            let at = session_at(programme, session)?;
            weeks::step_up(programme, at, (*from, *to), *every, *step)?;
        }
        Edit::AsEveryWeek { block, week } => {
            let (s, b) = block_at(programme, block)?;
            let week = weeks::checked(programme, s, Some(*week))?;
            let block = &mut programme.sessions[s].blocks[b];
            block.by_week.retain(|w| Some(w.week) != week);
            block.slots.iter_mut().for_each(|slot| slot.by_week.retain(|w| Some(w.week) != week));
        }
        Edit::EvenWeeks { session } => {
            let at = session_at(programme, session)?;
            for block in &mut programme.sessions[at].blocks {
                block.by_week.clear();
                block.slots.iter_mut().for_each(|s| s.by_week.clear());
            }
        }
        Edit::CopySession { session } => {
            within(programme.sessions.len() + 1, 1..=MOST_SESSIONS)?;
            let at = session_at(programme, session)?;
            let mut copy = programme.sessions[at].clone();
            let taken: Vec<&str> = programme.sessions.iter().map(|s| s.title.as_str()).collect();
            copy.title = title_after(&copy.title, &taken);
            rename_session(&mut copy, fresh);
            programme.sessions.insert(at + 1, copy);
        }
        Edit::MoveSession { session, to } => {
            let at = session_at(programme, session)?;
            let moved = programme.sessions.remove(at);
            // Places are those of its phase; whatever stands between belongs to others.
            let of_phase = |s: &PlanSession| s.phase == moved.phase;
            let mut kin = (0..programme.sessions.len()).filter(|i| of_phase(&programme.sessions[*i]));
            let to = usize::from(*to);
            within(to, 0..=kin.clone().count())?;
            let to = match kin.clone().nth(to) {
                Some(before) => before,
                None => kin.next_back().map_or(at, |last| last + 1),
            };
            programme.sessions.insert(to, moved);
        }
        Edit::TitleSession { session, title } => {
            let at = session_at(programme, session)?;
            programme.sessions[at].title = titled(title)?;
        }
        Edit::MinutesOfSession { session, minutes } => {
            let at = session_at(programme, session)?;
            programme.sessions[at].minutes = minutes.map(|m| within(m, 5..=180)).transpose()?;
        }
        Edit::DropSession { session } => {
            let at = session_at(programme, session)?;
            programme.sessions.remove(at);
        }
        Edit::AddBlock { session, ladders, part } => {
            let at = session_at(programme, session)?;
            within(programme.sessions[at].blocks.len() + 1, 1..=MOST_BLOCKS)?;
            within(ladders.len(), 1..=MOST_SLOTS)?;
            let id: BlockId = fresh().into();
            let slots = ladders
                .iter()
                .map(|ladder| slot_of(catalogue, ladder, fresh))
                .collect::<Result<Vec<_>, _>>()?;
            let blocks = &mut programme.sessions[at].blocks;
            blocks.insert(place_of(blocks, *part), usual_block(id, *part, slots));
        }
        Edit::CopyBlock { block } => {
            let (s, b) = block_at(programme, block)?;
            within(programme.sessions[s].blocks.len() + 1, 1..=MOST_BLOCKS)?;
            let mut copy = programme.sessions[s].blocks[b].clone();
            rename(&mut copy, fresh);
            programme.sessions[s].blocks.insert(b + 1, copy);
        }
        Edit::MoveBlock { block, session, to } => {
            let (s, b) = block_at(programme, block)?;
            let target = session_at(programme, session)?;
            let others = programme.sessions[target].blocks.len() - usize::from(target == s);
            within(others + 1, 1..=MOST_BLOCKS)?;
            let to = within(usize::from(*to), 0..=others)?;
            let moved = programme.sessions[s].blocks.remove(b);
            programme.sessions[target].blocks.insert(to, moved);
            weeks::fit_at(programme, target);
        }
        Edit::ShapeBlock { block, rounds, rest_seconds, rest_between_seconds, part, week } => {
            let (s, b) = block_at(programme, block)?;
            let week = weeks::checked(programme, s, *week)?;
            let shaped = &mut programme.sessions[s].blocks[b];
            let mut shape = weeks::shape_in(shaped, week);
            shape.rounds = within(rounds.unwrap_or(shape.rounds), 1..=12)?;
            shape.rest_seconds = within(rest_seconds.unwrap_or(shape.rest_seconds), 0..=600)?;
            let between = rest_between_seconds.unwrap_or(shape.rest_between_seconds);
            shape.rest_between_seconds = within(between, 0..=600)?;
            weeks::set_shape(shaped, week, shape);
            shaped.form = form_of(shaped.slots.len(), part.unwrap_or(shaped.form.part()));
        }
        Edit::DropBlock { block } => {
            let (s, b) = block_at(programme, block)?;
            programme.sessions[s].blocks.remove(b);
        }
        Edit::AddSlot { block, ladder } => {
            let (s, b) = block_at(programme, block)?;
            within(programme.sessions[s].blocks[b].slots.len() + 1, 1..=MOST_SLOTS)?;
            let slot = slot_of(catalogue, ladder, fresh)?;
            let into = &mut programme.sessions[s].blocks[b];
            into.slots.push(slot);
            refit(into);
        }
        Edit::MoveSlot { slot, block, to } => {
            let (s, b, n) = slot_at(programme, slot)?;
            let (ts, tb) = block_at(programme, block)?;
            let same = (s, b) == (ts, tb);
            let others = programme.sessions[ts].blocks[tb].slots.len() - usize::from(same);
            within(others + 1, 1..=MOST_SLOTS)?;
            let to = within(usize::from(*to), 0..=others)?;
            let moved = programme.sessions[s].blocks[b].slots.remove(n);
            programme.sessions[ts].blocks[tb].slots.insert(to, moved);
            weeks::fit_at(programme, ts);
            refit(&mut programme.sessions[ts].blocks[tb]);
            leave(programme, s, b);
        }
        Edit::LadderOfSlot { slot, ladder } => {
            let (s, b, n) = slot_at(programme, slot)?;
            let known = catalogue.ladder(ladder).ok_or(EditError::NotThere)?;
            let changed = &mut programme.sessions[s].blocks[b].slots[n];
            let usual = usual_dose(known);
            if std::mem::discriminant(&usual.amount) != std::mem::discriminant(&changed.dose.amount) {
                changed.dose = Dose { amount: usual.amount, ..changed.dose };
                changed.by_week.clear();
            }
            // Levels speak of the ladder that was there.
            changed.levels = changed.levels.filter(|_| changed.ladder == *ladder);
            changed.ladder = ladder.clone();
        }
        Edit::AmountOfSlot { slot, low, high, week } => dosed(programme, slot, *week, |dose| {
            let (low, high) = ends(*low, *high, dose.amount.low(), dose.amount.high());
            within(low, 1..=600)?;
            within(high, 1..=600)?;
            dose.amount = match dose.amount {
                Amount::Reps { .. } => Amount::Reps { low, high },
                Amount::Seconds { .. } => Amount::Seconds { low, high },
            };
            Ok(())
        })?,
        Edit::ReserveOfSlot { slot, target_rir, week } => dosed(programme, slot, *week, |dose| {
            dose.target_rir = within(*target_rir, 0..=10)?;
            Ok(())
        })?,
        Edit::TempoOfSlot { slot, down, pause, up, week } => dosed(programme, slot, *week, |dose| {
            let now = dose.tempo.unwrap_or(Tempo { down: 2, pause: 0, up: 1 });
            dose.tempo = Some(Tempo {
                down: within(down.unwrap_or(now.down), 0..=20)?,
                pause: within(pause.unwrap_or(now.pause), 0..=20)?,
                up: within(up.unwrap_or(now.up), 0..=20)?,
            });
            Ok(())
        })?,
        Edit::FreeTempo { slot, week } => dosed(programme, slot, *week, |dose| {
            dose.tempo = None;
            Ok(())
        })?,
        Edit::LevelsOfSlot { slot, low, high } => {
            let changed = slot_mut(programme, slot)?;
            let known = catalogue.ladder(&changed.ladder).ok_or(EditError::NotThere)?;
            let top = u8::try_from(known.levels.len().saturating_sub(1)).unwrap_or(u8::MAX);
            let now = changed.levels.unwrap_or(LevelSpan { low: 0, high: top });
            let (low, high) = ends(*low, *high, now.low, now.high);
            within(low, 0..=top)?;
            within(high, 0..=top)?;
            changed.levels = ((low, high) != (0, top)).then_some(LevelSpan { low, high });
        }
        Edit::DropSlot { slot } => {
            let (s, b, n) = slot_at(programme, slot)?;
            programme.sessions[s].blocks[b].slots.remove(n);
            leave(programme, s, b);
        }
    }
    Ok(())
}

/// A title for a copy: the next number or letter where the title ends with one, else with a 2, and none that is taken.
fn title_after(title: &str, taken: &[&str]) -> String {
    let stem = title.trim_end_matches(|c: char| c.is_ascii_digit());
    let next = |n: u32| {
        let tail = n.to_string();
        // A title has room for 80 characters; what is too long loses its end and not its number.
        let room = MOST_TITLE.saturating_sub(tail.len() + 1);
        let stem: String = stem.trim_end().chars().take(room).collect();
        if stem.is_empty() { tail } else { format!("{stem} {tail}") }
    };
    let number = title[stem.len()..].parse::<u32>().ok();
    let letter = title.rsplit(' ').next().filter(|w| w.len() == 1).and_then(|w| w.chars().next());
    if let Some(letter) = letter.filter(|l| ('A'..='Y').contains(l)) {
        let stem = &title[..title.len() - 1];
        let free =
            (letter..='Z').skip(1).map(|l| format!("{stem}{l}")).find(|t| !taken.contains(&t.as_str()));
        if let Some(free) = free {
            return free;
        }
    }
    let from = number.unwrap_or(1).saturating_add(1);
    (from..from.saturating_add(1000))
        .map(next)
        .find(|t| !taken.contains(&t.as_str()))
        .unwrap_or_else(|| next(from))
}

fn slot_of(
    catalogue: &Catalogue,
    ladder: &LadderId,
    fresh: &mut impl FnMut() -> String,
) -> Result<Slot, EditError> {
    let known = catalogue.ladder(ladder).ok_or(EditError::NotThere)?;
    Ok(Slot {
        id: fresh().into(),
        ladder: ladder.clone(),
        levels: None,
        dose: usual_dose(known),
        by_week: Vec::new(),
    })
}

/// Changes the dose of a slot, in one week of its phase or in all.
fn dosed(
    programme: &mut Programme,
    id: &SlotId,
    week: Option<u8>,
    change: impl FnOnce(&mut Dose) -> Result<(), EditError>,
) -> Result<(), EditError> {
    let (s, b, n) = slot_at(programme, id)?;
    let week = weeks::checked(programme, s, week)?;
    let slot = &mut programme.sessions[s].blocks[b].slots[n];
    let mut dose = weeks::dose_in(slot, week);
    change(&mut dose)?;
    weeks::set_dose(slot, week, dose);
    Ok(())
}

/// A copied session's own ids.
fn rename_session(session: &mut PlanSession, fresh: &mut impl FnMut() -> String) {
    session.id = fresh().into();
    session.blocks.iter_mut().for_each(|b| rename(b, fresh));
}

/// A copy's own ids.
fn rename(block: &mut Block, fresh: &mut impl FnMut() -> String) {
    block.id = fresh().into();
    for slot in &mut block.slots {
        slot.id = fresh().into();
    }
}

fn refit(block: &mut Block) {
    block.form = form_of(block.slots.len(), block.form.part());
}

/// What a slot left behind: a block without slots goes.
fn leave(programme: &mut Programme, session: usize, block: usize) {
    let blocks = &mut programme.sessions[session].blocks;
    if blocks[block].slots.is_empty() {
        blocks.remove(block);
    } else {
        refit(&mut blocks[block]);
    }
}

/// Both ends of a range after one or both were said anew: the one that was said takes the other along.
fn ends<T: Copy + Ord>(low: Option<T>, high: Option<T>, low_now: T, high_now: T) -> (T, T) {
    match (low, high) {
        (Some(low), Some(high)) => (low.min(high), low.max(high)),
        (Some(low), None) => (low, high_now.max(low)),
        (None, Some(high)) => (low_now.min(high), high),
        (None, None) => (low_now, high_now),
    }
}

fn slot_mut<'p>(programme: &'p mut Programme, id: &SlotId) -> Result<&'p mut Slot, EditError> {
    let (s, b, n) = slot_at(programme, id)?;
    Ok(&mut programme.sessions[s].blocks[b].slots[n])
}

fn session_at(programme: &Programme, id: &PlanSessionId) -> Result<usize, EditError> {
    programme.sessions.iter().position(|s| s.id == *id).ok_or(EditError::NotThere)
}

fn block_at(programme: &Programme, id: &BlockId) -> Result<(usize, usize), EditError> {
    programme
        .sessions
        .iter()
        .enumerate()
        .find_map(|(s, session)| Some((s, session.blocks.iter().position(|b| b.id == *id)?)))
        .ok_or(EditError::NotThere)
}

fn slot_at(programme: &Programme, id: &SlotId) -> Result<(usize, usize, usize), EditError> {
    programme
        .sessions
        .iter()
        .enumerate()
        .find_map(|(s, session)| {
            session
                .blocks
                .iter()
                .enumerate()
                .find_map(|(b, block)| Some((s, b, block.slots.iter().position(|slot| slot.id == *id)?)))
        })
        .ok_or(EditError::NotThere)
}
