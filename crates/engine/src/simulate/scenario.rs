//! Who trains, with what, and what happens around the sets.

use super::client::Habits;
use crate::ids::{BlockId, ProgrammeId};
use crate::kit::{Band, Barbell, Dumbbell, Kit, PlatePair, Thing};
use crate::programme::{Amount, Block, BlockForm, Dose, LevelSpan, PlanSession, Programme, Slot};
use crate::stage::{BirthMode, Stage};
use crate::units::{Newtons, Weight};
use chrono::{Days, NaiveDate};
use uuid::Uuid;

/// What she starts a ladder with.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StartWith {
    /// The coach's load: the one that leaves two reps more than the dose asks for, judged with an error of this SD in
    /// ln load. The SD of the filter's prior is 0.3.
    Coach(f64),
    /// Her own answer to "ten reps with what?", with an error of this SD in ln load.
    Answer(f64),
    /// The lightest that she owns.
    Lightest,
}

/// What happens around the sessions; each a chance before a session.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Between {
    /// The coach sets level and load of a ladder anew; there are two such moments, one before and one after a mark at
    /// home.
    pub coach: f64,
    /// She marks a symptom at home.
    pub home: f64,
    /// She names a symptom at check-in.
    pub check_in: f64,
    /// She trains a second time on the day.
    pub again: f64,
}

/// A scenario. Probabilities are chosen, no source, unless a comment says otherwise.
#[derive(Clone, Debug)]
pub struct Scenario {
    /// Its name on the command line.
    pub name: &'static str,
    /// What it is, in a line.
    pub about: &'static str,
    /// How clients differ and answer.
    pub habits: Habits,
    /// True if they have trained with weights before.
    pub trained: bool,
    /// The slots; each is a block of straight sets.
    pub slots: Vec<Slot>,
    /// Sets of each.
    pub sets: u8,
    /// What she owns.
    pub kit: Kit,
    /// The stage on the first day.
    pub stage: fn(NaiveDate) -> Option<Stage>,
    /// What she starts with.
    pub start: StartWith,
    /// SD between people of ln ten-rep max.
    pub strength_sd: f64,
    /// Chance that a planned session is missed.
    pub missed: f64,
    /// Chance that she stays away for two to six weeks after a session.
    pub away: f64,
    /// Chance of cutting a slot short to its first round.
    pub short: f64,
    /// Chance of a symptom per set at the hardest level that her body takes well; three times as much for each level
    /// above it, a third for each below.
    pub hazard: f64,
    /// What happens around the sessions.
    pub between: Between,
}

fn reps(ladder: &str, low: u16, high: u16, target_rir: u8, levels: Option<LevelSpan>) -> Slot {
    Slot {
        id: ladder.into(),
        ladder: ladder.into(),
        levels,
        dose: Dose { amount: Amount::Reps { low, high }, target_rir, tempo: None },
        by_week: Vec::new(),
    }
}

fn seconds(ladder: &str, low: u16, high: u16) -> Slot {
    Slot {
        dose: Dose { amount: Amount::Seconds { low, high }, target_rir: 3, tempo: None },
        ..reps(ladder, 1, 1, 3, None)
    }
}

fn dumbbells(weights: impl IntoIterator<Item = f64>) -> Kit {
    let dumbbells =
        weights.into_iter().map(|kg| Dumbbell { weight: Weight::in_kg(kg), pair: true }).collect();
    Kit { dumbbells, ..Kit::default() }
}

/// Weights a constant share apart, from 2 kg up to a good 100.
fn evenly(share: f64) -> Kit {
    let mut weights = vec![2.0];
    while let Some(last) = weights.last().copied().filter(|w| *w < 100.0) {
        weights.push(last * (1.0 + share));
    }
    dumbbells(weights)
}

/// What a home may hold: weights as they are sold, two bands, a bench, a bar, a step.
fn home() -> Kit {
    let band = |name: &str, at_100: f64, at_200: f64| Band {
        name: name.into(),
        at_100: Newtons::from_lb(at_100),
        at_200: Newtons::from_lb(at_200),
    };
    Kit {
        barbell: Some(Barbell {
            bar: Weight::in_kg(10.0),
            plates: [1.25, 2.5, 5.0, 10.0].iter().map(|w| PlatePair { weight: Weight::in_kg(*w) }).collect(),
        }),
        bands: vec![band("thin", 4.6, 6.7), band("thick", 10.2, 15.3)],
        things: vec![Thing::Bench, Thing::PullUpBar, Thing::Step, Thing::Straps, Thing::LoopBand],
        ..dumbbells([2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0])
    }
}

fn no_stage(_: NaiveDate) -> Option<Stage> {
    None
}

fn pregnant(on: NaiveDate) -> Option<Stage> {
    Some(Stage::pregnant(on.checked_add_days(Days::new(280 - 14 * 7)), None))
}

fn after_birth(on: NaiveDate) -> Option<Stage> {
    let birth = on.checked_sub_days(Days::new(6 * 7))?;
    Some(Stage::Postpartum { birth, mode: BirthMode::Vaginal, severe_tear: Some(false) })
}

/// All scenarios.
#[must_use]
pub fn scenarios() -> Vec<Scenario> {
    // One level of one ladder whose load is all that is moved: what remains is the loop of load and answer.
    let alone = Some(LevelSpan { low: 1, high: 1 });
    let loop_alone = Scenario {
        name: "loop",
        about: "honest reports, no gain, loads 8 % apart, the coach's start load: the loop alone",
        habits: Habits::honest_without_gain(),
        trained: false,
        slots: vec![reps("chest-press", 8, 12, 3, alone)],
        sets: 3,
        kit: evenly(0.08),
        stage: no_stage,
        start: StartWith::Coach(0.3),
        strength_sd: 0.4,
        missed: 0.0,
        away: 0.0,
        short: 0.0,
        hazard: 0.0,
        between: Between::default(),
    };
    let whole = Scenario {
        name: "home",
        about: "newcomers at home: ten ladders, gains, missed days, weeks away, symptoms",
        habits: Habits::published(false),
        slots: vec![
            reps("squat", 8, 12, 3, None),
            reps("hinge", 8, 12, 3, None),
            reps("bridge", 8, 15, 3, None),
            reps("split-squat", 8, 12, 3, None),
            reps("push-up", 8, 12, 3, None),
            reps("row", 8, 12, 3, None),
            reps("overhead-press", 8, 12, 3, None),
            reps("vertical-pull", 6, 10, 2, None),
            seconds("side-plank", 20, 40),
            reps("dead-bug", 8, 12, 3, None),
        ],
        sets: 2,
        kit: home(),
        start: StartWith::Lightest,
        missed: 0.15,
        away: 0.02,
        short: 0.05,
        hazard: 0.01,
        ..loop_alone.clone()
    };
    vec![
        Scenario {
            name: "newcomers",
            about: "reports a rep too low and newcomers' gains, loads 8 % apart",
            habits: Habits::published(false),
            ..loop_alone.clone()
        },
        Scenario {
            name: "close-start",
            about: "the loop, with the coach's start load within 15 % of the right one two times out of three",
            start: StartWith::Coach(0.15),
            ..loop_alone.clone()
        },
        Scenario {
            name: "newcomers-close-start",
            about: "newcomers, with the coach's start load within 15 % of the right one two times out of three",
            habits: Habits::published(false),
            start: StartWith::Coach(0.15),
            ..loop_alone.clone()
        },
        Scenario {
            name: "habit-known",
            about: "newcomers-close-start, with each one's habit of saying too few taken off: what learning it could bring at best",
            habits: Habits { bias: (0.0, 0.0), ..Habits::published(false) },
            start: StartWith::Coach(0.15),
            ..loop_alone.clone()
        },
        Scenario {
            name: "hips",
            about: "the loop on a hinge, where the engine steps by feel since hips bear more than is held; here they do not",
            slots: vec![reps("hinge", 8, 12, 3, alone)],
            ..loop_alone.clone()
        },
        Scenario {
            name: "trained",
            about: "trained people: reports close to the truth, small gains, target 2",
            habits: Habits::published(true),
            trained: true,
            slots: vec![reps("chest-press", 6, 10, 2, alone)],
            ..loop_alone.clone()
        },
        Scenario {
            name: "asked",
            about: "no start load from the coach: her answer to \"ten reps with what?\"",
            start: StartWith::Answer(0.3),
            ..loop_alone.clone()
        },
        Scenario {
            name: "lightest",
            about: "no start load and no answer: the lightest, and finding sets",
            start: StartWith::Lightest,
            ..loop_alone.clone()
        },
        Scenario {
            name: "coarse",
            about: "newcomers with few loads far apart",
            habits: Habits::published(false),
            kit: dumbbells([4.0, 8.0, 12.0, 20.0, 28.0]),
            ..loop_alone.clone()
        },
        Scenario {
            name: "irregular",
            about: "newcomers who miss a third of the sessions and stay away for weeks",
            habits: Habits::published(false),
            missed: 0.33,
            away: 0.06,
            ..loop_alone.clone()
        },
        Scenario {
            name: "pregnant",
            about: "from week 14 of a pregnancy, the whole session",
            stage: pregnant,
            ..whole.clone()
        },
        Scenario {
            name: "after-birth",
            about: "from week 6 after a birth, the whole session",
            stage: after_birth,
            ..whole.clone()
        },
        Scenario {
            name: "frail",
            about: "the whole session with symptoms five times as often",
            hazard: 0.05,
            ..whole.clone()
        },
        Scenario {
            name: "between",
            about: "frail, with symptoms at home and at check-in, loads that the coach sets, two sessions on a day",
            hazard: 0.05,
            between: Between { coach: 0.15, home: 0.1, check_in: 0.1, again: 0.1 },
            ..whole.clone()
        },
        whole,
        loop_alone,
    ]
}

impl Scenario {
    /// The programme: one session, three times a week.
    #[must_use]
    pub fn programme(&self) -> Programme {
        let blocks = self
            .slots
            .iter()
            .map(|slot| Block {
                id: BlockId::from(format!("block-{}", slot.id)),
                form: BlockForm::StraightSets,
                rounds: self.sets,
                rest_seconds: 90,
                rest_between_seconds: 0,
                by_week: Vec::new(),
                slots: vec![slot.clone()],
            })
            .collect();
        Programme {
            per_week: 3,
            sessions: vec![PlanSession {
                id: "a".into(),
                title: "A".into(),
                minutes: None,
                phase: None,
                blocks,
            }],
            ..crate::writing::blank(ProgrammeId(Uuid::from_u128(7)), self.name)
        }
    }
}
