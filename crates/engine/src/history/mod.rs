//! What happened: runs of sessions with their sets and marks, and the facts about the person.

pub mod resolve;

use crate::ids::{
    ConditionId, LadderId, PlanSessionId, ProgrammeId, RecordId, RunId, SlotId, SymptomId, VariantId,
};
use crate::kit::{Kit, Load};
use crate::programme::Start;
use crate::proposal::{Prescription, SessionProposal};
use crate::record::{
    Baseline, HoldAnswer, NextDay, Payload, Profile, Readiness, Record, Reserve, RestrictionKind, SetDone,
    SkipWhy, Symptom, SymptomAmount,
};
use crate::rules::RuleSetting;
use crate::stage::Stage;
use crate::units::Kg;
use chrono::{DateTime, FixedOffset, NaiveDate};
use resolve::{Resolved, Standing};
use std::sync::Arc;

/// A set that stands.
#[derive(Clone, Debug, PartialEq)]
pub struct SetEntry {
    /// Its record.
    pub record: RecordId,
    /// When it was logged.
    pub at: DateTime<FixedOffset>,
    /// What was done.
    pub set: SetDone,
    /// True if it was corrected.
    pub corrected: bool,
}

/// A symptom mark that stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// Its record.
    pub record: RecordId,
    /// When it was tapped.
    pub at: DateTime<FixedOffset>,
    /// The slot.
    pub slot: Option<SlotId>,
    /// The ladder.
    pub ladder: Option<LadderId>,
    /// The variant.
    pub variant: Option<VariantId>,
    /// The round, from 0.
    pub round: Option<u8>,
    /// True if marked at rest.
    pub at_rest: bool,
    /// What is known of it; the rivals if two devices described it.
    pub symptoms: Vec<Symptom>,
    /// What it said when its session was ended; a red flag among these stands.
    pub confirmed: Vec<Symptom>,
    /// True if it was taken back after its session had ended; only a red flag stands then.
    pub taken_back: bool,
}

/// What she said before a session.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckIn {
    /// Its record.
    pub record: RecordId,
    /// Readiness.
    pub readiness: Readiness,
    /// Symptoms since last time.
    pub symptoms: Vec<Symptom>,
    /// What it said when its session was ended; a red flag among these stands.
    pub confirmed: Vec<Symptom>,
}

/// The end of a session.
#[derive(Clone, Debug, PartialEq)]
pub struct Ended {
    /// When.
    pub at: DateTime<FixedOffset>,
    /// Session effort, CR10.
    pub effort: Option<u8>,
    /// Minutes.
    pub minutes: Option<u16>,
    /// Note.
    pub note: Option<String>,
}

/// An answer to the next-day question.
#[derive(Clone, Debug, PartialEq)]
pub struct NextDayEntry {
    /// Its record.
    pub record: RecordId,
    /// When it was given.
    pub at: DateTime<FixedOffset>,
    /// How it went.
    pub answer: NextDay,
    /// What was still there or new.
    pub symptoms: Vec<Symptom>,
}

/// A set that was left out.
#[derive(Clone, Debug, PartialEq)]
pub struct Skip {
    /// Its record.
    pub record: RecordId,
    /// The slot.
    pub slot: SlotId,
    /// The round, from 0.
    pub round: u8,
    /// Why.
    pub why: SkipWhy,
}

/// One run of a session.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// Id.
    pub id: RunId,
    /// When its first record was written.
    pub started: DateTime<FixedOffset>,
    /// Its local day.
    pub day: NaiveDate,
    /// Programme, revision and planned session; `None` if it never got beyond the check-in.
    pub planned: Option<(ProgrammeId, u32, PlanSessionId)>,
    /// Check-in.
    pub check_in: Option<CheckIn>,
    /// What was proposed.
    pub shown: Option<Arc<SessionProposal>>,
    /// Sets in order of logging.
    pub sets: Vec<SetEntry>,
    /// Sets left out.
    pub skips: Vec<Skip>,
    /// Options she chose, in order.
    pub chosen: Vec<(SlotId, VariantId)>,
    /// Marks in order.
    pub marks: Vec<Mark>,
    /// Its end.
    pub ended: Option<Ended>,
    /// The next day.
    pub next_day: Option<NextDayEntry>,
    /// What answers of the next day said when they had stood for a day; a red flag among these stands.
    pub next_day_confirmed: Vec<Said<Symptom>>,
    /// Body mass as last recorded before it.
    pub body_mass: Option<Kg>,
}

impl Run {
    /// What was proposed for a slot.
    #[must_use]
    pub fn prescription(&self, slot: &SlotId) -> Option<&Prescription> {
        use crate::proposal::Outcome;
        self.shown.as_ref()?.slots.iter().find(|p| &p.slot == slot).and_then(|p| match &p.outcome {
            Outcome::Train(prescription) => Some(prescription),
            Outcome::Rest => None,
        })
    }
}

/// Something said at an instant.
#[derive(Clone, Debug, PartialEq)]
pub struct Said<T> {
    /// The record.
    pub record: RecordId,
    /// When.
    pub at: DateTime<FixedOffset>,
    /// What.
    pub what: T,
}

/// The outcome of an intake.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Intake {
    /// Conditions.
    pub conditions: Vec<ConditionId>,
    /// Usual symptoms.
    pub baselines: Vec<Baseline>,
    /// True for somebody who has trained with weights before.
    pub trained: bool,
}

impl Intake {
    /// Usual amount of a symptom.
    #[must_use]
    pub fn baseline(&self, kind: &SymptomId) -> Option<SymptomAmount> {
        self.baselines.iter().find(|b| &b.kind == kind).map(|b| b.amount)
    }
}

/// A restriction that was set.
#[derive(Clone, Debug, PartialEq)]
pub struct Restriction {
    /// What it rules out.
    pub what: RestrictionKind,
    /// Until and with this day.
    pub until: Option<NaiveDate>,
    /// Why.
    pub note: String,
}

/// An answer to a hold.
#[derive(Clone, Debug, PartialEq)]
pub struct HoldReply {
    /// The record that made the hold.
    pub hold: RecordId,
    /// The answer.
    pub answer: HoldAnswer,
    /// In words.
    pub note: String,
}

/// A clearance.
#[derive(Clone, Debug, PartialEq)]
pub struct Cleared {
    /// Who.
    pub who: String,
    /// When.
    pub on: NaiveDate,
    /// What was said.
    pub said: String,
}

/// Lengths of the lists of a history.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Extent([usize; 13]);

impl Extent {
    /// How many runs.
    pub(crate) fn runs(self) -> usize {
        self.0[0]
    }
}

/// What happened and what is known about one person. Built from records alone.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct History {
    /// Runs in order.
    pub runs: Vec<Run>,
    /// Who she is, latest last.
    pub profiles: Vec<Said<Profile>>,
    /// Stages in order of recording.
    pub stages: Vec<Said<Stage>>,
    /// Intakes in order.
    pub intakes: Vec<Said<Intake>>,
    /// Kits in order.
    pub kits: Vec<Said<Kit>>,
    /// Restrictions that were not taken back.
    pub restrictions: Vec<Said<Restriction>>,
    /// Answers to holds.
    pub hold_replies: Vec<Said<HoldReply>>,
    /// Clearances.
    pub clearances: Vec<Said<Cleared>>,
    /// Overrides by the coach, in order.
    pub overrides: Vec<Said<(Start, String)>>,
    /// Rules that the coach set, in order; well founded or not. The rule pack says what has effect.
    pub settings: Vec<Said<RuleSetting>>,
    /// Answers to "ten reps with what?".
    pub ten_reps: Vec<Said<(VariantId, Load)>>,
    /// Body masses in order.
    pub masses: Vec<Said<Kg>>,
    /// Questions, notes and consents in order, with the name of their kind.
    pub words: Vec<Said<(&'static str, String)>>,
}

impl History {
    /// Reads the records of one person. Their order of arrival does not matter.
    #[must_use]
    pub fn of(records: &[Record]) -> Self {
        let mut history = Self::default();
        history.append(records);
        history
    }

    /// Takes in records that all come after what is here: of runs that are not yet begun, and facts of
    /// later. [`crate::ledger::Ledger`] sees to it.
    pub(crate) fn append(&mut self, records: &[Record]) {
        let settled = self.runs.len();
        let resolved = Resolved::of(records);
        // An answer of the next day is taken last: its session may stand later in the order when a
        // clock was set back.
        let (answers, rest): (Vec<_>, Vec<_>) =
            resolved.entries.iter().partition(|s| matches!(s.record.payload, Payload::NextDayAnswer { .. }));
        for standing in rest {
            self.take(standing);
        }
        for standing in answers {
            self.take_next_day(standing);
        }
        self.runs[settled..].sort_by_key(|r| (r.started, r.id));
        // Body mass is frozen per session: the last one recorded before it began.
        for run in &mut self.runs[settled..] {
            run.body_mass = self.masses.iter().filter(|m| m.at <= run.started).map(|m| m.what).next_back();
        }
    }

    /// How much of each list there is.
    pub(crate) fn extent(&self) -> Extent {
        Extent([
            self.runs.len(),
            self.profiles.len(),
            self.stages.len(),
            self.intakes.len(),
            self.kits.len(),
            self.restrictions.len(),
            self.hold_replies.len(),
            self.clearances.len(),
            self.overrides.len(),
            self.settings.len(),
            self.ten_reps.len(),
            self.masses.len(),
            self.words.len(),
        ])
    }

    /// Leaves no more of each list than it held at some time.
    pub(crate) fn cut_back(&mut self, to: Extent) {
        let [
            runs,
            profiles,
            stages,
            intakes,
            kits,
            restrictions,
            hold_replies,
            clearances,
            overrides,
            settings,
            ten_reps,
            masses,
            words,
        ] = to.0;
        self.runs.truncate(runs);
        self.profiles.truncate(profiles);
        self.stages.truncate(stages);
        self.intakes.truncate(intakes);
        self.kits.truncate(kits);
        self.restrictions.truncate(restrictions);
        self.hold_replies.truncate(hold_replies);
        self.clearances.truncate(clearances);
        self.overrides.truncate(overrides);
        self.settings.truncate(settings);
        self.ten_reps.truncate(ten_reps);
        self.masses.truncate(masses);
        self.words.truncate(words);
    }

    /// Stage as last recorded.
    #[must_use]
    pub fn stage(&self) -> Option<&Stage> {
        self.stages.last().map(|s| &s.what)
    }

    /// Kit as last recorded.
    #[must_use]
    pub fn kit(&self) -> Kit {
        self.kits.last().map(|k| k.what.clone()).unwrap_or_default()
    }

    /// Intake as last recorded.
    #[must_use]
    pub fn intake(&self) -> Intake {
        self.intakes.last().map(|i| i.what.clone()).unwrap_or_default()
    }

    /// A run by id.
    #[must_use]
    pub fn run(&self, id: RunId) -> Option<&Run> {
        self.runs.iter().rfind(|r| r.id == id)
    }

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

    fn take(&mut self, standing: &Standing<'_>) {
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
                    .filter_map(|p| match p {
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
            Payload::StageChanged { stage } => self.stages.push(said(said_at, stage.clone())),
            Payload::Screening { conditions, baselines, trained } => {
                let intake = Intake {
                    conditions: conditions.clone(),
                    baselines: baselines.clone(),
                    trained: *trained,
                };
                self.intakes.push(said(said_at, intake));
            }
            Payload::Restriction { what, until, note } => {
                let r = Restriction { what: what.clone(), until: *until, note: note.clone() };
                self.restrictions.push(said(said_at, r));
            }
            Payload::HoldAnswered { hold, answer, note } => {
                let reply = HoldReply { hold: *hold, answer: *answer, note: note.clone() };
                self.hold_replies.push(said(said_at, reply));
            }
            Payload::Clearance { who, on, said: words } => {
                let cleared = Cleared { who: who.clone(), on: *on, said: words.clone() };
                self.clearances.push(said(said_at, cleared));
            }
            Payload::Override { start, note } => {
                self.overrides.push(said(said_at, (start.clone(), note.clone())));
            }
            Payload::RuleSetting(_) => {
                // Two corrections side by side are both kept: the pack takes the stricter.
                self.settings.extend(standing.holds.iter().filter_map(|p| match p {
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
            | Payload::Unknown => {}
        }
    }

    fn take_mark(&mut self, standing: &Standing<'_>) {
        let symptoms_of = |list: &[&Payload]| -> Vec<Symptom> {
            list.iter()
                .filter_map(|p| match p {
                    Payload::SymptomMark { symptom, .. } => Some(symptom.clone()),
                    _ => None,
                })
                .collect()
        };
        let record = standing.record;
        // A correction may move a mark; one into another kind of record leaves its place as it was.
        let is_mark = |p: &&Payload| matches!(p, Payload::SymptomMark { .. });
        let place = standing.holds.iter().copied().rfind(is_mark).unwrap_or(&record.payload);
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
                symptoms: symptoms_of(&standing.holds),
                confirmed: symptoms_of(&standing.confirmed),
                taken_back: !standing.holds.iter().any(is_mark),
            };
            self.run_mut(run, record).marks.push(mark);
        }
    }

    fn take_check_in(&mut self, run: RunId, standing: &Standing<'_>) {
        let record = standing.record;
        let told = |list: &[&Payload]| {
            let mut symptoms: Vec<Symptom> = Vec::new();
            let mut readiness: Option<Readiness> = None;
            for payload in list {
                if let Payload::CheckIn { readiness: said, symptoms: more, .. } = payload {
                    // Of two corrections side by side the stricter holds.
                    if readiness.is_none_or(|r| strain(*said) > strain(r)) {
                        readiness = Some(*said);
                    }
                    for symptom in more {
                        if !symptoms.contains(symptom) {
                            symptoms.push(symptom.clone());
                        }
                    }
                }
            }
            (readiness, symptoms)
        };
        let (readiness, symptoms) = told(&standing.holds);
        let (readiness_then, confirmed) = told(&standing.confirmed);
        let Some(readiness) = readiness.or(readiness_then) else { return };
        let entry = CheckIn { record: record.id, readiness, symptoms, confirmed };
        let slot = &mut self.run_mut(run, record).check_in;
        match slot {
            // Two check-ins before one session: all that either names counts.
            Some(first) => {
                if strain(entry.readiness) > strain(first.readiness) {
                    first.readiness = entry.readiness;
                }
                first.symptoms.extend(entry.symptoms);
                first.confirmed.extend(entry.confirmed);
            }
            None => *slot = Some(entry),
        }
    }

    fn take_next_day(&mut self, standing: &Standing<'_>) {
        let record = standing.record;
        for payload in &standing.confirmed {
            let Payload::NextDayAnswer { run, symptoms, .. } = payload else { continue };
            let entry = self.run_mut_keeping_start(*run, record);
            let said = |s: &Symptom| Said { record: record.id, at: record.at, what: s.clone() };
            entry.next_day_confirmed.extend(symptoms.iter().map(said));
        }
        for payload in &standing.holds {
            let Payload::NextDayAnswer { run, answer, symptoms } = payload else { continue };
            let slot = &mut self.run_mut_keeping_start(*run, record).next_day;
            // Of two answers the stricter holds, and the symptoms of both count.
            match slot {
                Some(first) => {
                    if *answer == NextDay::NotSettled {
                        first.answer = *answer;
                    }
                    for symptom in symptoms {
                        if !first.symptoms.contains(symptom) {
                            first.symptoms.push(symptom.clone());
                        }
                    }
                }
                None => {
                    *slot = Some(NextDayEntry {
                        record: record.id,
                        at: record.at,
                        answer: *answer,
                        symptoms: symptoms.clone(),
                    });
                }
            }
        }
    }
}

/// How much a readiness asks to hold back.
fn strain(readiness: Readiness) -> u8 {
    match readiness {
        Readiness::Usual => 0,
        Readiness::Tired => 1,
        Readiness::Unwell => 2,
    }
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
