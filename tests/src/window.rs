//! One open window, and what a test does in it.

use std::path::{Path, PathBuf};
use std::time::Duration;

use anyhow::{Context, Result, bail, ensure};
use fantoccini::elements::Element;
use fantoccini::key::Key;
use fantoccini::{Client, ClientBuilder, Locator};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};
use tempfile::TempDir;

use crate::process::{Display, Driver};
use crate::{axe, place};

/// The first session of a machine loads the web view from disk.
const OPENING: Duration = Duration::from_secs(60);
/// How long something may take to appear. A person would have given up long before.
const PATIENCE: Duration = Duration::from_secs(10);
/// How long what is there may take until it can be tapped: the longest movement on a screen is well under a second.
const SETTLING: Duration = Duration::from_secs(2);
/// How often the page is asked for it.
const POLL: Duration = Duration::from_millis(20);

/// Width and height of the page in CSS pixels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Size {
    /// Width in CSS pixels.
    pub width: u32,
    /// Height in CSS pixels.
    pub height: u32,
}

/// The client's phone.
pub const PHONE: Size = Size { width: 390, height: 844 };
/// The coach's laptop.
pub const LAPTOP: Size = Size { width: 1280, height: 800 };

/// What the desktop prefers; the page sees it as `prefers-color-scheme`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Scheme {
    /// Dark on light.
    #[default]
    Light,
    /// Light on dark.
    Dark,
}

impl Scheme {
    /// Both, for what has to hold in both.
    pub const BOTH: [Self; 2] = [Self::Light, Self::Dark];

    /// Its name in CSS and in names of files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Light => "light",
            Self::Dark => "dark",
        }
    }

    /// WebKitGTK takes the scheme from the GTK theme; it is fixed while the window is open.
    fn theme(self) -> &'static str {
        match self {
            Self::Light => "Adwaita",
            Self::Dark => "Adwaita:dark",
        }
    }
}

/// How to open a window.
#[derive(Debug, Clone)]
pub struct Opening {
    data: PathBuf,
    scheme: Scheme,
    size: Size,
    arguments: Vec<String>,
    environment: Vec<(String, String)>,
}

impl Opening {
    /// On this data folder, light, as on a laptop.
    pub fn new(data: impl AsRef<Path>) -> Self {
        Self {
            data: data.as_ref().to_owned(),
            scheme: Scheme::Light,
            size: LAPTOP,
            arguments: Vec::new(),
            environment: Vec::new(),
        }
    }

    /// In this scheme.
    #[must_use]
    pub fn scheme(mut self, scheme: Scheme) -> Self {
        self.scheme = scheme;
        self
    }

    /// In this size.
    #[must_use]
    pub fn size(mut self, size: Size) -> Self {
        self.size = size;
        self
    }

    /// With one more argument.
    #[must_use]
    pub fn argument(mut self, argument: impl Into<String>) -> Self {
        self.arguments.push(argument.into());
        self
    }

    /// With a variable of the environment, such as `TZ`.
    #[must_use]
    pub fn environment(mut self, name: &str, value: &str) -> Self {
        self.environment.push((name.to_owned(), value.to_owned()));
        self
    }
}

/// What a look into the page found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// The text as it is shown, with the spaces around it gone.
    pub text: String,
}

/// An open window. Dropping it ends the window, the driver and the display.
pub struct Window {
    // In this order: the driver goes before the display that it draws on.
    client: Client,
    driver: Driver,
    display: Display,
    scratch: TempDir,
    opening: Opening,
}

impl Window {
    /// Opens the window and waits until the page has loaded.
    ///
    /// # Errors
    /// If a program is missing or does not start; its own words are part of the reason.
    pub async fn open(opening: Opening) -> Result<Self> {
        let display = Display::open()?;
        let scratch = tempfile::tempdir()?;
        Self::open_on(display, scratch, opening).await
    }

    async fn open_on(display: Display, scratch: TempDir, opening: Opening) -> Result<Self> {
        let mut environment = vec![("GTK_THEME".to_owned(), opening.scheme.theme().to_owned())];
        environment.extend(opening.environment.iter().cloned());
        let driver = Driver::start(&display, &opening.data, scratch.path(), &environment)?;
        let mut arguments = vec!["--data".to_owned(), opening.data.to_string_lossy().into_owned()];
        arguments.extend(opening.arguments.iter().cloned());
        let options = json!({
            "webkitgtk:browserOptions": { "binary": place::program("newel-window")?, "args": arguments }
        });
        let Value::Object(capabilities) = options else { bail!("the options are an object") };
        let mut builder = ClientBuilder::new(HttpConnector::new());
        builder.capabilities(capabilities);
        let address = driver.address();
        let client = tokio::time::timeout(OPENING, builder.connect(&address))
            .await
            .map_err(|_| anyhow::anyhow!("no session within {} s", OPENING.as_secs()))
            .and_then(|session| session.map_err(Into::into))
            .with_context(|| format!("the window did not open. {}", driver.said()))?;
        let window = Self { client, driver, display, scratch, opening };
        window.resize(window.opening.size).await?;
        window.until("document.readyState === 'complete'").await?;
        Ok(window)
    }

    /// Closes the window as a person does.
    ///
    /// # Errors
    /// If the driver does not answer.
    pub async fn close(self) -> Result<()> {
        Ok(self.client.clone().close().await?)
    }

    /// Ends the window's process with kill -9, then opens it again on the same data.
    ///
    /// # Errors
    /// If it was not running, or does not open again.
    pub async fn kill_and_reopen(self) -> Result<Self> {
        let Self { client, driver, display, scratch, opening } = self;
        driver.kill_window()?;
        // The session died with the window, so it is not closed; a driver serves one session and goes too.
        drop(client);
        drop(driver);
        Self::open_on(display, scratch, opening).await
    }

    /// Closes the window and opens it again on the same data, perhaps in another scheme.
    ///
    /// # Errors
    /// If it does not close or open.
    pub async fn reopen(self, scheme: Scheme) -> Result<Self> {
        let Self { client, driver, display, scratch, opening } = self;
        client.close().await?;
        drop(driver);
        Self::open_on(display, scratch, opening.scheme(scheme)).await
    }

    /// Gives the page this size, and makes sure that it has it.
    ///
    /// # Errors
    /// If the window does not take the size.
    pub async fn resize(&self, size: Size) -> Result<()> {
        self.client.set_window_rect(0, 0, size.width, size.height).await?;
        let Size { width, height } = size;
        self.until(&format!("innerWidth === {width} && innerHeight === {height}")).await
    }

    /// Runs a script in the page: the body of a function that gets `arguments` and returns a value.
    ///
    /// # Errors
    /// If the script throws.
    pub async fn run(&self, script: &str, arguments: Vec<Value>) -> Result<Value> {
        self.client.execute(script, arguments).await.with_context(|| script.to_owned())
    }

    /// Waits until an expression of the page is true.
    ///
    /// # Errors
    /// If it does not become true in time; the page's text is part of the reason.
    pub async fn until(&self, expression: &str) -> Result<()> {
        self.until_for(expression, PATIENCE.as_secs()).await
    }

    /// As [`Window::until`], for what takes longer than a person would wait for a card.
    ///
    /// # Errors
    /// If it does not become true within so many seconds; the page's text is part of the reason.
    pub async fn until_for(&self, expression: &str, seconds: u64) -> Result<()> {
        let script = format!("return Boolean({expression});");
        let end = tokio::time::Instant::now() + Duration::from_secs(seconds);
        while self.run(&script, Vec::new()).await? != Value::Bool(true) {
            if tokio::time::Instant::now() > end {
                let shown = self.run("return document.body.innerText;", Vec::new()).await?;
                bail!("not within {seconds} s: {expression}. The page reads: {shown}");
            }
            tokio::time::sleep(POLL).await;
        }
        Ok(())
    }

    /// Waits for the first element of a CSS selector that is there.
    ///
    /// # Errors
    /// If none appears in time.
    pub async fn find(&self, selector: &str) -> Result<Element> {
        self.until(&format!("document.querySelector({})", json!(selector))).await?;
        Ok(self.client.find(Locator::Css(selector)).await?)
    }

    /// Waits for an element and reads it.
    ///
    /// # Errors
    /// If it does not appear in time.
    pub async fn read(&self, selector: &str) -> Result<Found> {
        let text = self.find(selector).await?.text().await?;
        Ok(Found { text: text.trim().to_owned() })
    }

    /// Whether an element is there now, without waiting.
    ///
    /// # Errors
    /// If the page does not answer.
    pub async fn has(&self, selector: &str) -> Result<bool> {
        Ok(self.run("return document.querySelector(arguments[0]) !== null;", vec![json!(selector)]).await?
            == json!(true))
    }

    /// Waits for the first visible element of a selector and taps it, as a person does: nothing may lie over it. What is
    /// just moving, or being drawn anew, is waited for.
    ///
    /// # Errors
    /// If it does not appear in time or cannot be tapped; what lies over it is part of the reason.
    pub async fn click(&self, selector: &str) -> Result<()> {
        self.until(&format!("({VISIBLE})({}) !== undefined", json!(selector))).await?;
        let end = tokio::time::Instant::now() + SETTLING;
        loop {
            let found =
                self.run(&format!("return ({VISIBLE})(arguments[0]);"), vec![json!(selector)]).await?;
            let reason = match reference(&found) {
                Ok(element) => match Element::from_element_id(self.client.clone(), element).click().await {
                    Ok(()) => return Ok(()),
                    Err(reason) => kind(&reason),
                },
                Err(_) => "it is gone again".to_owned(),
            };
            if tokio::time::Instant::now() > end {
                let place = self.run(WHAT_LIES_THERE, vec![json!(selector)]).await?;
                bail!("tapping {selector}: {reason}. {place}");
            }
            tokio::time::sleep(POLL).await;
        }
    }

    /// Taps the button, link or radio label with exactly this text, as a person finds it.
    ///
    /// # Errors
    /// If there is none in time, or more than one.
    pub async fn press(&self, text: &str) -> Result<()> {
        let script = "const same = (node) => (node.getAttribute('aria-label') ?? node.innerText).trim() === arguments[0];
            return [...document.querySelectorAll('button, a, label, summary, [role=button], [role=tab], [role=radio]')]
                .filter((node) => same(node) && node.checkVisibility());";
        let end = tokio::time::Instant::now() + PATIENCE;
        let settled = tokio::time::Instant::now() + SETTLING;
        loop {
            let found = self.run(script, vec![json!(text)]).await?;
            let found = found.as_array().cloned().unwrap_or_default();
            ensure!(found.len() <= 1, "{} elements read \"{text}\"", found.len());
            if let Some(element) = found.into_iter().next() {
                let element: fantoccini::elements::ElementRef = reference(&element)?;
                let element = Element::from_element_id(self.client.clone(), element);
                match element.click().await {
                    Ok(()) => return Ok(()),
                    Err(reason) if tokio::time::Instant::now() > settled => {
                        bail!("tapping \"{text}\": {}", kind(&reason))
                    }
                    Err(_) => {}
                }
            }
            if tokio::time::Instant::now() > end {
                let shown = self.run("return document.body.innerText;", Vec::new()).await?;
                bail!("nothing to tap reads \"{text}\". The page reads: {shown}");
            }
            tokio::time::sleep(POLL).await;
        }
    }

    /// Types into a field, in place of what it held. For `<input type=file>`, the text is a path.
    ///
    /// # Errors
    /// If the field does not appear in time or takes no keys.
    pub async fn fill(&self, selector: &str, text: &str) -> Result<()> {
        let field = self.find(selector).await?;
        if field.attr("type").await?.as_deref() != Some("file") {
            field.clear().await?;
        }
        field.send_keys(text).await.with_context(|| format!("typing into {selector}"))
    }

    /// Presses a key on whatever has the focus.
    ///
    /// # Errors
    /// If the page does not answer.
    pub async fn key(&self, key: Key) -> Result<()> {
        Ok(self.client.active_element().await?.send_keys(&char::from(key).to_string()).await?)
    }

    /// Writes what is seen now as a PNG file.
    ///
    /// # Errors
    /// If the file cannot be written.
    pub async fn picture(&self, path: impl AsRef<Path>) -> Result<()> {
        let path = path.as_ref();
        let png = self.client.screenshot().await?;
        std::fs::write(path, png).with_context(|| path.display().to_string())
    }

    /// What axe-core finds on the screen as it is, of any grade.
    ///
    /// # Errors
    /// If axe-core is not installed in ui/ or does not run.
    pub async fn axe(&self) -> Result<Vec<axe::Violation>> {
        axe::all(self).await
    }

    /// The window's process id.
    pub fn process(&self) -> Option<u32> {
        self.driver.window()
    }

    /// The session itself, for what is not here.
    pub fn client(&self) -> &Client {
        &self.client
    }
}

/// The first element of a selector that is drawn: a wide and a narrow layout may both hold one.
const VISIBLE: &str =
    "(selector) => [...document.querySelectorAll(selector)].find((node) => node.checkVisibility())";

/// For an element that cannot be tapped: its place, and what a finger would meet there.
const WHAT_LIES_THERE: &str = "const nodes = [...document.querySelectorAll(arguments[0])];
    const node = nodes.find((node) => node.checkVisibility());
    if (!node) return 'It is gone.';
    const { left, top, width, height } = node.getBoundingClientRect();
    const there = document.elementFromPoint(left + width / 2, top + height / 2);
    return `It is at ${Math.round(left)}, ${Math.round(top)}, ${Math.round(width)} by ${Math.round(height)}, `
        + `and there lies ${there ? there.outerHTML.slice(0, 200) : 'nothing'}`;";

/// The W3C's name of what went wrong: WebKitWebDriver leaves the message empty.
fn kind(reason: &fantoccini::error::CmdError) -> String {
    match reason {
        fantoccini::error::CmdError::Standard(told) => told.error.to_string(),
        other => other.to_string(),
    }
}

/// The id in a WebDriver element reference; its key is fixed by the W3C.
fn reference(value: &Value) -> Result<fantoccini::elements::ElementRef> {
    let id = value["element-6066-11e4-a52e-4f735466cecf"].as_str().context("an element reference")?;
    Ok(id.to_owned().into())
}
