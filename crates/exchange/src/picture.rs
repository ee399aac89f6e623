//! A coach's own pictures: they travel beside a plan's content, each known by the SHA-256 of its bytes.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use serde::Deserialize as _;
use serde::de::{Deserializer, Error as _};
use sha2::{Digest, Sha256};

/// Bytes of a picture: 256 KiB, twice what one of 960 pixels comes to as it is taken in (common practice, no source).
pub const MAX_PICTURE: usize = 256 * 1024;

/// Pictures in a file. With the largest of each, the file stays within its bounds.
pub const MAX_PICTURES: usize = 64;

/// A picture as it is stored and sent.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture(Vec<u8>);

/// Why bytes are no picture of ours.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PictureError {
    /// It is neither JPEG, PNG nor WebP.
    #[error("not a picture")]
    NotAPicture,
    /// It is larger than [`MAX_PICTURE`].
    #[error("the picture is too large")]
    TooLarge,
}

impl Picture {
    /// A picture from bytes. They are told by how they begin, as the formats say: JPEG (ITU-T T.81, SOI and a marker),
    /// PNG (ISO/IEC 15948, signature), WebP (RFC 9649, RIFF header).
    ///
    /// # Errors
    /// See [`PictureError`].
    pub fn of(bytes: Vec<u8>) -> Result<Self, PictureError> {
        if bytes.len() > MAX_PICTURE {
            return Err(PictureError::TooLarge);
        }
        if media_of(&bytes).is_none() {
            return Err(PictureError::NotAPicture);
        }
        Ok(Self(bytes))
    }

    /// A picture from base64 (RFC 4648).
    ///
    /// # Errors
    /// See [`PictureError`].
    pub fn from_base64(text: &str) -> Result<Self, PictureError> {
        if text.len() > MAX_PICTURE.div_ceil(3) * 4 {
            return Err(PictureError::TooLarge);
        }
        Self::of(STANDARD.decode(text).map_err(|_| PictureError::NotAPicture)?)
    }

    /// Its bytes.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        &self.0
    }

    /// Its media type.
    #[must_use]
    pub fn media(&self) -> &'static str {
        media_of(&self.0).unwrap_or("application/octet-stream")
    }

    /// SHA-256 of its bytes, in lower-case hexadecimal: its name.
    #[must_use]
    pub fn name(&self) -> String {
        Sha256::digest(&self.0).iter().map(|byte| format!("{byte:02x}")).collect()
    }

    /// Its bytes as base64 (RFC 4648).
    #[must_use]
    pub fn base64(&self) -> String {
        STANDARD.encode(&self.0)
    }
}

fn media_of(bytes: &[u8]) -> Option<&'static str> {
    match bytes {
        [0xFF, 0xD8, 0xFF, ..] => Some("image/jpeg"),
        [0x89, b'P', b'N', b'G', b'\r', b'\n', 0x1A, b'\n', ..] => Some("image/png"),
        [b'R', b'I', b'F', b'F', _, _, _, _, b'W', b'E', b'B', b'P', ..] => Some("image/webp"),
        _ => None,
    }
}

pub(crate) fn from_texts<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Vec<Picture>, D::Error> {
    let texts = Vec::<&str>::deserialize(deserializer)?;
    if texts.len() > MAX_PICTURES {
        return Err(D::Error::custom("too many pictures"));
    }
    texts.into_iter().map(|text| Picture::from_base64(text).map_err(D::Error::custom)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_is_known_by_how_it_begins() {
        let media = |bytes: &[u8]| Picture::of(bytes.to_vec()).map(|p| p.media());
        assert_eq!(media(b"\xFF\xD8\xFF\xE0...."), Ok("image/jpeg"));
        assert_eq!(media(b"\x89PNG\r\n\x1A\n...."), Ok("image/png"));
        assert_eq!(media(b"RIFF....WEBPVP8 "), Ok("image/webp"));
        for other in [&b""[..], b"GIF89a", b"<svg xmlns='http://www.w3.org/2000/svg'/>", b"RIFF....WAVE"] {
            assert_eq!(media(other), Err(PictureError::NotAPicture));
        }
    }

    #[test]
    fn what_is_too_large_is_refused_before_it_is_decoded() {
        let large = [&b"\xFF\xD8\xFF"[..], &vec![0; MAX_PICTURE]].concat();
        assert_eq!(Picture::of(large), Err(PictureError::TooLarge));
        assert_eq!(Picture::from_base64(&"A".repeat(MAX_PICTURE * 2)), Err(PictureError::TooLarge));
        assert_eq!(Picture::from_base64("not base64!"), Err(PictureError::NotAPicture));
    }

    #[test]
    fn base64_gives_the_bytes_back_and_the_name_is_their_hash() {
        let picture = Picture::of(b"\xFF\xD8\xFFabc".to_vec()).unwrap();
        assert_eq!(picture.base64(), "/9j/YWJj", "RFC 4648 by hand");
        assert_eq!(Picture::from_base64(&picture.base64()).unwrap(), picture);
        assert_eq!(picture.name().len(), 64);
    }
}
