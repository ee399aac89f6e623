//! Taking in what other devices wrote.

use crate::support::*;
use newel_engine::record::Record;
use newel_store::{Action, Gap, IdSource, Refusal, Store, StoreError, TakeInReport};
use proptest::prelude::*;
use std::fs;
use uuid::Uuid;

/// The lines of a phone with so many notes of Noor's.
fn phone_with(notes: i64) -> (Store, Vec<String>) {
    let mut phone = device(1);
    for n in 0..notes {
        write(&mut phone, n, NOOR, note(&format!("note {n} – ü")));
    }
    let lines = phone.lines(NOOR).unwrap();
    (phone, lines)
}

fn why(report: &TakeInReport) -> Vec<(usize, Refusal)> {
    report.refused.iter().map(|r| (r.nth, r.why)).collect()
}

/// The line with its note's words changed: still a record, but not the one that was written.
fn altered(line: &str) -> String {
    let other = line.replace("note ", "NOTE ");
    assert_ne!(other, line);
    other
}

#[test]
fn taking_a_file_in_twice_changes_nothing() {
    let (mut phone, _) = phone_with(3);
    let mark =
        write(&mut phone, 4, NOOR, marked(1, "heaviness", newel_engine::record::SymptomAmount::Little));
    write(&mut phone, 5, NOOR, withdrawn(mark));
    let lines = phone.lines(NOOR).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("coach.db");
    let mut coach = Store::open_with(&path, IdSource::seeded(2)).unwrap();
    let first = take_in(&mut coach, NOOR, &lines);
    assert_eq!((first.new, first.known, first.gaps.len(), first.refused.len()), (5, 0, 0, 0));
    let (one, two) = (folder.path().join("1.db"), folder.path().join("2.db"));
    coach.backup_to(&one).unwrap();
    let before = content(&path);
    let second = take_in(&mut coach, NOOR, &lines);
    assert_eq!((second.new, second.known, second.renewed), (0, 5, None));
    assert!(second.change.touched.is_empty(), "no screen has anything to refresh");
    assert_eq!(content(&path), before, "every row of every table is as it was");
    coach.backup_to(&two).unwrap();
    assert!(fs::read(one).unwrap() == fs::read(two).unwrap(), "the database is the same byte for byte");
    assert_eq!(coach.lines(NOOR).unwrap(), lines, "the lines are the phone's, byte for byte");
    assert_whole(&coach, "what was taken in holds together");
}

#[test]
fn records_beyond_a_gap_are_kept_and_the_gap_is_named_until_it_is_filled() {
    let (phone, lines) = phone_with(6);
    let mut coach = device(2);
    let some = [lines[0].clone(), lines[4].clone()];
    let report = take_in(&mut coach, NOOR, &some);
    let device = phone.device().unwrap();
    assert_eq!(report.new, 2);
    assert_eq!(report.gaps, [Gap { device, from: 1, to: 3 }]);
    let heads = coach.stream_heads(NOOR).unwrap();
    assert_eq!((heads[0].next, heads[0].beyond), (1, 1));
    assert!(coach.check().unwrap().is_sound(), "a gap is no damage");
    let report = take_in(&mut coach, NOOR, &lines);
    assert_eq!((report.new, report.known, report.gaps.len()), (4, 2, 0));
    assert_whole(&coach, "the gap is filled");
}

#[test]
fn an_altered_line_is_refused_and_what_its_follower_confirms_is_kept() {
    let (phone, lines) = phone_with(5);
    let mut file = lines.clone();
    file[2] = altered(&lines[2]);
    let mut coach = device(2);
    let report = take_in(&mut coach, NOOR, &file);
    assert_eq!(why(&report), [(2, Refusal::Altered)]);
    assert_eq!(report.gaps, [Gap { device: phone.device().unwrap(), from: 2, to: 2 }]);
    let report = take_in(&mut coach, NOOR, &lines);
    assert_eq!((report.new, report.known, report.refused.len()), (1, 4, 0), "the whole file mends it");
    assert_eq!(coach.lines(NOOR).unwrap(), lines);
}

#[test]
fn one_id_with_two_contents_is_named_and_the_first_one_stays() {
    let (_, lines) = phone_with(2);
    let mut coach = device(2);
    take_in(&mut coach, NOOR, &lines);
    let other = altered(&lines[1]);
    let report = take_in(&mut coach, NOOR, std::slice::from_ref(&other));
    assert_eq!(why(&report), [(0, Refusal::TwoContents)]);
    assert_eq!(coach.lines(NOOR).unwrap(), lines);
    let mut desk = device(3);
    let report = take_in(&mut desk, NOOR, &[lines[0].clone(), lines[1].clone(), other]);
    assert_eq!(
        why(&report),
        [(1, Refusal::TwoContents), (2, Refusal::TwoContents)],
        "within one file it cannot be told which of the two is true"
    );
    assert_eq!(desk.lines(NOOR).unwrap(), lines[..1]);
}

#[test]
fn a_forked_stream_is_refused_with_its_whole_tail() {
    let (phone, lines) = phone_with(2);
    let folder = tempfile::tempdir().unwrap();
    // Two devices that go on from the same two lines under the same name, as two copies would.
    let fork = |name: &str, words: &str| {
        let mut store = Store::open(folder.path().join(name)).unwrap();
        take_in(&mut store, NOOR, &lines);
        drop(store);
        let conn = rusqlite::Connection::open(folder.path().join(name)).unwrap();
        conn.execute("UPDATE here SET device = ?1", [phone.device().unwrap().to_string()]).unwrap();
        drop(conn);
        let mut store = Store::open(folder.path().join(name)).unwrap();
        for n in 0..3 {
            write(&mut store, 10 + n, NOOR, note(words));
        }
        store.lines(NOOR).unwrap()
    };
    let (one, two) = (fork("one.db", "one"), fork("two.db", "two"));
    assert_eq!(one[..2], two[..2], "the fork shares its beginning");
    let mut coach = device(2);
    take_in(&mut coach, NOOR, &one);
    let report = take_in(&mut coach, NOOR, &two);
    assert_eq!(why(&report), [(2, Refusal::PlaceTaken), (3, Refusal::PlaceTaken), (4, Refusal::PlaceTaken)]);
    let mut short = device(3);
    take_in(&mut short, NOOR, &one[..3]);
    let report = take_in(&mut short, NOOR, &two);
    assert_eq!(
        why(&report),
        [(2, Refusal::PlaceTaken), (3, Refusal::BrokenChain), (4, Refusal::BrokenChain)],
        "the tail of a fork does not hang on to what is here"
    );
    assert_eq!(short.lines(NOOR).unwrap(), one[..3]);
}

#[test]
fn what_is_no_record_of_this_person_is_named() {
    let (mut phone, lines) = phone_with(1);
    write(&mut phone, 1, IMKE, note("note of Imke's"));
    let unlinked = lines[0].replace("\"prev\":null", &format!("\"prev\":\"{}\"", "0".repeat(64)));
    let two_lines = lines[0].replacen(',', ",\n", 1);
    let file = [
        "{}".to_owned(),
        phone.lines(IMKE).unwrap()[0].clone(),
        two_lines,
        format!(" {}", lines[0]),
        unlinked,
        lines[0].replace("\"seq\":0,\"prev\":null", "\"seq\":9007199254740992,\"prev\":\"x\""),
        lines[0].clone(),
        lines[0].clone(),
    ];
    let mut coach = device(2);
    let report = take_in(&mut coach, NOOR, &file);
    use Refusal::{AnotherPerson, NotARecord};
    assert_eq!(
        why(&report),
        [
            (0, NotARecord),
            (1, AnotherPerson),
            (2, NotARecord),
            (3, NotARecord),
            (4, NotARecord),
            (5, NotARecord)
        ]
    );
    assert_eq!(report.new, 1, "the good line counts once");
    assert_eq!(coach.all_people().unwrap().len(), 1, "nothing of Imke's came in");
}

#[test]
fn an_id_of_another_persons_record_is_two_contents() {
    let (_, lines) = phone_with(1);
    let mut coach = device(2);
    take_in(&mut coach, NOOR, &lines);
    let moved = lines[0].replace(&NOOR.to_string(), &IMKE.to_string());
    let report = take_in(&mut coach, IMKE, &[moved]);
    assert_eq!(why(&report), [(0, Refusal::TwoContents)]);
}

#[test]
fn ones_own_lines_come_back_as_known() {
    let (mut phone, lines) = phone_with(3);
    let report = take_in(&mut phone, NOOR, &lines);
    assert_eq!((report.known, report.new, report.renewed), (3, 0, None));
}

#[test]
fn a_profile_restored_from_an_older_copy_takes_back_what_it_lost_and_goes_on_under_a_new_name() {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("phone.db"), folder.path().join("old.db"));
    let mut phone = Store::open(&path).unwrap();
    write(&mut phone, 0, NOOR, note("one"));
    phone.backup_to(&copy).unwrap();
    write(&mut phone, 1, NOOR, note("two"));
    let sent = phone.lines(NOOR).unwrap();
    let old_name = phone.device().unwrap();
    drop(phone);
    // The worst case: the old state comes back without anybody noticing, marker and all.
    let conn = rusqlite::Connection::open(&path).unwrap();
    conn.execute_batch("PRAGMA foreign_keys = ON; DELETE FROM records WHERE seq = 1").unwrap();
    drop(conn);
    let mut phone = Store::open(&path).unwrap();
    assert_eq!(phone.device().unwrap(), old_name, "nothing was noticed on opening");
    let plan = phone.plan_take_in(NOOR, &sent).unwrap();
    assert!(plan.renews_device && !plan.changes_nothing());
    let report = phone.apply_take_in(&plan, Action::TakeInLog, minute(5), vec![note("taken in")]).unwrap();
    let new_name = phone.device().unwrap();
    assert_eq!((report.new, report.renewed), (1, Some(new_name)));
    assert_ne!(new_name, old_name);
    assert_eq!(report.change.records[0].device, new_name, "it writes on under the new name");
    assert_eq!(report.change.records[0].seq, 0);
    assert_eq!(phone.own_lines(NOOR, &[]).unwrap().len(), 3, "what it wrote under both names is its own");
    assert_eq!(take_in(&mut phone, NOOR, &sent).renewed, None, "and once is enough");
    drop(phone);
    assert_eq!(Store::open(&path).unwrap().device().unwrap(), new_name, "the marker went with it");
}

#[test]
fn a_copy_that_wrote_on_under_ones_own_name_is_named() {
    let (mut phone, lines) = phone_with(2);
    let old_name = phone.device().unwrap();
    let mut record: Record = serde_json::from_str(&lines[1]).unwrap();
    record.id.0 = Uuid::from_u128(77);
    let other = serde_json::to_string(&record).unwrap();
    let report = take_in(&mut phone, NOOR, &[other]);
    assert_eq!(why(&report), [(0, Refusal::PlaceTaken)]);
    assert!(report.renewed.is_some_and(|d| d != old_name), "whoever wrote that, it may happen again");
    assert_eq!(phone.lines(NOOR).unwrap(), lines);
}

#[test]
fn a_plan_holds_only_for_the_log_that_it_was_made_from() {
    let (_, lines) = phone_with(3);
    let mut coach = device(2);
    let plan = coach.plan_take_in(NOOR, &lines).unwrap();
    write(&mut coach, 0, NOOR, note("in between"));
    let error = coach.apply_take_in(&plan, Action::TakeInLog, minute(1), vec![]).unwrap_err();
    assert!(matches!(error, StoreError::PlanStale));
    assert_eq!(coach.lines(NOOR).unwrap().len(), 1, "nothing was taken in");
    assert_eq!(take_in(&mut coach, NOOR, &lines).new, 3);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever one altered line in the middle does, the true file mends it.
    #[test]
    fn no_alteration_in_the_middle_is_papered_over(
        at in 0_usize..6, what in 0_u8..3, order in Just((0..8).collect::<Vec<usize>>()).prop_shuffle(),
        twice in any::<bool>(),
    ) {
        let (_, lines) = phone_with(8);
        let mut file = lines.clone();
        let line = &lines[at];
        file[at] = match what {
            0 => altered(line),
            1 => line.replace("+01:00", "+02:00"),
            _ if at == 0 => line.replace("\"prev\":null", "\"prev\":\"00\""),
            _ => line.replace("\"prev\":\"", "\"prev\":\"0"),
        };
        let shuffled: Vec<String> = order.iter().map(|&n| file[n].clone()).collect();
        let mut coach = device(2);
        if twice {
            take_in(&mut coach, NOOR, &shuffled[..3]);
        }
        let first = take_in(&mut coach, NOOR, &shuffled);
        prop_assert!(coach.check().unwrap().is_sound());
        let stored = coach.lines(NOOR).unwrap();
        if !twice {
            prop_assert_eq!(first.refused.len(), 1);
            prop_assert!(!stored.contains(&file[at]), "the altered line is not kept");
        }
        let mended = take_in(&mut coach, NOOR, &lines);
        if !twice {
            prop_assert_eq!(mended.refused.len(), 0);
            prop_assert_eq!(coach.lines(NOOR).unwrap(), lines);
            assert_whole(&coach, "mended");
        }
        prop_assert!(coach.check().unwrap().is_sound());
    }

    /// In whatever parts and order a log travels, the union is the log.
    #[test]
    fn a_union_of_parts_is_the_log(parts in prop::collection::vec(prop::collection::vec(0_usize..10, 0..6), 0..6)) {
        let (_, lines) = phone_with(10);
        let mut coach = device(2);
        let mut here = std::collections::BTreeSet::new();
        for part in parts {
            let file: Vec<String> = part.iter().map(|&n| lines[n].clone()).collect();
            let report = take_in(&mut coach, NOOR, &file);
            let fresh = part.iter().filter(|n| here.insert(**n)).count();
            prop_assert_eq!((report.new, report.refused.len()), (fresh, 0));
            let missing: u64 = report.gaps.iter().map(|g| g.to - g.from + 1).sum();
            if let (false, Some(last)) = (part.is_empty(), here.last()) {
                prop_assert_eq!(missing as usize, last + 1 - here.len());
            }
        }
        take_in(&mut coach, NOOR, &lines);
        prop_assert_eq!(coach.lines(NOOR).unwrap(), lines);
        assert_whole(&coach, "the union is whole");
    }
}
