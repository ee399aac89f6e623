//! A class: with the kit of a room only what kit decides is different, and where too little is there it is said who takes
//! turns.

use crate::properties::{Told, client, sound_with, tell, told};
use crate::story::*;
use newel_engine::class::{Laid, TakesTurns, in_kit, laid, turns};
use newel_engine::ids::PersonId;
use newel_engine::kit::{Band, Dumbbell, Kit, Load, Thing};
use newel_engine::proposal::{Bench, Gate, Outcome, SessionProposal};
use newel_engine::record::RestrictionKind;
use newel_engine::units::Newtons;
use proptest::prelude::*;
use uuid::Uuid;

fn in_room(s: &Story, kit: &Kit) -> SessionProposal {
    s.with_own_bench(|b| {
        let b = b.with_kit(kit.clone());
        b.propose(&b.inputs.programme.sessions[0])
    })
}

fn own(s: &Story) -> Kit {
    s.with_bench(|b| b.ground.kit.clone())
}

/// The open places of a slot's ladder with the loads of each: all that kit decides.
fn made(b: &Bench<'_>, n: usize) -> Vec<(usize, String, Vec<Load>)> {
    let (_, slot) = b.inputs.programme.sessions[0].slots().nth(n).unwrap();
    let ladder = b.inputs.catalogue.ladder(&slot.ladder).unwrap();
    let open = b.ground.open(ladder, slot.levels);
    open.iter().map(|p| (p.level, p.variant.id.to_string(), b.ground.loads(p))).collect()
}

fn room_kit() -> impl Strategy<Value = Kit> {
    let weight = prop_oneof![Just(2.0), Just(4.0), Just(5.0), Just(7.5), Just(10.0), Just(16.0)];
    let dumbbell = (weight, any::<bool>()).prop_map(|(w, pair)| Dumbbell { weight: kg(w), pair });
    (proptest::collection::vec(dumbbell, 0..5), any::<bool>(), any::<bool>()).prop_map(
        |(dumbbells, band, straps)| Kit {
            dumbbells,
            barbell: None,
            bands: band
                .then(|| Band { name: "room".into(), at_100: Newtons(50.0), at_200: Newtons(80.0) })
                .into_iter()
                .collect(),
            things: straps.then_some(Thing::Straps).into_iter().collect(),
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, ..ProptestConfig::default() })]

    #[test]
    fn the_kit_of_a_room_changes_only_what_kit_changes(
        stage in 0u8..3, story in proptest::collection::vec(told(), 0..5), kit in room_kit()
    ) {
        let mut s = client(stage);
        for t in &story {
            let t: &Told = t;
            if s.proposal().gate != Gate::Open {
                break;
            }
            tell(&mut s, t);
        }
        let hers = s.proposal();
        prop_assert_eq!(&in_room(&s, &own(&s)), &hers, "her own kit, the same proposal");
        let there = in_room(&s, &kit);
        prop_assert_eq!(&there.gate, &hers.gate, "whether she trains is no matter of the kit");
        prop_assert_eq!(there.slots.len(), hers.slots.len());
        sound_with(&s, &there, &kit)?;
        prop_assert_eq!(&s.proposal(), &hers, "asking changes nothing");
        for (n, (a, b)) in hers.slots.iter().zip(&there.slots).enumerate() {
            let same = s.with_own_bench(|bench| {
                let at_home = made(&bench, n);
                at_home == made(&bench.with_kit(kit.clone()), n)
            });
            // What an earlier slot did weighs on a later one of the same muscles.
            let earlier = hers.slots[..n].iter().zip(&there.slots[..n]).all(|(a, b)| a.outcome == b.outcome);
            if same && earlier {
                prop_assert_eq!(a, b, "nothing of this slot is a matter of the kit");
            }
        }
    }
}

#[test]
fn with_nothing_in_the_room_she_trains_with_her_body_and_a_restriction_holds_there_too() {
    let mut s = client(0);
    let empty = in_room(&s, &Kit::default());
    for p in &empty.slots {
        let Outcome::Train(p) = &p.outcome else { panic!("{p:?}") };
        assert_eq!(p.load, Load::Nothing);
    }
    let heavy = dumbbells(&[4.0, 8.0, 24.0]);
    s.restricted(RestrictionKind::AllLoad);
    for p in &in_room(&s, &heavy).slots {
        let Outcome::Train(p) = &p.outcome else { continue };
        assert_eq!(p.load, Load::Nothing, "what the room has does not lift what was ruled out");
    }
}

#[test]
fn what_a_kit_lists_is_counted() {
    let kit = Kit {
        dumbbells: vec![
            Dumbbell { weight: kg(8.0), pair: true },
            Dumbbell { weight: kg(12.0), pair: false },
            Dumbbell { weight: kg(8.0), pair: true },
        ],
        things: vec![Thing::Bench],
        ..Kit::default()
    };
    assert_eq!(in_kit(&kit, &Laid::Weight { weight: kg(8.0) }), Some(4), "two pairs");
    assert_eq!(in_kit(&kit, &Laid::Weight { weight: kg(12.0) }), Some(1));
    assert_eq!(in_kit(&kit, &Laid::Weight { weight: kg(10.0) }), Some(0));
    assert_eq!(in_kit(&kit, &Laid::Thing { thing: Thing::Bench }), Some(1));
    assert_eq!(in_kit(&kit, &Laid::Thing { thing: Thing::Step }), Some(0));
    assert_eq!(in_kit(&kit, &Laid::Chair), None, "chairs stand in no kit");
}

/// Three of the same, who squat with one weight.
fn three() -> (Story, SessionProposal, [PersonId; 3]) {
    let mut s = Story::new();
    s.owns(dumbbells(&[2.0, 5.0])).programme(vec![slot("squat", 6, 10, 2)], 2);
    s.starts_at("squat", 3, Some(one(5.0)));
    let proposal = s.proposal();
    let Outcome::Train(p) = &proposal.slots[0].outcome else { panic!("{proposal:?}") };
    assert_eq!(p.load, one(5.0), "each needs one of 5 kg");
    (s, proposal, [1, 2, 3].map(|n| PersonId(Uuid::from_u128(n))))
}

fn who_waits(have: impl Fn(&Laid) -> Option<u16>) -> Vec<TakesTurns> {
    let (s, proposal, people) = three();
    let members: Vec<_> = people.iter().map(|p| (*p, &proposal)).collect();
    turns(&s.catalogue, &s.programme.sessions[0], &members, have)
}

#[test]
fn who_comes_later_in_the_table_takes_turns_or_does_with_what_is_left() {
    let five = Laid::Weight { weight: kg(5.0) };
    assert!(who_waits(|_| None).is_empty(), "what is not counted is enough");
    assert!(who_waits(|w| (*w == five).then_some(3)).is_empty(), "just enough");
    let last = PersonId(Uuid::from_u128(3));
    let found = who_waits(|w| (*w == five).then_some(2));
    assert_eq!(found.iter().map(|t| t.person).collect::<Vec<_>>(), [last]);
    let (s, proposal, _) = three();
    let Outcome::Train(p) = &proposal.slots[0].outcome else { panic!() };
    let instead = found[0].instead.as_ref().expect("an easier squat needs nothing");
    assert!(p.options.contains(instead), "of what is open to her: {instead:?}");
    let needs =
        |o: &newel_engine::proposal::Offer| laid(s.catalogue.place(&o.variant).unwrap().variant, &o.load);
    assert!(needs(instead).iter().all(|(w, _)| *w != five));
    let harder = p.options.iter().rev().take_while(|o| *o != instead);
    for o in harder {
        assert!(needs(o).iter().any(|(w, _)| *w == five), "the hardest that can be made: {o:?}");
    }
    // Nothing there at all: all three, in their order.
    let found = who_waits(|w| (*w == five).then_some(0));
    assert_eq!(found.len(), 3);
    assert_eq!(found[2].person, last);
}
