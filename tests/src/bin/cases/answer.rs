//! What the engine says to a log: the state after every set, and the proposal of each slot.

use newel_engine::history::History;
use newel_engine::ids::RunId;
use newel_engine::programme::{Block, PlanSession, Slot};
use newel_engine::proposal::{Bench, Gate, Inputs, Outcome, SessionProposal, Turn};
use newel_engine::state::{Frame, State};
use newel_engine::strength::Tracker;
use newel_engine::weeks::next_session;
use serde_json::{Value, json};

use crate::draw::Scene;

/// The case as one JSON object, with a last question on the day that the log has come to.
pub fn of(scene: &Scene<'_>, seed: u64, number: u64) -> Value {
    let mut asks = scene.asks.clone();
    let history = History::of(&scene.pen.records);
    if let Some(next) = next_session(&history, &scene.programme) {
        let (_, mut last) = ask(scene, None, &next);
        // Which session comes next is a question, too.
        last["next"] = json!(true);
        asks.push(last);
    }
    json!({
        "seed": seed, "number": number, "habit": format!("{:?}", scene.habit), "records": scene.pen.records,
        "own": scene.own, "programme": scene.programme, "starts": scene.starts, "asks": asks, "turns": scene.turns,
        "states": states(scene, &history),
    })
}

/// What the engine proposes now for a session of the week, and the same as a question with its answer: how much of the
/// log was known, the effort of each slot, and the proposal.
pub fn ask(scene: &Scene<'_>, run: Option<RunId>, session: &PlanSession) -> (SessionProposal, Value) {
    let history = History::of(&scene.pen.records);
    let bench = Bench::of(inputs(scene, &history, run));
    let proposal = bench.propose(session);
    let efforts: Vec<Value> = session
        .slots()
        .filter_map(|(block, slot)| {
            let ladder = scene.catalogue.ladder(&slot.ladder)?;
            let effort = bench.effort(block, slot, ladder);
            Some(json!({
                "slot": slot.id, "target": effort.target, "floor": effort.floor, "sets": effort.sets,
                "careful": effort.careful,
            }))
        })
        .collect();
    let says: Vec<Value> = proposal
        .slots
        .iter()
        .map(|p| match &p.outcome {
            Outcome::Train(t) => json!({
                "slot": p.slot, "level": t.level, "variant": t.variant, "load": t.load, "sets": t.sets,
                "amount": t.target.count(), "purpose": t.purpose, "reserve": t.reserve,
                "reasons": p.reasons.all().iter().map(|r| json!(r.code)).collect::<Vec<_>>(),
            }),
            Outcome::Rest => json!({
                "slot": p.slot, "rests": true,
                "reasons": p.reasons.all().iter().map(|r| json!(r.code)).collect::<Vec<_>>(),
            }),
        })
        .collect();
    let ask = json!({
        "known": scene.pen.records.len(), "day": scene.pen.today(), "run": run, "session": session.id,
        "open": proposal.gate == Gate::Open, "efforts": efforts, "says": says,
    });
    (proposal, ask)
}

/// What a slot asks for now, in a run; and the same as a question with its answer.
pub fn turn(
    scene: &Scene<'_>,
    run: RunId,
    session: &PlanSession,
    block: &Block,
    slot: &Slot,
) -> (Turn, Value) {
    let history = History::of(&scene.pen.records);
    let turn = Bench::of(inputs(scene, &history, Some(run))).turn(block, slot);
    let says = match &turn {
        Turn::Do(plan) => json!({
            "variant": plan.variant, "load": plan.load, "lighter": plan.lighter, "amount": plan.target.count(),
            "purpose": plan.purpose,
        }),
        Turn::Over(_) => Value::Null,
    };
    let told = json!({
        "known": scene.pen.records.len(), "day": scene.pen.today(), "run": run, "session": session.id, "slot": slot.id,
        "says": says,
    });
    (turn, told)
}

/// What a proposal today is made from.
fn inputs<'s>(scene: &'s Scene<'_>, history: &'s History, run: Option<RunId>) -> Inputs<'s> {
    Inputs {
        history,
        programme: &scene.programme,
        starts: &scene.starts,
        starts_of: None,
        catalogue: scene.catalogue,
        rules: scene.rules,
        day: scene.pen.today(),
        run,
    }
}

/// The state of a set's group after it, for every set of a variant that has a group: what the engine makes of
/// the log as it stood then.
fn states(scene: &Scene<'_>, history: &History) -> Vec<Value> {
    let frame = Frame {
        catalogue: scene.catalogue,
        rules: scene.rules,
        starts: &scene.starts,
        starts_of: None,
        day: scene.pen.today(),
    };
    let mut told = Vec::new();
    for (nth, run) in history.runs.iter().enumerate() {
        for done in 1..=run.sets.len() {
            let Some(group) = scene
                .catalogue
                .place(&run.sets[done - 1].set.variant)
                .and_then(|place| place.variant.group.clone())
            else {
                continue;
            };
            let mut until = history.clone();
            // A birth that was recorded later had not closed the history yet.
            until.stages.retain(|stage| stage.at <= run.started);
            until.runs.truncate(nth + 1);
            until.runs[nth].sets.truncate(done);
            let state = State::of(&until, frame);
            told.push(json!({
                "run": run.id, "sets": done, "group": group,
                "rounds": state.rounds.get(&group).map(|(day, n)| json!([day, n])),
                "state": state.trackers.get(&group).map(numbers),
            }));
        }
    }
    told
}

/// b, c, d and the upper half of the covariance, row by row.
pub fn numbers(tracker: &Tracker) -> [f64; 9] {
    let (m, p) = (&tracker.mean, &tracker.cov);
    [m[0], m[1], m[2], p[(0, 0)], p[(0, 1)], p[(0, 2)], p[(1, 1)], p[(1, 2)], p[(2, 2)]]
}
