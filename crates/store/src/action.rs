//! What the user did, and which parts of the screens that touches.

use newel_engine::record::{Payload, Record};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// The user's action, as she would name it. A write without one cannot be made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Action {
    /// Set a profile up, or changed its name or numbers.
    SetUpProfile,
    /// Said how she is today.
    CheckIn,
    /// Began a session.
    StartSession,
    /// Saw what is proposed.
    SeeProposal,
    /// Logged a set.
    LogSet,
    /// Left a set out.
    SkipSet,
    /// Chose another option.
    ChooseOption,
    /// Marked a symptom.
    MarkSymptom,
    /// Said more of a symptom.
    DescribeSymptom,
    /// Took a record back.
    Withdraw,
    /// Corrected a record.
    Correct,
    /// Said how the next day went.
    AnswerNextDay,
    /// Ended a session.
    EndSession,
    /// Entered her body mass.
    RecordBodyMass,
    /// Changed what she owns.
    ChangeKit,
    /// Answered "ten reps with what?".
    AnswerTenReps,
    /// Recorded a stage: a pregnancy, a birth, a loss.
    ChangeStage,
    /// Recorded the outcome of an intake.
    Screen,
    /// Recorded checks before impact.
    CheckImpact,
    /// Ruled something out.
    Restrict,
    /// Answered a hold.
    AnswerHold,
    /// Recorded a clearance.
    RecordClearance,
    /// Asked the coach.
    AskQuestion,
    /// Answered a question.
    AnswerQuestion,
    /// Wrote a note.
    WriteNote,
    /// Agreed to keep and pass on the log.
    GiveConsent,
    /// Set where a client starts on a ladder.
    SetStart,
    /// Set a rule for a client, or put it back.
    SetRule,
    /// Wrote own words or a picture for a variant.
    WordVariant,
    /// Made or changed a ladder or variant of her own.
    WriteOwn,
    /// Took a plan file in.
    TakeInPlan,
    /// Wrote a plan file.
    SendPlan,
    /// Took a log file in.
    TakeInLog,
    /// Loaded the demonstration.
    LoadDemo,
    /// Made a group of clients.
    MakeGroup,
    /// Gave a group another name.
    RenameGroup,
    /// Removed a group; nobody in it is touched.
    RemoveGroup,
    /// Brought a removed group back.
    BringBackGroup,
    /// Said who is in a group, and in which order.
    SetMembers,
    /// Laid clients aside.
    Archive,
    /// Brought clients back.
    BringBack,
}

/// A part of the data that screens show; a screen refreshes when a part that it shows was touched.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Area {
    /// Who people are.
    People,
    /// Sessions: begun, proposed, trained, ended.
    Sessions,
    /// Sets: done, left out, options chosen.
    Sets,
    /// Symptoms and what she says of the next day.
    Symptoms,
    /// Holds, clearances, restrictions, screening.
    Safety,
    /// Stage and body mass.
    Body,
    /// What she owns and what she says she can lift.
    Kit,
    /// Plans, and where the coach lets her start.
    Plans,
    /// Questions, answers, notes, consent.
    Words,
    /// How the coach arranges her clients: groups, and who is laid aside. No record speaks of it.
    Arrangement,
}

/// What a write did.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// The user's action.
    pub action: Action,
    /// The records that were written, in order.
    pub records: Vec<Record>,
    /// What screens must refresh.
    pub touched: BTreeSet<Area>,
}

impl Change {
    pub(crate) fn new(action: Action, records: Vec<Record>) -> Self {
        let touched = records.iter().flat_map(|r| areas_of(&r.payload)).collect();
        Self { action, records, touched }
    }

    /// A change of the coach's arrangement, which no record speaks of.
    pub(crate) fn arranged(action: Action) -> Self {
        Self { action, records: Vec::new(), touched: BTreeSet::from([Area::Arrangement]) }
    }
}

/// The parts of the data that a payload touches.
#[must_use]
pub fn areas_of(payload: &Payload) -> BTreeSet<Area> {
    let areas: &[Area] = match payload {
        Payload::Profile(_) => &[Area::People],
        Payload::CheckIn { .. } => &[Area::Sessions, Area::Symptoms],
        Payload::SessionStarted { .. } | Payload::ProposalShown { .. } | Payload::SessionEnded { .. } => {
            &[Area::Sessions]
        }
        Payload::SetDone(_) | Payload::SetSkipped { .. } | Payload::OptionChosen { .. } => &[Area::Sets],
        Payload::SymptomMark { .. } | Payload::NextDayAnswer { .. } => &[Area::Symptoms],
        // What is taken back may be of any kind, so every part that a record of a session can touch is named.
        Payload::Withdrawal { .. } | Payload::Unknown => &ALL,
        Payload::Correction { instead, .. } => {
            let mut areas = areas_of(instead);
            areas.insert(Area::Sessions);
            return areas;
        }
        Payload::BodyMass { .. } | Payload::StageChanged { .. } => &[Area::Body],
        Payload::KitChanged { .. } | Payload::TenReps { .. } => &[Area::Kit],
        Payload::Screening { .. }
        | Payload::TakenUp { .. }
        | Payload::ImpactChecked { .. }
        | Payload::Restriction { .. }
        | Payload::HoldAnswered { .. }
        | Payload::Clearance { .. }
        | Payload::RuleSetting(_) => &[Area::Safety],
        Payload::Question { .. }
        | Payload::Answer { .. }
        | Payload::Note { .. }
        | Payload::Consent { .. } => &[Area::Words],
        Payload::PlanTakenIn { .. }
        | Payload::PlanSent { .. }
        | Payload::Override { .. }
        | Payload::VariantWords(_)
        | Payload::OwnLadder(_)
        | Payload::OwnVariant(_) => &[Area::Plans],
    };
    areas.iter().copied().collect()
}

/// Every part that a record can touch.
const ALL: [Area; 9] = [
    Area::People,
    Area::Sessions,
    Area::Sets,
    Area::Symptoms,
    Area::Safety,
    Area::Body,
    Area::Kit,
    Area::Plans,
    Area::Words,
];
