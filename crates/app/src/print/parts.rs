//! The parts that documents share: fronts, warnings, sessions, moves.

use super::Press;
use crate::said::{small, tail};
use newel_engine::catalogue::{Ladder, Loading, Place, Variant};
use newel_engine::flow::planned_minutes;
use newel_engine::programme::{Amount, Block, Dose, LevelSpan, PlanSession, Slot};
use newel_engine::rules::Class;
use newel_paper::{self as paper, Front, Grid, Session, Step, StepOption, Warning};
use std::collections::BTreeMap;

/// Letters of blocks; a session of more blocks goes on with numbers.
fn letter(index: usize) -> String {
    u8::try_from(index)
        .ok()
        .filter(|i| *i < 26)
        .map_or_else(|| (index + 1).to_string(), |i| char::from(b'A' + i).to_string())
}

impl Press<'_> {
    pub(super) fn front(&self, title: String, lines: Vec<String>) -> Front {
        let words = [
            ("lay-out", "print-lay-out"),
            ("place", "print-place"),
            ("ladder", "print-move"),
            ("dose", "print-dose"),
            ("steps", "print-steps"),
            ("date", "print-date"),
            ("felt-before", "print-felt-before"),
            ("session-effort", "print-session-effort"),
            ("notes", "print-notes"),
        ];
        Front {
            title,
            lines,
            language: self.words.language.to_owned(),
            author: if self.author.is_empty() { self.words.plain("app-name") } else { self.author.clone() },
            foot: self.words.with("print-foot", &[("day", self.words.day(self.day).into())]),
            page: self.words.with("print-page", &[("n", "{n}".into()), ("all", "{all}".into())]),
            words: words
                .iter()
                .map(|(name, id)| ((*name).to_owned(), self.words.plain(id)))
                .collect::<BTreeMap<_, _>>(),
        }
    }

    pub(super) fn how(&self) -> Vec<String> {
        ["choose", "left", "easier", "talk", "write"]
            .iter()
            .map(|id| self.words.plain(&format!("print-how-{id}")))
            .collect()
    }

    /// The signs that stop training, as the rule pack has them, and whom to call.
    pub(super) fn warning(&self) -> Warning {
        let red = self.books.rules.symptoms().iter().filter(|k| k.class == Class::Red);
        Warning {
            title: self.words.plain("print-stop-title"),
            lead: self.words.plain("print-stop-lead"),
            items: red.map(|k| self.words.plain(&format!("symptom-{}", k.id))).collect(),
            after: vec![self.words.plain("print-stop-after")],
        }
    }

    /// What a block asks for in single weeks.
    fn block_weeks(&self, block: &Block) -> Vec<String> {
        let each = block.by_week.iter().map(|w| {
            let rounds = self.words.with("print-rounds", &[("rounds", w.rounds.into())]);
            let rest = self.words.with("planbook-rest", &[("seconds", w.rest_seconds.into())]);
            let what =
                if w.rest_seconds == block.rest_seconds { rounds } else { format!("{rounds}, {rest}") };
            self.words.with("print-in-week", &[("week", w.week.into()), ("what", what.into())])
        });
        each.collect()
    }

    /// What a slot asks for in single weeks.
    fn slot_weeks(&self, slot: &Slot) -> Vec<String> {
        let each = slot.by_week.iter().map(|w| {
            let what = self.dose(&w.dose).join(", ");
            self.words.with("print-in-week", &[("week", w.week.into()), ("what", what.into())])
        });
        each.collect()
    }

    /// Minutes and rounds of a planned session.
    pub(super) fn session_facts(&self, session: &PlanSession) -> Vec<String> {
        let minutes = planned_minutes(&self.books.catalogue, &self.books.rules, session);
        vec![self.words.with("print-minutes", &[("minutes", minutes.into())])]
    }

    pub(super) fn block_title(&self, index: usize, block: &Block) -> String {
        let form = self.words.plain(&format!("form-{}", tail(&block.form)));
        self.words.with("print-block", &[("letter", letter(index).into()), ("form", form.into())])
    }

    pub(super) fn mark(&self, index: usize, slot: usize, block: &Block) -> String {
        if block.slots.len() > 1 { format!("{}{}", letter(index), slot + 1) } else { letter(index) }
    }

    pub(super) fn block_facts(&self, block: &Block) -> Vec<String> {
        let mut facts = vec![self.words.with("print-rounds", &[("rounds", block.rounds.into())])];
        if block.slots.len() > 1 {
            facts.push(match block.rest_between_seconds {
                0 => self.words.plain("planbook-back-to-back"),
                seconds => self.words.with("planbook-between", &[("seconds", seconds.into())]),
            });
        }
        if block.rest_seconds > 0 {
            facts.push(self.words.with("planbook-rest", &[("seconds", block.rest_seconds.into())]));
        }
        facts.extend(self.block_weeks(block));
        facts
    }

    pub(super) fn dose(&self, dose: &Dose) -> Vec<String> {
        let mut said = vec![self.words.amount(dose.amount)];
        if matches!(dose.amount, Amount::Reps { .. }) {
            said.push(self.words.with("print-aim", &[("count", dose.target_rir.into())]));
        }
        said.extend(dose.tempo.map(|t| self.words.tempo(t)));
        said
    }

    /// What a variant needs beside a wall, a chair and a floor.
    pub(super) fn needs(&self, variant: &Variant) -> Vec<String> {
        let load = match variant.loading {
            Loading::Body => None,
            Loading::One => Some("one"),
            Loading::Pair => Some("pair"),
            Loading::Barbell => Some("barbell"),
            Loading::Band { .. } => Some("band"),
            Loading::Assist { .. } => Some("assist"),
        };
        let load = load.map(|id| self.words.plain(&format!("print-kit-{id}")));
        load.into_iter()
            .chain(variant.needs.iter().map(|t| small(self.words.plain(&format!("thing-{}", tail(t))))))
            .collect()
    }

    pub(super) fn option(&self, variant: &Variant, hers: bool) -> StepOption {
        let id = format!("variant-{}", variant.id);
        let said = |attribute: &str| self.words.attribute(&id, attribute).unwrap_or_default();
        let name = self.words.variant(&variant.id);
        let setup = said("setup");
        let needs = self.needs(variant);
        StepOption {
            alt: self
                .words
                .with("print-figure", &[("name", name.clone().into()), ("setup", setup.clone().into())]),
            figure: Some(variant.id.to_string()).filter(|v| newel_paper::has_figure(v)),
            breath: said("breath"),
            cues: (1..=variant.cues).map(|n| said(&format!("cue{n}"))).collect(),
            kit: (!needs.is_empty())
                .then(|| self.words.with("print-kit", &[("things", needs.join(", ").into())])),
            name,
            setup,
            hers,
        }
    }

    /// Steps of a ladder with all their options, within what the coach allows.
    pub(super) fn steps(&self, ladder: &Ladder, levels: Option<LevelSpan>) -> Vec<Step> {
        let within = |level: usize| {
            levels.is_none_or(|span| (usize::from(span.low)..=usize::from(span.high)).contains(&level))
        };
        let all = ladder.levels.iter().enumerate().filter(|(level, _)| within(*level));
        all.map(|(level, l)| (level, l.variants.iter().filter(|v| !v.retired).collect::<Vec<_>>()))
            .filter(|(_, offered)| !offered.is_empty())
            .map(|(level, offered)| {
                self.step(ladder, level, offered.into_iter().map(|v| self.option(v, false)).collect())
            })
            .collect()
    }

    /// A session with every option, for anybody.
    pub(super) fn open_session(&self, session: &PlanSession) -> Session {
        let slot = |index: usize, place: usize, block: &Block, slot: &Slot| {
            let ladder = self.books.catalogue.ladder(&slot.ladder);
            let sided = ladder.is_some_and(Self::mostly_one_sided);
            // Room for as many rounds as the week with the most of them asks for.
            let rounds = block.by_week.iter().map(|w| w.rounds).max().unwrap_or(0).max(block.rounds);
            paper::Slot {
                mark: self.mark(index, place, block),
                ladder: self.words.ladder(&slot.ladder),
                dose: self.dose(&slot.dose).into_iter().chain(self.slot_weeks(slot)).collect(),
                steps: ladder.map(|l| self.steps(l, slot.levels)).unwrap_or_default(),
                hers: None,
                grid: Some(self.grid(slot, sided, rounds, true)),
            }
        };
        let blocks = session.blocks.iter().enumerate().map(|(index, block)| paper::Block {
            title: self.block_title(index, block),
            facts: self.block_facts(block),
            slots: block.slots.iter().enumerate().map(|(place, s)| slot(index, place, block, s)).collect(),
        });
        Session {
            title: session.title.clone(),
            facts: self.session_facts(session),
            lay_out: Vec::new(),
            blocks: blocks.collect(),
        }
    }

    pub(super) fn step_of(&self, place: &Place<'_>, hers: bool) -> Step {
        self.step(place.ladder, place.level, vec![self.option(place.variant, hers)])
    }

    fn step(&self, ladder: &Ladder, level: usize, options: Vec<StepOption>) -> Step {
        let small = |n: usize| u8::try_from(n).unwrap_or(u8::MAX);
        let (number, of) = (small(level + 1), small(ladder.levels.len()));
        Step {
            number,
            of,
            said: self.words.with("stair-of", &[("now", number.into()), ("of", of.into())]),
            options,
        }
    }

    /// Rows for the sets of a slot.
    pub(super) fn grid(&self, slot: &Slot, per_side: bool, sets: u8, with_step: bool) -> Grid {
        let count = match slot.dose.amount {
            Amount::Reps { .. } if per_side => "reps-side",
            Amount::Reps { .. } => "reps",
            Amount::Seconds { .. } => "seconds",
        };
        let mut columns = vec!["print-round".to_owned()];
        if with_step {
            columns.push("print-col-step".to_owned());
        }
        columns.push(format!("print-col-{count}"));
        columns.push("print-col-load".to_owned());
        if matches!(slot.dose.amount, Amount::Reps { .. }) {
            columns.push("print-col-left".to_owned());
        }
        columns.push("print-col-felt".to_owned());
        Grid {
            title: String::new(),
            columns: columns.iter().map(|id| self.words.plain(id)).collect(),
            rows: (1..=sets).map(|n| self.words.with("print-round-of", &[("n", n.into())])).collect(),
        }
    }

    /// True if most ways of a ladder work one side at a time.
    pub(super) fn mostly_one_sided(ladder: &Ladder) -> bool {
        let variants: Vec<&Variant> = ladder.levels.iter().flat_map(|l| &l.variants).collect();
        variants.iter().filter(|v| v.per_side).count() * 2 > variants.len()
    }
}
