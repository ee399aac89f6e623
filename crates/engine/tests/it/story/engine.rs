//! What the engine says.

use super::Story;
use newel_engine::flow::Flow;
use newel_engine::history::History;
use newel_engine::ids::*;
use newel_engine::kit::Load;
use newel_engine::programme::PlanSession;
use newel_engine::proposal::*;
use newel_engine::reason::ReasonCode;
use newel_engine::weeks::{next_session, planned_session};

/// The session in hand, else the one that comes next, with the doses of its week.
pub fn today(b: &Bench<'_>) -> PlanSession {
    let Inputs { history, programme, run, .. } = b.inputs;
    let begun = b.run().and_then(|r| r.planned.as_ref());
    match begun {
        Some((_, _, id)) => planned_session(history, programme, id, run).expect("it stands in the programme"),
        None => next_session(history, programme).expect("there is something to train"),
    }
}

impl Story {
    pub fn with_bench<T>(&self, ask: impl FnOnce(&Bench<'_>) -> T) -> T {
        self.with_own_bench(|bench| ask(&bench))
    }

    /// As [`Story::with_bench`], to make another of it.
    pub fn with_own_bench<T>(&self, ask: impl FnOnce(Bench<'_>) -> T) -> T {
        let history = History::of(&self.records);
        let bench = Bench::of(Inputs {
            history: &history,
            programme: &self.programme,
            starts: &self.starts,
            starts_of: self.starts_of,
            catalogue: &self.catalogue,
            rules: &self.rules,
            day: self.today(),
            run: self.run,
        });
        ask(bench)
    }

    /// What would be proposed today.
    pub fn proposal(&self) -> SessionProposal {
        self.with_bench(|b| b.propose(&today(b)))
    }

    pub fn of_slot(&self, slot: &str) -> Proposal {
        self.proposal().slots.into_iter().find(|p| p.slot.as_str() == slot).expect("the gate is open")
    }

    pub fn next(&self, slot: &str) -> Prescription {
        let proposal = self.of_slot(slot);
        match proposal.outcome {
            Outcome::Train(prescription) => prescription,
            Outcome::Rest => panic!("{slot} rests: {:?}", proposal.reasons),
        }
    }

    pub fn rests(&self, slot: &str) -> bool {
        self.of_slot(slot).outcome == Outcome::Rest
    }

    pub fn reasons(&self, slot: &str) -> Vec<ReasonCode> {
        self.of_slot(slot).reasons.all().iter().map(|r| r.code).collect()
    }

    pub fn is_closed(&self) -> bool {
        self.with_bench(|b| b.gate() != Gate::Open)
    }

    pub fn external(&self, p: &Prescription) -> f64 {
        self.external_of(&p.variant, &p.load)
    }

    pub fn external_of(&self, variant: &VariantId, load: &Load) -> f64 {
        self.catalogue.place(variant).unwrap().variant.external(load).0
    }

    pub fn flow(&self) -> Flow {
        let history = History::of(&self.records);
        let run = history.run(self.run.unwrap()).unwrap();
        self.with_bench(|b| Flow::of(b, &today(b), run))
    }
}
