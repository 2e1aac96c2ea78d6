import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { outputFunction } from '../expectation/outputFunction.js';
import { checkFields, type FieldRules, listOf } from '../fields.js';
import { between, wholeBetween } from '../guard.js';
import type { Seconds, Travel, Volts } from '../units.js';
import { checkInstrument } from './checkInstrument.js';
import { dropoutOf } from './dropoutOf.js';
import type { Instrument } from './instrument.js';
import { readingUncertainty } from './readingUncertainty.js';
import { type Sight, sightOf } from './sightOf.js';

/** The fault that is looked for, and how it is swept over. */
export interface SoughtDropout {
  /** Where on the travel the wiper lifts, 0 closed to 1 open. */
  readonly travel: Travel;
  /** How wide the worn spot is, a part of the travel, above 0. */
  readonly width: Travel;
  /** How fast the throttle is swept over it, travels per second, above 0, up to 10⁶. */
  readonly speed: number;
  /** How many passes go over it, a whole number from 1 to 10⁶. */
  readonly passes: number;
}

/** How an instrument stands in a ranking, and why. */
export interface RankedInstrument {
  /** The instrument's own. */
  readonly name: string;
  /** The instrument's own. */
  readonly kind: Instrument['kind'];
  /** How it sees the dropout. */
  readonly sight: Sight;
  /** How much the instrument changes the reading that it takes, V, 0 or more. */
  readonly loading: Volts;
  /** Standard uncertainty of the reading, V, 0 or more. */
  readonly uncertainty: Volts;
  /** The fastest sweep that shows the spot in one of the passes with 95 %, in travels per second, 0 or more; 0 where none does. */
  readonly fastestSweep: number;
  /** `surely`: with 95 % or more over the passes; `by-chance`: less often; the others say why never or hardly ever. */
  readonly reason: 'surely' | 'by-chance' | 'too-slow' | 'too-coarse';
}

/** The rules of a sought spot, with those of how it is swept over. */
export const spotRules = (how: FieldRules): FieldRules => ({
  travel: between(0, 1),
  width: between(1e-6, 1),
  passes: wholeBetween(1, 1e6),
  ...how,
});
/** A rule of `listOf`. */
export const anInstrument = (value: unknown, path: string): void =>
  checkInstrument(value as Instrument, undefined, path);

/** A chance below this is hardly one. */
const hardly = 0.05;
const surely = 0.95;

/**
 * Says of several instruments on one hook-up how each would see the wiper lift over a worn spot, the best first: by the chance over all
 * passes, then by the shortest dropout that shows with 95 %, then by how little it loads.
 *
 * @param circuit The hook-up without any of the instruments.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 1e6 } };
 * const meter = { kind: 'digital-meter', name: 'meter', inputOhms: 10e6, ranges: [1.999, 19.99], counts: 1999, aperture: 0.1, displayInterval: 0.4 } as const;
 * const scope = { kind: 'oscilloscope', name: 'scope', inputOhms: 1e6, range: { low: 0, high: 8 }, bits: 8, record: 2, memory: 10000, fastest: 1e-9 } as const;
 * const fault = { travel: 0.3, width: 0.005, speed: 0.5, passes: 3 };
 * rankInstruments([meter, scope], circuit, fault).map(({ name, reason }) => `${name} ${reason}`) // => ['scope surely', 'meter too-slow']
 */
export function rankInstruments(
  instruments: readonly Instrument[],
  circuit: Circuit,
  fault: SoughtDropout,
): readonly RankedInstrument[] {
  checkCircuit(circuit);
  checkFields(fault, 'fault', spotRules({ speed: between(1e-6, 1e6, 'travels per second') }));
  listOf(anInstrument, 0, 1000)(instruments, 'instruments');
  const { travel, width, speed, passes } = fault;
  const bare = outputFunction(circuit)(positionAt(circuit.sensor, travel));
  return instruments
    .map((instrument): RankedInstrument => {
      const dropout = dropoutOf(circuit, instrument, travel, width / speed, speed);
      const sight = sightOf(instrument, dropout, passes);
      const shortest = certain(sight);
      return {
        name: instrument.name,
        kind: instrument.kind,
        sight,
        loading: dropout.from - bare,
        uncertainty: readingUncertainty(instrument, dropout.from),
        fastestSweep: shortest > 0 ? width / shortest : Number.POSITIVE_INFINITY,
        reason: reasonOf(sight, Math.abs(dropout.to - dropout.from)),
      };
    })
    .sort(
      (one, other) =>
        other.sight.chanceInPasses - one.sight.chanceInPasses ||
        certain(one.sight) - certain(other.sight) ||
        Math.abs(one.loading) - Math.abs(other.loading),
    );
}

function certain({ shortest }: Sight): Seconds {
  return shortest[1]!.inPasses;
}

function reasonOf({ chanceInPasses, noticed }: Sight, depth: Volts): RankedInstrument['reason'] {
  if (noticed > depth) return 'too-coarse';
  if (chanceInPasses >= surely) return 'surely';
  return chanceInPasses >= hardly ? 'by-chance' : 'too-slow';
}
