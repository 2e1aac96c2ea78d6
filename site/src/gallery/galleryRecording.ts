import {
  type Circuit,
  type DigitalMeter,
  digitalDisplay,
  operatingPoint,
  type SimulatedFault,
  type SimulatedMovement,
  type Sweep,
  type SweepPlan,
  simulateSweep,
} from '@truesweep/core';
import type { Job } from '@truesweep/jobs';

/** The bench of the demo's job. */
const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.88 },
  load: { pullDown: 10e6 },
};
/** Where a bench load makes a film of dirt visible. */
const benchLoad = 10e3;
const loaded: Circuit = { ...circuit, load: { pullDown: benchLoad } };

/** To and fro by hand three times, then opened and let go three times; it settles where it sticks. */
function movements(restitution = 0.2, settles: readonly number[] = [0, 0, 0]) {
  const byHand = [1, 2, 3].flatMap((): SimulatedMovement[] => [
    { kind: 'turn', to: 1, seconds: 1.1, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.3 },
    { kind: 'turn', to: 0, seconds: 1.1, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.4 },
  ]);
  const released = settles.flatMap((closed): SimulatedMovement[] => [
    { kind: 'turn', to: 1, seconds: 0.8, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.3 },
    closed > 0
      ? { kind: 'turn', to: closed, seconds: 0.15 }
      : { kind: 'snap', seconds: 0.05, restitution },
    { kind: 'hold', seconds: 0.6 },
  ]);
  return [{ kind: 'hold', seconds: 0.5 } as const, ...byHand, ...released];
}

const recorder = { interval: 0.001, noise: 0.0015, resolution: 0.001 };
const plan: SweepPlan = { circuit, movements: movements(), recorder, seed: 611 };
const lifts: SimulatedFault = {
  kind: 'worn-spot',
  travel: 0.22,
  width: 0.01,
  ohms: Number.POSITIVE_INFINITY,
};
const meter: DigitalMeter = {
  kind: 'digital-meter',
  name: 'meter',
  inputOhms: 10e6,
  ranges: [5.999],
  counts: 5999,
  aperture: 0.33,
};

/** How each example is recorded. */
const recorded: Readonly<Record<string, () => Sweep>> = {
  sound: () => played({}),
  bounce: () => played({ movements: movements(0.45) }),
  dropout: () => played({ faults: [lifts] }),
  'worn-track': () =>
    played({ faults: [{ kind: 'rough-track', from: 0.1, to: 0.32, volts: 0.16 }] }),
  dirt: () =>
    played({
      circuit: loaded,
      faults: [{ kind: 'worn-spot', travel: 0.3, width: 0.02, ohms: 30e3, chance: 0.7 }],
    }),
  'dead-spot': () => played({ faults: [{ kind: 'dead-spot', from: 0.4, to: 0.52 }] }),
  'cracked-track': () => played({ faults: [{ kind: 'shifted-track', travel: 0.45, shift: 0.12 }] }),
  'loose-connection': () =>
    played({
      faults: [
        {
          kind: 'loose-connection',
          at: [
            { time: 0.25, seconds: 0.03 },
            { time: 1.32, seconds: 0.012 },
            { time: 3.5, seconds: 0.2 },
            { time: 5.7, seconds: 0.02 },
            { time: 8.3, seconds: 0.05 },
            { time: 12.1, seconds: 0.03 },
          ],
        },
      ],
    }),
  'broken-ground': () => {
    const { time, signal } = played({});
    const open = { ...circuit, leads: { ground: 1e9 } };
    const { output } = operatingPoint(open, 0.5);
    const high = typeof output === 'number' ? output : 5;
    const breaks = [1.2, 3.4, 6.05, 8.6, 10.5, 11.9];
    const isOpen = (now: number) => breaks.some((at) => now >= at && now < at + 0.04);
    return { time, signal: signal.map((volts, i) => (isOpen(time[i] ?? 0) ? high : volts)) };
  },
  interference: () => {
    const spikes = Array.from({ length: 26 }, (_, i) => ({
      time: 0.2 + i * 0.47 + (i % 3) * 0.05,
      seconds: 0.0015,
      volts: i % 2 === 0 ? 1.4 + (i % 5) * 0.2 : -1.2 - (i % 4) * 0.2,
    }));
    return played({ faults: [{ kind: 'interference', at: spikes }] });
  },
  'slipped-rotor': () => {
    const { time, signal } = played({});
    const slip = 5.75;
    return {
      time,
      signal: signal.map((volts, i) => ((time[i] ?? 0) < slip ? volts : volts + 0.42)),
    };
  },
  'sticky-return': () => played({ movements: movements(0.1, [0.07, 0.02, 0.11]) }),
  clipped: () => played({ recorder: { ...recorder, range: { low: 0, high: 3 } } }),
  'too-slow': () => played({ recorder: { ...recorder, interval: 0.1 } }),
  'meter-digits': () => {
    const shown = digitalDisplay(meter, played({ faults: [lifts] })).shown;
    const read = shown.flatMap(({ time, volts }) => (volts === undefined ? [] : [{ time, volts }]));
    return {
      time: Float64Array.from(read, ({ time }) => time),
      signal: Float64Array.from(read, ({ volts }) => volts),
    };
  },
};

function played(change: Partial<SweepPlan>): Sweep {
  return simulateSweep({ ...plan, ...change }).sweep;
}

/** The recording of an example; undefined where there is none of that name. The same each time. */
export function galleryRecording(slug: string): Sweep | undefined {
  return Object.hasOwn(recorded, slug) ? recorded[slug]?.() : undefined;
}

/** The demo's job as it is for an example: the load that was put on, and no range of the recorder, which only the recording tells. */
export function galleryJob(job: Job, slug: string): Job {
  const { range, ...instrument } = job.instrument;
  const { recordings, ...rest } = job;
  const hookUp = slug === 'dirt' ? { ...job.hookUp, pullDown: benchLoad } : job.hookUp;
  return { ...rest, title: `Example: ${slug}`, hookUp, instrument };
}

/** A recording as a logger writes it: milliseconds to the tenth, volts to the millivolt. */
export function writtenRecording({ time, signal }: Sweep): string {
  const rows = Array.from(time, (at, i) => `${(at * 1000).toFixed(1)},${signal[i]?.toFixed(3)}`);
  return ['time (ms),wiper (V)', ...rows, ''].join('\n');
}
