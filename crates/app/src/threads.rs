//! Work on many things at once. What comes of each depends on that one alone, so the answer is the same on any machine.

use crate::error::AppError;
use std::num::NonZero;

/// Works on each of several, on as many threads as the machine has, and gives back what came of each, in their order.
///
/// # Errors
/// When the work panicked.
pub(crate) fn together<T: Sync, R: Send>(
    of: &[T],
    work: impl Fn(&T) -> R + Sync,
) -> Result<Vec<R>, AppError> {
    let threads = std::thread::available_parallelism().map_or(1, NonZero::get);
    if of.len() < 2 || threads < 2 {
        return Ok(of.iter().map(work).collect());
    }
    let work = &work;
    std::thread::scope(|scope| {
        let parts: Vec<_> = of
            .chunks(of.len().div_ceil(threads))
            .map(|part| scope.spawn(move || part.iter().map(work).collect::<Vec<R>>()))
            .collect();
        let done: Vec<_> = parts.into_iter().map(|part| part.join()).collect();
        let mut all = Vec::with_capacity(of.len());
        for part in done {
            all.extend(part.map_err(|_| AppError::Internal)?);
        }
        Ok(all)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_order_stays_and_a_panic_is_an_error() {
        let all: Vec<u32> = (0..1001).collect();
        let doubled = together(&all, |n| n * 2).unwrap();
        assert_eq!(doubled, all.iter().map(|n| n * 2).collect::<Vec<_>>());
        assert!(together(&[] as &[u32], |n| *n).unwrap().is_empty());
        let failed = together(&all, |n| assert!(*n != 700, "one of them fails"));
        assert!(matches!(failed, Err(AppError::Internal)));
    }
}
