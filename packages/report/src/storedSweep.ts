import { checkFields, checkSweep, type FieldRules, type Sweep } from '@truesweep/core';
import { fromBase64 } from './base64.js';
import type { StoredRecording } from './report.js';

const any = () => {};
const recordingRules: FieldRules = {
  'name?': any,
  'bytes?': any,
  'sha256?': any,
  'howRead?': any,
  'recorder?': any,
  'score?': any,
  'envelope?': any,
  'stretches?': any,
  'unread?': any,
  'samples?': { time: any, signal: any, 'supply?': any },
};

/**
 * The samples that a report kept of a recording; undefined where they were too many.
 *
 * @throws InputError `broken-samples` where they are damaged, or as `checkSweep` of core does.
 *
 * @example
 * const stored = { samples: { time: 'AAAAAAAAAAAAAAAAAADwPw==', signal: 'AAAAAAAA8D8AAAAAAADwPw==' } };
 * storedSweep(stored)?.time // => Float64Array [0, 1]
 */
export function storedSweep(
  recording: Pick<StoredRecording, 'samples' | 'stretches' | 'unread'>,
): Sweep | undefined {
  checkFields(recording, 'recording', recordingRules);
  const { samples, stretches, unread } = recording;
  if (!samples) return undefined;
  const { time, signal, supply } = samples;
  return checkSweep({
    time: fromBase64(time, 'recording.samples.time'),
    signal: fromBase64(signal, 'recording.samples.signal'),
    ...(supply !== undefined && { supply: fromBase64(supply, 'recording.samples.supply') }),
    ...(stretches && { stretches }),
    ...(unread && { unread }),
  });
}
