import { checkFields, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import { decideVerdict } from '../judgement/decideVerdict.js';
import { compareReading } from '../judgement/judgeReading.js';
import type { Judgement, ReadingCheck } from '../judgement/readingCheck.js';
import type { Celsius, Kelvins, Ohms } from '../units.js';
import { checkLaw } from './checkLaw.js';
import type { ThermistorSensor } from './judgeThermistor.js';
import { slopeWithin } from './lnOhms.js';
import { bandWithin, checkTolerances } from './resistanceBand.js';
import { temperatureAt } from './temperatureAt.js';

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
export type SoakAdvice = 'refit' | 'read-thermometer' | 'replace-one' | 'replace-other';

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
 * difference says that one of them is wrong, not which: that is inconclusive, and never a pass of either.
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
  const difference = first.temperature - second.temperature;
  const apart = compare('difference', difference, first.limit + second.limit, meters);
  const temperatures = { one: first.temperature, other: second.temperature };
  const unsaid = ['far-from-here'] as const;
  if (thermometer === undefined) {
    const differ = apart.outcome !== 'conforms';
    return {
      verdict: 'inconclusive',
      checks: [apart],
      advice: differ ? ['read-thermometer'] : [],
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
  const verdict = decideVerdict(own);
  const wrong = own.filter(({ outcome }) => outcome === 'fails').map(({ check }) => check);
  return {
    verdict,
    checks: [apart, ...own],
    advice:
      verdict === 'pass'
        ? ['refit']
        : wrong.map((name) => (name === 'one' ? 'replace-one' : 'replace-other')),
    unsaid,
    ...temperatures,
  };
}

/** What a sensor shows, with its uncertainty and how far a sound one may be off there, K. */
function shownBy(sensor: SoakedSensor, path: string) {
  checkFields(sensor, path, rules);
  const { law, tolerances, ohms, uncertainty } = sensor;
  checkTolerances(law, tolerances, `${path}.tolerances`);
  const temperature = temperatureAt(law, ohms);
  const slope = -slopeWithin(law, temperature);
  const { low, high } = bandWithin(law, temperature, tolerances);
  return {
    temperature,
    uncertainty: uncertainty / (ohms * slope),
    limit: Math.log(high / low) / 2 / slope,
  };
}
