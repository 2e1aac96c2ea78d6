import { spawnSync } from 'node:child_process';
import { copyFile, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
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

test('a job that lists a file called - does not read the standard input', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'truesweep-dash-'));
  const job = JSON.parse(await readFile(join(root, 'examples/outboard-sensor.job.json'), 'utf8'));
  await writeFile(
    join(folder, 'job.json'),
    JSON.stringify({ ...job, recordings: [{ file: '-' }] }),
  );
  const program = join(root, 'packages/cli/dist/truesweep.js');
  const judge = () =>
    spawnSync(process.execPath, [program, 'score', '--json', '--job', 'job.json'], {
      cwd: folder,
      encoding: 'utf8',
      input: 'time (s),wiper (V)\n0,1\n1,2\n',
    });
  expect(judge().stderr).toContain('(missing-file)');
  await copyFile(join(root, 'examples/recordings/worn.csv'), join(folder, '-'));
  const { stdout, stderr } = judge();
  expect(stderr).toBe('');
  expect(JSON.parse(stdout)[0]).toMatchObject({ score: { verdict: 'fail' } });
  await rm(folder, { recursive: true });
});
