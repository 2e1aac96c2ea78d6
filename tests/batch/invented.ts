import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type SimulatedMovement, simulateSweep } from '@truesweep/core';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.88 },
  load: { pullDown: 10e6 },
};

const byHand: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 0.4 },
  { kind: 'turn', to: 1, seconds: 1.2, unevenness: 0.008 },
  { kind: 'hold', seconds: 0.3 },
  { kind: 'turn', to: 0, seconds: 1.1, unevenness: 0.008 },
];

/** How a recording is invented. */
interface Invented {
  readonly seed: number;
  /** Seconds between samples. */
  readonly interval: number;
  readonly strokes: number;
  readonly isWorn?: boolean;
}

/** An invented recording of the workshop's sensor as text. */
export function recordingText({ seed, interval, strokes, isWorn = false }: Invented): string {
  const { sweep } = simulateSweep({
    circuit,
    movements: [
      ...Array.from({ length: strokes }, () => byHand).flat(),
      { kind: 'hold', seconds: 0.4 },
    ],
    ...(isWorn && {
      faults: [{ kind: 'worn-spot', travel: 0.3, width: 0.03, ohms: 1e7, chance: 1 }],
    }),
    recorder: { interval, noise: 0.002, resolution: 0.001 },
    seed,
  });
  const rows = Array.from(
    sweep.time,
    (at, i) => `${at.toFixed(5)},${sweep.signal[i]!.toFixed(4)}\n`,
  );
  return `time (s),signal (V)\n${rows.join('')}`;
}

/** The same recording as another file: its last reading differs. */
export function variedText(text: string, number: number): string {
  const digits = String(number % 1e6).padStart(6, '0');
  return `${text.slice(0, -1)}${digits}\n`;
}

/** A folder with so many recordings of one text, each with bytes of its own; a thousand to a folder within. */
export function manyRecordings(folder: string, texts: readonly string[], count: number): void {
  for (let i = 0; i < count; i++) {
    const within = join(folder, String(Math.floor(i / 1000)).padStart(4, '0'));
    if (i % 1000 === 0) mkdirSync(within, { recursive: true });
    writeFileSync(join(within, `${i}.csv`), variedText(texts[i % texts.length]!, i));
  }
}
