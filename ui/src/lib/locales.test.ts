// The sentences: no id stands twice, every id that a screen names is there, and the tone holds.
import { describe, expect, it } from 'vitest';

const files = import.meta.glob<string>('../../../locales/en/*.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const sources = import.meta.glob<string>(
  ['../**/*.svelte', '../**/*.ts', '!../**/*.test.ts', '!../fixtures/**', '!../bindings/**'],
  { query: '?raw', import: 'default', eager: true },
);

const ids = Object.entries(files).flatMap(([file, text]) =>
  [...text.matchAll(/^([a-z][\w-]*) =/gim)].map((match) => ({ id: match[1] ?? '', file })),
);
const known = new Set(ids.map((i) => i.id));

describe('the sentences', () => {
  it('are read at all', () => {
    expect(known.size).toBeGreaterThan(200);
    expect(Object.keys(sources).length).toBeGreaterThan(20);
  });

  it('have one meaning for each id, across all files', () => {
    const seen = new Map<string, string>();
    const twice = ids.filter(({ id, file }) => {
      const before = seen.has(id);
      seen.set(id, file);
      return before;
    });
    expect(twice).toEqual([]);
  });

  it('are there for every id that is written out in a screen', () => {
    const missing = Object.entries(sources).flatMap(([file, text]) =>
      [...text.matchAll(/\bsay\(\s*'([\w-]+)'/g)]
        .map((match) => match[1] ?? '')
        .filter((id) => !known.has(id))
        .map((id) => `${file}: ${id}`),
    );
    expect(missing).toEqual([]);
  });

  it('are there for every beginning that a screen completes', () => {
    const missing = Object.entries(sources).flatMap(([file, text]) =>
      [...text.matchAll(/\bsay\(\s*`([\w-]+)\$\{/g)]
        .map((match) => match[1] ?? '')
        .filter((start) => ![...known].some((id) => id.startsWith(start)))
        .map((start) => `${file}: ${start}…`),
    );
    expect(missing).toEqual([]);
  });

  it('stay calm', () => {
    const loud = Object.entries(files).flatMap(([file, text]) =>
      text
        .split('\n')
        .filter((line) => !line.startsWith('#') && /!|\bfail(ed|ure)?\b/i.test(line))
        .map((line) => `${file}: ${line}`),
    );
    expect(loud).toEqual([]);
  });
});
