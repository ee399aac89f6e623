//! Ladders and variants of the coach's own: they come in beside the built-in ones, are barred by what bars those, and stay.

use crate::properties::{Told, sound, tell, told};
use crate::story::*;
use newel_engine::catalogue::{
    Catalogue, Caution, Loading, OwnCatalogue, OwnError, OwnLadder, OwnVariant, Pattern, Place, Position,
    ReadyMark, is_own,
};
use newel_engine::ids::VariantId;
use newel_engine::kit::Thing;
use newel_engine::record::{Payload, RestrictionKind};
use newel_engine::stage::BirthMode;
use proptest::prelude::*;
use std::collections::BTreeMap;
use uuid::Uuid;

fn id(n: u128) -> String {
    Uuid::from_u128(n).to_string()
}

/// A variant of hers that is the same to do as a built-in one.
fn twin(n: u128, place: &Place<'_>) -> OwnVariant {
    let v = place.variant;
    OwnVariant {
        id: id(n).into(),
        ladder: place.ladder.id.clone(),
        level: u8::try_from(place.level).unwrap(),
        like: Some(v.id.clone()),
        position: v.position,
        needs: v.needs.clone(),
        loading: v.loading,
        share: v.share.as_ref().map(|s| s.share),
        per_side: v.per_side,
        cautions: Caution::ALL.into_iter().map(|c| (c, v.cautions.contains(&c))).collect(),
        ready: v.ready,
        usual_start: v.usual_start,
        name: format!("Mine {n}"),
        setup: String::new(),
        breath: String::new(),
        cues: vec!["Slow".to_owned()],
        slips: Vec::new(),
        retired: false,
    }
}

fn of(variants: Vec<OwnVariant>) -> OwnCatalogue {
    OwnCatalogue { ladders: Vec::new(), variants }
}

fn copy_of(variant: &str) -> OwnVariant {
    twin(1, &Catalogue::built_in().unwrap().place(&variant.into()).unwrap())
}

/// A ladder of hers with a step of nothing held and one of a weight.
fn ladder() -> OwnCatalogue {
    let at = |n: u128, level: u8, loading: Loading| OwnVariant {
        id: id(n).into(),
        ladder: id(9).into(),
        level,
        like: None,
        loading,
        cautions: BTreeMap::from(Caution::ALL.map(|c| (c, false))),
        ready: ReadyMark::Reps { reps: 12 },
        usual_start: None,
        ..copy_of("hinge-one-dumbbell")
    };
    OwnCatalogue {
        ladders: vec![OwnLadder {
            id: id(9).into(),
            name: "Cable chop".to_owned(),
            pattern: Pattern::Trunk,
            retired: false,
        }],
        variants: vec![at(10, 0, Loading::Body), at(11, 1, Loading::One)],
    }
}

#[test]
fn hers_come_after_the_built_in_ones_and_the_numbers_of_levels_mean_what_they_meant() {
    let built_in = Catalogue::built_in().unwrap();
    let mut above = copy_of("hinge-barbell");
    above.id = id(2).into();
    above.level = 4;
    let with = built_in.with_own(&of(vec![above, copy_of("hinge-one-dumbbell")])).unwrap();
    for place in built_in.places() {
        let now = with.place(&place.variant.id).unwrap();
        assert_eq!((now.level, now.variant), (place.level, place.variant), "as it was");
    }
    let hinge = with.ladder(&"hinge".into()).unwrap();
    assert_eq!(hinge.levels.len(), 5, "one level more, above");
    assert_eq!(hinge.levels[1].variants.last().unwrap().id.as_str(), id(1), "at its level, last");
    assert_eq!(hinge.levels[4].variants[0].id.as_str(), id(2));
    let mine = hinge.levels[1].variants.last().unwrap();
    assert_ne!(mine.group, built_in.place(&"hinge-one-dumbbell".into()).unwrap().variant.group);
    let prior = |g: &str| with.group(&g.into()).unwrap().prior_c.to_bits();
    assert_eq!(prior(&format!("own-{}", id(1))), prior("hinge"), "a state of its own, with that prior");
}

#[test]
fn what_she_did_not_answer_counts_and_what_lies_in_the_thing_cannot_be_denied() {
    let mut mine = copy_of("hinge-one-dumbbell");
    mine.cautions = BTreeMap::from([(Caution::Wrist, false)]);
    let counts = mine.cautions_on(Pattern::Hinge);
    assert!(!counts.contains(&Caution::Wrist));
    assert_eq!(counts.len(), Caution::ALL.len() - 1, "all that is not denied: {counts:?}");
    mine.cautions = Caution::ALL.into_iter().map(|c| (c, false)).collect();
    assert_eq!(mine.cautions_on(Pattern::Hinge), vec![]);
    assert_eq!(mine.cautions_on(Pattern::Impact), vec![Caution::Impact]);
    assert_eq!(mine.cautions_on(Pattern::VerticalPush), vec![Caution::Overhead]);
    mine.position = Position::Hanging;
    assert_eq!(mine.cautions_on(Pattern::Hinge), vec![Caution::Overhead]);
}

#[test]
fn nothing_of_hers_goes_on_while_all_else_rests() {
    for pattern in [Pattern::Breathing, Pattern::PelvicFloor, Pattern::Mobility] {
        let mut own = ladder();
        own.ladders[0].pattern = pattern;
        assert!(matches!(own.check(), Err(OwnError::Exempt(_))), "{pattern:?}");
    }
    let built_in = Catalogue::built_in().unwrap();
    let mine = copy_of("breathing-seated");
    assert!(matches!(built_in.check_place(&OwnCatalogue::default(), &mine), Err(OwnError::Exempt(_))));
    let with = built_in.with_own(&of(vec![mine.clone()])).unwrap();
    assert!(with.place(&mine.id).is_none(), "and from a file it is left out");
}

#[test]
fn a_place_is_a_level_that_there_is_or_one_above() {
    let with = Catalogue::built_in().unwrap().with_own(&ladder()).unwrap();
    let own = ladder();
    let at = |ladder: &str, level: u8| {
        let v = OwnVariant { ladder: ladder.into(), level, ..copy_of("hinge-one-dumbbell") };
        with.check_place(&own, &v).is_ok()
    };
    assert!(at("hinge", 3) && at("hinge", 4) && !at("hinge", 5));
    assert!(at(&id(9), 1) && at(&id(9), 2) && !at(&id(9), 3) && !at("no-such", 0));
}

#[test]
fn under_one_id_words_may_change_and_the_thing_may_not() {
    let mut own = of(vec![copy_of("hinge-one-dumbbell")]);
    let same = |change: fn(&mut OwnVariant)| {
        let mut next = own.variants[0].clone();
        change(&mut next);
        own.clone().put_variant(next)
    };
    assert!(same(|v| v.name = "Kettlebell hinge".to_owned()).is_ok());
    assert!(same(|v| v.retired = true).is_ok());
    assert!(same(|v| v.cautions = BTreeMap::new()).is_ok());
    let other: [fn(&mut OwnVariant); 6] = [
        |v| v.position = Position::Supine,
        |v| v.loading = Loading::Pair,
        |v| v.share = Some(0.5),
        |v| v.per_side = true,
        |v| v.level = 0,
        |v| v.ready = ReadyMark::Seconds { seconds: 30 },
    ];
    for change in other {
        assert!(matches!(same(change), Err(OwnError::Identity(_))));
    }
    assert!(own.put_variant(OwnVariant { id: id(2).into(), ..copy_of("hinge-barbell") }).is_ok());
}

#[test]
fn what_is_out_of_bounds_is_refused_by_name() {
    let wrong: [fn(&mut OwnVariant); 9] = [
        |v| v.id = "hinge-barbell".into(),
        |v| v.name = " ".to_owned(),
        |v| v.name = "x".repeat(61),
        |v| v.setup = "a\u{0}b".to_owned(),
        |v| v.cues = vec!["x".to_owned(); 5],
        |v| v.share = Some(f64::NAN),
        |v| v.ready = ReadyMark::Load { kg: f64::INFINITY },
        |v| v.loading = Loading::Band { stretch: 0.0 },
        |v| v.loading = Loading::Assist { stretch: 1.0 },
    ];
    for (nth, change) in wrong.into_iter().enumerate() {
        let mut mine = copy_of("hinge-one-dumbbell");
        change(&mut mine);
        assert!(mine.check().is_err(), "case {nth}");
        assert!(Catalogue::built_in().unwrap().with_own(&of(vec![mine])).is_err(), "case {nth}");
    }
    assert!(is_own(&id(1)) && !is_own("squat") && !is_own(&id(1).to_uppercase().replace('0', "A")));
    let twice = of(vec![copy_of("hinge-barbell"), copy_of("hinge-barbell")]);
    assert!(matches!(twice.check(), Err(OwnError::Id(_))));
}

#[test]
fn an_update_of_the_built_in_ones_leaves_hers_whole() {
    let own = OwnCatalogue {
        variants: [
            ladder().variants,
            vec![copy_of("hinge-one-dumbbell"), {
                let mut top = copy_of("hinge-barbell");
                top.id = id(2).into();
                top.level = 4;
                top
            }],
        ]
        .concat(),
        ..ladder()
    };
    let mut newer = Catalogue::built_in().unwrap();
    newer.version += 1;
    let hinge = newer.ladders.iter_mut().find(|l| l.id.as_str() == "hinge").unwrap();
    let mut more = hinge.levels[1].variants[0].clone();
    more.id = "hinge-newer".into();
    // One variant less, which she copied from, one more, and a level more where hers began.
    hinge.levels[1].variants.remove(0);
    hinge.levels[2].variants.push(more.clone());
    more.id = "hinge-newest".into();
    hinge.levels.push(newel_engine::catalogue::Level { variants: vec![more] });
    let with = newer.with_own(&own).unwrap();
    for mine in &own.variants {
        let place = with.place(&mine.id).unwrap();
        assert_eq!(place.level, usize::from(mine.level), "{} stands where it stood", mine.name);
        assert_eq!(place.variant.loading, mine.loading);
    }
    newer.ladders.retain(|l| l.id.as_str() != "hinge");
    let without = newer.with_own(&own).unwrap();
    assert!(without.place(&id(1).into()).is_none(), "its ladder is gone, and nothing else is");
    assert!(without.place(&id(11).into()).is_some());
    assert_eq!(own.variants.len(), 4, "what is kept is as it was");
}

#[test]
fn her_ladder_is_trained_and_a_retired_step_is_read_and_proposed_no_more() {
    let mut s = Story::new();
    s.catalogue = s.catalogue.with_own(&ladder()).unwrap();
    s.owns(dumbbells(&[2.0, 4.0])).programme(vec![slot(&id(9), 8, 12, 3)], 2);
    assert_eq!(s.next(&id(9)).variant.as_str(), id(10));
    for _ in 0..3 {
        s.session_of(&id(9), 12, left(5));
        s.settled().days(3);
    }
    let up = s.next(&id(9));
    assert_eq!((up.variant.as_str(), up.level), (id(11).as_str(), 1), "up to the step of a weight");
    s.session_of(&id(9), 10, left(3));
    s.settled().days(3);
    assert_eq!(s.next(&id(9)).variant.as_str(), id(11));
    let mut own = ladder();
    own.variants[1].retired = true;
    s.catalogue = Catalogue::built_in().unwrap().with_own(&own).unwrap();
    assert_eq!(s.next(&id(9)).variant.as_str(), id(10), "the step below, since hers is retired");
    own.ladders[0].retired = true;
    s.catalogue = Catalogue::built_in().unwrap().with_own(&own).unwrap();
    assert!(s.rests(&id(9)), "a retired ladder rests");
    assert!(s.catalogue.place(&id(11).into()).is_some(), "and is still there to be read");
}

#[test]
fn sets_of_a_variant_that_nobody_knows_any_more_are_passed_over() {
    let mut s = Story::new();
    s.catalogue =
        s.catalogue.with_own(&of(vec![OwnVariant { level: 0, ..copy_of("hinge-one-dumbbell") }])).unwrap();
    s.owns(dumbbells(&[2.0, 4.0])).programme(vec![slot("hinge", 8, 12, 3)], 2);
    s.restricted(RestrictionKind::Variant { variant: "hinge-wall-tap".into() });
    assert_eq!(s.next("hinge").variant.as_str(), id(1));
    s.session_of("hinge", 10, left(3));
    s.settled().days(3);
    s.catalogue = Catalogue::built_in().unwrap();
    assert_ne!(s.next("hinge").variant.as_str(), id(1));
    s.session_of("hinge", 10, left(3));
}

#[test]
fn the_stream_says_what_stands_whatever_the_order() {
    let mut s = Story::new();
    let first = copy_of("hinge-one-dumbbell");
    let named = OwnVariant { name: "Suitcase hinge".to_owned(), ..first.clone() };
    let other = OwnVariant { per_side: true, ..first.clone() };
    s.says(Payload::OwnLadder(ladder().ladders.remove(0)));
    for variant in [first, named.clone(), other] {
        s.says(Payload::OwnVariant(Box::new(variant)));
    }
    let mut records = s.records.clone();
    let stands = OwnCatalogue::standing(&records);
    assert_eq!(stands.variants, vec![named], "the last that is still the same thing");
    assert_eq!(stands.ladders, ladder().ladders);
    records.reverse();
    assert_eq!(OwnCatalogue::standing(&records), stands);
}

#[test]
fn her_words_stand_under_the_ids_of_the_built_in_ones() {
    let said = of(vec![copy_of("hinge-one-dumbbell")]).sayings();
    assert_eq!(said[&format!("variant-{}", id(1))], "Mine 1");
    assert_eq!(said[&format!("variant-{}.cue1", id(1))], "Slow");
    assert!(!said.contains_key(&format!("variant-{}.setup", id(1))), "what is empty is not said");
}

fn position() -> impl Strategy<Value = Position> {
    prop::sample::select(vec![
        Position::Standing,
        Position::Seated,
        Position::Kneeling,
        Position::AllFours,
        Position::SideLying,
        Position::Incline,
        Position::Supine,
        Position::Prone,
        Position::Hanging,
    ])
}

fn loading() -> impl Strategy<Value = Loading> {
    let stretch = -0.5f64..4.0;
    prop_oneof![
        Just(Loading::Body),
        Just(Loading::One),
        Just(Loading::Pair),
        Just(Loading::Barbell),
        stretch.clone().prop_map(|stretch| Loading::Band { stretch }),
        stretch.prop_map(|stretch| Loading::Assist { stretch }),
    ]
}

fn ready() -> impl Strategy<Value = ReadyMark> {
    prop_oneof![
        (0u16..40).prop_map(|reps| ReadyMark::Reps { reps }),
        (0u16..90).prop_map(|seconds| ReadyMark::Seconds { seconds }),
        (-20.0f64..60.0).prop_map(|kg| ReadyMark::Load { kg }),
    ]
}

/// A variant of hers, sound or not, on the two ladders that are trained or on one of hers.
fn variant(n: u128) -> impl Strategy<Value = OwnVariant> {
    let ladder = prop::sample::select(vec!["hinge".to_owned(), "squat".to_owned(), id(9), "gone".to_owned()]);
    let said = prop::collection::btree_map(prop::sample::select(Caution::ALL.to_vec()), any::<bool>(), 0..6);
    let needs = prop::collection::vec(prop::sample::select(vec![Thing::Bench, Thing::Step]), 0..2);
    let share = prop::option::of(0.0f64..1.2);
    ((ladder, 0u8..14, position(), loading(), ready()), (said, needs, share, any::<bool>(), any::<bool>()))
        .prop_map(
            move |(
                (ladder, level, position, loading, ready),
                (cautions, needs, share, per_side, retired),
            )| OwnVariant {
                id: id(100 + n).into(),
                ladder: ladder.as_str().into(),
                level,
                position,
                loading,
                ready,
                cautions,
                needs,
                share,
                per_side,
                retired,
                usual_start: None,
                ..copy_of("hinge-one-dumbbell")
            },
        )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn whatever_she_makes_is_refused_or_trained_soundly(
        variants in (variant(0), variant(1), variant(2), variant(3)),
        pattern in prop::sample::select(vec![Pattern::Trunk, Pattern::Impact, Pattern::VerticalPush, Pattern::Arms]),
        stage in 0u8..3,
        tale in prop::collection::vec(told(), 1..5),
        gone in any::<bool>(),
    ) {
        let hers = OwnLadder { id: id(9).into(), name: "Mine".to_owned(), pattern, retired: false };
        let (a, b, c, d) = variants;
        let mut own = OwnCatalogue { ladders: vec![hers], variants: Vec::new() };
        for v in [a, b, c, d] {
            // What is not sound is refused when it is written; the rest has to be borne.
            let sound = v.check().is_ok();
            prop_assert_eq!(own.put_variant(v).is_ok(), sound);
        }
        let mut s = crate::properties::client(stage);
        s.catalogue = s.catalogue.with_own(&own).unwrap();
        s.owns(full_kit());
        let mut slots = vec![slot("hinge", 8, 12, 3), slot("squat", 6, 10, 2)];
        if s.catalogue.ladder(&id(9).as_str().into()).is_some() {
            slots.push(slot(&id(9), 6, 10, 2));
        }
        s.programme(slots, 2);
        for t in &tale {
            sound(&s, &s.proposal())?;
            tell(&mut s, t);
        }
        sound(&s, &s.proposal())?;
        if gone {
            // The plan of another coach, who knows nothing of these.
            s.catalogue = Catalogue::built_in().unwrap();
            s.programme(vec![slot("hinge", 8, 12, 3), slot("squat", 6, 10, 2)], 2);
            sound(&s, &s.proposal())?;
            tell(&mut s, &Told { reps: 8, reserve: 3, days: 2, mark: 0, settled: true });
        }
    }

    #[test]
    fn what_bars_a_built_in_variant_bars_hers_with_the_same_tags(
        stage in 0u8..6,
        conditions in prop::collection::vec(any::<prop::sample::Index>(), 0..3),
        ruled in 0u8..6,
        kit in any::<bool>(),
        cleared in any::<bool>(),
    ) {
        let mut s = Story::new();
        let built_in = s.catalogue.clone();
        let twins: Vec<(VariantId, OwnVariant)> = built_in
            .places()
            .filter(|p| !p.ladder.pattern.goes_on_meanwhile())
            .enumerate()
            .map(|(n, p)| (p.variant.id.clone(), twin(1000 + n as u128, &p)))
            .collect();
        s.catalogue = built_in.with_own(&of(twins.iter().map(|(_, t)| t.clone()).collect())).unwrap();
        match stage {
            1 => crate::properties::drop_ref(s.weeks_pregnant(30)),
            2 => crate::properties::drop_ref(s.pregnant_undated()),
            3 => crate::properties::drop_ref(s.birth_weeks_ago(0, BirthMode::Vaginal)),
            4 => crate::properties::drop_ref(s.birth_weeks_ago(5, BirthMode::Caesarean)),
            5 => crate::properties::drop_ref(s.birth_weeks_ago(20, BirthMode::Vaginal)),
            _ => {}
        }
        let all: Vec<String> = s.rules.conditions().iter().map(|c| c.id.to_string()).collect();
        let named: Vec<&str> = conditions.iter().map(|i| i.get(&all).as_str()).collect();
        s.screened(&named, &[]);
        match ruled {
            1 => crate::properties::drop_ref(s.restricted(RestrictionKind::Position { position: Position::Supine })),
            2 => crate::properties::drop_ref(s.restricted(RestrictionKind::Caution { caution: Caution::Overhead })),
            3 => crate::properties::drop_ref(s.restricted(RestrictionKind::Caution { caution: Caution::OneSided })),
            4 => crate::properties::drop_ref(s.restricted(RestrictionKind::AllLoad)),
            5 => crate::properties::drop_ref(
                s.restricted(RestrictionKind::LevelAbove { ladder: "squat".into(), level: 1 }),
            ),
            _ => {}
        }
        if kit {
            s.owns(full_kit());
        }
        if cleared {
            s.cleared();
        }
        s.with_bench(|b| {
            for (built_in, twin) in &twins {
                let bar = |id: &VariantId| b.ground.bar(&s.catalogue.place(id).unwrap(), None);
                prop_assert_eq!(bar(built_in), bar(&twin.id), "{} and its twin", built_in);
            }
            Ok(())
        })?;
    }
}
