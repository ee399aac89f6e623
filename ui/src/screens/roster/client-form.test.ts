import { describe, expect, it } from 'vitest';
import type { IntakeView, RosterEntry } from '$lib/types';
import { amountKey, amountOf, IntakeDraft } from '../safety/intake-draft.svelte';
import { ClientDraft } from './client-form.svelte';

const entry = (over: Partial<RosterEntry>): RosterEntry => ({
  person: '0195',
  name: 'Client 04',
  stage: null,
  stage_recorded: null,
  conditions: [],
  baselines: [],
  trained: false,
  never: false,
  restrictions: [],
  clearance_waits: false,
  cleared: null,
  own_intake: null,
  programme: null,
  last_session: null,
  last_days: null,
  records: 0,
  week: null,
  kit: null,
  files: { plan: 'none', sent: null, arrived: false, unsent: 0, taken_in: null, brings: null, begins: null },
  waits: { red: false, holds: 0, clearance: false, screen: null },
  ladders: [],
  ...over,
});

const pregnant = { stage: 'pregnant', due: null, told: null, last_period: null, conceived: null } as const;

describe('the client form', () => {
  it('says what is missing before it is sent', () => {
    const draft = new ClientDraft();
    expect(draft.lacks).toEqual(['name']);
    draft.name = '  Client 40 ';
    draft.stage.choice = 'due';
    expect(draft.lacks, 'a due date is asked for').toEqual(['date']);
    expect(draft.toForm()).toBeNull();
    draft.stage.date = '2026-09-01';
    expect(draft.toForm()).toMatchObject({ name: 'Client 40', stage: { ...pregnant, due: '2026-09-01' } });
  });

  it('asks for no date where none belongs', () => {
    const draft = new ClientDraft();
    draft.name = 'A';
    draft.stage.date = '2026-01-05';
    draft.stage.choice = 'neither';
    expect(draft.toForm()?.stage).toEqual({ stage: 'neither' });
    draft.stage.choice = 'unsaid';
    expect(draft.toForm()?.stage).toBeNull();
  });

  it.each<{ recorded: RosterEntry['stage_recorded'] }>([
    { recorded: { ...pregnant, due: '2026-06-01', told: { who: 'midwife', on: '2026-01-02' } } },
    { recorded: { ...pregnant, last_period: '2025-11-01' } },
    { recorded: { ...pregnant, due: '2026-06-01', last_period: '2025-09-01' } },
    { recorded: { ...pregnant, conceived: { by: 'transfer', on: '2025-11-14', embryo: 'day3' } } },
    { recorded: { stage: 'postpartum', birth: '2026-01-10', mode: 'caesarean', severe_tear: false } },
    { recorded: { stage: 'postpartum', birth: '2026-01-10', mode: 'unsaid', severe_tear: null } },
    { recorded: { stage: 'after_loss', on: '2026-02-01' } },
    { recorded: { stage: 'neither' } },
    { recorded: null },
  ])('gives back unchanged what it took: $recorded', ({ recorded }) => {
    const given = {
      conditions: ['prolapse'],
      baselines: [{ kind: 'heaviness', amount: { form: 'little' as const } }],
      trained: true,
      never: false,
    };
    const draft = new ClientDraft(entry({ stage_recorded: recorded, ...given }));
    expect(draft.toForm()).toEqual({
      name: 'Client 04',
      stage: recorded,
      intake: { ...given, note: null, instead_of: [] },
    });
  });

  it('keeps what dated a pregnancy beside a date that a clinician gave', () => {
    const draft = new ClientDraft(entry({ stage_recorded: { ...pregnant, last_period: '2025-11-01' } }));
    draft.stage.choice = 'due';
    draft.stage.date = '2026-08-20';
    expect(draft.toForm()?.stage).toEqual({ ...pregnant, due: '2026-08-20', last_period: '2025-11-01' });
  });

  it('holds one amount for each usual symptom', () => {
    const draft = new IntakeDraft({ conditions: [], baselines: [], trained: false, never: true });
    draft.setBaseline('girdle-pain', 'pain-2');
    draft.setBaseline('girdle-pain', 'pain-3');
    expect(draft.baselines).toEqual([{ kind: 'girdle-pain', amount: { form: 'pain', value: 3 } }]);
    draft.removeBaseline('girdle-pain');
    expect(draft.baselines).toEqual([]);
    expect(draft.toForm()).toMatchObject({ trained: false, never: true });
  });

  it('sets hers aside with a note alone', () => {
    const hers: IntakeView = {
      record: 'i2',
      day: '2026-11-01',
      by: 'client',
      conditions: ['fracture'],
      baselines: [],
      trained: false,
      never: false,
      note: null,
    };
    const draft = new IntakeDraft({ conditions: [], baselines: [], trained: true, never: false }, hers);
    expect(draft.toForm().instead_of).toEqual([]);
    draft.over = true;
    expect(draft.lacksNote).toBe(true);
    draft.note = 'Healed, she meant an old one';
    expect(draft.lacksNote).toBe(false);
    expect(draft.toForm()).toMatchObject({ instead_of: ['i2'], note: 'Healed, she meant an old one' });
  });

  it('turns an amount into a key and back', () => {
    for (const key of ['little', 'clearly', 'lot', 'pain-1', 'pain-10']) {
      expect(amountKey(amountOf(key))).toBe(key);
    }
  });
});
