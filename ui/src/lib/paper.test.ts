// The figures as paper draws them: what Figure.svelte draws at rest, written out for crates/paper, one variant a line.
// After a change of a figure: `npm run paper-figures`, which writes the file anew.
import { cleanup, render } from '@testing-library/svelte';
import { expect, test } from 'vitest';
import catalogue from '../../../crates/engine/data/catalogue.json';
import { movements } from './figures';
import Figure from './parts/Figure.svelte';

/** What is drawn of one movement: its view box and its marks, without what only a screen needs. */
function drawn(id: string): { box: number[]; marks: string } {
  const movement = movements[id];
  if (!movement) throw new Error(`${id} has no figure`);
  const { container } = render(Figure, { movement, name: id });
  const svg = container.querySelector('svg');
  if (!svg) throw new Error(`${id} draws nothing`);
  const box = (svg.getAttribute('viewBox') ?? '').split(' ').map((n) => Math.round(Number(n) * 10) / 10);
  const marks = svg.innerHTML
    .replace(/<!--.*?-->/gs, '')
    .replace(/ ?svelte-\w+/g, '')
    .replace(/ class=""/g, '')
    .replace(/-?\d+\.\d+(e-\d+)?/g, (n) => String(Math.round(Number(n) * 10) / 10 + 0))
    .replace(/>\s+</g, '><')
    .trim();
  cleanup();
  return { box, marks };
}

test('what paper draws is what the screens draw', async () => {
  const variants = catalogue.ladders.flatMap((l) => l.levels.flatMap((v) => v.variants.map((w) => w.id)));
  const lines = variants.sort().map((id) => {
    const { box, marks } = drawn(id);
    expect(box, `${id} has a frame`).toHaveLength(4);
    expect(marks, `${id} draws a body`).toContain('class="trunk"');
    expect(marks, `${id} draws nothing that is not a number`).not.toContain('NaN');
    return `${JSON.stringify(id)}: ${JSON.stringify({ box, marks })}`;
  });
  await expect(`{\n${lines.join(',\n')}\n}\n`).toMatchFileSnapshot(
    '../../../crates/paper/figures/figures.json',
  );
});
