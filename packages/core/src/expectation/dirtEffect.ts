import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { finiteBetween, resistance } from '../guard.js';
import type { Fraction, Ohms, Travel, Volts } from '../units.js';
import { outputFunction } from './outputFunction.js';
import { restLevelOf } from './restLevel.js';

/** How far a reading goes from its clean value; a signal that nothing pulls anywhere can be at any voltage. */
export type ReadingChange =
  | {
      readonly kind: 'change';
      /** Less the clean reading, V: negative where the reading falls. */
      readonly volts: Volts;
      /** Of the span between the clean readings at both stops; left out where they are the same. */
      readonly ofSpan?: Fraction;
    }
  | { readonly kind: 'floating' };

/** What bad contact does to one reading. */
export interface DirtEffect {
  /** The reading without dirt, V. */
  readonly clean: Volts;
  /** With the dirt in the contact. */
  readonly dirty: ReadingChange;
  /** With the wiper lifted off the track. */
  readonly lifted: ReadingChange;
}

/**
 * What dirt between the wiper and the track does to the reading on a hook-up, and what a lifted wiper does.
 *
 * Method: the circuit solved with and without the dirt's resistance added to the contact's own.
 *
 * @param circuit The hook-up, in SI units.
 * @param travel Where the throttle stands, 0 closed to 1 open.
 * @param ohms Of the dirt, Ω: 0, 1e-12 to 1e18, or Infinity for a wiper that touches nothing.
 * @throws InputError for a wrong circuit, `travel` or `ohms`, or `no-output` where the clean output has no single value.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const { dirty, lifted } = dirtEffect(circuit, 0.5, 10e3);
 * dirty.ofSpan.toFixed(4) // => '-0.0005'
 * lifted.volts.toFixed(3) // => '-2.500'
 */
export function dirtEffect(circuit: Circuit, travel: Travel, ohms: Ohms): DirtEffect {
  checkCircuit(circuit);
  finiteBetween(travel, 0, 1, 'travel');
  resistance(ohms, 'ohms');
  const output = outputFunction(circuit);
  const [closed, here, open] = [0, travel, 1].map((at) => output(positionAt(circuit.sensor, at)));
  const span = Math.abs(open! - closed!);
  const change = (volts: Volts | undefined): ReadingChange =>
    volts === undefined
      ? { kind: 'floating' }
      : {
          kind: 'change',
          volts: volts - here!,
          ...(span > 0 && { ofSpan: (volts - here!) / span }),
        };
  const lifted = change(restLevelOf(circuit));
  const dirty =
    ohms === Infinity
      ? lifted
      : change(outputFunction(withDirt(circuit, ohms))(positionAt(circuit.sensor, travel)));
  return { clean: here!, dirty, lifted };
}

/** A circuit with more resistance in its wiper's contact. */
export function withDirt(circuit: Circuit, ohms: Ohms): Circuit {
  const { sensor } = circuit;
  return { ...circuit, sensor: { ...sensor, contact: (sensor.contact ?? 0) + ohms } };
}
