import { spawnSync } from 'node:child_process';
import { copyFile, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from './tarballs.js';

test.skipIf(process.platform === 'win32')(
  'a report is not written over the file that stands behind the standard input',
  async () => {
    const folder = await mkdtemp(join(tmpdir(), 'truesweep-kept-'));
    const file = join(folder, 'mine.csv');
    await copyFile(join(root, 'examples/recordings/worn.csv'), file);
    const before = await readFile(file);
    const report = `packages/cli/dist/truesweep.js report - --job examples/outboard-sensor.job.json`;
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', `"${process.execPath}" ${report} --overwrite --out "${file}" < "${file}"`],
      { cwd: root, encoding: 'utf8' },
    );
    expect(stderr).toContain('(output-is-input)');
    expect(status).toBe(2);
    expect(await readFile(file)).toEqual(before);
    await rm(folder, { recursive: true });
  },
);
