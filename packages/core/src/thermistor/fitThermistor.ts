import { InputError } from '../errors.js';
import { type FieldRules, listOf } from '../fields.js';
import { above0, between } from '../guard.js';
import { normalProbability } from '../statistics/normalDistribution.js';
import { studentTail } from '../statistics/studentTail.js';
import type { Celsius, Fraction, Kelvins, Ohms } from '../units.js';
import { zero } from './checkLaw.js';
import type { ThermistorLaw } from './law.js';
import { temperatureWithin } from './temperatureAt.js';

/** A resistance measured at a known temperature. */
export interface ThermistorPoint {
  /** °C, −273 to 2000. */
  readonly temperature: Celsius;
  /** Ω, above 0. */
  readonly ohms: Ohms;
  /** Standard uncertainty of the point as a temperature, K, above 0: of thermometer and meter together; in all points or in none. */
  readonly uncertainty?: Kelvins;
}

/** A thermistor's law from measured points. */
export interface ThermistorFit {
  /** One B of two points, Steinhart and Hart's law of more; it holds between the coldest and the hottest. */
  readonly law: ThermistorLaw;
  /** What the law makes of each resistance less the temperature measured there, K, in the order of the points. */
  readonly residuals: readonly Kelvins[];
  /** Number of points less what the law has of its own, 0 or more. */
  readonly degreesOfFreedom: number;
  /** A number: the sum of the squared residuals, each in its standard uncertainty, about the degrees of freedom where all is well; left out where no uncertainty is told. */
  readonly chiSquare?: number;
  /** The place of a point that the others contradict, from 0, and the probability that chance made it stand out so, below 0.01; left out where none does. */
  readonly outlier?: { readonly point: number; readonly chance: Fraction };
}

/** A point stands out where chance makes one of so many do so less often. */
const rare = 0.01;

const point: FieldRules = {
  temperature: between(-273, 2000, '°C'),
  ohms: above0('Ω'),
  'uncertainty?': above0('K'),
};
const someWith = listOf(point, 2, 10_000);

/**
 * Fits a thermistor's law to measured points: two make one B, three Steinhart and Hart's law, more the same by least squares of the
 * temperatures. With five points or more one that does not belong to the others is named; with fewer none could be told from the rest.
 *
 * Method: 1/T = a + b·ln R + c·(ln R)³ is linear in a, b and c: solved on columns at right angles, weighted by 1/u². An outlier has the largest residual in
 * its own standard deviation, against the others' scatter where no uncertainty is told (the deleted residual has Student's distribution) and
 * against the stated one elsewhere, times the number of points (Bonferroni). From memory.
 *
 * @param points 2 to 10,000, at different temperatures and resistances, colder ones with more.
 * @throws InputError at `points…`; `no-span` where two are one; `out-of-order` where they do not fall as an NTC's; `missing` where only some
 * have an uncertainty.
 *
 * @example
 * const fit = fitThermistor([
 *   { temperature: -25, ohms: 87041 },
 *   { temperature: 0, ohms: 27326 },
 *   { temperature: 25, ohms: 10000 },
 * ]);
 * fit.law.kind // => 'steinhart-hart'
 * temperatureAt(fit.law, 20000) // => ≈ 7.398
 */
export function fitThermistor(points: readonly ThermistorPoint[]): ThermistorFit {
  someWith(points, 'points');
  const isWeighted = points[0]!.uncertainty !== undefined;
  const mixed = points.findIndex(({ uncertainty }) => (uncertainty !== undefined) !== isWeighted);
  if (mixed >= 0) {
    const wrong = 'some points have an uncertainty and some have none; give all or none';
    throw new InputError('missing', `points[${mixed}].uncertainty`, `${wrong}.`);
  }
  const byHeat = [...points].sort((a, b) => a.temperature - b.temperature);
  const [coldest, hottest] = [byHeat[0]!, byHeat.at(-1)!];
  byHeat.forEach((one, i) => {
    const before = byHeat[i - 1];
    if (before && (before.temperature === one.temperature || before.ohms === one.ohms)) {
      const path = `points[${points.indexOf(one)}]`;
      const wrong = 'has the temperature or the resistance of another point; each must be its own';
      throw new InputError('no-span', path, `${path} ${wrong}.`);
    }
  });
  if (points.length === 2) {
    const b =
      Math.log(coldest.ohms / hottest.ohms) /
      (1 / (coldest.temperature + zero) - 1 / (hottest.temperature + zero));
    const law = {
      kind: 'b',
      b,
      ohms: coldest.ohms,
      from: coldest.temperature,
      to: hottest.temperature,
    } as const;
    refuseRising(b > 0);
    refuseRising(b >= 10 && b <= 1e5);
    return { law, residuals: [0, 0], degreesOfFreedom: 0, ...(isWeighted && { chiSquare: 0 }) };
  }
  const { coefficients, leverages } = leastSquares(points);
  const [a, b, c] = coefficients;
  refuseRising(b > 0);
  const law = {
    kind: 'steinhart-hart',
    ...{ a, b, c },
    lowest: coldest.temperature,
    highest: hottest.temperature,
  } as const;
  refuseRising(points.every(({ ohms }) => b + 3 * c * Math.log(ohms) ** 2 > 0));
  refuseRising(Math.abs(a) <= 1 && b <= 1 && Math.abs(c) <= 1);
  const residuals = points.map(
    ({ temperature, ohms }) => temperatureWithin(law, ohms) - temperature,
  );
  const degreesOfFreedom = points.length - 3;
  const squares = points.map(({ uncertainty = 1 }, i) => (residuals[i]! / uncertainty) ** 2);
  const sum = squares.reduce((total, one) => total + one, 0);
  const outlier = outlierOf(squares, leverages, sum, isWeighted);
  return {
    law,
    residuals,
    degreesOfFreedom,
    ...(isWeighted && { chiSquare: sum }),
    ...(outlier && { outlier }),
  };
}

function refuseRising(falls: boolean): void {
  if (falls) return;
  throw new InputError(
    'out-of-order',
    'points',
    'points do not fall as an NTC does, from cold to hot; look for a misread one, or take them farther apart.',
  );
}

type Three = [number, number, number];

/** 1/T by 1, ln R and (ln R)³, and how much of each point the fit takes over. */
function leastSquares(points: readonly ThermistorPoint[]): {
  readonly coefficients: Three;
  readonly leverages: readonly number[];
} {
  const logs = points.map(({ ohms }) => Math.log(ohms));
  // A kelvin is 1/T² of 1/T.
  const weights = points.map(
    ({ temperature, uncertainty = 1 }) => (temperature + zero) ** 2 / uncertainty,
  );
  const weighted = (of: (log: number) => number) => logs.map((log, i) => weights[i]! * of(log));
  const columns = [weighted(() => 1), weighted((log) => log), weighted((log) => log ** 3)];
  const target = points.map(({ temperature }, i) => weights[i]! / (temperature + zero));
  const upper = columns.map(() => [0, 0, 0] as Three);
  columns.forEach((column, j) => {
    // Twice, so that rounding leaves nothing of the others in it.
    for (let pass = 0; pass < 2; pass++) {
      for (let i = 0; i < j; i++) {
        const part = dot(columns[i]!, column);
        upper[i]![j]! += part;
        column.forEach((at, k) => {
          column[k] = at - part * columns[i]![k]!;
        });
      }
    }
    const size = Math.hypot(...column);
    upper[j]![j] = size;
    column.forEach((at, k) => {
      column[k] = at / size;
    });
  });
  const coefficients: Three = [0, 0, 0];
  // What the first solution leaves is fitted once more.
  let rest = target;
  for (let pass = 0; pass < 2; pass++) {
    const parts = columns.map((column) => dot(column, rest));
    const step: Three = [0, 0, 0];
    for (let i = 2; i >= 0; i--) {
      const known = step.reduce((sum, at, j) => sum + (j > i ? upper[i]![j]! * at : 0), 0);
      step[i] = (parts[i]! - known) / upper[i]![i]!;
      coefficients[i]! += step[i]!;
    }
    rest = target.map((at, k) => {
      const [a, b, c] = coefficients;
      const log = logs[k]!;
      return at - weights[k]! * (a + b * log + c * log ** 3);
    });
  }
  const leverages = points.map((_, k) => columns.reduce((sum, column) => sum + column[k]! ** 2, 0));
  return { coefficients, leverages };
}

function outlierOf(
  squares: readonly number[],
  leverages: readonly number[],
  sum: number,
  isWeighted: boolean,
): ThermistorFit['outlier'] {
  const count = squares.length;
  const free = count - 4;
  if (free < 1) return undefined;
  const scaled = squares.map((square, i) => square / Math.max(1 - leverages[i]!, 1e-9));
  const point = scaled.indexOf(Math.max(...scaled));
  const own = scaled[point]!;
  const others = Math.max(sum - own, 0) / free;
  const single = isWeighted
    ? 2 * normalProbability(-Math.sqrt(own))
    : // Of points that fit to the last figure nothing stands out but rounding.
      own < 1e-12
      ? 1
      : 2 * studentTail(Math.sqrt(own / others), free);
  const chance = Math.min(1, count * single);
  return chance < rare ? { point, chance } : undefined;
}

function dot(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, at, i) => sum + at * other[i]!, 0);
}
