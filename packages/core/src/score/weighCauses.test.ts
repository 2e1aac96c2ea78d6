import { describe, expect, test } from 'vitest';
import type { ContactEvent, Goal, Goals, Pass, TimeSpent } from './contactEvent.js';
import { morePasses } from './morePasses.js';
import { sharesOf, weighCauses } from './weighCauses.js';

/** Six passes of a second each in twelve seconds. */
const passes: readonly Pass[] = Array.from({ length: 6 }, () => ({ low: 0, high: 1, snap: false }));
const spent: TimeSpent = { whole: 12, resting: 6, flexed: 0, tapped: 0 };

/** On a pull-down a lifted wiper and a broken supply lead leave one level, a broken ground lead another. */
const goal = (part: number): Goal => ({ part, slack: 0.03, isFull: part === 1 });
const full: Goals = { wiper: goal(1), supply: goal(1) };
const part: Goals = { wiper: goal(0.3), supply: goal(0.3) };

const event = (
  travel: number,
  pass: number | undefined,
  more: Partial<ContactEvent> = {},
): ContactEvent => ({
  finding: pass ?? 9,
  time: 1 + 2 * (pass ?? 0),
  travel,
  speed: pass === undefined ? 0 : 1,
  pass,
  extent: 0,
  jump: false,
  depth: 0.3,
  goals: full,
  long: true,
  ...more,
});
const weights = (events: readonly ContactEvent[], time = spent) =>
  sharesOf(weighCauses({ events, passes, spent: time, sameTravel: 0.03 }));
/** How many times as probable as all others together a cause is. */
const odds = (share: number): number => share / (1 - share);

describe('weighCauses', () => {
  test('the same travel on several passes is the track', () => {
    expect(weights([event(0.1, 0), event(0.11, 2), event(0.09, 4)]).track).toBeGreaterThan(0.95);
  });

  test('other travel each time, or at rest, is a connection', () => {
    const scattered = [event(0.1, 0), event(0.5, 1), event(0.8, 3)];
    expect(weights(scattered).connection).toBeGreaterThan(0.7);
    const resting = weights([event(0, undefined)]).connection;
    expect(odds(resting)).toBeGreaterThan(1.5);
    expect(odds(resting)).toBeGreaterThan(1.5 * odds(weights([event(0.1, 0)]).connection));
  });

  test('at rest on a spot that passes show speaks neither for the track nor against it', () => {
    const shown = [event(0.7, 0), event(0.71, 2)];
    const track = (travel: number) => weights([...shown, event(travel, undefined)]).track;
    expect(track(0.7)).toBeGreaterThan(0.75 * weights(shown).track);
    expect(odds(track(0.7))).toBeGreaterThan(10 * odds(track(0.3)));
  });

  test('both ways at any travel is interference', () => {
    const both = [
      event(0.1, 0, { goals: part, long: false }),
      event(0.6, 2, { goals: {}, long: false }),
      event(0.8, 3, { goals: {}, long: false }),
    ];
    expect(weights(both).interference).toBeGreaterThan(0.95);
  });

  test('what scatters both ways while the throttle rests is interference', () => {
    const burst = { goals: {}, scatter: true } as const;
    const bursts = [
      event(0.2, undefined, { ...burst, finding: 0, time: 2 }),
      event(0.9, undefined, { ...burst, finding: 1, time: 5 }),
      event(0.5, 4, { ...burst, finding: 2, time: 9 }),
    ];
    expect(weights(bursts).interference).toBeGreaterThan(0.9);
  });

  test('pulses of one size at any level are foreign, parts of the way that are alike a contact', () => {
    const places = [0.15, 0.35, 0.55, 0.75, 0.95, 0.25];
    const pulses = (depth: (way: number) => number) =>
      weights(
        places.map((way, i) =>
          event(way, i, {
            finding: i,
            depth: depth(way),
            goals: { wiper: goal(depth(way) / way) },
            long: false,
          }),
        ),
      );
    const same = pulses(() => 0.1).interference;
    const share = pulses((way) => 0.4 * way).interference;
    expect(odds(same)).toBeGreaterThan(20 * odds(share));
    expect(share).toBeLessThan(0.3);
  });

  test('pulses both ways of like size are foreign though some end near the level of a lifted wiper', () => {
    const toward = (level: number, depth: number): Goals => ({
      wiper: {
        part: depth / (1.13 - level),
        slack: 0.034,
        isFull: Math.abs(1.13 - level - depth) <= 0.034,
      },
    });
    const pulse = (level: number, depth: number, isBack: boolean, finding: number): ContactEvent =>
      event(level, level < 1 ? 2 : undefined, {
        finding,
        depth,
        goals: isBack ? toward(level, depth) : {},
        long: false,
      });
    const atOpen = [0.092, 0.046, 0.08, 0.046, 0.043];
    const { interference } = weights([
      ...atOpen.map((depth, i) => pulse(1, depth, true, i)),
      pulse(0.3, 0.07, true, 5),
      pulse(0.38, 0.13, false, 6),
      pulse(0.62, 0.1, false, 7),
    ]);
    expect(interference).toBeGreaterThan(0.8);
  });

  test('scatter that goes over much travel on each pass is at one place', () => {
    const wide = (extent: number) =>
      weights(
        [0.2, 0.3, 0.24, 0.35, 0.27].map((travel, i) =>
          event(travel, i, { extent, goals: {}, scatter: true }),
        ),
      );
    expect(wide(0.2).track).toBeGreaterThan(0.5);
    expect(wide(0.2).track).toBeGreaterThan(wide(0.005).track);
  });

  test('one event alone stays undecided between track and connection', () => {
    const { track, connection } = weights([event(0.1, 0)]);
    expect(track / connection).toBeGreaterThan(0.2);
    expect(track / connection).toBeLessThan(5);
  });

  test('a spot seen on some passes and one foreign pulse are told apart', () => {
    const events = [
      event(0.1, 0),
      event(0.1, 1),
      event(0.1, 2),
      event(0.7, 3, { finding: 3, goals: {}, long: false }),
    ];
    const [best] = weighCauses({ events, passes, spent, sameTravel: 0.03 });
    expect(best!.sources).toEqual(['track', 'interference']);
    expect([...best!.foreign]).toEqual([3]);
  });

  test('long breaks of a lead and short pulses toward the rest level are told apart', () => {
    const short = { goals: part, long: false } as const;
    const away = { goals: {}, long: false } as const;
    const events = [
      event(0.3, 0, { finding: 0 }),
      event(0.6, 1, { ...short, finding: 1 }),
      event(0.1, 2, { ...away, finding: 2 }),
      event(0.5, 3, { ...away, finding: 3 }),
      event(0.9, 4, { finding: 4 }),
      event(0.2, 5, { finding: 5 }),
    ];
    const [best] = weighCauses({ events, passes, spent, sameTravel: 0.03 });
    expect(best!.sources).toEqual(['connection', 'interference']);
    expect([...best!.foreign]).toEqual([1, 2, 3]);
  });

  test('breaks while the harness is flexed speak for the connection, while the housing is tapped for the track', () => {
    const resting = event(0, undefined);
    const flexed = weights([{ ...resting, stretch: 'harness-flexed' }], { ...spent, flexed: 1 });
    const tapped = weights([{ ...resting, stretch: 'housing-tapped' }], { ...spent, tapped: 1 });
    expect(flexed.connection).toBeGreaterThan(weights([resting]).connection);
    expect(odds(tapped.track)).toBeGreaterThan(5 * odds(weights([resting]).track));
  });

  test('many short pulses to one side are a dirty lead’s, as many to both sides interference', () => {
    const pulses = (goals: (i: number) => Goals) =>
      weights(
        Array.from({ length: 12 }, (_, i) =>
          event(((i + 1) * 0.618) % 1, i % 6, { finding: i, goals: goals(i), long: false }),
        ),
      );
    expect(pulses(() => part).connection).toBeGreaterThan(0.9);
    expect(pulses((i) => (i % 2 ? part : {})).interference).toBeGreaterThan(0.9);
  });

  test('the weights add up to 1', () => {
    const { track, connection, interference } = weights([
      event(0.3, 0),
      event(0.5, 1, { goals: part, long: false }),
    ]);
    expect(track + connection + interference).toBeCloseTo(1, 12);
  });
});

describe('morePasses', () => {
  const few = { passes, spent, sameTravel: 0.03 };

  test('none where the question is settled, some where it is open, none to name without an event', () => {
    const settled = [event(0.1, 0), event(0.1, 1), event(0.1, 2), event(0.1, 3)];
    expect(morePasses({ ...few, events: settled })).toBe(0);
    expect(morePasses({ ...few, events: [event(0.1, 0)] })).toBeGreaterThan(0);
    expect(morePasses({ ...few, events: [event(0.1, 0), event(0.6, 2)] })).toBeGreaterThan(0);
    expect(morePasses({ ...few, events: [] })).toBeUndefined();
  });

  test('settled is what the tempered odds say: one 20 times as probable as the other', () => {
    const at = (count: number) => Array.from({ length: count }, (_, i) => event(0.1, i));
    const settled = [1, 2, 3, 4, 5, 6].map((count) => {
      const { track, connection } = weights(at(count));
      expect(morePasses({ ...few, events: at(count) }) === 0).toBe(track >= 20 * connection);
      return track >= 20 * connection;
    });
    expect(new Set(settled)).toEqual(new Set([true, false]));
  });

  test('so many more passes of a worn track are enough, as a rule', () => {
    const once = [event(0.1, 0)];
    const more = morePasses({ ...few, events: once })!;
    const all = [...passes, ...Array.from({ length: more }, () => passes[0]!)];
    const grown = { ...spent, whole: 2 * all.length, resting: all.length };
    // As often as it may well show, having shown on one of six.
    const again = Array.from({ length: Math.round(more / 4) }, (_, i) => event(0.1, 6 + i));
    const { track, connection } = sharesOf(
      weighCauses({ events: [...once, ...again], passes: all, spent: grown, sameTravel: 0.03 }),
    );
    expect(track / connection).toBeGreaterThan(20);
  });
});
