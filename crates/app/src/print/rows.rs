//! A log as CSV (RFC 4180), for a spreadsheet: one row for each set, mark and answer.
//!
//! A spreadsheet reads a cell that begins with `=`, `+`, `-`, `@`, a tab or a carriage return as a formula. Such a text is
//! given an apostrophe in front, which a spreadsheet shows as text (OWASP, CSV Injection).

use super::Press;
use crate::profile::Known;
use newel_engine::kit::Load;
use newel_engine::record::{NextDay, Reserve, Side, Symptom};

/// Heads of the columns, as the tails of their ids.
const COLUMNS: [&str; 15] = [
    "day", "time", "session", "what", "move", "variant", "round", "side", "load", "kg", "reps", "seconds",
    "left", "effort", "note",
];

/// A text that no spreadsheet takes for a formula.
fn tame(text: &str) -> String {
    if text.starts_with(['=', '+', '-', '@', '\t', '\r']) { format!("'{text}") } else { text.to_owned() }
}

#[derive(Default)]
struct Row {
    cells: [String; COLUMNS.len()],
}

impl Row {
    fn set(mut self, column: &str, text: impl Into<String>) -> Self {
        if let Some(cell) = COLUMNS.iter().position(|c| *c == column).and_then(|i| self.cells.get_mut(i)) {
            *cell = text.into();
        }
        self
    }
}

impl Press<'_> {
    /// The log of one client. Numbers have a point, whatever the language, so that every program reads them.
    pub(super) fn rows(&self, known: &Known) -> Vec<u8> {
        let words = &self.words;
        let mut rows: Vec<Row> = Vec::new();
        for run in &known.history().runs {
            let session = known
                .of_run(run)
                .plan
                .as_ref()
                .and_then(|p| p.programme.session(&run.planned.as_ref()?.2))
                .map_or_else(String::new, |s| s.title.clone());
            let row = |kind: &str| {
                Row::default()
                    .set("day", run.day.to_string())
                    .set("session", session.clone())
                    .set("what", words.plain(&format!("csv-{kind}")))
            };
            let symptom = |s: &Symptom, kind: &str| row(kind).set("note", words.symptom(s));
            for told in run.check_in.iter().flat_map(|c| &c.symptoms) {
                rows.push(symptom(&told.what, "before"));
            }
            for entry in &run.sets {
                let set = &entry.set;
                let kg = self.books.catalogue.place(&set.variant).map(|p| p.variant.external(&set.load));
                let mut r = row("set")
                    .set("time", entry.at.format("%H:%M:%S").to_string())
                    .set("move", words.ladder(&set.ladder))
                    .set("variant", words.variant(&set.variant))
                    .set("round", (u32::from(set.round) + 1).to_string());
                if let Some(side) = set.side {
                    let id = match side {
                        Side::Left => "side-left",
                        Side::Right => "side-right",
                    };
                    r = r.set("side", words.plain(id));
                }
                if set.load != Load::Nothing {
                    r = r.set("load", words.load(&set.load));
                    r = r.set(
                        "kg",
                        kg.map_or_else(String::new, |kg| format!("{}", (kg.0 * 1000.0).round() / 1000.0)),
                    );
                }
                r = match set.seconds {
                    Some(seconds) => r.set("seconds", seconds.to_string()),
                    None => r.set("reps", set.reps.to_string()),
                };
                if let Some(reserve) = set.reserve {
                    r = r.set(
                        "left",
                        match reserve {
                            Reserve::Exactly(n) => n.to_string(),
                            Reserve::AtLeast(n) => words.with("csv-or-more", &[("count", n.into())]),
                        },
                    );
                }
                if set.stopped {
                    r = r.set("note", words.plain("csv-stopped"));
                }
                rows.push(r);
            }
            for mark in run.marks.iter().filter(|m| !m.taken_back) {
                let unsaid = Symptom { kind: None, amount: None, place: None, words: None };
                let mut r = symptom(mark.symptoms.last().map_or(&unsaid, |s| &s.what), "mark")
                    .set("time", mark.at.format("%H:%M:%S").to_string());
                r = r.set("move", mark.ladder.as_ref().map_or_else(String::new, |l| words.ladder(l)));
                r = r.set("variant", mark.variant.as_ref().map_or_else(String::new, |v| words.variant(v)));
                rows.push(
                    r.set("round", mark.round.map_or_else(String::new, |n| (u32::from(n) + 1).to_string())),
                );
            }
            if let Some(ended) = &run.ended {
                rows.push(
                    row("end")
                        .set("time", ended.at.format("%H:%M:%S").to_string())
                        .set("effort", ended.effort.map_or_else(String::new, |e| e.to_string()))
                        .set(
                            "seconds",
                            ended.minutes.map_or_else(String::new, |m| (u32::from(m) * 60).to_string()),
                        )
                        .set("note", ended.note.clone().unwrap_or_default()),
                );
            }
            if let Some(next) = &run.next_day {
                let id = match next.answer {
                    NextDay::Settled => "print-letter-settled",
                    NextDay::NotSettled => "print-letter-not-settled",
                };
                rows.push(row("next-day").set("note", words.plain(id)));
                rows.extend(next.symptoms.iter().map(|s| symptom(&s.what, "next-day")));
            }
        }
        // Written into memory, where nothing can refuse.
        let mut out = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(Vec::new());
        let heads = COLUMNS.iter().map(|c| words.plain(&format!("csv-col-{c}")));
        let mut done = out.write_record(heads);
        for row in &rows {
            done = done.and_then(|()| out.write_record(row.cells.iter().map(|c| tame(c))));
        }
        debug_assert!(done.is_ok());
        let text = out.into_inner().unwrap_or_default();
        // Some spreadsheets read UTF-8 only where its mark stands in front.
        [&[0xef, 0xbb, 0xbf][..], &text].concat()
    }
}

#[cfg(test)]
mod tests {
    use super::tame;

    #[test]
    fn no_cell_is_a_formula() {
        for text in ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"] {
            assert_eq!(tame(text), format!("'{text}"));
        }
        for text in ["12 kg", "5 or more", "", "a=b", "10-12"] {
            assert_eq!(tame(text), text);
        }
    }
}
