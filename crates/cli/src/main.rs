//! `newel`: everything without a window. Each command is one use case of the app; no rule of its own
//! lives here. docs/command-line.md describes the output of `--json`.
//!
//! Exit status: 0 done and sound, 1 refused, 2 not called as it should be.

mod demo;
mod files;
mod plans;
mod print;
mod rules;
mod say;
mod session;
mod simulate;
mod strength;
mod watch;

use chrono::NaiveDate;
use clap::{Parser, Subcommand};
use newel_app::AppError;
use std::path::PathBuf;
use std::process::ExitCode;

/// Strength training through pregnancy and after birth, from the command line. Not a medical device.
#[derive(Parser)]
#[command(name = "newel", version, about, disable_help_subcommand = true)]
struct Call {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Work out the next session from a plan file and a log file, with its reasons
    Propose {
        /// The plan file
        #[arg(long)]
        plan: PathBuf,
        /// The log file
        #[arg(long)]
        log: PathBuf,
        /// The day of the session
        #[arg(long, value_name = "YYYY-MM-DD")]
        on: NaiveDate,
        /// Write JSON
        #[arg(long)]
        json: bool,
    },
    /// Take log files into a coach's database, with a report for each
    TakeIn {
        /// The coach's database; it is made if there is none
        #[arg(long)]
        db: PathBuf,
        /// Write JSON
        #[arg(long)]
        json: bool,
        /// The files
        #[arg(required = true)]
        files: Vec<PathBuf>,
    },
    /// Show whom a coach should look at first, and why
    Review {
        /// The coach's database
        #[arg(long)]
        db: PathBuf,
        /// The day to look from; today if left out
        #[arg(long, value_name = "YYYY-MM-DD")]
        on: Option<NaiveDate>,
        /// Write JSON
        #[arg(long)]
        json: bool,
    },
    /// Show what there is to watch of one client: weeks, symptom rates, trends
    Watch {
        /// The plan file
        #[arg(long)]
        plan: PathBuf,
        /// The log file
        #[arg(long)]
        log: PathBuf,
        /// The day to look from; today if left out
        #[arg(long, value_name = "YYYY-MM-DD")]
        on: Option<NaiveDate>,
        /// Write JSON
        #[arg(long)]
        json: bool,
    },
    /// Show every set that moved the estimate of one client's strength, with the state after it
    Strength {
        /// The plan file
        #[arg(long)]
        plan: PathBuf,
        /// The log file
        #[arg(long)]
        log: PathBuf,
        /// Write JSON
        #[arg(long)]
        json: bool,
    },
    /// Write plan files for a coach's clients into one folder, with a receipt
    Plans {
        /// The coach's database
        #[arg(long)]
        db: PathBuf,
        /// The folder; it is made if there is none
        #[arg(long)]
        out: PathBuf,
        /// A client by her name; may be given more than once
        #[arg(long, value_name = "NAME")]
        client: Vec<String>,
        /// A group by its name; may be given more than once. Without client or group: all for whom something is new
        #[arg(long, value_name = "NAME")]
        group: Vec<String>,
        /// Show what would change for whom, and write nothing
        #[arg(long)]
        preview: bool,
        /// The language of the receipt
        #[arg(long, default_value = "en", value_parser = ["en", "es"])]
        language: String,
        /// Write JSON
        #[arg(long)]
        json: bool,
    },
    /// Check plan files, log files and databases
    Check {
        /// The files
        #[arg(required = true)]
        files: Vec<PathBuf>,
    },
    /// Write an invented practice: plan files, log files and a coach's database
    Demo {
        /// A folder; it is made if there is none
        folder: PathBuf,
        /// The day that the twelve weeks end before; today if left out
        #[arg(long, value_name = "YYYY-MM-DD")]
        on: Option<NaiveDate>,
        /// Another seed makes other weeks of the same people
        #[arg(long, default_value_t = newel_app::demo::SEED)]
        seed: u64,
    },
    /// Take synthetic clients through weeks of training, and measure how the engine serves them beside an oracle
    Simulate {
        /// Clients of each scenario
        #[arg(long, default_value_t = 200)]
        clients: u64,
        /// Weeks
        #[arg(long, default_value_t = 12)]
        weeks: u32,
        /// Seed
        #[arg(long, default_value_t = 1)]
        seed: u64,
        /// One scenario; all of them if left out
        #[arg(long, value_parser = clap::builder::PossibleValuesParser::new(simulate::names()))]
        scenario: Option<String>,
        /// Try another number in a rule; may be given more than once
        #[arg(long = "try", value_name = "RULE:NUMBER=VALUE", value_parser = simulate::number)]
        try_numbers: Vec<(String, String, f64)>,
        /// Draw how the first scenario's load settles, as SVG
        #[arg(long, value_name = "FILE")]
        figure: Option<PathBuf>,
        /// Write JSON
        #[arg(long)]
        json: bool,
    },
    /// Print on paper, as PDF: a handout, a booklet, a class sheet, a letter to a clinician; or write a log as CSV, sessions as iCalendar
    Print(Box<print::Call>),
    /// Print the rule pack: each rule with its numbers, what it does and its source
    Rules {
        /// Write JSON
        #[arg(long)]
        json: bool,
        /// Write a page in Markdown: what a symptom does (the default), or the rules
        #[arg(long, value_name = "PAGE", num_args = 0..=1, default_missing_value = "symptoms", conflicts_with = "json")]
        table: Option<rules::Page>,
    },
    /// Make every proposal of a database again and compare it with the one that was shown
    Replay {
        /// The database
        #[arg(long)]
        db: PathBuf,
    },
}

/// What a command came to.
enum End {
    /// Done, and all of it sound.
    Sound,
    /// Something was refused; it has been said.
    Refused,
}

fn main() -> ExitCode {
    match run(Call::parse().command) {
        Ok(End::Sound) => ExitCode::SUCCESS,
        Ok(End::Refused) => ExitCode::from(1),
        Err(error) => {
            say::error(None, &error);
            ExitCode::from(1)
        }
    }
}

fn run(command: Command) -> Result<End, AppError> {
    match command {
        Command::Propose { plan, log, on, json } => session::propose(&plan, &log, on, json),
        Command::TakeIn { db, json, files } => files::take_in(&db, &files, json),
        Command::Review { db, on, json } => session::review(&db, on, json),
        Command::Watch { plan, log, on, json } => watch::watch(&plan, &log, on, json),
        Command::Strength { plan, log, json } => strength::strength(&plan, &log, json),
        Command::Plans { db, out, client, group, preview, language, json } => {
            let asked = plans::Asked { client, group, preview, language, json };
            plans::plans(&db, &out, &asked)
        }
        Command::Check { files } => Ok(files::check(&files)),
        Command::Demo { folder, on, seed } => demo::demo(&folder, on, seed),
        Command::Simulate { clients, weeks, seed, scenario, try_numbers, figure, json } => {
            let asked = newel_app::simulate::Simulation { clients, weeks, seed, scenario, try_numbers };
            simulate::simulate(&asked, figure.as_deref(), json)
        }
        Command::Print(call) => print::print(&call),
        Command::Rules { json, table } => rules::rules(table, json),
        Command::Replay { db } => session::replay(&db),
    }
}
