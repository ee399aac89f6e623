import { describe, expect, it } from 'vitest';
import type { LadderView } from '$lib/types';
import { OverrideDraft } from './override.svelte';

const LADDERS = [
  { ladder: 'squat', levels: [['squat-high-chair'], ['squat-chair', 'squat-free'], ['squat-goblet']] },
  { ladder: 'row', levels: [['row-band'], ['row-chair']] },
];
const STANDS: LadderView[] = [
  {
    ladder: 'row',
    levels: [['row-band'], ['row-chair']],
    level: 1,
    afresh: false,
    next: null,
    variant: 'row-chair',
    load: { make: 'one', weight: { value: 20, unit: 'lb' } },
    held: false,
    reasons: [],
    trend: null,
  },
];

describe('an override', () => {
  it('is not set before something is chosen and a word is written', () => {
    const draft = new OverrideDraft(LADDERS, STANDS);
    expect(draft.lacks).toBe('nothing');
    draft.chooseLevel(1);
    expect(draft.lacks).toBe('note');
    expect(draft.toForm()).toBeNull();
    draft.note = ' wrist is sore ';
    expect(draft.toForm()).toEqual({
      start: { ladder: 'squat', level: 1, variant: null, load: null },
      note: 'wrist is sore',
    });
  });

  it('keeps a load in the unit of her weights', () => {
    const draft = new OverrideDraft(LADDERS, STANDS, 'row');
    draft.note = 'heavier';
    draft.make = 'one';
    expect(draft.lacks, 'a weight without a number is not said in full').toBe('nothing');
    draft.value = 25;
    expect(draft.toForm()?.start.load).toEqual({ make: 'one', weight: { value: 25, unit: 'lb' } });
  });

  it('makes a bar of the bar and what each side bears', () => {
    const draft = new OverrideDraft(LADDERS, STANDS);
    draft.note = 'x';
    draft.make = 'barbell';
    draft.value = 15;
    expect(draft.toForm()?.start.load).toEqual({
      make: 'barbell',
      bar: { value: 15, unit: 'kg' },
      plates: [],
    });
    draft.side = 2.5;
    expect(draft.toForm()?.start.load).toMatchObject({ plates: [{ value: 2.5, unit: 'kg' }] });
  });

  it('drops a variant that is not on the chosen level, and everything with another ladder', () => {
    const draft = new OverrideDraft(LADDERS, STANDS);
    draft.variant = 'squat-goblet';
    draft.chooseLevel(1);
    expect(draft.variant).toBe('');
    draft.variant = 'squat-free';
    draft.chooseLadder('row');
    draft.note = 'x';
    expect(draft.level).toBe(-1);
    expect(draft.toForm(), 'nothing is chosen on the new ladder').toBeNull();
  });

  it('sets no load at all when that is chosen', () => {
    const draft = new OverrideDraft(LADDERS, STANDS);
    draft.note = 'unloaded for a week';
    draft.make = 'nothing';
    expect(draft.toForm()?.start.load).toEqual({ make: 'nothing' });
  });
});
