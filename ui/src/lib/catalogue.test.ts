// The words of the catalogue, variant by variant and step by step, in each language: all there, none too many, none too
// long for a card, and no slip said of two variants.
import { FluentResource } from '@fluent/bundle';
import { describe, expect, test } from 'vitest';
import catalogue from '../../../crates/engine/data/catalogue.json';
import { LANGUAGES } from './language';

const files = import.meta.glob<string>('../../../locales/*/catalogue.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});

interface Variant {
  id: string;
  cues: number;
  uncertain?: boolean;
}
interface Ladder {
  id: string;
  uncertain?: boolean;
  levels: { variants: Variant[] }[];
}

/** The longest slip that reads as two lines on a phone. */
const LONGEST = 92;

describe.each(Object.keys(LANGUAGES))('the catalogue in %s', (language) => {
  const text = Object.entries(files).find(([path]) => path.includes(`/${language}/`))?.[1] ?? '';
  const messages = new Map(
    new FluentResource(text).body.map((m) => [
      m.id,
      Object.fromEntries(Object.entries(m.attributes).map(([name, p]) => [name, String(p)])),
    ]),
  );
  const ladders: Ladder[] = catalogue.ladders;
  const variants = ladders.flatMap((l) => l.levels.flatMap((v) => v.variants));

  test('gives each variant its setup, breath, cues and slips, and not one too many', () => {
    expect(variants.length, 'the catalogue was read').toBeGreaterThan(180);
    const wrong = variants.flatMap((variant) => {
      const has = Object.keys(messages.get(`variant-${variant.id}`) ?? {}).filter((name) => name !== 'slip2');
      const cues = Array.from({ length: variant.cues }, (_, i) => `cue${i + 1}`);
      const wanted = ['setup', 'breath', ...cues, 'slip1', ...(variant.uncertain ? ['uncertain'] : [])];
      return has.sort().join() === wanted.sort().join() ? [] : [`${variant.id}: ${has.join(' ')}`];
    });
    expect(wrong).toEqual([]);
  });

  test('says of each step above the first why it is harder, and of no other', () => {
    const wrong = ladders.flatMap((ladder) => {
      const has = Object.keys(messages.get(`ladder-${ladder.id}`) ?? {});
      const steps = ladder.levels.slice(1).map((_, i) => `step${i + 2}`);
      const wanted = [...steps, ...(ladder.uncertain ? ['uncertain'] : [])];
      return has.sort().join() === wanted.sort().join() ? [] : [`${ladder.id}: ${has.join(' ')}`];
    });
    expect(wrong).toEqual([]);
  });

  test('has no words for what is not in it', () => {
    const ids = new Set([...ladders.map((l) => `ladder-${l.id}`), ...variants.map((v) => `variant-${v.id}`)]);
    expect([...messages.keys()].filter((id) => !ids.has(id))).toEqual([]);
  });

  test('keeps slips short, each with what to do, and each for one variant', () => {
    const slips = [...messages].flatMap(([id, parts]) =>
      Object.entries(parts)
        .filter(([name]) => name.startsWith('slip'))
        .map(([name, slip]) => ({ at: `${id}.${name}`, slip })),
    );
    expect(slips.filter(({ slip }) => slip.length > LONGEST)).toEqual([]);
    expect(
      slips.filter(({ slip }) => !/^[^:]+: \S/.test(slip)),
      'the slip, a colon, what to do',
    ).toEqual([]);
    const seen = new Map<string, string>();
    const twice = slips.filter(({ at, slip }) => {
      const before = seen.has(slip);
      seen.set(slip, at);
      return before;
    });
    expect(twice).toEqual([]);
  });
});
