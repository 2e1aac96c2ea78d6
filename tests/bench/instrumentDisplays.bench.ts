import {
  digitalDisplay,
  needleDisplay,
  noticedFaults,
  type Sweep,
  sampledDisplay,
} from '@truesweep/core';
import { expect, test } from 'vitest';
import { fastest } from './fastest.js';
import { keeps } from './keeps.js';

/** 10 s at 10 kS/s: slow turns to and fro. */
const time = Float64Array.from({ length: 100_000 }, (_, i) => i / 10_000);
const sweep: Sweep = { time, signal: time.map((t) => 2.5 - 2 * Math.cos(t)) };

const often = (work: () => void) => () => {
  for (let i = 0; i < 20; i++) work();
};

test('what instruments show of 10 s at 10 kS/s', () => {
  let sum = 0;
  const bare = fastest(
    often(() => {
      const { signal } = sweep;
      for (let i = 0; i < signal.length; i++) sum += signal[i]!;
    }),
    9,
  );
  const displays: Readonly<Record<string, () => void>> = {
    'digital meter': () =>
      void digitalDisplay(
        {
          kind: 'digital-meter',
          name: '',
          inputOhms: 1e7,
          ranges: [1.999, 19.99],
          counts: 1999,
          aperture: 0.02,
        },
        sweep,
      ),
    needle: () =>
      void needleDisplay({ kind: 'needle-meter', name: '', ohmsPerVolt: 2e4, range: 5 }, sweep),
    oscilloscope: () =>
      void sampledDisplay(
        {
          kind: 'oscilloscope',
          name: '',
          inputOhms: 1e6,
          range: { low: 0, high: 8 },
          bits: 8,
          bandwidth: 1e5,
          record: 10,
          memory: 10_000,
          fastest: 1e-6,
          keepsPeaks: true,
        },
        sweep,
      ),
    logger: () =>
      void sampledDisplay(
        {
          kind: 'logger',
          name: '',
          inputOhms: 1e6,
          range: { low: 0, high: 5 },
          bits: 12,
          interval: 1e-3,
          filter: 1e-3,
        },
        sweep,
      ),
    'control unit': () =>
      void noticedFaults(
        {
          kind: 'control-unit',
          name: '',
          pullDown: 47e3,
          interval: 0.01,
          limits: { low: 0.2, high: 4.8 },
          debounce: 0.1,
          filter: 1e-3,
        },
        sweep,
      ),
  };
  for (const [name, show] of Object.entries(displays)) {
    const ratio = fastest(often(show), 9) / bare;
    keeps(`${name} over one bare pass over the samples`, ratio, {
      side: 'most',
      goal: 20,
      holds: 20,
    });
  }
  expect(sum).toBeGreaterThan(0);
});
