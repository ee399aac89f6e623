// The cards as she taps them: the tap that logs a set, and the way of a mark.
import { fireEvent, render, screen, waitFor, within } from '@testing-library/svelte';
import { beforeEach, expect, test, vi } from 'vitest';
import { inSession, isReady, kg, mark, marked, work } from '../../fixtures/scenes-train';
import * as bridge from '$lib/bridge';
import type { TrainView } from '$lib/types';
import TrainScreen from './Train.svelte';

vi.mock('$lib/bridge', async (original) => {
  const real = await original<typeof import('$lib/bridge')>();
  const names = Object.keys(real).filter((name) => name !== 'errorOf');
  return { ...Object.fromEntries(names.map((name) => [name, vi.fn()])), errorOf: real.errorOf };
});

const shell = vi.mocked(bridge);

beforeEach(() => {
  vi.resetAllMocks();
  sessionStorage.clear();
});

async function open(now: TrainView, card: string): Promise<void> {
  shell.trainView.mockResolvedValue(now);
  render(TrainScreen);
  await screen.findByTestId(`card-${card}`);
}

const tap = (id: string) => fireEvent.click(screen.getByTestId(id));

test('one tap on the row logs the set with what stands there', async () => {
  await open(inSession(), 'work');
  shell.setLog.mockResolvedValue(
    inSession({ rest: { after: 'set-5', until: new Date(Date.now() + 60_000).toISOString(), seconds: 90 } }),
  );
  await tap('count-less');
  await tap('load-more');
  await tap('reserve-5');
  expect(shell.setLog).toHaveBeenCalledExactlyOnceWith({
    run: 'run-5',
    slot: 'a1',
    round: 2,
    side: 'left',
    variant: 'offset-hinge-loaded',
    load: kg(16),
    done: { by: 'reps', count: 9 },
    reserve: { said: 'at_least', reps: 5 },
  });
  await screen.findByTestId('card-rest');
  expect(screen.getByTestId('train-said').textContent, 'said aloud').toContain('Logged');
  await tap('rest-go');
  await screen.findByTestId('card-work');
});

test('the aim is marked by a word and not by its fill alone', async () => {
  await open(inSession(), 'work');
  expect(screen.getByTestId('reserve-3').textContent).toContain('aim');
  expect(screen.getByTestId('reserve-2').textContent).not.toContain('aim');
});

test('a lighter load is taken with one tap and logged with the set', async () => {
  await open(inSession({ work: { ...work, lighter_offer: kg(10) } }), 'work');
  shell.setLog.mockResolvedValue(inSession());
  await tap('take-lighter');
  expect(screen.getByTestId('load').textContent).toContain('10');
  await tap('reserve-3');
  expect(shell.setLog.mock.calls[0]?.[0].load).toEqual(kg(10));
});

test('a timed set is logged by one tap after its clock', async () => {
  await open(
    inSession({ work: { ...work, target: { by: 'seconds', count: 20 }, aim: null, asks_effort: false } }),
    'work',
  );
  shell.setLog.mockResolvedValue(inSession());
  await tap('timer-start');
  expect(screen.getByTestId('log-done'), 'not while the clock runs').toHaveProperty('disabled', true);
  await tap('timer-stop');
  await tap('count-more');
  await tap('log-done');
  expect(shell.setLog.mock.calls[0]?.[0], 'no effort is asked').toMatchObject({
    done: { by: 'seconds', count: 5 },
    reserve: null,
  });
});

test('a mark: one tap, then what, then how much, with what follows in the same view', async () => {
  await open(inSession(), 'work');
  shell.mark.mockResolvedValue({ mark, train: inSession({ marks: [mark] }) });
  shell.markSay.mockImplementation((_, symptom) => Promise.resolve(marked(symptom)));
  await tap('feel');
  await screen.findByTestId('card-mark');
  expect(shell.mark, 'written before the first question').toHaveBeenCalledExactlyOnceWith('run-5', false);
  expect(shell.markSay).not.toHaveBeenCalled();
  expect(screen.queryByTestId('kind-chest-pain'), 'the urgent signs wait behind one button').toBeNull();

  await tap('kind-heaviness');
  await waitFor(() => {
    expect(screen.getByTestId('follows').dataset['now']).toBe('easier');
  });
  expect(
    within(screen.getByTestId('follows')).getByRole('img').getAttribute('aria-label'),
    'the stair shows the step below',
  ).toBe('Step 1 of 4');
  expect(
    screen.getAllByRole('button').filter((b) => b.getAttribute('aria-pressed') === 'true'),
    'no amount is preselected',
  ).toEqual([]);
  await tap('amount-clearly');
  expect(shell.markSay.mock.lastCall?.[1]).toMatchObject({ kind: 'heaviness', amount: { form: 'clearly' } });

  await tap('mark-go');
  await screen.findByTestId('card-work');
});

test('"not meant" takes the mark back', async () => {
  await open(inSession({ marks: [mark] }), 'mark');
  shell.recordWithdraw.mockResolvedValue(inSession());
  await tap('mark-undo');
  await screen.findByTestId('card-work');
  expect(shell.recordWithdraw).toHaveBeenCalledExactlyOnceWith(mark.mark);
});

test('a sign that stops training leads to the stop card, with what to do and whom to call', async () => {
  await open(inSession({ marks: [mark] }), 'mark');
  shell.markSay.mockImplementation((_, symptom) => Promise.resolve(marked(symptom)));
  await tap('kinds-urgent');
  await tap('kind-calf-one-sided');
  await screen.findByTestId('card-stop');
  expect(screen.getByTestId('stop-do').textContent).toContain('do not rub');
  expect(screen.getByTestId('numbers').textContent).toContain('112');
  shell.sessionFinish.mockResolvedValue(inSession());
  await tap('stop-read');
  expect(shell.sessionFinish.mock.calls[0]?.[0]).toMatchObject({ run: 'run-5', effort: null });
});

test('pain is asked from 0 to 10 and nothing is chosen beforehand', async () => {
  await open(inSession({ marks: [mark] }), 'mark');
  shell.markSay.mockImplementation((_, symptom) => Promise.resolve(marked(symptom)));
  await tap('kind-girdle-pain');
  const steps = Array.from({ length: 11 }, (_, i) => screen.getByTestId(`pain-${i}`));
  expect(steps.every((s) => s.getAttribute('aria-pressed') === 'false')).toBe(true);
  await tap('pain-6');
  expect(shell.markSay.mock.lastCall?.[1].amount).toEqual({ form: 'pain', value: 6 });
});

test('a session starts only when she has said how she is and whether there was anything', async () => {
  await open(isReady({ next_day: null }), 'ready');
  await tap('begin');
  await screen.findByTestId('card-check-in');
  shell.sessionBegin.mockResolvedValue(inSession());
  const start = () => screen.getByTestId('start');
  expect(start()).toHaveProperty('disabled', true);
  await tap('readiness-tired');
  expect(start(), 'symptoms are still open').toHaveProperty('disabled', true);
  await tap('since-some');
  expect(start(), 'and have to be named').toHaveProperty('disabled', true);
  await tap('kind-heaviness');
  await tap('amount-little');
  await tap('symptom-keep');
  expect(start()).toHaveProperty('disabled', false);
  await tap('today-pessary_in');
  await tap('today-no_kit');
  await tap('today-pessary_out');
  await tap('start');
  expect(shell.sessionBegin).toHaveBeenCalledExactlyOnceWith({
    readiness: 'tired',
    symptoms: [{ kind: 'heaviness', amount: { form: 'little' }, place: null, words: null }],
    // In and out are one or the other.
    today: ['no_kit', 'pessary_out'],
  });
  await screen.findByTestId('card-work');
});

test('what waits for its day is looked at, and begun earlier if she wants, also past the next-day question', async () => {
  await open(isReady({ later: { programme: 'Studio', begins: '2026-12-07' } }), 'ready');
  const early = isReady({ until_then: 'Kitchen', begins: '2026-12-07', programme: 'Studio' });
  shell.trainEarly.mockResolvedValue(early);
  await tap('look-early');
  await screen.findByTestId('back-to-now');
  await tap('begin');
  shell.nextDayAnswer.mockResolvedValue(isReady({ next_day: null }));
  shell.trainEarly.mockResolvedValue(
    isReady({ next_day: null, until_then: 'Kitchen', begins: '2026-12-07', programme: 'Studio' }),
  );
  await tap('next-day-settled');
  await tap('readiness-usual');
  await tap('since-none');
  shell.sessionBeginEarly.mockResolvedValue(inSession());
  await tap('start');
  expect(shell.sessionBeginEarly).toHaveBeenCalledExactlyOnceWith({
    readiness: 'usual',
    symptoms: [],
    today: [],
  });
  expect(shell.sessionBegin).not.toHaveBeenCalled();
});

test('the next morning is answered by itself, and "not settled" says what', async () => {
  await open(isReady(), 'ready');
  await tap('begin');
  shell.nextDayAnswer.mockResolvedValue(isReady({ next_day: null }));
  await tap('next-day-not_settled');
  await tap('kind-heaviness');
  await tap('symptom-keep');
  await tap('next-day-keep');
  expect(shell.nextDayAnswer).toHaveBeenCalledExactlyOnceWith('run-4', 'not_settled', [
    { kind: 'heaviness', amount: null, place: null, words: null },
  ]);
  await waitFor(() => {
    expect(screen.queryByTestId('next-day-settled'), 'asked once').toBeNull();
  });
});

test('the last set can be corrected and taken back from the rest', async () => {
  const rest = { after: 'set-4', until: new Date(Date.now() + 60_000).toISOString(), seconds: 90 };
  await open(inSession({ rest }), 'rest');
  shell.setCorrect.mockResolvedValue(inSession({ rest }));
  await tap('correct');
  await tap('fix-count-less');
  await tap('reserve-1');
  await tap('fix-keep');
  expect(shell.setCorrect).toHaveBeenCalledExactlyOnceWith({
    record: 'set-4',
    load: kg(8),
    done: { by: 'reps', count: 8 },
    reserve: { said: 'exactly', reps: 1 },
  });
  shell.recordWithdraw.mockResolvedValue(inSession());
  await tap('undo');
  expect(shell.recordWithdraw).toHaveBeenCalledExactlyOnceWith('set-4');
});

test('a rest that ended while nobody looked waits for her', async () => {
  const rest = { after: 'set-4', until: new Date(Date.now() - 600_000).toISOString(), seconds: 90 };
  await open(inSession({ rest }), 'rest');
  expect(screen.getByTestId('rest-left').textContent).toContain('0:00');
  expect(screen.getByTestId('rest-go').textContent, 'on when she is ready').toContain('Next set');
  await tap('rest-more');
  expect(screen.getByTestId('rest-left').textContent, 'more time counts from now').toMatch(/0:(29|30)/);
});
