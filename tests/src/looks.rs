//! A look at a screen: pictures at phone and laptop size, light and dark, with a check for what is cut and axe-core.

use crate::{LAPTOP, PHONE, Scheme, Window, fit};
use anyhow::{Result, ensure};
use serde_json::json;
use std::path::Path;

/// Takes the pictures of what is in view into a folder. Ends light and at laptop size.
///
/// # Errors
/// When something is cut, or axe-core finds something.
pub async fn looks(window: &Window, folder: &Path, name: &str) -> Result<()> {
    for (size, called) in [(PHONE, "phone"), (LAPTOP, "laptop")] {
        window.resize(size).await?;
        for scheme in Scheme::BOTH {
            let script = "document.documentElement.dataset.scheme = arguments[0];";
            window.run(script, vec![json!(scheme.name())]).await?;
            fit::settled(window).await?;
            tokio::time::sleep(std::time::Duration::from_millis(200)).await;
            window.picture(folder.join(format!("{name}-{called}-{}.png", scheme.name()))).await?;
        }
        let cut = fit::cut(window).await?;
        ensure!(cut.is_empty(), "{name} on a {called}: {cut:?}");
        let found = window.axe().await?;
        ensure!(found.is_empty(), "{name} on a {called}: {found:?}");
    }
    window.run("document.documentElement.dataset.scheme = 'light';", Vec::new()).await?;
    Ok(())
}
