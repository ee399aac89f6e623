//! Whether a screen holds: nothing is cut or pushed out, and what is tapped is large enough for a finger.

use crate::window::Window;
use anyhow::Result;
use serde_json::{Value, json};

/// The least side of what is tapped, in CSS pixels (common practice, no source; WCAG 2.2's 2.5.5 asks for 44).
pub const TAP: f64 = 48.0;

/// What is tapped and smaller than a fingertip, or pushed out of the page: one line each.
const TOO_SMALL: &str = "
    const seen = (node) => node.checkVisibility() && node.getBoundingClientRect().width > 0;
    const dialog = document.querySelector('dialog[open]');
    const within = dialog ?? document;
    return [...within.querySelectorAll('button, select, textarea, summary, input, [role=button]')]
        .filter((node) => seen(node) && node.type !== 'file')
        .map((node) => [node, (node.closest('label') ?? node).getBoundingClientRect()])
        .filter(([, box]) => Math.min(box.width, box.height) < arguments[0] - 0.5
            || box.left < -1 || box.right > innerWidth + 1)
        .map(([node, box]) => `${node.dataset.testid ?? node.tagName} ${Math.round(box.width)}x${Math.round(box.height)}`);";

/// What is wider than its place or than the page, and what scrolls sideways: one line each.
const TOO_WIDE: &str = "
    const seen = (node) => node.checkVisibility() && node.getBoundingClientRect().width > 0;
    const wide = [...document.querySelectorAll('button, label, legend, input, select, p, h1, h2, h3, li, summary, td, th')]
        // What stands in a table that scrolls by itself, and that the keyboard reaches, is reached.
        .filter((node) => seen(node) && !node.closest('.unseen, [role=region][tabindex]'))
        .filter((node) => {
            const { left, right } = node.getBoundingClientRect();
            const field = node.tagName === 'INPUT' || node.tagName === 'SELECT';
            const cut = !field && node.scrollWidth > node.clientWidth + 2
                && getComputedStyle(node).display !== 'inline';
            return (left < -1 || right > innerWidth + 1 || cut) && node.getAttribute('type') !== 'radio';
        });
    // Nothing that scrolls down scrolls sideways as well.
    const aside = [...document.querySelectorAll('#content, dialog[open], dialog[open] *')]
        .filter((node) => seen(node) && /auto|scroll/.test(getComputedStyle(node).overflowY)
            && node.scrollWidth > node.clientWidth + 1);
    wide.push(...aside);
    return wide.map((node) => `${node.tagName} ${node.dataset.testid ?? ''} ${(node.innerText ?? '').replace(/\\s+/g, ' ').slice(0, 40)}`);";

/// Controls that lie over one another, so that a finger meets the wrong one: one line each.
const OVERLAID: &str = "
    const dialog = document.querySelector('dialog[open]');
    const within = dialog ?? document;
    const found = [];
    for (const node of within.querySelectorAll('button, select, textarea, summary, a')) {
        if (!node.checkVisibility()) continue;
        const { left, top, width, height } = node.getBoundingClientRect();
        const [x, y] = [left + width / 2, top + height / 2];
        if (width === 0 || x < 0 || y < 0 || x >= innerWidth || y >= innerHeight) continue;
        const there = document.elementFromPoint(x, y);
        if (!there || node.contains(there) || there.contains(node)) continue;
        // What scrolls goes under what stands still; it is brought up by scrolling.
        const still = there.closest('.foot, nav, header, .top');
        if (still && !still.contains(node)) continue;
        found.push(`${node.dataset.testid ?? node.innerText.slice(0, 30)} under ${there.dataset?.testid ?? there.outerHTML.slice(0, 80)}`);
    }
    return found;";

async fn lines(window: &Window, script: &str, arguments: Vec<Value>) -> Result<Vec<String>> {
    let found = window.run(script, arguments).await?;
    let lines = found.as_array().map(Vec::as_slice).unwrap_or_default();
    Ok(lines.iter().map(|l| l.as_str().unwrap_or_default().to_owned()).collect())
}

/// What is tapped and smaller than [`TAP`].
///
/// # Errors
/// If the page does not answer.
pub async fn too_small(window: &Window) -> Result<Vec<String>> {
    lines(window, TOO_SMALL, vec![json!(TAP)]).await
}

/// What is cut, pushed out sideways, or lies under something else.
///
/// # Errors
/// If the page does not answer.
pub async fn cut(window: &Window) -> Result<Vec<String>> {
    let mut found = lines(window, TOO_WIDE, Vec::new()).await?;
    found.extend(lines(window, OVERLAID, Vec::new()).await?);
    Ok(found)
}

/// Text at this size; `""` is the reader's own.
///
/// # Errors
/// If the page does not answer.
pub async fn text_size(window: &Window, size: &str) -> Result<()> {
    // A browser that zooms its text tells the page so.
    let script =
        "document.documentElement.style.fontSize = arguments[0]; dispatchEvent(new Event('resize'));";
    window.run(script, vec![json!(size)]).await?;
    settled(window).await
}

/// Waits until what was changed is laid out and painted, and what moves in has come to rest.
///
/// # Errors
/// If the page does not answer.
pub async fn settled(window: &Window) -> Result<()> {
    window
        .run(
            "window.painted = false;
             requestAnimationFrame(() => requestAnimationFrame(() => { window.painted = true; }));",
            Vec::new(),
        )
        .await?;
    window.until("window.painted && document.getAnimations().every((a) => a.playState !== 'running')").await
}
