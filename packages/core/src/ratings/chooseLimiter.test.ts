import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { chooseLimiter } from './chooseLimiter.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 5000 },
  load: { pullDown: 10e6 },
};

describe('chooseLimiter', () => {
  test('is set by the wiper on the supply with the track at its end: V / I', () => {
    const choice = chooseLimiter(bench, { wiper: { amps: 0.001, shortTerm: 0.005 } });
    if (choice.kind === 'impossible') throw new Error('must be possible');
    expect(choice.smallest).toBeCloseTo(1000, 4);
    expect(choice.preferred).toBe(1000);
    expect(choice.keepsRatings).toBe(true);
    expect(choice.binding).toMatchObject({ part: 'wiper', mistake: { kind: 'exchanged-leads' } });
    expect(choice.binding!.ratio).toBeCloseTo(1, 8);
    expect(choice.heat).toBeCloseTo(0.025, 12);
    expect(choice.powerRating).toBe(0.125);
    expect(choice.notGiven).toEqual(['track', 'source']);
    expect(choice.notProtected).toEqual([{ kind: 'shorted-signal', to: 'source' }]);
  });

  test('where the track itself just keeps the ratings, no limiter is asked for', () => {
    // 5 V over the 500 Ω between fed end and stop: 10 mA, but for how numbers are rounded.
    const sensor = { track: 5000, closedPosition: 0.1, openPosition: 0.9 };
    const choice = chooseLimiter(
      { ...bench, sensor, load: {} },
      { wiper: { amps: 0.001, shortTerm: 0.01 } },
    );
    expect(choice).toMatchObject({ kind: 'chosen', smallest: 0 });
    expect(choice).not.toHaveProperty('binding');
  });

  test('the price: with a fifth of the track in series a sixth of the span is lost', () => {
    const choice = chooseLimiter(bench, { wiper: { amps: 0.001, shortTerm: 0.005 } });
    if (choice.kind === 'impossible') throw new Error('must be possible');
    expect(choice.price.spanLost).toBeCloseTo(1 / 6, 3);
    expect(choice.price.noiseGrowth).toBeCloseTo(1.2, 3);
    expect(choice.price.sensitivity / choice.price.sensitivityWithout).toBeCloseTo(5 / 6, 3);
  });

  test('rounding down is shown not to keep the ratings, another source voltage its heat', () => {
    const ratings = { wiper: { amps: 0.001, shortTerm: 0.0045 } };
    const down = chooseLimiter(bench, ratings, { rounding: 'down', series: 'E6', otherSource: 12 });
    expect(down).toMatchObject({ kind: 'chosen', preferred: 1000, keepsRatings: false });
    if (down.kind === 'impossible') throw new Error('must be possible');
    expect(down.heatOnOtherSource).toBeCloseTo(0.144, 12);
    expect(chooseLimiter(bench, ratings, { series: 'E6' })).toMatchObject({
      preferred: 1500,
      keepsRatings: true,
    });
  });

  test('a wanted span that the ratings do not allow is told, with what binds', () => {
    const choice = chooseLimiter(
      bench,
      { wiper: { amps: 0.001, shortTerm: 0.002 } },
      { span: 0.9 },
    );
    expect(choice).toMatchObject({ kind: 'span-too-small', binding: { part: 'wiper' } });
    if (choice.kind === 'impossible') throw new Error('must be possible');
    // A tenth of the span is lost to 555.6 Ω, through which 5 V drive 9 mA: 4.5 times the 2 mA.
    expect(choice.overAtSpan?.limiter).toBeCloseTo(5000 / 9, 0);
    expect(choice.overAtSpan?.binding.ratio).toBeCloseTo(4.5, 2);
  });

  test('normal use over a continuous rating that no limiter mends is impossible, with the reason', () => {
    const pulled: Circuit = { ...bench, load: { pullUp: { ohms: 100, volts: 5 } } };
    expect(chooseLimiter(pulled, { wiper: { amps: 1e-6 } })).toMatchObject({
      kind: 'impossible',
      binding: { mistake: { kind: 'none' }, part: 'wiper' },
    });
  });

  test('without ratings nothing binds and the smallest value of the series comes back', () => {
    expect(chooseLimiter(bench, {})).toMatchObject({
      smallest: 0,
      preferred: 1,
      notGiven: ['track', 'wiper', 'source'],
    });
  });

  test.each([
    [{ wiper: { amps: -1 } }, {}, 'ratings.wiper.amps'],
    [{}, { span: 2 }, 'wish.span'],
    [{}, { otherSource: 0 }, 'wish.otherSource'],
    [{}, { series: 'E5' as never }, 'wish.series'],
    [{ trak: { watts: 1 } } as never, {}, 'ratings.trak'],
    [{}, { spam: 0.5 } as never, 'wish.spam'],
  ])('refuses a wrong rating or wish (%#)', (ratings, wish, path) => {
    expect(() => chooseLimiter(bench, ratings, wish)).toThrow(expect.objectContaining({ path }));
  });
});
