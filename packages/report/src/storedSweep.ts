import type { Sweep } from '@truesweep/core';
import { fromBase64 } from './base64.js';
import type { StoredRecording } from './report.js';

/**
 * The samples that a report kept of a recording; undefined where they were too many.
 *
 * @example
 * const stored = { samples: { time: 'AAAAAAAAAAAAAAAAAADwPw==', signal: 'AAAAAAAA8D8AAAAAAADwPw==' } };
 * storedSweep(stored)?.time // => Float64Array [0, 1]
 */
export function storedSweep({
  samples,
  stretches,
  unread,
}: Pick<StoredRecording, 'samples' | 'stretches' | 'unread'>): Sweep | undefined {
  if (!samples) return undefined;
  const { time, signal, supply } = samples;
  return {
    time: fromBase64(time),
    signal: fromBase64(signal),
    ...(supply !== undefined && { supply: fromBase64(supply) }),
    ...(stretches && { stretches }),
    ...(unread && { unread }),
  };
}
