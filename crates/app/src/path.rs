//! Path: her levels, her log, the trend of her strength. Kit and body mass.

use crate::error::{AppError, Refusal};
use crate::newel::Books;
use crate::profile::{Known, Profile};
use crate::views::{
    KitView, LadderView, MarkLogView, PathView, SessionLogView, SetLogView, TrendPoint, TrendView, WeekView,
};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::gains::gains;
use newel_engine::history::Run;
use newel_engine::ids::LadderId;
use newel_engine::kit::{Band, Kit};
use newel_engine::proposal::{Bench, Outcome, Proposal, Target};
use newel_engine::record::Payload;
use newel_engine::units::{Newtons, Weight};
use newel_engine::weeks::{next_session, progress};
use newel_store::Action;

/// One maker's table of band forces at 100 % and 200 % stretch, in lb (SOURCES 8 [s]); makers' values
/// run high (Uchida MC et al. 2016 [o]). The names say how they feel and are ours.
const BAND_PRESETS: [(&str, f64, f64); 7] = [
    ("very light band", 3.0, 4.3),
    ("light band", 3.7, 5.5),
    ("light to medium band", 4.6, 6.7),
    ("medium band", 5.8, 8.6),
    ("firm band", 7.3, 10.2),
    ("strong band", 10.2, 15.3),
    ("very strong band", 14.2, 21.3),
];

impl Profile {
    /// The Path screen.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn path_view(&mut self, now: DateTime<FixedOffset>) -> Result<PathView, AppError> {
        let books = self.books();
        let known = self.own()?;
        let day = now.date_naive();
        Ok(PathView {
            ladders: ladders(known, day),
            sessions: sessions(known),
            weeks: weeks(known, &books, day),
        })
    }

    /// The Kit screen.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn kit_view(&mut self, now: DateTime<FixedOffset>) -> Result<KitView, AppError> {
        let known = self.own()?;
        let bench = known.on(now.date_naive()).bench(now.date_naive(), None);
        Ok(KitView {
            gains: bench.map(|b| gains(&b.ground, b.inputs.programme)).unwrap_or_default(),
            kit: known.history().kit(),
            known: !known.history().kits.is_empty(),
            band_presets: band_presets(),
        })
    }

    /// Saves what she owns.
    ///
    /// # Errors
    /// When a number is out of range.
    pub fn kit_save(&mut self, now: DateTime<FixedOffset>, kit: Kit) -> Result<KitView, AppError> {
        checked_kit(&kit)?;
        self.write_own(Action::ChangeKit, now, vec![Payload::KitChanged { kit }])?;
        self.kit_view(now)
    }

    /// Saves her body mass.
    ///
    /// # Errors
    /// When it is out of range.
    pub fn body_mass_save(&mut self, now: DateTime<FixedOffset>, mass: Weight) -> Result<KitView, AppError> {
        // Wide enough for any grown person, narrow enough to catch a slip of the unit.
        if !mass.is_plausible() || !(25.0..=350.0).contains(&mass.kg().0) {
            return Err(Refusal::OutOfRange.into());
        }
        self.write_own(Action::RecordBodyMass, now, vec![Payload::BodyMass { mass }])?;
        self.kit_view(now)
    }
}

/// Bands by how stiff they feel.
pub(crate) fn band_presets() -> Vec<Band> {
    BAND_PRESETS
        .iter()
        .map(|(name, at_100, at_200)| Band {
            name: (*name).to_owned(),
            at_100: Newtons::from_lb(*at_100),
            at_200: Newtons::from_lb(*at_200),
        })
        .collect()
}

pub(crate) fn checked_kit(kit: &Kit) -> Result<(), AppError> {
    let named = |name: &str| !name.trim().is_empty() && name.chars().count() <= 40;
    let fits = kit.dumbbells.len() <= 100
        && kit.dumbbells.iter().all(|d| d.weight.is_plausible())
        && kit.bands.len() <= 20
        && kit.bands.iter().all(|b| {
            named(&b.name)
                && b.at_100.0.is_finite()
                && b.at_100.0 > 0.0
                && b.at_200.0 >= b.at_100.0
                && b.at_200.0 <= 5000.0
        })
        && kit.barbell.as_ref().is_none_or(|b| {
            b.bar.is_plausible() && b.plates.len() <= 8 && b.plates.iter().all(|p| p.weight.is_plausible())
        });
    if fits { Ok(()) } else { Err(Refusal::OutOfRange.into()) }
}

/// So many weeks are shown.
const WEEKS: usize = 8;

/// Her last weeks at a glance, the newest first.
#[must_use]
pub fn weeks(known: &Known, books: &Books, day: NaiveDate) -> Vec<WeekView> {
    let watch = crate::watch::watch_of(books, known, day);
    let marked = |from: NaiveDate, to: NaiveDate| {
        let mut kinds = Vec::new();
        for run in known.history().runs.iter().filter(|r| r.day >= from && r.day <= to) {
            let symptoms = run.marks.iter().filter(|m| !m.taken_back).flat_map(|m| &m.symptoms);
            for kind in symptoms.filter_map(|s| s.what.kind.clone()) {
                if !kinds.contains(&kind) {
                    kinds.push(kind);
                }
            }
        }
        kinds
    };
    let weeks = watch.weeks.iter().rev().take(WEEKS);
    weeks
        .map(|w| WeekView {
            from: w.from,
            to: w.to,
            sessions: w.sessions,
            minutes: w.minutes.minutes,
            guideline: w.minutes.guideline.as_ref().map(|g| g.minutes),
            source: w.minutes.guideline.as_ref().map(|g| g.source.clone()),
            done: w.adherence.done_sets,
            planned: w.adherence.planned_sets,
            effort: w.effort.as_ref().map(|e| e.mean),
            marked: marked(w.from, w.to),
        })
        .collect()
}

/// How she stands on each ladder of her programme.
#[must_use]
pub fn ladders(known: &Known, day: NaiveDate) -> Vec<LadderView> {
    let known = known.on(day);
    let books = &known.books;
    let Some(bench) = known.bench(day, None) else { return Vec::new() };
    let Some(plan) = &known.plan else { return Vec::new() };
    // Of every planned session its proposals as of today; the next session first.
    let next = next_session(known.history(), &plan.programme);
    let mut proposals: Vec<Proposal> = Vec::new();
    let now = plan.programme.in_week(progress(known.history(), &plan.programme).week);
    for session in next.into_iter().chain(now.sessions) {
        for proposal in bench.propose(&session).slots {
            if !proposals.iter().any(|p| p.ladder == proposal.ladder) {
                proposals.push(proposal);
            }
        }
    }
    let mut ids: Vec<LadderId> = Vec::new();
    for slot in plan.programme.sessions.iter().flat_map(|s| s.slots().map(|(_, slot)| slot)) {
        if !ids.contains(&slot.ladder) {
            ids.push(slot.ladder.clone());
        }
    }
    ids.into_iter().filter_map(|id| ladder_view(&bench, books, known, &id, &proposals)).collect()
}

fn ladder_view(
    bench: &Bench<'_>,
    books: &Books,
    known: &Known,
    id: &LadderId,
    proposals: &[Proposal],
) -> Option<LadderView> {
    let ladder = books.catalogue.ladder(id)?;
    let proposal = proposals.iter().find(|p| p.ladder == *id);
    let train = proposal.and_then(|p| match &p.outcome {
        Outcome::Train(t) => Some(t),
        Outcome::Rest => None,
    });
    let exposed = bench.state.ladders.get(id).and_then(|l| l.exposures.last());
    let group = train
        .map(|t| &t.variant)
        .or_else(|| exposed.map(|e| &e.variant))
        .and_then(|v| books.catalogue.place(v))
        .and_then(|p| p.variant.group.clone());
    let trend =
        group.and_then(|group| {
            let days = bench.state.trend.get(&group)?;
            let points =
                days.iter()
                    .map(|d| {
                        let (kg, low, high) = d.one_rep_max;
                        let marked =
                            known.history().runs.iter().filter(|r| r.day == d.day).any(|r| {
                                r.marks.iter().any(|m| !m.taken_back && m.ladder.as_ref() == Some(id))
                            });
                        TrendPoint { day: d.day, kg: kg.0, low: low.0, high: high.0, marked }
                    })
                    .collect();
            Some(TrendView { group, points })
        });
    let trained = |r: &Run| r.sets.iter().any(|e| e.set.ladder == *id);
    Some(LadderView {
        afresh: exposed.is_none() && known.history().runs.iter().any(trained),
        ladder: id.clone(),
        levels: ladder.levels.iter().map(|l| l.variants.iter().map(|v| v.id.clone()).collect()).collect(),
        // While it rests she stands where she stood.
        level: train.map(|t| t.level).or_else(|| bench.state.ladders.get(id)?.level),
        variant: train.map(|t| t.variant.clone()).or_else(|| exposed.map(|e| e.variant.clone())),
        load: train.map(|t| t.load.clone()).or_else(|| exposed.map(|e| e.load.clone())),
        held: bench.state.hold_on(id, ladder.region).is_some(),
        reasons: proposal.map(|p| p.reasons.all().to_vec()).unwrap_or_default(),
        next: proposal.and_then(|p| {
            let sessions = &known.plan.as_ref()?.programme.sessions;
            let (block, slot) = sessions.iter().find_map(|s| s.slot(&p.slot))?;
            bench.ahead(block, slot)
        }),
        trend,
    })
}

/// Her sessions, the newest first.
#[must_use]
pub fn sessions(known: &Known) -> Vec<SessionLogView> {
    known.history().runs.iter().rev().filter(|r| r.planned.is_some()).map(|r| session_log(known, r)).collect()
}

fn session_log(known: &Known, run: &Run) -> SessionLogView {
    let title = known
        .of_run(run)
        .plan
        .as_ref()
        .and_then(|p| p.programme.session(&run.planned.as_ref()?.2))
        .map_or_else(String::new, |s| s.title.clone());
    SessionLogView {
        run: run.id,
        day: run.day,
        title,
        readiness: run.check_in.as_ref().map(|c| c.readiness),
        today: run.check_in.as_ref().map(|c| c.today.clone()).unwrap_or_default(),
        sets: run
            .sets
            .iter()
            .map(|e| {
                let shown = run.prescription(&e.set.slot);
                SetLogView {
                    record: e.record,
                    ladder: e.set.ladder.clone(),
                    side: e.set.side,
                    variant: e.set.variant.clone(),
                    load: e.set.load.clone(),
                    done: e.set.seconds.map_or(Target::Reps(e.set.reps), Target::Seconds),
                    reserve: e.set.reserve,
                    reserve_meant: shown.and_then(|p| p.reserve),
                    planned: shown.map(|p| p.target),
                    planned_load: shown.map(|p| p.load.clone()),
                    planned_variant: shown.map(|p| p.variant.clone()),
                    stopped: e.set.stopped,
                    corrected: e.corrected,
                }
            })
            .collect(),
        marks: run
            .marks
            .iter()
            .filter(|m| !m.taken_back)
            .filter_map(|m| {
                Some(MarkLogView {
                    mark: m.record,
                    ladder: m.ladder.clone(),
                    symptom: m.symptoms.last()?.what.clone(),
                    round: m.round.map(|r| r + 1),
                })
            })
            .collect(),
        effort: run.ended.as_ref().and_then(|e| e.effort),
        minutes: run.ended.as_ref().and_then(|e| e.minutes),
        note: run.ended.as_ref().and_then(|e| e.note.clone()),
        next_day: run.next_day.as_ref().map(|n| n.answer),
        ended: run.ended.is_some(),
    }
}
