//! What is kept of clients at a glance says what working them out anew says, whatever has happened in between; and every
//! part of what it was made from makes it be worked out anew.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, Days, FixedOffset, TimeDelta};
use newel_app::newel::Books;
use newel_app::views::{ClientForm, GiveTo, IntakeForm, Role};
use newel_app::{Newel, Profile};
use newel_engine::ids::PersonId;
use newel_engine::record::RestrictionKind;
use newel_engine::stage::Stage;
use newel_engine::writing::Edit;
use newel_store::{KeptGlance, Store};
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

fn now() -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-03-02T08:00:00+01:00").unwrap()
}

fn at(minutes: i64) -> DateTime<FixedOffset> {
    now() + TimeDelta::minutes(minutes)
}

/// The logs of the demonstration.
fn logs() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-data/logs");
    let mut logs: Vec<_> = std::fs::read_dir(folder).unwrap().map(|f| f.unwrap().path()).collect();
    logs.sort();
    assert!(logs.len() > 5);
    logs
}

struct Practice {
    folder: tempfile::TempDir,
    books: Arc<Books>,
    coach: Option<Profile>,
}

impl Practice {
    fn new() -> Self {
        let (folder, books) = (tempfile::tempdir().unwrap(), Books::built_in().unwrap());
        let mut practice = Self { folder, books, coach: None };
        for log in logs() {
            let report = practice.coach().take_in_path(&log, now());
            assert!(report.refused.is_empty() && report.new > 0, "{report:?}");
        }
        practice
    }

    fn path(&self) -> PathBuf {
        self.folder.path().join("coach.db")
    }

    fn coach(&mut self) -> &mut Profile {
        let path = self.path();
        let books = &self.books;
        self.coach.get_or_insert_with(|| Profile::open_or_make_coach(&path, books, now()).unwrap())
    }

    /// As at the next start of the program.
    fn restart(&mut self) {
        self.coach = None;
    }

    fn people(&mut self) -> Vec<PersonId> {
        self.coach().roster_view(now()).unwrap().clients.iter().map(|c| c.person).collect()
    }

    /// How many were worked out anew for Desk and Roster.
    fn made(&mut self, now: DateTime<FixedOffset>) -> usize {
        let coach = self.coach();
        let before = coach.glances_made();
        seen(coach, now);
        coach.glances_made() - before
    }
}

fn seen(coach: &mut Profile, now: DateTime<FixedOffset>) -> Value {
    let desk = coach.desk_view(now).unwrap();
    let roster = coach.roster_view(now).unwrap();
    assert_eq!((desk.unread, roster.unread), (0, 0), "nobody who is not in a hurry gets a part");
    json!([desk, roster])
}

/// What both screens say to somebody who trusts nothing that was kept.
fn anew(practice: &Practice, now: DateTime<FixedOffset>) -> Value {
    let mut fresh = Profile::open_to_read(&practice.path(), &practice.books).unwrap();
    fresh.forget_glances().unwrap();
    seen(&mut fresh, now)
}

/// A row of numbers that is the same at each run.
struct Draw(u64);

impl Draw {
    fn below(&mut self, n: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % n
    }
}

#[test]
fn what_was_kept_says_what_working_out_anew_says_after_anything_that_happens() {
    let mut practice = Practice::new();
    let people = practice.people();
    let from = practice.coach().roster_view(now()).unwrap().programmes[0].id;
    let own = practice.coach().programme_new(now(), "Kitchen", Some(from)).unwrap();
    let files = practice.folder.path().join("files");
    let mut draw = Draw(7);
    let mut clock = now();
    for nth in 0..24 {
        clock += if draw.below(4) == 0 { TimeDelta::days(1) } else { TimeDelta::minutes(7) };
        let person = people[draw.below(people.len() as u64) as usize];
        let coach = practice.coach();
        match draw.below(8) {
            0 => drop(coach.note_write(clock, person, "well done").unwrap()),
            1 => {
                let ladder = coach.roster_view(clock).unwrap().ladders[nth].ladder.clone();
                let what = RestrictionKind::LevelAbove { ladder, level: 0 };
                drop(coach.restriction_add(clock, person, what, None, "not this week").unwrap());
            }
            2 => {
                let stage = Some(Stage::pregnant(Some(clock.date_naive() + Days::new(90)), None));
                let form =
                    ClientForm { name: format!("Her {nth}"), stage, intake: Some(IntakeForm::default()) };
                drop(coach.client_save(clock, person, form).unwrap());
            }
            3 => drop(coach.programme_give(clock, person, if nth % 2 == 0 { own } else { from }).unwrap()),
            4 => {
                let begins = Some(clock.date_naive() + Days::new(draw.below(3)));
                drop(coach.programme_give_to(clock, own, &[GiveTo { person, begins }]).unwrap());
            }
            5 => drop(coach.programme_edit(clock, own, &Edit::Title { title: format!("Kitchen {nth}") })),
            6 => drop(coach.plan_write(&files, None, clock, person)),
            _ => drop(coach.clients_archive(clock, vec![person], draw.below(2) == 0).unwrap()),
        }
        if draw.below(3) == 0 {
            practice.restart();
        }
        let kept = seen(practice.coach(), clock);
        assert_eq!(kept, anew(&practice, clock), "after change {nth}");
        practice.restart();
        assert_eq!(seen(practice.coach(), clock), kept, "at the next start after change {nth}");
        assert_eq!(practice.coach().glances_made(), 0, "nothing was worked out at the next start");
    }
}

#[test]
fn each_part_of_what_it_was_made_from_makes_it_be_made_anew() {
    let mut practice = Practice::new();
    let people = practice.people();
    let all = people.len();
    let (one, two) = (people[0], people[1]);
    assert_eq!(practice.coach().glances_made(), all, "at the first look");
    assert_eq!(practice.made(now()), 0);
    let from = practice.coach().roster_view(now()).unwrap().programmes[0].id;
    // What holds for her: a record of the coach's, what was given, the day it begins, a file that went out.
    drop(practice.coach().note_write(now(), one, "hello").unwrap());
    assert_eq!(practice.made(now()), 0, "her story has looked already");
    let own = practice.coach().programme_new(now(), "Kitchen", Some(from)).unwrap();
    assert_eq!(practice.made(now()), 0, "given to nobody");
    let before = practice.coach().glances_made();
    drop(practice.coach().programme_give(now(), one, own).unwrap());
    drop(practice.coach().programme_give(now(), two, own).unwrap());
    assert_eq!(practice.coach().glances_made() - before, 2);
    let begins = Some(now().date_naive() + Days::new(3));
    let before = practice.coach().glances_made();
    drop(practice.coach().programme_give_to(now(), own, &[GiveTo { person: one, begins }]).unwrap());
    assert_eq!(practice.coach().glances_made() - before, 1);
    let files = practice.folder.path().join("files");
    drop(practice.coach().plan_write(&files, None, at(1), one).unwrap());
    assert_eq!(practice.made(now()), 1);
    // The draft that two were given.
    drop(practice.coach().programme_edit(now(), own, &Edit::Title { title: "Porch".into() }).unwrap());
    assert_eq!(practice.made(now()), 2);
    // The day is everybody's, and back again too.
    let tomorrow = now() + Days::new(1);
    assert_eq!(practice.made(tomorrow), all);
    assert_eq!(practice.made(now()), all);
    // Who is laid aside is no part of it.
    drop(practice.coach().clients_archive(now(), vec![two], false).unwrap());
    assert_eq!(practice.made(now()), 0);
    // Another program takes something in beside this one, which has read her already.
    let path = practice.path();
    let mut beside = Profile::open_or_make_coach(&path, &practice.books, now()).unwrap();
    drop(beside.note_write(at(5), one, "from beside").unwrap());
    beside.forget_glances().unwrap();
    drop(beside);
    assert_eq!(practice.made(now()), 1);
    assert_eq!(seen(practice.coach(), now()), anew(&practice, now()));
    // A device name of its own, as after a backup was restored.
    practice.restart();
    Store::open(&path).unwrap().renew_device().unwrap();
    assert_eq!(practice.made(now()), all);
}

#[test]
fn a_kept_value_under_another_key_or_of_another_shape_is_not_shown() {
    let mut practice = Practice::new();
    let people = practice.people();
    let right = seen(practice.coach(), now());
    practice.restart();
    let mut store = Store::open(practice.path()).unwrap();
    let kept = store.glances().unwrap();
    let by = |person: PersonId| kept.iter().find(|k| k.person == person).unwrap().clone();
    let (one, two, three) = (by(people[0]), by(people[1]), by(people[2]));
    // The value of another under a key that is not hers, and no value at all under the right one.
    let wrong = [
        KeptGlance { value: two.value.clone(), key: two.key.clone(), ..one },
        KeptGlance { value: "{\"entry\":1}".into(), ..three },
    ];
    let made: Vec<_> = wrong.into_iter().map(|k| (k.clone(), store.count(k.person).unwrap())).collect();
    store.keep_glances(&made).unwrap();
    drop(store);
    assert_eq!(seen(practice.coach(), now()), right);
    assert_eq!(practice.coach().glances_made(), 2);
}

#[test]
fn a_page_is_answered_in_pieces_until_all_are_there_and_a_small_practice_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let mut newel = Newel::open(folder.path().to_owned()).unwrap();
    newel.profile_new("Ines", Role::Coach, now()).unwrap();
    let form = |n: usize| ClientForm { name: format!("Client {n:02}"), stage: None, intake: None };
    for nth in 0..12 {
        drop(newel.profile().unwrap().client_add(now(), form(nth)).unwrap());
    }
    newel.answer_in_pieces(Duration::ZERO);
    newel.profile().unwrap().forget_glances().unwrap();
    assert_eq!(newel.profile().unwrap().desk_view(now()).unwrap().unread, 0, "twelve are whole");
    for nth in 12..30 {
        drop(newel.profile().unwrap().client_add(now(), form(nth)).unwrap());
    }
    let whole = json!(newel.profile().unwrap().roster_view(now()).unwrap());
    newel.profile().unwrap().forget_glances().unwrap();
    let mut left = Vec::new();
    let last = loop {
        let roster = newel.profile().unwrap().roster_view(now()).unwrap();
        assert_eq!(roster.clients.len() + roster.unread as usize, 30, "who is not there is counted");
        left.push(roster.unread);
        if roster.unread == 0 {
            break roster;
        }
    };
    assert_eq!(left, [18, 6, 0]);
    assert_eq!(json!(last), whole, "the pieces are the whole");
    // One that was looked at already is not worked out again for the others' sake.
    let tomorrow = now() + Days::new(1);
    let newest = whole["clients"][29]["person"].clone();
    let person: PersonId = serde_json::from_value(newest).unwrap();
    let coach = newel.profile().unwrap();
    coach.forget_glances().unwrap();
    drop(coach.client_view(tomorrow, person).unwrap());
    let desk = coach.desk_view(tomorrow).unwrap();
    assert_eq!(desk.unread, 17, "one was looked at, twelve more are worked out");
}
