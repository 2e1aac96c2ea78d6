import { readdirSync } from 'node:fs';
import { format } from 'node:util';
import { expect, test, vi } from 'vitest';

/** Each example program with what it prints. */
const programs: Readonly<
  Record<string, readonly [run: () => Promise<unknown>, printed: string[]]>
> = {
  'expectReadings.ts': [
    () => import('./expectReadings.js'),
    [
      'closed: about 417 mV, from 317 mV to 518 mV',
      'open: about 3.67 V, from 3.37 V to 3.93 V',
      'through the limiter: 834 µA',
    ],
  ],
  'scoreRecording.ts': [
    () => import('./scoreRecording.js'),
    [
      'Do not put the sensor back as it is; the cause says what to mend.',
      'The trouble belongs to a place of the travel: the track is worn, dirty or cracked there, or the wiper lifts.',
      'First dropout at 6 % of travel.',
    ],
  ],
  'meetWornSpot.ts': [
    () => import('./meetWornSpot.js'),
    [
      'a sample every 1 ms: fail, 2 findings',
      'a sample every 5 ms: fail, 2 findings',
      'a sample every 70 ms: inconclusive, 0 findings',
    ],
  ],
};

test.each(Object.entries(programs))('%s prints what it did', async (_, [run, printed]) => {
  const log = vi.spyOn(console, 'log').mockImplementation(() => {});
  await run();
  const lines = log.mock.calls.map((words) => format(...words).replaceAll('\u00a0', ' '));
  log.mockRestore();
  expect(lines).toEqual(printed);
});

test('every program of the folder is run', () => {
  const files = readdirSync(new URL('.', import.meta.url)).filter(
    (name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && name !== 'makeRecordings.ts',
  );
  expect(Object.keys(programs).sort()).toEqual(files.sort());
});
