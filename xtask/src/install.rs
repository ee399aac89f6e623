//! What must be on the machine before anything can be built: installed where this program knows how, else said.

use std::path::Path;

use anyhow::{Context, Result, bail};

use crate::process::{cargo, npm, program};
use crate::repository;

/// Node's oldest version that the tools of ui/ accept: major, minor. Also in ui/package.json.
const NODE: (u32, u32) = (20, 19);
/// Debian's packages to build and to open the window.
const TO_BUILD: [&str; 3] = ["libwebkit2gtk-4.1-dev", "build-essential", "pkg-config"];
/// Debian's packages to steer the window without a display.
const TO_STEER: [&str; 4] = ["xvfb", "xauth", "webkit2gtk-driver", "fonts-dejavu-core"];

/// Debian's packages to hear what a screen reader is told.
const TO_READ: [&str; 4] = ["at-spi2-core", "dbus", "python3-gi", "gir1.2-atspi-2.0"];

/// Debian's packages for the checks in Python.
const FOR_PYTHON: [&str; 1] = ["python3-venv"];
/// Python's oldest version that tests/python/requirements.txt has packages for.
const PYTHON: (u32, u32) = (3, 11);

/// What the machine is to be made ready for.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum For {
    /// Building and opening the window.
    Building,
    /// Also steering it without a display, as the walk and the tests do.
    Steering,
}

/// Installs or asks for what is missing, then the packages of ui/.
pub fn ready(purpose: For) -> Result<()> {
    system(purpose)?;
    node()?;
    ui_packages()
}

/// What is needed to hear what a screen reader is told; elsewhere than on Debian it is said when it is missing.
pub fn reader() -> Result<()> {
    ready(For::Steering)?;
    if program("dpkg-query", &["--version"]).answer().is_some() { packages(&TO_READ) } else { Ok(()) }
}

/// The libraries and programs of the system.
fn system(purpose: For) -> Result<()> {
    if cfg!(not(target_os = "linux")) {
        if purpose == For::Steering {
            bail!("the window is steered through WebKitWebDriver, which is there on Linux alone");
        }
        return other_system();
    }
    if program("dpkg-query", &["--version"]).answer().is_some() {
        return debian(purpose);
    }
    let mut lacking = Vec::new();
    if program("pkg-config", &["--exists", "webkit2gtk-4.1"]).answer().is_none() {
        lacking.push("WebKitGTK 4.1 with its development files");
    }
    if purpose == For::Steering {
        lacking.extend(["Xvfb", "WebKitWebDriver"].into_iter().filter(|name| !on_path(name)));
    }
    if lacking.is_empty() {
        return Ok(());
    }
    bail!("missing: {}. Install with\n{}", lacking.join(", "), line_for_this_linux())
}

fn debian(purpose: For) -> Result<()> {
    let mut wanted = TO_BUILD.to_vec();
    if purpose == For::Steering {
        wanted.extend(TO_STEER);
    }
    packages(&wanted)
}

/// Installs what is missing of Debian's packages.
fn packages(wanted: &[&str]) -> Result<()> {
    let installed = |name: &&str| {
        program("dpkg-query", &["--show", "--showformat=${db:Status-Status}", name])
            .answer()
            .is_some_and(|status| status == "installed")
    };
    let missing: Vec<&str> = wanted.iter().copied().filter(|name| !installed(name)).collect();
    if missing.is_empty() {
        return Ok(());
    }
    let root = program("id", &["-u"]).answer().is_some_and(|id| id == "0");
    if !root && !on_path("sudo") {
        bail!("missing packages. As root, run\n    apt-get update && apt-get install {}", missing.join(" "));
    }
    let apt = |arguments: &[&str]| {
        let mut words = vec!["DEBIAN_FRONTEND=noninteractive", "apt-get"];
        words.extend(arguments);
        if root {
            program("env", &words)
        } else {
            words.insert(0, "env");
            program("sudo", &words).asking()
        }
    };
    apt(&["update", "--quiet"]).step("package lists")?;
    let mut install = vec!["install", "--yes", "--quiet", "--no-install-recommends"];
    install.extend(&missing);
    apt(&install).step("system packages")
}

fn line_for_this_linux() -> String {
    let release = std::fs::read_to_string("/etc/os-release").unwrap_or_default();
    let named = |name: &str| {
        release
            .lines()
            .any(|line| (line.starts_with("ID=") || line.starts_with("ID_LIKE=")) && line.contains(name))
    };
    if named("fedora") || named("rhel") {
        "    sudo dnf install webkit2gtk4.1-devel gcc make pkgconf-pkg-config /usr/bin/Xvfb /usr/bin/WebKitWebDriver dejavu-sans-fonts"
    } else if named("arch") {
        "    sudo pacman -S --needed webkit2gtk-4.1 base-devel xorg-server-xvfb ttf-dejavu"
    } else if named("suse") {
        "    sudo zypper install webkit2gtk3-devel gcc make pkg-config xorg-x11-server-Xvfb dejavu-fonts"
    } else {
        "    your system's packages of WebKitGTK 4.1 (development files and WebKitWebDriver), a C compiler, pkg-config, Xvfb"
    }
    .to_owned()
}

/// macOS and Windows bring the web view with them; only the compiler may be missing.
fn other_system() -> Result<()> {
    if cfg!(target_os = "macos") && program("xcode-select", &["-p"]).answer().is_none() {
        bail!("the compiler's tools are missing. Run\n    xcode-select --install");
    }
    if cfg!(windows) {
        println!(
            "Windows: this needs the WebView2 runtime (part of Windows 11) and the C++ build tools of Visual Studio."
        );
    }
    Ok(())
}

fn on_path(name: &str) -> bool {
    let Some(path) = std::env::var_os("PATH") else { return false };
    std::env::split_paths(&path).any(|folder| folder.join(name).is_file())
}

fn node() -> Result<()> {
    let wanted = format!("Node.js {}.{} or newer", NODE.0, NODE.1);
    let Some(found) = program("node", &["--version"]).answer() else {
        bail!("{wanted} is missing. It is at nodejs.org, and in the packages of most systems");
    };
    match version(&found) {
        Some(version) if version >= NODE => Ok(()),
        _ => bail!("{wanted} is needed, and this is {found}"),
    }
}

/// Major and minor of `v20.19.1`, or of `3.11.2`.
fn version(text: &str) -> Option<(u32, u32)> {
    let mut numbers = text.trim().trim_start_matches('v').split('.').map(str::parse);
    match (numbers.next(), numbers.next()) {
        (Some(Ok(major)), Some(Ok(minor))) => Some((major, minor)),
        _ => None,
    }
}

/// Runs `npm ci` if the lock has changed since it last ran to its end: the stamp is a copy of the lock.
fn ui_packages() -> Result<()> {
    let ui = repository().join("ui");
    let stamp = ui.join("node_modules/.newel-lock");
    let lock = std::fs::read(ui.join("package-lock.json")).context("ui/package-lock.json")?;
    if std::fs::read(&stamp).is_ok_and(|stamped| stamped == lock) {
        return Ok(());
    }
    npm(&["ci"]).step("packages of the screens")?;
    std::fs::write(&stamp, lock).with_context(|| stamp.display().to_string())
}

/// The test runner, built from source where it is missing.
pub fn nextest() -> Result<()> {
    if cargo(&["nextest", "--version"]).answer().is_some() {
        return Ok(());
    }
    cargo(&["install", "--locked", "cargo-nextest"]).step("cargo-nextest (from source, some minutes)")
}

/// The name of a Python that can make environments, installed where this program knows how.
pub fn python() -> Result<String> {
    let names = if cfg!(windows) { ["python", "py"] } else { ["python3", "python"] };
    let able = || {
        names.into_iter().find(|name| {
            program(name, &["-c", "import ensurepip, venv"]).answer().is_some()
                && program(name, &["--version"])
                    .answer()
                    .and_then(|found| version(found.trim_start_matches("Python ")))
                    .is_some_and(|found| found >= PYTHON)
        })
    };
    if able().is_none()
        && cfg!(target_os = "linux")
        && program("dpkg-query", &["--version"]).answer().is_some()
    {
        packages(&FOR_PYTHON)?;
    }
    able().map(str::to_owned).with_context(|| {
        format!("Python {}.{} or newer with its module venv is missing. It is at python.org, and in the packages of most systems", PYTHON.0, PYTHON.1)
    })
}

/// Whether there is a display to open a window on.
pub fn display() -> bool {
    let set = |name: &str| std::env::var_os(name).is_some_and(|value| !value.is_empty());
    cfg!(not(target_os = "linux")) || set("DISPLAY") || set("WAYLAND_DISPLAY")
}

/// Whether this runs in a clean checkout of its own, where nothing may be left uncommitted.
pub fn ci() -> bool {
    std::env::var_os("CI").is_some_and(|value| value == "true")
        && Path::new(&repository()).join(".git").exists()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn versions_of_node_are_compared_as_numbers() {
        assert_eq!(version("v20.19.1"), Some((20, 19)), "as node prints it");
        assert!(version("v20.9.0") < Some(NODE), "9 is less than 19");
        assert!(version("v22.0.0") > Some(NODE), "a newer major is fine");
        assert_eq!(version("unknown"), None, "anything else is no version");
    }
}
