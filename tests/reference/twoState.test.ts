import {
  judgeTwoState,
  recognisePotentiometer,
  type TwoStateAt,
  type TwoStateReading,
  type TwoStateSensor,
} from '@truesweep/core';
import { describe, expect, test } from 'vitest';

const read = (
  state: TwoStateAt,
  value: number,
  more: Partial<TwoStateReading> = {},
): TwoStateReading => ({ state, value, uncertainty: 0.02, ...more });

describe('lean-angle sensors of published service manuals', () => {
  /**
   * Source: a published service manual: about 1.0 V upright and about 4.0 V beyond 70° from a feed of 5 V, latched until the key is cycled. The windows
   * 0.4 to 1.4 V and 3.7 to 4.4 V are common in manuals (from memory).
   */
  const volts: TwoStateSensor = {
    kind: 'volts',
    rest: { low: 0.4, high: 1.4 },
    operated: { low: 3.7, high: 4.4 },
    latched: true,
    bothWays: true,
  };
  const readings = [
    read('rest', 1),
    read('operated', 4),
    read('operated-other-way', 4),
    read('back-at-rest', 4),
    read('key-cycled', 1),
  ];

  test('1.0 V upright, 4.0 V to both sides, still so upright again, 1.0 V after the key', () => {
    expect(judgeTwoState(volts, readings).verdict).toBe('pass');
  });

  test('one lean only: the other is to be read', () => {
    const one = readings.filter(({ state }) => state !== 'operated-other-way');
    expect(judgeTwoState(volts, one)).toMatchObject({
      verdict: 'inconclusive',
      advice: ['read-operated-other-way'],
    });
  });

  /** Source: a published service manual: it cuts the supply at 65° or more, latched. */
  test('it changes at 65°, at the latest at 70°', () => {
    const angled = { ...volts, changesBetween: { low: 65, high: 70 } };
    const at = (changedAt: number) =>
      judgeTwoState(
        angled,
        readings.map((reading) =>
          reading.state === 'operated' ? { ...reading, changedAt, angleUncertainty: 0.5 } : reading,
        ),
      ).verdict;
    expect([at(60), at(67), at(75)]).toEqual(['fail', 'pass', 'fail']);
  });

  /** Source: a published service manual of a car: 4.5 V level, 0.5 V tilted. The windows around them are invented. */
  test('polarity is not fixed: 4.5 V level, 0.5 V tilted', () => {
    const other: TwoStateSensor = {
      ...volts,
      rest: { low: 4.2, high: 4.8 },
      operated: { low: 0.2, high: 0.8 },
      latched: false,
    };
    const level = [
      read('rest', 4.5),
      read('operated', 0.5),
      read('operated-other-way', 0.5),
      read('back-at-rest', 4.5),
    ];
    expect(judgeTwoState(other, level).verdict).toBe('pass');
    // The same readings by the windows of the first manual.
    const swapped = judgeTwoState(
      { ...volts, operated: { low: 3.7, high: 4.8 }, latched: false },
      level,
    );
    expect(swapped.advice).toEqual(['states-swapped', 'read-again', 'replace-sensor']);
  });

  /** Source: a published service manual: relay type, 0 to 1 V upright, battery on the feed; about 60° opens it; again only after key off and on. */
  test('relay type: 0 to 1 V upright, battery voltage tilted', () => {
    const relay: TwoStateSensor = {
      ...volts,
      rest: { low: 0, high: 1 },
      operated: { low: 11 },
      bothWays: false,
    };
    const tilted = [
      read('rest', 0.3),
      read('operated', 12.4),
      read('back-at-rest', 12.4),
      read('key-cycled', 0.3),
    ];
    expect(judgeTwoState(relay, tilted).verdict).toBe('pass');
  });

  /** Source: a published service manual: 62 kΩ upright, less than 0.5 kΩ inverted. ±10 % of the former is invented. */
  test('contact type: 62 kΩ upright, below 0.5 kΩ inverted', () => {
    const contact: TwoStateSensor = {
      kind: 'ohms',
      rest: { low: 55_800, high: 68_200 },
      operated: { high: 500 },
      latched: false,
      bothWays: false,
    };
    const ohms = (inverted: number) =>
      judgeTwoState(contact, [
        read('rest', 62_000, { uncertainty: 300 }),
        read('operated', inverted, { uncertainty: 3 }),
        read('back-at-rest', 62_000, { uncertainty: 300 }),
      ]).verdict;
    expect([ohms(180), ohms(620)]).toEqual(['pass', 'fail']);
  });
});

describe('switch contacts', () => {
  const closed: TwoStateSensor = {
    kind: 'ohms',
    rest: { high: 0.5 },
    operated: { low: 1e6 },
    latched: false,
    bothWays: false,
  };
  const contact = (ohms: number, leads: number) =>
    judgeTwoState(closed, [
      read('rest', ohms, { leads }),
      read('operated', Infinity, { leads }),
      read('back-at-rest', ohms, { leads }),
    ]).verdict;

  /** Source: a published service manual of mowers: replace at 0.5 Ω or more. Leads of 0.1 to 0.2 Ω: meters' manuals. */
  test('0.6 Ω with leads of 0.2 Ω is 0.4 Ω, and right; unsubtracted it would have been replaced', () => {
    expect(contact(0.6, 0.2)).toBe('pass');
    expect(contact(0.6, 0)).toBe('fail');
  });

  /** Source: a published service manual: an oil-pressure switch has continuity with the engine stopped, none while it runs. */
  test('oil pressure: closed when stopped, open when running', () => {
    expect(contact(0.3, 0.15)).toBe('pass');
    const running = judgeTwoState(closed, [
      read('rest', 0.3, { leads: 0.15 }),
      read('operated', 0.3, { leads: 0.15 }),
      read('back-at-rest', 0.3, { leads: 0.15 }),
    ]);
    expect(running).toMatchObject({
      verdict: 'fail',
      advice: ['hold-longer', 'read-again', 'replace-sensor'],
    });
  });
});

describe('Hall throttle sensors, only to be refused', () => {
  /** How one is recognised: common practice, no source; that ohms between its pins mean nothing follows from its data sheets' active parts. */
  test('resistance that depends on polarity, or that doesn’t split in two', () => {
    const track = { endToEnd: 5000, endToEndReversed: 5000, oneToWiper: 1500, otherToWiper: 3600 };
    expect(recognisePotentiometer(track).conclusion).toBe('potentiometer');
    const polar = recognisePotentiometer({ ...track, endToEnd: 1.6e6, endToEndReversed: 9100 });
    expect(polar).toEqual({ conclusion: 'not-one', reasons: ['depends-on-polarity'] });
    const apart = recognisePotentiometer({ ...track, oneToWiper: 400, otherToWiper: 900 });
    expect(apart).toEqual({ conclusion: 'not-one', reasons: ['does-not-split'] });
  });
});
