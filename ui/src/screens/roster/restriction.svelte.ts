// A restriction as the coach fills it in, and how a restriction is said.
import type { Caution, LadderChoice, Position, RestrictionKind } from '$lib/types';
import { ladderName, say, variantName } from '$lib/words';

export type Rules = RestrictionKind['rules_out'];

export const RULES: readonly Rules[] = ['position', 'caution', 'variant', 'level_above', 'all_load'];
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
  }
}
