//! All that the compiler sees: templates, one document as data, figures and fonts, every one of them in memory.

use crate::document::{Document, Page};
use crate::figures;
use std::sync::OnceLock;
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

/// Fonts as TTF, whole and unchanged; their licences stand beside them. Open Sans for the text, DejaVu Sans for the
/// letters of other scripts that it lacks.
const FONTS: [&[u8]; 5] = [
    include_bytes!("../fonts/OpenSans-Regular.ttf"),
    include_bytes!("../fonts/OpenSans-Semibold.ttf"),
    include_bytes!("../fonts/OpenSans-Bold.ttf"),
    include_bytes!("../fonts/OpenSans-Italic.ttf"),
    include_bytes!("../fonts/DejaVuSans.ttf"),
];

const TEMPLATES: [(&str, &str); 5] = [
    ("common", include_str!("../templates/common.typ")),
    ("handout", include_str!("../templates/handout.typ")),
    ("booklet", include_str!("../templates/booklet.typ")),
    ("class", include_str!("../templates/class.typ")),
    ("letter", include_str!("../templates/letter.typ")),
];

/// What stands where no font has the letter.
const BOX: char = '\u{25A1}';

struct Shared {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
}

fn shared() -> &'static Shared {
    static SHARED: OnceLock<Shared> = OnceLock::new();
    SHARED.get_or_init(|| {
        let fonts: Vec<Font> = FONTS.iter().flat_map(|data| Font::iter(Bytes::new(*data))).collect();
        Shared {
            library: LazyHash::new(<Library as LibraryExt>::default()),
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            fonts,
        }
    })
}

fn id(path: &str) -> FileId {
    // Paths are our own and plain; one that is not would stand for the root, which is no file.
    let path = VirtualPath::new(path).or_else(|_| VirtualPath::new("/none"));
    match path {
        Ok(path) => RootedPath::new(VirtualRoot::Project, path).intern(),
        Err(_) => unreachable!("a plain path"),
    }
}

/// One document and what it is laid out with.
pub(crate) struct PaperWorld {
    main: Source,
    data: Bytes,
    /// Letters that no font has, each once.
    pub(crate) undrawn: String,
}

/// Which letters are let through.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Letters {
    /// All that a font has.
    All,
    /// Latin ones alone: what is left where the shaping of others went wrong.
    Latin,
}

impl PaperWorld {
    pub(crate) fn of(document: &Document, page: Page, letters: Letters) -> Self {
        let mut undrawn = String::new();
        let mut value = serde_json::to_value(document).unwrap_or_default();
        drawable(&mut value, letters, &mut undrawn);
        if let Some(map) = value.as_object_mut() {
            map.insert("sheet".to_owned(), page.name().into());
        }
        let name = document.template();
        let main = format!(
            "#import \"/templates/{name}.typ\": show-document\n#show-document(json(\"/data.json\"))\n"
        );
        Self {
            main: Source::new(id("/main.typ"), main),
            data: Bytes::from_string(value.to_string()),
            undrawn,
        }
    }
}

/// Puts a box in the place of each letter that cannot be drawn: one such letter would make the whole file fail to conform.
/// What only steers (controls, marks of direction, spaces of no width) is left out.
fn drawable(value: &mut serde_json::Value, letters: Letters, undrawn: &mut String) {
    match value {
        serde_json::Value::String(text) => {
            if text.chars().all(|c| c == ' ' || c.is_ascii_graphic()) {
                return;
            }
            *text = text
                .chars()
                .filter(|c| !steers(*c))
                .map(|c| {
                    if can_be_drawn(c, letters) {
                        return c;
                    }
                    if !undrawn.contains(c) {
                        undrawn.push(c);
                    }
                    BOX
                })
                .collect();
        }
        serde_json::Value::Array(list) => list.iter_mut().for_each(|v| drawable(v, letters, undrawn)),
        serde_json::Value::Object(map) => map.values_mut().for_each(|v| drawable(v, letters, undrawn)),
        serde_json::Value::Null | serde_json::Value::Bool(_) | serde_json::Value::Number(_) => {}
    }
}

fn steers(c: char) -> bool {
    c != '\n'
        && (c.is_control()
            || matches!(c, '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}'))
}

fn can_be_drawn(c: char, letters: Letters) -> bool {
    let latin =
        c == '\n' || c == BOX || (' '..='\u{24f}').contains(&c) || ('\u{2010}'..='\u{2044}').contains(&c);
    // A font may claim a place that no character has; those are neither letters nor signs.
    let sign = matches!(c, '\u{300}'..='\u{36f}' | '\u{20a0}'..='\u{20bf}' | '\u{2100}'..='\u{27bf}' | '\u{1f300}'..='\u{1f6ff}');
    match letters {
        Letters::All => covered(c) && (latin || sign || c.is_alphanumeric()) || c == '\n',
        Letters::Latin => covered(c) && latin || c == '\n',
    }
}

fn covered(c: char) -> bool {
    shared().fonts.iter().any(|f| f.info().coverage.contains(c.into()))
}

impl World for PaperWorld {
    fn library(&self) -> &LazyHash<Library> {
        &shared().library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &shared().book
    }

    fn main(&self) -> FileId {
        self.main.id()
    }

    fn source(&self, file: FileId) -> FileResult<Source> {
        if file == self.main.id() {
            return Ok(self.main.clone());
        }
        let path = file.vpath().get_without_slash();
        let name = path.strip_prefix("templates/").and_then(|p| p.strip_suffix(".typ"));
        let found = TEMPLATES.iter().find(|(n, _)| Some(*n) == name);
        found
            .map(|(_, text)| Source::new(file, (*text).to_owned()))
            .ok_or_else(|| FileError::NotFound(path.to_owned().into()))
    }

    fn file(&self, file: FileId) -> FileResult<Bytes> {
        let path = file.vpath().get_without_slash();
        if path == "data.json" {
            return Ok(self.data.clone());
        }
        let figure = path.strip_prefix("figures/").and_then(|p| p.strip_suffix(".svg"));
        figure
            .and_then(figures::svg)
            .map(Bytes::from_string)
            .ok_or_else(|| FileError::NotFound(path.to_owned().into()))
    }

    fn font(&self, index: usize) -> Option<Font> {
        shared().fonts.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        // Every day that is printed comes in with the document.
        None
    }
}
