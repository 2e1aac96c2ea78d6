import type { Circuit } from '../circuit/circuit.js';
import { rightConnection } from '../circuit/circuit.js';
import { isDetermined } from '../circuit/determined.js';
import { type OperatingPoint, operatingPoint } from '../circuit/operatingPoint.js';
import { InputError } from '../errors.js';
import type { Fraction, Volts } from '../units.js';

/** The way between readings on a loaded hook-up and the ratio that the sensor would give without a load. */
export interface NoLoad {
  /** From a reading: volts, or the ratio of volts to those across the end terminals. */
  unloaded(reading: number): Fraction;
  /** The loaded reading, as a ratio to the voltage across the end terminals, where the unloaded one is given. */
  loaded(ratio: Fraction): Fraction;
  /** The most that the unloaded ratio changes per change of reading. */
  readonly steepest: number;
}

const steps = 1024;

/**
 * Tabulates a hook-up over the wiper's place, which the unloaded ratio follows on a straight line; between places by
 * straight lines. The error is below 10⁻⁶ for loads from the track's own resistance upwards.
 *
 * @param kind Whether readings are volts or ratios.
 * @returns Nothing where a reading fits two places.
 * @throws InputError for a wrong circuit, or `no-output` where the output has no single finite value.
 */
export function noLoad(circuit: Circuit, kind: 'volts' | 'ratio'): NoLoad | undefined {
  const bare: Circuit = { ...circuit, load: {} };
  const [lowest, highest] = [
    ratioOf(bare, operatingPoint(bare, 0)),
    ratioOf(bare, operatingPoint(bare, 1)),
  ];
  const readings = new Float64Array(steps + 1);
  const ratios = new Float64Array(steps + 1);
  for (let i = 0; i <= steps; i++) {
    const point = operatingPoint(circuit, i / steps);
    ratios[i] = ratioOf(circuit, point);
    readings[i] = kind === 'ratio' ? ratios[i]! : (point.output as Volts);
  }
  const rising = readings[steps]! > readings[0]! ? 1 : -1;
  let smallest = Infinity;
  for (let i = 1; i <= steps; i++) {
    smallest = Math.min(smallest, rising * (readings[i]! - readings[i - 1]!));
  }
  if (!(smallest > 0)) return undefined;
  return {
    unloaded(reading) {
      let [low, high] = [0, steps];
      while (high - low > 1) {
        const middle = (low + high) >> 1;
        if (rising * readings[middle]! <= rising * reading) low = middle;
        else high = middle;
      }
      const part = (reading - readings[low]!) / (readings[high]! - readings[low]!);
      return lowest + ((highest - lowest) * (low + part)) / steps;
    },
    loaded(ratio) {
      const place = ((ratio - lowest) / (highest - lowest)) * steps;
      const low = Math.min(steps - 1, Math.max(0, Math.floor(place)));
      return ratios[low]! + (ratios[low + 1]! - ratios[low]!) * (place - low);
    },
    steepest: Math.abs(highest - lowest) / (steps * smallest),
  };
}

/** The output as a ratio to the voltage across the end terminals. */
function ratioOf({ connection = rightConnection }: Circuit, point: OperatingPoint): Fraction {
  const { output, nodes } = point;
  const [top, bottom] = [nodes[connection.supply]!, nodes[connection.ground]!];
  if (isDetermined(output) && isDetermined(top) && isDetermined(bottom) && top !== bottom) {
    return output / (top - bottom);
  }
  throw new InputError(
    'no-output',
    'circuit',
    'The output has no single value as a ratio to the voltage across the end terminals; give a circuit that feeds the sensor.',
  );
}
