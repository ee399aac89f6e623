// The sentences: no id stands twice, every id that a screen names is there, and the tone holds.
import { FluentResource } from '@fluent/bundle';
import { describe, expect, it } from 'vitest';
import { LANGUAGES } from './language';

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

const everything = import.meta.glob<string>('../../../locales/*/*.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** Each message and attribute of a language with the values that it uses. */
function messages(language: string): Map<string, string> {
  const found = new Map<string, string>();
  for (const [path, text] of Object.entries(everything)) {
    if (!path.includes(`/${language}/`)) continue;
    for (const { id, value, attributes } of new FluentResource(text).body) {
      const values = (pattern: unknown) =>
        [
          ...new Set(
            [...JSON.stringify(pattern ?? '').matchAll(/"type":"var","name":"(\w+)"/g)].map((m) => m[1]),
          ),
        ]
          .sort()
          .join(' ');
      found.set(id, values(value));
      for (const [name, pattern] of Object.entries(attributes)) found.set(`${id}.${name}`, values(pattern));
    }
  }
  return found;
}

describe.each(Object.keys(LANGUAGES).filter((l) => l !== 'en'))('the words in %s', (other) => {
  const english = messages('en');
  const theirs = messages(other);

  it('are all there, and no more', () => {
    expect([...english.keys()].filter((id) => !theirs.has(id))).toEqual([]);
    expect([...theirs.keys()].filter((id) => !english.has(id))).toEqual([]);
  });

  it('use the same values', () => {
    expect([...english].filter(([id, values]) => theirs.get(id) !== values).map(([id]) => id)).toEqual([]);
  });

  it('stay calm', () => {
    const loud = Object.entries(everything)
      .filter(([path]) => path.includes(`/${other}/`))
      .flatMap(([file, text]) =>
        text
          .split('\n')
          .filter((line) => !line.startsWith('#') && /[!¡]|\bfracas/i.test(line))
          .map((line) => `${file}: ${line}`),
      );
    expect(loud).toEqual([]);
  });
});
