import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { root } from './tarballs.js';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'truesweep-output-'));
});
afterAll(() => rm(folder, { recursive: true }));

const scored = (recording: string, ...more: readonly string[]) =>
  [
    `"${process.execPath}" packages/cli/dist/truesweep.js score examples/recordings/${recording}`,
    '--job examples/outboard-sensor.job.json --exit-by-verdict',
    ...more,
  ].join(' ');

function shell(script: string) {
  return spawnSync('bash', ['-c', script], { cwd: root, encoding: 'utf8' });
}

/** The exit code of the first command of a pipe, whose reader does as it is told. */
function codeBefore(reader: string, command: string): string {
  return shell(`${command} | ${reader}; echo "\${PIPESTATUS[0]}" >&2`).stderr;
}

// 3 says that what was to be printed was not: neither a pass nor another verdict.
describe.skipIf(process.platform === 'win32')('an output that takes nothing', () => {
  test.each(['sound.csv', 'worn.csv', 'too-slow.csv'])('%s to a reader that left: 3', (file) => {
    expect(codeBefore('true', scored(file, '--json'))).toBe('3\n');
    expect(codeBefore('true', scored(file))).toBe('3\n');
  });

  test('a reader that leaves in between: 3', () => {
    const practice = `"${process.execPath}" packages/cli/dist/truesweep.js simulate --job examples/outboard-sensor.job.json`;
    expect(codeBefore('head -c 10 > /dev/null', practice)).toBe('3\n');
  });

  test('a full device: 3, and it is said', () => {
    const { status, stderr } = shell(`${scored('sound.csv')} > /dev/full`);
    expect(stderr).toBe(
      'truesweep: What was to be printed could not be written (ENOSPC); make room, or print elsewhere.\n',
    );
    expect(status).toBe(3);
  });

  test('a disk that takes the beginning only: 3, and it is said', async () => {
    const file = join(folder, 'cut.txt');
    const { status, stderr } = shell(
      `trap '' XFSZ; ulimit -f 1; ${scored('sound.csv', '--json')} > "${file}"`,
    );
    expect((await readFile(file)).length).toBe(1024);
    expect(stderr).toContain('could not be written (EFBIG)');
    expect(status).toBe(3);
  });

  test('an error output that takes nothing changes no exit code', () => {
    const { status } = shell(`${scored('none.csv')} 2> /dev/full`);
    expect(status).toBe(2);
  });

  test('a reader that takes everything gets the verdict', () => {
    expect(codeBefore('cat > /dev/null', scored('sound.csv'))).toBe('0\n');
    expect(codeBefore('cat > /dev/null', scored('worn.csv'))).toBe('11\n');
    expect(shell(`${scored('worn.csv')} >&-`).status).toBe(11);
  });
});
