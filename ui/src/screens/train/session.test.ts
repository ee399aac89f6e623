import { beforeEach, expect, test, vi } from 'vitest';
import {
  finished,
  inSession,
  isClosed,
  isReady,
  kg,
  mark,
  marked,
  view,
  work,
} from '../../fixtures/scenes-train';
import * as bridge from '$lib/bridge';
import type { Symptom, TrainView } from '$lib/types';
import { reserveOf, SetEntry } from './entry.svelte';
import { Train, UNSAID } from './session.svelte';

vi.mock('$lib/bridge', async (original) => {
  const real = await original<typeof import('$lib/bridge')>();
  const names = Object.keys(real).filter((name) => name !== 'errorOf');
  return { ...Object.fromEntries(names.map((name) => [name, vi.fn()])), errorOf: real.errorOf };
});

const shell = vi.mocked(bridge);

beforeEach(() => {
  vi.resetAllMocks();
});

/** A Train that shows what the shell says. */
async function showing(now: TrainView): Promise<Train> {
  shell.trainView.mockResolvedValue(now);
  const train = new Train();
  await train.begin();
  return train;
}

const rest = { after: 'set-5', until: '2026-03-12T09:10:00.000Z', seconds: 90 };

test('the card moves on only when the set is on disk', async () => {
  const train = await showing(inSession());
  let written: (v: TrainView) => void = () => undefined;
  shell.setLog.mockReturnValue(new Promise((done) => (written = done)));
  const entry = new SetEntry('run-5', work, train.memory);
  const logging = train.log(entry, reserveOf(3));
  expect(train.card, 'not before').toBe('work');
  expect(train.logged).toBe(0);
  written(inSession({ rest }));
  expect(await logging).toBe(true);
  expect(train.card, 'after').toBe('rest');
  expect(train.logged, 'a screen reader is told').toBe(1);
});

test('a double tap logs one set', async () => {
  const train = await showing(inSession());
  shell.setLog.mockResolvedValue(inSession({ rest }));
  const entry = new SetEntry('run-5', work, train.memory);
  const both = await Promise.all([train.log(entry, reserveOf(3)), train.log(entry, reserveOf(3))]);
  expect(both, 'the second tap is not taken').toEqual([true, false]);
  expect(shell.setLog).toHaveBeenCalledOnce();
});

test('a set that could not be written stays on its card, with what to do', async () => {
  const train = await showing(inSession());
  shell.setLog.mockRejectedValue({ code: 'store_full', message: 'No room.', remedy: 'Free some.' });
  const entry = new SetEntry('run-5', work, train.memory);
  entry.more();
  expect(await train.log(entry, reserveOf(2))).toBe(false);
  expect(train.card).toBe('work');
  expect(train.error?.remedy).toBe('Free some.');
  expect(entry.count, 'what she stepped is not lost').toBe(11);
  expect(train.busy, 'she can try again').toBe(false);
});

test('a rest ends at its deadline with what she added, and is not shown again once left', async () => {
  const train = await showing(inSession({ rest }));
  const until = Date.parse(rest.until);
  expect(train.restEnds()).toBe(until);
  train.stretchRest(rest.after, 30);
  train.stretchRest(rest.after, -15);
  expect(train.restEnds()).toBe(until + 15_000);
  train.leaveRest(rest.after);
  expect(train.card).toBe('work');
});

test('the mark is written before anything is asked', async () => {
  const train = await showing(inSession());
  shell.mark.mockResolvedValue({ mark, train: inSession({ marks: [mark] }) });
  await train.mark(false);
  expect(shell.mark).toHaveBeenCalledExactlyOnceWith('run-5', false);
  expect(shell.markSay, 'nothing has been said yet').not.toHaveBeenCalled();
  expect(train.card).toBe('mark');
  expect(train.draft, 'nothing is preselected').toEqual(UNSAID);
});

test('each choice is written, in its order, and the last answer is shown', async () => {
  const train = await showing(inSession());
  shell.mark.mockResolvedValue({ mark, train: inSession({ marks: [mark] }) });
  await train.mark(false);
  const answers: (() => void)[] = [];
  shell.markSay.mockImplementation(
    (_, symptom: Symptom) =>
      new Promise((done) =>
        answers.push(() => {
          done(marked(symptom));
        }),
      ),
  );
  void train.say({ kind: 'heaviness', amount: null });
  const second = train.say({ amount: { form: 'lot' } });
  expect(train.draft, 'the chips answer at once').toEqual({
    ...UNSAID,
    kind: 'heaviness',
    amount: { form: 'lot' },
  });
  await vi.waitFor(() => {
    expect(answers.length, 'the second waits for the first').toBe(1);
  });
  answers[0]?.();
  await vi.waitFor(() => {
    expect(answers.length).toBe(2);
  });
  expect(train.marking?.symptom.kind, 'an answer that was overtaken is not shown').toBeNull();
  answers[1]?.();
  await second;
  expect(train.marking?.follows.now).toBe('easier');
  expect(shell.markSay.mock.calls.map(([, s]) => [s.kind, s.amount?.form])).toEqual([
    ['heaviness', undefined],
    ['heaviness', 'lot'],
  ]);
});

test('a sign that stops training shows the stop card at once, and "not meant" leads back', async () => {
  const train = await showing(inSession());
  shell.mark.mockResolvedValue({ mark, train: inSession({ marks: [mark] }) });
  shell.markSay.mockImplementation((_, symptom) => Promise.resolve(marked(symptom)));
  await train.mark(true);
  await train.say({ kind: 'chest-pain', amount: null });
  expect(train.card).toBe('stop');
  shell.recordWithdraw.mockResolvedValue(inSession());
  await train.notMeant('mark-1');
  expect(shell.recordWithdraw).toHaveBeenCalledExactlyOnceWith('mark-1');
  expect(train.card).toBe('work');
});

test('on after a mark: the card that the shell now gives; stopped for today: the finish card', async () => {
  const train = await showing(inSession({ marks: [mark] }));
  expect(train.card, 'an undescribed mark is asked about after a restart').toBe('mark');
  await train.goOn();
  expect(train.card).toBe('work');
  train.marking = mark;
  await train.stopToday();
  expect(train.card).toBe('finish');
});

test('a choice that could not be written leaves the mark as it is, and says so', async () => {
  const train = await showing(inSession({ marks: [mark] }));
  shell.markSay.mockRejectedValue(new Error('gone'));
  await train.say({ kind: 'heaviness', amount: null });
  expect(train.error?.code).toBe('unexpected');
  expect(train.card).toBe('mark');
  shell.markSay.mockImplementation((_, symptom) => Promise.resolve(marked(symptom)));
  await train.say({ amount: { form: 'little' } });
  expect(train.error, 'the next one works again').toBeNull();
});

test('finishing sends what she said and leaves out what she did not', async () => {
  const train = await showing(inSession({ work: null }));
  shell.sessionFinish.mockResolvedValue(view({ state: 'finished', ...finished }));
  await train.finish('run-5', null, 26, '   ');
  expect(shell.sessionFinish).toHaveBeenCalledExactlyOnceWith({
    run: 'run-5',
    effort: null,
    minutes: 26,
    note: null,
    stopped_at: null,
  });
  expect(train.card).toBe('finished');
});

test('check-in leads into the session, or to the stop card', async () => {
  const train = await showing(isReady());
  train.checkingIn = true;
  expect(train.card).toBe('check-in');
  shell.sessionBegin.mockResolvedValue(isClosed());
  await train.start({ readiness: 'usual', symptoms: [{ ...UNSAID, kind: 'calf-one-sided' }], today: [] });
  expect(train.card).toBe('stop');
});

test('numbers left empty are none', async () => {
  const train = await showing(isClosed());
  shell.numbersSave.mockResolvedValue(isClosed());
  await train.keepNumbers(' 112 ', '  ');
  expect(shell.numbersSave).toHaveBeenCalledExactlyOnceWith('112', null);
});

test('ten reps, other options, leaving out and shortening reach the shell by name', async () => {
  const train = await showing(inSession());
  for (const command of [shell.tenReps, shell.optionChoose, shell.setSkip, shell.sessionShorten])
    command.mockResolvedValue(inSession());
  await train.tenReps('row-hinged', kg(8));
  await train.choose('run-5', 'a1', 'offset-hinge-held');
  await train.skip('run-5', 'a1', 2);
  await train.shorten('run-5');
  expect(shell.tenReps).toHaveBeenCalledWith('row-hinged', kg(8));
  expect(shell.optionChoose).toHaveBeenCalledWith('run-5', 'a1', 'offset-hinge-held');
  expect(shell.setSkip).toHaveBeenCalledWith('run-5', 'a1', 2);
  expect(shell.sessionShorten).toHaveBeenCalledWith('run-5');
});
