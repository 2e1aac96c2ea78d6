import { type Sweep, sweepColumns } from '@truesweep/core';
import { toBase64 } from './base64.js';
import type { Report, StoredEnvelope, StoredRecording, StoredReport } from './report.js';

/** Samples are kept where all of them together take no more than this, bytes. */
const mostSampleBytes = 300_000;
/** Of eight bytes base 64 makes this many. */
const textBytes = 8 * (4 / 3);
const columns = 640;

/** What a report keeps of its recordings: all scores and envelopes, and the samples where there is room. */
export function storeReport({ job, writtenAt, record, recordings }: Report): StoredReport {
  const numbers = recordings.reduce((sum, { sweep }) => sum + numbersOf(sweep), 0);
  const hasRoom = numbers * textBytes <= mostSampleBytes;
  return {
    kind: 'truesweep-report',
    version: 1,
    writtenAt,
    job,
    ...(record && { record }),
    recordings: recordings.map(
      ({ sweep, workings: _, ...recording }): StoredRecording => ({
        ...recording,
        envelope: storeEnvelope(sweep),
        ...(sweep.stretches && { stretches: sweep.stretches }),
        ...(sweep.unread && { unread: sweep.unread }),
        ...(hasRoom && {
          samples: {
            time: toBase64(sweep.time),
            signal: toBase64(sweep.signal),
            ...(sweep.supply && { supply: toBase64(sweep.supply) }),
          },
        }),
      }),
    ),
  };
}

function numbersOf({ time, supply }: Sweep): number {
  return time.length * (supply ? 3 : 2);
}

function storeEnvelope(sweep: Sweep): StoredEnvelope {
  const { start, end, column, low, high } = sweepColumns(sweep, columns);
  return {
    start,
    end,
    columns,
    column: Array.from(column),
    low: Array.from(low, shortened),
    high: Array.from(high, shortened),
  };
}

/** Six digits are finer than any drawing. */
function shortened(volts: number): number {
  return Number(volts.toPrecision(6));
}
