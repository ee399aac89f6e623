//! Where ids come from: chance, or a seed that makes a demonstration the same every time.

use chrono::{DateTime, FixedOffset};
use sha2::{Digest, Sha256};
use uuid::{Builder, Uuid};

/// Where ids come from.
#[derive(Clone, Debug, Default)]
pub enum IdSource {
    /// The system's random numbers: what every real profile uses.
    #[default]
    Random,
    /// A seed: the same ids in the same order each time. For demonstrations and tests alone, and for
    /// a new database alone, since opening it again with the same seed would draw the same ids.
    Seeded {
        /// The seed.
        seed: u64,
        /// How many draws were made.
        drawn: u64,
    },
}

impl IdSource {
    /// A seeded source at its start.
    #[must_use]
    pub const fn seeded(seed: u64) -> Self {
        Self::Seeded { seed, drawn: 0 }
    }

    /// Sixteen bytes of chance.
    fn bytes(&mut self) -> [u8; 16] {
        match self {
            Self::Random => *Uuid::new_v4().as_bytes(),
            Self::Seeded { seed, drawn } => {
                let mut hasher = Sha256::new();
                hasher.update(seed.to_be_bytes());
                hasher.update(drawn.to_be_bytes());
                *drawn += 1;
                let mut out = [0; 16];
                out.copy_from_slice(&hasher.finalize()[..16]);
                out
            }
        }
    }

    /// An id for a record: UUIDv7, made from the time it is given and chance.
    pub(crate) fn record(&mut self, at: DateTime<FixedOffset>) -> Uuid {
        let bytes = self.bytes();
        let mut tail = [0; 10];
        // The first bytes of a v4 bear no version or variant bits but in 6 and 8; the builder sets its own.
        tail.copy_from_slice(&bytes[..10]);
        tail[6] = bytes[10];
        tail[8] = bytes[11];
        let millis = u64::try_from(at.timestamp_millis()).unwrap_or(0);
        Builder::from_unix_timestamp_millis(millis, &tail).into_uuid()
    }

    /// An id that says nothing of when it was made: for devices and instances.
    pub(crate) fn name(&mut self) -> Uuid {
        Builder::from_random_bytes(self.bytes()).into_uuid()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_record_id_bears_its_time_and_a_seed_repeats() {
        let at = DateTime::parse_from_rfc3339("2026-03-02T09:30:00.123+01:00").unwrap();
        let mut one = IdSource::seeded(3);
        let mut two = IdSource::seeded(3);
        let id = one.record(at);
        assert_eq!(id, two.record(at), "the same seed draws the same ids");
        assert_ne!(id, one.record(at), "no id is drawn twice");
        assert_eq!(id.get_version_num(), 7, "record ids are UUIDv7");
        let (secs, nanos) = id.get_timestamp().unwrap().to_unix();
        assert_eq!((secs, nanos), (1_772_440_200, 123_000_000), "the id bears the UTC time in ms");
        assert_eq!(IdSource::Random.name().get_version_num(), 4, "a device's name tells no time");
    }
}
