import {
  explainDropoutChance,
  explainLoadingError,
  explainOpenPort,
  explainOperatingPoint,
  explainThermistor,
  workingText,
} from '@truesweep/explain';
import { describe, expect, test } from 'vitest';

/** A plain divider from `volts` over `above` to `below`, loaded by an instrument: the track's parts stand for the book's resistors. */
const divider = (volts: number, above: number, below: number, load?: number) =>
  [
    {
      source: { volts },
      limiter: 0,
      sensor: { track: above + below },
      load: load === undefined ? {} : { pullDown: load },
    },
    below / (above + below),
  ] as const;

const answerOf = (lines: readonly string[], symbol: string) =>
  lines.find((line) => new RegExp(`^ +${symbol} = -?[\\d.]+\\u00a0[^ ]+$`).test(line))?.trim();

describe('T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapters 8 and 10', () => {
  test('24 V over two 250 MΩ, with a meter of 10 MΩ: 0.8889 V instead of 12 V', () => {
    const lines = workingText(explainOperatingPoint(...divider(24, 250e6, 250e6, 10e6)));
    expect(answerOf(lines, 'V_0')).toBe('V_0 = 12.00\u00a0V');
    // 0.8889 V in the book, with the prefix that is usual here.
    expect(answerOf(lines, 'V')).toBe('V = 888.9\u00a0mV');
  });

  test('Thévenin: 28 V over 4 Ω, 7 V over 1 Ω, a load of 2 Ω: as one source, 11.2 V behind 0.8 Ω, 8 V at the load', () => {
    const one = { source: { volts: 11.2 }, limiter: 0.8, sensor: { track: 2 }, load: {} };
    expect(answerOf(workingText(explainOperatingPoint(one, 1)), 'V')).toBe('V = 8.000\u00a0V');
  });

  test('Millman: 28 V over 4 Ω, 7 V over 1 Ω, a load of 2 Ω: 8 V at the load', () => {
    // The second source is the pull-up, the load the track.
    const circuit = {
      source: { volts: 28 },
      limiter: 4,
      sensor: { track: 2 },
      load: { pullUp: { ohms: 1, volts: 7 } },
    };
    const working = explainOperatingPoint(circuit, 1, 'millman');
    const lines = workingText(working);
    expect(answerOf(lines, 'V')).toBe('V = 8.000\u00a0V');
    expect(lines).toContain(
      '    = (28\u00a0V / 4\u00a0Ω + 7\u00a0V / 1\u00a0Ω) / (1 / 4\u00a0Ω + 1 / 2\u00a0Ω + 1 / 1\u00a0Ω)',
    );
  });
});

test('30 V over two 400 kΩ and a meter of 400 kΩ reads 10 V, the true voltage is 15 V (edudirectory tutorial, elect99)', () => {
  const lines = workingText(explainOperatingPoint(...divider(30, 400e3, 400e3, 400e3)));
  expect(answerOf(lines, 'V_0')).toBe('V_0 = 15.00\u00a0V');
  expect(answerOf(lines, 'V')).toBe('V = 10.00\u00a0V');
});

test.each([
  // Exact maxima of I. E. Irodov's problem 3.180, computed to twelve digits with the mathematics of its formula.
  [0.1, '66.91\u00a0%', 0.014493331393],
  [1, '68.89\u00a0%', 0.121585106872],
  [2, '70.71\u00a0%', 0.207106781187],
  [10, '78.63\u00a0%', 0.492939848199],
])(
  'a track of %d times the load is off most at %s (I. E. Irodov, Problems in General Physics, 3.180)',
  (ratio, place, part) => {
    const circuit = {
      source: { volts: 1 },
      limiter: 0,
      sensor: { track: 1000 },
      load: { pullDown: 1000 / ratio },
    };
    const working = explainLoadingError(circuit);
    expect(working.answer.value).toBeCloseTo(part, 11);
    expect(workingText(working).join('\n')).toContain(`x = ${place}`);
  },
);

test('a thermistor with B of 3640 K and 2044 Ω at 20 °C is at 142.7 Ω at 100 °C, as its definition says', () => {
  // IEC 60539-1 (from memory): R = R₁·exp(B(1/T − 1/T₁)).
  const law = { kind: 'b', b: 3640, ohms: 2044, from: 20, to: 100 } as const;
  const { answer } = explainThermistor(undefined, law, 100);
  // ln(R₁/R) = 3640 · 80 / (373.15 · 293.15) = 2.6621, worked out by hand.
  expect(answer.value).toBeCloseTo(142.68, 2);
});

test('the air at 1000 m is at 89.87 kPa (ISO 2533:1975, table: 89 874.6 Pa)', () => {
  const response = { kind: 'line', gain: 1e-5, offset: 0, lowest: 0, highest: 120e3 } as const;
  const air = { kind: 'altitude', altitude: 1000 } as const;
  const working = explainOpenPort({ reference: 'absolute', response }, air, 1);
  expect(answerOf(workingText(working), 'p')).toBe('p = 89.87\u00a0kPa');
  expect(working.answer.value).toBeCloseTo(0.898746, 5);
});

test('a recorder of 10 ms finds a dropout of 2 ms in one pass of five (a part of all phases; own derivation)', () => {
  const logger = {
    kind: 'logger',
    name: 'Logger',
    inputOhms: 1e6,
    range: { low: 0, high: 5 },
    bits: 12,
    interval: 0.01,
  } as const;
  const working = explainDropoutChance(logger, { seconds: 0.002, from: 2.5, to: 0 }, 1);
  expect(answerOf(workingText(working), 'P')).toBe('P = 20.00\u00a0%');
});
