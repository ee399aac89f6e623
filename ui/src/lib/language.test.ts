import { expect, test } from 'vitest';
import { pick } from './language';

test('the choice comes first, then the system, then English', () => {
  expect(pick('es', ['en-GB'])).toBe('es');
  expect(pick(null, ['es-MX', 'en'])).toBe('es');
  expect(pick(null, ['pt-BR', 'es'])).toBe('es');
  expect(pick(null, ['pt-BR'])).toBe('en');
  expect(pick('xx', ['ES'])).toBe('es');
  expect(pick(null, [])).toBe('en');
});
