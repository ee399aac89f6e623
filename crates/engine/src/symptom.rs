//! What a symptom does (DESIGN 5.5; kinds, classes and repeats are data of the rule pack).

use crate::history::Intake;
use crate::ids::{LadderId, SymptomId};
use crate::record::{Symptom, SymptomAmount};
use crate::rules::{AmountForm, Class, RulePack, Scope, SymptomKind, UNSAID_KIND, Urgency};

/// Why a class is not the kind's own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Because {
    /// It is the kind's own, or its number's.
    Kind,
    /// It is at or under what is usual for her.
    AtBaseline,
    /// It came again on the same ladder in the same session.
    Again,
    /// It was there in the session before, too.
    Repeated,
    /// It grows from session to session.
    Growing,
    /// It was still there next morning.
    NextMorning,
}

/// What a symptom does, as far as it alone tells.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// Kind, `not-sure` as long as none was said.
    pub kind: SymptomId,
    /// Class.
    pub class: Class,
    /// Scope, if it holds.
    pub scope: Scope,
    /// Urgency, if it is red.
    pub urgency: Option<Urgency>,
    /// Why this class.
    pub because: Because,
    /// True if the set in hand ends.
    pub ends_set: bool,
    /// Amount on a scale of its own, for comparison with the same kind only.
    pub amount: u8,
}

impl Verdict {
    /// What a hold of it closes, marked on a ladder or at large: one of a ladder alone concerns all of them where it
    /// came of none.
    #[must_use]
    pub fn scope_on(&self, ladder: Option<&LadderId>) -> Scope {
        match (self.scope, ladder) {
            (Scope::Ladder, None) => Scope::All,
            (scope, _) => scope,
        }
    }
}

/// What came before a symptom.
#[derive(Clone, Copy, Debug, Default)]
pub struct Before {
    /// The same kind was marked on this ladder earlier in this session.
    pub again: bool,
    /// Sessions running, up to the one before on this ladder, in which the same kind dropped or held.
    pub drops_running: u8,
    /// Amount of the same kind in the session before on this ladder, whatever it did then.
    pub last_amount: Option<u8>,
    /// It is said of the next morning.
    pub next_morning: bool,
}

/// An amount on a scale from 0 to 10; left out counts as clearly, or as pain of 5.
#[must_use]
pub fn amount_of(rules: &RulePack, kind: &SymptomKind, amount: Option<SymptomAmount>) -> u8 {
    match (amount, kind.amount) {
        (Some(SymptomAmount::Little), _) => on_scale(rules, "symptom.amounts", "little"),
        (Some(SymptomAmount::Clearly), _) | (None, AmountForm::Words | AmountForm::None) => {
            on_scale(rules, "symptom.amounts", "clearly")
        }
        (Some(SymptomAmount::Lot), _) => on_scale(rules, "symptom.amounts", "lot"),
        (Some(SymptomAmount::Pain(n)), _) => n.min(10),
        (None, AmountForm::Pain) => on_scale(rules, "symptom.left-out", "pain"),
    }
}

/// A rule's number from 0 to 10.
fn on_scale(rules: &RulePack, rule: &str, name: &str) -> u8 {
    let number = rules.number(rule, name);
    if (0.0..=10.0).contains(&number) { number as u8 } else { 10 }
}

/// Judges a symptom. An amount only ever makes its class stricter; only a recorded baseline softens a
/// drop to a cue, and never a hold or a red flag.
#[must_use]
pub fn judge(rules: &RulePack, intake: &Intake, symptom: &Symptom, before: Before) -> Verdict {
    let said = symptom.kind.clone().unwrap_or_else(|| SymptomId::from(UNSAID_KIND));
    // A kind from a newer version is treated as one that was not said.
    let kind = rules.symptom(&said).or_else(|| rules.symptom(&SymptomId::from(UNSAID_KIND)));
    let Some(kind) = kind else {
        return Verdict {
            kind: said,
            class: Class::Drop,
            scope: Scope::Ladder,
            urgency: None,
            because: Because::Kind,
            ends_set: true,
            amount: on_scale(rules, "symptom.amounts", "clearly"),
        };
    };
    let amount = amount_of(rules, kind, symptom.amount);
    let mut class = kind.class;
    for band in &kind.by_pain {
        if amount >= band.from {
            class = class.max(band.class);
        }
    }
    let mut because = Because::Kind;
    let stricter = |class: &mut Class, because: &mut Because, other: Option<Class>, why: Because| {
        if let Some(other) = other
            && other > *class
        {
            *class = other;
            *because = why;
        }
    };
    if before.again {
        stricter(&mut class, &mut because, kind.again, Because::Again);
    }
    let baseline = intake.baseline(&kind.id).map(|b| amount_of(rules, kind, Some(b)));
    let usual = baseline.is_some_and(|b| amount <= b);
    if before.next_morning {
        // At the usual amount a symptom that is there next morning drops; else its own rule holds.
        let morning = if usual { kind.next_morning.map(|c| c.min(Class::Drop)) } else { kind.next_morning };
        stricter(&mut class, &mut because, morning, Because::NextMorning);
    } else if class == Class::Drop && because == Because::Kind && usual {
        // A cue that did not help is there again: then it drops, usual or not.
        (class, because) =
            if before.again { (class, Because::Again) } else { (Class::Cue, Because::AtBaseline) };
    }
    if class == Class::Drop && !usual {
        let grown = before.last_amount.is_some_and(|last| amount > last);
        let sessions = f64::from(before.drops_running) + 1.0;
        if sessions >= rules.number("symptom.repeat", "sessions") || (grown && baseline.is_some()) {
            class = Class::Hold;
            because = if grown { Because::Growing } else { Because::Repeated };
        }
    }
    Verdict {
        kind: kind.id.clone(),
        class,
        scope: kind.scope,
        urgency: if class == Class::Red { kind.urgency.or(Some(Urgency::Call)) } else { None },
        because,
        ends_set: kind.ends_set || class >= Class::Drop,
        amount,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Baseline;

    fn rules() -> RulePack {
        RulePack::built_in().unwrap()
    }

    fn felt(kind: &str, amount: Option<SymptomAmount>) -> Symptom {
        Symptom { kind: Some(kind.into()), amount, place: None, words: None }
    }

    fn class(kind: &str, amount: Option<SymptomAmount>, before: Before) -> Class {
        judge(&rules(), &Intake::default(), &felt(kind, amount), before).class
    }

    #[test]
    fn classes_follow_the_table() {
        // SYMPTOMS.md, row by row where the number or the repeat decides.
        let none = Before::default();
        assert_eq!(class("bleeding", None, none), Class::Red);
        assert_eq!(class("heaviness", Some(SymptomAmount::Little), none), Class::Drop);
        assert_eq!(class("heaviness", None, Before { next_morning: true, ..none }), Class::Hold);
        assert_eq!(class("doming", None, none), Class::Cue);
        assert_eq!(class("doming", None, Before { again: true, ..none }), Class::Drop);
        assert_eq!(class("girdle-pain", Some(SymptomAmount::Pain(5)), none), Class::Drop);
        assert_eq!(class("girdle-pain", Some(SymptomAmount::Pain(6)), none), Class::Hold);
        assert_eq!(class("girdle-pain", None, none), Class::Drop, "left out counts as 5");
        assert_eq!(class("cannot-bear-weight", None, none), Class::Red);
        assert_eq!(class("bulge", None, none), Class::Hold);
        assert_eq!(class("leak-urge", None, none), Class::Note);
    }

    #[test]
    fn a_mark_without_a_kind_is_a_drop() {
        let unsaid = Symptom { kind: None, amount: None, place: None, words: None };
        assert_eq!(judge(&rules(), &Intake::default(), &unsaid, Before::default()).class, Class::Drop);
    }

    #[test]
    fn a_baseline_softens_a_drop_and_nothing_stricter() {
        let usual = |kind: &str| Intake {
            baselines: vec![Baseline { kind: kind.into(), amount: SymptomAmount::Clearly }],
            ..Intake::default()
        };
        let at = |kind: &str, amount| {
            judge(&rules(), &usual(kind), &felt(kind, Some(amount)), Before::default()).class
        };
        assert_eq!(at("heaviness", SymptomAmount::Clearly), Class::Cue);
        assert_eq!(at("heaviness", SymptomAmount::Lot), Class::Drop);
        assert_eq!(at("bleeding", SymptomAmount::Little), Class::Red, "a red flag has no baseline");
        assert_eq!(at("bulge", SymptomAmount::Little), Class::Hold);
    }

    #[test]
    fn the_same_drop_in_two_sessions_running_holds() {
        let before = Before { drops_running: 1, last_amount: Some(5), ..Before::default() };
        assert_eq!(class("heaviness", None, before), Class::Hold);
        let grown = judge(&rules(), &Intake::default(), &felt("heaviness", Some(SymptomAmount::Lot)), before);
        assert_eq!(grown.because, Because::Growing);
    }

    #[test]
    fn an_amount_never_softens() {
        let rules = rules();
        for kind in rules.symptoms() {
            let mut last = Class::Note;
            for n in 0..=10 {
                let c = judge(
                    &rules,
                    &Intake::default(),
                    &felt(kind.id.as_str(), Some(SymptomAmount::Pain(n))),
                    Before::default(),
                )
                .class;
                assert!(c >= last && c >= kind.class, "{} at {n}", kind.id);
                last = c;
            }
        }
    }
}
