import { mockIPC, clearMocks } from '@tauri-apps/api/mocks';
import { afterEach, expect, test } from 'vitest';
import { appVersion } from './bridge';

afterEach(clearMocks);

test('the version is asked of the shell by its command name', async () => {
  const asked: string[] = [];
  mockIPC((command) => {
    asked.push(command);
    return { version: '1.2.3' };
  });
  expect(await appVersion(), 'the answer is handed on as it came').toEqual({ version: '1.2.3' });
  expect(asked, 'exactly one command is called').toEqual(['app_version']);
});
