import { readdirSync } from 'node:fs';
import { format } from 'node:util';
import { expect, test, vi } from 'vitest';
import { printed } from './printed.js';

const programs: Readonly<Record<string, () => Promise<unknown>>> = {
  'expectReadings.mjs': () => import('./expectReadings.mjs'),
  'scoreRecording.mjs': () => import('./scoreRecording.mjs'),
  'meetWornSpot.mjs': () => import('./meetWornSpot.mjs'),
};

test.each(Object.entries(programs))('%s prints what it did', async (name, run) => {
  const log = vi.spyOn(console, 'log').mockImplementation(() => {});
  await run();
  const lines = log.mock.calls.map((words) => format(...words).replaceAll('\u00a0', ' '));
  log.mockRestore();
  expect(lines).toEqual(printed[name]);
});

test('every program of the folder is run', () => {
  const files = readdirSync(new URL('.', import.meta.url)).filter((name) => name.endsWith('.mjs'));
  expect(Object.keys(programs).sort()).toEqual(files.sort());
  expect(Object.keys(printed).sort()).toEqual(files.sort());
});
