import type { CaptureQuality } from '../capture/captureQuality.js';
import { fewestIntervals, shortestRecording } from '../motion/limits.js';
import type { Check } from './score.js';

/**
 * Whether the recording lasts as long as a stroke by hand, and as so many of its intervals: in less, an output that nobody moved looks
 * like a dead one.
 */
export function judgeDuration({
  duration,
  samples,
}: Pick<CaptureQuality, 'duration' | 'samples'>): Check {
  const lowLimit = Math.max(shortestRecording, (fewestIntervals * duration) / (samples - 1));
  return {
    check: 'duration',
    outcome: duration >= lowLimit ? 'conforms' : 'cannot-tell',
    unit: 's',
    measured: duration,
    lowLimit,
    margin: duration - lowLimit,
    limitFrom: 'criteria',
  };
}
