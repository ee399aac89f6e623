//! Train: check-in, a session set by set, its end.

use crate::error::{AppError, Refusal};
use crate::newel::Books;
use crate::profile::{Known, Profile, inputs_hash, versions};
use crate::train_view;
use crate::views::{CorrectionForm, FinishForm, MarkedView, SetForm, TrainView};
use chrono::{DateTime, Duration, FixedOffset};
use newel_engine::flow::{Flow, StepState, left_out_when_short};
use newel_engine::history::Run;
use newel_engine::ids::{RecordId, RunId, SlotId, VariantId};
use newel_engine::kit::Load;
use newel_engine::programme::{Block, PlanSession, Slot};
use newel_engine::proposal::{Gate, Target, Turn, next_session};
use newel_engine::record::{
    NextDay, Payload, Purpose, Readiness, Record, Reserve, SetDone, SkipWhy, Symptom, SymptomAmount,
};
use newel_store::Action;
use uuid::Uuid;

/// A session that was left open longer than this is over: what was logged stands, and the next begins
/// afresh.
pub(crate) const OPEN_HOURS: i64 = 12;

/// The run that is open now, if there is one.
pub(crate) fn open_run(known: &Known, now: DateTime<FixedOffset>) -> Option<&Run> {
    known.history.runs.iter().rev().find(|r| {
        r.ended.is_none()
            && (r.planned.is_some() || r.check_in.is_some())
            && now - r.started < Duration::hours(OPEN_HOURS)
    })
}

/// The planned session of a run, in the plan in force.
pub(crate) fn session_of<'k>(known: &'k Known, run: &Run) -> Option<&'k PlanSession> {
    let plan = known.plan.as_ref()?;
    plan.programme.session(&run.planned.as_ref()?.2)
}

pub(crate) fn slot_of<'s>(
    session: &'s PlanSession,
    slot: &SlotId,
) -> Result<(&'s Block, &'s Slot), AppError> {
    session.slot(slot).ok_or_else(|| Refusal::NoSuchThing.into())
}

fn checked_symptom(symptom: Symptom) -> Result<Symptom, AppError> {
    let long = |s: &Option<String>| s.as_ref().is_some_and(|t| t.chars().count() > 2000);
    let pain = matches!(symptom.amount, Some(SymptomAmount::Pain(n)) if n > 10);
    if long(&symptom.words) || long(&symptom.place) || pain {
        return Err(Refusal::OutOfRange.into());
    }
    Ok(symptom)
}

fn checked_symptoms(list: Vec<Symptom>) -> Result<Vec<Symptom>, AppError> {
    list.into_iter().map(checked_symptom).collect()
}

impl Profile {
    /// The Train screen.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn train_view(&mut self, now: DateTime<FixedOffset>) -> Result<TrainView, AppError> {
        let person = self.person_view(self.person(), now.date_naive())?;
        let books = self.books();
        let known = self.own()?;
        Ok(train_view::build(known, &books, person, now))
    }

    /// Check-in, then the session begins, unless what was said closes training.
    ///
    /// # Errors
    /// Without a plan, or when a value is out of range.
    pub fn session_begin(
        &mut self,
        now: DateTime<FixedOffset>,
        readiness: Readiness,
        symptoms: Vec<Symptom>,
    ) -> Result<TrainView, AppError> {
        self.begin(now, RunId(Uuid::now_v7()), readiness, symptoms)?;
        self.train_view(now)
    }

    /// As [`Profile::session_begin`], with the id that a new run gets, and without the screen.
    pub(crate) fn begin(
        &mut self,
        now: DateTime<FixedOffset>,
        new_run: RunId,
        readiness: Readiness,
        symptoms: Vec<Symptom>,
    ) -> Result<(), AppError> {
        let symptoms = checked_symptoms(symptoms)?;
        let day = now.date_naive();
        let known = self.own()?;
        if known.plan.is_none() {
            return Err(Refusal::NoPlan.into());
        }
        let open = open_run(known, now);
        if open.is_some_and(|r| r.planned.is_some()) {
            // Begun already: a second tap changes nothing.
            return Ok(());
        }
        // A check-in that was cut off before its session began is put right and not repeated.
        let unfinished = open.and_then(|r| Some((r.id, r.check_in.as_ref()?.record)));
        let run = unfinished.map_or(new_run, |(run, _)| run);
        let check_in = Payload::CheckIn { run, readiness, symptoms };
        let payload = match unfinished {
            Some((_, record)) => {
                let target = self.latest_of(self.person(), record)?;
                Payload::Correction { target, instead: Box::new(check_in) }
            }
            None => check_in,
        };
        self.write_own(Action::CheckIn, now, vec![payload])?;

        let books = self.books();
        let person = self.person();
        let streams = self.known_streams(person)?;
        let lines = self.store.lines(person)?;
        let known = self.own()?;
        let plan = known.plan.clone().ok_or(Refusal::NoPlan)?;
        let bench = known.bench(&books, day, Some(run)).ok_or(Refusal::NoPlan)?;
        if bench.gate() != Gate::Open {
            return Ok(());
        }
        let session = next_session(&known.history, &plan.programme).ok_or(Refusal::NoPlan)?;
        let result = bench.propose(session);
        let started = Payload::SessionStarted {
            run,
            day,
            programme: plan.programme.id,
            revision: plan.programme.revision,
            session: session.id.clone(),
        };
        let made_by = versions(&books);
        let shown = Payload::ProposalShown {
            run,
            inputs: inputs_hash(&lines, &plan, &made_by, day, run),
            known: streams,
            versions: made_by,
            result: result.into(),
        };
        self.write_own(Action::StartSession, now, vec![started, shown])?;
        Ok(())
    }

    /// Answers the next-day question.
    ///
    /// # Errors
    /// When there is no such session.
    pub fn next_day_answer(
        &mut self,
        now: DateTime<FixedOffset>,
        run: RunId,
        answer: NextDay,
        symptoms: Vec<Symptom>,
    ) -> Result<TrainView, AppError> {
        let symptoms = checked_symptoms(symptoms)?;
        self.own()?.history.run(run).ok_or(Refusal::NoSuchThing)?;
        self.write_own(Action::AnswerNextDay, now, vec![Payload::NextDayAnswer { run, answer, symptoms }])?;
        self.train_view(now)
    }

    fn with_flow<T>(
        &mut self,
        run: RunId,
        work: impl FnOnce(&Books, &Known, &Run, &PlanSession, &newel_engine::proposal::Bench<'_>, &Flow) -> T,
    ) -> Result<T, AppError> {
        let books = self.books();
        let known = self.own()?;
        let entry = known.history.run(run).filter(|r| r.ended.is_none()).ok_or(Refusal::NoSession)?;
        let session = session_of(known, entry).ok_or(Refusal::NoSession)?;
        let bench = known.bench(&books, entry.day, Some(run)).ok_or(Refusal::NoPlan)?;
        let flow = Flow::of(&bench, session, entry);
        Ok(work(&books, known, entry, session, &bench, &flow))
    }

    /// Logs a set. It is on the disk when this returns, and only then does the card move on. The same
    /// set twice (a double tap) is logged once.
    ///
    /// # Errors
    /// When no session is open, the slot is not in it, or a value is out of range.
    pub fn set_log(&mut self, now: DateTime<FixedOffset>, form: SetForm) -> Result<TrainView, AppError> {
        let (count, seconds) = match form.done {
            Target::Reps(n) => (n, None),
            Target::Seconds(n) => (0, Some(n)),
        };
        checked_set(count, seconds, form.reserve, &form.load)?;
        let round = form.round.checked_sub(1).ok_or(Refusal::OutOfRange)?;
        let (ladder, purpose, double) = self.with_flow(form.run, |books, _, run, session, bench, _| {
            let (block, slot) = slot_of(session, &form.slot)?;
            if round >= block.rounds {
                return Err(AppError::from(Refusal::OutOfRange));
            }
            let place = books.catalogue.place(&form.variant).ok_or(Refusal::NoSuchThing)?;
            let purpose = match bench.turn(block, slot) {
                Turn::Do(plan) if plan.variant == form.variant => plan.purpose,
                Turn::Do(_) | Turn::Over(_) => Purpose::Work,
            };
            let double = run
                .sets
                .iter()
                .any(|e| e.set.slot == form.slot && e.set.round == round && e.set.side == form.side);
            Ok((place.ladder.id.clone(), purpose, double))
        })??;
        if double {
            return self.train_view(now);
        }
        let set = SetDone {
            run: form.run,
            slot: form.slot,
            round,
            side: form.side,
            ladder,
            variant: form.variant,
            load: form.load,
            reps: count,
            seconds,
            reserve: form.reserve,
            purpose,
            stopped: false,
        };
        self.write_own(Action::LogSet, now, vec![Payload::SetDone(set)])?;
        self.train_view(now)
    }

    /// Corrects a set.
    ///
    /// # Errors
    /// When there is no such set, or a value is out of range.
    pub fn set_correct(
        &mut self,
        now: DateTime<FixedOffset>,
        form: CorrectionForm,
    ) -> Result<TrainView, AppError> {
        let (reps, seconds) = match form.done {
            Target::Reps(n) => (n, None),
            Target::Seconds(n) => (0, Some(n)),
        };
        checked_set(reps, seconds, form.reserve, &form.load)?;
        let known = self.own()?;
        let set = known
            .history
            .runs
            .iter()
            .flat_map(|r| &r.sets)
            .find(|e| e.record == form.record)
            .map(|e| e.set.clone())
            .ok_or(Refusal::NoSuchThing)?;
        let target = self.latest_of(self.person(), form.record)?;
        let instead = SetDone { load: form.load, reps, seconds, reserve: form.reserve, ..set };
        self.write_own(
            Action::Correct,
            now,
            vec![Payload::Correction { target, instead: Box::new(Payload::SetDone(instead)) }],
        )?;
        self.train_view(now)
    }

    /// Takes back a set or a mark: not meant.
    ///
    /// # Errors
    /// When there is no such record, or it is a red flag that was confirmed.
    pub fn record_withdraw(
        &mut self,
        now: DateTime<FixedOffset>,
        record: RecordId,
    ) -> Result<TrainView, AppError> {
        let known = self.own()?;
        let target = known.records.iter().find(|r| r.id == record).ok_or(Refusal::NoSuchThing)?;
        if matches!(target.payload, Payload::SymptomMark { .. } | Payload::CheckIn { .. }) {
            let ended = newel_engine::history::resolve::run_of(&target.payload)
                .and_then(|run| known.history.run(run))
                .is_some_and(|r| r.ended.is_some());
            if ended && self.is_red(record)? {
                return Err(Refusal::Confirmed.into());
            }
        }
        self.write_own(Action::Withdraw, now, vec![Payload::Withdrawal { target: record }])?;
        self.train_view(now)
    }

    fn is_red(&mut self, record: RecordId) -> Result<bool, AppError> {
        let books = self.books();
        let known = self.own()?;
        let day = known.history.runs.last().map(|r| r.day).unwrap_or_default();
        Ok(known
            .bench(&books, day, None)
            .is_some_and(|b| b.state.reds.iter().any(|red| red.record == record)))
    }

    /// Leaves out what is left of a slot's round.
    ///
    /// # Errors
    /// When no session is open.
    pub fn set_skip(
        &mut self,
        now: DateTime<FixedOffset>,
        run: RunId,
        slot: SlotId,
        round: u8,
    ) -> Result<TrainView, AppError> {
        let round = round.checked_sub(1).ok_or(Refusal::OutOfRange)?;
        self.with_flow(run, |_, _, _, session, _, _| slot_of(session, &slot).map(|_| ()))??;
        self.write_own(
            Action::SkipSet,
            now,
            vec![Payload::SetSkipped { run, slot, round, why: SkipWhy::Chosen }],
        )?;
        self.train_view(now)
    }

    /// Chooses another allowed option for the rest of the session.
    ///
    /// # Errors
    /// When it is not allowed now.
    pub fn option_choose(
        &mut self,
        now: DateTime<FixedOffset>,
        run: RunId,
        slot: SlotId,
        variant: VariantId,
    ) -> Result<TrainView, AppError> {
        let allowed = self.with_flow(run, |_, _, _, session, bench, _| {
            let (block, slot) = slot_of(session, &slot)?;
            Ok::<bool, AppError>(match bench.turn(block, slot) {
                Turn::Do(plan) => {
                    plan.variant == variant || plan.options.iter().any(|o| o.variant == variant)
                }
                Turn::Over(_) => false,
            })
        })??;
        if !allowed {
            return Err(Refusal::NoSuchThing.into());
        }
        self.write_own(Action::ChooseOption, now, vec![Payload::OptionChosen { run, slot, variant }])?;
        self.train_view(now)
    }

    /// Leaves out what does not fit into ten minutes.
    ///
    /// # Errors
    /// When no session is open.
    pub fn session_shorten(&mut self, now: DateTime<FixedOffset>, run: RunId) -> Result<TrainView, AppError> {
        let left_out =
            self.with_flow(run, |_, _, _, session, bench, flow| left_out_when_short(bench, session, flow))?;
        if !left_out.is_empty() {
            let skips = left_out
                .into_iter()
                .map(|(slot, round)| Payload::SetSkipped { run, slot, round, why: SkipWhy::Short })
                .collect();
            self.write_own(Action::SkipSet, now, skips)?;
        }
        self.train_view(now)
    }

    /// Answers "ten reps with what?".
    ///
    /// # Errors
    /// When the variant is not known or the load is out of range.
    pub fn ten_reps(
        &mut self,
        now: DateTime<FixedOffset>,
        variant: VariantId,
        load: Load,
    ) -> Result<TrainView, AppError> {
        self.books().catalogue.place(&variant).ok_or(Refusal::NoSuchThing)?;
        checked_load(&load)?;
        self.write_own(Action::AnswerTenReps, now, vec![Payload::TenReps { variant, load }])?;
        self.train_view(now)
    }

    /// Marks a symptom with one tap. The mark is on the disk before anything is asked.
    ///
    /// # Errors
    /// When no session is open.
    pub fn mark(
        &mut self,
        now: DateTime<FixedOffset>,
        run: RunId,
        at_rest: bool,
    ) -> Result<MarkedView, AppError> {
        let payload = self.with_flow(run, |books, _, entry, _, _, flow| {
            // At rest the mark belongs to the ladder just done, else to the set in hand.
            let last = entry.sets.last().map(|e| {
                (
                    Some(e.set.slot.clone()),
                    Some(e.set.ladder.clone()),
                    Some(e.set.variant.clone()),
                    Some(e.set.round),
                )
            });
            let hand = flow.now.and_then(|i| {
                let step = flow.steps.get(i).filter(|s| s.state == StepState::Now)?;
                let plan = flow.plan(i)?;
                let ladder = books.catalogue.place(&plan.variant).map(|p| p.ladder.id.clone());
                Some((Some(step.slot.clone()), ladder, Some(plan.variant.clone()), Some(step.round)))
            });
            let place = if at_rest { last.or(hand) } else { hand.or(last) };
            let (slot, ladder, variant, round) = place.unwrap_or((None, None, None, None));
            Payload::SymptomMark {
                run: Some(run),
                slot,
                ladder,
                variant,
                round,
                at_rest,
                symptom: Symptom { kind: None, amount: None, place: None, words: None },
            }
        })?;
        let change = self.write_own(Action::MarkSymptom, now, vec![payload])?;
        let record = change.records.first().map(|r| r.id).ok_or(AppError::Internal)?;
        self.marked(now, record)
    }

    /// Says what a mark was: kind, how much, where. Each saying is a correction in the log.
    ///
    /// # Errors
    /// When there is no such mark or it was taken back.
    pub fn mark_say(
        &mut self,
        now: DateTime<FixedOffset>,
        mark: RecordId,
        symptom: Symptom,
    ) -> Result<MarkedView, AppError> {
        let symptom = checked_symptom(symptom)?;
        let known = self.own()?;
        let record: &Record = known.records.iter().find(|r| r.id == mark).ok_or(Refusal::NoSuchThing)?;
        let Payload::SymptomMark { run, slot, ladder, variant, round, at_rest, .. } = record.payload.clone()
        else {
            return Err(Refusal::NoSuchThing.into());
        };
        let instead = Payload::SymptomMark { run, slot, ladder, variant, round, at_rest, symptom };
        let target = self.latest_of(self.person(), mark)?;
        self.write_own(
            Action::DescribeSymptom,
            now,
            vec![Payload::Correction { target, instead: Box::new(instead) }],
        )?;
        self.marked(now, mark)
    }

    fn marked(&mut self, now: DateTime<FixedOffset>, record: RecordId) -> Result<MarkedView, AppError> {
        let train = self.train_view(now)?;
        let books = self.books();
        let known = self.own()?;
        let mark = train_view::mark_of(known, &books, record, now).ok_or(Refusal::NoSuchThing)?;
        Ok(MarkedView { mark, train })
    }

    /// Ends a session.
    ///
    /// # Errors
    /// When there is no such session or a value is out of range.
    pub fn session_finish(
        &mut self,
        now: DateTime<FixedOffset>,
        form: FinishForm,
    ) -> Result<TrainView, AppError> {
        let known = self.own()?;
        let run = known.history.run(form.run).ok_or(Refusal::NoSession)?;
        if run.ended.is_some() {
            return self.train_view(now);
        }
        let long = form.note.as_ref().is_some_and(|n| n.chars().count() > 4000);
        if form.effort.is_some_and(|e| e > 10) || form.minutes.is_some_and(|m| m > 600) || long {
            return Err(Refusal::OutOfRange.into());
        }
        let note = form.note.filter(|n| !n.trim().is_empty());
        self.write_own(
            Action::EndSession,
            now,
            vec![Payload::SessionEnded { run: form.run, effort: form.effort, minutes: form.minutes, note }],
        )?;
        self.train_view(now)
    }

    /// Her emergency number and her midwife, doctor or clinic.
    ///
    /// # Errors
    /// When a text is too long.
    pub fn numbers_save(
        &mut self,
        now: DateTime<FixedOffset>,
        emergency: Option<String>,
        clinic: Option<String>,
    ) -> Result<TrainView, AppError> {
        let tidy = |text: Option<String>| -> Result<Option<String>, AppError> {
            let text = text.map(|t| t.trim().to_owned()).filter(|t| !t.is_empty());
            if text.as_ref().is_some_and(|t| t.chars().count() > 120 || t.chars().any(char::is_control)) {
                return Err(Refusal::OutOfRange.into());
            }
            Ok(text)
        };
        let who = newel_engine::record::Profile {
            name: self.person_view(self.person(), now.date_naive())?.name,
            emergency: tidy(emergency)?,
            clinic: tidy(clinic)?,
        };
        self.write_own(Action::SetUpProfile, now, vec![Payload::Profile(who)])?;
        self.train_view(now)
    }
}

fn checked_load(load: &Load) -> Result<(), AppError> {
    let fits = match load {
        Load::Nothing => true,
        Load::One { weight } | Load::Pair { weight } => weight.is_plausible(),
        Load::Barbell { bar, plates } => {
            bar.is_plausible() && plates.len() <= 16 && plates.iter().all(|p| p.is_plausible())
        }
        Load::Bands { bands } | Load::Assist { bands } => {
            bands.len() <= 4
                && bands.iter().all(|b| b.at_100.0.is_finite() && b.at_100.0 > 0.0 && b.at_200.0.is_finite())
        }
    };
    if fits { Ok(()) } else { Err(Refusal::OutOfRange.into()) }
}

fn checked_set(
    reps: u16,
    seconds: Option<u16>,
    reserve: Option<Reserve>,
    load: &Load,
) -> Result<(), AppError> {
    let reserve_fits = match reserve {
        None => true,
        Some(Reserve::Exactly(n)) => n <= 4,
        Some(Reserve::AtLeast(n)) => n == 5,
    };
    if reps > 200 || seconds.is_some_and(|s| s > 1800) || !reserve_fits {
        return Err(Refusal::OutOfRange.into());
    }
    checked_load(load)
}
