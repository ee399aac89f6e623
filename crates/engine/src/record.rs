//! What the log holds. A record is one JSON line; its bytes are stored, hashed and sent as they are.
//!
//! A *stream* is what one device wrote about one person: its records are numbered from 0 and each
//! bears the SHA-256 of the one before. Only that device ever appends to it.

use crate::catalogue::{OwnLadder, OwnVariant};
use crate::ids::{
    CheckId, ConditionId, DeviceId, LadderId, PersonId, PlanSessionId, ProgrammeId, RecordId, RunId, SlotId,
    SymptomId, VariantId,
};
use crate::kit::{Kit, Load};
use crate::programme::Start;
use crate::proposal::SessionProposal;
use crate::rules::RuleSetting;
use crate::stage::Stage;
use crate::units::Weight;

use crate::wording::VariantWords;
use chrono::{DateTime, FixedOffset, NaiveDate};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::sync::Arc;
use ts_rs::TS;

/// The schema version that this program writes.
pub const SCHEMA_VERSION: u32 = 1;

/// A record, as read from its line.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Record {
    /// Schema version.
    pub v: u32,
    /// Id (UUIDv7).
    pub id: RecordId,
    /// The device that wrote it.
    pub device: DeviceId,
    /// The person it is about.
    pub person: PersonId,
    /// Number in its stream, from 0.
    pub seq: u64,
    /// SHA-256 (hex) of the line before in its stream; `None` for the first.
    pub prev: Option<String>,
    /// When it was written: UTC with the local offset.
    pub at: DateTime<FixedOffset>,
    /// What it says.
    pub payload: Payload,
}

/// The readiness she states at check-in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Readiness {
    /// As usual.
    Usual,
    /// Tired or short of sleep: more is kept in reserve.
    Tired,
    /// Unwell: not a day to train hard.
    Unwell,
}

/// What she says of a day at check-in, each with one tap.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum TodayThing {
    /// The first session after an illness.
    AfterIllness,
    /// Her kit is not at hand.
    NoKit,
    /// A child is in the room.
    ChildNear,
    /// The pessary is in.
    PessaryIn,
    /// The pessary is out.
    PessaryOut,
    /// Her period is here.
    Period,
}

/// An amount as she stated it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case", tag = "form", content = "value")]
#[ts(export)]
pub enum SymptomAmount {
    /// A little.
    Little,
    /// Clearly.
    Clearly,
    /// A lot.
    Lot,
    /// Pain from 0 to 10.
    Pain(u8),
}

/// A symptom with what is known of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Symptom {
    /// Its kind; `None` as long as it has not been said.
    pub kind: Option<SymptomId>,
    /// How much; left out counts as clearly (pain: 5).
    #[serde(default)]
    pub amount: Option<SymptomAmount>,
    /// Where, as the tail of a `where-*` word.
    #[serde(default)]
    pub place: Option<String>,
    /// Her own words.
    #[serde(default)]
    pub words: Option<String>,
}

/// Reps in reserve as stated.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case", tag = "said", content = "reps")]
#[ts(export)]
pub enum Reserve {
    /// Exactly so many, 0 to 4.
    Exactly(u8),
    /// So many or more.
    AtLeast(u8),
}

/// What a set was for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Purpose {
    /// A working set.
    Work,
    /// A set to find the load.
    Find,
    /// To learn the movement; no evidence of strength.
    Learn,
    /// Part of a finisher; no evidence of strength.
    Finisher,
    /// Part of a warm-up or a cool-down; no evidence of strength.
    Ease,
}

/// Why a set was left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum SkipWhy {
    /// She chose to.
    Chosen,
    /// The ten-minute version leaves it out.
    Short,
    /// A symptom ended the ladder for the day.
    Symptom,
}

/// The side that worked, where one side works at a time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Side {
    /// Left.
    Left,
    /// Right.
    Right,
}

/// A set that was done. Where one side works at a time, each side is a record of its own.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct SetDone {
    /// The session run.
    pub run: RunId,
    /// The slot.
    pub slot: SlotId,
    /// The round, from 0.
    pub round: u8,
    /// The side, where one side works at a time.
    #[serde(default)]
    pub side: Option<Side>,
    /// The ladder, for a reader without the catalogue.
    pub ladder: LadderId,
    /// The variant.
    pub variant: VariantId,
    /// What was held.
    pub load: Load,
    /// Reps done; 0 for a timed set.
    #[serde(default)]
    pub reps: u16,
    /// Seconds done, for a timed set.
    #[serde(default)]
    pub seconds: Option<u16>,
    /// How many more she could have done.
    #[serde(default)]
    pub reserve: Option<Reserve>,
    /// What it was for.
    pub purpose: Purpose,
    /// True when a mark ended it before its time.
    #[serde(default)]
    pub stopped: bool,
}

/// A restriction that the coach or a provider set.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "rules_out", rename_all = "snake_case")]
#[ts(export)]
pub enum RestrictionKind {
    /// A position.
    Position {
        /// Which.
        position: crate::catalogue::Position,
    },
    /// Variants with a caution.
    Caution {
        /// Which.
        caution: crate::catalogue::Caution,
    },
    /// A variant.
    Variant {
        /// Which.
        variant: VariantId,
    },
    /// Levels of a ladder above this one (0 for the easiest).
    LevelAbove {
        /// The ladder.
        ladder: LadderId,
        /// The highest level that stays open.
        level: u8,
    },
    /// All external load.
    AllLoad,
    /// More than so much external load.
    LoadAbove {
        /// The most, as entered.
        most: Weight,
        /// On one ladder; on all if absent.
        #[serde(default)]
        ladder: Option<LadderId>,
    },
    /// Effort that leaves fewer reps in reserve.
    ReserveBelow {
        /// The least to leave.
        reps: u8,
    },
    /// Holding the breath under load: each repetition is breathed through, and sets end earlier.
    BreathHolding,
}

/// Who says something that both sides can say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum Voice {
    /// The client.
    Client,
    /// The coach.
    Coach,
}

/// What a clearance speaks of.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "of", rename_all = "snake_case")]
#[ts(export)]
pub enum ClearedThing {
    /// Training after the birth.
    Birth,
    /// Training with a condition.
    Condition {
        /// Which.
        condition: ConditionId,
    },
    /// A sign that stopped training, or a hold.
    Sign {
        /// The record that made it.
        record: RecordId,
    },
}

/// How a readiness check went. Later is stricter.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum CheckOutcome {
    /// Done in full, and nothing was felt.
    Clear,
    /// Not done in full.
    NotYet,
    /// A sign came: heaviness, leaking, pain, a bulge or doming.
    Sign,
}

/// One readiness check with how it went.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct CheckResult {
    /// Which.
    pub check: CheckId,
    /// How it went.
    pub outcome: CheckOutcome,
}

/// The answer to a hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum HoldAnswer {
    /// Go on, a level down as after any drop.
    GoOn,
    /// Restart 20 % lighter at the bottom of the range.
    RestartLighter,
    /// Keep resting it.
    KeepResting,
}

/// How she says a next day went.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "snake_case")]
#[ts(export)]
pub enum NextDay {
    /// Nothing, or back to how it usually is.
    Settled,
    /// Something was still there or new.
    NotSettled,
}

/// Who a client is and whom to call, as entered at set-up.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Profile {
    /// Her name, as she wants to be called.
    pub name: String,
    /// Emergency number.
    #[serde(default)]
    pub emergency: Option<String>,
    /// Midwife, doctor or clinic.
    #[serde(default)]
    pub clinic: Option<String>,
}

/// A symptom that intake recorded as usual.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Baseline {
    /// Kind.
    pub kind: SymptomId,
    /// Usual amount.
    pub amount: SymptomAmount,
}

/// What a record says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "kind", rename_all = "snake_case")]
#[ts(export)]
pub enum Payload {
    /// Who the person is. First in her own stream.
    Profile(Profile),
    /// How she is before a session.
    CheckIn {
        /// The run that follows.
        run: RunId,
        /// Readiness.
        readiness: Readiness,
        /// Symptoms since last time.
        symptoms: Vec<Symptom>,
        /// What else there is today.
        #[serde(default)]
        today: Vec<TodayThing>,
    },
    /// A session began.
    SessionStarted {
        /// The run.
        run: RunId,
        /// Local day.
        day: NaiveDate,
        /// Programme.
        programme: ProgrammeId,
        /// Its revision.
        revision: u32,
        /// Planned session.
        session: PlanSessionId,
    },
    /// What was proposed, as it was shown.
    ProposalShown {
        /// The run.
        run: RunId,
        /// SHA-256 (hex) of the inputs.
        inputs: String,
        /// Streams and how far each was known: (device, next number).
        known: Vec<(DeviceId, u64)>,
        /// Versions of engine, catalogue and rule pack.
        versions: Versions,
        /// The result.
        result: Arc<SessionProposal>,
    },
    /// A set was done.
    SetDone(SetDone),
    /// A set was left out.
    SetSkipped {
        /// The run.
        run: RunId,
        /// The slot.
        slot: SlotId,
        /// The round, from 0.
        round: u8,
        /// Why.
        why: SkipWhy,
    },
    /// She chose another allowed option for the rest of the session.
    OptionChosen {
        /// The run.
        run: RunId,
        /// The slot.
        slot: SlotId,
        /// The variant.
        variant: VariantId,
    },
    /// A symptom, marked with one tap.
    SymptomMark {
        /// The run, if in a session.
        run: Option<RunId>,
        /// The slot in hand or just done.
        slot: Option<SlotId>,
        /// Its ladder.
        ladder: Option<LadderId>,
        /// The variant in hand or just done.
        variant: Option<VariantId>,
        /// The round in hand or just done, from 0.
        round: Option<u8>,
        /// True when it was marked at rest.
        at_rest: bool,
        /// What is known of it.
        symptom: Symptom,
    },
    /// A record is taken back: not meant.
    Withdrawal {
        /// The record.
        target: RecordId,
    },
    /// How the next day went.
    NextDayAnswer {
        /// The run it speaks of.
        run: RunId,
        /// How it went.
        answer: NextDay,
        /// What was still there or new.
        symptoms: Vec<Symptom>,
    },
    /// A session ended.
    SessionEnded {
        /// The run.
        run: RunId,
        /// Session effort, CR10.
        effort: Option<u8>,
        /// Minutes.
        minutes: Option<u16>,
        /// Note.
        note: Option<String>,
    },
    /// A record says something else than first written.
    Correction {
        /// The record, or an earlier correction of it.
        target: RecordId,
        /// What holds instead.
        instead: Box<Payload>,
    },
    /// Body mass.
    BodyMass {
        /// As entered.
        mass: Weight,
    },
    /// What she owns from now on.
    KitChanged {
        /// All of it.
        kit: Kit,
    },
    /// "Ten reps with what?", answered.
    TenReps {
        /// The variant.
        variant: VariantId,
        /// The load.
        load: Load,
    },
    /// A stage begins or is dated.
    StageChanged {
        /// The stage.
        stage: Stage,
    },
    /// The outcome of an intake.
    Screening {
        /// Conditions.
        conditions: Vec<ConditionId>,
        /// Usual symptoms.
        baselines: Vec<Baseline>,
        /// True for somebody who has trained with weights before.
        trained: bool,
        /// True for somebody who has never trained with weights: she learns the moves first.
        #[serde(default)]
        never: bool,
        /// Who filled it in.
        #[serde(default)]
        by: Option<Voice>,
        /// In words: what else there is to know.
        #[serde(default)]
        note: Option<String>,
        /// Screenings that were talked over and stand no longer; other than her own earlier ones.
        #[serde(default)]
        instead_of: Vec<RecordId>,
    },
    /// Training is taken up again after a birth or a loss; the plan rests until both have said so.
    TakenUp {
        /// Who says so.
        by: Voice,
        /// In words.
        #[serde(default)]
        note: String,
    },
    /// Checks before impact were tried. Those that are not named stand as they did.
    ImpactChecked {
        /// The day.
        on: NaiveDate,
        /// Who says so.
        by: Voice,
        /// What was tried and how it went.
        results: Vec<CheckResult>,
        /// In words.
        #[serde(default)]
        note: String,
    },
    /// Something is ruled out.
    Restriction {
        /// What.
        what: RestrictionKind,
        /// Until and with this day; open-ended if absent.
        until: Option<NaiveDate>,
        /// Why.
        note: String,
    },
    /// A hold is answered.
    HoldAnswered {
        /// The mark or answer that made it.
        hold: RecordId,
        /// The answer.
        answer: HoldAnswer,
        /// In words.
        note: String,
    },
    /// Training is open again after a red flag, or where screening asked.
    Clearance {
        /// Who said so.
        who: String,
        /// When.
        on: NaiveDate,
        /// What was said.
        said: String,
        /// What it speaks of; all that waited when it was given if absent.
        #[serde(default)]
        speaks_of: Option<Vec<ClearedThing>>,
        /// Until and with this day; open-ended if absent.
        #[serde(default)]
        until: Option<NaiveDate>,
    },
    /// A question of hers to the coach.
    Question {
        /// Its words.
        text: String,
    },
    /// An answer to a question.
    Answer {
        /// The question.
        question: RecordId,
        /// Its words.
        text: String,
    },
    /// A note.
    Note {
        /// Its words.
        text: String,
    },
    /// Consent to keep and pass on the log.
    Consent {
        /// What was agreed to.
        text: String,
    },
    /// A plan was taken in; its exact text is kept.
    PlanTakenIn {
        /// The plan file's exact text.
        plan: String,
    },
    /// A plan was written for a client.
    PlanSent {
        /// SHA-256 (hex) of its exact text.
        plan: String,
        /// Its sequence number.
        sequence: u64,
    },
    /// The coach sets where a client stands on a ladder, from the day it is written.
    Override {
        /// Level, variant and load to start from.
        start: Start,
        /// Why.
        note: String,
    },
    /// The coach sets a rule for a client, or puts it back to what the pack says.
    RuleSetting(RuleSetting),
    /// The coach's own words and picture for a variant, in the coach's own stream.
    VariantWords(VariantWords),
    /// A ladder of the coach's own, in the coach's own stream.
    OwnLadder(OwnLadder),
    /// A variant of the coach's own, in the coach's own stream.
    OwnVariant(Box<OwnVariant>),
    /// A kind from a newer version. Its line is kept and passed on untouched.
    #[serde(other)]
    Unknown,
}

impl Payload {
    /// A clearance that speaks of all that waits, without an end.
    #[must_use]
    pub fn cleared(who: &str, on: NaiveDate, said: &str) -> Self {
        let (who, said) = (who.to_owned(), said.to_owned());
        Self::Clearance { who, on, said, speaks_of: None, until: None }
    }

    /// An intake as the coach fills it in.
    #[must_use]
    pub fn screened(conditions: Vec<ConditionId>, baselines: Vec<Baseline>, trained: bool) -> Self {
        let by = Some(Voice::Coach);
        let (note, instead_of) = (None, Vec::new());
        Self::Screening { conditions, baselines, trained, never: false, by, note, instead_of }
    }

    /// A mark that belongs to no ladder: at home, or in a run between its sets.
    #[must_use]
    pub fn mark_at_large(run: Option<RunId>, symptom: Symptom) -> Self {
        let (slot, ladder, variant, round) = (None, None, None, None);
        Self::SymptomMark { run, slot, ladder, variant, round, at_rest: true, symptom }
    }
}

/// Versions that a proposal was made with.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[ts(export)]
pub struct Versions {
    /// Engine.
    pub engine: String,
    /// Catalogue.
    pub catalogue: u32,
    /// Rule pack.
    pub rules: u32,
}

#[derive(Deserialize)]
struct Head {
    v: u32,
    id: RecordId,
    device: DeviceId,
    person: PersonId,
    seq: u64,
    prev: Option<String>,
    at: DateTime<FixedOffset>,
}

impl Record {
    /// Reads a line. What a newer version wrote and this one cannot read becomes [`Payload::Unknown`].
    ///
    /// # Errors
    /// When the line is no record, or one of this version that is not well formed.
    pub fn parse(line: &str) -> Result<Self, serde_json::Error> {
        match serde_json::from_str::<Self>(line) {
            Ok(record) => Ok(record),
            Err(error) => match serde_json::from_str::<Head>(line) {
                Ok(h) if h.v > SCHEMA_VERSION => Ok(Self {
                    v: h.v,
                    id: h.id,
                    device: h.device,
                    person: h.person,
                    seq: h.seq,
                    prev: h.prev,
                    at: h.at,
                    payload: Payload::Unknown,
                }),
                Ok(_) | Err(_) => Err(error),
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(v: u32, payload: &str) -> String {
        format!(
            r#"{{"v":{v},"id":"01890a5d-ac96-774b-bcce-b302099a8057","device":"01890a5d-ac96-774b-bcce-b302099a8058","person":"01890a5d-ac96-774b-bcce-b302099a8059","seq":0,"prev":null,"at":"2026-03-02T09:30:00+01:00","payload":{payload}}}"#
        )
    }

    #[test]
    fn a_kind_from_a_newer_version_is_unknown_and_no_error() {
        let record = Record::parse(&line(1, r#"{"kind":"moon_phase","phase":3}"#)).unwrap();
        assert_eq!(record.payload, Payload::Unknown);
        let record = Record::parse(&line(2, r#"{"kind":"note","text":{"de":"x"}}"#)).unwrap();
        assert_eq!(record.payload, Payload::Unknown, "a known kind with a newer shape");
    }

    #[test]
    fn a_malformed_record_of_this_version_is_refused() {
        assert!(Record::parse(&line(1, r#"{"kind":"note","text":7}"#)).is_err());
        assert!(Record::parse("{}").is_err());
    }

    #[test]
    fn lines_of_before_scope_and_voice_are_read_as_they_were_meant() {
        let read = |payload: &str| Record::parse(&line(1, payload)).unwrap().payload;
        let screened =
            read(r#"{"kind":"screening","conditions":["prolapse"],"baselines":[],"trained":true}"#);
        assert!(matches!(screened, Payload::Screening { by: None, instead_of, .. } if instead_of.is_empty()));
        let cleared = read(r#"{"kind":"clearance","who":"midwife","on":"2026-03-01","said":"may train"}"#);
        // Of all that waited, without an end.
        let on = NaiveDate::from_ymd_opt(2026, 3, 1).unwrap();
        assert_eq!(cleared, Payload::cleared("midwife", on, "may train"));
        let born = read(
            r#"{"kind":"stage_changed","stage":{"stage":"postpartum","birth":"2026-03-01","mode":"vaginal"}}"#,
        );
        let Payload::StageChanged { stage: Stage::Postpartum { severe_tear, .. } } = born else { panic!() };
        assert_eq!(severe_tear, None, "what was not said is not said");
        let pregnant = read(
            r#"{"kind":"stage_changed","stage":{"stage":"pregnant","due":"2026-06-01","last_period":null}}"#,
        );
        assert_eq!(
            pregnant,
            Payload::StageChanged { stage: Stage::pregnant(NaiveDate::from_ymd_opt(2026, 6, 1), None) }
        );
    }

    #[test]
    fn a_line_keeps_its_offset() {
        let record = Record::parse(&line(1, r#"{"kind":"note","text":"a"}"#)).unwrap();
        assert_eq!(record.at.offset().local_minus_utc(), 3600);
        assert_eq!(serde_json::to_string(&record).unwrap(), line(1, r#"{"kind":"note","text":"a"}"#));
    }
}
