//! What a look at many clients asks the database for once and not for each: what was given, what was sent, who is laid
//! aside; and how each client stands, worked out anew only where something of her has changed.

use super::built_in_programmes;
use super::programmes::programme_of;
use crate::error::AppError;
use crate::profile::{Known, Profile};
use crate::views::{FilesView, FindingView, PlanStanding, Urge, WaitsView};
use chrono::{DateTime, FixedOffset, NaiveDate, Utc};
use newel_engine::catalogue::OwnCatalogue;
use newel_engine::ids::{PersonId, ProgrammeId};
use newel_engine::programme::{PlanSession, Programme};
use newel_engine::reason::Fact;
use newel_engine::record::{HoldAnswer, Payload};
use newel_engine::{review, screening};
use newel_store::{SentHead, hash_of};
use std::collections::{BTreeMap, BTreeSet};

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
        })
    }

    /// The programme that was given to a client, as it is written now.
    pub fn given(&self, person: PersonId) -> Option<&Written> {
        self.written.get(self.given.get(&person.to_string())?)
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

    /// The programme that a client trains: by her log, else the one that was given.
    pub fn trains<'a>(&'a self, person: PersonId, known: &'a Known) -> Option<&'a Programme> {
        let hers = known.plan.as_ref().map(|p| &p.programme);
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

/// How a client stands on a day, by the programme that she trains.
pub(crate) struct Standing {
    day: NaiveDate,
    programme: Option<(ProgrammeId, u32)>,
    /// What the programme of her log says, as [`content_of`] has it.
    hers: Option<String>,
    /// What there is to see, most urgent first.
    pub findings: Vec<FindingView>,
    /// What waits.
    pub waits: WaitsView,
}

impl Profile {
    /// Every programme that there is, put away or not, whole or not.
    fn all_programmes(&self) -> Result<Vec<Programme>, AppError> {
        let drafts = self.store.drafts()?;
        let mut all = drafts.iter().map(programme_of).collect::<Result<Vec<_>, _>>()?;
        all.extend(built_in_programmes(&self.books)?);
        Ok(all)
    }

    /// The coach's clients: everybody in the log but herself, those laid aside too. What is known of each is read.
    pub(super) fn everybody(&mut self) -> Result<Vec<PersonId>, AppError> {
        let own = self.person();
        let people: Vec<PersonId> = self.store.people()?.into_iter().filter(|p| *p != own).collect();
        for person in &people {
            self.known(*person)?;
        }
        Ok(people)
    }

    /// How a client stands today; kept until something of her changes.
    pub(super) fn standing(
        &mut self,
        overview: &Overview,
        person: PersonId,
        day: NaiveDate,
    ) -> Result<&Standing, AppError> {
        self.known(person)?;
        let known = self.known_before(person)?;
        let trains = overview.trains(person, known);
        let programme = trains.map(|p| (p.id, p.revision));
        let fits = self.standings.get(&person).is_some_and(|s| s.day == day && s.programme == programme);
        if !fits {
            // Before a programme was given safety still has its say.
            let none = Programme::empty();
            let standing = self.worked_out(person, known, trains.unwrap_or(&none), day)?;
            self.standings.insert(person, Standing { programme, ..standing });
        }
        self.standings.get(&person).ok_or(AppError::Internal)
    }

    fn worked_out(
        &self,
        person: PersonId,
        known: &Known,
        programme: &Programme,
        day: NaiveDate,
    ) -> Result<Standing, AppError> {
        let bench = known.bench_for(programme, day, None);
        let mut findings: Vec<FindingView> = review::findings(&bench)
            .into_iter()
            .map(|f| FindingView {
                code: f.code.to_owned(),
                urge: match f.urge {
                    review::Urge::Stop => Urge::Stop,
                    review::Urge::Attention => Urge::Attention,
                    review::Urge::Look => Urge::Look,
                },
                facts: f.facts,
            })
            .collect();
        let missing = self.store.streams_with_gaps(person)?;
        if missing > 0 {
            let facts = BTreeMap::from([("count".to_owned(), Fact::Number(f64::from(missing)))]);
            findings.push(FindingView { code: "gap".to_owned(), urge: Urge::Look, facts });
        }
        findings.sort_by_key(|f| f.urge);
        let holds = bench.state.open_holds().filter(|h| h.answer != Some(HoldAnswer::KeepResting)).count();
        let waits = WaitsView {
            red: bench.state.open_reds().next().is_some(),
            holds: u16::try_from(holds).unwrap_or(u16::MAX),
            clearance: !bench.ground.waits.is_empty(),
            screen: screening::due(&bench).first().copied(),
        };
        let hers = known.plan.as_ref().map(|p| content_of(&p.programme, p.own.as_ref())).transpose()?;
        Ok(Standing { day, programme: None, hers, findings, waits })
    }

    /// How the files between coach and client stand.
    pub(super) fn files_of(
        &self,
        overview: &Overview,
        person: PersonId,
        known: &Known,
        day: NaiveDate,
    ) -> Result<FilesView, AppError> {
        let device = self.store.device()?;
        let hers = known.plan.as_ref();
        let brings = overview.brings(person, known);
        let sent = last_sent(known);
        let last = last_sequence(known);
        // What she was sent last: kept here, or in her log where she has taken it in.
        let kept = overview.last_kept(person, known);
        let ahead = |begins: Option<NaiveDate>| begins.filter(|b| *b > day);
        let plan = match brings {
            _ if overview.is_unfinished(person) => PlanStanding::Unfinished,
            None => PlanStanding::None,
            Some(_) if last.is_none() && hers.is_none() => PlanStanding::NotSent,
            Some(brings) => {
                // Worked out once with how she stands; long to do for hundreds.
                let has = match self.standings.get(&person).map(|s| s.hers.clone()) {
                    Some(has) => has,
                    None => hers.map(|h| content_of(&h.programme, h.own.as_ref())).transpose()?,
                };
                let content = match (overview.given(person), &has) {
                    (Some(given), _) => given.content.clone(),
                    (None, Some(has)) => has.clone(),
                    (None, None) => content_of(brings, own_of(&self.books.own, brings).as_ref())?,
                };
                let same = match (kept, &has) {
                    (Some(kept), _) => {
                        kept.content == content && ahead(kept.begins) == ahead(overview.begins(person))
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
            taken_in: overview.taken_in(person),
            brings: brings.filter(|b| hers.is_none_or(|h| h.programme.id != b.id)).map(|b| b.title.clone()),
            begins: ahead(overview.begins(person)),
        })
    }
}
