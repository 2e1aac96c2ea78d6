import { bisection } from '../bisection.js';
import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { positive } from '../guard.js';
import type { Travel, Volts } from '../units.js';
import { outputFunction } from './outputFunction.js';
import { restLevelOf } from './restLevel.js';
import { turningPoints } from './turningPoints.js';

/** Where over the travel a lifted wiper would not be seen. */
export type BlindStretch =
  | {
      readonly kind: 'at-rest-level';
      /** Where the load pulls a lifted wiper, V, from the lowest to the highest voltage of the hook-up. */
      readonly restLevel: Volts;
      /** Stretches of travel from … to, rising, 0 to 1; empty where a lifted wiper shows everywhere. */
      readonly stretches: readonly (readonly [Travel, Travel])[];
    }
  /** Nothing pulls a lifted wiper anywhere, so it can be at any voltage: no dropout is sure to show at any travel. */
  | {
      readonly kind: 'floating';
      /** The whole travel, from 0 to 1. */
      readonly stretches: readonly [readonly [0, 1]];
    };

/**
 * The stretches of travel where the output lies so near the load's rest level that a lifted wiper changes it
 * by less than a given voltage: no dropout can show there, on this load.
 *
 * Method: the distance from the rest level is searched for its turning points, and each border between them is
 * bisected, to better than 1e-9 of travel.
 *
 * @param circuit The hook-up, in SI units.
 * @param visible The smallest change that would be seen, V, above 0.
 * @throws InputError for a wrong circuit or `visible`, or `no-output` where the output has no single value.
 *
 * @example
 * const sensor = { track: 5000 };
 * const meter = { pullDown: 10e6 };
 * blindStretch({ source: { volts: 5 }, limiter: 0, sensor, load: meter }, 0.1).stretches[0][1].toFixed(4) // => '0.0200'
 * blindStretch({ source: { volts: 5 }, limiter: 0, sensor, load: {} }, 0.1) // => { kind: 'floating', stretches: [[0, 1]] }
 */
export function blindStretch(circuit: Circuit, visible: Volts): BlindStretch {
  checkCircuit(circuit);
  positive(visible, 'visible', 'V');
  const output = outputFunction(circuit);
  const restLevel = restLevelOf(circuit);
  if (restLevel === undefined) return { kind: 'floating', stretches: [[0, 1]] };
  const excess = (travel: Travel): Volts =>
    Math.abs(output(positionAt(circuit.sensor, travel)) - restLevel) - visible;
  return { kind: 'at-rest-level', restLevel, stretches: below(excess) };
}

/** The stretches between 0 and 1 where a function is negative. */
function below(value: (at: number) => number): readonly (readonly [number, number])[] {
  const places = [0, ...turningPoints(value, 0, 1), 1];
  const stretches: [number, number][] = [];
  let since = value(0) < 0 ? 0 : undefined;
  for (let i = 1; i < places.length; i++) {
    const negative = value(places[i]!) < 0;
    if (negative === (since !== undefined)) continue;
    const border = crossing(value, places[i - 1]!, places[i]!);
    if (since === undefined) since = border;
    else {
      stretches.push([since, border]);
      since = undefined;
    }
  }
  if (since !== undefined) stretches.push([since, 1]);
  return stretches;
}

function crossing(value: (at: number) => number, from: number, to: number): number {
  const before = value(from) < 0;
  const [low, high] = bisection((at) => value(at) < 0 === before, from, to, 1e-12);
  return (low + high) / 2;
}
