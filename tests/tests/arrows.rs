//! Arrows run inward only: ui -> src-tauri -> app -> {store, exchange, paper} -> engine, and cli -> app. Cargo keeps crates apart;
//! this keeps the direction.

use std::collections::{BTreeMap, BTreeSet};

use cargo_metadata::{DependencyKind, Metadata, MetadataCommand, PackageId};

/// Each package of the workspace, and which others it may name. A new package needs its line here.
const ALLOWED: &[(&str, &[&str])] = &[
    ("newel-engine", &[]),
    ("newel-store", &["newel-engine"]),
    ("newel-exchange", &["newel-engine"]),
    ("newel-paper", &["newel-engine"]),
    ("newel-app", &["newel-engine", "newel-store", "newel-exchange", "newel-paper"]),
    // Both outer edges speak in the engine's words, and reach the log and the files through the use cases alone.
    ("newel", &["newel-engine", "newel-app"]),
    ("newel-shell", &["newel-engine", "newel-app"]),
    // Tests of the whole may look into every layer; nothing may name them.
    ("newel-tests", &["newel-engine", "newel-store", "newel-exchange", "newel-app"]),
    ("xtask", &[]),
];

/// Crates from outside that only one of ours may name, by the beginning of their names.
const RESERVED: &[(&str, &str)] = &[("tauri", "newel-shell"), ("rusqlite", "newel-store")];

/// What the engine must not reach, not even through others: no files, no clock, no threads, no window.
const NOT_IN_THE_ENGINE: &[&str] = &["rusqlite", "libsqlite3-sys", "tokio", "tauri", "tempfile"];

/// A package and the names of what it depends on: for use, for building and for tests.
type Members = BTreeMap<String, BTreeSet<String>>;

fn metadata() -> Metadata {
    MetadataCommand::new()
        .manifest_path(concat!(env!("CARGO_MANIFEST_DIR"), "/../Cargo.toml"))
        .exec()
        .expect("cargo metadata of the workspace")
}

fn members(metadata: &Metadata) -> Members {
    let names = |package: &cargo_metadata::Package| {
        package.dependencies.iter().map(|one| one.name.to_string()).collect()
    };
    metadata
        .workspace_packages()
        .into_iter()
        .map(|package| (package.name.to_string(), names(package)))
        .collect()
}

/// Every arrow that is not allowed, as a sentence.
fn outward(members: &Members) -> Vec<String> {
    let mut faults = Vec::new();
    for (name, dependencies) in members {
        let Some((_, allowed)) = ALLOWED.iter().find(|(known, _)| known == name) else {
            faults.push(format!("{name} has no line in the table of allowed arrows"));
            continue;
        };
        for dependency in dependencies {
            if members.contains_key(dependency) && !allowed.contains(&dependency.as_str()) {
                faults.push(format!("{name} must not depend on {dependency}"));
            }
            for (outside, owner) in RESERVED {
                if dependency.starts_with(outside) && name != owner {
                    faults.push(format!("{name} names {dependency}, which only {owner} may"));
                }
            }
        }
    }
    faults
}

/// Everything that a package reaches for use, not for building or tests.
fn reached(metadata: &Metadata, package: &str) -> BTreeSet<String> {
    let resolve = metadata.resolve.as_ref().expect("cargo metadata resolves dependencies");
    let nodes: BTreeMap<&PackageId, _> = resolve.nodes.iter().map(|node| (&node.id, node)).collect();
    let start =
        metadata.packages.iter().find(|one| one.name.as_str() == package).expect("the package is there");
    let mut seen = BTreeSet::new();
    let mut open = vec![&start.id];
    while let Some(next) = open.pop() {
        for dependency in &nodes[next].deps {
            let used = dependency.dep_kinds.iter().any(|kind| kind.kind == DependencyKind::Normal);
            if used && seen.insert(&dependency.pkg) {
                open.push(&dependency.pkg);
            }
        }
    }
    metadata.packages.iter().filter(|one| seen.contains(&one.id)).map(|one| one.name.to_string()).collect()
}

#[test]
fn no_arrow_runs_outward() {
    let faults = outward(&members(&metadata()));
    assert!(faults.is_empty(), "the layers are mixed up:\n{}", faults.join("\n"));
}

#[test]
fn every_package_of_the_table_is_in_the_workspace() {
    let members = members(&metadata());
    for (name, _) in ALLOWED {
        assert!(members.contains_key(*name), "{name} stands in the table and not in the workspace");
    }
}

#[test]
fn the_engine_reaches_no_file_clock_or_window() {
    let reached = reached(&metadata(), "newel-engine");
    assert!(
        reached.contains("libm"),
        "the engine's logarithms come from libm, so the search works: {reached:?}"
    );
    for name in NOT_IN_THE_ENGINE {
        assert!(!reached.contains(*name), "the engine reaches {name}");
    }
}

#[test]
fn the_search_that_clears_the_engine_finds_the_store() {
    let reached = reached(&metadata(), "newel-app");
    assert!(
        reached.contains("rusqlite"),
        "the app reaches SQLite through the store, so such a path is seen: {reached:?}"
    );
}

#[test]
fn made_up_outward_arrows_are_found() {
    let metadata = metadata();
    let check = |name: &str, dependency: &str, expected: &str| {
        let mut members = members(&metadata);
        let before = outward(&members);
        members.entry(name.to_owned()).or_default().insert(dependency.to_owned());
        let new: Vec<_> = outward(&members).into_iter().filter(|fault| !before.contains(fault)).collect();
        assert_eq!(new, [expected], "{name} -> {dependency}");
    };
    check("newel-engine", "newel-store", "newel-engine must not depend on newel-store");
    check("newel-store", "newel-exchange", "newel-store must not depend on newel-exchange");
    check("newel-app", "newel-shell", "newel-app must not depend on newel-shell");
    check(
        "newel-app",
        "tauri-plugin-dialog",
        "newel-app names tauri-plugin-dialog, which only newel-shell may",
    );
    check("newel", "rusqlite", "newel names rusqlite, which only newel-store may");
    check("newel-elsewhere", "newel-app", "newel-elsewhere has no line in the table of allowed arrows");
}
