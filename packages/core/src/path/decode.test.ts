import { describe, expect, test } from 'vitest';
import type { ContactLevels } from '../contact/contactLevels.js';
import type { Levels } from '../movement/levels.js';
import { plainLevels } from '../movement/plainLevels.js';
import { decode } from './decode.js';
import { evidenceOf } from './evidenceOf.js';

const contact: ContactLevels = { rest: -0.1, supply: undefined, ground: () => 1.3, range: 1.6 };
const stops = { closed: 0, open: 1 };

/** Two seconds at 1 ms. */
function recording(level: (at: number) => number): Levels {
  const time = Float64Array.from({ length: 2001 }, (_, i) => i / 1000);
  return plainLevels(time, time.map(level));
}

const opening = (at: number) => Math.min(1, 0.1 + 0.4 * at);
const within = (at: number, from: number, to: number) => at >= from && at < to;

/** A fall by the spring from wide open in a time, with rebounds of a fifth of its speed's square. */
function fall(seconds: number, restitution = 0.45) {
  const acceleration = 2 / seconds ** 2;
  return (at: number): number => {
    let since = at - 1;
    if (since < 0) return 1;
    if (since < seconds) return 1 - (acceleration * since ** 2) / 2;
    since -= seconds;
    let speed = restitution * acceleration * seconds;
    while (speed > 0.5) {
      const flight = (2 * speed) / acceleration;
      if (since < flight) return speed * since - (acceleration * since ** 2) / 2;
      since -= flight;
      speed *= restitution;
    }
    return 0;
  };
}

const eventsOf = (level: (at: number) => number) => decode(recording(level), contact, stops).events;

describe('decode', () => {
  test('an opening by hand, its waviness and a tremor have no events', () => {
    expect(eventsOf(opening)).toEqual([]);
    const tremor = (at: number) => 0.005 * Math.sin(2 * Math.PI * 10 * at);
    expect(eventsOf((at) => opening(at) + tremor(at))).toEqual([]);
  });

  test.each([8, 10, 12, 20, 40, 80, 150, 300])(
    'a fall of %i ms with its rebounds is mechanics, whatever its recorder',
    (milliseconds) => {
      expect(eventsOf(fall(milliseconds / 1000))).toEqual([]);
    },
  );

  test('thrown open, back from the stop, and fallen shut is no event', () => {
    const flick = (at: number): number => {
      const since = at - 1;
      if (since < 0) return 0;
      if (since < 0.04) return (since / 0.04) ** 2;
      return Math.max(0, 1 - 6 * (since - 0.04) - 250 * (since - 0.04) ** 2);
    };
    expect(eventsOf(flick)).toEqual([]);
  });

  test('struck open, so that it flies off at once, is no event', () => {
    const struck = (at: number): number => {
      const since = Math.max(0, at - 1.0004);
      return Math.max(0, Math.min(1, 18 * since - 90 * since ** 2));
    };
    expect(eventsOf(struck)).toEqual([]);
  });

  test('a signal that stood and leaps on toward open is thrown by no spring', () => {
    const leaping = (at: number): number => {
      if (at < 1.0547) return opening(Math.min(at, 1));
      return opening(1) + Math.min(0.06, 25 * (at - 1.0547)) + 0.4 * (at - 1.0547);
    };
    expect(eventsOf(leaping)).toHaveLength(1);
  });

  test('a lifted wiper, a broken ground lead and a foreign pulse are told by where the signal goes', () => {
    const state = (level: number) =>
      eventsOf((at) => (within(at, 1, 1.008) ? level : opening(at))).map((one) => one.state);
    expect(state(-0.1)).toEqual(['lifted']);
    expect(state(1.3)).toEqual(['ground']);
    expect(state(0.9)).toEqual(['foreign']);
  });

  test('a lifted wiper is off the path for the bins that it was lifted', () => {
    expect(eventsOf((at) => (within(at, 1, 1.008) ? -0.1 : opening(at)))).toEqual([
      { kind: 'excursion', state: 'lifted', from: 1000, to: 1007 },
    ]);
  });

  test('a dropout within a fall is found, and the fall goes on', () => {
    const closing = fall(0.06);
    expect(eventsOf((at) => (within(at, 1.02, 1.024) ? -0.1 : closing(at)))).toMatchObject([
      { kind: 'excursion', state: 'lifted', from: 1020, to: 1023 },
    ]);
  });

  test('a crack is a jump, also where it is crossed in some milliseconds', () => {
    const jump = { kind: 'jump', from: 999, to: 1000 };
    expect(eventsOf((at) => opening(at) + (at < 1 ? 0 : 0.1))).toMatchObject([jump]);
    const ramp = (at: number) => 0.1 * Math.min(1, Math.max(0, (at - 1) / 4e-3));
    expect(eventsOf((at) => opening(at) + ramp(at))).toMatchObject([{ kind: 'jump' }]);
  });

  test.each([8, 20])(
    'a fall of %i ms from beyond the end of the recorder’s range has no event',
    (milliseconds) => {
      const falls = fall(milliseconds / 1000);
      const levels = recording((at) => Math.min(0.6, falls(at)));
      const clipped = { ...levels, clip: { low: -0.2, high: 0.6 } };
      expect(decode(clipped, contact, { closed: 0, open: Infinity }).events).toEqual([]);
    },
  );

  test('what a fall and a catch may be between far samples is a dropout where the contact is known to break', () => {
    const time = Float64Array.from({ length: 401 }, (_, i) => i * 5e-3);
    const mean = time.map((at, i) => 0.02 + 0.45 * at - (i === 50 ? 0.04 : 0));
    const levels = { ...plainLevels(time, mean), noise: 3e-3, sampleNoise: 3e-3, visible: 0.03 };
    expect(decode(levels, contact, stops).events).toEqual([]);
    const place = { low: 0.12, high: 0.14, state: 'lifted' } as const;
    expect(decode(levels, contact, stops, [place]).events).toEqual([
      { kind: 'excursion', state: 'lifted', from: 50, to: 50 },
    ]);
  });

  test('after a gap the throttle may be anywhere', () => {
    const { time, ...levels } = recording((at) => (at < 1 ? 0.1 : 0.8));
    const later = time.map((at) => (at < 1 ? at : at + 0.4));
    expect(decode({ ...levels, time: later }, contact, stops).events).toEqual([]);
  });

  test('where no contact may break the cheapest explanation has no event and costs more', () => {
    const levels = recording((at) => (within(at, 1, 1.008) ? -0.1 : opening(at)));
    const part = { from: 0, until: 2001, soundFrom: 990, soundTo: 1010 };
    const without = decode(levels, contact, stops, [], part);
    expect(without.events).toEqual([]);
    expect(without.cost).toBeGreaterThan(decode(levels, contact, stops).cost + 20);
  });
});

describe('evidenceOf', () => {
  test('grows with the depth of a dropout', () => {
    const evidence = [0.02, 0.05, 0.2].map((depth) => {
      const levels = recording((at) => opening(at) - (within(at, 1, 1.004) ? depth : 0));
      const [event] = decode(levels, contact, stops).events;
      return evidenceOf(event!, levels, contact, stops);
    });
    expect(evidence).toEqual([...evidence].sort((a, b) => a - b));
    expect(evidence[0]).toBeGreaterThan(3);
  });
});
