//! Train: check-in, a session set by set, its end.

use crate::checked::{checked_load, checked_set, checked_symptoms};
use crate::error::{AppError, Refusal};
use crate::newel::Books;
use crate::profile::{Known, Profile, inputs_hash, versions};
use crate::train_view::{self, Show};
use crate::views::{CheckInForm, CorrectionForm, FinishForm, SetForm, TrainView};
use chrono::{DateTime, FixedOffset};
use newel_engine::flow::{self, Flow, left_out_when_short};
use newel_engine::history::{Mark, Run};
use newel_engine::ids::{RunId, SlotId, VariantId};
use newel_engine::kit::Load;
use newel_engine::programme::{Block, PlanSession, Slot};
use newel_engine::proposal::{Gate, Target, Turn};
use newel_engine::record::{Payload, Purpose, SetDone, SkipWhy, TodayThing};
use newel_engine::weeks::{next_session, planned_session};
use newel_store::Action;
use uuid::Uuid;

/// The run that is open now, if there is one.
pub(crate) fn open_run<'k>(known: &'k Known, books: &Books, now: DateTime<FixedOffset>) -> Option<&'k Run> {
    let rules = books.rules.in_force(&known.history().settings, None, now.date_naive());
    flow::open_run(known.history(), rules, now)
}

/// The planned session of a run, in the plan it was begun under, with the doses of its week.
pub(crate) fn session_of(known: &Known, run: &Run) -> Option<PlanSession> {
    let known = known.of_run(run);
    let plan = known.plan.as_ref()?;
    planned_session(known.history(), &plan.programme, &run.planned.as_ref()?.2, Some(run.id))
}

pub(crate) fn slot_of<'s>(
    session: &'s PlanSession,
    slot: &SlotId,
) -> Result<(&'s Block, &'s Slot), AppError> {
    session.slot(slot).ok_or_else(|| Refusal::NoSuchThing.into())
}

impl Profile {
    /// The Train screen.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn train_view(&mut self, now: DateTime<FixedOffset>) -> Result<TrainView, AppError> {
        self.train_screen(now, Show::Today)
    }

    /// The Train screen with the next session, when one has just ended: a second one on the same day.
    ///
    /// # Errors
    /// When the log cannot be read.
    pub fn train_onward(&mut self, now: DateTime<FixedOffset>) -> Result<TrainView, AppError> {
        self.train_screen(now, Show::Onward)
    }

    /// The Train screen with the programme that waits for its day, for a look at it before she begins it earlier.
    ///
    /// # Errors
    /// As [`Profile::train_view`].
    pub fn train_early(&mut self, now: DateTime<FixedOffset>) -> Result<TrainView, AppError> {
        self.train_screen(now, Show::Early)
    }

    fn train_screen(&mut self, now: DateTime<FixedOffset>, show: Show) -> Result<TrainView, AppError> {
        let person = self.person_view(self.person(), now.date_naive())?;
        let books = self.books();
        let known = self.own()?;
        Ok(train_view::build(known, &books, person, now, show))
    }

    /// Check-in, then the session begins, unless what was said closes training.
    ///
    /// # Errors
    /// Without a plan, or when a value is out of range.
    pub fn session_begin(
        &mut self,
        now: DateTime<FixedOffset>,
        form: CheckInForm,
    ) -> Result<TrainView, AppError> {
        self.begin(now, RunId(Uuid::now_v7()), form, false)?;
        self.train_view(now)
    }

    /// As [`Profile::session_begin`], by the programme that waits for its day: with her first set of it it has begun.
    ///
    /// # Errors
    /// As [`Profile::session_begin`].
    pub fn session_begin_early(
        &mut self,
        now: DateTime<FixedOffset>,
        form: CheckInForm,
    ) -> Result<TrainView, AppError> {
        self.begin(now, RunId(Uuid::now_v7()), form, true)?;
        self.train_view(now)
    }

    /// As [`Profile::session_begin`], with the id that a new run gets, and without the screen.
    pub(crate) fn begin(
        &mut self,
        now: DateTime<FixedOffset>,
        new_run: RunId,
        CheckInForm { readiness, symptoms, mut today }: CheckInForm,
        early: bool,
    ) -> Result<(), AppError> {
        let symptoms = checked_symptoms(symptoms)?;
        today.sort_unstable();
        today.dedup();
        if today.contains(&TodayThing::PessaryIn) && today.contains(&TodayThing::PessaryOut) {
            return Err(Refusal::OutOfRange.into());
        }
        let day = now.date_naive();
        let books = self.books();
        let known = self.own()?;
        let in_force = if early { known } else { known.on(day) };
        let closed = in_force.bench(day, None).ok_or(Refusal::NoPlan)?.gate() != Gate::Open;
        let open = open_run(known, &books, now);
        if open.is_some_and(|r| r.planned.is_some()) {
            // Begun already: a second tap changes nothing.
            return Ok(());
        }
        if closed && symptoms.is_empty() {
            // Her card says why, and what opens it again.
            return Ok(());
        }
        // A check-in that was cut off before its session began is put right and not repeated. One that closed training
        // stands as it is: what she says beside it is another.
        let unfinished = open.filter(|_| !closed).and_then(|r| Some((r.id, r.check_in.as_ref()?.record)));
        let run = unfinished.map_or(new_run, |(run, _)| run);
        let check_in = Payload::CheckIn { run, readiness, symptoms, today };
        let payload = match unfinished {
            Some((_, record)) => {
                let target = self.latest_of(self.person(), record)?;
                Payload::Correction { target, instead: Box::new(check_in) }
            }
            None => check_in,
        };
        self.write_own(Action::CheckIn, now, vec![payload])?;

        let person = self.person();
        let streams = self.known_streams(person)?;
        let lines = self.store.lines(person)?;
        let known = self.own()?;
        let known = if early { known } else { known.on(day) };
        let plan = known.plan.clone().ok_or(Refusal::NoPlan)?;
        let bench = known.bench(day, Some(run)).ok_or(Refusal::NoPlan)?;
        if bench.gate() != Gate::Open {
            return Ok(());
        }
        let session = next_session(known.history(), &plan.programme).ok_or(Refusal::NoPlan)?;
        let result = bench.propose(&session);
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

    pub(crate) fn with_flow<T>(
        &mut self,
        run: RunId,
        work: impl FnOnce(&Books, &Known, &Run, &PlanSession, &newel_engine::proposal::Bench<'_>, &Flow) -> T,
    ) -> Result<T, AppError> {
        let books = self.books();
        let known = self.own()?;
        let entry = known.history().run(run).filter(|r| r.ended.is_none()).ok_or(Refusal::NoSession)?;
        let session = session_of(known, entry).ok_or(Refusal::NoSession)?;
        let bench = known.of_run(entry).bench(entry.day, Some(run)).ok_or(Refusal::NoPlan)?;
        let flow = Flow::of(&bench, &session, entry);
        Ok(work(&books, known.of_run(entry), entry, &session, &bench, &flow))
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
            .history()
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

    /// Ends a session.
    ///
    /// # Errors
    /// When there is no such session or a value is out of range.
    pub fn session_finish(
        &mut self,
        now: DateTime<FixedOffset>,
        form: FinishForm,
    ) -> Result<TrainView, AppError> {
        let books = self.books();
        let known = self.own()?;
        let run = known.history().run(form.run).ok_or(Refusal::NoSession)?;
        if run.ended.is_some() {
            return self.train_view(now);
        }
        let long = form.note.as_ref().is_some_and(|n| n.chars().count() > 4000);
        if form.effort.is_some_and(|e| e > 10) || form.minutes.is_some_and(|m| m > 600) || long {
            return Err(Refusal::OutOfRange.into());
        }
        let mut payloads = Vec::new();
        if let Some(count) = form.stopped_at {
            // Of the latest mark that broke a set off. Left at none done, there is nothing to log.
            let stopped_by = |m: &Mark| crate::stopped::set_of(&books.catalogue, run, m.record);
            let set = run.marks.iter().rev().find_map(stopped_by);
            let mut set = set.ok_or(Refusal::NoSuchThing)?;
            match &mut set.seconds {
                Some(seconds) => *seconds = count,
                None => set.reps = count,
            }
            checked_set(set.reps, set.seconds, set.reserve, &set.load)?;
            if count > 0 {
                payloads.push(Payload::SetDone(set));
            }
        }
        let note = form.note.filter(|n| !n.trim().is_empty());
        let (run, effort, minutes) = (form.run, form.effort, form.minutes);
        payloads.push(Payload::SessionEnded { run, effort, minutes, note });
        self.write_own(Action::EndSession, now, payloads)?;
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
