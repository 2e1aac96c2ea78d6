import type { Celsius, Ohms } from '@truesweep/core';
import type { ThermistorLaw, ThermistorTolerances } from '@truesweep/core/thermistor';
import { type LawEntry, lawHints, lawLabels, lawWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { EntryGroup, Refusals, Values } from '../forms/form.js';
import { measureEntry } from '../forms/measureEntry.js';
import { measureText } from '../forms/measureText.js';

export type Row = 1 | 2 | 3 | 4 | 5 | 6;
type RowEntry = `${'temperature' | 'lowest' | 'highest'}${Row}`;
type LawName = LawEntry | RowEntry;

const celsius: readonly [number, number] = [-60, 400];
const optionalCelsius = (initial: string) =>
  ({ ...measureEntry('temperature', celsius, initial), optional: true }) as const;
const ohms = (initial: string) =>
  ({ unit: 'Ω', low: 0.1, high: 1e8, initial, optional: true }) as const;

/** A coolant sensor of the workshop's boats stands in the form first. */
const rows: Readonly<Record<Row, readonly [temperature: string, lowest: string, highest: string]>> =
  {
    1: ['0 °C', '5.5 kΩ', '6.8 kΩ'],
    2: ['20 °C', '2.3 kΩ', '2.8 kΩ'],
    3: ['40 °C', '1.07 kΩ', '1.3 kΩ'],
    4: ['60 °C', '540 Ω', '645 Ω'],
    5: ['80 °C', '290 Ω', '345 Ω'],
    6: ['110 °C', '127 Ω', '151 Ω'],
  };

const eachRow: readonly Row[] = [1, 2, 3, 4, 5, 6];

const byRow = <Of>(
  make: (row: Row, part: 'temperature' | 'lowest' | 'highest') => Of,
): Readonly<Record<RowEntry, Of>> =>
  Object.fromEntries(
    eachRow.flatMap((row) =>
      (['temperature', 'lowest', 'highest'] as const).map((part) => [
        `${part}${row}`,
        make(row, part),
      ]),
    ),
  ) as Record<RowEntry, Of>;

type RowEntries = {
  readonly [Name in RowEntry]: Name extends `temperature${Row}`
    ? ReturnType<typeof optionalCelsius>
    : ReturnType<typeof ohms>;
};

/** The entries of a thermistor's law: up to six rows of a table, or one B. */
export const lawEntries = {
  ...(byRow<Entry>((row, part) =>
    part === 'temperature'
      ? optionalCelsius(rows[row][0])
      : ohms(rows[row][part === 'lowest' ? 1 : 2]),
  ) as RowEntries),
  law: {
    unit: 'choice',
    initial: 'table',
    choices: { table: lawWords.table, b: lawWords.b },
  },
  b: { ...measureEntry('temperature-difference', [1000, 10_000], '3435 K') },
  bOhms: { unit: 'Ω', low: 0.1, high: 1e8, initial: '2.2 kΩ' },
  bFrom: measureEntry('temperature', celsius, '25 °C'),
  bTo: measureEntry('temperature', celsius, '85 °C'),
  ohmsTolerance: { unit: '%', low: 0, high: 0.5, initial: '10 %' },
} as const satisfies Readonly<Record<LawName, Entry>>;

const namesOfRows = (of: readonly Row[]): readonly RowEntry[] =>
  of.flatMap((row): readonly RowEntry[] => [`temperature${row}`, `lowest${row}`, `highest${row}`]);

/** The rows that are read off one's own manual. */
export const lawReadings: readonly RowEntry[] = namesOfRows([1, 2, 3]);

/** The groups of a thermistor's law in a form. */
export const lawGroups: readonly EntryGroup<LawName>[] = [
  { title: lawWords.rows, names: namesOfRows([1, 2, 3]), across: 3 },
  { title: lawWords.moreRows, names: namesOfRows([4, 5, 6]), across: 3, folded: true },
  {
    title: lawWords.one,
    names: ['law', 'b', 'bOhms', 'bFrom', 'bTo', 'ohmsTolerance'],
    folded: true,
  },
];

const words = { temperature: 'temperatureOf', lowest: 'lowestOf', highest: 'highestOf' } as const;
const hints = {
  temperature: 'temperatureHint',
  lowest: 'lowestHint',
  highest: 'highestHint',
} as const;

export const allLawLabels: Readonly<Record<LawName, string>> = {
  ...byRow((row, part) => lawWords[words[part]](row)),
  ...lawLabels,
};

export const allLawHints: Readonly<Record<LawName, string>> = {
  ...byRow((_, part) => lawWords[hints[part]]),
  ...lawHints,
};

export type LawValues = Values<typeof lawEntries>;

interface EnteredRow {
  readonly row: Row;
  readonly temperature: Celsius;
  readonly low: Ohms;
  readonly high: Ohms | undefined;
}

/** The rows that were entered, colder ones first. */
function enteredRows(values: LawValues): readonly EnteredRow[] {
  return eachRow
    .flatMap((row) => {
      const temperature = values[`temperature${row}`];
      const low = values[`lowest${row}`];
      if (temperature === undefined || low === undefined) return [];
      return [{ row, temperature, low, high: values[`highest${row}`] }];
    })
    .sort((one, other) => one.temperature - other.temperature);
}

/** Refuses rows that are no thermistor's, each beside what is wrong in it. */
export function checkedLaw(values: LawValues): Refusals<typeof lawEntries> {
  if (values.law === 'b') {
    return values.bFrom === values.bTo ? { bTo: lawWords.sameTwo } : {};
  }
  const refusals: Partial<Record<LawName, string>> = {};
  for (const row of eachRow) {
    const temperature = values[`temperature${row}`];
    const [low, high] = [values[`lowest${row}`], values[`highest${row}`]];
    if (temperature === undefined && (low !== undefined || high !== undefined))
      refusals[`temperature${row}`] = lawWords.needsTemperature;
    if (temperature !== undefined && low === undefined)
      refusals[`lowest${row}`] = lawWords.needsOhms;
    if (low !== undefined && high !== undefined && high < low)
      refusals[`highest${row}`] = lawWords.belowLowest;
  }
  const entered = enteredRows(values);
  if (entered.length < 2) refusals.temperature2 ??= lawWords.needsTwo;
  const hasHighest = entered.some(({ high }) => high !== undefined);
  entered.forEach(({ row, temperature, low, high }, i) => {
    const before = entered[i - 1];
    if (hasHighest && high === undefined) refusals[`highest${row}`] = lawWords.needsAllHighest;
    if (!before) return;
    if (temperature === before.temperature)
      refusals[`temperature${row}`] = lawWords.twice(before.row);
    else if (!(low < before.low)) refusals[`lowest${row}`] ??= lawWords.rises(row);
    else if (high !== undefined && before.high !== undefined && !(high < before.high))
      refusals[`highest${row}`] ??= lawWords.rises(row);
  });
  return refusals;
}

/** The law that was entered, with what a sound sensor may be off it. */
export function lawOf(values: LawValues): {
  readonly law: ThermistorLaw;
  readonly tolerances?: ThermistorTolerances;
} {
  const { ohmsTolerance } = values;
  const tolerances = ohmsTolerance > 0 ? { tolerances: { ohms: ohmsTolerance } } : {};
  if (values.law === 'b') {
    const { b, bOhms, bFrom, bTo } = values;
    return { law: { kind: 'b', b, ohms: bOhms, from: bFrom, to: bTo }, ...tolerances };
  }
  const entered = enteredRows(values);
  const hasLimits = entered.every(({ high }) => high !== undefined);
  const table = entered.map(({ temperature, low, high }) =>
    high === undefined
      ? { temperature, ohms: low }
      : { temperature, ohms: Math.sqrt(low * high), low, high },
  );
  return { law: { kind: 'table', rows: table }, ...(hasLimits ? {} : tolerances) };
}

/** The temperatures that a law is known for. */
export function lawRange(values: LawValues): readonly [lowest: Celsius, highest: Celsius] {
  if (values.law === 'b') {
    const { bFrom, bTo } = values;
    return [Math.min(bFrom, bTo), Math.max(bFrom, bTo)];
  }
  const entered = enteredRows(values);
  return [entered[0]?.temperature ?? 0, entered.at(-1)?.temperature ?? 0];
}

/** The refusal of a temperature beyond the law; nothing where it is within. */
export function beyondLaw(values: LawValues, temperature: Celsius): string | undefined {
  const [lowest, highest] = lawRange(values);
  if (temperature >= lowest && temperature <= highest) return undefined;
  const [given, low, high] = [temperature, lowest, highest].map((at) => measureText(at, '°C')) as [
    string,
    string,
    string,
  ];
  return lawWords.beyond(given, low, high);
}

/** So many places a band is drawn at. */
const places = 40;

/** Temperatures to draw a band at, the rows among them. */
export function drawnTemperatures(values: LawValues): readonly Celsius[] {
  const [lowest, highest] = lawRange(values);
  const even = Array.from(
    { length: places + 1 },
    (_, i) => lowest + ((highest - lowest) * i) / places,
  );
  return [...new Set([...even, ...rowTemperatures(values)])].sort((one, other) => one - other);
}

/** The temperatures of the rows, or those that a B belongs to. */
export function rowTemperatures(values: LawValues): readonly Celsius[] {
  if (values.law === 'b') return [...lawRange(values)];
  return enteredRows(values).map(({ temperature }) => temperature);
}
