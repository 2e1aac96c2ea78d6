import { describe, expect, test } from 'vitest';
import { judgeTwoState } from './judgeTwoState.js';
import type { TwoStateAt, TwoStateReading } from './twoStateReading.js';
import type { TwoStateSensor } from './twoStateSensor.js';

const lean: TwoStateSensor = {
  kind: 'volts',
  rest: { low: 0.4, high: 1.4 },
  operated: { low: 3.7, high: 4.4 },
  latched: true,
  bothWays: true,
};
const read = (
  state: TwoStateAt,
  value: number,
  more: Partial<TwoStateReading> = {},
): TwoStateReading => ({ state, value, uncertainty: 0.02, ...more });
const sound = [
  read('rest', 1),
  read('operated', 4),
  read('operated-other-way', 4.1),
  read('back-at-rest', 4),
  read('key-cycled', 1),
];
const without = (state: TwoStateAt) => sound.filter((reading) => reading.state !== state);
const withValue = (state: TwoStateAt, value: number) =>
  sound.map((reading) => (reading.state === state ? { ...reading, value } : reading));

const stand: TwoStateSensor = {
  kind: 'ohms',
  rest: { high: 0.5 },
  operated: { low: 1e6 },
  latched: false,
  bothWays: false,
};
const contact = (rest: number, operated: number, back: number, leads?: number) =>
  judgeTwoState(
    stand,
    (
      [
        ['rest', rest],
        ['operated', operated],
        ['back-at-rest', back],
      ] as const
    ).map(([state, value]) => read(state, value, leads === undefined ? {} : { leads })),
  );

describe('judgeTwoState', () => {
  test('all states right: a pass that says what it does not', () => {
    const { verdict, checks, advice, unsaid } = judgeTwoState(lean, sound);
    expect([verdict, advice]).toEqual(['pass', []]);
    expect(checks.map(({ check }) => check)).toEqual(sound.map(({ state }) => state));
    expect(unsaid).toEqual(['vibration', 'bounce', 'change-angle']);
    expect(checks[3]).toMatchObject({ lowLimit: 3.7, highLimit: 4.4, unit: 'V' });
    expect(checks[3]!.margin).toBeCloseTo(0.3, 12);
  });

  test.each(sound.map(({ state }) => state))('without %s it can’t be told', (state) => {
    const { verdict, advice, checks } = judgeTwoState(lean, without(state));
    expect([verdict, advice]).toEqual(['inconclusive', [`read-${state}`]]);
    expect(checks.at(-1)).toMatchObject({ check: state, outcome: 'cannot-tell' });
    expect(checks.at(-1)!.measured).toBeUndefined();
  });

  test('nothing read yet: all that is to be read, in order', () => {
    const { verdict, advice } = judgeTwoState(
      { ...lean, changesBetween: { low: 60, high: 70 } },
      [],
    );
    expect(verdict).toBe('inconclusive');
    expect(advice).toEqual([
      'read-rest',
      'read-operated',
      'read-operated-other-way',
      'read-back-at-rest',
      'read-key-cycled',
      'read-change-angle',
    ]);
  });

  test('one that needs no other lean and doesn’t latch is asked for neither', () => {
    const plain = { ...lean, latched: false, bothWays: false };
    const { verdict, unsaid } = judgeTwoState(plain, [
      read('rest', 1),
      read('operated', 4),
      read('back-at-rest', 1),
    ]);
    expect(verdict).toBe('pass');
    expect(unsaid).toContain('other-way');
  });

  test('between the windows it fails', () => {
    expect(judgeTwoState(lean, withValue('operated', 2.5))).toMatchObject({
      verdict: 'fail',
      advice: ['read-again', 'replace-sensor'],
    });
  });

  test('tilted it stays as at rest: hold it longer, beyond the angle', () => {
    expect(judgeTwoState(lean, withValue('operated-other-way', 1))).toMatchObject({
      verdict: 'fail',
      advice: ['hold-longer', 'read-again', 'replace-sensor'],
    });
  });

  test('a latch that lets go by itself, and one where none should be', () => {
    expect(judgeTwoState(lean, withValue('back-at-rest', 1)).verdict).toBe('fail');
    const { verdict, advice } = judgeTwoState({ ...lean, latched: false }, sound);
    expect([verdict, advice]).toEqual(['fail', ['cycle-key', 'read-again', 'replace-sensor']]);
  });

  test('each state reads as the other should: the polarity is not fixed', () => {
    const swapped = sound.map((reading) => ({ ...reading, value: 5 - reading.value }));
    const wide = { ...lean, operated: { low: 3.6, high: 4.6 } };
    expect(judgeTwoState(wide, swapped)).toMatchObject({
      verdict: 'fail',
      advice: ['states-swapped', 'read-again', 'replace-sensor'],
    });
  });

  test('the angle at which it changes is judged where it is told', () => {
    const angled = { ...lean, changesBetween: { low: 60, high: 70 } };
    const at = (changedAt: number, angleUncertainty = 0.5) =>
      judgeTwoState(angled, [
        read('operated', 4, { changedAt, angleUncertainty }),
        ...without('operated'),
      ]);
    expect(at(65).verdict).toBe('pass');
    expect(at(65).checks[1]).toMatchObject({ check: 'change-angle', unit: '°', measured: 65 });
    expect(at(75).verdict).toBe('fail');
    expect(at(69, 3)).toMatchObject({ verdict: 'inconclusive', advice: ['better-angle'] });
    expect(judgeTwoState(angled, sound).advice).toEqual(['read-change-angle']);
    // Read in one direction, it says nothing of the other.
    expect(at(65).unsaid).toContain('change-angle-other-way');
    const both = sound.map((reading) =>
      /^operated/.test(reading.state)
        ? { ...reading, changedAt: 65, angleUncertainty: 0.5 }
        : reading,
    );
    expect(judgeTwoState(angled, both).unsaid).toEqual(['vibration', 'bounce']);
    expect(judgeTwoState({ ...angled, bothWays: false }, both).unsaid).not.toContain(
      'change-angle-other-way',
    );
  });

  test('as a ratio to the supply beside it', () => {
    const ratio: TwoStateSensor = {
      ...lean,
      kind: 'ratio',
      rest: { low: 0.1, high: 0.3 },
      operated: { low: 0.7, high: 0.9 },
    };
    const fed = (supply: number, supplyUncertainty: number) =>
      judgeTwoState(
        ratio,
        sound.map((reading) => ({ ...reading, supply, supplyUncertainty })),
      );
    const { verdict, checks } = fed(5, 0.01);
    expect(verdict).toBe('pass');
    expect(checks[1]).toMatchObject({ unit: '1', measured: 0.8 });
    expect(checks[1]!.uncertainty).toBeCloseTo(Math.hypot(0.02 / 5, (0.8 * 0.01) / 5), 12);
    expect(fed(5, 0.3).advice).toEqual(['measure-supply']);
    expect(() => judgeTwoState(ratio, sound)).toThrow(
      expect.objectContaining({ path: 'readings[0].supply', code: 'missing' }),
    );
  });

  test('a contact, the leads taken off', () => {
    expect(contact(0.5, Infinity, 0.4, 0.2).verdict).toBe('pass');
    expect(contact(0.5, Infinity, 0.8, 0.2).verdict).toBe('fail');
    expect(contact(0.5, 62_000, 0.4, 0.2).verdict).toBe('fail');
    expect(contact(Infinity, Infinity, 0.4, 0.2)).toMatchObject({
      verdict: 'fail',
      advice: ['read-again', 'replace-sensor'],
    });
    // 0.65 Ω less 0 to 0.2 Ω: whether the limit of 0.5 Ω is kept, the leads decide.
    expect(contact(0.65, Infinity, 0.65)).toMatchObject({
      verdict: 'marginal',
      advice: ['measure-leads'],
    });
    expect(contact(0.1, Infinity, 0.1, 0.2).checks[0]!.measured).toBe(0);
  });

  test.each([
    [{ ...lean, operated: { low: 1.2, high: 4 } }, [], 'sensor.operated', 'out-of-order'],
    [{ ...lean, operated: { high: 4 } }, [], 'sensor.operated', 'out-of-order'],
    [{ ...lean, rest: {} }, [], 'sensor.rest.low', 'missing'],
    [
      { ...lean, changesBetween: { low: 70, high: 60 } },
      [],
      'sensor.changesBetween.low',
      'out-of-order',
    ],
    [lean, [read('rest', 1, { changedAt: 5 })], 'readings[0].changedAt', 'unexpected'],
    [lean, [read('rest', 1, { leads: 0.1 })], 'readings[0].leads', 'unknown-field'],
    [lean, [read('rest', Infinity)], 'readings[0].value', 'not-finite'],
  ] as const)('refuses %j with %j at %s', (sensor, readings, path, code) => {
    expect(() => judgeTwoState(sensor, readings)).toThrow(expect.objectContaining({ path, code }));
  });
});
