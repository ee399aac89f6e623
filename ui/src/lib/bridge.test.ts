import { mockIPC, clearMocks } from '@tauri-apps/api/mocks';
import { afterEach, expect, test } from 'vitest';
import * as bridge from './bridge';

afterEach(clearMocks);

/** Calls `ask` and returns the first command that reached the shell, with its arguments. */
async function asked(ask: () => Promise<unknown>): Promise<[string, unknown]> {
  let seen: [string, unknown] | undefined;
  mockIPC((command, args) => {
    seen ??= [command, args];
    return null;
  });
  await ask();
  if (!seen) throw new Error('nothing reached the shell');
  return seen;
}

test('commands and their arguments reach the shell by the names it knows', async () => {
  const none = { kind: null, amount: null, place: null, words: null };
  expect(await asked(() => bridge.appView()), 'a view without arguments').toEqual(['app_view', {}]);
  expect(await asked(() => bridge.mark('r', true)), 'Tauri wants camelCase keys').toEqual([
    'mark',
    { run: 'r', atRest: true },
  ]);
  expect(await asked(() => bridge.markSay('m', none)), 'the whole symptom is sent').toEqual([
    'mark_say',
    { mark: 'm', symptom: none },
  ]);
  expect(await asked(() => bridge.setSkip('r', 's', 2)), 'rounds count from 1').toEqual([
    'set_skip',
    { run: 'r', slot: 's', round: 2 },
  ]);
});

test("the shell's error keeps its code and remedy; anything else is named unexpected", () => {
  const own = { code: 'file_cut', message: 'It ends too early.', remedy: 'Send it again.' };
  expect(bridge.errorOf(own), 'as it came').toEqual(own);
  expect(bridge.errorOf(new Error('boom')), 'a thrown Error').toEqual({
    code: 'unexpected',
    message: 'boom',
    remedy: '',
  });
  expect(bridge.errorOf('text').code, 'a bare string').toBe('unexpected');
});
