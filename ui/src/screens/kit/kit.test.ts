import { describe, expect, it } from 'vitest';
import type { Band, Kit, Weight } from '$lib/types';
import { HOME_SETS, KitDraft, readWeight, scaleKg } from './kit.svelte';

const EMPTY: Kit = { dumbbells: [], barbell: null, bands: [], things: [] };
const lb = (value: number): Weight => ({ value, unit: 'lb' });
const kg = (value: number): Weight => ({ value, unit: 'kg' });
const LIGHT: Band = { name: 'light', at_100: 40, at_200: 60 };

describe('weights', () => {
  it('keeps pounds as they were entered, through every edit', () => {
    const draft = new KitDraft(EMPTY);
    draft.set(lb(25), 'pair');
    draft.set(kg(12), 'one');
    expect(draft.toKit().dumbbells, '25 lb (11.3 kg) lists before 12 kg and is still 25 lb').toEqual([
      { weight: { value: 25, unit: 'lb' }, pair: true },
      { weight: { value: 12, unit: 'kg' }, pair: false },
    ]);
  });

  it('reads the number as written, with a comma or a point', () => {
    expect(readWeight('2,5', 'kg')).toEqual(kg(2.5));
    expect(readWeight('17.5', 'lb')).toEqual(lb(17.5));
    expect(readWeight(12, 'kg')).toEqual(kg(12));
  });

  it.each(['', '0', '-4', 'twelve', '501', null])('takes no weight from %s', (text) => {
    expect(readWeight(text, 'kg')).toBeNull();
  });

  it('turns from none to one to a pair and back', () => {
    const draft = new KitDraft(EMPTY);
    const seen = [0, 1, 2].map(() => {
      draft.turn(kg(8));
      return draft.countOf(kg(8));
    });
    expect(seen).toEqual(['one', 'pair', 'none']);
    expect(draft.changed, 'back where it began').toBe(false);
  });

  it('takes 10 kg and 10 lb for two different weights', () => {
    const draft = new KitDraft(EMPTY);
    draft.turn(kg(10));
    expect(draft.countOf(lb(10))).toBe('none');
    draft.turn(lb(10));
    expect(draft.toKit().dumbbells).toHaveLength(2);
  });

  it('adds a set without making one out of a pair', () => {
    const draft = new KitDraft({ ...EMPTY, dumbbells: [{ weight: kg(8), pair: true }] });
    const singles = HOME_SETS.find((s) => s.id === 'singles-kg');
    if (!singles) throw new Error('the set is gone');
    draft.addSet(singles);
    expect(draft.countOf(kg(8))).toBe('pair');
    expect(draft.countOf(kg(12))).toBe('one');
  });

  it('offers her own weights beside the common ones, once each', () => {
    const draft = new KitDraft({ ...EMPTY, dumbbells: [{ weight: kg(7.5), pair: false }] });
    draft.turn(lb(25));
    const offered = draft.offered.map((w) => `${w.value} ${w.unit}`);
    expect(offered).toContain('7.5 kg');
    expect(offered).toContain('25 lb');
    expect(new Set(offered).size).toBe(offered.length);
  });
});

describe('the draft', () => {
  it('never reaches into the view that it came from', () => {
    const kit: Kit = { ...EMPTY, dumbbells: [{ weight: kg(8), pair: false }] };
    const draft = new KitDraft(kit);
    draft.turn(kg(8));
    expect(kit.dumbbells[0]?.pair).toBe(false);
    expect(draft.changed).toBe(true);
    draft.take(draft.toKit());
    expect(draft.changed, 'saved').toBe(false);
  });

  it('gives a second band of one stiffness a name of its own', () => {
    const draft = new KitDraft(EMPTY);
    draft.addBand(LIGHT);
    draft.addBand(LIGHT);
    draft.addBand(LIGHT);
    expect(draft.bands.map((b) => b.name)).toEqual(['light', 'light 2', 'light 3']);
  });

  it('takes a measured force in kilograms of a luggage scale and refuses a band that gets softer', () => {
    const draft = new KitDraft(EMPTY);
    draft.addBand(LIGHT);
    expect(draft.measureBand(0, 5, 4)).toBe(false);
    expect(draft.bands[0]?.at_100, 'unchanged').toBe(40);
    expect(draft.measureBand(0, 5, 7.5)).toBe(true);
    expect(draft.bands[0]?.at_100).toBeCloseTo(49.03325, 6);
    expect(scaleKg(draft.bands[0]?.at_200 ?? 0)).toBe(7.5);
  });

  it('drops the plates with the bar', () => {
    const draft = new KitDraft(EMPTY);
    draft.addPlates(kg(5));
    expect(draft.toKit().barbell, 'no bar, no plates').toBeNull();
    draft.setBar(lb(45));
    draft.addPlates(lb(5));
    draft.addPlates(lb(10));
    expect(draft.toKit().barbell?.plates.map((p) => p.weight.value)).toEqual([10, 5]);
    draft.setBar(null);
    expect(draft.toKit().barbell).toBeNull();
  });
});
