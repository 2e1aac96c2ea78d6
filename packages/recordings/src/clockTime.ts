/** A moment as it is written: the day where there is one, and the time since midnight. */
export interface ClockTime {
  /** Days since 1 January 1970; left out for a time of day. */
  readonly day?: number;
  /** Nanoseconds since midnight, of Greenwich where a zone is written. */
  readonly nanoseconds: number;
}

const written =
  /^(?:(\d{4})-(\d\d)-(\d\d)[T ] *)?(\d{1,2}):(\d\d):(\d\d)(?:[.,](\d{1,9}))?\s*(?:Z|([+-])(\d\d):?(\d\d))?$/i;
const secondsInDay = 86_400;

/**
 * Reads a date with a time (ISO 8601-1, extended form, with or without a zone) or a time of day, to the nanosecond. A leap
 * second, 23:59:60, counts as the midnight that follows.
 *
 * @returns Undefined for any other text, hours and minutes alone included: they are no sample's time.
 */
export function clockTime(text: string): ClockTime | undefined {
  const match = written.exec(text);
  if (!match) return undefined;
  const [year, month, date, hour, minute, second] = match.slice(1, 7).map(Number);
  const [fraction = '', sign, zoneHours = '0', zoneMinutes = '0'] = match.slice(7);
  if (hour! > 23 || minute! > 59 || second! > 60) return undefined;
  const zone = (Number(zoneHours) * 60 + Number(zoneMinutes)) * (sign === '-' ? -60 : 60);
  const seconds = (hour! * 60 + minute!) * 60 + second! - zone;
  const nanoseconds = seconds * 1e9 + Number(fraction.padEnd(9, '0'));
  if (match[1] === undefined) return { nanoseconds };
  const milliseconds = Date.UTC(year!, month! - 1, date!);
  const isDate = new Date(milliseconds).getUTCDate() === date && month! >= 1 && month! <= 12;
  return isDate ? { day: milliseconds / (1000 * secondsInDay), nanoseconds } : undefined;
}

/** Where a clock has come since its first time, which carries on past midnight. */
export interface RunningClock {
  readonly first: ClockTime;
  /** Midnights passed since the first time of day. */
  readonly midnights: number;
  readonly nanoseconds: number;
}

/**
 * The next time on a clock. A time of day that falls back by more than half a day has passed midnight.
 *
 * @returns Undefined where one of the two times has a date and the other has none.
 */
export function nextTime(
  { day, nanoseconds }: ClockTime,
  before: RunningClock | undefined,
): RunningClock | undefined {
  if (!before)
    return { first: { ...(day !== undefined && { day }), nanoseconds }, midnights: 0, nanoseconds };
  if ((day === undefined) !== (before.first.day === undefined)) return undefined;
  const fellBack = before.nanoseconds - nanoseconds > (secondsInDay / 2) * 1e9;
  const midnights =
    day === undefined ? before.midnights + (fellBack ? 1 : 0) : day - before.first.day!;
  return { first: before.first, midnights, nanoseconds };
}

/** Seconds since the clock's first time: whole nanoseconds, divided once, so that a decimal comes out as the double nearest to it. */
export function secondsOf({ first, midnights, nanoseconds }: RunningClock): number {
  return (midnights * secondsInDay * 1e9 + nanoseconds - first.nanoseconds) / 1e9;
}
