//! How long a session takes: as it is written, as it is meant, and as it was logged.

use super::{Advice, AdviceCode, Draft, FixCode, edit};
use crate::flow::planned_minutes;
use crate::history::{History, Run};
use crate::ids::{PlanSessionId, SlotId};
use crate::monitor::load::Minutes;
use crate::programme::PlanSession;
use crate::reason::Fact;
use crate::writing::Edit;
use serde::Serialize;
use std::collections::BTreeSet;
use ts_rs::TS;

/// Minutes of a session.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct SessionMinutes {
    /// The session.
    pub session: PlanSessionId,
    /// As it is written: reps by tempo, rests and setting up.
    pub estimate: u16,
    /// Median of what was logged; `None` where nobody has trained it.
    pub median: Option<u32>,
    /// How many times it was logged.
    pub logged: u32,
}

/// Minutes of each session of a draft, with the median of what clients logged. A session counts where it was ended, of
/// this programme, with the same moves as it has now, and with nothing left out.
#[must_use]
pub fn session_minutes<'h>(
    draft: &Draft<'_>,
    histories: impl Iterator<Item = &'h History> + Clone,
) -> Vec<SessionMinutes> {
    let cap = draft.rules.number("watch.minutes", "cap");
    let of = |session: &PlanSession| {
        let now: BTreeSet<&SlotId> = session.slots().map(|(_, slot)| &slot.id).collect();
        let counts = |run: &&Run| {
            let of_it =
                run.planned.as_ref().is_some_and(|(id, _, s)| *id == draft.programme.id && *s == session.id);
            let shown = || run.shown.iter().flat_map(|p| &p.slots).map(|p| &p.slot).collect::<BTreeSet<_>>();
            of_it && run.ended.is_some() && !run.sets.is_empty() && run.skips.is_empty() && shown() == now
        };
        let runs = histories.clone().flat_map(|h| &h.runs).filter(counts);
        let mut logged: Vec<u32> = runs.filter_map(|r| Minutes::of(r, cap).count()).collect();
        SessionMinutes {
            session: session.id.clone(),
            estimate: planned_minutes(draft.catalogue, draft.rules, session),
            median: median(&mut logged),
            logged: u32::try_from(logged.len()).unwrap_or(u32::MAX),
        }
    };
    draft.programme.sessions.iter().map(of).collect()
}

/// The middle one, or the mean of the two in the middle, half a minute upward.
fn median(minutes: &mut [u32]) -> Option<u32> {
    minutes.sort_unstable();
    let middle = minutes.len() / 2;
    let upper = *minutes.get(middle)?;
    if minutes.len().is_multiple_of(2) {
        minutes.get(middle.checked_sub(1)?).map(|lower| (lower + upper).div_ceil(2))
    } else {
        Some(upper)
    }
}

/// A session that takes longer than it is meant to, or than it is estimated.
pub(super) fn of_session(draft: &Draft<'_>, session: &PlanSession, all: &[SessionMinutes]) -> Vec<Advice> {
    let rule = "advice.minutes";
    let Some(known) = all.iter().find(|m| m.session == session.id) else { return Vec::new() };
    let estimate = f64::from(known.estimate);
    let enough = f64::from(known.logged) >= draft.rules.number(rule, "logged");
    let logged = known.median.filter(|_| enough).map(f64::from);
    let mut found = Vec::new();
    if let Some(meant) = session.minutes.map(f64::from) {
        // What was logged is nearer to the truth than the estimate.
        let takes = logged.unwrap_or(estimate);
        if takes > meant * (1.0 + draft.rules.number(rule, "over_share")) + 1e-9 {
            let advice = Advice::new(draft.rules, AdviceCode::Longer, rule)
                .of_session(&session.id)
                .number("minutes", takes)
                .number("meant", meant)
                .number("logged", logged.map_or(0.0, |_| f64::from(known.logged)));
            found.push(match shorter(draft, session, takes - meant, takes / estimate.max(1.0)) {
                Some(fix) => advice.fixed(fix),
                None => advice,
            });
        }
    }
    if let Some(median) = logged
        && (median - estimate).abs() > draft.rules.number(rule, "logged_share") * estimate
    {
        let mut advice = Advice::new(draft.rules, AdviceCode::Logged, rule)
            .of_session(&session.id)
            .number("median", median)
            .number("minutes", estimate)
            .number("logged", f64::from(known.logged));
        let to = known.median.and_then(|m| u16::try_from(m.clamp(5, 180)).ok());
        if let Some(to) = to.filter(|to| session.minutes.is_none_or(|m| m != *to)) {
            let meant = Edit::MinutesOfSession { session: session.id.clone(), minutes: Some(to) };
            advice = advice.fixed(edit(FixCode::Minutes, "minutes", Fact::Number(f64::from(to)), 0, meant));
        }
        found.push(advice);
    }
    found
}

/// One round less in the block where that saves just enough, or the most if none does. `pace` is what a minute of the
/// estimate takes.
fn shorter(draft: &Draft<'_>, session: &PlanSession, over: f64, pace: f64) -> Option<super::Fix> {
    let whole = planned_minutes(draft.catalogue, draft.rules, session);
    let saved = |index: usize| {
        let mut less = session.clone();
        let block = less.blocks.get_mut(index)?;
        block.rounds = block.rounds.checked_sub(1).filter(|r| *r > 0)?;
        let left = planned_minutes(draft.catalogue, draft.rules, &less);
        Some((index, block_rounds(&less, index)?, f64::from(whole.saturating_sub(left)) * pace))
    };
    let ways: Vec<(usize, u8, f64)> = (0..session.blocks.len()).filter_map(saved).collect();
    let enough = ways.iter().filter(|w| w.2 >= over).min_by(|a, b| a.2.total_cmp(&b.2));
    let (index, rounds, _) = *enough.or_else(|| ways.iter().max_by(|a, b| a.2.total_cmp(&b.2)))?;
    let shape = Edit::ShapeBlock {
        block: session.blocks.get(index)?.id.clone(),
        rounds: Some(rounds),
        rest_seconds: None,
        rest_between_seconds: None,
        part: None,
        week: None,
    };
    Some(edit(FixCode::Rounds, "rounds", Fact::Number(f64::from(rounds)), 0, shape))
}

fn block_rounds(session: &PlanSession, index: usize) -> Option<u8> {
    session.blocks.get(index).map(|b| b.rounds)
}
