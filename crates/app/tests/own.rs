//! The coach's own ladders and variants: made, given, trained on the client's device, sent back, read and replayed.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, Duration, FixedOffset};
use newel_app::print::{PrintForm, PrintWhat};
use newel_app::views::{
    CheckInForm, ChosenFile, ClientForm, FinishForm, IntakeForm, LadderWordsView, OverrideForm, OwnForm,
    OwnLadderForm, OwnPlace, PlanStanding, Role, SetForm, TrainState, WordsForm,
};
use newel_app::{AppError, Books, Newel, Profile, Refusal, Replayed};
use newel_engine::catalogue::{
    Catalogue, Caution, Loading, OwnVariant, Pattern, Position, ReadyMark, is_own,
};
use newel_engine::ids::{LadderId, PersonId, ProgrammeId, VariantId};
use newel_engine::kit::{Dumbbell, Kit};
use newel_engine::programme::{BlockPart, Start};
use newel_engine::record::{Readiness, Reserve};
use newel_engine::rules::RulePack;
use newel_engine::units::Weight;
use newel_engine::writing::Edit;
use std::collections::BTreeMap;
use std::sync::Arc;

fn at(day: u32, hour: u32) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339(&format!("2026-03-{day:02}T{hour:02}:00:00+01:00")).unwrap()
}

fn denied() -> BTreeMap<Caution, bool> {
    Caution::ALL.into_iter().map(|c| (c, false)).collect()
}

/// A move as the form has it: standing, nothing held, twelve reps.
fn form(place: OwnPlace, name: &str) -> OwnForm {
    OwnForm {
        id: None,
        place,
        like: None,
        name: name.to_owned(),
        position: Position::Standing,
        needs: Vec::new(),
        loading: Loading::Body,
        per_side: false,
        cautions: denied(),
        ready: ReadyMark::Reps { reps: 12 },
        usual_start: None,
        setup: "Feet under the hips".to_owned(),
        breath: String::new(),
        cues: vec![" Slow down ".to_owned(), String::new()],
        slips: Vec::new(),
    }
}

fn at_level(ladder: &str, level: u8) -> OwnPlace {
    OwnPlace::At { ladder: ladder.into(), level }
}

fn new_ladder(name: &str) -> OwnPlace {
    OwnPlace::NewLadder { name: name.to_owned(), pattern: Pattern::SingleLeg }
}

fn variant(view: &[LadderWordsView], name: &str) -> OwnVariant {
    let all = view.iter().flat_map(|l| &l.levels).flatten().filter_map(|v| v.yours.clone());
    all.filter(|v| !v.retired).find(|v| v.name == name).unwrap()
}

struct Home {
    coach: Newel,
    client: Newel,
    person: PersonId,
    programme: ProgrammeId,
    ladder: LadderId,
    copy: VariantId,
    folders: (tempfile::TempDir, tempfile::TempDir),
}

/// A coach with a ladder from nothing and a variant from a copy, and a client whose programme has both.
fn home() -> Home {
    let folders = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
    let mut coach = Newel::open(folders.0.path().to_owned()).unwrap();
    coach.profile_new("Ines", Role::Coach, at(2, 7)).unwrap();
    let profile = coach.profile().unwrap();
    let begun = profile.own_save(at(2, 7), form(new_ladder("Kitchen stairs"), "Stair walk")).unwrap();
    let first = variant(&begun, "Stair walk");
    let above = OwnForm {
        loading: Loading::One,
        cautions: BTreeMap::from([(Caution::Midline, false)]),
        ..form(OwnPlace::At { ladder: first.ladder.clone(), level: 1 }, "Stair walk, one weight")
    };
    profile.own_save(at(2, 7), above).unwrap();
    let like = Some(VariantId::from("hinge-one-dumbbell"));
    let copied = OwnForm {
        like,
        loading: Loading::One,
        ready: ReadyMark::Load { kg: 12.0 },
        ..form(at_level("hinge", 1), "Kettlebell hinge")
    };
    let view = profile.own_save(at(2, 7), copied).unwrap();
    let copy = variant(&view, "Kettlebell hinge").id;

    let programme = profile.programme_new(at(2, 7), "Mine", None).unwrap();
    profile
        .programme_edit(at(2, 7), programme, &Edit::AddSession { title: "Monday".into(), phase: None })
        .unwrap();
    let book = profile.planbook_view().unwrap();
    let session = book.programmes[0].programme.sessions[0].id.clone();
    for ladders in [vec![first.ladder.clone()], vec!["hinge".into()]] {
        let block = Edit::AddBlock { session: session.clone(), ladders, part: BlockPart::Work };
        profile.programme_edit(at(2, 7), programme, &block).unwrap();
    }
    let she = ClientForm { name: "Mara".into(), stage: None, intake: Some(IntakeForm::default()) };
    let person = profile.client_add(at(2, 7), she).unwrap().clients[0].person;
    profile.programme_give(at(2, 7), person, programme).unwrap();
    let start = Start { ladder: "hinge".into(), level: Some(1), variant: Some(copy.clone()), load: None };
    profile.override_write(at(2, 7), person, OverrideForm { start, note: "Hers".into() }).unwrap();
    let client = Newel::open(folders.1.path().to_owned()).unwrap();
    Home { coach, client, person, programme, ladder: first.ladder, copy, folders }
}

impl Home {
    fn desk(&mut self) -> &mut Profile {
        self.coach.profile().unwrap()
    }

    fn plan(&mut self, now: DateTime<FixedOffset>) -> String {
        let (folder, person) = (self.coach.out_folder(), self.person);
        let written = self.desk().plan_write(&folder, None, now, person).unwrap();
        std::fs::read_to_string(written.path).unwrap()
    }

    fn takes_in_plan(&mut self, now: DateTime<FixedOffset>) -> String {
        let text = self.plan(now);
        if self.client.profile().is_ok() {
            let file = ChosenFile { name: "plan".into(), text: text.clone() };
            let report = self.client.profile().unwrap().take_in(&[file], now).files.remove(0);
            assert!(report.refused.is_empty(), "{:?}", report.refused);
        } else {
            self.client.profile_from_plan(&text, now).unwrap();
            let dumbbells = [4.0, 6.0, 8.0].map(|kg| Dumbbell { weight: Weight::in_kg(kg), pair: true });
            let kit = Kit { dumbbells: dumbbells.to_vec(), ..Kit::default() };
            self.client.profile().unwrap().kit_save(now, kit).unwrap();
        }
        text
    }

    /// Trains a whole session as planned; the names of what was trained, as her screens say them.
    fn trains(&mut self, mut now: DateTime<FixedOffset>) -> Vec<String> {
        let client = self.client.profile().unwrap();
        let names = client.own_names();
        let mut view = client.session_begin(now, CheckInForm::of(Readiness::Usual, Vec::new())).unwrap();
        let mut trained = Vec::new();
        let run = loop {
            let TrainState::Session(session) = &view.state else { panic!("{:?}", view.state) };
            let Some(w) = &session.work else { break session.run };
            let form = SetForm {
                run: session.run,
                slot: w.slot.clone(),
                round: w.round,
                side: w.side,
                variant: w.variant.clone(),
                load: w.load.clone(),
                done: w.target,
                reserve: w.asks_effort.then_some(Reserve::Exactly(3)),
            };
            let name = names.get(&format!("variant-{}", w.variant)).cloned();
            let name = name.unwrap_or_else(|| w.variant.to_string());
            if !trained.contains(&name) {
                trained.push(name);
            }
            now += Duration::seconds(90);
            view = client.set_log(now, form).unwrap();
        };
        let form = FinishForm { run, effort: Some(4), minutes: Some(30), note: None, stopped_at: None };
        client.session_finish(now, form).unwrap();
        trained
    }

    fn log_comes_back(&mut self, now: DateTime<FixedOffset>) {
        let folder = self.client.out_folder();
        let written = self.client.profile().unwrap().log_write(&folder, None, now).unwrap();
        let text = std::fs::read_to_string(written.path).unwrap();
        let file = ChosenFile { name: "log".into(), text };
        let report = self.desk().take_in(&[file], now).files.remove(0);
        assert!(report.refused.is_empty(), "{:?}", report.refused);
    }

    fn all_same(&mut self, how_many: usize) {
        let replayed = self.desk().replay_all().unwrap();
        assert_eq!(replayed.len(), how_many);
        assert!(replayed.iter().all(|e| e.replayed == Replayed::Same), "{replayed:?}");
    }
}

#[test]
fn what_she_made_is_trained_sent_back_read_and_replayed() {
    let mut home = home();
    let text = home.takes_in_plan(at(2, 8));
    assert!(text.contains("\"version\":4") && text.contains("Kitchen stairs"));
    assert_eq!(home.trains(at(2, 9)), ["Stair walk", "Kettlebell hinge"]);
    home.log_comes_back(at(2, 12));
    home.all_same(1);

    // What the coach reads: her own names, on the screens and on paper.
    let (person, copy, ladder) = (home.person, home.copy.clone(), home.ladder.clone());
    let seen = home.desk().client_view(at(2, 12), person).unwrap();
    assert!(seen.sessions[0].sets.iter().any(|s| s.variant == copy), "her sets are told");
    assert!(seen.ladders.iter().any(|l| l.ladder == ladder && l.variant.is_some()), "and where she stands");
    let next = seen.next.unwrap();
    assert_eq!(next.slots.len(), 2);
    let rows = PrintForm { what: PrintWhat::Rows { person }, language: "en".into(), us_letter: false };
    let rows = String::from_utf8(home.desk().print(at(2, 12), &rows).unwrap().bytes).unwrap();
    assert!(rows.contains("Kettlebell hinge") && rows.contains("Kitchen stairs"), "{rows}");
    for what in
        [PrintWhat::HandoutFor { person, session: None }, PrintWhat::Booklet { programme: home.programme }]
    {
        let form = PrintForm { what, language: "es".into(), us_letter: false };
        assert!(home.desk().print(at(2, 12), &form).unwrap().pages > 0, "printed, without a figure of hers");
    }

    // She goes on writing: another name, one put away, one more. What was proposed is replayed as it was.
    let words = home.desk().words_view().unwrap();
    let walk = variant(&words, "Stair walk");
    let named = OwnForm {
        id: Some(walk.id.clone()),
        ..form(at_level(walk.ladder.as_str(), 0), "Stair walk, slowly")
    };
    home.desk().own_save(at(3, 8), named).unwrap();
    home.desk().own_retire(at(3, 8), &copy, true).unwrap();
    home.desk().own_save(at(3, 8), form(at_level("hinge", 0), "Hinge at the table")).unwrap();
    home.all_same(1);
    let on_her_device = home.client.profile().unwrap().train_onward(at(4, 8)).unwrap();
    let TrainState::Ready(ready) = on_her_device.state else { panic!("{:?}", on_her_device.state) };
    let hers = serde_json::to_value(&ready.slots).unwrap();
    let told = home.desk().client_view(at(4, 8), person).unwrap().next.unwrap();
    assert_eq!(serde_json::to_value(&told.slots).unwrap(), hers, "the Desk says what her device proposes");

    // The next plan brings it, and the retired one is proposed no more and still has its name.
    let overview = home.desk().revisions(at(4, 8), &[person]).unwrap();
    assert_eq!(overview[0].plan, PlanStanding::Older, "there is something to send");
    home.takes_in_plan(at(4, 9));
    let trained = home.trains(at(4, 10));
    assert!(trained.contains(&"Stair walk, slowly".to_owned()), "{trained:?}");
    assert!(!trained.contains(&"Kettlebell hinge".to_owned()), "{trained:?}");
    let names = home.client.profile().unwrap().own_names();
    assert_eq!(names[&format!("variant-{copy}")], "Kettlebell hinge");
    home.log_comes_back(at(4, 12));
    home.all_same(2);
}

#[test]
fn a_plan_that_uses_nothing_of_hers_is_written_as_before() {
    let mut home = home();
    let person = home.person;
    let mine = home.desk().programme_new(at(2, 8), "Plain", None).unwrap();
    home.desk().programme_edit(at(2, 8), mine, &Edit::AddSession { title: "A".into(), phase: None }).unwrap();
    let book = home.desk().planbook_view().unwrap();
    let plain = book.programmes.iter().find(|p| p.programme.id == mine).unwrap();
    let session = plain.programme.sessions[0].id.clone();
    let block = Edit::AddBlock { session, ladders: vec!["squat".into()], part: BlockPart::Work };
    home.desk().programme_edit(at(2, 8), mine, &block).unwrap();
    home.desk().programme_give(at(2, 8), person, mine).unwrap();
    let text = home.plan(at(2, 8));
    assert!(text.contains("\"version\":1") && !text.contains("\"own\""));
}

#[test]
fn what_a_variant_is_does_not_change_under_its_id_and_nothing_is_lost() {
    let mut home = home();
    let words = home.desk().words_view().unwrap();
    let old = variant(&words, "Kettlebell hinge");
    let picture = WordsForm {
        variant: old.id.clone(),
        cues: Vec::new(),
        keep_picture: false,
        new_picture: Some("/9j/4CBubyBtb3JlIHRoYW4gYSBiZWdpbm5pbmc=".into()),
    };
    home.desk().words_save(at(2, 8), picture).unwrap();
    let edit = |f: fn(&mut OwnForm)| {
        let mut next = OwnForm {
            id: Some(old.id.clone()),
            loading: Loading::One,
            ready: ReadyMark::Load { kg: 12.0 },
            ..form(at_level("hinge", 1), "Kettlebell hinge")
        };
        f(&mut next);
        next
    };
    let renamed = home.desk().own_save(at(2, 8), edit(|f| f.name = "Bell hinge".into())).unwrap();
    assert_eq!(variant(&renamed, "Bell hinge").id, old.id, "words change in place");
    let changed = home.desk().own_save(at(2, 9), edit(|f| f.loading = Loading::Pair)).unwrap();
    let new = variant(&changed, "Kettlebell hinge");
    assert_ne!(new.id, old.id, "two weights are another thing than one");
    let both = changed.iter().flat_map(|l| &l.levels).flatten().filter(|v| v.yours.is_some());
    let before = both.clone().find(|v| v.variant == old.id).unwrap();
    assert!(before.yours.as_ref().unwrap().retired, "the old one is there, put away");
    let after = both.clone().find(|v| v.variant == new.id).unwrap();
    assert!(after.own.as_ref().unwrap().picture.is_some(), "and its picture came along");
    let back = home.desk().own_retire(at(2, 10), &old.id, false).unwrap();
    assert!(!variant(&back, "Bell hinge").retired, "taken out again");

    let away = OwnLadderForm { ladder: home.ladder.clone(), name: "Stairs".into(), retired: true };
    home.desk().own_ladder(at(2, 11), away.clone()).unwrap();
    let book = home.desk().planbook_view().unwrap();
    let offered = |book: &newel_app::views::PlanbookView| {
        book.ladders.iter().find(|l| l.ladder == away.ladder).is_some_and(|l| !l.retired)
    };
    assert!(!offered(&book), "not offered");
    home.desk().own_ladder(at(2, 12), OwnLadderForm { retired: false, ..away.clone() }).unwrap();
    assert!(offered(&home.desk().planbook_view().unwrap()), "and again");
    assert_eq!(home.desk().own_names()[&format!("ladder-{}", away.ladder)], "Stairs");
}

#[test]
fn what_cannot_be_is_refused_and_a_client_makes_nothing() {
    let mut home = home();
    let mut refused = |form: OwnForm| match home.desk().own_save(at(2, 8), form) {
        Err(AppError::Refused(why)) => why,
        other => panic!("{other:?}"),
    };
    assert_eq!(refused(form(at_level("hinge", 0), "  ")), Refusal::NameMissing);
    assert_eq!(refused(form(at_level("hinge", 6), "Too high")), Refusal::NoSuchThing);
    assert_eq!(refused(form(at_level("breathing", 0), "Humming")), Refusal::NoSuchThing);
    assert_eq!(refused(form(at_level("hinge", 0), &"x".repeat(61))), Refusal::OutOfRange);
    let breathing = OwnPlace::NewLadder { name: "Humming".into(), pattern: Pattern::Breathing };
    assert_eq!(refused(form(breathing, "Hum")), Refusal::NoSuchThing);
    let help = OwnForm { loading: Loading::Assist { stretch: 1.0 }, ..form(at_level("hinge", 0), "Helped") };
    assert_eq!(refused(help), Refusal::OutOfRange, "of whom nothing is known that could be taken off");
    home.takes_in_plan(at(2, 8));
    let client = home.client.profile().unwrap();
    let mine = client.own_save(at(2, 9), form(at_level("hinge", 0), "Mine"));
    assert!(matches!(mine, Err(AppError::Refused(Refusal::CoachOnly))));
}

#[test]
fn an_update_of_the_built_in_catalogue_leaves_hers_whole() {
    let mut home = home();
    home.takes_in_plan(at(2, 8));
    home.trains(at(2, 9));
    home.log_comes_back(at(2, 12));
    let key = home.coach.app_view().unwrap().open.unwrap().key;
    let (path, person) = (home.folders.0.path().join("profiles").join(key).join("newel.db"), home.person);
    let before = home.desk().own_names();
    home.coach.profile_close().unwrap();

    let mut newer = Catalogue::built_in().unwrap();
    newer.version += 1;
    let hinge = newer.ladders.iter_mut().find(|l| l.id.as_str() == "hinge").unwrap();
    let gone = hinge.levels[1].variants.remove(0);
    hinge.levels[0].variants.push(newel_engine::catalogue::Variant { id: "hinge-newer".into(), ..gone });
    let books = Arc::new(Books::of(Arc::new(newer), Arc::new(RulePack::built_in().unwrap())));
    let mut profile = Profile::open_to_read(&path, &books).unwrap();
    assert_eq!(profile.own_names(), before, "every word of hers is there");
    for id in before.keys().filter_map(|k| k.strip_prefix("variant-")).filter(|id| is_own(id)) {
        assert!(profile.books().catalogue.place(&id.into()).is_some(), "{id} has its place");
    }
    let seen = profile.client_view(at(2, 12), person).unwrap();
    assert!(seen.sessions[0].sets.iter().any(|s| s.variant == home.copy));
    let replayed = profile.replay_all().unwrap();
    assert!(replayed.iter().all(|e| e.replayed == Replayed::OtherVersions), "said to be of another version");
}

#[test]
fn the_plan_of_another_coach_leaves_what_was_trained_readable() {
    let mut home = home();
    home.takes_in_plan(at(2, 8));
    home.trains(at(2, 9));
    home.log_comes_back(at(2, 12));
    let folder = home.client.out_folder();
    let log = home.client.profile().unwrap().log_write(&folder, None, at(2, 13)).unwrap();
    let log = std::fs::read_to_string(log.path).unwrap();

    // Another coach takes her log in and gives her a programme without any of it, but with the hinge.
    let elsewhere = tempfile::tempdir().unwrap();
    let mut other = Newel::open(elsewhere.path().to_owned()).unwrap();
    other.profile_new("Olga", Role::Coach, at(3, 7)).unwrap();
    let out = other.out_folder();
    let desk = other.profile().unwrap();
    desk.take_in(&[ChosenFile { name: "log".into(), text: log }], at(3, 7));
    let seen = desk.client_view(at(3, 8), home.person).unwrap();
    assert!(seen.sessions[0].sets.iter().any(|s| s.variant == home.copy));
    assert_eq!(desk.own_names()[&format!("variant-{}", home.copy)], "Kettlebell hinge", "by name");
    let mine = desk.programme_new(at(3, 8), "Plain", None).unwrap();
    desk.programme_edit(at(3, 8), mine, &Edit::AddSession { title: "A".into(), phase: None }).unwrap();
    let book = desk.planbook_view().unwrap();
    let session = book.programmes[0].programme.sessions[0].id.clone();
    let block = Edit::AddBlock { session, ladders: vec!["hinge".into()], part: BlockPart::Work };
    desk.programme_edit(at(3, 8), mine, &block).unwrap();
    desk.programme_give(at(3, 8), home.person, mine).unwrap();
    let plan = desk.plan_write(&out, None, at(3, 9), home.person).unwrap();
    let text = std::fs::read_to_string(plan.path).unwrap();
    let client = home.client.profile().unwrap();
    let report = client.take_in(&[ChosenFile { name: "plan".into(), text }], at(3, 10)).files.remove(0);
    assert!(report.refused.is_empty(), "{:?}", report.refused);
    let names = client.own_names();
    assert_eq!(names[&format!("variant-{}", home.copy)], "Kettlebell hinge");
    assert_eq!(names[&format!("ladder-{}", home.ladder)], "Kitchen stairs");
    let trained = home.trains(at(4, 9));
    assert!(trained.iter().all(|name| name.starts_with("hinge-")), "{trained:?}");
    let path = home.client.profile().unwrap().path_view(at(4, 12)).unwrap();
    assert_eq!(path.sessions.len(), 2);
}
