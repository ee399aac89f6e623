//! How far a programme has come, counted in sessions that were trained.

use crate::story::*;
use newel_engine::history::History;
use newel_engine::record::Reserve;
use newel_engine::weeks::{Progress, progress};

fn after(sessions: usize, weeks: Option<u8>) -> Progress {
    let mut s = Story::new();
    s.programme.per_week = 2;
    s.programme.weeks = weeks;
    for _ in 0..sessions {
        s.session_of("squat", 8, Some(Reserve::Exactly(3))).settled().days(9);
    }
    progress(&History::of(&s.records), &s.programme)
}

#[test]
fn a_week_goes_by_with_its_sessions_and_not_with_the_calendar() {
    // Two sessions a week, each nine days after the last: by the calendar the third would be in week three.
    let week = |sessions| after(sessions, Some(2)).week;
    assert_eq!([week(0), week(1), week(2), week(3), week(4)], [1, 1, 2, 2, 3]);
}

#[test]
fn it_is_over_when_the_sessions_of_all_its_weeks_are_trained() {
    assert!(!after(3, Some(2)).over, "one of four is still to come");
    assert!(after(4, Some(2)).over);
    assert!(!after(9, None).over, "without an end it is never over");
}
