// Where a client is to start, as the coach sets it: a level, a variant, a load, each left to the rules unless chosen.
import { readWeight } from '../kit/kit.svelte';
import type { LadderChoice, LadderView, Load, MassUnit, OverrideForm } from '$lib/types';

/** How the start load is made; `leave` leaves it to the rules. */
export type LoadMake = 'leave' | 'nothing' | 'one' | 'pair' | 'barbell';
export const MAKES: readonly LoadMake[] = ['leave', 'nothing', 'one', 'pair', 'barbell'];

export class OverrideDraft {
  ladder = $state('');
  /** Level as an index, or -1 to leave it to the rules. */
  level = $state(-1);
  variant = $state('');
  make = $state<LoadMake>('leave');
  /** Weight of one, or of the empty bar. */
  value = $state<number | null>(null);
  /** What each side of a bar bears. */
  side = $state<number | null>(null);
  unit = $state<MassUnit>('kg');
  note = $state('');
  readonly ladders: readonly LadderChoice[];
  readonly stands: readonly LadderView[];

  /** Begins at the ladder named, with its unit and with nothing set. */
  constructor(ladders: readonly LadderChoice[], stands: readonly LadderView[], ladder?: string) {
    this.ladders = ladders;
    this.stands = stands;
    this.chooseLadder(ladder ?? ladders[0]?.ladder ?? '');
  }

  get levels(): readonly (readonly string[])[] {
    return this.ladders.find((l) => l.ladder === this.ladder)?.levels ?? [];
  }

  /** The variants of the chosen level, or of all levels while none is chosen. */
  get variants(): readonly string[] {
    return this.level < 0 ? this.levels.flat() : (this.levels[this.level] ?? []);
  }

  get stand(): LadderView | null {
    return this.stands.find((l) => l.ladder === this.ladder) ?? null;
  }

  chooseLadder(ladder: string): void {
    this.ladder = ladder;
    this.level = -1;
    this.variant = '';
    this.make = 'leave';
    const load = this.stand?.load;
    if (load && (load.make === 'one' || load.make === 'pair')) this.unit = load.weight.unit;
    if (load?.make === 'barbell') this.unit = load.bar.unit;
  }

  chooseLevel(level: number): void {
    this.level = level;
    if (!this.variants.includes(this.variant)) this.variant = '';
  }

  /** The load chosen: `undefined` while it is not said in full, null when it is left to the rules. */
  get load(): Load | null | undefined {
    if (this.make === 'leave') return null;
    if (this.make === 'nothing') return { make: 'nothing' };
    const weight = readWeight(this.value, this.unit);
    if (!weight) return undefined;
    if (this.make === 'barbell') {
      const side = readWeight(this.side, this.unit);
      return { make: 'barbell', bar: weight, plates: side ? [side] : [] };
    }
    return { make: this.make, weight };
  }

  /** What keeps it from being set. */
  get lacks(): 'nothing' | 'note' | null {
    const load = this.load;
    if (load === undefined || (this.level < 0 && this.variant === '' && load === null)) return 'nothing';
    return this.note.trim() === '' ? 'note' : null;
  }

  toForm(): OverrideForm | null {
    const load = this.load;
    if (this.lacks !== null || load === undefined) return null;
    return {
      start: {
        ladder: this.ladder,
        level: this.level < 0 ? null : this.level,
        variant: this.variant || null,
        load,
      },
      note: this.note.trim(),
    };
  }
}
