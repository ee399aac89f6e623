//! `watch`.

use crate::{End, say};
use chrono::NaiveDate;
use newel_app::watch::Watching;
use newel_app::{AppError, Books, Words, watch};
use newel_engine::monitor::{Rate, RateOf, Week};
use serde_json::json;
use std::path::Path;

pub(crate) fn watch(plan: &Path, log: &Path, on: Option<NaiveDate>, json: bool) -> Result<End, AppError> {
    let books = Books::built_in()?;
    let on = on.unwrap_or_else(|| say::now().date_naive());
    let watching = watch::watch(&books, plan, log, on)?;
    let words = &Words::english().knowing(&watching.books.own);
    if json {
        let watch = &watching.watch;
        say::json(&json!({
            "name": watching.name,
            "programme": watching.programme,
            "on": watch.on,
            "weeks": watch.weeks,
            "rates": watch.rates,
            "notice_sentence": words.notice(watch.rates.notice),
            "trends": watch.trends,
        }))?;
        return Ok(End::Sound);
    }
    let programme = watching.programme.as_deref().map_or_else(String::new, |p| format!(", {p}"));
    say::line(&format!("{}{programme}, on {on}", watching.name));
    let over = books.rules.number("watch.hard-set", "over_target");
    tell_weeks(words, &watching, over);
    tell_rates(words, &watching);
    tell_trends(words, &watching);
    say::caution();
    Ok(End::Sound)
}

fn head(text: &str) {
    say::line("");
    say::line(text);
}

fn tell_weeks(words: &Words, watching: &Watching, over: f64) {
    let weeks = &watching.watch.weeks;
    if weeks.is_empty() {
        head(&words.watching("no-session", &[]));
        return;
    }
    head(&words.watching("weeks", &[]));
    let titles =
        ["week", "sessions", "load", "monotony", "strain", "minutes", "days", "guideline", "sets", "effort"];
    let mut rows = vec![titles.map(|t| words.watching(t, &[]))];
    rows.extend(weeks.iter().map(|w| row(words, w)));
    for line in say::table(&rows, 1) {
        say::line(&line);
    }
    let shown = |mark: &str| rows.iter().skip(1).flatten().any(|cell| cell.contains(mark));
    say::line("");
    let mut legends = vec!["legend-week"];
    legends.extend(weeks.iter().any(|w| w.minutes.guideline.is_some()).then_some("legend-guideline"));
    for (mark, legend) in
        [("*", "legend-part"), ("~", "legend-estimated"), ("+?", "legend-unknown"), ("≥", "legend-bound")]
    {
        legends.extend(shown(mark).then_some(legend));
    }
    for legend in legends {
        say::line(&words.watching(legend, &[]));
    }
    head(&words.watching("patterns", &[]));
    for week in weeks.iter().filter(|w| !w.patterns.is_empty()) {
        let sets: Vec<String> = week
            .patterns
            .iter()
            .map(|p| {
                let (pattern, sets, hard) =
                    (words.pattern(p.pattern), p.sets.to_string(), p.hard.to_string());
                words.watching("pattern-sets", &[("pattern", &pattern), ("sets", &sets), ("hard", &hard)])
            })
            .collect();
        say::line(&format!("  {}  {}", week.to, sets.join(", ")));
    }
    say::line(&words.watching("legend-hard", &[("over", &format!("{over}"))]));
}

fn row(words: &Words, week: &Week) -> [String; 10] {
    let or_none =
        |value: Option<f64>, digits: usize| value.map_or_else(|| "-".to_owned(), |v| format!("{v:.digits$}"));
    let more = |unknown: u32| if unknown > 0 { "+?" } else { "" };
    let about = |estimated: u32| if estimated > 0 { "~" } else { "" };
    let done = week.sessions.to_string();
    let sessions = week.adherence.meant.map_or_else(
        || done.clone(),
        |m| words.watching("sessions-of", &[("done", &done), ("meant", &m.to_string())]),
    );
    let guideline = week.minutes.guideline.as_ref().map_or_else(
        || "-".to_owned(),
        |g| {
            let (minutes, days) = (g.minutes.to_string(), g.days.to_string());
            words.watching("guideline-of", &[("minutes", &minutes), ("days", &days)])
        },
    );
    let (done_sets, planned) =
        (week.adherence.done_sets.to_string(), week.adherence.planned_sets.to_string());
    let effort = week.effort.as_ref().map_or_else(
        || "-".to_owned(),
        |e| format!("{}{:+.1}", if e.at_least > 0 { "≥" } else { "" }, e.mean),
    );
    [
        format!("{}{}", week.to, if week.whole { "" } else { "*" }),
        sessions,
        format!("{}{:.0}{}", about(week.load.estimated), week.load.sum, more(week.load.unknown)),
        or_none(week.load.monotony, 2),
        or_none(week.load.strain, 0),
        format!("{}{}{}", about(week.minutes.estimated), week.minutes.minutes, more(week.minutes.unknown)),
        week.minutes.days.to_string(),
        guideline,
        words.watching("sessions-of", &[("done", &done_sets), ("meant", &planned)]),
        effort,
    ]
}

fn tell_rates(words: &Words, watching: &Watching) {
    let rates = &watching.watch.rates;
    let (from, to) = (rates.from.to_string(), rates.to.to_string());
    head(&words.watching("rates", &[("from", &from), ("to", &to)]));
    if rates.rates.is_empty() {
        say::line(&format!("  {}", words.watching("rates-none", &[])));
    }
    let (marked, mut clear): (Vec<&Rate>, Vec<&Rate>) = rates.rates.iter().partition(|r| r.marked > 0);
    // Bands without a mark would fill the page; they are in the JSON.
    clear.retain(|r| match r.of {
        RateOf::Ladder { .. } | RateOf::Position { .. } => true,
        RateOf::LoadBand { .. } => false,
    });
    for rate in &marked {
        say::line(&format!("  {}", rate_line(words, rate, rates.confidence)));
    }
    if !clear.is_empty() {
        let each = |r: &&Rate| format!("{} ({})", what(words, &r.of), r.sessions);
        let list = clear.iter().map(each).collect::<Vec<_>>().join("; ");
        say::line(&format!("  {}", words.watching("rates-clear", &[("list", &list)])));
    }
    if rates.unplaced > 0 {
        let count = rates.unplaced.to_string();
        say::line(&format!("  {}", words.watching("rates-unplaced", &[("count", &count)])));
    }
    if marked.iter().any(|r| r.tells.as_ref().is_some_and(|t| t.rest.is_some())) {
        say::line(&words.watching("legend-chance", &[]));
    }
    say::line(&words.notice(rates.notice));
}

fn what(words: &Words, of: &RateOf) -> String {
    match of {
        RateOf::Ladder { ladder } => words.ladder(ladder),
        RateOf::Position { position } => {
            words.watching("of-position", &[("position", &words.position(*position))])
        }
        RateOf::LoadBand { variant, band, lightest, heaviest } => {
            let (variant, band) = (words.variant(variant), words.load_band(*band));
            let (light, heavy) = (format!("{:.1}", lightest.0), format!("{:.1}", heaviest.0));
            if light == heavy {
                words.watching("of-one-load", &[("variant", &variant), ("band", &band), ("load", &light)])
            } else {
                let loads = [("lightest", light.as_str()), ("heaviest", heavy.as_str())];
                words.watching("of-band", &[&[("variant", &*variant), ("band", &*band)][..], &loads].concat())
            }
        }
    }
}

fn rate_line(words: &Words, rate: &Rate, confidence: f64) -> String {
    let percent = |share: f64| format!("{:.0}", share * 100.0);
    let what = what(words, &rate.of);
    let (marked, sessions) = (rate.marked.to_string(), rate.sessions.to_string());
    let counts = [("what", what.as_str()), ("marked", &marked), ("sessions", &sessions)];
    let Some(tells) = &rate.tells else {
        return words.watching("rate", &counts) + &words.watching("rate-few", &[]);
    };
    let (share, low, high) = (percent(tells.rate), percent(tells.low), percent(tells.high));
    let confidence = percent(confidence);
    let values = [("rate", share.as_str()), ("low", &low), ("high", &high), ("confidence", &confidence)];
    let mut line = words.watching("rate-tells", &[&counts[..], &values].concat());
    if let Some(rest) = &tells.rest {
        let (marked, sessions) = (rest.marked.to_string(), rest.sessions.to_string());
        let chance = if rest.chance < 0.001 { "< 0.001".to_owned() } else { format!("{:.3}", rest.chance) };
        let values = [("marked", marked.as_str()), ("sessions", &sessions), ("chance", &chance)];
        line += &words.watching("rate-rest", &values);
    }
    line
}

fn tell_trends(words: &Words, watching: &Watching) {
    if watching.watch.trends.is_empty() {
        return;
    }
    head(&words.watching("trends", &[]));
    for trend in &watching.watch.trends {
        // The first and the last day; every day is in the JSON.
        let mut ends: Vec<_> = trend.points.first().into_iter().collect();
        ends.extend(trend.points.last().filter(|_| trend.points.len() > 1));
        let said: Vec<String> = ends
            .into_iter()
            .map(|p| {
                let kg = |mass: f64| format!("{mass:.1}");
                let (estimate, low, high) = (kg(p.estimate.0), kg(p.low.0), kg(p.high.0));
                words.watching(
                    "trend-point",
                    &[("estimate", &estimate), ("low", &low), ("high", &high), ("day", &p.day.to_string())],
                )
            })
            .collect();
        say::line(&format!(
            "  {}: {}",
            words.group(&watching.books.catalogue, &trend.group),
            said.join(", ")
        ));
    }
}
