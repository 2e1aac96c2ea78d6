import type { Seconds } from '@truesweep/core';

/** A date, or a date and a time with or without its zone (ISO 8601, the extended form). */
const iso =
  /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s?(Z|[+-]\d{2}:?\d{2})?)?$/;

/** A date in a name, with nothing of a longer number beside it. */
const inName = /(?<!\d)(\d{4}-[01]\d-[0-3]\d)(?!\d)/;

/**
 * When a date is, s since 1970 began in UTC; a time without a zone counts as one of UTC, a date as its first moment.
 *
 * @returns Nothing where the text is no ISO 8601 date between the years 1970 and 9999, or no day of the calendar.
 */
export function dateSeconds(text: string): Seconds | undefined {
  const found = iso.exec(text.trim());
  if (!found) return undefined;
  const [, year, month, day, hour = '00', minute = '00', second = '00', zone = 'Z'] = found;
  const date = `${year}-${month}-${day}`;
  // The engine takes 31 February for 3 March.
  const isDay = new Date(`${date}T00:00:00Z`);
  if (Number.isNaN(isDay.getTime()) || isDay.toISOString().slice(0, 10) !== date) return undefined;
  const offset = zone === 'Z' ? 'Z' : `${zone.slice(0, 3)}:${zone.slice(-2)}`;
  const at = Date.parse(`${date}T${hour}:${minute}:${second}${offset}`) / 1000;
  return at >= 0 ? at : undefined;
}

/** The last ISO 8601 date in the name of a file, or in those of its folders. */
export function dateInName(file: string): string | undefined {
  for (const part of file.split(/[\\/]/).toReversed()) {
    const date = inName.exec(part)?.[1];
    if (date !== undefined && dateSeconds(date) !== undefined) return date;
  }
  return undefined;
}
