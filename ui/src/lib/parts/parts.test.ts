import { render, screen, within } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import type { FileReport, TrendPoint } from '../types';
import LadderSteps from './LadderSteps.svelte';
import TakeInReport from './TakeInReport.svelte';
import TrendChart from './TrendChart.svelte';

describe('the trend chart', () => {
  const points: TrendPoint[] = [
    { day: '2026-03-02', kg: 30.04, low: 26, high: 34, marked: false },
    { day: '2026-03-09', kg: 33, low: 30, high: 36, marked: true },
  ];

  it('says in a sentence and in a table what it draws', () => {
    render(TrendChart, { name: 'Squat', points });
    expect(screen.getByRole('img', { name: 'Strength: Squat' })).toBeTruthy();
    const text = screen.getByTestId('trend').textContent;
    expect(text).toMatch(/33 kg on .*9 March.*between 30 and 36.*from 30 kg on .*2 March/s);
    expect(text).toContain('A symptom was marked on one of these days.');
    const rows = within(screen.getByTestId('trend-table')).getAllByRole('row', { hidden: true });
    expect(rows, 'a heading and one row for each point').toHaveLength(3);
    expect(rows[1]?.textContent, 'the newest first').toMatch(/9 Mar.*33.*30 to 36.*marked/s);
  });

  it('says why it is empty', () => {
    render(TrendChart, { name: 'Squat', points: [] });
    expect(screen.queryByRole('img')).toBeNull();
    expect(screen.getByTestId('trend').textContent).toContain('No strength to show yet');
  });
});

describe('a ladder with its names', () => {
  it('marks today’s step by more than its hue', () => {
    render(LadderSteps, {
      levels: [['squat-high-chair'], ['squat-chair', 'squat-free']],
      now: 1,
      variant: 'squat-free',
      load: '12 kg',
    });
    const here = screen.getAllByRole('listitem').filter((li) => li.getAttribute('aria-current') === 'step');
    expect(here).toHaveLength(1);
    expect(here[0]?.textContent).toMatch(/Step 2 of 2.*You are here: 12 kg/s);
  });

  it('says that a step rests', () => {
    render(LadderSteps, { levels: [['squat-high-chair']], now: 0, variant: null, held: true });
    expect(screen.getByRole('listitem').textContent).toContain('Rests until your coach has answered');
  });
});

describe('the report on files', () => {
  const file = (over: Partial<FileReport>): FileReport => ({
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

  it('says of each file what became of it, and why one was refused', () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    render(TakeInReport, {
      files: [
        file({ new: 3, known: 9 }),
        file({ known: 12 }),
        file({ new: 1, gaps: [{ from: 4, to: 6 }] }),
        file({
          person: null,
          kind: null,
          refused: [{ code: 'odd', message: 'Not a log file.', remedy: 'Choose another.' }],
        }),
      ],
    });
    const lines = screen.getAllByTestId('report-file');
    expect(lines.map((l) => l.dataset['verdict'])).toEqual(['refused', 'gap', 'new', 'known']);
    expect(lines[2]?.textContent).toContain('3 new, 9 known already');
    expect(lines[1]?.textContent).toContain('3 entries are missing in between');
    expect(lines[0]?.textContent).toMatch(/Not a log file\. Choose another\..*Nothing was changed/s);
    expect(screen.getByTestId('report').textContent).toContain(
      '4 files, 4 new entries, one with a gap, one refused.',
    );
  });
});
