// A restriction as the coach fills it in, and how a restriction is said.
import type { Caution, LadderChoice, Position, RestrictionKind } from '$lib/types';
import { ladderName, say, variantName, weightWords } from '$lib/words';

export type Rules = RestrictionKind['rules_out'];

export const RULES: readonly Rules[] = [
  'position',
  'caution',
  'variant',
  'level_above',
  'all_load',
  'load_above',
  'reserve_below',
  'breath_holding',
];
export const POSITIONS: readonly Position[] = [
  'supine',
  'prone',
  'all_fours',
  'kneeling',
  'standing',
  'seated',
  'side_lying',
  'incline',
  'hanging',
];
export const CAUTIONS: readonly Caution[] = ['one_sided', 'wrist', 'midline', 'overhead', 'impact'];

export class RestrictionDraft {
  rules = $state<Rules>('position');
  position = $state<Position>('supine');
  caution = $state<Caution>('one_sided');
  ladder = $state('');
  variant = $state('');
  /** The highest level that stays open, 0 for the easiest. */
  level = $state(0);
  /** The most that may be held, in `unit`; on one ladder, or on all if that is empty. */
  most = $state<number | null>(null);
  unit = $state<'kg' | 'lb'>('kg');
  onLadder = $state('');
  /** The fewest left in reserve. */
  least = $state<number | null>(4);
  until = $state('');
  note = $state('');
  readonly ladders: readonly LadderChoice[];

  constructor(ladders: readonly LadderChoice[]) {
    this.ladders = ladders;
    this.chooseLadder(ladders[0]?.ladder ?? '');
  }

  get levels(): readonly (readonly string[])[] {
    return this.ladders.find((l) => l.ladder === this.ladder)?.levels ?? [];
  }

  chooseLadder(ladder: string): void {
    this.ladder = ladder;
    this.variant = this.levels[0]?.[0] ?? '';
    this.level = 0;
  }

  /** What is ruled out, or null while it is not said in full. */
  toKind(): RestrictionKind | null {
    switch (this.rules) {
      case 'position':
        return { rules_out: 'position', position: this.position };
      case 'caution':
        return { rules_out: 'caution', caution: this.caution };
      case 'variant':
        return this.variant ? { rules_out: 'variant', variant: this.variant } : null;
      case 'level_above':
        return this.ladder ? { rules_out: 'level_above', ladder: this.ladder, level: this.level } : null;
      case 'all_load':
        return { rules_out: 'all_load' };
      case 'load_above':
        return this.most !== null && this.most > 0
          ? {
              rules_out: 'load_above',
              most: { value: this.most, unit: this.unit },
              ladder: this.onLadder || null,
            }
          : null;
      case 'reserve_below':
        return this.least !== null && this.least >= 1 && this.least <= 10
          ? { rules_out: 'reserve_below', reps: Math.round(this.least) }
          : null;
      case 'breath_holding':
        return { rules_out: 'breath_holding' };
    }
  }
}

export function restrictionWords(kind: RestrictionKind): string {
  switch (kind.rules_out) {
    case 'position':
      return say('roster-rule-position', { what: say(`position-${kind.position}`) });
    case 'caution':
      return say('roster-rule-caution', { what: say(`caution-${kind.caution}`) });
    case 'variant':
      return say('roster-rule-variant', { what: variantName(kind.variant) });
    case 'level_above':
      return say('roster-rule-level_above', { what: ladderName(kind.ladder), step: kind.level + 1 });
    case 'all_load':
      return say('roster-rule-all_load');
    case 'load_above': {
      const load = weightWords(kind.most);
      return kind.ladder
        ? say('roster-rule-load_above-on', { what: ladderName(kind.ladder), load })
        : say('roster-rule-load_above', { load });
    }
    case 'reserve_below':
      return say('roster-rule-reserve_below', { reps: kind.reps });
    case 'breath_holding':
      return say('roster-rule-breath_holding');
  }
}
