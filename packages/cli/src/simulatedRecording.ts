import { InputError, parseQuantity, type SimulatedMovement, simulateSweep } from '@truesweep/core';
import { type Job, jobCircuit } from '@truesweep/jobs';
import { jsonText } from './jsonText.js';

/** Three sweeps by hand with a rest at each stop, then let go from the open stop. */
/** The resistance of a lifted contact, Ω, as good as none at all and a number in JSON. */
const lifted = 1e12;
const movements: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 0.5 },
  ...[1, 2, 3].flatMap((): SimulatedMovement[] => [
    { kind: 'turn', to: 1, seconds: 1.3, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.5 },
    { kind: 'turn', to: 0, seconds: 1.3, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.5 },
  ]),
  { kind: 'turn', to: 1, seconds: 1, unevenness: 0.01 },
  { kind: 'hold', seconds: 0.5 },
  { kind: 'snap', seconds: 0.05, restitution: 0.3 },
  { kind: 'hold', seconds: 0.6 },
];

/**
 * An invented recording of a job's sensor as delimited text, or as JSON with the truth behind it.
 *
 * @throws InputError for an entry that is no such quantity.
 */
export function simulatedRecording(
  job: Job,
  entries: {
    readonly wornAt?: string;
    readonly wornWidth: string;
    readonly interval: string;
    readonly noise: string;
    readonly seed: string;
  },
  json: boolean,
): string {
  const { wornAt, wornWidth, interval, noise, seed } = entries;
  const { sweep, events } = simulateSweep({
    circuit: jobCircuit(job),
    movements,
    recorder: {
      interval: parseQuantity(interval, 's', '--interval'),
      noise: parseQuantity(noise, 'V', '--noise'),
      resolution: job.instrument.resolution ?? 0,
    },
    ...(wornAt !== undefined && {
      faults: [
        {
          kind: 'worn-spot' as const,
          travel: Number(parseQuantity(wornAt, '%', '--worn-at')),
          width: Number(parseQuantity(wornWidth, '%', '--worn-width')),
          ohms: lifted,
        },
      ],
    }),
    seed: wholeNumber(seed),
  });
  const [time, signal] = [Array.from(sweep.time), Array.from(sweep.signal)];
  if (json) return jsonText('simulate', { time, signal, events });
  const rows = time.map((at, i) => `${Number(at.toPrecision(9))},${signal[i]!.toFixed(4)}`);
  return ['time (s),wiper (V)', ...rows, ''].join('\n');
}

function wholeNumber(text: string): number {
  const number = Number(text);
  if (Number.isSafeInteger(number) && number >= 0) return number;
  throw new InputError(
    'not-a-number',
    '--seed',
    `--seed is ${JSON.stringify(text)}; it must be a whole number, such as 1.`,
  );
}
