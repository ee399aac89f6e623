//! Advice while a programme is written: what would not work for whom, and what mends it. It blocks nothing and decides
//! nothing. What it says of a client on a day is what a proposal of that day would say: the same ground is asked.

mod minutes;
mod seen;
mod slots;
mod whole;

pub use minutes::{SessionMinutes, session_minutes};

use crate::catalogue::{Catalogue, Position};
use crate::gains::Piece;
use crate::ids::{BlockId, ConditionId, PersonId, PlanSessionId, RuleId, SlotId, SymptomId};
use crate::programme::Programme;
use crate::proposal::Bench;
use crate::reason::Fact;
use crate::rules::RulePack;
use crate::writing::Edit;
use chrono::NaiveDate;
use seen::Seen;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};
use ts_rs::TS;

/// A programme as it is being written.
#[derive(Clone, Copy, Debug)]
pub struct Draft<'a> {
    /// The programme.
    pub programme: &'a Programme,
    /// Catalogue.
    pub catalogue: &'a Catalogue,
    /// The rule pack that is built in; what the coach set for a client is looked up.
    pub rules: &'a RulePack,
    /// The local day.
    pub day: NaiveDate,
}

/// A client that the programme is looked through for.
#[derive(Clone, Copy, Debug)]
pub struct Client<'a> {
    /// Who.
    pub person: PersonId,
    /// Where she stands on the day of the draft.
    pub bench: &'a Bench<'a>,
}

/// What a piece of advice is about. The sentence stands in `advice.ftl` under `advice-<slug>`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, TS)]
#[serde(rename_all = "kebab-case")]
#[ts(export)]
pub enum AdviceCode {
    /// Nothing is proposed for her at all before something is answered or cleared.
    Closed,
    /// Until a clearance, breathing, pelvic floor and mobility alone.
    Waits,
    /// A ladder rests until what she marked is answered.
    Held,
    /// Her kit makes no option of the slot.
    NoKit,
    /// Her kit makes the lowest option of the slot alone.
    LowestKit,
    /// Stage, conditions, signs or restrictions leave no option of the slot.
    RuledOut,
    /// The slot aims nearer to failure than her stage, or a restriction, allows.
    Effort,
    /// More rounds than her stage allows.
    Rounds,
    /// Push and pull are far apart.
    PushPull,
    /// Knee and hip are far apart.
    KneeHip,
    /// Few hard sets a week of a kind of movement.
    FewSets,
    /// Many hard sets a week of a kind of movement.
    ManySets,
    /// A session takes longer than it is meant to.
    Longer,
    /// What was logged is far from the estimate.
    Logged,
}

impl AdviceCode {
    /// Every code, so that the build can check that each has its sentence.
    pub const ALL: &'static [Self] = &[
        Self::Closed,
        Self::Waits,
        Self::Held,
        Self::NoKit,
        Self::LowestKit,
        Self::RuledOut,
        Self::Effort,
        Self::Rounds,
        Self::PushPull,
        Self::KneeHip,
        Self::FewSets,
        Self::ManySets,
        Self::Longer,
        Self::Logged,
    ];

    /// Its slug.
    #[must_use]
    pub fn slug(self) -> &'static str {
        match self {
            Self::Closed => "closed",
            Self::Waits => "waits",
            Self::Held => "held",
            Self::NoKit => "no-kit",
            Self::LowestKit => "lowest-kit",
            Self::RuledOut => "ruled-out",
            Self::Effort => "effort",
            Self::Rounds => "rounds",
            Self::PushPull => "push-pull",
            Self::KneeHip => "knee-hip",
            Self::FewSets => "few-sets",
            Self::ManySets => "many-sets",
            Self::Longer => "longer",
            Self::Logged => "logged",
        }
    }

    /// True where somebody could not do the slot at all as it is written.
    #[must_use]
    pub fn leaves_nothing(self) -> bool {
        match self {
            Self::NoKit | Self::RuledOut => true,
            Self::Closed
            | Self::Waits
            | Self::Held
            | Self::LowestKit
            | Self::Effort
            | Self::Rounds
            | Self::PushPull
            | Self::KneeHip
            | Self::FewSets
            | Self::ManySets
            | Self::Longer
            | Self::Logged => false,
        }
    }
}

/// What closes an option for a client, whatever her kit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, TS)]
#[serde(tag = "by", rename_all = "snake_case")]
#[ts(export)]
pub enum ClosedBy {
    /// The position, at this stage.
    Position {
        /// Which.
        position: Position,
    },
    /// The position, since she was unwell in it in this pregnancy.
    Unwell {
        /// Which.
        position: Position,
        /// The sign.
        symptom: SymptomId,
    },
    /// Landing, at this stage.
    Impact,
    /// Landing, until the checks before it are done.
    Checks,
    /// Holding something, at this stage.
    Load,
    /// All but breathing and the pelvic floor, in the first days.
    FirstDays,
    /// A condition.
    Condition {
        /// Which.
        condition: ConditionId,
    },
    /// A restriction that the coach or a provider set.
    Restriction,
}

/// Somebody whom a piece of advice names, and when.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, TS)]
#[ts(export)]
pub struct Named {
    /// Who.
    pub person: PersonId,
    /// From this day on, within the weeks of the programme; from today on if absent.
    pub from: Option<NaiveDate>,
    /// Up to the day before this one; as long as the programme runs if absent.
    pub until: Option<NaiveDate>,
}

/// What mends it.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[serde(tag = "fix", rename_all = "snake_case")]
#[ts(export)]
pub enum Fix {
    /// A piece of kit more; all of them where there are several.
    Kit {
        /// Which.
        pieces: Vec<Piece>,
    },
    /// One edit. The words of its button stand in `advice.ftl` under `fix-<slug>`.
    Edit {
        /// What it does, for its words.
        does: FixCode,
        /// Values of its words.
        facts: BTreeMap<String, Fact>,
        /// Of those whom the advice names, how many it helps.
        helps: u32,
        /// The edit.
        edit: Edit,
    },
    /// Nothing need be done: the day's proposal does it by itself.
    OnTheDay,
}

/// What the edit of a fix does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, TS)]
#[serde(rename_all = "kebab-case")]
#[ts(export)]
pub enum FixCode {
    /// Lets easier levels in.
    Levels,
    /// Another ladder in the slot.
    Ladder,
    /// More left in reserve.
    Reserve,
    /// So many rounds.
    Rounds,
    /// One more block.
    Block,
    /// As many minutes meant as were logged.
    Minutes,
}

impl FixCode {
    /// Every code.
    pub const ALL: &'static [Self] =
        &[Self::Levels, Self::Ladder, Self::Reserve, Self::Rounds, Self::Block, Self::Minutes];

    /// Its slug.
    #[must_use]
    pub fn slug(self) -> &'static str {
        match self {
            Self::Levels => "levels",
            Self::Ladder => "ladder",
            Self::Reserve => "reserve",
            Self::Rounds => "rounds",
            Self::Block => "block",
            Self::Minutes => "minutes",
        }
    }
}

/// A piece of advice.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct Advice {
    /// What about.
    pub code: AdviceCode,
    /// True where somebody could not do the slot at all as it is written.
    pub nothing_left: bool,
    /// Whom it concerns, in the order in which they were asked about; nobody where it concerns all alike.
    pub whom: Vec<Named>,
    /// The session, if it is about one.
    pub session: Option<PlanSessionId>,
    /// The block, if it is about one.
    pub block: Option<BlockId>,
    /// The slot, if it is about one.
    pub slot: Option<SlotId>,
    /// The week of the programme, from 1, where it speaks of that one alone or of the phase that begins with it.
    pub week: Option<u32>,
    /// Values of its sentence.
    pub facts: BTreeMap<String, Fact>,
    /// What closes the options that are closed whatever the kit.
    pub closed: Vec<ClosedBy>,
    /// The rule behind it.
    pub rule: RuleId,
    /// The rule's source, with its mark.
    pub source: String,
    /// What mends it, the nearest first.
    pub fixes: Vec<Fix>,
}

impl Advice {
    fn new(rules: &RulePack, code: AdviceCode, rule: &str) -> Self {
        let rule = RuleId::from(rule);
        let source = rules.source(&rule).to_owned();
        Self {
            code,
            nothing_left: code.leaves_nothing(),
            whom: Vec::new(),
            session: None,
            block: None,
            slot: None,
            week: None,
            facts: BTreeMap::new(),
            closed: Vec::new(),
            rule,
            source,
            fixes: Vec::new(),
        }
    }

    fn with(mut self, name: &str, fact: Fact) -> Self {
        self.facts.insert(name.to_owned(), fact);
        self
    }

    fn number(self, name: &str, value: f64) -> Self {
        self.with(name, Fact::Number(value))
    }

    fn of_session(mut self, session: &PlanSessionId) -> Self {
        self.session = Some(session.clone());
        self
    }

    fn fixed(mut self, fix: Fix) -> Self {
        self.fixes.push(fix);
        self
    }
}

/// An edit as a fix, with one value of its words.
fn edit(does: FixCode, name: &str, fact: Fact, helps: usize, edit: Edit) -> Fix {
    let facts = BTreeMap::from([(name.to_owned(), fact)]);
    Fix::Edit { does, facts, helps: u32::try_from(helps).unwrap_or(u32::MAX), edit }
}

/// All that there is to say about a draft: of clients as a whole first, then of the week, then session by session and
/// slot by slot in the order of the programme. `minutes` are those of [`session_minutes`].
#[must_use]
pub fn advice(draft: &Draft<'_>, clients: &[Client<'_>], minutes: &[SessionMinutes]) -> Vec<Advice> {
    let seen: Vec<Seen<'_>> = clients.iter().map(|c| Seen::of(draft, c)).collect();
    let mut all = slots::of_clients(draft, &seen);
    let mut told = Told::default();
    for week in draft.programme.told_weeks() {
        let of_week = in_week(draft, week, &seen, minutes, &mut told);
        all.extend(of_week);
    }
    all
}

/// What was looked at in an earlier week, and is the same in a later one.
#[derive(Default)]
struct Told {
    /// Sessions, blocks and slots as every week has them.
    every: BTreeSet<String>,
    /// Slots whose options were looked at.
    slots: BTreeSet<SlotId>,
}

fn in_week<'a>(
    draft: &Draft<'a>,
    week: u32,
    seen: &[Seen<'a>],
    minutes: &[SessionMinutes],
    told: &mut Told,
) -> Vec<Advice> {
    let programme = draft.programme.in_week(week);
    let at = draft.programme.week(week).in_phase;
    let here = Draft { programme: &programme, ..*draft };
    let of_phase = draft.programme.first_weeks().any(|first| first == week);
    let in_phase = u8::try_from(at).ok();
    let named = |advice: Vec<Advice>, own: bool| {
        // What speaks of one week alone is mended in that week alone.
        advice.into_iter().map(move |mut a| {
            a.week = (own || (of_phase && week > 1)).then_some(week);
            for fix in &mut a.fixes {
                if let Fix::Edit { edit, .. } = fix {
                    *edit = edit.clone().in_week(in_phase.filter(|_| own));
                }
            }
            a
        })
    };
    let mut all: Vec<Advice> = Vec::new();
    let mut own_week = false;
    for session in &programme.sessions {
        let Some(written) = draft.programme.session(&session.id) else { continue };
        let own_session = written.told_weeks().any(|w| u32::from(w) == at);
        own_week |= own_session;
        let first = told.every.insert(session.id.to_string());
        if own_session {
            // What was logged was logged over all weeks.
            let estimate = crate::flow::planned_minutes(draft.catalogue, draft.rules, session);
            let here_alone =
                [SessionMinutes { session: session.id.clone(), estimate, median: None, logged: 0 }];
            all.extend(named(minutes::of_session(&here, session, &here_alone), true));
        } else if first {
            all.extend(named(minutes::of_session(&here, session, minutes), false));
        }
        for (block, written) in session.blocks.iter().zip(&written.blocks) {
            let own = written.by_week.iter().any(|w| u32::from(w.week) == at);
            if own || told.every.insert(block.id.to_string()) {
                all.extend(named(slots::of_block(&here, session, block, seen), own));
            }
            for (slot, written) in block.slots.iter().zip(&written.slots) {
                let own = written.by_week.iter().any(|w| u32::from(w.week) == at);
                let first = told.slots.insert(slot.id.clone());
                if own || told.every.insert(slot.id.to_string()) || first {
                    let found = slots::of_slot(&here, session, block, slot, seen, first);
                    // The same of the same clients is said once, for the first week that it is true of.
                    let anew = |a: &Advice| {
                        let said = format!("{}/{}/{:?}/{:?}", slot.id, a.code.slug(), a.facts, a.whom);
                        told.every.insert(said)
                    };
                    let found: Vec<Advice> = found.into_iter().filter(anew).collect();
                    all.extend(found.into_iter().flat_map(|a| {
                        let by_week = own && a.code == AdviceCode::Effort;
                        named(vec![a], by_week)
                    }));
                }
            }
        }
    }
    if of_phase || own_week {
        let phase = draft.programme.week(week).phase.map(|p| p.id.to_string()).unwrap_or_default();
        let mut found = whole::of_the_week(&here, seen);
        // Once for a phase is enough, with its first numbers.
        found.retain(|a| {
            let pattern = a.facts.get("pattern").map(|p| format!("{p:?}")).unwrap_or_default();
            told.every.insert(format!("{phase}/{}/{pattern}", a.code.slug()))
        });
        all.splice(0..0, named(found, own_week).collect::<Vec<_>>());
    }
    all
}
