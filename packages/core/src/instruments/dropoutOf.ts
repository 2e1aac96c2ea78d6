import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { inParallel } from '../circuit/inParallel.js';
import { InputError } from '../errors.js';
import { outputFunction } from '../expectation/outputFunction.js';
import { restLevelOf } from '../expectation/restLevel.js';
import { finiteBetween } from '../guard.js';
import type { Seconds, Travel, Volts } from '../units.js';
import { checkInstrument } from './checkInstrument.js';
import type { ModelledDropout } from './dropout.js';
import { withInstrument } from './inputLoad.js';
import type { Instrument } from './instrument.js';
import { sourceResistance } from './sourceResistance.js';

/**
 * The dropout that an instrument meets where the wiper of a hook-up lifts for a while: from the reading that it loads to the level that it
 * and the load pull to, with the time constants that its capacitance has with the load alone and with the sensor.
 *
 * @param circuit The hook-up without the instrument.
 * @param travel Where the wiper lifts, 0 to 1.
 * @param seconds For how long.
 * @param speed How fast the throttle moves meanwhile, travels per second; 0 when left out.
 * @throws InputError `no-rest-level` where nothing pulls the lifted wiper's signal anywhere, and for a wrong circuit or instrument.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} };
 * const meter = { kind: 'logger', name: 'Logger', inputOhms: 1e6, inputFarads: 100e-12, range: { low: 0, high: 5 }, bits: 12, interval: 0.001 } as const;
 * const { from, to, fall } = dropoutOf(circuit, meter, 0.5, 0.01);
 * [from.toFixed(3), to, fall.toExponential(1)] // => ['2.497', 0, '1.0e-4']
 */
export function dropoutOf(
  circuit: Circuit,
  instrument: Instrument,
  travel: Travel,
  seconds: Seconds,
  speed = 0,
): ModelledDropout {
  checkCircuit(circuit);
  checkInstrument(instrument);
  finiteBetween(travel, 0, 1, 'travel');
  finiteBetween(seconds, 0, 1e6, 'seconds', 's');
  finiteBetween(speed, 0, 1e6, 'speed', 'travels per second');
  const load = withInstrument(circuit.load, instrument);
  const watched = { ...circuit, load };
  const to = restLevelOf(watched);
  if (to === undefined) {
    throw new InputError(
      'no-rest-level',
      'circuit.load',
      'Nothing pulls the signal of a lifted wiper anywhere: there is no load and the instrument has no input resistance; add a pull-down.',
    );
  }
  const output = outputFunction(watched);
  const at = (place: Travel): Volts => output(positionAt(circuit.sensor, place));
  const from = at(travel);
  const ends = [at(0), from, at(1)];
  const farads = instrument.inputFarads ?? 0;
  const alone = inParallel(load.pullDown, load.pullUp?.ohms ?? Number.POSITIVE_INFINITY);
  return {
    seconds,
    from,
    to,
    slope: speed * slopeAt(at, travel),
    sound: { low: Math.min(...ends), high: Math.max(...ends) },
    fall: farads * alone,
    recovery: farads * sourceResistance(watched, travel),
  };
}

/** How steep an output is at a place, V per travel, over a thousandth of the travel. */
function slopeAt(output: (travel: Travel) => Volts, travel: Travel): number {
  const [from, to] = [Math.max(0, travel - 5e-4), Math.min(1, travel + 5e-4)];
  return Math.abs(output(to) - output(from)) / (to - from);
}
