//! Documents laid out for real. That each conforms to PDF/UA-1 is checked by the compiler while it writes: a document that
//! does not is an error here. Text and tags are read back by a general library in tests/python.

mod made;

use made::{booklet, class_sheet, front, handout, letter};
use newel_paper::{Document, Page, pdf};
use proptest::prelude::*;

fn pages_of(document: &Document, page: Page) -> usize {
    let done = pdf(document, page).expect("it is laid out, and conforms");
    assert!(done.bytes.starts_with(b"%PDF-"), "a PDF file");
    done.pages
}

#[test]
fn every_kind_of_document_conforms_on_both_sheets() {
    for document in
        [handout("Goblet squat", 3), booklet("Goblet squat", 2, 2), class_sheet("Ada", 4), letter("Ada", 12)]
    {
        for page in [Page::A4, Page::Letter] {
            assert!(pages_of(&document, page) >= 1, "{document:?}");
        }
    }
}

#[test]
fn an_empty_document_conforms_too() {
    for document in [handout("", 0), booklet("", 0, 0), class_sheet("", 0), letter("", 0)] {
        assert!(pages_of(&document, Page::A4) >= 1);
    }
}

#[test]
fn the_same_document_gives_the_same_bytes() {
    let document = handout("Goblet squat", 2);
    assert_eq!(pdf(&document, Page::A4).unwrap().bytes, pdf(&document, Page::A4).unwrap().bytes);
    assert_ne!(pdf(&document, Page::A4).unwrap().bytes, pdf(&document, Page::Letter).unwrap().bytes);
}

#[test]
fn a_long_log_makes_more_pages_and_a_wide_class_stays_within_the_sheet() {
    assert!(pages_of(&letter("Ada", 200), Page::A4) > pages_of(&letter("Ada", 10), Page::A4));
    assert!(pages_of(&class_sheet("Ada", 40), Page::A4) > 1);
}

#[test]
fn what_no_font_can_draw_is_said_and_does_not_spoil_the_file() {
    let done = pdf(&letter("\u{674e}\u{5a1c} Åsa \u{5e9}\u{5e8}\u{5d4} \u{1f600}", 1), Page::A4).unwrap();
    assert_eq!(done.undrawn, "\u{674e}\u{5a1c}", "Latin and Hebrew are drawn, Chinese is not");
}

#[test]
fn a_language_is_named_in_the_file() {
    let mut spanish = letter("Ada", 1);
    if let Document::Letter(letter) = &mut spanish {
        letter.front = front("Carta", "es");
    }
    let bytes = pdf(&spanish, Page::A4).unwrap().bytes;
    let text = String::from_utf8_lossy(&bytes);
    assert!(text.contains("/Lang") || text.contains("Lang"), "the catalogue names the language");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 6, ..ProptestConfig::default() })]

    /// Whatever a coach types stays text: markup of the compiler, control characters, marks of direction, other scripts.
    #[test]
    fn no_text_breaks_a_document(text in "(?s).{0,400}", markup in "[#$*_`@<>\\\\\\[\\](){}/=~+\\-\"' \n]{0,60}") {
        let words = format!("{text}{markup}");
        for document in [handout(&words, 1), booklet(&words, 1, 1), class_sheet(&words, 2), letter(&words, 2)] {
            prop_assert!(pdf(&document, Page::A4).is_ok());
        }
    }
}
