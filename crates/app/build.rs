//! Fails the build when a code of the engine has no sentence, in any language.

use fluent_syntax::ast::Entry;
use newel_engine::catalogue::Catalogue;
use newel_engine::monitor::Notice;
use newel_engine::reason::ReasonCode;
use newel_engine::review::FINDING_CODES;
use newel_engine::rules::RulePack;
use std::collections::BTreeSet;
use std::path::Path;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let locales = Path::new("../../locales");
    println!("cargo::rerun-if-changed={}", locales.display());
    let catalogue = Catalogue::built_in()?;
    let rules = RulePack::built_in()?;
    let mut wanted: Vec<String> = Vec::new();
    wanted.extend(ReasonCode::ALL.iter().map(|c| format!("reason-{}", c.slug())));
    wanted.extend(FINDING_CODES.iter().map(|c| format!("desk-{c}")));
    wanted.extend(Notice::ALL.iter().map(|n| format!("watch-{}", n.slug())));
    wanted.extend(rules.symptoms().iter().map(|k| format!("symptom-{}", k.id)));
    wanted.extend(rules.conditions().iter().map(|c| format!("condition-{}", c.id)));
    wanted.extend(catalogue.ladders.iter().map(|l| format!("ladder-{}", l.id)));
    for place in catalogue.places() {
        let id = format!("variant-{}", place.variant.id);
        wanted.extend(["setup", "breath"].iter().map(|a| format!("{id}.{a}")));
        wanted.extend((1..=place.variant.cues).map(|n| format!("{id}.cue{n}")));
        wanted.push(id);
    }
    for language in std::fs::read_dir(locales)? {
        let language = language?.path();
        let mut found = BTreeSet::new();
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
    }
    Ok(())
}
