import { afterEach, expect, test } from 'vitest';
import type { VariantWordsView } from '$lib/types';
import { movementOf } from '$lib/figures';
import { has, howOf, isOwn, say, setOwnNames, variantName } from '$lib/words';
import { neighbour, OwnDraft } from './own.svelte';

const ID = '0194f0e5-0000-7000-8000-000000000002';

const HINGE: VariantWordsView = {
  variant: 'hinge-one-dumbbell',
  cues: 3,
  position: 'standing',
  needs: [],
  cautions: [],
  loading: { with: 'one' },
  ready: { by: 'load', kg: 12 },
  usual_start: { from: 6, to: 10 },
  per_side: false,
  yours: null,
  uncertain: false,
  own: null,
};

afterEach(() => setOwnNames({}));

test('a copy has everything of the other but its name, and every question is answered', () => {
  const draft = new OwnDraft({ new: false, ladder: 'hinge', level: 1 });
  draft.copy({ ...HINGE, cautions: ['midline'] });
  expect(draft.isWhole).toBe(false);
  draft.name = ' Kettlebell hinge ';
  expect(draft.isWhole).toBe(true);
  const form = draft.toForm();
  expect(form).toMatchObject({
    id: null,
    name: 'Kettlebell hinge',
    like: 'hinge-one-dumbbell',
    loading: { with: 'one' },
    ready: { by: 'load', kg: 12 },
    usual_start: { from: 6, to: 10 },
    place: { place: 'at', ladder: 'hinge', level: 1 },
  });
  expect(form.cautions.midline).toBe(true);
  expect(Object.values(form.cautions).filter((said) => said === false)).toHaveLength(5);
  expect(form.cues.filter((cue) => cue !== '').length).toBeGreaterThan(1);
});

test('from nothing no question is answered, and a new ladder needs its name', () => {
  const draft = new OwnDraft({ new: true });
  draft.copy(HINGE);
  draft.clear();
  draft.name = 'Stair walk';
  expect(draft.isWhole).toBe(false);
  draft.ladder = 'Kitchen stairs';
  draft.pattern = 'single_leg';
  expect(draft.isWhole).toBe(true);
  expect(draft.toForm()).toMatchObject({
    like: null,
    cautions: {},
    loading: { with: 'body' },
    ready: { by: 'reps', reps: 12 },
    usual_start: null,
    place: { place: 'new_ladder', name: 'Kitchen stairs', pattern: 'single_leg' },
  });
});

test('what is held decides what the next step is measured by, and another weight forgets the usual start', () => {
  const draft = new OwnDraft({ new: false, ladder: 'hinge', level: 1 });
  draft.copy(HINGE);
  expect(draft.counts).toContain('load');
  draft.hold('body');
  expect(draft.counts).not.toContain('load');
  expect(draft.toForm()).toMatchObject({ ready: { by: 'reps', reps: 12 }, usual_start: null });
  expect(draft.loadings).not.toContain('assist');
});

test('a change of what it is makes another move, a change of words does not', () => {
  const yours = { cautions: { wrist: false } } as unknown as NonNullable<VariantWordsView['yours']>;
  setOwnNames({ [`variant-${ID}`]: 'Kettlebell hinge' });
  const draft = new OwnDraft({ new: false, ladder: 'hinge', level: 1 }, { ...HINGE, variant: ID, yours });
  expect([draft.id, draft.name]).toEqual([ID, 'Kettlebell hinge']);
  expect([draft.said.wrist, draft.said.midline]).toEqual(['no', 'open']);
  draft.name = 'Bell hinge';
  expect(draft.becomesAnother).toBe(false);
  draft.oneSide = true;
  expect(draft.becomesAnother).toBe(true);
});

test('her words stand under the ids of the built-in ones, and there is no figure of another move', () => {
  expect(isOwn(ID)).toBe(true);
  expect(isOwn('hinge-one-dumbbell')).toBe(false);
  expect(variantName(ID)).toBe(say('own-unknown-variant'));
  setOwnNames({ [`variant-${ID}`]: 'Kettlebell hinge', [`variant-${ID}.setup`]: 'Feet under the hips' });
  expect(variantName(ID)).toBe('Kettlebell hinge');
  expect(howOf(ID)).toBe('Feet under the hips.');
  expect(has(`variant-${ID}.cue1`)).toBe(false);
  expect(movementOf(ID, 'hinge')).toBeUndefined();
});

test('the first to copy is a built-in one at the level, or at the one below', () => {
  const ladder = {
    ladder: 'hinge',
    yours: null,
    pattern: 'hinge' as const,
    open: true,
    uncertain: false,
    levels: [[{ ...HINGE, variant: ID }, HINGE]],
  };
  expect(neighbour([ladder], { new: false, ladder: 'hinge', level: 0 })).toBe(HINGE);
  expect(neighbour([ladder], { new: false, ladder: 'hinge', level: 1 })).toBe(HINGE);
  expect(neighbour([ladder], { new: true })).toBeNull();
});
