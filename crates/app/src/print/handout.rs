//! A session on paper: with every option for anybody, or with what one client does.

use super::Press;
use crate::coach::client_name;
use crate::error::{AppError, Refusal};
use crate::profile::Known;
use crate::said::{small, tail};
use newel_engine::flow;
use newel_engine::ids::PlanSessionId;
use newel_engine::kit::Load;
use newel_engine::programme::{PlanSession, Programme};
use newel_engine::proposal::{Gate, Outcome, Prescription, Proposal};
use newel_paper::{Block, Document, Handout, Hers, Session, Slot};

impl Press<'_> {
    /// A session with every option.
    pub(super) fn handout(&self, programme: &Programme, session: &PlanSession) -> Document {
        let session = self.open_session(session);
        let title = self.words.with(
            "print-handout-name",
            &[("title", programme.title.clone().into()), ("session", session.title.clone().into())],
        );
        Document::Handout(Handout {
            front: self.front(title, session.facts.clone()),
            how: self.how(),
            warning: self.warning(),
            cares: Vec::new(),
            session,
        })
    }

    /// What a client trains, with room to write. Nothing is proposed where training is closed.
    pub(super) fn handout_of(
        &self,
        known: &Known,
        session: Option<&PlanSessionId>,
    ) -> Result<(Document, String), AppError> {
        let known = known.on(self.day);
        let plan = known.plan.as_ref().ok_or(Refusal::NoPlan)?;
        let session = &Self::session(known, &plan.programme, session)?;
        let bench = known.bench(self.day, None).ok_or(Refusal::NoPlan)?;
        let proposed = bench.propose(session);
        if proposed.gate != Gate::Open {
            return Err(Refusal::Closed.into());
        }
        let name = client_name(known.history());
        let minutes = flow::minutes(&bench, session, &proposed.slots);
        let mut lay_out: Vec<String> = Vec::new();
        let mut blocks = Vec::new();
        for (index, block) in session.blocks.iter().enumerate() {
            let mut slots = Vec::new();
            for (place, slot) in block.slots.iter().enumerate() {
                let Some(proposal) = proposed.slots.iter().find(|p| p.slot == slot.id) else { continue };
                let (steps, sets, sided) = match &proposal.outcome {
                    Outcome::Rest => (Vec::new(), 0, false),
                    Outcome::Train(p) => {
                        let here = self.books.catalogue.place(&p.variant);
                        let sided = here.as_ref().is_some_and(|h| h.variant.per_side);
                        if p.load != Load::Nothing {
                            lay_out.push(self.words.load(&p.load));
                        }
                        let things = here.iter().flat_map(|h| &h.variant.needs);
                        lay_out
                            .extend(things.map(|t| small(self.words.plain(&format!("thing-{}", tail(t))))));
                        let easier = p.options.iter().rev().find(|o| o.level < p.level);
                        let easier = easier.and_then(|o| self.books.catalogue.place(&o.variant));
                        let steps = easier
                            .iter()
                            .map(|e| self.step_of(e, false))
                            .chain(here.iter().map(|h| self.step_of(h, true)))
                            .collect();
                        (steps, p.sets, sided)
                    }
                };
                slots.push(Slot {
                    mark: self.mark(index, place, block),
                    ladder: self.words.ladder(&slot.ladder),
                    dose: self.dose(&slot.dose),
                    hers: Some(self.hers(proposal, sided)),
                    grid: (sets > 0).then(|| self.grid(slot, sided, sets, false)),
                    steps,
                });
            }
            blocks.push(Block {
                title: self.block_title(index, block),
                facts: self.block_facts(block),
                slots,
            });
        }
        lay_out.sort();
        lay_out.dedup();
        let stage = known.history().stage().map(|s| s.on(self.day));
        let mut lines = vec![self.words.with("print-for", &[("name", name.clone().into())])];
        lines.extend(stage.map(|s| {
            let values = [("stage", self.words.stage(&s).into()), ("day", self.words.day(self.day).into())];
            self.words.with("print-stage-line", &values)
        }));
        lines.push(self.words.with("print-minutes", &[("minutes", minutes.into())]));
        let title = self.words.with(
            "print-handout-name",
            &[("title", plan.programme.title.clone().into()), ("session", session.title.clone().into())],
        );
        let mut how = self.how();
        how.push(self.words.plain("print-how-log-phone"));
        let document = Document::Handout(Handout {
            front: self.front(title, lines),
            how,
            warning: self.warning(),
            cares: self.cares(known),
            session: Session { title: session.title.clone(), facts: Vec::new(), lay_out, blocks },
        });
        Ok((document, format!("{name}-{}", session.title)))
    }

    /// What her conditions and limits ask to be minded at each session.
    pub(super) fn cares(&self, known: &Known) -> Vec<String> {
        let intake = known.history().intake();
        let conditions = intake.conditions.iter();
        let minded = conditions.filter_map(|c| self.words.attribute(&format!("condition-{c}"), "care"));
        let limits = crate::safety::restrictions(known.history(), self.day);
        minded.chain(limits.iter().map(|r| self.words.restriction(&r.what))).collect()
    }

    pub(super) fn prescribed(&self, p: &Prescription, sided: bool) -> Vec<String> {
        let amount = self.words.target(p.target, sided);
        let mut facts = Vec::new();
        if p.load != Load::Nothing {
            facts.push(self.words.load(&p.load));
        }
        facts.push(self.words.with("print-sets-of", &[("sets", p.sets.into()), ("amount", amount.into())]));
        facts.extend(
            p.reserve.map(|r| self.words.with("print-aim", &[("count", self.words.number(r).into())])),
        );
        facts
    }

    fn hers(&self, proposal: &Proposal, sided: bool) -> Hers {
        let why = proposal.reasons.all().iter().map(|r| self.words.reason(r)).collect();
        match &proposal.outcome {
            Outcome::Rest => {
                Hers { name: self.words.plain("print-rests"), facts: Vec::new(), why, easier: None }
            }
            Outcome::Train(p) => {
                let easier = p.options.iter().rev().find(|o| o.level < p.level).map(|o| {
                    let what = match &o.load {
                        Load::Nothing => self.words.variant(&o.variant),
                        load => format!("{}, {}", self.words.variant(&o.variant), self.words.load(load)),
                    };
                    self.words.with("print-easier", &[("what", what.into())])
                });
                Hers { name: self.words.variant(&p.variant), facts: self.prescribed(p, sided), why, easier }
            }
        }
    }
}
