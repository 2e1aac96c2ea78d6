import { expect, test } from 'vitest';
import { preambleRate } from './preambleRate.js';

test.each([
  ['Sample rate: 10 kHz', 10_000],
  ['sampling frequency = 44.1kHz', 44_100],
  ['Sampling rate (MS/s);2', 2e6],
  ['sample_rate,250', 250],
  ['Rate 1,5 kHz', 1500],
  ['Sample rate: 1e3 kHz', 1e6],
  ['Sample interval: 0.5 ms', 2000],
  ['Sampling period (µs): 20', 50_000],
  ['sample time 0,25', 4],
])('%s', (line, hertz) => {
  expect(preambleRate(['Bench recorder', line])).toBeCloseTo(hertz, 6);
});

test.each([
  ['a comma that can part thousands', 'Sample rate: 1,000 Hz'],
  ['two of them', 'Sample rate: 1,000,000 Hz'],
  ['nothing', 'Sample rate: 0 Hz'],
  ['a rate of something else', 'Rate: 250'],
  ['no number', 'Sample rate: fast'],
  ['samples, not their rate', 'Samples: 1200'],
])('is not told by %s', (_, line) => {
  expect(preambleRate([line])).toBeUndefined();
});

test('a line that tells none leaves the next its say', () => {
  expect(preambleRate(['Sample rate: 0 Hz', 'Sample interval: 1 ms'])).toBe(1000);
});
