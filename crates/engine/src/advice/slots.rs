//! Slot by slot: whom it leaves without an option, whom it asks too much of, and what mends that.

use super::seen::{Seen, Shut, is_open, lowest_alone, why_shut};
use super::{Advice, AdviceCode, Draft, Fix, FixCode, Named, edit};
use crate::catalogue::{Ladder, Pattern};
use crate::gains::Piece;
use crate::ground::Ground;
use crate::programme::{Amount, Block, LevelSpan, PlanSession, Slot};
use crate::proposal::effort;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::writing::Edit;

/// Of clients as a whole: who trains nothing, or little, until something is answered or cleared.
pub(super) fn of_clients(draft: &Draft<'_>, seen: &[Seen<'_>]) -> Vec<Advice> {
    let closed =
        seen.iter().filter(|s| s.closed).map(|s| Named { person: s.person, from: None, until: None });
    let waits = seen.iter().filter(|s| !s.closed).filter_map(|s| {
        let from = s.waits?;
        Some(Named { person: s.person, from, until: None })
    });
    let of = |code, rule, whom: Vec<Named>| {
        (!whom.is_empty()).then(|| Advice { whom, ..Advice::new(draft.rules, code, rule) })
    };
    let closed = of(AdviceCode::Closed, "clearance.asked", closed.collect());
    let waits = of(AdviceCode::Waits, "clearance.asked", waits.collect());
    closed.into_iter().chain(waits).collect()
}

/// Pieces of advice that differ in nothing but in whom they name become one.
fn gathered(each: impl Iterator<Item = (Advice, Named)>) -> Vec<Advice> {
    let mut all: Vec<Advice> = Vec::new();
    for (advice, named) in each {
        let same = |a: &&mut Advice| {
            a.code == advice.code
                && a.facts == advice.facts
                && a.closed == advice.closed
                && a.rule == advice.rule
                && a.fixes == advice.fixes
        };
        match all.iter_mut().find(same) {
            Some(known) => known.whom.push(named),
            None => all.push(Advice { whom: vec![named], ..advice }),
        }
    }
    all
}

/// More rounds than the stage of somebody allows.
pub(super) fn of_block(
    draft: &Draft<'_>,
    session: &PlanSession,
    block: &Block,
    seen: &[Seen<'_>],
) -> Vec<Advice> {
    let most = |ground: &Ground<'_>| {
        let rule = ground.effort()?;
        rule.most_sets.filter(|most| *most < block.rounds).map(|most| (most, rule.id.clone()))
    };
    let each = seen.iter().filter_map(|s| {
        let now = most(&s.now);
        let last = s.last.as_ref().map(most);
        let (sets, rule) = now.clone().or_else(|| last.flatten())?;
        let turns = || s.first_day(|day| most(&s.ground_on(day)).is_some() == now.is_some());
        let (from, until) = if now.is_some() { (None, turns()) } else { (turns(), None) };
        let fewer = Edit::ShapeBlock {
            block: block.id.clone(),
            rounds: Some(sets),
            rest_seconds: None,
            rest_between_seconds: None,
            part: None,
            week: None,
        };
        let advice = Advice {
            block: Some(block.id.clone()),
            ..Advice::new(draft.rules, AdviceCode::Rounds, rule.as_str())
        }
        .of_session(&session.id)
        .number("rounds", f64::from(block.rounds))
        .number("most", f64::from(sets))
        .fixed(Fix::OnTheDay)
        .fixed(edit(FixCode::Rounds, "rounds", Fact::Number(f64::from(sets)), 1, fewer));
        Some((advice, Named { person: s.person, from, until }))
    });
    counted(gathered(each))
}

/// An edit that helps one helps each of those who are told the same.
fn counted(mut all: Vec<Advice>) -> Vec<Advice> {
    for advice in &mut all {
        let whom = u32::try_from(advice.whom.len()).unwrap_or(u32::MAX);
        for fix in &mut advice.fixes {
            if let Fix::Edit { helps, .. } = fix {
                *helps = whom;
            }
        }
    }
    all
}

/// All that a slot gives rise to.
pub(super) fn of_slot<'a>(
    draft: &Draft<'a>,
    session: &PlanSession,
    block: &Block,
    slot: &Slot,
    seen: &[Seen<'a>],
    first: bool,
) -> Vec<Advice> {
    let Some(ladder) = draft.catalogue.ladder(&slot.ladder) else { return Vec::new() };
    let mut all = Vec::new();
    if first {
        all.extend(shut(draft, slot, ladder, seen));
        all.extend(held(draft, ladder, seen));
        all.extend(lowest(draft, slot, ladder, seen));
    }
    all.extend(too_hard(draft, block, slot, ladder, seen));
    for advice in &mut all {
        advice.session = Some(session.id.clone());
        advice.block = Some(block.id.clone());
        advice.slot = Some(slot.id.clone());
        advice.facts.insert("ladder".to_owned(), Fact::Ladder(ladder.id.clone()));
    }
    all
}

/// Those who have no option for the same reasons, each with when.
struct Group<'s, 'a> {
    why: Shut,
    rule: String,
    whom: Vec<(Named, &'s Seen<'a>)>,
}

/// Who has no option, today or by the last day.
fn shut<'a>(draft: &Draft<'a>, slot: &Slot, ladder: &'a Ladder, seen: &[Seen<'a>]) -> Vec<Advice> {
    let mut groups: Vec<Group<'_, 'a>> = Vec::new();
    for s in seen {
        let rungs = s.rungs(ladder);
        let now = is_open(&rungs.now, slot.levels);
        let at_last = rungs.last.as_ref().map(|last| is_open(last, slot.levels));
        let (why, ground, from, until) = match (now, &rungs.last, at_last) {
            (false, _, Some(true)) => {
                (why_shut(&rungs.now, slot.levels), &s.now, None, s.turns(ladder, slot.levels))
            }
            (false, _, _) => (why_shut(&rungs.now, slot.levels), &s.now, None, None),
            (true, Some(last), Some(false)) => {
                let ground = s.last.as_ref().unwrap_or(&s.now);
                (why_shut(last, slot.levels), ground, s.turns(ladder, slot.levels), None)
            }
            (true, _, _) => continue,
        };
        let rule = if why.pieces.is_empty() {
            why.closed.first().map_or_else(|| "kit.has".to_owned(), |by| by.rule(ground, draft.rules))
        } else {
            "kit.has".to_owned()
        };
        let named = (Named { person: s.person, from, until }, s);
        match groups.iter_mut().find(|g| g.why == why && g.rule == rule) {
            Some(group) => group.whom.push(named),
            None => groups.push(Group { why, rule, whom: vec![named] }),
        }
    }
    groups
        .into_iter()
        .map(|Group { why, rule, whom }| {
            let code = if why.pieces.is_empty() { AdviceCode::RuledOut } else { AdviceCode::NoKit };
            let concerned: Vec<&Seen<'a>> = whom.iter().map(|(_, s)| *s).collect();
            Advice {
                whom: whom.iter().map(|(named, _)| *named).collect(),
                fixes: ways_out(draft, slot, ladder, &why.pieces, &concerned, seen),
                closed: why.closed,
                ..Advice::new(draft.rules, code, &rule)
            }
        })
        .collect()
}

/// What mends a slot without an option: a piece of kit, easier levels, or the ladder that serves most.
fn ways_out<'a>(
    draft: &Draft<'a>,
    slot: &Slot,
    ladder: &'a Ladder,
    pieces: &[Piece],
    concerned: &[&Seen<'a>],
    seen: &[Seen<'a>],
) -> Vec<Fix> {
    let helped = |ladder: &'a Ladder, span| concerned.iter().filter(|s| s.has_open(ladder, span)).count();
    // The variant is that of the first who is helped.
    let naming = |fix: Fix, ladder: &'a Ladder, span| {
        let variant =
            concerned.iter().filter(|s| s.has_open(ladder, span)).find_map(|s| s.easiest(ladder, span));
        match (fix, variant) {
            (Fix::Edit { does, mut facts, helps, edit }, Some(variant)) => {
                facts.insert("variant".to_owned(), Fact::Variant(variant));
                Fix::Edit { does, facts, helps, edit }
            }
            (fix, _) => fix,
        }
    };
    let mut fixes = Vec::new();
    if let Some(span) = slot.levels {
        // Down alone: a level above what the coach allowed is not hers to be given.
        let wider = (0..span.low).rev().map(|low| (low, helped(ladder, Some(LevelSpan { low, ..span }))));
        let best = wider.filter(|(_, n)| *n > 0).max_by_key(|(low, n)| (*n, *low));
        if let Some((low, n)) = best {
            let to = Fact::Number(f64::from(low) + 1.0);
            let widen = Edit::LevelsOfSlot { slot: slot.id.clone(), low: Some(low), high: None };
            let fix = edit(FixCode::Levels, "level", to, n, widen);
            fixes.push(naming(fix, ladder, Some(LevelSpan { low, ..span })));
        }
    }
    if !pieces.is_empty() {
        fixes.push(Fix::Kit { pieces: pieces.to_vec() });
    }
    let ranked = |near: &dyn Fn(Pattern) -> bool| {
        let others = draft.catalogue.ladders.iter().filter(|l| l.id != ladder.id && near(l.pattern));
        let each = others.map(|l| {
            let all = seen.iter().filter(|s| s.has_open(l, None)).count();
            (l, helped(l, None), all)
        });
        // The first in the catalogue's order among equals.
        each.filter(|(_, n, _)| *n > 0).fold(
            None,
            |best: Option<(&'a Ladder, usize, usize)>, next| match best {
                Some(b) if (b.1, b.2) >= (next.1, next.2) => Some(b),
                Some(_) | None => Some(next),
            },
        )
    };
    let same = ranked(&|p| p == ladder.pattern);
    if let Some((other, n, _)) = same.or_else(|| ranked(&|p| are_kin(p, ladder.pattern))) {
        let change = Edit::LadderOfSlot { slot: slot.id.clone(), ladder: other.id.clone() };
        let fix = edit(FixCode::Ladder, "ladder", Fact::Ladder(other.id.clone()), n, change);
        fixes.push(naming(fix, other, None));
    }
    fixes
}

/// Kinds of movement that stand for one another.
pub(super) const KIN: [&[Pattern]; 4] = [
    &[Pattern::HorizontalPush, Pattern::VerticalPush],
    &[Pattern::HorizontalPull, Pattern::VerticalPull],
    &[Pattern::Squat, Pattern::SingleLeg],
    &[Pattern::Hinge, Pattern::Bridge],
];

fn are_kin(a: Pattern, b: Pattern) -> bool {
    a != b && KIN.iter().any(|kin| kin.contains(&a) && kin.contains(&b))
}

/// Whose ladder rests until what she marked is answered.
fn held(draft: &Draft<'_>, ladder: &Ladder, seen: &[Seen<'_>]) -> Vec<Advice> {
    let each = seen.iter().filter(|s| !s.closed).filter_map(|s| {
        let hold = s.bench.state.hold_on(&ladder.id, ladder.region)?;
        let advice = Advice::new(draft.rules, AdviceCode::Held, "symptom.hold")
            .with("symptom", Fact::Symptom(hold.symptom.clone()));
        Some((advice, Named { person: s.person, from: None, until: None }))
    });
    gathered(each)
}

/// Whose kit makes the lowest level alone.
fn lowest<'a>(draft: &Draft<'a>, slot: &Slot, ladder: &'a Ladder, seen: &[Seen<'a>]) -> Vec<Advice> {
    let each = seen.iter().filter_map(|s| {
        let pieces = lowest_alone(&s.rungs(ladder).now, slot.levels)?;
        let advice = Advice::new(draft.rules, AdviceCode::LowestKit, "kit.has").fixed(Fix::Kit { pieces });
        Some((advice, Named { person: s.person, from: None, until: None }))
    });
    gathered(each)
}

/// What her stage, or a restriction, asks to be left where the slot aims at less, with the rule.
fn asked(block: &Block, slot: &Slot, ladder: &Ladder, ground: &Ground<'_>) -> Option<(f64, String)> {
    let says = |r: &Reason| match (r.code, r.facts.get("target")) {
        (ReasonCode::StageEffort | ReasonCode::RestrictedReserve, Some(Fact::Number(n))) => {
            Some((*n, r.rule.to_string()))
        }
        _ => None,
    };
    let today = effort(ground, block, &slot.dose, ladder.pattern, None, false);
    today.reasons.iter().filter_map(says).max_by(|a, b| a.0.total_cmp(&b.0))
}

/// Who is asked nearer to failure than she may go. The day's proposal raises it by itself.
fn too_hard(
    draft: &Draft<'_>,
    block: &Block,
    slot: &Slot,
    ladder: &Ladder,
    seen: &[Seen<'_>],
) -> Vec<Advice> {
    if !matches!(slot.dose.amount, Amount::Reps { .. }) {
        return Vec::new();
    }
    let each = seen.iter().filter_map(|s| {
        let now = asked(block, slot, ladder, &s.now);
        let last = s.last.as_ref().and_then(|ground| asked(block, slot, ladder, ground));
        let is_now = now.is_some();
        let turns = || s.first_day(|day| asked(block, slot, ladder, &s.ground_on(day)).is_some() == is_now);
        let (from, until) = if is_now { (None, turns()) } else { (turns(), None) };
        let (target, rule) = now.or(last)?;
        // Half a rep is not written in a slot.
        let whole = libm::ceil(target) as u8;
        let more = Edit::ReserveOfSlot { slot: slot.id.clone(), target_rir: whole, week: None };
        let advice = Advice::new(draft.rules, AdviceCode::Effort, &rule)
            .number("target", f64::from(slot.dose.target_rir))
            .number("least", target)
            .fixed(Fix::OnTheDay)
            .fixed(edit(FixCode::Reserve, "target", Fact::Number(f64::from(whole)), 1, more));
        Some((advice, Named { person: s.person, from, until }))
    });
    counted(gathered(each))
}
