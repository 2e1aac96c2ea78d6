import type { Seconds } from '@truesweep/core';

/** How long a column of a running trace is, s. */
export const columnSeconds: Seconds = 0.01;
/** After a pause longer than so many columns the trace goes on without columns between. */
const longestPause = 200;

/** The lowest and highest reading of each column, from the first one on; NaN where there is none. */
export interface Columns {
  readonly first: number;
  readonly low: Float32Array;
  readonly high: Float32Array;
}

/** Takes samples together in columns of equal length, so that a trace is drawn in the same time however fast its recorder is. */
export function liveColumns() {
  let first = 0;
  let low: number[] = [];
  let high: number[] = [];
  return {
    add(time: Float64Array, signal: Float64Array): void {
      for (const [i, at] of time.entries()) {
        const column = Math.floor(at / columnSeconds);
        const isElsewhere = column < first || column - first - low.length > longestPause;
        if (low.length === 0 || isElsewhere) {
          [first, low, high] = [column, [], []];
        }
        while (low.length <= column - first) {
          low.push(Number.NaN);
          high.push(Number.NaN);
        }
        const place = column - first;
        const volts = signal[i] ?? Number.NaN;
        // The first one is above no NaN either.
        if (!((low[place] ?? Number.NaN) <= volts)) low[place] = volts;
        if (!((high[place] ?? Number.NaN) >= volts)) high[place] = volts;
      }
    },
    /** What was added since it was taken last; a column that is not over comes again. */
    take(): Columns | undefined {
      if (low.length === 0) return undefined;
      const taken = { first, low: Float32Array.from(low), high: Float32Array.from(high) };
      first += low.length - 1;
      low = low.slice(-1);
      high = high.slice(-1);
      return taken;
    },
  };
}
