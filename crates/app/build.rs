//! Fails the build when a code or a rule of the engine has no sentence, in any language, or the sentence
//! of a rule leaves one of its numbers out.

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use newel_engine::advice::{AdviceCode, FixCode};
use newel_engine::catalogue::Catalogue;
use newel_engine::monitor::Notice;
use newel_engine::reason::ReasonCode;
use newel_engine::review::FINDING_CODES;
use newel_engine::revision::CHANGE_CODES;
use newel_engine::rules::{Asks, RulePack};
use std::collections::{BTreeMap, BTreeSet};
use std::hash::{DefaultHasher, Hash as _, Hasher as _};
use std::path::{Path, PathBuf};

/// What the answers of the program are made by, of which kept ones must not survive a change.
const SOURCES: [&str; 7] =
    ["../engine/src", "../engine/data", "../store/src", "../exchange/src", "src", "data", "../../Cargo.lock"];

/// A hash over all of [`SOURCES`]: the same for the same sources, wherever they lie.
fn code() -> Result<String, Box<dyn std::error::Error>> {
    let mut hasher = DefaultHasher::new();
    for source in SOURCES {
        println!("cargo::rerun-if-changed={source}");
        let mut files = Vec::new();
        files_in(Path::new(source), &mut files)?;
        files.sort();
        for file in files {
            (file.to_string_lossy().replace('\\', "/"), std::fs::read(&file)?).hash(&mut hasher);
        }
    }
    Ok(format!("{:016x}", hasher.finish()))
}

fn files_in(path: &Path, files: &mut Vec<PathBuf>) -> std::io::Result<()> {
    if !path.is_dir() {
        files.push(path.to_owned());
        return Ok(());
    }
    for entry in std::fs::read_dir(path)? {
        files_in(&entry?.path(), files)?;
    }
    Ok(())
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    println!("cargo::rustc-env=NEWEL_CODE={}", code()?);
    let locales = Path::new("../../locales");
    println!("cargo::rerun-if-changed={}", locales.display());
    let catalogue = Catalogue::built_in()?;
    let rules = RulePack::built_in()?;
    let mut wanted: Vec<String> = Vec::new();
    wanted.extend(ReasonCode::ALL.iter().map(|c| format!("reason-{}", c.slug())));
    wanted.extend(FINDING_CODES.iter().map(|c| format!("desk-{c}")));
    wanted.extend(AdviceCode::ALL.iter().map(|c| format!("advice-{}", c.slug())));
    wanted.extend(FixCode::ALL.iter().map(|c| format!("fix-{}", c.slug())));
    wanted.extend(CHANGE_CODES.iter().map(|c| format!("change-{c}")));
    wanted.extend(Notice::ALL.iter().map(|n| format!("watch-{}", n.slug())));
    wanted.extend(rules.symptoms().iter().map(|k| format!("symptom-{}", k.id)));
    wanted.extend(rules.conditions().iter().map(|c| format!("condition-{}", c.id)));
    let asking = rules.conditions().iter().filter(|c| c.asks != Asks::Nothing);
    wanted.extend(asking.map(|c| format!("condition-{}.ask", c.id)));
    for ladder in &catalogue.ladders {
        let id = format!("ladder-{}", ladder.id);
        // Each level above the first says why it is harder than the one below.
        wanted.extend((2..=ladder.levels.len()).map(|n| format!("{id}.step{n}")));
        wanted.extend(ladder.uncertain.then(|| format!("{id}.uncertain")));
        wanted.push(id);
    }
    for place in catalogue.places() {
        let id = format!("variant-{}", place.variant.id);
        wanted.extend(["setup", "breath", "slip1"].iter().map(|a| format!("{id}.{a}")));
        wanted.extend((1..=place.variant.cues).map(|n| format!("{id}.cue{n}")));
        wanted.extend(place.variant.uncertain.then(|| format!("{id}.uncertain")));
        wanted.push(id);
    }
    wanted.extend(rules.checks().iter().map(|c| format!("check-{}", c.id)));
    let spoken = rules.spoken();
    for (id, numbers) in &spoken {
        let settable = numbers.keys().filter(|name| rules.may_set(id, name).is_some());
        wanted.extend(settable.map(|name| format!("rules-number-{name}")));
    }
    wanted.extend(spoken.iter().map(|(id, _)| id.sentence()));
    for language in std::fs::read_dir(locales)? {
        let language = language?.path();
        let mut found = BTreeSet::new();
        let mut values: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for file in std::fs::read_dir(&language)? {
            let path = file?.path();
            let text = std::fs::read_to_string(&path)?;
            let resource = match fluent_syntax::parser::parse(text.as_str()) {
                Ok(resource) => resource,
                Err((_, errors)) => {
                    let first = errors.first().map(ToString::to_string).unwrap_or_default();
                    return Err(format!("{}: {first}", path.display()).into());
                }
            };
            for entry in resource.body {
                if let Entry::Message(message) = entry {
                    let id = message.id.name;
                    if let Some(pattern) = &message.value {
                        values.entry(id.to_owned()).or_default().extend(values_in(pattern));
                    }
                    if message.value.is_some() && !found.insert(id.to_owned()) {
                        return Err(format!("{}: {id} stands twice", path.display()).into());
                    }
                    found.extend(message.attributes.iter().map(|a| format!("{id}.{}", a.id.name)));
                }
            }
        }
        let missing: Vec<&String> = wanted.iter().filter(|w| !found.contains(*w)).collect();
        if !missing.is_empty() {
            return Err(format!("{}: no sentence for {missing:?}", language.display()).into());
        }
        for (id, numbers) in &spoken {
            let said = values.get(&id.sentence()).cloned().unwrap_or_default();
            for name in numbers.keys() {
                if !said.contains(name) && !said.contains(&format!("{name}_percent")) {
                    return Err(
                        format!("{}: {} does not say {name}", language.display(), id.sentence()).into()
                    );
                }
            }
        }
    }
    Ok(())
}

/// Names of the values that a sentence uses outside of its variants.
fn values_in(pattern: &Pattern<&str>) -> Vec<String> {
    let name = |expression: &InlineExpression<&str>| match expression {
        InlineExpression::VariableReference { id } => Some(id.name.to_owned()),
        _ => None,
    };
    let in_element = |element: &PatternElement<&str>| match element {
        PatternElement::Placeable { expression: Expression::Inline(inline) } => name(inline),
        PatternElement::Placeable { expression: Expression::Select { selector, .. } } => name(selector),
        PatternElement::TextElement { .. } => None,
    };
    pattern.elements.iter().filter_map(in_element).collect()
}
