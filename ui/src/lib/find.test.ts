import { describe, expect, it } from 'vitest';
import { finds, plain } from './find';

describe('finding by name', () => {
  it.each([
    ['', 'Client 04'],
    ['clien', 'Client 04'],
    ['04 CLIENT', 'Client 04'],
    ['concepcion', 'María de la Concepción'],
    ['MARÍA', 'Maria'],
    ['wolod', 'Wołodkiewiczówna'],
    ['soren', 'Søren'],
  ])('%s finds %s', (typed, name) => {
    expect(finds(typed, name)).toBe(true);
  });

  it('does not find what is not there', () => {
    expect(finds('client 05', 'Client 04')).toBe(false);
    expect(plain('ÀÉÎõü')).toBe('aeiou');
  });
});
