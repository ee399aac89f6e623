//! The main job in the real window, without a display: pictures and files in target/walk/, and a line for each step.

use anyhow::Result;
use newel_tests::{Opening, PHONE, Window, target};

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let folder = target("walk")?;
    let data = folder.join("data");
    let window = Window::open(Opening::new(&data).size(PHONE)).await?;
    println!("opened the window at {} by {}", PHONE.width, PHONE.height);
    window.picture(folder.join("01-start.png")).await?;
    println!("wrote target/walk/01-start.png");
    window.close().await
}
