//! Every check and test, the cheapest first, ending at the first that does not hold.

use std::time::{Duration, Instant};

use anyhow::{Context, Result};

use crate::generated::{self, Kind};
use crate::install::{self, For};
use crate::process::{cargo, npm, time};
use crate::{build, draw_icons, python, repository};

type Step = (&'static str, fn() -> Result<()>);

/// In this order; each stands alone.
const STEPS: &[Step] = &[
    ("what is needed", || install::ready(For::Steering).and_then(|()| install::nextest())),
    ("rustfmt", || cargo(&["fmt", "--all", "--check"]).step("rustfmt")),
    ("eslint and prettier", || npm(&["run", "lint"]).step("eslint and prettier")),
    ("svelte-check and tsc", || npm(&["run", "check"]).step("svelte-check and tsc")),
    ("tests of the screens", || npm(&["run", "test"]).step("tests of the screens")),
    ("screens", build::screens),
    ("clippy", clippy),
    ("build", || cargo(&["nextest", "run", "--workspace", "--no-run"]).step("build")),
    ("bindings are fresh", || generated::check(Kind::Bindings, &["--workspace"])),
    ("schemas are fresh", || generated::check(Kind::Schemas, &[])),
    ("icons are fresh", || draw_icons(true)),
    ("tests", tests),
    ("environment for Python", python::environment),
    ("figures of monitor", python::monitor),
    ("filter against libraries", python::filter),
    ("papers read back", python::paper),
    ("second implementation", python::second),
    ("documentation tests", || {
        cargo(&["test", "--workspace", "--doc", "--quiet"]).step("documentation tests")
    }),
];

/// Runs all steps and sums up what held and how long each took.
pub fn test() -> Result<()> {
    let mut taken: Vec<(&str, Duration)> = Vec::new();
    let start = Instant::now();
    for (name, step) in STEPS {
        let begun = Instant::now();
        let done = step();
        taken.push((name, begun.elapsed()));
        if done.is_err() {
            sum_up(&taken, Some(name), start.elapsed());
        }
        done.with_context(|| format!("stopped at: {name}"))?;
    }
    sum_up(&taken, None, start.elapsed());
    Ok(())
}

fn clippy() -> Result<()> {
    cargo(&["clippy", "--workspace", "--all-targets", "--", "-D", "warnings"]).step("clippy")?;
    cargo(&["clippy", "--package", "xtask", "--features", "icons", "--", "-D", "warnings"])
        .step("clippy of the icons")
}

/// The writers of the page's types are among the tests; here they write beside the build, and the repository is left alone.
fn tests() -> Result<()> {
    cargo(&["nextest", "run", "--workspace", "--no-fail-fast"])
        .with("TS_RS_EXPORT_DIR", repository().join("target/bindings"))
        .step("tests")
}

fn sum_up(taken: &[(&str, Duration)], stopped: Option<&str>, whole: Duration) {
    println!("\nSummary");
    for (name, duration) in taken {
        let mark = if stopped == Some(name) { "does not hold" } else { "holds" };
        println!("  {mark:<14} {name:<24} {}", time(*duration));
    }
    for (name, _) in &STEPS[taken.len()..] {
        println!("  {:<14} {name}", "not run");
    }
    println!("  in all {}", time(whole));
}
