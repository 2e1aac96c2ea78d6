import { expect, test } from 'vitest';
import type { Departure } from '../departures/departure.js';
import { expectation } from '../expectation/expectation.js';
import { hookUpLevels } from '../expectation/hookUpLevels.js';
import type { Levels } from '../movement/levels.js';
import { onScale, throttleScale } from '../movement/throttleScale.js';
import { levelReached } from './levelReached.js';

/** A pull-up and a pull-down lift an open wiper to 4.545 V, a broken ground lead takes it to nearly 5 V. */
const circuit = {
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 1e6, pullUp: { ohms: 100_000, from: 'source' as const } },
};
const expected = expectation(circuit);
const scale = throttleScale(expected);

const reached = (volts: number, kind: Departure['kind'] = 'dropout', visible = 0.02) => {
  const path = 0.3;
  const level = onScale(scale, volts);
  const mean = Float64Array.of(path, level, level, path);
  const levels = { mean, visible, rest: scale.rest } as Levels;
  const departure: Departure = { kind, from: 1, to: 2, depth: level - path };
  return levelReached(departure, path, levels, hookUpLevels(circuit), scale);
};

test('a lifted wiper goes to the rest level, dirt toward it', () => {
  expect(reached(4.54)).toEqual({ kind: 'dropout', went: 'to-rest-level' });
  expect(reached(3.5)).toEqual({ kind: 'dropout', went: 'toward-rest-level' });
});

test('what goes beyond the rest level to the one of a broken ground lead is a spike', () => {
  expect(reached(4.97)).toEqual({ kind: 'spike', went: 'to-broken-lead-level' });
  expect(reached(4.7)).toEqual({ kind: 'dropout', went: 'to-rest-level' });
});

test('levels that the recording can’t tell apart leave it a dropout', () => {
  expect(reached(4.97, 'dropout', 0.2).kind).toBe('dropout');
});

test('a spike away from the rest level goes nowhere, or to the level of a broken supply lead', () => {
  expect(reached(0.4, 'spike')).toEqual({ kind: 'spike', went: 'elsewhere' });
  expect(reached(0.05, 'spike').went).toBe('to-broken-lead-level');
  expect(reached(0.05, 'step').went).toBe('elsewhere');
});
