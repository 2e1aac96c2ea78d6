import {
  adviseInstruments,
  type Circuit,
  type ControlUnit,
  chanceOfSamples,
  chooseBenchLoad,
  chooseSetting,
  combineUncertainties,
  type DigitalMeter,
  digitalDisplay,
  exampleInstruments,
  expectation,
  inParallel,
  isInputError,
  type Logger,
  liveSweep,
  moveNeedle,
  noticedFaults,
  operatingPoint,
  sampledDisplay,
  scoreSweep,
  simulateSweep,
  straightLine,
  terminalBasedLinearity,
} from '@truesweep/core';
import { parseJob, readJob } from '@truesweep/jobs';
import { describe, expect, test } from 'vitest';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: { pullDown: 1e6 },
};
const expected = expectation(circuit, { track: 0.2 });
const time = Float64Array.from({ length: 200 }, (_, i) => i / 100);
const sweep = { time, signal: time.map((at) => 0.5 + at) };
const two = (from: number, to: number) => ({
  time: Float64Array.of(from, to),
  signal: Float64Array.of(1, 2),
});

const meter = { ...(exampleInstruments[0] as DigitalMeter), aperture: 1e-9, deadTime: 0 };
const { displayInterval: _, ...fastMeter } = meter;
const logger = { ...(exampleInstruments[5] as Logger), interval: 1e-9 };
const unit = { ...(exampleInstruments[7] as ControlUnit), interval: 1e-9 };
const line = [{ name: 'a', sensitivity: 1, uncertainty: 0.1, degreesOfFreedom: 0 }];

/** Refused at once: with none of it does the work begin. */
const refused: readonly (readonly [
  what: string,
  act: () => unknown,
  code: string,
  path: string,
])[] = [
  [
    'a digital display of 1e10 conversions',
    () => digitalDisplay(fastMeter, two(0, 10)),
    'too-much-work',
    'instrument.aperture',
  ],
  [
    'one of times that fall',
    () => digitalDisplay(fastMeter, two(10, 0)),
    'too-much-work',
    'instrument.aperture',
  ],
  [
    'a control unit of 1e12 readings',
    () => noticedFaults(unit, two(0, 1000)),
    'too-much-work',
    'instrument.interval',
  ],
  [
    'a drawing of 1e12 samples',
    () => sampledDisplay(logger, two(0, 1000)),
    'too-much-work',
    'instrument.interval',
  ],
  [
    'a bench load for a million travels',
    () => chooseBenchLoad(circuit, { travels: new Array(1e6).fill(0.5), dirt: 1e4, visible: 0.1 }),
    'out-of-range',
    'wish.travels',
  ],
  [
    'a plan of 1e12 samples',
    () =>
      simulateSweep({
        circuit,
        movements: [{ kind: 'hold', seconds: 1000 }],
        recorder: { interval: 1e-9 },
        seed: 1,
      }),
    'too-much-work',
    'plan.recorder.interval',
  ],
  ['columns of two lengths', () => straightLine([0, 1, 2], [0, 1]), 'length-mismatch', 'ys'],
  ['points beyond 10¹²', () => straightLine([0, 1e308], [0, 1e308]), 'out-of-range', 'xs[1]'],
  [
    'no degrees of freedom',
    () => combineUncertainties(line),
    'out-of-range',
    'inputs[0].degreesOfFreedom',
  ],
  ['a resistance that is none', () => inParallel(1000, Number.NaN), 'not-finite', 'other'],
  ['times that are none', () => chanceOfSamples([0, Number.NaN, 2], 1), 'not-finite', 'times[1]'],
  [
    'a setting for a hook-up without a source',
    () => chooseSetting({ ...circuit, source: { volts: 0 } }, { width: 0.01, travelTime: 1 }),
    'no-span',
    'circuit',
  ],
  [
    'a needle that is nowhere',
    () =>
      moveNeedle(
        { naturalFrequency: 6, damping: 0.7 },
        { deflection: Number.NaN, speed: 0 },
        [0, 1],
        1,
      ),
    'not-finite',
    'state.deflection',
  ],
  [
    'a stroke in no time',
    () => adviseInstruments(circuit, { travel: 0.4, width: 0.02, passes: 3, travelTime: 5e-324 }),
    'out-of-range',
    'wanted.travelTime',
  ],
  [
    'an infinite limiter',
    () => operatingPoint({ ...circuit, limiter: Number.POSITIVE_INFINITY }, 0.5),
    'not-finite',
    'circuit.limiter',
  ],
  [
    'windows that are no numbers',
    () => {
      const { windows } = expected;
      const nowhere = { ...windows.closed, low: Number.NaN };
      return scoreSweep(sweep, { ...expected, windows: { ...windows, closed: nowhere } });
    },
    'not-finite',
    'expected.windows.closed.low',
  ],
  [
    'a sweep without an expectation',
    () => scoreSweep(sweep, undefined as never),
    'missing',
    'expected',
  ],
  ['a live one', () => liveSweep(undefined as never), 'missing', 'expected'],
  [
    'a null stretch',
    () => scoreSweep({ ...sweep, stretches: [null as never] }, expected),
    'missing',
    'sweep.stretches[0]',
  ],
  [
    'a mistyped field of a sensor',
    () => operatingPoint({ ...circuit, sensor: { track: 5000, closedPos: 0.1 } as never }, 0.5),
    'unknown-field',
    'circuit.sensor.closedPos',
  ],
  [
    'a mistyped tolerance',
    () => expectation(circuit, { trak: 0.2 } as never),
    'unknown-field',
    'tolerances.trak',
  ],
  [
    'a mistyped field of a recorder',
    () => scoreSweep(sweep, expected, { resolutoin: 0.001 } as never),
    'unknown-field',
    'recorder.resolutoin',
  ],
  [
    'a mistyped criterion',
    () => scoreSweep(sweep, expected, {}, { sameTravl: 0.03 } as never),
    'unknown-field',
    'criteria.sameTravl',
  ],
  [
    'a criterion that is no number',
    () => scoreSweep(sweep, expected, {}, { sameTravel: Number.NaN }),
    'not-finite',
    'criteria.sameTravel',
  ],
  [
    'percent for a fraction',
    () => scoreSweep(sweep, expected, {}, { visibleSpan: 1.5 }),
    'out-of-range',
    'criteria.visibleSpan',
  ],
  ['a job with a BigInt', () => parseJob({ version: 2, title: 10n }), 'not-a-text', 'job.title'],
  ['a job of bytes', () => readJob(new Uint8Array(3) as never), 'not-a-text', 'text'],
];

test.each(refused)('%s is refused', (_, act, code, path) => {
  let caught: unknown;
  try {
    act();
  } catch (error) {
    caught = error;
  }
  expect(isInputError(caught), String(caught)).toBe(true);
  expect(caught).toMatchObject({ code, path });
});

describe('what is strange but right is answered', () => {
  test('places nearer together than any shaft turns are one place', () => {
    const shaft = Float64Array.of(0, 5e-324);
    expect(terminalBasedLinearity({ shaft, ratio: Float64Array.of(0, 1) })).toEqual({
      kind: 'not-judged',
      reason: 'no-movement',
    });
  });

  test('uncertainties far from 1 combine like those near it', () => {
    const at = (scale: number) => ({
      a: { name: 'a', sensitivity: scale, uncertainty: 3, degreesOfFreedom: 4 },
      b: { name: 'b', sensitivity: scale, uncertainty: 4, degreesOfFreedom: 5 },
    });
    for (const scale of [1e-90, 1, 1e90]) {
      const { a, b } = at(scale);
      const combined = combineUncertainties([a, b]);
      expect(combined.uncertainty / scale).toBeCloseTo(5, 9);
      expect(combined.degreesOfFreedom).toBeCloseTo(625 / (81 / 4 + 256 / 5), 9);
    }
  });

  test('some of the criteria, with the defaults for the others', () => {
    expect(scoreSweep(sweep, expected, {}, { dropout: 0.015 })).toEqual(
      scoreSweep(sweep, expected),
    );
  });

  test('plain lists of numbers', () => {
    const listed = { time: Array.from(time), signal: Array.from(sweep.signal) };
    expect(scoreSweep(listed, expected)).toEqual(scoreSweep(sweep, expected));
    const narrow = Float32Array.from(sweep.signal);
    expect(scoreSweep({ time, signal: narrow }, expected)).toEqual(
      scoreSweep({ time, signal: Float64Array.from(narrow) }, expected),
    );
  });
});
