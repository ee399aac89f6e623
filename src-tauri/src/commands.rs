//! The commands: adapters of about five lines over the use cases. Each is async (a plain one would run on the
//! window's thread), hands its work to the one thread that owns the log, and passes on the answer or the error.
//! No rule lives here.

use chrono::{DateTime, FixedOffset, Local, NaiveDate};
use newel_app::coach::Whom;
use newel_app::print::{PrintForm, PrintedView};
use newel_app::views::{
    AdviceView, AppView, CheckInForm, ChosenFile, ClassForm, ClassView, ClearanceForm, ClientForm,
    ClientView, CorrectionForm, DeskView, ErrorView, FinishForm, GiveTo, ImpactForm, IntakeForm, KitView,
    LadderWordsView, LookFor, MarkedView, OverrideForm, OwnForm, OwnLadderForm, PathView, PictureView,
    PlanbookView, ReceiptView, RevisionView, Role, RosterView, SafetyView, SendView, SetForm, TakeInView,
    TrainView, WordsForm, WrittenView,
};
use newel_app::{AppError, Newel, Worker};
use newel_engine::class::Laid;
use newel_engine::ids::{PersonId, ProgrammeId, RecordId, RunId, SlotId, VariantId};
use newel_engine::kit::{Kit, Load};
use newel_engine::record::{HoldAnswer, NextDay, RestrictionKind, Symptom};
use newel_engine::rules::RuleSetting;
use newel_engine::stage::Stage;
use newel_engine::units::Weight;
use newel_engine::writing::Edit;
use std::collections::BTreeMap;
use std::path::PathBuf;
use tauri::State;
use tauri_plugin_dialog::DialogExt as _;
use uuid::Uuid;

/// The clock is read here, at the rim, and nowhere below.
fn now() -> DateTime<FixedOffset> {
    Local::now().fixed_offset()
}

async fn ask<T: Send + 'static>(
    worker: &Worker,
    work: impl FnOnce(&mut Newel) -> Result<T, AppError> + Send + 'static,
) -> Result<T, ErrorView> {
    worker.call(work).await.map_err(|e| e.view())
}

/// Lets her choose where a file goes; nothing if she changes her mind.
#[tauri::command]
pub async fn choose_save_path(app: tauri::AppHandle, suggested: String) -> Result<Option<String>, ErrorView> {
    let (reply, answer) = tokio::sync::oneshot::channel();
    app.dialog().file().set_file_name(suggested).save_file(move |path| drop(reply.send(path)));
    let path = answer.await.ok().flatten();
    Ok(path.map(|p| p.to_string()))
}

/// Lets her choose a folder; nothing if she changes her mind.
#[tauri::command]
pub async fn choose_folder(app: tauri::AppHandle) -> Result<Option<String>, ErrorView> {
    let (reply, answer) = tokio::sync::oneshot::channel();
    app.dialog().file().pick_folder(move |path| drop(reply.send(path)));
    let path = answer.await.ok().flatten();
    Ok(path.map(|p| p.to_string()))
}

/// The open profile and all others.
#[tauri::command]
pub async fn app_view(worker: State<'_, Worker>) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.app_view()).await
}

/// Opens a profile.
#[tauri::command]
pub async fn profile_open(worker: State<'_, Worker>, key: String) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.profile_open(&key)).await
}

/// Closes the open profile.
#[tauri::command]
pub async fn profile_close(worker: State<'_, Worker>) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.profile_close()).await
}

/// Makes an empty profile and opens it.
#[tauri::command]
pub async fn profile_new(worker: State<'_, Worker>, name: String, role: Role) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.profile_new(&name, role, now())).await
}

/// Makes a profile from a plan file and opens it.
#[tauri::command]
pub async fn profile_from_plan(worker: State<'_, Worker>, text: String) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.profile_from_plan(&text, now())).await
}

/// Adds the invented people of the demo.
#[tauri::command]
pub async fn demo_make(worker: State<'_, Worker>) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.demo_make(now(), |_, _| ())).await
}

/// Makes the invented people if there is nobody yet: for a start with `--demo`.
pub(crate) async fn fill_with_demo(worker: &Worker) -> Result<(), ErrorView> {
    ask(worker, move |newel| {
        if newel.app_view()?.profiles.is_empty() {
            newel.demo_make(now(), |_, _| ())?;
        }
        Ok(())
    })
    .await
}

/// Shows the other side of the app.
#[tauri::command]
pub async fn role_set(worker: State<'_, Worker>, role: Role) -> Result<AppView, ErrorView> {
    ask(&worker, move |newel| newel.role_set(role)).await
}

/// The Train screen.
#[tauri::command]
pub async fn train_view(worker: State<'_, Worker>) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.train_view(now())).await
}

/// Check-in; then the session begins.
#[tauri::command]
pub async fn session_begin(worker: State<'_, Worker>, form: CheckInForm) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.session_begin(now(), form)).await
}

/// Answers the next-day question.
#[tauri::command]
pub async fn next_day_answer(
    worker: State<'_, Worker>,
    run: RunId,
    answer: NextDay,
    symptoms: Vec<Symptom>,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.next_day_answer(now(), run, answer, symptoms)).await
}

/// Logs a set; it is on the disk when this answers.
#[tauri::command]
pub async fn set_log(worker: State<'_, Worker>, form: SetForm) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.set_log(now(), form)).await
}

/// Corrects a set.
#[tauri::command]
pub async fn set_correct(worker: State<'_, Worker>, form: CorrectionForm) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.set_correct(now(), form)).await
}

/// Takes back a set or a mark.
#[tauri::command]
pub async fn record_withdraw(worker: State<'_, Worker>, record: RecordId) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.record_withdraw(now(), record)).await
}

/// Leaves out what is left of a slot's round.
#[tauri::command]
pub async fn set_skip(
    worker: State<'_, Worker>,
    run: RunId,
    slot: SlotId,
    round: u8,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.set_skip(now(), run, slot, round)).await
}

/// Chooses another allowed option.
#[tauri::command]
pub async fn option_choose(
    worker: State<'_, Worker>,
    run: RunId,
    slot: SlotId,
    variant: VariantId,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.option_choose(now(), run, slot, variant)).await
}

/// Marks a symptom; it is on the disk before anything is asked.
#[tauri::command]
pub async fn mark(worker: State<'_, Worker>, run: RunId, at_rest: bool) -> Result<MarkedView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.mark(now(), run, at_rest)).await
}

/// Says what a mark was.
#[tauri::command]
pub async fn mark_say(
    worker: State<'_, Worker>,
    mark: RecordId,
    symptom: Symptom,
) -> Result<MarkedView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.mark_say(now(), mark, symptom)).await
}

/// Leaves out what does not fit into ten minutes.
#[tauri::command]
pub async fn session_shorten(worker: State<'_, Worker>, run: RunId) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.session_shorten(now(), run)).await
}

/// Ends a session.
#[tauri::command]
pub async fn session_finish(worker: State<'_, Worker>, form: FinishForm) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.session_finish(now(), form)).await
}

/// Answers "ten reps with what?".
#[tauri::command]
pub async fn ten_reps(
    worker: State<'_, Worker>,
    variant: VariantId,
    load: Load,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.ten_reps(now(), variant, load)).await
}

/// Keeps her numbers.
#[tauri::command]
pub async fn numbers_save(
    worker: State<'_, Worker>,
    emergency: Option<String>,
    clinic: Option<String>,
) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.numbers_save(now(), emergency, clinic)).await
}

/// The Path screen.
#[tauri::command]
pub async fn path_view(worker: State<'_, Worker>) -> Result<PathView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.path_view(now())).await
}

/// The Kit screen.
#[tauri::command]
pub async fn kit_view(worker: State<'_, Worker>) -> Result<KitView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.kit_view(now())).await
}

/// Keeps what she owns.
#[tauri::command]
pub async fn kit_save(worker: State<'_, Worker>, kit: Kit) -> Result<KitView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.kit_save(now(), kit)).await
}

/// Keeps her body mass.
#[tauri::command]
pub async fn body_mass_save(worker: State<'_, Worker>, mass: Weight) -> Result<KitView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.body_mass_save(now(), mass)).await
}

/// The Send screen.
#[tauri::command]
pub async fn send_view(worker: State<'_, Worker>) -> Result<SendView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = newel.out_folder();
        newel.profile()?.send_view(&folder, now())
    })
    .await
}

/// Writes the log file.
#[tauri::command]
pub async fn log_write(worker: State<'_, Worker>, path: Option<PathBuf>) -> Result<WrittenView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = newel.out_folder();
        newel.profile()?.log_write(&folder, path, now())
    })
    .await
}

/// Takes files in, one by one.
#[tauri::command]
pub async fn take_in(worker: State<'_, Worker>, files: Vec<ChosenFile>) -> Result<TakeInView, ErrorView> {
    ask(&worker, move |newel| Ok(newel.profile()?.take_in(&files, now()))).await
}

/// The Roster.
#[tauri::command]
pub async fn roster_view(worker: State<'_, Worker>) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.roster_view(now())).await
}

/// Adds a client.
#[tauri::command]
pub async fn client_add(worker: State<'_, Worker>, form: ClientForm) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.client_add(now(), form)).await
}

/// Changes what is recorded about a client.
#[tauri::command]
pub async fn client_save(
    worker: State<'_, Worker>,
    person: PersonId,
    form: ClientForm,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.client_save(now(), person, form)).await
}

/// Rules something out for a client.
#[tauri::command]
pub async fn restriction_add(
    worker: State<'_, Worker>,
    person: PersonId,
    what: RestrictionKind,
    until: Option<NaiveDate>,
    note: String,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.restriction_add(now(), person, what, until, &note)).await
}

/// Makes a group of clients.
#[tauri::command]
pub async fn group_make(
    worker: State<'_, Worker>,
    name: String,
    members: Vec<PersonId>,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.group_make(now(), &name, members)).await
}

/// Gives a group another name.
#[tauri::command]
pub async fn group_rename(
    worker: State<'_, Worker>,
    group: Uuid,
    name: String,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.group_rename(now(), group, &name)).await
}

/// Removes a group, or brings it back.
#[tauri::command]
pub async fn group_remove(
    worker: State<'_, Worker>,
    group: Uuid,
    back: bool,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.group_remove(now(), group, back)).await
}

/// Says who is in a group.
#[tauri::command]
pub async fn group_members(
    worker: State<'_, Worker>,
    group: Uuid,
    members: Vec<PersonId>,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.group_members(now(), group, members)).await
}

/// Lays clients aside, or brings them back.
#[tauri::command]
pub async fn clients_archive(
    worker: State<'_, Worker>,
    people: Vec<PersonId>,
    back: bool,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.clients_archive(now(), people, back)).await
}

/// The safety page of a client, or of whoever is open.
#[tauri::command]
pub async fn safety_view(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.safety_view(now(), person)).await
}

/// Records a stage.
#[tauri::command]
pub async fn stage_record(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    stage: Stage,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.stage_record(now(), person, stage)).await
}

/// Takes back a stage that was recorded by mistake.
#[tauri::command]
pub async fn stage_take_back(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    record: RecordId,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.stage_take_back(now(), person, record)).await
}

/// Says that training is taken up again after a birth or a loss.
#[tauri::command]
pub async fn take_up(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    note: String,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.take_up(now(), person, &note)).await
}

/// Records a clearance.
#[tauri::command]
pub async fn clearance_record(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    form: ClearanceForm,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.clearance_record(now(), person, form)).await
}

/// Records how the checks before impact went.
#[tauri::command]
pub async fn impact_record(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    form: ImpactForm,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.impact_record(now(), person, form)).await
}

/// Sets a rule for a client.
#[tauri::command]
pub async fn rule_set(
    worker: State<'_, Worker>,
    person: PersonId,
    setting: RuleSetting,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.rule_set(now(), person, setting)).await
}

/// Records an intake.
#[tauri::command]
pub async fn intake_record(
    worker: State<'_, Worker>,
    person: Option<PersonId>,
    form: IntakeForm,
) -> Result<SafetyView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.intake_record(now(), person, form)).await
}

/// Gives a client a programme.
#[tauri::command]
pub async fn programme_give(
    worker: State<'_, Worker>,
    person: PersonId,
    programme: ProgrammeId,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_give(now(), person, programme)).await
}

/// Gives several clients a programme, each with the day on which it begins.
#[tauri::command]
pub async fn programme_give_to(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    to: Vec<GiveTo>,
) -> Result<RosterView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_give_to(now(), programme, &to)).await
}

/// What the next plan files change for whom.
#[tauri::command]
pub async fn revisions(
    worker: State<'_, Worker>,
    people: Vec<PersonId>,
) -> Result<Vec<RevisionView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.revisions(now(), &people)).await
}

/// Writes plan files into one folder, with a receipt: for these people, or for all for whom something is new.
#[tauri::command]
pub async fn plans_write(
    worker: State<'_, Worker>,
    people: Option<Vec<PersonId>>,
    folder: Option<PathBuf>,
    language: String,
) -> Result<ReceiptView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = folder.unwrap_or_else(|| newel.plans_folder(now().date_naive()));
        let whom = people.map_or(Whom::AllDue, Whom::These);
        newel.profile()?.plans_write(&folder, now(), &whom, &language)
    })
    .await
}

/// Takes back something the coach wrote.
#[tauri::command]
pub async fn record_withdraw_for(
    worker: State<'_, Worker>,
    person: PersonId,
    record: RecordId,
) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.record_withdraw_for(now(), person, record)).await
}

/// The Desk.
#[tauri::command]
pub async fn desk_view(worker: State<'_, Worker>) -> Result<DeskView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.desk_view(now())).await
}

/// One client's story.
#[tauri::command]
pub async fn client_view(worker: State<'_, Worker>, person: PersonId) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.client_view(now(), person)).await
}

/// Writes a note to a client.
#[tauri::command]
pub async fn note_write(
    worker: State<'_, Worker>,
    person: PersonId,
    text: String,
) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.note_write(now(), person, &text)).await
}

/// Answers a hold.
#[tauri::command]
pub async fn hold_answer(
    worker: State<'_, Worker>,
    person: PersonId,
    hold: RecordId,
    answer: HoldAnswer,
    note: String,
) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.hold_answer(now(), person, hold, answer, &note)).await
}

/// Sets level, variant or load for a client.
#[tauri::command]
pub async fn override_write(
    worker: State<'_, Worker>,
    person: PersonId,
    form: OverrideForm,
) -> Result<ClientView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.override_write(now(), person, form)).await
}

/// Writes a plan file.
#[tauri::command]
pub async fn plan_write(
    worker: State<'_, Worker>,
    person: PersonId,
    path: Option<PathBuf>,
) -> Result<WrittenView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = newel.out_folder();
        newel.profile()?.plan_write(&folder, path, now(), person)
    })
    .await
}

/// The Planbook.
#[tauri::command]
pub async fn planbook_view(worker: State<'_, Worker>) -> Result<PlanbookView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.planbook_view()).await
}

/// The Train screen with the next session, when one has just ended.
#[tauri::command]
pub async fn train_onward(worker: State<'_, Worker>) -> Result<TrainView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.train_onward(now())).await
}

/// Ladders with what of them is in the coach's own words.
#[tauri::command]
pub async fn words_view(worker: State<'_, Worker>) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.words_view()).await
}

/// Puts the coach's own words and picture in the place of a variant's.
#[tauri::command]
pub async fn words_save(
    worker: State<'_, Worker>,
    form: WordsForm,
) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.words_save(now(), form)).await
}

/// The words of all that is a coach's own, by the ids of messages.
#[tauri::command]
pub async fn own_names(worker: State<'_, Worker>) -> Result<BTreeMap<String, String>, ErrorView> {
    ask(&worker, move |newel| Ok(newel.profile()?.own_names())).await
}

/// Makes or changes a variant of the coach's own.
#[tauri::command]
pub async fn own_save(worker: State<'_, Worker>, form: OwnForm) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.own_save(now(), form)).await
}

/// Names a ladder of the coach's own, puts it away or takes it out again.
#[tauri::command]
pub async fn own_ladder(
    worker: State<'_, Worker>,
    form: OwnLadderForm,
) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.own_ladder(now(), form)).await
}

/// Puts a variant of the coach's own away, or takes it out again.
#[tauri::command]
pub async fn own_retire(
    worker: State<'_, Worker>,
    variant: VariantId,
    retired: bool,
) -> Result<Vec<LadderWordsView>, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.own_retire(now(), &variant, retired)).await
}

/// A picture of the coach's, by its name.
#[tauri::command]
pub async fn picture(worker: State<'_, Worker>, name: String) -> Result<PictureView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.picture(&name)).await
}

/// Begins a programme of the coach's own: blank, or as a copy.
#[tauri::command]
pub async fn programme_new(
    worker: State<'_, Worker>,
    title: String,
    from: Option<ProgrammeId>,
) -> Result<ProgrammeId, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_new(now(), &title, from)).await
}

/// Makes one change to a programme.
#[tauri::command]
pub async fn programme_edit(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    edit: Edit,
) -> Result<PlanbookView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_edit(now(), programme, &edit)).await
}

/// Undoes the last change to a programme, or does it again.
#[tauri::command]
pub async fn programme_turn(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    back: bool,
) -> Result<PlanbookView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_turn(programme, back)).await
}

/// What there is to say about a programme while it is written.
#[tauri::command]
pub async fn programme_advice(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    look: Option<LookFor>,
) -> Result<AdviceView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.advice_view(now(), programme, look)).await
}

/// Puts a programme away, or takes it out again.
#[tauri::command]
pub async fn programme_away(
    worker: State<'_, Worker>,
    programme: ProgrammeId,
    away: bool,
) -> Result<PlanbookView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.programme_away(programme, away)).await
}

/// Who does what in a session that several train together.
#[tauri::command]
pub async fn class_view(worker: State<'_, Worker>, form: ClassForm) -> Result<ClassView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.class_view(now(), &form)).await
}

/// Writes down how many of a thing are in the room.
#[tauri::command]
pub async fn room_set(
    worker: State<'_, Worker>,
    form: ClassForm,
    what: Laid,
    count: Option<u16>,
) -> Result<ClassView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.room_set(now(), &form, what, count)).await
}

/// Sets what a client does in one cell of a class, with a note.
#[tauri::command]
pub async fn class_set(
    worker: State<'_, Worker>,
    form: ClassForm,
    person: PersonId,
    change: OverrideForm,
) -> Result<ClassView, ErrorView> {
    ask(&worker, move |newel| newel.profile()?.class_set(now(), &form, person, change)).await
}

/// Writes a document as PDF.
#[tauri::command]
pub async fn print_write(
    worker: State<'_, Worker>,
    form: PrintForm,
    path: Option<PathBuf>,
) -> Result<PrintedView, ErrorView> {
    ask(&worker, move |newel| {
        let folder = newel.out_folder();
        newel.profile()?.print_write(&folder, path, now(), &form)
    })
    .await
}
