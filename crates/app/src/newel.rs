//! The data folder: profiles on this device, and the one that is open.

use crate::error::{AppError, Refusal};
use crate::profile::Profile;
use crate::views::{AppView, ProfileCard, Role};
use chrono::{DateTime, FixedOffset, NaiveDate};
use newel_engine::catalogue::{Catalogue, OwnCatalogue};
use newel_engine::ids::PersonId;
use newel_engine::record::{Payload, Profile as Who};
use newel_engine::rules::RulePack;
use newel_exchange::{Document, FileError};
use newel_store::{Action, Store};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;
use uuid::Uuid;

/// What the engine works with, read once.
#[derive(Clone, Debug)]
pub struct Books {
    /// Catalogue, with what is the coach's own.
    pub catalogue: Arc<Catalogue>,
    /// The catalogue that is built in.
    built_in: Arc<Catalogue>,
    /// What is the coach's own.
    pub own: Arc<OwnCatalogue>,
    /// Rule pack.
    pub rules: Arc<RulePack>,
}

impl Books {
    /// The built-in books.
    ///
    /// # Errors
    /// When the embedded data is broken; a test of the engine holds that it is not.
    pub fn built_in() -> Result<Arc<Self>, AppError> {
        let catalogue = Catalogue::built_in().map_err(|_| AppError::Internal)?;
        let rules = RulePack::built_in().map_err(|_| AppError::Internal)?;
        Ok(Arc::new(Self::of(Arc::new(catalogue), Arc::new(rules))))
    }

    /// Books of a catalogue and a rule pack, with nothing of a coach's own.
    #[must_use]
    pub fn of(catalogue: Arc<Catalogue>, rules: Arc<RulePack>) -> Self {
        Self { built_in: Arc::clone(&catalogue), catalogue, own: Arc::default(), rules }
    }

    /// The built-in catalogue with something of a coach's own over it, whatever these books have of that. What a file
    /// brings was looked at when it was read, so that nothing is left to refuse here.
    #[must_use]
    pub fn laid(&self, own: &OwnCatalogue) -> Arc<Catalogue> {
        if own.is_empty() {
            return Arc::clone(&self.built_in);
        }
        match self.built_in.with_own(own) {
            Ok(with) => Arc::new(with),
            Err(error) => {
                tracing::warn!(%error, "a catalogue of a coach's own cannot be laid over the built-in one");
                Arc::clone(&self.built_in)
            }
        }
    }

    /// These books with that as what is the coach's own.
    #[must_use]
    pub fn with(&self, own: OwnCatalogue) -> Self {
        if own == *self.own {
            return self.clone();
        }
        Self { catalogue: self.laid(&own), own: Arc::new(own), ..self.clone() }
    }
}

/// The app on one device.
pub struct Newel {
    data: PathBuf,
    books: Arc<Books>,
    open: Option<Profile>,
    /// As [`Profile`] has it, for each that is opened.
    patience: Option<Duration>,
}

const DATABASE: &str = "newel.db";
/// The setting that names the profile's own person.
pub(crate) const PERSON: &str = "person";
/// The setting that says which side of the app a profile shows.
pub(crate) const ROLE: &str = "role";
/// The setting that marks an invented person; its value is the key of a line about her.
pub(crate) const DEMO: &str = "demo";
/// The setting that holds a profile's name.
pub(crate) const NAME: &str = "name";

impl Newel {
    /// Opens a data folder and in it the profile that was open last.
    ///
    /// # Errors
    /// When the folder cannot be made. A profile that cannot be opened is left closed.
    pub fn open(data: PathBuf) -> Result<Self, AppError> {
        let profiles = data.join("profiles");
        std::fs::create_dir_all(&profiles)
            .map_err(|source| FileError::Unwritten { path: profiles, source })?;
        let mut newel = Self { data, books: Books::built_in()?, open: None, patience: None };
        if let Ok(key) = std::fs::read_to_string(newel.last_file()) {
            // A profile that cannot be opened is said when it is chosen, not by a dead window.
            drop(newel.profile_open(key.trim()));
        }
        Ok(newel)
    }

    /// From now on Roster and Desk answer soon after so long rather than whole: for a window, whose page asks again.
    pub fn answer_in_pieces(&mut self, patience: Duration) {
        self.patience = Some(patience);
        if let Some(profile) = &mut self.open {
            profile.patience = self.patience;
        }
    }

    fn last_file(&self) -> PathBuf {
        self.data.join("last-profile")
    }

    fn folder(&self, key: &str) -> PathBuf {
        self.data.join("profiles").join(key)
    }

    /// Where the database of a profile by that key stands, whether there is one or not.
    pub(crate) fn database_path(&self, key: &str) -> PathBuf {
        self.folder(key).join(DATABASE)
    }

    /// The books.
    #[must_use]
    pub fn books(&self) -> &Arc<Books> {
        &self.books
    }

    /// The folder that files are written to unless another is chosen.
    #[must_use]
    pub fn out_folder(&self) -> PathBuf {
        self.data.join("files")
    }

    /// The folder that the plan files of a day are written to together unless another is chosen.
    #[must_use]
    pub fn plans_folder(&self, day: NaiveDate) -> PathBuf {
        self.out_folder().join(format!("plans-{day}"))
    }

    /// The open profile.
    ///
    /// # Errors
    /// When none is open.
    pub fn profile(&mut self) -> Result<&mut Profile, AppError> {
        self.open.as_mut().ok_or_else(|| Refusal::NoProfile.into())
    }

    /// Forgets what is cached, after a fault.
    pub fn forget(&mut self) {
        if let Some(profile) = &mut self.open {
            profile.forget();
        }
    }

    /// All profiles, and the open one.
    ///
    /// # Errors
    /// When the folder cannot be read.
    pub fn app_view(&self) -> Result<AppView, AppError> {
        let folder = self.data.join("profiles");
        let unreadable = |source| FileError::Unreadable { path: folder.clone(), source };
        let mut profiles = Vec::new();
        for entry in std::fs::read_dir(&folder).map_err(unreadable)? {
            let entry = entry.map_err(unreadable)?;
            let key = entry.file_name().to_string_lossy().into_owned();
            let database = entry.path().join(DATABASE);
            if !database.is_file() {
                continue;
            }
            let card = match &self.open {
                Some(open) if open.key() == key => Some(open.card()?),
                // One that cannot be read is shown by its folder's name, and says why when chosen.
                Some(_) | None => Store::open_read_only(&database).ok().and_then(|s| card_of(&s, &key).ok()),
            };
            profiles.push(card.unwrap_or(ProfileCard {
                name: key.clone(),
                key,
                role: Role::Client,
                demo: false,
                about: None,
            }));
        }
        profiles.sort_by(|a, b| {
            (a.demo, a.role == Role::Client, &a.name).cmp(&(b.demo, b.role == Role::Client, &b.name))
        });
        let open = self.open.as_ref().map(Profile::card).transpose()?;
        Ok(AppView { open, profiles, version: env!("CARGO_PKG_VERSION").to_owned() })
    }

    /// Opens a profile.
    ///
    /// # Errors
    /// When there is none by that key, or it cannot be opened.
    pub fn profile_open(&mut self, key: &str) -> Result<AppView, AppError> {
        let path = self.database(key)?;
        // The old one is closed first: a profile is open once.
        self.open = None;
        let store = Store::open(&path)?;
        let mut profile = Profile::of(store, key.to_owned(), Arc::clone(&self.books))?;
        profile.patience = self.patience;
        self.open = Some(profile);
        newel_exchange::write_whole(self.last_file(), key.as_bytes())?;
        self.app_view()
    }

    fn database(&self, key: &str) -> Result<PathBuf, AppError> {
        // A key is the name of a folder of ours and never a way out of it.
        let safe = !key.is_empty() && key.chars().all(|c| c.is_ascii_alphanumeric() || c == '-');
        let path = self.folder(key).join(DATABASE);
        if safe && path.is_file() { Ok(path) } else { Err(Refusal::NoSuchProfile.into()) }
    }

    /// Closes the open profile.
    ///
    /// # Errors
    /// When the folder cannot be read.
    pub fn profile_close(&mut self) -> Result<AppView, AppError> {
        self.open = None;
        // Absent already is what is wanted.
        drop(std::fs::remove_file(self.last_file()));
        self.app_view()
    }

    /// Makes an empty profile and opens it.
    ///
    /// # Errors
    /// When the name is missing or too long, or the disk refuses.
    pub fn profile_new(
        &mut self,
        name: &str,
        role: Role,
        now: DateTime<FixedOffset>,
    ) -> Result<AppView, AppError> {
        let name = checked_name(name)?;
        let key = self.make(&name, role, PersonId(Uuid::now_v7()), now)?;
        self.profile_open(&key)
    }

    /// Makes a profile for the person that a plan file is for, takes the plan in and opens it.
    ///
    /// # Errors
    /// When the file is no plan that can be used; nothing is made then.
    pub fn profile_from_plan(&mut self, text: &str, now: DateTime<FixedOffset>) -> Result<AppView, AppError> {
        let plan = newel_exchange::read_plan(text.as_bytes())?;
        if let Some(programme) = &plan.programme {
            let catalogue = self.books.laid(&plan.own.clone().unwrap_or_default());
            programme.check(&catalogue).map_err(|_| Refusal::UnusableProgramme)?;
        }
        let known = self.app_view()?.profiles.into_iter().find(|card| {
            self.database(&card.key)
                .ok()
                .and_then(|p| Store::open_read_only(p).ok())
                .and_then(|s| s.setting(PERSON).ok().flatten())
                .is_some_and(|p| p == plan.person.to_string())
        });
        let key = match known {
            Some(card) => card.key,
            None => {
                let name = checked_name(&plan.person_name)?;
                self.make(&name, Role::Client, plan.person, now)?
            }
        };
        self.profile_open(&key)?;
        let report = self.profile()?.take_in_one("plan", text.as_bytes(), now);
        if let Some(error) = report.refused.first() {
            tracing::warn!(code = %error.code, "a plan was refused at set-up");
        }
        self.app_view()
    }

    fn make(
        &mut self,
        name: &str,
        role: Role,
        person: PersonId,
        now: DateTime<FixedOffset>,
    ) -> Result<String, AppError> {
        let key = Uuid::now_v7().simple().to_string();
        let folder = self.folder(&key);
        std::fs::create_dir_all(&folder)
            .map_err(|source| FileError::Unwritten { path: folder.clone(), source })?;
        let mut store = Store::open(folder.join(DATABASE))?;
        set_up(&mut store, name, role, person, now)?;
        Ok(key)
    }

    /// Shows the other side of the app for the open profile.
    ///
    /// # Errors
    /// When none is open.
    pub fn role_set(&mut self, role: Role) -> Result<AppView, AppError> {
        self.profile()?.set_role(role)?;
        self.app_view()
    }

    /// The data folder.
    #[must_use]
    pub fn data(&self) -> &Path {
        &self.data
    }
}

/// Writes who the profile is: settings, and the first record of her own stream.
pub(crate) fn set_up(
    store: &mut Store,
    name: &str,
    role: Role,
    person: PersonId,
    now: DateTime<FixedOffset>,
) -> Result<(), AppError> {
    store.set_setting(PERSON, &person.to_string())?;
    store.set_setting(ROLE, role_name(role))?;
    store.set_setting(NAME, name)?;
    let who = Who { name: name.to_owned(), emergency: None, clinic: None };
    store.write(Action::SetUpProfile, now, person, vec![Payload::Profile(who)])?;
    Ok(())
}

pub(crate) fn role_name(role: Role) -> &'static str {
    match role {
        Role::Client => "client",
        Role::Coach => "coach",
    }
}

pub(crate) fn card_of(store: &Store, key: &str) -> Result<ProfileCard, AppError> {
    let role = match store.setting(ROLE)?.as_deref() {
        Some("coach") => Role::Coach,
        Some(_) | None => Role::Client,
    };
    let about = store.setting(DEMO)?;
    Ok(ProfileCard {
        key: key.to_owned(),
        name: store.setting(NAME)?.unwrap_or_else(|| key.to_owned()),
        role,
        demo: about.is_some(),
        about: about.filter(|a| !a.is_empty()),
    })
}

/// A name: trimmed, not empty, at most 80 characters, no control characters.
pub(crate) fn checked_name(name: &str) -> Result<String, AppError> {
    let name = name.trim();
    if name.is_empty() {
        return Err(Refusal::NameMissing.into());
    }
    if name.chars().count() > 80 || name.chars().any(char::is_control) {
        return Err(Refusal::OutOfRange.into());
    }
    Ok(name.to_owned())
}

/// What a text file says that it is, without taking it in.
///
/// # Errors
/// As reading it.
pub fn look_at(bytes: &[u8]) -> Result<Document, AppError> {
    Ok(newel_exchange::read(bytes)?)
}
