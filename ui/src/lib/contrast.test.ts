// Contrast of the look's colours, worked out from look.css by WCAG 2.2: relative luminance (definition in the standard)
// and contrast ratio, text 4.5:1 (1.4.3), edges of controls and parts of drawings 3:1 (1.4.11).
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';

const css = readFileSync(resolve(import.meta.dirname, 'look.css'), 'utf8');

function tokens(from: string): Map<string, string> {
  const block = css.slice(css.indexOf(from));
  const inside = block.slice(0, block.indexOf('}'));
  return new Map([...inside.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map((m) => [m[1] ?? '', m[2] ?? '']));
}

function luminance(colour: string): number {
  const part = (at: number): number => {
    const c = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * part(1) + 0.7152 * part(3) + 0.0722 * part(5);
}

export function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

test('the formula gives known values', () => {
  expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 9);
  // From memory: the least grey on white that passes, and the next one.
  expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
});

/** Text and the grounds it stands on. */
const TEXT: [string, string[]][] = [
  ['ink', ['ground', 'sheet', 'spruce-wash', 'ochre-wash', 'brick-wash']],
  ['soft', ['ground', 'sheet', 'spruce-wash', 'ochre-wash', 'brick-wash']],
  ['brick', ['ground', 'sheet', 'brick-wash']],
  ['spruce', ['ground', 'sheet', 'spruce-wash']],
  ['ochre', ['ground', 'sheet']],
  ['spruce-ink', ['spruce']],
  ['ochre-ink', ['ochre']],
  ['brick-ink', ['brick']],
];
/** Edges and drawn parts, and what they have to be told from. */
const DRAWN: [string, string[]][] = [
  ['edge', ['ground', 'sheet']],
  ['spruce', ['ground', 'sheet']],
  ['ochre', ['ground', 'sheet']],
  ['brick', ['ground', 'sheet']],
];

for (const [scheme, from] of [
  ['light', ':root {'],
  ['dark', ":root[data-scheme='dark'] {"],
] as const) {
  test(`every text and edge has the contrast it needs, ${scheme}`, () => {
    const colours = tokens(from);
    expect(colours.size).toBeGreaterThan(14);
    const low: string[] = [];
    const ratios: number[] = [];
    const holds = (pairs: [string, string[]][], least: number) => {
      for (const [front, grounds] of pairs)
        for (const ground of grounds) {
          const ratio = contrast(colours.get(front) ?? '', colours.get(ground) ?? '');
          ratios.push(ratio);
          if (!(ratio >= least)) low.push(`${front} on ${ground}: ${ratio.toFixed(2)}`);
        }
    };
    holds(TEXT, 4.5);
    holds(DRAWN, 3);
    expect(low).toEqual([]);
    expect(ratios).toHaveLength(29);
  });
}

test('the dark scheme is the same whether the system asks for it or she does', () => {
  const asked = tokens(":root:not([data-scheme='light']) {");
  expect([...asked]).toEqual([...tokens(":root[data-scheme='dark'] {")]);
});
