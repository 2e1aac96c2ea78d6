import { simulateSweep } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { jobCircuit } from './jobCircuit.js';
import { parseJob } from './parseJob.js';
import { readJobRecording } from './readJobRecording.js';
import { watchSweep } from './watchSweep.js';

const job = parseJob({
  version: 3,
  title: 'Spare sensor from the shelf',
  sensor: {
    kind: 'potentiometer',
    name: 'Outboard throttle sensor',
    track: 5000,
    closedPosition: 0.1,
    openPosition: 0.9,
  },
  hookUp: { source: { volts: 5 }, limiter: 1000 },
  instrument: { name: 'Controller on the bench', inputResistance: '10M' },
});
const { sweep } = simulateSweep({
  circuit: jobCircuit(job),
  movements: [
    { kind: 'hold', seconds: 0.5 },
    { kind: 'turn', to: 1, seconds: 1 },
    { kind: 'hold', seconds: 0.5 },
    { kind: 'turn', to: 0, seconds: 1 },
    { kind: 'hold', seconds: 0.6 },
  ],
  recorder: { interval: 1e-3, noise: 0.002 },
  seed: 5,
});
const rows = Array.from(
  sweep.time,
  (time, i) => `${Math.round(1e6 * time)},${Math.round((sweep.signal[i]! / 5) * 1023)}`,
);
const bytes = new TextEncoder().encode(`t (us),signal (counts)\n${rows.join('\n')}\n`);
const options = { text: { voltsPerUnit: 5 / 1023 } };

describe('watchSweep', () => {
  test('what is saved is read and judged as it was watched', () => {
    const watched = watchSweep(job, options);
    let text = '';
    for (let at = 0; at < bytes.length; at += 500) {
      text += watched.feed(bytes.subarray(at, at + 500)).text;
      watched.recent();
    }
    text += watched.end().text;
    const saved = { file: 'a.csv', text: watched.reading().savedAs };
    const read = readJobRecording(new TextEncoder().encode(text), saved, job);
    expect(Array.from(read.sweep.time)).toEqual(
      Array.from(sweep.time, (at) => Math.round(1e9 * at) / 1e9),
    );
    const { score, missing } = watched.soFar()!;
    expect(score.coverage.opening).toEqual(Array.from({ length: 10 }, () => 1));
    expect(missing[0]).toEqual({ missing: 'sweeps', count: 2 });
  });

  test('marks deliberate tests by the latest sample, one at a time', () => {
    const watched = watchSweep(job, options);
    expect(watched.mark('harness-flexed')).toBeUndefined();
    const feed = (from: number, to: number) =>
      watched.feed(bytes.subarray(bytes.indexOf(0x0a, from) + 1, bytes.indexOf(0x0a, to) + 1));
    watched.feed(bytes.subarray(0, bytes.indexOf(0x0a) + 1));
    feed(0, 4000);
    expect(watched.mark('harness-flexed')).toBe('harness-flexed');
    feed(4000, 8000);
    expect(watched.soFar()!.score.testsNotDone).not.toContain('harness-flexed');
    expect(watched.mark('housing-tapped')).toBe('housing-tapped');
    feed(8000, 12_000);
    expect(watched.mark('housing-tapped')).toBeUndefined();
    const [flexed, tapped] = watched.stretches();
    expect(flexed!.end).toBe(tapped!.start);
    expect(tapped!.kind).toBe('housing-tapped');
    watched.mark('warmed');
    watched.end();
    expect(watched.stretches()).toHaveLength(2);
  });

  test('says nothing before there is something to judge', () => {
    const watched = watchSweep(job, options);
    expect(watched.recent()).toBeUndefined();
    expect(watched.soFar()).toBeUndefined();
    watched.feedSamples({ time: Float64Array.of(0, 1e-3, 2e-3), signal: Float64Array.of(1, 1, 1) });
    expect(watched.recent()!.samples).toBe(3);
    watched.lost();
  });
});
