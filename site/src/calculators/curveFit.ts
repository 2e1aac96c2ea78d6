import type { Celsius, Ohms, Volts } from '@truesweep/core';
import {
  type ChosenPullUp,
  choosePullUp,
  type FoundPullUp,
  pullUpFromPairs,
} from '@truesweep/core/pullUp';
import { resistanceAt } from '@truesweep/core/thermistor';
import { fitThermistor, type ThermistorFit } from '@truesweep/core/thermistorFit';
import { type CurveEntry, curveHints, curveLabels, curveWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Refusals, Values } from '../forms/form.js';
import { measureEntry } from '../forms/measureEntry.js';
import { measureText } from '../forms/measureText.js';

type Point = 1 | 2 | 3 | 4 | 5 | 6 | 7;
type Pair = 1 | 2 | 3;
type PointEntry = `${'temperature' | 'ohms'}${Point}`;
type PairEntry = `${'pairOhms' | 'pairVolts'}${Pair}`;

const eachPoint: readonly Point[] = [1, 2, 3, 4, 5, 6, 7];
const eachPair: readonly Pair[] = [1, 2, 3];

const temperature = (initial: string) =>
  ({ ...measureEntry('temperature', [-60, 400], initial), optional: true }) as const;
const ohms = (initial: string) =>
  ({ unit: 'Ω', low: 0.1, high: 1e8, initial, optional: true }) as const;
const volts = (initial: string) =>
  ({ unit: 'V', low: 0.001, high: 60, initial, optional: true }) as const;

/** An air sensor of the workshop's boats stands in the form first. */
const points: Readonly<Record<Point, readonly [temperature: string, ohms: string]>> = {
  1: ['0 °C', '6.02 kΩ'],
  2: ['21.5 °C', '2.31 kΩ'],
  3: ['48 °C', '845 Ω'],
  4: ['71 °C', '393 Ω'],
  5: ['99.4 °C', '176 Ω'],
  6: ['', ''],
  7: ['', ''],
};

const entries = {
  temperature1: temperature(points[1][0]),
  ohms1: ohms(points[1][1]),
  temperature2: temperature(points[2][0]),
  ohms2: ohms(points[2][1]),
  temperature3: temperature(points[3][0]),
  ohms3: ohms(points[3][1]),
  temperature4: temperature(points[4][0]),
  ohms4: ohms(points[4][1]),
  temperature5: temperature(points[5][0]),
  ohms5: ohms(points[5][1]),
  temperature6: temperature(points[6][0]),
  ohms6: ohms(points[6][1]),
  temperature7: temperature(points[7][0]),
  ohms7: ohms(points[7][1]),
  pointUncertainty: {
    ...measureEntry('temperature-difference', [0.01, 10], '0.3 K'),
    optional: true,
  },
  pairOhms1: ohms(''),
  pairVolts1: volts(''),
  pairOhms2: ohms(''),
  pairVolts2: volts(''),
  pairOhms3: ohms(''),
  pairVolts3: volts(''),
  pullUpSupply: { unit: 'V', low: 0.1, high: 60, initial: '5 V' },
  rangeFrom: temperature(''),
  rangeTo: temperature(''),
} as const satisfies Readonly<Record<PointEntry | PairEntry | CurveEntry, Entry>>;

const byPoint = <Of>(make: (point: Point, part: 'temperature' | 'ohms') => Of) =>
  Object.fromEntries(
    eachPoint.flatMap((point) =>
      (['temperature', 'ohms'] as const).map((part) => [`${part}${point}`, make(point, part)]),
    ),
  ) as Record<PointEntry, Of>;

const byPair = <Of>(make: (pair: Pair, part: 'pairOhms' | 'pairVolts') => Of) =>
  Object.fromEntries(
    eachPair.flatMap((pair) =>
      (['pairOhms', 'pairVolts'] as const).map((part) => [`${part}${pair}`, make(pair, part)]),
    ),
  ) as Record<PairEntry, Of>;

const namesOfPoints = (of: readonly Point[]): readonly PointEntry[] =>
  of.flatMap((point): readonly PointEntry[] => [`temperature${point}`, `ohms${point}`]);

/** The form: points measured beside a thermometer, and pairs of a service table for the pull-up. */
export const curveFitForm: Form<typeof entries> = {
  groups: [
    { title: curveWords.points, names: namesOfPoints([1, 2, 3, 4, 5, 6, 7]), across: 2 },
    { title: curveWords.certainty, names: ['pointUncertainty'] },
    {
      title: curveWords.pullUp,
      names: eachPair.flatMap((pair): readonly PairEntry[] => [
        `pairOhms${pair}`,
        `pairVolts${pair}`,
      ]),
      across: 2,
      folded: true,
    },
    { title: curveWords.choose, names: ['pullUpSupply', 'rangeFrom', 'rangeTo'], folded: true },
  ],
  entries,
  readings: namesOfPoints([1, 2, 3, 4, 5]),
  labels: {
    ...byPoint((point, part) =>
      part === 'ohms' ? curveWords.ohmsOf(point) : curveWords.temperatureOf(point),
    ),
    ...byPair((pair, part) =>
      part === 'pairOhms' ? curveWords.pairOhmsOf(pair) : curveWords.pairVoltsOf(pair),
    ),
    ...curveLabels,
  },
  hints: {
    ...byPoint((_, part) => (part === 'ohms' ? curveWords.ohmsHint : curveWords.temperatureHint)),
    ...byPair((_, part) =>
      part === 'pairOhms' ? curveWords.pairOhmsHint : curveWords.pairVoltsHint,
    ),
    ...curveHints,
  },
  check,
};

type CurveValues = Values<typeof entries>;

interface EnteredPoint {
  readonly point: Point;
  readonly temperature: Celsius;
  readonly ohms: Ohms;
}

function enteredPoints(values: CurveValues): readonly EnteredPoint[] {
  return eachPoint.flatMap((point) => {
    const [at, read] = [values[`temperature${point}`], values[`ohms${point}`]];
    return at === undefined || read === undefined ? [] : [{ point, temperature: at, ohms: read }];
  });
}

function enteredPairs(
  values: CurveValues,
): readonly { readonly ohms: Ohms; readonly volts: Volts }[] {
  return eachPair.flatMap((pair) => {
    const [given, seen] = [values[`pairOhms${pair}`], values[`pairVolts${pair}`]];
    return given === undefined || seen === undefined ? [] : [{ ohms: given, volts: seen }];
  });
}

function check(values: CurveValues): Refusals<typeof entries> {
  const refusals: Partial<Record<keyof typeof entries, string>> = {};
  for (const point of eachPoint) {
    const [at, read] = [values[`temperature${point}`], values[`ohms${point}`]];
    if (at === undefined && read !== undefined)
      refusals[`temperature${point}`] = curveWords.needsTemperature;
    if (at !== undefined && read === undefined) refusals[`ohms${point}`] = curveWords.needsOhms;
  }
  const byHeat = [...enteredPoints(values)].sort((a, b) => a.temperature - b.temperature);
  if (byHeat.length < 2) refusals.temperature2 ??= curveWords.needsTwo;
  byHeat.forEach(({ point, ...own }, i) => {
    const before = byHeat[i - 1];
    if (!before) return;
    if (own.temperature === before.temperature)
      refusals[`temperature${point}`] = curveWords.twice(before.point);
    else if (!(own.ohms < before.ohms)) refusals[`ohms${point}`] = curveWords.rises(point);
  });
  for (const pair of eachPair) {
    const [given, seen] = [values[`pairOhms${pair}`], values[`pairVolts${pair}`]];
    if (given === undefined && seen !== undefined)
      refusals[`pairOhms${pair}`] = curveWords.needsPairOhms;
    if (given !== undefined && seen === undefined)
      refusals[`pairVolts${pair}`] = curveWords.needsVolts;
    if (seen !== undefined && seen >= values.pullUpSupply)
      refusals[`pairVolts${pair}`] = curveWords.atSupply;
  }
  const [coldest, hottest] = [byHeat[0]?.temperature ?? 0, byHeat.at(-1)?.temperature ?? 0];
  const outside = curveWords.outside(measureText(coldest, '°C'), measureText(hottest, '°C'));
  const { rangeFrom, rangeTo } = values;
  for (const [name, at] of [
    ['rangeFrom', rangeFrom],
    ['rangeTo', rangeTo],
  ] as const)
    if (at !== undefined && (at < coldest || at > hottest)) refusals[name] = outside;
  if (rangeFrom !== undefined && rangeTo !== undefined && rangeTo <= rangeFrom)
    refusals.rangeTo ??= curveWords.notRising;
  return refusals;
}

/** So many places the curve is drawn at. */
const places = 40;

/** A law through measured points, with the pull-ups that were asked for. */
export interface CurveFit {
  readonly fit: ThermistorFit;
  readonly points: readonly EnteredPoint[];
  readonly lowest: Celsius;
  readonly highest: Celsius;
  readonly foundPullUp?: FoundPullUp;
  readonly chosenPullUp?: ChosenPullUp;
  readonly drawn: readonly { readonly temperature: Celsius; readonly ohms: Ohms }[];
}

export function curveFit(values: CurveValues): CurveFit {
  const { pointUncertainty, pullUpSupply, rangeFrom, rangeTo } = values;
  const given = enteredPoints(values);
  const fit = fitThermistor(
    given.map(({ temperature, ohms }) => ({
      temperature,
      ohms,
      ...(pointUncertainty !== undefined && { uncertainty: pointUncertainty }),
    })),
  );
  const temperatures = given.map((point) => point.temperature);
  const [lowest, highest] = [Math.min(...temperatures), Math.max(...temperatures)];
  const pairs = enteredPairs(values);
  return {
    fit,
    points: given,
    lowest,
    highest,
    ...(pairs.length > 0 && { foundPullUp: pullUpFromPairs(pairs, pullUpSupply) }),
    ...(rangeFrom !== undefined &&
      rangeTo !== undefined && {
        chosenPullUp: choosePullUp(fit.law, rangeFrom, rangeTo, pullUpSupply),
      }),
    drawn: Array.from({ length: places + 1 }, (_, i) => {
      const at = i === places ? highest : lowest + ((highest - lowest) * i) / places;
      return { temperature: at, ohms: resistanceAt(fit.law, at) };
    }),
  };
}
