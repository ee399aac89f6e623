// What she is about to log: prefilled from the proposal, stepped only where it differs.
import { secondsLeft, secondsSince } from '$lib/clock';
import type { Load, Reserve, SetForm, Target, WorkView } from '$lib/types';
import { sameLoad } from '$lib/words';
import type { Memory } from './memory';

/** Seconds that one tap adds to a timed set. */
const SECONDS_STEP = 5;

/** The tap on the row: 0 to 4 are said exactly, the last one means that many or more. */
export function reserveOf(tap: number): Reserve {
  return tap >= 5 ? { said: 'at_least', reps: 5 } : { said: 'exactly', reps: tap };
}

/** Reps or seconds and a load, with their steps. Used for a set to log and for one to correct. */
export class Amounts {
  count = $state(0);
  load = $state.raw<Load>({ make: 'nothing' });
  readonly by: Target['by'];
  readonly loads: readonly Load[];

  constructor(target: Target, load: Load, loads: readonly Load[]) {
    this.by = target.by;
    this.count = target.count;
    this.load = load;
    // A load that her kit does not list (an older kit, a plan of the coach's) stays reachable.
    this.loads = loads.length > 0 && !loads.some((other) => sameLoad(other, load)) ? [load, ...loads] : loads;
  }

  get done(): Target {
    return { by: this.by, count: this.count };
  }

  get step(): number {
    return this.by === 'seconds' ? SECONDS_STEP : 1;
  }

  fewer(): void {
    this.count = Math.max(0, this.count - this.step);
  }

  more(): void {
    this.count += this.step;
  }

  get #place(): number {
    return this.loads.findIndex((other) => sameLoad(other, this.load));
  }

  get canLighten(): boolean {
    return this.#place > 0;
  }

  get canAdd(): boolean {
    return this.#place >= 0 && this.#place < this.loads.length - 1;
  }

  lighten(): void {
    this.load = this.loads[this.#place - 1] ?? this.load;
  }

  add(): void {
    this.load = this.loads[this.#place + 1] ?? this.load;
  }
}

/** Names one set to do: while it stays the same, what was stepped stays too. */
export const setName = (run: string, work: WorkView): string =>
  [run, work.slot, work.round, work.side ?? '', work.variant].join('/');

export class SetEntry extends Amounts {
  readonly name: string;
  /** When the timer of a timed set began, ms since 1970; null when it does not run. */
  from = $state<number | null>(null);
  /** True once it ran. */
  timed = $state(false);

  constructor(
    readonly run: string,
    readonly work: WorkView,
    readonly memory: Memory,
  ) {
    super(work.target, work.load, work.loads);
    this.name = setName(run, work);
    this.from = memory.timerFrom(this.name);
  }

  form(reserve: Reserve | null): SetForm {
    const { slot, round, side, variant } = this.work;
    return { run: this.run, slot, round, side, variant, load: this.load, done: this.done, reserve };
  }

  // --- the timer of a timed set, by deadline ---

  start(now: number): void {
    this.from = now;
    this.memory.runTimer(this.name, now);
  }

  /** Seconds to go; the whole time while it does not run. */
  left(now: number): number {
    return this.from === null
      ? this.work.target.count
      : secondsLeft(this.from + this.work.target.count * 1000, now);
  }

  /** Ends it at its deadline, also when the deadline passed while nobody looked. True when that happened just now. */
  lookAt(now: number): boolean {
    if (this.from === null || this.left(now) > 0) return false;
    this.#end(this.work.target.count);
    return true;
  }

  /** She stops before the deadline: what she held is what counts. */
  stop(now: number): void {
    if (this.from !== null) this.#end(Math.min(this.work.target.count, secondsSince(this.from, now)));
  }

  #end(seconds: number): void {
    this.count = seconds;
    this.from = null;
    this.timed = true;
    this.memory.endTimer();
  }
}
