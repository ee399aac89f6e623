//! A letter to a clinician: facts from the log, and the coach's question. Nothing in it is worked out to mean something.

use super::{LetterForm, Press};
use crate::coach::client_name;
use crate::error::{AppError, Refusal};
use crate::profile::Known;
use crate::said::tail;
use chrono::NaiveDate;
use newel_engine::history::{History, Run};
use newel_engine::ids::LadderId;
use newel_engine::kit::Load;
use newel_engine::proposal::Target;
use newel_engine::record::{NextDay, SetDone, Symptom};
use newel_engine::stage::StageOn;
use newel_paper::{Document, Letter, LetterPart, Table};

impl Press<'_> {
    /// The letter. It is only made once she has agreed to it.
    pub(super) fn letter_of(&self, known: &Known, form: &LetterForm) -> Result<(Document, String), AppError> {
        let agreed = form.agreed.ok_or(Refusal::ConsentMissing)?;
        if agreed > self.day {
            return Err(Refusal::DateCannotBe.into());
        }
        let (to, question) = (form.to.trim(), form.question.trim());
        if to.is_empty() || question.is_empty() {
            return Err(Refusal::NameMissing.into());
        }
        if to.chars().count() > 400 || question.chars().count() > 4000 {
            return Err(Refusal::OutOfRange.into());
        }
        let history = known.history();
        let name = client_name(history);
        let words = &self.words;
        let named = |id: &str| words.with(id, &[("name", name.clone().into())]);
        let dated = |id: &str, day: NaiveDate| {
            words.with(id, &[("name", name.clone().into()), ("day", words.day(day).into())])
        };
        let symptoms = self.symptoms(history);
        let mut closing = Vec::new();
        if symptoms.rows.is_empty() {
            closing.push(LetterPart {
                title: symptoms.title.clone(),
                items: vec![words.plain("print-letter-none")],
            });
        }
        closing.push(self.limits(history));
        let question =
            LetterPart { title: words.plain("print-letter-question"), items: vec![question.to_owned()] };
        let document = Document::Letter(Letter {
            front: self.front(words.plain("print-letter-title"), Vec::new()),
            to: to.lines().map(|l| l.trim().to_owned()).filter(|l| !l.is_empty()).collect(),
            dated: words.day(self.day),
            about: named("print-letter-about"),
            opening: vec![
                words.plain("print-letter-birth"),
                dated("print-letter-opening", self.day),
                dated("print-letter-consent", agreed),
            ],
            // The question comes first: it is what the reader is asked to read the rest for.
            parts: vec![question, self.standing(known)],
            tables: vec![symptoms, self.weeks(known, &name), self.loads(history)],
            closing,
            signed: vec![
                named("print-letter-answer"),
                words.plain("print-letter-signed"),
                self.author.clone(),
            ],
            caution: words.plain("print-letter-caution"),
        });
        Ok((document, format!("{name}-{}", words.plain("print-title-letter"))))
    }

    /// Stage, birth, what screening found, clearances.
    fn standing(&self, known: &Known) -> LetterPart {
        let (history, words) = (known.history(), &self.words);
        let mut items = Vec::new();
        match history.stage().map(|s| s.on(self.day)) {
            None => items.push(words.plain("print-letter-stage-none")),
            Some(stage) => {
                items.push(words.stage(&stage));
                if let StageOn::Postpartum { mode, severe_tear, .. } = &stage {
                    let mode = words.plain(&format!("stage-mode-{}", tail(mode)));
                    items.push(words.with("print-letter-mode", &[("mode", mode.into())]));
                    if *severe_tear == Some(true) {
                        items.push(words.plain("print-letter-tear"));
                    }
                }
            }
        }
        let intake = history.intake();
        if !intake.conditions.is_empty() {
            let what: Vec<String> =
                intake.conditions.iter().map(|c| words.plain(&format!("condition-{c}"))).collect();
            items.push(words.with("print-letter-conditions", &[("what", what.join("; ").into())]));
        }
        if !intake.baselines.is_empty() {
            let usual = intake.baselines.iter().map(|b| {
                format!(
                    "{} ({})",
                    words.plain(&format!("symptom-{}", b.kind)),
                    words.symptom_amount(b.amount)
                )
            });
            items.push(
                words
                    .with("print-letter-baselines", &[("what", usual.collect::<Vec<_>>().join("; ").into())]),
            );
        }
        for cleared in history.clearances.iter().filter(|c| c.what.holds_on(self.day)) {
            let values =
                [("who", cleared.what.who.clone().into()), ("day", words.day(cleared.what.on).into())];
            items.push(words.with("print-letter-cleared", &values));
        }
        let ground = newel_engine::ground::Ground::of(
            history,
            &self.books.catalogue,
            &self.books.rules,
            self.day,
            None,
        );
        if !ground.waits.is_empty() {
            items.push(words.plain("print-letter-waits"));
        }
        LetterPart { title: words.plain("print-letter-stage"), items }
    }

    /// What was trained, the latest week first.
    fn weeks(&self, known: &Known, name: &str) -> Table {
        let words = &self.words;
        let weeks = crate::path::weeks(known, self.books, self.day);
        let rows = weeks.iter().map(|w| {
            let effort = w.effort.map_or_else(String::new, |gap| {
                let reps = words.number((gap.abs() * 10.0).round() / 10.0);
                match gap {
                    g if g >= 0.05 => words.with("print-letter-effort-easier", &[("reps", reps.into())]),
                    g if g <= -0.05 => words.with("print-letter-effort-harder", &[("reps", reps.into())]),
                    _ => words.plain("print-letter-effort-as"),
                }
            });
            vec![
                format!("{} – {}", words.day(w.from), words.day(w.to)),
                w.sessions.to_string(),
                w.minutes.to_string(),
                format!("{} / {}", w.done, w.planned),
                effort,
            ]
        });
        Table {
            title: words.plain("print-letter-trained"),
            columns: ["week", "sessions", "minutes", "sets", "effort"]
                .iter()
                .map(|c| words.plain(&format!("print-letter-col-{c}")))
                .collect(),
            widths: vec![0, 0, 0, 0, 1],
            rows: rows.collect(),
            note: Some(words.with("print-letter-trained-note", &[("name", name.to_owned().into())])),
        }
    }

    /// The first and the last working set of each ladder.
    fn loads(&self, history: &History) -> Table {
        let words = &self.words;
        type OnDay<'h> = (NaiveDate, &'h SetDone);
        let mut ends: Vec<(&LadderId, OnDay<'_>, OnDay<'_>)> = Vec::new();
        for run in &history.runs {
            for set in run.sets.iter().map(|e| &e.set).filter(|s| !s.stopped) {
                match ends.iter_mut().find(|(ladder, ..)| **ladder == set.ladder) {
                    Some((_, _, last)) => *last = (run.day, set),
                    None => ends.push((&set.ladder, (run.day, set), (run.day, set))),
                }
            }
        }
        let said = |(day, set): (NaiveDate, &SetDone)| {
            let done = words.target(set.seconds.map_or(Target::Reps(set.reps), Target::Seconds), false);
            let held = (set.load != Load::Nothing).then(|| words.load(&set.load));
            let parts = [Some(words.variant(&set.variant)), held, Some(done)];
            format!("{}: {}", words.day(day), parts.into_iter().flatten().collect::<Vec<_>>().join(", "))
        };
        let rows = ends.iter().map(|(ladder, first, last)| {
            let left = last.1.reserve.map_or_else(String::new, |r| words.reserve(r));
            vec![words.ladder(ladder), said(*first), said(*last), left]
        });
        Table {
            title: words.plain("print-letter-loads"),
            columns: ["move", "first", "last", "left"]
                .iter()
                .map(|c| words.plain(&format!("print-letter-col-{c}")))
                .collect(),
            widths: vec![0, 1, 1, 0],
            rows: rows.collect(),
            note: Some(words.plain("print-letter-loads-note")),
        }
    }

    /// Every symptom that was marked, the latest first; one that was taken back says so.
    fn symptoms(&self, history: &History) -> Table {
        let words = &self.words;
        let mut rows = Vec::new();
        for run in history.runs.iter().rev() {
            let after =
                after(run).map_or_else(|| words.plain("print-letter-unanswered"), |id| words.plain(id));
            let mut row = |symptom: &Symptom, when: String| {
                rows.push(vec![words.day(run.day), words.symptom(symptom), when, after.clone()]);
            };
            for symptom in run.check_in.iter().flat_map(|c| &c.symptoms) {
                row(&symptom.what, words.plain("print-letter-at-check-in"));
            }
            for mark in &run.marks {
                let variant = mark.variant.as_ref().map(|v| words.variant(v));
                let place = variant.or_else(|| mark.ladder.as_ref().map(|l| words.ladder(l)));
                let mut when = place
                    .map_or_else(String::new, |p| words.with("print-letter-in-move", &[("move", p.into())]));
                if mark.taken_back {
                    let back = words.plain("print-letter-taken-back");
                    when = if when.is_empty() { back } else { format!("{when}; {back}") };
                }
                let unsaid = Symptom { kind: None, amount: None, place: None, words: None };
                row(mark.symptoms.last().map_or(&unsaid, |s| &s.what), when);
            }
            for symptom in run.next_day.iter().flat_map(|n| &n.symptoms) {
                row(&symptom.what, words.plain("print-letter-at-next-day"));
            }
        }
        Table {
            title: words.plain("print-letter-symptoms"),
            columns: ["day", "what", "when", "after"]
                .iter()
                .map(|c| words.plain(&format!("print-letter-col-{c}")))
                .collect(),
            widths: vec![0, 3, 3, 2],
            rows,
            note: None,
        }
    }

    fn limits(&self, history: &History) -> LetterPart {
        let words = &self.words;
        let limits = crate::safety::restrictions(history, self.day);
        let said = limits.iter().map(|r| {
            let values = [("what", words.restriction(&r.what).into()), ("note", r.note.clone().into())];
            match r.until {
                None => words.with("print-letter-limit", &values),
                Some(day) => {
                    let [what, note] = values;
                    words.with("print-letter-limit-until", &[what, note, ("day", words.day(day).into())])
                }
            }
        });
        let mut items: Vec<String> = said.collect();
        if items.is_empty() {
            items.push(words.plain("print-letter-no-limits"));
        }
        LetterPart { title: words.plain("print-letter-limits"), items }
    }
}

fn after(run: &Run) -> Option<&'static str> {
    run.next_day.as_ref().map(|n| match n.answer {
        NextDay::Settled => "print-letter-settled",
        NextDay::NotSettled => "print-letter-not-settled",
    })
}
