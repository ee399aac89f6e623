//! The figures, as the screens draw them. `figures/figures.json` is written by the page's own tests, which fail where it
//! is not what the screens show.

use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::OnceLock;

const FIGURES_JSON: &str = include_str!("../figures/figures.json");

/// How the marks look on paper: ink on white, with hatching of greys that hold on a black-and-white printer.
const STYLE: &str = "
.floor{stroke:#b9b2a2;stroke-width:4}
.wood{fill:none;stroke:#7c7566;stroke-width:5;stroke-linecap:round;stroke-linejoin:round}
.solid{fill:#e2dccd;stroke:#7c7566;stroke-width:2}
.soft-prop{fill:#e2dccd;stroke:#e2dccd;stroke-width:6;stroke-linejoin:round}
.pillow{fill:#e2dccd;stroke:#7c7566;stroke-width:2}
.limbs{fill:none;stroke:#1e2a2e;stroke-width:10;stroke-linecap:round;stroke-linejoin:round}
.limbs circle,.limbs ellipse{fill:#1e2a2e;stroke:none}
.limbs .trunk{stroke-width:15}
.limbs .edge{stroke:#fff;stroke-width:13}
.far{stroke:#6d7577}
.ghost{opacity:.24}
.weight rect{fill:#8a5a10}
.plate{fill:none;stroke:#8a5a10;stroke-width:6}
.band{fill:none;stroke:#8a5a10;stroke-width:5;stroke-linecap:round}
.strap{fill:none;stroke:#7c7566;stroke-width:5;stroke-linecap:round}
.loop{fill:none;stroke:#8a5a10;stroke-width:5}
.breath{fill:none;stroke:#1f4f46;stroke-width:3;stroke-dasharray:2 7;stroke-linecap:round}
.drawn{fill:none;stroke:#1f4f46;stroke-width:4.5;stroke-linecap:round;stroke-linejoin:round}
.way{fill:none;stroke:#1f4f46;stroke-width:3.5;stroke-dasharray:1 8;stroke-linecap:round}
.tip{fill:none;stroke:#1f4f46;stroke-width:3}
";

#[derive(Deserialize)]
struct Drawn {
    #[serde(rename = "box")]
    frame: [f64; 4],
    marks: String,
}

fn all() -> &'static BTreeMap<String, Drawn> {
    static ALL: OnceLock<BTreeMap<String, Drawn>> = OnceLock::new();
    // A test reads it, so that what is embedded can be read.
    ALL.get_or_init(|| serde_json::from_str(FIGURES_JSON).unwrap_or_default())
}

/// True if there is a figure of a variant.
#[must_use]
pub fn has_figure(variant: &str) -> bool {
    all().contains_key(variant)
}

/// A figure as an SVG file.
pub(crate) fn svg(variant: &str) -> Option<String> {
    let drawn = all().get(variant)?;
    let [x, y, w, h] = drawn.frame;
    Some(format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"{x} {y} {w} {h}\" width=\"{w}\" height=\"{h}\"><style>{STYLE}</style>{}</svg>",
        drawn.marks
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_embedded_can_be_read() {
        assert!(all().len() > 150, "{} figures", all().len());
    }
}
