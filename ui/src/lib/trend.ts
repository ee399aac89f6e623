// The shape of a trend chart: scales, the line, its band and the marks, worked out apart from the drawing so that
// they can be tested without one. Nothing here estimates anything; the numbers come from the engine.
import { extent } from 'd3-array';
import { scaleLinear, scaleUtc } from 'd3-scale';
import { area, curveLinear, line } from 'd3-shape';
import type { TrendPoint } from '../bindings/TrendPoint';

/** Room around the plot, in the units of the view box. */
export const MARGIN = { top: 26, right: 14, bottom: 30, left: 46 };

export interface TrendDot {
  x: number;
  y: number;
  /** Where the triangle of a marked symptom stands: above the band. */
  markY: number;
  day: string;
  marked: boolean;
}

export interface TrendShape {
  line: string;
  band: string;
  dots: TrendDot[];
  /** Ticks of strength, kg. */
  kgTicks: { y: number; kg: number }[];
  /** Days named under the axis: the first and the last, or the only one. */
  dayTicks: { x: number; day: string; end: 'start' | 'middle' | 'end' }[];
  /** The ground line. */
  baseY: number;
}

/** Milliseconds at the start of a calendar day; all days in the same zone, so that distances are whole days. */
function dayTime(day: string): number {
  return Date.parse(`${day}T00:00:00Z`);
}

/** Works out the drawing of `points` (in order of day) in a box of `width` by `height`. */
export function trendShape(points: readonly TrendPoint[], width: number, height: number): TrendShape {
  const left = MARGIN.left;
  const right = width - MARGIN.right;
  const baseY = height - MARGIN.bottom;
  const [firstTime, lastTime] = extent(points, (p) => dayTime(p.day));
  if (firstTime === undefined || lastTime === undefined) {
    return { line: '', band: '', dots: [], kgTicks: [], dayTicks: [], baseY };
  }
  const time = scaleUtc().domain([firstTime, lastTime]).range([left, right]);
  // A single day has no extent: it stands in the middle.
  const x = (p: TrendPoint): number => (firstTime === lastTime ? (left + right) / 2 : time(dayTime(p.day)));
  const kg = scaleLinear()
    .domain([Math.min(...points.map((p) => p.low)), Math.max(...points.map((p) => p.high))])
    .nice(4)
    .range([baseY, MARGIN.top]);
  const drawLine = line<TrendPoint>(x, (p) => kg(p.kg)).curve(curveLinear);
  const drawBand = area<TrendPoint>(
    x,
    (p) => kg(p.low),
    (p) => kg(p.high),
  ).curve(curveLinear);
  const first = points[0];
  const last = points[points.length - 1];
  const dayTicks: TrendShape['dayTicks'] = [];
  if (first && last) {
    if (first.day === last.day) {
      dayTicks.push({ x: x(first), day: first.day, end: 'middle' });
    } else {
      dayTicks.push({ x: left, day: first.day, end: 'start' }, { x: right, day: last.day, end: 'end' });
    }
  }
  return {
    line: points.length > 1 ? (drawLine([...points]) ?? '') : '',
    band: points.length > 1 ? (drawBand([...points]) ?? '') : '',
    dots: points.map((p) => ({
      x: x(p),
      y: kg(p.kg),
      markY: kg(p.high) - 6,
      day: p.day,
      marked: p.marked,
    })),
    kgTicks: kg.ticks(4).map((value) => ({ y: kg(value), kg: value })),
    dayTicks,
    baseY,
  };
}
