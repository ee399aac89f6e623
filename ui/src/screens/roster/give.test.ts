import { describe, expect, it } from 'vitest';
import { CLIENTS } from '../../fixtures/people';
import { GiveDraft } from './give.svelte';

describe('giving a programme', () => {
  it('goes to groups and single clients, each with her own day or the common one', () => {
    const draft = new GiveDraft(CLIENTS, 'p4');
    draft.addGroup({ id: 'g', name: 'Monday', members: ['p12', 'p4'] });
    expect(draft.ready, 'a programme is missing').toBe(false);
    draft.programme = 'home';
    draft.begins = '2026-12-07';
    const second = draft.to[1];
    if (second) second.begins = '2026-12-14';
    expect(draft.toForm()).toEqual([
      { person: 'p4', begins: '2026-12-07' },
      { person: 'p12', begins: '2026-12-14' },
    ]);
    draft.begins = '';
    expect(draft.toForm()[0]?.begins).toBeNull();
    draft.drop('p4');
    draft.drop('p12');
    expect(draft.ready).toBe(false);
  });
});
