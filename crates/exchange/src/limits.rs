//! How large and how deep a file may be. Common practice, no source: each is far above what a year
//! of training comes to, and far below what would trouble a phone.

/// Bytes of a file: 32 MiB.
pub const MAX_BYTES: usize = 32 * 1024 * 1024;

/// Objects and arrays within one another, the envelope being the first. A record needs about twelve.
pub const MAX_DEPTH: usize = 32;

/// Records in a file. Five years of four sessions a week with eighty records each come to 83,000.
pub const MAX_LINES: usize = 200_000;

// Ladders and variants of a coach's own in a file, and the length of each text of theirs: far above what one person
// teaches. The engine holds them wherever a catalogue is made, so that a file cannot bring more than can be written.
pub use newel_engine::catalogue::{MAX_OWN_LADDERS, MAX_OWN_VARIANTS};

/// True when objects and arrays stand deeper within one another than [`MAX_DEPTH`].
///
/// Counts without recursion and without parsing, so that no depth can exhaust the stack.
pub(crate) fn is_too_deep(text: &str) -> bool {
    let mut depth = 0_usize;
    let (mut in_string, mut escaped) = (false, false);
    for byte in text.bytes() {
        if in_string {
            match byte {
                _ if escaped => escaped = false,
                b'\\' => escaped = true,
                b'"' => in_string = false,
                _ => {}
            }
            continue;
        }
        match byte {
            b'"' => in_string = true,
            b'{' | b'[' => {
                depth += 1;
                if depth > MAX_DEPTH {
                    return true;
                }
            }
            b'}' | b']' => depth = depth.saturating_sub(1),
            _ => {}
        }
    }
    false
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn depth_is_counted_outside_strings_alone() {
        let nested = |n: usize| format!("{}{}", "[".repeat(n), "]".repeat(n));
        assert!(!is_too_deep(&nested(MAX_DEPTH)), "the limit itself is allowed");
        assert!(is_too_deep(&nested(MAX_DEPTH + 1)), "one more is not");
        assert!(is_too_deep(&"[".repeat(1_000_000)), "a million open brackets are counted, not entered");
        assert!(!is_too_deep(&format!("\"\\\"{}\"", "[".repeat(99))), "brackets in a string are text");
        assert!(!is_too_deep(&"[]".repeat(99)), "side by side is not deep");
    }
}
