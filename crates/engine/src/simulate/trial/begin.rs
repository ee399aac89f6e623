//! How she begins: what she can do, what the coach starts her with, and "ten reps with what?".

use super::{BODY, Floor};
use crate::catalogue::{Catalogue, Place};
use crate::ids::GroupId;
use crate::kit::Load;
use crate::programme::{Slot, Start};
use crate::record::Payload;
use crate::simulate::bodies;
use crate::simulate::chance::Chance;
use crate::simulate::client::Client;
use crate::simulate::scenario::{Scenario, StartWith};
use crate::units::Weight;

/// What can be done of a variant by somebody of this strength.
pub(super) fn meet(
    client: &mut Client,
    catalogue: &Catalogue,
    place: &Place<'_>,
    strength: f64,
) -> Option<GroupId> {
    let group = place.variant.group.as_ref()?;
    let ten = bodies::ten_rep_max(place, BODY, strength)?;
    client.meet(group, catalogue.group(group).map_or(38.0, |g| g.prior_c), ten);
    Some(group.clone())
}

/// The coach's starts that come with the plan.
pub(super) fn starts(
    scenario: &Scenario,
    catalogue: &Catalogue,
    client: &mut Client,
    life: &mut Chance,
    strength: f64,
) -> Vec<Start> {
    let StartWith::Coach(error) = scenario.start else { return Vec::new() };
    scenario
        .slots
        .iter()
        .filter_map(|slot| {
            let ladder = catalogue.ladder(&slot.ladder)?;
            let level = usize::from(slot.levels.map_or(0, |s| s.low));
            let variant = ladder.levels.get(level)?.variants.first()?;
            let place = Place { ladder, level, variant };
            let load = guess(scenario, catalogue, client, life, &place, slot, strength, error)?;
            Some(Start {
                ladder: slot.ladder.clone(),
                level: u8::try_from(level).ok(),
                variant: Some(variant.id.clone()),
                load: Some(load),
            })
        })
        .collect()
}

/// One weight that leaves two reps more than the dose asks for, judged with an error.
#[allow(clippy::too_many_arguments, reason = "all of it is one guess")]
fn guess(
    scenario: &Scenario,
    catalogue: &Catalogue,
    client: &mut Client,
    life: &mut Chance,
    place: &Place<'_>,
    slot: &Slot,
    strength: f64,
    error: f64,
) -> Option<Load> {
    let group = meet(client, catalogue, place, strength)?;
    let (b, c, _) = client.known(&group)?;
    let over = f64::from(slot.dose.amount.low()) + f64::from(slot.dose.target_rir) + 2.0 - 10.0;
    let wanted = libm::exp(b - over / c + life.normal(0.0, error));
    let mut weights: Vec<Weight> = scenario.kit.dumbbells.iter().map(|d| d.weight).collect();
    weights.sort_by(|a, b| a.kg().0.total_cmp(&b.kg().0));
    let weight = weights.iter().rfind(|w| w.kg().0 <= wanted).or(weights.first())?;
    Some(Load::One { weight: *weight })
}

impl Floor<'_> {
    pub(super) fn ten_reps(&mut self, error: f64) {
        let scenario = self.scenario;
        for slot in &scenario.slots {
            let Some(ladder) = self.catalogue.ladder(&slot.ladder) else { continue };
            let level = usize::from(slot.levels.map_or(0, |s| s.low));
            let Some(variant) = ladder.levels.get(level).and_then(|l| l.variants.first()) else { continue };
            let place = Place { ladder, level, variant };
            let guessed = guess(
                scenario,
                self.catalogue,
                &mut self.client,
                &mut self.life,
                &place,
                slot,
                self.strength,
                error,
            );
            if let Some(load) = guessed {
                self.write(0, Payload::TenReps { variant: variant.id.clone(), load });
            }
        }
    }
}
