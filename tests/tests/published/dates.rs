//! Published values of dating: due dates, gestational age, trimesters, and how far two dates may differ.

use super::{day, rules};
use chrono::{Datelike, Days};
use newel_engine::stage::{
    Age, BirthMode, Conceived, DatedBy, EmbryoAge, Stage, StageOn, Told, gestational_age, trimester,
};

fn of_period(period: chrono::NaiveDate) -> Option<(chrono::NaiveDate, DatedBy)> {
    Stage::pregnant(None, Some(period)).due()
}

fn conceived(conceived: Conceived) -> Option<(chrono::NaiveDate, DatedBy)> {
    Stage::Pregnant { due: None, told: None, last_period: None, conceived: Some(conceived) }.due()
}

#[test]
fn due_dates_are_280_days_on() {
    // ACOG Committee Opinion 700, Obstet Gynecol 2017;129:e150 [s]; checks by the calendar [d].
    for (period, due) in [
        (day(2026, 1, 1), day(2026, 10, 8)),
        (day(2022, 5, 7), day(2023, 2, 11)),
        (day(2027, 5, 25), day(2028, 2, 29)),
    ] {
        assert_eq!(of_period(period), Some((due, DatedBy::LastPeriod)));
        assert_eq!(gestational_age(due, period), Age { weeks: 0, days: 0 });
        assert_eq!(gestational_age(due, due), Age { weeks: 40, days: 0 });
    }
    let due = day(2026, 10, 8);
    assert_eq!(gestational_age(due, day(2026, 4, 9)), Age { weeks: 14, days: 0 });
    assert_eq!(gestational_age(due, day(2026, 7, 16)), Age { weeks: 28, days: 0 });
}

#[test]
fn a_transfer_an_ovulation_an_insemination() {
    // ACOG Committee Opinion 700 [s]: a day-5 embryo + 261, day-3 + 263; ovulation or insemination + 266 [s].
    let on = day(2026, 3, 10);
    let transfer = |embryo| conceived(Conceived::Transfer { on, embryo });
    assert_eq!(transfer(EmbryoAge::Day5), Some((day(2026, 11, 26), DatedBy::Transfer)));
    assert_eq!(transfer(EmbryoAge::Day3), Some((day(2026, 11, 28), DatedBy::Transfer)));
    assert_eq!(conceived(Conceived::Ovulation { on }), Some((on + Days::new(266), DatedBy::Ovulation)));
    assert_eq!(conceived(Conceived::Insemination { on }), Some((on + Days::new(266), DatedBy::Insemination)));
    // On the day of the transfer of a day-5 embryo it is 2 weeks and 5 days, of a day-3 embryo 2 and 3 [d].
    assert_eq!(gestational_age(day(2026, 11, 26), on), Age { weeks: 2, days: 5 });
    assert_eq!(gestational_age(day(2026, 11, 28), on), Age { weeks: 2, days: 3 });
    // Over a leap day, and over the end of a year [d].
    let leap = conceived(Conceived::Ovulation { on: day(2027, 6, 8) });
    assert_eq!(leap, Some((day(2028, 2, 29), DatedBy::Ovulation)));
    let embryo = EmbryoAge::Day5;
    let year = conceived(Conceived::Transfer { on: day(2026, 12, 31), embryo });
    assert_eq!(year, Some((day(2027, 9, 18), DatedBy::Transfer)));
}

#[test]
fn a_clinicians_date_wins_over_all_arithmetic() {
    let due = day(2026, 10, 8);
    let stage = Stage::Pregnant {
        due: Some(due),
        told: Some(Told { who: "midwife".into(), on: None }),
        last_period: Some(day(2026, 2, 1)),
        conceived: Some(Conceived::Ovulation { on: day(2026, 2, 20) }),
    };
    assert_eq!(stage.due(), Some((due, DatedBy::Clinician)));
    let StageOn::Pregnant { age: Some(age), trimester: Some(2) } = stage.on(day(2026, 4, 9)) else {
        panic!("dated, second trimester")
    };
    assert_eq!(age, Age { weeks: 14, days: 0 });
    // Without it the day of conception is nearer than a period.
    let Stage::Pregnant { told, last_period, conceived, .. } = stage else { panic!("pregnant") };
    let without = Stage::Pregnant { due: None, told, last_period, conceived };
    assert_eq!(without.due().map(|(_, by)| by), Some(DatedBy::Ovulation));
}

#[test]
fn a_due_date_is_a_count_of_days_and_not_of_months() {
    // Naegele's rule (7 days on, three months back) is another one and not used: for a period of 24 May 2026 it names
    // 31 February, for one of 20 March 2026 it says 27 December [d].
    assert_eq!(of_period(day(2026, 5, 24)).map(|d| d.0), Some(day(2027, 2, 28)));
    assert_eq!(of_period(day(2026, 3, 20)).map(|d| d.0), Some(day(2026, 12, 25)));
    // Every day of four years, a leap year among them: 280 days on, and 40 weeks on that day.
    let mut period = day(2026, 1, 1);
    while period.year() < 2030 {
        let due = of_period(period).map(|d| d.0).unwrap();
        assert_eq!((due - period).num_days(), 280);
        assert_eq!(gestational_age(due, due), Age { weeks: 40, days: 0 });
        period = period + Days::new(1);
    }
}

#[test]
fn trimesters() {
    // To 13w6d [o]; 14w0d to 27w6d; from 28w0d [m].
    for (weeks, days, expected) in [(0, 0, 1), (13, 6, 1), (14, 0, 2), (27, 6, 2), (28, 0, 3), (41, 3, 3)] {
        assert_eq!(trimester(Age { weeks, days }), expected, "{weeks}w{days}d");
    }
    // On the calendar, for a due date of 8 October 2026 [d].
    let stage = Stage::pregnant(Some(day(2026, 10, 8)), None);
    for (on, expected) in [
        (day(2026, 4, 8), 1),
        (day(2026, 4, 9), 2),
        (day(2026, 7, 15), 2),
        (day(2026, 7, 16), 3),
        (day(2026, 10, 20), 3),
    ] {
        let StageOn::Pregnant { trimester, .. } = stage.on(on) else { panic!("pregnant") };
        assert_eq!(trimester, Some(expected), "{on}");
    }
}

#[test]
fn two_dates_that_differ_by_more_than_a_scan_may() {
    // ACOG Committee Opinion 611 of 2014 [s]: more than 5 days before 9w0d, 7 to 15w6d, 10 to 21w6d, 14 to 27w6d, 21
    // from 28w0d, by the age that the period gives on the day of the scan.
    let period = day(2026, 1, 1);
    let asked = |weeks: u64, days: u64, off: i64| {
        let on = period + Days::new(weeks * 7 + days);
        let due = day(2026, 10, 8) + chrono::TimeDelta::days(off);
        let told = Some(Told { who: "scan".into(), on: Some(on) });
        let stage = Stage::Pregnant { due: Some(due), told, last_period: Some(period), conceived: None };
        assert_eq!(stage.due(), Some((due, DatedBy::Clinician)), "it is pointed out, and nothing is redated");
        stage.disagreement(&rules()).map(|d| d.days)
    };
    for (weeks, days, most) in [
        (8, 6, 5),
        (9, 0, 7),
        (15, 6, 7),
        (16, 0, 10),
        (21, 6, 10),
        (22, 0, 14),
        (27, 6, 14),
        (28, 0, 21),
        (36, 0, 21),
    ] {
        for sign in [-1, 1] {
            assert_eq!(asked(weeks, days, sign * most), None, "{weeks}w{days}d by {most}");
            assert_eq!(asked(weeks, days, sign * (most + 1)), Some(most + 1), "{weeks}w{days}d");
        }
    }
    // When it was given is not known: the narrowest counts.
    let stage = Stage::pregnant(Some(day(2026, 10, 14)), Some(period));
    assert_eq!(stage.disagreement(&rules()).map(|d| (d.days, d.most)), Some((6, 5)));
    let stage = Stage::pregnant(Some(day(2026, 10, 13)), Some(period));
    assert_eq!(stage.disagreement(&rules()), None);
}

#[test]
fn weeks_after_a_birth_go_on_beyond_a_year() {
    let stage =
        Stage::Postpartum { birth: day(2024, 2, 29), mode: BirthMode::Vaginal, severe_tear: Some(false) };
    for (on, weeks, days) in [
        (day(2024, 2, 29), 0, 0),
        (day(2025, 2, 27), 52, 0),
        (day(2025, 2, 28), 52, 1),
        (day(2026, 3, 5), 105, 0),
    ] {
        let StageOn::Postpartum { age, .. } = stage.on(on) else { panic!("after a birth") };
        assert_eq!(age, Age { weeks, days }, "{on}");
    }
}
