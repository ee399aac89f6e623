//! What can go wrong in a use case, each with a stable code. The sentences stand in Fluent.

use crate::views::ErrorView;
use crate::words::Words;
use newel_exchange::{FileError, ReadError, WriteError};
use newel_store::StoreError;

/// Why a use case could not do what was asked. Nothing was changed.
#[derive(Debug, thiserror::Error)]
pub enum AppError {
    /// The log.
    #[error(transparent)]
    Store(#[from] StoreError),
    /// A file's content.
    #[error(transparent)]
    Read(#[from] ReadError),
    /// A document that cannot be written.
    #[error(transparent)]
    Write(#[from] WriteError),
    /// The disk.
    #[error(transparent)]
    File(#[from] FileError),
    /// Something that the app itself refuses.
    #[error("{0}")]
    Refused(Refusal),
    /// A panic below was caught.
    #[error("something inside went wrong")]
    Internal,
}

/// What the app itself refuses.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Refusal {
    /// No profile is open.
    #[error("no profile is open")]
    NoProfile,
    /// There is no such profile on this device.
    #[error("there is no such profile")]
    NoSuchProfile,
    /// The plan is for somebody else.
    #[error("the plan is for somebody else")]
    PlanForSomebodyElse,
    /// No plan was taken in yet.
    #[error("there is no plan yet")]
    NoPlan,
    /// An older plan than the one in force.
    #[error("the plan is older than the one in force")]
    OlderPlan,
    /// The plan's programme does not fit this version.
    #[error("the plan's programme cannot be used")]
    UnusableProgramme,
    /// No session is under way.
    #[error("no session is under way")]
    NoSession,
    /// Training is closed.
    #[error("training is closed")]
    Closed,
    /// A record, slot or variant that is not there.
    #[error("there is no such thing")]
    NoSuchThing,
    /// A red flag that was confirmed cannot be taken back.
    #[error("a confirmed red flag cannot be taken back")]
    Confirmed,
    /// A number out of range or a text too long.
    #[error("a value is out of range")]
    OutOfRange,
    /// A name is missing.
    #[error("a name is missing")]
    NameMissing,
    /// A log from a person that another profile's device wrote about.
    #[error("this is not a file for this profile")]
    NotForThisProfile,
    /// Only a coach's profile can do this.
    #[error("only a coach can do this")]
    CoachOnly,
    /// Loosening a rule asks for a note.
    #[error("loosening a rule asks for a note")]
    NoteMissing,
    /// A rule or number that is not for a coach to set.
    #[error("this rule cannot be set")]
    RuleFixed,
    /// Nothing was chosen where something has to be.
    #[error("nothing is chosen")]
    NothingChosen,
    /// A date that lies ahead or too far back.
    #[error("a date cannot be")]
    DateCannotBe,
    /// A file that was chosen as a picture is none.
    #[error("not a picture")]
    NotAPicture,
    /// A letter goes out only with her leave.
    #[error("her consent is missing")]
    ConsentMissing,
    /// A red flag would be loosened.
    #[error("a red flag cannot be loosened")]
    RedFlagStays,
}

impl Refusal {
    /// The stable code.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::NoProfile => "no-profile",
            Self::NoSuchProfile => "no-such-profile",
            Self::PlanForSomebodyElse => "plan-for-somebody-else",
            Self::NoPlan => "no-plan",
            Self::OlderPlan => "older-plan",
            Self::UnusableProgramme => "unusable-programme",
            Self::NoSession => "no-session",
            Self::Closed => "closed",
            Self::NoSuchThing => "no-such-thing",
            Self::Confirmed => "confirmed",
            Self::OutOfRange => "out-of-range",
            Self::NameMissing => "name-missing",
            Self::NotForThisProfile => "not-for-this-profile",
            Self::CoachOnly => "coach-only",
            Self::NoteMissing => "note-missing",
            Self::RuleFixed => "rule-fixed",
            Self::NothingChosen => "nothing-chosen",
            Self::DateCannotBe => "date-cannot-be",
            Self::NotAPicture => "not-a-picture",
            Self::ConsentMissing => "consent-missing",
            Self::RedFlagStays => "red-flag-stays",
        }
    }

    /// Every refusal, for the test that each has its sentence.
    pub const ALL: [Self; 21] = [
        Self::NoProfile,
        Self::NoSuchProfile,
        Self::PlanForSomebodyElse,
        Self::NoPlan,
        Self::OlderPlan,
        Self::UnusableProgramme,
        Self::NoSession,
        Self::Closed,
        Self::NoSuchThing,
        Self::Confirmed,
        Self::OutOfRange,
        Self::NameMissing,
        Self::NotForThisProfile,
        Self::CoachOnly,
        Self::NoteMissing,
        Self::RuleFixed,
        Self::NothingChosen,
        Self::DateCannotBe,
        Self::NotAPicture,
        Self::ConsentMissing,
        Self::RedFlagStays,
    ];
}

impl From<Refusal> for AppError {
    fn from(refusal: Refusal) -> Self {
        Self::Refused(refusal)
    }
}

impl AppError {
    /// The Fluent id of its sentence; `.remedy` of it says what to do.
    #[must_use]
    pub fn sentence(&self) -> String {
        match self {
            Self::Store(e) => format!("store-error-{}", e.code()),
            Self::Read(e) => format!("file-error-{}", e.code()),
            Self::Write(e) => format!("file-error-{}", e.code()),
            Self::File(e) => format!("file-error-{}", e.code()),
            Self::Refused(r) => format!("app-error-{}", r.code()),
            Self::Internal => "app-error-internal".to_owned(),
        }
    }

    /// As a screen sees it.
    #[must_use]
    pub fn view(&self) -> ErrorView {
        let words = Words::english();
        let id = self.sentence();
        ErrorView {
            message: words.say(&id).unwrap_or_else(|| self.to_string()),
            remedy: words.attribute(&id, "remedy").unwrap_or_default(),
            code: id,
        }
    }
}
