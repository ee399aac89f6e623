//! Printed matter as PDF: handout, booklet, class sheet, clinician letter.
//!
//! Paper lays out and words nothing: every sentence comes in with the document, in the reader's language. A document goes
//! into the compiler as data, never as assembled markup, so that nothing a coach types can be read as a command. Fonts,
//! figures and templates are built in; nothing is read from the disk or from anywhere else.
//!
//! Each page is tagged to PDF/UA-1 (ISO 14289-1), which the compiler checks while it writes: a document that would not
//! conform is an error and no file. No meaning rests on colour, so that a black-and-white printer loses nothing.

mod document;
mod figures;
mod world;

pub use document::{
    Block, Booklet, ClassBlock, ClassCell, ClassRow, ClassSheet, Document, Front, Grid, Handout, Hers,
    Letter, LetterPart, MovePage, Page, Session, SessionPage, Slot, Step, StepOption, Table, Warning,
};
pub use figures::has_figure;

use typst::foundations::Smart;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};
use world::{Letters, PaperWorld};

/// A document as PDF.
#[derive(Clone, Debug)]
pub struct Printed {
    /// The file.
    pub bytes: Vec<u8>,
    /// How many pages it has.
    pub pages: usize,
    /// Characters that no built-in font can draw, each once; a box stands in their place.
    pub undrawn: String,
}

/// Why a document was not printed.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PaperError {
    /// The compiler refused it; that is a fault of a template and not of the document.
    #[error("the page could not be laid out: {0}")]
    Layout(String),
    /// It would not conform to PDF/UA-1.
    #[error("the file would not be accessible: {0}")]
    Accessible(String),
}

/// Lays a document out as PDF/UA-1. The same document gives the same bytes.
///
/// # Errors
/// When a template is at fault; the tests hold that none is, for whatever text.
pub fn pdf(document: &Document, page: Page) -> Result<Printed, PaperError> {
    let done = lay_out(document, page, Letters::All).or_else(|_| lay_out(document, page, Letters::Latin));
    // What was worked out for this document is kept for the next few, not for ever.
    typst::comemo::evict(4);
    done
}

fn lay_out(document: &Document, page: Page, letters: Letters) -> Result<Printed, PaperError> {
    let world = PaperWorld::of(document, page, letters);
    let said = |errors: &[typst::diag::SourceDiagnostic]| {
        errors.iter().map(|e| e.message.to_string()).collect::<Vec<_>>().join("; ")
    };
    let laid: typst_layout::PagedDocument =
        typst::compile(&world).output.map_err(|e| PaperError::Layout(said(&e)))?;
    let standards = PdfStandards::new(&[PdfStandard::Ua_1])
        .map_err(|e| PaperError::Accessible(e.message().to_string()))?;
    let creator = Smart::Custom(Some("Newel".to_owned()));
    let options = PdfOptions { standards, creator, ..PdfOptions::default() };
    let bytes = typst_pdf::pdf(&laid, &options).map_err(|e| PaperError::Accessible(said(&e)))?;
    Ok(Printed { bytes, pages: laid.pages().len(), undrawn: world.undrawn })
}
