//! Taking one standing record into the history.

use super::resolve::{Leaf, Standing};
use super::{
    CheckIn, Checked, Cleared, Ended, History, HoldReply, Intake, Mark, NextDayEntry, Restriction, Run, Said,
    SetEntry, Skip, resolve,
};
use crate::ids::{RecordId, RunId};
use crate::record::{NextDay, Payload, Readiness, Record, Reserve, SetDone, Symptom, TodayThing, Voice};
use chrono::{DateTime, FixedOffset};
use std::sync::Arc;

impl History {
    fn run_mut(&mut self, id: RunId, record: &Record) -> &mut Run {
        let run = self.run_mut_keeping_start(id, record);
        run.started = run.started.min(record.at);
        run
    }

    /// The run, begun with this record if it is not known (a gap in the log): what it says still counts.
    fn run_mut_keeping_start(&mut self, id: RunId, record: &Record) -> &mut Run {
        let at = record.at;
        // Most records belong to the latest run.
        let index = self.runs.iter().rposition(|r| r.id == id).unwrap_or_else(|| {
            self.runs.push(Run {
                id,
                started: at,
                day: at.date_naive(),
                planned: None,
                check_in: None,
                shown: None,
                sets: Vec::new(),
                skips: Vec::new(),
                chosen: Vec::new(),
                marks: Vec::new(),
                ended: None,
                next_day: None,
                next_day_confirmed: Vec::new(),
                body_mass: None,
            });
            self.runs.len() - 1
        });
        &mut self.runs[index]
    }

    pub(super) fn take(&mut self, standing: &Standing<'_>) {
        let record = standing.record;
        let said_at = (record.id, record.at);
        fn said<T>((record, at): (RecordId, DateTime<FixedOffset>), what: T) -> Said<T> {
            Said { record, at, what }
        }
        if let Payload::SymptomMark { .. } = &record.payload {
            self.take_mark(standing);
            return;
        }
        if let Payload::CheckIn { run, .. } = &record.payload {
            self.take_check_in(*run, standing);
            return;
        }
        if let Payload::NextDayAnswer { .. } = &record.payload {
            self.take_next_day(standing);
            return;
        }
        let Some(latest) = standing.latest() else { return };
        match latest {
            Payload::Profile(profile) => self.profiles.push(said(said_at, profile.clone())),
            Payload::SessionStarted { run, day, programme, revision, session } => {
                let entry = self.run_mut(*run, record);
                entry.day = *day;
                entry.planned = Some((*programme, *revision, session.clone()));
            }
            Payload::ProposalShown { run, result, .. } => {
                let entry = self.run_mut(*run, record);
                // The first one is what the session was begun with.
                entry.shown.get_or_insert_with(|| Arc::clone(result));
            }
            Payload::SetDone(_) => {
                // Of two corrections side by side the stricter holds: fewer reps to failure.
                let strictest = standing
                    .holds
                    .iter()
                    .filter_map(|leaf| match leaf.says {
                        Payload::SetDone(set) => Some(set),
                        _ => None,
                    })
                    .min_by_key(|set| strictness(set));
                if let Some(set) = strictest {
                    let entry = SetEntry {
                        record: record.id,
                        at: record.at,
                        set: set.clone(),
                        corrected: standing.corrected,
                    };
                    self.run_mut(set.run, record).sets.push(entry);
                }
            }
            Payload::SetSkipped { run, slot, round, why } => {
                let skip = Skip { record: record.id, slot: slot.clone(), round: *round, why: *why };
                self.run_mut(*run, record).skips.push(skip);
            }
            Payload::OptionChosen { run, slot, variant } => {
                let choice = (slot.clone(), variant.clone());
                self.run_mut(*run, record).chosen.push(choice);
            }
            Payload::SessionEnded { run, effort, minutes, note } => {
                let end = Ended { at: record.at, effort: *effort, minutes: *minutes, note: note.clone() };
                self.run_mut(*run, record).ended.get_or_insert(end);
            }
            Payload::BodyMass { mass } => {
                if mass.is_plausible() {
                    self.masses.push(said(said_at, mass.kg()));
                }
            }
            Payload::KitChanged { kit } => self.kits.push(said(said_at, kit.clone())),
            Payload::TenReps { variant, load } => {
                self.ten_reps.push(said(said_at, (variant.clone(), load.clone())));
            }
            Payload::StageChanged { stage } => self.take_stage(record, stage),
            Payload::Screening { conditions, baselines, trained, never, by, note, instead_of } => {
                let intake = Intake {
                    conditions: conditions.clone(),
                    baselines: baselines.clone(),
                    trained: *trained,
                    never: *never,
                };
                // Before it was kept who filled it in, only the coach did.
                let by = by.unwrap_or(Voice::Coach);
                self.take_intake(record, by, intake, note.clone(), instead_of);
            }
            Payload::TakenUp { by, note } => self.taken_up.push(said(said_at, (*by, note.clone()))),
            Payload::ImpactChecked { on, by, results, note } => {
                let (results, note) = (results.clone(), note.clone());
                self.checked.push(said(said_at, Checked { on: *on, by: *by, results, note }));
            }
            Payload::Restriction { what, until, note } => {
                let r = Restriction { what: what.clone(), until: *until, note: note.clone() };
                self.restrictions.push(said(said_at, r));
            }
            Payload::HoldAnswered { hold, answer, note } => {
                let reply = HoldReply { hold: *hold, answer: *answer, note: note.clone() };
                self.hold_replies.push(said(said_at, reply));
            }
            Payload::Clearance { who, on, said: words, speaks_of, until } => {
                let (who, words) = (who.clone(), words.clone());
                let cleared =
                    Cleared { who, on: *on, said: words, speaks_of: speaks_of.clone(), until: *until };
                self.clearances.push(said(said_at, cleared));
            }
            Payload::Override { start, note } => {
                self.overrides.push(said(said_at, (start.clone(), note.clone())));
            }
            Payload::RuleSetting(_) => {
                // Two corrections side by side are both kept: the pack takes the stricter.
                self.settings.extend(standing.holds.iter().filter_map(|leaf| match leaf.says {
                    Payload::RuleSetting(setting) => Some(said(said_at, setting.clone())),
                    _ => None,
                }));
            }
            Payload::Question { text } => self.words.push(said(said_at, ("question", text.clone()))),
            Payload::Answer { text, .. } => self.words.push(said(said_at, ("answer", text.clone()))),
            Payload::Note { text } => self.words.push(said(said_at, ("note", text.clone()))),
            Payload::Consent { text } => self.words.push(said(said_at, ("consent", text.clone()))),
            Payload::CheckIn { .. }
            | Payload::NextDayAnswer { .. }
            | Payload::SymptomMark { .. }
            | Payload::Withdrawal { .. }
            | Payload::Correction { .. }
            | Payload::PlanTakenIn { .. }
            | Payload::PlanSent { .. }
            | Payload::VariantWords(_)
            | Payload::OwnLadder(_)
            | Payload::OwnVariant(_)
            | Payload::Unknown => {}
        }
    }

    fn take_mark(&mut self, standing: &Standing<'_>) {
        let record = standing.record;
        // A correction may move a mark; one into another kind of record leaves its place as it was.
        let is_mark = |p: &&Payload| matches!(p, Payload::SymptomMark { .. });
        let says = || standing.holds.iter().map(|leaf| leaf.says);
        let place = says().rfind(is_mark).unwrap_or(&record.payload);
        if let Payload::SymptomMark { run, slot, ladder, variant, round, at_rest, .. } = place {
            // A mark outside a session stands as a run of its own, without sets, under its record's id.
            let first_run = resolve::run_of(&record.payload);
            let run = run.or(first_run).unwrap_or(RunId(record.id.0));
            let mark = Mark {
                record: record.id,
                at: record.at,
                slot: slot.clone(),
                ladder: ladder.clone(),
                variant: variant.clone(),
                round: *round,
                at_rest: *at_rest,
                symptoms: symptoms_in(record, &standing.holds),
                confirmed: symptoms_in(record, &standing.confirmed),
                taken_back: !says().any(|p| is_mark(&p)),
            };
            self.run_mut(run, record).marks.push(mark);
        }
    }

    fn take_check_in(&mut self, run: RunId, standing: &Standing<'_>) {
        let record = standing.record;
        // Of two corrections side by side the stricter holds.
        let told = |list: &[Leaf<'_>]| {
            let readiness = list.iter().filter_map(|leaf| match leaf.says {
                Payload::CheckIn { readiness, .. } => Some(*readiness),
                _ => None,
            });
            (readiness.max_by_key(|r| strain(*r)), symptoms_in(record, list))
        };
        let (readiness, symptoms) = told(&standing.holds);
        let (readiness_then, confirmed) = told(&standing.confirmed);
        let Some(readiness) = readiness.or(readiness_then) else { return };
        let today = today_in(&standing.holds);
        let entry = CheckIn { record: record.id, readiness, symptoms, confirmed, today };
        let slot = &mut self.run_mut(run, record).check_in;
        match slot {
            // Two check-ins before one session: all that either names counts.
            Some(first) => {
                if strain(entry.readiness) > strain(first.readiness) {
                    first.readiness = entry.readiness;
                }
                first.symptoms.extend(entry.symptoms);
                first.confirmed.extend(entry.confirmed);
                first
                    .today
                    .extend(entry.today.into_iter().filter(|t| !first.today.contains(t)).collect::<Vec<_>>());
            }
            None => *slot = Some(entry),
        }
    }

    pub(super) fn take_next_day(&mut self, standing: &Standing<'_>) {
        let record = standing.record;
        let run_in = |leaf: &Leaf<'_>| match leaf.says {
            Payload::NextDayAnswer { run, answer, .. } => Some((*run, *answer)),
            _ => None,
        };
        for leaf in &standing.confirmed {
            let Some((run, _)) = run_in(leaf) else { continue };
            let said = symptoms_in(record, std::slice::from_ref(leaf));
            self.run_mut_keeping_start(run, record).next_day_confirmed.extend(said);
        }
        for leaf in &standing.holds {
            let Some((run, answer)) = run_in(leaf) else { continue };
            let said = symptoms_in(record, std::slice::from_ref(leaf));
            let slot = &mut self.run_mut_keeping_start(run, record).next_day;
            // Of two answers the stricter holds, and the symptoms of both count.
            match slot {
                Some(first) => {
                    if answer == NextDay::NotSettled {
                        first.answer = answer;
                    }
                    for symptom in said {
                        if !first.symptoms.iter().any(|s| s.what == symptom.what) {
                            first.symptoms.push(symptom);
                        }
                    }
                }
                None => {
                    *slot = Some(NextDayEntry { record: record.id, at: record.at, answer, symptoms: said });
                }
            }
        }
    }
}

/// Symptoms that a payload names.
fn named_in(says: &Payload) -> &[Symptom] {
    match says {
        Payload::SymptomMark { symptom, .. } => std::slice::from_ref(symptom),
        Payload::CheckIn { symptoms, .. } | Payload::NextDayAnswer { symptoms, .. } => symptoms,
        _ => &[],
    }
}

/// All symptoms that the ends of a record's corrections name, each once, and each since when it has been said with
/// this kind and amount: a clearance or an answer speaks of what was said before it.
fn symptoms_in(record: &Record, leaves: &[Leaf<'_>]) -> Vec<Said<Symptom>> {
    let mut found: Vec<Said<Symptom>> = Vec::new();
    for leaf in leaves {
        for symptom in named_in(leaf.says) {
            let same = |s: &Symptom| s.kind == symptom.kind && s.amount == symptom.amount;
            let at = leaf.since(|says| named_in(says).iter().any(same));
            if !found.iter().any(|s| s.what == *symptom) {
                found.push(Said { record: record.id, at, what: symptom.clone() });
            }
        }
    }
    found
}

/// How much a readiness asks to hold back.
fn strain(readiness: Readiness) -> u8 {
    match readiness {
        Readiness::Usual => 0,
        Readiness::Tired => 1,
        Readiness::Unwell => 2,
    }
}

/// What all accounts of a check-in say of the day, each once.
fn today_in(list: &[Leaf<'_>]) -> Vec<TodayThing> {
    let mut all: Vec<TodayThing> = Vec::new();
    for leaf in list {
        if let Payload::CheckIn { today, .. } = leaf.says {
            all.extend(today.iter().copied());
        }
    }
    all.sort_unstable();
    all.dedup();
    all
}

/// Orders statements about one set, the stricter first: stopped, then fewer reps to failure, then the
/// lighter load (in grams; a band at its full stretch).
fn strictness(set: &SetDone) -> (u32, u32, i64) {
    let (reserve, bound) = match set.reserve {
        None => (0, 0),
        Some(Reserve::Exactly(n)) => (u32::from(n), 0),
        Some(Reserve::AtLeast(n)) => (u32::from(n), 1),
    };
    let amount = u32::from(set.reps) + u32::from(set.seconds.unwrap_or(0));
    // A float cast saturates, and NaN becomes 0.
    let grams = (set.load.external(1.0).0 * 1000.0) as i64;
    (if set.stopped { 0 } else { 1 + amount + reserve }, bound, grams)
}
