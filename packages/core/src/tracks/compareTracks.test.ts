import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { expectation } from '../expectation/expectation.js';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { compareTracks, type TracksEvidence } from './compareTracks.js';
import type { TracksComparison, TwoTracks } from './twoTracks.js';

const noise = 0.004;

/** Rest, a slow opening and closing, rest, and a snap of 40 ms between long rests. */
function travelAt(at: number): number {
  if (at < 2) return 0;
  if (at < 6) return 0.5 - 0.5 * Math.cos((Math.PI * (at - 2)) / 2);
  if (at < 7) return 0.5 - 0.5 * Math.cos(Math.PI * (at - 6));
  if (at < 8) return 1;
  if (at < 8.04) return 1 - (at - 8) / 0.04;
  return 0;
}

type Volts = (travel: number) => number;
const rising: Volts = (travel) => 0.5 + 4 * travel;
const pairs: Record<'sum' | 'offset' | 'ratio', Volts> = {
  sum: (travel) => 4.5 - 4 * travel,
  offset: (travel) => 0.9 + 4 * travel,
  ratio: (travel) => 0.25 + 2 * travel,
};

/** 12 s at 1 kHz; the second channel sampled `skew` later than its stamps. */
function recorded(second: Volts, skew = 0, seed = 1, interval = 0.001): TwoTracks {
  const { normal } = randomNumbers(seed);
  const time = Float64Array.from({ length: Math.round(12 / interval) }, (_, i) => i * interval);
  return {
    time,
    first: time.map((at) => rising(travelAt(at)) + noise * normal()),
    second: time.map((at) => second(travelAt(at + skew)) + noise * normal()),
    travel: time.map(travelAt),
  };
}

function compared(tracks: TwoTracks, evidence: TracksEvidence): TracksComparison {
  const comparison = compareTracks(tracks, evidence);
  if (comparison.kind !== 'judged') throw new Error(comparison.reason);
  return comparison;
}

const limit = 0.15;

describe.each(['sum', 'offset', 'ratio'] as const)('two sound tracks of constant %s', (kind) => {
  const tracks = recorded(pairs[kind]);

  test('show their relation and agree', () => {
    const { relation, scatter, disagreements, largest, liar } = compared(tracks, { limit });
    expect(relation.kind).toBe(kind);
    expect(relation.value).toBeCloseTo({ sum: 5, offset: 0.4, ratio: 0.5 }[kind], 2);
    const gain = kind === 'ratio' ? 0.5 : 1;
    expect(scatter / (noise * Math.hypot(1, gain))).toBeCloseTo(1, 1);
    expect(disagreements).toEqual([]);
    expect(liar).toBe('undecided');
    expect(Math.abs(largest.volts)).toBeLessThan(6 * scatter);
  });

  test.each(['first', 'second'] as const)('a dropout of the %s is that one’s', (which) => {
    const away = (volts: number, i: number) => (i >= 3000 && i < 3030 ? 0 : volts);
    const faulty = { ...tracks, [which]: tracks[which].map(away) };
    const { disagreements, liar, relation } = compared(faulty, { limit });
    expect(relation.kind).toBe(kind);
    expect(disagreements).toHaveLength(1);
    const [{ start, end, fromTravel, toTravel }] = disagreements as [(typeof disagreements)[0]];
    expect(start).toBeCloseTo(3, 2);
    expect(end).toBeCloseTo(3.029, 2);
    expect(fromTravel).toBeCloseTo(travelAt(3), 2);
    expect(toTravel).toBeCloseTo(travelAt(3.029), 2);
    expect(liar).toBe(which);
  });
});

test('travel by the first track’s hook-up goes straight through the stretch in which that track is away', () => {
  const circuit = {
    source: { volts: 5 },
    limiter: 0,
    sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
    load: {},
  };
  const { travel, ...tracks } = recorded(pairs.sum);
  const first = tracks.first.map((volts, i) => (i >= 3000 && i < 3030 ? 0 : volts));
  const { disagreements, largest } = compared(
    { ...tracks, first },
    { limit, expected: expectation(circuit) },
  );
  expect(disagreements[0]!.fromTravel).toBeCloseTo(travelAt(3), 2);
  expect(disagreements[0]!.toTravel).toBeCloseTo(travelAt(3.03), 2);
  expect(largest.travel).toBeGreaterThanOrEqual(disagreements[0]!.fromTravel);
  expect(largest.travel).toBeLessThanOrEqual(disagreements[0]!.toTravel);
});

test('a lasting step is one disagreement to the end, and the one that jumped did it', () => {
  const tracks = recorded(pairs.sum);
  const second = tracks.second.map((volts, i) => (i >= 6500 ? volts + 0.4 : volts));
  const { disagreements, liar } = compared({ ...tracks, second }, { limit });
  expect(disagreements).toHaveLength(1);
  expect(disagreements[0]).toMatchObject({ liar: 'second', end: 11.999 });
  expect(disagreements[0]!.deviation).toBeCloseTo(0.4, 1);
  expect(liar).toBe('second');
});

test('a track that is slow to go astray, and interference on both, leave it open who lies', () => {
  const tracks = recorded(pairs.sum);
  const bow = (at: number) => (at > 3 && at < 5 ? 0.3 * Math.sin((Math.PI * (at - 3)) / 2) : 0);
  const drifting = tracks.second.map((volts, i) => volts + bow(tracks.time[i]!));
  const slow = compared({ ...tracks, second: drifting }, { limit });
  expect(slow.disagreements.length).toBeGreaterThan(0);
  expect(slow.liar).toBe('undecided');
  const hit = (volts: number, i: number) => (i >= 4000 && i < 4003 ? volts + 0.6 : volts);
  const both = compared(
    { ...tracks, first: tracks.first.map(hit), second: tracks.second.map(hit) },
    { limit },
  );
  expect(both.disagreements).toHaveLength(1);
  expect(both.liar).toBe('undecided');
});

test('two tracks that lie in turn leave it open as a whole', () => {
  const tracks = recorded(pairs.sum);
  const away = (from: number) => (volts: number, i: number) =>
    i >= from && i < from + 30 ? 0 : volts;
  const { disagreements, liar } = compared(
    { ...tracks, first: tracks.first.map(away(3000)), second: tracks.second.map(away(3500)) },
    { limit },
  );
  expect(disagreements.map((one) => one.liar)).toEqual(['first', 'second']);
  expect(liar).toBe('undecided');
});

describe('a skew of 2.5 ms between the channels', () => {
  const skew = 0.0025;
  const tracks = recorded(pairs.sum, skew);

  test('taken for none contradicts while the throttle snaps shut, and blames neither', () => {
    const { disagreements, liar } = compared(tracks, { limit });
    expect(disagreements).toHaveLength(1);
    expect(disagreements[0]!.start).toBeGreaterThan(7.99);
    expect(disagreements[0]!.end).toBeLessThan(8.05);
    expect(liar).toBe('undecided');
  });

  test('known is taken out', () => {
    const { disagreements, time } = compared(tracks, { limit, skew });
    expect(disagreements).toEqual([]);
    // The first samples of the first channel lie before any of the second.
    expect(time[0]).toBe(0.003);
    expect(compared(recorded(pairs.sum, -skew), { limit, skew: -skew }).disagreements).toEqual([]);
  });

  test('does not hide the liar', () => {
    const away = tracks.second.map((volts, i) => (i >= 3000 && i < 3030 ? 0 : volts));
    expect(compared({ ...tracks, second: away }, { limit, skew }).liar).toBe('second');
  });
});

test('a supply that sags moves both alike and is neither’s fault; a supply that is gone is left out', () => {
  const tracks = recorded(pairs.sum);
  const supply = tracks.time.map((at) => (at > 5 && at < 5.1 ? 4 : at > 9 && at < 9.1 ? 0 : 5));
  const scaled = (volts: Float64Array) => volts.map((one, i) => (one * supply[i]!) / 5);
  const sagging = { ...tracks, first: scaled(tracks.first), second: scaled(tracks.second) };
  expect(compared({ ...sagging, supply }, { limit }).disagreements).toEqual([]);
  expect(compared(sagging, { limit }).disagreements).toHaveLength(2);
});

test('a relation that is stated is kept, with its value where that is stated too', () => {
  const tracks = recorded(pairs.sum);
  const { relation } = compared(tracks, { limit, relation: { kind: 'sum' } });
  expect(relation.value).toBeCloseTo(5, 2);
  const shifted = compared(tracks, { limit, relation: { kind: 'sum', value: 5.3 } });
  expect(shifted.relation).toEqual({ kind: 'sum', value: 5.3 });
  expect(shifted.disagreements).toHaveLength(1);
  expect(shifted.largest.volts).toBeLessThan(-0.25);
});

test('on a slow logger noise alone names no liar of a drift, whatever the draw', () => {
  for (let seed = 1; seed <= 40; seed++) {
    const tracks = recorded(pairs.sum, 0, seed, 0.005);
    const second = tracks.second.map((volts, i) => {
      const at = tracks.time[i]!;
      return at > 2 && at < 6 ? volts + 0.06 * (1 - Math.cos((Math.PI * (at - 2)) / 2)) : volts;
    });
    expect(compared({ ...tracks, second }, { limit: 0.08 }).liar, `seed ${seed}`).toBe('undecided');
  }
});

describe('what can not be compared says why', () => {
  const tracks = recorded(pairs.sum);
  const still = tracks.time.map(() => 1);
  const dead = tracks.time.map(() => 0);
  const wild = tracks.time.map((_, i) => (i * 7919) % 5);
  test.each([
    [{ ...tracks, first: still, second: still }, { limit }, 'no-movement'],
    [{ ...tracks, second: wild }, { limit }, 'no-relation'],
    [{ ...tracks, second: dead }, { limit }, 'no-relation'],
    [{ ...tracks, second: dead }, { limit, relation: { kind: 'ratio' } }, 'no-relation'],
    [{ ...tracks, first: still }, { limit }, 'no-relation'],
    [tracks, { limit, skew: 99 }, 'nothing-to-compare'],
    [{ ...tracks, supply: new Float64Array(still.length) }, { limit }, 'nothing-to-compare'],
  ] as const)('%#', (data, evidence, reason) => {
    expect(compareTracks(data, evidence)).toEqual({ kind: 'not-judged', reason });
  });

  test.each([
    [undefined, { limit }, 'missing', 'tracks'],
    [{ ...tracks, second: still.subarray(1) }, { limit }, 'length-mismatch', 'tracks.second'],
    [{ ...tracks, first: still.with(2, Number.NaN) }, { limit }, 'not-finite', 'tracks.first[2]'],
    [{ ...tracks, time: tracks.time.with(5, 0) }, { limit }, 'time-backwards', 'tracks.time[5]'],
    [tracks, { limit: 0 }, 'zero', 'evidence.limit'],
    [tracks, { limit, relation: { kind: 'product' } }, 'unknown-choice', 'evidence.relation.kind'],
    [{ time: still, first: still, second: still }, { limit }, 'missing', 'evidence.expected'],
  ] as const)('wrong input is refused (%#)', (data, evidence, code, path) => {
    expect(() => compareTracks(data as never, evidence as never)).toThrow(
      expect.objectContaining({ name: 'InputError', code, path }),
    );
  });
});

test('random dropouts of either track, sharp or rounded, are laid at the right door', () => {
  for (let seed = 1; seed <= 40; seed++) {
    const { uniform } = randomNumbers(1000 + seed);
    const interval = [0.001, 0.005, 0.01][seed % 3]!;
    const which = uniform() < 0.5 ? 'first' : 'second';
    const begin = 2.5 + 3 * uniform();
    const last = 0.03 + 0.04 * uniform();
    const depth = 0.3 + uniform();
    const tracks = recorded(pairs.sum, 0, seed, interval);
    const faulty = tracks[which].map((volts, i) => {
      const since = tracks.time[i]! - begin;
      if (since < 0 || since > last) return volts;
      return volts - depth * (seed % 2 ? 1 : 1 - Math.exp(-since / 0.002));
    });
    expect(compared({ ...tracks, [which]: faulty }, { limit }).liar, `seed ${seed}`).toBe(which);
  }
});

test('whatever is recorded, nothing but an InputError is thrown and no number is NaN or infinite', () => {
  const value = fc.oneof(
    fc.double({ min: -10, max: 10, noNaN: true }),
    fc.constantFrom(0, 1, 5, 5e-324, 1e-300, -1e-300, 1e12, -1e12, 1e300, Number.NaN, Infinity),
  );
  const row = fc.tuple(fc.nat(9), value, value, value);
  const kinds = { judged: 0, 'not-judged': 0, refused: 0 };
  const relation = fc.constantFrom(
    undefined,
    { kind: 'sum' as const },
    { kind: 'ratio' as const },
    { kind: 'ratio' as const, value: 1e6 },
  );
  const allNumbers = (of: unknown): number[] =>
    typeof of === 'number'
      ? [of]
      : typeof of === 'object' && of
        ? Object.values(of).flatMap(allNumbers)
        : [];
  fc.assert(
    fc.property(
      fc.array(row, { minLength: 1, maxLength: 60 }),
      fc.tuple(fc.boolean(), fc.boolean(), fc.boolean()),
      relation,
      (rows, [isTame, hasSupply, isRelated], known) => {
        let now = 0;
        const time = Float64Array.from(rows, ([after]) => {
          now += after;
          return now;
        });
        const of = (at: 1 | 2 | 3) =>
          Float64Array.from(rows, (one) =>
            isTame ? Math.min(9, Math.max(-9, one[at] || 0)) : one[at],
          );
        const first = of(1);
        const second = isRelated ? first.map((volts) => 5 - volts) : of(2);
        const tracks = { time, first, second, travel: time, ...(hasSupply && { supply: of(3) }) };
        try {
          const evidence = { limit: 0.5, skew: 0.7, ...(known && { relation: known }) };
          const comparison = compareTracks(tracks, evidence);
          kinds[comparison.kind]++;
          expect(allNumbers(comparison).every(Number.isFinite)).toBe(true);
        } catch (error) {
          expect(error).toMatchObject({ name: 'InputError' });
          kinds.refused++;
        }
      },
    ),
    { numRuns: 1000 * soak },
  );
  expect(Math.min(...Object.values(kinds))).toBeGreaterThan(10);
}, 240_000);
