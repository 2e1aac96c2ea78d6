import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { findPins } from './findPins.js';
import type { PinFinding, PinReading, TrackPins } from './pinFinding.js';

const OL = Number.POSITIVE_INFINITY;
const meter = { fraction: 0.01, ohms: 1 };

const read = (a: string, b: string, closed: number, open: number): PinReading[] => [
  { between: [a, b], at: 'closed', ohms: closed },
  { between: [a, b], at: 'open', ohms: open },
];

/** A potentiometer: residuals at both ends, something in series with the wiper, its places at the stops. */
interface Potentiometer {
  readonly track: number;
  readonly residuals: readonly [number, number];
  readonly series: number;
  readonly closed: number;
  readonly open: number;
}

const legsAt = ({ track, residuals, series }: Potentiometer, position: number) => ({
  a: residuals[0] + position * track,
  b: residuals[1] + (1 - position) * track,
  w: series,
});

const wholeTrack = ({ track, residuals }: Potentiometer) => track + residuals[0] + residuals[1];

/** True resistances between the terminals a, b and w of a potentiometer. */
function readingsOf(pot: Potentiometer, [a, b, w] = ['a', 'b', 'w']): PinReading[] {
  const closed = legsAt(pot, pot.closed);
  const open = legsAt(pot, pot.open);
  return [
    ...read(a!, b!, closed.a + closed.b, open.a + open.b),
    ...read(a!, w!, closed.a + closed.w, open.a + open.w),
    ...read(b!, w!, closed.b + closed.w, open.b + open.w),
  ];
}

/** True resistances of two tracks on the same ends a and b, with the wipers v and w. */
function onSameEnds(one: Potentiometer, two: Potentiometer): PinReading[] {
  const at = (stop: 'closed' | 'open'): PinReading[] => {
    const [v, w] = [legsAt(one, one[stop]), legsAt(two, two[stop])];
    const [first, second] = [v.a + v.b, w.a + w.b];
    const beside = (x: number, y: number) => (x * y) / (x + y);
    // Seen from v to w: a bridge with v.a, v.b, w.a, w.b as arms and no fifth arm, all four corners joined in a ring.
    const ring = first + second;
    const pairs: [string, string, number][] = [
      ['a', 'b', beside(first, second)],
      ['a', 'v', v.w + beside(v.a, v.b + second)],
      ['b', 'v', v.w + beside(v.b, v.a + second)],
      ['a', 'w', w.w + beside(w.a, w.b + first)],
      ['b', 'w', w.w + beside(w.b, w.a + first)],
      ['v', 'w', v.w + w.w + ((v.a + w.a) * (v.b + w.b)) / ring],
    ];
    return pairs.map(([x, y, ohms]) => ({ between: [x, y], at: stop, ohms }));
  };
  return [...at('closed'), ...at('open')];
}

const ohms = (low: number, high: number) =>
  fc
    .double({ min: Math.log10(low), max: Math.log10(high), noNaN: true })
    .map((exponent) => 10 ** exponent);
const position = fc.double({ min: 0, max: 1, noNaN: true });
const zeroOr = (some: fc.Arbitrary<number>) => fc.oneof(fc.constant(0), some);
const anyPot: fc.Arbitrary<Potentiometer> = fc.record({
  track: ohms(100, 1e5),
  residuals: fc.tuple(zeroOr(ohms(0.1, 100)), zeroOr(ohms(0.1, 100))),
  series: zeroOr(ohms(1, 3000)),
  closed: fc.oneof(fc.constantFrom(0, 1), position),
  open: fc.oneof(fc.constantFrom(0, 1), position),
});
const anyMeter = fc.record({
  fraction: fc.constantFrom(0, 0.001, 0.01, 0.03),
  ohms: fc.constantFrom(0, 0.2, 2, 10),
});
/** Where in the meter's tolerance each reading errs, and which are left out. */
const errors = fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true }));

function misread(
  readings: readonly PinReading[],
  by: { fraction: number; ohms: number },
  error: Iterator<number>,
): PinReading[] {
  return readings.map((reading) => {
    const part = error.next().value as number;
    // The error is stated as a part of what the meter shows.
    const shown = (reading.ohms + part * by.ohms) / (1 - part * by.fraction);
    return { ...reading, ohms: Math.max(0, shown) };
  });
}

function holds({ low, high }: { low: number; high: number }, value: number, slack = 1e-6) {
  expect(low).toBeLessThanOrEqual(value + slack);
  expect(high).toBeGreaterThanOrEqual(value - slack);
}

function trackIsRight(found: TrackPins, pot: Potentiometer, names: readonly string[]) {
  const [a, b, w] = names;
  expect(found.wiper).toBe(w);
  expect([...found.ends].sort()).toEqual([a, b].sort());
  const leaves = pot.closed < pot.open ? a : b;
  if (found.closedEnd !== undefined) expect(found.closedEnd).toBe(leaves);
  const total = wholeTrack(pot);
  const from = found.ends[0] === a ? 'a' : 'b';
  holds(found.closedPosition, legsAt(pot, pot.closed)[from] / total);
  holds(found.openPosition, legsAt(pot, pot.open)[from] / total);
}

const names = fc.shuffledSubarray(['1', '2', '3'], { minLength: 3 });

describe('findPins on a potentiometer', () => {
  test('is right or undetermined, whatever the sensor, the meter and the readings left out', () => {
    fc.assert(
      fc.property(
        anyPot,
        anyMeter,
        errors,
        names,
        fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
        fc.boolean(),
        (pot, by, error, [a, b, w], left, all) => {
          const readings = misread(readingsOf(pot, [a!, b!, w!]), by, error);
          const given = readings.filter((_, i) => all || left[i]);
          const found = findPins(['1', '2', '3'], given, by);
          if (found.kind !== 'potentiometer') {
            expect(['not-enough-readings', 'shorted']).toContain(found.kind);
            if (found.kind === 'not-enough-readings') expect(found.wiperMayBe).toContain(w);
            return;
          }
          const [track] = found.tracks;
          trackIsRight(track, pot, [a!, b!, w!]);
          holds(track.track, wholeTrack(pot));
          holds(track.series!, pot.series);
        },
      ),
      { numRuns: 4000 * soak },
    );
  });

  test('all six readings and a movement beyond the error of both sides settle it', () => {
    fc.assert(
      fc.property(anyPot, errors, names, (pot, error, order) => {
        const moved = Math.abs(pot.closed - pot.open) * pot.track;
        const doubt = 4 * (meter.fraction * (wholeTrack(pot) + pot.series) + meter.ohms);
        fc.pre(moved > doubt + 1);
        const readings = misread(readingsOf(pot, order as [string, string, string]), meter, error);
        const found = findPins(['1', '2', '3'], readings, meter);
        expect(found.kind).toBe('potentiometer');
        expect(found.kind === 'potentiometer' && found.tracks[0].closedEnd).toBeDefined();
      }),
      { numRuns: 1000 * soak },
    );
  });

  test('a resistor in the output is found from the sums, and the wiper in spite of it', () => {
    // The wiper starts at the end: closed alone looks as if b–w were the track and a the wiper.
    const pot = { track: 2000, residuals: [0, 0], series: 800, closed: 0, open: 0.9 } as const;
    const found = findPins(['a', 'b', 'w'], readingsOf(pot), meter);
    if (found.kind !== 'potentiometer') throw new Error(found.kind);
    const [track] = found.tracks;
    expect(track).toMatchObject({ wiper: 'w', ends: ['a', 'b'], closedEnd: 'a' });
    expect(track.series!.value).toBeCloseTo(800, 6);
    expect(track.series!.low).toBeGreaterThan(750);
    expect(track.openPosition.value).toBeCloseTo(0.9, 6);
    expect(found.undecided).toEqual(['fed-end']);
  });

  test('one stop alone does not tell a wiper at its end from a resistor in the output', () => {
    const pot = { track: 2000, residuals: [0, 0], series: 800, closed: 0, open: 0.9 } as const;
    const closed = readingsOf(pot).filter(({ at }) => at === 'closed');
    expect(findPins(['a', 'b', 'w'], closed, meter)).toMatchObject({
      kind: 'not-enough-readings',
      reason: 'missing',
      wiperMayBe: ['a', 'b', 'w'],
    });
  });

  test('without the pair of ends, two pairs that move the opposite way are enough', () => {
    const readings = [...read('a', 'w', 500, 4500), ...read('b', 'w', 4500, 500)];
    const found = findPins(['a', 'b', 'w'], readings, meter);
    if (found.kind !== 'potentiometer') throw new Error(found.kind);
    holds(found.tracks[0].track, 5000);
    holds(found.tracks[0].closedPosition, 0.1);
  });

  test('nothing moved: it says so', () => {
    const pot = { track: 5000, residuals: [0, 0], series: 0, closed: 0.5, open: 0.501 } as const;
    expect(findPins(['a', 'b', 'w'], readingsOf(pot), meter)).toMatchObject({
      kind: 'not-enough-readings',
      reason: 'no-movement',
      missing: [],
    });
  });

  test('the evidence tells how each pair followed the throttle', () => {
    const readings = [...read('a', 'w', 500, 4500), ...read('b', 'w', 4500, 500)];
    expect(findPins(['a', 'b', 'w'], readings, meter).evidence).toEqual([
      { between: ['a', 'b'], change: 'unknown' },
      { between: ['a', 'w'], closed: 500, open: 4500, change: 'rises' },
      { between: ['b', 'w'], closed: 4500, open: 500, change: 'falls' },
    ]);
  });
});

describe('findPins on everything else', () => {
  const three = (ab: [number, number], aw: [number, number], bw: [number, number]): PinFinding =>
    findPins(
      ['a', 'b', 'w'],
      [...read('a', 'b', ...ab), ...read('a', 'w', ...aw), ...read('b', 'w', ...bw)],
      meter,
    );

  test.each<[string, PinFinding, object]>([
    [
      'a track broken within the travel',
      three([OL, OL], [500, OL], [OL, 800]),
      { kind: 'broken-track', wiper: 'w' },
    ],
    [
      'a track broken beyond it, or a rheostat',
      three([OL, OL], [500, 3000], [OL, OL]),
      { kind: 'rheostat', terminals: ['a', 'w'], closed: 500, open: 3000, apart: ['b'] },
    ],
    [
      'a path that is lost at one stop',
      three([5000, OL], [500, OL], [4500, OL]),
      { kind: 'broken-track' },
    ],
    [
      'a lifted wiper',
      three([5000, 5000], [OL, OL], [OL, OL]),
      { kind: 'lifted-wiper', wiper: 'w', ends: ['a', 'b'], at: ['closed', 'open'] },
    ],
    [
      'a wiper lifted when open',
      three([5000, 5010], [500, OL], [4500, OL]),
      { kind: 'lifted-wiper', at: ['open'] },
    ],
    [
      'a shorted track',
      three([0.4, 0.4], [700, 900], [700, 900]),
      { kind: 'shorted', joined: [['a', 'b']] },
    ],
    ['all shorted', three([0.4, 0.4], [0.3, 0.2], [0.3, 0.2]), { kind: 'shorted' }],
    [
      'nothing conducts',
      three([OL, OL], [OL, OL], [OL, OL]),
      { kind: 'not-a-potentiometer', reason: 'no-connection' },
    ],
    [
      'all follow the throttle',
      three([1000, 3000], [1000, 3000], [1000, 3000]),
      { kind: 'not-a-potentiometer', reason: 'unlike-a-track' },
    ],
    [
      'more than the other two together',
      three([9000, 9000], [500, 4500], [4500, 500]),
      { kind: 'contradictory', at: 'closed' },
    ],
    [
      'no path where there must be one',
      three([OL, 5000], [500, 4500], [4500, 500]),
      { kind: 'contradictory', terminals: ['a', 'w', 'b'], at: 'closed' },
    ],
    [
      'a switch with contacts at both stops',
      three([0.3, OL], [OL, 0.3], [OL, OL]),
      {
        kind: 'idle-switch',
        switches: [
          { terminals: ['w', 'a'], madeAt: 'open' },
          { terminals: ['b', 'a'], madeAt: 'closed' },
        ],
      },
    ],
    [
      'an idle switch and a terminal to nothing',
      three([0.3, OL], [OL, OL], [OL, OL]),
      { kind: 'idle-switch', apart: ['w'] },
    ],
  ])('%s', (_, found, expected) => {
    if ('switches' in expected && 'switches' in found) {
      expect(found.switches).toHaveLength((expected.switches as []).length);
      expect({ ...found, switches: 0 }).toMatchObject({ ...expected, switches: 0 });
    } else expect(found).toMatchObject(expected);
  });

  test.each<[number, number, object]>([
    [500, 3000, { kind: 'rheostat', terminals: ['a', 'b'], closed: 500, open: 3000 }],
    [500, 501, { kind: 'not-a-potentiometer', reason: 'constant' }],
    [OL, OL, { kind: 'not-a-potentiometer', reason: 'no-connection' }],
    [0.3, OL, { kind: 'idle-switch', switches: [{ terminals: ['a', 'b'], madeAt: 'closed' }] }],
    [OL, 0.3, { kind: 'idle-switch', switches: [{ terminals: ['a', 'b'], madeAt: 'open' }] }],
    [0.3, 0.4, { kind: 'shorted', joined: [['a', 'b']] }],
    [500, OL, { kind: 'broken-track' }],
  ])('two terminals: %d Ω closed, %d Ω open', (closed, open, expected) => {
    expect(findPins(['a', 'b'], read('a', 'b', closed, open), meter)).toMatchObject(expected);
  });

  test('two terminals, one reading', () => {
    const found = findPins(['a', 'b'], read('a', 'b', 500, 3000).slice(1), meter);
    expect(found).toMatchObject({ missing: [{ between: ['a', 'b'], at: 'closed' }] });
  });
});

describe('findPins on four to six terminals', () => {
  const one: Potentiometer = {
    track: 5000,
    residuals: [20, 30],
    series: 800,
    closed: 0.1,
    open: 0.9,
  };
  const two: Potentiometer = {
    track: 3000,
    residuals: [10, 0],
    series: 0,
    closed: 0.85,
    open: 0.2,
  };
  /** Every pair from one group to the other. */
  const across = (first: readonly string[], second: readonly string[], ohms = OL) =>
    first.flatMap((a) => second.flatMap((b) => read(a, b, ohms, ohms)));

  const rightOrOpen = (found: PinFinding, first: Potentiometer, second: Potentiometer): boolean => {
    if (found.kind !== 'two-tracks') {
      expect(found.kind).toBe('not-enough-readings');
      return false;
    }
    expect([...found.shared].sort()).toEqual(['a', 'b']);
    const [v, w] = found.tracks[0].wiper === 'v' ? found.tracks : [...found.tracks].reverse();
    trackIsRight(v!, first, ['a', 'b', 'v']);
    trackIsRight(w!, second, ['a', 'b', 'w']);
    return true;
  };

  test('two tracks on the same ends: right or undetermined, whatever they are', () => {
    fc.assert(
      fc.property(anyPot, anyPot, anyMeter, errors, (first, second, by, error) => {
        const readings = misread(onSameEnds(first, second), by, error);
        rightOrOpen(findPins(['v', 'a', 'w', 'b'], readings, by), first, second);
      }),
      { numRuns: 1000 * soak },
    );
  });

  test('two tracks of a usual size that move far are mostly settled', () => {
    const usual = fc.record({
      track: ohms(1000, 10_000),
      residuals: fc.constant([0, 0] as const),
      series: zeroOr(ohms(100, 1000)),
      closed: fc.double({ min: 0.02, max: 0.15, noNaN: true }),
      open: fc.double({ min: 0.6, max: 0.8, noNaN: true }),
    });
    let settled = 0;
    fc.assert(
      fc.property(usual, usual, fc.boolean(), errors, (first, second, turned, error) => {
        const other = turned ? { ...second, closed: second.open, open: second.closed } : second;
        const fine = { fraction: 0.002, ohms: 0.5 };
        const readings = misread(onSameEnds(first, other), fine, error);
        if (rightOrOpen(findPins(['v', 'a', 'w', 'b'], readings, fine), first, other)) settled += 1;
      }),
      { numRuns: 300 },
    );
    expect(settled).toBeGreaterThan(200);
  });

  test('two tracks with one end in common', () => {
    const first = readingsOf(one, ['g', 'a', 'v']);
    const second = readingsOf(two, ['g', 'b', 'w']);
    const to = (readings: readonly PinReading[], name: string, at: string) =>
      readings.find((r) => r.between.includes('g') && r.between.includes(name) && r.at === at)!
        .ohms;
    const between = ['a', 'v'].flatMap((x) =>
      ['b', 'w'].flatMap((y) =>
        read(
          x,
          y,
          to(first, x, 'closed') + to(second, y, 'closed'),
          to(first, x, 'open') + to(second, y, 'open'),
        ),
      ),
    );
    const found = findPins(['a', 'b', 'g', 'v', 'w'], [...first, ...second, ...between], meter);
    if (found.kind !== 'two-tracks') throw new Error(found.kind);
    expect(found.shared).toEqual(['g']);
    const [v, w] =
      found.tracks[0].wiper === 'v' ? found.tracks : [found.tracks[1], found.tracks[0]];
    trackIsRight(v, one, ['g', 'a', 'v']);
    trackIsRight(w, two, ['g', 'b', 'w']);
    holds(v.series!, 800);
  });

  test('two tracks with nothing in common', () => {
    const readings = [
      ...readingsOf(one, ['a', 'b', 'c']),
      ...readingsOf(two, ['d', 'e', 'f']),
      ...across(['a', 'b', 'c'], ['d', 'e', 'f']),
    ];
    const found = findPins(['a', 'd', 'b', 'e', 'c', 'f'], readings, meter);
    if (found.kind !== 'two-tracks') throw new Error(found.kind);
    expect(found.shared).toEqual([]);
    expect(found.tracks.map(({ wiper }) => wiper)).toEqual(['c', 'f']);
    expect(findPins(['a', 'd', 'b', 'e', 'c', 'f'], readings.slice(1), meter)).toMatchObject({
      kind: 'not-enough-readings',
      reason: 'missing',
      missing: [{ between: ['a', 'b'], at: 'closed' }],
    });
  });

  test('a potentiometer with an idle switch to its ground', () => {
    const pot = readingsOf(one, ['g', 'b', 'w']);
    const toSwitch = ['g', 'b', 'w'].flatMap((name) => {
      const closed = pot.find(
        (r) => r.at === 'closed' && r.between.includes('g') && r.between.includes(name),
      );
      return read('i', name, name === 'g' ? 0.3 : closed!.ohms + 0.3, OL);
    });
    const found = findPins(['i', 'g', 'b', 'w'], [...pot, ...toSwitch], meter);
    expect(found).toMatchObject({
      kind: 'potentiometer',
      tracks: [{ wiper: 'w', closedEnd: 'g' }],
      switches: [{ terminals: ['i', 'g'], madeAt: 'closed' }],
      apart: [],
    });
  });

  test('a potentiometer with a switch of its own, and one with a terminal to nothing', () => {
    const pot = readingsOf(one, ['a', 'b', 'w']);
    const apart = findPins(
      ['a', 'b', 'w', 'n'],
      [...pot, ...across(['a', 'b', 'w'], ['n'])],
      meter,
    );
    expect(apart).toMatchObject({ kind: 'potentiometer', apart: ['n'], switches: [] });
    const beside = findPins(
      ['a', 'b', 'w', 'm', 'n'],
      [...pot, ...across(['a', 'b', 'w'], ['m', 'n']), ...read('m', 'n', OL, 0.2)],
      meter,
    );
    expect(beside).toMatchObject({
      kind: 'potentiometer',
      tracks: [{ wiper: 'w' }],
      switches: [{ madeAt: 'open' }],
      apart: [],
    });
  });

  test('a rheostat among terminals to nothing; nothing at all; nothing moving', () => {
    const rheostat = [
      ...read('a', 'b', 100, 900),
      ...across(['a', 'b'], ['c', 'd']),
      ...read('c', 'd', OL, OL),
    ];
    expect(findPins(['a', 'b', 'c', 'd'], rheostat, meter)).toMatchObject({
      kind: 'rheostat',
      apart: ['c', 'd'],
    });
    const none = [
      ...read('a', 'b', OL, OL),
      ...across(['a', 'b'], ['c', 'd']),
      ...read('c', 'd', OL, OL),
    ];
    expect(findPins(['a', 'b', 'c', 'd'], none, meter)).toMatchObject({ reason: 'no-connection' });
    const still = onSameEnds({ ...one, open: one.closed }, { ...two, open: two.closed });
    expect(findPins(['a', 'b', 'v', 'w'], still, meter)).toMatchObject({ reason: 'no-movement' });
  });
});

describe('findPins refuses', () => {
  const good = read('a', 'b', 1, 2);
  test.each<[unknown, unknown, unknown, string]>([
    ['ab', good, meter, 'terminals'],
    [['a'], good, meter, 'terminals'],
    [['a', 'b', 'c', 'd', 'e', 'f', 'g'], good, meter, 'terminals'],
    [['a', 'a'], good, meter, 'terminals[1]'],
    [['a', ''], good, meter, 'terminals[1]'],
    [['a', 'b'], undefined, meter, 'readings'],
    [['a', 'b'], [null], meter, 'readings[0]'],
    [['a', 'b'], [{ at: 'closed', ohms: 1 }], meter, 'readings[0].between'],
    [['a', 'b'], read('x', 'b', 1, 2), meter, 'readings[0].between[0]'],
    [['a', 'b'], read('a', 'x', 1, 2), meter, 'readings[0].between[1]'],
    [['a', 'b'], read('a', 'a', 1, 2), meter, 'readings[0].between'],
    [['a', 'b'], [...good, ...read('b', 'a', 1, 2)], meter, 'readings[2].between'],
    [['a', 'b'], [{ ...good[0], at: 'half' }], meter, 'readings[0].at'],
    [['a', 'b'], read('a', 'b', -1, 2), meter, 'readings[0].ohms'],
    [['a', 'b'], read('a', 'b', 1, Number.NaN), meter, 'readings[1].ohms'],
    [['a', 'b'], good, undefined, 'meter'],
    [['a', 'b'], good, { fraction: 0.9, ohms: 1 }, 'meter.fraction'],
    [['a', 'b'], good, { fraction: 0.01 }, 'meter.ohms'],
  ])('(%#) by path', (terminals, readings, by, path) => {
    expect(() =>
      findPins(terminals as string[], readings as PinReading[], by as typeof meter),
    ).toThrow(expect.objectContaining({ name: 'InputError', path }));
  });
});
