//! What the commands share, and the one way from a command down to the use cases.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use crate::error::CommandError;

/// Everything that outlives a single command. Commands hold it as `State<'_, Arc<Shell>>`.
#[derive(Debug)]
pub struct Shell {
    data: PathBuf,
}

impl Shell {
    /// A shell that keeps everything in `data`, a folder that exists.
    pub(crate) fn new(data: PathBuf) -> Self {
        Self { data }
    }

    /// The folder that holds everything Newel keeps.
    #[must_use]
    pub fn data(&self) -> &Path {
        &self.data
    }
}

/// Runs a use case away from the window's thread, so that the window never waits for the disk. A panic in it becomes an
/// error that the page can show, and poisons nothing here.
pub(crate) async fn off_main<T, F>(shell: &Arc<Shell>, work: F) -> Result<T, CommandError>
where
    T: Send + 'static,
    F: FnOnce(&Shell) -> Result<T, CommandError> + Send + 'static,
{
    let shell = Arc::clone(shell);
    match tauri::async_runtime::spawn_blocking(move || work(&shell)).await {
        Ok(answer) => answer,
        Err(fault) => {
            // The fault's text may quote a health value, so only its kind is logged.
            tracing::error!(panicked = matches!(fault, tauri::Error::JoinError(_)), "a use case did not come back");
            Err(CommandError::internal())
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_below_becomes_an_error_and_the_next_call_works() {
        let shell = Arc::new(Shell::new(PathBuf::from("data")));
        let fallen = tauri::async_runtime::block_on(off_main(&shell, |_| -> Result<(), CommandError> {
            panic!("on purpose, to see that it stops here")
        }));
        assert_eq!(fallen.unwrap_err().code, "internal", "a panic reaches the page as an error of its own code");
        let after = tauri::async_runtime::block_on(off_main(&shell, |shell| Ok(shell.data().to_owned())));
        assert_eq!(after.unwrap(), PathBuf::from("data"), "the shell goes on after a panic");
    }
}
