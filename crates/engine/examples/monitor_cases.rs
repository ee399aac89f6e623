//! Writes what `monitor` works out for many cases, one JSON object a line, so that another program can
//! work it out again: `cargo run -p newel-engine --example monitor_cases`.
//!
//! A case is `{"of": "jeffreys" | "fisher" | "series", ...}` with its inputs and the engine's result.

use chrono::{DateTime, Days, FixedOffset, NaiveDate, NaiveTime, TimeDelta};
use newel_engine::catalogue::Catalogue;
use newel_engine::history::History;
use newel_engine::ids::{DeviceId, PersonId, PlanSessionId, ProgrammeId, RecordId, RunId};
use newel_engine::kit::Load;
use newel_engine::monitor::chance::{beta_cdf, fisher_exact, jeffreys};
use newel_engine::monitor::load::{mean_and_sd, monotony, strain};
use newel_engine::monitor::{Watch, Watched};
use newel_engine::record::{Payload, Purpose, Record, Reserve, SCHEMA_VERSION, SetDone};
use newel_engine::rules::RulePack;
use newel_engine::state::{Frame, State};
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng as _, SeedableRng as _};
use serde_json::{Value, json};
use std::io::Write as _;
use uuid::Uuid;

/// Random tables and shares; the corners come on top.
const RANDOM: u32 = 2500;
/// Random series of sessions.
const SERIES: u32 = 40;
/// Days of a series.
const SPAN: u64 = 140;

struct Draw(ChaCha8Rng);

impl Draw {
    /// From `low` to `high`, both included; the small lean of the remainder does no harm here.
    fn between(&mut self, low: u32, high: u32) -> u32 {
        low + self.0.next_u32() % (high - low + 1)
    }
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut draw = Draw(ChaCha8Rng::seed_from_u64(20_260_302));
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    for case in shares(&mut draw).into_iter().chain(tables(&mut draw)) {
        writeln!(out, "{case}")?;
    }
    let catalogue = Catalogue::built_in()?;
    let rules = RulePack::built_in()?;
    for number in 0..SERIES {
        writeln!(out, "{}", series(&mut draw, &catalogue, &rules, number)?)?;
    }
    out.flush()?;
    Ok(())
}

fn shares(draw: &mut Draw) -> Vec<Value> {
    let mut asked: Vec<(u32, u32, f64)> = Vec::new();
    for n in [1, 2, 3, 8, 40, 365, 5000] {
        for x in [0, 1, n / 2, n - 1, n] {
            asked.extend([0.5, 0.8, 0.95, 0.999].map(|c| (x, n, c)));
        }
    }
    for _ in 0..RANDOM {
        let n = draw.between(1, 600);
        let x = draw.between(0, n);
        asked.push((x, n, f64::from(draw.between(500, 999)) / 1000.0));
    }
    asked
        .into_iter()
        .map(|(x, n, confidence)| {
            let (low, high) = jeffreys(x, n, confidence);
            let at = (f64::from(x) + 0.3) / (f64::from(n) + 0.6);
            let below = beta_cdf(f64::from(x) + 0.5, f64::from(n - x) + 0.5, at);
            json!({ "of": "jeffreys", "x": x, "n": n, "confidence": confidence, "low": low, "high": high,
                    "at": at, "cdf": below })
        })
        .collect()
}

fn tables(draw: &mut Draw) -> Vec<Value> {
    let mut asked: Vec<[u32; 4]> = Vec::new();
    for most in [0, 1, 2, 9, 60] {
        for corner in 0..16u32 {
            asked.push([0, 1, 2, 3].map(|i| if corner >> i & 1 == 1 { most } else { most / 3 }));
            asked.push([0, 1, 2, 3].map(|i| if corner >> i & 1 == 1 { most } else { 0 }));
        }
    }
    for _ in 0..RANDOM {
        let most = [5, 20, 60, 200][draw.between(0, 3) as usize];
        asked.push([0; 4].map(|_: u32| draw.between(0, most)));
    }
    asked
        .into_iter()
        .map(|[a, b, c, d]| json!({ "of": "fisher", "table": [a, b, c, d], "p": fisher_exact(a, b, c, d) }))
        .collect()
}

/// Sessions on random days, some twice a day, some after weeks away, with what a whole watch says of
/// each of its weeks, and of seven-day windows of the daily loads.
fn series(
    draw: &mut Draw,
    catalogue: &Catalogue,
    rules: &RulePack,
    number: u32,
) -> Result<Value, Box<dyn std::error::Error>> {
    let first = NaiveDate::from_ymd_opt(2026, 1, 5).ok_or("a day")?;
    let mut records: Vec<Record> = Vec::new();
    let mut sessions: Vec<Value> = Vec::new();
    let mut day = 0u64;
    while day < SPAN {
        let on = first + Days::new(day);
        for nth in 0..draw.between(1, 5).saturating_sub(3).max(1) {
            let (effort, minutes) = (draw.between(0, 10), draw.between(1, 90));
            log(&mut records, on, nth, effort, minutes)?;
            sessions.push(json!({ "day": on, "effort": effort, "minutes": minutes }));
        }
        // Now and then three weeks away.
        day += u64::from(if draw.between(0, 11) == 0 { 21 } else { draw.between(1, 5) });
    }
    let on = first + Days::new(SPAN) + Days::new(u64::from(number % 7));
    let history = History::of(&records);
    let state = State::of(&history, Frame { catalogue, rules, starts: &[], starts_of: None, day: on });
    let watch = Watch::of(&Watched {
        history: &history,
        state: &state,
        catalogue,
        rules,
        per_week: Some(3),
        day: on,
    });
    let windows: Vec<Value> = watch
        .weeks
        .iter()
        .map(|w| {
            let (mean, sd) = mean_and_sd(&w.load.daily).unwrap_or((f64::NAN, f64::NAN));
            json!({ "from": w.from, "to": w.to, "sum": w.load.sum, "mean": mean, "sd": sd,
                    "monotony": monotony(&w.load.daily), "strain": strain(&w.load.daily),
                    "shown": [w.load.monotony, w.load.strain], "whole": w.whole,
                    "minutes": w.minutes.minutes, "days": w.minutes.days, "sessions": w.sessions })
        })
        .collect();
    Ok(json!({ "of": "series", "on": on, "sessions": sessions, "weeks": windows }))
}

/// A session of one set.
fn log(
    records: &mut Vec<Record>,
    day: NaiveDate,
    nth: u32,
    effort: u32,
    minutes: u32,
) -> Result<(), Box<dyn std::error::Error>> {
    let hour = NaiveTime::from_hms_opt(9 + 3 * nth, 0, 0).ok_or("an hour")?;
    let mut at: DateTime<FixedOffset> = day.and_time(hour).and_utc().fixed_offset();
    let run = RunId(Uuid::from_u128(1_000_000 + records.len() as u128));
    let payloads = [
        Payload::SessionStarted {
            run,
            day,
            programme: ProgrammeId(Uuid::from_u128(7)),
            revision: 1,
            session: PlanSessionId::from("a"),
        },
        Payload::SetDone(SetDone {
            run,
            slot: "squat".into(),
            round: 0,
            side: None,
            ladder: "squat".into(),
            variant: "squat-free".into(),
            load: Load::Nothing,
            reps: 10,
            seconds: None,
            reserve: Some(Reserve::Exactly(3)),
            purpose: Purpose::Work,
            stopped: false,
        }),
        Payload::SessionEnded {
            run,
            effort: Some(u8::try_from(effort)?),
            minutes: Some(u16::try_from(minutes)?),
            note: None,
        },
    ];
    for payload in payloads {
        let seq = records.len() as u64;
        at += TimeDelta::seconds(30);
        records.push(Record {
            v: SCHEMA_VERSION,
            id: RecordId(Uuid::from_u128(u128::from(seq) + 1)),
            device: DeviceId(Uuid::from_u128(1)),
            person: PersonId(Uuid::from_u128(2)),
            seq,
            prev: None,
            at,
            payload,
        });
    }
    Ok(())
}
