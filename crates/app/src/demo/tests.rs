//! The demonstration holds together.

use super::*;
use chrono::TimeZone as _;

fn now() -> DateTime<FixedOffset> {
    FixedOffset::east_opt(0).unwrap().with_ymd_and_hms(2026, 11, 24, 7, 0, 0).unwrap()
}

#[test]
fn it_is_made_in_a_few_seconds() {
    let books = Books::built_in().unwrap();
    let begin = std::time::Instant::now();
    let mut scenario = make(&books, now(), SEED, |_, _| ()).unwrap();
    eprintln!("made in {:?}", begin.elapsed());
    for m in &mut scenario.clients {
        let n = m.profile.own().unwrap().records.len();
        let (b, _) = m.profile.log_bytes(now()).unwrap();
        eprintln!("{} {} records {} bytes, {} plans", m.slug, n, b.len(), m.plans.len());
    }
}
