//! Who is to blame for a break in a chain. Pure.
//!
//! Each line bears the hash of the one before. Where a line and its follower disagree, one of the two
//! was altered. A line that its own follower confirms is true; so is a stored one. A break is never
//! papered over: where it cannot be told which of two new lines was altered, both are refused.

use super::plan::Refusal;
use newel_engine::ids::DeviceId;
use std::collections::BTreeMap;

/// A line's two ends.
#[derive(Clone, Copy, Debug)]
pub(super) struct Link<'a> {
    /// The hash that it bears of the line before.
    pub prev: Option<&'a str>,
    /// Its own hash.
    pub hash: &'a str,
    /// True for a line that is in the database already.
    pub stored: bool,
}

/// The lines that cannot be taken in, with the reason.
pub(super) fn judge(links: &BTreeMap<(DeviceId, u64), Link<'_>>) -> BTreeMap<(DeviceId, u64), Refusal> {
    let mut verdicts = BTreeMap::new();
    // From the last to the first: the word of a follower counts only as far as it is trusted itself.
    for (&(device, seq), link) in links.iter().rev().filter(|(_, l)| !l.stored) {
        let after = (device, seq + 1);
        let Some(follower) = links.get(&after) else { continue };
        if follower.prev == Some(link.hash) || verdicts.contains_key(&after) {
            continue;
        }
        verdicts.insert((device, seq), Refusal::Altered);
        let confirmed = links
            .get(&(device, seq + 2))
            .is_some_and(|l| l.prev == Some(follower.hash) && !verdicts.contains_key(&(device, seq + 2)));
        if !follower.stored && !confirmed {
            verdicts.insert(after, Refusal::Altered);
        }
    }
    // From the first to the last: what does not follow from a stored line is a fork, with all that follows from it.
    for (&(device, seq), link) in links.iter().filter(|(_, l)| !l.stored) {
        let Some(before) = seq.checked_sub(1).map(|s| (device, s)) else { continue };
        let Some(leader) = links.get(&before) else { continue };
        let forked = if leader.stored {
            link.prev != Some(leader.hash)
        } else {
            verdicts.get(&before) == Some(&Refusal::BrokenChain) && link.prev == Some(leader.hash)
        };
        if forked {
            verdicts.entry((device, seq)).or_insert(Refusal::BrokenChain);
        }
    }
    verdicts
}

#[cfg(test)]
mod tests {
    use super::*;
    use uuid::Uuid;

    const D: DeviceId = DeviceId(Uuid::from_u128(1));

    /// Lines as (number, hash of the line before, own hash, stored); expects (number, verdict).
    fn check(lines: &[(u64, &str, &str, bool)], expect: &[(u64, Refusal)], why: &str) {
        let links = lines
            .iter()
            .map(|&(seq, prev, hash, stored)| ((D, seq), Link { prev: Some(prev), hash, stored }))
            .collect();
        let verdicts: Vec<_> = judge(&links).into_iter().map(|((_, seq), v)| (seq, v)).collect();
        assert_eq!(verdicts, expect, "{why}");
    }

    #[test]
    fn blame_falls_where_it_belongs() {
        use Refusal::{Altered, BrokenChain};
        let (old, new) = (true, false);
        check(&[(1, "a", "b", new), (2, "b", "c", new)], &[], "a whole chain");
        check(
            &[(1, "a", "B", new), (2, "b", "c", new), (3, "c", "d", new)],
            &[(1, Altered)],
            "the follower is confirmed by its own follower",
        );
        check(
            &[(1, "a", "B", new), (2, "b", "c", new)],
            &[(1, Altered), (2, Altered)],
            "nobody confirms either of the two",
        );
        check(
            &[(1, "a", "b", new), (2, "X", "Y", new), (3, "c", "d", new), (4, "d", "e", new)],
            &[(2, Altered)],
            "a line whose own word is void accuses nobody",
        );
        check(&[(1, "a", "B", new), (2, "b", "c", old)], &[(1, Altered)], "a stored line's word counts");
        check(
            &[(1, "a", "b", old), (2, "X", "c", new), (3, "c", "d", new), (5, "e", "f", new)],
            &[(2, BrokenChain), (3, BrokenChain)],
            "a fork goes with its whole tail, and no further than the next gap",
        );
        check(
            &[(1, "a", "b", old), (2, "b", "C", new), (3, "c", "d", new), (4, "d", "e", new)],
            &[(2, Altered)],
            "an altered line leaves its tail beyond a gap",
        );
    }
}
