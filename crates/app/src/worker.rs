//! One thread owns the database. Commands hand it work and wait without blocking the window.

use crate::error::AppError;
use crate::newel::Newel;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::mpsc;
use std::time::Duration;
use tokio::sync::oneshot;

/// So long the page waits for what is worked out about many clients; then it is told of how many, and asks again.
const PATIENCE: Duration = Duration::from_millis(40);

type Job = Box<dyn FnOnce(&mut Newel) + Send>;

/// The way to the thread that owns everything. Cloning it gives another way to the same thread.
#[derive(Clone)]
pub struct Worker {
    jobs: mpsc::Sender<Job>,
}

impl Worker {
    /// Starts the thread over a data folder.
    ///
    /// # Errors
    /// When the thread cannot be started or the folder cannot be used.
    pub fn start(data: PathBuf) -> Result<Self, AppError> {
        let (jobs, inbox) = mpsc::channel::<Job>();
        let mut newel = Newel::open(data)?;
        newel.answer_in_pieces(PATIENCE);
        std::thread::Builder::new()
            .name("newel-log".to_owned())
            .spawn(move || {
                while let Ok(job) = inbox.recv() {
                    job(&mut newel);
                }
            })
            .map_err(|_| AppError::Internal)?;
        Ok(Self { jobs })
    }

    /// Runs a use case on the thread and gives back its answer. A panic in it becomes
    /// [`AppError::Internal`]; what was committed before is safe, and the next call works.
    ///
    /// # Errors
    /// What the use case says.
    pub async fn call<T: Send + 'static>(
        &self,
        work: impl FnOnce(&mut Newel) -> Result<T, AppError> + Send + 'static,
    ) -> Result<T, AppError> {
        let (reply, answer) = oneshot::channel();
        let job: Job = Box::new(move |newel| {
            let result = catch_unwind(AssertUnwindSafe(|| work(newel))).unwrap_or_else(|_| {
                tracing::error!("a use case panicked");
                // What is cached may be half made; the log on disk is not.
                newel.forget();
                Err(AppError::Internal)
            });
            // Nobody waits any more if the window was closed meanwhile.
            drop(reply.send(result));
        });
        self.jobs.send(job).map_err(|_| AppError::Internal)?;
        answer.await.map_err(|_| AppError::Internal)?
    }
}
