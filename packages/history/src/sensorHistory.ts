import {
  checkFields,
  checkReadable,
  type Forecast,
  type Fraction,
  fitTrend,
  forecast,
  forecastEnd,
  InputError,
  type LimitMet,
  pooledScatter,
  type Scatter,
  type Seconds,
  type Trend,
  whenLimitIsMet,
} from '@truesweep/core';
import { checkRecord } from './checkRecord.js';
import { dateSeconds } from './dates.js';
import type { HistoryRecord } from './historyRecord.js';
import {
  type HistoryPoint,
  type HistoryQuantity,
  historyQuantities,
  limitsOf,
  pointsOf,
} from './quantities.js';

/** What the records of many sensors say of how far each quantity scatters; left out where they say nothing. */
export type SharedScatter = Readonly<Partial<Record<HistoryQuantity, Scatter>>>;

/** One quantity of a sensor over time; all values are fractions of the span that its hook-up should give. */
export interface QuantityHistory {
  /** Which. */
  readonly quantity: HistoryQuantity;
  /** Its values by time, with the standard uncertainty that the recordings state. */
  readonly points: readonly HistoryPoint[];
  /** How many records it was left out of because another recorder took them: a count, 0 or more. */
  readonly otherRecorder: number;
  /** Its limits as the last record with a date has them; left out where it has none. */
  readonly limits?: {
    /** The lower one, fraction of the span; any. */
    readonly low: number;
    /** The upper one, fraction of the span, not below `low`; any. */
    readonly high: number;
  };
  /** The line through them; left out where too little is known for one. */
  readonly trend?: Trend;
  /** Where a change is told, what is to be expected as long after the last record as that is after the first: the time, s since 1970, and the band. */
  readonly ahead?: Forecast & { readonly at: Seconds };
  /** Where a change leads to a limit: which limit, and when it is met, s since 1970; left out elsewhere. */
  readonly limit?: LimitMet & { readonly side: 'low' | 'high'; readonly at: number };
}

/** The records of one sensor, and what they say of its changes. */
export interface SensorHistory {
  /** Its serial number or name. */
  readonly sensor: string;
  /** Its records by date, those without one last. */
  readonly records: readonly HistoryRecord[];
  /** How many of them have no date, and so no place in any trend: a count, 0 or more. */
  readonly undated: number;
  /** What is followed, each with its values. */
  readonly quantities: readonly QuantityHistory[];
  /** The probability, 0 to 1, that no change at all is told of a sensor that does not change. */
  readonly coverage: Fraction;
}

/** Of a sensor that does not change, no change is told with this probability, whatever is followed. */
const coverage: Fraction = 0.95;

/**
 * What the records of many sensors, each with its own line taken out, say together of how far each quantity scatters from one recording to the next.
 *
 * @param sensors The records of each sensor, three of them or more; gone through once.
 *
 * @example
 * sharedScatter([]) // => {}
 */
export function sharedScatter(sensors: Iterable<readonly HistoryRecord[]>): SharedScatter {
  const owns = new Map<HistoryQuantity, Scatter[]>(historyQuantities.map((one) => [one, []]));
  let sensor = 0;
  for (const records of checkedList(sensors, 'sensors')) {
    checkRecords(records, `sensors[${sensor++}]`);
    for (const quantity of historyQuantities) {
      const { own } = fitTrend(pointsOf(quantity, records).points.map(bare)) ?? {};
      if (own) owns.get(quantity)!.push(own);
    }
  }
  const shared = [...owns].map(([quantity, scatters]) => [quantity, pooledScatter(scatters)]);
  return Object.fromEntries(shared.filter(([, scatter]) => scatter !== undefined));
}

/**
 * What changed of a sensor: each quantity over time, with a line through it and what that makes expect. A slope is told as a change where it differs from 0 by
 * more than its expanded uncertainty, which is made for 95 % over all quantities together (Bonferroni: each for 1 − 5 %/n), so that of a hundred sensors that do not
 * change five show any. Closed and open reading are compared with what their own hook-up should have given; noise only among recorders alike.
 *
 * @param records Of one sensor, in any order; one or more.
 * @param shared What other sensors' records say of the scatter, by `sharedScatter`; nothing when left out.
 * @throws InputError for records that are none.
 *
 * @example
 * const recorder = { interval: 0.001, resolution: 0.001 };
 * const records = [0.5, 0.51, 0.52, 0.531].map((volts, i) => ({
 *   kind: 'truesweep-record', form: 1, sensor: 'Port engine', recording: String(i).repeat(64), date: `${2023 + i}-05-03`, file: 'a.csv', verdict: 'pass',
 *   closed: { volts, low: 0.4, high: 0.6 }, open: { volts: 4.5, low: 4.4, high: 4.6 }, noise: 0.001, visible: 0.02, roughness: 0, findings: 0, recorder,
 * }));
 * const { quantities } = sensorHistory(records);
 * quantities[0].trend.changed // => true
 * quantities[1].trend.changed // => false
 */
export function sensorHistory(
  records: readonly HistoryRecord[],
  shared: SharedScatter = {},
): SensorHistory {
  checkRecords(records, 'records');
  if (records.length === 0)
    throw new InputError('empty', 'records', 'records is empty; it must hold one record or more.');
  checkFields(shared, 'shared', sharedRules);
  const sorted = byDate(records);
  const series = historyQuantities.map((quantity) => ({ quantity, ...pointsOf(quantity, sorted) }));
  const told = series.filter(
    ({ quantity, points }) =>
      // What stayed as it was to the last figure can't seem to change.
      points.some(({ value }) => value !== points[0]!.value) &&
      fitTrend(points.map(bare), optionsOf(shared[quantity], coverage)),
  ).length;
  const each = 1 - (1 - coverage) / Math.max(1, told);
  const last = sorted.findLast(({ date }) => date !== undefined);
  return {
    sensor: records[0]!.sensor,
    records: sorted,
    undated: sorted.filter(({ date }) => date === undefined).length,
    quantities: series.map(({ quantity, points, otherRecorder }) => {
      const trend = fitTrend(points.map(bare), optionsOf(shared[quantity], each));
      const limits = last && limitsOf(quantity, last);
      return {
        quantity,
        points,
        otherRecorder,
        ...(limits && { limits }),
        ...(trend && trendTold(trend, limits)),
      };
    }),
    coverage,
  };
}

const sharedRules = Object.fromEntries(
  historyQuantities.map((quantity) => [`${quantity}?`, checkScatter]),
);

function checkScatter(value: unknown, path: string): void {
  checkFields(value, path, { deviation: checkAbove0, degreesOfFreedom: checkAbove0 });
}

function checkAbove0(value: unknown, path: string): void {
  if (typeof value === 'number' && value > 0) return;
  throw new InputError(
    value === undefined ? 'missing' : 'out-of-range',
    path,
    `${path} must be a number above 0.`,
  );
}

function checkRecords(records: Iterable<unknown>, path: string): void {
  for (const [i, record] of [...checkedList(records, path)].entries())
    checkRecord(record, `${path}[${i}]`);
}

function checkedList<One>(given: Iterable<One>, path: string): Iterable<One> {
  if (Array.isArray(given)) checkReadable(given, path);
  if (typeof given === 'object' && given !== null && Symbol.iterator in given)
    return given as Iterable<One>;
  throw new InputError(
    given === undefined ? 'missing' : 'not-a-list',
    path,
    `${path} must be a list of records.`,
  );
}

function optionsOf(scatter: Scatter | undefined, wanted: Fraction) {
  return { coverage: wanted, ...(scatter && { scatter }) };
}

function bare({ at, value, uncertainty }: HistoryPoint) {
  return { at, value, ...(uncertainty !== undefined && { uncertainty }) };
}

/** A trend with what it makes expect. */
function trendTold(
  trend: Trend,
  limits: QuantityHistory['limits'],
): Pick<QuantityHistory, 'trend' | 'ahead' | 'limit'> {
  const at = forecastEnd(trend);
  const ahead = forecast(trend, at);
  if (!ahead) return { trend };
  const side = trend.slope > 0 ? 'high' : 'low';
  const limit = limits?.[side];
  const met = limit === undefined ? undefined : whenLimitIsMet(trend, limit);
  return {
    trend,
    ahead: { at, ...ahead },
    ...(met && { limit: { side, at: limit!, ...met } }),
  };
}

/** By date, those without one last; of one moment by their recordings' hashes, so that their order as given makes no difference. */
function byDate(records: readonly HistoryRecord[]): readonly HistoryRecord[] {
  const timed = records.map((record) => ({
    record,
    at: (record.date === undefined ? undefined : dateSeconds(record.date)) ?? Infinity,
  }));
  timed.sort((one, other) =>
    one.at === other.at
      ? one.record.recording < other.record.recording
        ? -1
        : 1
      : one.at - other.at,
  );
  return timed.map(({ record }) => record);
}
