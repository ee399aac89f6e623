//! Invented documents of any length, for tests and benchmarks.

use newel_paper::{
    Block, Booklet, ClassBlock, ClassCell, ClassRow, ClassSheet, Document, Front, Grid, Handout, Hers,
    Letter, LetterPart, MovePage, Session, SessionPage, Slot, Step, StepOption, Table, Warning,
};

/// What every document has.
pub fn front(title: &str, language: &str) -> Front {
    let words =
        ["lay-out", "place", "ladder", "dose", "steps", "date", "felt-before", "session-effort", "notes"];
    Front {
        title: title.to_owned(),
        lines: vec!["Three times a week".to_owned()],
        language: language.to_owned(),
        author: "An invented coach".to_owned(),
        foot: "Invented, for tests".to_owned(),
        page: "Page {n} of {all}".to_owned(),
        words: words.iter().map(|w| ((*w).to_owned(), (*w).to_owned())).collect(),
    }
}

fn warning() -> Warning {
    Warning {
        title: "Stop".to_owned(),
        lead: "Any of these.".to_owned(),
        items: (1..=29).map(|n| format!("Sign {n}")).collect(),
        after: vec!["Call.".to_owned()],
    }
}

fn steps(text: &str, options: usize) -> Vec<Step> {
    let figures = ["squat-goblet", "hinge-two-dumbbells", "row-hinged", "breathing-seated"];
    (0..options)
        .map(|n| Step {
            number: u8::try_from(n + 1).unwrap_or(9),
            of: u8::try_from(options).unwrap_or(9),
            said: format!("Step {} of {options}", n + 1),
            options: vec![StepOption {
                name: text.to_owned(),
                figure: figures.get(n % 5).map(|f| (*f).to_owned()),
                alt: format!("How it is done: {text}"),
                setup: text.to_owned(),
                breath: "Breathe out coming up".to_owned(),
                cues: vec![text.to_owned(), "Chest open".to_owned(), "Whole foot on the floor".to_owned()],
                kit: Some("one weight".to_owned()),
                hers: n == 1,
            }],
        })
        .collect()
}

fn grid() -> Grid {
    Grid {
        title: String::new(),
        columns: ["Round", "Step", "Reps", "Load", "Left", "Felt"].map(str::to_owned).to_vec(),
        rows: (1..=3).map(|n| format!("Round {n}")).collect(),
    }
}

fn session(text: &str, slots: usize, hers: bool) -> Session {
    Session {
        title: text.to_owned(),
        facts: vec!["about 30 minutes".to_owned()],
        lay_out: vec!["two of 8 kg".to_owned()],
        blocks: (0..slots)
            .map(|n| Block {
                title: format!("{n}: Superset"),
                facts: vec!["3 rounds".to_owned(), "90 s rest after a round".to_owned()],
                slots: vec![Slot {
                    mark: format!("A{n}"),
                    ladder: text.to_owned(),
                    dose: vec!["8 to 12 reps".to_owned(), "3 left".to_owned()],
                    steps: steps(text, 5),
                    hers: hers.then(|| Hers {
                        name: text.to_owned(),
                        facts: vec!["12 kg".to_owned()],
                        why: vec![text.to_owned()],
                        easier: Some(text.to_owned()),
                    }),
                    grid: Some(grid()),
                }],
            })
            .collect(),
    }
}

/// A handout.
pub fn handout(text: &str, slots: usize) -> Document {
    Document::Handout(Handout {
        front: front(text, "en"),
        how: vec![text.to_owned(), "Take the step that is right today.".to_owned()],
        warning: warning(),
        cares: vec![text.to_owned()],
        session: session(text, slots, true),
    })
}

/// A booklet: so many sessions, each with so many pages to write on.
pub fn booklet(text: &str, sessions: usize, times: usize) -> Document {
    Document::Booklet(Booklet {
        front: front(text, "en"),
        contents: "Contents".to_owned(),
        how: LetterPart { title: "How".to_owned(), items: vec![text.to_owned()] },
        effort: Table {
            title: "Left".to_owned(),
            columns: vec!["Left".to_owned(), "Feels".to_owned()],
            widths: vec![0, 1],
            rows: (0..5).map(|n| vec![n.to_string(), text.to_owned()]).collect(),
            note: None,
        },
        warning: warning(),
        sessions_title: "Sessions".to_owned(),
        sessions: (0..sessions)
            .map(|_| SessionPage {
                session: session(text, 6, false),
                weeks: (0..times).map(|n| format!("Time {n}")).collect(),
            })
            .collect(),
        moves_title: "Moves".to_owned(),
        moves: (0..sessions * 6)
            .map(|_| MovePage { ladder: text.to_owned(), steps: steps(text, 5) })
            .collect(),
    })
}

/// A class sheet of so many clients.
pub fn class_sheet(text: &str, clients: usize) -> Document {
    Document::ClassSheet(ClassSheet {
        front: front(text, "en"),
        blocks: (0..3)
            .map(|n| ClassBlock {
                title: format!("{n}: Tri-set"),
                facts: vec!["3 rounds".to_owned()],
                columns: ["Client", "Squat", "Row", "Press"].map(str::to_owned).to_vec(),
                rows: (0..clients)
                    .map(|_| ClassRow {
                        name: text.to_owned(),
                        cells: (0..3u8)
                            .map(|n| ClassCell {
                                name: text.to_owned(),
                                facts: vec!["12 kg".to_owned(), "3 sets of 10 reps".to_owned()],
                                step: (n > 0).then_some((n, 4)),
                            })
                            .collect(),
                    })
                    .collect(),
            })
            .collect(),
        lay_out: LetterPart { title: "Lay out".to_owned(), items: vec![text.to_owned()] },
        alone: text.to_owned(),
        conflicts: LetterPart {
            title: "Conflicts".to_owned(),
            items: vec![text.to_owned(), text.to_owned()],
        },
        cares: LetterPart { title: "To mind".to_owned(), items: vec![text.to_owned()] },
        warning: warning(),
    })
}

/// A letter with tables of so many rows.
pub fn letter(text: &str, rows: usize) -> Document {
    Document::Letter(Letter {
        front: front("Summary", "en"),
        to: vec![text.to_owned()],
        dated: "1 March 2026".to_owned(),
        about: text.to_owned(),
        opening: vec![text.to_owned()],
        parts: vec![LetterPart { title: "Question".to_owned(), items: vec![text.to_owned()] }],
        tables: vec![Table {
            title: "Symptoms".to_owned(),
            columns: vec!["Day".to_owned(), "What".to_owned()],
            widths: vec![0, 1],
            rows: (0..rows).map(|n| vec![format!("{n} March"), text.to_owned()]).collect(),
            note: Some(text.to_owned()),
        }],
        closing: vec![LetterPart { title: "Limits".to_owned(), items: vec![text.to_owned()] }],
        signed: vec![text.to_owned()],
        caution: "No diagnosis.".to_owned(),
    })
}
