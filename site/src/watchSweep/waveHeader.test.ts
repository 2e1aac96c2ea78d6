import { readSound } from '@truesweep/recordings';
import { expect, test } from 'vitest';
import { waveHeader } from './waveHeader.js';

test('samples behind it are read as they were', async () => {
  const samples = Float32Array.of(0, 0.25, -0.5, 1);
  const file = new Blob([waveHeader(48_000, samples.length), samples]);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const options = { fullScale: 2, attenuation: 3, microphoneBias: 'off' } as const;
  const { sweep, reading } = readSound(bytes, options);
  expect(Array.from(sweep.signal)).toEqual([0, 1.5, -3, 6]);
  expect(reading).toMatchObject({ coding: 'float', hertz: 48_000, isCut: false });
});
