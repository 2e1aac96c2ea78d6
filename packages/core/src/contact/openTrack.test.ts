import { describe, expect, it } from 'vitest';
import { expectation } from '../expectation/expectation.js';
import { scoreSweep } from '../score/scoreSweep.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.85 },
  load: { pullDown: 1e6 },
};
const expected = expectation(circuit, { closedPosition: 0.02, openPosition: 0.03 });

/** A reading for each travel while a hand opens and closes five times, 2 kS/s, with a millivolt of noise. */
function recorded(reading: (travel: number, time: number) => number, interval = 5e-4) {
  const length = Math.round(20 / interval);
  const time = Float64Array.from({ length }, (_, i) => i * interval);
  const signal = time.map((at, i) => {
    const phase = (at % 4) / 4;
    const raised = Math.min(1, Math.max(0, 2.5 * Math.min(phase - 0.1, 0.9 - phase)));
    return reading(raised * raised * (3 - 2 * raised), at) + 0.001 * (((i * 7919) % 13) / 6 - 1);
  });
  return { time, signal };
}

/** With the supply lead broken the wiper meets the ground end, with the ground lead broken the supply end, by hand: no current but the load's. */
const below = 0;
const above = (travel: number): number => {
  const rest = 5000 * (1 - (0.1 + 0.75 * travel));
  return (5 * 1e6) / (1e6 + 1000 + rest);
};

describe('a track that is open at one place', () => {
  it('leaps between two levels: the track fails, at no place that is told', () => {
    const score = scoreSweep(
      recorded((travel) => (travel < 0.4 ? below : above(travel))),
      expected,
    );
    expect(score.verdict).toBe('fail');
    expect(score.causes[0]?.cause).toBe('track');
    expect(score.findings).toHaveLength(10);
    expect(score.findings.every(({ kind, unplaced }) => kind === 'step' && unplaced)).toBe(true);
    expect(score.findings.map(({ during }) => during).slice(0, 3)).toEqual([
      'opening',
      'closing',
      'opening',
    ]);
    expect(score.spots).toEqual([]);
    expect(score.checks.find(({ check }) => check === 'coverage')?.outcome).toBe('cannot-tell');
  });

  it('is none where one side shows the travel', () => {
    const { windows } = expected;
    const score = scoreSweep(
      recorded((travel) =>
        travel < 0.4
          ? windows.closed.nominal + travel * (windows.open.nominal - windows.closed.nominal)
          : above(travel),
      ),
      expected,
    );
    expect(score.findings.some(({ unplaced }) => unplaced)).toBe(false);
  });

  it('is none where a throttle was recorded at its stops only', () => {
    const { closed, open } = expected.windows;
    const score = scoreSweep(
      recorded((travel) => (travel < 0.4 ? closed : open).nominal),
      expected,
    );
    expect(score.findings.some(({ unplaced }) => unplaced)).toBe(false);
  });

  it('is none where the signal leaps there and back once, as by a lead that is pulled', () => {
    const score = scoreSweep(
      recorded((_, time) => (time < 8 || time > 12 ? below : above(0))),
      expected,
    );
    expect(score.findings.some(({ unplaced }) => unplaced)).toBe(false);
  });
});
