import { InputError } from '../errors.js';
import { checkFields, type FieldRules, listOf } from '../fields.js';
import { above0, between } from '../guard.js';
import { decideVerdict } from '../judgement/decideVerdict.js';
import { compareReading } from '../judgement/judgeReading.js';
import type { Judgement, ReadingCheck } from '../judgement/readingCheck.js';
import type { Celsius, Pascals, Volts } from '../units.js';
import { checkPressureSensor, pressureRange, withinRange } from './checkPressureSensor.js';
import { errorAt, lineAt, ratioWithin } from './pressureRatio.js';
import type { PressureSensor } from './pressureSensor.js';

/** One reading of a pressure sensor: a pressure at its port, and its output with the supply at the same time. */
export interface PressureReading {
  /** The pressure at the port above (or, with a pump's vacuum, below: negative) the air around, Pa; 0 for the open port. */
  readonly gauge: Pascals;
  /** What was read there, before the air's pressure was taken from it: a pump's gauge counts from the air around, a barometer at the port from empty space; `gauge` when left out. */
  readonly readAs?: 'gauge' | 'absolute';
  /** Its standard uncertainty, of the pump's gauge, Pa, 0 or more; 0 for the open port. */
  readonly gaugeUncertainty: Pascals;
  /** The output, V, any. */
  readonly volts: Volts;
  /** The supply, measured at the sensor, V, above 0. */
  readonly supply: Volts;
  /** Standard uncertainty of each of the two voltages, V, 0 or more. */
  readonly uncertainty: Volts;
}

/** The air that the readings were taken in. */
export interface PressureBench {
  /** The pressure of the air at the bench, Pa, above 0: see `stationPressure`. */
  readonly station: Pascals;
  /** Its standard uncertainty, Pa, 0 or more. */
  readonly stationUncertainty: Pascals;
  /** The temperature of the sensor, °C, for the factor on its error, −273 to 2000; 25 when left out. */
  readonly temperature?: Celsius;
}

/** What makes a reading of a pressure sensor uncertain. */
export type PressureUncertainty = 'voltmeter' | 'barometer' | 'pump-gauge';
/** One comparison: ratios to the supply, the gain as a part of the nominal one. */
export type PressureCheck = ReadingCheck<
  'open-port' | 'pumped' | 'gain' | 'supply' | 'pumped-far-enough',
  '1' | 'V' | 'Pa',
  PressureUncertainty
>;
/** What to do next. */
export type PressureAdvice =
  | 'refit'
  | 'replace-sensor'
  | 'read-again'
  | 'state-error'
  | 'mend-supply'
  | 'read-open-port'
  | 'pump-farther'
  | 'better-voltmeter'
  | 'use-barometer'
  | 'better-pump-gauge';
/** What a pass doesn't say. */
export type PressureUnsaid = 'plug-and-harness' | 'response-time' | 'hose' | 'other-temperatures';
/** What its readings say. */
export type PressureJudgement = Judgement<PressureCheck, PressureAdvice, PressureUnsaid>;

/** Least pressure between the readings, as a part of the sensor's range, that shows a wrong gain (common practice, no source). */
export const leastPumped = 0.25;

const positiveVolts = above0('V');
const uncertain = between(0, 1e6);
const readingRules: FieldRules = {
  gauge: between(-1.2e5, 1e9, 'Pa'),
  'readAs?': ['gauge', 'absolute'],
  gaugeUncertainty: uncertain,
  volts: between(-1e3, 1e3, 'V'),
  supply: positiveVolts,
  uncertainty: uncertain,
};
const benchRules: FieldRules = {
  station: between(1e4, 1.2e5, 'Pa'),
  stationUncertainty: uncertain,
  'temperature?': between(-273, 2000, '°C'),
};

/**
 * Judges a pressure sensor by readings with the port open and under a hand pump, each as a ratio to the supply that was measured with it.
 *
 * Each reading is compared with the ratios of a sound sensor at its pressure. The gain is judged from differences, which need no barometer; a
 * pass needs the open port, and a pump that went through a quarter of the sensor's range. A supply that the sensor is not made for tells nothing of it.
 *
 * Method: JCGM 100:2008 and JCGM 106:2012 as in `judgeReading`. The gain's limits: two readings may each be off by the error, one up and one down.
 *
 * @param sensor The sensor.
 * @param bench The air around it.
 * @param readings 1 to 1000.
 * @throws InputError at `sensor…`, `bench…` or `readings…`; `out-of-range` for a pressure beyond the sensor's range.
 *
 * @example
 * const response = { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15000, highest: 115000 };
 * const sensor = { reference: 'absolute', response, error: 1500 };
 * const reading = { gaugeUncertainty: 300, supply: 5, uncertainty: 0.005 };
 * const judged = judgePressure(sensor, { station: 96000, stationUncertainty: 100 }, [
 *   { ...reading, gauge: 0, gaugeUncertainty: 0, volts: 3.85 },
 *   { ...reading, gauge: -50000, volts: 1.6 },
 * ]);
 * judged.verdict // => 'pass'
 */
export function judgePressure(
  sensor: PressureSensor,
  bench: PressureBench,
  readings: readonly PressureReading[],
): PressureJudgement {
  checkPressureSensor(sensor, 'sensor');
  checkFields(bench, 'bench', benchRules);
  listOf(readingRules, 1, 1000)(readings, 'readings');
  const isAbsolute = sensor.reference === 'absolute';
  readings.forEach(({ gauge }, i) => {
    const path = `readings[${i}].gauge`;
    if (bench.station + gauge <= 0) {
      const wrong = `is ${gauge} Pa, below empty space; it may be meant as an absolute pressure`;
      throw new InputError('gauge-or-absolute', path, `${path} ${wrong}.`);
    }
    withinRange(sensor, isAbsolute ? bench.station + gauge : gauge, path);
  });
  const supplies = supplyChecks(sensor, readings);
  const isFed = supplies.every(({ outcome }) => outcome === 'conforms');
  const knowsError = sensor.error !== undefined;
  const told = (check: PressureCheck): PressureCheck =>
    isFed && knowsError ? check : { ...check, outcome: 'cannot-tell' };
  const each = readings.map((reading, i) => told(ratioCheck(sensor, bench, reading, i)));
  const gain = gainCheck(sensor, bench, readings);
  const hasOpen = readings.some(({ gauge }) => gauge === 0);
  const checks: readonly PressureCheck[] = [
    ...supplies,
    ...each,
    ...(gain ? [told(gain)] : []),
    ...(hasOpen ? [] : [{ check: 'open-port', outcome: 'cannot-tell', unit: '1' } as const]),
    farEnough(sensor, readings),
  ];
  const verdict = decideVerdict(checks);
  return {
    verdict,
    checks,
    advice: [...new Set(adviceOf(verdict, checks, { isFed, knowsError, hasOpen }))],
    unsaid: ['plug-and-harness', 'hose', 'response-time', 'other-temperatures'],
  };
}

/** Whether each supply is one that the sensor is made for. */
function supplyChecks(
  { supply }: PressureSensor,
  readings: readonly PressureReading[],
): readonly PressureCheck[] {
  if (!supply) return [];
  const limits = { lowLimit: supply.low, highLimit: supply.high };
  return readings.map(({ supply: measured, uncertainty }, reading) => {
    const judged = compareReading<PressureUncertainty>({
      measured,
      ...supply,
      inputs: [{ name: 'voltmeter', sensitivity: 1, uncertainty }],
    });
    // Not the sensor's failure.
    const outcome = judged.margin >= 0 ? 'conforms' : 'cannot-tell';
    return {
      check: 'supply',
      unit: 'V',
      reading,
      measured,
      ...limits,
      ...judged,
      outcome,
    } as const;
  });
}

function ratioCheck(
  sensor: PressureSensor,
  { station, stationUncertainty, temperature = 25 }: PressureBench,
  read: PressureReading,
  reading: number,
): PressureCheck {
  const { gauge, gaugeUncertainty, volts, supply, uncertainty } = read;
  const isAbsolute = sensor.reference === 'absolute';
  const pressure = isAbsolute ? station + gauge : gauge;
  const { low, high } = ratioWithin(sensor, pressure, temperature);
  const { gain } = lineAt(sensor, pressure);
  const measured = volts / supply;
  const judged = compareReading<PressureUncertainty>({
    measured,
    low,
    high,
    inputs: [
      { name: 'voltmeter', sensitivity: Math.hypot(1, measured) / supply, uncertainty },
      {
        name: 'barometer',
        sensitivity: gain,
        uncertainty: restsOnAir(sensor, read) ? stationUncertainty : 0,
      },
      { name: 'pump-gauge', sensitivity: gain, uncertainty: gaugeUncertainty },
    ],
  });
  const check = gauge === 0 ? 'open-port' : 'pumped';
  return { check, unit: '1', reading, measured, lowLimit: low, highLimit: high, ...judged };
}

/** Whether the air's pressure is in what the sensor sees: it stands between a gauge pressure and an absolute one. */
function restsOnAir({ reference }: PressureSensor, { readAs = 'gauge' }: PressureReading): boolean {
  return reference !== readAs;
}

/** The change of output between the readings that lie farthest apart, as a part of what a nominal sensor's would be. */
function gainCheck(
  sensor: PressureSensor,
  { station, stationUncertainty, temperature = 25 }: PressureBench,
  readings: readonly PressureReading[],
): PressureCheck | undefined {
  const [from, to] = farthest(readings);
  const between = to.gauge - from.gauge;
  // Less than a pascal is no step.
  if (between < 1) return undefined;
  const shift = sensor.reference === 'absolute' ? station : 0;
  const [start, end] = [from, to].map(({ gauge }) => lineAt(sensor, gauge + shift)) as [Line, Line];
  const nominal = end.ratio - start.ratio;
  const error = errorAt(sensor, temperature);
  const limit = Math.abs((error * (Math.abs(start.gain) + Math.abs(end.gain))) / nominal);
  const measured = (to.volts / to.supply - from.volts / from.supply) / nominal;
  const ofRatio = ({ volts, supply }: PressureReading) =>
    Math.hypot(1, volts / supply) / supply / nominal;
  const judged = compareReading<PressureUncertainty>({
    measured,
    low: 1 - limit,
    high: 1 + limit,
    inputs: [
      { name: 'voltmeter', sensitivity: ofRatio(from), uncertainty: from.uncertainty },
      { name: 'voltmeter', sensitivity: ofRatio(to), uncertainty: to.uncertainty },
      {
        name: 'barometer',
        // Of two readings that both rest on it, or neither, it cancels.
        sensitivity: restsOnAir(sensor, from) === restsOnAir(sensor, to) ? 0 : 1 / between,
        uncertainty: stationUncertainty,
      },
      { name: 'pump-gauge', sensitivity: 1 / between, uncertainty: from.gaugeUncertainty },
      { name: 'pump-gauge', sensitivity: 1 / between, uncertainty: to.gaugeUncertainty },
    ],
  });
  return {
    check: 'gain',
    unit: '1',
    measured,
    lowLimit: 1 - limit,
    highLimit: 1 + limit,
    ...judged,
  };
}

type Line = ReturnType<typeof lineAt>;

function farEnough(sensor: PressureSensor, readings: readonly PressureReading[]): PressureCheck {
  const { lowest, highest } = pressureRange(sensor);
  const lowLimit = leastPumped * (highest - lowest);
  const [from, to] = farthest(readings);
  const measured = to.gauge - from.gauge;
  const margin = measured - lowLimit;
  const outcome = margin >= 0 ? 'conforms' : 'cannot-tell';
  return { check: 'pumped-far-enough', outcome, unit: 'Pa', measured, lowLimit, margin };
}

function farthest(readings: readonly PressureReading[]): [PressureReading, PressureReading] {
  const inOrder = [...readings].sort((a, b) => a.gauge - b.gauge);
  return [inOrder[0]!, inOrder.at(-1)!];
}

const better: Readonly<Record<PressureUncertainty, PressureAdvice>> = {
  voltmeter: 'better-voltmeter',
  barometer: 'use-barometer',
  'pump-gauge': 'better-pump-gauge',
};

function adviceOf(
  verdict: PressureJudgement['verdict'],
  checks: readonly PressureCheck[],
  { isFed, knowsError, hasOpen }: Record<'isFed' | 'knowsError' | 'hasOpen', boolean>,
): readonly PressureAdvice[] {
  if (verdict === 'pass') return ['refit'];
  if (verdict === 'fail') return ['read-again', 'replace-sensor'];
  if (!isFed) return ['mend-supply'];
  if (!knowsError) return ['state-error'];
  const untold = checks.filter(({ outcome }) => outcome !== 'conforms');
  return [
    ...untold.flatMap(({ mostUncertain }) => (mostUncertain ? [better[mostUncertain]] : [])),
    ...(hasOpen ? [] : (['read-open-port'] as const)),
    ...(checks.at(-1)!.outcome === 'conforms' ? [] : (['pump-farther'] as const)),
  ];
}
