import { afterEach, describe, expect, it, vi } from 'vitest';
import { app } from '$lib/app.svelte';
import * as bridge from '$lib/bridge';
import type { AppView, ProfileCard } from '$lib/types';
import { StartState } from './start.svelte';

const card = (over: Partial<ProfileCard>): ProfileCard => ({
  key: 'k',
  name: 'A',
  role: 'client',
  demo: false,
  about: null,
  ...over,
});
const view = (open: ProfileCard | null, profiles: ProfileCard[] = []): AppView => ({
  open,
  profiles,
  version: '0',
});

afterEach(() => {
  app.view = null;
});

describe('first start', () => {
  it('asks for a name before it makes a profile, and trims it', async () => {
    const make = vi.spyOn(bridge, 'profileNew').mockResolvedValue(view(card({ role: 'coach' })));
    const start = new StartState();
    start.name = '   ';
    await start.begin();
    expect(start.nameMissing).toBe(true);
    expect(make).not.toHaveBeenCalled();
    start.name = ' Juniper ';
    start.role = 'coach';
    await start.begin();
    expect(make).toHaveBeenCalledExactlyOnceWith('Juniper', 'coach');
    expect(app.screen, 'a coach begins at her desk').toBe('desk');
  });

  it('hands on a plan file as it is, and says why one was not taken', async () => {
    const plan = vi
      .spyOn(bridge, 'profileFromPlan')
      .mockRejectedValue({ code: 'file-error-altered', message: 'changed on the way', remedy: 'again' });
    const start = new StartState();
    await start.fromPlan([new File(['{"plan":1}'], 'plan.json')]);
    expect(plan).toHaveBeenCalledExactlyOnceWith('{"plan":1}');
    expect(start.doing.error?.code).toBe('file-error-altered');
    expect(app.open).toBeNull();
  });

  it('adds invented people and opens none of them by itself', async () => {
    vi.spyOn(bridge, 'demoMake').mockResolvedValue(view(null, [card({ demo: true })]));
    const start = new StartState();
    expect(await start.demo()).toBe(true);
    expect(app.open).toBeNull();
    expect(app.view?.profiles).toHaveLength(1);
  });
});
