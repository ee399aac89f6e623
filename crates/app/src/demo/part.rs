//! What an invented client is made of: her body, her kit, her weeks, and what happens to her.

use chrono::NaiveDate;
use newel_engine::ids::{ConditionId, VariantId};
use newel_engine::kit::{Band, Barbell, Dumbbell, Kit, Load, PlatePair, Thing};
use newel_engine::programme::Start;
use newel_engine::record::{Baseline, HoldAnswer, RestrictionKind, SymptomAmount};
use newel_engine::stage::Stage;
use newel_engine::units::{Newtons, Weight};

/// One invented client. Days are counted back from the day of the demonstration.
pub(super) struct Part {
    /// Her folder and file name.
    pub slug: &'static str,
    /// A line about her, for the page beside the files.
    pub line: &'static str,
    /// Her invented name.
    pub name: &'static str,
    /// Whom she calls.
    pub clinic: &'static str,
    /// Her stage when she began, from the day of the demonstration.
    pub stage: fn(NaiveDate) -> Stage,
    pub conditions: Vec<ConditionId>,
    pub baselines: Vec<Baseline>,
    pub trained: bool,
    /// The title of her programme.
    pub programme: &'static str,
    /// Her body mass in kg, and whether she entered it.
    pub body_kg: (f64, bool),
    /// How much stronger than the table she is.
    pub strength: f64,
    /// Her gain as a share of a newcomer's.
    pub gain: f64,
    pub kit: Kit,
    /// Days of the week (0 to 6 from the day she began) on which she trains.
    pub week: &'static [i64],
    /// Chance that she misses one.
    pub missed: f64,
    /// Stretches without training, both ends included, the earlier day first (the greater number).
    pub away: &'static [(i64, i64)],
    /// Her last session.
    pub last: i64,
    /// Answers to "ten reps with what?" before her first session.
    pub ten_reps: Vec<(VariantId, Load)>,
    pub felt: Vec<Felt>,
    /// Notes at the end of the first session on or after a day.
    pub notes: &'static [(i64, &'static str)],
    /// What the coach does in the evening of a day.
    pub deeds: Vec<(i64, Vec<Deed>)>,
    /// Whether the question about her last session has been answered.
    pub answers_last: bool,
}

/// Something she feels, in the first session on or after a day in which she trains a ladder that far.
pub(super) struct Felt {
    pub from: i64,
    /// The ladder; any if empty.
    pub ladder: &'static str,
    /// The round, from 0.
    pub round: u8,
    pub kind: &'static str,
    pub amount: Option<SymptomAmount>,
    pub place: Option<&'static str>,
    pub words: Option<&'static str>,
    /// Marked while resting after the set.
    pub at_rest: bool,
    pub morning: Morning,
}

/// What she says of the next morning.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Morning {
    Settled,
    Unanswered,
}

/// What the coach does.
pub(super) enum Deed {
    Note(&'static str),
    Start(Start, &'static str),
    Restrict(RestrictionKind, &'static str),
    Clear(&'static str, &'static str),
    Answer(HoldAnswer, &'static str),
    Stage(fn(NaiveDate) -> Stage),
    /// She says that training is taken up again, and so does the client when the plan reaches her.
    TakeUp(&'static str),
}

impl Felt {
    /// A mark in mid-set, settled by next morning.
    pub(super) fn at(
        from: i64,
        ladder: &'static str,
        round: u8,
        kind: &'static str,
        amount: Option<SymptomAmount>,
    ) -> Self {
        let (place, words) = (None, None);
        Self { from, ladder, round, kind, amount, place, words, at_rest: false, morning: Morning::Settled }
    }

    pub(super) fn place(self, place: &'static str) -> Self {
        Self { place: Some(place), ..self }
    }

    pub(super) fn words(self, words: &'static str) -> Self {
        Self { words: Some(words), ..self }
    }

    pub(super) fn at_rest(self) -> Self {
        Self { at_rest: true, ..self }
    }

    pub(super) fn morning(self, morning: Morning) -> Self {
        Self { morning, ..self }
    }
}

/// Where the coach lets her start.
pub(super) fn start(ladder: &str, level: u8, variant: Option<&str>, load: Option<Load>) -> Start {
    Start { ladder: ladder.into(), level: Some(level), variant: variant.map(Into::into), load }
}

pub(super) fn one(kg: f64) -> Load {
    Load::One { weight: Weight::in_kg(kg) }
}

pub(super) fn pair(kg: f64) -> Load {
    Load::Pair { weight: Weight::in_kg(kg) }
}

fn weights(list: &[f64], pair: bool) -> Vec<Dumbbell> {
    list.iter().map(|kg| Dumbbell { weight: Weight::in_kg(*kg), pair }).collect()
}

/// Bands by one maker's table of forces at 100 % and 200 % stretch, in lb (SOURCES 8 [s]).
fn bands(names: &[&str]) -> Vec<Band> {
    const TABLE: [(&str, f64, f64); 4] = [
        ("light band", 3.7, 5.5),
        ("medium band", 5.8, 8.6),
        ("firm band", 7.3, 10.2),
        ("strong band", 10.2, 15.3),
    ];
    TABLE
        .iter()
        .filter(|(name, ..)| names.contains(name))
        .map(|(name, at_100, at_200)| Band {
            name: (*name).to_owned(),
            at_100: Newtons::from_lb(*at_100),
            at_200: Newtons::from_lb(*at_200),
        })
        .collect()
}

/// A kit in kg, without a barbell.
pub(super) fn kit(singles: &[f64], pairs: &[f64], band_names: &[&str], things: &[Thing]) -> Kit {
    let dumbbells = [weights(singles, false), weights(pairs, true)].concat();
    Kit { dumbbells, barbell: None, bands: bands(band_names), things: things.to_vec() }
}

pub(super) fn with_pair_in_lb(kit: Kit, pounds: f64) -> Kit {
    let mut dumbbells = kit.dumbbells;
    dumbbells.push(Dumbbell { weight: Weight::lb(pounds), pair: true });
    Kit { dumbbells, ..kit }
}

pub(super) fn with_barbell(kit: Kit, bar_kg: f64, plates_kg: &[f64]) -> Kit {
    let plates = plates_kg.iter().map(|kg| PlatePair { weight: Weight::in_kg(*kg) }).collect();
    Kit { barbell: Some(Barbell { bar: Weight::in_kg(bar_kg), plates }), ..kit }
}
