//! The Train screen, built from what is known.

use crate::newel::Books;
use crate::profile::Known;
use crate::stopped;
use crate::train::{open_run, session_of};
use crate::views::{
    BlockView, ClosedKind, ClosedView, FinishedView, Follows, KindView, LaterView, LoggedView, MarkView,
    NextDayView, PersonView, PlanRestView, ReadyView, RestView, SessionView, SlotToday, SlotView, StepState,
    StepView, TrainState, TrainView, WorkPeek, WorkView,
};
use chrono::{DateTime, Duration, FixedOffset};
use newel_engine::flow::{self, Flow};
use newel_engine::history::{Mark, Run};
use newel_engine::ids::{ConditionId, RecordId, SymptomId};
use newel_engine::kit::Load;
use newel_engine::programme::{Amount, Block, PlanSession};
use newel_engine::proposal::{Bench, Gate, Outcome, Prescription, Proposal, Target, Turn};
use newel_engine::reason::{Fact, Reason, ReasonCode};
use newel_engine::record::{Readiness, Voice};
use newel_engine::rules::{Class, RulePack, Scope, Shelf, Urgency, When};
use newel_engine::stage::StageOn;
use newel_engine::symptom::Verdict;
use newel_engine::weeks::{next_session, progress};
use newel_engine::wording::VariantWords;

/// The card of a session that has ended is shown this long; then the next one may begin.
const FINISHED_HOURS: i64 = 3;

/// What the Train screen shows while no session is under way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Show {
    /// How the last session went, if it has just ended, else the next.
    Today,
    /// The next session.
    Onward,
    /// The next session of the programme that waits for its day.
    Early,
}

/// Builds the Train screen. `onward` passes over the card of a session that has just ended.
#[must_use]
pub fn build(
    known: &Known,
    books: &Books,
    person: PersonView,
    now: DateTime<FixedOffset>,
    show: Show,
) -> TrainView {
    let rules = books.rules.in_force(&known.history().settings, None, now.date_naive());
    let kinds = kinds(rules, person.stage);
    TrainView { today: now.date_naive(), state: state(known, books, now, show), person, kinds }
}

fn kinds(rules: &RulePack, stage: Option<StageOn>) -> Vec<KindView> {
    let mut kinds: Vec<_> = rules
        .symptoms()
        .iter()
        .filter(|k| k.asked_at(stage))
        .map(|k| KindView { id: k.id.clone(), shelf: k.shelf, amount: k.amount, urgency: k.urgency })
        .collect();
    kinds.sort_by_key(|k| match k.shelf {
        Shelf::First => 0,
        Shelf::Urgent => 1,
        Shelf::More => 2,
    });
    kinds
}

fn state(all: &Known, books: &Books, now: DateTime<FixedOffset>, show: Show) -> TrainState {
    let day = now.date_naive();
    let open = open_run(all, books, now);
    // A run that is begun is finished under the plan that it was begun under.
    let known = match (open.filter(|r| r.planned.is_some()), show) {
        (Some(run), _) => all.of_run(run),
        (None, Show::Early) => all,
        (None, Show::Today | Show::Onward) => all.on(day),
    };
    let run_day = open.map_or(day, |r| r.day);
    let Some(bench) = known.bench(run_day, open.map(|r| r.id)) else { return TrainState::NoPlan };
    if let Gate::Closed { by, reasons } = bench.gate() {
        // A hold that was made in mid-session closes the next one; this one is ended by its card.
        return TrainState::Closed(closed(&bench, open, by, reasons.all().to_vec()));
    }
    if let Some(run) = open.filter(|r| r.planned.is_some())
        && let Some(session) = session_of(known, run)
    {
        let own = known.plan.as_ref().map_or(&[][..], |p| &p.words);
        return TrainState::Session(session_view(&bench, &session, run, books, own, now));
    }
    let Some(plan) = &known.plan else { return TrainState::NoPlan };
    let Some(next) = next_session(known.history(), &plan.programme) else { return TrainState::NoPlan };
    let fresh = known.bench(day, None);
    let Some(fresh) = fresh else { return TrainState::NoPlan };
    let proposal = fresh.propose(&next);
    let last = known.history().runs.iter().rev().find(|r| r.planned.is_some());
    if let Some(run) = last
        && let Some(ended) = &run.ended
        && now - ended.at < Duration::hours(FINISHED_HOURS)
        && show == Show::Today
    {
        return TrainState::Finished(finished(&fresh, all, run, &next, proposal.slots, now));
    }
    let progress = progress(known.history(), &plan.programme);
    let at = plan.programme.week(progress.week);
    let sessions = plan.programme.in_week(progress.week).sessions;
    let number = sessions.iter().position(|s| s.id == next.id).unwrap_or(0);
    TrainState::Ready(ReadyView {
        title: next.title.clone(),
        number: u8::try_from(number + 1).unwrap_or(u8::MAX),
        of: u8::try_from(sessions.len()).unwrap_or(u8::MAX),
        programme: plan.programme.title.clone(),
        week: progress.week,
        weeks: plan.programme.weeks,
        over: progress.over,
        phase: at.phase.map(|p| p.title.clone()),
        light: at.light,
        begins: plan.begins_later(known.history(), day),
        later: all
            .later(day)
            .filter(|_| show != Show::Early)
            .map(|(plan, begins)| LaterView { programme: plan.programme.title.clone(), begins }),
        until_then: all
            .later(day)
            .filter(|_| show == Show::Early)
            .and_then(|_| Some(all.on(day).plan.as_ref()?.programme.title.clone())),
        minutes: flow::minutes(&fresh, &next, &proposal.slots),
        about_unknown: known.history().intakes.is_empty(),
        screen_due: newel_engine::screening::due(&fresh).first().copied().filter(|d| d.since.is_some()),
        conditions: {
            let rules = fresh.inputs.rules;
            let counts =
                |id: &&ConditionId| rules.condition(id).is_some_and(|c| c.when.at(Some(fresh.ground.stage)));
            fresh.ground.intake.conditions.iter().filter(counts).cloned().collect()
        },
        blocks: next
            .blocks
            .iter()
            .map(|b| block_view(books, b, |slot| shown(&proposal.slots, slot)))
            .collect(),
        slots: proposal.slots,
        next_day: next_day(known, &fresh),
        today: fresh.ground.today_asked(),
        readiness: vec![Readiness::Usual, Readiness::Tired, Readiness::Unwell],
        last: last.map(|r| r.day),
        left_open: last
            .filter(|r| r.ended.is_none())
            .map(|r| u16::try_from(r.sets.len()).unwrap_or(u16::MAX)),
        kit_unknown: known.history().kits.is_empty(),
    })
}

fn next_day(known: &Known, bench: &Bench<'_>) -> Option<NextDayView> {
    let run = flow::next_day_asked(known.history(), bench.inputs.rules, bench.inputs.day)?;
    let marked = run
        .marks
        .iter()
        .filter(|m| !m.taken_back)
        .filter_map(|m| m.symptoms.last()?.what.kind.clone())
        .collect();
    Some(NextDayView { run: run.id, day: run.day, marked })
}

fn shown(slots: &[Proposal], slot: &newel_engine::ids::SlotId) -> Option<Prescription> {
    slots.iter().find(|p| p.slot == *slot).and_then(|p| match &p.outcome {
        Outcome::Train(prescription) => Some(prescription.clone()),
        Outcome::Rest => None,
    })
}

fn block_view(
    books: &Books,
    block: &Block,
    today: impl Fn(&newel_engine::ids::SlotId) -> Option<Prescription>,
) -> BlockView {
    let mut loads: Vec<Load> = Vec::new();
    let mut things = Vec::new();
    let slots = block
        .slots
        .iter()
        .map(|slot| {
            let prescription = today(&slot.id);
            let place = prescription.as_ref().and_then(|p| books.catalogue.place(&p.variant));
            if let Some(p) = &prescription
                && p.load != Load::Nothing
                && !loads.contains(&p.load)
            {
                loads.push(p.load.clone());
            }
            if let Some(place) = place {
                for thing in &place.variant.needs {
                    if !things.contains(thing) {
                        things.push(*thing);
                    }
                }
            }
            SlotView {
                slot: slot.id.clone(),
                ladder: slot.ladder.clone(),
                today: prescription.zip(place).map(|(p, place)| SlotToday {
                    level: p.level,
                    levels: p.levels,
                    variant: p.variant,
                    load: p.load,
                    target: p.target,
                    per_side: place.variant.per_side,
                }),
            }
        })
        .collect();
    BlockView {
        block: block.id.clone(),
        form: block.form,
        rounds: block.rounds,
        rest_seconds: block.rest_seconds,
        slots,
        loads,
        things,
    }
}

fn closed(bench: &Bench<'_>, open: Option<&Run>, by: Option<RecordId>, reasons: Vec<Reason>) -> ClosedView {
    let red = bench.state.open_reds().filter(|r| Some(r.record) == by).min_by_key(|r| r.urgency);
    let hold = bench.state.open_holds().find(|h| Some(h.record) == by);
    let symptom = red.map(|r| r.symptom.clone()).or_else(|| hold.map(|h| h.symptom.clone()));
    // Only what belongs to the session in hand can still be taken back.
    let here = open.filter(|r| {
        r.marks.iter().any(|m| Some(m.record) == by)
            || r.check_in.as_ref().is_some_and(|c| Some(c.record) == by)
    });
    // After a loss nothing speaks of what belongs to a pregnancy; that it waits is said all the same.
    let spoken = |kind: &SymptomId| {
        let after_loss = matches!(bench.ground.stage, StageOn::AfterLoss { .. });
        let when = bench.inputs.rules.symptom(kind).map(|k| k.when);
        !(after_loss && when == Some(When::Pregnant))
    };
    let mut others: Vec<_> = bench.state.open_reds().collect();
    others.sort_by_key(|r| r.urgency);
    let mut also: Vec<SymptomId> = Vec::new();
    for other in others.iter().filter(|r| Some(&r.symptom) != symptom.as_ref() && spoken(&r.symptom)) {
        if !also.contains(&other.symptom) {
            also.push(other.symptom.clone());
        }
    }
    let symptom = symptom.filter(spoken);
    let rest = bench.inputs.history.rests().map(|r| PlanRestView {
        day: r.day,
        after_loss: r.after_loss,
        client: r.taken_up.contains(&Voice::Client),
        coach: r.taken_up.contains(&Voice::Coach),
    });
    let condition = reasons.iter().find_map(|r| match r.facts.get("condition") {
        Some(Fact::Condition(id)) => Some(id.clone()),
        _ => None,
    });
    let kind = if red.is_some() {
        ClosedKind::Red
    } else if hold.is_some() {
        ClosedKind::Hold
    } else if condition.is_some() {
        ClosedKind::Clearance
    } else {
        ClosedKind::Rest
    };
    ClosedView {
        kind,
        by,
        rest: rest.filter(|_| kind == ClosedKind::Rest),
        condition,
        symptom,
        also,
        class: if red.is_some() { Class::Red } else { Class::Hold },
        urgency: red.map(|r| r.urgency),
        can_withdraw: here.is_some(),
        open_run: open.map(|r| r.id),
        stopped: open
            .zip(by)
            .and_then(|(run, by)| stopped::set_of(bench.ground.catalogue, run, by))
            .map(|set| stopped::view(&set)),
        reasons,
    }
}

fn session_view(
    bench: &Bench<'_>,
    session: &PlanSession,
    run: &Run,
    books: &Books,
    own: &[VariantWords],
    now: DateTime<FixedOffset>,
) -> SessionView {
    let flow = Flow::of(bench, session, run);
    let mut block_before = None;
    let steps = flow
        .steps
        .iter()
        .map(|s| {
            let starts_block = block_before != Some(s.block);
            block_before = Some(s.block);
            StepView {
                state: match s.state {
                    flow::StepState::Done => StepState::Done,
                    flow::StepState::Skipped => StepState::Skipped,
                    flow::StepState::Now => StepState::Now,
                    flow::StepState::Ahead => StepState::Ahead,
                },
                starts_block,
            }
        })
        .collect();
    let work = flow.now.and_then(|i| work_view(&flow, i, session, books, own));
    let opens = flow.now.and_then(|i| {
        let step = flow.steps.get(i)?;
        let begun = flow.steps.iter().any(|s| {
            s.block == step.block && matches!(s.state, flow::StepState::Done | flow::StepState::Skipped)
        });
        let block = session.blocks.get(step.block)?;
        (!begun).then(|| block_view(books, block, |slot| turn_prescription(&flow, run, slot)))
    });
    let then = flow.now.map_or_else(Vec::new, |i| {
        flow.steps
            .iter()
            .enumerate()
            .skip(i + 1)
            .filter(|(_, s)| s.state == flow::StepState::Ahead)
            .filter_map(|(j, s)| {
                let plan = flow.plan(j)?;
                Some(WorkPeek {
                    variant: plan.variant.clone(),
                    load: plan.load.clone(),
                    target: plan.target,
                    side: s.side,
                    round: s.round + 1,
                    level: plan.level,
                    levels: plan.levels,
                })
            })
            .take(2)
            .collect()
    });
    let changed = run
        .shown
        .iter()
        .flat_map(|s| &s.slots)
        .flat_map(|p| p.reasons.all())
        .filter(|r| matches!(r.code, ReasonCode::TiredToday))
        .take(1)
        .cloned()
        .collect();
    let can_shorten = !flow::left_out_when_short(bench, session, &flow).is_empty();
    let minutes = (now - run.started).num_minutes().clamp(1, 600);
    SessionView {
        run: run.id,
        title: session.title.clone(),
        started: run.started,
        steps,
        rest: flow.rest.clone().map(|r| RestView { after: r.after, until: r.until, seconds: r.seconds }),
        opens,
        then,
        last: run.sets.last().map(|e| logged(run, e)),
        marks: run
            .marks
            .iter()
            .filter(|m| !m.taken_back)
            .map(|m| mark_view(bench, Some(session), run, m))
            .collect(),
        changed,
        minutes: u16::try_from(minutes).unwrap_or(600),
        can_shorten,
        work,
    }
}

fn turn_prescription(flow: &Flow, run: &Run, slot: &newel_engine::ids::SlotId) -> Option<Prescription> {
    let mut prescription = run.prescription(slot)?.clone();
    match flow.turns.get(slot)? {
        Turn::Do(plan) => {
            prescription.variant = plan.variant.clone();
            prescription.load = plan.load.clone();
            prescription.target = plan.target;
            Some(prescription)
        }
        Turn::Over(_) => None,
    }
}

fn work_view(
    flow: &Flow,
    index: usize,
    session: &PlanSession,
    books: &Books,
    own: &[VariantWords],
) -> Option<WorkView> {
    let step = flow.steps.get(index)?;
    let plan = flow.plan(index)?;
    let block = session.blocks.get(step.block)?;
    let slot = block.slots.iter().find(|s| s.id == step.slot)?;
    let place = books.catalogue.place(&plan.variant)?;
    let position = block.slots.iter().position(|s| s.id == step.slot)?;
    let asks_effort = matches!(plan.range, Amount::Reps { .. });
    Some(WorkView {
        block: block.id.clone(),
        form: block.form,
        slot: step.slot.clone(),
        round: step.round + 1,
        rounds: block.rounds,
        position: u8::try_from(position + 1).unwrap_or(u8::MAX),
        positions: u8::try_from(block.slots.len()).unwrap_or(u8::MAX),
        ladder: slot.ladder.clone(),
        level: plan.level,
        levels: plan.levels,
        variant: plan.variant.clone(),
        side: step.side,
        cues: place.variant.cues,
        own: own.iter().find(|w| w.variant == plan.variant).cloned(),
        load: plan.load.clone(),
        loads: plan.loads.clone(),
        target: plan.target,
        range: plan.range,
        aim: plan.reserve.filter(|_| asks_effort).map(|r| r.round().clamp(0.0, 5.0) as u8),
        asks_effort,
        purpose: plan.purpose,
        tempo: slot.dose.tempo,
        reasons: plan.reasons.clone(),
        options: plan.options.clone(),
        easier: plan.easier.clone(),
        lighter_offer: plan.lighter.clone(),
        cue_change: plan.cue,
        ask_ten_reps: plan.ask_ten_reps,
    })
}

fn logged(run: &Run, entry: &newel_engine::history::SetEntry) -> LoggedView {
    let set = &entry.set;
    let done = set.seconds.map_or(Target::Reps(set.reps), Target::Seconds);
    let shown = run.prescription(&set.slot);
    LoggedView {
        record: entry.record,
        slot: set.slot.clone(),
        round: set.round + 1,
        side: set.side,
        variant: set.variant.clone(),
        load: set.load.clone(),
        done,
        reserve: set.reserve,
        as_planned: shown.is_some_and(|p| p.variant == set.variant && p.load == set.load && p.target == done),
    }
}

/// A mark by its record, in whatever run it stands.
#[must_use]
pub fn mark_of(known: &Known, record: RecordId) -> Option<MarkView> {
    let run = known.history().runs.iter().find(|r| r.marks.iter().any(|m| m.record == record))?;
    let mark = run.marks.iter().find(|m| m.record == record)?;
    let bench = known.of_run(run).bench(run.day, Some(run.id))?;
    Some(mark_view(&bench, session_of(known, run).as_ref(), run, mark))
}

fn mark_view(bench: &Bench<'_>, session: Option<&PlanSession>, run: &Run, mark: &Mark) -> MarkView {
    let effects = bench.state.effects.get(&run.id);
    let verdict = effects.and_then(|e| e.verdicts.get(&mark.record));
    let class = verdict.map_or(Class::Drop, |v| v.class);
    let symptom = mark
        .symptoms
        .last()
        .or(mark.confirmed.last())
        .map(|said| said.what.clone())
        .unwrap_or(newel_engine::record::Symptom { kind: None, amount: None, place: None, words: None });
    let follows = follows(bench, session, mark, verdict);
    MarkView {
        mark: mark.record,
        at: mark.at,
        slot: mark.slot.clone(),
        ladder: mark.ladder.clone(),
        round: mark.round.map(|r| r + 1),
        at_rest: mark.at_rest,
        symptom,
        class,
        ends_set: verdict.is_some_and(|v| v.ends_set),
        reasons: mark_reasons(bench, mark, verdict, &follows),
        follows,
        can_withdraw: !(mark.taken_back || class == Class::Red && run.ended.is_some()),
    }
}

fn follows(
    bench: &Bench<'_>,
    session: Option<&PlanSession>,
    mark: &Mark,
    verdict: Option<&Verdict>,
) -> Follows {
    let Some(verdict) = verdict else { return Follows::Noted };
    let effects = bench.inputs.run.and_then(|run| bench.state.effects.get(&run));
    let effect = mark.ladder.as_ref().and_then(|l| effects?.ladders.get(l));
    match verdict.class {
        Class::Red => Follows::Stop { urgency: verdict.urgency.unwrap_or(Urgency::Call) },
        Class::Hold => {
            let scope = verdict.scope_on(mark.ladder.as_ref());
            Follows::Hold { scope, ends_session: scope == Scope::All }
        }
        Class::Drop => {
            if effects.is_some_and(|e| e.unloaded == Some(mark.record)) {
                return Follows::Unloaded;
            }
            let offer = session.zip(mark.slot.as_ref()).and_then(|(session, slot)| {
                let (block, slot) = session.slot(slot)?;
                bench.offer_after_mark(block, slot)
            });
            match (effect, offer) {
                (Some(e), _) if e.ended => Follows::LadderEnds { held: e.held },
                (Some(_), Some(offer)) => {
                    let levels = bench
                        .inputs
                        .catalogue
                        .place(&offer.variant)
                        .map_or(1, |p| u8::try_from(p.ladder.levels.len()).unwrap_or(u8::MAX));
                    Follows::Easier { offer, levels }
                }
                (Some(_), None) => Follows::LadderEnds { held: false },
                (None, _) => Follows::Noted,
            }
        }
        Class::Cue => Follows::Cue,
        Class::Note => Follows::Noted,
    }
}

fn mark_reasons(bench: &Bench<'_>, mark: &Mark, verdict: Option<&Verdict>, follows: &Follows) -> Vec<Reason> {
    let Some(verdict) = verdict else { return Vec::new() };
    let held = matches!(follows, Follows::LadderEnds { held: true });
    let unloaded = matches!(follows, Follows::Unloaded);
    let rules = bench.inputs.rules;
    let by_kind = format!("symptom.{}", verdict.kind);
    let code = match verdict.class {
        Class::Red => ReasonCode::RedWaits,
        Class::Hold => ReasonCode::HoldWaits,
        // What follows is said, and not what a drop does elsewhere.
        Class::Drop if held => ReasonCode::HoldWaits,
        Class::Drop if unloaded => ReasonCode::UnloadedToday,
        Class::Drop => ReasonCode::LevelDownSymptom,
        Class::Cue => ReasonCode::CueChange,
        Class::Note => return Vec::new(),
    };
    let mut reason = Reason::new(rules, code, &by_kind)
        .with("symptom", Fact::Symptom(verdict.kind.clone()))
        .with("day", Fact::Day(mark.at.date_naive()));
    if let Some(ladder) = &mark.ladder {
        reason = reason.with("ladder", Fact::Ladder(ladder.clone()));
    }
    if code == ReasonCode::LevelDownSymptom {
        reason = reason.number("exposures", rules.number("level.back-up", "exposures")).number("clean", 0.0);
    }
    let mut reasons = vec![reason];
    reasons.extend(bench.settings_behind(&reasons));
    reasons
}

fn finished(
    bench: &Bench<'_>,
    known: &Known,
    run: &Run,
    next: &PlanSession,
    proposals: Vec<Proposal>,
    _now: DateTime<FixedOffset>,
) -> FinishedView {
    let planned: u32 = run
        .shown
        .iter()
        .flat_map(|s| &s.slots)
        .map(|p| match &p.outcome {
            Outcome::Train(t) => u32::from(t.sets),
            Outcome::Rest => 0,
        })
        .sum();
    let mut rounds: Vec<(&str, u8)> = run.sets.iter().map(|e| (e.set.slot.as_str(), e.set.round)).collect();
    rounds.sort_unstable();
    rounds.dedup();
    FinishedView {
        run: run.id,
        title: session_of(known, run).map_or_else(String::new, |s| s.title.clone()),
        sets_done: u16::try_from(rounds.len()).unwrap_or(u16::MAX),
        sets_planned: u16::try_from(planned).unwrap_or(u16::MAX),
        minutes: run.ended.as_ref().and_then(|e| e.minutes),
        effort: run.ended.as_ref().and_then(|e| e.effort),
        marks: run
            .marks
            .iter()
            .filter(|m| !m.taken_back)
            .map(|m| mark_view(bench, session_of(known, run).as_ref(), run, m))
            .collect(),
        next_title: next.title.clone(),
        next: proposals,
    }
}
