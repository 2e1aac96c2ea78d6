import type { ReferenceLine } from './shape.js';

/** The line in the middle of the narrowest band, measured along y, that holds all points. */
export interface NarrowestBand {
  readonly line: ReferenceLine;
  /** Half the band's height: the largest deviation from the line. */
  readonly deviation: number;
  /** The points that hold it: two on one edge with the one between them on the other, each by its place in the arrays. */
  readonly held: readonly [edge: number, between: number, edge: number];
  /** How the deviation answers to the y of each of them; the sizes add up to 1. */
  readonly weights: readonly [number, number, number];
}

/** What arithmetic may leave between two numbers that are equal, as a fraction of them. */
const rounding = 1e-13;

/**
 * The straight line with the smallest largest deviation along y (minimax, Chebyshev).
 *
 * Method: the band's height over its slope is convex and bends only where an edge of the points' convex hull lies on
 * the band, so that the best band lies on an edge of one hull and a corner of the other. Hulls by A. M. Andrew,
 * "Another efficient algorithm for convex hulls in two dimensions", Information Processing Letters 9, 1979 (from
 * memory); the corner opposite each edge is followed along the other hull. Exact but for rounding, O(n log n).
 *
 * @returns Nothing where all points have one x.
 */
export function narrowestBand(x: Float64Array, y: Float64Array): NarrowestBand | undefined {
  const order = Uint32Array.from(x, (_, i) => i).sort((a, b) => x[a]! - x[b]!);
  const lower = hull(order, x, y, 1);
  const upper = hull(order, x, y, -1);
  let best: NarrowestBand | undefined;
  let bestIsHeld = false;
  for (const side of [1, -1] as const) {
    const [edges, opposite] = side === 1 ? [lower, upper] : [upper, lower];
    let corner = opposite.length - 1;
    for (let e = 1; e < edges.length; e++) {
      const [a, b] = [edges[e - 1]!, edges[e]!];
      const slope = (y[b]! - y[a]!) / (x[b]! - x[a]!);
      if (!Number.isFinite(slope)) continue;
      const height = (at: number): number =>
        side * (y[opposite[at]!]! - y[a]! - slope * (x[opposite[at]!]! - x[a]!));
      let highest = height(corner);
      // Back as well, since edges between places read twice have any slope; past what is level but for rounding.
      for (const step of [-1, 1]) {
        for (let at = corner + step; height(at) >= height(corner) * (1 - rounding); at += step) {
          if (height(at) > height(corner) * (1 + rounding)) corner = at;
          highest = Math.max(highest, height(at));
        }
      }
      const deviation = highest / 2;
      const c = opposite[corner]!;
      const share = (x[b]! - x[c]!) / (x[b]! - x[a]!);
      // The best band's corner lies between the ends of its edge. Of two parallel edges that hold it the right end of one
      // lies over the other: there corners go to the right end, and the edge over which it doesn't lie is no better.
      const isHeld = share > -rounding && share < 1 + rounding;
      const isBetter = deviation < (best?.deviation ?? Infinity);
      if (!(bestIsHeld === isHeld ? isBetter : isHeld)) continue;
      bestIsHeld = isHeld;
      const part = Math.min(1, Math.max(0, share));
      best = {
        line: { intercept: y[a]! - slope * x[a]! + side * deviation, slope },
        deviation: Math.max(0, deviation),
        held: [a, c, b],
        weights: [(-side * part) / 2, side / 2, (-side * (1 - part)) / 2],
      };
    }
  }
  return best;
}

/** Corners of the lower (side 1) or upper (side −1) hull by rising x, no two of one x but for rounding. */
function hull(order: Uint32Array, x: Float64Array, y: Float64Array, side: 1 | -1): number[] {
  const corners: number[] = [];
  const samePlace = rounding * (x[order.at(-1)!]! - x[order[0]!]!);
  for (const i of order) {
    if (x[i]! - x[corners.at(-1)!]! <= samePlace) {
      if (side * y[i]! >= side * y[corners.at(-1)!]!) continue;
      corners.pop();
    }
    while (corners.length > 1) {
      const [a, b] = [corners.at(-2)!, corners.at(-1)!];
      const turn = (x[b]! - x[a]!) * (y[i]! - y[a]!) - (y[b]! - y[a]!) * (x[i]! - x[a]!);
      if (side * turn > 0) break;
      corners.pop();
    }
    corners.push(i);
  }
  return corners;
}
