//! Who does what, on one sheet for the wall.

use super::Press;
use crate::said::tail;
use crate::views::{ClassRowView, ClassView};
use newel_engine::class::{Laid, TakesTurns};
use newel_engine::ids::PersonId;
use newel_engine::kit::Load;
use newel_engine::proposal::{Gate, Outcome};
use newel_paper::{ClassBlock, ClassCell, ClassRow, ClassSheet, Document, LetterPart};

impl Press<'_> {
    /// A class sheet.
    pub(super) fn class(&self, view: &ClassView) -> (Document, String) {
        let blocks = view.session.blocks.iter().enumerate().map(|(index, block)| {
            let client = self.words.plain("print-class-client");
            let slots = block.slots.iter().enumerate().map(|(place, slot)| {
                format!(
                    "{}  {}: {}",
                    self.mark(index, place, block),
                    self.words.ladder(&slot.ladder),
                    self.dose(&slot.dose).join(", ")
                )
            });
            ClassBlock {
                title: self.block_title(index, block),
                facts: self.block_facts(block),
                columns: std::iter::once(client).chain(slots).collect(),
                rows: view
                    .rows
                    .iter()
                    .filter(|r| r.proposal.gate == Gate::Open)
                    .map(|row| ClassRow {
                        name: row.name.clone(),
                        cells: block.slots.iter().map(|slot| self.cell(row, slot.id.as_str())).collect(),
                    })
                    .collect(),
            }
        });
        let session = &view.session.title;
        let title = self.words.with(
            "print-handout-name",
            &[("title", view.title.clone().into()), ("session", session.clone().into())],
        );
        let minutes = self.words.with("print-minutes", &[("minutes", view.minutes.into())]);
        let kit = match &view.with_kit_of {
            Some(name) => self.words.with("class-kit-of", &[("name", name.clone().into())]),
            None => self.words.plain("class-kit-own"),
        };
        let document = Document::ClassSheet(ClassSheet {
            front: self.front(title, vec![format!("{}, {minutes}", self.words.day(self.day)), kit]),
            blocks: blocks.collect(),
            lay_out: LetterPart {
                title: self.words.plain("print-class-lay-out"),
                items: self.laid_out(view),
            },
            conflicts: LetterPart {
                title: self.words.plain("print-class-conflicts"),
                items: self.conflicts(view),
            },
            cares: LetterPart { title: self.words.plain("print-class-cares"), items: self.minded(view) },
            warning: self.warning(),
            alone: self.words.plain("print-class-alone"),
        });
        (document, format!("{}-{session}-{}", view.title, self.words.plain("print-title-class")))
    }

    fn cell(&self, row: &ClassRowView, slot: &str) -> ClassCell {
        let proposal = row.proposal.slots.iter().find(|p| p.slot.as_str() == slot);
        match proposal.map(|p| &p.outcome) {
            Some(Outcome::Train(p)) => {
                let sided = self.books.catalogue.place(&p.variant).is_some_and(|h| h.variant.per_side);
                ClassCell {
                    name: self.words.variant(&p.variant),
                    facts: self.prescribed(p, sided),
                    step: Some((p.level.saturating_add(1), p.levels)),
                }
            }
            // Why it rests is for the coach's own sheet.
            Some(Outcome::Rest) | None => {
                ClassCell { name: self.words.plain("print-rests"), facts: Vec::new(), step: None }
            }
        }
    }

    /// A thing in words.
    pub(crate) fn thing(&self, what: &Laid) -> String {
        let w = &self.words;
        match what {
            Laid::Chair => w.plain("class-chair"),
            Laid::Thing { thing } => w.plain(&format!("thing-{}", tail(thing))),
            Laid::Weight { weight } => w.weight(*weight),
            Laid::Bar { weight } => w.with("load-bar-empty", &[("bar", w.weight(*weight).into())]),
            Laid::Plate { weight } => w.with("class-plate", &[("weight", w.weight(*weight).into())]),
            Laid::Band { name } => w.with("load-bands", &[("bands", name.clone().into())]),
        }
    }

    fn laid_out(&self, view: &ClassView) -> Vec<String> {
        view.room
            .iter()
            .map(|t| {
                let values = [("count", t.need.most.into()), ("thing", self.thing(&t.need.what).into())];
                self.words.with("print-class-thing", &values)
            })
            .collect()
    }

    fn conflicts(&self, view: &ClassView) -> Vec<String> {
        let name = |p: &PersonId| {
            view.rows.iter().find(|r| r.person == *p).map_or_else(String::new, |r| r.name.clone())
        };
        // Where it is short, as the sheet marks its slots.
        let place = |t: &TakesTurns| {
            let blocks = view.session.blocks.iter().enumerate();
            let mut at = blocks.filter_map(|(index, block)| {
                let place = block.slots.iter().position(|s| s.id == t.slot)?;
                Some(self.mark(index, place, block))
            });
            at.next().unwrap_or_default()
        };
        let told = |t: &TakesTurns| match &t.instead {
            Some(o) => {
                let amount = self.words.target(o.target, false);
                let dose = match &o.load {
                    Load::Nothing => amount,
                    load => format!("{}, {amount}", self.words.load(load)),
                };
                let what = self.words.variant(&o.variant);
                let values = [("name", name(&t.person).into()), ("what", what.into()), ("dose", dose.into())];
                self.words.with("class-turn-instead", &values)
            }
            None => self.words.with("class-turn", &[("name", name(&t.person).into())]),
        };
        let turn = |t: &TakesTurns| format!("{}: {}", place(t), told(t));
        let short = view.room.iter().filter(|t| t.short).flat_map(|t| {
            let block = t.need.blocks.iter().max_by_key(|b| b.count);
            let who: Vec<String> = block.iter().flat_map(|b| &b.who).map(name).collect();
            let values = [
                ("thing", self.thing(&t.need.what).into()),
                ("need", t.need.most.into()),
                ("have", t.have.unwrap_or(0).into()),
                ("who", who.join(", ").into()),
            ];
            std::iter::once(self.words.with("class-short", &values)).chain(t.turns.iter().map(turn))
        });
        let closed = view.rows.iter().filter_map(|r| match &r.proposal.gate {
            Gate::Open => None,
            Gate::Closed { reasons, .. } => {
                let why = reasons.all().first().map(|why| self.words.reason(why)).unwrap_or_default();
                let values = [("name", r.name.clone().into()), ("why", why.into())];
                Some(self.words.with("print-class-closed", &values))
            }
        });
        closed.chain(short).collect()
    }

    /// Of each client: her stage, what rests and why, what was changed, what to mind.
    fn minded(&self, view: &ClassView) -> Vec<String> {
        let words = &self.words;
        let of = |row: &ClassRowView| {
            let mut said: Vec<String> = row.stage.iter().map(|s| words.stage(s)).collect();
            for proposal in row.proposal.slots.iter().filter(|p| p.outcome == Outcome::Rest) {
                let why = proposal.reasons.all().first().map(|r| words.reason(r)).unwrap_or_default();
                let values = [("ladder", words.ladder(&proposal.ladder).into()), ("why", why.into())];
                said.push(words.with("print-class-rests", &values));
            }
            let changed = row.proposal.slots.iter().filter(|p| row.changed.contains(&p.slot));
            said.extend(changed.map(|p| {
                words.with("print-class-changed-one", &[("ladder", words.ladder(&p.ladder).into())])
            }));
            said.extend(row.cares.iter().filter_map(|c| words.attribute(&format!("condition-{c}"), "care")));
            said.extend(row.restrictions.iter().map(|r| words.restriction(&r.what)));
            said
        };
        let lines =
            view.rows.iter().map(|row| (row.name.clone(), of(row))).filter(|(_, said)| !said.is_empty());
        lines
            .map(|(name, said)| {
                words.with("print-class-care", &[("name", name.into()), ("what", said.join(" · ").into())])
            })
            .collect()
    }
}
