import { checkFields, type FieldRules, listOf } from '../fields.js';
import { between, resistance } from '../guard.js';
import { checkLimits } from '../judgement/checkLimits.js';
import { compareOhms, type OhmsReading, type OhmsSource } from '../judgement/compareOhms.js';
import { decideVerdict } from '../judgement/decideVerdict.js';
import type { Judgement, ReadingCheck } from '../judgement/readingCheck.js';
import type { Celsius, Ohms } from '../units.js';
import { type Conductor, constantOf } from './conductor.js';
import { growth } from './growth.js';
import { someCelsius, windingOhms, wireRules } from './winding.js';

/** Between which resistances a winding is right. One of the limits may be left out, not both. */
export interface WindingLimits {
  /** The lowest that is right, Ω, from 10⁻⁶ to 10⁹; none when left out. */
  readonly low?: Ohms;
  /** The highest that is right, Ω, from 10⁻⁶ to 10⁹, not below `low`; none when left out. */
  readonly high?: Ohms;
  /** The temperature that the limits are stated for, °C, −60 to 300; 20 when left out. */
  readonly at?: Celsius;
  /** What its wire is of; copper when left out. */
  readonly conductor?: Conductor;
}

/** A winding's resistance as it was read. */
export interface WindingReading extends OhmsReading {
  /** The winding's own temperature, °C, −60 to 300. */
  readonly temperature: Celsius;
  /** Its standard uncertainty, K, 0 to 100. */
  readonly temperatureUncertainty: number;
}

/** What can make the comparison uncertain. */
export type WindingSource = OhmsSource | 'temperature';

/** A reading beside the limits as they are at its temperature; a winding that is open has ∞ Ω. */
export type WindingCheck = ReadingCheck<'resistance', 'Ω', WindingSource>;

/** What to do next. */
export type WindingAdvice =
  /** It reads high, and would be right were it only warmer than stated: let it soak, then read again. */
  | 'let-it-cool'
  /** How warm the winding is must be known better: a closer thermometer, or a longer soak. */
  | 'know-temperature'
  /** The meter's uncertainty decides: another range, a better meter, or four wires. */
  | 'better-meter'
  /** What the test leads have must be read and taken off. */
  | 'measure-leads'
  /** It fails: read it once more. */
  | 'read-again'
  /** It fails again: replace it. */
  | 'replace-sensor';

/** What a right resistance does not say. */
export type WindingUnsaid = 'magnet' | 'gap' | 'polarity' | 'shorted-turn';
/** What its readings say. */
export type WindingJudgement = Judgement<WindingCheck, WindingAdvice, WindingUnsaid>;

/** No coil that has just run on a machine is hotter than this, °C: common practice, no source. */
const hotCoil = 120;

const limitRules: FieldRules = { 'low?': windingOhms, 'high?': windingOhms, ...wireRules };

const readingRules: FieldRules = {
  ohms: resistance,
  uncertainty: between(0, 1e9, 'Ω'),
  'leads?': between(0, 100, 'Ω'),
  temperature: someCelsius,
  temperatureUncertainty: between(0, 100, 'K'),
};

const adviceFor: Readonly<Record<WindingSource, WindingAdvice>> = {
  temperature: 'know-temperature',
  meter: 'better-meter',
  leads: 'measure-leads',
};

/**
 * Judges a winding by its resistance: the limits are moved to the temperature that it was read at.
 *
 * A right resistance says nothing of the magnet, the gap, the polarity, or of one shorted turn in many: that moves it by one part in as many as
 * there are turns.
 *
 * Method: limits at a temperature as in {@link resistanceAtTemperature}, comparison as in `judgeReading`. Leads that were not read are 0 to 0.2 Ω, all alike likely:
 * 0.1 Ω is taken off, with a standard uncertainty of 0.058 Ω; meters' manuals state 0.1 to 0.2 Ω. The worst reading decides.
 *
 * @param sensor Its limits and the temperature that they are stated for.
 * @param readings 1 to 1000.
 * @throws InputError at `sensor…` or `readings…`.
 *
 * @example
 * const sensor = { low: 765, high: 935 };
 * const read = { ohms: 1050, uncertainty: 4, leads: 0.2, temperature: 85, temperatureUncertainty: 2 };
 * const { verdict, checks } = judgeWinding(sensor, [read]);
 * verdict // => 'pass'
 * checks[0].highLimit // => ≈ 1173.8
 * judgeWinding(sensor, [{ ...read, temperature: 20 }]).advice // => ['let-it-cool', 'read-again', 'replace-sensor']
 */
export function judgeWinding(
  sensor: WindingLimits,
  readings: readonly WindingReading[],
): WindingJudgement {
  checkFields(sensor, 'sensor', limitRules);
  checkLimits(sensor, 'sensor');
  listOf(readingRules, 1, 1000)(readings, 'readings');
  const checks = readings.map((reading, i) => checkOf(sensor, reading, i));
  const advice = new Set<WindingAdvice>();
  checks.forEach((check, i) => {
    if (isOnlyHot(sensor, readings[i]!, check)) advice.add('let-it-cool');
    if (check.mostUncertain && /^(marginal|cannot-tell)$/.test(check.outcome))
      advice.add(adviceFor[check.mostUncertain]);
  });
  const verdict = decideVerdict(checks);
  return {
    verdict,
    checks,
    advice: [...advice, ...(verdict === 'fail' ? (['read-again', 'replace-sensor'] as const) : [])],
    unsaid: ['magnet', 'gap', 'polarity', 'shorted-turn'],
  };
}

function checkOf(sensor: WindingLimits, reading: WindingReading, at: number): WindingCheck {
  const { temperature, temperatureUncertainty, ...read } = reading;
  const { low, high, conductor } = sensor;
  const grown = growth(sensor, temperature);
  const limits = {
    ...(low !== undefined && { low: low * grown }),
    ...(high !== undefined && { high: high * grown }),
  };
  // Of the limits, which move with it, beside this reading.
  const sensitivity = read.ohms / (constantOf(conductor) + temperature);
  return {
    check: 'resistance',
    reading: at,
    unit: 'Ω',
    ...compareOhms(read, limits, [
      { name: 'temperature', sensitivity, uncertainty: temperatureUncertainty },
    ]),
  };
}

/** Whether a reading lies above its limits by no more than a coil that has just run would. */
function isOnlyHot(
  { high, ...wire }: WindingLimits,
  { temperature }: WindingReading,
  { measured = 0, margin = 0 }: WindingCheck,
): boolean {
  if (margin >= 0 || high === undefined || temperature >= hotCoil) return false;
  return measured > high * growth(wire, temperature) && measured <= high * growth(wire, hotCoil);
}
