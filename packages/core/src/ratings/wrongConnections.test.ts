import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { derated } from './ratings.js';
import { wrongConnections } from './wrongConnections.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: { pullDown: 10e6 },
};
const ratings = {
  wiper: { amps: 0.001, shortTerm: 0.01 },
  track: { watts: 1, fullTo: 40, zeroAt: 135 },
  limiter: { watts: 0.1, shortTerm: 0.2 },
  ambient: 25,
};

describe('wrongConnections', () => {
  const rows = wrongConnections(bench, ratings, 12);
  const row = (kind: string, more: object = {}) =>
    rows.find(
      ({ mistake }) =>
        mistake.kind === kind &&
        Object.entries(more).every(
          ([key, value]) => JSON.stringify(mistake[key as 'kind']) === JSON.stringify(value),
        ),
    )!;

  test('has the right connection first, the five exchanges, and every break and short', () => {
    expect(rows[0]).toMatchObject({
      mistake: { kind: 'none' },
      planned: { appearance: 'as-right' },
    });
    expect(rows.filter(({ mistake }) => mistake.kind === 'exchanged-leads')).toHaveLength(5);
    expect(new Set(rows.map(({ mistake }) => JSON.stringify(mistake))).size).toBe(rows.length);
  });

  test('the supply on the wiper looks right on the meter and loads the contact: why a limiter is needed', () => {
    const tied = row('exchanged-leads', {
      connection: { supply: 'wiper', ground: 'bottom', signal: 'top' },
    });
    expect(tied.planned).toMatchObject({
      appearance: 'as-right',
      ratings: {
        wiper: { outcome: 'within-short-term', position: 0 },
        limiter: { outcome: 'within' },
      },
    });
    expect(tied.planned.ratings.wiper.value).toBeCloseTo(0.005, 12);
    expect(tied.planned.ratings.track.value).toBeCloseTo(0.005 ** 2 * 5000, 9);
    expect(tied.otherSource!.ratings.wiper.outcome).toBe('over');
    expect(tied.otherSource!.ratings.limiter.outcome).toBe('within-short-term');
    expect(tied.withoutLimiter.ratings.wiper).toMatchObject({
      value: { kind: 'unbounded' },
      outcome: 'over',
    });
  });

  test.each([
    ['broken-lead', { lead: 'ground' }, 'stays-near-source'],
    ['broken-lead', { lead: 'supply' }, 'stays-near-common'],
    [
      'exchanged-leads',
      { connection: { supply: 'bottom', ground: 'top', signal: 'wiper' } },
      'reversed',
    ],
    ['reversed-source', {}, 'reversed'],
    ['lifted-wiper', {}, 'stays-near-common'],
    ['broken-track', {}, 'other-readings'],
  ] as const)('%s %j shows: %s', (kind, more, appearance) => {
    expect(row(kind, more).planned.appearance).toBe(appearance);
  });

  test('what was not given is not judged', () => {
    expect(rows[1]!.planned.ratings.source.outcome).toBe('not-given');
    expect(rows[1]!.planned.ratings.source.continuous).toBeUndefined();
  });

  test.each([
    [{ wiper: { amps: 0 } }, 'ratings.wiper.amps'],
    [{ track: { watts: Number.NaN } }, 'ratings.track.watts'],
    [{ track: { watts: 1, fullTo: 70, zeroAt: 40 }, ambient: 25 }, 'ratings.track.zeroAt'],
    [{ track: { watts: 1, fullTo: 40, zeroAt: 70 } }, 'ratings.ambient'],
  ])('refuses a wrong rating (%#)', (wrong, path) => {
    expect(() => wrongConnections(bench, wrong)).toThrow(expect.objectContaining({ path }));
  });
});

describe('derated', () => {
  test('full to one temperature, straight to nothing at the other', () => {
    const rating = { watts: 0.4, fullTo: 70, zeroAt: 155 };
    expect(derated(rating, 20)).toBe(0.4);
    expect(derated(rating, 112.5)).toBeCloseTo(0.2, 15);
    expect(derated(rating, 200)).toBe(0);
    expect(derated({ watts: 0.4 })).toBe(0.4);
  });
});
