import { InputError } from '@truesweep/core';
import type { DelimitedOptions, SignalUnit, TimeUnit } from './delimitedOptions.js';
import { type HeadingRole, headingRole } from './headingRole.js';
import type { Heading } from './readHeading.js';
import type { Table } from './readTable.js';

/** A column that was read, and where its unit came from. */
export interface ReadColumn<Unit extends TimeUnit | SignalUnit> {
  /** Counted from 0. */
  readonly index: number;
  /** The heading without its unit; empty where the file has no headings. */
  readonly name: string;
  readonly unit: Unit;
  /** `assumed`: neither an option nor the heading said it. */
  readonly unitFrom: 'option' | 'heading' | 'assumed';
}

/** The columns of a sweep. */
export interface ReadColumns {
  readonly time: ReadColumn<TimeUnit>;
  readonly signal: ReadColumn<SignalUnit>;
  /** Left out where none was named. */
  readonly supply?: ReadColumn<SignalUnit>;
}

/**
 * Chooses the columns: those that the options name, else those whose headings speak of time and of
 * the signal or a voltage, else the first two columns of numbers.
 */
export function chooseColumns(table: Table, options: DelimitedOptions, path: string): ReadColumns {
  const roles = Array.from({ length: table.fields }, (_, index): HeadingRole => {
    const heading = table.headings[index];
    return heading ? headingRole(heading) : 'unknown';
  });
  const wanted = named(options.signalColumn, 'signalColumn', table);
  const time =
    named(options.timeColumn, 'timeColumn', table) ??
    guessTime(table, roles, wanted) ??
    refuseNone('time', table, path);
  const signal = wanted ?? guessSignal(table, roles, time) ?? refuseNone('signal', table, path);
  if (time === signal) refuseSame(time, 'the time and for the signal', 'signalColumn');
  const supply = named(options.supplyColumn, 'supplyColumn', table);
  if (supply === time) refuseSame(time, 'the time and for the supply', 'supplyColumn');
  if (supply === signal) refuseSame(signal, 'the signal and for the supply', 'supplyColumn');
  const volts = (index: number): ReadColumn<SignalUnit> => ({
    ...place(index, table),
    ...unitOf('signal', 'V', options.signalUnit, index, table, path),
  });
  return {
    time: { ...place(time, table), ...unitOf('time', 's', options.timeUnit, time, table, path) },
    signal: volts(signal),
    ...(supply !== undefined && { supply: volts(supply) }),
  };
}

function refuseSame(column: number, roles: string, option: string): never {
  throw new InputError(
    'same-column',
    `options.${option}`,
    `Column ${column} is named for ${roles}; they must be two columns.`,
  );
}

function place(index: number, { headings }: Table): { index: number; name: string } {
  return { index, name: headings[index]?.name ?? '' };
}

function guessTime(table: Table, roles: readonly HeadingRole[], signal: number | undefined) {
  const free = table.numeric.filter((index) => index !== signal);
  return (
    free.find((index) => roles[index] === 'time') ??
    existing(roles.indexOf('time')) ??
    free.find((index) => roles[index] === 'unknown')
  );
}

function guessSignal({ numeric }: Table, roles: readonly HeadingRole[], time: number) {
  const free = numeric.filter((index) => index !== time);
  const unknown = free.filter((index) => roles[index] === 'unknown');
  return (
    free.find((index) => roles[index] === 'signal') ??
    existing(roles.indexOf('signal')) ??
    free.find((index) => roles[index] === 'voltage') ??
    existing(roles.indexOf('voltage')) ??
    unknown.find((index) => index > time) ??
    unknown[0]
  );
}

function existing(index: number): number | undefined {
  return index < 0 ? undefined : index;
}

/** The index of the column that an option names. */
function named(
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
  throw new InputError(
    `no-${role}-column`,
    path,
    `None of the columns ${names || 'of numbers'} is known to be the ${role}; name it by the option ${role}Column.`,
    { line: headingLine + 1, column: 1 },
  );
}

/** The unit of a column: the option, else the heading, else the SI unit; refuses a unit not read here. */
function unitOf<Role extends 'time' | 'signal', Unit extends TimeUnit | SignalUnit>(
  role: Role,
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
      role === 'time' ? 's, ms and µs' : 'V and mV'
    } are read, or name the unit by the option ${role}Unit.`,
    { line: table.headingLine + 1, column: headingColumn(index, table) },
  );
}

/** Where a heading begins in its line. */
function headingColumn(index: number, { headings, headingText }: Table): number {
  let at = 0;
  for (const { text } of headings.slice(0, index)) {
    at = Math.max(headingText.indexOf(text, at), at) + text.length;
  }
  return Math.max(headingText.indexOf(headings[index]?.text ?? '', at), at) + 1;
}
