import { type Sweep, sweepColumns } from '@truesweep/core';
import type { SmallTrace } from './judgedRecording.js';

/** Enough for a picture in a row of a table. */
const columns = 60;

/** A sweep in few columns. */
export function smallTrace(sweep: Sweep): SmallTrace {
  const { start, end, column, low, high } = sweepColumns(sweep, columns);
  return {
    start,
    end,
    columns,
    column: Array.from(column),
    low: Array.from(low, short),
    high: Array.from(high, short),
  };
}

function short(volts: number): number {
  return Number(volts.toPrecision(4));
}
