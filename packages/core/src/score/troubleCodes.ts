import { oneOf } from '../guard.js';
import { checkScore } from './checkScore.js';
import type { Score } from './score.js';

/** What a control unit can notice of a position sensor. */
export type TroubleKind = 'range' | 'low' | 'high' | 'intermittent';

/** A standard trouble code that a fault could set. */
export interface TroubleCode {
  /** The code, a letter and four digits. */
  readonly code: string;
  /** What it says of the circuit. */
  readonly kind: TroubleKind;
}

/** The last digit of each code; P012x is sensor A, P022x sensor B. */
const digits: Readonly<Record<TroubleKind, number>> = {
  range: 1,
  low: 2,
  high: 3,
  intermittent: 4,
};

/**
 * The standard trouble codes that such a fault could set in a control unit that watches this sensor. They are those
 * of road vehicles; the machine at hand may use its own, or none.
 *
 * Source: SAE J2012; P0122, P0123, P0222 and P0223 as service manuals quote it, P0121, P0124, P0221 and P0224 from
 * memory. Which fault sets which is common practice, no source.
 *
 * @param score The judged sweep.
 * @param sensor `A` for the first track or sensor, `B` for the second; `A` when left out.
 * @returns The codes in order; none where nothing is wrong with the signal.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const time = Float64Array.from({ length: 100 }, (_, i) => i / 100);
 * const dead = scoreSweep({ time, signal: new Float64Array(100).fill(2.5) }, expectation(circuit));
 * troubleCodes(dead) // => [{ code: 'P0121', kind: 'range' }]
 */
export function troubleCodes(
  score: Pick<Score, 'checks' | 'findings'>,
  sensor: 'A' | 'B' = 'A',
): readonly TroubleCode[] {
  checkScore(score, 'score', ['checks', 'findings']);
  oneOf(sensor, ['A', 'B'], 'sensor');
  const { checks, findings } = score;
  const kinds = new Set<TroubleKind>();
  for (const { kind, depth } of findings) {
    if (kind === 'dropout') kinds.add('intermittent').add(depth < 0 ? 'low' : 'high');
    else if (kind !== 'spike') kinds.add('range');
  }
  for (const { check, outcome, measured, lowLimit, highLimit } of checks) {
    if (outcome !== 'fails' && outcome !== 'marginal') continue;
    if (check === 'live-output' || check === 'closed-rest') kinds.add('range');
    if (check !== 'closed-end' && check !== 'open-end') continue;
    if (measured !== undefined && lowLimit !== undefined && measured < lowLimit) kinds.add('low');
    if (measured !== undefined && highLimit !== undefined && measured > highLimit)
      kinds.add('high');
  }
  return (Object.keys(digits) as TroubleKind[])
    .filter((kind) => kinds.has(kind))
    .map((kind) => ({ code: `P0${sensor === 'A' ? 1 : 2}2${digits[kind]}`, kind }));
}
