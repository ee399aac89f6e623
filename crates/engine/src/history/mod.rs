//! What happened: runs of sessions with their sets and marks, and the facts about the person.

pub mod resolve;
mod rounds;
mod run;
mod said;
mod take;
mod voices;

pub use rounds::{Round, rounds_of};
pub use run::{CheckIn, Ended, Mark, NextDayEntry, Run, SetEntry, Skip};
pub use said::{Checked, Cleared, HoldReply, Intake, IntakeSaid, Restriction, Said, StageSaid};
pub use voices::{Rest, SAME_BIRTH};

use crate::ids::{RunId, VariantId};
use crate::kit::{Kit, Load};
use crate::programme::Start;
use crate::record::{Payload, Profile, Record, Voice};
use crate::rules::RuleSetting;
use crate::stage::Stage;
use crate::units::Kg;
use resolve::Resolved;

/// Lengths of the lists of a history.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Extent([usize; 17]);

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
    /// Stages in order of recording, as they hold.
    pub stages: Vec<Said<Stage>>,
    /// Stages in order of recording, as each was said.
    pub stages_said: Vec<StageSaid>,
    /// Intakes in order, each with all that stood once it was given.
    pub intakes: Vec<Said<Intake>>,
    /// Intakes in order, as each was given.
    pub intakes_said: Vec<IntakeSaid>,
    /// Who has said that training is taken up again after a birth or a loss.
    pub taken_up: Vec<Said<(Voice, String)>>,
    /// Checks before impact, in order of recording.
    pub checked: Vec<Said<Checked>>,
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
            self.stages_said.len(),
            self.intakes.len(),
            self.intakes_said.len(),
            self.taken_up.len(),
            self.checked.len(),
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
            stages_said,
            intakes,
            intakes_said,
            taken_up,
            checked,
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
        self.stages_said.truncate(stages_said);
        self.intakes.truncate(intakes);
        self.intakes_said.truncate(intakes_said);
        self.taken_up.truncate(taken_up);
        self.checked.truncate(checked);
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
}
