//! Writing a programme: one edit at a time, each of which leaves a programme that can be written on. Whether it can be
//! trained is [`Programme::check`]'s to say.

use crate::catalogue::{Catalogue, Ladder, Pattern, ReadyMark};
use crate::ids::{BlockId, LadderId, PlanSessionId, SlotId};
use crate::programme::{Amount, Block, BlockForm, Dose, LevelSpan, PlanSession, Programme, Slot, Tempo};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// Sessions of a programme, blocks of a session, and slots of a block: as many as [`Programme::check`] lets pass.
const MOST_SESSIONS: usize = 64;
const MOST_BLOCKS: usize = 24;
const MOST_SLOTS: usize = 12;
/// Characters of a title.
const MOST_TITLE: usize = 80;

/// One change to a programme. What is added or copied gets ids of its own.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "edit", rename_all = "snake_case", deny_unknown_fields)]
#[ts(export)]
pub enum Edit {
    /// Its name.
    Title {
        /// At most 80 characters.
        title: String,
    },
    /// How many sessions a week are meant.
    PerWeek {
        /// 1 to 7.
        per_week: u8,
    },
    /// For how many weeks it is written; open if absent.
    Weeks {
        /// 1 to 52.
        weeks: Option<u8>,
    },
    /// A new, empty session at the end.
    AddSession {
        /// Its name.
        title: String,
    },
    /// A copy of a session, right after it.
    CopySession {
        /// Which.
        session: PlanSessionId,
    },
    /// A session comes to stand at another place.
    MoveSession {
        /// Which.
        session: PlanSessionId,
        /// Its new place, from 0.
        to: u8,
    },
    /// A session's name.
    TitleSession {
        /// Which.
        session: PlanSessionId,
        /// At most 80 characters.
        title: String,
    },
    /// How many minutes a session is meant to take; left open if absent.
    MinutesOfSession {
        /// Which.
        session: PlanSessionId,
        /// 5 to 180.
        minutes: Option<u16>,
    },
    /// A session goes.
    DropSession {
        /// Which.
        session: PlanSessionId,
    },
    /// A new block at the end of a session, with a slot for each ladder.
    AddBlock {
        /// Where.
        session: PlanSessionId,
        /// Its ladders in order; at least one.
        ladders: Vec<LadderId>,
        /// True for one to end with.
        finisher: bool,
    },
    /// A copy of a block, right after it.
    CopyBlock {
        /// Which.
        block: BlockId,
    },
    /// A block comes to stand at another place, perhaps in another session.
    MoveBlock {
        /// Which.
        block: BlockId,
        /// The session.
        session: PlanSessionId,
        /// Its new place there, from 0.
        to: u8,
    },
    /// Rounds, rests, and whether it is one to end with; what is absent stays.
    ShapeBlock {
        /// Which.
        block: BlockId,
        /// 1 to 12.
        rounds: Option<u8>,
        /// After each round, 0 to 600 s.
        rest_seconds: Option<u16>,
        /// Between two slots, 0 to 600 s.
        rest_between_seconds: Option<u16>,
        /// True for one to end with.
        finisher: Option<bool>,
    },
    /// A block goes.
    DropBlock {
        /// Which.
        block: BlockId,
    },
    /// A new slot at the end of a block.
    AddSlot {
        /// Where.
        block: BlockId,
        /// Its ladder.
        ladder: LadderId,
    },
    /// A slot comes to stand at another place, perhaps in another block. A block that is left empty goes.
    MoveSlot {
        /// Which.
        slot: SlotId,
        /// The block.
        block: BlockId,
        /// Its new place there, from 0.
        to: u8,
    },
    /// Another ladder in a slot, which keeps its dose where the new ladder is counted the same way.
    LadderOfSlot {
        /// Which.
        slot: SlotId,
        /// The ladder.
        ladder: LadderId,
    },
    /// The lower or the upper end of a slot's reps or seconds, 1 to 600. An end that passes the other takes it along.
    AmountOfSlot {
        /// Which.
        slot: SlotId,
        /// Lower end.
        low: Option<u16>,
        /// Upper end.
        high: Option<u16>,
    },
    /// Reps in reserve that a slot aims at.
    ReserveOfSlot {
        /// Which.
        slot: SlotId,
        /// 0 to 10.
        target_rir: u8,
    },
    /// Parts of a slot's tempo, 0 to 20 s each; what is absent stays, or begins as 2-0-1.
    TempoOfSlot {
        /// Which.
        slot: SlotId,
        /// Lowering.
        down: Option<u8>,
        /// Held.
        pause: Option<u8>,
        /// Lifting.
        up: Option<u8>,
    },
    /// A slot's tempo is left free.
    FreeTempo {
        /// Which.
        slot: SlotId,
    },
    /// The lowest or the highest allowed level of a slot. An end that passes the other takes it along; all levels are the
    /// same as none being named.
    LevelsOfSlot {
        /// Which.
        slot: SlotId,
        /// Lowest, 0 for the easiest.
        low: Option<u8>,
        /// Highest.
        high: Option<u8>,
    },
    /// A slot goes; a block that is left empty goes with it.
    DropSlot {
        /// Which.
        slot: SlotId,
    },
}

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
    let sessions = Vec::new();
    Programme { id, revision: 1, title: title.to_owned(), per_week: 2, weeks: None, sessions }
}

/// A copy of a programme under ids of its own.
#[must_use]
pub fn copied(
    programme: &Programme,
    id: crate::ids::ProgrammeId,
    fresh: &mut impl FnMut() -> String,
) -> Programme {
    let mut copy = Programme { id, revision: 1, ..programme.clone() };
    for session in &mut copy.sessions {
        session.id = fresh().into();
        session.blocks.iter_mut().for_each(|b| rename(b, fresh));
    }
    copy
}

/// The form of a block by what stands in it.
#[must_use]
pub fn form_of(slots: usize, finisher: bool) -> BlockForm {
    match (finisher, slots) {
        (true, _) => BlockForm::Finisher,
        (false, 0 | 1) => BlockForm::StraightSets,
        (false, 2) => BlockForm::Superset,
        (false, 3) => BlockForm::TriSet,
        (false, _) => BlockForm::GiantSet,
    }
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
/// the number of sessions. Finishers are not counted, nor is breathing, the pelvic floor or mobility.
#[must_use]
pub fn week_sets(programme: &Programme, catalogue: &Catalogue) -> BTreeMap<Pattern, f64> {
    let mut sets: BTreeMap<Pattern, f64> = BTreeMap::new();
    let share = f64::from(programme.per_week) / programme.sessions.len().max(1) as f64;
    for (block, slot) in programme.sessions.iter().flat_map(PlanSession::slots) {
        let Some(ladder) = catalogue.ladder(&slot.ladder) else { continue };
        if block.form != BlockForm::Finisher && !ladder.pattern.goes_on_meanwhile() {
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
        Edit::Weeks { weeks } => programme.weeks = weeks.map(|w| within(w, 1..=52)).transpose()?,
        Edit::AddSession { title } => {
            within(programme.sessions.len() + 1, 1..=MOST_SESSIONS)?;
            let title = titled(title)?;
            programme.sessions.push(PlanSession {
                id: fresh().into(),
                title,
                minutes: None,
                blocks: Vec::new(),
            });
        }
        Edit::CopySession { session } => {
            within(programme.sessions.len() + 1, 1..=MOST_SESSIONS)?;
            let at = session_at(programme, session)?;
            let mut copy = programme.sessions[at].clone();
            copy.id = fresh().into();
            let taken: Vec<&str> = programme.sessions.iter().map(|s| s.title.as_str()).collect();
            copy.title = title_after(&copy.title, &taken);
            copy.blocks.iter_mut().for_each(|b| rename(b, fresh));
            programme.sessions.insert(at + 1, copy);
        }
        Edit::MoveSession { session, to } => {
            let at = session_at(programme, session)?;
            let to = within(usize::from(*to), 0..=programme.sessions.len() - 1)?;
            let moved = programme.sessions.remove(at);
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
        Edit::AddBlock { session, ladders, finisher } => {
            let at = session_at(programme, session)?;
            within(programme.sessions[at].blocks.len() + 1, 1..=MOST_BLOCKS)?;
            within(ladders.len(), 1..=MOST_SLOTS)?;
            let id: BlockId = fresh().into();
            let slots = ladders
                .iter()
                .map(|ladder| slot_of(catalogue, ladder, fresh))
                .collect::<Result<Vec<_>, _>>()?;
            programme.sessions[at].blocks.push(Block {
                id,
                form: form_of(slots.len(), *finisher),
                rounds: if *finisher { 2 } else { 3 },
                rest_seconds: if *finisher { 45 } else { 90 },
                rest_between_seconds: if slots.len() > 1 { 15 } else { 0 },
                slots,
            });
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
        }
        Edit::ShapeBlock { block, rounds, rest_seconds, rest_between_seconds, finisher } => {
            let (s, b) = block_at(programme, block)?;
            let mut shaped = programme.sessions[s].blocks[b].clone();
            shaped.rounds = within(rounds.unwrap_or(shaped.rounds), 1..=12)?;
            shaped.rest_seconds = within(rest_seconds.unwrap_or(shaped.rest_seconds), 0..=600)?;
            let between = rest_between_seconds.unwrap_or(shaped.rest_between_seconds);
            shaped.rest_between_seconds = within(between, 0..=600)?;
            let finisher = finisher.unwrap_or(shaped.form == BlockForm::Finisher);
            shaped.form = form_of(shaped.slots.len(), finisher);
            programme.sessions[s].blocks[b] = shaped;
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
            }
            // Levels speak of the ladder that was there.
            changed.levels = changed.levels.filter(|_| changed.ladder == *ladder);
            changed.ladder = ladder.clone();
        }
        Edit::AmountOfSlot { slot, low, high } => {
            let dose = &mut slot_mut(programme, slot)?.dose;
            let (low, high) = ends(*low, *high, dose.amount.low(), dose.amount.high());
            within(low, 1..=600)?;
            within(high, 1..=600)?;
            dose.amount = match dose.amount {
                Amount::Reps { .. } => Amount::Reps { low, high },
                Amount::Seconds { .. } => Amount::Seconds { low, high },
            };
        }
        Edit::ReserveOfSlot { slot, target_rir } => {
            slot_mut(programme, slot)?.dose.target_rir = within(*target_rir, 0..=10)?;
        }
        Edit::TempoOfSlot { slot, down, pause, up } => {
            let dose = &mut slot_mut(programme, slot)?.dose;
            let now = dose.tempo.unwrap_or(Tempo { down: 2, pause: 0, up: 1 });
            dose.tempo = Some(Tempo {
                down: within(down.unwrap_or(now.down), 0..=20)?,
                pause: within(pause.unwrap_or(now.pause), 0..=20)?,
                up: within(up.unwrap_or(now.up), 0..=20)?,
            });
        }
        Edit::FreeTempo { slot } => slot_mut(programme, slot)?.dose.tempo = None,
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
    Ok(Slot { id: fresh().into(), ladder: ladder.clone(), levels: None, dose: usual_dose(known) })
}

/// A copy's own ids.
fn rename(block: &mut Block, fresh: &mut impl FnMut() -> String) {
    block.id = fresh().into();
    for slot in &mut block.slots {
        slot.id = fresh().into();
    }
}

fn refit(block: &mut Block) {
    block.form = form_of(block.slots.len(), block.form == BlockForm::Finisher);
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
