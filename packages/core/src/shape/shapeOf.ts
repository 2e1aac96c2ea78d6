import { checkSweep } from '../capture/checkSweep.js';
import type { Sweep, SweepLike } from '../capture/sweep.js';
import { checkCircuit } from '../circuit/checkCircuit.js';
import type { Circuit } from '../circuit/circuit.js';
import { column } from '../column.js';
import { checkFields, type FieldRules } from '../fields.js';
import { above0, between, refuse } from '../guard.js';
import { straightLine } from '../statistics/straightLine.js';
import type { Volts } from '../units.js';
import { absoluteLinearity, type TheoreticalLine, theoryRules } from './absoluteLinearity.js';
import { endReadings } from './endReadings.js';
import { hysteresisOf } from './hysteresis.js';
import { independentLinearity } from './independentLinearity.js';
import { type NoLoad, noLoad } from './noLoad.js';
import { type PlaceMeans, placeMeans } from './placeMeans.js';
import { halfWindows } from './placeScale.js';
import {
  type Linearity,
  type NotJudged,
  notJudged,
  type ReferenceLine,
  type ShaftReadings,
  type ShapeError,
} from './shape.js';
import { smoothness } from './smoothness.js';
import { terminalBasedLinearity } from './terminalBasedLinearity.js';
import { zeroBasedLinearity } from './zeroBasedLinearity.js';

/** What is known beside a sweep's time and voltage. */
export interface ShapeEvidence extends TheoreticalLine {
  /** Place of the shaft at each sample: travel, degrees or whatever else grows evenly as it opens; without it nothing can be judged. */
  readonly shaft?: ArrayLike<number>;
  /**
   * The hook-up: takes the load out of the readings, and gives the voltage across the end terminals where nothing else does; not known
   * when left out.
   */
  readonly circuit?: Circuit;
  /** The voltage across the end terminals, V, above 0, where the sweep holds none. */
  readonly supply?: Volts;
  /**
   * Places of the shaft between which the output is judged (the actual electrical travel), from the lower to the higher, in the unit of
   * the shaft's place; all of them when left out.
   */
  readonly range?: { readonly from: number; readonly to: number };
  /** Standard uncertainty of a reading, V, 0 or more; not known when left out. */
  readonly uncertainty?: Volts;
}

/** The shape of a sensor's output over its shaft, in fractions of the voltage across the end terminals. */
export interface Shape {
  readonly kind: 'judged';
  /** Where that voltage comes from; stated or computed, it was assumed to hold throughout. */
  readonly supply: 'recorded' | 'stated' | 'circuit';
  /** Whether the load was taken out of the readings before they were compared with straight lines. */
  readonly noLoad: boolean;
  /** From the straight line that makes it smallest. */
  readonly independent: Linearity;
  /** From the straight line through the zero of ratio that makes it smallest. */
  readonly zeroBased: Linearity;
  /** From the straight line through both ends of the range. */
  readonly terminalBased: Linearity;
  /** From the line that the sensor was designed to follow, where it is known. */
  readonly absolute: Linearity | NotJudged;
  /** Of the readings under load from the loaded curve laid along the independent line. */
  readonly conformity: ShapeError | NotJudged;
  /** Between opening and closing at one place. */
  readonly hysteresis: ShapeError | NotJudged;
  /** Between neighbouring places, less what a straight line makes. */
  readonly smoothness: ShapeError | NotJudged;
}

const place = between(-1e12, 1e12);

const evidenceRules = (): FieldRules =>
  theoryRules({
    'shaft?': () => {},
    'circuit?': (value, path) => checkCircuit(value as Circuit, path),
    'supply?': above0('V'),
    'range?': (value, path) => {
      checkFields(value, path, { from: place, to: place });
      const { from, to } = value as { from: number; to: number };
      if (!(from < to))
        refuse(to, `${path}.to`, `above ${from}, where the range begins`, 'out-of-range');
    },
    'uncertainty?': between(0, 1e6, 'V'),
  });

/** Largest gap between neighbouring places, as a fraction of the range (MIL-PRF-39002C, 4.6.8), and half a half window. */
const largestGap = 0.1 * halfWindows + 1;

/**
 * Linearity in all its kinds, conformity, hysteresis and smoothness of a sweep with an independent shaft column.
 *
 * Lines are laid through the mean of each half percent of the range on each stroke, so that noise does not widen them;
 * an end of the travel is the mean of its outermost half percent. Smoothness looks at every reading. What stands in the readings counts, dropouts too. Samples at which the recorded supply is below
 * half of its largest value are left out. Uncertainties take nothing off for the averaging, since what an instrument
 * misreads at one place it misreads each time.
 *
 * Method: see {@link independentLinearity} and its kin; readings are corrected to no load through the hook-up's curve.
 *
 * @param given Time, signal and, best of all, the supply across the end terminals.
 * @param evidence The shaft column and what else is known.
 * @returns Not judged as a whole without a shaft column, movement or supply, where neighbouring places lie more
 * than 10 % of the range apart, where the hook-up's output fits two places, or where the output does not follow the shaft.
 * @throws InputError for a wrong sweep, circuit or number, with its path.
 *
 * @example
 * const time = Float64Array.from({ length: 1001 }, (_, i) => i / 100);
 * const shaft = time.map((at) => at / 10);
 * const sweep = { time, signal: shaft.map((at) => 5 * at + 0.1 * Math.sin(Math.PI * at)) };
 * const shape = shapeOf(sweep, { shaft, supply: 5 });
 * shape.terminalBased.value.toFixed(3) // => '0.020'
 * shape.independent.value.toFixed(3) // => '0.010'
 * shapeOf(sweep, { supply: 5 }) // => { kind: 'not-judged', reason: 'no-shaft' }
 */
export function shapeOf(given: SweepLike, evidence: ShapeEvidence): Shape | NotJudged {
  const sweep = checkSweep(given);
  checkFields(evidence, 'evidence', evidenceRules());
  const { circuit, supply } = evidence;
  if (!evidence.shaft) return notJudged('no-shaft');
  const shaft = column(evidence.shaft, sweep.time.length, 'evidence.shaft');
  const from = sweep.supply ? 'recorded' : supply !== undefined ? 'stated' : 'circuit';
  if (from === 'circuit' && !circuit) return notJudged('no-supply');
  const bare = circuit && noLoad(circuit, from === 'circuit' ? 'volts' : 'ratio');
  if (circuit && !bare) return notJudged('ambiguous-output');
  const readings = ratios(sweep, evidence, shaft, bare, from === 'circuit');
  if (readings.shaft.length === 0) return notJudged('no-supply');
  const means = placeMeans(readings);
  if (!means || means.shaft.length === 0) return notJudged('no-movement');
  if (hasGap(means.halfWindow)) return notJudged('places-too-far-apart');
  const { ratio, uncertainty } = means;
  const placed = {
    shaft: means.shaft,
    ratio,
    ...(uncertainty !== undefined && { uncertainty }),
  };
  const independent = independentLinearity(placed);
  if (!follows(means) || independent.kind !== 'judged') return notJudged('output-does-not-follow');
  return {
    kind: 'judged',
    supply: from,
    noLoad: bare !== undefined,
    independent,
    zeroBased: zeroBasedLinearity(placed) as Linearity,
    terminalBased: terminalBasedLinearity(placed) as Linearity,
    absolute: absoluteLinearity(placed, theoryOf(evidence)),
    conformity: bare ? conformity(means, independent.line, bare) : notJudged('no-circuit'),
    hysteresis: hysteresisOf(means),
    smoothness: smoothness(readings, independent.line),
  };
}

/** The part of the evidence that tells a theoretical line. */
function theoryOf({ index, electricalTravel }: ShapeEvidence): TheoreticalLine {
  return { ...(index && { index }), ...(electricalTravel !== undefined && { electricalTravel }) };
}

/** The readings within the range and with a supply, as ratios without load. */
function ratios(
  { signal, supply: recorded }: Sweep,
  { supply = 1, range, uncertainty }: ShapeEvidence,
  shaft: Float64Array,
  bare: NoLoad | undefined,
  isInVolts: boolean,
): ShaftReadings {
  const { from, to } = range ?? { from: -Infinity, to: Infinity };
  let most = 0;
  for (const volts of recorded ?? []) most = Math.max(most, Math.abs(volts));
  const places = new Float64Array(shaft.length);
  const ratio = new Float64Array(shaft.length);
  const stated = isInVolts ? 1 : supply;
  let least = Infinity;
  let count = 0;
  for (let i = 0; i < shaft.length; i++) {
    const across = recorded ? recorded[i]! : stated;
    if (shaft[i]! < from || shaft[i]! > to || !(Math.abs(across) > most / 2)) continue;
    const reading = signal[i]! / across;
    least = Math.min(least, Math.abs(across));
    places[count] = shaft[i]!;
    ratio[count++] = bare ? bare.unloaded(reading) : reading;
  }
  return {
    shaft: places.subarray(0, count),
    ratio: ratio.subarray(0, count),
    ...(uncertainty !== undefined &&
      count > 0 && { uncertainty: (uncertainty / least) * (bare?.steepest ?? 1) }),
  };
}

/** Whether the output's way over the range is more than its scatter either side: a dead output deviates from no line. */
function follows({ shaft, ratio }: ShaftReadings): boolean {
  const [first, last] = endReadings(shaft);
  const line = straightLine(shaft, ratio);
  if (!line) return false;
  return Math.abs(line.slope) * (shaft[last]! - shaft[first]!) > 2 * line.deviation;
}

function hasGap(halfWindow: Uint8Array): boolean {
  const places = halfWindow.toSorted();
  return places.some((place, i) => place - places[Math.max(0, i - 1)]! > largestGap);
}

/** How far the loaded readings lie from the loaded curve along a line. */
function conformity(
  { shaft, ratio, uncertainty }: PlaceMeans,
  { intercept, slope }: ReferenceLine,
  bare: NoLoad,
): ShapeError {
  let [value, at] = [-1, 0];
  for (let i = 0; i < shaft.length; i++) {
    const wanted = bare.loaded(intercept + slope * shaft[i]!);
    const away = Math.abs(bare.loaded(ratio[i]!) - wanted);
    if (away > value) [value, at] = [away, shaft[i]!];
  }
  return { kind: 'judged', value, at, ...(uncertainty !== undefined && { uncertainty }) };
}
