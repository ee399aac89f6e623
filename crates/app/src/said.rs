//! How loads, doses, days and stages are said, in any language: what `ui/src/lib/words.ts` is to the screens.

use crate::words::Words;
use chrono::{Datelike, NaiveDate};
use fluent_bundle::{FluentArgs, FluentValue};
use newel_engine::kit::{Band, Load};
use newel_engine::programme::{Amount, Tempo};
use newel_engine::proposal::Target;
use newel_engine::record::{Reserve, RestrictionKind, Symptom, SymptomAmount};
use newel_engine::stage::StageOn;
use newel_engine::units::{MassUnit, Weight};
use serde::Serialize;

/// The name that a value has in files, which is the tail of the id of its words.
pub(crate) fn tail(value: &impl Serialize) -> String {
    let json = serde_json::to_value(value).unwrap_or_default();
    json.as_str().unwrap_or_default().to_owned()
}

/// A label as it stands within a line: its first letter is written small.
pub(crate) fn small(text: String) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |c| c.to_lowercase().chain(letters).collect())
}

impl Words {
    /// The sentence of an id with its values; an id without words says itself, as on the screens.
    pub(crate) fn with(&self, id: &str, values: &[(&str, FluentValue<'_>)]) -> String {
        let mut args = FluentArgs::new();
        for (name, value) in values {
            args.set((*name).to_owned(), value.clone());
        }
        self.say_with(id, &args).unwrap_or_else(|| id.to_owned())
    }

    /// The words of an id.
    pub(crate) fn plain(&self, id: &str) -> String {
        self.say(id).unwrap_or_else(|| id.to_owned())
    }

    /// At most two decimals, no trailing zeros, with the language's decimal mark.
    #[must_use]
    pub fn number(&self, value: f64) -> String {
        let rounded = (value * 100.0).round() / 100.0;
        format!("{rounded}").replace('.', &self.plain("print-decimal"))
    }

    /// A weight with its unit.
    #[must_use]
    pub fn weight(&self, weight: Weight) -> String {
        let unit = match weight.unit {
            MassUnit::Kg => "unit-kg",
            MassUnit::Lb => "unit-lb",
        };
        let (value, unit) = (self.number(weight.value), self.plain(unit));
        self.with("load-weight", &[("value", value.into()), ("unit", unit.into())])
    }

    /// A load in full: `12 kg`, `two of 8 kg`, `no load`.
    #[must_use]
    pub fn load(&self, load: &Load) -> String {
        let bands = |list: &[Band]| list.iter().map(|b| b.name.clone()).collect::<Vec<_>>().join(" + ");
        match load {
            Load::Nothing => self.plain("load-nothing"),
            Load::One { weight } => self.weight(*weight),
            Load::Pair { weight } => self.with("load-pair", &[("each", self.weight(*weight).into())]),
            Load::Barbell { bar, plates } if plates.is_empty() => {
                self.with("load-bar-empty", &[("bar", self.weight(*bar).into())])
            }
            Load::Barbell { bar, plates } => {
                let side: Vec<String> = plates.iter().map(|p| self.weight(*p)).collect();
                let values = [("bar", self.weight(*bar).into()), ("side", side.join(" + ").into())];
                self.with("load-bar", &values)
            }
            Load::Bands { bands: list } => self.with("load-bands", &[("bands", bands(list).into())]),
            Load::Assist { bands: list } => self.with("load-assist", &[("bands", bands(list).into())]),
        }
    }

    /// Reps or seconds.
    #[must_use]
    pub fn target(&self, target: Target, per_side: bool) -> String {
        let side = if per_side { "-side" } else { "" };
        let (by, count) = match target {
            Target::Reps(n) => ("reps", n),
            Target::Seconds(n) => ("seconds", n),
        };
        self.with(&format!("target-{by}{side}"), &[("count", count.into())])
    }

    /// A range of reps or seconds.
    #[must_use]
    pub fn amount(&self, amount: Amount) -> String {
        let by = match amount {
            Amount::Reps { .. } => "reps",
            Amount::Seconds { .. } => "seconds",
        };
        let (low, high) = (amount.low(), amount.high());
        let one = if low == high { "-one" } else { "" };
        self.with(&format!("planbook-{by}{one}"), &[("low", low.into()), ("high", high.into())])
    }

    /// Seconds of a rep.
    #[must_use]
    pub fn tempo(&self, tempo: Tempo) -> String {
        let id = if tempo.pause > 0 { "tempo-pause" } else { "tempo" };
        let values = [("down", tempo.down.into()), ("pause", tempo.pause.into()), ("up", tempo.up.into())];
        self.with(id, &values)
    }

    /// Reps left.
    #[must_use]
    pub fn reserve(&self, reserve: Reserve) -> String {
        match reserve {
            Reserve::Exactly(n) => self.with("reserve-exactly", &[("count", n.into())]),
            Reserve::AtLeast(n) => self.with("reserve-at-least", &[("count", n.into())]),
        }
    }

    /// A day with its year.
    #[must_use]
    pub fn day(&self, day: NaiveDate) -> String {
        let month = self.plain(&format!("print-month-{}", day.month()));
        let values = [
            ("day", day.day().to_string().into()),
            ("month", month.into()),
            ("year", day.year().to_string().into()),
        ];
        self.with("print-day", &values)
    }

    /// A stage in words.
    #[must_use]
    pub fn stage(&self, stage: &StageOn) -> String {
        let aged = |id: &str, weeks: u32, days: u32| {
            self.with(id, &[("weeks", weeks.into()), ("days", days.into())])
        };
        match stage {
            StageOn::Pregnant { age: None, .. } => self.plain("stage-pregnant"),
            StageOn::Pregnant { age: Some(age), .. } if age.days > 0 => {
                aged("stage-pregnant-days", age.weeks, age.days)
            }
            StageOn::Pregnant { age: Some(age), .. } => aged("stage-pregnant-weeks", age.weeks, 0),
            StageOn::Postpartum { age, .. } => aged("stage-postpartum", age.weeks, age.days),
            StageOn::AfterLoss { age } => aged("stage-after-loss", age.weeks, age.days),
            StageOn::Neither => self.plain("stage-neither"),
        }
    }

    /// How much of a symptom.
    #[must_use]
    pub fn symptom_amount(&self, amount: SymptomAmount) -> String {
        match amount {
            SymptomAmount::Pain(value) => self.with("amount-pain", &[("value", value.into())]),
            SymptomAmount::Little => self.plain("amount-little"),
            SymptomAmount::Clearly => self.plain("amount-clearly"),
            SymptomAmount::Lot => self.plain("amount-lot"),
        }
    }

    /// A symptom as it was marked: kind, amount, place, her own words.
    #[must_use]
    pub fn symptom(&self, symptom: &Symptom) -> String {
        let kind = symptom.kind.as_ref().map_or("not-sure".to_owned(), ToString::to_string);
        // Amounts and places are labels by themselves; within a line they begin small.
        let parts = [
            Some(self.plain(&format!("symptom-{kind}"))),
            symptom.amount.map(|a| small(self.symptom_amount(a))),
            symptom.place.as_ref().map(|p| small(self.plain(&format!("where-{p}")))),
            symptom.words.as_ref().map(|w| self.with("print-quoted", &[("words", w.clone().into())])),
        ];
        parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
    }

    /// What a restriction rules out.
    #[must_use]
    pub fn restriction(&self, what: &RestrictionKind) -> String {
        use RestrictionKind as R;
        let said =
            |id: &str, values: &[(&str, FluentValue<'_>)]| self.with(&format!("roster-rule-{id}"), values);
        let named = |id: String| FluentValue::from(self.plain(&id));
        match what {
            R::Position { position } => {
                said("position", &[("what", named(format!("position-{}", tail(position))))])
            }
            R::Caution { caution } => {
                said("caution", &[("what", named(format!("caution-{}", tail(caution))))])
            }
            R::Variant { variant } => said("variant", &[("what", self.variant(variant).into())]),
            R::LevelAbove { ladder, level } => {
                let step = u32::from(*level) + 1;
                said("level_above", &[("what", self.ladder(ladder).into()), ("step", step.into())])
            }
            R::AllLoad => said("all_load", &[]),
            R::LoadAbove { most, ladder: Some(ladder) } => {
                let values = [("load", self.weight(*most).into()), ("what", self.ladder(ladder).into())];
                said("load_above-on", &values)
            }
            R::LoadAbove { most, ladder: None } => said("load_above", &[("load", self.weight(*most).into())]),
            R::ReserveBelow { reps } => said("reserve_below", &[("reps", (*reps).into())]),
            R::BreathHolding => said("breath_holding", &[]),
        }
    }
}
