import { checkFields, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import { compareReading } from '../judgement/judgeReading.js';
import type { Judgement, ReadingCheck } from '../judgement/readingCheck.js';
import type { Celsius, Kelvins, Ohms } from '../units.js';
import { checkLaw } from './checkLaw.js';
import type { ThermistorSensor } from './judgeThermistor.js';
import { slopeWithin } from './lnOhms.js';
import { bandWithin, checkTolerances, knowsLimits } from './resistanceBand.js';
import { temperatureOf } from './temperatureAt.js';

/** A sensor that has lain so long that it is as warm as its surroundings, and its resistance. */
export interface SoakedSensor extends ThermistorSensor {
  /** Its resistance, Ω, above 0 and among those of its law. */
  readonly ohms: Ohms;
  /** Standard uncertainty of that, Ω, 0 or more. */
  readonly uncertainty: Ohms;
}

/** A third thermometer between the two. */
export interface SoakThermometer {
  /** What it shows, °C, −273 to 2000. */
  readonly temperature: Celsius;
  /** Its standard uncertainty, K, 0 or more. */
  readonly uncertainty: Kelvins;
}

/** What to do after it. */
export type SoakAdvice =
  | 'read-elsewhere'
  | 'read-thermometer'
  | 'better-thermometer'
  | 'better-meter'
  | 'state-tolerances'
  | 'replace-one'
  | 'replace-other';

/** Two sensors that should show one temperature. */
export interface SoakComparison
  extends Judgement<
    ReadingCheck<'difference' | 'one' | 'other', 'K', SoakSource>,
    SoakAdvice,
    'far-from-here'
  > {
  /** What the first shows, °C. */
  readonly one: Celsius;
  /** What the other shows, °C. */
  readonly other: Celsius;
}

/** What makes it uncertain. */
export type SoakSource = 'meter-one' | 'meter-other' | 'thermometer';

const rules: FieldRules = {
  law: (value, path) => checkLaw(value as SoakedSensor['law'], path),
  'tolerances?': () => {},
  'dissipation?': () => {},
  ohms: () => {},
  uncertainty: between(0, 1e12, 'Ω'),
};

/**
 * Compares two temperature sensors after a cold soak: hours in still shade, until all has the temperature of the air. Without a thermometer a
 * difference says that one of them is wrong, not which. It is never a pass of either: one temperature shows no wrong curve.
 *
 * Method: each sensor's temperature by its law; the limit of the difference is what both tolerances make of it at their worst, by the
 * laws' slopes there (JCGM 106:2012 as in `judgeReading`).
 *
 * @param one The one, such as the coolant's.
 * @param other The other, such as the air's.
 * @param thermometer A thermometer beside them; left out where there is none.
 * @throws InputError at `one…`, `other…` or `thermometer…`.
 *
 * @example
 * const law = { kind: 'b', b: 3640, ohms: 2044, from: 25, to: 100, lowest: -20 };
 * const tolerances = { kelvins: 1 };
 * const soaked = compareSoaked(
 *   { law, tolerances, ohms: 2700, uncertainty: 10 },
 *   { law, tolerances, ohms: 3300, uncertainty: 10 },
 * );
 * soaked.verdict // => 'inconclusive'
 * soaked.advice // => ['read-thermometer']
 */
export function compareSoaked(
  one: SoakedSensor,
  other: SoakedSensor,
  thermometer?: SoakThermometer,
): SoakComparison {
  const [first, second] = [shownBy(one, 'one'), shownBy(other, 'other')];
  if (thermometer !== undefined) {
    const rule = { temperature: between(-273, 2000, '°C'), uncertainty: between(0, 1000, 'K') };
    checkFields(thermometer, 'thermometer', rule);
  }
  const meters = [
    { name: 'meter-one', sensitivity: 1, uncertainty: first.uncertainty },
    { name: 'meter-other', sensitivity: 1, uncertainty: second.uncertainty },
  ] as const;
  const compare = (
    check: 'difference' | 'one' | 'other',
    measured: Kelvins,
    limit: Kelvins,
    inputs: Parameters<typeof compareReading<SoakSource>>[0]['inputs'],
  ) => {
    const limits = { measured, lowLimit: -limit, highLimit: limit };
    const judged = compareReading<SoakSource>({ measured, low: -limit, high: limit, inputs });
    return { check, unit: 'K', ...limits, ...judged } as const;
  };
  const isKnown = first.isKnown && second.isKnown;
  const told = (check: ReturnType<typeof compare>): SoakComparison['checks'][number] =>
    isKnown ? check : { ...check, outcome: 'cannot-tell' };
  const difference = first.temperature - second.temperature;
  const apart = compare('difference', difference, first.limit + second.limit, meters);
  const temperatures = { one: first.temperature, other: second.temperature };
  const unsaid = ['far-from-here'] as const;
  if (thermometer === undefined) {
    const differ = apart.outcome !== 'conforms';
    return {
      verdict: 'inconclusive',
      checks: [told(apart)],
      advice: isKnown ? (differ ? ['read-thermometer'] : []) : ['state-tolerances'],
      unsaid,
      ...temperatures,
    };
  }
  const shown = {
    name: 'thermometer',
    sensitivity: 1,
    uncertainty: thermometer.uncertainty,
  } as const;
  const own = (
    [
      ['one', first],
      ['other', second],
    ] as const
  ).map(([name, at], i) =>
    compare(name, at.temperature - thermometer.temperature, at.limit, [meters[i]!, shown]),
  );
  const wrong = own.filter(({ outcome }) => outcome === 'fails');
  const unsure = own.filter(({ outcome }) => outcome !== 'conforms');
  return {
    // One temperature shows no wrong curve: that both are right here passes neither.
    verdict: isKnown && wrong.length > 0 ? 'fail' : 'inconclusive',
    checks: [apart, ...own].map(told),
    advice: !isKnown
      ? ['state-tolerances']
      : wrong.length > 0
        ? wrong.map(({ check }) => (check === 'one' ? 'replace-one' : 'replace-other'))
        : unsure.length > 0
          ? [
              unsure.some(({ mostUncertain }) => mostUncertain === 'thermometer')
                ? 'better-thermometer'
                : 'better-meter',
            ]
          : ['read-elsewhere'],
    unsaid,
    ...temperatures,
  };
}

/** What a sensor shows, with its uncertainty and how far a sound one may be off there, K. */
function shownBy(sensor: SoakedSensor, path: string) {
  checkFields(sensor, path, rules);
  const { law, tolerances, ohms, uncertainty } = sensor;
  checkTolerances(law, tolerances, `${path}.tolerances`);
  const temperature = temperatureOf(law, ohms, `${path}.ohms`);
  const slope = -slopeWithin(law, temperature);
  const { low, high } = bandWithin(law, temperature, tolerances);
  return {
    temperature,
    uncertainty: uncertainty / (ohms * slope),
    limit: Math.log(high / low) / 2 / slope,
    isKnown: knowsLimits(law, tolerances),
  };
}
