//! The built-in catalogue with what is the coach's own laid over it.

use super::{
    BodyShare, Catalogue, CatalogueError, Ladder, Level, Loading, OwnCatalogue, OwnError, OwnVariant,
    Pattern, StrengthGroup, Variant,
};
use crate::ids::GroupId;
use std::collections::BTreeMap;

/// Where the numbers of the coach's own come from.
const OWN_SOURCE: &str = "the coach's own; common practice, no source";

/// Reps per unit of ln load where nothing in the catalogue comes near: as in most of its groups.
const PRIOR_C: f64 = 38.0;

impl Catalogue {
    /// This catalogue with the coach's own ladders and variants. Hers come after the built-in ones at a level, so that
    /// without a choice of hers or the client's a built-in one is taken first; a level of hers above the highest is
    /// appended, so that the numbers of levels mean in old plans and records what they meant. What finds no place (its
    /// ladder is gone with an update) is left out and stays whole where it is kept.
    ///
    /// # Errors
    /// When something of hers is not sound.
    pub fn with_own(&self, own: &OwnCatalogue) -> Result<Self, CatalogueError> {
        let wrong = |why: OwnError| CatalogueError::Inconsistent(why.to_string());
        own.check().map_err(wrong)?;
        let mut with = Self {
            version: self.version,
            groups: self.groups.clone(),
            ladders: self.ladders.clone(),
            index: super::Index::default(),
        };
        for ladder in &mut with.ladders {
            // Breathing, pelvic floor and mobility go on while all else rests: what may is the catalogue's to say alone.
            if ladder.pattern.goes_on_meanwhile() {
                continue;
            }
            let hers: Vec<&OwnVariant> = own.variants.iter().filter(|v| v.ladder == ladder.id).collect();
            place(self, &mut with.groups, ladder, hers);
        }
        for hers in &own.ladders {
            let mut ladder = Ladder {
                id: hers.id.clone(),
                pattern: hers.pattern,
                region: hers.pattern.region(),
                uncertain: false,
                levels: Vec::new(),
            };
            let variants = own.variants.iter().filter(|v| v.ladder == hers.id).collect();
            place(self, &mut with.groups, &mut ladder, variants);
            if hers.retired {
                ladder.levels.iter_mut().flat_map(|l| &mut l.variants).for_each(|v| v.retired = true);
            }
            // A ladder without a level is nothing to train yet.
            if !ladder.levels.is_empty() {
                with.ladders.push(ladder);
            }
        }
        with.check()?;
        Ok(with)
    }

    /// Whether there is a place for a variant of the coach's own here: at a level of its ladder, or one above the highest.
    ///
    /// # Errors
    /// When there is none.
    pub fn check_place(&self, own: &OwnCatalogue, variant: &OwnVariant) -> Result<(), OwnError> {
        let id = || variant.id.to_string();
        let level = usize::from(variant.level);
        match (self.ladder(&variant.ladder), own.ladder(&variant.ladder)) {
            (Some(ladder), _) if ladder.pattern.goes_on_meanwhile() => Err(OwnError::Exempt(id())),
            (Some(ladder), _) if level <= ladder.levels.len() => Ok(()),
            (None, Some(_)) if level == 0 => Ok(()),
            (Some(_) | None, _) => Err(OwnError::NoPlace(id())),
        }
    }
}

/// Puts variants at their levels. Levels above the highest are appended in their order, without a gap.
fn place(built_in: &Catalogue, groups: &mut Vec<StrengthGroup>, ladder: &mut Ladder, own: Vec<&OwnVariant>) {
    let mut by_level: BTreeMap<u8, Vec<&OwnVariant>> = BTreeMap::new();
    for variant in own {
        by_level.entry(variant.level).or_default().push(variant);
    }
    for (level, variants) in by_level {
        let at = usize::from(level).min(ladder.levels.len());
        if at == ladder.levels.len() {
            ladder.levels.push(Level { variants: Vec::new() });
        }
        for own in variants {
            let made = made(built_in, groups, ladder.pattern, own);
            if let Some(level) = ladder.levels.get_mut(at) {
                level.variants.push(made);
            }
        }
    }
}

/// A variant of the coach's own, as the engine reads it.
fn made(
    built_in: &Catalogue,
    groups: &mut Vec<StrengthGroup>,
    pattern: Pattern,
    own: &OwnVariant,
) -> Variant {
    // Whether two variants can be compared is known of the built-in ones alone, so each of hers has a state of its own.
    let group = (!matches!(own.loading, Loading::Body) && !own.is_timed()).then(|| {
        let id = GroupId::from(format!("own-{}", own.id));
        groups.push(StrengthGroup {
            id: id.clone(),
            prior_c: prior(built_in, pattern, own),
            source: OWN_SOURCE.to_owned(),
        });
        id
    });
    Variant {
        id: own.id.clone(),
        position: own.position,
        needs: own.needs.clone(),
        loading: own.loading,
        share: own.share.map(|share| BodyShare { share, source: OWN_SOURCE.to_owned() }),
        group,
        ready: own.ready,
        usual_start: own.usual_start.filter(|_| own.loading.is_weight()),
        per_side: own.per_side,
        cautions: own.cautions_on(pattern),
        cues: u8::try_from(own.cues.len()).unwrap_or(u8::MAX),
        uncertain: false,
        retired: own.retired,
    }
}

/// The prior of a group of hers: that of what it was copied from, else of the first loaded variant of the same pattern.
fn prior(built_in: &Catalogue, pattern: Pattern, own: &OwnVariant) -> f64 {
    let of = |variant: &Variant| variant.group.as_ref().and_then(|g| built_in.group(g)).map(|g| g.prior_c);
    let copied = own.like.as_ref().and_then(|like| built_in.place(like)).and_then(|place| of(place.variant));
    let near = || built_in.places().filter(|p| p.ladder.pattern == pattern).find_map(|p| of(p.variant));
    copied.or_else(near).unwrap_or(PRIOR_C)
}
