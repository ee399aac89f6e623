//! The programs behind a steered window: a display, a driver, and the window's own process. Each is ended when its value
//! is dropped, so that a test that breaks leaves nothing running.

use std::ffi::OsStr;
use std::fs::File;
use std::io::{BufRead, BufReader};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail, ensure};

/// How long a program may take to be ready, or to be gone.
const PATIENCE: Duration = Duration::from_secs(20);
/// How often it is asked.
const POLL: Duration = Duration::from_millis(20);

/// A program that is ended with its value.
struct Ended(Child);

impl Drop for Ended {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// A display that nobody sees, or the one that is there.
pub(crate) struct Display {
    /// What to put in `DISPLAY`.
    pub(crate) name: String,
    _server: Option<Ended>,
}

impl Display {
    /// Starts Xvfb on a free number. Left to itself it starts afresh whenever its last client goes, and turns away a
    /// window that opens in that moment; `-noreset` keeps it as it is (2 of 3,000 connections were refused, then none).
    /// With `NEWEL_SHOW=1` the window opens on the display that is there, to be watched.
    pub(crate) fn open() -> Result<Self> {
        let there = std::env::var("DISPLAY").ok().filter(|name| !name.is_empty());
        if let (Some(name), Some("1")) = (there, std::env::var("NEWEL_SHOW").ok().as_deref()) {
            return Ok(Self { name, _server: None });
        }
        let mut server = Command::new("Xvfb")
            .args([
                "-displayfd",
                "1",
                "-screen",
                "0",
                "1600x1200x24",
                "-nolisten",
                "tcp",
                "-dpi",
                "96",
                "-noreset",
            ])
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .context("Xvfb could not be started (Debian: apt-get install xvfb)")?;
        let told = server.stdout.take().context("Xvfb says its number on its output")?;
        let server = Ended(server);
        let mut number = String::new();
        BufReader::new(told).read_line(&mut number).context("Xvfb's number")?;
        ensure!(!number.trim().is_empty(), "Xvfb ended before it had a number");
        Ok(Self { name: format!(":{}", number.trim()), _server: Some(server) })
    }
}

/// WebKitWebDriver, and through it the window.
pub(crate) struct Driver {
    process: Ended,
    port: u16,
    log: PathBuf,
    data: PathBuf,
}

impl Driver {
    /// Starts the driver with the environment that the window will have. `scratch` takes its words and the platform's
    /// own folders, so that nobody's real settings are read or written.
    pub(crate) fn start(
        display: &Display,
        data: &Path,
        scratch: &Path,
        more: &[(String, String)],
    ) -> Result<Self> {
        let port = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?.local_addr()?.port();
        let log = scratch.join("driver.log");
        let words = File::create(&log).with_context(|| log.display().to_string())?;
        let process = Command::new("WebKitWebDriver")
            .arg(format!("--port={port}"))
            .env("DISPLAY", &display.name)
            .env_remove("WAYLAND_DISPLAY")
            .env("GDK_BACKEND", "x11")
            .env("TAURI_WEBVIEW_AUTOMATION", "true")
            .env("NEWEL_SECOND_INSTANCE", "1")
            // No accessibility bus runs here; the tree is looked at through the page.
            .env("NO_AT_BRIDGE", "1")
            .env("HOME", scratch)
            .env("XDG_DATA_HOME", scratch.join("share"))
            .env("XDG_CONFIG_HOME", scratch.join("config"))
            .env("XDG_CACHE_HOME", scratch.join("cache"))
            .envs(more.iter().map(|(name, value)| (name, value)))
            .stdin(Stdio::null())
            .stdout(words.try_clone()?)
            .stderr(words)
            .spawn()
            .context("WebKitWebDriver could not be started (Debian: apt-get install webkit2gtk-driver)")?;
        let driver = Self { process: Ended(process), port, log, data: data.to_owned() };
        driver.wait_for_port()?;
        Ok(driver)
    }

    pub(crate) fn address(&self) -> String {
        format!("http://{}", self.socket())
    }

    fn socket(&self) -> SocketAddr {
        SocketAddr::from((Ipv4Addr::LOCALHOST, self.port))
    }

    fn wait_for_port(&self) -> Result<()> {
        wait(|| TcpStream::connect(self.socket()).is_ok())
            .with_context(|| format!("WebKitWebDriver did not answer. {}", self.said()))
    }

    /// What the driver and the window wrote, for the reason of an error.
    pub(crate) fn said(&self) -> String {
        format!("They said: {}", std::fs::read_to_string(&self.log).unwrap_or_default().trim())
    }

    /// The window's process: the one with this data folder among its arguments.
    pub(crate) fn window(&self) -> Option<u32> {
        let entries = std::fs::read_dir("/proc").ok()?;
        entries.flatten().find_map(|entry| {
            let id: u32 = entry.file_name().to_str()?.parse().ok()?;
            let line = std::fs::read(entry.path().join("cmdline")).ok()?;
            let mut words = line.split(|byte| *byte == 0);
            let is_window = words.next().is_some_and(|word| word.ends_with(b"newel-window"));
            let has_data = words.any(|word| word == self.data.as_os_str().as_encoded_bytes());
            (is_window && has_data).then_some(id)
        })
    }

    /// Ends the window as a dying battery does: no handler of it runs.
    pub(crate) fn kill_window(&self) -> Result<()> {
        let id = self.window().context("the window does not run")?;
        let done = Command::new("kill").args([OsStr::new("-KILL"), OsStr::new(&id.to_string())]).status()?;
        ensure!(done.success(), "kill -KILL {id} ended with {done}");
        // A killed process keeps its number until its parent has asked for it, but no longer its arguments.
        wait(|| self.window().is_none()).with_context(|| format!("process {id} is still there"))
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        if self.window().is_some() {
            let _ = self.kill_window();
        }
        let _ = self.process.0.kill();
    }
}

fn wait(ready: impl Fn() -> bool) -> Result<()> {
    let start = Instant::now();
    while !ready() {
        if start.elapsed() > PATIENCE {
            bail!("not within {} s", PATIENCE.as_secs());
        }
        std::thread::sleep(POLL);
    }
    Ok(())
}
