import {
  judgePressure,
  leakByDrift,
  leakTime,
  type PressureSensor,
  pressureFromRatio,
  pressureRatio,
  stationPressure,
} from '@truesweep/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomNumbers } from '../../packages/core/src/statistics/randomNumbers.js';
import { soak } from '../counts.js';

const runs = { numRuns: 300 * soak };
const part = fc.double({ min: 0, max: 1, noNaN: true });

const lineSensor = fc
  .record({
    gain: fc.double({ min: 2e-6, max: 2e-5, noNaN: true }),
    falls: fc.boolean(),
    offset: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
    lowest: fc.double({ min: 5e3, max: 5e4, noNaN: true }),
    span: fc.double({ min: 5e4, max: 3e5, noNaN: true }),
  })
  .map(
    ({ gain, falls, offset, lowest, span }): PressureSensor => ({
      reference: 'absolute',
      response: {
        ...{ kind: 'line', gain: falls ? -gain : gain, offset, lowest, highest: lowest + span },
      },
      error: 1500,
    }),
  );
const tableSensor = fc
  .record({
    steps: fc.array(
      fc.tuple(
        fc.double({ min: 1e3, max: 5e4, noNaN: true }),
        fc.double({ min: 0.01, max: 0.2, noNaN: true }),
      ),
      {
        minLength: 1,
        maxLength: 8,
      },
    ),
    falls: fc.boolean(),
  })
  .map(({ steps, falls }): PressureSensor => {
    let [pressure, ratio] = [1e4, falls ? 0.95 : 0.05];
    const rows = [{ pressure, ratio }];
    for (const [more, up] of steps) {
      pressure += more;
      ratio += falls ? -up : up;
      rows.push({ pressure, ratio });
    }
    return { reference: 'absolute', response: { kind: 'table', rows }, error: 1500 };
  });
const anySensor = fc.oneof(lineSensor, tableSensor);
const within = ({ response }: PressureSensor, fraction: number): number => {
  const [low, high] =
    response.kind === 'line'
      ? [response.lowest, response.highest]
      : [response.rows[0]!.pressure, response.rows.at(-1)!.pressure];
  return Math.min(high, low + fraction * (high - low));
};

describe('pressure sensors', () => {
  test('P → ratio → P to 1e-12 of the range, and all go one way', () => {
    fc.assert(
      fc.property(anySensor, part, part, (sensor, one, other) => {
        const [from, to] = [within(sensor, one), within(sensor, other)];
        const ratio = pressureRatio(sensor, from).nominal;
        fc.pre(Math.abs(ratio) < 100);
        expect(Math.abs(pressureFromRatio(sensor, ratio) - from)).toBeLessThan(1e-12 * 4e5 * 10);
        fc.pre(Math.abs(to - from) > 1e-3);
        const sense = Math.sign(
          pressureRatio(sensor, within(sensor, 1)).nominal -
            pressureRatio(sensor, within(sensor, 0)).nominal,
        );
        const moved = pressureRatio(sensor, to).nominal - ratio;
        expect(Math.sign(moved)).toBe(sense * Math.sign(to - from));
      }),
      runs,
    );
  });

  test('the band holds 100,000 draws of sensors', () => {
    const random = randomNumbers(5);
    const sensor: PressureSensor = {
      reference: 'absolute',
      response: { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15_000, highest: 115_000 },
      error: 1500,
      errorFactors: [
        { temperature: 85, factor: 1 },
        { temperature: 125, factor: 3 },
      ],
    };
    const { low, high } = pressureRatio(sensor, 60_000, 105);
    let [least, most] = [Infinity, -Infinity];
    for (let i = 0; i < 100_000; i++) {
      const ratio = 9e-6 * (60_000 + 3000 * (2 * random.uniform() - 1)) - 0.095;
      least = Math.min(least, ratio);
      most = Math.max(most, ratio);
    }
    expect(least).toBeGreaterThanOrEqual(low);
    expect(most).toBeLessThanOrEqual(high);
    expect(most - least).toBeGreaterThan(0.999 * (high - low));
  });

  test('the altimeter setting of a pressure is turned back to it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 9.5e4, max: 1.05e5, noNaN: true }),
        fc.double({ min: 0, max: 3000, noNaN: true }),
        (setting, altitude) => {
          const source = { kind: 'altimeter-setting', setting, uncertainty: 50, altitude } as const;
          const { pressure, uncertainty } = stationPressure(source);
          // The setting by the standard atmosphere: where it would have its own pressure.
          expect(pressure).toBeLessThanOrEqual(setting);
          expect(uncertainty).toBeGreaterThan(20);
          const up = stationPressure({ ...source, setting: setting + 1 }).pressure;
          expect(Math.abs((up - pressure) * 50 - uncertainty)).toBeLessThan(0.01 * uncertainty);
        },
      ),
      runs,
    );
  });

  test('a leak is found again', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), (tau) => {
        const held = [0, 10, 25, 60].map((seconds) => ({
          ...{ seconds, pascals: 60_000 * Math.exp(-seconds / tau) },
        }));
        fc.pre(held.at(-1)!.pascals > 1);
        expect(Math.abs(leakTime(held) / tau - 1)).toBeLessThan(1e-6);
      }),
      runs,
    );
    // The same by the drift of a held step.
    const response = {
      kind: 'line',
      gain: 9e-6,
      offset: -0.095,
      lowest: 15_000,
      highest: 115_000,
    } as const;
    const drift = (5 * 9e-6 * 60_000) / 585;
    const at = { gauge: -60_000, station: 96_000, supply: 5 };
    expect(leakByDrift({ reference: 'absolute', response }, at, drift)).toBeCloseTo(585, 6);
    expect(leakByDrift({ reference: 'absolute', response }, at, -drift)).toBe(Infinity);
    expect(leakTime([0, 1].map((seconds) => ({ seconds, pascals: 5 })))).toBe(Infinity);
  });

  test('an added reading never turns a fail into a pass', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(part, fc.double({ min: -3000, max: 3000, noNaN: true })), {
          minLength: 2,
          maxLength: 5,
        }),
        (all) => {
          const response = {
            kind: 'line',
            gain: 9e-6,
            offset: -0.095,
            lowest: 15_000,
            highest: 115_000,
          } as const;
          const sensor: PressureSensor = { reference: 'absolute', response, error: 1500 };
          const bench = { station: 1e5, stationUncertainty: 100 };
          const readings = all.map(([fraction, error]) => ({
            ...{ gauge: -60_000 * fraction, gaugeUncertainty: 200, supply: 5, uncertainty: 0.003 },
            volts: 5 * (9e-6 * (1e5 - 60_000 * fraction + error) - 0.095),
          }));
          const fails = judgePressure(sensor, bench, readings.slice(0, 1)).verdict === 'fail';
          if (fails) expect(judgePressure(sensor, bench, readings).verdict).toBe('fail');
        },
      ),
      runs,
    );
  });
});
