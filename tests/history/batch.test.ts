import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'truesweep-batch-history-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);

/** The command as built, as the batch needs its worker. */
const truesweep = (...args: string[]): string =>
  execFileSync(process.execPath, ['packages/cli/dist/truesweep.js', ...args], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });

test('a batch adds to a history what it judged, filed by the sensor and the date of its list', () => {
  const recording = resolve('examples/recordings/sound.csv');
  writeFileSync(at('list.csv'), `file,sensor,date\n${recording},Spare,2026-04-02\n`);
  const list = ['--manifest', at('list.csv'), '--job', 'examples/outboard-sensor.job.json'];
  const store = at('workshop.history');
  for (let run = 0; run < 2; run++) {
    truesweep('batch', ...list, '--out', at('results'), '--workers', '1', '--history', store);
    expect(JSON.parse(truesweep('history', '--store', store, '--json'))).toEqual({
      sensors: [
        {
          sensor: 'Spare',
          records: 1,
          verdict: 'pass',
          from: Date.UTC(2026, 3, 2) / 1000,
          to: Date.UTC(2026, 3, 2) / 1000,
          changed: [],
        },
      ],
    });
  }
});
