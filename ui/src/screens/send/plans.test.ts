import * as bridge from '$lib/bridge';
import type { ReceiptView, RosterView } from '$lib/types';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { CLIENTS } from '../../fixtures/people';
import { PlansOut } from './plans.svelte';

const ROSTER: RosterView = {
  today: '2026-11-24',
  clients: CLIENTS,
  archived: [],
  unread: 0,
  groups: [{ id: 'g', name: 'Monday', members: ['p12', 'p4'] }],
  conditions: [],
  baseline_kinds: [],
  programmes: [],
  ladders: [],
};
const RECEIPT: ReceiptView = { folder: 'f', file: 'r.txt', written: [], left_out: [], text: '' };

beforeEach(() => {
  vi.spyOn(bridge, 'rosterView').mockResolvedValue(ROSTER);
});

async function plans() {
  const write = vi.spyOn(bridge, 'plansWrite').mockResolvedValue(RECEIPT);
  const look = vi.spyOn(bridge, 'revisions').mockResolvedValue([]);
  const out = new PlansOut();
  await out.read();
  return { out, write, look };
}

describe('plan files', () => {
  it('are written at once where nothing is a revision', async () => {
    const { out, write, look } = await plans();
    await out.begin(['p4', 'p09'], false);
    expect(look).not.toHaveBeenCalled();
    expect(write).toHaveBeenCalledExactlyOnceWith(['p4', 'p09'], null, 'en');
    expect(out.receipt).toEqual(RECEIPT);
  });

  it('of a revision are read first, and closing that writes nothing', async () => {
    const { out, write, look } = await plans();
    await out.begin(null, false);
    expect(look, 'everybody who is due').toHaveBeenCalledExactlyOnceWith(['p4', 'p17', 'p09']);
    expect(write).not.toHaveBeenCalled();
    out.previews = null;
    expect(out.receipt).toBeNull();
    await out.begin(['p17'], false);
    await out.write();
    expect(write).toHaveBeenCalledExactlyOnceWith(['p17'], null, 'en');
    expect(out.previews).toBeNull();
  });

  it('go into another folder only if one was chosen', async () => {
    const { out, write } = await plans();
    const choose = vi.spyOn(bridge, 'chooseFolder').mockResolvedValue(null);
    await out.begin(['p4'], true);
    expect(write).not.toHaveBeenCalled();
    choose.mockResolvedValue('elsewhere');
    await out.begin(['p4'], true);
    expect(write).toHaveBeenCalledExactlyOnceWith(['p4'], 'elsewhere', 'en');
  });

  it('are chosen one by one and by group, nobody twice', async () => {
    const { out } = await plans();
    out.toggle('p4');
    out.chooseGroup('g');
    expect(out.chosen).toEqual(['p4', 'p12']);
    out.toggle('p4');
    expect(out.chosen).toEqual(['p12']);
  });
});
