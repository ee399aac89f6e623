//! The coach's own words and pictures: written once, in her own stream, for all her clients; a plan brings them along.

use crate::error::{AppError, Refusal};
use crate::profile::Profile;
use crate::views::{LadderWordsView, PictureView, VariantWordsView, WordsForm};
use chrono::{DateTime, FixedOffset};
use newel_engine::catalogue::{OwnCatalogue, is_own};
use newel_engine::record::Payload;
use newel_engine::wording::{VariantWords, standing};
use newel_exchange::{MAX_PICTURES, Picture, PictureError};
use newel_store::Action;

impl Profile {
    /// What the coach has put in the place of built-in words and pictures.
    pub(crate) fn own_words(&mut self) -> Result<Vec<VariantWords>, AppError> {
        Ok(standing(&self.own()?.records))
    }

    /// All ladders with their variants, and what of them is in the coach's own words.
    ///
    /// # Errors
    /// When a client's profile is open.
    pub fn words_view(&mut self) -> Result<Vec<LadderWordsView>, AppError> {
        self.coach_only()?;
        let own = self.own_words()?;
        let catalogue = &self.books.catalogue;
        let hers = &self.books.own;
        let ladders = catalogue.ladders.iter().map(|ladder| LadderWordsView {
            ladder: ladder.id.clone(),
            pattern: ladder.pattern,
            yours: hers.ladder(&ladder.id).cloned(),
            open: !ladder.pattern.goes_on_meanwhile(),
            uncertain: ladder.uncertain,
            levels: ladder
                .levels
                .iter()
                .map(|level| {
                    let variants = level.variants.iter().map(|variant| VariantWordsView {
                        variant: variant.id.clone(),
                        cues: variant.cues,
                        position: variant.position,
                        needs: variant.needs.clone(),
                        cautions: variant.cautions.clone(),
                        loading: variant.loading,
                        ready: variant.ready,
                        usual_start: variant.usual_start,
                        per_side: variant.per_side,
                        uncertain: variant.uncertain,
                        yours: hers.variant(&variant.id).cloned(),
                        own: own.iter().find(|w| w.variant == variant.id).cloned(),
                    });
                    variants.collect()
                })
                .collect(),
        });
        Ok(ladders.collect())
    }

    /// Puts the coach's own cues and picture in the place of a variant's, or the built-in ones back where the form has none.
    ///
    /// # Errors
    /// When the variant is unknown, a cue too long, the picture none, or there are too many of them.
    pub fn words_save(
        &mut self,
        now: DateTime<FixedOffset>,
        form: WordsForm,
    ) -> Result<Vec<LadderWordsView>, AppError> {
        self.coach_only()?;
        if self.books.catalogue.place(&form.variant).is_none() {
            return Err(Refusal::NoSuchThing.into());
        }
        let own = self.own_words()?;
        let picture = match form.new_picture {
            Some(text) => {
                let picture = Picture::from_base64(&text).map_err(|why| match why {
                    PictureError::NotAPicture => Refusal::NotAPicture,
                    PictureError::TooLarge => Refusal::OutOfRange,
                })?;
                let others = own.iter().filter(|w| w.variant != form.variant && w.picture.is_some());
                if others.count() >= MAX_PICTURES {
                    return Err(Refusal::OutOfRange.into());
                }
                self.store.keep_picture(&picture.name(), picture.bytes())?;
                Some(picture.name())
            }
            None => own
                .iter()
                .find(|w| w.variant == form.variant)
                .and_then(|w| w.picture.clone())
                .filter(|_| form.keep_picture),
        };
        let cues = form.cues.iter().map(|c| c.trim().to_owned()).filter(|c| !c.is_empty()).collect();
        let words = VariantWords { variant: form.variant, cues, picture };
        if !words.is_sound() {
            return Err(Refusal::OutOfRange.into());
        }
        let person = self.person();
        self.write(Action::WordVariant, now, person, vec![Payload::VariantWords(words)])?;
        self.words_view()
    }

    /// A picture by its name.
    ///
    /// # Errors
    /// When it is not here.
    pub fn picture(&self, name: &str) -> Result<PictureView, AppError> {
        let bytes = self.store.picture(name)?.ok_or(Refusal::NoSuchThing)?;
        let picture = Picture::of(bytes).map_err(|_| Refusal::NotAPicture)?;
        Ok(PictureView { media: picture.media().to_owned(), base64: picture.base64() })
    }

    /// The words that go out in a plan, with their pictures; for variants of her own only where these go out too.
    pub(crate) fn words_out(
        &mut self,
        own: Option<&OwnCatalogue>,
    ) -> Result<(Vec<VariantWords>, Vec<Picture>), AppError> {
        let mut words = self.own_words()?;
        words.retain(|w| {
            !is_own(w.variant.as_str()) || own.is_some_and(|own| own.variant(&w.variant).is_some())
        });
        let mut pictures: Vec<Picture> = Vec::new();
        for name in words.iter().filter_map(|w| w.picture.as_ref()) {
            // One picture may stand for several variants.
            if pictures.iter().any(|p| p.name() == *name) {
                continue;
            }
            if let Some(picture) = self.store.picture(name)?.and_then(|b| Picture::of(b).ok()) {
                pictures.push(picture);
            }
        }
        Ok((words, pictures))
    }
}
