import { expect, test } from 'vitest';
import type { Levels } from '../movement/levels.js';
import type { Departure } from './departure.js';
import { kindByPlace } from './kindByPlace.js';

/** Ten seconds up and down through the travel again and again, with a fast move in the last one. */
const bins = 1000;
const time = Float64Array.from({ length: bins }, (_, i) => i / 100);
const path = time.map((at) => Math.abs(((at / 2) % 2) - 1));
const fast = new Uint8Array(bins).fill(1, 900);
const levels = { time, interval: 0.01, mean: path, visible: 0.015 } as Levels;

const named = (kind: Departure['kind'], from: number): Departure => ({
  kind,
  from,
  to: from + 1,
  depth: -0.3,
});

/** The next bin after one at which the path comes to a level. */
const next = (after: number, level: number): number =>
  path.findIndex((at, i) => i > after && Math.abs(at - level) < 0.005);

const kindsOf = (departures: readonly Departure[]) =>
  kindByPlace(levels, path, departures, fast).map(({ kind }) => kind);

test('what a place shows in a fast move is what it showed in slow ones', () => {
  const level = path[950]!;
  const slow = path.findIndex((at) => Math.abs(at - level) < 0.005);
  expect(kindsOf([named('step', slow), named('spike', 950)])).toEqual(['step', 'step']);
});

test('a jump is known by the levels that it leads between', () => {
  const step: Departure = { kind: 'step', from: 120, to: 160, depth: 0.4 };
  const middle = (path[120]! + path[160]!) / 2;
  const fastest = path.findIndex((at, i) => i >= 900 && Math.abs(at - middle) < 0.01);
  expect(kindsOf([step, named('dropout', fastest)])).toEqual(['step', 'step']);
});

test('slow departures keep their kind where nothing at their place says otherwise', () => {
  expect(kindsOf([named('spike', 120), named('dropout', 430)])).toEqual(['spike', 'dropout']);
});

test('scatter that all other passes show nothing of is interference', () => {
  const patch = (from: number): Departure => ({ kind: 'rough', from, to: from + 4, depth: 0.1 });
  expect(kindsOf([patch(120)])).toEqual(['spike']);
  const again = next(400, path[120]!);
  expect(kindsOf([patch(120), patch(again)])).toEqual(['rough', 'rough']);
});

test('a spike in a fast move alone is taken for a lost contact', () => {
  expect(kindsOf([named('spike', 950)])).toEqual(['dropout']);
});

test('it stays a spike where slow moves show spikes too', () => {
  expect(kindsOf([named('spike', 120), named('spike', 950)])).toEqual(['spike', 'spike']);
});

test('a wide place that scatters barely visibly is told by all its passes', () => {
  const scatter = [100, 112, 126, 264, 280, 292].map(
    (from, i): Departure =>
      i % 2 === 0
        ? { ...named('spike', from), depth: 0.03 }
        : { ...named('dropout', from), depth: -0.03 },
  );
  const far: Departure = { kind: 'step', from: 60, to: 61, depth: 0.02 };
  expect(kindsOf([far, ...scatter])).toEqual(['step', ...Array(6).fill('rough')]);
  expect(kindsOf(scatter.slice(0, 3))).not.toContain('rough');
});
