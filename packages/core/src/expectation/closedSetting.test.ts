import { expect, test } from 'vitest';
import { type AnglePerVolt, closedSetting } from './closedSetting.js';

test('from two readings: the turn from the first that meets the wanted reading on their line', () => {
  const set = closedSetting(0.4, 0.5, { kind: 'second-reading', degrees: -3, volts: 0.34 }, 0.001);
  if (set.kind !== 'turn') throw new Error(set.kind);
  expect(set.degrees).toBeCloseTo(5, 12);
  expect(set.degreesPerVolt).toBeCloseTo(50, 12);
});

test('the uncertainty is that of both readings through the derivatives', () => {
  const turned = (first: number, second: number): number => {
    const set = closedSetting(first, 0.5, { kind: 'second-reading', degrees: 4, volts: second });
    return set.kind === 'turn' ? set.degrees : Number.NaN;
  };
  const step = 1e-6;
  const byFirst = (turned(0.6 + step, 0.8) - turned(0.6 - step, 0.8)) / (2 * step);
  const bySecond = (turned(0.6, 0.8 + step) - turned(0.6, 0.8 - step)) / (2 * step);
  const set = closedSetting(0.6, 0.5, { kind: 'second-reading', degrees: 4, volts: 0.8 }, 0.002);
  expect(set.kind === 'turn' && set.uncertainty).toBeCloseTo(
    0.002 * Math.hypot(byFirst, bySecond),
    7,
  );
});

test('from a slope: a falling sensor turns the other way', () => {
  const by: AnglePerVolt = { kind: 'slope', degreesOfTravel: 90, voltsPerTravel: -4.5 };
  expect(closedSetting(4.6, 4.5, by, 0.01)).toEqual({
    kind: 'turn',
    degrees: expect.closeTo(2, 9),
    uncertainty: expect.closeTo(0.2, 9),
    degreesPerVolt: -20,
  });
});

test.each<[AnglePerVolt, number]>([
  [{ kind: 'second-reading', degrees: 3, volts: 0.6 }, 0],
  [{ kind: 'second-reading', degrees: 3, volts: 0.602 }, 0.001],
  [{ kind: 'second-reading', degrees: 0, volts: 0.8 }, 0],
  [{ kind: 'slope', degreesOfTravel: 90, voltsPerTravel: 0 }, 0],
])('no change, no answer (%#)', (by, uncertainty) => {
  expect(closedSetting(0.6, 0.5, by, uncertainty)).toEqual({
    kind: 'not-determined',
    reason: 'no-change',
  });
});

const slope: AnglePerVolt = { kind: 'slope', degreesOfTravel: 90, voltsPerTravel: 4 };
test.each([
  [() => closedSetting(Number.NaN, 1, slope), 'reading'],
  [() => closedSetting(1, Number.NaN, slope), 'wanted'],
  [() => closedSetting(1, 1, slope, -1), 'uncertainty'],
  [() => closedSetting(1, 1, { ...slope, degreesOfTravel: 400 }), 'anglePerVolt.degreesOfTravel'],
  [
    () => closedSetting(1, 1, { ...slope, voltsPerTravel: Number.NaN }),
    'anglePerVolt.voltsPerTravel',
  ],
  [
    () => closedSetting(1, 1, { kind: 'second-reading', degrees: Number.NaN, volts: 1 }),
    'anglePerVolt.degrees',
  ],
  [
    () => closedSetting(1, 1, { kind: 'second-reading', degrees: 1, volts: Number.NaN }),
    'anglePerVolt.volts',
  ],
  [() => closedSetting(1, 1, {} as AnglePerVolt), 'anglePerVolt.kind'],
  [() => closedSetting(1, 1, undefined as unknown as AnglePerVolt), 'anglePerVolt'],
  [() => closedSetting(1, 1, { ...slope, degrees: 1 } as AnglePerVolt), 'anglePerVolt.degrees'],
])('refuses (%#) by path', (call, path) => {
  expect(call).toThrow(expect.objectContaining({ name: 'InputError', path }));
});
