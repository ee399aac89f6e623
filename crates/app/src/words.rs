//! The sentences, from the same Fluent files as the screens, for the command line and for errors.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use newel_engine::kit::Load;
use newel_engine::reason::{Fact, Reason};
use newel_engine::revision::Change;
use newel_engine::units::{MassUnit, Weight};
use std::sync::OnceLock;

macro_rules! files {
    ($language:literal: $($name:literal),+ $(,)?) => {
        &[$(($name, include_str!(concat!("../../../locales/", $language, "/", $name, ".ftl")))),+]
    };
}

const ENGLISH: &[(&str, &str)] = files!("en": "catalogue", "symptoms", "conditions", "reasons", "errors", "files", "desk",
    "screens", "watch", "rules");

const SPANISH: &[(&str, &str)] = files!("es": "catalogue", "symptoms", "conditions", "reasons", "errors", "files", "desk",
    "screens", "watch", "rules");

/// A catalogue of words.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
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

    /// The words of a language by its tag; English for one that there are none of.
    #[must_use]
    pub fn of(language: &str) -> &'static Self {
        static WORDS: OnceLock<Words> = OnceLock::new();
        if language == "es" { WORDS.get_or_init(|| Self::read("es", SPANISH)) } else { Self::english() }
    }

    fn read(language: &str, files: &[(&str, &str)]) -> Self {
        let mut faults = Vec::new();
        let language = language.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
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
        Self { bundle, faults }
    }

    /// A message without values.
    #[must_use]
    pub fn say(&self, id: &str) -> Option<String> {
        self.say_with(id, &FluentArgs::new())
    }

    /// A message with values.
    #[must_use]
    pub fn say_with(&self, id: &str, args: &FluentArgs<'_>) -> Option<String> {
        let pattern = self.bundle.get_message(id)?.value()?;
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(args), &mut errors).into_owned();
        Some(text)
    }

    /// An attribute of a message.
    #[must_use]
    pub fn attribute(&self, id: &str, name: &str) -> Option<String> {
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
        self.say(&format!("variant-{id}")).unwrap_or_else(|| id.to_string())
    }

    /// A name of a ladder.
    #[must_use]
    pub fn ladder(&self, id: &newel_engine::ids::LadderId) -> String {
        self.say(&format!("ladder-{id}")).unwrap_or_else(|| id.to_string())
    }

    fn value(&self, fact: &Fact) -> FluentValue<'static> {
        let text = |s: String| FluentValue::from(s);
        match fact {
            Fact::Number(n) => FluentValue::from(*n),
            Fact::Load(load) => text(load_text(load)),
            Fact::Day(day) => text(day.format("%-d %B %Y").to_string()),
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

/// A number without a tail of zeros.
fn plain(value: f64) -> String {
    let rounded = (value * 100.0).round() / 100.0;
    format!("{rounded}")
}

fn weight_text(weight: Weight) -> String {
    let unit = match weight.unit {
        MassUnit::Kg => "kg",
        MassUnit::Lb => "lb",
    };
    format!("{} {unit}", plain(weight.value))
}

/// A load as it is said: "12 kg", "2 x 8 kg", "bar 15 kg + 2 x 2.5 kg", "grey band".
#[must_use]
pub fn load_text(load: &Load) -> String {
    let bands = |list: &[newel_engine::kit::Band]| {
        list.iter().map(|b| b.name.clone()).collect::<Vec<_>>().join(" + ")
    };
    match load {
        Load::Nothing => "no load".to_owned(),
        Load::One { weight } => weight_text(*weight),
        Load::Pair { weight } => format!("2 × {}", weight_text(*weight)),
        Load::Barbell { bar, plates } if plates.is_empty() => format!("bar, {}", weight_text(*bar)),
        Load::Barbell { bar, plates } => {
            let each: Vec<String> = plates.iter().map(|p| weight_text(*p)).collect();
            format!("bar {} + {} each side", weight_text(*bar), each.join(" + "))
        }
        Load::Bands { bands: list } => bands(list),
        Load::Assist { bands: list } => format!("helped by {}", bands(list)),
    }
}

/// A sentence may begin with a value, such as the name of a band: its first letter is written large.
fn as_sentence(text: String) -> String {
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
    use newel_engine::reason::ReasonCode;
    use newel_engine::rules::RulePack;

    #[test]
    fn every_file_can_be_read_and_no_id_stands_twice() {
        assert_eq!(Words::english().faults, Vec::<String>::new());
        assert_eq!(Words::of("es").faults, Vec::<String>::new());
        assert_ne!(Words::of("es").say("ladder-squat"), Words::english().say("ladder-squat"));
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
        assert_eq!(load_text(&Load::Pair { weight: Weight::lb(12.5) }), "2 × 12.5 lb");
        assert_eq!(load_text(&Load::One { weight: Weight::in_kg(10.0) }), "10 kg");
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
