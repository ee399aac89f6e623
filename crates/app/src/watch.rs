//! What there is to watch of one client, from a plan file and a log file, and the names of what is
//! counted.

use crate::error::AppError;
use crate::newel::Books;
use crate::outside::known_from;
use crate::profile::Known;
use crate::said::tail;
use crate::words::Words;
use chrono::NaiveDate;
use fluent_bundle::FluentArgs;
use newel_engine::catalogue::{Catalogue, Pattern, Position};
use newel_engine::ids::GroupId;
use newel_engine::monitor::{LoadBand, Notice, Watch, Watched};

use std::path::Path;

/// What there is to watch, and of whom.
#[derive(Clone, Debug)]
pub struct Watching {
    /// Whose.
    pub name: String,
    /// Title of the programme in force, if there is one.
    pub programme: Option<String>,
    /// All of it.
    pub watch: Watch,
    /// The books, with what is the coach's own.
    pub books: Books,
}

/// What there is to watch on a day, from a plan file and a log file of the same person.
///
/// # Errors
/// When a file cannot be used, or the two are not about the same person.
pub fn watch(books: &Books, plan: &Path, log: &Path, on: NaiveDate) -> Result<Watching, AppError> {
    let (name, known) = known_from(books, plan, log)?;
    Ok(Watching {
        name,
        programme: known.on(on).plan.as_ref().map(|p| p.programme.title.clone()),
        watch: watch_of(books, &known, on),
        books: known.books,
    })
}

/// What there is to watch of what is known, on a day. Nothing that is needed for it asks for a plan.
#[must_use]
pub fn watch_of(books: &Books, known: &Known, on: NaiveDate) -> Watch {
    let known = known.on(on);
    let plan = known.plan.as_ref();
    let state = known.state(on);
    Watch::of(&Watched {
        history: known.history(),
        state: &state,
        catalogue: &known.books.catalogue,
        rules: &books.rules,
        per_week: plan.map(|p| p.programme.per_week),
        day: on,
    })
}

impl Words {
    /// A sentence or a label of watching, `watch-<id>`, with its values.
    #[must_use]
    pub fn watching(&self, id: &str, values: &[(&str, &str)]) -> String {
        let mut args = FluentArgs::new();
        for (name, value) in values {
            args.set((*name).to_owned(), (*value).to_owned());
        }
        let id = format!("watch-{id}");
        self.say_with(&id, &args).unwrap_or(id)
    }

    /// What has to be read with a result.
    #[must_use]
    pub fn notice(&self, notice: Notice) -> String {
        self.watching(notice.slug(), &[])
    }

    /// A name of a pattern.
    #[must_use]
    pub fn pattern(&self, pattern: Pattern) -> String {
        self.named(&format!("pattern-{}", tail(&pattern)))
    }

    /// A name of a position.
    #[must_use]
    pub fn position(&self, position: Position) -> String {
        self.named(&format!("position-{}", tail(&position)))
    }

    /// A name of a third of somebody's loads.
    #[must_use]
    pub fn load_band(&self, band: LoadBand) -> String {
        self.named(&format!("load-band-{}", tail(&band)))
    }

    /// A name of a strength group: its variant, or the ladder with the first and the last of several.
    #[must_use]
    pub fn group(&self, catalogue: &Catalogue, group: &GroupId) -> String {
        let of_group = || catalogue.places().filter(|p| p.variant.group.as_ref() == Some(group));
        let (Some(first), Some(last)) = (of_group().next(), of_group().last()) else {
            return group.to_string();
        };
        let (low, high) = (self.variant(&first.variant.id), self.variant(&last.variant.id));
        if first.variant.id == last.variant.id {
            return low;
        }
        let ladder = self.ladder(&first.ladder.id);
        self.watching("of-group", &[("ladder", &ladder), ("low", &low), ("high", &high)])
    }

    fn named(&self, id: &str) -> String {
        self.say(id).unwrap_or_else(|| id.to_owned())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn everything_that_is_counted_has_a_name() {
        let catalogue = Catalogue::built_in().unwrap();
        let words = Words::english();
        let mut names: Vec<String> = Vec::new();
        for place in catalogue.places() {
            names.push(words.pattern(place.ladder.pattern));
            names.push(words.position(place.variant.position));
        }
        names.extend(catalogue.groups.iter().map(|g| words.group(&catalogue, &g.id)));
        names.extend([LoadBand::Light, LoadBand::Middle, LoadBand::Heavy].map(|b| words.load_band(b)));
        names.extend(Notice::ALL.iter().map(|n| words.notice(*n)));
        let beginnings = ["pattern-", "position-", "load-band-", "watch-"];
        let without: Vec<&String> =
            names.iter().filter(|n| n.is_empty() || beginnings.iter().any(|b| n.starts_with(b))).collect();
        assert_eq!(without, Vec::<&String>::new(), "an id where a name should be");
        for group in &catalogue.groups {
            assert_ne!(words.group(&catalogue, &group.id), group.id.to_string());
        }
    }
}
