import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { app } from '$lib/app.svelte';
import * as bridge from '$lib/bridge';
import type { Role, SendView } from '$lib/types';
import { SendState } from './send.svelte';

const SEND: SendView = {
  folder: 'Documents',
  file_name: 'log.json',
  records: 3,
  last_session: null,
  coach: null,
  programme: null,
};

function open(role: Role): void {
  const card = { key: 'k', name: 'A', role, demo: false, about: null };
  app.take({ open: card, profiles: [card], version: '0' });
}

beforeEach(() => {
  vi.spyOn(bridge, 'sendView').mockResolvedValue(SEND);
  vi.spyOn(bridge, 'rosterView').mockResolvedValue({
    today: '2026-11-24',
    clients: [],
    archived: [],
    unread: 0,
    groups: [],
    ladders: [],
    conditions: [],
    baseline_kinds: [],
    programmes: [],
  });
});

afterEach(() => {
  app.view = null;
});

describe('sending', () => {
  it('writes nothing when the dialog is closed', async () => {
    open('client');
    const write = vi.spyOn(bridge, 'logWrite');
    vi.spyOn(bridge, 'chooseSavePath').mockResolvedValue(null);
    const send = new SendState();
    await send.read();
    await send.writeLog(true);
    expect(write).not.toHaveBeenCalled();
    expect(send.written).toBeNull();
    expect(send.doing.error, 'closing a dialog is no error').toBeNull();
  });

  it('writes to the usual folder without a dialog, and to the chosen place with one', async () => {
    open('client');
    const write = vi
      .spyOn(bridge, 'logWrite')
      .mockImplementation((path) => Promise.resolve({ path: path ?? 'usual', records: 3, bytes: 900 }));
    const choose = vi.spyOn(bridge, 'chooseSavePath').mockResolvedValue('elsewhere/log.json');
    const send = new SendState();
    await send.read();
    await send.writeLog(false);
    expect(send.written?.path).toBe('usual');
    expect(choose).not.toHaveBeenCalled();
    await send.writeLog(true);
    expect(choose, 'the usual name is suggested').toHaveBeenCalledWith('log.json');
    expect(write).toHaveBeenLastCalledWith('elsewhere/log.json');
  });

  it('hands on all files at once and shows the report file by file', async () => {
    open('coach');
    const report = {
      file: 'a.json',
      person: 'A',
      kind: 'log',
      new: 2,
      known: 0,
      gaps: [],
      refused: [],
      archived: false,
    };
    const take = vi.spyOn(bridge, 'takeIn').mockResolvedValue({ files: [report, { ...report, file: 'b' }] });
    const send = new SendState();
    await send.read();
    await send.takeIn([new File(['1'], 'a.json'), new File(['2'], 'b')]);
    expect(take).toHaveBeenCalledExactlyOnceWith([
      { name: 'a.json', text: '1' },
      { name: 'b', text: '2' },
    ]);
    expect(send.report?.map((f) => f.file)).toEqual(['a.json', 'b']);
  });

  it('keeps the screen as it was when a file cannot be written', async () => {
    open('client');
    vi.spyOn(bridge, 'logWrite').mockRejectedValue({
      code: 'write',
      message: 'no room',
      remedy: 'make room',
    });
    const send = new SendState();
    await send.read();
    await send.writeLog(false);
    expect(send.doing.error?.code).toBe('write');
    expect(send.view).toEqual(SEND);
    expect(send.doing.busy, 'it can be tried again').toBe(false);
  });
});
