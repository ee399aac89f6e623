//! Backups and their way back.

use crate::support::*;
use newel_store::{Opened, Store};
use std::fs;

#[test]
fn a_backup_holds_everything_and_opens_under_a_name_of_its_own() {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("p.db"), folder.path().join("b.db"));
    let mut phone = Store::open(&path).unwrap();
    write(&mut phone, 0, NOOR, set(1, 0));
    phone.set_setting("language", "en").unwrap();
    fs::write(&copy, "an older backup").unwrap();
    phone.backup_to(&copy).unwrap();
    assert_eq!(content(&copy), content(&path), "every table is the same");
    let back = Store::open(&copy).unwrap();
    assert_eq!(back.opened(), Opened::Copied);
    assert_eq!(back.lines(NOOR).unwrap(), phone.lines(NOOR).unwrap());
    assert_whole(&back, "a backup holds together");
}

#[test]
fn a_backup_is_written_whole_or_not_at_all() {
    let folder = tempfile::tempdir().unwrap();
    let phone = Store::open(folder.path().join("p.db")).unwrap();
    let error = phone.backup_to(folder.path().join("none/b.db")).unwrap_err();
    assert_eq!(error.code(), "io");
    let taken = folder.path().join("taken");
    fs::create_dir(&taken).unwrap();
    fs::write(taken.join("x"), "").unwrap();
    let error = phone.backup_to(&taken).unwrap_err();
    assert!(error.to_string().contains("taken"), "{error}");
    let left: Vec<_> = fs::read_dir(folder.path()).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert!(
        left.iter().all(|n| !n.to_string_lossy().starts_with(".tmp")),
        "nothing is left lying about: {left:?}"
    );
}

#[test]
fn a_restore_brings_all_of_it_back_under_a_new_name() {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("p.db"), folder.path().join("b.db"));
    let mut phone = Store::open(&path).unwrap();
    let name = phone.device().unwrap();
    write(&mut phone, 0, NOOR, set(1, 0));
    phone.set_setting("language", "de").unwrap();
    phone.backup_to(&copy).unwrap();
    let lines = phone.lines(NOOR).unwrap();
    write(&mut phone, 1, NOOR, set(1, 1));
    phone.set_setting("language", "en").unwrap();
    phone.restore_from(&copy).unwrap();
    assert_eq!(phone.lines(NOOR).unwrap(), lines);
    assert_eq!(phone.setting("language").unwrap().as_deref(), Some("de"), "settings come back too");
    let renewed = phone.device().unwrap();
    assert_ne!(renewed, name, "the later set may be with the coach already");
    write(&mut phone, 2, NOOR, set(1, 1));
    assert_whole(&phone, "it goes on");
    drop(phone);
    let phone = Store::open(&path).unwrap();
    assert_eq!((phone.opened(), phone.device().unwrap()), (Opened::Known, renewed));
    assert_eq!(phone.lines(NOOR).unwrap().len(), 2);
}

#[test]
fn a_damaged_backup_changes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("p.db"), folder.path().join("b.db"));
    let mut phone = Store::open(&path).unwrap();
    write(&mut phone, 0, NOOR, set(1, 0));
    phone.backup_to(&copy).unwrap();
    let conn = rusqlite::Connection::open(&copy).unwrap();
    conn.execute_batch("DROP TRIGGER records_never_change; UPDATE records SET line = '{}'").unwrap();
    drop(conn);
    let before = phone.lines(NOOR).unwrap();
    let error = phone.restore_from(&copy).unwrap_err();
    assert_eq!(error.code(), "corrupt");
    assert!(error.to_string().contains("b.db"), "the backup is named, not a passing copy of it: {error}");
    fs::write(&copy, "a letter").unwrap();
    assert_eq!(phone.restore_from(&copy).unwrap_err().code(), "foreign");
    assert_eq!(phone.lines(NOOR).unwrap(), before);
    let left = fs::read_dir(folder.path()).unwrap().filter(|e| e.as_ref().unwrap().path().is_dir()).count();
    assert_eq!(left, 0, "no passing copy is left lying about");
}
