import { describe, expect, test } from 'vitest';
import { recognisePotentiometer } from './recognisePotentiometer.js';
import { starvedSupply } from './starvedSupply.js';

const sound = { endToEnd: 5000, endToEndReversed: 5000, oneToWiper: 900, otherToWiper: 4200 };

describe('recognisePotentiometer', () => {
  test.each([
    ['a track with its wiper between', {}, 'potentiometer', ['splits']],
    [
      'a dirty contact in series',
      { oneToWiper: 2900, otherToWiper: 6200 },
      'potentiometer',
      ['splits'],
    ],
    ['a wiper at one end', { oneToWiper: 50, otherToWiper: 5050 }, 'potentiometer', ['splits']],
    ['within the meter’s uncertainty', { endToEndReversed: 5100 }, 'potentiometer', ['splits']],
    ['changed over it differs', { endToEndReversed: 8000 }, 'not-one', ['depends-on-polarity']],
    ['one way it is open', { endToEnd: Infinity }, 'not-one', ['depends-on-polarity']],
    ['less together than the whole', { otherToWiper: 2000 }, 'not-one', ['does-not-split']],
    ['farther apart than the whole', { otherToWiper: 12_000 }, 'not-one', ['does-not-split']],
    ['open from one end', { oneToWiper: Infinity }, 'not-one', ['does-not-split']],
    [
      'a broken track, or none',
      { endToEnd: Infinity, endToEndReversed: Infinity },
      'cannot-tell',
      ['ends-open'],
    ],
    [
      'a wiper that nothing touches',
      { oneToWiper: Infinity, otherToWiper: Infinity },
      'cannot-tell',
      ['wiper-open'],
    ],
    [
      'far from its track',
      { oneToWiper: 40_000, otherToWiper: 41_000 },
      'cannot-tell',
      ['wiper-far-from-track'],
    ],
    [
      'moved, it follows',
      { moved: { oneToWiper: 3900, otherToWiper: 1200 } },
      'potentiometer',
      ['splits', 'follows'],
    ],
    [
      'moved, it stays',
      { moved: { oneToWiper: 905, otherToWiper: 4195 } },
      'cannot-tell',
      ['splits', 'does-not-follow'],
    ],
    [
      'both parts grow',
      { moved: { oneToWiper: 3900, otherToWiper: 6500 } },
      'not-one',
      ['does-not-split'],
    ],
  ] as const)('%s', (_, changed, conclusion, reasons) => {
    expect(recognisePotentiometer({ ...sound, ...changed })).toEqual({ conclusion, reasons });
  });

  test('exact readings, and 0 Ω at the ends', () => {
    const exact = { ...sound, oneToWiper: 0, otherToWiper: 5000, uncertainty: 0 };
    expect(recognisePotentiometer(exact).conclusion).toBe('potentiometer');
  });
});

describe('starvedSupply', () => {
  test('what is left, and the largest resistor that leaves enough', () => {
    const { drop, left, starved, largestLimiter } = starvedSupply({
      supply: 5,
      limiter: 47,
      current: 0.01,
      least: 4.5,
    });
    expect([drop, left]).toEqual([expect.closeTo(0.47, 12), expect.closeTo(4.53, 12)]);
    expect([starved, largestLimiter]).toEqual([false, expect.closeTo(50, 12)]);
    expect(starvedSupply({ supply: 4.4, limiter: 0, current: 0.01, least: 4.5 })).toMatchObject({
      starved: true,
      largestLimiter: 0,
    });
  });
});
