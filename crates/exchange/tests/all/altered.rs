//! A file that lost or changed a single byte on its way.

use crate::support::*;
use newel_exchange::{Document, read, write_log, write_plan};
use proptest::prelude::*;

#[test]
fn every_truncation_is_refused() {
    for bytes in [write_log(&log()).unwrap(), write_plan(&plan()).unwrap()] {
        for end in 0..bytes.len() {
            let code = read(&bytes[..end]).unwrap_err().code();
            assert_eq!(code, if end == 0 { "empty" } else { "cut-short" }, "cut at {end} of {}", bytes.len());
        }
    }
}

#[test]
fn every_missing_beginning_is_refused() {
    let bytes = write_plan(&plan()).unwrap();
    for start in 1..bytes.len() {
        assert!(read(&bytes[start..]).is_err(), "without its first {start} bytes");
    }
}

/// A changed byte is refused, or it changed white space that carries nothing.
fn harmless(original: &Document, bytes: &[u8]) -> bool {
    match read(bytes) {
        Err(error) => !error.code().is_empty(),
        Ok(document) => document == *original,
    }
}

#[test]
fn every_flipped_bit_of_the_envelope_is_refused_or_harmless() {
    let (original, bytes) = (Document::Log(log()), write_log(&log()).unwrap());
    let envelope = bytes.windows(10).position(|w| w == b"\"content\":").unwrap() + 12;
    let places = (0..envelope).chain(bytes.len() - 3..bytes.len());
    for place in places {
        for bit in 0..8 {
            let mut altered = bytes.clone();
            altered[place] ^= 1 << bit;
            assert!(read(&altered).is_err(), "bit {bit} of byte {place}: there is no space in an envelope");
            assert!(harmless(&original, &altered));
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 512, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_changed_byte_is_refused_or_harmless(place in any::<prop::sample::Index>(), byte in any::<u8>()) {
        let bytes = write_log(&log()).unwrap();
        let place = place.index(bytes.len());
        let mut altered = bytes.clone();
        altered[place] = byte;
        if altered != bytes {
            prop_assert!(read(&altered).is_err(), "byte {} became {}", place, byte);
        }
    }

    #[test]
    fn white_space_around_the_parts_of_the_envelope_is_harmless(space in "[ \t\r\n]{1,5}", nth in 0_usize..5) {
        let text = String::from_utf8(write_plan(&plan()).unwrap()).unwrap();
        let head = text.find("\"content\":").unwrap();
        let (place, _) = text[..head].match_indices(',').nth(nth.min(3)).unwrap();
        let spaced = match nth {
            4 => format!("{space}{text}{space}"),
            _ => format!("{}{space}{}", &text[..=place], &text[place + 1..]),
        };
        prop_assert_eq!(read(spaced.as_bytes()).unwrap(), Document::Plan(Box::new(plan())));
    }

    #[test]
    fn no_bytes_at_all_bring_the_reader_down(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        prop_assert!(read(&bytes).is_err());
        let mut ours = br#"{"format":"newel.log","version":1,"seal":null,"#.to_vec();
        ours.extend(&bytes);
        prop_assert!(read(&ours).is_err());
    }
}
