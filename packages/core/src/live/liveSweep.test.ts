import { describe, expect, test } from 'vitest';
import { expectation } from '../expectation/expectation.js';
import { scoreSweep } from '../score/scoreSweep.js';
import type { SimulatedMovement } from '../simulate/movement.js';
import { simulateSweep } from '../simulate/simulateSweep.js';
import { liveSweep } from './liveSweep.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const expected = expectation(circuit, { closedPosition: 0.02, openPosition: 0.03 });
const pass: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to: 1, seconds: 1.2 },
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to: 0, seconds: 1.2 },
];
const { sweep } = simulateSweep({
  circuit,
  movements: [...pass, ...pass, ...pass, { kind: 'hold', seconds: 0.5 }],
  recorder: { interval: 1e-3, noise: 0.003, resolution: 0.002 },
  faults: [{ kind: 'worn-spot', travel: 0.4, width: 0.02, ohms: Number.POSITIVE_INFINITY }],
  seed: 4,
});
const { time, signal } = sweep;

describe('liveSweep', () => {
  test('rows without a reading count as in a whole recording, whatever the chunk that they come in', () => {
    const rows = (after: number, at: number) =>
      ({ reading: 'none', rows: 1, after, start: at, end: at }) as const;
    const unread = [rows(700, time[700]! - 4e-4), rows(1200, time[1200]! - 4e-4)];
    const live = liveSweep(expected);
    live.feed(time.subarray(0, 1000), signal.subarray(0, 1000), undefined, [unread[0]!]);
    live.feed(time.subarray(1000), signal.subarray(1000), undefined, [rows(200, unread[1]!.start)]);
    expect(live.end()).toEqual(scoreSweep({ ...sweep, unread }, expected));
    expect(() => live.feed(time.subarray(0, 0), signal.subarray(0, 0))).toThrow();
  });

  test('refuses rows without a reading that stand nowhere in their chunk', () => {
    const live = liveSweep(expected);
    const row = { reading: 'none', rows: 1, after: 11, start: 0, end: 0 } as const;
    expect(() => live.feed(time.subarray(0, 10), signal.subarray(0, 10), undefined, [row])).toThrow(
      expect.objectContaining({ path: 'chunk.unread[0].after' }),
    );
  });

  test('shows findings while running, each once, and in the end what scoreSweep shows', () => {
    const live = liveSweep(expected);
    const whole = scoreSweep(sweep, expected);
    let seen = 0;
    for (let at = 0; at < time.length; at += 500) {
      live.feed(time.subarray(at, at + 500), signal.subarray(at, at + 500));
      const so = live.provisional();
      expect(so.provisional).toBe(true);
      expect(so.samples).toBe(Math.min(time.length, at + 500));
      expect(so.judged!.end - so.judged!.start).toBeLessThanOrEqual(4);
      expect(so.found).toBe(so.findings.length);
      seen = so.found;
    }
    expect(seen).toBe(6);
    expect(whole.findings).toHaveLength(6);
    const { findings, strokes } = live.provisional();
    for (const [i, one] of findings.entries()) {
      const { start, travel } = whole.findings[i]!;
      expect(one).toMatchObject({
        kind: 'dropout',
        start: expect.closeTo(start, 2),
        travel: expect.closeTo(travel, 1),
      });
    }
    expect(strokes.length).toBeGreaterThan(0);
    expect(live.end()).toEqual(whole);
  });

  test('says nothing before time has passed', () => {
    const live = liveSweep(expected);
    expect(live.provisional()).toEqual({
      provisional: true,
      samples: 0,
      strokes: [],
      rests: [],
      snaps: [],
      findings: [],
      found: 0,
      hints: [],
    });
    live.feed(Float64Array.of(1), Float64Array.of(2));
    expect(live.provisional()).toMatchObject({ samples: 1, found: 0 });
    expect(() => live.end()).toThrow(expect.objectContaining({ code: 'too-few-samples' }));
    live.feed(Float64Array.of(2), Float64Array.of(2));
    expect(live.end().quality).toMatchObject({ samples: 2, stamps: { clock: 'stamped' } });
  });

  test('hands supply and stretches on', () => {
    const supply = new Float64Array(time.length).fill(4);
    const stretches = [{ kind: 'harness-flexed', start: 0, end: 0.3 }] as const;
    const live = liveSweep(expected, { uncertainty: 0.01 });
    live.feed(time, signal, supply);
    expect(live.end(stretches)).toEqual(
      scoreSweep({ time, signal, supply, stretches }, expected, { uncertainty: 0.01 }),
    );
  });

  test('judges what is there so far and goes on', () => {
    const live = liveSweep(expected);
    const half = time.length >> 1;
    live.feed(time.subarray(0, half), signal.subarray(0, half));
    const before = { time: time.subarray(0, half), signal: signal.subarray(0, half) };
    expect(live.soFar()).toEqual(scoreSweep(before, expected));
    live.feed(time.subarray(half), signal.subarray(half));
    expect(live.soFar()).toEqual(live.end());
  });

  test('tells abrupt departures of a recorder that is coupled through a capacitor', () => {
    const live = liveSweep(expected, { coupling: 'ac' });
    for (let at = 0; at < time.length; at += 500) {
      live.feed(time.subarray(at, at + 500), signal.subarray(at, at + 500));
      live.provisional();
    }
    const { findings, found } = live.provisional();
    const whole = scoreSweep(sweep, expected, { coupling: 'ac' });
    expect(found).toBe(whole.abrupt!.length);
    expect(found).toBeGreaterThan(2);
    expect(findings[0]).toEqual(whole.abrupt![0]);
  });

  test('keeps the latest samples only where that is asked for', () => {
    const kept = 2 ** 19;
    const live = liveSweep(expected, {}, {}, kept);
    const count = 2 ** 16;
    const rests = new Float64Array(count).fill(signal[0]!);
    const row = { reading: 'none', rows: 1, after: 5, start: 0, end: 0 } as const;
    for (let chunk = 0; chunk < 16; chunk++) {
      const times = rests.map((_, i) => (chunk * count + i) / 1e4);
      live.feed(times, rests, undefined, [{ ...row, start: times[5]!, end: times[5]! }]);
    }
    expect(live.provisional()).toMatchObject({ samples: 16 * count, judged: { end: 104.8575 } });
    expect(live.end().quality.samples).toBe(kept);
    expect(() => liveSweep(expected, {}, {}, kept - 1)).toThrow(
      expect.objectContaining({ code: 'not-a-count', path: 'mostKept' }),
    );
  });

  test('refuses a chunk with its path, and forgets it', () => {
    const live = liveSweep(expected);
    live.feed(time.subarray(0, 1000), signal.subarray(0, 1000));
    const refused = (code: string, path: string, ...chunk: Parameters<typeof live.feed>) =>
      expect(() => live.feed(...chunk)).toThrow(expect.objectContaining({ code, path }));
    const two = Float64Array.of(1, 2);
    const three = Float64Array.of(1, 2, 3);
    refused('length-mismatch', 'chunk.signal', two, three);
    refused('length-mismatch', 'chunk.supply', two, two, three);
    refused('not-a-list', 'chunk.signal', two, '12' as never);
    refused('not-finite', 'chunk.signal[1]', two, Float64Array.of(1, Number.NaN));
    refused('not-finite', 'chunk.time[0]', Float64Array.of(-Infinity, 1), two);
    refused('out-of-range', 'chunk.supply[1]', two, two, Float64Array.of(1, 1e13));
    refused('unexpected', 'chunk.supply', two, two, two);
    live.feed(new Float64Array(0), new Float64Array(0));
    live.feed(Array.from(time.subarray(1000)), Array.from(signal.subarray(1000)));
    expect(live.end()).toEqual(scoreSweep(sweep, expected));
    refused('ended', 'chunk', two, two);
  });

  test('misses a supply that came before', () => {
    const live = liveSweep(expected);
    const two = Float64Array.of(1, 2);
    live.feed(two, two, two);
    expect(() => live.feed(two, two)).toThrow(
      expect.objectContaining({ code: 'missing', path: 'chunk.supply' }),
    );
  });
});
