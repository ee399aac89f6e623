//! The rule pack to read: each rule with its numbers, sentence and source, and two pages made from it.

use crate::words::Words;
use fluent_bundle::FluentArgs;
use newel_engine::ids::RuleId;
use newel_engine::rules::{
    CheckOf, Class, MaySet, ReadinessCheck, RulePack, Scope, Stricter, SymptomKind, Urgency, When,
};
use serde::Serialize;
use std::collections::BTreeMap;
use std::fmt::Write as _;

/// A rule as it is read.
#[derive(Clone, Debug, Serialize)]
pub struct RuleEntry {
    /// Id.
    pub id: RuleId,
    /// Its numbers by name.
    pub numbers: BTreeMap<String, f64>,
    /// Those that a coach may set for a client, and how.
    pub may_set: BTreeMap<String, MaySet>,
    /// What it does.
    pub sentence: String,
    /// Where it comes from, with a mark.
    pub source: String,
}

/// A symptom kind as it is read.
#[derive(Clone, Debug, Serialize)]
pub struct SymptomEntry {
    /// Its plain label.
    pub label: String,
    /// Its trade term.
    pub term: String,
    /// The kind, as the pack holds it.
    #[serde(flatten)]
    pub kind: SymptomKind,
}

/// The whole pack.
#[derive(Clone, Debug, Serialize)]
pub struct Rulebook {
    /// Version of the pack.
    pub version: u32,
    /// Rules.
    pub rules: Vec<RuleEntry>,
    /// Effort by stage.
    pub effort: Vec<RuleEntry>,
    /// Conditions named at screening.
    pub conditions: Vec<RuleEntry>,
    /// Checks before impact.
    pub checks: Vec<RuleEntry>,
    /// Symptom kinds in the order they are shown.
    pub symptoms: Vec<SymptomEntry>,
}

/// A number as a sentence says it: three digits that count, no tail.
fn said(value: f64) -> f64 {
    if value == 0.0 || !value.is_finite() {
        return value;
    }
    let digits = 2 - value.abs().log10().floor() as i32;
    let scale = 10f64.powi(digits.max(0));
    (value * scale).round() / scale
}

/// Numbers as a sentence says them, each also as a percentage.
#[must_use]
pub fn said_numbers(numbers: &BTreeMap<String, f64>) -> BTreeMap<String, f64> {
    let both = |(name, value): (&String, &f64)| {
        [(name.clone(), said(*value)), (format!("{name}_percent"), said(value * 100.0))]
    };
    numbers.iter().flat_map(both).collect()
}

/// The sentence of a rule with its numbers.
#[must_use]
pub fn sentence(words: &Words, id: &RuleId, numbers: &BTreeMap<String, f64>) -> String {
    let mut args = FluentArgs::new();
    for (name, value) in said_numbers(numbers) {
        args.set(name, value);
    }
    words.say_with(&id.sentence(), &args).unwrap_or_else(|| id.to_string())
}

fn check_entry(check: &ReadinessCheck, words: &Words) -> RuleEntry {
    let yes = |is: bool| if is { "yes" } else { "no" };
    let mut args = FluentArgs::new();
    args.set("what", words.say(&format!("check-{}", check.id)).unwrap_or_default());
    args.set("count", check.count);
    args.set(
        "of",
        match check.of {
            CheckOf::Reps => "reps",
            CheckOf::Seconds => "seconds",
            CheckOf::Minutes => "minutes",
        },
    );
    args.set("side", yes(check.per_side));
    args.set("lands", yes(check.lands));
    RuleEntry {
        id: format!("check.{}", check.id).into(),
        numbers: BTreeMap::from([("count".to_owned(), f64::from(check.count))]),
        may_set: BTreeMap::new(),
        sentence: words.say_with("rulebook-check", &args).unwrap_or_default(),
        source: check.source.clone(),
    }
}

impl Rulebook {
    /// Reads a pack.
    #[must_use]
    pub fn of(pack: &RulePack, words: &Words) -> Self {
        let entry = |(id, numbers): (RuleId, BTreeMap<String, f64>)| RuleEntry {
            may_set: numbers
                .keys()
                .filter_map(|name| Some((name.clone(), *pack.may_set(&id, name)?)))
                .collect(),
            sentence: sentence(words, &id, &numbers),
            source: pack.source(&id).to_owned(),
            id,
            numbers,
        };
        let (conditions, others): (Vec<_>, Vec<_>) =
            pack.spoken().into_iter().map(entry).partition(|e| e.id.as_str().starts_with("condition."));
        let (effort, rules) = others.into_iter().partition(|e| pack.effort_rule(&e.id).is_some());
        let symptoms = pack.symptoms().iter().map(|kind| {
            let id = format!("symptom-{}", kind.id);
            SymptomEntry {
                label: words.say(&id).unwrap_or_else(|| kind.id.to_string()),
                term: words.attribute(&id, "term").unwrap_or_default(),
                kind: kind.clone(),
            }
        });
        let checks = pack.checks().iter().map(|check| check_entry(check, words)).collect();
        let symptoms = symptoms.collect();
        Self { version: pack.version, rules, effort, conditions, checks, symptoms }
    }

    /// The decision table of symptoms, as a page in Markdown.
    #[must_use]
    pub fn symptom_page(&self, words: &Words) -> String {
        let mut page = page_head(words, "symptoms", 11);
        for entry in &self.symptoms {
            row(&mut page, &symptom_cells(words, entry));
        }
        page
    }

    /// The rules with their numbers, as a page in Markdown.
    #[must_use]
    pub fn rule_page(&self, words: &Words) -> String {
        let say = |id: &str| words.say(id).unwrap_or_default();
        let mut page = format!("# {}\n\n{}\n", say("rulebook-rules-title"), say("rulebook-rules-intro"));
        let parts = [
            ("rules", &self.rules),
            ("effort", &self.effort),
            ("conditions", &self.conditions),
            ("checks", &self.checks),
        ];
        for (part, entries) in parts {
            let _ = write!(page, "\n## {}\n\n", say(&format!("rulebook-{part}-part")));
            table_head(&mut page, &say("rulebook-rules-head"), 4);
            for entry in entries {
                let may: Vec<String> = entry.may_set.iter().map(|(n, m)| may_set(words, n, m)).collect();
                let sentence = match entry.id.as_str().strip_prefix("condition.") {
                    Some(condition) => {
                        format!("{}: {}", say(&format!("condition-{condition}")), entry.sentence)
                    }
                    None => entry.sentence.clone(),
                };
                row(&mut page, &[format!("`{}`", entry.id), sentence, may.join("; "), entry.source.clone()]);
            }
        }
        page
    }
}

fn page_head(words: &Words, name: &str, columns: usize) -> String {
    let say = |part: &str| words.say(&format!("rulebook-{name}-{part}")).unwrap_or_default();
    let mut page = format!("# {}\n\n{}\n\n", say("title"), say("intro"));
    table_head(&mut page, &say("head"), columns);
    page
}

fn table_head(page: &mut String, head: &str, columns: usize) {
    let _ = writeln!(page, "{head}\n|{}", "---|".repeat(columns));
}

fn row(page: &mut String, cells: &[String]) {
    // A bar within a cell would end it.
    let cells: Vec<String> = cells.iter().map(|c| c.replace('|', "\\|")).collect();
    let _ = writeln!(page, "| {} |", cells.join(" | "));
}

fn may_set(words: &Words, name: &str, may: &MaySet) -> String {
    let mut args = FluentArgs::new();
    args.set("name", format!("`{name}`"));
    args.set(
        "stricter",
        match may.stricter {
            Stricter::More => "more",
            Stricter::Less => "less",
        },
    );
    args.set("least", may.least);
    args.set("most", may.most);
    words.say_with("rulebook-may-set", &args).unwrap_or_default()
}

fn class(words: &Words, class: Class) -> String {
    let slug = match class {
        Class::Note => "note",
        Class::Cue => "cue",
        Class::Drop => "drop",
        Class::Hold => "hold",
        Class::Red => "red",
    };
    words.say(&format!("rulebook-class-{slug}")).unwrap_or_default()
}

fn symptom_cells(words: &Words, entry: &SymptomEntry) -> Vec<String> {
    let say = |id: &str| words.say(id).unwrap_or_default();
    let kind = &entry.kind;
    let when = match (kind.when, kind.from_week) {
        (When::Any, _) => say("rulebook-when-any"),
        (When::Pregnant, None) => say("rulebook-when-pregnant"),
        (When::Pregnant, Some(week)) => {
            let mut args = FluentArgs::new();
            args.set("week", week);
            words.say_with("rulebook-when-pregnant-from", &args).unwrap_or_default()
        }
        (When::Postpartum, _) => say("rulebook-when-postpartum"),
    };
    let bands: Vec<String> = kind
        .by_pain
        .iter()
        .map(|band| {
            let mut args = FluentArgs::new();
            args.set("class", class(words, band.class));
            args.set("from", band.from);
            words.say_with("rulebook-band", &args).unwrap_or_default()
        })
        .collect();
    let scope = match kind.scope {
        Scope::Ladder => "ladder",
        Scope::LowerBody => "lower_body",
        Scope::All => "all",
    };
    let classes = [kind.again, kind.next_morning, Some(kind.class)];
    let held =
        classes.into_iter().flatten().chain(kind.by_pain.iter().map(|b| b.class)).any(|c| c >= Class::Hold);
    let urgency = kind.urgency.map(|u| match u {
        Urgency::Emergency => "emergency",
        Urgency::Call => "call",
        Urgency::SameDay => "same_day",
    });
    let also = [
        (kind.ends_set && kind.class < Class::Drop).then(|| say("rulebook-ends-set")),
        kind.gives_up.map(|_| say("rulebook-gives-up")),
        kind.refer.then(|| say("rulebook-refer")),
    ];
    let optional = |c: Option<Class>| c.map_or_else(String::new, |c| class(words, c));
    vec![
        entry.label.clone(),
        entry.term.clone(),
        when,
        class(words, kind.class),
        bands.join(", "),
        optional(kind.again),
        optional(kind.next_morning),
        if held { say(&format!("rulebook-scope-{scope}")) } else { String::new() },
        urgency.map_or_else(String::new, |u| say(&format!("rulebook-urgency-{u}"))),
        also.into_iter().flatten().collect::<Vec<_>>().join("; "),
        kind.source.clone(),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use newel_engine::rules::Condition;
    use std::path::Path;

    /// True if a condition changes nothing that is proposed.
    fn only_recorded(condition: &Condition) -> bool {
        condition.rules_out.is_empty()
            && condition.rules_out_positions.is_empty()
            && condition.extra_reserve <= 0.0
            && condition.asks == newel_engine::rules::Asks::Nothing
    }

    fn book() -> (Rulebook, &'static Words) {
        let words = Words::english();
        (Rulebook::of(&RulePack::built_in().unwrap(), words), words)
    }

    #[test]
    fn the_pages_in_docs_are_those_of_the_pack() {
        let (book, words) = book();
        let docs = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs");
        for (name, page, call) in [
            ("symptoms.md", book.symptom_page(words), "newel rules --table"),
            ("rules.md", book.rule_page(words), "newel rules --table rules"),
        ] {
            let kept = std::fs::read_to_string(docs.join(name)).unwrap_or_default();
            assert!(kept == page, "docs/{name} is stale: write it anew with `{call} > docs/{name}`");
        }
    }

    #[test]
    fn every_rule_says_its_numbers() {
        let (book, words) = book();
        let mut all = 0;
        for entry in book.rules.iter().chain(&book.effort).chain(&book.conditions) {
            assert!(entry.sentence.ends_with('.') && !entry.sentence.contains('$'), "{}", entry.sentence);
            for name in entry.numbers.keys() {
                let mut other = entry.numbers.clone();
                other.insert(name.clone(), 0.77);
                let changed = sentence(words, &entry.id, &other);
                assert!(changed != entry.sentence, "{} does not say {name}: {}", entry.id, entry.sentence);
            }
            all += 1;
        }
        assert!(all > 60, "{all}");
        let step = book.rules.iter().find(|e| e.id.as_str() == "load.step").unwrap();
        assert_eq!(
            step.sentence,
            "A load goes up by at most 10 % of the heaviest one done as planned in the last 28 days."
        );
    }

    #[test]
    fn every_symptom_kind_has_a_row_with_words() {
        let (book, words) = book();
        for entry in &book.symptoms {
            let cells = symptom_cells(words, entry);
            assert_eq!(cells.len(), 11);
            assert!(!cells[0].is_empty() && !cells[1].is_empty() && !cells[10].is_empty(), "{cells:?}");
            assert_eq!(entry.kind.urgency.is_some(), !cells[8].is_empty(), "{cells:?}");
        }
    }

    #[test]
    fn a_condition_that_only_is_recorded_says_so() {
        let (book, _) = book();
        let pack = RulePack::built_in().unwrap();
        for condition in pack.conditions() {
            let id = format!("condition.{}", condition.id);
            let entry = book.conditions.iter().find(|e| e.id.as_str() == id).unwrap();
            let recorded = entry.sentence.starts_with("Recorded for the coach");
            assert_eq!(recorded, only_recorded(condition), "{id}: {}", entry.sentence);
        }
    }
}
