//! The kit of a room: what stands where several train. The coach's own arrangement, local to her device; no client's log
//! or page is changed by it.

use crate::error::{AppError, Refusal};
use crate::newel::checked_name;
use crate::path::{band_presets, checked_kit};
use crate::profile::Profile;
use crate::views::{RoomKit, RoomView, RoomsView};
use newel_engine::kit::Kit;
use uuid::Uuid;

/// Where rooms are kept, each under its id.
const ROOMS: &str = "room.";
/// So many rooms at most.
const MOST: usize = 50;

impl Profile {
    /// The coach's rooms by name.
    ///
    /// # Errors
    /// When the log cannot be read, or the profile is not a coach's.
    pub fn rooms_view(&self) -> Result<RoomsView, AppError> {
        self.coach_only()?;
        let kept = self.store.settings_of(ROOMS)?;
        let read = |(id, text): (String, String)| {
            Some(RoomView { id: id.parse().ok()?, room: serde_json::from_str(&text).ok()? })
        };
        let mut rooms: Vec<RoomView> = kept.into_iter().filter_map(read).collect();
        rooms.sort_by_cached_key(|r| r.room.name.to_lowercase());
        Ok(RoomsView { rooms, band_presets: band_presets() })
    }

    /// Writes down the kit of a room: of a new one, or of one that is there already.
    ///
    /// # Errors
    /// When the name is missing, a number is out of range, or there is no such room.
    pub fn room_save(&mut self, id: Option<Uuid>, name: &str, kit: Kit) -> Result<RoomsView, AppError> {
        let name = checked_name(name)?;
        checked_kit(&kit)?;
        let rooms = self.rooms_view()?.rooms;
        let counted = match id {
            Some(id) => self.room_kit(id)?.counted,
            None if rooms.len() >= MOST => return Err(Refusal::OutOfRange.into()),
            None => Vec::new(),
        };
        self.room_keep(id.unwrap_or_else(Uuid::now_v7), &RoomKit { name, kit, counted })?;
        self.rooms_view()
    }

    /// Forgets a room.
    ///
    /// # Errors
    /// When there is no such room, or the disk refuses.
    pub fn room_remove(&mut self, id: Uuid) -> Result<RoomsView, AppError> {
        self.coach_only()?;
        self.room_kit(id)?;
        self.store.clear_setting(&format!("{ROOMS}{id}"))?;
        self.rooms_view()
    }

    pub(super) fn room_kit(&self, id: Uuid) -> Result<RoomKit, AppError> {
        let text = self.store.setting(&format!("{ROOMS}{id}"))?;
        text.and_then(|t| serde_json::from_str(&t).ok()).ok_or_else(|| Refusal::NoSuchThing.into())
    }

    pub(super) fn room_keep(&mut self, id: Uuid, room: &RoomKit) -> Result<(), AppError> {
        let text = serde_json::to_string(room).map_err(|_| AppError::Internal)?;
        Ok(self.store.set_setting(&format!("{ROOMS}{id}"), &text)?)
    }
}
