import { describe, expect, test } from 'vitest';
import type { Circuit } from '../circuit/circuit.js';
import { crackTravel } from './crackTravel.js';

const track = 5000;
const base = { source: { volts: 5 }, limiter: 1000 } as const;
const loads = [
  ['no load', {}],
  ['a pull-down', { pullDown: 20_000 }],
  ['a pull-up', { pullUp: { ohms: 10_000, from: 'source' } }],
] as const;

/** What a hook-up reads with a resistance in the track below the wiper and one above it, by Kirchhoff's node equation. */
function reading(load: Circuit['load'], position: number, below: number, above: number): number {
  const up = 1 / (base.limiter + (1 - position) * track + above);
  const down = 1 / (position * track + below);
  const pullUp = load.pullUp ? 1 / load.pullUp.ohms : 0;
  const pullDown = load.pullDown ? 1 / load.pullDown : 0;
  return (5 * (up + pullUp)) / (up + down + pullUp + pullDown);
}

describe('crackTravel', () => {
  test.each(loads)(
    'finds a resistance across the track by the readings beside it, with %s',
    (_, load) => {
      for (const [closedPosition, openPosition] of [
        [0.1, 0.85],
        [0.9, 0.12],
      ] as const)
        for (const crack of [100, 1500, 40_000])
          for (const travel of [0.2, 0.7]) {
            const at = closedPosition + travel * (openPosition - closedPosition);
            const volts = (position: number, isBelow: boolean) =>
              isBelow ? reading(load, position, 0, crack) : reading(load, position, crack, 0);
            const rises = openPosition > closedPosition;
            // The sensor's own stops lie a little off from where its maker has them.
            const [closed, open] = [closedPosition + 0.01, openPosition - 0.01];
            const found = crackTravel(
              {
                closedSide: volts(at, rises),
                openSide: volts(at, !rises),
                closedStop: volts(closed, rises),
                openStop: volts(open, !rises),
              },
              { ...base, sensor: { track, closedPosition, openPosition }, load },
            );
            expect(found?.travel).toBeCloseTo((at - closed) / (open - closed), 4);
            expect(found?.stopsOff).toBeCloseTo(0.02 / Math.abs(openPosition - closedPosition), 4);
          }
    },
  );

  test('takes stops at which it did not rest to be the sensor’s', () => {
    const sensor = { track, closedPosition: 0.1, openPosition: 0.85 };
    const beside = { closedSide: reading({}, 0.4, 0, 900), openSide: reading({}, 0.4, 900, 0) };
    expect(crackTravel(beside, { ...base, sensor, load: {} })?.travel).toBeCloseTo(0.4, 6);
  });

  test('stays on the travel, and finds none where both stops are read at one place', () => {
    const circuit = {
      ...base,
      sensor: { track, closedPosition: 0.1, openPosition: 0.85 },
      load: {},
    };
    const beside = { closedSide: reading({}, 0.4, 0, 900), openSide: reading({}, 0.4, 900, 0) };
    const before = reading({}, 0.5, 0, 900);
    expect(crackTravel({ ...beside, closedStop: before }, circuit)?.travel).toBe(0);
    const [closedStop, openStop] = [reading({}, 0.4, 0, 900), reading({}, 0.4, 900, 0)];
    const same = crackTravel({ ...beside, closedStop, openStop }, circuit)?.travel ?? 0;
    expect(same).toBeGreaterThanOrEqual(0);
    expect(same).toBeLessThanOrEqual(1);
  });

  test('finds no place where the crack is open, or where readings fall beyond it', () => {
    const circuit = { ...base, sensor: { track }, load: { pullDown: 1e6 } };
    expect(crackTravel({ closedSide: 0, openSide: 5 }, circuit)).toBeUndefined();
    expect(crackTravel({ closedSide: 2, openSide: 1.5 }, circuit)).toBeUndefined();
  });
});
