import type { Ohms } from '../units.js';
import type {
  OhmmeterTolerance,
  PairChange,
  PinReading,
  Stop,
  TerminalPair,
  WantedReading,
} from './pinFinding.js';

/** Between which values a true resistance lies. */
export interface OhmsRange {
  readonly low: Ohms;
  readonly high: Ohms;
}

/** The readings, to be asked by pair and stop. */
export interface PinTable {
  ohms(a: string, b: string, at: Stop): Ohms | undefined;
  /** What the true resistance can be; undefined where it was not read. */
  range(a: string, b: string, at: Stop): OhmsRange | undefined;
}

export const stops: readonly Stop[] = ['closed', 'open'];

export function pinTable(readings: readonly PinReading[], meter: OhmmeterTolerance): PinTable {
  const known = new Map<string, Ohms>();
  let largest = 0;
  for (const { between, at, ohms } of readings) {
    known.set(pairKey(...between, at), ohms);
    if (ohms !== Number.POSITIVE_INFINITY) largest = Math.max(largest, ohms);
  }
  // Sums of exact readings differ by rounding.
  const noise = 1e-9 * largest;
  const ohms: PinTable['ohms'] = (a, b, at) => known.get(pairKey(a, b, at));
  return {
    ohms,
    range(a, b, at) {
      const read = ohms(a, b, at);
      if (read === undefined) return undefined;
      if (read === Number.POSITIVE_INFINITY) return { low: read, high: read };
      const error = meter.fraction * read + meter.ohms + noise;
      return { low: Math.max(0, read - error), high: read + error };
    },
  };
}

/** The same text for a pair whichever way round. */
export function pairKey(a: string, b: string, at = ''): string {
  return JSON.stringify(a < b ? [a, b, at] : [b, a, at]);
}

export function pairsOf(terminals: readonly string[]): readonly TerminalPair[] {
  return terminals.flatMap((a, i) => terminals.slice(i + 1).map((b): TerminalPair => [a, b]));
}

export function missingReadings(
  table: PinTable,
  terminals: readonly string[],
): readonly WantedReading[] {
  return pairsOf(terminals).flatMap((between) =>
    stops.filter((at) => table.ohms(...between, at) === undefined).map((at) => ({ between, at })),
  );
}

/** How a pair followed the throttle; `none` where the meter's error covers the difference. */
export function changeOf(table: PinTable, [a, b]: TerminalPair): PairChange['change'] {
  const closed = table.range(a, b, 'closed');
  const open = table.range(a, b, 'open');
  if (!closed || !open) return 'unknown';
  if (closed.high < open.low) return 'rises';
  return open.high < closed.low ? 'falls' : 'none';
}
