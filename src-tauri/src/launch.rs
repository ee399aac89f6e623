//! How the window was started: the arguments and the environment, read once.

use std::ffi::OsString;
use std::path::PathBuf;

/// What the arguments and the environment ask for.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Launch {
    /// The folder for everything that Newel keeps, instead of the platform's own (`--data DIR`).
    pub data: Option<PathBuf>,
    /// Fill an empty data folder with the invented practice before the window opens (`--demo`).
    pub demo: bool,
    /// Another window of Newel may run beside this one (`NEWEL_SECOND_INSTANCE=1`); tests need it.
    pub second_instance: bool,
    /// A WebDriver steers the window (`TAURI_WEBVIEW_AUTOMATION=true`): size and place are its own affair.
    pub automated: bool,
}

impl Launch {
    /// Reads this process's own arguments and environment.
    #[must_use]
    pub fn from_process() -> Self {
        let is = |name: &str, value: &str| std::env::var_os(name).is_some_and(|found| found == value);
        Self {
            data: data_folder(std::env::args_os().skip(1)),
            demo: std::env::args_os().skip(1).any(|argument| argument == "--demo"),
            second_instance: is("NEWEL_SECOND_INSTANCE", "1"),
            automated: is("TAURI_WEBVIEW_AUTOMATION", "true"),
        }
    }
}

/// The folder after `--data`, or in `--data=DIR`. Other arguments are left alone: desktops add some of their own.
fn data_folder(mut arguments: impl Iterator<Item = OsString>) -> Option<PathBuf> {
    while let Some(argument) = arguments.next() {
        if argument == "--data" {
            return arguments.next().map(PathBuf::from);
        }
        if let Some(folder) = argument.to_str().and_then(|text| text.strip_prefix("--data=")) {
            return Some(PathBuf::from(folder));
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(arguments: &[&str], expected: Option<&str>) {
        let found = data_folder(arguments.iter().map(OsString::from));
        assert_eq!(found, expected.map(PathBuf::from), "data folder of {arguments:?}");
    }

    #[test]
    fn the_data_folder_is_read_in_both_spellings() {
        check(&[], None);
        check(&["--data", "a folder"], Some("a folder"));
        check(&["--data=a folder"], Some("a folder"));
        check(&["-psn_0_1", "--data", "x", "--data", "y"], Some("x"));
        check(&["--data"], None);
    }
}
