//! Every icon size is made from icons/newel.svg. Built only with the feature `icons`.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::BufReader;
use std::path::Path;

use anyhow::{Context, Result, bail, ensure};
use resvg::{tiny_skia, usvg};

use crate::repository;

/// PNG files: name and side in pixels. `icon.png` is what Linux shows; tauri takes the `@2x` one for doubled screens.
const PNG: [(&str, u32); 4] =
    [("32x32.png", 32), ("128x128.png", 128), ("128x128@2x.png", 256), ("icon.png", 512)];
/// The sides that Windows asks for, from the title bar to the large view.
const ICO: [u32; 6] = [16, 24, 32, 48, 64, 256];
/// The sides that macOS asks for; it calls 32 and 64 also the doubled 16 and 32.
const ICNS: [u32; 7] = [16, 32, 64, 128, 256, 512, 1024];
/// Two machines may round a pixel's edge differently, by at most this much of 255 in a channel.
const TOLERANCE: u8 = 2;

/// Draws all sizes, and writes them; with `check`, writes nothing and says which committed file is stale.
pub fn icons(check: bool) -> Result<()> {
    let folder = repository().join("icons");
    let drawing = std::fs::read(folder.join("newel.svg")).context("icons/newel.svg")?;
    let tree = usvg::Tree::from_data(&drawing, &usvg::Options::default()).context("icons/newel.svg")?;

    let mut sides: Vec<u32> = PNG.iter().map(|(_, side)| *side).chain(ICO).chain(ICNS).collect();
    sides.sort_unstable();
    sides.dedup();
    let drawn: BTreeMap<u32, tiny_skia::Pixmap> =
        sides.into_iter().map(|side| Ok((side, draw(&tree, side)?))).collect::<Result<_>>()?;

    if check {
        for (name, side) in PNG {
            let committed = tiny_skia::Pixmap::load_png(folder.join(name)).with_context(|| stale(name))?;
            same(&committed, &drawn[&side]).with_context(|| stale(name))?;
        }
        let ico =
            ico::IconDir::read(BufReader::new(File::open(folder.join("icon.ico"))?)).context("icon.ico")?;
        let found: Vec<u32> = ico.entries().iter().map(|entry| entry.width()).collect();
        ensure!(found == ICO, "{}: holds the sides {found:?}", stale("icon.ico"));
        for entry in ico.entries() {
            let image = entry.decode()?;
            same_straight(image.rgba_data(), &drawn[&entry.width()]).with_context(|| stale("icon.ico"))?;
        }
        let icns = icns::IconFamily::read(BufReader::new(File::open(folder.join("icon.icns"))?))
            .context("icon.icns")?;
        let kinds = icns.available_icons();
        ensure!(kinds.len() == ICNS.len(), "{}: holds {} sides", stale("icon.icns"), kinds.len());
        for kind in kinds {
            let image = icns.get_icon_with_type(kind)?.convert_to(icns::PixelFormat::RGBA);
            same_straight(image.data(), &drawn[&image.width()]).with_context(|| stale("icon.icns"))?;
        }
        println!("icons: all sizes match icons/newel.svg");
        return Ok(());
    }

    for (name, side) in PNG {
        drawn[&side].save_png(folder.join(name))?;
    }
    write_ico(&folder.join("icon.ico"), &drawn)?;
    write_icns(&folder.join("icon.icns"), &drawn)?;
    println!("icons: {} files written to icons/", PNG.len() + 2);
    Ok(())
}

fn stale(name: &str) -> String {
    format!("icons/{name} does not match icons/newel.svg; make it again: cargo xtask icons")
}

fn draw(tree: &usvg::Tree, side: u32) -> Result<tiny_skia::Pixmap> {
    let mut pixmap = tiny_skia::Pixmap::new(side, side).context("an icon of no size")?;
    let scale = side as f32 / tree.size().width();
    resvg::render(tree, tiny_skia::Transform::from_scale(scale, scale), &mut pixmap.as_mut());
    Ok(pixmap)
}

/// The pixels as straight RGBA: tiny-skia keeps colours multiplied by their opacity, icon files do not.
fn straight(pixmap: &tiny_skia::Pixmap) -> Vec<u8> {
    let colour = |pixel: &tiny_skia::PremultipliedColorU8| {
        let plain = pixel.demultiply();
        [plain.red(), plain.green(), plain.blue(), plain.alpha()]
    };
    pixmap.pixels().iter().flat_map(colour).collect()
}

fn same(committed: &tiny_skia::Pixmap, drawn: &tiny_skia::Pixmap) -> Result<()> {
    same_straight(&straight(committed), drawn)
}

fn same_straight(committed: &[u8], drawn: &tiny_skia::Pixmap) -> Result<()> {
    let drawn = straight(drawn);
    ensure!(committed.len() == drawn.len(), "its size is another");
    let off = committed.iter().zip(&drawn).filter(|(one, other)| one.abs_diff(**other) > TOLERANCE).count();
    if off > 0 {
        bail!("{off} colour values of {} differ by more than {TOLERANCE} of 255", drawn.len());
    }
    Ok(())
}

fn write_ico(path: &Path, drawn: &BTreeMap<u32, tiny_skia::Pixmap>) -> Result<()> {
    let mut family = ico::IconDir::new(ico::ResourceType::Icon);
    for side in ICO {
        let image = ico::IconImage::from_rgba_data(side, side, straight(&drawn[&side]));
        family.add_entry(ico::IconDirEntry::encode(&image)?);
    }
    family.write(File::create(path)?)?;
    Ok(())
}

fn write_icns(path: &Path, drawn: &BTreeMap<u32, tiny_skia::Pixmap>) -> Result<()> {
    let mut family = icns::IconFamily::new();
    for side in ICNS {
        let image = icns::Image::from_data(icns::PixelFormat::RGBA, side, side, straight(&drawn[&side]))?;
        family.add_icon(&image)?;
    }
    family.write(File::create(path)?)?;
    Ok(())
}
