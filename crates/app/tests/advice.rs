//! A programme that is being written, looked through for the clients of the demonstration.

#![allow(clippy::unwrap_used, reason = "a test says what it expects by unwrapping it")]

use chrono::{DateTime, FixedOffset, TimeZone as _};
use newel_app::views::{AdviceView, LookFor};
use newel_app::{AppError, Newel, Profile, Refusal};
use newel_engine::advice::{Advice, AdviceCode, Fix};
use newel_engine::ids::{PersonId, PlanSessionId, ProgrammeId};
use newel_engine::programme::BlockPart;
use newel_engine::reason::Fact;
use newel_engine::writing::Edit;
use uuid::Uuid;

fn now() -> DateTime<FixedOffset> {
    FixedOffset::east_opt(0).unwrap().with_ymd_and_hms(2026, 11, 24, 7, 0, 0).unwrap()
}

fn demo(folder: &tempfile::TempDir) -> Newel {
    let mut newel = Newel::open(folder.path().to_owned()).unwrap();
    let view = newel.demo_make(now(), |_, _| {}).unwrap();
    let coach = view.profiles.iter().find(|p| p.role == newel_app::views::Role::Coach).unwrap();
    newel.profile_open(&coach.key.clone()).unwrap();
    newel
}

fn written(coach: &mut Profile, id: ProgrammeId, ladder: &str) -> PlanSessionId {
    coach.programme_edit(now(), id, &Edit::AddSession { title: "Monday".into(), phase: None }).unwrap();
    let session = coach.planbook_view().unwrap().programmes[0].programme.sessions[0].id.clone();
    let ladders = vec![ladder.into()];
    let block = Edit::AddBlock { session: session.clone(), ladders, part: BlockPart::Work };
    coach.programme_edit(now(), id, &block).unwrap();
    session
}

fn names(view: &AdviceView, advice: &Advice) -> Vec<String> {
    let name = |p: &PersonId| view.clients.iter().find(|c| c.person == *p).unwrap().name.clone();
    advice.whom.iter().map(|n| name(&n.person)).collect()
}

fn of(view: &AdviceView, code: AdviceCode) -> Vec<&Advice> {
    view.advice.iter().filter(|a| a.code == code).collect()
}

#[test]
fn a_draft_is_looked_through_for_all_for_those_who_have_it_or_for_one() {
    let folder = tempfile::tempdir().unwrap();
    let mut newel = demo(&folder);
    let coach = newel.profile().unwrap();
    let id = coach.programme_new(now(), "Landing", None).unwrap();
    written(coach, id, "impact");
    // Given to nobody yet, it is looked through for all.
    let all = coach.advice_view(now(), id, None).unwrap();
    assert_eq!((all.look, all.given), (LookFor::All, 0));
    assert_eq!(all.looked as usize, all.clients.len());
    assert!(all.clients.len() >= 6);
    // Nobody lands who is pregnant (Amara, Josie) or less than twelve weeks after a birth (Noemi).
    let named: Vec<String> = of(&all, AdviceCode::RuledOut).iter().flat_map(|a| names(&all, a)).collect();
    for who in ["Amara", "Josie", "Noemi"] {
        assert!(named.iter().any(|n| n.starts_with(who)), "{who} in {named:?}");
    }
    assert!(!named.iter().any(|n| n.starts_with("Lucía") || n.starts_with("Lucia")), "{named:?}");
    // As the Roster has it, so is it asked for: given to Amara, she is the one who is named.
    let amara = all.clients.iter().find(|c| c.name.starts_with("Amara")).unwrap().person;
    let lucia = all.clients.iter().find(|c| c.name.starts_with("Luc")).unwrap().person;
    coach.programme_give(now(), amara, id).unwrap();
    let given = coach.advice_view(now(), id, None).unwrap();
    assert_eq!((given.look, given.looked, given.given), (LookFor::Given, 1, 1));
    assert_eq!(of(&given, AdviceCode::RuledOut)[0].whom[0].person, amara);
    let one = coach.advice_view(now(), id, Some(LookFor::One { person: lucia })).unwrap();
    assert_eq!((one.looked, of(&one, AdviceCode::RuledOut).len()), (1, 0));
    let nobody = LookFor::One { person: PersonId(Uuid::nil()) };
    let refused = coach.advice_view(now(), id, Some(nobody));
    assert!(matches!(refused, Err(AppError::Refused(Refusal::NoSuchThing))), "{refused:?}");
}

#[test]
fn a_slot_that_her_kit_cannot_make_is_mended_by_the_edit_that_is_offered_and_undone_again() {
    let folder = tempfile::tempdir().unwrap();
    let mut newel = demo(&folder);
    let coach = newel.profile().unwrap();
    let id = coach.programme_new(now(), "Bars", None).unwrap();
    written(coach, id, "vertical-pull");
    let slot =
        coach.planbook_view().unwrap().programmes[0].programme.sessions[0].blocks[0].slots[0].id.clone();
    coach.programme_edit(now(), id, &Edit::LevelsOfSlot { slot, low: Some(1), high: None }).unwrap();
    let before = coach.advice_view(now(), id, None).unwrap();
    let no_kit = of(&before, AdviceCode::NoKit);
    assert!(!no_kit.is_empty() && no_kit[0].nothing_left, "somebody has no bar to hang from");
    assert!(no_kit[0].facts.get("ladder") == Some(&Fact::Ladder("vertical-pull".into())));
    let Some(Fix::Edit { edit, helps, .. }) = no_kit[0].fixes.first() else { panic!("an edit first") };
    assert_eq!(*helps as usize, no_kit[0].whom.len());
    coach.programme_edit(now(), id, &edit.clone()).unwrap();
    let after = coach.advice_view(now(), id, None).unwrap();
    assert_eq!(of(&after, AdviceCode::NoKit).len(), 0);
    coach.programme_turn(id, true).unwrap();
    let again = coach.advice_view(now(), id, None).unwrap();
    assert_eq!(again.advice, before.advice, "undone, it is said again");
    // What was meant to be so long stands in the plan; a programme that somebody trained knows its logs.
    let trained = coach
        .planbook_view()
        .unwrap()
        .programmes
        .iter()
        .filter(|p| !p.own)
        .map(|p| p.programme.id)
        .collect::<Vec<_>>();
    let logged: u32 = trained
        .iter()
        .map(|id| coach.advice_view(now(), *id, None).unwrap().minutes.iter().map(|m| m.logged).sum::<u32>())
        .sum();
    assert!(logged > 10, "the demonstration has trained the built-in programmes: {logged}");
}
