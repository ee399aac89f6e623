//! What a look at many clients asks the database for once and not for each: what was given, what was sent, who is laid
//! aside.

use super::built_in_programmes;
use super::programmes::programme_of;
use crate::error::AppError;
use crate::profile::{Known, Profile};
use crate::views::{FilesView, PlanStanding};
use chrono::{DateTime, FixedOffset, NaiveDate, Utc};
use newel_engine::catalogue::OwnCatalogue;
use newel_engine::ids::{DeviceId, PersonId, ProgrammeId};
use newel_engine::programme::{PlanSession, Programme};
use newel_engine::record::Payload;
use newel_store::{SentHead, hash_of};
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// The setting that names the programme that was given to a client.
pub(super) const GIVEN: &str = "programme.";
/// The setting that names the day on which it begins.
pub(super) const BEGINS: &str = "begins.";
/// The setting that says when a client's log last brought something new.
pub(crate) const TAKEN_IN: &str = "taken-in.";

/// A programme as it is written now.
pub(super) struct Written {
    pub programme: Programme,
    pub content: String,
}

/// What holds for all clients at once.
pub(super) struct Overview {
    written: BTreeMap<String, Written>,
    given: BTreeMap<String, String>,
    begins: BTreeMap<String, String>,
    taken_in: BTreeMap<String, String>,
    pub sent: BTreeMap<PersonId, SentHead>,
    pub archived: BTreeSet<PersonId>,
    /// What is the coach's own.
    own: Arc<OwnCatalogue>,
}

/// The SHA-256 of what a programme says, whatever its revision, with what of the coach's own it uses.
pub(super) fn content_of(programme: &Programme, own: Option<&OwnCatalogue>) -> Result<String, AppError> {
    let bare = Programme { revision: 0, ..programme.clone() };
    let mut text = serde_json::to_string(&bare).map_err(|_| AppError::Internal)?;
    if let Some(own) = own {
        text += &serde_json::to_string(own).map_err(|_| AppError::Internal)?;
    }
    Ok(hash_of(&text))
}

/// What of the coach's own a programme uses: all that is hers on its ladders, retired or not.
pub(super) fn own_of(own: &OwnCatalogue, programme: &Programme) -> Option<OwnCatalogue> {
    let slots = programme.sessions.iter().flat_map(PlanSession::slots);
    let used = own.on_ladders(&slots.map(|(_, slot)| slot.ladder.clone()).collect());
    (!used.is_empty()).then_some(used)
}

impl Overview {
    /// Looks once.
    pub fn of(profile: &Profile) -> Result<Self, AppError> {
        let mut written = BTreeMap::new();
        // One that cannot be trained any more, as it is being written on, is none that was given.
        for programme in profile.all_programmes()? {
            if programme.check(&profile.books.catalogue).is_ok() {
                let content = content_of(&programme, own_of(&profile.books.own, &programme).as_ref())?;
                written.insert(programme.id.to_string(), Written { programme, content });
            }
        }
        Ok(Self {
            written,
            given: profile.store.settings_of(GIVEN)?,
            begins: profile.store.settings_of(BEGINS)?,
            taken_in: profile.store.settings_of(TAKEN_IN)?,
            sent: profile.store.sent_heads()?,
            archived: profile.store.archived()?,
            own: Arc::clone(&profile.books.own),
        })
    }

    /// The programme that was given to a client, as it is written now.
    pub fn given(&self, person: PersonId) -> Option<&Written> {
        self.written.get(self.given.get(&person.to_string())?)
    }

    /// True if a programme was given to a client, whole or not.
    pub fn is_given(&self, person: PersonId, programme: ProgrammeId) -> bool {
        self.given.get(&person.to_string()).is_some_and(|id| *id == programme.to_string())
    }

    /// True if what was given to a client is being written, so that it cannot be trained as it is.
    pub fn is_unfinished(&self, person: PersonId) -> bool {
        self.given.get(&person.to_string()).is_some_and(|id| !self.written.contains_key(id))
    }

    /// The day on which it begins, if one was set.
    pub fn begins(&self, person: PersonId) -> Option<NaiveDate> {
        self.begins.get(&person.to_string())?.parse().ok()
    }

    /// When a client's log last brought something new.
    pub fn taken_in(&self, person: PersonId) -> Option<DateTime<FixedOffset>> {
        DateTime::parse_from_rfc3339(self.taken_in.get(&person.to_string())?).ok()
    }

    /// What was kept of the last plan file that was written for a client; `None` if none was, or if a later one is known of.
    pub fn last_kept(&self, person: PersonId, known: &Known) -> Option<&SentHead> {
        let hers = known.plan.as_ref().map_or(0, |p| p.sequence);
        let last = last_sequence(known).unwrap_or(0);
        self.sent.get(&person).filter(|s| s.sequence >= hers && s.sequence >= last)
    }

    /// What of it bears on a client, for the key of what is worked out about her.
    pub fn part_of(&self, person: PersonId) -> impl Serialize {
        let id = person.to_string();
        let written = self.given(person).map(|w| (w.content.clone(), w.programme.revision));
        let sent = self.sent.get(&person).map(|s| (s.sequence, s.at_ms, s.content.clone(), s.begins));
        let set = [&self.given, &self.begins, &self.taken_in].map(|of| of.get(&id).cloned());
        (set, written, sent)
    }

    /// The programme that a client trains on a day: by her log, else the one that was given.
    pub fn trains<'a>(&'a self, person: PersonId, known: &'a Known, day: NaiveDate) -> Option<&'a Programme> {
        let hers = known.on(day).plan.as_ref().map(|p| &p.programme);
        hers.or_else(|| self.given(person).map(|w| &w.programme))
    }

    /// The programme that the next plan file brings.
    pub fn brings<'a>(&'a self, person: PersonId, known: &'a Known) -> Option<&'a Programme> {
        let given = self.given(person).map(|w| &w.programme);
        given.or_else(|| known.plan.as_ref().map(|p| &p.programme))
    }
}

/// The sequence number of the last plan file that was written for somebody.
pub(super) fn last_sequence(known: &Known) -> Option<u64> {
    let sent = |p: &Payload| if let Payload::PlanSent { sequence, .. } = p { Some(*sequence) } else { None };
    known.records.iter().filter_map(|r| sent(&r.payload)).max()
}

/// When the last plan file was written for somebody.
pub(super) fn last_sent(known: &Known) -> Option<DateTime<FixedOffset>> {
    known.records.iter().filter(|r| matches!(r.payload, Payload::PlanSent { .. })).map(|r| r.at).max()
}

impl Profile {
    /// Every programme that there is, put away or not, whole or not.
    fn all_programmes(&self) -> Result<Vec<Programme>, AppError> {
        let drafts = self.store.drafts()?;
        let mut all = drafts.iter().map(programme_of).collect::<Result<Vec<_>, _>>()?;
        all.extend(built_in_programmes(&self.books)?);
        Ok(all)
    }

    /// The coach's clients: everybody in the log but herself, those laid aside too.
    pub(super) fn everybody(&self) -> Result<Vec<PersonId>, AppError> {
        let own = self.person();
        Ok(self.store.people()?.into_iter().filter(|p| *p != own).collect())
    }
}

impl Overview {
    /// How the files between coach and client stand.
    pub(super) fn files_of(
        &self,
        person: PersonId,
        known: &Known,
        device: DeviceId,
        day: NaiveDate,
    ) -> Result<FilesView, AppError> {
        let hers = known.plan.as_ref();
        let brings = self.brings(person, known);
        let sent = last_sent(known);
        let last = last_sequence(known);
        // What she was sent last: kept here, or in her log where she has taken it in.
        let kept = self.last_kept(person, known);
        let ahead = |begins: Option<NaiveDate>| begins.filter(|b| *b > day);
        let plan = match brings {
            _ if self.is_unfinished(person) => PlanStanding::Unfinished,
            None => PlanStanding::None,
            Some(_) if last.is_none() && hers.is_none() => PlanStanding::NotSent,
            Some(brings) => {
                let has = hers.map(|h| content_of(&h.programme, h.own.as_ref())).transpose()?;
                let content = match (self.given(person), &has) {
                    (Some(given), _) => given.content.clone(),
                    (None, Some(has)) => has.clone(),
                    (None, None) => content_of(brings, own_of(&self.own, brings).as_ref())?,
                };
                let same = match (kept, &has) {
                    (Some(kept), _) => {
                        kept.content == content && ahead(kept.begins) == ahead(self.begins(person))
                    }
                    (None, Some(has)) => *has == content,
                    (None, None) => false,
                };
                if same { PlanStanding::UpToDate } else { PlanStanding::Older }
            }
        };
        let unsent = known
            .records
            .iter()
            .filter(|r| r.device == device && !matches!(r.payload, Payload::PlanSent { .. }))
            .filter(|r| sent.is_none_or(|s| r.at.with_timezone(&Utc) > s.with_timezone(&Utc)))
            .count();
        Ok(FilesView {
            plan,
            sent,
            arrived: last.is_some_and(|l| hers.is_some_and(|h| h.sequence >= l)),
            unsent: u32::try_from(unsent).unwrap_or(u32::MAX),
            taken_in: self.taken_in(person),
            brings: brings.filter(|b| hers.is_none_or(|h| h.programme.id != b.id)).map(|b| b.title.clone()),
            begins: ahead(self.begins(person)),
        })
    }
}
