//! Embeds the screens. Cargo watches the files that it was told of, so a file that is only added to ui/dist would go
//! unnoticed: the whole folder is named here.

use std::path::Path;

fn main() {
    println!("cargo:rerun-if-changed=../ui/dist");
    println!("cargo:rerun-if-changed=../icons");
    let embeds = std::env::var_os("CARGO_FEATURE_CUSTOM_PROTOCOL").is_some();
    if embeds && !Path::new("../ui/dist/index.html").exists() {
        eprintln!("\nThe screens are not built yet. Run: cd ui && npm ci && npm run build");
        eprintln!("(`cargo xtask run` and `cargo xtask test` do this by themselves.)\n");
        std::process::exit(1);
    }
    tauri_build::build();
}
