//! What goes onto paper: shapes with every sentence already worded.

use serde::Serialize;
use std::collections::BTreeMap;

/// The sheet it is printed on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Page {
    /// ISO 216: 210 x 297 mm.
    A4,
    /// ANSI: 8.5 x 11 in.
    Letter,
}

impl Page {
    /// The compiler's name of it.
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::Letter => "us-letter",
        }
    }
}

/// A document.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Document {
    /// One session with every option, or with one client's.
    Handout(Handout),
    /// A whole programme.
    Booklet(Booklet),
    /// Who does what in a session that several train together.
    ClassSheet(ClassSheet),
    /// Facts for a clinician.
    Letter(Letter),
}

impl Document {
    pub(crate) fn template(&self) -> &'static str {
        match self {
            Self::Handout(_) => "handout",
            Self::Booklet(_) => "booklet",
            Self::ClassSheet(_) => "class",
            Self::Letter(_) => "letter",
        }
    }
}

/// What every document has.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Front {
    /// Title, at the top and in the file's own data.
    pub title: String,
    /// What stands under the title.
    pub lines: Vec<String>,
    /// BCP 47 tag of the language it is worded in.
    pub language: String,
    /// Who made it.
    pub author: String,
    /// What stands at the foot of every page.
    pub foot: String,
    /// "Page {n} of {all}", with the two names in braces where the numbers go.
    pub page: String,
    /// Small words of the templates, by name.
    pub words: BTreeMap<String, String>,
}

/// What to mind, framed so that it is seen.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Warning {
    /// Its heading.
    pub title: String,
    /// What comes first.
    pub lead: String,
    /// One thing a line.
    pub items: Vec<String>,
    /// What follows.
    pub after: Vec<String>,
}

/// A session on paper.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Handout {
    /// What every document has.
    pub front: Front,
    /// How to use it.
    pub how: Vec<String>,
    /// When to stop.
    pub warning: Warning,
    /// What is hers alone to mind.
    pub cares: Vec<String>,
    /// The session.
    pub session: Session,
}

/// A planned session.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Session {
    /// Title.
    pub title: String,
    /// Minutes and the like.
    pub facts: Vec<String>,
    /// What to lay out before it.
    pub lay_out: Vec<String>,
    /// Blocks in order.
    pub blocks: Vec<Block>,
}

/// A block.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Block {
    /// "A · Tri-set".
    pub title: String,
    /// Rounds, rests.
    pub facts: Vec<String>,
    /// Slots in order.
    pub slots: Vec<Slot>,
}

/// A slot.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Slot {
    /// "A1".
    pub mark: String,
    /// Name of its ladder.
    pub ladder: String,
    /// Dose in words.
    pub dose: Vec<String>,
    /// Steps that are shown with their figures, easiest first.
    pub steps: Vec<Step>,
    /// What one client does today, if it is for one.
    pub hers: Option<Hers>,
    /// Where to write by hand.
    pub grid: Option<Grid>,
}

/// A step of a ladder.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// Its number, from 1.
    pub number: u8,
    /// Steps of the ladder.
    pub of: u8,
    /// "Step 2 of 4".
    pub said: String,
    /// Ways to do it.
    pub options: Vec<StepOption>,
}

/// A way to do a step.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StepOption {
    /// Name.
    pub name: String,
    /// Id of its figure, if there is one.
    pub figure: Option<String>,
    /// What the figure shows, in words.
    pub alt: String,
    /// How to stand and what to hold.
    pub setup: String,
    /// When to breathe out.
    pub breath: String,
    /// What to mind.
    pub cues: Vec<String>,
    /// Things needed.
    pub kit: Option<String>,
    /// True for the one that is proposed to her.
    pub hers: bool,
}

/// What one client does in a slot.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Hers {
    /// Variant, or that the ladder rests.
    pub name: String,
    /// Load, sets and reps, effort; empty where it rests.
    pub facts: Vec<String>,
    /// Why.
    pub why: Vec<String>,
    /// An easier way, for a day that asks for one.
    pub easier: Option<String>,
}

/// Rows and columns to write into.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Grid {
    /// Its heading.
    pub title: String,
    /// Heads of the columns, that of the rows first.
    pub columns: Vec<String>,
    /// Heads of the rows.
    pub rows: Vec<String>,
}

/// Rows and columns to read.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Table {
    /// Its heading.
    pub title: String,
    /// Heads of the columns.
    pub columns: Vec<String>,
    /// Widths of the columns in parts of what is left; 0 for as wide as what stands in it.
    pub widths: Vec<u8>,
    /// Cells by row.
    pub rows: Vec<Vec<String>>,
    /// What stands over it, such as what a number means.
    pub note: Option<String>,
}

/// A programme as a booklet.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Booklet {
    /// What every document has.
    pub front: Front,
    /// Heading of the list of contents.
    pub contents: String,
    /// Heading of how to use it, and how.
    pub how: LetterPart,
    /// Effort in words.
    pub effort: Table,
    /// When to stop.
    pub warning: Warning,
    /// Heading of the sessions.
    pub sessions_title: String,
    /// Sessions, each with pages to write on.
    pub sessions: Vec<SessionPage>,
    /// Heading of the moves.
    pub moves_title: String,
    /// Every ladder that occurs.
    pub moves: Vec<MovePage>,
}

/// A session in a booklet.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SessionPage {
    /// The session; of its steps the names are printed, the moves stand by themselves.
    pub session: Session,
    /// Title of each week's page to write on.
    pub weeks: Vec<String>,
}

/// A ladder in a booklet.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MovePage {
    /// Its name.
    pub ladder: String,
    /// Its steps, easiest first.
    pub steps: Vec<Step>,
}

/// Who does what.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassSheet {
    /// What every document has.
    pub front: Front,
    /// Blocks, each a table.
    pub blocks: Vec<ClassBlock>,
    /// What to lay out for the room, thing by thing.
    pub lay_out: LetterPart,
    /// When to stop.
    pub warning: Warning,
    /// Heading of the last sheet, which is for the coach alone.
    pub alone: String,
    /// What does not fit together; no items if all does.
    pub conflicts: LetterPart,
    /// What to mind of whom: stage, what rests and why, limits.
    pub cares: LetterPart,
}

/// A block of a class sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassBlock {
    /// "A · Tri-set".
    pub title: String,
    /// Rounds, rests.
    pub facts: Vec<String>,
    /// Heads of the columns: the client, then the slots.
    pub columns: Vec<String>,
    /// Clients in order.
    pub rows: Vec<ClassRow>,
}

/// A client of a class sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassRow {
    /// Her name. Nothing of her health stands beside it: others read what hangs on a wall.
    pub name: String,
    /// One cell for each slot.
    pub cells: Vec<ClassCell>,
}

/// What a client does in a slot.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassCell {
    /// Variant, or that the ladder rests.
    pub name: String,
    /// Load and reps.
    pub facts: Vec<String>,
    /// Level from 1, and levels, for the small stair; `None` where it rests.
    pub step: Option<(u8, u8)>,
}

/// A heading with lines under it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LetterPart {
    /// Heading.
    pub title: String,
    /// One thing a line.
    pub items: Vec<String>,
}

/// A letter to a clinician: facts, and a question.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Letter {
    /// What every document has.
    pub front: Front,
    /// Whom it goes to, line by line.
    pub to: Vec<String>,
    /// Place and day.
    pub dated: String,
    /// What it is about.
    pub about: String,
    /// Whom it concerns and by whose leave.
    pub opening: Vec<String>,
    /// Parts before the tables.
    pub parts: Vec<LetterPart>,
    /// Tables.
    pub tables: Vec<Table>,
    /// Parts after the tables, the question among them.
    pub closing: Vec<LetterPart>,
    /// What stands above the signature.
    pub signed: Vec<String>,
    /// What the letter is not.
    pub caution: String,
}
