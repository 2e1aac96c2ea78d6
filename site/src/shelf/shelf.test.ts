import { expectation, scoreSweep } from '@truesweep/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  joinSensors,
  readSensor,
  readShelf,
  type ShelfResult,
  type ShelfSensor,
  withResult,
  writeShelf,
} from './shelf.js';

const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
const score = scoreSweep(
  { time: Float64Array.of(0, 1), signal: Float64Array.of(0, 0) },
  expectation(circuit, {}),
);
const moment = fc
  .integer({ min: 0, max: 2e9 })
  .map((seconds) => new Date(seconds * 1000).toISOString());
const result: fc.Arbitrary<ShelfResult> = fc.record({
  at: moment,
  recording: fc.string(),
  sha256: fc.stringMatching(/^[0-9a-f]{64}$/),
  verdict: fc.constantFrom('pass', 'marginal', 'fail', 'inconclusive'),
  said: fc.string(),
  restsOn: fc.array(fc.tuple(fc.string(), fc.string()), { maxLength: 3 }),
  score: fc.constant(score),
});
const sensor: fc.Arbitrary<ShelfSensor> = fc.record({
  id: fc.uuid(),
  name: fc.string({ unit: 'grapheme' }),
  serial: fc.string(),
  machine: fc.string(),
  note: fc.string({ unit: 'grapheme' }),
  changedAt: moment,
  texts: fc.dictionary(fc.constantFrom('track', 'source', 'limiter'), fc.string()),
  results: fc.array(result, { maxLength: 3 }),
});

/** As JSON carries it. */
const carried = (value: unknown) => JSON.parse(JSON.stringify(value));

test('a shelf comes back from its file as it was', () => {
  fc.assert(
    fc.property(fc.array(sensor, { maxLength: 4 }), (sensors) => {
      expect(readShelf(writeShelf(sensors))).toEqual({ sensors: carried(sensors), damaged: 0 });
    }),
  );
});

test('a damaged entry is counted, and the others are read', () => {
  fc.assert(
    fc.property(sensor, sensor, (one, other) => {
      const damaged = [
        { ...one, id: '' },
        { ...one, name: 5 },
        { ...one, texts: { track: 5 } },
        { ...one, results: [{ verdict: 'splendid' }] },
        { ...one, results: undefined },
        null,
      ];
      const text = JSON.stringify({
        kind: 'truesweep-shelf',
        version: 1,
        sensors: [...damaged, other],
      });
      expect(readShelf(text)).toEqual({ sensors: [carried(other)], damaged: damaged.length });
    }),
    { numRuns: 20 },
  );
});

test.each([
  ['no JSON', '{', 'not-a-shelf'],
  ['another file', '{"kind":"truesweep-way","version":1}', 'not-a-shelf'],
  ['of a newer version', '{"kind":"truesweep-shelf","version":2,"sensors":[]}', 'newer'],
] as const)('refuses what is no shelf: %s', (_, text, refusal) => {
  expect(readShelf(text)).toEqual({ refusal });
});

describe('one sensor from two places', () => {
  test('keeps every result of both and the fields changed last, whichever comes first', () => {
    fc.assert(
      fc.property(sensor, sensor, (one, two) => {
        const other = { ...two, id: one.id };
        const joined = joinSensors(one, other);
        const all = new Set([...one.results, ...other.results].map((r) => r.at + r.sha256));
        expect(new Set(joined.results.map((r) => r.at + r.sha256))).toEqual(all);
        const newer = one.changedAt < other.changedAt ? other : one;
        expect(joined.note).toBe(newer.note);
        expect(joinSensors(joined, joined)).toEqual(joined);
        if (one.changedAt !== other.changedAt) expect(joinSensors(other, one)).toEqual(joined);
      }),
    );
  });
});

test('the same recording by the same values is one result, by others another', () => {
  fc.assert(
    fc.property(sensor, result, (given, one) => {
      const before = withResult({ ...given, results: [] }, one);
      expect(withResult(before, { ...one, at: '2026-01-01' }).results).toHaveLength(1);
      expect(withResult(before, { ...one, restsOn: [['Track', '1']] }).results.length).toBe(
        JSON.stringify(one.restsOn) === '[["Track","1"]]' ? 1 : 2,
      );
      expect(readSensor(before)).toEqual(before);
    }),
    { numRuns: 30 },
  );
});
