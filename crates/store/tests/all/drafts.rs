//! Drafts: every step at once on the disk, undone and redone byte for byte.

use newel_store::Store;
use proptest::prelude::*;

fn at() -> chrono::DateTime<chrono::FixedOffset> {
    "2026-03-02T09:30:00+01:00".parse().unwrap()
}

fn text(store: &Store) -> String {
    store.drafts().unwrap().remove(0).text
}

#[test]
fn a_draft_survives_a_crash_at_its_last_step() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("coach.db");
    let mut store = Store::open(&path).unwrap();
    store.draft_begin("a", "first", at()).unwrap();
    assert!(store.draft_write("a", "second", at()).unwrap());
    // No closing: what was written is on the disk.
    std::mem::forget(store);
    let store = Store::open(&path).unwrap();
    assert_eq!(text(&store), "second");
}

#[test]
fn what_was_undone_goes_when_something_else_is_written() {
    let mut store = Store::open_in_memory().unwrap();
    store.draft_begin("a", "one", at()).unwrap();
    store.draft_write("a", "two", at()).unwrap();
    store.draft_write("a", "three", at()).unwrap();
    assert!(store.draft_turn("a", true).unwrap());
    assert_eq!(text(&store), "two");
    store.draft_write("a", "other", at()).unwrap();
    assert!(!store.draft_turn("a", false).unwrap(), "three is gone");
    assert!(store.draft_turn("a", true).unwrap() && store.draft_turn("a", true).unwrap());
    assert!(!store.draft_turn("a", true).unwrap(), "no step before the first");
    assert_eq!(text(&store), "one");
    assert_eq!(store.drafts().unwrap()[0].edits, 6, "every change counts, back and forth");
    assert!(!store.draft_write("b", "x", at()).unwrap() && !store.draft_turn("b", true).unwrap());
}

#[test]
fn a_draft_is_put_away_and_taken_out_again_whole() {
    let mut store = Store::open_in_memory().unwrap();
    store.draft_begin("a", "one", at()).unwrap();
    assert!(store.draft_away("a", true).unwrap());
    assert!(store.drafts().unwrap()[0].away);
    store.draft_away("a", false).unwrap();
    assert_eq!((store.drafts().unwrap()[0].away, text(&store)), (false, "one".to_owned()));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]
    #[test]
    fn random_steps_undone_wholly_give_the_start_and_redone_the_end(
        texts in prop::collection::vec("\\PC{0,40}", 1..25),
        detours in prop::collection::vec(0..4_usize, 1..25),
    ) {
        let mut store = Store::open_in_memory().unwrap();
        store.draft_begin("a", "the start", at()).unwrap();
        // Undo some, redo the same, write on: a model beside it holds what ought to stand.
        let mut model = vec!["the start".to_owned()];
        for (text_, detour) in texts.iter().zip(detours.iter().cycle()) {
            let back = (*detour).min(model.len() - 1);
            for _ in 0..back {
                prop_assert!(store.draft_turn("a", true).unwrap());
            }
            // Every second time what was undone is redone before going on.
            if detour % 2 == 0 {
                for _ in 0..back {
                    prop_assert!(store.draft_turn("a", false).unwrap());
                }
            } else {
                model.truncate(model.len() - back);
            }
            store.draft_write("a", text_, at()).unwrap();
            model.push(text_.clone());
            prop_assert_eq!(&text(&store), text_);
        }
        for expected in model.iter().rev().skip(1) {
            prop_assert!(store.draft_turn("a", true).unwrap());
            prop_assert_eq!(&text(&store), expected);
        }
        prop_assert!(!store.draft_turn("a", true).unwrap());
        for expected in model.iter().skip(1) {
            prop_assert!(store.draft_turn("a", false).unwrap());
            prop_assert_eq!(&text(&store), expected);
        }
        prop_assert!(!store.draft_turn("a", false).unwrap());
    }
}
