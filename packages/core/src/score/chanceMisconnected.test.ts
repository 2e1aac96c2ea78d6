import { expect, test } from 'vitest';
import type { ClipLevels } from '../capture/clipLevels.js';
import { defaultCriteria } from '../criteria.js';
import { expectation } from '../expectation/expectation.js';
import { hookUpLevels } from '../expectation/hookUpLevels.js';
import { throttleScale } from '../movement/throttleScale.js';
import { chanceMisconnected } from './chanceMisconnected.js';

function sensorFrom(closedPosition: number, openPosition: number) {
  const circuit = {
    source: { volts: 5 },
    limiter: 0,
    sensor: { track: 5000, closedPosition, openPosition },
    load: { pullDown: 200e3 },
  };
  const expected = expectation(circuit, { closedPosition: 0.03, openPosition: 0.03 });
  const scale = throttleScale(expected);
  const hookUp = hookUpLevels(circuit);
  /** Of a throttle that moved once between two readings, and lay at the first of them before and after. */
  const chance = (
    lay: number,
    went: number,
    falls: { snaps?: number; flung?: number } = {},
    clip: ClipLevels = {},
  ) => {
    const snap = { start: 1, touch: 1.1, settled: 1.2, from: 1, rebounds: [] };
    const path = Float64Array.of(lay, (lay + went) / 2, went, lay).map(
      (volts) => (volts - scale.closed) / scale.span,
    );
    const snaps = Array.from({ length: falls.snaps ?? 0 }, () => snap);
    const movement = { path, snaps, flungOpen: falls.flung ?? 0 };
    return chanceMisconnected(movement, expected.windows, hookUp, scale, clip, defaultCriteria);
  };
  const at = (level: number): number => scale.closed + level * scale.span;
  return { chance, at, ...hookUp, ...expected.windows };
}

const { chance, at, connections, exchanged } = sensorFrom(0.12, 0.82);

test('the right readings are those of the right leads', () => {
  expect(chance(at(0), at(1))).toBeLessThan(0.01);
});

test('a rotor that sits turned on its shaft shifts both ends alike, as no connection does', () => {
  expect(chance(at(0.15), at(1.15))).toBeLessThan(0.05);
  expect(chance(at(-0.15), at(0.85))).toBeLessThan(0.01);
});

test('a closed end alone beyond its window is no connection’s', () => {
  expect(chance(at(0.17), at(1))).toBeLessThan(0.05);
});

test('a signal lead on another terminal leaves its levels', () => {
  for (const { closed, open } of connections.filter((ends) => ends.closed !== ends.open))
    expect(chance(closed, open)).toBeGreaterThan(0.95);
});

test('exchanged feed leads mirror the readings: the throttle lies where it seems open', () => {
  const { closed, open } = exchanged!;
  expect(chance(closed, open)).toBeGreaterThan(0.95);
  expect(chance(open, closed)).toBeLessThan(0.5);
});

test('readings that are right and mirrored alike leave it open until the spring is seen', () => {
  const { chance: ofMirrored, closed, open } = sensorFrom(0.15, 0.85);
  const alone = ofMirrored(open.nominal, closed.nominal);
  expect(alone).toBeGreaterThan(0.05);
  expect(alone).toBeLessThan(0.95);
  expect(ofMirrored(open.nominal, closed.nominal, { snaps: 2 })).toBeLessThan(0.05);
  expect(ofMirrored(open.nominal, closed.nominal, { flung: 2 })).toBeGreaterThan(0.9);
  expect(ofMirrored(closed.nominal, open.nominal)).toBeLessThan(0.05);
});

test('where the recorder’s range ends the reading is no measured level', () => {
  const { closed, open } = connections.find((ends) => ends.closed > ends.open)!;
  expect(chance(open, closed, {}, { low: open })).toBeLessThan(chance(open, closed));
});
