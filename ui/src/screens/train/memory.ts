// What this page remembers beside the log: which rest was left, seconds added to it, which block card was read, which
// mark was passed by without words, when a timed set began. None of it is training: losing it shows a card once more.

/** The part of Storage that is used; a test hands in a Map-like one. */
export interface Store {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

const KEY = 'newel.train';

interface Kept {
  restLeft: string;
  extraFor: string;
  extra: number;
  blocks: string[];
  marks: string[];
  timerFor: string;
  timerFrom: number;
}

const EMPTY: Kept = {
  restLeft: '',
  extraFor: '',
  extra: 0,
  blocks: [],
  marks: [],
  timerFor: '',
  timerFrom: 0,
};

/** Lists stay short: the newest matter. */
const MOST = 40;

export class Memory {
  #kept: Kept;
  readonly #store: Store | null;

  constructor(store: Store | null) {
    this.#store = store;
    this.#kept = { ...EMPTY };
    try {
      const text = store?.getItem(KEY);
      if (text) this.#kept = { ...EMPTY, ...(JSON.parse(text) as Partial<Kept>) };
    } catch {
      // Unreadable or barred: begin anew.
    }
  }

  #keep(change: Partial<Kept>): void {
    this.#kept = { ...this.#kept, ...change };
    try {
      this.#store?.setItem(KEY, JSON.stringify(this.#kept));
    } catch {
      // A full or barred store: it is remembered until the page closes.
    }
  }

  restLeft(after: string): boolean {
    return this.#kept.restLeft === after;
  }

  leaveRest(after: string): void {
    this.#keep({ restLeft: after });
  }

  /** Seconds added to (or, below zero, taken from) the rest after a record. */
  extra(after: string): number {
    return this.#kept.extraFor === after ? this.#kept.extra : 0;
  }

  addExtra(after: string, seconds: number): void {
    this.#keep({ extraFor: after, extra: this.extra(after) + seconds });
  }

  blockRead(run: string, block: string): boolean {
    return this.#kept.blocks.includes(`${run}/${block}`);
  }

  readBlock(run: string, block: string): void {
    this.#keep({ blocks: [...this.#kept.blocks, `${run}/${block}`].slice(-MOST) });
  }

  markPassed(mark: string): boolean {
    return this.#kept.marks.includes(mark);
  }

  passMark(mark: string): void {
    this.#keep({ marks: [...this.#kept.marks, mark].slice(-MOST) });
  }

  /** When the timed set of this name began (ms since 1970), if it is running. */
  timerFrom(set: string): number | null {
    return this.#kept.timerFor === set && this.#kept.timerFrom > 0 ? this.#kept.timerFrom : null;
  }

  runTimer(set: string, from: number): void {
    this.#keep({ timerFor: set, timerFrom: from });
  }

  endTimer(): void {
    this.#keep({ timerFor: '', timerFrom: 0 });
  }
}
