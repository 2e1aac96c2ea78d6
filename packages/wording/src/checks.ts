import type { CaptureQuality, CheckCode, CheckOutcome, LimitSource } from '@truesweep/core';

/**
 * What each check measures, short enough for a table.
 *
 * @example
 * checkLabels['closed-end'] // => 'Closed reading'
 */
export const checkLabels: Readonly<Record<CheckCode, string>> = {
  'possible-readings': 'Readings beyond the hook-up',
  'stroke-time': 'Quickest whole stroke',
  duration: 'Time recorded',
  'live-output': 'Range of the output',
  'sample-interval': 'Sample interval',
  smoothing: 'Smoothed over',
  'visible-departure': 'Smallest fault it can show',
  clipping: 'Readings at range limit',
  unread: 'Rows without a reading',
  supply: 'Supply varied by',
  coupling: 'Direct coupling',
  'whole-strokes': 'Whole strokes both ways',
  starts: 'Started at full speed',
  coverage: 'Tenths of travel unseen',
  departures: 'Departures',
  'closed-end': 'Closed reading',
  'open-end': 'Open reading',
  'closed-rest': 'Closed reading scatter',
  criteria: 'Limits too loose to pass',
};

/**
 * How a check came out.
 *
 * @example
 * outcomeLabels['cannot-tell'] // => 'cannot tell'
 */
export const outcomeLabels: Readonly<Record<CheckOutcome, string>> = {
  conforms: 'conforms',
  marginal: 'marginal',
  fails: 'fails',
  'cannot-tell': 'cannot tell',
  'not-judged': 'not judged',
};

/**
 * Where a limit came from.
 *
 * @example
 * limitSourceLabels.criteria // => 'the criteria'
 */
export const limitSourceLabels: Readonly<Record<LimitSource, string>> = {
  criteria: 'the criteria',
  'expected-window': "the hook-up's expected windows",
  recorder: "the recorder's range",
};

/**
 * What sets the smallest departure that can be seen.
 *
 * @example
 * visibleSetByLabels.noise // => 'the noise'
 */
export const visibleSetByLabels: Readonly<Record<CaptureQuality['visibleSetBy'], string>> = {
  noise: 'the noise',
  resolution: "the recorder's resolution",
  span: 'the criteria',
  ripple: 'mains ripple',
};
