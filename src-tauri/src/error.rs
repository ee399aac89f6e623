//! The one shape in which a command says that it could not do what was asked.

use serde::Serialize;

/// What the page gets instead of an answer. The screens branch on `code`; the two sentences are for the person.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CommandError {
    /// Stable, kebab-case; a code exists only if a screen branches on it.
    pub code: String,
    /// What happened, and what is safe.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
}

impl CommandError {
    /// A panic below the shell: a fault of ours. The log is written in transactions, so nothing saved is lost.
    pub(crate) fn internal() -> Self {
        Self {
            code: "internal".to_owned(),
            message: "Something went wrong inside Newel. What was saved before is safe.".to_owned(),
            remedy: "Try again. If it happens again, close Newel and open it once more.".to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_gets_code_message_and_remedy() {
        let json = serde_json::to_value(CommandError::internal()).unwrap();
        let mut fields: Vec<_> = json.as_object().unwrap().keys().cloned().collect();
        fields.sort();
        assert_eq!(fields, ["code", "message", "remedy"], "ui/src/lib/bridge.ts reads exactly these");
    }
}
