//! What a piece would open, by hand from the catalogue: squat 1 to 3 need nothing, 4 one weight, 5 a pair; of the row the
//! towel needs nothing, 2 one weight, 3 a weight, a pair, a barbell or a band, 4 straps; of the pull the towel needs
//! nothing, 2, 4 and 5 a bar, 3 a bar and a band.

use crate::story::*;
use newel_engine::gains::{Piece, gains};
use newel_engine::kit::{Kit, Thing};
use newel_engine::stage::BirthMode;

fn told(s: &Story) -> Vec<(Piece, Vec<(String, u8)>)> {
    s.with_bench(|b| {
        gains(&b.ground, b.inputs.programme)
            .into_iter()
            .map(|g| (g.piece, g.levels.into_iter().map(|(l, n)| (l.to_string(), n + 1)).collect()))
            .collect()
    })
}

fn of(s: &Story, piece: Piece) -> Vec<(String, u8)> {
    told(s).into_iter().find(|(p, _)| *p == piece).map(|(_, levels)| levels).unwrap_or_default()
}

fn steps(list: &[(&str, u8)]) -> Vec<(String, u8)> {
    list.iter().map(|(ladder, n)| ((*ladder).to_owned(), *n)).collect()
}

fn bare() -> Story {
    let mut s = Story::new();
    s.programme(vec![slot("squat", 8, 12, 3), slot("row", 8, 12, 3), slot("vertical-pull", 8, 12, 3)], 2);
    s
}

#[test]
fn each_piece_opens_what_the_catalogue_says() {
    let s = bare();
    assert_eq!(of(&s, Piece::OneWeight), steps(&[("row", 2), ("row", 3), ("squat", 4)]));
    assert_eq!(of(&s, Piece::PairOfWeights), steps(&[("row", 2), ("row", 3), ("squat", 4), ("squat", 5)]));
    assert_eq!(of(&s, Piece::LongBand), steps(&[("row", 3)]));
    assert_eq!(of(&s, Piece::Barbell), steps(&[("row", 3)]));
    assert_eq!(of(&s, Piece::Thing(Thing::Straps)), steps(&[("row", 4)]));
    let bar = steps(&[("vertical-pull", 2), ("vertical-pull", 4), ("vertical-pull", 5)]);
    assert_eq!(of(&s, Piece::Thing(Thing::PullUpBar)), bar);
    assert_eq!(told(&s).first().map(|(p, _)| *p), Some(Piece::PairOfWeights), "the most first");
    assert!(
        !told(&s).iter().any(|(p, _)| *p == Piece::Thing(Thing::Bench)),
        "what opens nothing is left out"
    );
}

#[test]
fn what_she_has_opens_nothing_more() {
    let mut s = bare();
    s.owns(dumbbells(&[4.0, 8.0]));
    assert!(of(&s, Piece::PairOfWeights).is_empty());
    let mut s = bare();
    s.owns(Kit { things: vec![Thing::PullUpBar], ..Kit::default() });
    assert_eq!(
        of(&s, Piece::LongBand),
        steps(&[("row", 3), ("vertical-pull", 3)]),
        "with the bar the band opens more"
    );
}

#[test]
fn the_stage_is_no_matter_of_the_kit_and_a_restriction_is() {
    let mut s = bare();
    s.birth_weeks_ago(3, BirthMode::Vaginal);
    assert_eq!(
        of(&s, Piece::OneWeight),
        of(&bare(), Piece::OneWeight),
        "no load yet, but not for want of one"
    );
    let mut s = bare();
    s.restricted(newel_engine::record::RestrictionKind::AllLoad);
    assert!(of(&s, Piece::OneWeight).is_empty(), "ruled out by the coach");
}
