//! Names of things. A slug is short, lower-case and stable: it stands in logs for ever. Its text is shared and not
//! copied: a history names the same few hundred of them tens of thousands of times.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::borrow::Borrow;
use std::fmt;
use std::sync::Arc;
use ts_rs::TS;
use uuid::Uuid;

macro_rules! slug {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS)]
        #[ts(export, as = "String")]
        #[schemars(with = "String")]
        pub struct $name(pub Arc<str>);

        impl $name {
            /// The slug as text.
            #[must_use]
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl From<&str> for $name {
            fn from(text: &str) -> Self {
                Self(text.into())
            }
        }

        impl From<String> for $name {
            fn from(text: String) -> Self {
                Self(text.into())
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }
    };
}

macro_rules! uuid_id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS)]
        #[ts(export)]
        pub struct $name(pub Uuid);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.fmt(f)
            }
        }
    };
}

slug!(
    /// A ladder of the catalogue, e.g. `squat`.
    LadderId
);
slug!(
    /// A variant of the catalogue, e.g. `squat-goblet`.
    VariantId
);
slug!(
    /// A strength group: variants that share one strength state.
    GroupId
);
slug!(
    /// A rule of the rule pack, e.g. `load.step`.
    RuleId
);

// A rule is looked up by its name in the code, often.
impl Borrow<str> for RuleId {
    fn borrow(&self) -> &str {
        &self.0
    }
}

slug!(
    /// A symptom kind of the rule pack, e.g. `heaviness`.
    SymptomId
);
slug!(
    /// A condition named at screening, e.g. `girdle-pain`.
    ConditionId
);
slug!(
    /// Something tried before impact, e.g. `single-leg-squat`.
    CheckId
);
slug!(
    /// A slot of a programme; it survives revisions.
    SlotId
);
slug!(
    /// A block of a programme.
    BlockId
);
slug!(
    /// A planned session of a programme.
    PlanSessionId
);
slug!(
    /// A phase of a programme: some of its weeks.
    PhaseId
);
uuid_id!(
    /// A record of the log (UUIDv7).
    RecordId
);
uuid_id!(
    /// A device: one installation of the app and one profile on it.
    DeviceId
);
uuid_id!(
    /// A person: a client, or the coach herself.
    PersonId
);
uuid_id!(
    /// One run of a session: what was trained on one occasion.
    RunId
);
uuid_id!(
    /// A programme.
    ProgrammeId
);
