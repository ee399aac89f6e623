//! Pictures of the screens as they are, phone and laptop, light and dark: target/screens/.

use anyhow::Result;
use newel_tests::{LAPTOP, Opening, PHONE, Scheme, Window, target};

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let folder = target("screens")?;
    let data = folder.join("data");
    for scheme in Scheme::BOTH {
        let window = Window::open(Opening::new(&data).scheme(scheme)).await?;
        for (size, device) in [(PHONE, "phone"), (LAPTOP, "laptop")] {
            window.resize(size).await?;
            let name = format!("start-{device}-{}.png", scheme.name());
            window.picture(folder.join(&name)).await?;
            println!("wrote target/screens/{name}");
        }
        window.close().await?;
    }
    Ok(())
}
