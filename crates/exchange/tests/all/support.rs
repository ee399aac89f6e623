//! Documents to speak of: one log and one plan with every kind of record in them. All of it is invented.

use chrono::{DateTime, FixedOffset, NaiveDate, TimeDelta};
use newel_engine::catalogue::{
    Caution, Loading, OwnCatalogue, OwnLadder, OwnVariant, Pattern, Position, ReadyMark, UsualStart,
};
use newel_engine::ids::{DeviceId, LadderId, PersonId, ProgrammeId, RecordId, RunId};
use newel_engine::kit::{Band, Dumbbell, Kit, Load, Thing};
use newel_engine::programme::{
    Amount, Block, BlockForm, BlockWeek, Dose, LevelSpan, Phase, PlanSession, Programme, Slot, SlotWeek,
    Start, Tempo,
};
use newel_engine::proposal::{Gate, Offer, Outcome, Prescription, Proposal, SessionProposal, Target};
use newel_engine::reason::{Fact, Reason, ReasonCode, Reasons};
use newel_engine::record::{
    Baseline, CheckOutcome, CheckResult, ClearedThing, HoldAnswer, NextDay, Payload, Profile, Purpose,
    Readiness, Record, Reserve, RestrictionKind, SCHEMA_VERSION, SetDone, Side, SkipWhy, Symptom,
    SymptomAmount, TodayThing, Versions, Voice,
};
use newel_engine::rules::{RuleSetting, SettingTarget, SettingValue};
use newel_engine::stage::{BirthMode, Stage};
use newel_engine::units::{Newtons, Weight};
use newel_engine::wording::VariantWords;
use newel_exchange::{LogDocument, Picture, PlanDocument};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use uuid::{Builder, Uuid};

pub const PERSON: PersonId = PersonId(Uuid::from_u128(0xA1));
pub const PHONE: DeviceId = DeviceId(Uuid::from_u128(0xD1));
pub const LAPTOP: DeviceId = DeviceId(Uuid::from_u128(0xD2));
const RUN: RunId = RunId(Uuid::from_u128(0xB1));
const PROGRAMME: ProgrammeId = ProgrammeId(Uuid::from_u128(0xC1));

pub fn at(minutes: i64) -> DateTime<FixedOffset> {
    DateTime::parse_from_rfc3339("2026-03-02T09:30:00.250+01:00").unwrap() + TimeDelta::minutes(minutes)
}

fn day() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, 2).unwrap()
}

/// The id of the nth record of a device: the same each time.
fn id(device: DeviceId, seq: u64) -> RecordId {
    let mut tail = [0; 10];
    tail[8] = device.0.as_bytes()[15];
    tail[9] = u8::try_from(seq).unwrap();
    let millis = u64::try_from(at(0).timestamp_millis()).unwrap() + seq * 60_000;
    RecordId(Builder::from_unix_timestamp_millis(millis, &tail).into_uuid())
}

/// A stream: chained, each record a minute after the one before.
pub fn stream(device: DeviceId, payloads: Vec<Payload>) -> Vec<String> {
    let mut prev = None;
    let mut lines = Vec::new();
    for (seq, payload) in (0..).zip(payloads) {
        let record = Record {
            v: SCHEMA_VERSION,
            id: id(device, seq),
            device,
            person: PERSON,
            seq,
            prev,
            at: at(i64::try_from(seq).unwrap()),
            payload,
        };
        let line = serde_json::to_string(&record).unwrap();
        let hash = Sha256::digest(line.as_bytes()).iter().fold(String::new(), |mut hex, byte| {
            write!(hex, "{byte:02x}").unwrap();
            hex
        });
        prev = Some(hash);
        lines.push(line);
    }
    lines
}

fn set(round: u8) -> SetDone {
    SetDone {
        run: RUN,
        slot: "a1".into(),
        round,
        side: Some(Side::Left),
        ladder: "row".into(),
        variant: "row-supported".into(),
        load: Load::One { weight: Weight::lb(17.5) },
        reps: 10,
        seconds: None,
        reserve: Some(Reserve::Exactly(3)),
        purpose: Purpose::Work,
        stopped: false,
    }
}

fn symptom(kind: &str) -> Symptom {
    Symptom {
        kind: Some(kind.into()),
        amount: Some(SymptomAmount::Pain(4)),
        place: Some("wrist".into()),
        words: Some("zieht beim Stützen – ‘a pull’ 痛い".into()),
    }
}

fn proposal() -> SessionProposal {
    let reason = Reason {
        code: ReasonCode::ALL[0],
        facts: BTreeMap::from([
            ("load".to_owned(), Fact::Load(Load::Nothing)),
            ("day".to_owned(), Fact::Day(day())),
        ]),
        rule: "load.step".into(),
        source: "common practice, no source".into(),
    };
    let train = Prescription {
        level: 1,
        levels: 4,
        variant: "row-supported".into(),
        load: Load::Pair { weight: Weight::in_kg(6.0) },
        sets: 3,
        target: Target::Reps(10),
        range: Amount::Reps { low: 8, high: 12 },
        reserve: Some(3.25),
        floor: 1.0,
        purpose: Purpose::Work,
        options: vec![Offer {
            level: 0,
            variant: "row-band".into(),
            load: Load::Bands { bands: vec![band()] },
            target: Target::Reps(12),
        }],
        cue: false,
    };
    let ladder = LadderId::from("row");
    SessionProposal {
        on: day(),
        programme: PROGRAMME,
        revision: 2,
        session: "monday".into(),
        gate: Gate::Open,
        slots: vec![
            Proposal {
                slot: "a1".into(),
                ladder: ladder.clone(),
                outcome: Outcome::Train(train),
                reasons: Reasons::of(reason.clone()),
            },
            Proposal { slot: "a2".into(), ladder, outcome: Outcome::Rest, reasons: Reasons::of(reason) },
        ],
    }
}

fn band() -> Band {
    Band { name: "das grüne".into(), at_100: Newtons::from_lb(4.6), at_200: Newtons::from_lb(6.7) }
}

fn start() -> Start {
    Start {
        ladder: "row".into(),
        level: Some(1),
        variant: Some("row-supported".into()),
        load: Some(Load::Assist { bands: vec![band()] }),
    }
}

/// What a client's phone writes, one record of each kind that it may write.
fn of_the_phone() -> Vec<Payload> {
    let note = "geschlafen wie ein Stein ✓ \"quoted\" \\ \u{2028} \u{1F476}".to_owned();
    vec![
        Payload::Profile(Profile {
            name: "Noor Ångström".into(),
            emergency: Some("112".into()),
            clinic: None,
        }),
        Payload::Consent { text: "I agree that my coach reads my log.".into() },
        Payload::StageChanged {
            stage: Stage::Postpartum { birth: day(), mode: BirthMode::Caesarean, severe_tear: Some(false) },
        },
        Payload::BodyMass { mass: Weight::in_kg(68.4) },
        Payload::KitChanged {
            kit: Kit {
                dumbbells: vec![Dumbbell { weight: Weight::lb(17.5), pair: true }],
                barbell: None,
                bands: vec![band()],
                things: vec![Thing::Bench, Thing::LoopBand],
            },
        },
        Payload::PlanTakenIn { plan: "{\n  \"format\": \"newel.plan\"\n}".into() },
        Payload::TenReps { variant: "row-supported".into(), load: Load::One { weight: Weight::in_kg(8.0) } },
        Payload::CheckIn {
            run: RUN,
            readiness: Readiness::Tired,
            symptoms: vec![symptom("wrist-pain")],
            today: vec![TodayThing::NoKit],
        },
        Payload::SessionStarted {
            run: RUN,
            day: day(),
            programme: PROGRAMME,
            revision: 2,
            session: "monday".into(),
        },
        Payload::ProposalShown {
            run: RUN,
            inputs: "ab".repeat(32),
            known: vec![(PHONE, 9), (LAPTOP, 3)],
            versions: versions(),
            result: proposal().into(),
        },
        Payload::SetDone(set(0)),
        Payload::OptionChosen { run: RUN, slot: "a1".into(), variant: "row-band".into() },
        Payload::SetSkipped { run: RUN, slot: "a2".into(), round: 0, why: SkipWhy::Symptom },
        Payload::SymptomMark {
            run: Some(RUN),
            slot: Some("a1".into()),
            ladder: Some("row".into()),
            variant: Some("row-supported".into()),
            round: Some(1),
            at_rest: false,
            symptom: symptom("wrist-pain"),
        },
        Payload::Withdrawal { target: id(PHONE, 12) },
        Payload::Correction { target: id(PHONE, 10), instead: Box::new(Payload::SetDone(set(1))) },
        Payload::SessionEnded { run: RUN, effort: Some(6), minutes: Some(27), note: Some(note.clone()) },
        Payload::NextDayAnswer {
            run: RUN,
            answer: NextDay::NotSettled,
            symptoms: vec![symptom("heaviness")],
        },
        Payload::Question { text: "Is the wall version enough?".into() },
        Payload::Note { text: note },
    ]
}

/// What a coach's laptop writes about a client, one record of each kind that it may write.
fn of_the_laptop() -> Vec<Payload> {
    vec![
        Payload::Screening {
            conditions: vec!["girdle-pain".into()],
            baselines: vec![Baseline { kind: "heaviness".into(), amount: SymptomAmount::Little }],
            trained: true,
            never: false,
            by: Some(Voice::Coach),
            note: Some("sleeps little".into()),
            instead_of: vec![id(PHONE, 3)],
        },
        Payload::TakenUp { by: Voice::Coach, note: "slowly".into() },
        Payload::ImpactChecked {
            on: day(),
            by: Voice::Coach,
            results: vec![CheckResult { check: "walk".into(), outcome: CheckOutcome::Clear }],
            note: "no sign".into(),
        },
        Payload::Restriction {
            what: RestrictionKind::Position { position: Position::Supine },
            until: Some(day()),
            note: "after the visit".into(),
        },
        Payload::HoldAnswered {
            hold: id(PHONE, 13),
            answer: HoldAnswer::RestartLighter,
            note: "one level down, thumb round the handle".into(),
        },
        Payload::Clearance {
            who: "her physiotherapist".into(),
            on: day(),
            said: "lift as it feels".into(),
            speaks_of: Some(vec![
                ClearedThing::Birth,
                ClearedThing::Condition { condition: "prolapse".into() },
                ClearedThing::Sign { record: id(PHONE, 13) },
            ]),
            until: Some(day()),
        },
        Payload::Answer { question: id(PHONE, 18), text: "Ja, völlig.".into() },
        Payload::Override { start: start(), note: "she lifts this at work".into() },
        Payload::VariantWords(VariantWords {
            variant: "squat-goblet".into(),
            cues: vec!["Sit between your heels".into()],
            picture: None,
        }),
        Payload::RuleSetting(RuleSetting {
            target: SettingTarget::Number { rule: "load.step".into(), name: "share".into() },
            value: SettingValue::Number(0.05),
            until: Some(day()),
            note: Some("half a step while she sleeps so little".into()),
        }),
        Payload::PlanSent { plan: "cd".repeat(32), sequence: 3 },
    ]
}

fn versions() -> Versions {
    Versions { engine: "0.1.0".into(), catalogue: 1, rules: 1 }
}

/// The log file of the tests.
pub fn log() -> LogDocument {
    let mut lines = stream(PHONE, of_the_phone());
    lines.extend(stream(LAPTOP, of_the_laptop()));
    // Two lines that this version did not write itself: a kind that it does not know, and spaces of another hand.
    let other = lines[0].replace(&PHONE.to_string(), &Uuid::from_u128(0xD3).to_string());
    let newer =
        other.replace("\"v\":1", "\"v\":2").replace("\"kind\":\"profile\"", "\"kind\":\"moon_phase\"");
    lines.push(newer.replace(&id(PHONE, 0).to_string(), &id(DeviceId(Uuid::from_u128(0xD3)), 0).to_string()));
    let spaced = stream(DeviceId(Uuid::from_u128(0xD4)), vec![Payload::Note { text: "\u{e9}".into() }]);
    lines.push(spaced[0].replace("\"seq\":0", "\"seq\" :\t0 ").replace('\u{e9}', "\\u00e9"));
    LogDocument {
        person: PERSON,
        name: "Noor Ångström".into(),
        device: PHONE,
        made_at: at(90),
        versions: versions(),
        lines,
    }
}

/// The plan file of the tests.
pub fn plan() -> PlanDocument {
    let dose = Dose {
        amount: Amount::Reps { low: 8, high: 12 },
        target_rir: 3,
        tempo: Some(Tempo { down: 3, pause: 1, up: 1 }),
    };
    let slot =
        |id: &str, levels| Slot { id: id.into(), ladder: "row".into(), levels, dose, by_week: Vec::new() };
    let block = Block {
        id: "a".into(),
        form: BlockForm::Superset,
        rounds: 3,
        rest_seconds: 90,
        rest_between_seconds: 0,
        by_week: Vec::new(),
        slots: vec![slot("a1", None), slot("a2", Some(LevelSpan { low: 0, high: 2 }))],
    };
    PlanDocument {
        person: PERSON,
        person_name: "Noor Ångström".into(),
        coach_name: "Pía".into(),
        coach_device: LAPTOP,
        sequence: 3,
        made_at: at(200),
        programme: Some(Programme {
            id: PROGRAMME,
            revision: 2,
            title: "Back to the staircase".into(),
            per_week: 2,
            weeks: None,
            light_weeks: Vec::new(),
            phases: Vec::new(),
            sessions: vec![PlanSession {
                id: "monday".into(),
                title: "Monday".into(),
                minutes: None,
                phase: None,
                blocks: vec![block],
            }],
        }),
        starts: vec![start()],
        lines: stream(LAPTOP, of_the_laptop()),
        words: Vec::new(),
        begins: None,
        own: None,
        pictures: Vec::new(),
    }
}

/// The plan file of the tests with a day on which it begins.
pub fn plan_with_beginning() -> PlanDocument {
    PlanDocument { begins: Some("2026-03-16".parse().unwrap()), ..plan_with_words() }
}

/// The plan file of the tests with two phases, a light week, a warm-up and a dose of one week.
pub fn plan_with_weeks() -> PlanDocument {
    let mut plan = plan();
    if let Some(programme) = &mut plan.programme {
        let mut second = programme.sessions[0].clone();
        second.id = "thursday".into();
        second.phase = Some("build".into());
        let block = &mut second.blocks[0];
        block.id = "b".into();
        block.by_week = vec![BlockWeek { week: 2, rounds: 4, rest_seconds: 90, rest_between_seconds: 0 }];
        for (slot, id) in block.slots.iter_mut().zip(["b1", "b2"]) {
            slot.id = id.into();
        }
        let heavier = Dose { target_rir: 2, ..block.slots[0].dose };
        block.slots[0].by_week = vec![SlotWeek { week: 3, dose: heavier }];
        let mut warm = block.clone();
        warm.id = "w".into();
        warm.form = BlockForm::WarmUp;
        warm.by_week.clear();
        warm.slots.truncate(1);
        warm.slots[0].id = "w1".into();
        warm.slots[0].by_week.clear();
        second.blocks.insert(0, warm);
        programme.sessions[0].phase = Some("base".into());
        programme.sessions.push(second);
        let phase =
            |id: &str, weeks, light_weeks| Phase { id: id.into(), title: id.into(), weeks, light_weeks };
        programme.phases = vec![phase("base", 4, vec![4]), phase("build", 3, vec![])];
        programme.weeks = Some(7);
    }
    plan
}

/// The plan file of the tests with a ladder and a variant of the coach's own.
pub fn plan_with_own() -> PlanDocument {
    let (ladder, variant) = ("0194f0e5-0000-7000-8000-000000000001", "0194f0e5-0000-7000-8000-000000000002");
    let own = OwnVariant {
        id: variant.into(),
        ladder: ladder.into(),
        level: 0,
        like: Some("hinge-one-dumbbell".into()),
        position: Position::Standing,
        needs: vec![Thing::Step],
        loading: Loading::One,
        share: Some(0.25),
        per_side: true,
        cautions: [(Caution::OneSided, true), (Caution::Wrist, false)].into(),
        ready: ReadyMark::Load { kg: 12.0 },
        usual_start: Some(UsualStart { from: 4.0, to: 6.5 }),
        name: "Suitcase hinge, foot on a step".into(),
        setup: "One foot on the step".into(),
        breath: "Out on the way up".into(),
        cues: vec!["Hips back".into(), "Long spine".into()],
        slips: vec!["Turning: look ahead".into()],
        retired: false,
    };
    let hers = OwnLadder {
        id: ladder.into(),
        name: "Suitcase hinge".into(),
        pattern: Pattern::Hinge,
        retired: false,
    };
    PlanDocument {
        own: Some(OwnCatalogue { ladders: vec![hers], variants: vec![own] }),
        ..plan_with_beginning()
    }
}

/// The plan file of the tests with the coach's own words and a picture: the smallest that begins as a JPEG does.
pub fn plan_with_words() -> PlanDocument {
    let picture = Picture::of(b"\xFF\xD8\xFF\xE0 no more than a beginning".to_vec()).unwrap();
    let cues = vec!["Sit between your heels".into(), "Breathe out, \"as if\" through a straw".into()];
    PlanDocument {
        words: vec![VariantWords { variant: "squat-goblet".into(), cues, picture: Some(picture.name()) }],
        pictures: vec![picture],
        ..plan()
    }
}
