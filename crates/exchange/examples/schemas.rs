//! Writes the JSON Schemas of the files to docs/schema/.

use std::path::Path;

fn main() -> Result<(), newel_exchange::FileError> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/schema");
    std::fs::create_dir_all(&folder)
        .map_err(|source| newel_exchange::FileError::Unwritten { path: folder.clone(), source })?;
    for (name, text) in newel_exchange::schemas() {
        newel_exchange::write_whole(folder.join(name), text.as_bytes())?;
        println!("docs/schema/{name}");
    }
    Ok(())
}
