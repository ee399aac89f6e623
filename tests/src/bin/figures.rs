//! Every figure of the catalogue on sheets, from the page for developers: target/figures/.

use std::net::{Ipv4Addr, TcpStream};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail};
use newel_tests::{Opening, Scheme, Size, Window, target};
use serde_json::json;

const SHEET: Size = Size { width: 1280, height: 1000 };
const PORT: u16 = 5173;

/// The server of the page, ended with its value.
struct Server(Child);

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

fn serve() -> Result<Server> {
    let ui = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../ui");
    let child = Command::new("node")
        .args(["node_modules/vite/bin/vite.js", "--host", "127.0.0.1"])
        .current_dir(&ui)
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .context("the page's server could not be started (in ui: npm ci)")?;
    let server = Server(child);
    let begun = Instant::now();
    while TcpStream::connect((Ipv4Addr::LOCALHOST, PORT)).is_err() {
        if begun.elapsed() > Duration::from_secs(30) {
            bail!("the page's server did not answer on port {PORT}");
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    Ok(server)
}

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let folder = target("figures")?;
    let _server = serve()?;
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path()).scheme(Scheme::Light).size(SHEET)).await?;
    for page in ["figures", "figures-belly"] {
        window.client().goto("about:blank").await?;
        window.client().goto(&format!("http://127.0.0.1:{PORT}/look.html#{page}")).await?;
        window.until_for("document.querySelectorAll('section').length > 5", 30).await?;
        let sections = window.run("return document.querySelectorAll('section').length;", Vec::new()).await?;
        let mut sheet = 0;
        let mut top = 0_u64;
        let whole = window.run("return document.querySelector('main').scrollHeight;", Vec::new()).await?;
        while top < whole.as_u64().unwrap_or(0) {
            window.run("document.querySelector('main').scrollTop = arguments[0];", vec![json!(top)]).await?;
            tokio::time::sleep(Duration::from_millis(150)).await;
            sheet += 1;
            window.picture(folder.join(format!("{page}-{sheet:02}.png"))).await?;
            top += u64::from(SHEET.height) - 60;
        }
        println!("wrote {sheet} sheets of {sections} ladders to target/figures/ ({page})");
    }
    // How smoothly one plays here: frames drawn in five seconds, beside those that the page gets with nothing to draw.
    window.resize(newel_tests::PHONE).await?;
    let frames = async |play: bool| -> Result<f64> {
        window
            .run(
                "window.frames_seen = null;
                 const figure = document.querySelector('[data-testid=figure]');
                 figure.scrollIntoView();
                 if (arguments[0]) figure.click();
                 const begun = performance.now();
                 let seen = 0;
                 const step = (now) => {
                     seen += 1;
                     if (now - begun < 5000) requestAnimationFrame(step);
                     else window.frames_seen = (seen * 1000) / (now - begun);
                 };
                 requestAnimationFrame(step);",
                vec![json!(play)],
            )
            .await?;
        window.until_for("window.frames_seen !== null", 20).await?;
        let seen = window.run("return window.frames_seen;", Vec::new()).await?;
        seen.as_f64().context("a number of frames")
    };
    let (still, playing) = (frames(false).await?, frames(true).await?);
    println!("frames a second: {still:.1} with nothing to draw, {playing:.1} while a figure plays");
    window.close().await
}
