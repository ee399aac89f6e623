//! What is allowed on a day: her kit, her stage, her conditions, the coach's restrictions.

mod waits;

pub use waits::{ClearanceFor, ClearanceWait};
use waits::{given_up, waits};

use crate::catalogue::{Catalogue, Caution, Ladder, Loading, Pattern, Place, Position, Variant};
use crate::history::{History, Intake, Restriction};
use crate::ids::{ConditionId, LadderId, RuleId, SymptomId};
use crate::impact::CheckStanding;
use crate::kit::{Kit, Load};
use crate::programme::LevelSpan;
use crate::reason::{Fact, Reason, ReasonCode};
use crate::record::{RestrictionKind, TodayThing};
use crate::rules::{Asks, Condition, EffortRule, RulePack, StageName};
use crate::stage::{Stage, StageOn};
use crate::units::Kg;
use chrono::{DateTime, FixedOffset, NaiveDate};
use serde::Serialize;
use std::collections::BTreeSet;
use ts_rs::TS;

/// So many weights of one barbell at the most; no home comes near, and a kit from a file may name anything.
const MOST_LOADS: usize = 4096;

/// The condition with which it is asked whether a pessary is in.
const PESSARY: &str = "pessary";

/// The ground that a proposal stands on.
#[derive(Clone, Debug)]
pub struct Ground<'a> {
    /// Catalogue.
    pub catalogue: &'a Catalogue,
    /// Rule pack.
    pub rules: &'a RulePack,
    /// The local day.
    pub day: NaiveDate,
    /// Her kit.
    pub kit: Kit,
    /// Her stage on the day.
    pub stage: StageOn,
    /// Her intake.
    pub intake: Intake,
    /// Restrictions in force.
    pub restrictions: Vec<Restriction>,
    /// What training waits for: clearances that are asked for and not given, or that have run out; the strictest first.
    pub waits: Vec<ClearanceWait>,
    /// How the checks before impact stand after a birth or a loss; empty at any other stage.
    pub checks: Vec<CheckStanding>,
    /// What else she said of today.
    pub today: Vec<TodayThing>,
    /// True while somebody who has never trained learns the moves.
    pub learning: bool,
    /// True in a light week of her programme.
    pub light_week: bool,
    /// True where she said at check-in that she is unwell.
    pub unwell: bool,
    /// True when nothing may be held for the rest of today, lying or seated.
    pub unloaded_today: bool,
    /// Positions that a symptom made her give up for the rest of the pregnancy, with its kind.
    pub given_up: Vec<(Position, SymptomId)>,
}

/// Something that is ruled out today.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[ts(export)]
pub struct RuledOut {
    /// What.
    pub what: RestrictionKind,
    /// By what.
    pub by: RuledOutBy,
    /// The rule behind it.
    pub rule: RuleId,
}

/// What rules something out.
#[derive(Clone, Debug, PartialEq, Serialize, TS)]
#[serde(tag = "by", rename_all = "snake_case")]
#[ts(export)]
pub enum RuledOutBy {
    /// Her stage.
    Stage,
    /// A symptom of this pregnancy.
    Symptom {
        /// Which.
        symptom: SymptomId,
    },
    /// A condition.
    Condition {
        /// Which.
        condition: ConditionId,
    },
    /// The coach or a provider.
    Coach {
        /// Why.
        note: String,
        /// Until and with this day.
        until: Option<NaiveDate>,
    },
}

/// Why a variant is not open.
#[derive(Clone, Debug, PartialEq)]
pub enum Bar {
    /// Her kit cannot make it.
    Kit,
    /// The position waits or is over at this stage.
    PositionByStage(Position),
    /// She was unwell in this position in this pregnancy.
    PositionBySymptom(Position, SymptomId),
    /// No impact yet after a birth, or none while pregnant.
    ImpactByStage,
    /// So many checks before impact are not done.
    ImpactByChecks(usize),
    /// Nothing is held at this stage.
    LoadByStage,
    /// Breathing alone at this stage.
    BreathingByStage,
    /// A clearance is waited for.
    Clearance(ClearanceWait),
    /// A condition rules it out.
    Condition(ConditionId),
    /// The coach or a provider ruled it out.
    Restriction(Restriction),
    /// The slot does not span this level.
    Span,
    /// The rest of today is without load, lying or seated.
    UnloadedToday,
    /// A child is in the room.
    ChildNear,
    /// Her kit is not at hand.
    KitAway,
    /// The coach does not have it proposed any more.
    Retired,
}

impl<'a> Ground<'a> {
    /// The ground on a day, from what was recorded up to `until` (all if `None`), by the pack that is
    /// in force then; `rules` is the one that is built in.
    #[must_use]
    pub fn of(
        history: &History,
        catalogue: &'a Catalogue,
        rules: &'a RulePack,
        day: NaiveDate,
        until: Option<DateTime<FixedOffset>>,
    ) -> Self {
        Self::by(history, catalogue, rules.in_force(&history.settings, until, day), day, until)
    }

    /// As [`Ground::of`], by a pack that is known to be the one in force.
    pub(crate) fn by(
        history: &History,
        catalogue: &'a Catalogue,
        rules: &'a RulePack,
        day: NaiveDate,
        until: Option<DateTime<FixedOffset>>,
    ) -> Self {
        let known = |at: DateTime<FixedOffset>| until.is_none_or(|u| at <= u);
        let kit = history.kits.iter().rfind(|k| known(k.at)).map(|k| k.what.clone()).unwrap_or_default();
        let recorded = history.stages.iter().rfind(|s| known(s.at)).map(|s| &s.what);
        let stage = recorded.map_or(StageOn::Neither, |s| s.on(day));
        let intake =
            history.intakes.iter().rfind(|i| known(i.at)).map(|i| i.what.clone()).unwrap_or_default();
        let restrictions = history
            .restrictions
            .iter()
            .filter(|r| known(r.at) && r.what.until.is_none_or(|u| day <= u))
            .map(|r| r.what.clone())
            .collect();
        let waits = waits(history, rules, day, &stage, &intake, &known);
        let since = recorded.and_then(Stage::ended_on);
        let checks = since.map(|since| crate::impact::standing(history, rules, since, day, until));
        Self {
            catalogue,
            rules,
            day,
            kit,
            stage,
            intake,
            restrictions,
            waits,
            checks: checks.unwrap_or_default(),
            today: Vec::new(),
            learning: false,
            light_week: false,
            unwell: false,
            unloaded_today: false,
            given_up: given_up(history, rules, &stage, &known),
        }
    }

    /// As it is with what she said of today.
    #[must_use]
    pub fn with_today(mut self, today: &[TodayThing]) -> Self {
        if today.contains(&TodayThing::NoKit) {
            self.kit = Kit::default();
        }
        self.today = today.to_vec();
        self
    }

    /// What she may say of today beside how she is: a pessary only where she has one, her period only where it can come.
    #[must_use]
    pub fn today_asked(&self) -> Vec<TodayThing> {
        use TodayThing::{AfterIllness, ChildNear, NoKit, Period, PessaryIn, PessaryOut};
        let mut things = vec![AfterIllness, NoKit, ChildNear];
        if self.conditions_now().any(|c| c.id.as_str() == PESSARY) {
            things.extend([PessaryIn, PessaryOut]);
        }
        if matches!(self.stage, StageOn::Postpartum { .. } | StageOn::Neither) {
            things.push(Period);
        }
        things
    }

    /// More seconds of rest between sets, by a condition.
    #[must_use]
    pub fn more_rest(&self) -> u16 {
        self.conditions_now().map(|c| c.more_rest).max().unwrap_or(0)
    }

    /// Her conditions that count at her stage.
    pub(crate) fn conditions_now(&self) -> impl Iterator<Item = &'a Condition> + '_ {
        let named = self.intake.conditions.iter().filter_map(|id| self.rules.condition(id));
        named.filter(|c| c.when.at(Some(self.stage)))
    }

    /// True where level, load and count stay where they are: in a light week, in the easy sessions after an illness and on
    /// an unwell day. Breathing, pelvic floor and mobility go on.
    #[must_use]
    pub fn nothing_grows(&self, pattern: Pattern) -> bool {
        let easy = self.light_week || self.unwell || self.today.contains(&TodayThing::AfterIllness);
        easy && !pattern.goes_on_meanwhile()
    }

    /// True where a level up is none today: nothing grows, or between the two lies a level that is closed for the day
    /// alone, and on any other day she would not leap over it.
    #[must_use]
    pub fn no_level_up(&self, ladder: &Ladder, from: u8, to: u8) -> bool {
        let between = ladder.levels.iter().enumerate().take(usize::from(to)).skip(usize::from(from) + 1);
        let places = between.flat_map(|(level, l)| l.variants.iter().map(move |v| (level, v)));
        let mut bars =
            places.filter_map(|(level, variant)| self.bar(&Place { ladder, level, variant }, None));
        self.nothing_grows(ladder.pattern) || bars.any(|bar| matches!(bar, Bar::KitAway | Bar::ChildNear))
    }

    /// Completed weeks of pregnancy, or since a birth or a loss, if they are known.
    #[must_use]
    pub fn week(&self) -> Option<u32> {
        self.stage.weeks_pregnant().or(self.stage.weeks_after())
    }

    /// The effort rule of her stage on the day.
    #[must_use]
    pub fn effort(&self) -> Option<&'a EffortRule> {
        let (name, week) = match self.stage {
            StageOn::Pregnant { .. } => (StageName::Pregnant, self.week_or("effort_week")),
            StageOn::Postpartum { age, .. } => (StageName::Postpartum, f64::from(age.weeks)),
            StageOn::AfterLoss { age } => (StageName::AfterLoss, f64::from(age.weeks)),
            StageOn::Neither => (StageName::Neither, 0.0),
        };
        self.rules.effort().iter().find(|e| {
            e.stage == name
                && f64::from(e.from_week) <= week
                && e.before_week.is_none_or(|before| week < f64::from(before))
        })
    }

    /// Weeks of pregnancy, or what stands for them while she is not dated.
    fn week_or(&self, undated: &str) -> f64 {
        self.stage.weeks_pregnant().map_or_else(|| self.rules.number("stage.undated", undated), f64::from)
    }

    /// Why a variant is not open today; `None` if it is.
    #[must_use]
    pub fn bar(&self, place: &Place<'_>, span: Option<LevelSpan>) -> Option<Bar> {
        let v = place.variant;
        let pattern = place.ladder.pattern;
        if v.retired {
            return Some(Bar::Retired);
        }
        if let Some(wait) = self.waits.first()
            && !pattern.goes_on_meanwhile()
        {
            return Some(Bar::Clearance(wait.clone()));
        }
        if self.unloaded_today
            && !(matches!(v.loading, Loading::Body)
                && matches!(
                    v.position,
                    Position::Seated | Position::SideLying | Position::Incline | Position::Supine
                ))
        {
            return Some(Bar::UnloadedToday);
        }
        if let Some(rule) = self.effort() {
            if rule.breathing_only && !pattern.is_of_the_first_days() {
                return Some(Bar::BreathingByStage);
            }
            if !rule.load_allowed && !matches!(v.loading, Loading::Body | Loading::Assist { .. }) {
                return Some(Bar::LoadByStage);
            }
        }
        let held = !matches!(v.loading, Loading::Body | Loading::Band { .. } | Loading::Assist { .. });
        if held && v.cautions.contains(&Caution::Overhead) && self.today.contains(&TodayThing::ChildNear) {
            return Some(Bar::ChildNear);
        }
        if self.stage.is_pregnant()
            && v.position == Position::Supine
            && self.week_or("position_week") >= self.rules.number("position.supine", "from_week")
        {
            return Some(Bar::PositionByStage(v.position));
        }
        if let Some((position, kind)) = self.given_up.iter().find(|(p, _)| *p == v.position) {
            return Some(Bar::PositionBySymptom(*position, kind.clone()));
        }
        if v.cautions.contains(&Caution::Impact) {
            if self.impact_rule().is_some() {
                return Some(Bar::ImpactByStage);
            }
            let open = self.open_checks(v.cautions.contains(&Caution::OneSided));
            if open > 0 {
                return Some(Bar::ImpactByChecks(open));
            }
        }
        let rules_out = |c: &&Condition| {
            c.rules_out.iter().any(|x| v.cautions.contains(x)) || c.rules_out_positions.contains(&v.position)
        };
        if let Some(condition) = self.conditions_now().find(rules_out) {
            return Some(Bar::Condition(condition.id.clone()));
        }
        for r in &self.restrictions {
            let out = match &r.what {
                RestrictionKind::Position { position } => v.position == *position,
                RestrictionKind::Caution { caution } => v.cautions.contains(caution),
                RestrictionKind::Variant { variant } => v.id == *variant,
                RestrictionKind::LevelAbove { ladder, level } => {
                    place.ladder.id == *ladder && place.level > usize::from(*level)
                }
                RestrictionKind::AllLoad => !matches!(v.loading, Loading::Body | Loading::Assist { .. }),
                // What her kit makes under it stays open; see `loads`.
                RestrictionKind::LoadAbove { .. } => {
                    !self.kit_loads(v).is_empty() && self.loads(place).is_empty()
                }
                RestrictionKind::ReserveBelow { .. } | RestrictionKind::BreathHolding => false,
            };
            if out {
                return Some(Bar::Restriction(r.clone()));
            }
        }
        if v.needs.iter().any(|t| !self.kit.things.contains(t)) || self.kit_loads(v).is_empty() {
            let away = self.today.contains(&TodayThing::NoKit);
            return Some(if away { Bar::KitAway } else { Bar::Kit });
        }
        if span.is_some_and(|s| place.level < usize::from(s.low) || place.level > usize::from(s.high)) {
            return Some(Bar::Span);
        }
        None
    }

    /// The rule by which her stage rules impact out, if it does.
    fn impact_rule(&self) -> Option<&'static str> {
        if self.stage.is_pregnant() {
            let from = self.rules.number("impact.pregnant", "from_week");
            return (self.week_or("position_week") >= from).then_some("impact.pregnant");
        }
        let wait = self.rules.number("impact.wait", "from_week");
        self.stage.weeks_after().is_some_and(|week| f64::from(week) < wait).then_some("impact.wait")
    }

    /// How many checks before impact are not done: of those without a landing, or of all for a landing on one leg. One
    /// that brought a sign counts for every landing. None
    /// where the coach does not ask for them, and at a stage that does not.
    #[must_use]
    pub fn open_checks(&self, one_leg: bool) -> usize {
        if self.rules.number("impact.checks", "asked") < 1.0 {
            return 0;
        }
        self.checks.iter().filter(|c| !c.is_clear() && (one_leg || !c.lands || c.brought_a_sign())).count()
    }

    /// Variants of a ladder that are open today, easiest level first.
    #[must_use]
    pub fn open(&self, ladder: &'a Ladder, span: Option<LevelSpan>) -> Vec<Place<'a>> {
        ladder
            .levels
            .iter()
            .enumerate()
            .flat_map(|(level, l)| l.variants.iter().map(move |variant| Place { ladder, level, variant }))
            .filter(|place| self.bar(place, span).is_none())
            .collect()
    }

    /// The reason that says why a variant is not open.
    #[must_use]
    pub fn bar_reason(&self, bar: &Bar, place: &Place<'_>) -> Reason {
        let on = |code, rule: &str| {
            Reason::new(self.rules, code, rule)
                .with("variant", Fact::Variant(place.variant.id.clone()))
                .with("ladder", Fact::Ladder(place.ladder.id.clone()))
        };
        let by_stage = |code| on(code, self.effort().map_or("effort.plain", |e| e.id.as_str()));
        // Week 0 stands for "not known": the sentence then names none.
        let with_week = |reason: Reason| reason.number("week", self.week().map_or(0.0, f64::from));
        match bar {
            Bar::Kit => on(ReasonCode::KitLacks, "kit.has"),
            Bar::KitAway => on(ReasonCode::KitAway, "today.no-kit"),
            Bar::ChildNear => on(ReasonCode::ChildNear, "today.child-near"),
            Bar::PositionByStage(_) => with_week(on(ReasonCode::PositionStage, "position.supine")),
            Bar::PositionBySymptom(_, kind) => {
                with_week(on(ReasonCode::PositionStage, &format!("symptom.{kind}")))
                    .with("symptom", Fact::Symptom(kind.clone()))
            }
            Bar::ImpactByStage => with_week(
                on(ReasonCode::ImpactWaits, self.impact_rule().unwrap_or("impact.wait"))
                    .with("by", Fact::Words("stage".to_owned())),
            ),
            Bar::ImpactByChecks(open) => with_week(
                on(ReasonCode::ImpactWaits, "impact.checks")
                    .with("by", Fact::Words("checks".to_owned()))
                    .number("open", *open as f64),
            ),
            Bar::LoadByStage => with_week(by_stage(ReasonCode::StageUnloaded)),
            Bar::BreathingByStage => with_week(by_stage(ReasonCode::StageBreathing)),
            Bar::Clearance(wait) => self.wait_reason(wait),
            Bar::Condition(id) => on(ReasonCode::ConditionRuledOut, &format!("condition.{id}"))
                .with("condition", Fact::Condition(id.clone())),
            Bar::Restriction(r) => {
                on(ReasonCode::Restricted, "coach.set").with("note", Fact::Words(r.note.clone()))
            }
            Bar::Span | Bar::Retired => on(ReasonCode::CoachSet, "coach.set"),
            Bar::UnloadedToday => on(ReasonCode::UnloadedToday, "symptom.pelvic-floor-twice"),
        }
    }

    /// The reason that says what training waits for.
    #[must_use]
    pub fn wait_reason(&self, wait: &ClearanceWait) -> Reason {
        let (code, rule) = match (wait.ran_out, wait.asks) {
            (Some(_), _) => (ReasonCode::ClearanceOver, wait.of.rule()),
            (None, Asks::Clearance) => (ReasonCode::ClearanceFirst, wait.of.rule()),
            (None, Asks::Provider | Asks::Nothing) => (ReasonCode::ClearanceWaits, wait.of.rule()),
        };
        let mut reason =
            Reason::new(self.rules, code, &rule).with("of", Fact::Words(wait.of.slug().to_owned()));
        if let ClearanceFor::Condition(id) = &wait.of {
            reason = reason.with("condition", Fact::Condition(id.clone()));
        }
        if let Some(day) = wait.ran_out {
            reason = reason.with("day", Fact::Day(day));
        }
        reason
    }

    /// All that is ruled out today whatever her kit, with what rules it out: stage first, then symptoms, conditions and
    /// what the coach or a provider set.
    #[must_use]
    pub fn ruled_out(&self) -> Vec<RuledOut> {
        let position = |position| RestrictionKind::Position { position };
        let caution = |caution| RestrictionKind::Caution { caution };
        let mut all = Vec::new();
        let mut add = |what, by, rule: &str| all.push(RuledOut { what, by, rule: rule.into() });
        if let Some(rule) = self.effort()
            && !rule.load_allowed
        {
            add(RestrictionKind::AllLoad, RuledOutBy::Stage, rule.id.as_str());
        }
        if self.stage.is_pregnant()
            && self.week_or("position_week") >= self.rules.number("position.supine", "from_week")
        {
            add(position(Position::Supine), RuledOutBy::Stage, "position.supine");
        }
        if let Some(rule) = self.impact_rule() {
            add(caution(Caution::Impact), RuledOutBy::Stage, rule);
        } else if self.open_checks(false) > 0 {
            add(caution(Caution::Impact), RuledOutBy::Stage, "impact.checks");
        }
        for (given_up, kind) in &self.given_up {
            let by = RuledOutBy::Symptom { symptom: kind.clone() };
            add(position(*given_up), by, &format!("symptom.{kind}"));
        }
        for c in self.conditions_now() {
            let rule = format!("condition.{}", c.id);
            let by = || RuledOutBy::Condition { condition: c.id.clone() };
            c.rules_out.iter().for_each(|x| add(caution(*x), by(), &rule));
            c.rules_out_positions.iter().for_each(|p| add(position(*p), by(), &rule));
        }
        for r in &self.restrictions {
            let by = RuledOutBy::Coach { note: r.note.clone(), until: r.until };
            let rule = if r.what == RestrictionKind::BreathHolding { "breath.free" } else { "coach.set" };
            add(r.what.clone(), by, rule);
        }
        all
    }

    /// The least to leave in reserve that a restriction asks for, with the restriction.
    #[must_use]
    pub fn least_reserve(&self) -> Option<(f64, &Restriction)> {
        let asks = |r: &Restriction| match r.what {
            RestrictionKind::ReserveBelow { reps } => Some(f64::from(reps)),
            RestrictionKind::BreathHolding => Some(self.rules.number("breath.free", "least_reserve")),
            _ => None,
        };
        self.restrictions.iter().filter_map(|r| Some((asks(r)?, r))).max_by(|(a, _), (b, _)| a.total_cmp(b))
    }

    /// The most to hold on a ladder that a restriction leaves, with the restriction.
    #[must_use]
    pub fn most_load(&self, ladder: &LadderId) -> Option<(Kg, &Restriction)> {
        self.restrictions
            .iter()
            .filter_map(|r| match &r.what {
                RestrictionKind::LoadAbove { most, ladder: of }
                    if of.as_ref().is_none_or(|of| of == ladder) && most.is_plausible() =>
                {
                    Some((most.kg(), r))
                }
                _ => None,
            })
            .min_by(|(a, _), (b, _)| a.0.total_cmp(&b.0))
    }

    /// Loads that she can hold on a variant: of those that her kit makes the ones that no restriction rules out.
    #[must_use]
    pub fn loads(&self, place: &Place<'_>) -> Vec<Load> {
        let mut loads = self.kit_loads(place.variant);
        if let Some((most, _)) = self.most_load(&place.ladder.id) {
            loads.retain(|l| place.variant.external(l).0 <= most.0 + 1e-9);
        }
        loads
    }

    /// Loads that her kit can really make for a variant, lightest (most assistance) first, each
    /// external load once.
    #[must_use]
    pub fn kit_loads(&self, variant: &Variant) -> Vec<Load> {
        let mut loads: Vec<Load> = match variant.loading {
            Loading::Body => vec![Load::Nothing],
            Loading::One => self
                .kit
                .dumbbells
                .iter()
                .filter(|d| d.weight.is_plausible())
                .map(|d| Load::One { weight: d.weight })
                .collect(),
            Loading::Pair => self
                .kit
                .dumbbells
                .iter()
                .filter(|d| d.pair && d.weight.is_plausible())
                .map(|d| Load::Pair { weight: d.weight })
                .collect(),
            Loading::Barbell => self.barbell_loads(),
            Loading::Band { .. } => self.band_sets().into_iter().map(|bands| Load::Bands { bands }).collect(),
            Loading::Assist { .. } => {
                self.band_sets().into_iter().map(|bands| Load::Assist { bands }).collect()
            }
        };
        loads.retain(|l| l.is_plausible() && variant.external(l).0.is_finite());
        loads.sort_by(|a, b| variant.external(a).0.total_cmp(&variant.external(b).0));
        loads.dedup_by(|a, b| (variant.external(a).0 - variant.external(b).0).abs() < 1e-9);
        loads
    }

    fn barbell_loads(&self) -> Vec<Load> {
        let Some(barbell) = &self.kit.barbell else { return Vec::new() };
        if !barbell.bar.is_plausible() {
            return Vec::new();
        }
        // Every weight that the pairs she has add up to, each once: with the pairs that come first in her kit.
        let grams = |kg: f64| libm::round(kg * 1000.0) as i64;
        let mut made: Vec<(Load, i64)> =
            vec![(Load::Barbell { bar: barbell.bar, plates: Vec::new() }, grams(barbell.bar.kg().0))];
        let mut known: BTreeSet<i64> = made.iter().map(|(_, g)| *g).collect();
        for pair in barbell.plates.iter().filter(|p| p.weight.is_plausible()) {
            for n in 0..made.len() {
                let (Load::Barbell { bar, plates }, total) = &made[n] else { continue };
                let plates: Vec<_> = plates.iter().copied().chain([pair.weight]).collect();
                let total = total + 2 * grams(pair.weight.kg().0);
                let load = Load::Barbell { bar: *bar, plates };
                if made.len() < MOST_LOADS && known.insert(total) {
                    made.push((load, total));
                }
            }
        }
        made.into_iter().map(|(load, _)| load).collect()
    }

    fn band_sets(&self) -> Vec<Vec<crate::kit::Band>> {
        let bands: Vec<_> = self.kit.bands.iter().filter(|b| b.is_plausible()).collect();
        let mut sets: Vec<Vec<_>> = bands.iter().map(|b| vec![(*b).clone()]).collect();
        for (i, a) in bands.iter().enumerate() {
            for b in bands.iter().skip(i + 1) {
                sets.push(vec![(*a).clone(), (*b).clone()]);
            }
        }
        sets
    }
}
