import {
  type Expectation,
  expectation,
  type Recorder,
  type Stretch,
  type Sweep,
  simulateSweep,
} from '@truesweep/core';
import fc from 'fast-check';
import { soak } from '../counts.js';
import { anyPlan, between, tolerances } from './sweeps.js';

/** Anything between two bounds, mostly tiny. */
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const whole = (min: number, max: number) => fc.integer({ min, max });

const extreme = fc.constantFrom(
  0,
  5,
  1e-300,
  -1e-300,
  1e-9,
  1e11,
  1e12,
  1e300,
  -1e300,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
);
/** Evenly spread, as noise is; the library's own doubles are mostly tiny. */
const volts = whole(-1000, 6000).map((millivolts) => millivolts / 1000);
const value = fc.oneof(
  { weight: 40, arbitrary: volts },
  { weight: 5, arbitrary: double(-1, 6) },
  { weight: 1, arbitrary: extreme },
);

const hold = fc
  .tuple(value, whole(1, 400))
  .map(([one, count]) => new Array<number>(count).fill(one));
const noise = fc.array(volts, { minLength: 2, maxLength: 400 });
const anything = fc.array(value, { maxLength: 400 });
/** At 1 ms or less between samples far faster than a hand. */
const sawtooth = fc
  .tuple(whole(2, 40), whole(50, 400), between(0.1, 5))
  .map(([period, count, height]) =>
    Array.from({ length: count }, (_, i) => (height * (i % period)) / period),
  );
const twoSamples = fc.tuple(value, value).map((both): number[] => both);

const stampings = ['even', 'repeated', 'swapped', 'jittered', 'reversed', 'equal'] as const;

function stamps(count: number, interval: number, how: (typeof stampings)[number]): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => {
    switch (how) {
      case 'even':
        return i * interval;
      case 'repeated':
        return Math.floor(i / 3) * interval;
      case 'swapped':
        return (i % 7 === 3 ? i + 1 : i % 7 === 4 ? i - 1 : i) * interval;
      case 'jittered':
        return (i + ((i * 0.618) % 1)) * interval;
      case 'reversed':
        return (count - i) * interval;
      case 'equal':
        return 0;
    }
  });
}

const kinds = ['sweep', 'rest', 'harness-flexed', 'housing-tapped', 'warmed'] as const;
const stretches: fc.Arbitrary<readonly Stretch[]> = fc.array(
  fc.record({ kind: fc.constantFrom(...kinds), start: between(-1, 9), end: between(-1, 9) }),
  { maxLength: 3 },
);

const recorder: fc.Arbitrary<Recorder> = fc.record(
  {
    resolution: fc.constantFrom(0, 1e-300, 1e-3, 1e6),
    uncertainty: fc.constantFrom(0, 1e-300, 1e-3, 1e6),
    range: fc.constantFrom({ low: 0, high: 5 }, { low: 2, high: 2 }, { low: -1e12, high: 1e12 }),
    before: fc.constantFrom(
      { source: 5, zero: 0 },
      { source: 1e-300, zero: 0 },
      { source: 4, zero: 3.999 },
    ),
    after: fc.constantFrom({ source: 5.1, zero: 0.1 }, { source: 1e12, zero: -1e12 }),
  },
  { requiredKeys: [] },
);

/** A recording with all that the scorer is told. */
export interface RecordedCase {
  readonly sweep: Sweep;
  readonly expected: Expectation;
  readonly recorder: Recorder;
}

const usual = expectation(
  {
    source: { volts: 5 },
    limiter: 1000,
    sensor: { track: 4000, closedPosition: 0.1, openPosition: 0.9 },
    load: { pullDown: 10e6 },
  },
  tolerances,
);

/** Anything but a sweep: noise, constants, sawteeth faster than a hand, two samples, extreme values and stamps. */
export const notASweep: fc.Arbitrary<RecordedCase> = fc
  .record({
    signal: fc.oneof(anything, noise, hold, sawtooth, twoSamples),
    interval: fc.constantFrom(1e-300, 1e-9, 1e-6, 1e-3),
    how: fc.constantFrom(...stampings),
    recorder: fc.option(recorder, { nil: {} }),
  })
  .map(({ signal, interval, how, recorder }) => ({
    sweep: { time: stamps(signal.length, interval, how), signal: Float64Array.from(signal) },
    expected: usual,
    recorder,
  }));

type Change = (sweep: { time: Float64Array; signal: Float64Array }) => Sweep;

/** What a broken recorder, file or reader makes of a sweep. */
const mutation: fc.Arbitrary<Change> = fc.oneof(
  fc.tuple(fc.nat(), extreme).map(
    ([at, extremeValue]): Change =>
      ({ time, signal }) => ({
        time,
        signal: signal.with(at % signal.length, extremeValue),
      }),
  ),
  fc.tuple(fc.nat(), extreme).map(
    ([at, extremeTime]): Change =>
      ({ time, signal }) => ({ time: time.with(at % time.length, extremeTime), signal }),
  ),
  fc.constantFrom(...stampings).map(
    (how): Change =>
      ({ time, signal }) => ({ time: stamps(time.length, 1e-3, how), signal }),
  ),
  fc.tuple(fc.nat(), fc.nat()).map(
    ([from, length]): Change =>
      ({ time, signal }) => {
        const start = from % time.length;
        const end = start + (length % 2000);
        const keep = (_: number, i: number) => i < start || i >= end;
        return { time: time.filter(keep), signal: signal.filter(keep) };
      },
  ),
  fc.constantFrom(1e-300, 1e-9, 1e6, 1e300, -1, 0).map(
    (factor): Change =>
      ({ time, signal }) => ({ time, signal: signal.map((volts) => volts * factor) }),
  ),
  fc.constantFrom(1e-300, 1e-9, 1e6, 1e300).map(
    (factor): Change =>
      ({ time, signal }) => ({ time: time.map((at) => at * factor), signal }),
  ),
  fc.constant<Change>(({ time, signal }) => ({ time, signal: signal.toReversed() })),
  fc.tuple(whole(0, 5), whole(1, 9)).map(
    ([low, length]): Change =>
      ({ time, signal }) => ({
        time,
        signal: signal.map((volts, i) => (i % 97 < length ? low : volts)),
      }),
  ),
  fc.tuple(whole(2, 300), extreme).map(
    ([every, extremeValue]): Change =>
      ({ time, signal }) => ({
        time,
        signal,
        supply: signal.map((_, i) => (i % every === 0 ? extremeValue : 5)),
      }),
  ),
  fc.constantFrom(0, 1e-300, 0.9).map(
    (volts): Change =>
      ({ time, signal }) => ({ time, signal, supply: signal.map(() => volts) }),
  ),
  stretches.map(
    (stretches): Change =>
      ({ time, signal }) => ({ time, signal, stretches }),
  ),
);

const interval = 4e-3;

/** Simulating costs far more than judging, so that a pool of sweeps is broken again and again. */
const pool = fc
  .sample(anyPlan, { numRuns: 100 * soak, ...(soak === 1 && { seed: 20_260_401 }) })
  .map((plan) => ({
    sweep: simulateSweep({ ...plan, recorder: { ...plan.recorder, interval } }).sweep,
    expected: expectation(plan.circuit, tolerances),
  }));

/** Simulated sweeps, broken in one or two ways. */
export const mutatedSweep: fc.Arbitrary<RecordedCase> = fc
  .record({
    sound: fc.constantFrom(...pool),
    changes: fc.array(mutation, { minLength: 1, maxLength: 2 }),
    recorder: fc.option(recorder, { nil: {} }),
  })
  .map(({ sound: { sweep: before, expected }, changes, recorder }) => {
    let sweep = before;
    for (const change of changes) sweep = { ...sweep, ...change(sweep) };
    return { sweep, expected, recorder };
  });

/** A part of a simulated sweep, or anything, that holds 50 samples at the most or lasts less than half a second. */
export const shortRecording: fc.Arbitrary<RecordedCase> = fc
  .record({
    from: fc.constantFrom(...pool),
    at: between(0, 1),
    few: fc.boolean(),
    count: whole(2, 50),
    many: whole(51, 400),
    seconds: fc.constantFrom(2e-9, 1e-3, 0.1, 0.29, 5, 1000),
    levels: fc.option(fc.array(volts, { minLength: 1, maxLength: 5 }), { nil: undefined }),
    supply: fc.option(fc.constantFrom(4, 5), { nil: undefined }),
  })
  .map(({ from: { sweep, expected }, at, few, count, many, seconds, levels, supply }) => {
    const samples = few ? count : many;
    const lasts = few ? seconds : Math.min(seconds, 0.29);
    const begin = Math.floor(at * (sweep.signal.length - samples));
    const signal = sweep.signal
      .slice(begin, begin + samples)
      .map((one, i) => levels?.[Math.floor((i * levels.length) / samples)] ?? one);
    return {
      sweep: {
        time: stamps(samples, lasts / (samples - 1), 'even'),
        signal,
        ...(supply && { supply: signal.map((_, i) => (i === 0 ? 0.8 : 1) * supply) }),
      },
      expected,
      recorder: {},
    };
  });
