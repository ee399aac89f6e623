//! A client as advice sees her: what is open today, and on the last day that the programme runs to.

use super::{Client, ClosedBy, Draft};
use crate::catalogue::{Ladder, Loading, Place, Variant};
use crate::gains::Piece;
use crate::ground::{Bar, Ground};
use crate::history::History;
use crate::ids::{LadderId, PersonId, VariantId};
use crate::programme::LevelSpan;
use crate::proposal::{Bench, Gate};
use crate::rules::RulePack;
use crate::weeks::progress;
use chrono::{Days, NaiveDate};
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

/// One variant of a ladder, and why it is not open.
#[derive(Clone, Debug)]
pub(super) struct Rung {
    pub(super) level: u8,
    pub(super) variant: VariantId,
    pub(super) bar: Option<Bar>,
    /// What would have to be in her kit besides.
    pub(super) pieces: Vec<Piece>,
}

/// A ladder today, and on the last day.
#[derive(Debug)]
pub(super) struct Rungs {
    pub(super) now: Vec<Rung>,
    pub(super) last: Option<Vec<Rung>>,
}

/// Why a slot has no option.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Shut {
    /// What is missing in her kit for the option that wants the least; none where kit is no help.
    pub(super) pieces: Vec<Piece>,
    /// What closes options whatever her kit, in the order of the ladder.
    pub(super) closed: Vec<ClosedBy>,
}

/// A client with her ground on both days; what waits for a clearance is told once and left out of the grounds.
#[derive(Debug)]
pub(super) struct Seen<'a> {
    pub(super) person: PersonId,
    pub(super) bench: &'a Bench<'a>,
    pub(super) now: Ground<'a>,
    pub(super) last: Option<Ground<'a>>,
    /// Nothing at all is proposed.
    pub(super) closed: bool,
    /// The first day on which a clearance is waited for, if there is one.
    pub(super) waits: Option<Option<NaiveDate>>,
    history: &'a History,
    draft: Draft<'a>,
    ladders: RefCell<BTreeMap<LadderId, Rc<Rungs>>>,
}

/// The ground on a day as it would be with every clearance given, and whether one is waited for.
fn ground_on<'a>(draft: &Draft<'a>, history: &History, day: NaiveDate) -> (Ground<'a>, bool) {
    let mut ground = Ground::of(history, draft.catalogue, draft.rules, day, None);
    let waits = !ground.waits.is_empty();
    ground.waits.clear();
    (ground, waits)
}

/// The last day that the programme runs to for a client, if it has an end that is still to come. A pregnancy is looked
/// at to its due date: what comes after it is another stage, and nobody knows when.
fn last_day(draft: &Draft<'_>, history: &History) -> Option<NaiveDate> {
    let weeks = u32::from(draft.programme.weeks?);
    let left = (weeks + 1).saturating_sub(progress(history, draft.programme).week);
    let last = draft.day.checked_add_days(Days::new(u64::from(left) * 7))?.pred_opt()?;
    let due = history.stage().and_then(|s| s.due()).map(|(due, _)| due);
    let last = due.map_or(last, |due| last.min(due));
    (last > draft.day).then_some(last)
}

impl<'a> Seen<'a> {
    pub(super) fn of(draft: &Draft<'a>, client: &Client<'a>) -> Self {
        let history = client.bench.inputs.history;
        let (now, waits_now) = ground_on(draft, history, draft.day);
        let last = last_day(draft, history).map(|day| ground_on(draft, history, day));
        let waits_last = last.as_ref().filter(|(_, waits)| *waits).map(|(ground, _)| ground.day);
        let mut seen = Self {
            person: client.person,
            bench: client.bench,
            now,
            last: last.map(|(ground, _)| ground),
            closed: client.bench.gate() != Gate::Open,
            waits: None,
            history,
            draft: *draft,
            ladders: RefCell::new(BTreeMap::new()),
        };
        seen.waits = match (waits_now, waits_last) {
            (true, _) => Some(None),
            (false, Some(_)) => {
                Some(seen.first_day(|day| !ground_on(&seen.draft, history, day).1).or(Some(draft.day)))
            }
            (false, None) => None,
        };
        seen
    }

    /// The ladder's variants with what bars them.
    pub(super) fn rungs(&self, ladder: &'a Ladder) -> Rc<Rungs> {
        if let Some(known) = self.ladders.borrow().get(&ladder.id) {
            return Rc::clone(known);
        }
        let rungs = Rc::new(Rungs {
            now: rungs(&self.now, ladder),
            last: self.last.as_ref().map(|ground| rungs(ground, ladder)),
        });
        self.ladders.borrow_mut().insert(ladder.id.clone(), Rc::clone(&rungs));
        rungs
    }

    /// True if something of a ladder stays open from today to the last day.
    pub(super) fn has_open(&self, ladder: &'a Ladder, span: Option<LevelSpan>) -> bool {
        let rungs = self.rungs(ladder);
        is_open(&rungs.now, span) && rungs.last.as_ref().is_none_or(|last| is_open(last, span))
    }

    /// The easiest variant of a ladder that stays open from today to the last day, or is open today.
    pub(super) fn easiest(&self, ladder: &'a Ladder, span: Option<LevelSpan>) -> Option<VariantId> {
        let rungs = self.rungs(ladder);
        let open = |rungs: &[Rung]| -> Vec<VariantId> {
            let inside = rungs.iter().filter(|r| within(r.level, span) && r.bar.is_none());
            inside.map(|r| r.variant.clone()).collect()
        };
        let now = open(&rungs.now);
        let stays = rungs.last.as_deref().map(open);
        let both = now.iter().find(|v| stays.as_ref().is_none_or(|stays| stays.contains(v)));
        both.or(now.first()).cloned()
    }

    /// The first day on which a ladder is no longer as it is today, open or not.
    pub(super) fn turns(&self, ladder: &'a Ladder, span: Option<LevelSpan>) -> Option<NaiveDate> {
        let today = is_open(&self.rungs(ladder).now, span);
        self.first_day(|day| {
            let (ground, _) = ground_on(&self.draft, self.history, day);
            is_open(&rungs(&ground, ladder), span) == today
        })
    }

    /// The first day up to the last one on which something that holds today does not hold; none if it holds on the last.
    /// What turns twice on the way is told by one of its turns.
    pub(super) fn first_day(&self, holds: impl Fn(NaiveDate) -> bool) -> Option<NaiveDate> {
        let last = self.last.as_ref()?.day;
        if holds(last) {
            return None;
        }
        let (mut held, mut gone) = (0, u64::try_from((last - self.draft.day).num_days()).ok()?);
        while gone > held + 1 {
            let middle = held + (gone - held) / 2;
            let day = self.draft.day.checked_add_days(Days::new(middle))?;
            if holds(day) { held = middle } else { gone = middle }
        }
        self.draft.day.checked_add_days(Days::new(gone))
    }

    /// The ground on a day.
    pub(super) fn ground_on(&self, day: NaiveDate) -> Ground<'a> {
        ground_on(&self.draft, self.history, day).0
    }
}

fn rungs(ground: &Ground<'_>, ladder: &Ladder) -> Vec<Rung> {
    let mut all = Vec::new();
    for (level, at) in (0u8..).zip(&ladder.levels) {
        for variant in &at.variants {
            let bar = ground.bar(&Place { ladder, level: usize::from(level), variant }, None);
            let pieces = if bar == Some(Bar::Kit) { missing(ground, variant) } else { Vec::new() };
            all.push(Rung { level, variant: variant.id.clone(), bar, pieces });
        }
    }
    all
}

/// The pieces that a variant wants and that are not in her kit.
fn missing(ground: &Ground<'_>, variant: &Variant) -> Vec<Piece> {
    let things = variant.needs.iter().filter(|t| !ground.kit.things.contains(t)).map(|t| Piece::Thing(*t));
    let load = match variant.loading {
        Loading::Body => None,
        Loading::One => Some(Piece::OneWeight),
        Loading::Pair => Some(Piece::PairOfWeights),
        Loading::Barbell => Some(Piece::Barbell),
        Loading::Band { .. } | Loading::Assist { .. } => Some(Piece::LongBand),
    };
    load.filter(|_| ground.kit_loads(variant).is_empty()).into_iter().chain(things).collect()
}

pub(super) fn within(level: u8, span: Option<LevelSpan>) -> bool {
    span.is_none_or(|s| (s.low..=s.high).contains(&level))
}

pub(super) fn is_open(rungs: &[Rung], span: Option<LevelSpan>) -> bool {
    rungs.iter().any(|r| within(r.level, span) && r.bar.is_none())
}

/// Why nothing of a span is open.
pub(super) fn why_shut(rungs: &[Rung], span: Option<LevelSpan>) -> Shut {
    let inside = || rungs.iter().filter(|r| within(r.level, span));
    let for_kit = inside().filter(|r| r.bar == Some(Bar::Kit));
    let pieces =
        for_kit.min_by_key(|r| (r.pieces.len(), &r.pieces)).map(|r| r.pieces.clone()).unwrap_or_default();
    let mut closed: Vec<ClosedBy> = Vec::new();
    for by in inside().filter_map(|r| closed_by(r.bar.as_ref()?)) {
        if !closed.contains(&by) {
            closed.push(by);
        }
    }
    Shut { pieces, closed }
}

/// The pieces that would open a level above the lowest, where her kit makes the lowest of the span alone.
pub(super) fn lowest_alone(rungs: &[Rung], span: Option<LevelSpan>) -> Option<Vec<Piece>> {
    let inside = || rungs.iter().filter(|r| within(r.level, span));
    let lowest = inside().map(|r| r.level).min()?;
    let open_above = inside().any(|r| r.level > lowest && r.bar.is_none());
    if open_above || !inside().any(|r| r.level == lowest && r.bar.is_none()) {
        return None;
    }
    let above = inside().filter(|r| r.level > lowest && r.bar == Some(Bar::Kit));
    above.min_by_key(|r| (r.level, r.pieces.len(), &r.pieces)).map(|r| r.pieces.clone())
}

/// What closes a variant whatever her kit; nothing for what concerns one day, the kit, or the slot itself.
fn closed_by(bar: &Bar) -> Option<ClosedBy> {
    match bar {
        Bar::PositionByStage(position) => Some(ClosedBy::Position { position: *position }),
        Bar::PositionBySymptom(position, symptom) => {
            Some(ClosedBy::Unwell { position: *position, symptom: symptom.clone() })
        }
        Bar::ImpactByStage => Some(ClosedBy::Impact),
        Bar::ImpactByChecks(_) => Some(ClosedBy::Checks),
        Bar::LoadByStage => Some(ClosedBy::Load),
        Bar::BreathingByStage => Some(ClosedBy::FirstDays),
        Bar::Condition(condition) => Some(ClosedBy::Condition { condition: condition.clone() }),
        Bar::Restriction(_) => Some(ClosedBy::Restriction),
        Bar::Kit
        | Bar::Clearance(_)
        | Bar::Span
        | Bar::Retired
        | Bar::UnloadedToday
        | Bar::ChildNear
        | Bar::KitAway => None,
    }
}

impl ClosedBy {
    /// The rule behind it.
    pub(super) fn rule(&self, ground: &Ground<'_>, rules: &RulePack) -> String {
        let of_stage = || ground.effort().map_or("effort.plain", |e| e.id.as_str()).to_owned();
        match self {
            Self::Position { .. } => "position.supine".to_owned(),
            Self::Unwell { symptom, .. } => format!("symptom.{symptom}"),
            Self::Impact if ground.stage.is_pregnant() => "impact.pregnant".to_owned(),
            Self::Impact => "impact.wait".to_owned(),
            Self::Checks => "impact.checks".to_owned(),
            Self::Load | Self::FirstDays => of_stage(),
            Self::Condition { condition } if rules.condition(condition).is_some() => {
                format!("condition.{condition}")
            }
            Self::Condition { .. } | Self::Restriction => "coach.set".to_owned(),
        }
    }
}
