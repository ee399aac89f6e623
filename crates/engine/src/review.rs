//! Whom the coach should look at first, and why. Findings are pointers and never a diagnosis.

use crate::history::Run;
use crate::proposal::{Bench, Outcome};
use crate::reason::Fact;
use crate::record::{HoldAnswer, NextDay, Readiness, Reserve, SkipWhy, Voice};
use crate::rules::Class;
use crate::stage::StageOn;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// How soon the coach should look. Earlier is sooner.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Urge {
    /// Training is stopped.
    Stop,
    /// Something waits for her.
    Attention,
    /// Worth a look.
    Look,
}

/// One thing to see.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// Code; its sentence stands in `desk.ftl` under `desk-<code>`.
    pub code: &'static str,
    /// How soon.
    pub urge: Urge,
    /// Values by name.
    pub facts: BTreeMap<String, Fact>,
}

/// Codes of all findings, so that the build can check that each has its sentence.
pub const FINDING_CODES: &[&str] = &[
    "red-flag",
    "clearance-waits",
    "clearance-over",
    "check-sign",
    "plan-rests",
    "plan-rests-loss",
    "stage-differs",
    "dates-differ",
    "screen-again",
    "screen-never",
    "hold-waits",
    "symptom-repeated",
    "symptom-marked",
    "not-settled",
    "next-day-unanswered",
    "silence-after-symptom",
    "silence",
    "own-words",
    "check-in-unwell",
    "effort-over",
    "load-jump",
    "skipped",
    "stage-moved",
    "near-due",
    "ready-up",
    "kit-limit",
    "question",
];

fn finding(code: &'static str, urge: Urge) -> Finding {
    Finding { code, urge, facts: BTreeMap::new() }
}

impl Finding {
    fn with(mut self, name: &str, fact: Fact) -> Self {
        self.facts.insert(name.to_owned(), fact);
        self
    }

    fn number(self, name: &str, value: f64) -> Self {
        self.with(name, Fact::Number(value))
    }
}

fn count(n: usize) -> f64 {
    f64::from(u32::try_from(n).unwrap_or(u32::MAX))
}

/// What there is to see of one client on a day, the most urgent first.
#[must_use]
pub fn findings(bench: &Bench<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    safety(bench, &mut found);
    symptoms(bench, &mut found);
    contact(bench, &mut found);
    effort(bench, &mut found);
    progress(bench, &mut found);
    found.sort_by_key(|f| f.urge);
    found
}

fn safety(bench: &Bench<'_>, found: &mut Vec<Finding>) {
    for red in bench.state.open_reds() {
        found.push(
            finding("red-flag", Urge::Stop)
                .with("symptom", Fact::Symptom(red.symptom.clone()))
                .with("day", Fact::Day(red.at.date_naive())),
        );
    }
    for wait in &bench.ground.waits {
        found.push(match wait.ran_out {
            Some(day) => finding("clearance-over", Urge::Attention).with("day", Fact::Day(day)),
            None => finding("clearance-waits", Urge::Attention),
        });
    }
    if let Some(rest) = bench.inputs.history.rests() {
        let code = if rest.after_loss { "plan-rests-loss" } else { "plan-rests" };
        let mut f = finding(code, Urge::Attention).with("day", Fact::Day(rest.day));
        f = f.number("client", f64::from(u8::from(rest.taken_up.contains(&Voice::Client))));
        found.push(f.number("coach", f64::from(u8::from(rest.taken_up.contains(&Voice::Coach)))));
    }
    for check in bench.ground.checks.iter().filter(|c| c.brought_a_sign()) {
        if let Some(day) = check.on {
            let words = Fact::Words(check.check.to_string());
            found.push(
                finding("check-sign", Urge::Attention).with("check", words).with("day", Fact::Day(day)),
            );
        }
    }
    if bench.inputs.history.stages_said.iter().any(|s| s.aside) {
        found.push(finding("stage-differs", Urge::Attention));
    }
    if bench.inputs.history.stage().and_then(|s| s.disagreement(bench.inputs.rules)).is_some() {
        found.push(finding("dates-differ", Urge::Look));
    }
    if let Some(due) = crate::screening::due(bench).first() {
        found.push(match due.since {
            Some(day) => finding("screen-again", Urge::Look).with("day", Fact::Day(day)),
            None => finding("screen-never", Urge::Look),
        });
    }
    for hold in bench.state.open_holds().filter(|h| h.answer != Some(HoldAnswer::KeepResting)) {
        let mut f = finding("hold-waits", Urge::Attention)
            .with("symptom", Fact::Symptom(hold.symptom.clone()))
            .with("day", Fact::Day(hold.at.date_naive()));
        if let Some(ladder) = &hold.ladder {
            f = f.with("ladder", Fact::Ladder(ladder.clone()));
        }
        found.push(f);
    }
}

/// A number of the Desk's rule.
fn desk(bench: &Bench<'_>, name: &str) -> f64 {
    bench.inputs.rules.number("watch.desk", name)
}

/// Days from one to another.
fn days(from: NaiveDate, to: NaiveDate) -> f64 {
    f64::from(i32::try_from((to - from).num_days()).unwrap_or(i32::MAX))
}

/// Runs of the last days that a number of the Desk's rule names.
fn recent<'a>(bench: &'a Bench<'_>, name: &str) -> impl Iterator<Item = &'a Run> {
    let (today, most) = (bench.inputs.day, desk(bench, name));
    bench.inputs.history.runs.iter().filter(move |r| days(r.day, today) <= most)
}

fn symptoms(bench: &Bench<'_>, found: &mut Vec<Finding>) {
    let mut seen: BTreeMap<(String, String), (usize, NaiveDate)> = BTreeMap::new();
    for run in recent(bench, "recent_days") {
        let Some(effects) = bench.state.effects.get(&run.id) else { continue };
        // What was said at check-in belongs to no ladder; a hold or a red flag of it is told above.
        if let Some(check_in) = &run.check_in {
            if let Some(verdict) = effects.verdicts.get(&check_in.record)
                && (Class::Cue..Class::Red).contains(&verdict.class)
            {
                let entry = seen.entry((verdict.kind.to_string(), String::new())).or_insert((0, run.day));
                entry.0 += 1;
                entry.1 = run.day;
            }
            for words in check_in.symptoms.iter().filter_map(|s| s.what.words.as_ref()) {
                found.push(
                    finding("own-words", Urge::Attention)
                        .with("words", Fact::Words(words.clone()))
                        .with("day", Fact::Day(run.day)),
                );
            }
        }
        for mark in &run.marks {
            let Some(verdict) = effects.verdicts.get(&mark.record) else { continue };
            if verdict.class >= Class::Cue && verdict.class != Class::Red {
                let ladder = mark.ladder.as_ref().map_or_else(String::new, ToString::to_string);
                let entry = seen.entry((verdict.kind.to_string(), ladder)).or_insert((0, run.day));
                entry.0 += 1;
                entry.1 = run.day;
            }
            for words in mark.symptoms.iter().filter_map(|s| s.what.words.as_ref()) {
                found.push(
                    finding("own-words", Urge::Attention)
                        .with("words", Fact::Words(words.clone()))
                        .with("day", Fact::Day(run.day)),
                );
            }
        }
    }
    for ((kind, ladder), (times, day)) in seen {
        let code = if times > 1 { "symptom-repeated" } else { "symptom-marked" };
        let mut f = finding(code, Urge::Attention)
            .with("symptom", Fact::Symptom(kind.as_str().into()))
            .with("day", Fact::Day(day))
            .number("count", count(times));
        if !ladder.is_empty() {
            f = f.with("ladder", Fact::Ladder(ladder.as_str().into()));
        }
        found.push(f);
    }
    let last = bench.inputs.history.runs.iter().rev().find(|r| r.ended.is_some());
    if let Some(run) = last {
        let marked = run.marks.iter().any(|m| !m.taken_back);
        match run.next_day.as_ref().map(|n| n.answer) {
            Some(NextDay::NotSettled) => {
                found.push(finding("not-settled", Urge::Attention).with("day", Fact::Day(run.day)));
            }
            Some(NextDay::Settled) => {}
            None if marked && days(run.day, bench.inputs.day) >= desk(bench, "unanswered_days") => {
                found.push(finding("next-day-unanswered", Urge::Attention).with("day", Fact::Day(run.day)));
            }
            None => {}
        }
    }
}

fn contact(bench: &Bench<'_>, found: &mut Vec<Finding>) {
    let history = bench.inputs.history;
    let today = bench.inputs.day;
    let last = history.runs.iter().rev().find(|r| !r.sets.is_empty());
    if let Some(run) = last {
        let silent = days(run.day, today);
        let marked = run.marks.iter().any(|m| !m.taken_back);
        if marked && silent >= desk(bench, "silent_after_symptom_days") {
            found.push(finding("silence-after-symptom", Urge::Attention).number("days", silent));
        } else if silent >= desk(bench, "silent_days") {
            found.push(finding("silence", Urge::Look).number("days", silent));
        }
    }
    if let StageOn::Pregnant { age: Some(age), .. } = bench.ground.stage {
        let left = crate::stage::TERM_DAYS - age.in_days();
        let left = f64::from(i32::try_from(left).unwrap_or(i32::MAX));
        if left <= desk(bench, "near_due_days") {
            found.push(finding("near-due", Urge::Look).number("days", left.max(0.0)));
        }
    }
    for said in history.stages.iter().filter(|s| days(s.at.date_naive(), today) <= desk(bench, "recent_days"))
    {
        // A plan that rests has said it already.
        let rests = history.rests().is_some_and(|r| said.what.ended_on() == Some(r.day));
        if history.stages.first().is_some_and(|first| first.record != said.record) && !rests {
            found.push(finding("stage-moved", Urge::Attention).with("day", Fact::Day(said.at.date_naive())));
        }
    }
    for run in recent(bench, "week_days") {
        if run.check_in.as_ref().is_some_and(|c| c.readiness == Readiness::Unwell) {
            found.push(finding("check-in-unwell", Urge::Look).with("day", Fact::Day(run.day)));
        }
        if let Some(note) = run.ended.as_ref().and_then(|e| e.note.as_ref()).filter(|n| !n.trim().is_empty())
        {
            found.push(
                finding("own-words", Urge::Look)
                    .with("words", Fact::Words(note.clone()))
                    .with("day", Fact::Day(run.day)),
            );
        }
    }
    let answered = history.words.iter().rfind(|w| w.what.0 == "answer").map(|w| w.at);
    for asked in history.words.iter().filter(|w| w.what.0 == "question") {
        if answered.is_none_or(|a| a < asked.at) {
            found.push(finding("question", Urge::Attention).with("words", Fact::Words(asked.what.1.clone())));
        }
    }
}

fn effort(bench: &Bench<'_>, found: &mut Vec<Finding>) {
    let runs: Vec<&Run> = recent(bench, "recent_days").filter(|r| !r.sets.is_empty()).collect();
    let over = |run: &&&Run| {
        run.sets.iter().any(|e| {
            let floor = run.prescription(&e.set.slot).map_or(0.0, |p| p.floor);
            matches!(e.set.reserve, Some(Reserve::Exactly(n)) if f64::from(n) < floor)
        })
    };
    let hard = runs.iter().filter(over).count();
    if hard > 0 && count(hard) >= count(runs.len()) * desk(bench, "over_share") {
        found.push(
            finding("effort-over", Urge::Attention)
                .number("count", count(hard))
                .number("of", count(runs.len())),
        );
    }
    let skipped: usize =
        runs.iter().map(|r| r.skips.iter().filter(|s| s.why == SkipWhy::Chosen).count()).sum();
    if count(skipped) >= desk(bench, "skipped") {
        found.push(finding("skipped", Urge::Look).number("count", count(skipped)));
    }
    // A set much heavier than what was shown: her own choice, worth a word.
    for run in &runs {
        for entry in &run.sets {
            let Some(shown) = run.prescription(&entry.set.slot) else { continue };
            let Some(place) = bench.inputs.catalogue.place(&entry.set.variant) else { continue };
            let (held, meant) =
                (place.variant.external(&entry.set.load).0, place.variant.external(&shown.load).0);
            if shown.variant == entry.set.variant
                && meant > 0.0
                && held > meant * (1.0 + desk(bench, "jump_share"))
            {
                found.push(
                    finding("load-jump", Urge::Look)
                        .with("variant", Fact::Variant(entry.set.variant.clone()))
                        .with("load", Fact::Load(entry.set.load.clone())),
                );
                return;
            }
        }
    }
}

fn progress(bench: &Bench<'_>, found: &mut Vec<Finding>) {
    let Some(session) = crate::weeks::next_session(bench.inputs.history, bench.inputs.programme) else {
        return;
    };
    let proposal = bench.propose(&session);
    let mut ready = 0;
    for slot in &proposal.slots {
        let Outcome::Train(_) = &slot.outcome else { continue };
        if slot.reasons.has(crate::reason::ReasonCode::LevelUp)
            || slot.reasons.has(crate::reason::ReasonCode::BigStep)
        {
            ready += 1;
        }
        // A gap upwards, or nothing light enough to go back up with after a symptom.
        let stuck = slot.reasons.has(crate::reason::ReasonCode::StayDown)
            && slot.reasons.has(crate::reason::ReasonCode::NothingLighter);
        if stuck || slot.reasons.has(crate::reason::ReasonCode::KitGap) {
            found.push(finding("kit-limit", Urge::Look).with("ladder", Fact::Ladder(slot.ladder.clone())));
        }
    }
    if ready > 0 {
        found.push(finding("ready-up", Urge::Look).number("count", count(ready)));
    }
}
