import { line } from 'd3-shape';
import type { Point } from './circuitLayout.js';

const through = line<Point>(
  ({ x }) => x,
  ({ y }) => y,
).digits(1);

/** The path data of straight pieces from point to point. */
export function polyline(points: readonly Point[]): string {
  return through([...points]) ?? '';
}
