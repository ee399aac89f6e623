import { describe, expect, it } from 'vitest';
import type { RosterEntry } from '$lib/types';
import { amountKey, amountOf, ClientDraft } from './client-form.svelte';

const entry = (over: Partial<RosterEntry>): RosterEntry => ({
  person: '0195',
  name: 'Client 04',
  stage: null,
  stage_recorded: null,
  conditions: [],
  baselines: [],
  trained: false,
  restrictions: [],
  clearance: null,
  clearance_waits: false,
  programme: null,
  last_session: null,
  records: 0,
  ladders: [],
  ...over,
});

describe('the client form', () => {
  it('says what is missing before it is sent', () => {
    const draft = new ClientDraft();
    expect(draft.lacks).toEqual(['name']);
    draft.name = '  Client 40 ';
    draft.stage = 'due';
    expect(draft.lacks, 'a due date is asked for').toEqual(['date']);
    expect(draft.toForm()).toBeNull();
    draft.date = '2026-09-01';
    expect(draft.toForm()).toMatchObject({
      name: 'Client 40',
      stage: { stage: 'pregnant', due: '2026-09-01', last_period: null },
    });
  });

  it('keeps the two ways to a gestational age apart', () => {
    const draft = new ClientDraft();
    draft.name = 'A';
    draft.stage = 'period';
    draft.date = '2026-01-05';
    expect(draft.toForm()?.stage).toEqual({ stage: 'pregnant', due: null, last_period: '2026-01-05' });
  });

  it('asks for no date where none belongs', () => {
    const draft = new ClientDraft();
    draft.name = 'A';
    draft.date = '2026-01-05';
    draft.stage = 'neither';
    expect(draft.toForm()?.stage).toEqual({ stage: 'neither' });
    draft.stage = 'unsaid';
    expect(draft.toForm()?.stage).toBeNull();
  });

  it.each<RosterEntry['stage_recorded']>([
    { stage: 'pregnant', due: '2026-06-01', last_period: null },
    { stage: 'pregnant', due: null, last_period: '2025-11-01' },
    { stage: 'postpartum', birth: '2026-01-10', mode: 'caesarean', severe_tear: false },
    { stage: 'after_loss', on: '2026-02-01' },
    { stage: 'neither' },
    null,
  ])('gives back unchanged what it took: %j', (stage_recorded) => {
    const draft = new ClientDraft(
      entry({
        stage_recorded,
        conditions: ['prolapse'],
        baselines: [{ kind: 'heaviness', amount: { form: 'little' } }],
        trained: true,
      }),
    );
    expect(draft.toForm()).toEqual({
      name: 'Client 04',
      stage: stage_recorded,
      conditions: ['prolapse'],
      baselines: [{ kind: 'heaviness', amount: { form: 'little' } }],
      trained: true,
    });
  });

  it('holds one amount for each usual symptom', () => {
    const draft = new ClientDraft(entry({}));
    draft.setBaseline('girdle-pain', 'pain-2');
    draft.setBaseline('girdle-pain', 'pain-3');
    expect(draft.baselines).toEqual([{ kind: 'girdle-pain', amount: { form: 'pain', value: 3 } }]);
    draft.removeBaseline('girdle-pain');
    expect(draft.baselines).toEqual([]);
  });

  it('turns an amount into a key and back', () => {
    for (const key of ['little', 'clearly', 'lot', 'pain-1', 'pain-10']) {
      expect(amountKey(amountOf(key))).toBe(key);
    }
  });
});
