import type { Cause } from '@truesweep/core';

/**
 * The causes as short words.
 *
 * @example
 * causeLabels['closed-rest'] // => 'closed rest'
 */
export const causeLabels: Readonly<Record<Cause, string>> = {
  none: 'nothing found',
  track: 'track',
  connection: 'connection',
  interference: 'interference',
  ends: 'end readings',
  'closed-rest': 'closed rest',
  wiring: 'wiring',
  recording: 'recording',
};

/**
 * What the evidence points to, in a sentence.
 *
 * @example
 * causeMeanings.track.startsWith('The trouble belongs to a place of the travel') // => true
 */
export const causeMeanings: Readonly<Record<Cause, string>> = {
  none: 'The signal moves smoothly both ways and the readings at the stops are right.',
  track:
    'The trouble belongs to a place of the travel: the track is worn, dirty or cracked there, or the wiper lifts.',
  connection:
    'The signal breaks off at changing places or while nothing moves: a lead, the plug or a terminal.',
  interference:
    'A foreign voltage comes and goes, whatever the throttle does: pick-up, a loose screen or the recorder.',
  ends: 'The reading at a stop lies outside its window: the adjustment, another type of sensor, or a job that states it wrongly.',
  'closed-rest':
    'The closed reading does not come back to one value: play in the shaft, a loose fixing or a throttle that sticks.',
  wiring:
    'The output does not follow the throttle as it must: terminals mixed up, a lead broken, or a wrong supply.',
  recording: 'The recording is too poor to judge the sensor by; the sensor may be good or bad.',
};
