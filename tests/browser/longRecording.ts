import { createWriteStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { simulateSweep } from '@truesweep/core';
import { jobCircuit, readJob } from '@truesweep/jobs';

/** A recording of a sound sensor swept again and again, as a logger of 20 kHz writes it. */
export async function writeLongRecording(file: string, samples: number): Promise<number> {
  const circuit = jobCircuit(readJob(await readFile('examples/outboard-sensor.job.json', 'utf8')));
  const { sweep } = simulateSweep({
    circuit,
    movements: [
      { kind: 'hold', seconds: 0.5 },
      { kind: 'turn', to: 1, seconds: 2 },
      { kind: 'hold', seconds: 0.5 },
      { kind: 'turn', to: 0, seconds: 2 },
    ],
    recorder: { interval: 0.00005, noise: 0.001, resolution: 0.001 },
    seed: 3,
  });
  const volts = Array.from(sweep.signal, (value) => value.toFixed(3));
  // A second's decimals are written once: ten million numbers take longer to format than to judge.
  const decimals = Array.from({ length: 20_000 }, (_, i) => (i / 20_000).toFixed(5).slice(1));
  const out = createWriteStream(file);
  out.write('time (s),wiper (V)\n');
  for (let from = 0; from < samples; from += volts.length) {
    let rows = '';
    for (let i = from; i < Math.min(samples, from + volts.length); i++)
      rows += `${Math.floor(i / 20_000)}${decimals[i % 20_000]},${volts[i - from]}\n`;
    if (!out.write(rows)) await new Promise((done) => out.once('drain', done));
  }
  await new Promise<void>((done) => out.end(done));
  return samples;
}
