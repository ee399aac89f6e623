import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Fact, FindingView } from '$lib/types';
import { has } from '$lib/words';
import { FINDING_CODES, findingWords } from './finding';

const FACTS: Record<string, Fact> = {
  symptom: { is: 'symptom', value: 'heaviness' },
  ladder: { is: 'ladder', value: 'split-squat' },
  variant: { is: 'variant', value: 'squat-goblet' },
  load: { is: 'load', value: { make: 'one', weight: { value: 25, unit: 'lb' } } },
  day: { is: 'day', value: '2026-03-09' },
  count: { is: 'number', value: 3 },
  of: { is: 'number', value: 4 },
  days: { is: 'number', value: 12 },
  words: { is: 'words', value: 'a bit low' },
};
const finding = (code: string, facts: Record<string, Fact> = FACTS): FindingView => ({
  code,
  urge: 'look',
  facts,
});

let troubles: unknown[] = [];
beforeEach(() => {
  troubles = [];
  vi.spyOn(console, 'error').mockImplementation((...words) => troubles.push(words));
});

describe('findings in words', () => {
  it.each(FINDING_CODES)('%s has its sentence, and every value in it is filled in', (code) => {
    expect(has(`desk-${code}`)).toBe(true);
    const text = findingWords(finding(code));
    expect(troubles, 'Fluent names what it could not fill in').toEqual([]);
    expect(text).not.toMatch(/\{|\$|none/);
    expect(text, 'calm').not.toContain('!');
  });

  it('says numbers, loads as entered, and days', () => {
    expect(findingWords(finding('effort-over'))).toContain('3 of the last 4');
    expect(findingWords(finding('load-jump'))).toContain('25 lb');
    expect(findingWords(finding('hold-waits'))).toMatch(/^Split squat rests since .*9 March.*Heaviness/);
  });

  it('does without a symptom or a ladder that is not known', () => {
    const day: Record<string, Fact> = { day: { is: 'day', value: '2026-03-09' } };
    const text = findingWords(finding('hold-waits', day));
    expect(text).toMatch(/^Training rests since/);
    expect(text).not.toContain('none');
    expect(troubles).toEqual([]);
  });

  it('shows a code from a newer engine instead of nothing', () => {
    expect(findingWords(finding('brand-new'))).toContain('brand-new');
  });
});
