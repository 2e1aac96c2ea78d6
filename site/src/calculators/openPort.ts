import type { Fraction, Pascals, Volts } from '@truesweep/core';
import { type StationPressure, shownPressure, stationPressure } from '@truesweep/core/atmosphere';
import type { ReadPressure } from '@truesweep/core/measures';
import { type PressureSensor, pressureRatio, type RatioBand } from '@truesweep/core/pressure';
import {
  type Judgement,
  judgePressure,
  type PressureAdvice,
  type PressureCheck,
  type PressureReading,
  type PressureUnsaid,
} from '@truesweep/core/pressureVerdict';
import {
  airHints,
  airLabels,
  type PortEntry,
  portHints,
  portLabels,
  portWords,
} from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Refusals, Values } from '../forms/form.js';
import { measureEntry, pumpEntry } from '../forms/measureEntry.js';
import { measureText } from '../forms/measureText.js';
import { numberEntry } from '../forms/numberEntry.js';
import { airEntries, airGroup, airOf, checkedAir } from './benchAir.js';

type Row = 1 | 2 | 3;
const eachRow: readonly Row[] = [1, 2, 3];

const pascals = (initial: string) => measureEntry('pressure', [-1e5, 1e6], initial);
const optionalPascals = (initial: string) => ({ ...pascals(initial), optional: true }) as const;
const optionalVolts = (initial: string) =>
  ({ unit: 'V', low: 0, high: 60, initial, optional: true }) as const;
const supplyVolts = (initial: string) => ({ unit: 'V', low: 0.5, high: 60, initial }) as const;

const entries = {
  ...airEntries,
  reference: { unit: 'choice', initial: 'absolute', choices: portWords.references },
  pressure1: optionalPascals('15 kPa'),
  volts1: optionalVolts('235 mV'),
  pressure2: optionalPascals('115 kPa'),
  volts2: optionalVolts('4.635 V'),
  pressure3: optionalPascals(''),
  volts3: optionalVolts(''),
  tableSupply: supplyVolts('5 V'),
  answers: { unit: 'choice', initial: 'table', choices: portWords.kinds },
  gain: numberEntry([-1, 1], '0.0088'),
  offset: numberEntry([-10, 10], '−0.085'),
  lowestPressure: pascals('15 kPa'),
  highestPressure: pascals('115 kPa'),
  error: { ...measureEntry('pressure', [0, 1e5], '2 kPa'), optional: true },
  errorFactor: numberEntry([1, 10], '1'),
  supplyLow: optionalVolts('4.75 V'),
  supplyHigh: optionalVolts('5.25 V'),
  supply: supplyVolts('5.02 V'),
  openVolts: optionalVolts('4.03 V'),
  voltsUncertainty: { unit: 'V', low: 0, high: 1, initial: '4 mV' },
  pump1: pumpEntry('10 inHg vacuum'),
  pumpedVolts1: optionalVolts('2.53 V'),
  pump2: pumpEntry('18 inHg vacuum'),
  pumpedVolts2: optionalVolts('1.31 V'),
  pump3: pumpEntry(''),
  pumpedVolts3: optionalVolts(''),
  pumpUncertainty: measureEntry('pressure', [0, 1e5], '0.4 kPa'),
} as const satisfies Readonly<Record<string, Entry>>;

type PortName = keyof typeof entries;
type RowPart = 'pressure' | 'volts' | 'pump' | 'pumpedVolts';

const byRow = (
  words: Readonly<Record<RowPart, (row: Row) => string>>,
): Readonly<Record<`${RowPart}${Row}`, string>> =>
  Object.fromEntries(
    eachRow.flatMap((row) =>
      (Object.keys(words) as RowPart[]).map((part) => [`${part}${row}`, words[part](row)]),
    ),
  ) as Record<`${RowPart}${Row}`, string>;

/** The form: what the manual says of the sensor, the air, and what was read with the port open and pumped. */
export const openPortForm: Form<typeof entries> = {
  groups: [
    { title: portWords.sensor, names: ['reference'] },
    {
      title: portWords.points,
      names: ['pressure1', 'volts1', 'pressure2', 'volts2', 'pressure3', 'volts3'],
      across: 2,
    },
    { title: portWords.readings, names: ['openVolts', 'supply'] },
    {
      title: portWords.steps,
      names: ['pump1', 'pumpedVolts1', 'pump2', 'pumpedVolts2', 'pump3', 'pumpedVolts3'],
      across: 2,
    },
    airGroup,
    {
      title: portWords.limits,
      names: ['error', 'errorFactor', 'tableSupply', 'supplyLow', 'supplyHigh'],
    },
    {
      title: portWords.uncertainties,
      names: ['voltsUncertainty', 'pumpUncertainty'],
      folded: true,
    },
    {
      title: portWords.line,
      names: ['answers', 'gain', 'offset', 'lowestPressure', 'highestPressure'],
      folded: true,
    },
  ],
  entries,
  readings: [
    'reference',
    'pressure1',
    'volts1',
    'pressure2',
    'volts2',
    'openVolts',
    'supply',
    'pump1',
    'pumpedVolts1',
    'pump2',
    'pumpedVolts2',
    'barometer',
    'error',
  ],
  labels: {
    ...airLabels,
    ...portLabels,
    ...byRow({
      pressure: portWords.pressureOf,
      volts: portWords.voltsOf,
      pump: portWords.pumpOf,
      pumpedVolts: portWords.pumpedVoltsOf,
    }),
  },
  hints: {
    ...airHints,
    ...portHints,
    ...byRow({
      pressure: () => portWords.pressureHint,
      volts: () => portWords.voltsHint,
      pump: () => portWords.pumpHint,
      pumpedVolts: () => portWords.pumpedVoltsHint,
    }),
  } satisfies Readonly<Record<PortEntry, string>> & Readonly<Record<PortName, string>>,
  check,
};

export type PortValues = Values<typeof entries>;

interface Point {
  readonly row: Row;
  readonly pressure: Pascals;
  readonly volts: Volts;
}

function enteredPoints(values: PortValues): readonly Point[] {
  return eachRow
    .flatMap((row) => {
      const [pressure, volts] = [values[`pressure${row}`], values[`volts${row}`]];
      return pressure === undefined || volts === undefined ? [] : [{ row, pressure, volts }];
    })
    .sort((one, other) => one.pressure - other.pressure);
}

interface Step {
  readonly row: Row;
  readonly pump: ReadPressure;
  readonly volts: Volts;
}

function enteredSteps(values: PortValues): readonly Step[] {
  return eachRow.flatMap((row) => {
    const [pump, volts] = [values[`pump${row}`], values[`pumpedVolts${row}`]];
    return pump === undefined || volts === undefined ? [] : [{ row, pump, volts }];
  });
}

function checkedSensor(values: PortValues): Refusals<typeof entries> {
  const refusals: Partial<Record<PortName, string>> = {};
  const { answers, lowestPressure, highestPressure, supplyLow, supplyHigh, reference } = values;
  if (supplyLow !== undefined && supplyHigh !== undefined && supplyHigh < supplyLow)
    refusals.supplyHigh = portWords.notAbove;
  if (answers === 'line') {
    if (highestPressure <= lowestPressure) refusals.highestPressure = portWords.notAbove;
    if (reference === 'absolute' && lowestPressure < 0)
      refusals.lowestPressure = portWords.belowEmpty;
    return refusals;
  }
  for (const row of eachRow) {
    const [pressure, volts] = [values[`pressure${row}`], values[`volts${row}`]];
    if (pressure === undefined && volts !== undefined)
      refusals[`pressure${row}`] = portWords.needsPressure;
    if (pressure !== undefined && volts === undefined)
      refusals[`volts${row}`] = portWords.needsVolts;
    if (reference === 'absolute' && pressure !== undefined && pressure < 0)
      refusals[`pressure${row}`] = portWords.belowEmpty;
  }
  const points = enteredPoints(values);
  if (points.length < 2) refusals.pressure2 ??= portWords.needsTwo;
  const sense = Math.sign((points[1]?.volts ?? 0) - (points[0]?.volts ?? 0));
  points.forEach(({ row, pressure, volts }, i) => {
    const before = points[i - 1];
    if (!before) return;
    if (pressure === before.pressure) refusals[`pressure${row}`] = portWords.twice(before.row);
    else if (sense === 0 || Math.sign(volts - before.volts) !== sense)
      refusals[`volts${row}`] ??= portWords.turns;
  });
  return refusals;
}

function check(values: PortValues): Refusals<typeof entries> {
  const first = { ...checkedSensor(values), ...checkedAir(values) };
  if (Object.keys(first).length > 0) return first;
  const refusals: Partial<Record<PortName, string>> = {};
  const { reference, openVolts } = values;
  const [lowest, highest] = rangeOf(values);
  const ends = [lowest, highest].map((end) => measureText(end, 'kPa')) as [string, string];
  const station = stationPressure(airOf(values)).pressure;
  for (const row of eachRow) {
    const [pump, volts] = [values[`pump${row}`], values[`pumpedVolts${row}`]];
    if (pump === undefined && volts !== undefined) refusals[`pump${row}`] = portWords.needsPump;
    if (pump !== undefined && volts === undefined)
      refusals[`pumpedVolts${row}`] = portWords.needsPumpedVolts;
    if (pump === undefined || volts === undefined) continue;
    const gauge = gaugeOf(pump, station);
    const own = reference === 'absolute' ? station + gauge : gauge;
    if (station + gauge <= 0) refusals[`pump${row}`] = portWords.emptySpace;
    else if (own < lowest || own > highest)
      refusals[`pump${row}`] = portWords.beyond(measureText(own, 'kPa'), ...ends);
  }
  const steps = enteredSteps(values);
  const open = reference === 'absolute' ? station : 0;
  if (openVolts === undefined && steps.length === 0) refusals.openVolts = portWords.needsReading;
  else if (openVolts !== undefined && (open < lowest || open > highest))
    refusals.reference = portWords.openBeyond(measureText(open, 'kPa'), ...ends);
  return refusals;
}

const gaugeOf = ({ pascals: read, reference }: ReadPressure, station: Pascals): Pascals =>
  reference === 'absolute' ? read - station : read;

function rangeOf(values: PortValues): readonly [lowest: Pascals, highest: Pascals] {
  if (values.answers === 'line') return [values.lowestPressure, values.highestPressure];
  const points = enteredPoints(values);
  return [points[0]?.pressure ?? 0, points.at(-1)?.pressure ?? 0];
}

/** The sensor as entered. */
export function sensorOf(values: PortValues): PressureSensor {
  const { reference, answers, gain, offset, tableSupply, error, errorFactor } = values;
  const { supplyLow, supplyHigh } = values;
  const [lowest, highest] = rangeOf(values);
  return {
    reference,
    response:
      answers === 'line'
        ? { kind: 'line', gain: gain / 1000, offset, lowest, highest }
        : {
            kind: 'table',
            rows: enteredPoints(values).map(({ pressure, volts }) => ({
              pressure,
              ratio: volts / tableSupply,
            })),
          },
    ...(error !== undefined && { error: error * errorFactor }),
    ...((supplyLow !== undefined || supplyHigh !== undefined) && {
      supply: { low: supplyLow ?? 1e-3, high: supplyHigh ?? 1e3 },
    }),
  };
}

/** The output of a sound sensor at one pressure of its port, V at the supply that was measured. */
export interface AtPort {
  /** By the sensor's own reference, Pa. */
  readonly pressure: Pascals;
  readonly volts: { readonly low: Volts; readonly nominal: Volts; readonly high: Volts };
}

/** What the readings of a pressure sensor say. */
export interface JudgedPort {
  readonly judgement: Judgement<PressureCheck, PressureAdvice, PressureUnsaid>;
  readonly readings: readonly PressureReading[];
  readonly station: StationPressure;
  readonly reference: 'absolute' | 'gauge';
  readonly supply: Volts;
  /** What it must read with its port open; left out where that lies beyond its range. */
  readonly open?: AtPort;
  /** Open port and pumped. */
  readonly expected: readonly AtPort[];
  readonly shown?: Pascals;
  readonly drawn: readonly (RatioBand & { readonly pressure: Pascals })[];
}

/** So many places the band is drawn at. */
const places = 20;

export function openPort(values: PortValues): JudgedPort {
  const { reference, supply, openVolts, voltsUncertainty, pumpUncertainty } = values;
  const sensor = sensorOf(values);
  const station = stationPressure(airOf(values));
  const read = { supply, uncertainty: voltsUncertainty };
  const readings: readonly PressureReading[] = [
    ...(openVolts === undefined
      ? []
      : [{ ...read, gauge: 0, gaugeUncertainty: 0, volts: openVolts }]),
    ...enteredSteps(values).map(({ pump, volts }) => ({
      ...read,
      gauge: gaugeOf(pump, station.pressure),
      readAs: pump.reference,
      gaugeUncertainty: pumpUncertainty,
      volts,
    })),
  ];
  const [lowest, highest] = rangeOf(values);
  const times = (of: Fraction): Volts => of * supply;
  const atPort = (pressure: Pascals): AtPort => {
    const { low, nominal, high } = pressureRatio(sensor, pressure);
    return { pressure, volts: { low: times(low), nominal: times(nominal), high: times(high) } };
  };
  const judgement = judgePressure(
    sensor,
    { station: station.pressure, stationUncertainty: station.uncertainty },
    readings,
  );
  const base = reference === 'absolute' ? station.pressure : 0;
  const isOpenKnown = base >= lowest && base <= highest;
  const expected = [...new Set([...(isOpenKnown ? [0] : []), ...readings.map((one) => one.gauge)])];
  const even = Array.from({ length: places + 1 }, (_, i) =>
    i === places ? highest : lowest + ((highest - lowest) * i) / places,
  );
  const knees = values.answers === 'line' ? [] : enteredPoints(values).map((one) => one.pressure);
  return {
    judgement: {
      ...judgement,
      checks: judgement.checks.map((check) => withEnteredLimits(check, values)),
    },
    readings,
    station,
    reference,
    supply,
    ...(isOpenKnown && { open: atPort(base) }),
    expected: expected.map((gauge) => atPort(base + gauge)),
    ...(reference === 'absolute' && { shown: shownPressure(station.pressure).pascals }),
    drawn: [...new Set([...even, ...knees])]
      .sort((one, other) => one - other)
      .map((pressure) => ({ pressure, ...pressureRatio(sensor, pressure) })),
  };
}

/** A supply's check with those limits only that were entered. */
function withEnteredLimits(
  check: PressureCheck,
  { supplyLow, supplyHigh }: PortValues,
): PressureCheck {
  if (check.check !== 'supply') return check;
  const { lowLimit, highLimit, ...rest } = check;
  return {
    ...rest,
    ...(supplyLow !== undefined && lowLimit !== undefined && { lowLimit }),
    ...(supplyHigh !== undefined && highLimit !== undefined && { highLimit }),
  };
}
