//! The committed schemas are those of the types, and the files fit them.

use newel_exchange::schemas;
use serde_json::Value;
use std::fs;
use std::path::Path;

#[test]
fn the_committed_schemas_are_not_stale() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/schema");
    for (name, text) in schemas() {
        let committed = fs::read_to_string(folder.join(name)).unwrap_or_default();
        assert!(
            committed == text,
            "docs/schema/{name} is stale: run `cargo run -p newel-exchange --example schemas`"
        );
    }
    let mut committed: Vec<_> =
        fs::read_dir(folder).unwrap().map(|e| e.unwrap().file_name().into_string().unwrap()).collect();
    committed.sort();
    assert_eq!(committed, schemas().iter().map(|(name, _)| *name).collect::<Vec<_>>());
}

#[test]
fn the_golden_files_fit_their_schemas() {
    let golden = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/golden");
    for (name, file) in [
        ("log.schema.json", "log-v1.json"),
        ("plan.schema.json", "plan-v1.json"),
        ("plan.schema.json", "plan-v4.json"),
    ] {
        let (_, text) = schemas().into_iter().find(|(n, _)| *n == name).unwrap();
        let schema: Value = serde_json::from_str(&text).unwrap();
        let validator = jsonschema::validator_for(&schema).unwrap();
        let mut instance: Value =
            serde_json::from_str(&fs::read_to_string(golden.join(file)).unwrap()).unwrap();
        if let Some(lines) = instance.pointer_mut("/content/lines").and_then(Value::as_array_mut) {
            // The schema describes the kinds of this version; the reader lets newer ones pass.
            lines.retain(|l| l["v"] == 1);
        }
        let errors: Vec<String> =
            validator.iter_errors(&instance).map(|e| format!("{} at {}", e, e.instance_path())).collect();
        assert_eq!(errors, Vec::<String>::new(), "{file}");
        instance["content"]["lines"][0]["payload"]["kind"] = Value::from("nonsense");
        assert!(!validator.is_valid(&instance), "the schema says no to what is no record");
    }
}
