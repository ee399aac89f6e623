// Files that are taken in: reading what was chosen, and saying what became of each.
import type { ChosenFile, FileReport } from './types';

/** What the report says of one file, worst first. */
export type Verdict = 'refused' | 'gap' | 'partly' | 'new' | 'known';

/**
 * The verdict on one file. `partly`: some of its records were taken and some refused. A gap outranks what is new,
 * because it is the one thing that asks for something to be done.
 */
export function verdict(report: FileReport): Verdict {
  if (report.refused.length > 0) return report.new + report.known > 0 ? 'partly' : 'refused';
  if (report.gaps.length > 0) return 'gap';
  return report.new > 0 ? 'new' : 'known';
}

/** The reports in the order in which they ask for something: refused first, known last. */
export function worstFirst(reports: readonly FileReport[]): FileReport[] {
  const order: Verdict[] = ['refused', 'partly', 'gap', 'new', 'known'];
  return [...reports].sort((a, b) => order.indexOf(verdict(a)) - order.indexOf(verdict(b)));
}

/** How many records are missing in all gaps of a file; both ends of a span are missing. */
export function missing(report: FileReport): number {
  return report.gaps.reduce((sum, gap) => sum + gap.to - gap.from + 1, 0);
}

/** Sums over all files, for the line above the list. */
export function totals(reports: readonly FileReport[]): {
  files: number;
  fresh: number;
  gaps: number;
  refused: number;
} {
  return {
    files: reports.length,
    fresh: reports.reduce((sum, r) => sum + r.new, 0),
    gaps: reports.filter((r) => r.gaps.length > 0).length,
    refused: reports.filter((r) => r.refused.length > 0).length,
  };
}

/**
 * Reads the chosen files as text. One that cannot be read (moved away, no permission) is handed on as empty, so that
 * it gets its line in the report like any other and the rest is still taken in.
 */
export async function readFiles(files: Iterable<File>): Promise<ChosenFile[]> {
  return Promise.all(
    Array.from(files, async (file) => {
      try {
        return { name: file.name, text: await file.text() };
      } catch {
        return { name: file.name, text: '' };
      }
    }),
  );
}

/** A size in words' numbers: bytes below 1000, then kB and MB of a thousand. */
export function sizeParts(bytes: number): { value: number; unit: 'B' | 'kB' | 'MB' } {
  if (bytes < 1000) return { value: bytes, unit: 'B' };
  if (bytes < 1_000_000) return { value: Math.round(bytes / 100) / 10, unit: 'kB' };
  return { value: Math.round(bytes / 100_000) / 10, unit: 'MB' };
}
