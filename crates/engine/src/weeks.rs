//! The weeks of a programme: which phase one belongs to, what is trained in it, and with which doses. A week has gone by
//! when its sessions are trained, and not when seven days are over: who misses one goes on where she was.

use crate::history::{History, Run};
use crate::ids::{PlanSessionId, RunId};
use crate::programme::{Block, MOST_WEEKS, Phase, PlanSession, Programme, Slot};

/// A week of a programme and where it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Week<'p> {
    /// The phase; `None` where the programme has none.
    pub phase: Option<&'p Phase>,
    /// The week of the phase, from 1; of the whole programme where it has no phases.
    pub in_phase: u32,
    /// True in a light week.
    pub light: bool,
}

impl Programme {
    /// A week, from 1. Past the end it is the last one, which goes on.
    #[must_use]
    pub fn week(&self, week: u32) -> Week<'_> {
        let mut left = week.max(1);
        for phase in &self.phases {
            let weeks = u32::from(phase.weeks);
            if left <= weeks {
                return Week { phase: Some(phase), in_phase: left, light: has(&phase.light_weeks, left) };
            }
            left -= weeks;
        }
        if let Some(last) = self.phases.last() {
            let end = u32::from(last.weeks);
            return Week { phase: Some(last), in_phase: end, light: false };
        }
        let end = self.weeks.map_or(u32::MAX, u32::from);
        let light = left <= end && has(&self.light_weeks, left);
        Week { phase: None, in_phase: left.min(end), light }
    }

    /// True where it says something that only readers who know of weeks understand: phases, light weeks, doses by week, a
    /// warm-up or a cool-down.
    #[must_use]
    pub fn tells_weeks(&self) -> bool {
        let blocks = || self.sessions.iter().flat_map(|s| &s.blocks);
        !self.light_weeks.is_empty()
            || !self.phases.is_empty()
            || self.sessions.iter().any(|s| s.told_weeks().next().is_some())
            || blocks().any(|b| b.form.eases())
    }

    /// The first week of each phase, in order; 1 alone where it has none.
    pub fn first_weeks(&self) -> impl Iterator<Item = u32> + '_ {
        let mut next = 1;
        let phases = self.phases.iter().map(move |phase| {
            let first = next;
            next += u32::from(phase.weeks);
            first
        });
        phases.chain(self.phases.is_empty().then_some(1))
    }

    /// The programme as it is trained in a week: its phase's sessions with that week's doses, and nothing that changes by
    /// week. Light weeks are named by [`Programme::week`]; what they ease is a rule.
    #[must_use]
    pub fn in_week(&self, week: u32) -> Self {
        let at = self.week(week);
        let sessions = self.sessions.iter().filter(|s| s.is_of(at.phase));
        let sessions = sessions.map(|s| s.in_week(at.in_phase)).collect();
        Self { light_weeks: Vec::new(), phases: Vec::new(), sessions, ..self.clone() }
    }

    /// A session with the doses of a week, or of the week of its own phase that is nearest to it.
    #[must_use]
    pub fn session_in(&self, id: &PlanSessionId, week: u32) -> Option<PlanSession> {
        let session = self.session(id)?;
        let first = |s: &PlanSession| {
            let phases = self.phases.iter().zip(self.first_weeks());
            phases
                .filter(|(p, _)| s.is_of(Some(p)))
                .map(|(p, first)| (first, first + u32::from(p.weeks) - 1))
                .next()
        };
        let week = match first(session) {
            Some((first, last)) => week.clamp(first, last),
            None => week,
        };
        Some(session.in_week(self.week(week).in_phase))
    }

    /// Weeks, counted through the programme, that stand for all: of each phase the first, the first that nothing names, and
    /// each that a block or a slot names.
    #[must_use]
    pub fn told_weeks(&self) -> Vec<u32> {
        let mut all: Vec<u32> = Vec::new();
        let phases: Vec<Option<&Phase>> =
            if self.phases.is_empty() { vec![None] } else { self.phases.iter().map(Some).collect() };
        for (phase, first) in phases.into_iter().zip(self.first_weeks()) {
            let sessions = self.sessions.iter().filter(|s| s.is_of(phase));
            let named: Vec<u8> = sessions.flat_map(PlanSession::told_weeks).collect();
            let weeks = phase.map(|p| p.weeks).or(self.weeks).unwrap_or(MOST_WEEKS);
            let usual = (1..=weeks).find(|w| !named.contains(w));
            let through = |w: u8| first + u32::from(w) - 1;
            all.push(first);
            all.extend(named.into_iter().chain(usual).map(through));
        }
        all.sort_unstable();
        all.dedup();
        all
    }
}

fn has(weeks: &[u8], week: u32) -> bool {
    weeks.iter().any(|w| u32::from(*w) == week)
}

impl PlanSession {
    /// True for a session of a phase, or of a programme without any.
    #[must_use]
    pub fn is_of(&self, phase: Option<&Phase>) -> bool {
        self.phase.as_ref() == phase.map(|p| &p.id)
    }

    /// Weeks of its phase that one of its blocks or slots names.
    pub fn told_weeks(&self) -> impl Iterator<Item = u8> + '_ {
        self.blocks.iter().flat_map(|b| {
            let slots = b.slots.iter().flat_map(|s| s.by_week.iter().map(|w| w.week));
            b.by_week.iter().map(|w| w.week).chain(slots)
        })
    }

    /// The session with the doses of a week of its phase.
    #[must_use]
    pub fn in_week(&self, week: u32) -> Self {
        Self { phase: None, blocks: self.blocks.iter().map(|b| b.in_week(week)).collect(), ..self.clone() }
    }
}

impl Block {
    fn in_week(&self, week: u32) -> Self {
        let mut block = Self {
            by_week: Vec::new(),
            slots: self.slots.iter().map(|s| s.in_week(week)).collect(),
            ..self.clone()
        };
        if let Some(own) = self.by_week.iter().find(|w| u32::from(w.week) == week) {
            block.rounds = own.rounds;
            block.rest_seconds = own.rest_seconds;
            block.rest_between_seconds = own.rest_between_seconds;
        }
        block
    }
}

impl Slot {
    fn in_week(&self, week: u32) -> Self {
        let own = self.by_week.iter().find(|w| u32::from(w.week) == week);
        Self { by_week: Vec::new(), dose: own.map_or(self.dose, |w| w.dose), ..self.clone() }
    }
}

/// How far a programme has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// The week that the next session belongs to, from 1.
    pub week: u32,
    /// True when the sessions of all its weeks are trained.
    pub over: bool,
}

/// How far a programme has come, by the sessions of it that were trained.
#[must_use]
pub fn progress(history: &History, programme: &Programme) -> Progress {
    progress_at(history, programme, None)
}

/// How far a programme had come when a run of it began; how far it has come now, without one.
#[must_use]
pub fn progress_at(history: &History, programme: &Programme, run: Option<RunId>) -> Progress {
    let this = run.and_then(|id| history.run(id));
    let before = |r: &&Run| this.is_none_or(|t| r.id != t.id && r.started <= t.started);
    let of_it =
        |r: &&Run| !r.sets.is_empty() && r.planned.as_ref().is_some_and(|(id, _, _)| *id == programme.id);
    let trained = history.runs.iter().filter(before).filter(of_it).count();
    let trained = u32::try_from(trained).unwrap_or(u32::MAX);
    let week = trained / u32::from(programme.per_week.max(1)) + 1;
    Progress { week, over: programme.weeks.is_some_and(|weeks| week > u32::from(weeks)) }
}

/// The planned session that comes next, with the doses of its week: the one after the last that was begun, round and
/// round; where a phase begins, its first.
#[must_use]
pub fn next_session(history: &History, programme: &Programme) -> Option<PlanSession> {
    let week = progress(history, programme).week;
    let sessions = programme.in_week(week).sessions;
    let last = history.runs.iter().rev().filter(|r| !r.sets.is_empty()).find_map(|r| {
        let (id, _, session) = r.planned.as_ref()?;
        (*id == programme.id).then_some(session)
    });
    after(sessions, last)
}

/// The session after another; the first where that one is not among them.
fn after(sessions: Vec<PlanSession>, last: Option<&PlanSessionId>) -> Option<PlanSession> {
    let index = last.and_then(|id| sessions.iter().position(|s| s.id == *id));
    let next = index.map_or(0, |i| (i + 1) % sessions.len().max(1));
    sessions.into_iter().nth(next)
}

/// Sessions in the order in which somebody who begins now will train them, each with its week; without end.
pub fn turns(programme: &Programme) -> impl Iterator<Item = (u32, PlanSession)> + '_ {
    let mut last: Option<PlanSessionId> = None;
    (0_u32..).map_while(move |n| {
        let week = n / u32::from(programme.per_week.max(1)) + 1;
        let session = after(programme.in_week(week).sessions, last.as_ref())?;
        last = Some(session.id.clone());
        Some((week, session))
    })
}

/// A planned session as a run of it asks for it; with the doses of the week that comes next, without one.
#[must_use]
pub fn planned_session(
    history: &History,
    programme: &Programme,
    id: &PlanSessionId,
    run: Option<RunId>,
) -> Option<PlanSession> {
    programme.session_in(id, progress_at(history, programme, run).week)
}
