import { checkCircuit, hookupRules } from '../circuit/checkCircuit.js';
import type { Circuit } from '../circuit/circuit.js';
import { checkFields } from '../fields.js';
import { finiteBetween } from '../guard.js';
import type { Fraction, Position, Volts } from '../units.js';
import { outputFunction } from './outputFunction.js';
import {
  checkReading,
  type PositionAtOutput,
  positionAtOutput,
  type Reading,
} from './positionAtOutput.js';

/** All of a hook-up but the sensor: the feed, the limiter, the leads and the input that the signal goes to. */
export type Hookup = Omit<Circuit, 'sensor'>;

/** A reading carried from one hook-up of a sensor to another, or why it can't be. */
export type CarriedReading =
  | {
      readonly kind: 'carried';
      /** Where the wiper stands: fraction of the track, 0 to 1. */
      readonly position: Position;
      /** What the other hook-up shows there, V. */
      readonly volts: Volts;
      /** The lowest voltage that it can be for the uncertainty of the reading, V. */
      readonly low: Volts;
      /** The highest voltage that it can be for the uncertainty of the reading, V. */
      readonly high: Volts;
      /** `volts` as a fraction of the voltage of the other hook-up's source, its reference. */
      readonly ratio: Fraction;
    }
  | Exclude<PositionAtOutput, { readonly kind: 'position' }>;

/**
 * What the vehicle's control unit will see where the bench showed a reading: the reading gives the wiper's
 * place on the bench, and that place gives the output on the vehicle's reference, leads and input network.
 *
 * Carrying volts by the ratio of the two feeds alone would forget the bench's limiter and both loads.
 *
 * @param reading The bench's reading.
 * @param bench The bench circuit with the sensor.
 * @param vehicle The vehicle's hook-up: reference as source, pull-down and pull-up of the control unit's input.
 * @returns The carried reading, or `impossible`, `ambiguous` or `insensitive` as the bench's reading is.
 * @throws InputError for a wrong reading or circuit, at `reading`, `bench` or `vehicle`; `no-output` where one of
 * them has no output.
 *
 * @example
 * const bench = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const vehicle = { source: { volts: 5 }, limiter: 0, load: {} };
 * const carried = carryToVehicle({ volts: 1 }, bench, vehicle);
 * carried.kind // => 'carried'
 * carried.volts // => ≈ 1
 * carried.ratio // => ≈ 0.2
 */
export function carryToVehicle(reading: Reading, bench: Circuit, vehicle: Hookup): CarriedReading {
  const at = checked(bench, vehicle, reading);
  return carry(reading, bench, at);
}

/**
 * What the bench will show where the vehicle's control unit sees a reading, such as the service data's closed
 * voltage: {@link carryToVehicle} the other way round.
 *
 * @param reading The voltage at the control unit's input.
 * @param bench The bench circuit with the sensor.
 * @param vehicle The vehicle's hook-up.
 * @returns The carried reading, or `impossible`, `ambiguous` or `insensitive` as the vehicle's reading is.
 * @throws InputError as {@link carryToVehicle}.
 *
 * @example
 * const bench = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const vehicle = { source: { volts: 5 }, limiter: 0, load: {} };
 * const carried = carryToBench({ volts: 0.5 }, bench, vehicle);
 * carried.volts // => ≈ 0.5
 */
export function carryToBench(reading: Reading, bench: Circuit, vehicle: Hookup): CarriedReading {
  const at = checked(bench, vehicle, reading);
  return carry(reading, at, bench);
}

/** The vehicle's circuit with the bench's sensor, everything refused by its path. */
function checked(bench: Circuit, vehicle: Hookup, reading: Reading): Circuit {
  checkReading(reading);
  checkCircuit(bench, 'bench');
  checkFields(vehicle, 'vehicle', hookupRules);
  const at: Circuit = { ...vehicle, sensor: bench.sensor };
  for (const [name, { source }] of [
    ['bench', bench],
    ['vehicle', vehicle],
  ] as const) {
    finiteBetween(source.volts, 1e-6, 1e6, `${name}.source.volts`, 'V');
  }
  return at;
}

function carry(reading: Reading, from: Circuit, to: Circuit): CarriedReading {
  const place = positionAtOutput(from, reading);
  if (place.kind !== 'position') return place;
  const { position } = place;
  const output = outputFunction(to);
  const volts = output(position);
  const bounds = [volts, output(place.low), output(place.high)];
  return {
    kind: 'carried',
    position,
    volts,
    low: Math.min(...bounds),
    high: Math.max(...bounds),
    ratio: volts / to.source.volts,
  };
}
