// The only file that talks to the shell. Each function calls one command and gives it its types; it adds nothing, but that
// what may bring names of a coach's own is answered once these are known.
// A command that cannot do what was asked rejects with an ErrorView (see `errorOf`).
import { invoke } from '@tauri-apps/api/core';
import type {
  PrintedView,
  PrintForm,
  Laid,
  ClassView,
  ClassForm,
  AdviceView,
  LookFor,
  CheckInForm,
  AppView,
  ChosenFile,
  ClearanceForm,
  ClientForm,
  ClientView,
  CorrectionForm,
  DeskView,
  Edit,
  ErrorView,
  FinishForm,
  GiveTo,
  HoldAnswer,
  ImpactForm,
  IntakeForm,
  Kit,
  KitView,
  LadderWordsView,
  Load,
  MarkedView,
  NextDay,
  OverrideForm,
  OwnForm,
  OwnLadderForm,
  PathView,
  PictureView,
  PlanbookView,
  ReceiptView,
  RestrictionKind,
  RevisionView,
  Role,
  RoomsView,
  RosterView,
  RuleSetting,
  SafetyView,
  SendView,
  SetForm,
  Stage,
  Symptom,
  TakeInView,
  TrainView,
  Weight,
  WordsForm,
  WrittenView,
} from './types';
import { setOwnNames } from './words';

/** Gives an answer once the names of a coach's own are known that it may speak of. */
async function named<T>(answer: Promise<T>): Promise<T> {
  const given = await answer;
  try {
    setOwnNames(await invoke<Record<string, string>>('own_names'));
  } catch {
    // No profile is open: there is nobody whose own they could be.
    setOwnNames({});
  }
  return given;
}

// --- the app and its profiles ---

export const appView = (): Promise<AppView> => named(invoke('app_view'));
export const profileOpen = (key: string): Promise<AppView> => named(invoke('profile_open', { key }));
export const profileClose = (): Promise<AppView> => invoke('profile_close');
export const profileNew = (name: string, role: Role): Promise<AppView> =>
  invoke('profile_new', { name, role });
export const profileFromPlan = (text: string): Promise<AppView> =>
  named(invoke('profile_from_plan', { text }));
/** Adds the invented clients and their coach; takes a few seconds. */
export const demoMake = (): Promise<AppView> => invoke('demo_make');
export const roleSet = (role: Role): Promise<AppView> => named(invoke('role_set', { role }));

// --- Train ---

export const trainView = (): Promise<TrainView> => invoke('train_view');
/** The next session, when one has just ended: a second one on the same day. */
export const trainOnward = (): Promise<TrainView> => invoke('train_onward');
/** A look at the programme that waits for its day. */
export const trainEarly = (): Promise<TrainView> => invoke('train_early');
export const sessionBegin = (form: CheckInForm): Promise<TrainView> => invoke('session_begin', { form });
/** By the programme that waits for its day. */
export const sessionBeginEarly = (form: CheckInForm): Promise<TrainView> =>
  invoke('session_begin_early', { form });
export const nextDayAnswer = (run: string, answer: NextDay, symptoms: Symptom[]): Promise<TrainView> =>
  invoke('next_day_answer', { run, answer, symptoms });
/** Resolves once the set is on disk: only then may the card move on. */
export const setLog = (form: SetForm): Promise<TrainView> => invoke('set_log', { form });
export const setCorrect = (form: CorrectionForm): Promise<TrainView> => invoke('set_correct', { form });
/** Takes back a set or a mark. */
export const recordWithdraw = (record: string): Promise<TrainView> => invoke('record_withdraw', { record });
export const setSkip = (run: string, slot: string, round: number): Promise<TrainView> =>
  invoke('set_skip', { run, slot, round });
export const optionChoose = (run: string, slot: string, variant: string): Promise<TrainView> =>
  invoke('option_choose', { run, slot, variant });
/** Resolves once the mark is on disk, before anything is asked. */
export const mark = (run: string, atRest: boolean): Promise<MarkedView> => invoke('mark', { run, atRest });
export const markSay = (mark: string, symptom: Symptom): Promise<MarkedView> =>
  invoke('mark_say', { mark, symptom });
export const sessionShorten = (run: string): Promise<TrainView> => invoke('session_shorten', { run });
export const sessionFinish = (form: FinishForm): Promise<TrainView> => invoke('session_finish', { form });
export const tenReps = (variant: string, load: Load): Promise<TrainView> =>
  invoke('ten_reps', { variant, load });
export const numbersSave = (emergency: string | null, clinic: string | null): Promise<TrainView> =>
  invoke('numbers_save', { emergency, clinic });

// --- Path, Kit, Send ---

export const pathView = (): Promise<PathView> => invoke('path_view');
export const kitView = (): Promise<KitView> => invoke('kit_view');
export const kitSave = (kit: Kit): Promise<KitView> => invoke('kit_save', { kit });
export const bodyMassSave = (mass: Weight): Promise<KitView> => invoke('body_mass_save', { mass });
export const sendView = (): Promise<SendView> => invoke('send_view');
export const logWrite = (path: string | null): Promise<WrittenView> => invoke('log_write', { path });
/** The system's own dialog; null when she closes it. */
export const chooseSavePath = (suggested: string): Promise<string | null> =>
  invoke('choose_save_path', { suggested });
/** The system's own dialog for a folder; null when she closes it. */
export const chooseFolder = (): Promise<string | null> => invoke('choose_folder');
export const takeIn = (files: ChosenFile[]): Promise<TakeInView> => named(invoke('take_in', { files }));

// --- safety: of a client, or of whoever is open (person null) ---

export const safetyView = (person: string | null): Promise<SafetyView> => invoke('safety_view', { person });
export const stageRecord = (person: string | null, stage: Stage): Promise<SafetyView> =>
  invoke('stage_record', { person, stage });
export const stageTakeBack = (person: string | null, record: string): Promise<SafetyView> =>
  invoke('stage_take_back', { person, record });
export const takeUp = (person: string | null, note: string): Promise<SafetyView> =>
  invoke('take_up', { person, note });
export const clearanceRecord = (person: string | null, form: ClearanceForm): Promise<SafetyView> =>
  invoke('clearance_record', { person, form });
export const impactRecord = (person: string | null, form: ImpactForm): Promise<SafetyView> =>
  invoke('impact_record', { person, form });
export const ruleSet = (person: string, setting: RuleSetting): Promise<SafetyView> =>
  invoke('rule_set', { person, setting });
export const intakeRecord = (person: string | null, form: IntakeForm): Promise<SafetyView> =>
  invoke('intake_record', { person, form });

// --- the coach ---

export const rosterView = (): Promise<RosterView> => invoke('roster_view');
export const clientAdd = (form: ClientForm): Promise<RosterView> => invoke('client_add', { form });
export const clientSave = (person: string, form: ClientForm): Promise<RosterView> =>
  invoke('client_save', { person, form });
export const groupMake = (name: string, members: string[]): Promise<RosterView> =>
  invoke('group_make', { name, members });
export const groupRename = (group: string, name: string): Promise<RosterView> =>
  invoke('group_rename', { group, name });
/** Removes a group, or brings a removed one back. */
export const groupRemove = (group: string, back: boolean): Promise<RosterView> =>
  invoke('group_remove', { group, back });
/** Who is in a group, in order. */
export const groupMembers = (group: string, members: string[]): Promise<RosterView> =>
  invoke('group_members', { group, members });
/** Lays clients aside, or brings them back. */
export const clientsArchive = (people: string[], back: boolean): Promise<RosterView> =>
  invoke('clients_archive', { people, back });
export const restrictionAdd = (
  person: string,
  what: RestrictionKind,
  until: string | null,
  note: string,
): Promise<RosterView> => invoke('restriction_add', { person, what, until, note });
export const recordWithdrawFor = (person: string, record: string): Promise<ClientView> =>
  invoke('record_withdraw_for', { person, record });
/** Each with the day on which it begins; at once without one. */
export const programmeGiveTo = (programme: string, to: GiveTo[]): Promise<RosterView> =>
  invoke('programme_give_to', { programme, to });
/** What the next plan files change for whom; writes nothing. */
export const revisions = (people: string[]): Promise<RevisionView[]> => invoke('revisions', { people });
/** Plan files into one folder with a receipt; `people` null means all for whom something is new. */
export const plansWrite = (
  people: string[] | null,
  folder: string | null,
  language: string,
): Promise<ReceiptView> => invoke('plans_write', { people, folder, language });
export const programmeGive = (person: string, programme: string): Promise<RosterView> =>
  invoke('programme_give', { person, programme });
export const deskView = (): Promise<DeskView> => invoke('desk_view');
export const clientView = (person: string): Promise<ClientView> => named(invoke('client_view', { person }));
export const noteWrite = (person: string, text: string): Promise<ClientView> =>
  invoke('note_write', { person, text });
export const holdAnswer = (
  person: string,
  hold: string,
  answer: HoldAnswer,
  note: string,
): Promise<ClientView> => invoke('hold_answer', { person, hold, answer, note });
export const overrideWrite = (person: string, form: OverrideForm): Promise<ClientView> =>
  invoke('override_write', { person, form });
export const planWrite = (person: string, path: string | null): Promise<WrittenView> =>
  invoke('plan_write', { person, path });
export const planbookView = (): Promise<PlanbookView> => invoke('planbook_view');
/** Begins a programme, blank or as a copy; gives its id. */
export const programmeNew = (title: string, from: string | null): Promise<string> =>
  invoke('programme_new', { title, from });
/** Resolves once the change is on disk. */
export const programmeEdit = (programme: string, edit: Edit): Promise<PlanbookView> =>
  invoke('programme_edit', { programme, edit });
export const programmeTurn = (programme: string, back: boolean): Promise<PlanbookView> =>
  invoke('programme_turn', { programme, back });
export const programmeAdvice = (programme: string, look: LookFor | null): Promise<AdviceView> =>
  invoke('programme_advice', { programme, look });
/** What a programme, as it is written now, changes for those to whom it was given. */
export const revisionsBy = (programme: string): Promise<RevisionView[]> =>
  invoke('revisions_by', { programme });
export const programmeAway = (programme: string, away: boolean): Promise<PlanbookView> =>
  invoke('programme_away', { programme, away });
export const wordsView = (): Promise<LadderWordsView[]> => invoke('words_view');
/** Makes or changes a variant of the coach's own, with its ladder where that is new. */
export const ownSave = (form: OwnForm): Promise<LadderWordsView[]> => named(invoke('own_save', { form }));
/** Names a ladder of the coach's own, puts it away or takes it out again. */
export const ownLadder = (form: OwnLadderForm): Promise<LadderWordsView[]> =>
  named(invoke('own_ladder', { form }));
export const ownRetire = (variant: string, retired: boolean): Promise<LadderWordsView[]> =>
  named(invoke('own_retire', { variant, retired }));
export const wordsSave = (form: WordsForm): Promise<LadderWordsView[]> => invoke('words_save', { form });
/** A picture of the coach's, by the hash of its bytes; on a client's device as well. */
export const picture = (name: string): Promise<PictureView> => invoke('picture', { name });

export const classView = (form: ClassForm): Promise<ClassView> => invoke('class_view', { form });
export const roomSet = (form: ClassForm, what: Laid, count: number | null): Promise<ClassView> =>
  invoke('room_set', { form, what, count });
export const classSet = (form: ClassForm, person: string, change: OverrideForm): Promise<ClassView> =>
  invoke('class_set', { form, person, change });
export const roomsView = (): Promise<RoomsView> => invoke('rooms_view');
/** Writes down the kit of a room; of a new one if `room` is null. */
export const roomSave = (room: string | null, name: string, kit: Kit): Promise<RoomsView> =>
  invoke('room_save', { room, name, kit });
export const roomRemove = (room: string): Promise<RoomsView> => invoke('room_remove', { room });
/** Writes a document as PDF, into the folder for files unless a path is given. */
export const printWrite = (form: PrintForm, path: string | null): Promise<PrintedView> =>
  invoke('print_write', { form, path });

// --- errors ---

/** Whatever was thrown, as an ErrorView: the shell's own as it came, anything else under the code `unexpected`. */
export function errorOf(thrown: unknown): ErrorView {
  if (typeof thrown === 'object' && thrown !== null && 'code' in thrown && 'message' in thrown) {
    const { code, message } = thrown;
    const remedy = 'remedy' in thrown ? thrown.remedy : '';
    if (typeof code === 'string' && typeof message === 'string')
      return { code, message, remedy: typeof remedy === 'string' ? remedy : '' };
  }
  const message = thrown instanceof Error ? thrown.message : String(thrown);
  return { code: 'unexpected', message, remedy: '' };
}
