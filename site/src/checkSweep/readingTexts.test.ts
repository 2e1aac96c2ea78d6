import { expect, test } from 'vitest';
import type { ReadBy } from './protocol.js';
import { readByOf, textsOf } from './readingTexts.js';

const texts = textsOf({});

test('nothing that was told is nothing that is asked', () => {
  expect(readByOf(texts, false)).toEqual({});
  expect(readByOf(texts, true)).toEqual({});
});

test.each<[string, ReadBy]>([
  [
    'columns and units',
    { text: { timeColumn: 0, signalColumn: 2, timeUnit: 'ms', signalUnit: 'mV' } },
  ],
  ['a rate instead of times', { text: { sampleRate: 1000 } }],
  ['percent', { text: { signalUnit: '%', voltsPerUnit: 0.05 } }],
  ['counts', { text: { signalUnit: 'counts', voltsPerUnit: 0.001 } }],
  ['a sound', { sound: { fullScale: 1.5, attenuation: 4, microphoneBias: 'off' } }],
])('what was told comes back: %s', (_, read) => {
  expect(readByOf(textsOf(read), read.sound !== undefined)).toEqual(read);
});

test('counts of n bits have their scale from the full scale; without it the scale is left out', () => {
  const counts = { ...texts, signalUnit: 'counts', bits: '10' };
  expect(readByOf({ ...counts, fullScale: '5,12' }, false)).toEqual({
    text: { signalUnit: 'counts', voltsPerUnit: 0.005 },
  });
  expect(readByOf(counts, false)).toEqual({ text: { signalUnit: 'counts' } });
});

test('a sound is read only where it was said that no microphone bias was on', () => {
  const sound = { ...texts, soundFullScale: '1.2' };
  expect(readByOf(sound, true)).toEqual({});
  expect(readByOf({ ...sound, microphone: 'off' }, true)).toEqual({
    sound: { fullScale: 1.2, attenuation: 1, microphoneBias: 'off' },
  });
});
