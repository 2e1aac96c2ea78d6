import type { Expectation } from '../expectation/expectation.js';
import type { Recorder } from '../sweep/captureQuality.js';
import type { Sweep } from '../sweep/sweep.js';
import { type Criteria, defaultCriteria } from './criteria.js';
import type { Score } from './score.js';

export function scoreSweep(
  _sweep: Sweep,
  _expected: Expectation,
  _recorder: Recorder = {},
  _criteria: Criteria = defaultCriteria,
): Score {
  throw new Error('coming');
}
