import { describe, expect, it } from 'vitest';
import { CLIENTS } from '../../fixtures/people';
import type { RosterEntry } from '$lib/types';
import { ALL, filtered, isAll, planDue, type Filter } from './filters';
import { GroupDraft } from './group.svelte';
import { filesWords, kitWords, lastWords, lineOf, programmeWords, waitsWords } from './lines';

const GROUPS = [{ id: 'g', name: 'Monday', members: ['p12', 'p4'] }];
const of = (change: Partial<Filter>): string[] =>
  filtered(CLIENTS, GROUPS, { ...ALL, ...change }, new Map()).map((c) => c.person);
const hers = (person: string): RosterEntry => {
  const found = CLIENTS.find((c) => c.person === person);
  if (!found) throw new Error(person);
  return found;
};

describe('who of the Roster is in view', () => {
  it('is everybody without a filter', () => {
    expect(of({})).toEqual(CLIENTS.map((c) => c.person));
    expect(isAll(ALL)).toBe(true);
    expect(isAll({ ...ALL, name: ' ' })).toBe(true);
  });

  it('is found by name, by stage, by programme and by what waits', () => {
    expect(of({ name: 'concepcion maxi' })).toEqual(['p22']);
    expect(of({ stage: 'pregnant' })).toEqual(['p17', 'p22']);
    expect(of({ programme: 'none' })).toEqual(['p22']);
    expect(of({ waits: 'waits' })).toEqual(['p4', 'p17', 'p22']);
    expect(of({ waits: 'plan' })).toEqual(['p4', 'p17', 'p09']);
    expect(of({ waits: 'log' })).toEqual(['p22', 'p09']);
    expect(of({ stage: 'pregnant', waits: 'plan' })).toEqual(['p17']);
  });

  it('stands in a group in the order of the group', () => {
    expect(of({ group: 'g' })).toEqual(['p12', 'p4']);
    expect(of({ group: 'none' })).not.toContain('p4');
  });

  it('is due a plan file when what she was sent is not what is written, or something was recorded since', () => {
    expect(['p4', 'p17', 'p22', 'p12'].map((p) => planDue(hers(p)))).toEqual([true, true, false, false]);
  });
});

describe('a line of the Roster', () => {
  it('says kit, programme, last session, files and what waits', () => {
    const c = hers('p17');
    expect(kitWords(c.kit)).toBe('3 single weights up to 12 kg');
    expect(programmeWords(c)).toBe('Two days a week at home, week 9');
    expect(lastWords(c)).toBe('Last session 2 days ago');
    expect(filesWords(c)[0]).toContain('older than written');
    expect(waitsWords(c)[0]).toBe('Training stopped: a sign');
    expect(waitsWords(c)).toHaveLength(3);
    expect(kitWords(null)).toBe('Kit not filled in');
    expect(programmeWords(hers('p33'))).toContain('all weeks trained');
  });
});

describe('the words of a line', () => {
  it('are made once for the same entry, and anew for another of the same client', () => {
    const c = hers('p17');
    expect(lineOf(c)).toBe(lineOf(c));
    expect(lineOf(c).due).toBe(true);
    expect(lineOf({ ...c, last_days: 3 }).last).toBe('Last session 3 days ago');
    expect(lineOf(c).last).toBe('Last session 2 days ago');
  });
});

describe('a group being filled', () => {
  it('keeps its own order, holds nobody twice and finds who is not in it', () => {
    const draft = new GroupDraft(CLIENTS, GROUPS[0] ?? null);
    draft.add('p17');
    draft.add('p17');
    draft.move('p17', -1);
    draft.move('p12', -1);
    expect(draft.members).toEqual(['p12', 'p17', 'p4']);
    draft.drop('p12');
    draft.find = 'client 12';
    expect(draft.others.map((c) => c.person)).toEqual(['p12']);
    expect(draft.lacksName).toBe(false);
  });
});
