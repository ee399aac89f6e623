//! Advice while a programme is written: each piece shows where it should and nowhere else, its fix mends it, and it says
//! of a client what the proposal of the day says.

use crate::story::*;
use chrono::Duration;
use newel_engine::advice::{
    Advice, AdviceCode as Code, Client, ClosedBy, Draft, Fix, SessionMinutes, advice, session_minutes,
};
use newel_engine::catalogue::{Catalogue, Position};
use newel_engine::gains::Piece;
use newel_engine::history::History;
use newel_engine::ids::PersonId;
use newel_engine::kit::{Dumbbell, Kit, Thing};
use newel_engine::programme::{BlockWeek, Dose, LevelSpan, Phase, Programme, Slot, SlotWeek};
use newel_engine::proposal::{Bench, Gate, Outcome};
use newel_engine::reason::{Fact, ReasonCode};
use newel_engine::record::{Payload, RestrictionKind, SymptomAmount};
use newel_engine::rules::RulePack;
use newel_engine::stage::BirthMode;
use newel_engine::writing::edited;
use proptest::prelude::*;
use uuid::Uuid;

pub fn person(n: usize) -> PersonId {
    PersonId(Uuid::from_u128(100 + n as u128))
}

/// The advice for a programme and some clients, who are numbered in their order.
pub fn looked(rules: &RulePack, programme: &Programme, clients: &[&Story]) -> Vec<Advice> {
    let histories: Vec<History> = clients.iter().map(|s| History::of(&s.records)).collect();
    let benches: Vec<Bench<'_>> = clients
        .iter()
        .zip(&histories)
        .map(|(s, history)| {
            Bench::of(newel_engine::proposal::Inputs {
                history,
                programme,
                starts: &s.starts,
                starts_of: s.starts_of,
                catalogue: &s.catalogue,
                rules,
                day: s.today(),
                run: None,
            })
        })
        .collect();
    let seen: Vec<Client<'_>> =
        benches.iter().enumerate().map(|(n, bench)| Client { person: person(n), bench }).collect();
    let catalogue = Catalogue::built_in().unwrap();
    let day = clients.first().map_or_else(|| Story::new().today(), |s| s.today());
    let draft = Draft { programme, catalogue: &catalogue, rules, day };
    let minutes = session_minutes(&draft, histories.iter());
    advice(&draft, &seen, &minutes)
}

fn look(programme: &Programme, clients: &[&Story]) -> Vec<Advice> {
    looked(&RulePack::built_in().unwrap(), programme, clients)
}

fn spanned(ladder: &str, low: u8, high: u8) -> Slot {
    Slot { levels: Some(LevelSpan { low, high }), ..slot(ladder, 8, 12, 3) }
}

fn one_slot(slot: Slot) -> Programme {
    programme_of(vec![slot], 2)
}

fn codes(all: &[Advice]) -> Vec<Code> {
    all.iter().map(|a| a.code).collect()
}

fn of(all: &[Advice], code: Code) -> Advice {
    let mut found = all.iter().filter(|a| a.code == code);
    let first = found.next().unwrap_or_else(|| panic!("{code:?} is not among {:?}", codes(all))).clone();
    assert!(found.next().is_none(), "{code:?} once");
    first
}

/// The programme after the first edit that a piece of advice offers.
fn mended(programme: &Programme, advice: &Advice) -> Programme {
    let edit = advice
        .fixes
        .iter()
        .find_map(|f| match f {
            Fix::Edit { edit, .. } => Some(edit),
            Fix::Kit { .. } | Fix::OnTheDay => None,
        })
        .expect("an edit");
    let mut n = 0;
    let mut fresh = || {
        n += 1;
        format!("fresh-{n}")
    };
    edited(programme, &Catalogue::built_in().unwrap(), edit, &mut fresh).unwrap()
}

fn number(advice: &Advice, name: &str) -> f64 {
    match advice.facts.get(name) {
        Some(Fact::Number(n)) => *n,
        other => panic!("{name}: {other:?}"),
    }
}

fn nobody_in_particular() -> Story {
    let mut s = Story::new();
    s.owns(full_kit()).screened(&[], &[]);
    s
}

#[test]
fn a_good_programme_and_a_full_kit_give_rise_to_nothing() {
    let s = nobody_in_particular();
    let names = ["squat", "hinge", "push-up", "row"];
    let programme = programme_of(names.map(|n| slot(n, 8, 12, 3)).to_vec(), 2);
    assert_eq!(look(&programme, &[&s]), []);
    assert_eq!(look(&programme, &[]), [], "nor with nobody to look through it for");
}

#[test]
fn a_slot_that_her_kit_cannot_make_names_her_the_piece_and_the_easier_level() {
    let programme = one_slot(spanned("split-squat", 2, 2));
    let with = nobody_in_particular();
    let mut without = nobody_in_particular();
    without.owns(Kit::default());
    assert_eq!(look(&programme, &[&with]), []);
    let all = look(&programme, &[&with, &without]);
    let found = of(&all, Code::NoKit);
    assert!(found.nothing_left);
    assert_eq!(found.whom.iter().map(|n| n.person).collect::<Vec<_>>(), [person(1)], "the other one has it");
    assert_eq!((found.whom[0].from, found.whom[0].until), (None, None));
    assert_eq!(found.slot, Some("split-squat".into()));
    assert_eq!(found.rule.as_str(), "kit.has");
    assert!(found.fixes.contains(&Fix::Kit { pieces: vec![Piece::OneWeight] }), "{:?}", found.fixes);
    // One edit lets the level below in, and she is named no more.
    let mended = mended(&programme, &found);
    let Some(Fix::Edit { facts, .. }) = found.fixes.first() else { panic!("an edit first") };
    assert_eq!(facts.get("variant"), Some(&Fact::Variant("split-squat-full".into())), "and it is named");
    let levels = mended.sessions[0].blocks[0].slots[0].levels;
    assert_eq!(levels, Some(LevelSpan { low: 1, high: 2 }), "the nearest easier level that she can do");
    assert!(!codes(&look(&mended, &[&with, &without])).contains(&Code::NoKit));
    // So does the piece.
    without.owns(dumbbells(&[6.0]));
    assert_eq!(look(&programme, &[&with, &without]), []);
}

#[test]
fn where_several_things_are_missing_all_are_named() {
    let mut s = nobody_in_particular();
    s.owns(Kit::default());
    let found = of(&look(&one_slot(spanned("step-up", 2, 2)), &[&s]), Code::NoKit);
    let kit = found.fixes.iter().find_map(|f| match f {
        Fix::Kit { pieces } => Some(pieces.clone()),
        Fix::Edit { .. } | Fix::OnTheDay => None,
    });
    assert_eq!(kit, Some(vec![Piece::OneWeight, Piece::Thing(Thing::Step)]), "the fewer of two ways");
}

#[test]
fn the_lowest_level_alone_is_a_milder_remark() {
    let programme = one_slot(slot("vertical-pull", 8, 12, 3));
    let mut s = nobody_in_particular();
    s.owns(Kit::default());
    let found = of(&look(&programme, &[&s]), Code::LowestKit);
    assert!(!found.nothing_left);
    assert_eq!(found.fixes, [Fix::Kit { pieces: vec![Piece::Thing(Thing::PullUpBar)] }]);
    s.owns(Kit { things: vec![Thing::PullUpBar], ..Kit::default() });
    assert!(!codes(&look(&programme, &[&s])).contains(&Code::LowestKit));
    // One level alone is no remark: the coach asked for it.
    s.owns(Kit::default());
    let asked = look(&one_slot(spanned("vertical-pull", 0, 0)), &[&s]);
    assert!(!codes(&asked).contains(&Code::LowestKit), "{asked:?}");
}

#[test]
fn what_a_stage_rules_out_names_the_ladder_that_stays_open() {
    let mut s = nobody_in_particular();
    s.birth_weeks_ago(3, BirthMode::Vaginal).taken_up();
    let programme = programme_of(vec![spanned("lunge", 2, 2)], 2);
    let found = of(&look(&programme, &[&s]), Code::RuledOut);
    assert_eq!(found.closed, [ClosedBy::Load]);
    assert_eq!(found.rule.as_str(), "effort.after-2");
    let mended = mended(&programme, &found);
    assert_eq!(mended.sessions[0].blocks[0].slots[0].levels, Some(LevelSpan { low: 1, high: 2 }));
    assert!(!codes(&look(&mended, &[&s])).contains(&Code::RuledOut));
    // Whole ladders: landing waits while pregnant, and nothing else lands.
    let mut pregnant = nobody_in_particular();
    pregnant.weeks_pregnant(15);
    let found = of(&look(&one_slot(slot("impact", 8, 12, 4)), &[&pregnant]), Code::RuledOut);
    assert_eq!((found.closed, found.fixes), (vec![ClosedBy::Impact], vec![]));
    // A condition closes what is overhead; a press in front stays open.
    let mut sore = nobody_in_particular();
    sore.screened(&["shoulder-pain"], &[]);
    let programme = one_slot(slot("overhead-press", 8, 12, 3));
    let found = of(&look(&programme, &[&sore, &pregnant]), Code::RuledOut);
    assert_eq!(found.closed, [ClosedBy::Condition { condition: "shoulder-pain".into() }]);
    let mended = self::mended(&programme, &found);
    let other = mended.sessions[0].blocks[0].slots[0].ladder.clone();
    assert_eq!(other.as_str(), "push-up", "of the same family, the first in the catalogue");
    assert!(!codes(&look(&mended, &[&sore, &pregnant])).contains(&Code::RuledOut));
}

#[test]
fn what_comes_within_the_weeks_of_the_programme_is_told_with_its_day() {
    let mut s = nobody_in_particular();
    s.weeks_pregnant(18).restricted(RestrictionKind::Position { position: Position::Incline });
    let mut programme = one_slot(spanned("bridge", 0, 0));
    assert!(!codes(&look(&programme, &[&s])).contains(&Code::RuledOut), "open end: today alone");
    programme.weeks = Some(1);
    assert!(!codes(&look(&programme, &[&s])).contains(&Code::RuledOut), "over before week 20");
    programme.weeks = Some(4);
    let found = of(&look(&programme, &[&s]), Code::RuledOut);
    assert_eq!(found.whom[0].from, Some(s.today() + Duration::days(14)), "the day of week 20");
    assert!(found.closed.contains(&ClosedBy::Position { position: Position::Supine }), "{:?}", found.closed);
    // What ends within them, too.
    let mut after = nobody_in_particular();
    after.birth_weeks_ago(4, BirthMode::Vaginal).taken_up();
    let mut loaded = one_slot(spanned("lunge", 2, 2));
    loaded.weeks = Some(6);
    let found = of(&look(&loaded, &[&after]), Code::RuledOut);
    assert_eq!((found.whom[0].from, found.whom[0].until), (None, Some(after.today() + Duration::days(14))));
}

#[test]
fn nothing_is_said_of_the_time_beyond_her_due_date() {
    let mut s = nobody_in_particular();
    s.weeks_pregnant(18).restricted(RestrictionKind::Position { position: Position::Incline });
    let mut near = nobody_in_particular();
    near.weeks_pregnant(39);
    let mut programme = one_slot(slot("squat", 8, 12, 3));
    programme.weeks = Some(12);
    let found = of(&look(&programme, &[&s, &near]), Code::Effort);
    // From 28 weeks on a beginner leaves four: of the first that comes in ten weeks, of the other it holds today.
    let told: Vec<_> = found.whom.iter().map(|n| (n.person, n.from)).collect();
    assert_eq!(told, [(person(0), Some(s.today() + Duration::days(70))), (person(1), None)]);
}

#[test]
fn effort_nearer_to_failure_than_her_stage_allows_is_named_with_what_she_needs() {
    let mut s = nobody_in_particular();
    s.weeks_pregnant(30);
    let programme = one_slot(slot("squat", 8, 12, 2));
    let plain = nobody_in_particular();
    let all = look(&programme, &[&s]);
    let found = of(&all, Code::Effort);
    assert_eq!((number(&found, "target"), number(&found, "least")), (2.0, 4.0));
    assert_eq!(found.rule.as_str(), "effort.pregnant-late");
    assert!(found.fixes.contains(&Fix::OnTheDay) && !found.nothing_left);
    let mended = mended(&programme, &found);
    assert_eq!(mended.sessions[0].blocks[0].slots[0].dose.target_rir, 4);
    assert!(!codes(&look(&mended, &[&s, &plain])).contains(&Code::Effort));
    // Two who need different things are told apart; a restriction counts, too; a hold is not counted in reps.
    s.restricted(RestrictionKind::ReserveBelow { reps: 6 });
    let both = look(&programme, &[&s, &plain]);
    let least: Vec<f64> =
        both.iter().filter(|a| a.code == Code::Effort).map(|a| number(a, "least")).collect();
    assert_eq!(least, [6.0, 3.0]);
    assert!(!codes(&look(&one_slot(timed("side-plank", 20, 40)), &[&s])).contains(&Code::Effort));
}

#[test]
fn rounds_beyond_what_the_weeks_after_a_birth_allow() {
    let mut s = nobody_in_particular();
    s.birth_weeks_ago(3, BirthMode::Vaginal).taken_up();
    let mut programme = programme_of(vec![slot("squat", 8, 12, 5)], 3);
    programme.weeks = Some(8);
    let found = of(&look(&programme, &[&s]), Code::Rounds);
    assert_eq!((number(&found, "rounds"), number(&found, "most")), (3.0, 2.0));
    assert_eq!(found.whom[0].until, Some(s.today() + Duration::days(21)), "until week 6");
    assert!(!codes(&look(&mended(&programme, &found), &[&s])).contains(&Code::Rounds));
}

#[test]
fn what_waits_for_a_clearance_is_said_once_and_the_slots_are_looked_at_all_the_same() {
    let mut s = Story::new();
    s.birth_weeks_ago(10, BirthMode::Caesarean).taken_up();
    let programme = programme_of(vec![slot("squat", 8, 12, 5), spanned("split-squat", 2, 2)], 2);
    let all = look(&programme, &[&s]);
    assert_eq!(of(&all, Code::Waits).whom[0].person, person(0));
    assert_eq!(of(&all, Code::NoKit).slot, Some("split-squat".into()));
    s.cleared();
    assert!(!codes(&look(&programme, &[&s])).contains(&Code::Waits));
    // Before both have said that it goes on nothing is proposed at all.
    let mut rests = nobody_in_particular();
    rests.birth_weeks_ago(10, BirthMode::Vaginal);
    let _ = rests.session_of("squat", 8, left(5)).days(1).birth_weeks_ago(8, BirthMode::Vaginal);
    assert_eq!(rests.is_closed(), codes(&look(&programme, &[&rests])).contains(&Code::Closed));
}

#[test]
fn a_ladder_that_waits_for_an_answer_is_named() {
    let mut s = nobody_in_particular();
    s.programme(vec![slot("squat", 8, 12, 3)], 2);
    s.trains().does("squat", 8, left(3)).marks("squat", symptom("heaviness", Some(SymptomAmount::Lot)));
    for _ in 0..3 {
        if !s.is_over("squat") {
            s.marks("squat", symptom("heaviness", Some(SymptomAmount::Lot)));
        }
    }
    s.ends().days(2);
    let programme = s.programme.clone();
    let held = s.with_bench(|b| b.state.open_holds().next().is_some());
    assert!(held, "it is held");
    assert_eq!(of(&look(&programme, &[&s]), Code::Held).slot, Some("squat".into()));
}

#[test]
fn push_beside_pull_and_knee_beside_hip() {
    let week = |names: &[&str]| {
        let slots = names.iter().map(|n| slot(n, 8, 12, 3)).collect();
        look(&programme_of(slots, 2), &[&nobody_in_particular()])
    };
    for (names, code, pattern) in [
        (&["push-up", "overhead-press", "row"][..], None, ""),
        (&["push-up", "overhead-press"], Some(Code::PushPull), "row"),
        (&["row", "vertical-pull"], Some(Code::PushPull), "push-up"),
        (&["squat", "lunge", "hinge"], None, ""),
        (&["squat", "lunge"], Some(Code::KneeHip), "hinge"),
        (&["hinge", "bridge"], Some(Code::KneeHip), "squat"),
        (&["push-up"], None, "too little to speak of"),
    ] {
        let all = week(names);
        let found: Vec<_> = all.iter().filter(|a| matches!(a.code, Code::PushPull | Code::KneeHip)).collect();
        assert_eq!(found.first().map(|a| a.code), code, "{names:?}");
        let Some(found) = found.first() else { continue };
        assert!(found.whom.is_empty() && found.session.is_none(), "it concerns all");
        let Some(Fix::Edit { facts, .. }) = found.fixes.first() else { panic!("an edit") };
        assert_eq!(facts.get("ladder"), Some(&Fact::Ladder(pattern.into())), "{names:?}");
    }
    // The block that is offered brings it nearer, and often enough it is gone.
    let slots = vec![slot("push-up", 8, 12, 3), slot("overhead-press", 8, 12, 3)];
    let programme = programme_of(slots, 2);
    let s = nobody_in_particular();
    let found = of(&look(&programme, &[&s]), Code::PushPull);
    assert!(!codes(&look(&mended(&programme, &found), &[&s])).contains(&Code::PushPull));
}

#[test]
fn few_and_many_sets_a_week() {
    let s = nobody_in_particular();
    let week = |rounds: u8, per_week: u8| {
        let mut programme = programme_of(vec![slot("row", 8, 12, 3)], rounds);
        programme.per_week = per_week;
        (look(&programme, &[&s]), programme)
    };
    for (rounds, per_week, code) in
        [(1, 1, Some(Code::FewSets)), (2, 1, None), (4, 3, None), (5, 3, Some(Code::ManySets))]
    {
        let (all, programme) = week(rounds, per_week);
        let found = all.iter().find(|a| matches!(a.code, Code::FewSets | Code::ManySets));
        assert_eq!(found.map(|a| a.code), code, "{rounds} x {per_week}");
        let Some(found) = found else { continue };
        assert_eq!(found.facts.get("pattern"), Some(&Fact::Words("horizontal_pull".into())));
        assert!(!codes(&look(&mended(&programme, found), &[&s])).contains(&found.code));
    }
    // What is no push, pull, squat or hinge is not counted, nor is a finisher.
    let mut programme = programme_of(vec![slot("calf", 8, 12, 3)], 9);
    assert_eq!(look(&programme, &[&s]), []);
    programme.sessions[0].blocks[0].form = newel_engine::programme::BlockForm::Finisher;
    programme.sessions[0].blocks[0].slots[0].ladder = "row".into();
    assert_eq!(look(&programme, &[&s]), []);
}

#[test]
fn longer_than_meant_and_as_it_was_logged() {
    let mut s = nobody_in_particular();
    let names = ["squat", "hinge", "push-up", "row"];
    s.programme(names.map(|n| slot(n, 8, 12, 3)).to_vec(), 3);
    let mut programme = s.programme.clone();
    let estimate = minutes_of(&programme, &[&s])[0].clone();
    assert_eq!((estimate.median, estimate.logged), (None, 0));
    programme.sessions[0].minutes = Some(estimate.estimate);
    assert!(!codes(&look(&programme, &[&s])).contains(&Code::Longer), "as long as meant");
    programme.sessions[0].minutes = Some(estimate.estimate * 3 / 4);
    let found = of(&look(&programme, &[&s]), Code::Longer);
    assert_eq!(number(&found, "minutes"), f64::from(estimate.estimate));
    let shorter = mended(&programme, &found);
    assert!(minutes_of(&shorter, &[&s])[0].estimate < estimate.estimate);
    // Three sessions, of 60 minutes in the middle, say more than the estimate.
    for n in 0..3 {
        s.trains();
        for name in names {
            s.does_all(name, 8, left(4));
        }
        let run = s.run.take().unwrap();
        let minutes = Some([70, 50, 60][n]);
        s.says(Payload::SessionEnded { run, effort: Some(5), minutes, note: None }).settled().days(3);
        let all = look(&programme, &[&s]);
        assert_eq!(codes(&all).contains(&Code::Logged), n == 2, "session {n}");
    }
    let known = &minutes_of(&programme, &[&s])[0];
    assert_eq!((known.median, known.logged), (Some(60), 3), "{known:?}");
    let all = look(&programme, &[&s]);
    assert_eq!(
        (number(&of(&all, Code::Longer), "minutes"), number(&of(&all, Code::Longer), "logged")),
        (60.0, 3.0)
    );
    let found = of(&all, Code::Logged);
    assert_eq!((number(&found, "median"), number(&found, "minutes")), (60.0, f64::from(estimate.estimate)));
    assert_eq!(mended(&programme, &found).sessions[0].minutes, Some(60));
    // With another move in it, what was logged is of another session.
    programme.sessions[0].blocks.pop();
    assert_eq!(minutes_of(&programme, &[&s])[0].logged, 0);
}

fn minutes_of(programme: &Programme, clients: &[&Story]) -> Vec<SessionMinutes> {
    let histories: Vec<History> = clients.iter().map(|s| History::of(&s.records)).collect();
    let (catalogue, rules) = (Catalogue::built_in().unwrap(), RulePack::built_in().unwrap());
    let draft = Draft { programme, catalogue: &catalogue, rules: &rules, day: clients[0].today() };
    session_minutes(&draft, histories.iter())
}

/// Somebody at random: stage, kit, conditions, restrictions.
#[derive(Clone, Debug)]
struct Anybody {
    loads: u8,
    things: u8,
    stage: u8,
    weeks: i64,
    conditions: Vec<&'static str>,
    restricted: u8,
}

fn anybody() -> impl Strategy<Value = Anybody> {
    let conditions = vec!["shoulder-pain", "wrist-pain", "girdle-pain", "prolapse"];
    let conditions = prop::sample::subsequence(conditions, 0..3);
    (0u8..16, 0u8..8, 0u8..9, 0i64..40, conditions, 0u8..8).prop_map(
        |(loads, things, stage, weeks, conditions, restricted)| Anybody {
            loads,
            things,
            stage,
            weeks,
            conditions,
            restricted,
        },
    )
}

impl Anybody {
    fn story(&self) -> Story {
        let full = full_kit();
        let mut kit = Kit::default();
        if self.loads & 1 > 0 {
            kit.dumbbells = vec![full.dumbbells[2]];
        }
        if self.loads & 2 > 0 {
            kit.dumbbells.push(Dumbbell { pair: false, ..full.dumbbells[4] });
        }
        if self.loads & 4 > 0 {
            kit.bands = full.bands;
        }
        if self.loads & 8 > 0 {
            kit.barbell = full.barbell;
        }
        let owned = |n: usize| self.things >> (n % 3) & 1 > 0;
        kit.things = full.things.into_iter().enumerate().filter(|(n, _)| owned(*n)).map(|(_, t)| t).collect();
        let mut s = Story::new();
        s.owns(kit).screened(&self.conditions, &[]);
        match self.stage {
            0..3 => s.weeks_pregnant(self.weeks),
            3..6 => s.birth_weeks_ago(self.weeks, BirthMode::Vaginal).taken_up(),
            6 => s.birth_weeks_ago(self.weeks, BirthMode::Caesarean).taken_up(),
            _ => &mut s,
        };
        let what = match self.restricted {
            0 => Some(RestrictionKind::Position { position: Position::Seated }),
            1 => Some(RestrictionKind::AllLoad),
            2 => Some(RestrictionKind::Position { position: Position::Standing }),
            3 => Some(RestrictionKind::ReserveBelow { reps: 4 }),
            _ => None,
        };
        if let Some(what) = what {
            s.restricted(what);
        }
        s
    }
}

/// Slots at random, one for each of some ladders.
fn any_slots() -> impl Strategy<Value = Vec<Slot>> {
    let all: Vec<(String, u8)> = Catalogue::built_in()
        .unwrap()
        .ladders
        .iter()
        .map(|l| (l.id.to_string(), u8::try_from(l.levels.len()).unwrap()))
        .collect();
    let ladders = prop::sample::subsequence(all, 1..8);
    (ladders, prop::collection::vec((0u8..6, 0u8..6, 0u8..6), 8)).prop_map(|(ladders, numbers)| {
        let each = ladders.into_iter().zip(numbers).map(|((ladder, levels), (a, b, target))| {
            let top = levels - 1;
            let span = LevelSpan { low: a.min(b).min(top), high: a.max(b).min(top) };
            Slot { levels: (target > 1).then_some(span), ..slot(&ladder, 8, 12, target) }
        });
        each.collect()
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]
    #[test]
    fn nothing_is_left_of_a_slot_just_where_the_proposal_of_the_day_has_nothing(who in anybody(), slots in any_slots()) {
        let mut s = who.story();
        s.programme(slots, 3);
        s.programme.weeks = Some(6);
        let all = look(&s.programme, &[&s]);
        let proposal = s.proposal();
        let told = |code: Code| all.iter().any(|a| a.code == code && a.whom[0].from.is_none());
        prop_assert_eq!(proposal.gate != Gate::Open, told(Code::Closed));
        for p in &proposal.slots {
            let of_slot = |code: Code| {
                all.iter().find(|a| a.code == code && a.slot.as_ref() == Some(&p.slot) && a.whom[0].from.is_none())
            };
            let meanwhile = s.catalogue.ladder(&p.ladder).unwrap().pattern.goes_on_meanwhile();
            let rests = p.outcome == Outcome::Rest;
            let nothing = of_slot(Code::NoKit).or(of_slot(Code::RuledOut)).is_some();
            prop_assert_eq!(rests, nothing || (told(Code::Waits) && !meanwhile), "{:?} {:?}", p, all);
            // What the engine raises by stage or restriction is what is said, and the other way round.
            if !rests {
                let raised = p.reasons.all().iter().any(|r| {
                    matches!(r.code, ReasonCode::StageEffort | ReasonCode::RestrictedReserve)
                });
                let said = of_slot(Code::Effort).is_some();
                // The first time after a birth asks for more than any of them.
                prop_assert!(said || !raised, "{:?} {:?}", p, all);
                prop_assert!(raised || !said || p.reasons.has(ReasonCode::FreshStart), "{:?} {:?}", p, all);
                let fewer = p.reasons.has(ReasonCode::StageSets);
                let block = format!("block-{}", p.slot);
                let said = all.iter().any(|a| {
                    a.code == Code::Rounds
                        && a.whom[0].from.is_none()
                        && a.block.as_ref().is_some_and(|b| b.as_str() == block)
                });
                prop_assert_eq!(fewer, said, "{:?} {:?}", p, all);
            }
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]
    #[test]
    fn an_edit_that_is_offered_helps_as_many_as_it_says(
        clients in prop::collection::vec(anybody(), 1..4), slots in any_slots()
    ) {
        let programme = programme_of(slots, 3);
        let clients: Vec<Story> = clients.iter().map(Anybody::story).collect();
        let clients: Vec<&Story> = clients.iter().collect();
        let named = |all: &[Advice], code: &[Code], slot: &Advice| -> usize {
            let here = all.iter().filter(|a| code.contains(&a.code) && a.slot == slot.slot && a.block == slot.block);
            let whom: std::collections::BTreeSet<_> = here.flat_map(|a| &a.whom).map(|n| n.person).collect();
            slot.whom.iter().filter(|n| whom.contains(&n.person)).count()
        };
        let mut count = 0;
        for advice in look(&programme, &clients) {
            for fix in &advice.fixes {
                let Fix::Edit { helps, edit, .. } = fix else { continue };
                let code: &[Code] = match advice.code {
                    Code::NoKit | Code::RuledOut => &[Code::NoKit, Code::RuledOut],
                    Code::Effort => &[Code::Effort],
                    Code::Rounds => &[Code::Rounds],
                    _ => continue,
                };
                let after = edited(&programme, &clients[0].catalogue, edit, &mut || {
                    count += 1;
                    format!("fresh-{count}")
                });
                let left = named(&look(&after.unwrap(), &clients), code, &advice);
                prop_assert_eq!(left + *helps as usize, advice.whom.len(), "{:?}", advice);
            }
        }
    }
}

// -- weeks --------------------------------------------------------------------------------------

#[test]
fn what_one_week_asks_for_is_named_with_the_week_and_mended_there_alone() {
    let mut s = nobody_in_particular();
    s.weeks_pregnant(30);
    let mut programme = one_slot(slot("squat", 8, 12, 5));
    programme.weeks = Some(4);
    let usual = programme.sessions[0].blocks[0].slots[0].dose;
    let harder = |week| SlotWeek { week, dose: Dose { target_rir: 2, ..usual } };
    programme.sessions[0].blocks[0].slots[0].by_week = vec![harder(3)];
    let found = of(&look(&programme, &[&s]), Code::Effort);
    assert_eq!((found.week, number(&found, "target")), (Some(3), 2.0));
    let mended = mended(&programme, &found);
    let slot = &mended.sessions[0].blocks[0].slots[0];
    assert_eq!((slot.dose.target_rir, slot.by_week[0].dose.target_rir), (5, 4));
    assert!(!codes(&look(&mended, &[&s])).contains(&Code::Effort));
    // The same in several weeks is said once, for the first of them; what every week asks for needs no week.
    programme.sessions[0].blocks[0].slots[0].by_week = vec![harder(2), harder(3), harder(4)];
    assert_eq!(of(&look(&programme, &[&s]), Code::Effort).week, Some(2));
    programme.sessions[0].blocks[0].slots[0].dose.target_rir = 2;
    programme.sessions[0].blocks[0].slots[0].by_week.clear();
    assert_eq!(of(&look(&programme, &[&s]), Code::Effort).week, None);
}

#[test]
fn rounds_of_a_week_are_mended_in_that_week() {
    let mut s = nobody_in_particular();
    s.birth_weeks_ago(3, BirthMode::Vaginal).taken_up();
    let mut programme = programme_of(vec![slot("squat", 8, 12, 5)], 2);
    let more = BlockWeek { week: 2, rounds: 4, rest_seconds: 60, rest_between_seconds: 0 };
    programme.sessions[0].blocks[0].by_week = vec![more];
    let found = of(&look(&programme, &[&s]), Code::Rounds);
    assert_eq!((found.week, number(&found, "rounds")), (Some(2), 4.0));
    let mended = mended(&programme, &found);
    assert_eq!(mended.sessions[0].blocks[0].rounds, 2);
    assert!(mended.sessions[0].blocks[0].by_week.is_empty(), "two rounds are what every week has");
    assert!(!codes(&look(&mended, &[&s])).contains(&Code::Rounds));
}

#[test]
fn a_phase_is_looked_through_by_itself() {
    let s = nobody_in_particular();
    let mut programme = programme_of(vec![slot("row", 8, 12, 3)], 2);
    let mut second = programme.sessions[0].clone();
    second.id = "b".into();
    second.blocks[0].id = "block-b".into();
    second.blocks[0].slots[0].id = "slot-b".into();
    second.blocks[0].rounds = 12;
    programme.sessions[0].phase = Some("one".into());
    second.phase = Some("two".into());
    programme.sessions.push(second);
    let phase = |id: &str| Phase { id: id.into(), title: id.into(), weeks: 2, light_weeks: vec![] };
    programme.phases = vec![phase("one"), phase("two")];
    programme.weeks = Some(4);
    assert_eq!(programme.check(&Catalogue::built_in().unwrap()), Ok(()));
    let found = of(&look(&programme, &[&s]), Code::ManySets);
    assert_eq!((found.week, number(&found, "sets")), (Some(3), 24.0), "its own sets, twice a week");
    let mended = mended(&programme, &found);
    assert_eq!((mended.sessions[0].blocks[0].rounds, mended.sessions[1].blocks[0].rounds), (2, 11));
}
