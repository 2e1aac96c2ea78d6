import type { Point } from './circuitLayout.js';

/** To a tenth: finer than a screen's pixel. */
const tenths = (value: number): number => Math.round(value * 10) / 10;

/** The path data of straight pieces from point to point. */
export function polyline(points: readonly Point[]): string {
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${tenths(x)},${tenths(y)}`).join('');
}
