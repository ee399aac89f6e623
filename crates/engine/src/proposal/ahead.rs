//! What leads up from where she stands on a ladder, as the same rules have it that let her go up.

use super::bench::Bench;
use super::level::good_running;
use crate::catalogue::ReadyMark;
use crate::ids::{SymptomId, VariantId};
use crate::programme::{Amount, Block, Slot};
use crate::state::Course;
use serde::Serialize;
use std::collections::BTreeMap;
use ts_rs::TS;

/// What leads up.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[serde(tag = "ahead", rename_all = "snake_case")]
#[ts(export)]
pub enum Ahead {
    /// Nothing that is open lies above.
    Top,
    /// It rests until a hold is answered.
    Rests,
    /// Sessions running, of one option, at the top of the range with so much left and at its mark.
    Earn {
        /// The option above.
        to: VariantId,
        /// So many are done.
        done: u32,
        /// Of so many.
        of: u32,
        /// The top of the range, in reps or seconds.
        count: u16,
        /// True where seconds are counted.
        timed: bool,
        /// At least so many left.
        reserve: f64,
        /// The mark of the option that she trains.
        mark: ReadyMark,
    },
    /// After a symptom: sessions without one, each with a settled morning.
    Back {
        /// The level that she comes back to, 0 for the easiest.
        to: u8,
        /// So many are done.
        done: u32,
        /// Of so many.
        of: u32,
        /// The symptom.
        symptom: SymptomId,
    },
}

fn whole(n: f64) -> u32 {
    n.clamp(0.0, 1000.0) as u32
}

impl Bench<'_> {
    /// What leads up from where she stands on the ladder of a slot; `None` before the first time.
    #[must_use]
    pub fn ahead(&self, block: &Block, slot: &Slot) -> Option<Ahead> {
        let rules = self.inputs.rules;
        let ladder = self.inputs.catalogue.ladder(&slot.ladder)?;
        let state = self.state.ladders.get(&slot.ladder)?;
        let level = state.level?;
        if self.state.hold_on(&ladder.id, ladder.region).is_some() {
            return Some(Ahead::Rests);
        }
        if let Course::Down { from, clean, symptom, .. } = &state.course {
            return Some(Ahead::Back {
                to: *from,
                done: u32::from(*clean),
                of: whole(rules.number("level.back-up", "exposures")),
                symptom: symptom.clone(),
            });
        }
        let open = self.ground.open(ladder, slot.levels);
        let Some(above) = open.iter().find(|p| p.level > usize::from(level)) else { return Some(Ahead::Top) };
        let place = self.inputs.catalogue.place(&state.exposures.last()?.variant)?;
        let effort = self.effort(block, slot, ladder);
        let earlier = BTreeMap::new();
        let case = self.case(slot.dose.amount, &effort, &earlier);
        let running = good_running(&case, state, &open, level);
        Some(Ahead::Earn {
            to: above.variant.id.clone(),
            done: u32::try_from(running).unwrap_or(u32::MAX),
            of: whole(rules.number("level.up", "exposures")),
            count: slot.dose.amount.high(),
            timed: matches!(slot.dose.amount, Amount::Seconds { .. }),
            reserve: effort.target + rules.number("level.up", "over_target"),
            mark: place.variant.ready,
        })
    }
}
