//! A whole programme on paper: how to use it, each session with pages to write on, and every move with its steps.

use super::Press;
use newel_engine::programme::{MOST_WEEKS, PlanSession, Programme};
use newel_engine::weeks::turns;
use newel_paper::{Booklet, Document, LetterPart, MovePage, SessionPage, Table};

/// Pages to write on for a programme whose end is open.
const TIMES: u8 = 4;

impl Press<'_> {
    /// The light weeks, counted through the programme, with what they are.
    fn light_weeks(&self, programme: &Programme) -> Option<String> {
        let most = u32::from(programme.weeks.unwrap_or(MOST_WEEKS));
        let light = (1..=most).filter(|w| programme.week(*w).light);
        let list: Vec<String> = light.map(|w| w.to_string()).collect();
        let count = u32::try_from(list.len()).unwrap_or(u32::MAX);
        let words = [("list", list.join(", ").into()), ("count", count.into())];
        (!list.is_empty()).then(|| self.words.with("print-light-weeks", &words))
    }

    /// A programme as a booklet.
    pub(super) fn booklet(&self, programme: &Programme) -> Document {
        let weeks = u32::from(programme.weeks.unwrap_or(TIMES));
        let all: Vec<_> =
            turns(programme).take_while(|(week, _)| *week <= weeks).map(|(_, s)| s.id).collect();
        let times = |session: &PlanSession| all.iter().filter(|id| **id == session.id).count();
        let mut lines: Vec<String> = Vec::new();
        if programme.per_week > 0 {
            lines.push(self.words.with("print-per-week", &[("times", programme.per_week.into())]));
        }
        lines.extend(programme.weeks.map(|w| self.words.with("print-weeks", &[("weeks", w.into())])));
        lines.extend(programme.phases.iter().map(|p| {
            let words = [("title", p.title.clone().into()), ("weeks", p.weeks.into())];
            self.words.with("print-phase", &words)
        }));
        lines.extend(self.light_weeks(programme));
        let pages = programme.sessions.iter().map(|session| SessionPage {
            session: self.open_session(session),
            weeks: (1..=times(session))
                .map(|n| {
                    let n = u32::try_from(n).unwrap_or(u32::MAX);
                    self.words.with("print-time", &[("title", session.title.clone().into()), ("n", n.into())])
                })
                .collect(),
        });
        let mut seen = Vec::new();
        for slot in programme.sessions.iter().flat_map(|s| s.slots()).map(|(_, slot)| slot) {
            if !seen.contains(&&slot.ladder) {
                seen.push(&slot.ladder);
            }
        }
        let moves = seen.iter().filter_map(|id| self.books.catalogue.ladder(id)).map(|ladder| MovePage {
            ladder: self.words.ladder(&ladder.id),
            steps: self.steps(ladder, None),
        });
        let left = [5, 4, 3, 2, 1, 0].map(|n| {
            let shown = if n == 5 { "5+".to_owned() } else { n.to_string() };
            vec![shown, self.words.plain(&format!("print-effort-{n}"))]
        });
        Document::Booklet(Booklet {
            front: self.front(programme.title.clone(), lines),
            contents: self.words.plain("print-contents"),
            how: LetterPart { title: self.words.plain("print-how-title"), items: self.how() },
            effort: Table {
                title: self.words.plain("print-effort-title"),
                columns: vec![
                    self.words.plain("print-effort-col-left"),
                    self.words.plain("print-effort-col-feels"),
                ],
                widths: vec![0, 1],
                rows: left.to_vec(),
                note: Some(self.words.plain("print-effort-note")),
            },
            warning: self.warning(),
            sessions_title: self.words.plain("print-sessions"),
            sessions: pages.collect(),
            moves_title: self.words.plain("print-moves"),
            moves: moves.collect(),
        })
    }
}
