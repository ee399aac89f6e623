//! The sentences, from the same Fluent files as the screens, for the command line and for errors.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use newel_engine::catalogue::{OwnCatalogue, is_own};
use newel_engine::reason::{Fact, Reason};
use newel_engine::revision::Change;
use std::collections::BTreeMap;
use std::sync::{Arc, OnceLock};

macro_rules! files {
    ($language:literal) => {
        files!($language: "catalogue" "symptoms" "conditions" "reasons" "errors" "files" "desk" "screens" "watch" "rules"
            "safety" "train" "words" "print" "advice")
    };
    ($language:literal: $($name:literal)+) => {
        &[$(($name, include_str!(concat!("../../../locales/", $language, "/", $name, ".ftl"))),)+]
    };
}

const ENGLISH: &[(&str, &str)] = files!("en");
const SPANISH: &[(&str, &str)] = files!("es");

/// A catalogue of words.
#[derive(Clone)]
pub struct Words {
    bundle: Arc<FluentBundle<FluentResource>>,
    /// What is said in a coach's own words, by the id of the message, or of its attribute behind a dot.
    own: Arc<BTreeMap<String, String>>,
    /// BCP 47 tag of the language.
    pub language: &'static str,
    /// Ids that stand twice or could not be read, for the test of this module.
    pub faults: Vec<String>,
}

impl Words {
    /// English.
    #[must_use]
    pub fn english() -> &'static Self {
        static WORDS: OnceLock<Words> = OnceLock::new();
        WORDS.get_or_init(|| Self::read("en", ENGLISH))
    }

    /// Spanish.
    #[must_use]
    pub fn spanish() -> &'static Self {
        static WORDS: OnceLock<Words> = OnceLock::new();
        WORDS.get_or_init(|| Self::read("es", SPANISH))
    }

    /// The words of a language by its BCP 47 tag; `None` for one that is not here.
    #[must_use]
    pub fn of(language: &str) -> Option<&'static Self> {
        match language {
            "en" => Some(Self::english()),
            "es" => Some(Self::spanish()),
            _ => None,
        }
    }

    fn read(language: &'static str, files: &[(&str, &str)]) -> Self {
        let mut faults = Vec::new();
        let tag = language.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        bundle.set_use_isolating(false);
        for (name, text) in files {
            let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(r, errors)| {
                faults.extend(errors.iter().map(|e| format!("{name}.ftl: {e}")));
                r
            });
            if let Err(errors) = bundle.add_resource(resource) {
                faults.extend(errors.iter().map(|e| format!("{name}.ftl: {e}")));
            }
        }
        Self { bundle: Arc::new(bundle), own: Arc::default(), language, faults }
    }

    /// These words with those of a coach's own ladders and variants, which stand in her language alone.
    #[must_use]
    pub fn knowing(&self, own: &OwnCatalogue) -> Self {
        Self { own: Arc::new(own.sayings()), ..self.clone() }
    }

    /// A message without values.
    #[must_use]
    pub fn say(&self, id: &str) -> Option<String> {
        self.say_with(id, &FluentArgs::new())
    }

    /// A message with values.
    #[must_use]
    pub fn say_with(&self, id: &str, args: &FluentArgs<'_>) -> Option<String> {
        if let Some(own) = self.own.get(id) {
            return Some(own.clone());
        }
        let pattern = self.bundle.get_message(id)?.value()?;
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(args), &mut errors).into_owned();
        Some(text)
    }

    /// An attribute of a message.
    #[must_use]
    pub fn attribute(&self, id: &str, name: &str) -> Option<String> {
        if let Some(own) = self.own.get(&format!("{id}.{name}")) {
            return Some(own.clone());
        }
        let attribute = self.bundle.get_message(id)?.get_attribute(name)?;
        let mut errors = Vec::new();
        Some(self.bundle.format_pattern(attribute.value(), None, &mut errors).into_owned())
    }

    /// The sentence of a reason.
    #[must_use]
    pub fn reason(&self, reason: &Reason) -> String {
        let mut args = FluentArgs::new();
        for (name, fact) in &reason.facts {
            args.set(name.clone(), self.value(fact));
        }
        let said = self.say_with(&format!("reason-{}", reason.code.slug()), &args);
        said.map_or_else(|| reason.code.slug().to_owned(), as_sentence)
    }

    /// The sentence of a finding of the Desk.
    #[must_use]
    pub fn finding(&self, code: &str, facts: &std::collections::BTreeMap<String, Fact>) -> String {
        let mut args = FluentArgs::new();
        for (name, fact) in facts {
            args.set(name.clone(), self.value(fact));
        }
        self.say_with(&format!("desk-{code}"), &args).unwrap_or_else(|| code.to_owned())
    }

    /// The sentence of a change that a revision makes.
    #[must_use]
    pub fn change(&self, change: &Change) -> String {
        let mut args = FluentArgs::new();
        for (name, fact) in &change.facts {
            args.set(name.clone(), self.value(fact));
        }
        self.say_with(&format!("change-{}", change.code), &args)
            .map_or_else(|| change.code.to_owned(), as_sentence)
    }

    /// A name of a variant.
    #[must_use]
    pub fn variant(&self, id: &newel_engine::ids::VariantId) -> String {
        self.say(&format!("variant-{id}")).unwrap_or_else(|| self.unnamed(id.as_str(), "own-unknown-variant"))
    }

    /// An id that has no name here: one of another coach's own is said to be so.
    fn unnamed(&self, id: &str, unknown: &str) -> String {
        let said = if is_own(id) { self.say(unknown) } else { None };
        said.unwrap_or_else(|| id.to_owned())
    }

    /// A name of a ladder.
    #[must_use]
    pub fn ladder(&self, id: &newel_engine::ids::LadderId) -> String {
        self.say(&format!("ladder-{id}")).unwrap_or_else(|| self.unnamed(id.as_str(), "own-unknown-ladder"))
    }

    fn value(&self, fact: &Fact) -> FluentValue<'static> {
        let text = |s: String| FluentValue::from(s);
        match fact {
            Fact::Number(n) => FluentValue::from(*n),
            Fact::Load(load) => text(self.load(load)),
            Fact::Day(day) => text(self.day(*day)),
            Fact::Ladder(id) => text(self.ladder(id)),
            Fact::Variant(id) => text(self.variant(id)),
            Fact::Symptom(id) => text(self.say(&format!("symptom-{id}")).unwrap_or_else(|| id.to_string())),
            Fact::Condition(id) => {
                text(self.say(&format!("condition-{id}")).unwrap_or_else(|| id.to_string()))
            }
            Fact::Words(words) => text(words.clone()),
        }
    }
}

/// A sentence may begin with a value, such as the name of a band: its first letter is written large.
pub(crate) fn as_sentence(text: String) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) if first.is_lowercase() => first.to_uppercase().chain(letters).collect(),
        Some(_) | None => text,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use newel_engine::catalogue::Catalogue;
    use newel_engine::kit::Load;
    use newel_engine::reason::ReasonCode;
    use newel_engine::rules::RulePack;
    use newel_engine::units::Weight;

    #[test]
    fn every_file_can_be_read_and_no_id_stands_twice() {
        assert_eq!(Words::english().faults, Vec::<String>::new());
        assert_eq!(Words::spanish().faults, Vec::<String>::new());
    }

    #[test]
    fn every_error_has_its_sentence_and_its_remedy() {
        let words = Words::english();
        let own = crate::Refusal::ALL.iter().map(|r| format!("app-error-{}", r.code()));
        let store = newel_store::StoreError::CODES.iter().map(|c| format!("store-error-{c}"));
        let read = newel_exchange::ReadError::CODES.iter().map(|c| format!("file-error-{c}"));
        let write = newel_exchange::WriteError::CODES.iter().map(|c| format!("file-error-{c}"));
        let disk = newel_exchange::FileError::CODES.iter().map(|c| format!("file-error-{c}"));
        let lines = newel_store::Refusal::ALL.iter().map(|r| format!("take-in-refused-{}", r.code()));
        let missing: Vec<String> = own
            .chain(store)
            .chain(read)
            .chain(write)
            .chain(disk)
            .chain(lines)
            .filter(|id| words.say(id).is_none_or(|text| text.is_empty()))
            .collect();
        assert_eq!(missing, Vec::<String>::new());
        for refusal in crate::Refusal::ALL {
            let id = format!("app-error-{}", refusal.code());
            assert!(words.attribute(&id, "remedy").is_some(), "{id} says what to do");
        }
    }

    #[test]
    fn a_reason_becomes_a_sentence_with_its_numbers() {
        let rules = RulePack::built_in().unwrap();
        let reason = Reason::new(&rules, ReasonCode::LoadSame, "load.target")
            .with("load", Fact::Load(Load::One { weight: Weight::in_kg(8.0) }))
            .number("last_reps", 9.0)
            .number("last_reserve", 2.0)
            .number("target", 3.0);
        assert_eq!(
            Words::english().reason(&reason),
            "8 kg again: last time 9 reps with 2 left; the aim is 3 left."
        );
    }

    #[test]
    fn loads_are_said_as_they_were_entered() {
        assert_eq!(Words::english().load(&Load::Pair { weight: Weight::lb(12.5) }), "two of 12.5 lb");
        assert_eq!(Words::spanish().load(&Load::Pair { weight: Weight::lb(12.5) }), "dos de 12,5 lb");
        assert_eq!(Words::english().load(&Load::One { weight: Weight::in_kg(10.0) }), "10 kg");
    }

    #[test]
    fn every_variant_has_a_name() {
        let catalogue = Catalogue::built_in().unwrap();
        for place in catalogue.places() {
            let name = Words::english().variant(&place.variant.id);
            assert_ne!(name, place.variant.id.to_string(), "{} has no name", place.variant.id);
        }
    }
}
