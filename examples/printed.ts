/** What each example program prints. */
export const printed: Readonly<Record<string, readonly string[]>> = {
  'expectReadings.mjs': [
    'closed: about 417 mV, from 317 mV to 518 mV',
    'open: about 3.67 V, from 3.37 V to 3.93 V',
    'through the limiter: 834 µA',
  ],
  'scoreRecording.mjs': [
    'Do not put the sensor back as it is; the cause says what to mend.',
    'The trouble belongs to a place of the travel: the track is worn, dirty or cracked there, or the wiper lifts.',
    'First dropout at 6 % of travel.',
  ],
  'meetWornSpot.mjs': [
    'a sample every 1 ms: fail, 2 findings',
    'a sample every 5 ms: fail, 2 findings',
    'a sample every 70 ms: inconclusive, 0 findings',
  ],
};
