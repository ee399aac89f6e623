//! How hard: reserve aimed at, its floor, and the number of sets.

use crate::catalogue::Pattern;
use crate::ground::Ground;
use crate::programme::{Amount, Block, Dose};
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::{Readiness, RestrictionKind, TodayThing};
use crate::stage::StageOn;

/// Effort of a slot today.
#[derive(Clone, Debug, PartialEq)]
pub struct Effort {
    /// Reps in reserve aimed at.
    pub target: f64,
    /// Reps in reserve never to go below.
    pub floor: f64,
    /// Sets.
    pub sets: u8,
    /// True if alpha binds the reps, too (pregnant, and the first weeks after a birth or loss).
    pub careful: bool,
    /// What moved it.
    pub reasons: Vec<Reason>,
}

/// The rule behind a restriction on effort.
fn restriction_rule(what: &RestrictionKind) -> &'static str {
    if matches!(what, RestrictionKind::BreathHolding) { "breath.free" } else { "coach.set" }
}

/// Works out the effort of a dose today. `fresh` is true for a first exposure after a birth or a loss.
#[must_use]
pub fn effort(
    ground: &Ground<'_>,
    block: &Block,
    dose: &Dose,
    pattern: Pattern,
    readiness: Option<Readiness>,
    fresh: bool,
) -> Effort {
    let rules = ground.rules;
    let mut reasons = Vec::new();
    let mut target = f64::from(dose.target_rir);
    let mut sets = block.rounds;
    let mut least_floor = 0.0;
    if let Some(rule) = ground.effort() {
        let least = if ground.intake.trained {
            rule.trained_target.unwrap_or(rule.least_target)
        } else {
            rule.least_target
        };
        // Week 0 stands for "not known": the sentence then names none.
        let by = |code| {
            Reason::new(rules, code, rule.id.as_str()).number("week", ground.week().map_or(0.0, f64::from))
        };
        if least > target {
            target = least;
            // Of a timed set nobody is asked what was left.
            if matches!(dose.amount, Amount::Reps { .. }) {
                reasons.push(by(ReasonCode::StageEffort).number("target", target));
            }
        }
        least_floor = rule.least_floor;
        if let Some(most) = rule.most_sets
            && sets > most
        {
            sets = most;
            reasons.push(by(ReasonCode::StageSets).number("sets", f64::from(sets)));
        }
    }
    if fresh {
        let reserve = rules.number("fresh.start", "reserve");
        if reserve > target {
            target = reserve;
        }
        reasons.push(Reason::new(rules, ReasonCode::FreshStart, "fresh.start").number("target", target));
    }
    if let Some((least, restriction)) = ground.least_reserve()
        && least > target
    {
        target = least;
        reasons.push(
            Reason::new(rules, ReasonCode::RestrictedReserve, restriction_rule(&restriction.what))
                .number("target", target)
                .with("note", Fact::Words(restriction.note.clone())),
        );
    }
    let fewer = |sets: &mut u8, rule: &str| {
        let most = rules.number(rule, "sets");
        if f64::from(*sets) > most && most >= 1.0 {
            *sets = most as u8;
        }
    };
    if ground.learning && !pattern.goes_on_meanwhile() {
        target = target.max(rules.number("learn.first", "reserve"));
        fewer(&mut sets, "learn.first");
        let why = Reason::new(rules, ReasonCode::LearnFirst, "learn.first");
        reasons.push(why.number("target", target).number("sets", f64::from(sets)));
    }
    // What asks for more in reserve comes on top of what asks for so much at least.
    if ground.light_week && !pattern.goes_on_meanwhile() {
        let rule = "programme.light-week";
        target += rules.number(rule, "more_reserve");
        let share = rules.number(rule, "share").clamp(0.0, 1.0);
        sets = (libm::ceil(f64::from(sets) * share - 1e-9) as u8).max(1);
        let why = Reason::new(rules, ReasonCode::LightWeek, rule);
        reasons.push(why.number("target", target).number("sets", f64::from(sets)));
    }
    let more = ground
        .conditions_now()
        .filter(|c| c.extra_reserve > 0.0)
        .max_by(|a, b| a.extra_reserve.total_cmp(&b.extra_reserve));
    if let Some(condition) = more {
        target += condition.extra_reserve;
        reasons.push(
            Reason::new(rules, ReasonCode::ConditionReserve, &format!("condition.{}", condition.id))
                .with("condition", Fact::Condition(condition.id.clone()))
                .number("target", target),
        );
    }
    if ground.today.contains(&TodayThing::AfterIllness) && !pattern.goes_on_meanwhile() {
        target += rules.number("today.after-illness", "more_reserve");
        fewer(&mut sets, "today.after-illness");
        let why = Reason::new(rules, ReasonCode::AfterIllness, "today.after-illness");
        reasons.push(why.number("target", target).number("sets", f64::from(sets)));
    }
    let as_many = sets;
    let today = match readiness {
        None | Some(Readiness::Usual) => None,
        Some(Readiness::Tired) => Some("today.tired"),
        Some(Readiness::Unwell) => {
            fewer(&mut sets, "today.unwell");
            Some("today.unwell")
        }
    };
    let goes_on = pattern.goes_on_meanwhile();
    if let Some(rule) = today
        && (!goes_on || sets < as_many)
    {
        target += if goes_on { 0.0 } else { rules.number(rule, "more_reserve") };
        reasons.push(
            Reason::new(rules, ReasonCode::TiredToday, rule)
                .number("target", target)
                .number("sets", f64::from(sets)),
        );
    }
    let mut floor = (target - rules.number("load.target", "floor_below_target")).max(0.0).max(least_floor);
    if ground.stage.is_pregnant() {
        floor = floor.max(rules.number("effort.careful", "pregnant_floor"));
    }
    let careful = match ground.stage {
        StageOn::Pregnant { .. } => true,
        StageOn::Postpartum { age, .. } | StageOn::AfterLoss { age } => {
            f64::from(age.weeks) < rules.number("effort.careful", "weeks_after")
        }
        StageOn::Neither => false,
    };
    Effort { target, floor, sets, careful, reasons }
}
