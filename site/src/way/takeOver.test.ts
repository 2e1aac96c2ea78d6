import { expect, test } from 'vitest';
import { carryMeasured, trackFound } from './takeOver.js';

/** Readings of a sound sensor with this track, Ω, its wiper at a tenth and at nine tenths, 800 Ω in series with it. */
const readings = (track: number) => {
  const at = (part: number) => `${track * part + 800}`;
  return {
    ABclosed: `${track}`,
    ABopen: `${track}`,
    ACclosed: at(0.1),
    ACopen: at(0.9),
    BCclosed: at(0.9),
    BCopen: at(0.1),
  };
};
const found = (track: string) => ({
  track: expect.stringMatching(track),
  closedPosition: expect.stringMatching(/^10.%$/),
  openPosition: expect.stringMatching(/^90.%$/),
});

test('nothing is found before anything was measured', () => {
  expect(trackFound({})).toBeUndefined();
  expect(trackFound({ track: '4k7' })).toBeUndefined();
  expect(trackFound(readings(10_000))).toEqual(found('^10.kΩ$'));
});

test('what is measured goes on, and again when it changes', () => {
  const first = carryMeasured({ track: '4k7' }, { track: '4k7', ...readings(10_000) });
  expect(first).toEqual({ ...readings(10_000), ...found('^10.kΩ$') });
  const next = carryMeasured(first, { ...first, ...readings(11_000) });
  expect(next).toEqual({ ...readings(11_000), ...found('^11.kΩ$') });
});

test('what was written in its place stays until something else is measured', () => {
  const first = carryMeasured({}, readings(10_000));
  const written = carryMeasured(first, { ...first, track: '9k', limiter: '1k2' });
  expect(written).toMatchObject({ track: '9k', limiter: '1k2' });
  expect(carryMeasured(written, { ...written, ...readings(11_000) })).toMatchObject({
    ...found('^11.kΩ$'),
    limiter: '1k2',
  });
});

test('what is no longer measured is no longer carried on, but for what was written', () => {
  const first = carryMeasured({}, readings(10_000));
  const { closedPosition, openPosition } = first;
  expect(carryMeasured(first, { track: '9k', closedPosition, openPosition } as never)).toEqual({
    track: '9k',
  });
});
