//! Packs that were made of one pack before, so that the same settings are worked in once.

use super::{RulePack, SetRule};
use std::fmt;
use std::sync::OnceLock;

/// A list that only grows. It remembers results and decides nothing: two packs that differ in it alone
/// are equal, and a copy begins with an empty one.
#[derive(Default)]
pub(super) struct Made(OnceLock<Box<Link>>);

struct Link {
    pack: RulePack,
    next: Made,
}

impl Made {
    /// The pack with these settings worked in; `make` makes it if it was not made before.
    pub(super) fn find_or(&self, set: &[SetRule], make: impl Fn() -> RulePack) -> &RulePack {
        let mut here = self;
        loop {
            // Another thread may have put its own there meanwhile; then the search goes on behind it.
            let link = here.0.get_or_init(|| Box::new(Link { pack: make(), next: Self::default() }));
            if link.pack.set == set {
                return &link.pack;
            }
            here = &link.next;
        }
    }
}

impl Drop for Made {
    /// One by one: a long list that drops itself from within would go as deep as it is long.
    fn drop(&mut self) {
        let mut next = self.0.take();
        while let Some(mut link) = next {
            next = link.next.0.take();
        }
    }
}

impl Clone for Made {
    fn clone(&self) -> Self {
        Self::default()
    }
}

impl PartialEq for Made {
    fn eq(&self, _: &Self) -> bool {
        true
    }
}

impl fmt::Debug for Made {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Made")
    }
}
