import { expect, test } from 'vitest';
import { eventOutcomes, fairVerdicts, restOutcomes, type SeenEvent } from './fairVerdicts.js';
import { playPlate } from './playPlate.js';

test('the same seed plays the same recording', () => {
  for (const seed of [4, 7]) {
    const [one, other] = [playPlate(seed), playPlate(seed)];
    expect(
      Buffer.from(one.sweep.signal.buffer).equals(Buffer.from(other.sweep.signal.buffer)),
    ).toBe(true);
    expect({ ...one, sweep: 0 }).toEqual({ ...other, sweep: 0 });
  }
});

test('recordings are in order and sound ones are never to be failed', () => {
  for (let seed = 0; seed < 8; seed++) {
    const { sweep, sound, events, verdicts, visible, bounces, adequate } = playPlate(seed);
    const { time, signal } = sweep;
    expect(time.length).toBe(signal.length);
    expect(
      signal.every((volts, i) => Number.isFinite(volts) && time[i]! >= (time[i - 1] ?? 0)),
    ).toBe(true);
    expect(sound).toBe(seed % 2 === 0);
    expect(verdicts.length).toBeGreaterThan(0);
    expect(visible).toBeGreaterThanOrEqual(0.015);
    if (sound) {
      expect(events).toEqual([]);
      expect(verdicts).not.toContain('fail');
      if (adequate) expect(verdicts).toEqual(['pass']);
      if (adequate === false) expect(verdicts).not.toContain('pass');
    }
    for (const { start, end } of [...events, ...bounces]) {
      expect(end).toBeGreaterThanOrEqual(start);
      expect(start).toBeGreaterThan(time[0]! - 0.1);
      expect(end).toBeLessThan(time.at(-1)! + 0.1);
    }
  }
});

const event = (start: number, more: Partial<SeenEvent> = {}): SeenEvent => ({
  kinds: ['dropout'],
  start,
  end: start + 0.02,
  from: 0.2,
  to: 0.21,
  ratio: 4,
  fast: false,
  speed: 0.5,
  samples: 10,
  swept: 5e-4,
  ...more,
});

test('departures that repeat fail, a single one must be settled, a faint one is a matter of opinion', () => {
  expect(eventOutcomes([], 0.015)).toEqual(['conforms']);
  expect(eventOutcomes([event(1), event(2)], 0.015)).toEqual(['fails']);
  expect(eventOutcomes([event(1)], 0.015)).toEqual(['marginal', 'fails']);
  expect(eventOutcomes([event(1, { ratio: 1 })], 0.015)).toEqual(['marginal', 'conforms']);
  expect(eventOutcomes([event(1, { fast: true })], 0.015)).toContain('conforms');
  expect(eventOutcomes([event(1, { kinds: ['dead-spot'] })], 0.015)).toContain('conforms');
});

test('a poor recording never passes, and what it surely shows may still fail', () => {
  expect(fairVerdicts([['conforms']], true)).toEqual(['pass']);
  expect(fairVerdicts([['conforms']], false)).toEqual(['inconclusive']);
  expect(fairVerdicts([['conforms'], ['fails']], false)).toEqual(['fail', 'inconclusive']);
  expect(fairVerdicts([['conforms', 'marginal']], undefined)).toEqual([
    'marginal',
    'pass',
    'inconclusive',
  ]);
  expect(restOutcomes(0.02, 5, false)).toEqual(['conforms']);
  expect(restOutcomes(0.09, 2, false)).toEqual(['fails']);
});
