//! The sentences, from the same Fluent files as the screens, for the command line and for errors.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use newel_engine::kit::Load;
use newel_engine::reason::{Fact, Reason};
use newel_engine::units::{MassUnit, Weight};
use std::sync::OnceLock;

const FILES: &[(&str, &str)] = &[
    ("catalogue", include_str!("../../../locales/en/catalogue.ftl")),
    ("symptoms", include_str!("../../../locales/en/symptoms.ftl")),
    ("reasons", include_str!("../../../locales/en/reasons.ftl")),
    ("errors", include_str!("../../../locales/en/errors.ftl")),
    ("files", include_str!("../../../locales/en/files.ftl")),
    ("desk", include_str!("../../../locales/en/desk.ftl")),
];

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
        static ENGLISH: OnceLock<Words> = OnceLock::new();
        ENGLISH.get_or_init(|| Self::read("en", FILES))
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
        self.say_with(&format!("reason-{}", reason.code.slug()), &args)
            .unwrap_or_else(|| reason.code.slug().to_owned())
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
