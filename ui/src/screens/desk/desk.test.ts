import { beforeEach, describe, expect, it, vi } from 'vitest';
import * as bridge from '$lib/bridge';
import type { ClientView, DeskView, LadderView } from '$lib/types';
import { DeskState, planFileName } from './desk.svelte';

const DESK: DeskView = { queue: [], well: [], unread: 0, taken_in: 0 };
const ladder = (id: string, points = 0): LadderView => ({
  ladder: id,
  levels: [['a']],
  level: 0,
  afresh: false,
  next: null,
  variant: 'a',
  load: null,
  held: false,
  reasons: [],
  trend: {
    group: id,
    points: Array.from({ length: points }, () => ({
      day: '2026-03-01',
      kg: 20,
      low: 18,
      high: 22,
      marked: false,
    })),
  },
});
const story = (person: string, over: Partial<ClientView> = {}): ClientView => ({
  client: {
    person,
    name: person,
    stage: null,
    stage_recorded: null,
    conditions: [],
    baselines: [],
    trained: false,
    never: false,
    restrictions: [],
    cleared: null,
    own_intake: null,
    clearance_waits: false,
    programme: null,
    last_session: null,
    last_days: null,
    records: 0,
    week: null,
    kit: null,
    files: {
      plan: 'none',
      sent: null,
      arrived: false,
      unsent: 0,
      taken_in: null,
      brings: null,
      begins: null,
    },
    waits: { red: false, holds: 0, clearance: false, screen: null },
    ladders: [],
  },
  choices: [],
  findings: [],
  ladders: [ladder('breathing'), ladder('squat', 2), ladder('row', 2)],
  sessions: [],
  holds: [],
  red: false,
  answers: [],
  next: null,
  next_title: '',
  ...over,
});

beforeEach(() => {
  vi.spyOn(bridge, 'deskView').mockResolvedValue(DESK);
});

describe('the desk', () => {
  it('drops the story of one client that arrives after another was chosen', async () => {
    let slow: (view: ClientView) => void = () => undefined;
    vi.spyOn(bridge, 'clientView').mockImplementation((person) =>
      person === 'slow' ? new Promise((done) => (slow = done)) : Promise.resolve(story(person)),
    );
    const desk = new DeskState();
    const first = desk.choose('slow');
    await desk.choose('quick');
    slow(story('slow'));
    await first;
    expect(desk.client?.client.person, 'nothing of one is shown under the name of the other').toBe('quick');
  });

  it('shows its list as it comes, asks until it is whole, and says when that goes wrong', async () => {
    const desk = new DeskState();
    const left = [24, 12, 0];
    const shown: (number | undefined)[] = [];
    const pieces = vi.mocked(bridge.deskView).mockImplementation(() => {
      shown.push(desk.view?.unread);
      return Promise.resolve({ ...DESK, unread: left.shift() ?? 0 });
    });
    await desk.read();
    expect(desk.view?.unread).toBe(0);
    expect(shown, 'what came before is shown while the rest is asked for').toEqual([undefined, 24, 12]);
    pieces.mockResolvedValueOnce({ ...DESK, unread: 9 }).mockRejectedValueOnce(new Error('gone'));
    await desk.read();
    expect(desk.view?.unread, 'what came stays').toBe(9);
    expect([desk.doing.last, desk.doing.error !== null]).toEqual(['read', true]);
  });

  it('begins the trend where something waits, else at the first ladder that has one', async () => {
    const view = vi.spyOn(bridge, 'clientView').mockResolvedValue(story('a'));
    const desk = new DeskState();
    await desk.choose('a');
    expect(desk.ladder).toBe('squat');
    const hold = {
      hold: 'h',
      day: '2026-03-01',
      symptom: null,
      ladder: 'row',
      scope: 'ladder' as const,
      answers: [],
    };
    view.mockResolvedValue(story('b', { holds: [hold] }));
    await desk.choose('b');
    expect(desk.ladder).toBe('row');
    view.mockResolvedValue(
      story('c', {
        findings: [{ code: 'kit-limit', urge: 'look', facts: { ladder: { is: 'ladder', value: 'gone' } } }],
      }),
    );
    await desk.choose('c');
    expect(desk.ladder, 'a ladder that is not in her programme has no trend to show').toBe('squat');
  });

  it('reads the list again after an answer, and forgets the file written before it', async () => {
    vi.spyOn(bridge, 'clientView').mockResolvedValue(story('a'));
    vi.spyOn(bridge, 'planWrite').mockResolvedValue({ path: 'plan.json', records: 2, bytes: 10 });
    vi.spyOn(bridge, 'holdAnswer').mockResolvedValue(story('a'));
    const desk = new DeskState();
    await desk.choose('a');
    await desk.writePlan(false);
    expect(desk.written?.path).toBe('plan.json');
    const before = vi.mocked(bridge.deskView).mock.calls.length;
    await desk.answer('h', 'restart_lighter', '  go slowly ');
    expect(bridge.holdAnswer).toHaveBeenCalledExactlyOnceWith('a', 'h', 'restart_lighter', 'go slowly');
    expect(vi.mocked(bridge.deskView).mock.calls.length).toBe(before + 1);
    expect(desk.written, 'the answer is not in that file').toBeNull();
  });

  it('says what went wrong with a story and keeps the list', async () => {
    vi.spyOn(bridge, 'clientView').mockRejectedValue({ code: 'gone', message: 'm', remedy: 'r' });
    const desk = new DeskState();
    await desk.read();
    await desk.choose('a');
    expect(desk.storyError?.code).toBe('gone');
    expect(desk.view).toEqual(DESK);
  });

  it('changes nothing while nobody is chosen', async () => {
    const write = vi.spyOn(bridge, 'noteWrite');
    const desk = new DeskState();
    expect(await desk.note('x')).toBe(false);
    expect(write).not.toHaveBeenCalled();
  });

  it('writes nothing when the dialog for another place is closed, and suggests a name that any disk takes', async () => {
    vi.spyOn(bridge, 'clientView').mockResolvedValue(story('Ana / Łucja  de la C.'));
    const write = vi.spyOn(bridge, 'planWrite');
    const ask = vi.spyOn(bridge, 'chooseSavePath').mockResolvedValue(null);
    const desk = new DeskState();
    await desk.choose('a');
    await desk.writePlan(true);
    expect(ask).toHaveBeenCalledExactlyOnceWith('ana-łucja-de-la-c-plan.newel.json');
    expect(write).not.toHaveBeenCalled();
    expect(planFileName('…'), 'never an empty name').toBe('client-plan.newel.json');
  });
});
