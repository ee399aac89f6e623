//! The coach's own arrangement: groups of clients, and who is laid aside. No record speaks of it.

use crate::error::{AppError, Refusal};
use crate::newel::checked_name;
use crate::profile::Profile;
use crate::views::{GroupView, RosterView};
use chrono::{DateTime, FixedOffset};
use newel_engine::ids::PersonId;
use newel_store::Arrangement;
use uuid::Uuid;

impl Profile {
    /// The coach's groups in her order, each with its members in her order; those laid aside are left out.
    ///
    /// # Errors
    /// When the log cannot be read, or the profile is not a coach's.
    pub fn groups(&self) -> Result<Vec<GroupView>, AppError> {
        self.coach_only()?;
        let archived = self.store.archived()?;
        let groups = self.store.groups()?.into_iter().map(|group| GroupView {
            id: group.id,
            name: group.name,
            members: group.members.into_iter().filter(|p| !archived.contains(p)).collect(),
        });
        Ok(groups.collect())
    }

    /// Makes a group.
    ///
    /// # Errors
    /// When the name is missing, or somebody is no client.
    pub fn group_make(
        &mut self,
        now: DateTime<FixedOffset>,
        name: &str,
        members: Vec<PersonId>,
    ) -> Result<RosterView, AppError> {
        let name = checked_name(name)?;
        self.are_clients(&members)?;
        self.arrange(now, &Arrangement::MakeGroup { id: Uuid::now_v7(), name, members })
    }

    /// Gives a group another name.
    ///
    /// # Errors
    /// When the name is missing or there is no such group.
    pub fn group_rename(
        &mut self,
        now: DateTime<FixedOffset>,
        id: Uuid,
        name: &str,
    ) -> Result<RosterView, AppError> {
        let name = checked_name(name)?;
        self.arrange(now, &Arrangement::RenameGroup { id, name })
    }

    /// Removes a group, or brings a removed one back; nobody in it is touched.
    ///
    /// # Errors
    /// When there is no such group.
    pub fn group_remove(
        &mut self,
        now: DateTime<FixedOffset>,
        id: Uuid,
        back: bool,
    ) -> Result<RosterView, AppError> {
        let what = if back { Arrangement::BringBackGroup { id } } else { Arrangement::RemoveGroup { id } };
        self.arrange(now, &what)
    }

    /// Says who is in a group, and in which order. Members who are laid aside stay in it, last.
    ///
    /// # Errors
    /// When there is no such group, or somebody is no client.
    pub fn group_members(
        &mut self,
        now: DateTime<FixedOffset>,
        id: Uuid,
        mut members: Vec<PersonId>,
    ) -> Result<RosterView, AppError> {
        self.are_clients(&members)?;
        let archived = self.store.archived()?;
        let before = self.store.groups()?.into_iter().find(|g| g.id == id).ok_or(Refusal::NoSuchThing)?;
        members.extend(before.members.into_iter().filter(|p| archived.contains(p)));
        self.arrange(now, &Arrangement::SetMembers { id, members })
    }

    /// Lays clients aside, or brings them back. Their records stay whole either way.
    ///
    /// # Errors
    /// When somebody is no client.
    pub fn clients_archive(
        &mut self,
        now: DateTime<FixedOffset>,
        people: Vec<PersonId>,
        back: bool,
    ) -> Result<RosterView, AppError> {
        self.are_clients(&people)?;
        let what = if back { Arrangement::BringBack { people } } else { Arrangement::Archive { people } };
        self.arrange(now, &what)
    }

    fn arrange(&mut self, now: DateTime<FixedOffset>, what: &Arrangement) -> Result<RosterView, AppError> {
        self.coach_only()?;
        self.store.arrange(now, what)?.ok_or(Refusal::NoSuchThing)?;
        self.roster_view(now)
    }

    /// Refuses where somebody is not a client of this coach's.
    pub(super) fn are_clients(&self, people: &[PersonId]) -> Result<(), AppError> {
        let (own, all) = (self.person(), self.store.people()?);
        let is_client = |p: &PersonId| *p != own && all.contains(p);
        if people.iter().all(is_client) { Ok(()) } else { Err(Refusal::NoSuchThing.into()) }
    }
}
