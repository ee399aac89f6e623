//! Erasure takes a person's whole streams and nothing else.

use crate::support::*;
use newel_store::Store;
use std::fs;

#[test]
fn a_person_goes_whole_and_the_others_stay() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("coach.db");
    let mut phone = device(1);
    write(&mut phone, 0, NOOR, profile("Noor Unverwechselbar"));
    let set_of_hers = write(&mut phone, 1, NOOR, set(1, 0));
    let mut coach = Store::open(&path).unwrap();
    take_in(&mut coach, NOOR, &phone.lines(NOOR).unwrap());
    write(&mut coach, 2, NOOR, withdrawn(set_of_hers));
    write(&mut coach, 3, IMKE, profile("Imke"));
    let name = coach.device().unwrap();
    let others = coach.lines(IMKE).unwrap();

    assert_eq!(coach.erase_person(NOOR).unwrap(), 3);
    assert_eq!(coach.lines(NOOR).unwrap(), Vec::<String>::new());
    assert_eq!(coach.all_people().unwrap().len(), 1);
    assert_eq!(coach.lines(IMKE).unwrap(), others);
    assert_ne!(coach.device().unwrap(), name, "a second stream under the old name would be a fork");
    assert_whole(&coach, "nothing dangles");
    for file in fs::read_dir(folder.path()).unwrap() {
        let bytes = fs::read(file.unwrap().path()).unwrap();
        let trace = bytes.windows(16).any(|w| w == b"Unverwechselbar\"");
        assert!(!trace, "her name is overwritten and not only unlinked");
    }

    let report = take_in(&mut coach, NOOR, &phone.lines(NOOR).unwrap());
    assert_eq!((report.new, report.renewed), (2, None), "her file can be taken in anew");
    assert_eq!(coach.erase_person(IMKE).unwrap(), 1);
    let name = coach.device().unwrap();
    coach.erase_person(NOOR).unwrap();
    assert_eq!(coach.device().unwrap(), name, "nothing was written about her under this name");
}
