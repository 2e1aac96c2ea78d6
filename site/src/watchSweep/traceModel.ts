import type { AbruptDeparture, Finding, Hint, HintCode, Seconds, Volts } from '@truesweep/core';
import { type Columns, columnSeconds } from './liveColumns.js';

/** So much of a running recording is shown: s. */
export const shownSeconds: Seconds = 8;
/** Columns are kept in turn, some more than are shown. */
const kept = 1024;
/** A hint that comes again within this time goes on, s. */
const sameHint: Seconds = 0.5;

/** A hint over the time for which it held. */
export interface HintStretch {
  readonly hint: HintCode;
  readonly start: Seconds;
  readonly end: Seconds;
}

/** What of a running recording is drawn. */
export interface TraceModel {
  /** Forgets what was shown: a recording begins, with what must be read at the stops. */
  readonly begin: (levels: { readonly closed?: Volts; readonly open?: Volts }) => void;
  readonly add: (columns: Columns, latest: Seconds) => void;
  readonly tell: (
    findings: readonly (Finding | AbruptDeparture)[],
    found: number,
    hints: readonly Hint[],
    latest: Seconds,
  ) => void;
  /** The lowest and the highest reading of a column, undefined where there is none. */
  readonly columnAt: (column: number) => readonly [low: Volts, high: Volts] | undefined;
  readonly now: () => TraceNow;
}

/** What is to be drawn now. */
export interface TraceNow {
  /** Another number where anything changed. */
  readonly version: number;
  readonly latest: Seconds;
  readonly closed?: Volts;
  readonly open?: Volts;
  /** The ends of the axis, V. */
  readonly lowest: Volts;
  readonly highest: Volts;
  /** Those that can be seen, with their numbers, the oldest first. */
  readonly findings: readonly {
    readonly number: number;
    readonly finding: Finding | AbruptDeparture;
  }[];
  readonly hints: readonly HintStretch[];
}

/** Keeps what of a running recording is drawn; however long it runs, no more than is seen. */
export function traceModel(): TraceModel {
  const low = new Float32Array(kept);
  const high = new Float32Array(kept);
  const stands = new Int32Array(kept).fill(-1);
  let now: TraceNow = empty({});

  return {
    begin(levels) {
      stands.fill(-1);
      now = { ...empty(levels), version: now.version + 1 };
    },
    add(columns, latest) {
      let { lowest, highest } = now;
      for (const [i, value] of columns.low.entries()) {
        const column = columns.first + i;
        const place = column % kept;
        const top = columns.high[i] ?? value;
        stands[place] = Number.isNaN(value) ? -1 : column;
        low[place] = value;
        high[place] = top;
        if (value < lowest) lowest = value;
        if (top > highest) highest = top;
      }
      now = { ...now, version: now.version + 1, latest, lowest, highest };
    },
    tell(findings, found, hints, latest) {
      const from = latest - shownSeconds;
      const first = found - findings.length + 1;
      now = {
        ...now,
        version: now.version + 1,
        findings: findings
          .map((finding, i) => ({ number: first + i, finding }))
          .filter(({ finding }) => finding.end > from),
        hints: withHints(now.hints, hints, latest).filter(({ end }) => end > from),
      };
    },
    columnAt(column) {
      const place = column % kept;
      if (column < 0 || stands[place] !== column) return undefined;
      return [low[place] ?? 0, high[place] ?? 0];
    },
    now: () => now,
  };
}

/** How many columns are shown. */
export const shownColumns = shownSeconds / columnSeconds;

function empty({ closed, open }: { readonly closed?: Volts; readonly open?: Volts }): TraceNow {
  const levels = [closed, open].filter((level) => level !== undefined);
  // Half as much again as the span: a spike beyond it widens the axis for good.
  const top = Math.max(0, ...levels) * 1.1;
  return {
    version: 0,
    latest: 0,
    ...(closed !== undefined && { closed }),
    ...(open !== undefined && { open }),
    lowest: Math.min(0, ...levels),
    highest: top > 0 ? top : 1e-3,
    findings: [],
    hints: [],
  };
}

function withHints(
  before: readonly HintStretch[],
  hints: readonly Hint[],
  latest: Seconds,
): readonly HintStretch[] {
  let all = before;
  for (const { hint, at } of hints) {
    const known = all.find((one) => one.hint === hint && one.end > latest - sameHint);
    all = known
      ? all.map((one) => (one === known ? { ...one, end: latest } : one))
      : [...all, { hint, start: Math.min(at, latest), end: latest }];
  }
  return all;
}
