//! A session that several train together in one room: what has to lie ready for all of them, block by block, and the
//! shorter way in for somebody who comes late; and who takes turns where less is there than is needed.
//!
//! Within a block everybody may be at any of its slots, so each client needs at her place all that her own slots ask for;
//! what one slot leaves another of hers may take. Common practice, no source.

use crate::catalogue::{Catalogue, Position, Variant};
use crate::ids::{BlockId, PersonId, SlotId, VariantId};
use crate::kit::{Kit, Load, Thing};
use crate::programme::{Amount, Block, PlanSession};
use crate::proposal::{Offer, Outcome, Prescription, SessionProposal, Target};
use crate::units::Weight;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A thing that has to lie ready. Walls and floor are taken to be in every room; chairs are counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, TS)]
#[serde(tag = "lay", rename_all = "snake_case")]
#[ts(export)]
pub enum Laid {
    /// A steady chair.
    Chair,
    /// Another thing.
    Thing {
        /// Which.
        thing: Thing,
    },
    /// One weight with a handle.
    Weight {
        /// Its weight.
        weight: Weight,
    },
    /// An empty bar.
    Bar {
        /// Its weight.
        weight: Weight,
    },
    /// One plate.
    Plate {
        /// Its weight.
        weight: Weight,
    },
    /// A long band.
    Band {
        /// What its owner calls it.
        name: String,
    },
}

impl Laid {
    /// Its place in a list: chairs and things first, then by kind and weight.
    fn rank(&self) -> (u8, f64, String) {
        match self {
            Self::Chair => (0, 0.0, String::new()),
            Self::Thing { thing } => (1, 0.0, format!("{thing:?}")),
            Self::Weight { weight } => (2, weight.kg().0, String::new()),
            Self::Bar { weight } => (3, weight.kg().0, String::new()),
            Self::Plate { weight } => (4, weight.kg().0, String::new()),
            Self::Band { name } => (5, 0.0, name.clone()),
        }
    }
}

/// How many of a thing are needed in a block.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct BlockNeed {
    /// The block.
    pub block: BlockId,
    /// How many.
    pub count: u16,
    /// By whom.
    pub who: Vec<PersonId>,
}

/// What a room needs of one thing.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct RoomNeed {
    /// The thing.
    pub what: Laid,
    /// Blocks in which it is needed.
    pub blocks: Vec<BlockNeed>,
    /// The most that are needed at one time.
    pub most: u16,
}

/// What one client holds and uses for a variant with a load.
#[must_use]
pub fn laid(variant: &Variant, load: &Load) -> Vec<(Laid, u16)> {
    let mut list = Vec::new();
    if variant.position == Position::Seated {
        list.push((Laid::Chair, 1));
    }
    list.extend(variant.needs.iter().map(|thing| (Laid::Thing { thing: *thing }, 1)));
    match load {
        Load::Nothing => {}
        Load::One { weight } => list.push((Laid::Weight { weight: *weight }, 1)),
        Load::Pair { weight } => list.push((Laid::Weight { weight: *weight }, 2)),
        Load::Barbell { bar, plates } => {
            list.push((Laid::Bar { weight: *bar }, 1));
            // Both sides bear the same plates.
            for plate in plates {
                add(&mut list, &Laid::Plate { weight: *plate }, 2);
            }
        }
        Load::Bands { bands } | Load::Assist { bands } => {
            for band in bands {
                add(&mut list, &Laid::Band { name: band.name.clone() }, 1);
            }
        }
    }
    list
}

fn add(list: &mut Vec<(Laid, u16)>, what: &Laid, count: u16) {
    match list.iter_mut().find(|(other, _)| other == what) {
        Some((_, sum)) => *sum = sum.saturating_add(count),
        None => list.push((what.clone(), count)),
    }
}

fn trained<'p>(proposal: &'p SessionProposal, slot: &SlotId) -> Option<&'p Prescription> {
    match &proposal.slots.iter().find(|p| p.slot == *slot)?.outcome {
        Outcome::Train(p) => Some(p),
        Outcome::Rest => None,
    }
}

/// What one client needs in a block: of each thing as many as the slot that asks for the most.
fn hers(catalogue: &Catalogue, block: &Block, proposal: &SessionProposal) -> Vec<(Laid, u16)> {
    let mut hers: Vec<(Laid, u16)> = Vec::new();
    for slot in &block.slots {
        let Some(p) = trained(proposal, &slot.id) else { continue };
        let Some(place) = catalogue.place(&p.variant) else { continue };
        for (what, count) in laid(place.variant, &p.load) {
            match hers.iter_mut().find(|(other, _)| *other == what) {
                Some((_, most)) => *most = (*most).max(count),
                None => hers.push((what, count)),
            }
        }
    }
    hers
}

/// What has to lie ready for everybody, thing by thing.
#[must_use]
pub fn room(
    catalogue: &Catalogue,
    session: &PlanSession,
    members: &[(PersonId, &SessionProposal)],
) -> Vec<RoomNeed> {
    let mut needs: Vec<RoomNeed> = Vec::new();
    for block in &session.blocks {
        for (person, proposal) in members {
            for (what, count) in hers(catalogue, block, proposal) {
                let index = needs.iter().position(|n| n.what == what).unwrap_or_else(|| {
                    needs.push(RoomNeed { what, blocks: Vec::new(), most: 0 });
                    needs.len() - 1
                });
                let Some(need) = needs.get_mut(index) else { continue };
                match need.blocks.iter_mut().find(|b| b.block == block.id) {
                    Some(b) => {
                        b.count = b.count.saturating_add(count);
                        b.who.push(*person);
                    }
                    None => {
                        need.blocks.push(BlockNeed { block: block.id.clone(), count, who: vec![*person] })
                    }
                }
            }
        }
    }
    for need in &mut needs {
        need.most = need.blocks.iter().map(|b| b.count).max().unwrap_or(0);
    }
    needs.sort_by(|a, b| {
        let ((ka, wa, na), (kb, wb, nb)) = (a.what.rank(), b.what.rank());
        ka.cmp(&kb).then(wa.total_cmp(&wb)).then(na.cmp(&nb))
    });
    needs
}

/// Somebody who finds a thing taken in a block: she waits for it, shares it, or does something else meanwhile.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct TakesTurns {
    /// The block.
    pub block: BlockId,
    /// The thing.
    pub what: Laid,
    /// Who.
    pub person: PersonId,
    /// The slot of hers that asks for it.
    pub slot: SlotId,
    /// What she may do meanwhile with what is left: of the options that are open to her today the hardest.
    pub instead: Option<Offer>,
}

/// Who takes turns where less is there than is needed: in each block things go out in the order of the table, each
/// client's whole need of a thing or none of it. Then, in the same order, whoever goes without is offered what is left
/// over. `have` is how many of a thing are there; what is not counted (`None`) is taken to be enough. Common practice,
/// no source.
#[must_use]
pub fn turns(
    catalogue: &Catalogue,
    session: &PlanSession,
    members: &[(PersonId, &SessionProposal)],
    have: impl Fn(&Laid) -> Option<u16>,
) -> Vec<TakesTurns> {
    let count_in = |list: &[(Laid, u16)], what: &Laid| {
        list.iter().find(|(other, _)| other == what).map_or(0, |(_, n)| *n)
    };
    let mut found = Vec::new();
    for block in &session.blocks {
        let mut out: Vec<(Laid, u16)> = Vec::new();
        let left = |out: &[(Laid, u16)], what: &Laid| {
            have(what).map_or(u16::MAX, |there| there.saturating_sub(count_in(out, what)))
        };
        let mut without = Vec::new();
        for (person, proposal) in members {
            let (got, lacks): (Vec<_>, Vec<_>) = hers(catalogue, block, proposal)
                .into_iter()
                .partition(|(what, count)| left(&out, what) >= *count);
            for (what, count) in &got {
                add(&mut out, what, *count);
            }
            if !lacks.is_empty() {
                without.push((*person, *proposal, got, lacks));
            }
        }
        for (person, proposal, mut got, lacks) in without {
            for slot in &block.slots {
                let Some(p) = trained(proposal, &slot.id) else { continue };
                let needs = |variant: &VariantId, load: &Load| {
                    catalogue.place(variant).map_or_else(Vec::new, |place| laid(place.variant, load))
                };
                let asked = needs(&p.variant, &p.load);
                let missing: Vec<&Laid> =
                    lacks.iter().map(|(what, _)| what).filter(|w| count_in(&asked, w) > 0).collect();
                if missing.is_empty() {
                    continue;
                }
                // What she has at her place already she does not take twice.
                let more = |(what, count): &(Laid, u16)| count.saturating_sub(count_in(&got, what));
                let fits =
                    |o: &&Offer| needs(&o.variant, &o.load).iter().all(|n| left(&out, &n.0) >= more(n));
                let instead = p.options.iter().rev().find(fits).cloned();
                let takes: Vec<(Laid, u16)> = instead
                    .iter()
                    .flat_map(|o| needs(&o.variant, &o.load))
                    .map(|need| (need.0.clone(), more(&need)))
                    .collect();
                for (what, count) in takes.iter().filter(|(_, count)| *count > 0) {
                    add(&mut out, what, *count);
                    add(&mut got, what, *count);
                }
                found.extend(missing.into_iter().map(|what| TakesTurns {
                    block: block.id.clone(),
                    what: what.clone(),
                    person,
                    slot: slot.id.clone(),
                    instead: instead.clone(),
                }));
            }
        }
    }
    found
}

/// How many of a thing a kit holds, as it is written down; chairs stand in no kit.
#[must_use]
pub fn in_kit(kit: &Kit, what: &Laid) -> Option<u16> {
    let count = |n: usize| Some(u16::try_from(n).unwrap_or(u16::MAX));
    match what {
        Laid::Chair => None,
        Laid::Thing { thing } => count(usize::from(kit.things.contains(thing))),
        Laid::Weight { weight } => {
            let of_it = kit.dumbbells.iter().filter(|d| d.weight == *weight);
            count(of_it.map(|d| if d.pair { 2 } else { 1 }).sum())
        }
        Laid::Bar { weight } => count(kit.barbell.iter().filter(|b| b.bar == *weight).count()),
        Laid::Plate { weight } => {
            let plates = kit.barbell.iter().flat_map(|b| &b.plates);
            count(2 * plates.filter(|p| p.weight == *weight).count())
        }
        Laid::Band { name } => count(kit.bands.iter().filter(|b| b.name == *name).count()),
    }
}

/// The first round of somebody who comes in late, without the rounds that the others warmed up by: the nearest easier
/// option that is open to her, else the same at the bottom of its range. It is never of a higher level.
#[must_use]
pub fn late(p: &Prescription) -> Offer {
    let easier = p.options.iter().rev().find(|o| o.level < p.level).cloned();
    easier.unwrap_or_else(|| Offer {
        level: p.level,
        variant: p.variant.clone(),
        load: p.load.clone(),
        target: match p.range {
            Amount::Reps { low, .. } => Target::Reps(low.min(p.target.count())),
            Amount::Seconds { low, .. } => Target::Seconds(low.min(p.target.count())),
        },
    })
}
