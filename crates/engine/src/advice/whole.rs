//! The week as a whole: push beside pull, knee beside hip, and hard sets of each kind of movement.

use super::seen::Seen;
use super::slots::KIN;
use super::{Advice, AdviceCode, Draft, Fix, FixCode, edit};
use crate::catalogue::{Ladder, Pattern};
use crate::flow::planned_minutes;
use crate::programme::{Block, BlockPart};
use crate::reason::Fact;
use crate::writing::{Edit, week_sets};
use std::collections::BTreeMap;

/// Two families that are held against one another: code, rule, names, and places in [`KIN`].
const PAIRS: [(AdviceCode, &str, usize, usize); 2] =
    [(AdviceCode::PushPull, "advice.push-pull", 0, 1), (AdviceCode::KneeHip, "advice.knee-hip", 2, 3)];

/// Kinds of movement whose hard sets are counted: those of the families.
fn is_counted(pattern: Pattern) -> bool {
    KIN.iter().any(|kin| kin.contains(&pattern))
}

pub(super) fn of_the_week<'a>(draft: &Draft<'a>, seen: &[Seen<'a>]) -> Vec<Advice> {
    let week = week_sets(draft.programme, draft.catalogue);
    let mut all = Vec::new();
    for (code, rule, one, other) in PAIRS {
        all.extend(balance(draft, seen, &week, (code, rule), (KIN[one], KIN[other])));
    }
    all.extend(amounts(draft, &week));
    all
}

/// One side far more than the other: said once there are enough sets of both together to speak of.
fn balance<'a>(
    draft: &Draft<'a>,
    seen: &[Seen<'a>],
    week: &BTreeMap<Pattern, f64>,
    (code, rule): (AdviceCode, &str),
    (one, other): (&[Pattern], &[Pattern]),
) -> Option<Advice> {
    let sum = |kin: &[Pattern]| kin.iter().filter_map(|p| week.get(p)).fold(0.0, |a, b| a + b);
    let (a, b) = (sum(one), sum(other));
    let most = draft.rules.number(rule, "most_share") * (a + b);
    if a + b < draft.rules.number(rule, "from_sets") || a.max(b) <= most + 1e-9 {
        return None;
    }
    let lacking = if a > b { other } else { one };
    let advice = Advice::new(draft.rules, code, rule).number("one", a).number("other", b);
    let fix = one_more(draft, seen, lacking);
    Some(match fix {
        Some(fix) => advice.fixed(fix),
        None => advice,
    })
}

/// A block more in the shortest session, of the ladder of a family that stays open for most.
fn one_more<'a>(draft: &Draft<'a>, seen: &[Seen<'a>], family: &[Pattern]) -> Option<Fix> {
    let shortest =
        draft.programme.sessions.iter().min_by_key(|s| planned_minutes(draft.catalogue, draft.rules, s))?;
    let there = |l: &Ladder| shortest.slots().any(|(_, slot)| slot.ladder == l.id);
    let ladders = draft.catalogue.ladders.iter().filter(|l| family.contains(&l.pattern) && !there(l));
    let ranked = ladders.map(|l| (l, seen.iter().filter(|s| s.has_open(l, None)).count()));
    // The first in the catalogue's order among equals.
    let best = ranked.fold(None, |best: Option<(&Ladder, usize)>, next| match best {
        Some(b) if b.1 >= next.1 => Some(b),
        Some(_) | None => Some(next),
    });
    let (ladder, helps) = best?;
    let block = Edit::AddBlock {
        session: shortest.id.clone(),
        ladders: vec![ladder.id.clone()],
        part: BlockPart::Work,
    };
    Some(edit(FixCode::Block, "ladder", Fact::Ladder(ladder.id.clone()), helps, block))
}

/// Too few or too many sets a week of a kind of movement that is in the programme. Every planned set is meant to be a
/// hard one: what it aims at is what makes it count when it is logged.
fn amounts(draft: &Draft<'_>, week: &BTreeMap<Pattern, f64>) -> Vec<Advice> {
    let rule = "advice.week-sets";
    let (least, most) = (draft.rules.number(rule, "least"), draft.rules.number(rule, "most"));
    let each = week.iter().filter(|(pattern, _)| is_counted(**pattern)).filter_map(|(pattern, sets)| {
        let (code, limit) = if *sets < least {
            (AdviceCode::FewSets, least)
        } else if *sets > most {
            (AdviceCode::ManySets, most)
        } else {
            return None;
        };
        let advice = Advice::new(draft.rules, code, rule)
            .with("pattern", Fact::Words(pattern_slug(*pattern)))
            .number("sets", *sets)
            .number("limit", limit);
        let more = code == AdviceCode::FewSets;
        Some(match rounds(draft, *pattern, more) {
            Some(fix) => advice.fixed(fix),
            None => advice,
        })
    });
    each.collect()
}

/// One round more or less in a block of a kind of movement: more where there are fewest, less where there are most.
fn rounds(draft: &Draft<'_>, pattern: Pattern, more: bool) -> Option<Fix> {
    let has = |b: &&Block| {
        b.form.part() == BlockPart::Work
            && b.slots.iter().any(|s| draft.catalogue.ladder(&s.ladder).is_some_and(|l| l.pattern == pattern))
    };
    let blocks = draft.programme.sessions.iter().flat_map(|s| &s.blocks).filter(has);
    let block = if more {
        blocks.filter(|b| b.rounds < 12).min_by_key(|b| b.rounds)?
    } else {
        blocks.filter(|b| b.rounds > 1).max_by_key(|b| b.rounds)?
    };
    let rounds = if more { block.rounds + 1 } else { block.rounds - 1 };
    let shape = Edit::ShapeBlock {
        block: block.id.clone(),
        rounds: Some(rounds),
        rest_seconds: None,
        rest_between_seconds: None,
        part: None,
        week: None,
    };
    Some(edit(FixCode::Rounds, "rounds", Fact::Number(f64::from(rounds)), 0, shape))
}

/// The name of a kind of movement as data has it.
fn pattern_slug(pattern: Pattern) -> String {
    match pattern {
        Pattern::Squat => "squat",
        Pattern::Hinge => "hinge",
        Pattern::Bridge => "bridge",
        Pattern::SingleLeg => "single_leg",
        Pattern::HorizontalPush => "horizontal_push",
        Pattern::VerticalPush => "vertical_push",
        Pattern::HorizontalPull => "horizontal_pull",
        Pattern::VerticalPull => "vertical_pull",
        Pattern::HipAbduction => "hip_abduction",
        Pattern::HipAdduction => "hip_adduction",
        Pattern::Calf => "calf",
        Pattern::Arms => "arms",
        Pattern::Carry => "carry",
        Pattern::Balance => "balance",
        Pattern::Trunk => "trunk",
        Pattern::Breathing => "breathing",
        Pattern::PelvicFloor => "pelvic_floor",
        Pattern::Mobility => "mobility",
        Pattern::Impact => "impact",
    }
    .to_owned()
}
