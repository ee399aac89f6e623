//! The story: who they are, and twelve weeks day by day.

use super::cast;
use super::part::{Deed, Morning, Part};
use super::run::{Outcome, Trainee};
use crate::coach::built_in_programmes;
use crate::error::{AppError, Refusal};
use crate::newel::{Books, DEMO, set_up};
use crate::profile::Profile;
use crate::views::{ClearanceForm, ClientForm, IntakeForm, OverrideForm, Role};
use chrono::{DateTime, Days, Duration, FixedOffset};
use newel_engine::ids::PersonId;
use newel_engine::record::{NextDay, Payload, Voice};
use newel_engine::simulate::{Chance, Client, Habits};
use newel_engine::units::Weight;
use newel_store::{Action, IdSource, Store};
use std::sync::Arc;
use uuid::{Builder, Uuid};

/// Days of training that the story tells: twelve weeks.
pub(super) const DAYS: i64 = 84;
/// The coach's invented name.
const COACH: &str = "Marit Osei";

/// The practice, in memory.
pub struct Scenario {
    /// The coach, who has taken in every log.
    pub coach: Profile,
    /// Her clients.
    pub clients: Vec<Member>,
    /// When the logs were sent.
    pub made_at: DateTime<FixedOffset>,
}

/// One client.
pub struct Member {
    /// Her folder and file name.
    pub slug: &'static str,
    /// A line about her.
    pub line: &'static str,
    /// Her side of the story.
    pub profile: Profile,
    /// The plan files that the coach wrote for her, with their sequence numbers.
    pub plans: Vec<(u64, Vec<u8>)>,
}

/// An id that bears a time and seeded chance.
pub(super) fn id_at(at: DateTime<FixedOffset>, chance: &mut Chance) -> Uuid {
    let millis = u64::try_from(at.timestamp_millis()).unwrap_or(0);
    Builder::from_unix_timestamp_millis(millis, &chance.bytes()).into_uuid()
}

/// A time on a day that lies so many days before the demonstration's.
fn on(now: DateTime<FixedOffset>, days_before: i64, hour: i64, minute: i64) -> DateTime<FixedOffset> {
    let midnight =
        now.date_naive().and_hms_opt(0, 0, 0).and_then(|t| t.and_local_timezone(*now.offset()).single());
    midnight.unwrap_or(now) - Duration::days(days_before) + Duration::minutes(hour * 60 + minute)
}

fn profile(
    books: &Arc<Books>,
    seed: u64,
    role: Role,
    (name, about): (&str, &str),
    person: PersonId,
    at: DateTime<FixedOffset>,
) -> Result<Profile, AppError> {
    let mut store = Store::open_in_memory_with(IdSource::seeded(seed))?;
    set_up(&mut store, name, role, person, at)?;
    store.set_setting(DEMO, about)?;
    Profile::of(store, format!("demo-{about}"), Arc::clone(books))
}

/// Tells the whole story.
pub(super) fn tell(
    books: &Arc<Books>,
    now: DateTime<FixedOffset>,
    seed: u64,
    mut progress: impl FnMut(u32, u32),
) -> Result<Scenario, AppError> {
    let begin = on(now, DAYS + 2, 9, 0);
    let mut chance = Chance::of(seed, 0);
    let person = PersonId(id_at(begin, &mut chance));
    let about = "demo-about-coach";
    let mut coach = profile(books, seed.wrapping_mul(1000), Role::Coach, (COACH, about), person, begin)?;
    let parts = cast::parts();
    let total = u32::try_from(parts.len()).unwrap_or(0) * DAYS as u32;
    let mut clients = Vec::new();
    for (nth, part) in parts.iter().enumerate() {
        let number = nth as u64 + 1;
        let done = u32::try_from(nth).unwrap_or(0) * DAYS as u32;
        let told = Told { books, now, seed, number };
        let member = told.client(&mut coach, part, |day| progress(done + day, total))?;
        clients.push(member);
    }
    for member in &mut clients {
        let (bytes, _) = member.profile.log_bytes(now)?;
        take_in(&mut coach, &bytes, now)?;
    }
    progress(total, total);
    Ok(Scenario { coach, clients, made_at: now })
}

fn take_in(profile: &mut Profile, bytes: &[u8], at: DateTime<FixedOffset>) -> Result<(), AppError> {
    let report = profile.take_in_one("", bytes, at);
    if report.refused.is_empty() && report.gaps.is_empty() { Ok(()) } else { Err(AppError::Internal) }
}

/// One client's story as it is told.
struct Told<'a> {
    books: &'a Arc<Books>,
    now: DateTime<FixedOffset>,
    seed: u64,
    number: u64,
}

impl Told<'_> {
    fn client(
        &self,
        coach: &mut Profile,
        part: &Part,
        mut progress: impl FnMut(u32),
    ) -> Result<Member, AppError> {
        let now = self.now;
        let mut chance = Chance::of(self.seed, 2 * self.number);
        let signed = on(now, DAYS + 1, 10, 0);
        let person = PersonId(id_at(signed, &mut chance));
        self.enrol(coach, part, person, signed)?;
        let mut plans = Vec::new();
        let first_deeds = part.deeds.iter().filter(|(day, _)| *day > DAYS).flat_map(|(_, deeds)| deeds);
        self.act(coach, person, first_deeds, signed + Duration::minutes(20))?;

        let about = format!("demo-about-{}", part.slug);
        let seed = self.seed.wrapping_mul(1000) + self.number;
        let arrived = on(now, DAYS + 1, 19, 5);
        let profile = profile(self.books, seed, Role::Client, (part.name, &about), person, arrived)?;
        let published = Habits::published(part.trained);
        let gain = (published.gain.0 * part.gain, published.gain.1 * part.gain);
        let body = Client::draw(chance, Habits { gain, ..published });
        let mut her = Trainee { profile, part, body, felt: 0, noted: 0 };
        her.profile.own()?;
        self.hand_over(coach, &mut her.profile, &mut plans, arrived)?;
        her.profile.numbers_and_kit(part, arrived + Duration::minutes(4))?;

        let first = on(now, DAYS, 0, 0);
        let mut waiting: Option<Outcome> = None;
        let mut acted = part.deeds.iter().filter(|(day, _)| *day > DAYS).count();
        for before in (1..=DAYS).rev() {
            if let Some(last) = waiting.take() {
                self.morning(&mut her, &last, before)?;
            }
            if self.trains(&mut her, before) {
                let hour = her.body.chance().between(6, 18);
                let minute = her.body.chance().between(0, 59);
                waiting = her.train(self.books, on(now, before, hour, minute), before, first)?;
            }
            let evening = on(now, before, 21, 0);
            let due = part.deeds.get(acted).filter(|(day, _)| before <= *day);
            if let Some((_, deeds)) = due
                && (!asks_for_hold(deeds) || her.holds(evening)?)
            {
                acted += 1;
                let (bytes, _) = her.profile.log_bytes(evening)?;
                take_in(coach, &bytes, evening)?;
                self.act(coach, person, deeds.iter(), evening + Duration::minutes(5))?;
                self.hand_over(coach, &mut her.profile, &mut plans, evening + Duration::minutes(40))?;
                let rest = her.profile.own()?.history().rests();
                if rest.is_some_and(|r| r.taken_up.contains(&Voice::Coach)) {
                    her.profile.take_up(evening + Duration::minutes(50), None, "")?;
                }
            }
            progress(u32::try_from(DAYS - before + 1).unwrap_or(0));
        }
        Ok(Member { slug: part.slug, line: part.line, profile: her.profile, plans })
    }

    /// The coach takes her on.
    fn enrol(
        &self,
        coach: &mut Profile,
        part: &Part,
        person: PersonId,
        at: DateTime<FixedOffset>,
    ) -> Result<(), AppError> {
        let form = ClientForm {
            name: part.name.to_owned(),
            stage: Some((part.stage)(self.now.date_naive())),
            intake: Some(IntakeForm {
                conditions: part.conditions.clone(),
                baselines: part.baselines.clone(),
                trained: part.trained,
                ..IntakeForm::default()
            }),
        };
        coach.client_write(at, person, form)?;
        let programmes = built_in_programmes(self.books)?;
        let programme = programmes.iter().find(|p| p.title == part.programme).ok_or(Refusal::NoSuchThing)?;
        coach.programme_give(at, person, programme.id)?;
        Ok(())
    }

    fn act<'d>(
        &self,
        coach: &mut Profile,
        person: PersonId,
        deeds: impl Iterator<Item = &'d Deed>,
        begin: DateTime<FixedOffset>,
    ) -> Result<(), AppError> {
        for (nth, deed) in deeds.enumerate() {
            let at = begin + Duration::minutes(2 * i64::try_from(nth).unwrap_or(0));
            match deed {
                Deed::Note(text) => {
                    coach.note_write(at, person, text)?;
                }
                Deed::Start(start, note) => {
                    let form = OverrideForm { start: start.clone(), note: (*note).to_owned() };
                    coach.override_write(at, person, form)?;
                }
                Deed::Restrict(what, note) => {
                    coach.restriction_add(at, person, what.clone(), None, note)?;
                }
                Deed::Clear(who, said) => {
                    let open = coach.safety_view(at, Some(person))?.open;
                    let speaks_of = open.into_iter().map(|o| o.thing).collect();
                    let (who, said, on) = ((*who).to_owned(), (*said).to_owned(), at.date_naive());
                    let form = ClearanceForm { who, on, said, speaks_of, until: None };
                    coach.clearance_record(at, Some(person), form)?;
                }
                Deed::Answer(answer, note) => {
                    let holds = coach.client_view(at, person)?.holds;
                    let hold = holds.first().ok_or(Refusal::NoSuchThing)?.hold;
                    coach.hold_answer(at, person, hold, *answer, note)?;
                }
                Deed::TakeUp(note) => {
                    coach.take_up(at, Some(person), note)?;
                }
                Deed::Stage(stage) => {
                    let stage = stage(self.now.date_naive());
                    coach.write(Action::ChangeStage, at, person, vec![Payload::StageChanged { stage }])?;
                }
            }
        }
        Ok(())
    }

    /// The coach writes a plan file, and the client takes it in.
    fn hand_over(
        &self,
        coach: &mut Profile,
        her: &mut Profile,
        plans: &mut Vec<(u64, Vec<u8>)>,
        at: DateTime<FixedOffset>,
    ) -> Result<(), AppError> {
        let person = her.person();
        let (document, bytes) = coach.plan_send(at - Duration::minutes(1), person)?;
        take_in(her, &bytes, at)?;
        plans.push((document.sequence, bytes));
        Ok(())
    }

    /// Her answer to the question about yesterday.
    fn morning(&self, her: &mut Trainee<'_>, last: &Outcome, before: i64) -> Result<(), AppError> {
        let is_last = before < her.part.last;
        let asked = last.morning == Some(Morning::Settled) && (!is_last || her.part.answers_last);
        if !asked {
            return Ok(());
        }
        let minute = her.body.chance().between(0, 50);
        let at = on(self.now, before, 5, minute + 8).max(last.ended);
        let answer = Payload::NextDayAnswer { run: last.run, answer: NextDay::Settled, symptoms: Vec::new() };
        her.profile.write_unread(Action::AnswerNextDay, at, vec![answer])?;
        her.profile.reread();
        Ok(())
    }

    fn trains(&self, her: &mut Trainee<'_>, before: i64) -> bool {
        let part = her.part;
        if before == part.last {
            return true;
        }
        let meant = part.week.contains(&((DAYS - before) % 7))
            && before > part.last + 1
            && !part.away.iter().any(|(from, to)| (*to..=*from).contains(&before));
        // Chance is drawn on every day that is meant, so that a change of one week leaves the others alone.
        meant && !her.body.chance().happens(part.missed)
    }
}

impl Profile {
    /// What she enters before her first session.
    fn numbers_and_kit(&mut self, part: &Part, at: DateTime<FixedOffset>) -> Result<(), AppError> {
        let minute = |n| at + Duration::minutes(n);
        self.numbers_save(at, None, Some(part.clinic.to_owned()))?;
        self.kit_save(minute(2), part.kit.clone())?;
        let (kg, entered) = part.body_kg;
        if entered {
            self.body_mass_save(minute(3), Weight::in_kg(kg))?;
        }
        for (variant, load) in &part.ten_reps {
            self.ten_reps(minute(5), variant.clone(), load.clone())?;
        }
        Ok(())
    }
}

/// An answer to a hold waits until there is one.
fn asks_for_hold(deeds: &[Deed]) -> bool {
    deeds.iter().any(|d| matches!(d, Deed::Answer(..)))
}

impl Trainee<'_> {
    fn holds(&mut self, at: DateTime<FixedOffset>) -> Result<bool, AppError> {
        let known = self.profile.own()?;
        Ok(known.bench(at.date_naive(), None).is_some_and(|b| b.state.open_holds().next().is_some()))
    }
}

/// A day so many days before another, or after it for a number below zero.
pub(super) fn days_from(day: chrono::NaiveDate, before: i64) -> chrono::NaiveDate {
    let span = Days::new(before.unsigned_abs());
    let moved = if before >= 0 { day.checked_sub_days(span) } else { day.checked_add_days(span) };
    moved.unwrap_or(day)
}
