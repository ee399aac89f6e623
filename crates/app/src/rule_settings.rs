//! Rules that a coach sets for one client. They are records in her stream and travel in plan files.

use crate::coach::checked_text;
use crate::error::{AppError, Refusal};
use crate::profile::Profile;
use crate::views::RuleSettingView;
use chrono::{DateTime, FixedOffset};
use newel_engine::ids::PersonId;
use newel_engine::record::Payload;
use newel_engine::rules::{RuleSetting, SettingError};
use newel_store::Action;

impl From<SettingError> for Refusal {
    fn from(error: SettingError) -> Self {
        match error {
            SettingError::Unknown => Self::NoSuchThing,
            SettingError::OtherKind | SettingError::OutOfRange => Self::OutOfRange,
            SettingError::Fixed => Self::RuleFixed,
            SettingError::RedFlag => Self::RedFlagStays,
            SettingError::NoteMissing => Self::NoteMissing,
        }
    }
}

impl Profile {
    /// Sets a rule for a client, or puts it back to what the pack says. Loosening asks for a note.
    ///
    /// # Errors
    /// When there is no such client or rule, the value is out of range, the end lies behind, the rule
    /// cannot be set, a red flag would be loosened, or a note is missing.
    pub fn set_rule(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
        setting: RuleSetting,
    ) -> Result<Vec<RuleSettingView>, AppError> {
        self.coach_only()?;
        self.client(person)?;
        let note = setting.note.as_deref().filter(|n| !n.trim().is_empty()).map(checked_text).transpose()?;
        let setting = RuleSetting { note, ..setting };
        if setting.until.is_some_and(|until| until < now.date_naive()) {
            return Err(Refusal::OutOfRange.into());
        }
        self.books().rules.check_setting(&setting).map_err(Refusal::from)?;
        self.write(Action::SetRule, now, person, vec![Payload::RuleSetting(setting)])?;
        self.rule_settings(now, person)
    }

    /// Rules that were set for a client, the newest first: those in force, those that were, and those
    /// that have no effect, with the reason why.
    ///
    /// # Errors
    /// When there is no such client.
    pub fn rule_settings(
        &mut self,
        now: DateTime<FixedOffset>,
        person: PersonId,
    ) -> Result<Vec<RuleSettingView>, AppError> {
        self.coach_only()?;
        let known = self.client(person)?;
        let (books, device) = (self.books(), self.store.device()?);
        let pack = books.rules.in_force(&known.history().settings, None, now.date_naive());
        let own = |record| known.records.iter().any(|r| r.id == record && r.device == device);
        let mut views: Vec<RuleSettingView> = known
            .history()
            .settings
            .iter()
            .map(|said| {
                let checked = books.rules.check_setting(&said.what);
                RuleSettingView {
                    record: said.record,
                    at: said.at,
                    setting: said.what.clone(),
                    pack: books.rules.value_of(&said.what.target),
                    direction: checked.ok(),
                    refused: checked.err(),
                    in_force: pack
                        .set_by_coach()
                        .iter()
                        .any(|s| s.record == said.record && s.setting == said.what),
                    own: own(said.record),
                }
            })
            .collect();
        views.reverse();
        Ok(views)
    }
}
