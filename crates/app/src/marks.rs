//! Symptoms: marks in a session and what they were, the morning after, and taking back what was not meant.

use crate::checked::{checked_symptom, checked_symptoms};
use crate::error::{AppError, Refusal};
use crate::profile::Profile;
use crate::train_view;
use crate::views::{MarkedView, TrainView};
use chrono::{DateTime, FixedOffset};
use newel_engine::flow::StepState;
use newel_engine::history::resolve::{LEFT_STANDING, run_of};
use newel_engine::ids::{RecordId, RunId};
use newel_engine::record::{NextDay, Payload, Record, Symptom};
use newel_store::Action;

impl Profile {
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
        self.own()?.history().run(run).ok_or(Refusal::NoSuchThing)?;
        self.write_own(Action::AnswerNextDay, now, vec![Payload::NextDayAnswer { run, answer, symptoms }])?;
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
        let known = self.own()?;
        let mark = train_view::mark_of(known, record).ok_or(Refusal::NoSuchThing)?;
        Ok(MarkedView { mark, train })
    }

    /// Takes back a set, a choice or what she said of a symptom: not meant.
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
        match &target.payload {
            Payload::SetDone(_) | Payload::SetSkipped { .. } | Payload::OptionChosen { .. } => {}
            Payload::SymptomMark { .. } | Payload::CheckIn { .. } | Payload::NextDayAnswer { .. } => {
                let ended = run_of(&target.payload).and_then(|run| known.history().run(run));
                let sealed = ended.is_some_and(|r| r.ended.is_some()) || now - target.at >= LEFT_STANDING;
                if sealed && self.is_red(record)? {
                    return Err(Refusal::Confirmed.into());
                }
            }
            // Stage, kit, plan, answers and the like are changed where they are said, and not taken back here.
            _ => return Err(Refusal::NoSuchThing.into()),
        }
        self.write_own(Action::Withdraw, now, vec![Payload::Withdrawal { target: record }])?;
        self.train_view(now)
    }

    fn is_red(&mut self, record: RecordId) -> Result<bool, AppError> {
        let known = self.own()?;
        let day = known.history().runs.last().map(|r| r.day).unwrap_or_default();
        Ok(known.bench(day, None).is_some_and(|b| b.state.reds.iter().any(|red| red.record == record)))
    }
}
