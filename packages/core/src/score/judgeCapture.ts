import type { PreparedSweep, Recorder } from '../capture/captureQuality.js';
import { samplesOver } from '../capture/sampling.js';
import type { Criteria } from '../criteria.js';
import type { Expectation } from '../expectation/expectation.js';
import type { Check } from './score.js';

/** Whether the recording could have shown a dropout: fast enough, quiet enough, without clipping. */
export function judgeCapture(
  prepared: Pick<PreparedSweep, 'quality' | 'clipped'>,
  expected: Expectation,
  recorder: Recorder,
  criteria: Criteria,
): readonly Check[] {
  const { sampledEvery, smoothedOver, sampling, visible } = prepared.quality;
  const span = Math.abs(expected.windows.open.nominal - expected.windows.closed.nominal);
  const slowest = criteria.dropout / Math.max(1, samplesOver(criteria.samplesInDropout, sampling));
  return [
    atMost('sample-interval', 's', sampledEvery, slowest * (1 + 1e-9)),
    atMost('smoothing', 's', smoothedOver, slowest),
    atMost('visible-departure', '1', visible / span, criteria.coarsestVisible),
    clipping(prepared, expected, recorder),
  ];
}

function atMost(
  check: Check['check'],
  unit: Check['unit'],
  measured: number,
  highLimit: number,
): Check {
  const outcome = measured <= highLimit ? 'conforms' : 'cannot-tell';
  return {
    check,
    outcome,
    unit,
    measured,
    highLimit,
    margin: highLimit - measured,
    limitFrom: 'criteria',
  };
}

/** The path may lie at an end of the recorder's range only where no expected reading lies beyond it. */
function clipping(
  { clipped, quality }: Pick<PreparedSweep, 'quality' | 'clipped'>,
  { windows }: Expectation,
  { range }: Recorder,
): Check {
  const base = { check: 'clipping', unit: 'count', highLimit: 0, limitFrom: 'recorder' } as const;
  const { low = -Infinity, high = Infinity } = quality.clip;
  if (!range && low === -Infinity && high === Infinity) return { ...base, outcome: 'not-judged' };
  const lowest = Math.min(windows.closed.low, windows.open.low);
  const highest = Math.max(windows.closed.high, windows.open.high);
  const measured = (lowest < low ? clipped.low : 0) + (highest > high ? clipped.high : 0);
  return {
    ...base,
    outcome: measured > 0 ? 'cannot-tell' : 'conforms',
    measured,
    margin: 0 - measured,
  };
}
