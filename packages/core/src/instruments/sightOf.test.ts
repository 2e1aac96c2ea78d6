import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import type { Sweep } from '../capture/sweep.js';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { digitalDisplay } from './digitalDisplay.js';
import type { ModelledDropout } from './dropout.js';
import type {
  ControlUnit,
  DigitalMeter,
  Instrument,
  Logger,
  NeedleMeter,
  Oscilloscope,
} from './instrument.js';
import { movementOf } from './needleMovement.js';
import { noticedFaults } from './noticedFaults.js';
import { sampledDisplay } from './sampledDisplay.js';
import { sightOf } from './sightOf.js';

const meter: DigitalMeter = {
  kind: 'digital-meter',
  name: 'Hand-held meter',
  inputOhms: 10e6,
  ranges: [1.999, 19.99],
  counts: 1999,
  aperture: 0.1,
  deadTime: 0.05,
  displayInterval: 0.15,
};
const logger: Logger = {
  kind: 'logger',
  name: 'Logger',
  inputOhms: 1e6,
  range: { low: 0, high: 8 },
  bits: 10,
  interval: 0.01,
};
const scope: Oscilloscope = {
  kind: 'oscilloscope',
  name: 'Oscilloscope',
  inputOhms: 1e6,
  range: { low: 0, high: 8 },
  bits: 8,
  record: 5,
  memory: 1000,
  fastest: 1e-6,
};
const unit: ControlUnit = {
  kind: 'control-unit',
  name: 'Control unit, invented limits',
  pullDown: 47e3,
  interval: 0.01,
  limits: { low: 0.2, high: 4.8 },
  debounce: 0.03,
};
const needle: NeedleMeter = {
  kind: 'needle-meter',
  name: 'Needle',
  ohmsPerVolt: 20e3,
  range: 5,
  movement: movementOf(0.3, 0.0125),
};
const all: readonly Instrument[] = [
  meter,
  { ...meter, keepsExtremes: true },
  logger,
  scope,
  unit,
  needle,
];

/** A dropout at a time in a steady signal, rounded as its time constants have it. */
function playedOut(
  { seconds, from, to, fall = 0, recovery = 0 }: ModelledDropout,
  at: number,
): Sweep {
  const fine = 1e-4;
  const time = Float64Array.from({ length: 10_001 }, (_, i) => i * fine);
  const reached = fall === 0 ? 1 : -Math.expm1(-seconds / fall);
  const signal = time.map((t) => {
    const gone = t - at;
    if (gone < 0) return from;
    if (gone < seconds) return from + (to - from) * (fall === 0 ? 1 : -Math.expm1(-gone / fall));
    const left = recovery === 0 ? 0 : reached * Math.exp(-(gone - seconds) / recovery);
    return from + (to - from) * left;
  });
  return { time, signal };
}

describe('chances against what the displays show of dropouts at random times', () => {
  const shows: Record<string, (instrument: Instrument, sweep: Sweep, noticed: number) => boolean> =
    {
      'digital-meter': (instrument, sweep, noticed) =>
        digitalDisplay(
          { ...(instrument as DigitalMeter), counts: 1e9, heldRange: 19.99 },
          sweep,
        ).shown.some(({ volts }) => Math.abs(volts! - 2.5) >= noticed),
      logger: (instrument, sweep, noticed) =>
        sampledDisplay({ ...(instrument as Logger), bits: 30 }, sweep).low.some(
          (v) => 2.5 - v >= noticed,
        ),
      'control-unit': (instrument, sweep) =>
        noticedFaults(instrument as ControlUnit, sweep).length > 0,
    };

  test.each<[string, Instrument, ModelledDropout]>([
    ['meter', meter, { seconds: 0.02, from: 2.5, to: 0 }],
    ['meter, long', meter, { seconds: 0.05, from: 2.5, to: 2.3 }],
    ['logger', logger, { seconds: 0.004, from: 2.5, to: 0 }],
    ['logger, rounded', logger, { seconds: 0.004, from: 2.5, to: 0, fall: 0.002, recovery: 0.001 }],
    ['control unit', unit, { seconds: 0.035, from: 2.5, to: 0 }],
    [
      'control unit, rounded',
      unit,
      { seconds: 0.039, from: 2.5, to: 0, fall: 0.002, recovery: 0.001 },
    ],
  ])('%s', (_, instrument, dropout) => {
    const { chance, noticed } = sightOf(instrument, dropout, 1);
    expect(chance).toBeGreaterThan(0.05);
    expect(chance).toBeLessThan(1);
    const random = randomNumbers(5);
    const trials = 400 * soak;
    let shown = 0;
    for (let i = 0; i < trials; i++) {
      const sweep = playedOut(dropout, 0.3 + 0.15 * random.uniform());
      if (shows[instrument.kind]!(instrument, sweep, noticed)) shown += 1;
    }
    // The signal is written every 0.1 ms, which rounds each edge.
    const bound = 4 * Math.sqrt((chance * (1 - chance)) / trials) + 0.02;
    expect(Math.abs(shown / trials - chance)).toBeLessThan(bound);
  });
});

test('longer and more often is never less likely, and the shortest shows with its probability', () => {
  const seconds = fc.double({ min: 0, max: 2, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...all),
      seconds,
      seconds,
      fc.integer({ min: 1, max: 9 }),
      (one, a, b, passes) => {
        const dropout = { from: 2.5, to: 0 };
        const short = sightOf(one, { ...dropout, seconds: Math.min(a, b) }, passes);
        const long = sightOf(one, { ...dropout, seconds: Math.max(a, b) }, passes + 1);
        expect(short.chance).toBeLessThanOrEqual(long.chance);
        expect(short.chanceInPasses).toBeLessThanOrEqual(long.chanceInPasses);
        for (const { probability, inPasses, inOnePass } of short.shortest) {
          expect(inPasses).toBeLessThanOrEqual(inOnePass * (1 + 1e-9));
          const again = sightOf(one, { ...dropout, seconds: inPasses }, passes);
          expect(again.chanceInPasses).toBeGreaterThanOrEqual(probability - 1e-9);
        }
      },
    ),
    { numRuns: 40 * soak },
  );
});

test('a depth that no reading can tell is never seen', () => {
  const { chance, shortest } = sightOf(logger, { seconds: 1, from: 2.5, to: 2.49 }, 5);
  expect(chance).toBe(0);
  expect(shortest.map(({ inPasses }) => inPasses)).toEqual(Array(3).fill(Number.POSITIVE_INFINITY));
  expect(sightOf(unit, { seconds: 1, from: 2.5, to: 1 }, 5).noticed).toBe(Number.POSITIVE_INFINITY);
});

test('what nobody told is named', () => {
  const { deadTime: _, displayInterval: __, ...bare } = meter;
  expect(sightOf(bare, { seconds: 0.1, from: 2, to: 0 }, 1).assumptions).toEqual([
    'three-steps-noticed',
    'signal-at-rest',
    'dead-time-0',
    'every-conversion-shown',
    'input-capacitance-0',
  ]);
});

test.each<[string, Instrument, string, string]>([
  [
    'a display faster than its conversions',
    { ...meter, displayInterval: 0.1 },
    'impossible-setting',
    'instrument.displayInterval',
  ],
  ['no bits', { ...logger, bits: 0 }, 'out-of-range', 'instrument.bits'],
  [
    'negative damping',
    { ...needle, movement: { naturalFrequency: 9, damping: -0.1 } },
    'negative',
    'instrument.movement.damping',
  ],
  [
    'a range upside down',
    { ...scope, range: { low: 5, high: 0 } },
    'out-of-range',
    'instrument.range.high',
  ],
  [
    'a range that is none of the meter',
    { ...meter, heldRange: 5 },
    'impossible-setting',
    'instrument.heldRange',
  ],
  ['no input resistance', { ...scope, inputOhms: 0 }, 'zero', 'instrument.inputOhms'],
  ['no kind', { ...scope, kind: 'screen' as 'oscilloscope' }, 'unknown-choice', 'instrument.kind'],
])('refuses %s', (_, instrument, code, path) => {
  const look = () => sightOf(instrument, { seconds: 0.1, from: 2, to: 0 }, 1);
  expect(look).toThrow(expect.objectContaining({ code, path }));
});
