//! Opening what is there, and refusing what is not ours.

use crate::support::*;
use newel_store::{Opened, Store, StoreError};
use rusqlite::Connection;
use std::fs;
use std::path::Path;

fn profile_at(path: &Path) -> Store {
    let mut phone = Store::open(path).unwrap();
    write(&mut phone, 0, NOOR, note("one"));
    phone
}

fn sql(path: &Path, batch: &str) {
    Connection::open(path).unwrap().execute_batch(batch).unwrap();
}

#[test]
fn a_profile_opens_as_it_was() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    let phone = profile_at(&path);
    assert_eq!(phone.opened(), Opened::New);
    let (name, lines) = (phone.device().unwrap(), phone.lines(NOOR).unwrap());
    drop(phone);
    let phone = Store::open(&path).unwrap();
    assert_eq!(phone.opened(), Opened::Known);
    assert_eq!((phone.device().unwrap(), phone.lines(NOOR).unwrap()), (name, lines));
    assert_eq!(phone.path(), path);
}

#[test]
fn durability_is_as_the_design_asks() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    drop(profile_at(&path));
    let mode: String =
        Connection::open(&path).unwrap().query_row("PRAGMA journal_mode", [], |row| row.get(0)).unwrap();
    assert_eq!(mode, "wal");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        let mode = fs::metadata(&path).unwrap().permissions().mode();
        assert_eq!(mode & 0o077, 0, "nobody else on the machine reads health data");
    }
}

#[test]
fn a_record_can_not_be_changed_even_from_outside() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    drop(profile_at(&path));
    let conn = Connection::open(&path).unwrap();
    assert!(conn.execute("UPDATE records SET kind = 'x'", []).is_err());
}

#[test]
fn a_copy_goes_on_under_a_name_of_its_own() {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("p.db"), folder.path().join("copy.db"));
    let phone = profile_at(&path);
    let name = phone.device().unwrap();
    drop(phone);
    fs::copy(&path, &copy).unwrap();
    let other = Store::open(&copy).unwrap();
    assert_eq!(other.opened(), Opened::Copied, "no marker lies beside the copy");
    assert_ne!(other.device().unwrap(), name);
    assert_eq!(Store::open(&path).unwrap().device().unwrap(), name, "the original keeps its name");
    let other_name = other.device().unwrap();
    drop(other);
    assert_eq!(Store::open(&copy).unwrap().device().unwrap(), other_name, "and so does the copy");
}

#[cfg(unix)]
#[test]
fn a_copy_of_the_whole_folder_is_noticed_too() {
    let folder = tempfile::tempdir().unwrap();
    let (one, two) = (folder.path().join("one"), folder.path().join("two"));
    fs::create_dir(&one).unwrap();
    fs::create_dir(&two).unwrap();
    drop(profile_at(&one.join("p.db")));
    for entry in fs::read_dir(&one).unwrap() {
        let entry = entry.unwrap();
        fs::copy(entry.path(), two.join(entry.file_name())).unwrap();
    }
    assert_eq!(Store::open(two.join("p.db")).unwrap().opened(), Opened::Copied);
    fs::rename(&one, folder.path().join("moved")).unwrap();
    let moved = Store::open(folder.path().join("moved/p.db")).unwrap();
    assert_eq!(moved.opened(), Opened::Known, "a folder that only moved is the same profile");
}

#[test]
fn an_older_state_with_a_newer_marker_is_noticed() {
    let folder = tempfile::tempdir().unwrap();
    let (path, copy) = (folder.path().join("p.db"), folder.path().join("old.db"));
    let mut phone = profile_at(&path);
    phone.backup_to(&copy).unwrap();
    let renewed = phone.renew_device().unwrap();
    drop(phone);
    fs::remove_file(&path).unwrap();
    fs::rename(&copy, &path).unwrap();
    let phone = Store::open(&path).unwrap();
    assert_eq!(phone.opened(), Opened::Copied);
    assert_ne!(phone.device().unwrap(), renewed);
}

#[test]
fn a_newer_database_is_told_apart_from_a_damaged_one_and_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    drop(profile_at(&path));
    sql(&path, "PRAGMA user_version = 99");
    let before = fs::read(&path).unwrap();
    let error = Store::open(&path).unwrap_err();
    assert!(matches!(&error, StoreError::TooNew { found: 99, path: p, .. } if *p == path), "{error:?}");
    assert_eq!(Store::open_read_only(&path).unwrap_err().code(), "too-new");
    assert!(fs::read(&path).unwrap() == before, "not a byte was touched");
}

#[test]
fn what_is_no_database_of_ours_is_foreign_and_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let text = folder.path().join("letter.txt");
    fs::write(&text, "Dear Noor, ".repeat(1000)).unwrap();
    let other = folder.path().join("other.db");
    sql(&other, "CREATE TABLE photos (id INTEGER)");
    for path in [text, other] {
        let before = fs::read(&path).unwrap();
        let error = Store::open(&path).unwrap_err();
        assert!(matches!(&error, StoreError::Foreign { path: p } if *p == path), "{error:?}");
        assert_eq!(Store::open_read_only(&path).unwrap_err().code(), "foreign");
        assert!(fs::read(&path).unwrap() == before, "not a byte was touched");
    }
}

#[test]
fn a_missing_folder_and_a_missing_file_are_io_errors_with_their_path() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("none/p.db");
    let error = Store::open(&path).unwrap_err();
    assert!(matches!(&error, StoreError::Io { path: p, .. } if *p == path), "{error:?}");
    assert!(error.to_string().contains("none"), "the path is said");
    assert_eq!(Store::open_read_only(folder.path().join("p.db")).unwrap_err().code(), "io");
    assert!(!folder.path().join("p.db").exists(), "a look makes no file");
}

#[test]
fn a_look_changes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    let phone = profile_at(&path);
    let lines = phone.lines(NOOR).unwrap();
    drop(phone);
    fs::remove_file(folder.path().join("p.db.instance")).unwrap();
    let before = fs::read(&path).unwrap();
    let mut look = Store::open_read_only(&path).unwrap();
    assert_eq!((look.opened(), look.lines(NOOR).unwrap()), (Opened::ReadOnly, lines));
    assert_whole(&look, "a check needs no write");
    let error = look.write(newel_store::Action::WriteNote, minute(0), NOOR, vec![note("x")]).unwrap_err();
    assert_eq!(error.code(), "read-only");
    drop(look);
    assert!(fs::read(&path).unwrap() == before);
    assert!(!folder.path().join("p.db.instance").exists(), "no marker was made");
}

#[test]
fn a_damaged_database_is_called_so() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("p.db");
    let mut phone = profile_at(&path);
    for n in 0..200 {
        write(&mut phone, n, NOOR, note(&"a long note ".repeat(20)));
    }
    drop(phone);
    let mut bytes = fs::read(&path).unwrap();
    assert!(bytes.len() > 40_000, "the damage below hits pages of the log");
    for page in 4..bytes.len() / 4096 {
        bytes[page * 4096..page * 4096 + 200].fill(0xEE);
    }
    fs::write(&path, bytes).unwrap();
    let code = match Store::open(&path) {
        Ok(phone) => match phone.check() {
            Ok(found) if !found.is_sound() => "corrupt",
            Ok(_) => "nothing found",
            Err(error) => error.code(),
        },
        Err(error) => error.code(),
    };
    assert_eq!(code, "corrupt");
}

#[test]
fn a_database_of_the_first_schema_is_looked_at_as_it_is_and_brought_up_to_date_when_opened() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("old.db");
    drop(Store::open(&path).unwrap());
    sql(
        &path,
        "DROP TABLE pictures; DROP TABLE draft_steps; DROP TABLE drafts; DROP TABLE group_members;
         DROP TABLE client_groups; DROP TABLE archived; DROP TABLE last_sent;
         DROP TRIGGER glances_end_with_a_record; DROP TRIGGER glances_end_with_a_stream; DROP TABLE glances; PRAGMA user_version = 1",
    );
    assert_eq!(Store::open_read_only(&path).unwrap().setting("name").unwrap(), None, "it is read");
    let mut store = Store::open(&path).unwrap();
    store.keep_picture("a", b"bytes").unwrap();
    store.keep_picture("a", b"others").unwrap();
    assert_eq!(store.picture("a").unwrap().as_deref(), Some(&b"bytes"[..]), "a name stands for its bytes");
    assert_eq!(store.picture("b").unwrap(), None);
}
