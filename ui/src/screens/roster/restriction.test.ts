import { describe, expect, it } from 'vitest';
import { RestrictionDraft, restrictionWords, RULES } from './restriction.svelte';

const LADDERS = [
  { ladder: 'squat', levels: [['squat-high-chair'], ['squat-chair', 'squat-free']] },
  { ladder: 'row', levels: [['row-band']] },
];

describe('a restriction', () => {
  it('rules out one thing of each kind', () => {
    const draft = new RestrictionDraft(LADDERS);
    const kinds = RULES.map((rules) => {
      draft.rules = rules;
      draft.most = 5;
      return draft.toKind();
    });
    expect(kinds).toEqual([
      { rules_out: 'position', position: 'supine' },
      { rules_out: 'caution', caution: 'one_sided' },
      { rules_out: 'variant', variant: 'squat-high-chair' },
      { rules_out: 'level_above', ladder: 'squat', level: 0 },
      { rules_out: 'all_load' },
      { rules_out: 'load_above', most: { value: 5, unit: 'kg' }, ladder: null },
      { rules_out: 'reserve_below', reps: 4 },
      { rules_out: 'breath_holding' },
    ]);
  });

  it('starts anew with another ladder, so that no level of one is kept for the other', () => {
    const draft = new RestrictionDraft(LADDERS);
    draft.rules = 'level_above';
    draft.level = 1;
    draft.chooseLadder('row');
    expect(draft.toKind()).toEqual({ rules_out: 'level_above', ladder: 'row', level: 0 });
    draft.rules = 'variant';
    expect(draft.toKind()).toEqual({ rules_out: 'variant', variant: 'row-band' });
  });

  it('cannot name a variant or a level before there is a programme', () => {
    const draft = new RestrictionDraft([]);
    draft.rules = 'variant';
    expect(draft.toKind()).toBeNull();
    draft.rules = 'level_above';
    expect(draft.toKind()).toBeNull();
    draft.rules = 'position';
    expect(draft.toKind()).not.toBeNull();
  });

  it('counts steps from one when it is said', () => {
    expect(restrictionWords({ rules_out: 'level_above', ladder: 'squat', level: 1 })).toBe(
      'Squat: up to step 2',
    );
    expect(restrictionWords({ rules_out: 'position', position: 'supine' })).toBe('No lying on the back');
  });
});
