import { describe, expect, it } from 'vitest';
import type { TrendPoint } from '../bindings/TrendPoint';
import { MARGIN, trendShape } from './trend';

const point = (day: string, kg: number, half: number, marked = false): TrendPoint => ({
  day,
  kg,
  low: kg - half,
  high: kg + half,
  marked,
});

describe('the shape of a trend', () => {
  it('is empty without points, and draws no line through a single one', () => {
    expect(trendShape([], 600, 220).dots).toEqual([]);
    const one = trendShape([point('2026-03-05', 30, 4)], 600, 220);
    expect(one.line).toBe('');
    expect(one.dots[0]?.x).toBeCloseTo((MARGIN.left + 600 - MARGIN.right) / 2, 6);
    expect(one.dayTicks).toHaveLength(1);
  });

  it('places days by the calendar and not by their number in the list', () => {
    const shape = trendShape(
      [point('2026-03-01', 30, 4), point('2026-03-03', 31, 4), point('2026-03-11', 33, 4)],
      600,
      220,
    );
    const [a, b, c] = shape.dots;
    if (!a || !b || !c) throw new Error('three points give three dots');
    expect((b.x - a.x) / (c.x - a.x), 'two of ten days').toBeCloseTo(0.2, 6);
    expect(a.x).toBe(MARGIN.left);
    expect(c.x).toBe(600 - MARGIN.right);
    expect(c.y, 'more strength stands higher').toBeLessThan(a.y);
  });

  it('keeps the whole band inside the plot', () => {
    const shape = trendShape([point('2026-03-01', 20, 9), point('2026-03-08', 24, 3, true)], 600, 220);
    const numbers = shape.band.match(/-?\d+(\.\d+)?/g)?.map(Number) ?? [];
    const ys = numbers.filter((_, i) => i % 2 === 1);
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(MARGIN.top - 1e-6);
    expect(Math.max(...ys)).toBeLessThanOrEqual(220 - MARGIN.bottom + 1e-6);
    expect(shape.dots.map((d) => d.marked)).toEqual([false, true]);
    expect(shape.dots[1]?.markY, 'a mark stands above the band').toBeLessThan(shape.dots[1]?.y ?? 0);
  });
});
