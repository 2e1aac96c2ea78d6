import { InputError } from '@truesweep/core';
import type { DelimitedOptions, SignalUnit, TimeUnit } from './delimitedOptions.js';
import { type HeadingRole, headingRole } from './headingRole.js';
import type { Heading } from './readHeading.js';
import type { Table } from './readTable.js';
import type { TakenFrom } from './takenFrom.js';

/** A column that was read, and why it was taken for what it is. */
export interface ChosenColumn {
  /** Which column, counted from 0. */
  readonly index: number;
  /** The heading without its unit; empty where the file has no headings. */
  readonly name: string;
  /** Why it was taken for what it is: an option, its heading, or its place. */
  readonly chosenFrom: Extract<TakenFrom, 'option' | 'heading' | 'place'>;
}

/** A column with a unit, and where the unit came from. */
export interface ReadColumn<Unit extends TimeUnit | SignalUnit> extends ChosenColumn {
  /** The unit of its numbers. */
  readonly unit: Unit;
  /** Where the unit comes from. */
  readonly unitFrom: Extract<TakenFrom, 'option' | 'heading' | 'values' | 'assumed'>;
  /** Volts that one count or percent stands for, any but 0; left out where the unit is one of volts or seconds. */
  readonly voltsPerUnit?: number;
}

/** The columns of a sweep. */
export interface ReadColumns {
  /** Left out where the times come from the sample rate. */
  readonly time?: ReadColumn<TimeUnit>;
  /** The wiper's voltages. */
  readonly signal: ReadColumn<SignalUnit>;
  /** Left out where none was named. */
  readonly supply?: ReadColumn<SignalUnit>;
  /** The second track's voltages; left out where none was named. */
  readonly second?: ReadColumn<SignalUnit>;
  /** The shaft's positions, read as written; left out where none were named. */
  readonly position?: ChosenColumn;
}

type Choice = Pick<ChosenColumn, 'index' | 'chosenFrom'>;

/**
 * Chooses the columns: those that the options name, else those whose headings speak of time and of
 * the signal or a voltage, else the first two columns of numbers.
 *
 * @param rate Where a sample rate is known from: one that an option tells rules out a column of times, one in the preamble stands in for it.
 */
export function chooseColumns(
  table: Table,
  options: DelimitedOptions,
  rate: 'option' | 'preamble' | undefined,
  path: string,
): ReadColumns {
  const roles = Array.from({ length: table.fields }, (_, index): HeadingRole => {
    const heading = table.headings[index];
    return heading ? headingRole(heading) : 'unknown';
  });
  const named = (column: number | string | undefined, option: string): Choice | undefined => {
    const index = namedColumn(column, option, table);
    return index === undefined ? undefined : { index, chosenFrom: 'option' };
  };
  const wanted = named(options.signalColumn, 'signalColumn');
  const time =
    rate === 'option'
      ? undefined
      : (named(options.timeColumn, 'timeColumn') ??
        guessTime(table, roles, wanted?.index, rate !== undefined) ??
        (rate === 'preamble' ? undefined : refuseNone('time', table, path)));
  const signal =
    wanted ?? guessSignal(table, roles, time?.index) ?? refuseNone('signal', table, path);
  const supply = named(options.supplyColumn, 'supplyColumn');
  const second = named(options.secondColumn, 'secondColumn');
  const position = named(options.positionColumn, 'positionColumn');
  refuseSame({ time, signal, supply, second, position });
  const volts = (choice: Choice): ReadColumn<SignalUnit> => {
    const column = {
      ...place(choice, table),
      ...unitOf('signal', 'V', options.signalUnit, choice.index, table, path),
    };
    if (column.unit !== 'counts' && column.unit !== '%') return column;
    return { ...column, voltsPerUnit: scaleOf(column, options, table, path) };
  };
  const columns: ReadColumns = {
    ...(time && {
      time: { ...place(time, table), ...timeUnitOf(time.index, options, table, path) },
    }),
    signal: volts(signal),
    ...(supply && { supply: volts(supply) }),
    ...(second && { second: volts(second) }),
    ...(position && { position: place(position, table) }),
  };
  if (options.voltsPerUnit !== undefined) refuseNeedless(columns);
  return columns;
}

/** Refuses a scale where no column is in counts or percent: who gave it takes the readings for other ones than they are read as. */
function refuseNeedless({ signal, supply, second }: ReadColumns): void {
  if ([signal, supply, second].some((column) => column?.voltsPerUnit !== undefined)) return;
  const { name, unit, unitFrom } = signal;
  const because = {
    option: `are read in ${unit}, as the option signalUnit says`,
    heading: `are read in ${unit}, for its heading says ${unit}`,
    values: `are read in ${unit}`,
    assumed: `are taken for ${unit}, for no heading tells their unit`,
  }[unitFrom];
  const column = name === '' ? `column ${signal.index}` : `the column “${name}”`;
  throw new InputError(
    'needless-scale',
    'options.voltsPerUnit',
    `The readings of ${column} ${because}, and voltsPerUnit is the scale of counts or percent; leave it out, or say by the option signalUnit that they are "counts" or "%".`,
  );
}

function refuseSame(choices: Readonly<Record<string, Choice | undefined>>): void {
  const taken = new Map<number, string>();
  for (const [role, choice] of Object.entries(choices)) {
    if (!choice) continue;
    const other = taken.get(choice.index);
    taken.set(choice.index, role);
    if (other === undefined) continue;
    throw new InputError(
      'same-column',
      `options.${role}Column`,
      `Column ${choice.index} is named for the ${other} and for the ${role}; they must be two columns.`,
    );
  }
}

function place(choice: Choice, { headings }: Table): ChosenColumn {
  return { ...choice, name: headings[choice.index]?.name ?? '' };
}

function guessTime(
  { numeric, clock, headings, rising }: Table,
  roles: readonly HeadingRole[],
  signal: number | undefined,
  isRated: boolean,
): Choice | undefined {
  const isTime = (index: number) => roles[index] === 'time';
  const free = numeric.filter((index) => index !== signal);
  const byHeading = free.find(isTime) ?? clock.find(isTime) ?? existing(roles.indexOf('time'));
  if (byHeading !== undefined) return { index: byHeading, chosenFrom: 'heading' };
  const unknown = free.find((index) => roles[index] === 'unknown');
  const onClock = clock.find((index) => index !== signal);
  const isRising = unknown !== undefined && rising.includes(unknown) && numeric.length > 1;
  // Without headings a first column that rises is time before any clock or rate.
  const isPlain = headings.length === 0 && isRising;
  const instead = onClock ?? (isRated ? undefined : unknown);
  const byPlace = isPlain ? unknown : instead;
  return byPlace === undefined ? undefined : { index: byPlace, chosenFrom: 'place' };
}

function guessSignal(
  { numeric }: Table,
  roles: readonly HeadingRole[],
  time: number | undefined,
): Choice | undefined {
  const free = numeric.filter((index) => index !== time);
  const byHeading =
    free.find((index) => roles[index] === 'signal') ??
    existing(roles.indexOf('signal')) ??
    free.find((index) => roles[index] === 'voltage') ??
    existing(roles.indexOf('voltage'));
  if (byHeading !== undefined) return { index: byHeading, chosenFrom: 'heading' };
  const unknown = free.filter((index) => roles[index] === 'unknown');
  const byPlace = unknown.find((index) => index > (time ?? -1)) ?? unknown[0];
  return byPlace === undefined ? undefined : { index: byPlace, chosenFrom: 'place' };
}

function existing(index: number): number | undefined {
  return index < 0 ? undefined : index;
}

/** The index of the column that an option names. */
function namedColumn(
  column: number | string | undefined,
  option: string,
  { headings, fields }: Table,
): number | undefined {
  if (column === undefined) return undefined;
  const matches = typeof column === 'number' ? numbered(column, fields) : titled(column, headings);
  const [match] = matches;
  if (match !== undefined && matches.length === 1) return match;
  const names = headings.map(({ text }) => `“${text}”`).join(', ');
  const choice = names ? `the headings are ${names}` : 'the file has no headings';
  throw new InputError(
    matches.length === 0 ? 'no-such-column' : 'ambiguous-column',
    `options.${option}`,
    `${matches.length === 0 ? 'No column is' : 'More than one column is'} ${JSON.stringify(column)}; the indexes run from 0 to ${fields - 1} and ${choice}.`,
  );
}

function numbered(column: number, fields: number): number[] {
  return Number.isInteger(column) && column >= 0 && column < fields ? [column] : [];
}

function titled(column: string, headings: readonly Heading[]): number[] {
  const wanted = column.trim().toLowerCase();
  return headings.flatMap(({ text, name }, index) =>
    text.toLowerCase() === wanted || name.toLowerCase() === wanted ? [index] : [],
  );
}

function refuseNone(
  role: 'time' | 'signal',
  { headings, headingLine }: Table,
  path: string,
): never {
  const names = headings.map(({ text }) => `“${text}”`).join(', ');
  const rate = role === 'time' ? ', or tell the sample rate by the option sampleRate' : '';
  throw new InputError(
    `no-${role}-column`,
    path,
    `None of the columns ${names || 'of numbers'} is known to be the ${role}; name it by the option ${role}Column${rate}.`,
    { line: headingLine + 1, column: 1 },
  );
}

/** The unit of the times; fields that are times on a clock need none. */
function timeUnitOf(
  index: number,
  options: DelimitedOptions,
  table: Table,
  path: string,
): Pick<ReadColumn<TimeUnit>, 'unit' | 'unitFrom'> {
  if (options.timeUnit === undefined && table.clock.includes(index)) {
    return { unit: 'clock', unitFrom: 'values' };
  }
  return unitOf<TimeUnit>('time', 's', options.timeUnit, index, table, path);
}

/** The unit of a column: the option, else the heading, else the SI unit; refuses a unit not read here. */
function unitOf<Unit extends TimeUnit | SignalUnit>(
  role: 'time' | 'signal',
  assumed: Unit,
  option: Unit | undefined,
  index: number,
  table: Table,
  path: string,
): Pick<ReadColumn<Unit>, 'unit' | 'unitFrom'> {
  if (option !== undefined) return { unit: option, unitFrom: 'option' };
  const heading = table.headings[index];
  const unit = role === 'time' ? heading?.timeUnit : heading?.signalUnit;
  if (unit !== undefined) return { unit: unit as Unit, unitFrom: 'heading' };
  const wrong = heading?.unknownUnit ?? heading?.timeUnit ?? heading?.signalUnit;
  if (heading === undefined || wrong === undefined) return { unit: assumed, unitFrom: 'assumed' };
  throw new InputError(
    'unknown-unit',
    path,
    `The heading “${heading.text}” gives ${wrong} as the unit of the ${role}; ${
      role === 'time' ? 's, ms, µs and times on a clock' : 'V, mV, counts and %'
    } are read, or name the unit by the option ${role}Unit.`,
    headingPlace(index, table),
  );
}

/** Volts per count or percent, which no recording tells by itself. */
function scaleOf(
  { index, unit }: ReadColumn<SignalUnit>,
  { voltsPerUnit }: DelimitedOptions,
  table: Table,
  path: string,
): number {
  if (voltsPerUnit !== undefined) return voltsPerUnit;
  throw new InputError(
    'no-scale',
    path,
    unit === '%'
      ? 'The readings are in percent; say by the option voltsPerUnit how many volts one percent is: a hundredth of the voltage that stands for 100 %.'
      : "The readings are in counts; say by the option voltsPerUnit how many volts one count is: the converter's reference divided by its number of counts.",
    headingPlace(index, table),
  );
}

/** Where a heading begins. */
function headingPlace(index: number, { headings, headingText, headingLine }: Table) {
  let at = 0;
  for (const { text } of headings.slice(0, index)) {
    at = Math.max(headingText.indexOf(text, at), at) + text.length;
  }
  const column = Math.max(headingText.indexOf(headings[index]?.text ?? '', at), at) + 1;
  return { line: headingLine + 1, column };
}
