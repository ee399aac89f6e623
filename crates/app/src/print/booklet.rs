//! A whole programme on paper: how to use it, each session with pages to write on, and every move with its steps.

use super::Press;
use newel_engine::programme::{MOST_WEEKS, PlanSession, Programme};
use newel_engine::weeks::turns;
use newel_paper::{Booklet, Document, LetterPart, MovePage, Session, SessionPage, Table};

/// Pages to write on for a programme whose end is open.
const TIMES: u8 = 4;

/// A session's title, after that of its phase where there are phases.
fn of_phase(programme: &Programme, session: &PlanSession) -> String {
    match programme.phases.iter().find(|p| session.is_of(Some(p))) {
        Some(phase) => format!("{}: {}", phase.title, session.title),
        None => session.title.clone(),
    }
}

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
        let all: Vec<_> = turns(programme).take_while(|(week, _)| *week <= weeks).collect();
        let times = |session: &PlanSession| -> Vec<String> {
            let of_it = all.iter().filter(|(_, s)| s.id == session.id);
            let named = of_it.enumerate().map(|(n, (week, _))| {
                let n = u32::try_from(n + 1).unwrap_or(u32::MAX);
                let words =
                    [("title", session.title.clone().into()), ("n", n.into()), ("week", (*week).into())];
                let id = if programme.weeks.is_some() { "print-time-week" } else { "print-time" };
                self.words.with(id, &words)
            });
            named.collect()
        };
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
            session: Session { title: of_phase(programme, session), ..self.open_session(session) },
            weeks: times(session),
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::coach::built_in_programmes;
    use crate::newel::Books;
    use newel_engine::programme::{BlockWeek, Phase, SlotWeek};

    #[test]
    fn pages_say_phase_week_and_what_a_week_asks_for() {
        let books = Books::built_in().unwrap();
        let mut programme = built_in_programmes(&books).unwrap().remove(0);
        programme.sessions.truncate(2);
        programme.per_week = 2;
        programme.weeks = Some(3);
        let phase =
            |id: &str, weeks, light_weeks| Phase { id: id.into(), title: id.into(), weeks, light_weeks };
        programme.phases = vec![phase("Settle", 1, vec![]), phase("Build", 2, vec![2])];
        for (session, phase) in programme.sessions.iter_mut().zip(["Settle", "Build"]) {
            session.phase = Some(phase.into());
            session.title = format!("Session of {phase}");
        }
        let block = &mut programme.sessions[1].blocks[1];
        let rounds = block.rounds + 2;
        block.by_week = vec![BlockWeek { week: 2, rounds, rest_seconds: 45, rest_between_seconds: 0 }];
        let mut dose = block.slots[0].dose;
        dose.target_rir = 7;
        block.slots[0].by_week = vec![SlotWeek { week: 1, dose }];
        assert_eq!(programme.check(&books.catalogue), Ok(()));
        let day = "2026-11-26".parse().unwrap();
        let press = Press::of(&books, "en", day, "Wren".to_owned()).unwrap();
        let Document::Booklet(booklet) = press.booklet(&programme) else { panic!("a booklet") };
        let titles: Vec<&str> = booklet.sessions.iter().map(|s| s.session.title.as_str()).collect();
        assert_eq!(titles, ["Settle: Session of Settle", "Build: Session of Build"]);
        assert_eq!(
            booklet.sessions[1].weeks,
            [
                "Session of Build, week 2, time 1",
                "Session of Build, week 2, time 2",
                "Session of Build, week 3, time 3",
                "Session of Build, week 3, time 4",
            ]
        );
        let block = &booklet.sessions[1].session.blocks[1];
        let facts = block.facts.join("; ");
        assert!(facts.contains(&format!("Week 2: {rounds} rounds")) && facts.contains("45 s"), "{facts}");
        let doses = block.slots[0].dose.join("; ");
        assert!(doses.contains("Week 1: ") && doses.contains("7 left"), "{doses}");
        let rows = block.slots[0].grid.as_ref().map(|g| g.rows.len());
        assert_eq!(rows, Some(usize::from(rounds)), "room for the week with the most rounds");
        let front = format!("{:?}", booklet.front);
        assert!(front.contains("Build: 2 weeks") && front.contains("Light week: 3"), "{front}");
    }
}
