// Train: what the cards do. Every answer of the shell is the whole screen anew; nothing about training is worked out here.
import * as bridge from '$lib/bridge';
import type {
  CorrectionForm,
  ErrorView,
  Load,
  MarkView,
  NextDay,
  CheckInForm,
  Reserve,
  SessionView,
  Symptom,
  TrainView,
} from '$lib/types';
import { cardOf, openMark, type Card } from './cards';
import type { SetEntry } from './entry.svelte';
import { Memory, type Store } from './memory';

export const UNSAID: Symptom = { kind: null, amount: null, place: null, words: null };

export class Train {
  view = $state.raw<TrainView | null>(null);
  error = $state.raw<ErrorView | null>(null);
  /** A command is under way; a second tap is not taken. */
  busy = $state(false);
  marking = $state.raw<MarkView | null>(null);
  /** The mark as she has described it so far. */
  draft = $state.raw<Symptom>(UNSAID);
  checkingIn = $state(false);
  paused = $state(false);
  finishing = $state(false);
  /** Counts what is logged on this page, so that a screen reader is told. */
  logged = $state(0);

  /** The last set that was tapped did not get onto the disk. */
  unlogged = $state(false);

  readonly memory: Memory;
  /** Moves when the memory changes: it is no reactive state itself. */
  #turn = $state(0);
  #says: Promise<void> = Promise.resolve();
  #latest = 0;

  constructor(store: Store | null = null) {
    this.memory = new Memory(store);
  }

  get session(): SessionView | null {
    return this.view?.state.state === 'session' ? this.view.state : null;
  }

  get card(): Card | null {
    void this.#turn;
    return this.view ? cardOf(this.view, this, this.memory) : null;
  }

  async begin(): Promise<void> {
    await this.#do(bridge.trainView);
    const open = this.view && openMark(this.view, this.memory);
    if (open) {
      this.marking = open;
      this.draft = open.symptom;
    }
  }

  /** Runs a command and shows its answer. False if it went wrong or another was under way. */
  async #do(command: () => Promise<TrainView>): Promise<boolean> {
    if (this.busy) return false;
    this.busy = true;
    this.error = null;
    try {
      this.view = await command();
      return true;
    } catch (thrown) {
      this.error = bridge.errorOf(thrown);
      return false;
    } finally {
      this.busy = false;
    }
  }

  // --- before ---

  answerNextDay(run: string, answer: NextDay, symptoms: Symptom[]): Promise<boolean> {
    const early = this.#early;
    return this.#do(async () => {
      const view = await bridge.nextDayAnswer(run, answer, symptoms);
      // What she was about to begin stays in view.
      return early ? bridge.trainEarly() : view;
    });
  }

  /** On to the next session, from the card of one that has just ended. */
  onward(): Promise<boolean> {
    return this.#do(bridge.trainOnward);
  }

  /** True while the programme that waits for its day is looked at. */
  get #early(): boolean {
    return this.view?.state.state === 'ready' && this.view.state.until_then !== null;
  }

  /** A look at the programme that waits for its day. */
  early(): Promise<boolean> {
    return this.#do(bridge.trainEarly);
  }

  /** Begins what is shown; what waits for its day if that is shown. */
  async start(form: CheckInForm): Promise<void> {
    const early = this.#early;
    if (await this.#do(() => (early ? bridge.sessionBeginEarly(form) : bridge.sessionBegin(form))))
      this.checkingIn = false;
  }

  // --- sets and rests ---

  /** The card moves on only when the set is on disk. */
  async log(entry: SetEntry, reserve: Reserve | null): Promise<boolean> {
    const ok = await this.#do(() => bridge.setLog(entry.form(reserve)));
    if (ok) this.logged += 1;
    this.unlogged = !ok;
    return ok;
  }

  correct(form: CorrectionForm): Promise<boolean> {
    return this.#do(() => bridge.setCorrect(form));
  }

  takeBack(record: string): Promise<boolean> {
    return this.#do(() => bridge.recordWithdraw(record));
  }

  skip(run: string, slot: string, round: number): Promise<boolean> {
    return this.#do(() => bridge.setSkip(run, slot, round));
  }

  choose(run: string, slot: string, variant: string): Promise<boolean> {
    return this.#do(() => bridge.optionChoose(run, slot, variant));
  }

  tenReps(variant: string, load: Load): Promise<boolean> {
    return this.#do(() => bridge.tenReps(variant, load));
  }

  shorten(run: string): Promise<boolean> {
    return this.#do(() => bridge.sessionShorten(run));
  }

  leaveRest(after: string): void {
    this.memory.leaveRest(after);
    this.#turn += 1;
  }

  stretchRest(after: string, seconds: number): void {
    this.memory.addExtra(after, seconds);
    this.#turn += 1;
  }

  /** The end of the rest in hand, with what she added, ms since 1970. */
  restEnds(): number {
    void this.#turn;
    const rest = this.session?.rest;
    return rest ? Date.parse(rest.until) + this.memory.extra(rest.after) * 1000 : 0;
  }

  readBlock(run: string, block: string): void {
    this.memory.readBlock(run, block);
    this.#turn += 1;
  }

  // --- marks ---

  /** Writes the mark first; the questions come when it is on disk. */
  async mark(atRest: boolean): Promise<void> {
    const run = this.session?.run;
    if (!run) return;
    this.draft = UNSAID;
    await this.#do(async () => {
      const made = await bridge.mark(run, atRest);
      this.marking = made.mark;
      return made.train;
    });
  }

  /** One more choice about the mark. Choices are written in the order in which they were made; the last answer is shown. */
  say(change: Partial<Symptom>): Promise<void> {
    const mark = this.marking?.mark;
    if (!mark) return Promise.resolve();
    const draft = { ...this.draft, ...change };
    this.draft = draft;
    const mine = ++this.#latest;
    this.#says = this.#says.then(async () => {
      try {
        const said = await bridge.markSay(mark, draft);
        if (mine !== this.#latest || this.marking?.mark !== mark) return;
        this.error = null;
        this.marking = said.mark;
        this.view = said.train;
      } catch (thrown) {
        this.error = bridge.errorOf(thrown);
      }
    });
    return this.#says;
  }

  /** "Not meant": the mark is taken back. */
  async notMeant(mark: string): Promise<void> {
    await this.#says;
    if (await this.#do(() => bridge.recordWithdraw(mark))) this.marking = null;
  }

  /** On with the session, as what follows from the mark says. */
  async goOn(): Promise<void> {
    await this.#says;
    if (this.marking) this.memory.passMark(this.marking.mark);
    this.marking = null;
  }

  async stopToday(): Promise<void> {
    await this.goOn();
    this.paused = false;
    this.finishing = true;
  }

  // --- the end ---

  async finish(
    run: string,
    effort: number | null,
    minutes: number | null,
    note: string,
    stopped_at: number | null = null,
  ): Promise<void> {
    const text = note.trim();
    const ok = await this.#do(() =>
      bridge.sessionFinish({ run, effort, minutes, note: text === '' ? null : text, stopped_at }),
    );
    if (ok) {
      this.finishing = false;
      this.paused = false;
      this.marking = null;
    }
  }

  keepNumbers(emergency: string, clinic: string): Promise<boolean> {
    const orNull = (text: string) => (text.trim() === '' ? null : text.trim());
    return this.#do(() => bridge.numbersSave(orNull(emergency), orNull(clinic)));
  }
}
