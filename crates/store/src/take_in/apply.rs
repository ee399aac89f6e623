//! Looking at the database for a plan, and applying one.

use super::plan::{Existing, Gap, KnownLine, Refused, TakeInPlan, plan_take_in};
use crate::open::{own_device, rename};
use crate::rows::uuid;
use crate::write::{append, insert};
use crate::{Action, Area, Change, Store, StoreError, areas_of};
use chrono::{DateTime, FixedOffset};
use newel_engine::ids::{DeviceId, PersonId, RecordId};
use newel_engine::record::{Payload, Record};
use rusqlite::{Connection, OptionalExtension as _, Row};
use std::collections::{BTreeMap, BTreeSet};

/// What taking a file in did.
#[derive(Clone, Debug, PartialEq)]
pub struct TakeInReport {
    /// The person.
    pub person: PersonId,
    /// Records that were added.
    pub new: usize,
    /// Records that were here already.
    pub known: usize,
    /// What is missing from the streams that were taken in.
    pub gaps: Vec<Gap>,
    /// What was refused and why.
    pub refused: Vec<Refused>,
    /// The new name of this profile's device, if it had to take one.
    pub renewed: Option<DeviceId>,
    /// What the profile wrote itself about the take-in, and what screens must refresh.
    pub change: Change,
}

impl Store {
    /// Plans the take-in of lines about a person. Changes nothing.
    ///
    /// # Errors
    /// What SQLite says.
    pub fn plan_take_in(&self, person: PersonId, lines: &[String]) -> Result<TakeInPlan, StoreError> {
        let existing = self.read(|conn| look(conn, person, lines))?;
        Ok(plan_take_in(&existing, person, lines))
    }

    /// Applies a plan, and writes what the profile itself has to say about it, as one transaction.
    ///
    /// # Errors
    /// [`StoreError::PlanStale`] when the log has changed since the plan was made,
    /// [`StoreError::Miscount`] when the counts do not add up, and as [`Store::write`].
    pub fn apply_take_in(
        &mut self,
        plan: &TakeInPlan,
        action: Action,
        at: DateTime<FixedOffset>,
        own: Vec<Payload>,
    ) -> Result<TakeInReport, StoreError> {
        let mut ids = self.ids.clone();
        let (records, renamed) = self.change(|tx| {
            if stamp(tx)? != plan.stamp {
                return Err(StoreError::PlanStale);
            }
            let before = count(tx)?;
            let renamed = if plan.renews_device { Some(rename(tx, &mut ids)?) } else { None };
            for new in &plan.new {
                insert(tx, &new.record, &new.line, &new.hash)?;
            }
            let (expected, found) = (before + plan.new.len() as u64, count(tx)?);
            if expected != found {
                return Err(StoreError::Miscount { expected, found });
            }
            Ok((append(tx, &mut ids, at, vec![(plan.person, own)])?, renamed))
        })?;
        self.ids = ids;
        let renewed = match renamed {
            Some(instance) => {
                self.mark(&instance)?;
                Some(self.device()?)
            }
            None => None,
        };
        let mut change = Change::new(action, records);
        let areas: BTreeSet<Area> = plan.new.iter().flat_map(|n| areas_of(&n.record.payload)).collect();
        change.touched.extend(areas);
        Ok(TakeInReport {
            person: plan.person,
            new: plan.new.len(),
            known: plan.known,
            gaps: plan.gaps.clone(),
            refused: plan.refused.clone(),
            renewed,
            change,
        })
    }
}

fn look(conn: &Connection, person: PersonId, lines: &[String]) -> Result<Existing, StoreError> {
    const COLUMNS: &str = "SELECT id, device, person, seq, prev, hash FROM records";
    let mut stored: BTreeMap<RecordId, KnownLine> =
        crate::read::list(conn, &format!("{COLUMNS} WHERE person = ?1"), [person.to_string()], known_line)?
            .into_iter()
            .collect();
    let mut other = conn.prepare_cached(&format!("{COLUMNS} WHERE id = ?1"))?;
    for line in lines {
        let Ok(record) = Record::parse(line) else { continue };
        if !stored.contains_key(&record.id) {
            stored.extend(other.query_row([record.id.to_string()], known_line).optional()?);
        }
    }
    Ok(Existing { own: own_device(conn)?, lines: stored, stamp: stamp(conn)? })
}

fn known_line(row: &Row<'_>) -> rusqlite::Result<(RecordId, KnownLine)> {
    let known = KnownLine {
        device: DeviceId(uuid(row, 1)?),
        person: PersonId(uuid(row, 2)?),
        seq: row.get(3)?,
        prev: row.get(4)?,
        hash: row.get(5)?,
    };
    Ok((RecordId(uuid(row, 0)?), known))
}

/// The log only grows or loses whole people, so its count and its last arrival tell every state apart.
fn stamp(conn: &Connection) -> Result<(u64, u64), StoreError> {
    let last: u64 = conn.query_row("SELECT coalesce(max(arrival), 0) FROM records", [], |row| row.get(0))?;
    Ok((count(conn)?, last))
}

fn count(conn: &Connection) -> Result<u64, StoreError> {
    Ok(conn.query_row("SELECT count(*) FROM records", [], |row| row.get(0))?)
}
