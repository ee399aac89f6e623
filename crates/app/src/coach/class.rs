//! A session that several train together: who does what today, what the room needs, and a change in one cell.

use super::client_name;
use super::roster::choices;
use crate::error::{AppError, Refusal};
use crate::newel::Books;
use crate::profile::Profile;
use crate::views::{ClassForm, ClassRowView, ClassView, InRoom, LateSlot, OverrideForm, RoomThing};
use chrono::{DateTime, FixedOffset};
use newel_engine::class::{self, Laid};
use newel_engine::flow::planned_minutes;
use newel_engine::ids::PersonId;
use newel_engine::kit::Kit;
use newel_engine::programme::{PlanSession, Programme};
use newel_engine::proposal::{Outcome, SessionProposal};
use newel_engine::reason::ReasonCode;
use newel_engine::weeks::planned_session;

/// Where the coach's count of what is there is kept, for a class in which each has her own kit.
const ROOM: &str = "room";
/// So many train together at most.
const MOST: usize = 40;

impl Profile {
    /// Who does what in a session today.
    ///
    /// # Errors
    /// When there is no such programme, session or client, or nobody was chosen.
    pub fn class_view(
        &mut self,
        now: DateTime<FixedOffset>,
        form: &ClassForm,
    ) -> Result<ClassView, AppError> {
        self.coach_only()?;
        if form.people.is_empty() {
            return Err(Refusal::NothingChosen.into());
        }
        if form.people.len() > MOST {
            return Err(Refusal::OutOfRange.into());
        }
        let day = now.date_naive();
        let programme = self.programme(form.programme)?;
        let mut session = programme.session(&form.session).ok_or(Refusal::NoSuchThing)?.clone();
        // Where all are in weeks that ask for the same, that is what is trained; else the table names what is usual, and
        // each row what is hers.
        let mut asked: Option<PlanSession> = None;
        let mut same = true;
        let room = form.room.map(|id| self.room_kit(id)).transpose()?;
        let books = self.books();
        let mut rows: Vec<ClassRowView> = Vec::new();
        for person in &form.people {
            if rows.iter().any(|r| r.person == *person) {
                continue;
            }
            let known = self.client(*person)?;
            let history = known.history();
            let own = known.of_programme(programme.id, day).bench_for(&programme, day, None);
            let bench = match &room {
                Some(room) => own.with_kit(room.kit.clone()),
                None => own,
            };
            let hers =
                planned_session(history, &programme, &form.session, None).ok_or(Refusal::NoSuchThing)?;
            let proposal = bench.propose(&hers);
            same &= asked.get_or_insert_with(|| hers.clone()) == &hers;
            let intake = history.intake();
            rows.push(ClassRowView {
                person: *person,
                name: client_name(history),
                stage: history.stage().map(|s| s.on(day)),
                cares: intake.conditions,
                restrictions: crate::safety::restrictions(history, day),
                late: late(&proposal),
                changed: changed(&proposal),
                last_session: history.runs.iter().rev().find(|r| !r.sets.is_empty()).map(|r| r.day),
                proposal,
            });
        }
        session = asked.filter(|_| same).unwrap_or(session);
        let counted = match &room {
            Some(room) => room.counted.clone(),
            None => self.in_room()?,
        };
        let kit = room.as_ref().map(|room| &room.kit);
        Ok(ClassView {
            day,
            title: programme.title.clone(),
            minutes: planned_minutes(&books.catalogue, &books.rules, &session),
            with_kit_of: room.as_ref().map(|room| room.name.clone()),
            room: laid_out(&books, &session, &rows, &counted, kit),
            ladders: choices(&books.catalogue, Some(&one(&programme, &session))),
            session,
            rows,
        })
    }

    fn in_room(&self) -> Result<Vec<InRoom>, AppError> {
        let text = self.store.setting(ROOM)?;
        Ok(text.and_then(|t| serde_json::from_str(&t).ok()).unwrap_or_default())
    }

    /// Writes down how many of a thing are in the room of a class; `None` for "not said".
    ///
    /// # Errors
    /// When there is no such room, or the disk refuses.
    pub fn room_set(
        &mut self,
        now: DateTime<FixedOffset>,
        form: &ClassForm,
        what: Laid,
        count: Option<u16>,
    ) -> Result<ClassView, AppError> {
        self.coach_only()?;
        let change = |counted: &mut Vec<InRoom>| {
            counted.retain(|h| h.what != what);
            counted.extend(count.map(|count| InRoom { what: what.clone(), count: count.min(999) }));
        };
        match form.room {
            Some(id) => {
                let mut room = self.room_kit(id)?;
                change(&mut room.counted);
                self.room_keep(id, &room)?;
            }
            None => {
                let mut counted = self.in_room()?;
                change(&mut counted);
                let text = serde_json::to_string(&counted).map_err(|_| AppError::Internal)?;
                self.store.set_setting(ROOM, &text)?;
            }
        }
        self.class_view(now, form)
    }

    /// Sets what a client does in a cell, with a note: an override like any other, from today on.
    ///
    /// # Errors
    /// As [`Profile::override_write`].
    pub fn class_set(
        &mut self,
        now: DateTime<FixedOffset>,
        form: &ClassForm,
        person: PersonId,
        change: OverrideForm,
    ) -> Result<ClassView, AppError> {
        self.override_write(now, person, change)?;
        self.class_view(now, form)
    }
}

/// What has to lie ready, how many of it are there, and who takes turns where that is too few. What was not counted is
/// as the kit of the room lists it.
fn laid_out(
    books: &Books,
    session: &PlanSession,
    rows: &[ClassRowView],
    counted: &[InRoom],
    kit: Option<&Kit>,
) -> Vec<RoomThing> {
    let members: Vec<(PersonId, &SessionProposal)> = rows.iter().map(|r| (r.person, &r.proposal)).collect();
    let there = |what: &Laid| {
        let said = counted.iter().find(|h| h.what == *what).map(|h| h.count);
        said.or_else(|| class::in_kit(kit?, what))
    };
    let turns = class::turns(&books.catalogue, session, &members, there);
    class::room(&books.catalogue, session, &members)
        .into_iter()
        .map(|need| {
            let have = there(&need.what);
            let turns = turns.iter().filter(|t| t.what == need.what).cloned().collect();
            RoomThing { short: have.is_some_and(|h| need.most > h), have, turns, need }
        })
        .collect()
}

/// A programme of one session alone.
fn one(programme: &Programme, session: &PlanSession) -> Programme {
    Programme { sessions: vec![session.clone()], ..programme.clone() }
}

fn late(proposal: &SessionProposal) -> Vec<LateSlot> {
    proposal
        .slots
        .iter()
        .filter_map(|p| match &p.outcome {
            Outcome::Train(what) => Some(LateSlot { slot: p.slot.clone(), first: class::late(what) }),
            Outcome::Rest => None,
        })
        .collect()
}

fn changed(proposal: &SessionProposal) -> Vec<newel_engine::ids::SlotId> {
    let by_coach = |p: &&newel_engine::proposal::Proposal| {
        p.reasons.all().iter().any(|r| r.code == ReasonCode::CoachSet)
    };
    proposal.slots.iter().filter(by_coach).map(|p| p.slot.clone()).collect()
}
