//! The coach's own ladders and variants: records in her own stream, laid over the built-in catalogue wherever she looks,
//! and brought to a client by the plan that uses them.

use crate::error::{AppError, Refusal};
use crate::profile::Profile;
use crate::views::{LadderWordsView, OwnForm, OwnLadderForm, OwnPlace};
use chrono::{DateTime, FixedOffset};
use newel_engine::catalogue::{OwnCatalogue, OwnError, OwnLadder, OwnVariant};
use newel_engine::ids::{LadderId, VariantId};
use newel_engine::record::Payload;
use newel_engine::wording::VariantWords;
use newel_store::Action;
use std::collections::BTreeMap;
use uuid::Uuid;

impl From<OwnError> for Refusal {
    fn from(why: OwnError) -> Self {
        match why {
            OwnError::Text(_) | OwnError::Range(_) => Self::OutOfRange,
            OwnError::Id(_) | OwnError::Exempt(_) | OwnError::NoPlace(_) | OwnError::Identity(_) => {
                Self::NoSuchThing
            }
        }
    }
}

impl Profile {
    /// The words of all that is a coach's own, by the ids of messages: hers, and on a client's device her coach's.
    pub fn own_names(&mut self) -> BTreeMap<String, String> {
        let mut names = self.others_own().sayings();
        names.extend(self.books.own.sayings());
        names
    }

    /// Makes or changes a variant of the coach's own, with its ladder where that is new. Where what it is would change, the
    /// old one is retired and a new one stands in its place: what was trained stays what it was.
    ///
    /// # Errors
    /// When a text or number is out of range, or there is no such place.
    pub fn own_save(
        &mut self,
        now: DateTime<FixedOffset>,
        form: OwnForm,
    ) -> Result<Vec<LadderWordsView>, AppError> {
        self.coach_only()?;
        let mut own = OwnCatalogue::standing(&self.own()?.records);
        let old = match &form.id {
            Some(id) => Some(own.variant(id).ok_or(Refusal::NoSuchThing)?.clone()),
            None => None,
        };
        let mut payloads = Vec::new();
        let (ladder, level) = match (&form.place, &old) {
            // An edit does not move it: the level that it stands on is part of what it is.
            (_, Some(old)) => (old.ladder.clone(), old.level),
            (OwnPlace::At { ladder, level }, None) => (ladder.clone(), *level),
            (OwnPlace::NewLadder { name, pattern }, None) => {
                let id = LadderId::from(Uuid::now_v7().to_string());
                let ladder =
                    OwnLadder { id: id.clone(), name: said(name)?, pattern: *pattern, retired: false };
                own.put_ladder(ladder.clone()).map_err(Refusal::from)?;
                payloads.push(Payload::OwnLadder(ladder));
                (id, 0)
            }
        };
        let mut variant = self.made(form, ladder, level, old.as_ref())?;
        self.books.catalogue.check_place(&own, &variant).map_err(Refusal::from)?;
        if let Some(old) = old {
            if variant.is_same_thing(&old) {
                variant.retired = old.retired;
            } else {
                variant.id = VariantId::from(Uuid::now_v7().to_string());
                let words = self.own_words()?;
                let words = words.into_iter().find(|w| w.variant == old.id);
                payloads.extend(
                    words.map(|w| Payload::VariantWords(VariantWords { variant: variant.id.clone(), ..w })),
                );
                payloads.push(Payload::OwnVariant(Box::new(OwnVariant { retired: true, ..old })));
            }
        }
        own.put_variant(variant.clone()).map_err(Refusal::from)?;
        payloads.push(Payload::OwnVariant(Box::new(variant)));
        self.write_own(Action::WriteOwn, now, payloads)?;
        self.words_view()
    }

    /// Gives a ladder of the coach's own another name, or puts it away, or takes it out again. Nothing of it is deleted.
    ///
    /// # Errors
    /// When there is no such ladder, or the name is missing or too long.
    pub fn own_ladder(
        &mut self,
        now: DateTime<FixedOffset>,
        form: OwnLadderForm,
    ) -> Result<Vec<LadderWordsView>, AppError> {
        self.coach_only()?;
        let own = OwnCatalogue::standing(&self.own()?.records);
        let old = own.ladder(&form.ladder).ok_or(Refusal::NoSuchThing)?.clone();
        let ladder = OwnLadder { name: said(&form.name)?, retired: form.retired, ..old };
        ladder.check().map_err(Refusal::from)?;
        self.write_own(Action::WriteOwn, now, vec![Payload::OwnLadder(ladder)])?;
        self.words_view()
    }

    /// Puts a variant of the coach's own away, or takes it out again.
    ///
    /// # Errors
    /// When there is no such variant.
    pub fn own_retire(
        &mut self,
        now: DateTime<FixedOffset>,
        variant: &VariantId,
        retired: bool,
    ) -> Result<Vec<LadderWordsView>, AppError> {
        self.coach_only()?;
        let own = OwnCatalogue::standing(&self.own()?.records);
        let old = own.variant(variant).ok_or(Refusal::NoSuchThing)?.clone();
        let changed = Payload::OwnVariant(Box::new(OwnVariant { retired, ..old }));
        self.write_own(Action::WriteOwn, now, vec![changed])?;
        self.words_view()
    }

    /// The variant that a form asks for.
    fn made(
        &self,
        form: OwnForm,
        ladder: LadderId,
        level: u8,
        old: Option<&OwnVariant>,
    ) -> Result<OwnVariant, AppError> {
        let texts = |texts: Vec<String>| -> Vec<String> {
            texts.iter().map(|t| t.trim().to_owned()).filter(|t| !t.is_empty()).collect()
        };
        let copied = match &form.like {
            Some(like) => Some(self.books.catalogue.place(like).ok_or(Refusal::NoSuchThing)?.variant),
            None => None,
        };
        // The share of body mass is that of what it was copied from, as long as it is loaded in the same way.
        let (share, like) = match (old, copied) {
            (Some(old), _) => {
                let same = std::mem::discriminant(&old.loading) == std::mem::discriminant(&form.loading);
                (old.share.filter(|_| same), old.like.clone())
            }
            (None, Some(copied)) => {
                let same = std::mem::discriminant(&copied.loading) == std::mem::discriminant(&form.loading);
                let like =
                    self.books.own.variant(&copied.id).map_or(Some(copied.id.clone()), |o| o.like.clone());
                (copied.share.as_ref().filter(|_| same).map(|s| s.share), like)
            }
            (None, None) => (None, None),
        };
        Ok(OwnVariant {
            id: old.map_or_else(|| VariantId::from(Uuid::now_v7().to_string()), |o| o.id.clone()),
            ladder,
            level,
            like,
            position: form.position,
            needs: form.needs,
            loading: form.loading,
            share,
            per_side: form.per_side,
            cautions: form.cautions,
            ready: form.ready,
            usual_start: form.usual_start,
            name: said(&form.name)?,
            setup: form.setup.trim().to_owned(),
            breath: form.breath.trim().to_owned(),
            cues: texts(form.cues),
            slips: texts(form.slips),
            retired: false,
        })
    }
}

fn said(name: &str) -> Result<String, AppError> {
    let name = name.trim();
    if name.is_empty() { Err(Refusal::NameMissing.into()) } else { Ok(name.to_owned()) }
}
