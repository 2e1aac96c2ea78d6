import { checkFields, type FieldRules, listOf } from '../fields.js';
import { between, refuse, resistance, yesOrNo } from '../guard.js';
import { compareWithin } from '../judgement/compareWithin.js';
import { decideVerdict } from '../judgement/decideVerdict.js';
import type { Judgement, ReadingCheck } from '../judgement/readingCheck.js';
import type { UncertainInput } from '../statistics/combineUncertainties.js';
import type { Celsius, Kelvins, Ohms, Volts } from '../units.js';
import { checkLaw, withinLaw } from './checkLaw.js';
import { checkDivider, type PullUpDivider, voltsAcross, voltsPerLogOhms } from './divider.js';
import type { ThermistorLaw } from './law.js';
import { slopeWithin } from './lnOhms.js';
import {
  bandWithin,
  checkTolerances,
  knowsLimits,
  type ThermistorTolerances,
} from './resistanceBand.js';
import { heatedWithin } from './selfHeating.js';

/** A thermistor as its maker or the service manual describes it. */
export interface ThermistorSensor {
  /** How its resistance falls with temperature. */
  readonly law: ThermistorLaw;
  /** How far a sound one may be off; left out for a table that has limits. Without either nothing can be judged. */
  readonly tolerances?: ThermistorTolerances;
  /** Its dissipation constant in the bath, W/K, above 0: its self-heating on a pull-up is taken into account by it, and not when left out. */
  readonly dissipation?: number;
}

/** One reading of a thermistor at a known temperature: its resistance by an ohmmeter, or the voltage across it on a pull-up. */
export interface ThermistorReading {
  /** The temperature of the bath, by a thermometer beside the sensor, by ice or by boiling water, °C, within the range of the law. */
  readonly temperature: Celsius;
  /** Its standard uncertainty with what the sensor had still to settle, K, 0 or more. */
  readonly temperatureUncertainty: Kelvins;
  /** The resistance, Ω, 0 or more; `Infinity` where the meter showed over-range; left out where `volts` stand. */
  readonly ohms?: Ohms;
  /** The voltage across it, V, any; left out where `ohms` stand. */
  readonly volts?: Volts;
  /** Standard uncertainty of the ohms or volts, in their unit, 0 or more. */
  readonly uncertainty: number;
}

/** What the voltages were read on. */
export interface ReadOn extends PullUpDivider {
  /** Standard uncertainty of the supply, V, 0 or more. */
  readonly supplyUncertainty: Volts;
  /** Standard uncertainty of the pull-up, Ω, 0 or more. */
  readonly pullUpUncertainty: Ohms;
  /** Whether this very pull-up was measured, or proved by a known resistor in the sensor's place; a value out of a book is none. */
  readonly isProved: boolean;
}

/** What makes a reading of a thermistor uncertain. */
export type ThermistorSource = 'meter' | 'thermometer' | 'supply' | 'pull-up';
/** One comparison. */
export type ThermistorCheck = ReadingCheck<
  'resistance' | 'voltage' | 'temperatures-apart',
  'Ω' | 'V' | 'K',
  ThermistorSource
>;
/** What to do next. */
export type ThermistorAdvice =
  | 'refit'
  | 'replace-sensor'
  | 'read-again'
  | 'state-tolerances'
  | 'prove-pull-up'
  /** The current warms it beyond the temperatures that its law knows. */
  | 'read-by-ohmmeter'
  | 'better-thermometer'
  | 'better-meter'
  | 'measure-supply'
  | 'read-farther-apart';
/** What a pass doesn't say. */
export type ThermistorUnsaid =
  | 'plug-and-harness'
  | 'response-time'
  | 'between-temperatures'
  | 'self-heating';
/** What its readings say. */
export type ThermistorJudgement = Judgement<ThermistorCheck, ThermistorAdvice, ThermistorUnsaid>;

/** Fewest kelvins between the coldest and the hottest reading: one temperature can't show a wrong curve (common practice, no source). */
export const farEnoughApart: Kelvins = 40;

const uncertainty = between(0, 1e12);
const sensorRules: FieldRules = {
  law: (value, path) => checkLaw(value as ThermistorLaw, path),
  'tolerances?': () => {},
  'dissipation?': between(1e-9, 1e3, 'W/K'),
};
const readingRules: FieldRules = {
  temperature: between(-273, 2000, '°C'),
  temperatureUncertainty: between(0, 1000, 'K'),
  'ohms?': resistance,
  'volts?': between(-1e6, 1e6, 'V'),
  uncertainty,
};
const readOnRules: FieldRules = {
  supply: () => {},
  pullUp: () => {},
  'meter?': () => {},
  supplyUncertainty: uncertainty,
  pullUpUncertainty: uncertainty,
  isProved: yesOrNo,
};

/**
 * Judges a thermistor by readings at known temperatures.
 *
 * Each reading is compared with the resistances (or, on a pull-up, the voltages) of a sound sensor at its temperature; what the thermometer
 * leaves unknown counts like what the meter does, and `mostUncertain` says which decides. A pass needs two temperatures at least 40 K apart. Voltages that
 * are all off as by another pull-up say nothing of the sensor unless the pull-up was proved.
 *
 * Method: JCGM 100:2008 and JCGM 106:2012 as in `judgeReading`.
 *
 * @param sensor The sensor's law and tolerances.
 * @param readings 1 to 1000.
 * @param readOn What the voltages were read on; left out where only resistances were read.
 * @throws InputError at `sensor…`, `readings…` or `readOn…`.
 *
 * @example
 * const law = { kind: 'b', b: 3640, ohms: 2044, from: 25, to: 100, lowest: -20 };
 * const judged = judgeThermistor({ law, tolerances: { ohms: 0.05, b: 0.01 } }, [
 *   { temperature: 0, temperatureUncertainty: 0.1, ohms: 6050, uncertainty: 15 },
 *   { temperature: 98.3, temperatureUncertainty: 0.2, ohms: 183, uncertainty: 1 },
 * ]);
 * judged.verdict // => 'pass'
 */
export function judgeThermistor(
  sensor: ThermistorSensor,
  readings: readonly ThermistorReading[],
  readOn?: ReadOn,
): ThermistorJudgement {
  checkFields(sensor, 'sensor', sensorRules);
  checkTolerances(sensor.law, sensor.tolerances, 'sensor.tolerances');
  listOf(readingRules, 1, 1000)(readings, 'readings');
  if (readOn !== undefined) {
    checkFields(readOn, 'readOn', readOnRules);
    const { supply, pullUp, meter } = readOn;
    checkDivider({ supply, pullUp, ...(meter !== undefined && { meter }) }, 'readOn');
  }
  readings.forEach((reading, i) => {
    const path = `readings[${i}]`;
    withinLaw(sensor.law, reading.temperature, `${path}.temperature`);
    if ((reading.ohms === undefined) === (reading.volts === undefined)) {
      refuse(undefined, `${path}.ohms`, 'a resistance, or volts in its place', 'missing');
    }
    if (reading.volts !== undefined && !readOn) {
      refuse(undefined, 'readOn', 'what the voltages were read on', 'missing');
    }
  });
  const each = readings.map((reading, i) => compared(sensor, reading, i, readOn));
  const knows = knowsLimits(sensor.law, sensor.tolerances);
  const isTooHot = each.some((one) => one.isTooHot);
  const isElsewhere =
    readOn !== undefined &&
    !readOn.isProved &&
    each.some(({ check }) => check.unit === 'V' && check.outcome !== 'conforms') &&
    fitsAnotherPullUp(each.map(({ ratios }) => ratios));
  const told = each.map(({ check, isTooHot: tooHot }): ThermistorCheck => {
    const isOfPullUp = isElsewhere && check.unit === 'V' && check.outcome !== 'conforms';
    return !knows || tooHot || isOfPullUp ? { ...check, outcome: 'cannot-tell' } : check;
  });
  const checks = [...told, apart(readings)];
  const verdict = decideVerdict(checks);
  return {
    verdict,
    checks,
    advice: [...new Set(adviceOf(verdict, checks, { knows, isElsewhere, isTooHot }))],
    unsaid: [
      'plug-and-harness',
      'response-time',
      'between-temperatures',
      ...(readOn && sensor.dissipation === undefined ? (['self-heating'] as const) : []),
    ],
  };
}

/** By which factors on its resistance a reading would come to its limits. */
type Ratios = readonly [low: number, high: number];

/** A reading beside its limits, as if all were known that it rests on. */
interface Compared {
  readonly check: ThermistorCheck;
  readonly ratios: Ratios;
  /** Whether the current warms it beyond its law. */
  readonly isTooHot: boolean;
}

function compared(
  sensor: ThermistorSensor,
  reading: ThermistorReading,
  place: number,
  readOn: ReadOn | undefined,
): Compared {
  const { ohms, volts } = reading;
  return volts === undefined || !readOn
    ? byOhms(sensor, reading, place, ohms!)
    : byVolts(sensor, reading, place, { volts, readOn });
}

/** What the meter and the thermometer leave uncertain, by how the reading answers to a kelvin. */
const inputsOf = (
  { uncertainty, temperatureUncertainty }: ThermistorReading,
  perKelvin: number,
): readonly UncertainInput<ThermistorSource>[] => [
  { name: 'meter', sensitivity: 1, uncertainty },
  { name: 'thermometer', sensitivity: perKelvin, uncertainty: temperatureUncertainty },
];

function byOhms(
  { law, tolerances }: ThermistorSensor,
  read: ThermistorReading,
  reading: number,
  ohms: Ohms,
): Compared {
  const { low, nominal, high } = bandWithin(law, read.temperature, tolerances);
  // A break reads more than any limit.
  const measured = Math.min(ohms, 1e18);
  const inputs = inputsOf(read, slopeWithin(law, read.temperature) * nominal);
  const check = { check: 'resistance', unit: 'Ω', reading } as const;
  // A resistance says nothing of the pull-up.
  return {
    check: { ...check, ...compareWithin(measured, { low, high }, inputs) },
    ratios: [0, Infinity],
    isTooHot: false,
  };
}

function byVolts(
  { law, tolerances, dissipation }: ThermistorSensor,
  read: ThermistorReading,
  reading: number,
  { volts, readOn }: { readonly volts: Volts; readonly readOn: ReadOn },
): Compared {
  const { supply, pullUp, supplyUncertainty, pullUpUncertainty } = readOn;
  const isHeated = dissipation !== undefined;
  const heated = isHeated ? heatedWithin(law, readOn, read.temperature, dissipation) : undefined;
  const own = heated?.temperature ?? read.temperature;
  const band = bandWithin(law, own, tolerances);
  const [low, high] = [voltsAcross(readOn, band.low), voltsAcross(readOn, band.high)];
  const perLog = voltsPerLogOhms(readOn, band.nominal);
  const inputs: readonly UncertainInput<ThermistorSource>[] = [
    ...inputsOf(read, slopeWithin(law, own) * perLog),
    { name: 'supply', sensitivity: volts / supply, uncertainty: supplyUncertainty },
    { name: 'pull-up', sensitivity: perLog / pullUp, uncertainty: pullUpUncertainty },
  ];
  const judged = compareWithin(volts, { low, high }, inputs);
  const expanded = 2 * judged.uncertainty;
  const ratio = (limit: Volts) => supply / limit - 1;
  return {
    check: { check: 'voltage', unit: 'V', reading, ...judged },
    isTooHot: isHeated && !heated,
    // Nothing of the supply left, or all of it, is a short or a break and no other pull-up.
    ratios:
      ratio(low) > 0 && ratio(high) > 0
        ? [ratio(volts + expanded) / ratio(low), ratio(volts - expanded) / ratio(high)]
        : [1, 0],
  };
}

/** Whether one other pull-up, a tenth to ten times the stated one, explains all voltages. */
function fitsAnotherPullUp(ratios: readonly Ratios[]): boolean {
  const low = Math.max(0.1, ...ratios.map(([from]) => from));
  const high = Math.min(10, ...ratios.map(([, to]) => to));
  return low <= high;
}

/** Whether the readings' temperatures lie far enough apart to show a wrong curve. */
function apart(readings: readonly ThermistorReading[]): ThermistorCheck {
  const temperatures = readings.map(({ temperature }) => temperature);
  const measured = Math.max(...temperatures) - Math.min(...temperatures);
  return {
    check: 'temperatures-apart',
    outcome: measured >= farEnoughApart ? 'conforms' : 'cannot-tell',
    unit: 'K',
    measured,
    lowLimit: farEnoughApart,
    margin: measured - farEnoughApart,
  };
}

const better: Readonly<Record<ThermistorSource, ThermistorAdvice>> = {
  meter: 'better-meter',
  thermometer: 'better-thermometer',
  supply: 'measure-supply',
  'pull-up': 'prove-pull-up',
};

function adviceOf(
  verdict: ThermistorJudgement['verdict'],
  checks: readonly ThermistorCheck[],
  { knows, isElsewhere, isTooHot }: Record<'knows' | 'isElsewhere' | 'isTooHot', boolean>,
): readonly ThermistorAdvice[] {
  if (verdict === 'pass') return ['refit'];
  if (verdict === 'fail') return ['read-again', 'replace-sensor'];
  const untold = checks.filter(
    ({ outcome, check }) => outcome !== 'conforms' && check !== 'temperatures-apart',
  );
  return [
    ...(knows ? [] : (['state-tolerances'] as const)),
    ...(isTooHot ? (['read-by-ohmmeter'] as const) : []),
    ...(isElsewhere ? (['prove-pull-up'] as const) : []),
    ...untold.flatMap(({ mostUncertain }) =>
      mostUncertain && knows && !isTooHot ? [better[mostUncertain]] : [],
    ),
    ...(checks.at(-1)!.outcome === 'conforms' ? [] : (['read-farther-apart'] as const)),
  ];
}
