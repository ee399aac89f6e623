import { describe, expect, it } from 'vitest';
import { missing, readFiles, sizeParts, totals, verdict, worstFirst } from './takein';
import type { FileReport } from './types';

const refusal = { code: 'file-altered', message: 'changed after it was written', remedy: 'ask for it again' };
const report = (over: Partial<FileReport>): FileReport => ({
  file: 'log.json',
  person: 'Client 04',
  kind: 'log',
  new: 0,
  known: 0,
  gaps: [],
  refused: [],
  archived: false,
  ...over,
});

describe('the report on a file', () => {
  it('says new, known, gap, partly and refused apart', () => {
    expect(verdict(report({ new: 3, known: 9 }))).toBe('new');
    expect(verdict(report({ known: 12 })), 'taking a file in twice changes nothing').toBe('known');
    expect(verdict(report({ new: 3, gaps: [{ from: 4, to: 6 }] }))).toBe('gap');
    expect(verdict(report({ new: 3, refused: [refusal] }))).toBe('partly');
    expect(verdict(report({ refused: [refusal] }))).toBe('refused');
  });

  it('puts first what asks for something, and keeps the order among equals', () => {
    const files = [
      report({ file: 'known', known: 1 }),
      report({ file: 'new a', new: 1 }),
      report({ file: 'gap', gaps: [{ from: 1, to: 1 }] }),
      report({ file: 'refused', refused: [refusal] }),
      report({ file: 'new b', new: 2 }),
    ];
    expect(worstFirst(files).map((f) => f.file)).toEqual(['refused', 'gap', 'new a', 'new b', 'known']);
    expect(files[0]?.file, 'the list that came in stays as it is').toBe('known');
  });

  it('counts both ends of a gap', () => {
    expect(
      missing(
        report({
          gaps: [
            { from: 4, to: 6 },
            { from: 9, to: 9 },
          ],
        }),
      ),
    ).toBe(4);
    expect(missing(report({}))).toBe(0);
  });

  it('adds up over all files', () => {
    const sum = totals([
      report({ new: 3 }),
      report({ new: 2, gaps: [{ from: 1, to: 1 }] }),
      report({ refused: [refusal] }),
    ]);
    expect(sum).toEqual({ files: 3, fresh: 5, gaps: 1, refused: 1 });
  });

  it('reads each file, and hands on one that cannot be read as empty', async () => {
    const gone = new File(['x'], 'gone.json');
    gone.text = () => Promise.reject(new Error('moved away'));
    const read = await readFiles([new File(['{"a":1}'], 'a.json'), gone]);
    expect(read).toEqual([
      { name: 'a.json', text: '{"a":1}' },
      { name: 'gone.json', text: '' },
    ]);
  });

  it('says a size in one unit', () => {
    expect(sizeParts(999)).toEqual({ value: 999, unit: 'B' });
    expect(sizeParts(12_345)).toEqual({ value: 12.3, unit: 'kB' });
    expect(sizeParts(2_345_678)).toEqual({ value: 2.3, unit: 'MB' });
  });
});
