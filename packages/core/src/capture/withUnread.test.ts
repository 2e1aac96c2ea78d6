import { describe, expect, test } from 'vitest';
import { expectation } from '../expectation/expectation.js';
import { scoreSweep } from '../score/scoreSweep.js';
import { simulateSweep } from '../simulate/simulateSweep.js';
import { checkUnread } from './checkUnread.js';
import type { Sweep, UnreadRows } from './sweep.js';
import { withUnread } from './withUnread.js';

const row = (more: Partial<UnreadRows> = {}): UnreadRows => ({
  reading: 'above-range',
  rows: 1,
  after: 1,
  start: 0.1,
  end: 0.1,
  ...more,
});
const sweep: Sweep = {
  time: Float64Array.of(0, 0.4, 0.5),
  signal: Float64Array.of(1, 2, 3),
  supply: Float64Array.of(5, 5.1, 5.2),
};

describe('withUnread', () => {
  test('puts rows beyond a known range at its end, and counts those of which nothing is known', () => {
    const unread = [
      row({ rows: 3, start: 0.125, end: 0.375 }),
      row({ reading: 'none', after: 2, start: 0.45, end: 0.45 }),
      row({ reading: 'below-range', after: 3, start: 0.6, end: 0.6 }),
    ];
    expect(withUnread({ ...sweep, unread }, { low: -10, high: 10 })).toEqual({
      sweep: {
        time: Float64Array.of(0, 0.125, 0.25, 0.375, 0.4, 0.5, 0.6),
        signal: Float64Array.of(1, 10, 10, 10, 2, 3, -10),
        supply: Float64Array.of(5, 5, 5, 5, 5.1, 5.2, 5.2),
      },
      unknown: 1,
    });
  });

  test('knows nothing of rows beyond a range that is not told', () => {
    const { supply, ...read } = sweep;
    const unread = [row({ rows: 2 }), row({ reading: 'none' })];
    expect(withUnread({ ...read, unread }, undefined)).toEqual({ sweep: read, unknown: 3 });
  });
});

describe('checkUnread', () => {
  test.each([
    ['reading', row({ reading: 'overload' as 'none' })],
    ['rows', row({ rows: 0 })],
    ['after', row({ after: 4 })],
    ['start', row({ start: Number.NaN })],
    ['end', row({ end: 0 })],
  ])('refuses a wrong %s with its path', (field, wrong) => {
    expect(() => checkUnread([row(), wrong], 3, 'sweep.unread')).toThrow(
      expect.objectContaining({ path: `sweep.unread[1].${field}` }),
    );
  });
});

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullUp: { ohms: 10e6, volts: 12 } },
};
const expected = expectation(circuit, { track: 0.2, closedPosition: 0.02, openPosition: 0.03 });
const pass = [
  { kind: 'hold', seconds: 0.3 },
  { kind: 'turn', to: 1, seconds: 1.2, unevenness: 0.008 },
  { kind: 'hold', seconds: 0.3 },
  { kind: 'turn', to: 0, seconds: 1.1, unevenness: 0.008 },
] as const;

/** A worn spot of this width, in travel, recorded by what writes no number where the wiper lifts. */
function wornSweep(width: number, reading: UnreadRows['reading']): Sweep {
  const plan = {
    circuit,
    movements: [...pass, ...pass, ...pass, { kind: 'hold', seconds: 0.3 }],
    recorder: { interval: 1e-3, noise: 0.003, resolution: 0.002 },
    seed: 5,
  } as const;
  const ohms = Number.POSITIVE_INFINITY;
  const { sweep: whole } = simulateSweep({
    ...plan,
    faults: [{ kind: 'worn-spot', travel: 0.4, width, ohms }],
  });
  const [time, signal, unread]: [number[], number[], UnreadRows[]] = [[], [], []];
  for (const [i, volts] of whole.signal.entries()) {
    const at = whole.time[i]!;
    if (volts < 6) {
      time.push(at);
      signal.push(volts);
    } else unread.push(row({ reading, after: time.length, start: at, end: at }));
  }
  return { time: Float64Array.from(time), signal: Float64Array.from(signal), unread };
}

describe('a worn spot whose rows hold no reading', () => {
  const widths = [0.002, 0.005, 0.01];

  test.each(widths)('%s of the travel wide never passes', (width) => {
    const worn = wornSweep(width, 'none');
    expect(worn.unread!.length).toBeGreaterThan(3);
    const { verdict, checks, advice } = scoreSweep(worn, expected);
    expect(verdict).toBe('inconclusive');
    expect(checks).toContainEqual(
      expect.objectContaining({ check: 'unread', outcome: 'cannot-tell' }),
    );
    expect(advice).toContain('record-every-reading');
    const { unread, ...alone } = worn;
    expect(scoreSweep(alone, expected).verdict).toBe('pass');
  });

  test.each(widths)('%s of the travel wide fails by rows above a range that is told', (width) => {
    const worn = wornSweep(width, 'above-range');
    const { verdict, findings } = scoreSweep(worn, expected, { range: { low: -0.5, high: 6 } });
    expect(verdict).toBe('fail');
    expect(findings.length).toBeGreaterThan(2);
    for (const { travel } of findings) expect(travel).toBeCloseTo(0.4, 1);
    expect(scoreSweep(worn, expected).verdict).toBe('inconclusive');
  });
});
