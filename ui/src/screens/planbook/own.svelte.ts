// What the coach writes for a move of her own before it is kept. No rule lives here: the core says what cannot be.
import { builtInCues, slipsOf } from '$lib/cues';
import type {
  Caution,
  LadderWordsView,
  Loading,
  OwnForm,
  OwnPlace,
  Pattern,
  Position,
  ReadyMark,
  Thing,
  VariantWordsView,
} from '$lib/types';
import { isOwn, say, variantName } from '$lib/words';

export const CAUTIONS: Caution[] = ['one_sided', 'wrist', 'midline', 'overhead', 'impact', 'pelvic_hold'];
export const POSITIONS: Position[] = [
  'standing',
  'seated',
  'kneeling',
  'all_fours',
  'side_lying',
  'incline',
  'supine',
  'prone',
  'hanging',
];
export const THINGS: Thing[] = ['bench', 'step', 'straps', 'pull_up_bar', 'loop_band'];
/** Patterns that a ladder of hers may have: none that goes on while all else rests. */
export const PATTERNS: Pattern[] = [
  'squat',
  'hinge',
  'bridge',
  'single_leg',
  'horizontal_push',
  'vertical_push',
  'horizontal_pull',
  'vertical_pull',
  'hip_abduction',
  'hip_adduction',
  'calf',
  'arms',
  'carry',
  'balance',
  'trunk',
  'impact',
];
export const CUES = 4;
export const SLIPS = 2;

export type Said = 'yes' | 'no' | 'open';
export type Held = Loading['with'];
/** As far as a band is pulled where nothing else is known: twice its resting length. */
const STRETCH = 1;
const REPS = 12;
const SECONDS = 30;

const empty = (n: number, texts: string[] = []): string[] =>
  Array.from({ length: n }, (_, i) => texts[i] ?? '');

/** Where a move of hers is to stand. */
export type Where = { new: true } | { new: false; ladder: string; level: number };

export class OwnDraft {
  readonly where: Where;
  /** The move that is changed, if one is. */
  readonly id: string | null;
  like = $state('');
  ladder = $state('');
  pattern = $state<Pattern>('squat');
  name = $state('');
  position = $state<Position>('standing');
  needs = $state<Thing[]>([]);
  held = $state<Held>('body');
  oneSide = $state(false);
  said = $state<Record<Caution, Said>>({
    one_sided: 'open',
    wrist: 'open',
    midline: 'open',
    overhead: 'open',
    impact: 'open',
    pelvic_hold: 'open',
  });
  counted = $state<ReadyMark['by']>('reps');
  count = $state<number | null>(REPS);
  setup = $state('');
  breath = $state('');
  cues = $state<string[]>(empty(CUES));
  slips = $state<string[]>(empty(SLIPS));
  private of: VariantWordsView | null = null;

  constructor(where: Where, changed: VariantWordsView | null = null) {
    this.where = where;
    this.id = changed?.variant ?? null;
    if (changed) {
      this.take(changed);
      this.name = variantName(changed.variant);
    }
  }

  /** Everything as that one has it, but for its name, which two moves do not share. */
  copy(of: VariantWordsView): void {
    this.like = of.variant;
    this.take(of);
    this.name = '';
  }

  /** Back to nothing. */
  clear(): void {
    const fresh = new OwnDraft(this.where);
    this.like = '';
    this.of = null;
    this.position = fresh.position;
    this.needs = [];
    this.held = fresh.held;
    this.oneSide = false;
    this.said = fresh.said;
    this.counted = fresh.counted;
    this.count = fresh.count;
    this.setup = '';
    this.breath = '';
    this.cues = empty(CUES);
    this.slips = empty(SLIPS);
  }

  private take(of: VariantWordsView): void {
    this.of = of;
    this.position = of.position;
    this.needs = [...of.needs];
    this.held = of.loading.with;
    this.oneSide = of.per_side;
    const answer = (caution: Caution): Said => {
      // A built-in move has every question answered; of hers, what she did not answer stays open.
      if (!of.yours) return of.cautions.includes(caution) ? 'yes' : 'no';
      const hers = of.yours.cautions[caution];
      return hers === undefined ? 'open' : hers ? 'yes' : 'no';
    };
    for (const caution of CAUTIONS) this.said[caution] = answer(caution);
    this.counted = of.ready.by;
    this.count = this.at(of.ready);
    const part = (name: string): string => {
      const id = `variant-${of.variant}.${name}`;
      return say(id);
    };
    this.setup = part('setup');
    this.breath = part('breath');
    this.cues = empty(CUES, of.own?.cues.length ? of.own.cues : builtInCues(of.variant, of.cues));
    this.slips = empty(SLIPS, slipsOf(of.variant));
  }

  private at(ready: ReadyMark): number {
    switch (ready.by) {
      case 'load':
        return ready.kg;
      case 'reps':
        return ready.reps;
      case 'seconds':
        return ready.seconds;
    }
  }

  /** How it can be loaded: help only as a copy of one that is helped, since how much of her is lifted has to be known. */
  get loadings(): Held[] {
    const all: Held[] = ['body', 'one', 'pair', 'barbell', 'band'];
    return this.of?.loading.with === 'assist' ? [...all, 'assist'] : all;
  }

  get isWeight(): boolean {
    return this.held === 'one' || this.held === 'pair' || this.held === 'barbell';
  }

  /** What the next step can be measured by. */
  get counts(): ReadyMark['by'][] {
    const of: ReadyMark['by'][] = ['reps', 'seconds'];
    return this.isWeight || (this.held === 'assist' && this.of?.ready.by === 'load') ? [...of, 'load'] : of;
  }

  hold(held: Held): void {
    this.held = held;
    if (!this.counts.includes(this.counted)) this.measure('reps');
  }

  measure(by: ReadyMark['by']): void {
    this.counted = by;
    this.count = by === 'reps' ? REPS : by === 'seconds' ? SECONDS : null;
  }

  /** What a change makes of it: another move in its place, since what was trained stays what it was. */
  get becomesAnother(): boolean {
    if (this.id === null || !this.of) return false;
    const timed = (by: ReadyMark['by']): boolean => by === 'seconds';
    return (
      this.position !== this.of.position ||
      this.held !== this.of.loading.with ||
      this.oneSide !== this.of.per_side ||
      timed(this.counted) !== timed(this.of.ready.by)
    );
  }

  private get loading(): Loading {
    const stretch = this.of && 'stretch' in this.of.loading ? this.of.loading.stretch : STRETCH;
    return this.held === 'band' || this.held === 'assist'
      ? { with: this.held, stretch }
      : { with: this.held };
  }

  private get ready(): ReadyMark {
    const count = this.count ?? 0;
    switch (this.counted) {
      case 'load':
        return { by: 'load', kg: count };
      case 'reps':
        return { by: 'reps', reps: Math.round(count) };
      case 'seconds':
        return { by: 'seconds', seconds: Math.round(count) };
    }
  }

  get isWhole(): boolean {
    const named = this.name.trim() !== '' && (!this.where.new || this.ladder.trim() !== '');
    return named && this.count !== null && !Number.isNaN(this.count);
  }

  toForm(): OwnForm {
    const cautions: Partial<Record<Caution, boolean>> = {};
    for (const caution of CAUTIONS) {
      if (this.said[caution] !== 'open') cautions[caution] = this.said[caution] === 'yes';
    }
    const place: OwnPlace = this.where.new
      ? { place: 'new_ladder', name: this.ladder.trim(), pattern: this.pattern }
      : { place: 'at', ladder: this.where.ladder, level: this.where.level };
    const kept = this.of?.loading.with === this.held ? this.of.usual_start : null;
    return {
      id: this.id,
      place,
      like: this.like === '' ? null : this.like,
      name: this.name.trim(),
      position: this.position,
      needs: this.needs,
      loading: this.loading,
      per_side: this.oneSide,
      cautions,
      ready: this.ready,
      usual_start: kept,
      setup: this.setup,
      breath: this.breath,
      cues: this.cues,
      slips: this.slips,
    };
  }
}

/** The move to copy that is offered first: the first of hers or ours at that level, or at the one below. */
export function neighbour(ladders: readonly LadderWordsView[], where: Where): VariantWordsView | null {
  if (where.new) return null;
  const levels = ladders.find((l) => l.ladder === where.ladder)?.levels ?? [];
  const near = levels[where.level] ?? levels[where.level - 1] ?? [];
  return near.find((v) => !isOwn(v.variant)) ?? near[0] ?? null;
}
