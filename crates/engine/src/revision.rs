//! What a revision of a programme changes, in codes and values: sessions, blocks and slots added, removed, moved or
//! changed. Ids survive revisions, so the same id is the same thing.

use crate::ids::{BlockId, PhaseId, PlanSessionId, SlotId};
use crate::programme::{
    Amount, Block, BlockForm, Dose, LevelSpan, Phase, PlanSession, Programme, Slot, Tempo,
};
use crate::reason::Fact;
use serde::Serialize;
use std::collections::BTreeMap;
use ts_rs::TS;

/// One thing that a revision changes; `change-<code>` in `files.ftl` is its sentence.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Change {
    /// Code.
    pub code: &'static str,
    /// Values by name.
    pub facts: BTreeMap<String, Fact>,
}

/// Codes of all changes, so that the build can check that each has its sentence.
pub const CHANGE_CODES: &[&str] = &[
    "another-programme",
    "title",
    "per-week",
    "weeks",
    "light-weeks",
    "phase-added",
    "phase-removed",
    "phase-title",
    "phase-weeks",
    "phase-light-weeks",
    "phases-order",
    "session-added",
    "session-removed",
    "session-title",
    "session-minutes",
    "session-phase",
    "sessions-order",
    "block-added",
    "block-removed",
    "block-moved",
    "block-form",
    "block-rounds",
    "block-rest",
    "block-between",
    "block-week",
    "blocks-order",
    "slot-added",
    "slot-removed",
    "slot-moved",
    "slot-ladder",
    "slot-amount",
    "slot-target",
    "slot-tempo",
    "slot-levels",
    "slot-week",
    "slots-order",
];

impl Change {
    fn new(code: &'static str) -> Self {
        Self { code, facts: BTreeMap::new() }
    }

    fn with(mut self, name: &str, fact: Fact) -> Self {
        self.facts.insert(name.to_owned(), fact);
        self
    }

    fn words(self, name: &str, words: &str) -> Self {
        self.with(name, Fact::Words(words.to_owned()))
    }

    fn number(self, name: &str, number: impl Into<f64>) -> Self {
        self.with(name, Fact::Number(number.into()))
    }

    fn between(self, from: impl Into<f64>, to: impl Into<f64>) -> Self {
        self.number("from", from).number("to", to)
    }

    fn of_slot(code: &'static str, session: &PlanSession, slot: &Slot) -> Self {
        Self::new(code).words("session", &session.title).with("ladder", Fact::Ladder(slot.ladder.clone()))
    }

    /// A block is named by the first ladder in it and by how many follow.
    fn of_block(code: &'static str, session: &PlanSession, block: &Block) -> Self {
        let change = Self::new(code)
            .words("session", &session.title)
            .words("form", form(block.form))
            .number("more", u32::try_from(block.slots.len().saturating_sub(1)).unwrap_or(u32::MAX));
        match block.slots.first() {
            Some(first) => change.with("ladder", Fact::Ladder(first.ladder.clone())),
            None => change.words("ladder", ""),
        }
    }
}

fn form(form: BlockForm) -> &'static str {
    match form {
        BlockForm::StraightSets => "straight_sets",
        BlockForm::Superset => "superset",
        BlockForm::TriSet => "tri_set",
        BlockForm::GiantSet => "giant_set",
        BlockForm::Finisher => "finisher",
        BlockForm::WarmUp => "warm_up",
        BlockForm::CoolDown => "cool_down",
    }
}

/// What a programme changes for somebody who has another one, or an earlier state of it; empty if both say the same. The
/// revision's number is not looked at.
#[must_use]
pub fn changes(before: &Programme, after: &Programme) -> Vec<Change> {
    // Taken apart by name, so that a field that is added is not forgotten here.
    let Programme { id, revision: _, title, per_week, weeks, light_weeks, phases, sessions } = before;
    if *id != after.id {
        let change = Change::new("another-programme").words("from", title).words("to", &after.title);
        return vec![change];
    }
    let mut found = Vec::new();
    if *title != after.title {
        found.push(Change::new("title").words("from", title).words("to", &after.title));
    }
    if *per_week != after.per_week {
        found.push(Change::new("per-week").between(*per_week, after.per_week));
    }
    if *weeks != after.weeks {
        // Zero stands for an open end.
        found.push(Change::new("weeks").between(weeks.unwrap_or(0), after.weeks.unwrap_or(0)));
    }
    if *light_weeks != after.light_weeks {
        found.push(weeks_said(Change::new("light-weeks"), &after.light_weeks));
    }
    of_phases(phases, &after.phases, &mut found);
    for gone in sessions.iter().filter(|s| after.session(&s.id).is_none()) {
        found.push(Change::new("session-removed").words("session", &gone.title));
    }
    for new in after.sessions.iter().filter(|s| before.session(&s.id).is_none()) {
        found.push(Change::new("session-added").words("session", &new.title));
    }
    let ids = |of: &[PlanSession], other: &[PlanSession]| -> Vec<PlanSessionId> {
        of.iter().map(|s| s.id.clone()).filter(|id| other.iter().any(|o| o.id == *id)).collect()
    };
    if ids(sessions, &after.sessions) != ids(&after.sessions, sessions) {
        found.push(Change::new("sessions-order"));
    }
    for session in &after.sessions {
        let was = before.session(&session.id).filter(|was| was.phase != session.phase);
        let title = |programme: &Programme, phase: &Option<PhaseId>| {
            let found = programme.phases.iter().find(|p| Some(&p.id) == phase.as_ref());
            found.map(|p| p.title.clone()).unwrap_or_default()
        };
        // That all stand in the first phase there is, or in none any more, is told by the phase.
        if let Some(was) = was.filter(|was| was.phase.is_some() && session.phase.is_some()) {
            let change = Change::new("session-phase").words("session", &session.title);
            let from = title(before, &was.phase);
            found.push(change.words("from", &from).words("to", &title(after, &session.phase)));
        }
    }
    let places = (Places::of(before), Places::of(after));
    for session in &after.sessions {
        if let Some(was) = before.session(&session.id) {
            in_session(was, session, &places, &mut found);
        }
    }
    found
}

fn of_phases(before: &[Phase], after: &[Phase], found: &mut Vec<Change>) {
    for gone in before.iter().filter(|p| !after.iter().any(|a| a.id == p.id)) {
        found.push(Change::new("phase-removed").words("phase", &gone.title));
    }
    for phase in after {
        let Some(was) = before.iter().find(|b| b.id == phase.id) else {
            found.push(Change::new("phase-added").words("phase", &phase.title).number("weeks", phase.weeks));
            continue;
        };
        let Phase { id: _, title, weeks, light_weeks } = was;
        let of_phase = |code| Change::new(code).words("phase", &phase.title);
        if *title != phase.title {
            found.push(Change::new("phase-title").words("from", title).words("to", &phase.title));
        }
        if *weeks != phase.weeks {
            found.push(of_phase("phase-weeks").between(*weeks, phase.weeks));
        }
        if *light_weeks != phase.light_weeks {
            found.push(weeks_said(of_phase("phase-light-weeks"), &phase.light_weeks));
        }
    }
    let order = |of: &[Phase], other: &[Phase]| -> Vec<PhaseId> {
        of.iter().map(|p| p.id.clone()).filter(|id| other.iter().any(|o| o.id == *id)).collect()
    };
    if order(before, after) != order(after, before) {
        found.push(Change::new("phases-order"));
    }
}

/// Weeks as numbers in a row, and how many there are.
fn weeks_said(change: Change, weeks: &[u8]) -> Change {
    let each: Vec<String> = weeks.iter().map(u8::to_string).collect();
    change.words("list", &each.join(", ")).number("count", u32::try_from(weeks.len()).unwrap_or(u32::MAX))
}

/// Weeks that one of two lists names otherwise than the other.
fn told<T: PartialEq>(before: &[T], after: &[T], week: impl Fn(&T) -> u8) -> Vec<u8> {
    let of = |list: &[T], n: u8| list.iter().position(|t| week(t) == n);
    let mut all: Vec<u8> = before.iter().chain(after).map(&week).collect();
    all.sort_unstable();
    all.dedup();
    all.retain(|n| of(before, *n).map(|i| &before[i]) != of(after, *n).map(|i| &after[i]));
    all
}

/// Where each block and slot stands.
struct Places<'a> {
    blocks: BTreeMap<&'a BlockId, (&'a PlanSession, &'a Block)>,
    slots: BTreeMap<&'a SlotId, (&'a Block, &'a Slot)>,
}

impl<'a> Places<'a> {
    fn of(programme: &'a Programme) -> Self {
        let blocks = || programme.sessions.iter().flat_map(|s| s.blocks.iter().map(move |b| (s, b)));
        Self {
            blocks: blocks().map(|(s, b)| (&b.id, (s, b))).collect(),
            slots: blocks().flat_map(|(_, b)| b.slots.iter().map(move |s| (&s.id, (b, s)))).collect(),
        }
    }
}

fn in_session(
    before: &PlanSession,
    after: &PlanSession,
    places: &(Places<'_>, Places<'_>),
    found: &mut Vec<Change>,
) {
    let PlanSession { id: _, title, minutes, phase: _, blocks } = before;
    if *title != after.title {
        found.push(Change::new("session-title").words("from", title).words("to", &after.title));
    }
    if *minutes != after.minutes {
        // Zero stands for none that were meant.
        let change = Change::new("session-minutes").words("session", &after.title);
        found.push(change.between(minutes.unwrap_or(0), after.minutes.unwrap_or(0)));
    }
    for gone in blocks.iter().filter(|b| !places.1.blocks.contains_key(&b.id)) {
        found.push(Change::of_block("block-removed", after, gone));
    }
    let mut stay = Vec::new();
    for block in &after.blocks {
        match places.0.blocks.get(&block.id) {
            None => found.push(Change::of_block("block-added", after, block)),
            Some((was_in, was)) => {
                if was_in.id == after.id {
                    stay.push(&block.id);
                } else {
                    found.push(Change::of_block("block-moved", after, block).words("from", &was_in.title));
                }
                in_block(after, was, block, places, found);
            }
        }
    }
    if blocks.iter().map(|b| &b.id).filter(|id| stay.contains(id)).ne(stay.iter().copied()) {
        found.push(Change::new("blocks-order").words("session", &after.title));
    }
}

fn in_block(
    session: &PlanSession,
    before: &Block,
    after: &Block,
    places: &(Places<'_>, Places<'_>),
    found: &mut Vec<Change>,
) {
    let Block { id: _, form: was_form, rounds, rest_seconds, rest_between_seconds, by_week, slots } = before;
    let of_block = |code| Change::of_block(code, session, after);
    // A form that only follows the number of its slots is told by these.
    let turned = was_form.part() != after.form.part();
    if *was_form != after.form && (turned || slots.len() == after.slots.len()) {
        found.push(of_block("block-form").words("from", form(*was_form)).words("to", form(after.form)));
    }
    if *rounds != after.rounds {
        found.push(of_block("block-rounds").between(*rounds, after.rounds));
    }
    if *rest_seconds != after.rest_seconds {
        found.push(of_block("block-rest").between(*rest_seconds, after.rest_seconds));
    }
    if *rest_between_seconds != after.rest_between_seconds {
        found.push(of_block("block-between").between(*rest_between_seconds, after.rest_between_seconds));
    }
    for week in told(by_week, &after.by_week, |w| w.week) {
        let of = |block: &Block| {
            let own = block.by_week.iter().find(|w| w.week == week);
            own.map_or((block.rounds, block.rest_seconds), |w| (w.rounds, w.rest_seconds))
        };
        let (was, now) = (of(before), of(after));
        let change = of_block("block-week").number("week", week).between(was.0, now.0);
        found.push(change.number("rest_from", was.1).number("rest_to", now.1));
    }
    for gone in slots.iter().filter(|s| !places.1.slots.contains_key(&s.id)) {
        found.push(Change::of_slot("slot-removed", session, gone));
    }
    let mut stay = Vec::new();
    for slot in &after.slots {
        match places.0.slots.get(&slot.id) {
            None => {
                let change = Change::of_slot("slot-added", session, slot);
                found.push(amount(change, "to", slot.dose.amount));
            }
            Some((was_in, was)) => {
                if was_in.id == after.id {
                    stay.push(&slot.id);
                } else {
                    found.push(Change::of_slot("slot-moved", session, slot));
                }
                in_slot(session, was, slot, found);
            }
        }
    }
    if slots.iter().map(|s| &s.id).filter(|id| stay.contains(id)).ne(stay.iter().copied()) {
        found.push(of_block("slots-order"));
    }
}

fn in_slot(session: &PlanSession, before: &Slot, after: &Slot, found: &mut Vec<Change>) {
    let Slot { id: _, ladder, levels, dose, by_week } = before;
    let Dose { amount: was_amount, target_rir, tempo } = dose;
    let of_slot = |code| Change::of_slot(code, session, after);
    if *ladder != after.ladder {
        found.push(of_slot("slot-ladder").with("from", Fact::Ladder(ladder.clone())));
    }
    if *was_amount != after.dose.amount {
        let change = amount(of_slot("slot-amount"), "from", *was_amount);
        found.push(amount(change, "to", after.dose.amount));
    }
    if *target_rir != after.dose.target_rir {
        found.push(of_slot("slot-target").between(*target_rir, after.dose.target_rir));
    }
    if *tempo != after.dose.tempo {
        found.push(pace(pace(of_slot("slot-tempo"), "from", *tempo), "to", after.dose.tempo));
    }
    for week in told(by_week, &after.by_week, |w| w.week) {
        let own = after.by_week.iter().find(|w| w.week == week);
        let now = own.map_or(after.dose, |w| w.dose);
        let change = of_slot("slot-week").number("week", week).number("target", now.target_rir);
        found.push(amount(change, "to", now.amount));
    }
    if *levels != after.levels {
        found.push(span(span(of_slot("slot-levels"), "from", *levels), "to", after.levels));
    }
}

/// A range with whether it counts seconds (1) or reps (0).
fn amount(change: Change, name: &str, amount: Amount) -> Change {
    let timed = match amount {
        Amount::Reps { .. } => 0_u8,
        Amount::Seconds { .. } => 1,
    };
    change
        .number(&format!("{name}_low"), amount.low())
        .number(&format!("{name}_high"), amount.high())
        .number(&format!("{name}_timed"), timed)
}

/// A tempo; all zero stands for a free one.
fn pace(change: Change, name: &str, tempo: Option<Tempo>) -> Change {
    let Tempo { down, pause, up } = tempo.unwrap_or(Tempo { down: 0, pause: 0, up: 0 });
    change
        .number(&format!("{name}_free"), u8::from(tempo.is_none()))
        .number(&format!("{name}_down"), down)
        .number(&format!("{name}_pause"), pause)
        .number(&format!("{name}_up"), up)
}

/// Levels as they are said, from 1; a high of zero stands for all.
fn span(change: Change, name: &str, levels: Option<LevelSpan>) -> Change {
    let (low, high) = levels.map_or((0, 0), |s| (u16::from(s.low) + 1, u16::from(s.high) + 1));
    change.number(&format!("{name}_low"), low).number(&format!("{name}_high"), high)
}
