//! Sets as anybody could enter them: as proposed or not, with every answer that the cards take.

use std::sync::Arc;

use newel_engine::catalogue::{Place, Variant};
use newel_engine::ground::Ground;
use newel_engine::history::History;
use newel_engine::ids::{ProgrammeId, RunId};
use newel_engine::kit::Load;
use newel_engine::programme::{Amount, Block, BlockPart, PlanSession, Slot};
use newel_engine::proposal::{Outcome, Prescription, SessionProposal, Turn};
use newel_engine::reason::ReasonCode;
use newel_engine::record::{NextDay, Payload, Purpose, Reserve, SetDone, Side, SkipWhy, Versions};
use newel_engine::strength::effective_load;
use newel_engine::units::Kg;
use newel_engine::weeks::{next_session, planned_session};
use uuid::Uuid;

use crate::draw::{Scene, one_of};
use crate::pen::{LAPTOP, PHONE};
use crate::put_right::put_right;
use crate::things::{some_load, weight};
use crate::{answer, care};

/// How a person answers, for a whole log.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Habit {
    /// Anything.
    Anything,
    /// Mostly what was proposed, about as hard as meant.
    Steady,
    /// The top of the range with much left: levels and loads move up.
    Easy,
    /// "5 or more" throughout.
    OpenEnded,
    /// Near failure: loads and levels move down.
    Hard,
    /// Two variants in turn.
    InTurn,
    /// As somebody with a true strength does it and says it.
    Honest,
    /// A little more load costs most of the reps: c runs to its upper bound.
    Steep,
}

impl Habit {
    /// All of them.
    pub const ALL: [Self; 12] = [
        Self::Anything,
        Self::Steady,
        Self::Easy,
        Self::Easy,
        Self::Easy,
        Self::OpenEnded,
        Self::Hard,
        Self::InTurn,
        Self::Honest,
        Self::Honest,
        Self::Honest,
        Self::Steep,
    ];
}

/// One session from check-in to the next morning.
pub fn session(scene: &mut Scene<'_>) {
    let run = scene.pen.run();
    let days = (scene.pen.today() - scene.began).num_days();
    scene.client.day(days as f64);
    scene.pen.device = if scene.chance.happens(0.15) { LAPTOP } else { PHONE };
    let next = next_session(&History::of(&scene.pen.records), &scene.programme).map(|s| s.id);
    let id = match next {
        Some(next) if scene.chance.happens(0.85) => next,
        Some(_) | None => {
            let ids: Vec<_> = scene.programme.sessions.iter().map(|s| s.id.clone()).collect();
            one_of(&mut scene.chance, &ids).clone()
        }
    };
    if scene.chance.happens(0.9) {
        care::check_in(scene, run);
    }
    // Now and then it belongs to an earlier programme, and is none of this one's weeks.
    let other = scene.chance.happens(0.03);
    let programme = if other { ProgrammeId(Uuid::from_u128(8)) } else { scene.programme.id };
    let (day, revision) = (scene.pen.today(), scene.programme.revision);
    scene.pen.write(Payload::SessionStarted { run, day, programme, revision, session: id.clone() });
    if scene.chance.happens(0.03) {
        let mass = weight(&mut scene.chance, 45.0, 110.0);
        scene.pen.write(Payload::BodyMass { mass });
    }
    let history = History::of(&scene.pen.records);
    let Some(session) = planned_session(&history, &scene.programme, &id, Some(run)) else { return };
    let (shown, ask) = answer::ask(scene, Some(run), &session);
    if scene.chance.happens(0.3) {
        scene.asks.push(ask);
    }
    let kept = scene.chance.happens(0.93);
    if kept {
        let versions = Versions { engine: newel_engine::ENGINE_VERSION.into(), catalogue: 1, rules: 1 };
        let result = Arc::new(shown.clone());
        scene.pen.write(Payload::ProposalShown {
            run,
            inputs: String::new(),
            known: Vec::new(),
            versions,
            result,
        });
        answer_ten_reps(scene, &shown);
    }
    // Some sessions are watched set by set; there she mostly does what each set asks for.
    let watched = (kept && scene.chance.happens(0.35)).then_some(&session);
    for (block, slot) in session.slots() {
        let prescribed = shown.slots.iter().find(|p| p.slot == slot.id).and_then(|p| match &p.outcome {
            Outcome::Train(prescription) => Some(prescription.clone()),
            Outcome::Rest => None,
        });
        // What rests is mostly left alone.
        if prescribed.is_none() && scene.chance.happens(0.9) {
            continue;
        }
        slot_done(scene, run, block, slot, prescribed.as_ref(), watched);
    }
    if scene.chance.happens(0.9) {
        scene.pen.write(Payload::SessionEnded { run, effort: Some(5), minutes: Some(25), note: None });
    }
    if scene.chance.happens(0.5) {
        scene.pen.write(Payload::NextDayAnswer { run, answer: NextDay::Settled, symptoms: Vec::new() });
    }
    if scene.chance.happens(0.25) {
        put_right(scene, run);
    }
}

/// "Ten reps with what?", answered on the card of the first set.
fn answer_ten_reps(scene: &mut Scene<'_>, shown: &SessionProposal) {
    for proposal in &shown.slots {
        let Outcome::Train(prescription) = &proposal.outcome else { continue };
        let asked = proposal.reasons.all().iter().any(|r| r.code == ReasonCode::StartLightest);
        let Some(place) = scene.catalogue.place(&prescription.variant) else { continue };
        if asked && scene.chance.happens(0.2) {
            let load = some_load(&mut scene.chance, place.variant);
            scene.pen.write(Payload::TenReps { variant: prescription.variant.clone(), load });
        }
    }
}

fn slot_done(
    scene: &mut Scene<'_>,
    run: RunId,
    block: &Block,
    slot: &Slot,
    prescribed: Option<&Prescription>,
    watched: Option<&PlanSession>,
) {
    let Some((place, mut load)) = choose(scene, slot, prescribed) else { return };
    let variant = place.variant.clone();
    if prescribed.is_some_and(|p| p.variant != variant.id) && scene.chance.happens(0.5) {
        let (slot, variant) = (slot.id.clone(), variant.id.clone());
        scene.pen.write(Payload::OptionChosen { run, slot, variant });
    }
    let planned = prescribed.map_or(block.rounds, |p| p.sets);
    let mut purpose = match (block.form.part(), prescribed.map(|p| p.purpose)) {
        (BlockPart::Finisher, _) => Purpose::Finisher,
        (BlockPart::WarmUp | BlockPart::CoolDown, _) => Purpose::Ease,
        _ if scene.chance.happens(0.02) => Purpose::Learn,
        (BlockPart::Work, Some(purpose @ (Purpose::Find | Purpose::Learn))) => purpose,
        (BlockPart::Work, _) => Purpose::Work,
    };
    for round in 0..planned {
        if scene.chance.happens(0.04) {
            let slot = slot.id.clone();
            scene.pen.write(Payload::SetSkipped { run, slot, round, why: SkipWhy::Chosen });
            continue;
        }
        if scene.chance.happens(0.05) {
            break;
        }
        // Another load in mid-session: lighter, or a finding set that steps up.
        if scene.habit == Habit::Steep {
            load = near_load(scene, &variant, &load);
        } else if scene.chance.happens(0.1) {
            load = any_load(scene, &variant);
        }
        let sides: &[Option<Side>] = match (variant.per_side, scene.chance.happens(0.06)) {
            (false, _) => &[None],
            (true, false) => &[Some(Side::Left), Some(Side::Right)],
            (true, true) => &[Some(Side::Right)],
        };
        for side in sides {
            let mut asked = None;
            if let Some(session) = watched {
                let (turn, told) = answer::turn(scene, run, session, block, slot);
                scene.turns.push(told);
                if let Turn::Do(plan) = turn
                    && plan.variant == variant.id
                    && scene.chance.happens(0.75)
                {
                    let lighter = plan.lighter.clone().filter(|_| scene.chance.happens(0.6));
                    load = lighter.unwrap_or_else(|| plan.load.clone());
                    purpose = plan.purpose;
                    asked = Some(plan.target.count());
                }
            }
            let mut set = drawn_set(scene, run, slot, round, &variant, &load, purpose, prescribed, asked);
            set.side = *side;
            scene.pen.write(Payload::SetDone(set));
        }
    }
}

/// The variant and load that she takes.
fn choose<'a>(
    scene: &mut Scene<'a>,
    slot: &Slot,
    prescribed: Option<&Prescription>,
) -> Option<(Place<'a>, Load)> {
    let catalogue = scene.catalogue;
    let places: Vec<Place<'a>> = catalogue.places().filter(|p| p.ladder.id == slot.ladder).collect();
    let strays = match scene.habit {
        Habit::Anything => 0.3,
        Habit::InTurn => 0.5,
        Habit::Steady | Habit::Easy | Habit::OpenEnded | Habit::Hard | Habit::Honest | Habit::Steep => 0.05,
    };
    match prescribed {
        Some(p) if !scene.chance.happens(strays) => {
            let place = catalogue.place(&p.variant)?;
            let load =
                if scene.chance.happens(strays) { any_load(scene, place.variant) } else { p.load.clone() };
            Some((place, load))
        }
        Some(p) if !p.options.is_empty() && scene.chance.happens(0.8) => {
            let option = one_of(&mut scene.chance, &p.options).clone();
            Some((catalogue.place(&option.variant)?, option.load))
        }
        Some(_) | None => {
            let place = *one_of(&mut scene.chance, &places);
            let load = any_load(scene, place.variant);
            Some((place, load))
        }
    }
}

/// A load of her kit for a variant, or now and then one that is not in it.
fn any_load(scene: &mut Scene<'_>, variant: &Variant) -> Load {
    let history = History::of(&scene.pen.records);
    let ground = Ground::of(&history, scene.catalogue, scene.rules, scene.pen.today(), None);
    let made = ground.kit_loads(variant);
    if made.is_empty() || scene.chance.happens(0.05) {
        return some_load(&mut scene.chance, variant);
    }
    one_of(&mut scene.chance, &made).clone()
}

#[expect(clippy::too_many_arguments, reason = "a set has so many parts")]
fn drawn_set(
    scene: &mut Scene<'_>,
    run: RunId,
    slot: &Slot,
    round: u8,
    variant: &Variant,
    load: &Load,
    purpose: Purpose,
    prescribed: Option<&Prescription>,
    asked: Option<u16>,
) -> SetDone {
    let range = prescribed.map_or(slot.dose.amount, |p| p.range);
    let asked = asked.unwrap_or_else(|| prescribed.map_or(range.low(), |p| p.target.count()));
    let timed = matches!(range, Amount::Seconds { .. });
    let habit = scene.habit;
    let target = prescribed.and_then(|p| p.reserve).unwrap_or(3.0) as i64;
    let chance = &mut scene.chance;
    let beyond = i64::from(range.high());
    let count = match habit {
        Habit::Anything => chance.between(1, beyond + 8),
        Habit::Steady | Habit::InTurn | Habit::Honest | Habit::Steep => {
            i64::from(asked) + *one_of(chance, &[-2, -1, 0, 0, 0, 0, 1])
        }
        Habit::Easy | Habit::OpenEnded if chance.happens(0.85) => beyond.max(i64::from(asked)),
        Habit::Easy | Habit::OpenEnded => i64::from(asked),
        Habit::Hard => i64::from(asked) - chance.between(0, 4),
    };
    let count = u16::try_from(count.max(if habit == Habit::Anything { 0 } else { 1 })).unwrap_or(1);
    let said = match habit {
        Habit::Anything => chance.between(0, 5),
        Habit::Steady | Habit::InTurn | Habit::Honest | Habit::Steep => target + chance.between(-1, 1),
        Habit::Easy => target + chance.between(1, 4),
        Habit::OpenEnded => 5,
        Habit::Hard => chance.between(0, 1),
    };
    let true_set = match habit {
        Habit::Honest if !timed => honest(scene, variant, load, asked, round),
        Habit::Steep if !timed => steep(scene, variant, load),
        Habit::Anything
        | Habit::Steady
        | Habit::Easy
        | Habit::OpenEnded
        | Habit::Hard
        | Habit::InTurn
        | Habit::Honest
        | Habit::Steep => None,
    };
    let (count, said) = true_set.unwrap_or((count, said));
    // A load that is looked for is often far too light.
    let easy = purpose == Purpose::Find && prescribed.is_some() && scene.chance.happens(0.4);
    let (count, said) = if easy { (asked, 5) } else { (count, said) };
    let chance = &mut scene.chance;
    // A slip of the finger, far beyond what the model says anything about.
    let count =
        if chance.happens(0.01) { u16::try_from(chance.between(50, 90)).unwrap_or(60) } else { count };
    let asks = !timed || chance.happens(0.1);
    let reserve = (asks && !chance.happens(0.06)).then(|| reserve_of(said));
    SetDone {
        run,
        slot: slot.id.clone(),
        round,
        side: None,
        ladder: slot.ladder.clone(),
        variant: variant.id.clone(),
        load: load.clone(),
        reps: if timed { 0 } else { count },
        seconds: timed.then_some(count),
        reserve,
        purpose,
        stopped: chance.happens(0.02),
    }
}

/// A set as her true strength lets her do it; `None` for a variant without a state.
fn honest(
    scene: &mut Scene<'_>,
    variant: &Variant,
    load: &Load,
    asked: u16,
    round: u8,
) -> Option<(u16, i64)> {
    let group = variant.group.as_ref()?;
    let slope = scene.catalogue.group(group)?.prior_c;
    let w = effective_load(variant, load, Kg(70.0))?;
    // The first load that she meets in a group is somewhat under what she could do ten times.
    let ten_rep_max = Kg(w.0 * libm::exp(scene.chance.normal(0.2, 0.25)));
    scene.client.meet(group, slope, ten_rep_max);
    let answer = scene.client.set(group, w, asked, u32::from(round))?;
    let said = match answer.reserve {
        Reserve::Exactly(n) | Reserve::AtLeast(n) => i64::from(n),
    };
    Some((answer.reps, said))
}

/// Of somebody who does twelve reps with the load that she first had, and 150 fewer for each e-fold more: steeper than
/// the filter allows.
fn steep(scene: &Scene<'_>, variant: &Variant, load: &Load) -> Option<(u16, i64)> {
    let w = effective_load(variant, load, Kg(70.0))?;
    let first = effective_load(variant, scene.anchors.get(&variant.id)?, Kg(70.0))?;
    let reps = 12.0 - 150.0 * libm::log(w.0 / first.0);
    Some((libm::round(reps.clamp(1.0, 30.0)) as u16, 2))
}

/// A load of her kit near the one that she first had, which is none of the lightest: there the steps are too big.
fn near_load(scene: &mut Scene<'_>, variant: &Variant, load: &Load) -> Load {
    let history = History::of(&scene.pen.records);
    let ground = Ground::of(&history, scene.catalogue, scene.rules, scene.pen.today(), None);
    let made = ground.kit_loads(variant);
    let last = made.len() as i64 - 1;
    let first = scene.anchors.get(&variant.id).cloned().unwrap_or_else(|| {
        let at = scene.chance.between(last / 2, last);
        usize::try_from(at).ok().and_then(|at| made.get(at)).unwrap_or(load).clone()
    });
    scene.anchors.insert(variant.id.clone(), first.clone());
    let at = made.iter().position(|l| *l == first).map_or(0, |at| at as i64) + scene.chance.between(-2, 2);
    usize::try_from(at).ok().and_then(|at| made.get(at)).unwrap_or(&first).clone()
}

/// The last tap means "5 or more".
pub fn reserve_of(said: i64) -> Reserve {
    let said = u8::try_from(said.clamp(0, 5)).unwrap_or(0);
    if said >= 5 { Reserve::AtLeast(5) } else { Reserve::Exactly(said) }
}
