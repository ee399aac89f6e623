//! Files on the disk are whole or not there.

use crate::support::*;
use newel_exchange::{MAX_BYTES, read_log, read_whole, write_log, write_whole};
use std::fs;

#[test]
fn a_file_is_written_whole_and_read_back() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("Noor – Ångström.newel-log.json");
    fs::write(&path, "an older file").unwrap();
    write_whole(&path, &write_log(&log()).unwrap()).unwrap();
    assert_eq!(read_log(&read_whole(&path).unwrap()).unwrap(), log());
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1, "nothing else is left in the folder");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        assert_eq!(fs::metadata(&path).unwrap().permissions().mode() & 0o077, 0, "nobody else reads it");
    }
}

#[test]
fn a_place_that_cannot_be_written_leaves_what_was_there() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("none/file.json");
    let error = write_whole(&path, b"x").unwrap_err();
    assert_eq!(error.code(), "unwritten");
    assert!(error.to_string().contains("file.json"), "the path is said: {error}");
    let taken = folder.path().join("taken");
    fs::create_dir(&taken).unwrap();
    fs::write(taken.join("x"), "y").unwrap();
    assert_eq!(write_whole(&taken, b"x").unwrap_err().code(), "unwritten");
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1, "no passing file is left");
}

#[test]
fn reading_is_bounded_and_says_its_path() {
    let folder = tempfile::tempdir().unwrap();
    let error = read_whole(folder.path().join("none.json")).unwrap_err();
    assert_eq!(error.code(), "unreadable");
    assert!(error.to_string().contains("none.json"));
    let path = folder.path().join("large.json");
    fs::File::create(&path).unwrap().set_len(MAX_BYTES as u64 + 1).unwrap();
    assert_eq!(read_whole(&path).unwrap_err().code(), "too-large");
    fs::File::create(&path).unwrap().set_len(MAX_BYTES as u64).unwrap();
    assert_eq!(read_whole(&path).unwrap().len(), MAX_BYTES);
}
