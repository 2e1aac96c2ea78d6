import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { type PreferredRounding, preferredValue } from './preferredValue.js';
import { type PreferredSeries, preferredValues } from './preferredValues.js';

const series = fc.constantFrom<PreferredSeries>('E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192');
const wanted = fc.double({ min: -12, max: 18, noNaN: true }).map((power) => 10 ** power);

test.each([
  [1000, 'E24', 'up', 1000],
  [999.9, 'E24', 'up', 1000],
  [999.9, 'E24', 'down', 910],
  [9.53, 'E96', 'up', 9.53],
  [980, 'E96', 'up', 1000],
  [990, 'E192', 'nearest', 988],
  [995, 'E192', 'nearest', 1000],
  [105, 'E24', 'nearest', 110],
  [0.47, 'E3', 'down', 0.47],
  [1e-12, 'E3', 'down', 1e-12],
  [1e18, 'E3', 'up', 1e18],
  [125, 'E6', 'nearest', 150],
  [124, 'E6', 'nearest', 100],
] as const)('%d Ω in %s, %s: %d Ω', (ohms, name, rounding, value) => {
  expect(preferredValue(ohms, name, rounding)).toBe(value);
});

test('a value of the series stays itself in every decade, with floating-point noise too', () => {
  fc.assert(
    fc.property(
      series,
      fc.nat(),
      fc.integer({ min: -12, max: 14 }),
      fc.constantFrom(1, 1 + 1e-14, 1 - 1e-14),
      fc.constantFrom<PreferredRounding>('up', 'down', 'nearest'),
      (name, pick, power, factor, rounding) => {
        const decade = preferredValues(name);
        const value = Number(`${decade[pick % decade.length]}e${power}`);
        expect(preferredValue(value * factor, name, rounding)).toBe(value);
      },
    ),
    { numRuns: 1000 * soak },
  );
});

test('down and up enclose the wanted value, nearest is one of them and no farther off', () => {
  fc.assert(
    fc.property(series, wanted, (name, ohms) => {
      const down = preferredValue(ohms, name, 'down');
      const up = preferredValue(ohms, name, 'up');
      const nearest = preferredValue(ohms, name, 'nearest');
      expect(down).toBeLessThanOrEqual(ohms * (1 + 1e-9));
      expect(up).toBeGreaterThanOrEqual(ohms * (1 - 1e-9));
      expect([down, up]).toContain(nearest);
      const nearer = Math.min(Math.abs(ohms - down), Math.abs(up - ohms));
      // Closer than 1e-9 to a value of the series the wish is that value, whichever way is rounded.
      expect(Math.abs(nearest - ohms)).toBeLessThanOrEqual(nearer + 1e-9 * ohms);
    }),
    { numRuns: 1000 * soak },
  );
});

test.each([
  [0, 'E24', 'up', 'ohms'],
  [Number.NaN, 'E24', 'up', 'ohms'],
  [-5, 'E24', 'up', 'ohms'],
  [1e19, 'E24', 'up', 'ohms'],
  [1000, 'E25', 'up', 'series'],
  [1000, 'E24', 'sideways', 'rounding'],
])('refuses %d Ω, %s, %s at %s', (ohms, name, rounding, path) => {
  expect(() =>
    preferredValue(ohms, name as PreferredSeries, rounding as PreferredRounding),
  ).toThrow(expect.objectContaining({ name: 'InputError', path }));
});
