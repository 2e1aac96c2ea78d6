import type { SignalUnit, TimeUnit } from './delimitedOptions.js';

/** What the heading of a column says. */
export interface Heading {
  /** The whole heading as it stands in the file. */
  readonly text: string;
  /** The heading without its unit. */
  readonly name: string;
  readonly timeUnit?: TimeUnit;
  readonly signalUnit?: SignalUnit;
  /** What stands in the unit's place and is none of the units that are read. */
  readonly unknownUnit?: string;
}

type HeadingUnit = Pick<Heading, 'timeUnit' | 'signalUnit'>;

const second: HeadingUnit = { timeUnit: 's' };
const millisecond: HeadingUnit = { timeUnit: 'ms' };
const microsecond: HeadingUnit = { timeUnit: 'µs' };
const volt: HeadingUnit = { signalUnit: 'V' };
const millivolt: HeadingUnit = { signalUnit: 'mV' };
const counts: HeadingUnit = { signalUnit: 'counts' };
const percent: HeadingUnit = { signalUnit: '%' };

/** Units in which upper and lower case differ: MS and MV are mega, and so none of these. */
const symbols: ReadonlyMap<string, HeadingUnit> = new Map([
  ...['s', 'S'].map((text) => [text, second] as const),
  ...['ms', 'msec'].map((text) => [text, millisecond] as const),
  ...['us', 'usec', '\u00b5s', '\u03bcs'].map((text) => [text, microsecond] as const),
  ...['V', 'v'].map((text) => [text, volt] as const),
  ...['mV', 'mv'].map((text) => [text, millivolt] as const),
  ['%', percent],
]);

const words: ReadonlyMap<string, HeadingUnit> = new Map([
  ...['sec', 'secs', 'second', 'seconds'].map((text) => [text, second] as const),
  ...['millisecond', 'milliseconds'].map((text) => [text, millisecond] as const),
  ...['microsecond', 'microseconds'].map((text) => [text, microsecond] as const),
  ...['volt', 'volts'].map((text) => [text, volt] as const),
  ...['millivolt', 'millivolts'].map((text) => [text, millivolt] as const),
  ...['counts', 'lsb'].map((text) => [text, counts] as const),
  ['percent', percent],
]);

/**
 * Reads the heading of a column: `time (s)`, `t [ms]`, `Voltage_mV`, `Time/s`, `mV`. Capitals that
 * turn milli into mega (`TIME_MS`) are an unknown unit, not a guess.
 */
export function readHeading(cell: string): Heading {
  const text = withoutMark(cell);
  const [, before = '', written = ''] = /^(.*?)\s*[([]\s*([^()[\]]+?)\s*[)\]]$/.exec(text) ?? [];
  if (written === '') return readEnding(text);
  return { text, name: before || text, ...(knownUnit(written) ?? { unknownUnit: written }) };
}

/** A unit without brackets, set off by a space, a low line, a slash or a comma. */
function readEnding(text: string): Heading {
  const [, before = '', written = ''] = /^(.*?)[\s_/,]*([^\s_/,]+)$/.exec(text) ?? [];
  const name = before.replace(/\s+in$/, '') || text;
  const unit = knownUnit(written);
  if (unit) return { text, name, ...unit };
  const isMega = name !== text && /^[MU](S|V|SEC)$/.test(written);
  return isMega ? { text, name, unknownUnit: written } : { text, name: text };
}

/** The headings of a row of names with a row of units below it; undefined where that is no row of units. */
export function joinHeadings(
  names: readonly string[],
  units: readonly string[],
): readonly Heading[] | undefined {
  const known = units.map((cell) => knownUnit(cell.replace(/^[([]\s*|\s*[)\]]$/g, '')));
  const written = units.filter((cell) => cell !== '');
  if (written.length === 0 || known.filter(Boolean).length < written.length) return undefined;
  return names.map((cell, index) => {
    const text = withoutMark(cell);
    return { text, name: text, ...known[index] };
  });
}

function knownUnit(text: string): HeadingUnit | undefined {
  return symbols.get(text) ?? words.get(text.toLowerCase());
}

/** Without the sign of a remark that some recorders put before the headings. */
function withoutMark(cell: string): string {
  return cell.replace(/^[#%]\s*/, '');
}
