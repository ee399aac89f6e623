//! Pictures of every card and screen in docs/screens/: for each a sheet of four sizes, light and dark, and the few that
//! the README shows, each alone.

use anyhow::{Context, Result};
use image::imageops::{self, FilterType};
use image::{Rgba, RgbaImage};
use newel_tests::{LAPTOP, Opening, PHONE, Scheme, Size, Window, fit, job, repository, tour};
use serde_json::json;
use std::path::{Path, PathBuf};

const NARROW: Size = Size { width: 320, height: 640 };
const LANDSCAPE: Size = Size { width: 844, height: 390 };

/// Where each size stands on a sheet, in pixels of the screen; a sheet is half as large.
const PLACES: [(Size, u32, u32); 4] =
    [(PHONE, 0, 0), (NARROW, 410, 0), (LANDSCAPE, 750, 0), (LAPTOP, 1614, 0)];
const WIDTH: u32 = 1614 + 1280;
const ROW: u32 = 864;

/// The pictures that the README shows: card, size, scheme.
const ALONE: [(&str, Size, Scheme, &str); 6] = [
    ("ready", PHONE, Scheme::Light, "ready-phone-light"),
    ("work", PHONE, Scheme::Light, "work-phone-light"),
    ("rest", PHONE, Scheme::Light, "rest-phone-light"),
    ("mark-said", PHONE, Scheme::Light, "mark-said-phone-light"),
    ("work", LANDSCAPE, Scheme::Light, "work-landscape-light"),
    ("story", LAPTOP, Scheme::Light, "desk-laptop-light"),
];

struct Album {
    folder: PathBuf,
    home: Size,
}

impl Album {
    async fn shows(&self, window: &Window, name: &str) -> Result<()> {
        let mut sheet = RgbaImage::from_pixel(WIDTH, 2 * ROW, Rgba([128, 128, 128, 255]));
        for (row, scheme) in Scheme::BOTH.into_iter().enumerate() {
            let script = "document.documentElement.dataset.scheme = arguments[0];";
            window.run(script, vec![json!(scheme.name())]).await?;
            for (size, x, y) in PLACES {
                window.resize(size).await?;
                fit::settled(window).await?;
                // What is painted is put together by another process a moment later.
                tokio::time::sleep(std::time::Duration::from_millis(200)).await;
                let png = window.client().screenshot().await?;
                let alone = ALONE.iter().find(|(n, s, c, _)| (*n, *s, *c) == (name, size, scheme));
                if let Some((.., file)) = alone {
                    std::fs::write(self.folder.join(format!("{file}.png")), &png)?;
                }
                let picture = image::load_from_memory(&png)?.to_rgba8();
                let top = y + u32::try_from(row)? * ROW;
                imageops::replace(&mut sheet, &picture, i64::from(x), i64::from(top));
            }
        }
        window.run("document.documentElement.dataset.scheme = 'light';", Vec::new()).await?;
        window.resize(self.home).await?;
        fit::settled(window).await?;
        let small = imageops::resize(&sheet, WIDTH / 2, ROW, FilterType::CatmullRom);
        let file = self.folder.join("sheets").join(format!("{name}.png"));
        with_few_colours(&small, &file).with_context(|| file.display().to_string())?;
        println!("wrote docs/screens/sheets/{name}.png");
        Ok(())
    }
}

/// A picture of 128 colours is a third of the size, and the screens have few.
fn with_few_colours(picture: &RgbaImage, file: &Path) -> Result<()> {
    let colours = color_quant::NeuQuant::new(10, 128, picture.as_raw());
    let bytes: Vec<u8> =
        picture.pixels().map(|p| u8::try_from(colours.index_of(&p.0)).unwrap_or(0)).collect();
    let mut encoder = png::Encoder::new(std::fs::File::create(file)?, picture.width(), picture.height());
    encoder.set_color(png::ColorType::Indexed);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.set_palette(colours.color_map_rgb());
    encoder.set_compression(png::Compression::High);
    encoder.write_header()?.write_image_data(&bytes)?;
    Ok(())
}

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let folder = repository().join("docs/screens");
    if folder.exists() {
        std::fs::remove_dir_all(&folder)?;
    }
    std::fs::create_dir_all(folder.join("sheets"))?;
    let scratch = tempfile::tempdir()?;
    let window = Window::open(Opening::new(scratch.path()).size(PHONE)).await?;
    let client = Album { folder: folder.clone(), home: PHONE };
    window.find(&job::id("start")).await?;
    client.shows(&window, "start").await?;
    let profiles = job::makes_the_demo(&window).await?;
    client.shows(&window, "people").await?;
    tour::client(&window, &profiles, async |name| client.shows(&window, name).await).await?;
    let coach = Album { folder, home: LAPTOP };
    tour::coach(&window, &profiles, async |name| coach.shows(&window, name).await).await?;
    window.close().await
}
