import { expect, test } from 'vitest';
import type { WorldCase } from '../worlds/worldCase.js';
import { nonSweep, nonSweepNames } from './nonSweeps.js';
import { playHabit } from './playHabit.js';

const cases = Array.from({ length: 24 }, (_, seed) => playHabit(seed));
const seconds = ({ sweep }: WorldCase) => sweep.time;

/** The first sound case of a kind, and its seed. */
function firstWith(factors: Readonly<Record<string, string>>): WorldCase {
  for (let seed = 0; ; seed += 2) {
    const played = seed < cases.length ? cases[seed]! : playHabit(seed);
    if (Object.entries(factors).every(([name, value]) => played.factors[name] === value))
      return played;
  }
}

test('a seed plays the same again', () => {
  for (const seed of [3, 8]) expect(playHabit(seed)).toEqual(cases[seed]);
  for (const seed of [1, 6]) expect(nonSweep(seed)).toEqual(nonSweep(seed));
});

test('every case is finite, in step and in order', () => {
  for (const { seed, sound, sweep, events, bounces, verdicts, visible } of cases) {
    expect(sound).toBe(seed % 2 === 0);
    expect(sweep.signal).toHaveLength(sweep.time.length);
    expect([...sweep.signal, ...sweep.time].every(Number.isFinite)).toBe(true);
    expect(verdicts.length).toBeGreaterThan(0);
    expect(visible).toBeGreaterThanOrEqual(0.015 - 1e-9);
    for (const { start, end } of [...events, ...bounces]) expect(end).toBeGreaterThanOrEqual(start);
    for (const { ratio, speed } of events) expect(ratio + speed).toBeGreaterThan(0);
  }
});

test('a sound sensor that was recorded well passes, has no events and lies within its windows', () => {
  for (const { sound, adequate, verdicts, events, expected, sweep, visible } of cases) {
    if (!sound) continue;
    expect(events).toEqual([]);
    expect(verdicts).not.toContain('fail');
    if (adequate !== true) continue;
    expect(verdicts).toEqual(['pass']);
    const { closed, open } = expected.windows;
    const span = Math.abs(open.nominal - closed.nominal);
    const sorted = sweep.signal.slice().sort();
    const ends = [
      sorted[Math.floor(0.01 * sorted.length)]!,
      sorted[Math.ceil(0.99 * sorted.length) - 1]!,
    ];
    for (const { low, high } of [closed, open])
      expect(
        ends.some((volts) => volts > low - visible * span && volts < high + visible * span),
      ).toBe(true);
  }
});

test('a recording too slow or never open must not pass', () => {
  for (const { sound, adequate, verdicts } of cases)
    if (sound && adequate === false) expect(verdicts).toContain('inconclusive');
  expect(firstWith({ habit: 'one stroke' }).verdicts).toContain('inconclusive');
  expect(firstWith({ recorder: 'meter' }).adequate).toBe(false);
});

test('least and most of an interval bear one stamp, the least first', () => {
  const pairs = firstWith({ export: 'pairs', stamps: 'even', loss: 'none' });
  const { time, signal } = pairs.sweep;
  for (let i = 0; i + 1 < time.length; i += 2) {
    expect(time[i + 1]).toBe(time[i]);
    expect(signal[i + 1]).toBeGreaterThanOrEqual(signal[i]!);
  }
});

test('clocks slip, and stamps are shared, as their names say', () => {
  const falls = (time: Float64Array) =>
    time.reduce((n, t, i) => n + (i > 0 && t < time[i - 1]! ? 1 : 0), 0);
  const shared = (time: Float64Array) =>
    time.reduce((n, t, i) => n + (t === time[i - 1] ? 1 : 0), 0);
  const backwards = seconds(firstWith({ stamps: 'backwards' }));
  expect(falls(backwards)).toBeGreaterThanOrEqual(1);
  expect(falls(backwards)).toBeLessThan(backwards.length / 1000 + 2);
  const coarse = firstWith({ stamps: '10 ms' });
  expect(shared(seconds(coarse))).toBeGreaterThan(0.4 * coarse.sweep.time.length);
  expect(falls(seconds(firstWith({ stamps: 'even' })))).toBe(0);
});

test('every kind of recording that is no sweep is made', () => {
  for (let seed = 0; seed < nonSweepNames.length; seed++) {
    const { name, sweep } = nonSweep(seed);
    expect(name).toBe(nonSweepNames[seed]);
    expect([...sweep.signal, ...sweep.time].every(Number.isFinite)).toBe(true);
  }
});
