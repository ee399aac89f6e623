//! The set that a mark stopped: what it was, so that how far it went can still be written down.

use crate::views::StoppedView;
use newel_engine::catalogue::Catalogue;
use newel_engine::history::Run;
use newel_engine::ids::RecordId;
use newel_engine::proposal::Target;
use newel_engine::record::{Purpose, SetDone, Side};

/// The set that a mark stopped, with nothing done in it yet; `None` if the mark came at rest, or the set is logged.
pub(crate) fn set_of(catalogue: &Catalogue, run: &Run, mark: RecordId) -> Option<SetDone> {
    let mark = run.marks.iter().find(|m| m.record == mark && !m.at_rest)?;
    let (slot, variant, round) = (mark.slot.clone()?, mark.variant.clone()?, mark.round?);
    let place = catalogue.place(&variant)?;
    let logged: Vec<_> = run.sets.iter().filter(|e| e.set.slot == slot && e.set.round == round).collect();
    let side = if place.variant.per_side {
        // The mark names no side; the left one comes first.
        let done = |side| logged.iter().any(|e| e.set.side == Some(side));
        Some([Side::Left, Side::Right].into_iter().find(|side| !done(*side))?)
    } else {
        if !logged.is_empty() {
            return None;
        }
        None
    };
    let shown = run.prescription(&slot);
    let before = run.sets.iter().rfind(|e| e.set.slot == slot && e.set.variant == variant);
    let load = before
        .map(|e| e.set.load.clone())
        .or_else(|| shown.filter(|p| p.variant == variant).map(|p| p.load.clone()))?;
    let seconds = shown.and_then(|p| match p.target {
        Target::Seconds(_) => Some(0),
        Target::Reps(_) => None,
    });
    Some(SetDone {
        run: run.id,
        slot,
        round,
        side,
        ladder: place.ladder.id.clone(),
        variant,
        load,
        reps: 0,
        seconds,
        reserve: None,
        purpose: shown.map_or(Purpose::Work, |p| p.purpose),
        stopped: true,
    })
}

/// As the card asks for it.
pub(crate) fn view(set: &SetDone) -> StoppedView {
    StoppedView { variant: set.variant.clone(), load: set.load.clone(), timed: set.seconds.is_some() }
}
