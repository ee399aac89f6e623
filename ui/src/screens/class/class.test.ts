import { beforeEach, expect, it, vi } from 'vitest';
import * as bridge from '$lib/bridge';
import { CLASS, ROOMS } from '../../fixtures/class';
import { ClassState, needers } from './class.svelte';

vi.mock('$lib/bridge');
const shell = vi.mocked(bridge);
const NONE = { dumbbells: [], barbell: null, bands: [], things: [] };

beforeEach(() => {
  vi.resetAllMocks();
  shell.classView.mockImplementation((form) => Promise.resolve(CLASS(form)));
});

it('asks with the kit of a room that was just written down, and with her own again once it is removed', async () => {
  const klass = new ClassState('home', 'A');
  await klass.choose(['p12', 'p15']);
  expect(klass.view?.with_kit_of).toBeNull();
  shell.roomSave.mockResolvedValue(ROOMS);
  expect(await klass.saveRoom(null, 'Studio, ground floor', NONE)).toBe(true);
  expect(shell.classView.mock.lastCall?.[0]).toMatchObject({ room: 'studio', people: ['p12', 'p15'] });
  expect(klass.view?.with_kit_of).toBe('Studio, ground floor');
  shell.roomRemove.mockResolvedValue({ ...ROOMS, rooms: [] });
  expect(await klass.removeRoom('studio')).toBe(true);
  expect(shell.classView.mock.lastCall?.[0].room).toBeNull();
  expect(klass.view?.with_kit_of).toBeNull();
});

it('stays as it was when a room cannot be written', async () => {
  const klass = new ClassState('home', 'A');
  shell.roomSave.mockRejectedValue(new Error('no room on the disk'));
  shell.errorOf.mockReturnValue({ code: 'unexpected', message: '', remedy: '' });
  expect(await klass.saveRoom(null, 'Studio', NONE)).toBe(false);
  expect(klass.at).toBeNull();
  expect(klass.doing.error?.code).toBe('unexpected');
});

it('names who needs a thing where the most of it is needed', async () => {
  const klass = new ClassState('home', 'A');
  klass.at = 'studio';
  await klass.choose(['p4', 'p09', 'p12', 'p15']);
  const view = klass.view;
  const short = view?.room.find((t) => t.short);
  if (!view || !short) throw new Error('one pair is too few');
  expect(needers(view, short)).toHaveLength(2);
  expect(short.turns).toHaveLength(1);
});
